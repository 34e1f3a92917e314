package workroom_test

import (
	"math"
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/figure"

	"github.com/stretchr/testify/require"
)

func collaredJob(t testing.TB, kind, closure string) pattern.Job {
	return figure.Styled(t, map[pattern.ChoiceID]string{"collar": kind, "closure": closure}, "neck_widening", "front_neck_depth", "back_neck_depth")
}

// TestCollars holds the neck below a collar and each collar of P36 to their
// figures.
func TestCollars(t *testing.T) {
	type points map[string][2]float64
	var ref struct {
		Neck struct {
			Widening float64 `json:"widening"`
			Front    float64 `json:"front_depth"`
			Back     float64 `json:"back_depth"`
			Long     float64 `json:"front"`
			Behind   float64 `json:"back"`
		} `json:"neck"`
		Stand struct {
			Height float64 `json:"height"`
			Rise   float64 `json:"front_raise"`
			Neck   float64 `json:"neck_edge"`
			Top    float64 `json:"top_edge"`
			Points points  `json:"points"`
		} `json:"stand"`
		Convertible struct {
			Height float64 `json:"height"`
			Rise   float64 `json:"front_raise"`
			Neck   float64 `json:"neck_edge"`
			Points points  `json:"points"`
			End    float64 `json:"front_edge"`
			Outer  float64 `json:"outer_edge"`
			Under  float64 `json:"under_collar_outer"`
		} `json:"convertible"`
		Flat struct {
			Width     float64      `json:"width"`
			Lap       float64      `json:"overlap"`
			Neck      float64      `json:"neck_edge"`
			Outer     float64      `json:"outer_edge"`
			Centre    [2]float64   `json:"centre_back"`
			Direction [2]float64   `json:"centre_back_direction"`
			Curve     figure.Curve `json:"neck_curve"`
		} `json:"flat"`
	}
	figure.StylesP36(t).Group(t, "collars", &ref)
	w := &worst{t: t}
	draft := func(kind string) *pattern.Sheet {
		s := workroom.Draft(collaredJob(t, kind, "placket"))
		require.Empty(t, s.Refused, kind)
		require.True(t, s.Complete, kind)
		for _, f := range s.Findings {
			require.NotEqual(t, pattern.Fail, f.Verdict, "%s: %s", kind, f.Says.In(measure.In))
		}
		return s
	}
	long := func(s *pattern.Sheet, id pattern.PieceID, name string) float64 {
		d, ok := s.Dimension(id, name)
		require.True(t, ok, name)
		return d.Length.Inches()
	}
	marks := func(s *pattern.Sheet, want points) {
		for name, p := range want {
			mark := name
			if name == "front_point" {
				mark = "front_top"
			}
			at, ok := s.Point(pattern.Collar, mark)
			require.True(t, ok, name)
			w.point(p, at, name)
		}
	}

	s := draft("stand")
	w.number(ref.Neck.Widening, s.Known.Length("neck_widening").Inches(), "widening")
	w.number(ref.Neck.Front, s.Known.Length("front_neck_depth").Inches(), "front depth")
	w.number(ref.Neck.Back, s.Known.Length("back_neck_depth").Inches(), "back depth")
	w.number(ref.Neck.Long, long(s, pattern.Front, "neck"), "front neck")
	w.number(ref.Neck.Behind, long(s, pattern.Back, "neck"), "back neck")
	w.number(ref.Stand.Height, s.Known.Length("collar_height").Inches(), "stand")
	w.number(ref.Stand.Rise, s.Known.Length("collar_rise").Inches(), "stand")
	marks(s, ref.Stand.Points)
	w.number(ref.Stand.Neck, long(s, pattern.Collar, "neck"), "stand")
	w.number(ref.Stand.Top, long(s, pattern.Collar, "outer"), "stand")

	s = draft("convertible")
	w.number(ref.Convertible.Height, s.Known.Length("collar_height").Inches(), "convertible")
	w.number(ref.Convertible.Rise, s.Known.Length("collar_rise").Inches(), "convertible")
	marks(s, ref.Convertible.Points)
	w.number(ref.Convertible.Neck, long(s, pattern.Collar, "neck"), "convertible")
	w.number(ref.Convertible.Outer, long(s, pattern.Collar, "outer"), "convertible")
	w.number(ref.Convertible.End, long(s, pattern.Collar, "end"), "convertible")
	under, _ := s.Piece(pattern.UnderCollar)
	w.number(ref.Convertible.Under, under.Along("outer").Inches(), "under collar")

	s = draft("flat")
	w.number(ref.Flat.Width, s.Known.Length("collar_height").Inches(), "flat")
	w.number(ref.Flat.Lap, s.Known.Length("collar_lap").Inches(), "flat")
	w.number(ref.Flat.Neck, long(s, pattern.Collar, "neck"), "flat")
	// The figure of its outer edge was measured on a polygon, which is shorter:
	// a parallel is longer than its line by its distance times the turn.
	neck := drawnLine(s, pattern.Collar, "neck").Path
	turned := math.Atan2(neck.StartTangent().Cross(neck.EndTangent()), neck.StartTangent().Dot(neck.EndTangent()))
	w.number(ref.Flat.Neck+float64(ref.Flat.Width*turned), long(s, pattern.Collar, "outer"), "flat")
	require.InDelta(t, ref.Flat.Outer, long(s, pattern.Collar, "outer"), 0.015)
	// The figures lie on the front; the collar has a frame of its own.
	turn := math.Atan2(-1, 0) - math.Atan2(ref.Flat.Direction[1], ref.Flat.Direction[0])
	own := geom.Move(point(ref.Flat.Centre).To(geom.Point{})).Then(geom.TurnAbout(geom.Point{}, turn))
	w.path(ref.Flat.Curve.Path().Transform(own), drawnLine(s, pattern.Collar, "neck").Path, "flat")
	w.said()
}

// TestCollarsOpenBehind: with a zip behind a stand lies on the fold in front,
// and a flat collar is cut in two halves; each is as long as the neck.
func TestCollarsOpenBehind(t *testing.T) {
	for kind, cut := range map[string]pattern.CutKind{"stand": pattern.OnFold, "flat": pattern.Pair} {
		s := workroom.Draft(collaredJob(t, kind, "zip_back"))
		require.Empty(t, s.Refused, kind)
		require.True(t, s.Complete, kind)
		sound(t, s, kind)
		p, ok := s.Piece(pattern.Collar)
		require.True(t, ok)
		require.Equal(t, cut, p.Cut, kind)
		require.Contains(t, p.Also, "interfacing")
		front, _ := s.Dimension(pattern.Front, "neck")
		shoulder, _ := s.Point(pattern.Collar, "shoulder")
		to, _, _ := drawnLine(s, pattern.Collar, "neck").Path.Nearest(shoulder)
		require.InDelta(t, front.Length.MM(), to, 2, "%s: the front's part comes first", kind)
		for _, f := range s.Findings {
			require.NotEqual(t, pattern.Fail, f.Verdict, f.Says.In(measure.In))
		}
	}
}

// TestPlacket: the front stays on the fold below the opening, its bands fit it
// and are buttoned at the bust line. A book of shirts asks a placket for half
// of what a head of 22 is larger than a neck of 20: 1, and cloth wants an inch
// more.
func TestPlacket(t *testing.T) {
	s := workroom.Draft(collaredJob(t, "none", "placket"))
	require.True(t, s.Complete)
	front, _ := s.Piece(pattern.Front)
	require.Equal(t, pattern.OnFold, front.Cut)
	band, ok := s.Piece(pattern.Placket)
	require.True(t, ok)
	require.Equal(t, 2, band.Count)
	bust, _ := s.Point(pattern.Front, "bust_point")
	nearest := math.Inf(1)
	for i, h := range band.Holes {
		nearest = math.Min(nearest, math.Abs(h.Y-bust.Y))
		if i > 0 {
			require.InDelta(t, band.Holes[1].Y-band.Holes[0].Y, h.Y-band.Holes[i-1].Y, 1e-6)
		}
	}
	require.InDelta(t, 0, nearest, 1e-6)
	facing, _ := s.Piece(pattern.FrontNeckFacing)
	require.Equal(t, pattern.Pair, facing.Cut, "it ends at the placket")
	require.Zero(t, s.Known.Length("zip_length"))

	loose := collaredJob(t, "none", "placket").WithStyle("ease_waist", pattern.LengthValue(figure.In(10))).WithStyle("side_waist_limit", pattern.LengthValue(0))
	s = workroom.Draft(loose)
	ring, _ := s.Girth("neck")
	s = workroom.Draft(loose.WithBody(measure.HeadGirth, ring+figure.In(10)))
	require.InDelta(t, 10.0/2+1, s.Known.Length("placket_length").Inches(), 0.125)
	for _, head := range []float64{22, 20} {
		s = workroom.Draft(loose.WithBody(measure.HeadGirth, figure.In(head)))
		require.InDelta(t, 5, s.Known.Length("placket_length").Inches(), near, "no less")
	}
}

// TestCollarRefusals: what a collar or a placket cannot go with is refused
// with a cure.
func TestCollarRefusals(t *testing.T) {
	with := func(picks map[pattern.ChoiceID]string) pattern.Job {
		return figure.Styled(t, picks, "neck_widening", "front_neck_depth", "back_neck_depth")
	}
	for input, job := range map[string]pattern.Job{
		"front_neckline": with(map[pattern.ChoiceID]string{"collar": "stand", "front_neckline": "v"}),
		"back_neckline":  with(map[pattern.ChoiceID]string{"collar": "flat", "back_neckline": "square"}),
		"closure":        with(map[pattern.ChoiceID]string{"collar": "convertible", "closure": "zip_back"}),
		"collar_height":  with(map[pattern.ChoiceID]string{"collar": "stand"}).WithStyle("collar_height", pattern.LengthValue(figure.In(6))),
		"collar_rise":    with(map[pattern.ChoiceID]string{"collar": "stand"}).WithStyle("collar_rise", pattern.LengthValue(figure.In(4))),
		"collar_lap":     with(map[pattern.ChoiceID]string{"collar": "flat"}).WithStyle("collar_lap", pattern.LengthValue(figure.In(3))),
		"placket_length": with(map[pattern.ChoiceID]string{"closure": "placket"}).WithStyle("placket_length", pattern.LengthValue(figure.In(36))),
	} {
		s := workroom.Draft(job)
		require.False(t, s.Complete, input)
		require.NotEmpty(t, s.Refused, input)
		require.Equal(t, input, s.Refused[0].Input)
		require.NotEmpty(t, s.Refused[0].Cure.In(measure.In), input)
	}
	s := workroom.Draft(with(map[pattern.ChoiceID]string{"collar": "stand", "closure": "zip_side"}))
	require.Equal(t, "closure", s.Refused[0].Input)
}
