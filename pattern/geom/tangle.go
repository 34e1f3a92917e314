package geom

import (
	"cmp"
	"math"
	"slices"
)

// tangle is a path that may cross itself. back marks pieces that run against
// the source's direction; it may be nil.
type tangle struct {
	path   Path
	back   []bool
	closed bool
}

// stop is one of the two passages of the path through a place where it
// crosses itself.
type stop struct {
	i     int
	t     float64
	other int // index of the other passage among the stops
}

// stops lists the passages in path order.
func (t tangle) stops() []stop {
	hits := t.crossings()
	out := make([]stop, 0, 2*len(hits))
	for k, h := range hits {
		out = append(out, stop{h.i, h.s, k}, stop{h.j, h.t, k})
	}
	slices.SortStableFunc(out, func(a, b stop) int {
		return cmp.Or(cmp.Compare(a.i, b.i), cmp.Compare(a.t, b.t))
	})
	seen := make([]int, len(hits))
	for k := range seen {
		seen[k] = -1
	}
	for k := range out {
		h := out[k].other
		if seen[h] < 0 {
			seen[h] = k
			continue
		}
		out[k].other, out[seen[h]].other = seen[h], k
	}
	return out
}

// strand follows an open path from start to end, at each crossing turning onto
// the other passage, so that the loops fall off.
func (t tangle) strand() tangle {
	stops := t.stops()
	if len(stops) == 0 {
		return t
	}
	var out tangle
	at := stop{i: 0, t: 0}
	for next := 0; ; {
		if next == len(stops) {
			out.append(t, at, stop{i: len(t.path) - 1, t: 1})
			return out
		}
		out.append(t, at, stops[next])
		k := stops[next].other
		at, next = stops[k], k+1
	}
}

// ring takes a closed path apart at its crossings, turning at each onto the
// other passage. What this leaves are the borders between the places the path
// runs round once, twice, not at all; the result is the largest that runs round
// in the sense of the sign. Nil if none does, or if it is turned inside out: the
// parallel of a circle, more than its radius inside, is again a circle.
func (t tangle) ring(sign float64) Path {
	stops := t.stops()
	if len(stops) == 0 {
		if t.path.Area()*sign > 0 && !t.insideOut() {
			return t.path
		}
		return nil
	}
	var best Path
	most := 0.0
	done := make([]bool, len(stops))
	for k := range stops {
		var loop tangle
		for m := k; !done[m]; {
			done[m] = true
			next := (m + 1) % len(stops)
			loop.appendRound(t, stops[m], stops[next])
			m = stops[next].other
		}
		if n := len(loop.path); n > 0 {
			// The two passages at its seam agree to a touch, too.
			loop.path[n-1] = loop.path[n-1].endingAt(loop.path[0].A)
		}
		if a := loop.path.Area(); a*sign > 0 && math.Abs(a) > most && !loop.insideOut() {
			best, most = loop.path, math.Abs(a)
		}
	}
	return best
}

// insideOut reports whether more of the path runs back than forward.
func (t tangle) insideOut() bool {
	sum := 0.0
	for i, s := range t.path {
		if t.back != nil && t.back[i] {
			sum -= s.Length()
		} else {
			sum += s.Length()
		}
	}
	return sum < 0
}

// append adds the part of src from one passage to a later one.
func (t *tangle) append(src tangle, from, to stop) {
	for i := from.i; i <= to.i; i++ {
		t0, t1 := 0.0, 1.0
		if i == from.i {
			t0 = from.t
		}
		if i == to.i {
			t1 = to.t
		}
		s := src.path[i]
		if t0 > 0 || t1 < 1 {
			s = s.Part(t0, t1)
		}
		if s.size() <= cutSlack {
			continue
		}
		if n := len(t.path); n > 0 && t.path[n-1].D != s.A {
			// The two passages agree to a touch.
			s = s.startingAt(t.path[n-1].D)
		}
		t.path = append(t.path, s)
		t.back = append(t.back, src.back != nil && src.back[i])
	}
}

// appendRound is append on a closed path, where a later passage may stand
// earlier in the path.
func (t *tangle) appendRound(src tangle, from, to stop) {
	if from.i < to.i || from.i == to.i && from.t < to.t {
		t.append(src, from, to)
	} else {
		t.append(src, from, stop{i: len(src.path) - 1, t: 1})
		t.append(src, stop{i: 0, t: 0}, to)
	}
}

// crossings lists where the path truly crosses itself; touches do not count.
func (t tangle) crossings() []hit {
	p, n := t.path, len(t.path)
	hulls := make([]Box, n)
	for i, s := range p {
		hulls[i] = s.hull().Grow(touch)
	}
	var out []hit
	var room [16]pair
	for i := range p {
		for j := i + 1; j < n; j++ {
			if !hulls[i].meets(hulls[j]) {
				continue
			}
			next, round := j == i+1, t.closed && i == 0 && j == n-1
			if next && apart(p[i], p[j]) || round && n > 2 && apart(p[j], p[i]) {
				continue
			}
			if next && t.back != nil && t.back[i] != t.back[j] {
				continue // They part at a cusp, or one bridges a corner.
			}
			for _, m := range crossSegments(p[i], p[j], room[:0]) {
				h := t.settle(hit{i, j, m.s, m.t, p[i].At(m.s)})
				if t.crosses(h) && !slices.ContainsFunc(out, func(k hit) bool { return t.same(h, k) }) {
					out = append(out, h)
				}
			}
		}
	}
	return out
}

// apart reports whether two segments that follow one another are parted by the
// square across their joint, and so meet there only.
func apart(a, b Segment) bool {
	o, u := a.D, a.Tangent(1)
	if !a.Curved && !b.Curved {
		return !folded(a.A, o, b.D)
	}
	if !o.Near(b.A, weld) {
		return false
	}
	return o.To(a.A).Dot(u) <= 0 && o.To(a.B).Dot(u) <= 0 && o.To(a.C).Dot(u) <= 0 &&
		o.To(b.B).Dot(u) >= 0 && o.To(b.C).Dot(u) >= 0 && o.To(b.D).Dot(u) >= 0
}

// settle lays a meeting at a joint to the start of the segment that leaves it.
func (t tangle) settle(h hit) hit {
	h.i, h.s = t.settled(h.i, h.s)
	h.j, h.t = t.settled(h.j, h.t)
	if h.j < h.i || h.i == h.j && h.t < h.s {
		h.i, h.s, h.j, h.t = h.j, h.t, h.i, h.s
	}
	return h
}

func (t tangle) settled(i int, s float64) (int, float64) {
	seg := t.path[i]
	switch at := seg.At(s); {
	case s < 0.5 && at.Near(seg.A, weld):
		return i, 0
	case s > 0.5 && at.Near(seg.D, weld):
		if i+1 < len(t.path) {
			return i + 1, 0
		}
		if t.closed {
			return 0, 0
		}
		return i, 1
	}
	return i, s
}

// same reports whether two meetings are one place passed by the same parts.
func (t tangle) same(a, b hit) bool {
	return a.i == b.i && a.j == b.j && a.at.Near(b.at, 10*weld)
}

// crosses reports whether the passages of a meeting change sides, or come
// together to run the same way: to part two ways laid over each other there is
// right whichever side they leave to, and where they leave nothing is left to
// part. Those that run against each other only touch. A joint is no meeting
// with itself.
func (t tangle) crosses(h hit) bool {
	if h.i == h.j && h.s == h.t {
		return false
	}
	a0, a1 := t.ways(h.i, h.s)
	b0, b1 := t.ways(h.j, h.t)
	for _, v := range [...]Vector{a0, a1, b0, b1} {
		if v == (Vector{}) {
			return false
		}
	}
	if alike(a0, b0) || alike(a1, b1) {
		return !alike(a0, b0)
	}
	return sideOf(a0, a1, b0)*sideOf(a0, a1, b1) < 0
}

// ways are the directions back and on from a place on the path; zero at the
// ends of an open one.
func (t tangle) ways(i int, s float64) (back, on Vector) {
	p := t.path
	on = p[i].Tangent(s)
	back = on
	switch {
	case s == 0 && i > 0:
		back = p[i-1].Tangent(1)
	case s == 0 && t.closed:
		back = p[len(p)-1].Tangent(1)
	case s == 0:
		back = Vector{}
	case s == 1 && i+1 < len(p):
		on = p[i+1].Tangent(0)
	case s == 1:
		on = Vector{}
	}
	return back.Scale(-1), on
}

// sideOf tells on which side of a bent way (its two ends given as directions
// from the bend) the direction v lies: +1, -1, or 0 along one of them.
func sideOf(p0, p1, v Vector) int {
	if alike(p0, v) || alike(p1, v) {
		return 0
	}
	a, b := p0.Cross(v) > 0, v.Cross(p1) > 0
	in := a && b
	if p0.Cross(p1) <= 0 {
		in = a || b
		if p0.Cross(p1) == 0 {
			in = a
		}
	}
	if in {
		return 1
	}
	return -1
}

// alike reports whether two directions are the same but for rounding.
func alike(u, v Vector) bool {
	return math.Abs(u.Cross(v)) <= parallel && u.Dot(v) > 0
}
