package export

import (
	"math"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// opened is the piece on the fold drawn whole, the fold edge gone and a line
// at the centre in its place. Other pieces come back as they are.
func opened(p pattern.Piece) pattern.Piece {
	if p.Fold == nil {
		return p
	}
	half, edge := offFold(p.CutLine, p.Fold)
	if edge == nil {
		return p
	}
	m := geom.MirrorIn(geom.Line{At: edge.Start(), Dir: edge.Start().To(edge.End())})
	sewn, _ := offFold(p.Stitch, p.Fold)
	p.CutLine = half.Then(half.Transform(m).Reverse())
	p.Stitch = sewn.Then(sewn.Transform(m).Reverse())
	p.Edges = openedEdges(p.Edges, m)
	p.Darts = bothSides(p.Darts, m, mirroredDart, func(d pattern.Dart) geom.Point { return d.Tip })
	p.Notches = bothSides(p.Notches, m, mirroredNotch, func(n pattern.Notch) geom.Point { return n.At })
	p.Holes = bothSides(p.Holes, m, geom.Matrix.Apply, func(h geom.Point) geom.Point { return h })
	lines := make([]pattern.Balance, len(p.Balance), len(p.Balance)+1)
	for i, b := range p.Balance {
		far := m.Apply(b.Line.D)
		if m.Apply(b.Line.A).Dist(b.Line.D) > far.Dist(b.Line.D) {
			far = m.Apply(b.Line.A)
			lines[i] = pattern.Balance{Name: b.Name, Line: geom.Straight(far, b.Line.A)}
			continue
		}
		lines[i] = pattern.Balance{Name: b.Name, Line: geom.Straight(far, b.Line.D)}
	}
	p.Balance = append(lines, pattern.Balance{Name: "centre", Line: edge[0]})
	p.Cut, p.Fold = pattern.Single, nil
	return p
}

// openedEdges is the ring of edges without the fold, and its mirror image in
// the order that keeps the ring's way round.
func openedEdges(edges []pattern.Edge, m geom.Matrix) []pattern.Edge {
	var out []pattern.Edge
	n := len(edges)
	start := 0
	for i, e := range edges {
		if e.Role == pattern.RoleFold {
			start = i + 1
		}
	}
	for i := range n {
		if e := edges[(start+i)%n]; e.Role != pattern.RoleFold {
			out = append(out, e)
		}
	}
	for i := len(out) - 1; i >= 0; i-- {
		e := out[i]
		e.Stitch = e.Stitch.Transform(m).Reverse()
		e.Cut = e.Cut.Transform(m).Reverse()
		out = append(out, e)
	}
	return out
}

// bothSides is the list with the mirror image of each thing that does not
// lie on the mirror itself.
func bothSides[T any](list []T, m geom.Matrix, mirror func(geom.Matrix, T) T, place func(T) geom.Point) []T {
	out := append([]T(nil), list...)
	for _, x := range list {
		if y := mirror(m, x); !place(y).Near(place(x), 2*onLine) {
			out = append(out, y)
		}
	}
	return out
}

func mirroredDart(m geom.Matrix, d pattern.Dart) pattern.Dart {
	d.Tip, d.Cap = m.Apply(d.Tip), m.Apply(d.Cap)
	for i := range d.Legs {
		d.Legs[i] = m.Apply(d.Legs[i])
		if d.Ends[i] != (geom.Point{}) {
			d.Ends[i] = m.Apply(d.Ends[i])
		}
	}
	return d
}

func mirroredNotch(m geom.Matrix, n pattern.Notch) pattern.Notch {
	sin, cos := math.Sincos(n.Into * degree)
	v := m.ApplyVector(geom.Vector{X: cos, Y: sin})
	n.At = m.Apply(n.At)
	n.Into = math.Atan2(v.Y, v.X) / degree
	return n
}

// allowances lists each edge's allowance in the order of the ring, a name
// and a width once.
func allowances(p pattern.Piece) []allowance {
	var out []allowance
	for _, e := range p.Edges {
		a := allowance{e.Name, e.Allowance}
		if e.Role == pattern.RoleFold || e.Allowance <= 0 || containsAllowance(out, a) {
			continue
		}
		out = append(out, a)
	}
	return out
}

type allowance struct {
	edge  string
	width measure.Length
}

// sameWidth forgives what a level allowance, given as a mean, leaves between
// two parts of one edge: less than a tape shows.
const sameWidth = 0.4

func containsAllowance(list []allowance, a allowance) bool {
	for _, b := range list {
		if b.edge == a.edge && math.Abs(b.width.MM()-a.width.MM()) < sameWidth {
			return true
		}
	}
	return false
}
