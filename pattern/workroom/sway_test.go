package workroom_test

import (
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/figure"

	"github.com/stretchr/testify/require"
)

// swayJob is a client whose waist string lies so much lower behind.
func swayJob(t *testing.T, picks map[pattern.ChoiceID]string, lower float64) pattern.Job {
	return figure.Styled(t, picks).WithBody(measure.WaistToFloor, figure.In(41)).WithBody(measure.WaistToFloorBack, figure.In(41-lower))
}

// TestSwayBack: what her back is shorter down the middle is folded out there
// and nowhere else: the centre is shorter by the fold, every other edge of the
// back is as long as it was, and all girths stay.
func TestSwayBack(t *testing.T) {
	for _, picks := range []map[pattern.ChoiceID]string{
		nil,
		{"waist_shaping": "fisheye"},
		{"waist_shaping": "two_back"},
		{"waist_shaping": "shaped_back"},
		{"hem_opening": "vent"},
		{"hem_opening": "none"},
		{"hem_opening": "kick_pleat", "skirt_line": "straight"},
		{"closure": "zip_side", "waist_shaping": "shaped_back", "front_neckline": "slit"},
		{"skirt_line": "a_line", "hem_finish": "faced"},
		{"lining": "full"},
		{"lining": "full", "hem_opening": "vent"},
		{"lining": "to_facing", "facing": "all_in_one", "hem_opening": "inverted"},
	} {
		was := workroom.Draft(swayJob(t, picks, 0))
		require.Zero(t, was.Known.Length("sway_back"))
		s := workroom.Draft(swayJob(t, picks, 0.5))
		require.Empty(t, s.Refused, "%v", picks)
		require.InDelta(t, 0.5, s.Known.Length("sway_back").Inches(), 1e-9)
		sound(t, s, "sway")
		require.InDelta(t, centreLong(t, was)-0.5, centreLong(t, s), 0.03, "%v", picks)
		a, _ := was.Piece(pattern.Back)
		b, _ := s.Piece(pattern.Back)
		for _, edge := range []string{"neck", "shoulder", "armhole", "side", "hem"} {
			require.InDelta(t, a.Along(edge).Inches(), b.Along(edge).Inches(), 1e-3, "%v: %s", picks, edge)
		}
		require.Equal(t, len(a.Darts), len(b.Darts))
		for i := range a.Darts {
			require.InDelta(t, a.Darts[i].Intake.Inches(), b.Darts[i].Intake.Inches(), 1e-3)
		}
		for _, girth := range []string{"neck", "armhole", "bust", "waist", "hip", "hem"} {
			require.InDelta(t, girthOf(t, was, girth), girthOf(t, s, girth), 0.05, "%v: %s", picks, girth)
		}
		for _, f := range s.Findings {
			require.NotEqual(t, pattern.Fail, f.Verdict, "%v: %s %s", picks, f.Code, f.Says.In(measure.In))
			require.NotEqual(t, "sway_back", f.Code)
		}
	}
}

// centreLong is the centre back from neck to hem, in inches, of the drawn line.
func centreLong(t *testing.T, s *pattern.Sheet) float64 {
	t.Helper()
	for i := len(s.Marks) - 1; i >= 0; i-- {
		if m := s.Marks[i]; m.Piece == pattern.Back && m.Name == "centre_back" && m.Gone == 0 {
			return m.Path.Length() / 25.4
		}
	}
	a, _ := s.Point(pattern.Back, "neck_centre")
	b, _ := s.Point(pattern.Back, "hem_centre")
	return a.Dist(b) / 25.4
}

// TestSwayBackIsTold where the style does not let it be folded out, where she
// chose less, and where one fold is not enough.
func TestSwayBackIsTold(t *testing.T) {
	told := func(job pattern.Job) (pattern.Finding, bool) {
		f, ok := codes(workroom.Draft(job))["sway_back"]
		return f, ok
	}
	folded := map[pattern.ChoiceID]string{"closure": "zip_side", "hem_opening": "none", "front_neckline": "slit"}
	f, ok := told(swayJob(t, folded, 0.5))
	require.True(t, ok)
	require.Equal(t, "closure", f.Input)
	_, ok = told(swayJob(t, folded, 0.5).WithStyle("closure", *f.Try))
	require.False(t, ok, "the zip behind lets it be folded out")

	f, ok = told(swayJob(t, nil, 0.5).WithStyle("sway_back", pattern.LengthValue(0)))
	require.True(t, ok)
	_, ok = told(swayJob(t, nil, 0.5).WithStyle("sway_back", *f.Try))
	require.False(t, ok)

	for _, c := range []struct {
		lower float64
		told  bool
	}{{0.125, false}, {0.25, false}, {0.75, false}, {1, true}} {
		_, ok = told(swayJob(t, nil, c.lower))
		require.Equal(t, c.told, ok, "%v", c.lower)
	}
	_, ok = told(swayJob(t, nil, 0.5).WithStyle("waist_seam", pattern.SwitchValue(true)))
	require.True(t, ok)
}

// TestSwayBackRefused: chosen where it cannot be, it says why and what would
// do.
func TestSwayBackRefused(t *testing.T) {
	half := pattern.LengthValue(figure.In(0.5))
	for what, job := range map[string]pattern.Job{
		"on the fold": figure.Styled(t, map[pattern.ChoiceID]string{"closure": "zip_side", "hem_opening": "none", "front_neckline": "slit"}),
		"waist seam":  figure.Styled(t, nil).WithStyle("waist_seam", pattern.SwitchValue(true)),
		"panels":      figure.Styled(t, map[pattern.ChoiceID]string{"panel_seam": "shoulder"}),
	} {
		s := workroom.Draft(job.WithStyle("sway_back", half))
		require.NotEmpty(t, s.Refused, what)
		require.Equal(t, "R33", s.Refused[0].Code, what)
		reasoned(t, s)
	}
	s := workroom.Draft(figure.Styled(t, nil).WithStyle("sway_back", pattern.LengthValue(figure.In(2))))
	require.NotEmpty(t, s.Refused)
	require.False(t, s.Complete)
}

// TestSwayBackOnWomen folds the backs of women of the survey, by both methods,
// in every style.
func TestSwayBackOnWomen(t *testing.T) {
	inEveryStyle(t, func(job pattern.Job, n int) pattern.Job {
		return job.WithStyle("sway_back", pattern.LengthValue(figure.In(float64(2+n%5)/8)))
	}, func(id pattern.ChoiceID, option string) bool { return id == "closure" && option != "zip_back" })
}
