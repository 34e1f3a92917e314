package workroom_test

import (
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/figure"

	"github.com/stretchr/testify/require"
)

// near is how close a draft must come to the worked-out figures, inches.
const near = 0.002

type necklineReference struct {
	Widening      float64      `json:"widening"`
	FrontDepth    float64      `json:"front_depth"`
	BackDepth     float64      `json:"back_depth"`
	FrontCurve    figure.Curve `json:"front_curve"`
	BackCurve     figure.Curve `json:"back_curve"`
	FrontLength   float64      `json:"front_length"`
	BackLength    float64      `json:"back_length"`
	Girth         float64      `json:"girth"`
	ShoulderLeft  float64      `json:"shoulder_left"`
	Seam          float64      `json:"shoulder_seam_front"`
	OpeningLength float64      `json:"opening_length"`
	Foot          [2]float64   `json:"foot"`
	SlitStitch    figure.Curve `json:"slit_stitch"`
	Drop          figure.Curve `json:"drop"`
}

// TestNecklines holds every neckline to its figures: what is widened, how
// deep, and each handle of both curves.
func TestNecklines(t *testing.T) {
	var ref map[string]necklineReference
	figure.StylesP36(t).Group(t, "neckline", &ref)
	for name, picks := range map[string]map[pattern.ChoiceID]string{
		"round": nil, "jewel": {"front_neckline": "jewel"}, "square": {"front_neckline": "square"}, "v": {"front_neckline": "v"},
		"boat": {"front_neckline": "boat"}, "sweetheart": {"front_neckline": "sweetheart"}, "slit": {"front_neckline": "slit"},
		"keyhole": {"front_neckline": "keyhole"}, "funnel": {"front_neckline": "funnel"}, "square_back": {"back_neckline": "square"}, "v_back": {"back_neckline": "v"},
	} {
		t.Run(name, func(t *testing.T) {
			want, ok := ref[name]
			require.True(t, ok)
			s := workroom.Draft(figure.Styled(t, picks, "neck_widening", "front_neck_depth", "back_neck_depth"))
			require.True(t, s.Complete)
			require.Empty(t, s.Refused)
			require.InDelta(t, want.Widening, s.Known.Length("neck_widening").Inches(), near)
			require.InDelta(t, want.FrontDepth, s.Known.Length("front_neck_depth").Inches(), near)
			require.InDelta(t, want.BackDepth, s.Known.Length("back_neck_depth").Inches(), near)
			samePath(t, want.FrontCurve.Path(), drawnLine(s, pattern.Front, "neck").Path.Reverse(), "front")
			samePath(t, want.BackCurve.Path(), drawnLine(s, pattern.Back, "neck").Path.Reverse(), "back")
			for piece, length := range map[pattern.PieceID]float64{pattern.Front: want.FrontLength, pattern.Back: want.BackLength} {
				d, _ := s.Dimension(piece, "neck")
				require.InDelta(t, length, d.Length.Inches(), near)
				d, _ = s.Dimension(piece, "shoulder")
				if want.Seam > 0 {
					require.InDelta(t, want.Seam, d.Length.Inches(), near)
					continue
				}
				require.InDelta(t, want.ShoulderLeft, d.Length.Inches(), near)
			}
			girth, _ := s.Girth("neck")
			require.InDelta(t, want.Girth, girth.Inches(), near)
			if want.OpeningLength == 0 {
				return
			}
			require.InDelta(t, want.OpeningLength, s.Known.Length("neck_opening_length").Inches(), near)
			line := drawnLine(s, pattern.Front, "neck_opening").Path
			if len(want.Drop) > 0 {
				samePath(t, want.Drop.Path(), line.Reverse(), "drop")
			} else {
				samePath(t, want.SlitStitch.Path(), line.Reverse(), "slit")
			}
		})
	}
}

// samePath compares two lines handle by handle.
func samePath(t *testing.T, want, got geom.Path, what string) {
	t.Helper()
	require.Len(t, got, len(want), what)
	for i := range want {
		w, g := want[i], got[i]
		for j, pair := range [][2]geom.Point{{w.A, g.A}, {w.B, g.B}, {w.C, g.C}, {w.D, g.D}} {
			if !w.Curved && (j == 1 || j == 2) {
				continue
			}
			require.InDelta(t, 0, pair[0].Dist(pair[1])/25.4, near, "%s part %d point %d: %v and %v", what, i, j, pair[0], pair[1])
		}
	}
}

// TestNeckRefusals: what cannot be worn or sewn is refused with a cure.
func TestNeckRefusals(t *testing.T) {
	for name, job := range map[string]pattern.Job{
		"long slit":    figure.Styled(t, map[pattern.ChoiceID]string{"front_neckline": "slit"}).WithStyle("neck_opening_length", pattern.LengthValue(figure.In(6.5))),
		"long keyhole": figure.Styled(t, map[pattern.ChoiceID]string{"front_neckline": "keyhole"}).WithStyle("neck_opening_length", pattern.LengthValue(figure.In(5.5))),
		"low v":        figure.Styled(t, map[pattern.ChoiceID]string{"front_neckline": "v"}).WithStyle("front_neck_depth", pattern.LengthValue(figure.In(9))),
		"narrow strip": figure.Styled(t, map[pattern.ChoiceID]string{"front_neckline": "square"}).WithStyle("neck_widening", pattern.LengthValue(figure.In(2.5))),
		"half funnel":  figure.Styled(t, map[pattern.ChoiceID]string{"front_neckline": "funnel", "back_neckline": "round"}),
		"shut funnel":  figure.Styled(t, map[pattern.ChoiceID]string{"front_neckline": "funnel", "closure": "zip_side"}),
		"funnel dart":  figure.Styled(t, map[pattern.ChoiceID]string{"front_neckline": "funnel", "bust_dart": "neck"}),
		"behind":       figure.Styled(t, map[pattern.ChoiceID]string{"back_neckline": "sweetheart"}),
	} {
		s := workroom.Draft(job)
		require.False(t, s.Complete, name)
		require.NotEmpty(t, s.Refused, name)
		require.NotEmpty(t, s.Refused[0].Cure.In(measure.In), name)
	}
}
