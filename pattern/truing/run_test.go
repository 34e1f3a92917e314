package truing

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
)

// An empty sheet, and one with nothing but measurements, is a sheet too.
func TestNothingDrawnIsSkippedWithReasons(t *testing.T) {
	for _, s := range []*pattern.Sheet{{}, {Known: newTrial().sheet().Known}} {
		for _, f := range Run(s) {
			require.Equal(t, pattern.Skip, f.Verdict, f.Check)
			require.NotEmpty(t, f.Says.In(measure.In), f.Check)
			require.Empty(t, f.Code)
		}
	}
}

// Only a half is drawn: what needs both waits, what needs one speaks.
func TestHalfASheet(t *testing.T) {
	s := newTrial().sheet()
	s.Pieces = s.Pieces[:1]
	s.Pieces[0].Of = 1
	var kept []pattern.Mark
	for _, m := range s.Marks {
		if m.Piece == front {
			kept = append(kept, m)
		}
	}
	s.Marks = kept
	verdicts := map[string]pattern.Verdict{}
	for _, f := range Run(s) {
		verdicts[f.Check] = f.Verdict
	}
	require.Equal(t, pattern.Pass, verdicts["dart_legs"])
	require.Equal(t, pattern.Pass, verdicts["outline_simple"])
	require.Equal(t, pattern.Skip, verdicts["side_seams"])
	require.Equal(t, pattern.Skip, verdicts["waist_girth"])
}

func TestChecksStandInTheirOrder(t *testing.T) {
	var ids []string
	for _, c := range Checks() {
		ids = append(ids, c.ID)
	}
	require.Equal(t, strings.Fields(`side_seams shoulder_seams waist_seams waist_edge dart_legs dart_aim dart_size neck_join armhole_join
		underarm_join hem_join centre_square facing_fit lining_fit sleeve_cap sleeve_seams collar_neck placket_fit bust_girth waist_girth hip_girth armhole_girth neck_girth
		head_passage body_passage balance hem_level walking slit_height sitting shoulder_left outline_simple
		allowance_fits labels cloth_width`), ids)
}

// The voice: figures first, short words, no scolding, no tape of another
// unit than hers.
func TestWhatIsSaid(t *testing.T) {
	for _, c := range faults {
		tr := newTrial()
		if c.change != nil {
			c.change(tr)
		}
		s := tr.sheet()
		if c.after != nil {
			c.after(s)
		}
		for _, f := range Run(s) {
			for _, u := range []measure.Unit{measure.In, measure.Cm, measure.Mm} {
				text := f.Says.In(u) + " " + f.Cure.In(u)
				low := strings.ToLower(text)
				for _, word := range []string{"invalid", "error", "please", "successfully", "{", "_", "NaN", "Inf"} {
					require.NotContains(t, low, strings.ToLower(word), f.Check)
				}
				if u != measure.In {
					require.NotContains(t, text, "/", "%s: a fraction of an inch on a %s tape: %s", f.Check, u, text)
				}
			}
			if f.Verdict == pattern.Advise || f.Verdict == pattern.Fail {
				require.Regexp(t, `[0-9]`, f.Says.In(measure.In), "%s names no figure: %s", f.Code, f.Says.In(measure.In))
				require.NotEmpty(t, f.Code)
			}
		}
	}
}

func TestACureNamesTheInputAndBothValues(t *testing.T) {
	tr := newTrial()
	tr.moved(front, "dart_tip", 0, 0.8)
	for _, f := range findings(t, tr.sheet(), "dart_aim") {
		if f.Code == "dart_droops" {
			require.Equal(t, "Start it lower: side dart below 2 -> 3 1/8.", f.Cure.In(measure.In))
			require.Equal(t, "side_dart_below", f.Input)
			require.Equal(t, measure.Length(3.125*25.4), f.Try.Length)
			return
		}
	}
	t.Fatal("the dart does not droop")
}

// A choice that the method has not is never offered as a cure.
func TestNoCureByAChoiceThatIsNotUsed(t *testing.T) {
	tr := newTrial()
	tr.body[measure.UpperArmGirth] = 12.7
	s := tr.sheet()
	for i := range s.Settings {
		s.Settings[i].Used = false
	}
	for _, f := range Run(s) {
		require.Nil(t, f.Try, f.Code)
	}
}

func TestAPointedNeckNeedNotBeSquare(t *testing.T) {
	s := newTrial().sheet()
	turned(front, "neck", 20)(s)
	p, _ := s.Piece(front)
	p.Edges[0].Stitch = p.Edges[0].Stitch.Transform([6]float64{1, 0.3, 0, 1, 0, 0})
	require.NotEqual(t, pattern.Pass, findings(t, s, "centre_square")[0].Verdict)
	s.Settings = append(s.Settings, pattern.Setting{ID: "front_neckline", Used: true, Value: pattern.PickValue("v")})
	require.Equal(t, pattern.Pass, findings(t, s, "centre_square")[0].Verdict)
}

func BenchmarkRun(b *testing.B) {
	s := newTrial().sheet()
	for b.Loop() {
		Run(s)
	}
}
