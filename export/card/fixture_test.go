package card

import (
	"math"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// figure is a dress drawn by hand for these tests, in inches: enough of one to
// have every kind of edge, and free to vary without the whole workroom.
type figure struct {
	bust, waist, hip    float64 // finished half fronts, times four
	neckX, neckDepth    float64
	shoulderX, drop     float64
	midX, armhole       float64
	toWaist, toHip, hem float64
	dart, dartBelow     float64
	tipX, tipY          float64
	peg                 float64
	straight            bool // sides ruled
	thumb               bool
}

var plainFigure = figure{
	bust: 38.5, waist: 33.5, hip: 40, neckX: 3.867, neckDepth: 4.5, shoulderX: 6.75, drop: 1.5,
	midX: 6.25, armhole: 7.5, toWaist: 16.75, toHip: 24.75, hem: 40, dart: 1, dartBelow: 2,
	tipX: 4.624, tipY: 10.204, peg: 0.75,
}

func inch(x, y float64) geom.Point { return geom.Point{X: x * 25.4, Y: y * 25.4} }

// sheet draws the figure's front and back.
func (f figure) sheet() *pattern.Sheet {
	s := &pattern.Sheet{Known: pattern.Known{Garment: pattern.Dress, Method: pattern.Measured}, Complete: true}
	s.Job.Client.Name = "Learner Four"
	if f.thumb {
		s.Method = pattern.Thumb
	}
	f.piece(s, pattern.Front)
	back := f
	back.neckDepth, back.midX, back.dart = 2, f.midX+0.4, 0
	back.piece(s, pattern.Back)
	return s
}

func (f figure) piece(s *pattern.Sheet, id pattern.PieceID) {
	neck, tip := inch(f.neckX, f.drop*0.37), inch(f.shoulderX, f.drop)
	d := f.dart
	u := inch(f.bust/4, f.armhole)
	w, h := inch(f.waist/4, f.toWaist+d), inch(f.hip/4, f.toHip+d)
	run := f.hem - f.toHip
	e := inch(f.hip/4-f.peg, f.toHip+d+math.Sqrt(run*run-f.peg*f.peg))
	foot := geom.Point{Y: e.Y}
	m := inch(f.midX, (f.drop+f.armhole)/2)
	centre := inch(0, f.neckDepth)

	n := neck.To(tip).Unit().Right()
	chord := tip.Dist(m)
	b := builder{id: id}
	depth := f.neckDepth * 25.4
	b.edge("neck", 9.525, geom.Path{geom.Curve(centre, geom.Point{X: neck.X * 0.55, Y: depth}, neck.Add(n.Scale((depth-neck.Y)*0.55)), neck)})
	b.edge("shoulder", 15.875, geom.Lines(neck, tip))
	b.edge("armhole", 9.525, geom.Path{
		geom.Curve(tip, tip.Add(n.Scale(0.35*chord)), m.Add(geom.Vector{Y: -0.35 * chord}), m),
		geom.Curve(m, m.Add(geom.Vector{Y: 0.55 * (u.Y - m.Y)}), u.Add(geom.Vector{X: -0.55 * (u.X - m.X)}), u),
	})
	top := u
	if d > 0 {
		d1 := u.Add(u.To(w).Unit().Scale(f.dartBelow * 25.4))
		t := inch(f.tipX, f.tipY)
		turn := 2 * math.Asin(d*25.4/2/t.Dist(d1))
		d2 := geom.TurnAbout(t, turn).Apply(d1)
		mid := t.Add(t.To(d1).Unit().Plus(t.To(d2).Unit()))
		folded := geom.MirrorIn(geom.Line{At: t, Dir: t.To(d2)}).Apply(w)
		cap, _ := geom.Meet(geom.Line{At: d2, Dir: d2.To(folded)}, geom.Line{At: t, Dir: t.To(mid)})
		b.edge("side", 25.4, geom.Lines(u, d1))
		b.edge("dart", 25.4, geom.Lines(d1, cap, d2))
		b.dart = &pattern.Dart{
			Name: "side dart", Tip: t, Legs: [2]geom.Point{d1, d2}, Cap: cap,
			Intake: measure.Length(d1.Dist(d2)), Leg: measure.Length(t.Dist(d1)), Pressed: "down",
		}
		top = d2
	}
	b.edge("side", 25.4, f.side(top, w, h, e))
	b.edge("hem", 63.5, geom.Lines(e, foot))
	last := "fold"
	if id == pattern.Back {
		last = "centre_back"
	}
	allow := 0.0
	if id == pattern.Back {
		allow = 25.4
	}
	b.edge(last, allow, geom.Lines(foot, centre))
	names := map[string]geom.Point{
		"neck_point": neck, "shoulder_end": tip, "neck_centre": centre, "armhole_mid": m,
		"underarm": u, "waist": w, "hip": h, "hem_side": e, "hem_centre": foot,
	}
	order := []string{"neck_point", "shoulder_end", "neck_centre", "armhole_mid", "underarm", "waist", "hip", "hem_side", "hem_centre"}
	p := b.piece(e)
	p.Included = f.thumb
	for _, name := range order {
		at := names[name]
		if f.thumb {
			s.SewnAt = append(s.SewnAt, pattern.Mark{Piece: id, Name: name, At: at, Kind: pattern.MarkPoint})
			at = cutPlace(p, name, at)
		}
		s.Marks = append(s.Marks, pattern.Mark{Piece: id, Name: name, At: at, Kind: pattern.MarkPoint})
	}
	s.Pieces = append(s.Pieces, p)
}

// cutPlace is where a named point lies if the allowance is in the figure.
func cutPlace(p pattern.Piece, name string, sewn geom.Point) geom.Point {
	switch name {
	case "hem_centre":
		return sewn
	case "neck_centre":
		return p.CutLine.AtOut(0)[0]
	case "waist", "hip", "hem_side", "armhole_mid":
		best := geom.Point{X: math.Inf(1)}
		for _, q := range p.CutLine.AtLevel(sewn.Y) {
			if q.Dist(sewn) < best.Dist(sewn) {
				best = q
			}
		}
		return best
	}
	best, dist := geom.Point{}, math.Inf(1)
	for _, seg := range p.CutLine {
		if d := seg.A.Dist(sewn); d < dist && radians(seg.Tangent(0), sewn.To(seg.A)) < 3 {
			best, dist = seg.A, d
		}
	}
	for i, seg := range p.CutLine {
		prev := p.CutLine[(i+len(p.CutLine)-1)%len(p.CutLine)]
		if radians(prev.Tangent(1), seg.Tangent(0)) > 0.5 && seg.A.Dist(sewn) < 45 && seg.A.Dist(sewn) < dist+25 {
			best, dist = seg.A, seg.A.Dist(sewn)-25
		}
	}
	return best
}

// side is the side seam from top to hem: ruled, or rounded at the waist and
// curved over the hip.
func (f figure) side(top, w, h, e geom.Point) geom.Path {
	if f.straight {
		return geom.Lines(top, w, h, e)
	}
	k := min(0.45, 9/(16*math.Abs(h.X-w.X)/25.4))
	hip := geom.Path{geom.Curve(w, w.Lerp(h, 1.0/3), h.Add(geom.Vector{Y: -k * (h.Y - w.Y)}), h)}
	p := w.Add(w.To(top).Unit().Scale(12.7))
	q, qt := hip.At(12.7)
	pt := p.To(w).Unit()
	round := geom.Curve(p, p.Add(pt.Scale(25.4/3)), q.Add(qt.Scale(-25.4/3)), q)
	out := geom.Lines(top, p).Then(geom.Path{round})
	return out.Then(hip.Part(12.7, hip.Length())).Then(geom.Lines(h, e))
}

// builder makes a piece of edges: each offset by its own allowance, corners
// mitred, the side mirrored below the hem.
type builder struct {
	id    pattern.PieceID
	edges []pattern.Edge
	dart  *pattern.Dart
}

func (b *builder) edge(name string, allowance float64, p geom.Path) {
	e := pattern.Edge{Name: name, Stitch: p, Allowance: measure.Length(allowance), Cut: p.Offset(allowance, 0.001)}
	if name == "side" { // a little more, so that it reaches the hem's level
		e.Cut = e.Cut.Then(geom.Lines(e.Cut.End(), e.Cut.End().Add(e.Cut.EndTangent().Scale(5))))
	}
	b.edges = append(b.edges, e)
}

// fold puts the dart's part of the cut line between the sides beside it.
func (b *builder) fold() {
	for i := range b.edges {
		if b.edges[i].Name != "dart" {
			continue
		}
		above, below := &b.edges[i-1], &b.edges[i+1]
		above.Cut = above.Cut[:len(above.Cut)-1]
		out := b.dart.Tip.To(b.dart.Cap).Unit().Scale(25.4)
		b.dart.Ends = [2]geom.Point{above.Cut.End(), below.Cut.Start()}
		b.edges[i].Cut = geom.Lines(b.dart.Ends[0], b.dart.Cap.Add(out), b.dart.Ends[1])
	}
}

func (b *builder) piece(hem geom.Point) pattern.Piece {
	p := pattern.Piece{ID: b.id, Title: "Front", Number: 1, Of: 2, Cut: pattern.OnFold, Count: 1}
	if b.id == pattern.Back {
		p.Title, p.Number, p.Cut = "Back", 2, pattern.Pair
	}
	b.fold()
	n := len(b.edges)
	hemAt := 0
	for i, e := range b.edges {
		p.Stitch = p.Stitch.Then(e.Stitch)
		if e.Name == "hem" {
			hemAt = i
		}
	}
	// The side ends level with the hem, then runs mirrored to the raw edge.
	side := &b.edges[hemAt-1]
	end := side.Cut.AtLevel(hem.Y)[0]
	dir := side.Cut.EndTangent()
	cut, _, _ := side.Cut.Nearest(end)
	side.Cut = side.Cut.Part(0, cut)
	deep := hem.Y + 63.5
	low := end.Add(geom.Vector{X: -dir.X, Y: dir.Y}.Scale(63.5 / dir.Y))
	low.Y = deep
	var ring geom.Path
	corner := func(a, c geom.Path) geom.Point {
		at, ok := geom.Meet(geom.Line{At: a.End(), Dir: a.EndTangent()}, geom.Line{At: c.Start(), Dir: c.StartTangent()})
		if !ok || at.Dist(a.End()) > 100 {
			return a.End().Lerp(c.Start(), 0.5)
		}
		return at
	}
	for i := range b.edges {
		e, next := b.edges[i], b.edges[(i+1)%n]
		ring = ring.Then(e.Cut)
		if i == hemAt-1 {
			ring = ring.Then(geom.Lines(end, low))
			continue
		}
		if at := corner(e.Cut, next.Cut); !at.Near(ring.End(), 1e-6) {
			ring = ring.Then(geom.Lines(ring.End(), at))
		}
	}
	p.CutLine = ring.Then(geom.Lines(ring.End(), ring.Start()))
	if ring.Closed() {
		p.CutLine = ring
	}
	p.Edges = b.edges
	if b.dart != nil {
		p.Darts = []pattern.Dart{*b.dart}
		p.Notches = []pattern.Notch{{At: b.dart.Ends[0], Edge: "side", Marks: 1, Name: "dart"}}
	}
	return p
}
