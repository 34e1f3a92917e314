package workroom_test

import (
	"math"
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/figure"

	"github.com/stretchr/testify/require"
)

// names maps the lengths of the reference files to ours.
var lengthNames = map[string]string{
	"neck_len": "neck", "shoulder_len": "shoulder", "armhole_len": "armhole", "waist_dart_available": "waist_spare",
	"hem_quarter": "hem", "dart_intake": "dart_intake", "dart_leg": "dart_leg", "dart_angle_deg": "dart_angle", "side_seam": "side",
}

// TestReference holds both methods to figure P36, worked out by arithmetic
// beside the program: every point and length.
func TestReference(t *testing.T) {
	for method, limit := range map[string]float64{pattern.Measured: 0.002, pattern.Thumb: 0.01} {
		t.Run(method, func(t *testing.T) {
			d := figure.P36(t, method)
			s := workroom.Draft(d.Job(method))
			require.True(t, s.Complete)
			for piece, half := range map[pattern.PieceID]figure.Half{pattern.Front: d.Result.Front, pattern.Back: d.Result.Back} {
				compareHalf(t, s, piece, half, limit, false)
				if half.Sewn != nil {
					compareHalf(t, s, piece, *half.Sewn, limit, true)
				}
			}
			for _, name := range []string{"neck", "armhole", "bust", "waist", "hip", "hem"} {
				got, ok := s.Girth(name)
				require.True(t, ok, name)
				require.InDelta(t, d.Result.Checks[name+"_girth"], got.Inches(), limit, name)
			}
		})
	}
}

func compareHalf(t *testing.T, s *pattern.Sheet, piece pattern.PieceID, half figure.Half, limit float64, sewn bool) {
	t.Helper()
	point, dimension := s.Point, s.Dimension
	if sewn {
		point, dimension = s.SewnPoint, s.SewnDimension
	}
	for name, want := range half.Points {
		at, ok := point(piece, name)
		require.True(t, ok, "%s %s", piece, name)
		require.InDelta(t, want[0], at.X/25.4, limit, "%s %s out", piece, name)
		require.InDelta(t, want[1], at.Y/25.4, limit, "%s %s down", piece, name)
	}
	for name, want := range half.Lengths {
		ours := name
		if n, ok := lengthNames[name]; ok {
			ours = n
		}
		d, ok := dimension(piece, ours)
		require.True(t, ok, "%s %s", piece, ours)
		if d.Angle {
			require.InDelta(t, want, d.Degrees, 0.02, "%s %s", piece, name)
			continue
		}
		require.InDelta(t, want, d.Length.Inches(), limit, "%s %s", piece, name)
	}
}

// TestDrawnSide holds the curved side to its own reference, 0.002 in.
func TestDrawnSide(t *testing.T) {
	type curve struct {
		HipAt     map[string][2]float64 `json:"hip_at"`
		WaistAt   map[string][2]float64 `json:"waist_at"`
		Side      float64               `json:"side"`
		SideDrawn float64               `json:"side_drawn"`
		Sewn      struct {
			SideDrawn float64 `json:"side_drawn"`
		} `json:"sewn"`
	}
	var ref map[string]any
	var file struct {
		Measured map[pattern.PieceID]curve `json:"measured"`
		Thumb    map[pattern.PieceID]curve `json:"thumb"`
	}
	figure.Read(t, "side-p36.json", &ref)
	figure.Read(t, "side-p36.json", &file)
	for method, halves := range map[string]map[pattern.PieceID]curve{pattern.Measured: file.Measured, pattern.Thumb: file.Thumb} {
		s := workroom.Draft(figure.P36(t, method).Job(method))
		for piece, want := range halves {
			d, _ := s.Dimension(piece, "side_drawn")
			require.InDelta(t, want.SideDrawn, d.Length.Inches(), 0.002, "%s %s", method, piece)
			line := drawnLine(s, piece, "side")
			for name, p := range want.WaistAt {
				require.Less(t, nearest(line, p), 0.002, "%s %s waist %s", method, piece, name)
			}
			for _, name := range []string{"half", "three_quarters", "end"} {
				require.Less(t, nearest(line, want.HipAt[name]), 0.002, "%s %s hip %s", method, piece, name)
			}
			if want.Sewn.SideDrawn != 0 {
				sewn, _ := s.SewnDimension(piece, "side_drawn")
				require.InDelta(t, want.Sewn.SideDrawn, sewn.Length.Inches(), 0.002)
			}
		}
	}
}

// TestWorkedTables holds two more made-up bodies to the figures of a draft
// worked by hand: P32 and P44, with their stated options.
func TestWorkedTables(t *testing.T) {
	rows := []struct {
		name                                                              string
		body                                                              []float64 // B W H N AS SD AD BL FL AF AB BPD BS HD tipback
		neck                                                              [2]float64
		armhole                                                           [2]float64
		neckGirth, armholeGirth, shoulder, tipX, tipY, leg, angle, sf, sb float64
	}{
		{"P32", []float64{32, 25, 35, 13.5, 14.25, 1.5, 7, 15.5, 16.75}, [2]float64{5.792, 4.143}, [2]float64{7.133, 7.262}, 19.87, 14.40, 2.832, 4.374, 9.447, 4.024, 7.12, 31.319, 31.315},
		{"P44", []float64{44, 37, 46, 16, 16.25, 1.625, 8.5, 16.75, 19.5}, [2]float64{6.134, 4.544}, [2]float64{9.955, 10.049}, 21.36, 20.00, 3.429, 5.749, 11.695, 5.778, 19.93, 32.753, 32.740},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			s := workroom.Draft(worked(r.name, r.body))
			require.True(t, s.Complete)
			get := func(p pattern.PieceID, n string) float64 { d, _ := s.Dimension(p, n); return d.Length.Inches() }
			require.InDelta(t, r.neck[0], get(pattern.Front, "neck"), 0.001)
			require.InDelta(t, r.neck[1], get(pattern.Back, "neck"), 0.001)
			require.InDelta(t, r.armhole[0], get(pattern.Front, "armhole"), 0.002)
			require.InDelta(t, r.armhole[1], get(pattern.Back, "armhole"), 0.002)
			require.InDelta(t, r.shoulder, get(pattern.Front, "shoulder"), 0.001)
			ng, _ := s.Girth("neck")
			require.InDelta(t, r.neckGirth, ng.Inches(), 0.006)
			ag, _ := s.Girth("armhole")
			require.InDelta(t, r.armholeGirth, ag.Inches(), 0.006)
			require.InDelta(t, r.leg, get(pattern.Front, "dart_leg"), 0.002)
			angle, _ := s.Dimension(pattern.Front, "dart_angle")
			require.InDelta(t, r.angle, angle.Degrees, 0.02)
			tip, _ := s.Point(pattern.Front, "dart_tip")
			require.InDelta(t, r.tipX, tip.X/25.4, 0.002)
			require.InDelta(t, r.tipY, tip.Y/25.4, 0.002)
			require.InDelta(t, r.sf, get(pattern.Front, "side"), 0.002)
			require.InDelta(t, r.sb, get(pattern.Back, "side"), 0.002)
		})
	}
}

// worked makes the two other bodies; what the tables leave out was the same
// arithmetic's input.
func worked(name string, b []float64) pattern.Job {
	in := figure.In
	more := map[string][]float64{"P32": {11.75, 12.5, 9.5, 6.75, 7.5, 1, 38}, "P44": {14.25, 15.25, 11.75, 8.5, 8.5, 1.5, 41}}[name]
	body := map[measure.ID]measure.Length{
		measure.BustGirth: in(b[0]), measure.WaistGirth: in(b[1]), measure.HipGirth: in(b[2]), measure.NeckBaseGirth: in(b[3]),
		measure.AcrossShoulders: in(b[4]), measure.ShoulderDrop: in(b[5]), measure.BackNeckToWaist: in(b[7]), measure.SideNeckToWaist: in(b[8]),
		measure.AcrossFront: in(more[0]), measure.AcrossBack: in(more[1]), measure.SideNeckToBustPoint: in(more[2]),
		measure.BustPointDistance: in(more[3]), measure.WaistToHip: in(more[4]),
	}
	style := map[pattern.ChoiceID]pattern.Value{}
	for id, x := range map[pattern.ChoiceID]float64{
		"armhole_depth": b[6], "length": more[6], "neck_widening": 1, "shoulder_inset": 0.75, "side_dart_below": 2,
		"dart_tip_back": more[5], "ease_hip": 2,
	} {
		style[id] = pattern.LengthValue(in(x))
	}
	return pattern.Job{Body: measure.NewBody(body), Style: pattern.NewStyle(style)}
}

func drawnLine(s *pattern.Sheet, piece pattern.PieceID, name string) pattern.Mark {
	for _, m := range s.Marks {
		if m.Piece == piece && m.Name == name && m.Kind == pattern.MarkLine && m.Gone == 0 {
			return m
		}
	}
	return pattern.Mark{}
}

func nearest(m pattern.Mark, p [2]float64) float64 {
	_, at, _ := m.Path.Nearest(point(p))
	return math.Hypot(at.X/25.4-p[0], at.Y/25.4-p[1])
}
