package workroom_test

import (
	"math"
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/figure"

	"github.com/stretchr/testify/require"
)

// samePoint holds a point to its figure, inches.
func samePoint(t *testing.T, s *pattern.Sheet, piece pattern.PieceID, name string, want [2]float64) {
	t.Helper()
	at, ok := s.Point(piece, name)
	require.True(t, ok, name)
	require.InDelta(t, want[0], at.X/25.4, near, "%s out", name)
	require.InDelta(t, want[1], at.Y/25.4, near, "%s down", name)
}

// TestTurnedDarts holds the dart in each place to its figures.
func TestTurnedDarts(t *testing.T) {
	var ref map[string]struct {
		Fixed     [2]float64   `json:"leg_fixed"`
		Moved     [2]float64   `json:"leg_turned"`
		Tip       [2]float64   `json:"tip"`
		Cap       [2]float64   `json:"cap"`
		Underarm  *[2]float64  `json:"underarm"`
		Intake    float64      `json:"intake"`
		Leg       float64      `json:"leg"`
		Angle     float64      `json:"angle_at_tip"`
		SideSewn  float64      `json:"side_sewn"`
		Trued     figure.Curve `json:"side_trued"`
		TruedLess float64      `json:"side_trued_change"`
	}
	figure.StylesP36(t).Group(t, "bust_dart", &ref)
	for _, place := range []string{"side", "french", "armhole", "shoulder", "neck"} {
		t.Run(place, func(t *testing.T) {
			want := ref[place]
			s := workroom.Draft(figure.Styled(t, map[pattern.ChoiceID]string{"bust_dart": place}))
			require.Empty(t, s.Refused)
			require.True(t, s.Complete)
			fixed, moved := "dart_fixed", "dart_moved"
			if place == "side" {
				fixed, moved = "dart_lower", "dart_upper"
			}
			samePoint(t, s, pattern.Front, fixed, want.Fixed)
			samePoint(t, s, pattern.Front, moved, want.Moved)
			samePoint(t, s, pattern.Front, "dart_tip", want.Tip)
			samePoint(t, s, pattern.Front, "dart_cap", want.Cap)
			if want.Underarm != nil {
				samePoint(t, s, pattern.Front, "underarm_turned", *want.Underarm)
			}
			front, _ := s.Piece(pattern.Front)
			require.Len(t, front.Darts, 1)
			d := front.Darts[0]
			require.InDelta(t, want.Intake, d.Intake.Inches(), near)
			require.InDelta(t, want.Leg, d.Leg.Inches(), near)
			require.InDelta(t, want.Angle, d.Degrees, 0.02)
			require.InDelta(t, d.Tip.Dist(d.Legs[0]), d.Tip.Dist(d.Legs[1]), 0.02)
			if place == "side" {
				return
			}
			waist, _ := s.Point(pattern.Front, "waist")
			side, drawn := s.Dimension(pattern.Front, "side")
			require.True(t, drawn)
			hip, _ := s.Point(pattern.Front, "hip")
			end, _ := s.Point(pattern.Front, "hem_side")
			require.InDelta(t, want.SideSewn, (side.Length.MM()-waist.Dist(hip)-hip.Dist(end))/25.4, near)
			curve := want.Trued.Path()
			line := drawnLine(s, pattern.Front, "side").Path
			if place == "french" {
				line = drawnLine(s, pattern.Front, "side_upper").Path
			}
			samePath(t, curve[:2], line[:2], "side")
		})
	}
}

// TestTurnKeepsTheArea: what turns about the bust point neither grows nor
// shrinks, so the closed front has its area wherever the dart opens.
func TestTurnKeepsTheArea(t *testing.T) {
	s := workroom.Draft(figure.Styled(t, nil))
	at := func(name string) geom.Point { p, _ := s.Point(pattern.Front, name); return p }
	line := func(name string) geom.Path { return drawnLine(s, pattern.Front, name).Path }
	b := detail.Bust{
		Point: at("bust_point"), Neck: line("neck"), Shoulder: line("shoulder"), Armhole: line("armhole"),
		Underarm: at("underarm"), Waist: at("waist"), Upper: at("dart_upper"), Left: line("shoulder").Length(), FrenchRise: figure.In(2), NeckFrom: figure.In(1.5),
	}.AtBust(figure.In(1), at("underarm").Dist(geom.Point{X: at("waist").X, Y: at("waist").Y - 25.4}))
	closed := func(path geom.Path) float64 {
		foot := geom.Lines(at("waist"), at("hip"), at("hem_side"), at("hem_centre"), line("neck").Start())
		return math.Abs(path.Then(foot).Outline(0.001).Area())
	}
	straight := geom.Lines
	before := closed(b.Neck.Then(b.Shoulder).Then(b.Armhole).Then(straight(b.Underarm, b.Upper, b.Point, b.Lower, b.Waist)))
	for place, after := range map[string]func(detail.Turned) geom.Path{
		"french": func(t detail.Turned) geom.Path {
			return b.Neck.Then(b.Shoulder).Then(b.Armhole).Then(straight(b.Underarm, b.Upper, t.Moved, b.Point, t.Fixed, b.Waist))
		},
		"armhole": func(t detail.Turned) geom.Path {
			return b.Neck.Then(b.Shoulder).Then(t.Before).Then(straight(t.Fixed, b.Point, t.Moved)).Then(t.After).Then(straight(t.Underarm, b.Lower, b.Waist))
		},
		"shoulder": func(t detail.Turned) geom.Path {
			return b.Neck.Then(t.Before).Then(straight(t.Fixed, b.Point, t.Moved)).Then(t.After).Then(t.Armhole).Then(straight(t.Underarm, b.Lower, b.Waist))
		},
		"neck": func(t detail.Turned) geom.Path {
			return t.Before.Then(straight(t.Fixed, b.Point, t.Moved)).Then(t.After).Then(t.Shoulder).Then(t.Armhole).Then(straight(t.Underarm, b.Lower, b.Waist))
		},
	} {
		require.InDelta(t, before, closed(after(b.Turn(place))), 0.5, place)
	}
}

// TestCutIn holds the cut-in armhole with its pinch to its figures.
func TestCutIn(t *testing.T) {
	var ref struct {
		Left     float64               `json:"left"`
		Inset    float64               `json:"inset"`
		Front    map[string][2]float64 `json:"front"`
		Back     map[string][2]float64 `json:"back"`
		BackArm  float64               `json:"back_armhole"`
		FrontArm float64               `json:"front_armhole"`
		Underarm [2]float64            `json:"underarm_front"`
		Upper    [2]float64            `json:"dart_upper"`
		Lower    [2]float64            `json:"dart_lower"`
		Tip      [2]float64            `json:"dart_tip"`
		Cap      [2]float64            `json:"dart_cap"`
		Intake   float64               `json:"dart_intake"`
		Curve    figure.Curve          `json:"front_curve"`
		Girth    float64               `json:"armhole_girth"`
	}
	figure.StylesP36(t).Group(t, "cut_in", &ref)
	s := workroom.Draft(figure.Styled(t, map[pattern.ChoiceID]string{"armhole_shape": "cut_in"}, "shoulder_inset"))
	require.Empty(t, s.Refused)
	require.True(t, s.Complete)
	require.InDelta(t, ref.Inset, s.Known.Length("shoulder_inset").Inches(), near)
	for piece, points := range map[pattern.PieceID]map[string][2]float64{pattern.Front: ref.Front, pattern.Back: ref.Back} {
		for short, name := range map[string]string{"N": "neck_point", "S": "shoulder_end", "M": "armhole_mid", "U": "underarm"} {
			samePoint(t, s, piece, name, points[short])
		}
	}
	samePoint(t, s, pattern.Front, "underarm_pinched", ref.Underarm)
	samePoint(t, s, pattern.Front, "dart_upper", ref.Upper)
	samePoint(t, s, pattern.Front, "dart_lower", ref.Lower)
	samePoint(t, s, pattern.Front, "dart_tip", ref.Tip)
	samePoint(t, s, pattern.Front, "dart_cap", ref.Cap)
	samePath(t, ref.Curve.Path(), drawnLine(s, pattern.Front, "armhole").Path, "armhole")
	for piece, want := range map[pattern.PieceID]float64{pattern.Front: ref.FrontArm, pattern.Back: ref.BackArm} {
		d, _ := s.Dimension(piece, "armhole")
		require.InDelta(t, want, d.Length.Inches(), near)
	}
	girth, _ := s.Girth("armhole")
	require.InDelta(t, ref.Girth, girth.Inches(), near)
	d, _ := s.Dimension(pattern.Front, "dart_intake")
	require.InDelta(t, ref.Intake, d.Length.Inches(), near)
}

// TestArmholeScoop holds the scooped armhole to its figures.
func TestArmholeScoop(t *testing.T) {
	var ref map[string]struct {
		Curve figure.Curve `json:"front_curve"`
		Girth float64      `json:"armhole_girth"`
	}
	figure.StylesP36(t).Group(t, "armhole_scoop", &ref)
	for percent, n := range map[string]float64{"5": 5, "10": 10, "15": 15} {
		s := workroom.Draft(figure.Styled(t, nil).WithStyle("armhole_scoop", pattern.NumberValue(pattern.KindPercent, n)))
		samePath(t, ref[percent].Curve.Path(), drawnLine(s, pattern.Front, "armhole").Path, percent)
		girth, _ := s.Girth("armhole")
		require.InDelta(t, ref[percent].Girth, girth.Inches(), near)
	}
}

// TestDartRefusals: a dart that cannot be turned, a pinch or a scoop too
// large are refused with a cure.
func TestDartRefusals(t *testing.T) {
	flat := figure.Styled(t, map[pattern.ChoiceID]string{"bust_dart": "shoulder"}).WithBody(measure.SideNeckToWaist, figure.In(16))
	for name, job := range map[string]pattern.Job{
		"no dart":  flat,
		"waist":    figure.Styled(t, map[pattern.ChoiceID]string{"bust_dart": "waist"}),
		"split":    figure.Styled(t, map[pattern.ChoiceID]string{"bust_dart": "side_and_waist"}),
		"centre":   figure.Styled(t, map[pattern.ChoiceID]string{"bust_dart": "centre_front"}),
		"strap":    figure.Styled(t, map[pattern.ChoiceID]string{"bust_dart": "shoulder", "armhole_shape": "cut_in"}, "shoulder_inset"),
		"no pinch": flat.WithoutStyle("bust_dart").WithStyle("armhole_pinch", pattern.LengthValue(figure.In(0.5))),
		"pinch":    figure.Styled(t, nil).WithStyle("armhole_pinch", pattern.LengthValue(figure.In(3))),
		"scoop":    figure.Styled(t, nil).WithStyle("armhole_scoop", pattern.NumberValue(pattern.KindPercent, 60)),
		"high":     figure.Styled(t, map[pattern.ChoiceID]string{"bust_dart": "french"}).WithStyle("french_dart_rise", pattern.LengthValue(figure.In(7))),
		"far":      figure.Styled(t, map[pattern.ChoiceID]string{"bust_dart": "neck"}).WithStyle("neck_dart_start", pattern.LengthValue(figure.In(7))),
	} {
		s := workroom.Draft(job)
		require.False(t, s.Complete, name)
		require.NotEmpty(t, s.Refused, name)
		require.NotEmpty(t, s.Refused[0].Cure.In(measure.In), name)
	}
}
