package export

import (
	"math"

	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// outlines are the cut line, the stitch line and, of a piece on the fold, the
// fold edge. Neither line runs along the fold: nothing is cut or sewn there.
func outlines(p pattern.Piece) []Item {
	var out []Item
	cut, fold := offFold(p.CutLine, p.Fold)
	if len(cut) > 0 {
		out = append(out, Item{Role: pattern.RoleCut, Name: "cut line", Path: cut})
	}
	if sewn, _ := offFold(p.Stitch, p.Fold); len(sewn) > 0 {
		out = append(out, Item{Role: pattern.RoleStitch, Name: "stitch line", Path: sewn})
	}
	if fold != nil {
		out = append(out, Item{Role: pattern.RoleFold, Name: "fold", Path: fold})
	}
	return out
}

// onLine is how near a segment must lie to the fold to be part of it; far
// below a seam allowance, far above rounding.
const onLine = 0.01

// offFold takes the part of a ring that lies on the fold out of it. The ring
// comes back open, from one end of the fold round to the other, with the fold
// edge that would close it; a ring that does not touch the fold in one run
// comes back as it was.
func offFold(ring geom.Path, fold *geom.Segment) (open, edge geom.Path) {
	if fold == nil || len(ring) == 0 {
		return ring, nil
	}
	line := geom.Line{At: fold.A, Dir: fold.A.To(fold.D)}
	on := func(s geom.Segment) bool {
		for _, q := range [4]geom.Point{s.A, s.B, s.C, s.D} {
			if q.Dist(line.Foot(q)) > onLine {
				return false
			}
		}
		return true
	}
	n := len(ring)
	first := -1
	for i := range ring {
		if on(ring[(i+n-1)%n]) && !on(ring[i]) {
			if first >= 0 {
				return ring, nil
			}
			first = i
		}
	}
	if first < 0 {
		return ring, nil
	}
	for i := 0; i < n; i++ {
		s := ring[(first+i)%n]
		if on(s) {
			break
		}
		open = append(open, s)
	}
	return open, geom.Lines(open.End(), open.Start())
}

// darts are the legs from the cut line over the tip and back, and the middle
// along which the dart is folded.
func darts(p pattern.Piece) []Item {
	var out []Item
	for _, d := range p.Darts {
		way := geom.Lines(spread(d.Ends[0], d.Legs[0], d.Tip, d.Legs[1], d.Ends[1])...)
		if len(way) > 0 {
			out = append(out, Item{Role: pattern.RoleDart, Name: d.Name, Path: way})
		}
	}
	return out
}

// spread drops points that repeat the one before and ends that were not set.
func spread(points ...geom.Point) []geom.Point {
	n := len(points)
	if points[0] == (geom.Point{}) && points[n-1] == (geom.Point{}) {
		points = points[1 : n-1]
	}
	out := points[:1:1]
	for _, q := range points[1:] {
		if !q.Near(out[len(out)-1], onLine) {
			out = append(out, q)
		}
	}
	return out
}

// drillIn is how far inside the tip a dart is drilled, so that the seam
// covers the hole: 1/2 in, common practice, no source.
const drillIn = 12.7

// holes are the dots pricked through: those of the piece, and one inside the
// tip of each dart that has none.
func holes(p pattern.Piece) []Item {
	at := append([]geom.Point(nil), p.Holes...)
	for _, d := range p.Darts {
		if !anyNear(p.Holes, d.Tip, 2*drillIn) {
			middle := d.Legs[0].Lerp(d.Legs[1], 0.5)
			at = append(at, d.Tip.Add(d.Tip.To(middle).Unit().Scale(drillIn)))
		}
	}
	var out []Item
	for _, h := range at {
		out = append(out, Item{Role: pattern.RoleHole, Kind: Dot, Name: "drill hole", At: h})
	}
	return out
}

func anyNear(points []geom.Point, q geom.Point, reach float64) bool {
	for _, h := range points {
		if h.Near(q, reach) {
			return true
		}
	}
	return false
}

func balances(p pattern.Piece) []Item {
	var out []Item
	for _, b := range p.Balance {
		out = append(out, Item{Role: pattern.RoleBalance, Name: b.Name, Path: geom.Path{b.Line}})
	}
	return out
}

const (
	notchDeep = 6.35 // 1/4 in, but never past half of the allowance: common practice, no source
	notchGap  = 5.0  // between the two marks of a double notch
)

// notchReach is how far from its edge a notch may be named; it is drawn on
// the edge. Beside a level allowance the two differ by a millimetre.
const notchReach = 3.0

// notches are short lines from the cut edge inwards, side by side where the
// notch has two marks.
func notches(p pattern.Piece) []Item {
	var out []Item
	for _, n := range p.Notches {
		edge, allowance := notchEdge(p, n)
		deep := notchDeep
		if allowance > 0 {
			deep = math.Min(deep, allowance/2)
		}
		sin, cos := math.Sincos(n.Into * degree)
		in := geom.Vector{X: cos, Y: sin}.Scale(deep)
		for _, at := range sideBySide(edge, n.At, max(n.Marks, 1)) {
			out = append(out, Item{Role: pattern.RoleNotch, Name: n.Name, Path: geom.Lines(at, at.Add(in))})
		}
	}
	return out
}

// notchEdge is the cut edge that the notch stands on and its allowance; the
// whole cut line where the edge cannot be told.
func notchEdge(p pattern.Piece, n pattern.Notch) (geom.Path, float64) {
	best := -1
	least := notchReach
	for i, e := range p.Edges {
		if len(e.Cut) == 0 {
			continue
		}
		_, _, d := e.Cut.Nearest(n.At)
		if e.Name == n.Edge {
			d -= 0.5
		}
		if d < least {
			best, least = i, d
		}
	}
	if best < 0 {
		return p.CutLine, 0
	}
	return p.Edges[best].Cut, p.Edges[best].Allowance.MM()
}

// sideBySide are the places of n marks round at, along the edge.
func sideBySide(edge geom.Path, at geom.Point, n int) []geom.Point {
	if len(edge) == 0 {
		return []geom.Point{at}
	}
	s, on, off := edge.Nearest(at)
	switch {
	case off > notchReach:
		return []geom.Point{at}
	case n == 1:
		return []geom.Point{on}
	}
	span := notchGap * float64(n-1)
	from := min(max(s-span/2, 0), max(edge.Length()-span, 0))
	var out []geom.Point
	for i := range n {
		q, _ := edge.At(from + notchGap*float64(i))
		out = append(out, q)
	}
	return out
}
