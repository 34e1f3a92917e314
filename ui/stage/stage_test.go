package stage

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
)

func TestStyleChangesAndGivesBack(t *testing.T) {
	d := bench36(t)
	s := NewStyle(d)
	u := user{t, d, s}
	u.screen()
	s.form.to(s.form.find("front_neck_depth"))
	u.do("clear")
	u.types("5")
	require.Contains(t, u.screen(), "longer", "the difference is said while typing")
	require.Contains(t, u.do(keys.Accept).Says, "-> 5 in")
	require.Equal(t, []pattern.ChoiceID{"front_neck_depth"}, d.Job().Style.IDs())
	s.form.to(s.form.find("front_neck_depth"))
	require.Contains(t, u.screen(), "* usual 4 1/2")
	u.do("clear", keys.Accept)
	require.Empty(t, d.Job().Style.IDs(), "emptied: back to what is usual")
	s.form.to(s.form.find("front_neck_depth"))
	u.do("nudge-up", "nudge-down")
	require.Empty(t, d.Job().Style.IDs(), "what is usual is not written down")
}

func TestPicksTurn(t *testing.T) {
	d := bench36(t)
	s := NewStyle(d)
	u := user{t, d, s}
	u.screen()
	s.form.to(s.form.find("method"))
	u.do("text-right")
	require.Equal(t, pattern.Thumb, d.Job().Style.Method())
	u.do("text-left")
	require.Equal(t, pattern.Measured, d.Job().Style.Method())
}

func TestStyleRefusesInItsField(t *testing.T) {
	d := bench36(t)
	s := NewStyle(d)
	u := user{t, d, s}
	u.screen()
	s.form.to(s.form.find("ease_bust"))
	u.do("clear")
	u.types("-4")
	require.True(t, u.do("field-down").Warn)
	u.do("field-up")
	require.Contains(t, u.screen(), "-4")
}

func TestDraftGoesStepByStep(t *testing.T) {
	d := bench36(t)
	s := NewDraft(d)
	u := user{t, d, s}
	n := len(d.Sheet().Steps)
	require.NotZero(t, n)
	require.Contains(t, u.screen(), "Step 1 of")
	require.NotEmpty(t, u.do("step-back").Say, "the first step says so")
	u.do("step-next", "step-next")
	require.Contains(t, u.screen(), "Step 3 of")
	for _, label := range []string{"DO ", "WHY ", "SLIP "} {
		require.Contains(t, u.screen(), label)
	}
	u.do("step-last")
	require.Equal(t, n, s.Step())
	u.do("step-first")
	require.Equal(t, 1, s.Step())
	for k := 1; k <= n; k++ {
		s.GoTo(k)
		require.NotContains(t, u.screen(), "{}", "step %d", k)
	}
}

func TestTrueTriesACureAsOneChange(t *testing.T) {
	d := bench36(t)
	job := d.Job().WithStyle("front_neck_depth", pattern.LengthValue(measure.In.Length(1)))
	job = job.WithStyle("neck_widening", pattern.LengthValue(0))
	d.Change(job, "a narrow neck")
	s := NewTrue(d)
	u := user{t, d, s}
	u.screen()
	require.Contains(t, s.Fact(), "!")
	for range s.rows {
		if f, _ := s.finding(); f.Try != nil {
			break
		}
		u.do("finding-down")
	}
	f, _ := s.finding()
	require.NotNil(t, f.Try, "there is a cure to try")
	before := d.Job()
	require.Contains(t, u.do("try-cure").Says, "->")
	require.NotEqual(t, before, d.Job())
	d.Undo()
	require.Equal(t, before, d.Job())
	require.NotEmpty(t, u.do("go-there").Say)
}

func TestCutWritesWhatIsTicked(t *testing.T) {
	d := bench36(t)
	s := NewCut(d)
	u := user{t, d, s}
	dir := t.TempDir()
	s.folder = dir
	require.False(t, s.ticked["dxf"])
	ask := u.do("write")
	require.NotNil(t, ask.Run)
	said := u.take(s.Hear(ask.Run()))
	require.False(t, said.Warn, said.Say)
	require.FileExists(t, filepath.Join(dir, "session.svg"))
	require.NoFileExists(t, filepath.Join(dir, "session.dxf"))
	require.NoError(t, os.WriteFile(filepath.Join(dir, "session.svg"), []byte("mine"), 0o600))
	said = s.Hear(s.write().Run())
	require.True(t, said.Warn, "what differs is not replaced")
	require.Contains(t, said.Say, "Enter again")
	require.False(t, s.Hear(s.write().Run()).Warn, "the second time it is")
}

func TestNothingToDrawSaysWhatIsMissing(t *testing.T) {
	d := desk.New(desk.Settings{})
	for _, s := range []desk.Stage{NewMeasure(d), NewStyle(d), NewDraft(d), NewTrue(d), NewLay(d), NewCut(d)} {
		text := strings.Join(s.View(desk.Rect{Columns: 80, Rows: 21}), "\n")
		require.NotEmpty(t, strings.TrimSpace(text), s.Title())
		for _, o := range s.Actions() {
			s.Do(o.ID)
		}
	}
}

// Whatever the size and whatever is pressed, a stage fills its rectangle.
func TestStagesFillTheirRectangle(t *testing.T) {
	d := bench36(t)
	stages := []desk.Stage{NewMeasure(d), NewStyle(d), NewDraft(d), NewTrue(d), NewLay(d), NewCut(d)}
	rapid.Check(t, func(t *rapid.T) {
		s := rapid.SampledFrom(stages).Draw(t, "stage")
		offers := s.Actions()
		if len(offers) > 0 && rapid.Bool().Draw(t, "act") {
			a := s.Do(rapid.SampledFrom(offers).Draw(t, "offer").ID)
			if a.Job != nil {
				d.Change(*a.Job, a.Says)
			}
		}
		r := desk.Rect{Columns: rapid.IntRange(0, 220).Draw(t, "columns"), Rows: rapid.IntRange(0, 70).Draw(t, "rows")}
		lines := s.View(r)
		require.Len(t, lines, r.Rows)
		for _, l := range lines {
			require.LessOrEqual(t, len([]rune(desk.Clip(l, r.Columns))), max(len([]rune(l)), 0))
			require.Equal(t, desk.Clip(l, r.Columns), l, "no line is wider than the rectangle")
		}
	})
}
