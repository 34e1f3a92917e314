package ui

import (
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/testdata/golden"
	"chalkfold/ui/canvas"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/lesson"
	"chalkfold/ui/session"
)

// begin opens a lesson of the list by its place there.
func (s screen) begin(id string) {
	s.t.Helper()
	s.m.over = nil
	s.m.do(keys.Lessons)
	l, ok := lesson.Find(id)
	require.True(s.t, ok)
	s.keys(l.Title, "enter")
	require.Equal(s.t, id, s.m.d.Running().ID)
}

// What learning looks like on the usual screen, without any colour.
func TestLearningAtTheUsualSize(t *testing.T) {
	s := first(t)
	s.keys("esc", "3", "a")
	for range 7 {
		s.keys(" ", "esc")
	}
	require.Contains(t, s.text(), "Step 8 of")
	s.keys("left", "left", "a", "a", " ")
	require.True(t, s.m.draft.Asking())
	golden.Check(t, "question-place.txt", s.shown())
	s.keys("esc", " ", "11 1/2", "enter")
	golden.Check(t, "question.txt", s.shown())
	s.keys("ctrl+u", "enter", "enter")
	golden.Check(t, "question-hint.txt", s.shown())
	s.keys("esc", "a", "w", "up", "up")
	golden.Check(t, "what-if.txt", s.shown())
	s.keys("esc", "esc")
	s.begin("back")
	golden.Check(t, "lesson.txt", s.shown())
	s.keys("esc")
	s.m.do(keys.Faults)
	s.keys("enter")
	golden.Check(t, "fault.txt", s.shown())
	s.keys("enter")
	golden.Check(t, "fault-found.txt", s.shown())
	s = at(t, 60, 16, looks("mono", canvas.ASCII))
	s.begin("front")
	s.keys(" ")
	golden.Check(t, "lesson-narrow.txt", s.shown())
}

// Left and come back to, a question is as it was.
func TestAQuestionWaitsForHer(t *testing.T) {
	s := first(t)
	s.keys("esc", "3", "a", " ", "9")
	require.True(t, s.m.draft.Asking())
	before := s.text()
	s.keys("ctrl+pgdown", "ctrl+pgup")
	require.Equal(t, desk.Draft, s.m.at)
	require.Equal(t, before, s.text())
	s.keys("f1", "esc")
	require.Equal(t, before, s.text())
}

// A lesson keeps its place in the session: no star, nothing to undo, written
// with the next save.
func TestALessonKeepsItsPlace(t *testing.T) {
	s := first(t)
	s.begin("back")
	require.Equal(t, desk.Draft, s.m.at)
	s.keys(" ", " ", "16 3/4", "enter")
	require.Contains(t, s.text(), "Right: 16 3/4 in.")
	require.NotContains(t, s.lines()[0], "*")
	require.False(t, s.m.d.CanUndo())
	require.NotContains(t, s.m.d.Job().Style.IDs(), "method", "her own method stays")
	s.keys("esc")
	require.False(t, s.m.d.Running().On())
	require.Contains(t, s.text(), "waits at page 3")
	s.begin("back")
	require.Equal(t, 4, s.m.d.Running().Page, "the page after the last answered")
	s.keys("ctrl+s")
	got, err := session.Open(s.m.d.Path())
	require.NoError(t, err)
	require.Equal(t, map[string]int{"back": 3}, got.Lesson)
	require.Equal(t, figure().Body.IDs(), got.Job.Body.IDs())
}

// Every lesson can be gone through to its end, at any size that works, and
// ends with what it promises.
func TestEveryLessonEnds(t *testing.T) {
	for _, size := range [][2]int{{80, 24}, {60, 16}} {
		s := at(t, size[0], size[1], looks("mono", canvas.ASCII))
		for _, l := range lesson.All() {
			s.begin(l.ID)
			for page := 1; s.m.d.Running().On(); page++ {
				require.Equal(t, page, s.m.d.Running().Page, l.ID)
				require.Contains(t, s.text(), "Lesson ", "%s, page %d", l.ID, page)
				require.Nil(t, s.m.fault, "%s, page %d", l.ID, page)
				fits(t, s.m.View(), size[0], size[1])
				for _, r := range s.text() {
					require.Less(t, r, rune(0x80), "%s, page %d", l.ID, page)
				}
				p, ok := s.m.stage().(pupil)
				require.True(t, ok)
				if notes := l.Pages[page-1].Show.What == lesson.OfNotes; p.Asking() && !notes {
					s.keys("enter", "enter", "enter") // all the help there is
					require.Contains(t, s.text(), "Hint", "%s, page %d", l.ID, page)
				}
				if p.Asking() {
					s.keys("esc")
				}
				s.keys(" ")
				require.LessOrEqual(t, page, len(l.Pages))
			}
			require.Contains(t, s.text(), "Done. ", l.ID)
			require.Equal(t, lesson.Done, lesson.Progress(s.m.d.Learnt()).State(l), l.ID)
		}
	}
}

func TestALessonTicksWhatItEndsWith(t *testing.T) {
	s := first(t)
	l, _ := lesson.Find("back")
	s.m.study(desk.Running{ID: l.ID, Page: len(l.Pages), Method: l.Method})
	require.Equal(t, desk.Cut, s.m.at)
	require.Contains(t, s.text(), "[x] Chalk card")
	require.NotContains(t, s.text(), "[x] SVG")
	s.keys(" ")
	require.False(t, s.m.d.Running().On())
	require.Contains(t, s.text(), "[x] Chalk card")
}

// In the lesson of the tape Enter types the measure and goes on.
func TestTheTapeIsTyped(t *testing.T) {
	s := first(t)
	s.begin("tape")
	require.Equal(t, desk.Measure, s.m.at)
	s.keys("enter", "ctrl+u", "37", "enter")
	require.Equal(t, 2, s.m.d.Running().Page)
	l, _ := s.m.d.Job().Body.Get("bust_girth")
	require.InDelta(t, 37*25.4, float64(l), 1e-6)
}

func TestALessonMovesAMeasure(t *testing.T) {
	s := first(t)
	s.begin("longer")
	s.m.study(desk.Running{ID: "longer", Page: 2, Method: "measured"})
	require.Contains(t, s.text(), "What if")
	s.keys("up")
	require.Contains(t, s.text(), "17 3/4 -> 18 in")
	s.keys("enter")
	require.True(t, s.m.d.CanUndo())
	s.keys("right")
	require.Equal(t, 3, s.m.d.Running().Page)
	require.True(t, s.m.draft.Asking(), "a question beside what if")
	s.keys("up")
	require.Contains(t, s.text(), "ASK", "the measure moved, the question stays")
	s.keys("2", "enter")
	require.Contains(t, s.text(), "Right: 2.")
	s.keys("left")
	require.Equal(t, 2, s.m.d.Running().Page)
}

// Words of her own go to the notes: one change, taken back by one undo.
func TestHerWordsAreNotes(t *testing.T) {
	s := first(t)
	l, _ := lesson.Find("longer")
	s.m.study(desk.Running{ID: "longer", Page: len(l.Pages), Method: l.Method})
	s.keys("The dart takes it up", "enter")
	require.Equal(t, "The dart takes it up", s.m.d.Job().Client.Notes)
	s.keys("ctrl+z")
	require.Empty(t, s.m.d.Job().Client.Notes)
}

// A fault on purpose never touches the work.
func TestFaultsTouchNothing(t *testing.T) {
	s := first(t)
	job, version := s.m.d.Job(), s.m.d.Version()
	s.keys("esc", "4")
	sound := s.text()
	for i := range lesson.Faults() {
		s.m.do(keys.Faults)
		for range i {
			s.keys("down")
		}
		s.keys("enter")
		require.Contains(t, s.text(), "FAULT ON PURPOSE")
		require.Contains(t, s.text(), "guess")
		require.NotContains(t, s.text(), "fail ")
		s.keys("t", "w")
		require.Contains(t, s.text(), "spoilt on purpose")
		s.keys("enter")
		require.Contains(t, s.text(), "What was done")
		require.Contains(t, s.text(), lesson.Faults()[i].Title)
		s.keys("t", "esc")
		s.m.d.Message = ""
		require.Equal(t, sound, s.text())
	}
	require.Equal(t, job, s.m.d.Job())
	require.Equal(t, version, s.m.d.Version())
}

func TestTheWordOfAStep(t *testing.T) {
	s := first(t)
	s.keys("esc", "3", " ", "g")
	require.Contains(t, s.text(), "> Neck base")
	s.keys("esc", "4", "g")
	require.Contains(t, s.text(), "Words of the trade")
}

// Each key in the footer of a mode does something, and is in the table.
func TestFootersOfLearningAreLive(t *testing.T) {
	modes := map[string]func(s screen){
		"question": func(s screen) { s.keys("esc", "3", "a", " ", "enter") },
		"what if":  func(s screen) { s.keys("esc", "3", "w", "up") },
		"what if, true": func(s screen) {
			s.keys("esc", "4", "w", "up")
		},
		"lesson": func(s screen) { s.begin("back"); s.keys(" ") },
		"fault": func(s screen) {
			s.m.do(keys.Faults)
			s.keys("enter")
		},
		"found": func(s screen) {
			s.m.do(keys.Faults)
			s.keys("enter", "enter")
		},
	}
	for name, enter := range modes {
		s := at(t, 120, 30, looks("mono", canvas.ASCII))
		enter(s)
		for k := range s.m.footer() {
			s = at(t, 120, 30, looks("mono", canvas.ASCII))
			enter(s)
			o := s.m.footer()[k]
			a, ok := s.m.d.Keys.Find(o.ID)
			require.True(t, ok, o.ID)
			s.m.d.Message = ""
			before := s.text()
			s.keys(a.Keys[0])
			require.NotEqual(t, before, s.text(), "%s: %s (%s) does nothing", name, a.Keys[0], o.ID)
		}
		for _, o := range s.m.acts() {
			_, ok := s.m.d.Keys.Find(o.ID)
			require.True(t, ok, "%s: %s is in no table", name, o.ID)
		}
	}
}

// A page that names a step which a later page asks about does not tell it
// before; a question about what moves can be tried first.
func TestNothingIsToldBeforeItIsAsked(t *testing.T) {
	s := at(t, 80, 24, looks("mono", canvas.ASCII))
	s.begin("back")
	require.Contains(t, s.text(), "Centre line, top line and levels")
	require.NotContains(t, s.text(), "SUM")
	require.NotContains(t, s.text(), "hem centre 4")
	s.keys(" ", " ")
	require.Contains(t, s.text(), "waist ?")
	s.begin("longer")
	s.keys("esc", " ", " ")
	require.Contains(t, s.text(), "What does the side seam of the front do?")
	s.keys("up")
	require.Contains(t, s.text(), "dart intake 1/4 wider")
	s.keys("2", "enter")
	require.Contains(t, s.text(), "the dart takes up at the side")
}
