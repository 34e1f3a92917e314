package workroom_test

import (
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/ansur"
	"chalkfold/testdata/figure"

	"github.com/stretchr/testify/require"
)

func girthOf(t *testing.T, s *pattern.Sheet, name string) float64 {
	t.Helper()
	g, ok := s.Girth(name)
	require.True(t, ok, name)
	return g.Inches()
}

func lengthOf(t *testing.T, s *pattern.Sheet, piece pattern.PieceID, name string) float64 {
	t.Helper()
	d, ok := s.Dimension(piece, name)
	require.True(t, ok, name)
	return d.Length.Inches()
}

func codes(s *pattern.Sheet) map[string]pattern.Finding {
	out := map[string]pattern.Finding{}
	for _, f := range s.Findings {
		if f.Code != "" {
			out[f.Code] = f
		}
	}
	return out
}

// TestLargeCup holds front and back shares of P36 with an upper chest of 33
// to their figures: first without the pinch, then as drafted.
func TestLargeCup(t *testing.T) {
	var ref struct {
		Front, Back map[string][2]float64
		ArmF        float64 `json:"armhole_front"`
		ArmB        float64 `json:"armhole_back"`
		Armhole     float64 `json:"armhole"`
		Bust        float64 `json:"bust_girth"`
		Waist       float64 `json:"waist_girth"`
		Hem         float64 `json:"hem_girth"`
		SideF       float64 `json:"side_front"`
		SideB       float64 `json:"side_back"`
		Leg         float64 `json:"dart_leg"`
		Pinch       map[string]struct {
			Underarm [2]float64 `json:"underarm_front"`
			Upper    [2]float64 `json:"dart_upper"`
			Tip      [2]float64 `json:"dart_tip"`
			Intake   float64    `json:"dart_intake"`
			Front    float64    `json:"front_armhole"`
		} `json:"pinch"`
		Default float64 `json:"pinch_default"`
		Pinched struct {
			Armhole float64 `json:"armhole"`
			Angle   float64 `json:"dart_angle_at_tip"`
		} `json:"pinched"`
	}
	var file figure.Styles
	figure.Read(t, "block-p36.json", &file)
	file.Group(t, "large_cup", &ref)
	cup := figure.Styled(t, nil).WithBody(measure.UpperChestGirth, figure.In(33))
	plain := workroom.Draft(cup.WithStyle("armhole_pinch", pattern.LengthValue(0)))
	require.Empty(t, plain.Refused)
	names := map[string]string{
		"U": "underarm", "M": "armhole_mid", "W": "waist", "H": "hip", "E": "hem_side", "D1": "dart_upper", "D2": "dart_lower", "T": "dart_tip",
	}
	for piece, points := range map[pattern.PieceID]map[string][2]float64{pattern.Front: ref.Front, pattern.Back: ref.Back} {
		for short, at := range points {
			samePoint(t, plain, piece, names[short], at)
		}
	}
	for what, c := range map[string][2]float64{
		"armhole front": {ref.ArmF, lengthOf(t, plain, pattern.Front, "armhole")}, "armhole back": {ref.ArmB, lengthOf(t, plain, pattern.Back, "armhole")},
		"side front": {ref.SideF, lengthOf(t, plain, pattern.Front, "side")}, "side back": {ref.SideB, lengthOf(t, plain, pattern.Back, "side")},
		"leg": {ref.Leg, lengthOf(t, plain, pattern.Front, "dart_leg")}, "bust": {ref.Bust, girthOf(t, plain, "bust")},
		"armhole": {ref.Armhole, girthOf(t, plain, "armhole")}, "waist": {ref.Waist, girthOf(t, plain, "waist")}, "hem": {ref.Hem, girthOf(t, plain, "hem")},
	} {
		require.InDelta(t, c[0], c[1], near, what)
	}
	for text, want := range ref.Pinch {
		l, err := measure.Read(text, measure.In)
		require.NoError(t, err)
		s := workroom.Draft(cup.WithStyle("armhole_pinch", pattern.LengthValue(l)))
		samePoint(t, s, pattern.Front, "underarm_pinched", want.Underarm)
		samePoint(t, s, pattern.Front, "dart_upper", want.Upper)
		samePoint(t, s, pattern.Front, "dart_tip", want.Tip)
		require.InDelta(t, want.Intake, lengthOf(t, s, pattern.Front, "dart_intake"), near, text)
		require.InDelta(t, want.Front, lengthOf(t, s, pattern.Front, "armhole"), near, text)
	}
	s := workroom.Draft(cup)
	sound(t, s, "large cup")
	require.InDelta(t, ref.Default, s.Known.Length("armhole_pinch").Inches(), 1e-9)
	require.InDelta(t, ref.Pinched.Armhole, girthOf(t, s, "armhole"), near)
	require.NotContains(t, codes(s), "dart_big")
	require.NotContains(t, codes(s), "cup_large")
	front, _ := s.Piece(pattern.Front)
	require.InDelta(t, ref.Pinched.Angle, front.Darts[0].Degrees, 0.02)
}

// TestLargeCupP44: the figures stated for P44 with an upper chest of 41, and
// the advice on its dart.
func TestLargeCupP44(t *testing.T) {
	job := worked("P44", []float64{44, 37, 46, 16, 16.25, 1.625, 8.5, 16.75, 19.5}).WithBody(measure.UpperChestGirth, figure.In(41))
	job.Style = job.Style.With("dart_tip_back", pattern.LengthValue(figure.In(1.5)))
	s := workroom.Draft(job)
	require.True(t, s.Complete)
	require.InDelta(t, 0.625, s.Known.Length("armhole_pinch").Inches(), 1e-9)
	require.InDelta(t, 19.16, girthOf(t, s, "armhole"), 0.006)
	require.InDelta(t, 2.82, lengthOf(t, s, pattern.Front, "dart_intake"), 0.006)
	require.InDelta(t, 0.26, lengthOf(t, s, pattern.Front, "armhole")-lengthOf(t, s, pattern.Back, "armhole"), 0.006)
	require.Contains(t, codes(s), "dart_big")
	front, _ := s.Piece(pattern.Front)
	require.InDelta(t, 25, front.Darts[0].Degrees, 0.06)
}

// TestLargeCupOnlyWhereMeasured: a proposal, a small difference and "off"
// leave equal quarters; far too large a share is advised on.
func TestLargeCupOnlyWhereMeasured(t *testing.T) {
	usual := figure.Styled(t, nil)
	want := workroom.Draft(usual)
	for name, job := range map[string]pattern.Job{
		"small": usual.WithBody(measure.UpperChestGirth, figure.In(34)),
		"off":   usual.WithBody(measure.UpperChestGirth, figure.In(33)).WithStyle("large_cup", pattern.PickValue("off")),
	} {
		require.Equal(t, want.Pieces, workroom.Draft(job).Pieces, name)
	}
	far := codes(workroom.Draft(usual.WithBody(measure.UpperChestGirth, figure.In(32))))
	require.Contains(t, far, "cup_large")
	require.Equal(t, pattern.Advise, far["cup_large"].Verdict)
	require.NotEmpty(t, far["cup_large"].Cure.In(measure.In))
}

// TestLargeCupOnWomen gives women of the survey, who have no upper chest, one
// that is less than their bust by 2 1/2 to 4 in: what is drafted is sound.
func TestLargeCupOnWomen(t *testing.T) {
	women := ansur.Load(t)
	refused, drafted := 0, 0
	for i := 0; i < len(women); i += everyWoman {
		bust, _ := women[i].Body.Get(measure.BustGirth)
		less := 2.5 + 1.5*float64(i%5)/4
		s := workroom.Draft(jobOf(women[i], pattern.Measured).WithBody(measure.UpperChestGirth, bust-figure.In(less)))
		drafted++
		if len(s.Refused) > 0 {
			refused++
			t.Logf("row %d: %s %s", women[i].Row, s.Refused[0].Code, s.Refused[0].Says.In(measure.In))
			continue
		}
		sound(t, s, "large cup")
		for _, f := range s.Findings {
			require.NotEqual(t, pattern.Fail, f.Verdict, "row %d: %s %s", women[i].Row, f.Code, f.Says.In(measure.In))
		}
	}
	require.LessOrEqual(t, refused, drafted/20)
}
