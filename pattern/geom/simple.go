package geom

import (
	"cmp"
	"slices"
)

// Simple reports whether the outline is a plain ring: no two of its edges
// share a point but neighbours their corner. Points repeated in a row count
// once; a ring of fewer than three points is not simple.
func (o Outline) Simple() bool {
	r := o.ring()
	if len(r.at) < 3 {
		return false
	}
	_, found := r.first(r.contact)
	return !found
}

// Crossing finds where the outline crosses itself: edge i (from its point i)
// and a later edge j, the first such pair in order. A touch, a corner resting
// on an edge or a stretch run back over is no crossing.
func (o Outline) Crossing() (i, j int, at Point, found bool) {
	r := o.ring()
	if len(r.at) < 3 {
		return 0, 0, Point{}, false
	}
	pair, found := r.first(func(i, j int) bool {
		_, yes := r.crosses(i, j)
		return yes
	})
	if !found {
		return 0, 0, Point{}, false
	}
	at, _ = r.crosses(pair[0], pair[1])
	return r.from[pair[0]], r.from[pair[1]], at, true
}

// ring is an outline without points repeated in a row; from keeps the index
// of each edge in the outline.
type ring struct {
	at   []Point
	from []int
}

func (o Outline) ring() ring {
	var r ring
	for i, p := range o {
		// An edge counts from the last of its repeated points.
		if n := len(r.at); n > 0 && r.at[n-1] == p {
			r.from[n-1] = i
			continue
		}
		r.at = append(r.at, p)
		r.from = append(r.from, i)
	}
	for n := len(r.at); n > 1 && r.at[n-1] == r.at[0]; n-- {
		r.at, r.from = r.at[:n-1], r.from[:n-1]
	}
	return r
}

func (r ring) point(i int) Point {
	n := len(r.at)
	return r.at[(i%n+n)%n]
}

// sweepFrom is the number of edges from which sorting them pays.
const sweepFrom = 500

// first finds the first pair of edges, by i and then j, of which hit is true.
func (r ring) first(hit func(i, j int) bool) ([2]int, bool) {
	if len(r.at) < sweepFrom {
		return r.allPairs(r.boxes(), hit)
	}
	return r.sweep(r.boxes(), hit)
}

func (r ring) boxes() []Box {
	out := make([]Box, len(r.at))
	for i := range out {
		out[i] = span(r.at[i], r.point(i+1))
	}
	return out
}

func (r ring) allPairs(boxes []Box, hit func(i, j int) bool) ([2]int, bool) {
	for i := range boxes {
		for j := i + 1; j < len(boxes); j++ {
			if boxes[i].meets(boxes[j]) && hit(i, j) {
				return [2]int{i, j}, true
			}
		}
	}
	return [2]int{}, false
}

// sweep takes the edges by their left sides and tries each only with those
// that reach so far.
func (r ring) sweep(boxes []Box, hit func(i, j int) bool) ([2]int, bool) {
	order := make([]int, len(boxes))
	for i := range order {
		order[i] = i
	}
	slices.SortFunc(order, func(a, b int) int {
		return cmp.Or(cmp.Compare(boxes[a].Min.X, boxes[b].Min.X), cmp.Compare(a, b))
	})
	best, found := [2]int{}, false
	var open []int
	for _, k := range order {
		kept := open[:0]
		for _, m := range open {
			if boxes[m].Max.X < boxes[k].Min.X {
				continue
			}
			kept = append(kept, m)
			i, j := min(k, m), max(k, m)
			sooner := !found || i < best[0] || i == best[0] && j < best[1]
			if sooner && boxes[i].meets(boxes[j]) && hit(i, j) {
				best, found = [2]int{i, j}, true
			}
		}
		kept = append(kept, k)
		open = kept
	}
	return best, found
}

// contact reports whether edges i < j share a point they should not.
func (r ring) contact(i, j int) bool {
	a, b, c, d := r.at[i], r.point(i+1), r.at[j], r.point(j+1)
	n := len(r.at)
	if j == i+1 {
		return folded(a, b, d)
	}
	if i == 0 && j == n-1 {
		return folded(c, a, b)
	}
	return turn(a, b, c)*turn(a, b, d) <= 0 && turn(c, d, a)*turn(c, d, b) <= 0
}

// folded reports whether the way a to b to c runs back over itself.
func folded(a, b, c Point) bool {
	return turn(a, b, c) == 0 && b.To(a).Dot(b.To(c)) > 0
}

// crosses reports whether the ring changes sides where edges i < j meet. A
// meeting at corners is laid to the edges that start there, so that it counts
// once.
func (r ring) crosses(i, j int) (Point, bool) {
	n := len(r.at)
	if j == i+1 || i == 0 && j == n-1 {
		return Point{}, false
	}
	a, b, c, d := r.at[i], r.point(i+1), r.at[j], r.point(j+1)
	tc, td := turn(a, b, c), turn(a, b, d)
	ta, tb := turn(c, d, a), turn(c, d, b)
	if tc*td > 0 || ta*tb > 0 {
		return Point{}, false
	}
	if tc*td < 0 && ta*tb < 0 {
		at, ok := Meet(Line{a, a.To(b)}, Line{c, c.To(d)})
		if !ok { // Nearly parallel: anywhere they overlap is as right.
			at = c.Lerp(d, 0.5)
		}
		return at, true
	}
	switch {
	case a == c:
		return a, interleave(a, r.point(i-1), b, r.point(j-1), d)
	case ta == 0 && a != d && within(a, c, d):
		return a, interleave(a, r.point(i-1), b, c, d)
	case tc == 0 && c != b && within(c, a, b):
		return c, interleave(c, a, b, r.point(j-1), d)
	}
	return Point{}, false
}

// within reports whether p, known to be in line with a and b, lies on the edge.
func within(p, a, b Point) bool {
	return span(a, b).Contains(p)
}

// interleave reports whether a way from p0 through o to p1 crosses one from q0
// through o to q1: of the four, each pair parts the other. Ways that leave in
// the same direction do not cross here.
func interleave(o, p0, p1, q0, q1 Point) bool {
	s0, s1 := between(o, p0, p1, q0), between(o, p0, p1, q1)
	return s0*s1 < 0
}

// between tells whether, turning from p0 about o clockwise, q comes before p1
// (+1) or after it (-1), or lies on one of them (0).
func between(o, p0, p1, q Point) int {
	if along(o, p0, q) || along(o, p1, q) {
		return 0
	}
	a, b := turn(o, p0, q), turn(o, q, p1)
	wide := turn(o, p0, p1)
	var in bool
	switch {
	case wide > 0: // less than a half turn
		in = a > 0 && b > 0
	case wide < 0: // more
		in = a > 0 || b > 0
	case along(o, p0, p1): // folded: nothing in between
		in = false
	default: // straight on
		in = a > 0
	}
	if in {
		return 1
	}
	return -1
}

// along reports whether p and q lie in the same direction from o.
func along(o, p, q Point) bool {
	return turn(o, p, q) == 0 && o.To(p).Dot(o.To(q)) > 0
}
