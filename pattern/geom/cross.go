package geom

import (
	"cmp"
	"math"
	"slices"
)

// Crossing is where two paths meet: S is the length along the first, T along
// the second.
type Crossing struct {
	S, T float64
	At   Point
}

// Cross lists where the paths meet, in order along a. Touches count; of a
// stretch that the paths share, its ends do.
func Cross(a, b Path) []Crossing {
	hits := meetings(a, b)
	if len(hits) == 0 {
		return nil
	}
	sa, sb := a.starts(), b.starts()
	out := make([]Crossing, len(hits))
	for k, h := range hits {
		out[k] = Crossing{
			S:  sa[h.i] + a[h.i].LengthTo(h.s),
			T:  sb[h.j] + b[h.j].LengthTo(h.t),
			At: h.at,
		}
	}
	slices.SortFunc(out, func(x, y Crossing) int {
		return cmp.Or(cmp.Compare(x.S, y.S), cmp.Compare(x.T, y.T))
	})
	// A joint is met by both its segments. Equals need not be neighbours in
	// the order, for S may differ by a hair; but they are near.
	kept := out[:0]
	for _, c := range out {
		same := func(k Crossing) bool {
			return math.Abs(c.S-k.S) <= weld && math.Abs(c.T-k.T) <= weld
		}
		if !slices.ContainsFunc(kept, same) {
			kept = append(kept, c)
		}
	}
	return kept
}

// FirstCross is where a straight line first meets a path: what Cross lists
// first, without the lengths along the path that nobody asked for.
func FirstCross(line Segment, p Path) (Point, bool) {
	hits := meetings(Path{line}, p)
	if len(hits) == 0 {
		return Point{}, false
	}
	first, far := hits[0], line.LengthTo(hits[0].s)
	for _, h := range hits[1:] {
		if s := line.LengthTo(h.s); s < far || s == far && (h.j < first.j || h.j == first.j && h.t < first.t) {
			first, far = h, s
		}
	}
	return first.at, true
}

// starts lists the length along the path at which each segment starts.
func (p Path) starts() []float64 {
	out := make([]float64, len(p))
	sum := 0.0
	for i, s := range p {
		out[i] = sum
		if i+1 < len(p) {
			sum += s.Length()
		}
	}
	return out
}

// hit is a meeting of segment i at s with segment j at t.
type hit struct {
	i, j int
	s, t float64
	at   Point
}

func meetings(a, b Path) []hit {
	boxes := make([]Box, len(b))
	all := Box{}
	for j, s := range b {
		boxes[j] = s.hull().Grow(touch)
		all = all.Union(boxes[j])
	}
	var out []hit
	var room [16]pair
	for i, s := range a {
		h := s.hull()
		if !all.Overlaps(h) {
			continue
		}
		for j, u := range b {
			if !boxes[j].meets(h) {
				continue
			}
			for _, m := range crossSegments(s, u, room[:0]) {
				out = append(out, hit{i, j, m.s, m.t, s.At(m.s)})
			}
		}
	}
	return out
}

// pair is a meeting of two segments by their parameters.
type pair struct{ s, t float64 }

// touch is how near two segments must come to meet.
const touch = 1e-9

func crossSegments(a, b Segment, out []pair) []pair {
	switch {
	case !a.Curved && !b.Curved:
		return crossLines(a, b, out)
	case !a.Curved:
		return crossLine(a, b, out)
	case !b.Curved:
		n := len(out)
		out = crossLine(b, a, out)
		for k := n; k < len(out); k++ {
			out[k] = pair{out[k].t, out[k].s}
		}
		return out
	}
	return crossCurves(a, b, out)
}

// crossLines meets two straight segments.
func crossLines(a, b Segment, out []pair) []pair {
	u, v, w := a.A.To(a.D), b.A.To(b.D), a.A.To(b.A)
	lu, lv := u.Len(), v.Len()
	if lu == 0 || lv == 0 {
		return out
	}
	den := u.Cross(v)
	if math.Abs(den) > parallel*lu*lv {
		s, okS := held(w.Cross(v)/den, lu)
		t, okT := held(w.Cross(u)/den, lv)
		if okS && okT {
			out = append(out, pair{s, t})
		}
		return out
	}
	return crossShared(a, b, out)
}

// crossShared lists the ends of each segment that lie on the other: the ends
// of the stretch they share, if any.
func crossShared(a, b Segment, out []pair) []pair {
	n := len(out)
	add := func(p pair) {
		for _, q := range out[n:] {
			if a.At(q.s).Near(a.At(p.s), weld) {
				return
			}
		}
		out = append(out, p)
	}
	for _, s := range [...]float64{0, 1} {
		if t := b.Nearest(a.At(s)); b.At(t).Near(a.At(s), touch) {
			add(pair{s, t})
		}
	}
	for _, t := range [...]float64{0, 1} {
		if s := a.Nearest(b.At(t)); a.At(s).Near(b.At(t), touch) {
			add(pair{s, t})
		}
	}
	return out
}

// held brings t, a share of the given length, within [0, 1] if it is no
// farther out than a touch.
func held(t, length float64) (float64, bool) {
	slack := touch / length
	if t < -slack || t > 1+slack {
		return 0, false
	}
	if t < slack {
		return 0, true
	}
	if t > 1-slack {
		return 1, true
	}
	return t, true
}

// crossLine meets a straight segment with a curve.
func crossLine(a, b Segment, out []pair) []pair {
	u := a.A.To(a.D)
	l := u.Len()
	if l == 0 {
		return out
	}
	var room [6]float64
	for _, t := range b.onLine(Line{a.A, u}, room[:0]) {
		if s, ok := held(a.A.To(b.At(t)).Dot(u)/float64(l*l), l); ok {
			out = append(out, pair{s, t})
		}
	}
	// An end of the straight may lie on the curve where it just misses it.
	for _, s := range [...]float64{0, 1} {
		p := a.At(s)
		if !b.hull().Grow(touch).Contains(p) {
			continue
		}
		if t := b.Nearest(p); b.At(t).Near(p, touch) {
			out = appendNew(a, b, out, pair{s, t})
		}
	}
	return out
}

// appendNew appends p unless the meeting is there already, within rounding.
func appendNew(a, b Segment, out []pair, p pair) []pair {
	return appendApart(a, b, out, p, weld)
}

// appendApart appends p unless there is a meeting at the same place, to tol,
// of the same parts of both. (A curve may pass one place twice.)
func appendApart(a, b Segment, out []pair, p pair, tol float64) []pair {
	const part = 1e-3
	at, bt := a.At(p.s), b.At(p.t)
	for _, q := range out {
		if math.Abs(p.s-q.s) <= part && math.Abs(p.t-q.t) <= part &&
			a.At(q.s).Near(at, tol) && b.At(q.t).Near(bt, tol) {
			return out
		}
	}
	return append(out, p)
}
