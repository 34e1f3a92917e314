package truing

import (
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

const (
	front = pattern.Front
	back  = pattern.Back
)

// Every check passes on the trial sheet; here is what makes it speak.
var faults = []struct {
	check, code string
	verdict     pattern.Verdict
	change      func(*trial)
	after       func(*pattern.Sheet)
}{
	{"side_seams", "side_seams", pattern.Advise, func(t *trial) { t.moved(back, "hem_side", 0, 0.1) }, nil},
	{"side_seams", "side_seams", pattern.Fail, func(t *trial) { t.moved(back, "hem_side", 0, -0.2) }, nil},
	{"shoulder_seams", "shoulder_seams", pattern.Fail, func(t *trial) { t.moved(back, "shoulder_end", -0.2, -0.06) }, nil},
	{"shoulder_seams", "shoulder_seams", pattern.Advise, func(t *trial) { t.moved(back, "shoulder_end", 0.2, 0.06) }, nil},
	{"shoulder_seams", "shoulder_line", pattern.Advise, func(t *trial) { t.body[measure.ShoulderLength] = 6.5 }, nil},
	{"shoulder_seams", "shoulder_line", pattern.Advise, func(t *trial) { t.body[measure.ShoulderLength] = 4 }, nil},
	{"dart_legs", "dart_legs", pattern.Fail, func(t *trial) { t.moved(front, "dart_lower", 0.1, 0) }, nil},
	{"dart_legs", "dart_legs", pattern.Advise, func(t *trial) { t.moved(front, "dart_lower", 0.045, 0) }, nil},
	{"dart_legs", "dart_cap", pattern.Fail, func(t *trial) { t.moved(front, "dart_cap", 0.1, 0) }, nil},
	{"dart_legs", "dart_cap", pattern.Fail, nil, func(s *pattern.Sheet) { s.Pieces[0].Darts[0].Cap = s.Pieces[0].Darts[0].Legs[1] }},
	{"dart_aim", "dart_droops", pattern.Advise, func(t *trial) { t.moved(front, "dart_tip", 0, 0.8) }, nil},
	{"dart_aim", "dart_off", pattern.Advise, func(t *trial) { t.moved(front, "bust_point", 0, 1) }, nil},
	{"dart_aim", "dart_off", pattern.Advise, func(t *trial) { t.moved(front, "dart_tip", -1.1, 0) }, nil},
	{"dart_aim", "bust_line_high", pattern.Advise, func(t *trial) { t.moved(front, "bust_point", 0, -2.3) }, nil},
	{"dart_size", "dart_least", pattern.Advise, func(t *trial) { t.body[measure.SideNeckToWaist] = 17 }, nil},
	{"dart_size", "dart_least", pattern.Advise, func(t *trial) { t.body[measure.SideNeckToWaist] = 16.6 }, nil},
	{"dart_size", "dart_big", pattern.Advise, func(t *trial) { t.moved(front, "dart_lower", 0, 1.6) }, nil},
	{"dart_size", "dart_sharp", pattern.Advise, func(t *trial) { t.moved(front, "dart_lower", 0, 0.7) }, nil},
	{"dart_size", "dart_none", pattern.Advise, func(t *trial) { undarted(t); t.body[measure.SideNeckToWaist] = 16.4 }, nil},
	{"neck_join", "neck_join", pattern.Advise, nil, turned(front, "neck", 7)},
	{"neck_join", "neck_join", pattern.Fail, nil, turned(back, "neck", 15)},
	{"armhole_join", "armhole_join", pattern.Fail, nil, turned(front, "shoulder", 12)},
	{"underarm_join", "underarm_join", pattern.Advise, func(t *trial) { t.moved(front, "dart_upper", -0.2, 0) }, nil},
	{"underarm_join", "underarm_join", pattern.Fail, func(t *trial) { t.moved(front, "dart_upper", -0.6, 0) }, nil},
	{"hem_join", "hem_join", pattern.Advise, func(t *trial) { t.moved(front, "hem_side", -1, 0) }, nil},
	{"hem_join", "hem_join", pattern.Fail, func(t *trial) { t.moved(front, "hem_side", -3, 0) }, nil},
	{"centre_square", "centre_square", pattern.Advise, func(t *trial) { t.moved(front, "hem_side", 0, -0.23) }, nil},
	{"centre_square", "centre_square", pattern.Fail, func(t *trial) { t.moved(back, "hem_side", 0, -0.5) }, nil},
	{"facing_fit", "facing_fit", pattern.Advise, nil, cutBack(pattern.FrontNeckFacing, 0, 4)},
	{"facing_fit", "facing_fit", pattern.Fail, nil, cutBack(pattern.BackArmholeFacing, 1, 9)},
	{"facing_fit", "facing_uneven", pattern.Advise, nil, bent(pattern.FrontArmholeFacing, 3)},
	{"facing_fit", "facing_cross", pattern.Advise, func(t *trial) { t.facing = 2.2 }, nil},
	{"bust_girth", "bust_girth", pattern.Fail, func(t *trial) { t.style["ease_bust"] = 3 }, nil},
	{"bust_girth", "bust_girth", pattern.Advise, func(t *trial) { t.style["ease_bust"] = 2.4 }, nil},
	{"bust_girth", "cup_large", pattern.Advise, func(t *trial) { t.body[measure.UpperChestGirth] = 32 }, nil},
	{"waist_girth", "waist_girth", pattern.Fail, func(t *trial) { t.moved(back, "waist", 0.2, 0) }, func(s *pattern.Sheet) { s.Lengths = nil }},
	{"waist_girth", "waist_spare", pattern.Advise, func(t *trial) { t.body[measure.WaistGirth] = 26 }, nil},
	{"waist_girth", "waist_out", pattern.Advise, func(t *trial) { t.moved(front, "waist", 1.5, 0) }, nil},
	{"waist_girth", "waist_out", pattern.Advise, func(t *trial) { t.moved(back, "hip", -2, 0) }, nil},
	{"hip_girth", "hip_girth", pattern.Fail, func(t *trial) { t.moved(back, "hip", -0.2, 0) }, nil},
	{"balance", "seam_swings", pattern.Advise, func(t *trial) { t.body[measure.FrontHipArc] = 21 }, nil},
	{"balance", "ask_lengths", pattern.Skip, nil, func(s *pattern.Sheet) {
		s.Job.Body = s.Job.Body.With(measure.Height, 150*measure.Centimetre)
		for i := range s.Figures {
			s.Figures[i].Proposed = true
		}
	}},
	{"shoulder_seams", "back_round", pattern.Advise, func(t *trial) { t.body[measure.ShoulderToWaistBack] = 16.25 }, nil},
	{"hip_girth", "high_hip", pattern.Advise, func(t *trial) { t.body[measure.TopHipGirth] = 37 }, nil},
	{"armhole_girth", "armhole_small", pattern.Advise, func(t *trial) { t.body[measure.UpperArmGirth] = 12.7 }, nil},
	{"armhole_girth", "armhole_small", pattern.Fail, func(t *trial) { t.body[measure.UpperArmGirth] = 13.5 }, nil},
	{"armhole_girth", "armhole_wide", pattern.Advise, func(t *trial) { t.body[measure.UpperArmGirth] = 8 }, nil},
	{"armhole_girth", "armhole_wide", pattern.Advise, func(t *trial) { t.body[measure.ArmscyeGirth] = 15 }, nil},
	{"armhole_girth", "armhole_wide", pattern.Advise, func(t *trial) { t.moved(front, "armhole_mid", -3.5, 0) }, nil},
	{"armhole_girth", "front_hollow", pattern.Advise, func(t *trial) { t.moved(front, "armhole_mid", -0.6, 0) }, nil},
	{"armhole_girth", "ask_upper_chest", pattern.Skip, func(t *trial) { t.body[measure.BustGirth] = 38 }, nil},
	{"armhole_girth", "ask_upper_chest", pattern.Skip, func(t *trial) { t.body[measure.SideNeckToWaist] = 18.5 }, nil},
	{"armhole_girth", "armhole_shares", pattern.Advise, func(t *trial) { t.moved(back, "shoulder_end", 0, -0.8) }, nil},
	{"armhole_girth", "armhole_deep", pattern.Advise, func(t *trial) { t.method, t.depth = pattern.Thumb, 6.5 }, nil},
	{"armhole_girth", "armhole_high", pattern.Advise, func(t *trial) { t.method, t.depth = pattern.Thumb, 8 }, nil},
	{"neck_girth", "neck_tight", pattern.Advise, func(t *trial) { t.body[measure.NeckBaseGirth] = 21 }, nil},
	{"neck_girth", "neck_loose", pattern.Advise, func(t *trial) { t.style["neck_widening"], t.style["front_neck_depth"] = 0, 2.5 }, nil},
	{"head_passage", "head_passage", pattern.Fail, func(t *trial) { t.style["zip_length"] = 1 }, nil},
	{"body_passage", "body_passage", pattern.Fail, func(t *trial) { t.style["zip_length"] = 14 }, nil},
	{"body_passage", "body_passage", pattern.Advise, func(t *trial) { t.style["zip_length"] = 20 }, nil},
	{"balance", "balance", pattern.Fail, func(t *trial) { t.moved(back, "waist", 0, 0.2) }, nil},
	{"balance", "balance", pattern.Advise, func(t *trial) { t.moved(back, "hip", 0, 0.1) }, nil},
	{"balance", "side_dives", pattern.Advise, func(t *trial) { t.moved(front, "hip", 1.5, 0) }, nil},
	{"balance", "front_too_long", pattern.Advise, func(t *trial) { t.method = pattern.Thumb; t.body[measure.SideNeckToWaist] = 16.6 }, nil},
	{"balance", "front_too_short", pattern.Advise, func(t *trial) { t.method = pattern.Thumb; t.body[measure.SideNeckToWaist] = 18.8 }, nil},
	{"hem_level", "hem_level", pattern.Advise, func(t *trial) { t.moved(front, "hem_side", 0, 0.1) }, nil},
	{"hem_level", "hem_level", pattern.Fail, func(t *trial) { t.moved(back, "hem_side", 0, -0.3) }, nil},
	{"walking", "walking", pattern.Advise, func(t *trial) { t.style["slit_height"] = 0; t.body[measure.StepLength] = 28 }, nil},
	{"slit_height", "slit_low", pattern.Advise, func(t *trial) { t.style["slit_height"] = 2 }, nil},
	{"slit_height", "slit_high", pattern.Advise, func(t *trial) { t.style["slit_height"] = 11 }, nil},
	{"slit_height", "slit_high", pattern.Fail, func(t *trial) { t.style["slit_height"] = 16 }, nil},
	{"sitting", "sit_tight", pattern.Advise, func(t *trial) { t.body[measure.HipGirth] = 38.3 }, nil},
	{"sitting", "sit_tight", pattern.Fail, func(t *trial) { t.body[measure.HipGirth] = 39 }, nil},
	{"sitting", "sit_snug", pattern.Advise, func(t *trial) { t.body[measure.HipGirth] = 44; widenHip(t, 1.5) }, nil},
	{"sitting", "no_ease", pattern.Advise, func(t *trial) { t.method = pattern.Thumb; t.body[measure.HipGirth] = 40 }, nil},
	{"shoulder_left", "shoulder_left", pattern.Advise, func(t *trial) { t.moved(front, "neck_point", 0.6, 0.19) }, nil},
	{"shoulder_left", "shoulder_left", pattern.Fail, func(t *trial) { t.moved(back, "neck_point", 1.6, 0.5) }, nil},
	{"outline_simple", "outline_simple", pattern.Fail, func(t *trial) { t.moved(front, "waist", -9, 0) }, nil},
	{"allowance_fits", "allowance_fits", pattern.Fail, nil, func(s *pattern.Sheet) { s.Pieces[1].Edges[1].Allowance = 10 }},
	{"allowance_fits", "allowance_fits", pattern.Advise, nil, func(s *pattern.Sheet) { s.Pieces[1].Edges[1].Allowance += 2 }},
	{"labels", "labels", pattern.Fail, nil, func(s *pattern.Sheet) { s.Pieces[2].Number = 5 }},
	{"labels", "labels", pattern.Fail, nil, func(s *pattern.Sheet) { s.Pieces[2].Title = "" }},
	{"labels", "labels", pattern.Fail, nil, func(s *pattern.Sheet) { s.Pieces[1].Count = 0 }},
	{"labels", "labels", pattern.Fail, nil, func(s *pattern.Sheet) { s.Pieces[0].Fold = nil }},
	{"labels", "labels", pattern.Fail, nil, func(s *pattern.Sheet) { s.Pieces[0].Grain.D.X += 10 }},
	{"labels", "labels", pattern.Fail, nil, func(s *pattern.Sheet) { s.Pieces[0].Grain = geom.Segment{} }},
	{"cloth_width", "cloth_width", pattern.Fail, func(t *trial) { t.cloth = 20 }, nil},
}

func TestEachFaultIsFound(t *testing.T) {
	for _, c := range faults {
		tr := newTrial()
		if c.change != nil {
			c.change(tr)
		}
		s := tr.sheet()
		if c.after != nil {
			c.after(s)
		}
		var found []pattern.Finding
		for _, f := range findings(t, s, c.check) {
			if f.Code == c.code {
				found = append(found, f)
			}
		}
		require.NotEmpty(t, found, "%s: %s", c.check, c.code)
		f := found[0]
		require.Equal(t, c.verdict, f.Verdict, "%s: %s", c.code, f.Says.In(measure.In))
		require.False(t, f.Says.IsEmpty(), c.code)
		require.NotEmpty(t, f.Where.Piece, c.code)
		if f.Verdict != pattern.Skip {
			require.False(t, f.Cure.IsEmpty(), c.code)
		}
	}
}

// A check without a case above could be one that never speaks.
func TestEveryCheckHasAFault(t *testing.T) {
	tried := map[string]bool{}
	for _, c := range faults {
		tried[c.check] = true
	}
	for _, c := range Checks() {
		// What only some garments have is tried on drafts of those.
		require.True(t, tried[c.ID] || c.Wanted != nil, c.ID)
		require.NotEmpty(t, c.Title)
	}
	require.Len(t, tried, 28)
}

func undarted(t *trial) {
	for _, n := range []string{"dart_tip", "dart_upper", "dart_lower", "dart_cap"} {
		delete(t.front, n)
	}
}

func widenHip(t *trial, by float64) {
	t.moved(front, "hip", by, 0)
	t.moved(back, "hip", by, 0)
}

// turned turns an edge's line about its far end, as a careless hand would.
func turned(id pattern.PieceID, name string, degrees float64) func(*pattern.Sheet) {
	return func(s *pattern.Sheet) {
		p, _ := s.Piece(id)
		for i := range p.Edges {
			if e := &p.Edges[i]; e.Name == name {
				e.Stitch = e.Stitch.Transform(geom.TurnAbout(e.Stitch.End(), degrees*3.14159265/180))
			}
		}
	}
}

// cutBack makes an edge of a facing shorter by mm.
func cutBack(id pattern.PieceID, edge int, mm float64) func(*pattern.Sheet) {
	return func(s *pattern.Sheet) {
		p, _ := s.Piece(id)
		e := &p.Edges[edge]
		e.Stitch = e.Stitch.Part(0, e.Stitch.Length()-mm)
	}
}

// bent replaces an outer edge by the straight line between its ends.
func bent(id pattern.PieceID, edge int) func(*pattern.Sheet) {
	return func(s *pattern.Sheet) {
		p, _ := s.Piece(id)
		e := &p.Edges[edge]
		mid := e.Stitch.Start().Lerp(e.Stitch.End(), 0.5)
		e.Stitch = geom.Lines(e.Stitch.Start(), mid, e.Stitch.End())
	}
}
