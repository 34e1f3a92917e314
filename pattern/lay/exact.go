package lay

import (
	"math/bits"
	"sort"
)

// The exact tests: whole numbers only, and nothing shared with the tables of
// the search.

// apart says whether two outlines do not overlap and, with a gap, stand at
// least that far from each other. Touching is allowed without a gap.
func apart(a, b []Point, gap int64) bool {
	alo, ahi := bounds(a)
	blo, bhi := bounds(b)
	if ahi.X+gap <= blo.X || bhi.X+gap <= alo.X || ahi.Y+gap <= blo.Y || bhi.Y+gap <= alo.Y {
		return true
	}
	// Only edges that come near the other's box matter.
	near := edgesNear(a, Point{blo.X - gap, blo.Y - gap}, Point{bhi.X + gap, bhi.Y + gap})
	others := edgesNear(b, Point{alo.X - gap, alo.Y - gap}, Point{ahi.X + gap, ahi.Y + gap})
	cuts := [2]map[int][]Point{{}, {}}
	clear := true
	eachMeeting(near, others, gap, func(e, f *edge) bool {
		if crossing(e.p, e.q, f.p, f.q) || gap > 0 && tooNear(e, f, gap) {
			clear = false
			return false
		}
		for _, c := range [2]Point{f.p, f.q} {
			if onEdge(e.p, e.q, c) {
				cuts[0][e.at] = append(cuts[0][e.at], c)
			}
		}
		for _, c := range [2]Point{e.p, e.q} {
			if onEdge(f.p, f.q, c) {
				cuts[1][f.at] = append(cuts[1][f.at], c)
			}
		}
		return true
	})
	if !clear {
		return false
	}
	return !enters(near, cuts[0], b) && !enters(others, cuts[1], a) && !sameRing(a, b)
}

// edge is one edge of an outline, from p to q.
type edge struct {
	p, q   Point
	at     int
	lo, hi Point
}

func edgesNear(o []Point, lo, hi Point) []edge {
	var out []edge
	for i, p := range o {
		q := o[(i+1)%len(o)]
		e := edge{p, q, i, Point{min(p.X, q.X), min(p.Y, q.Y)}, Point{max(p.X, q.X), max(p.Y, q.Y)}}
		if e.hi.X < lo.X || e.lo.X > hi.X || e.hi.Y < lo.Y || e.lo.Y > hi.Y {
			continue
		}
		out = append(out, e)
	}
	return out
}

// eachMeeting calls with each two edges whose boxes, grown by the gap, meet,
// sweeping along y.
func eachMeeting(a, b []edge, gap int64, do func(e, f *edge) bool) {
	byStart := make([]int, len(b))
	for i := range byStart {
		byStart[i] = i
	}
	sort.SliceStable(byStart, func(i, j int) bool { return b[byStart[i]].lo.Y < b[byStart[j]].lo.Y })
	// highest[k] is the greatest end among the first k+1 edges by start.
	highest := make([]int64, len(b))
	for k, i := range byStart {
		highest[k] = b[i].hi.Y
		if k > 0 {
			highest[k] = max(highest[k], highest[k-1])
		}
	}
	for i := range a {
		e := &a[i]
		last := sort.Search(len(b), func(k int) bool { return b[byStart[k]].lo.Y > e.hi.Y+gap })
		for k := last - 1; k >= 0 && highest[k] >= e.lo.Y-gap; k-- {
			f := &b[byStart[k]]
			if f.hi.Y < e.lo.Y-gap || f.hi.X < e.lo.X-gap || f.lo.X > e.hi.X+gap {
				continue
			}
			if !do(e, f) {
				return
			}
		}
	}
}

// crossing says whether two edges cross properly, each passing from one side
// of the other to the other side.
func crossing(a, b, c, d Point) bool {
	return turning(a, b, c) > 0 != (turning(a, b, d) > 0) && turning(a, b, c) != 0 && turning(a, b, d) != 0 &&
		turning(c, d, a) > 0 != (turning(c, d, b) > 0) && turning(c, d, a) != 0 && turning(c, d, b) != 0
}

// onEdge says whether c lies on the edge, its ends not counted.
func onEdge(a, b, c Point) bool {
	return c != a && c != b && turning(a, b, c) == 0 &&
		min(a.X, b.X) <= c.X && c.X <= max(a.X, b.X) && min(a.Y, b.Y) <= c.Y && c.Y <= max(a.Y, b.Y)
}

// enters says whether the middle of any part of an edge lies strictly inside
// the outline; edges are cut where the outline touches them.
func enters(edges []edge, cuts map[int][]Point, o []Point) bool {
	for _, e := range edges {
		parts := append([]Point{e.p, e.q}, cuts[e.at]...)
		sort.Slice(parts, func(i, j int) bool {
			return towards(e, parts[i]) < towards(e, parts[j])
		})
		for i := 1; i < len(parts); i++ {
			if parts[i] != parts[i-1] && strictlyInside(parts[i-1].plus(parts[i]), o) {
				return true
			}
		}
	}
	return false
}

// towards orders the points of an edge from its start.
func towards(e edge, p Point) int64 {
	return max(p.X-e.p.X, e.p.X-p.X) + max(p.Y-e.p.Y, e.p.Y-p.Y)
}

// strictlyInside says whether half of the doubled point lies inside the
// outline and not on it. Doubled coordinates keep middles whole.
func strictlyInside(twice Point, o []Point) bool {
	in := false
	for i, p := range o {
		q := o[(i+1)%len(o)]
		a, b := Point{2*p.X - twice.X, 2*p.Y - twice.Y}, Point{2*q.X - twice.X, 2*q.Y - twice.Y}
		side := a.X*b.Y - a.Y*b.X
		if side == 0 && a.X*b.X <= 0 && a.Y*b.Y <= 0 {
			return false // on the edge
		}
		if (a.Y > 0) != (b.Y > 0) && (side > 0) == (b.Y > a.Y) {
			in = !in
		}
	}
	return in
}

// sameRing says whether the outlines are one and the same.
func sameRing(a, b []Point) bool {
	if len(a) != len(b) {
		return false
	}
	for shift := range b {
		k := 0
		for k < len(a) && a[k] == b[(shift+k)%len(b)] {
			k++
		}
		if k == len(a) {
			return true
		}
	}
	return false
}

// tooNear says whether two edges stand closer than the gap, by squares in 128
// bits.
func tooNear(e, f *edge, gap int64) bool {
	return nearer(e.p, f.p, f.q, gap) || nearer(e.q, f.p, f.q, gap) || nearer(f.p, e.p, e.q, gap) || nearer(f.q, e.p, e.q, gap)
}

// nearer says whether p is closer than the gap to the edge from a to b.
func nearer(p, a, b Point, gap int64) bool {
	d, v := b.minus(a), p.minus(a)
	along := v.X*d.X + v.Y*d.Y
	long := d.X*d.X + d.Y*d.Y
	switch {
	case along <= 0:
		return v.X*v.X+v.Y*v.Y < gap*gap
	case along >= long:
		w := p.minus(b)
		return w.X*w.X+w.Y*w.Y < gap*gap
	}
	// off*off < gap*gap*long
	off := turning(a, b, p)
	if off < 0 {
		off = -off
	}
	h1, l1 := bits.Mul64(uint64(off), uint64(off))
	h2, l2 := bits.Mul64(uint64(gap)*uint64(gap), uint64(long))
	return h1 < h2 || h1 == h2 && l1 < l2
}
