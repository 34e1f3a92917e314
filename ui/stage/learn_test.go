package stage

import (
	"strings"
	"testing"

	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/canvas"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/lesson"
)

// askedAbout is the draft with the question of a step open.
func askedAbout(t *testing.T, step string) (*Draft, user) {
	t.Helper()
	d := bench36(t)
	s := NewDraft(d)
	u := user{t, d, s}
	for i, st := range d.Sheet().Steps {
		if st.ID == step {
			s.GoTo(i)
			s.View(desk.Rect{Columns: 80, Rows: 21})
			u.do("ask-first", "step-next")
			require.True(t, s.Asking())
			return s, u
		}
	}
	require.FailNow(t, "no step", step)
	return nil, u
}

// At a question the step is hidden; each answer is told for what it is.
func TestAnswersAreToldForWhatTheyAre(t *testing.T) {
	s, u := askedAbout(t, "front.bust_width")
	require.Contains(t, u.screen(), "ASK")
	require.Contains(t, u.screen(), "?")
	require.NotContains(t, u.screen(), "DO ")
	require.NotContains(t, u.screen(), "SUM ")
	require.NotContains(t, u.screen(), "9 5/8")
	for _, tc := range []struct{ typed, says string }{
		{"11 1/2", "ease"}, {"24.4", "centimetres"}, {"4 13/16", "half"}, {"38 1/2", "all round"}, {"abc", "abc"}, {"50", "Hint 1 of 3"},
	} {
		u.do("clear")
		s.AskType(desk.Key{Name: "ctrl+u"})
		u.types(tc.typed)
		u.do("answer")
		require.True(t, s.Asking(), tc.typed)
		require.Contains(t, u.screen(), tc.says, tc.typed)
	}
	s.AskType(desk.Key{Name: "ctrl+u"})
	u.do("answer")
	require.Contains(t, u.screen(), "Hint 2 of 3")
	u.do("answer")
	require.Contains(t, u.screen(), "Hint 3 of 3")
	u.types("9 5/8")
	u.do("answer")
	require.False(t, s.Asking())
	require.Contains(t, u.screen(), "Right: 9 5/8 in.")
	require.Contains(t, u.screen(), "DO ")
	require.Contains(t, u.screen(), "WHY ")
	u.do("step-back", "step-next")
	require.False(t, s.Asking(), "it is settled")
}

func TestAQuestionIsSkippedAndNearlyIsEnough(t *testing.T) {
	s, u := askedAbout(t, "front.bust_width")
	u.types("9 3/4")
	u.do("answer")
	require.False(t, s.Asking())
	require.Contains(t, u.screen(), "Nearly: 9 3/4 in, and it is 9 5/8 in.")
	s, u = askedAbout(t, "front.bust_width")
	require.Contains(t, u.do("skip").Say, "shown")
	require.Contains(t, u.screen(), "DO ")
	require.NotContains(t, u.screen(), "Right")
	u.do("ask-first", "step-next")
	require.False(t, s.Asking(), "no more questions")
}

// A place is pointed at with the cross-hair; half a cell is near enough.
func TestAPlaceIsPointedAt(t *testing.T) {
	s, u := askedAbout(t, "front.neck_point")
	require.Equal(t, lesson.Place, s.ask.q.Kind)
	u.do("answer")
	require.Contains(t, u.screen(), "Hint 1 of 3", "not moved: help")
	s.AskType(desk.Key{Name: "left"})
	u.do("answer")
	require.True(t, s.Asking())
	q := s.ask.q
	for range 400 {
		at, _ := s.seen.Under(s.eye.Hairs)
		key := ""
		switch dx, dy := float64(q.X)-at.At.X, float64(q.Y)-at.At.Y; { // lying: out is down the screen
		case dy < -4:
			key = "left"
		case dy > 4:
			key = "right"
		case dx < -4:
			key = "up"
		case dx > 4:
			key = "down"
		}
		if key == "" {
			break
		}
		s.AskType(desk.Key{Name: key})
		u.screen()
	}
	u.do("answer")
	require.False(t, s.Asking(), u.screen())
	require.Contains(t, u.screen(), "Right: ")

	s, u = askedAbout(t, "front.neck_point")
	s.AskType(desk.Key{Name: "3", Runes: []rune("3")})
	require.False(t, s.ask.point, "a digit types it")
	u.types(" 7/8 out, 1/4 down")
	u.do("answer")
	require.Contains(t, u.screen(), "3 7/8")
}

// The question follows an edit; what was typed stays.
func TestAQuestionFollowsTheJob(t *testing.T) {
	s, u := askedAbout(t, "front.bust_width")
	u.types("10")
	u.d.Change(u.d.Job().WithBody(measure.BustGirth, measure.In.Length(37.5)), "bust")
	u.screen()
	require.InDelta(t, 10*25.4, float64(s.ask.q.Right.Result()), 1e-6)
	u.do("answer")
	require.False(t, s.Asking())
}

func TestWhatIfIsOneChangeOrNone(t *testing.T) {
	d := bench36(t)
	for id, s := range map[keys.ID]desk.Stage{"what-if": NewDraft(d), "true-what-if": NewTrue(d)} {
		u := user{t, d, s}
		u.screen()
		before := d.Job()
		u.do(id)
		require.True(t, s.Typing())
		u.do("text-right", "field-up", "field-up", "nudge-up", "field-down")
		require.Equal(t, before, d.Job(), "nothing is changed yet")
		require.Contains(t, u.screen(), "->")
		require.Regexp(t, `all round|longer|shorter|on the cloth`, u.screen())
		require.Contains(t, u.do(keys.Back).Say, "Put back")
		require.False(t, s.Typing())
		require.Equal(t, before, d.Job())
		require.Nil(t, u.do(id, keys.Accept).Job, "not moved: nothing to keep")
		u.do(id, "field-up", keys.Accept)
		require.NotEqual(t, before, d.Job())
		says, ok := d.Undo()
		require.True(t, ok)
		require.Contains(t, says, "->")
		require.Equal(t, before, d.Job(), "one entry of the history")
	}
}

func TestWhatIfStepsByTheUnit(t *testing.T) {
	d := bench36(t)
	job := d.Job()
	job.Unit = measure.Cm
	d.Change(job, "cm")
	s := NewDraft(d)
	u := user{t, d, s}
	u.do("what-if", "field-up")
	require.InDelta(t, 5, float64(s.try.by), 1e-9)
	u.do("nudge-down")
	require.InDelta(t, -15, float64(s.try.by), 1e-9)
}

// What cannot be is not tried: a measure stays above nothing.
func TestWhatIfStaysPossible(t *testing.T) {
	d := bench36(t)
	s := NewDraft(d)
	u := user{t, d, s}
	u.do("what-if")
	for range 60 {
		u.do("nudge-down")
	}
	require.Contains(t, u.screen(), "stays")
	u.do("field-up", keys.Back)
}

func TestLaterStepsAreMarkedChanged(t *testing.T) {
	d := bench36(t)
	s := NewDraft(d)
	list := func() string { return strings.Join(s.View(desk.Rect{Columns: 80, Rows: 60}), "\n") }
	s.room = wordsOnly
	require.NotContains(t, list(), "changed")
	d.Change(d.Job().WithBody(measure.HipGirth, measure.In.Length(40)), "hip")
	require.Contains(t, list(), "changed")
	c := Changed(d)
	require.True(t, c["back.hip"])
	require.False(t, c["front.neck_base"])
	d.Undo()
	require.NotContains(t, list(), "changed")
}

func TestTheWordNearest(t *testing.T) {
	d := bench36(t)
	s := NewDraft(d)
	u := user{t, d, s}
	u.screen()
	for i, st := range d.Sheet().Steps {
		s.GoTo(i + 1)
		u.screen()
		require.NotEmpty(t, s.Word(), st.ID)
	}
	s.GoTo(8)
	u.screen()
	u.do("cross")
	require.NotEmpty(t, s.Word())
	tr := NewTrue(d)
	user{t, d, tr}.screen()
	require.Equal(t, "side seam", tr.Word())
	require.Equal(t, "middle of the armhole", firstWord("Go to the middle of the armhole."))
	require.Equal(t, "dart", firstWord("Two darts."))
	require.Empty(t, firstWord("Nothing here."))
}

// A fault is shown on a copy and found; the job stays.
func TestFaultOnPurpose(t *testing.T) {
	d := bench36(t)
	s := NewTrue(d)
	u := user{t, d, s}
	before := d.Job()
	sound := u.screen()
	for _, f := range lesson.Faults() {
		require.Equal(t, desk.True, s.Fault(f.ID).Go)
		require.Contains(t, u.screen(), "FAULT ON PURPOSE")
		require.NotContains(t, u.screen(), "got ")
		u.do("go-there")
		found, _ := s.finding()
		require.Equal(t, f.Check, found.Check)
		require.NotEqual(t, pattern.Pass, found.Verdict)
		u.do("try-cure")
		u.do(keys.Back)
		require.Equal(t, sound, u.screen())
	}
	require.Equal(t, before, d.Job())
	require.True(t, s.Fault("none").Warn)
}

// Whatever the mode, the size and the keys: a stage fills its rectangle.
func TestLearningFillsItsRectangle(t *testing.T) {
	d := bench36(t)
	all := []interface {
		desk.Stage
		AskDo(keys.ID) desk.Ask
		AskType(desk.Key) desk.Ask
		Asking() bool
		LessonDo(keys.ID) desk.Ask
		Study(desk.Running)
		Rest()
		Word() string
	}{NewMeasure(d), NewStyle(d), NewDraft(d), NewTrue(d), NewLay(d), NewCut(d)}
	course := lesson.All()
	typed := []string{"up", "down", "left", "right", "pgup", "pgdown", "shift+left", "backspace", "home", "ctrl+u", "1", "2", "9 5/8", "c", "z", " ", "Nguyễn ½"}
	rapid.Check(t, func(t *rapid.T) {
		d.Settings.Glyphs = canvas.Glyphs(rapid.IntRange(0, 2).Draw(t, "glyphs"))
		if rapid.Bool().Draw(t, "lesson") {
			l := rapid.SampledFrom(course).Draw(t, "course")
			r := desk.Running{ID: l.ID, Page: rapid.IntRange(1, len(l.Pages)).Draw(t, "page"), Method: l.Method}
			d.Study(r)
			for i, s := range all {
				if desk.StageID(i+1) == StageOf(r) {
					s.Study(r)
				} else {
					s.Rest()
				}
			}
		}
		s := rapid.SampledFrom(all).Draw(t, "stage")
		for range rapid.IntRange(1, 5).Draw(t, "deeds") {
			switch rapid.IntRange(0, 4).Draw(t, "deed") {
			case 0:
				if k := rapid.SampledFrom(typed).Draw(t, "typed"); s.Asking() {
					s.AskType(desk.Key{Name: k, Runes: []rune(k)[:min(len([]rune(k)), 1)]})
				}
			case 1:
				if s.Asking() {
					s.AskDo(rapid.SampledFrom([]keys.ID{"answer", "skip", "question-back", keys.Room}).Draw(t, "answer"))
				}
			case 2:
				s.LessonDo(rapid.SampledFrom([]keys.ID{"page-next", "page-back"}).Draw(t, "leaf"))
			case 3:
				if tr, ok := any(s).(*True); ok {
					tr.Fault(rapid.SampledFrom(lesson.Faults()).Draw(t, "fault").ID)
				}
			default:
				if offers := s.Actions(); len(offers) > 0 {
					a := s.Do(rapid.SampledFrom(offers).Draw(t, "offer").ID)
					if a.Job != nil {
						d.Change(*a.Job, a.Says)
					}
				}
			}
			s.Word()
			r := desk.Rect{Columns: rapid.IntRange(0, 160).Draw(t, "columns"), Rows: rapid.IntRange(0, 50).Draw(t, "rows")}
			lines := s.View(r)
			require.Len(t, lines, r.Rows)
			for _, l := range lines {
				require.LessOrEqual(t, ansi.StringWidth(l), r.Columns)
			}
		}
	})
}
