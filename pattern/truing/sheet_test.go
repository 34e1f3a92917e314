package truing

import (
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// The sheets of these tests are built by hand from the points of a published
// kind of figure, bust 36, so that a check is tried without any draft.

type spots map[string]geom.Point

func at2(x, y float64) geom.Point { return geom.Point{X: x * 25.4, Y: y * 25.4} }

var frontSpots = spots{
	"neck_point": at2(3.867, 0.561), "shoulder_end": at2(6.75, 1.505), "neck_centre": at2(0, 4.5),
	"armhole_mid": at2(6.25, 4.502), "underarm": at2(9.625, 7.5), "waist": at2(8.375, 17.75), "hip": at2(10, 25.75),
	"hem_side": at2(9.25, 40.982), "hem_centre": at2(0, 41), "bust_point": at2(3.625, 10.25),
	"dart_tip": at2(4.624, 10.204), "dart_upper": at2(9.383, 9.485), "dart_lower": at2(9.429, 10.484), "dart_cap": at2(9.415, 9.984),
}

var backSpots = spots{
	"neck_point": at2(3.867, 0.061), "shoulder_end": at2(6.75, 1.005), "neck_centre": at2(0, 1.5),
	"armhole_mid": at2(6.625, 4.252), "underarm": at2(9.625, 7.5), "waist": at2(8.375, 16.75), "hip": at2(10, 24.75),
	"hem_side": at2(9.25, 39.982), "hem_centre": at2(0, 40),
}

// trial is what a test changes before the sheet is built.
type trial struct {
	front, back spots
	body        map[measure.ID]float64
	style       map[pattern.ChoiceID]float64
	method      string
	depth       float64 // the measured method's armhole depth
	facing      float64 // width of armhole facings
	neckFacing  float64 // width of neck facings at the shoulder
	cloth       float64
	job         pattern.Job
}

func newTrial() *trial {
	t := &trial{front: spots{}, back: spots{}, method: pattern.Measured, facing: 1.5, neckFacing: 1.5, cloth: 58}
	for k, v := range frontSpots {
		t.front[k] = v
	}
	for k, v := range backSpots {
		t.back[k] = v
	}
	t.body = map[measure.ID]float64{
		measure.Height: 66, measure.BustGirth: 36, measure.WaistGirth: 28, measure.HipGirth: 38, measure.NeckBaseGirth: 14.5,
		measure.AcrossShoulders: 15, measure.ShoulderDrop: 1.5, measure.BackNeckToWaist: 16, measure.SideNeckToWaist: 17.75,
		measure.SideNeckToBustPoint: 10.25, measure.BustPointDistance: 7.25, measure.WaistToHip: 8, measure.UpperArmGirth: 11,
		measure.WaistToFloor: 41.25, measure.HeadGirth: 22, measure.ShoulderLength: 4.75,
	}
	t.style = map[pattern.ChoiceID]float64{
		"ease_bust": 2.5, "ease_waist": 2, "ease_hip": 2, "shoulder_inset": 0.75, "shoulder_forward": 0.25, "neck_widening": 1,
		"front_neck_depth": 4.5, "back_neck_depth": 1.5, "side_waist_limit": 1.25, "hem_peg": 0.75, "side_dart_below": 2,
		"dart_tip_back": 1, "zip_length": 22, "slit_height": 7, "facing_armhole_width": 2, "facing_neck_width": 2,
		"armhole_allowance": 0.375, "shoulder_allowance": 0.625,
	}
	return t
}

func (t *trial) moved(piece pattern.PieceID, name string, dx, dy float64) *trial {
	m := t.front
	if piece == pattern.Back {
		m = t.back
	}
	m[name] = m[name].Add(geom.Vector{X: dx * 25.4, Y: dy * 25.4})
	return t
}

func (t *trial) sheet() *pattern.Sheet {
	s := &pattern.Sheet{}
	s.Method, s.Garment, s.Job = t.method, pattern.Dress, t.job
	for _, m := range measure.All() {
		if x, ok := t.body[m.ID]; ok {
			l := measure.Length(x * 25.4)
			s.Job.Body = s.Job.Body.With(m.ID, l)
			s.Figures = append(s.Figures, pattern.Figure{ID: m.ID, Value: l})
		}
	}
	for id, x := range t.style {
		s.Settings = append(s.Settings, pattern.Setting{ID: id, Used: true, Value: pattern.LengthValue(measure.Length(x * 25.4))})
	}
	s.Job.Cloths = append(s.Job.Cloths, pattern.Cloth{Name: "main", Width: measure.Length(t.cloth) * measure.Inch, Edges: measure.Inch / 2})
	s.MeasuredDepth = measure.Length(t.depth * 25.4)
	for piece, m := range map[pattern.PieceID]spots{pattern.Front: t.front, pattern.Back: t.back} {
		for name, p := range m {
			s.Marks = append(s.Marks, pattern.Mark{Piece: piece, Name: name, At: p, Born: 1})
		}
		want := s.Body(measure.WaistGirth)/4 + s.Length("ease_waist")/4
		s.Lengths = append(s.Lengths, pattern.Dimension{Piece: piece, Name: "waist_spare", Length: measure.Length(m["waist"].X) - want})
	}
	front, back := t.half(pattern.Front, t.front), t.half(pattern.Back, t.back)
	s.Pieces = []pattern.Piece{front, back}
	for _, p := range []pattern.Piece{front, back} {
		s.Pieces = append(s.Pieces, t.neckFacingOf(p))
	}
	for _, p := range []pattern.Piece{front, back} {
		s.Pieces = append(s.Pieces, t.armholeFacingOf(p))
	}
	for i := range s.Pieces {
		s.Pieces[i].Number, s.Pieces[i].Of = i+1, len(s.Pieces)
	}
	s.Complete = true
	return s
}

func edge(name string, stitch geom.Path, allowance float64) pattern.Edge {
	e := pattern.Edge{Name: name, Stitch: stitch, Allowance: measure.Length(allowance * 25.4), Role: pattern.RoleStitch}
	e.Cut = stitch
	if allowance > 0 {
		e.Cut = stitch.Offset(allowance*25.4, 0.01)
	}
	if name == "fold" {
		e.Role = pattern.RoleFold
	}
	return e
}

// closedRing makes a piece of its edges.
func closedRing(id pattern.PieceID, edges ...pattern.Edge) pattern.Piece {
	p := pattern.Piece{ID: id, Title: spaced(string(id)), Cloth: "main", Cut: pattern.Pair, Count: 2, Edges: edges}
	var cuts []geom.Path
	for _, e := range edges {
		p.Stitch = p.Stitch.Then(e.Stitch)
		cuts = append(cuts, e.Cut)
		if e.Role == pattern.RoleFold {
			p.Cut, p.Count = pattern.OnFold, 1
			f := e.Stitch[0]
			p.Fold = &f
		}
	}
	p.CutLine = geom.Loop(cuts, 76)
	b := p.Stitch.Bounds()
	c := b.Centre()
	p.Grain = geom.Straight(c.Add(geom.Vector{Y: -b.Height() / 4}), c.Add(geom.Vector{Y: b.Height() / 4}))
	p.Label = c
	return p
}

func roundNeck(m spots, back bool) geom.Path {
	n, s, c := m["neck_point"], m["shoulder_end"], m["neck_centre"]
	down := n.To(s).Unit().Right()
	k, w := 0.55, 0.55
	if back {
		k, w = 0.45, 0.60
	}
	return geom.Path{geom.Curve(n, n.Add(down.Scale(k*(c.Y-n.Y))), geom.Point{X: w * n.X, Y: c.Y}, c)}.Reverse()
}

func roundArmhole(m spots) geom.Path {
	n, s, mid, u := m["neck_point"], m["shoulder_end"], m["armhole_mid"], m["underarm"]
	down, chord := n.To(s).Unit().Right(), s.Dist(mid)
	return geom.Path{
		geom.Curve(s, s.Add(down.Scale(0.35*chord)), mid.Add(geom.Vector{Y: -0.35 * chord}), mid),
		geom.Curve(mid, mid.Add(geom.Vector{Y: 0.55 * (u.Y - mid.Y)}), u.Add(geom.Vector{X: -0.55 * (u.X - mid.X)}), u),
	}
}

func (t *trial) half(id pattern.PieceID, m spots) pattern.Piece {
	edges := []pattern.Edge{
		edge("neck", roundNeck(m, id == pattern.Back), 0.375),
		edge("shoulder", geom.Lines(m["neck_point"], m["shoulder_end"]), 0.625),
		edge("armhole", roundArmhole(m), 0.375),
	}
	upper := m["underarm"]
	var darts []pattern.Dart
	if d1, ok := m["dart_upper"]; ok {
		d2, cap := m["dart_lower"], m["dart_cap"]
		edges = append(edges, edge("side", geom.Lines(upper, d1), 1), edge("dart", geom.Lines(d1, cap), 1), edge("dart", geom.Lines(cap, d2), 1))
		upper = d2
		darts = []pattern.Dart{{Name: "side dart", Tip: m["dart_tip"], Legs: [2]geom.Point{d1, d2}, Cap: cap, Intake: measure.Length(d1.Dist(d2))}}
	}
	edges = append(edges, edge("side", geom.Lines(upper, m["waist"], m["hip"], m["hem_side"]), 1), edge("hem", geom.Lines(m["hem_side"], m["hem_centre"]), 2.5))
	if id == pattern.Front {
		edges = append(edges, edge("fold", geom.Lines(m["hem_centre"], m["neck_centre"]), 0))
	} else {
		split := m["hem_centre"].Add(geom.Vector{Y: -7 * 25.4})
		edges = append(edges, edge("centre_back", geom.Lines(m["hem_centre"], split), 1), edge("centre_back", geom.Lines(split, m["neck_centre"]), 1))
	}
	p := closedRing(id, edges...)
	p.Darts = darts
	return p
}

func (t *trial) neckFacingOf(p pattern.Piece) pattern.Piece {
	neck, shoulder := p.Edges[0].Stitch, p.Edges[1].Stitch
	dir := shoulder.StartTangent()
	end := neck.End().Add(dir.Scale(t.neckFacing * 25.4))
	c := neck.Start().Add(geom.Vector{Y: 3 * 25.4})
	w := spots{"neck_point": end, "shoulder_end": shoulder.End(), "neck_centre": c}
	outer := roundNeck(w, p.ID == pattern.Back).Reverse()
	last, sa := "fold", 0.0
	if p.ID == pattern.Back {
		last, sa = "centre_back", 1
	}
	return closedRing(p.ID+"_neck_facing", edge("neck", neck, 0.3125), edge("shoulder", geom.Lines(neck.End(), end), 0.625),
		edge("outer", outer, 0), edge(last, geom.Lines(c, neck.Start()), sa))
}

func (t *trial) armholeFacingOf(p pattern.Piece) pattern.Piece {
	arm := p.Edges[2].Stitch
	outer := arm.Offset(-t.facing*25.4, 0.01)
	return closedRing(p.ID+"_armhole_facing", edge("shoulder", geom.Lines(outer.Start(), arm.Start()), 0.625), edge("armhole", arm, 0.3125),
		edge("side", geom.Lines(arm.End(), outer.End()), 1), edge("outer", outer.Reverse(), 0))
}

// findings of one check on a sheet.
func findings(t *testing.T, s *pattern.Sheet, id string) []pattern.Finding {
	t.Helper()
	var out []pattern.Finding
	for _, f := range Run(s) {
		if f.Check == id {
			out = append(out, f)
		}
	}
	require.NotEmpty(t, out, "no finding of %s", id)
	return out
}

func TestTheTrialSheetIsClean(t *testing.T) {
	for _, f := range Run(newTrial().sheet()) {
		require.Equal(t, pattern.Pass, f.Verdict, "%s: %s", f.Check, f.Says.In(measure.In))
		require.Empty(t, f.Code, f.Check)
		require.False(t, f.Says.IsEmpty(), f.Check)
	}
}
