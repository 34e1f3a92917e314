package card

import (
	"sort"

	"chalkfold/pattern/geom"
)

// stop is a place on the tape that could become a mark: where it is chalked
// and where on the true line it stands for.
type stop struct {
	s      float64    // length along the line
	on     geom.Point // of the line
	of     geom.Point // the exact place it stands for; off the line where a corner is rounded
	at     geom.Point // on the tape
	shared bool       // its level (or distance out) is chalked anyway
}

// stops lists all that the tape offers along the line between the two given
// ones: wherever the line crosses a whole step of level, with its distance out
// rounded, and wherever it crosses a whole step out, with its level rounded.
// So one of the two numbers is always exact and no stop is farther than half a
// step from the line. Where the line turns back, up, down, in or out, its
// farthest point is rounded both ways.
func stops(l line, g grid, from, to stop) []stop {
	var found []stop
	add := func(s float64) {
		if s <= from.s || s >= to.s {
			return
		}
		on := l.at(s)
		found = append(found, stop{s: s, on: on, of: on, at: g.spot(on)})
	}
	for _, upright := range []bool{false, true} {
		eachStep(l, g, from.s, to.s, upright, add)
	}
	for i := 1; i+1 < len(l.pts); i++ {
		u, v := l.pts[i-1].To(l.pts[i]), l.pts[i].To(l.pts[i+1])
		if u.X*v.X < 0 || u.Y*v.Y < 0 {
			add(l.s[i])
		}
	}
	sort.SliceStable(found, func(i, j int) bool { return found[i].s < found[j].s })
	out := []stop{from}
	for _, f := range found {
		if f.at != out[len(out)-1].at {
			out = append(out, f)
		}
	}
	for len(out) > 1 && out[len(out)-1].at == to.at {
		out = out[:len(out)-1]
	}
	return append(out, to)
}

// eachStep calls add with every length between a and b at which the line
// crosses a whole step.
func eachStep(l line, g grid, a, b float64, upright bool, add func(s float64)) {
	of := func(p geom.Point) float64 {
		if upright {
			return p.X
		}
		return p.Y
	}
	step := g.step.MM()
	for i := 1; i < len(l.pts); i++ {
		if l.s[i] < a || l.s[i-1] > b {
			continue
		}
		p, q := of(l.pts[i-1]), of(l.pts[i])
		lo, hi := min(p, q), max(p, q)
		for y := g.near(lo) - step; y <= hi; y += step {
			if y > lo && y <= hi {
				add(l.s[i-1] + (y-p)/(q-p)*(l.s[i]-l.s[i-1]))
			}
		}
	}
}

// stray is the largest distance between the line from a to b and the chord
// that joins their marks; false if it passes the bound.
//
// It is enough to look from the line to the chord. The distance to a straight
// stretch is convex, so on a flattened line it is largest at one of its
// points. And a point of the chord is never farther from the line than that:
// between the feet of the two ends the line passes over it, beyond them lies
// an end of the line whose mark and foot are both within the bound.
func stray(l line, a, b stop, bound float64) (float64, bool) {
	most := 0.0
	try := func(p geom.Point) bool {
		q, _ := onto(p, a.at, b.at)
		d := p.Dist(q)
		most = max(most, d)
		return d <= bound && p.Dist(q) <= bound
	}
	if a.on.Dist(a.at) > bound || b.on.Dist(b.at) > bound || !try(a.on) || !try(b.on) {
		return most, false
	}
	i := sort.SearchFloat64s(l.s, a.s)
	j := sort.SearchFloat64s(l.s, b.s)
	if mid := (i + j) / 2; mid > i && mid < j && !try(l.pts[mid]) {
		return most, false // the middle fails first, mostly
	}
	for ; i < j; i++ {
		if !try(l.pts[i]) {
			return most, false
		}
	}
	return most, true
}

// way is one way of marks from the first stop to another.
type way struct {
	marks int
	fuss  int
	off   float64 // sum of squares of what the chords stray
	from  int
	found bool
}

func (w way) better(v way) bool {
	switch {
	case w.marks != v.marks:
		return w.marks < v.marks
	case w.fuss != v.fuss:
		return w.fuss < v.fuss
	}
	return w.off < v.off
}

// fewest picks of the stops, first and last included, the fewest whose chords
// stay within the bound of the line; of equally few the ones with the least
// fuss, then the ones that lie best. It is dynamic programming: the best way
// to stop j is the best way to some stop i from which one chord reaches j.
// Fuss, if given, says what a chord from stop i to j costs besides; it never
// buys a mark. False if there is no way.
func fewest(l line, all []stop, bound float64, fuss func(i, j int) int) ([]stop, bool) {
	best := make([]way, len(all))
	best[0].found = true
	for j := 1; j < len(all); j++ {
		for i := 0; i < j; i++ {
			w := best[i]
			if !w.found || best[j].found && w.marks+1 > best[j].marks {
				continue
			}
			d, ok := stray(l, all[i], all[j], bound)
			if !ok {
				continue
			}
			w.marks, w.off, w.from = w.marks+1, w.off+float64(d*d), i
			if fuss != nil {
				w.fuss += fuss(i, j)
			}
			if !best[j].found || w.better(best[j]) {
				best[j] = w
			}
		}
	}
	last := len(all) - 1
	if !best[last].found {
		return nil, false
	}
	var out []stop
	for j := last; j > 0; j = best[j].from {
		out = append(out, all[j])
	}
	out = append(out, all[0])
	for i, j := 0, len(out)-1; i < j; i, j = i+1, j-1 {
		out[i], out[j] = out[j], out[i]
	}
	return out, true
}

// holds says that the chords through these stops stay within the bound.
func holds(l line, marks []stop, bound float64) bool {
	for i := 1; i < len(marks); i++ {
		if marks[i].s <= marks[i-1].s {
			return false
		}
		if _, ok := stray(l, marks[i-1], marks[i], bound); !ok {
			return false
		}
	}
	return true
}
