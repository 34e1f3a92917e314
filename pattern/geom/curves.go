package geom

import "math"

// piece is a part of a curve between two parameters.
type piece struct {
	Segment
	lo, hi float64
}

func (p piece) halve() (piece, piece) {
	l, r := p.Split(0.5)
	m := (p.lo + p.hi) / 2
	return piece{l, p.lo, m}, piece{r, m, p.hi}
}

// fan is the tangent of the widest angle between a leg of the control polygon
// and its chord; infinite if a leg runs against the chord.
func (p piece) fan() float64 {
	u := p.A.To(p.D)
	wide := 0.0
	for _, v := range [...]Vector{p.A.To(p.B), p.B.To(p.C), p.C.To(p.D)} {
		if v == (Vector{}) {
			continue
		}
		d := u.Dot(v)
		if d <= 0 {
			return math.Inf(1)
		}
		wide = max(wide, math.Abs(u.Cross(v))/d)
	}
	return wide
}

// beside reports whether q lies wholly to one side of the strip along p's
// chord that holds p. Upright boxes part slanting curves badly, this well.
func (p piece) beside(q piece) bool {
	u := p.A.To(p.D)
	l := u.Len()
	if l == 0 {
		return false
	}
	slack := touch * l
	b, c := u.Cross(p.A.To(p.B)), u.Cross(p.A.To(p.C))
	lo, hi := min(0, b, c)-slack, max(0, b, c)+slack
	w, x, y, z := u.Cross(p.A.To(q.A)), u.Cross(p.A.To(q.B)), u.Cross(p.A.To(q.C)), u.Cross(p.A.To(q.D))
	return min(w, x, y, z) > hi || max(w, x, y, z) < lo
}

const (
	// nearlyStraight is the fan below which a step by the chords' crossing
	// leads home.
	nearlyStraight = 0.3
	// smallest is the size of pieces that are not halved again, in mm: two
	// curves of any radius in use that do not part before that are tangent.
	smallest = 1e-3
	// mostPairs is how many pairs of pieces are looked at before the curves
	// are held to be the same: tangent ones need some hundreds.
	mostPairs = 6000
)

// crossing is the search for the meetings of two curves.
type crossing struct {
	a, b Segment
	out  []pair
	left int
}

// crossCurves meets two curves: pieces whose boxes overlap are halved until
// they are nearly straight and clearly not parallel, when they meet once at
// most and the place is found by Newton's steps.
func crossCurves(a, b Segment, out []pair) []pair {
	if a == b || a == b.Reverse() {
		return crossShared(a, b, out)
	}
	n := len(out)
	c := crossing{a: a, b: b, out: out[n:], left: mostPairs}
	// Shared ends are found here, whatever the curves do there.
	c.ends()
	c.search(piece{a, 0, 1}, piece{b, 0, 1})
	if c.left <= 0 {
		return crossShared(a, b, out[:n])
	}
	return append(out[:n], c.out...)
}

func (c *crossing) ends() {
	for _, s := range [...]float64{0, 1} {
		for _, t := range [...]float64{0, 1} {
			if c.a.At(s).Near(c.b.At(t), touch) {
				c.out = append(c.out, pair{s, t})
			}
		}
	}
}

func (c *crossing) search(p, q piece) {
	if c.left--; c.left <= 0 {
		return
	}
	hp, hq := p.hull(), q.hull()
	if !hp.Grow(touch).meets(hq) || p.beside(q) || q.beside(p) {
		return
	}
	wp, wq := max(hp.Width(), hp.Height()), max(hq.Width(), hq.Height())
	if wp < smallest && wq < smallest {
		c.last(p, q)
		return
	}
	fp, fq := p.fan(), q.fan()
	if fp < nearlyStraight && fq < nearlyStraight {
		u, v := p.A.To(p.D).Unit(), q.A.To(q.D).Unit()
		if math.Abs(u.Cross(v)) > fp+fq && c.newton(p, q) {
			return
		}
	}
	if wp >= wq {
		l, r := p.halve()
		c.search(l, q)
		c.search(r, q)
		return
	}
	l, r := q.halve()
	c.search(p, l)
	c.search(p, r)
}

// newton looks for the one meeting of p and q and reports whether it is found.
// A meeting outside them says nothing: the steps may have missed one inside.
func (c *crossing) newton(p, q piece) bool {
	const slack = 1e-9
	s, t, ok := c.meet((p.lo+p.hi)/2, (q.lo+q.hi)/2)
	if !ok || s < p.lo-slack || s > p.hi+slack || t < q.lo-slack || t > q.hi+slack {
		return false
	}
	c.found(s, t, weld)
	return true
}

// found keeps a meeting that lies on both curves or a touch beyond their ends,
// if it is more than tol from those found before.
func (c *crossing) found(s, t, tol float64) {
	ls, lt := c.a.size(), c.b.size()
	s, okS := held(s, ls)
	t, okT := held(t, lt)
	if okS && okT && c.a.At(s).Near(c.b.At(t), 2*touch) {
		c.out = appendApart(c.a, c.b, c.out, pair{s, t}, tol)
	}
}

// meet follows Newton's steps to A(s) = B(t).
func (c *crossing) meet(s, t float64) (float64, float64, bool) {
	va, vb := c.a.velocity(), c.b.velocity()
	for range 16 {
		w := c.a.At(s).To(c.b.At(t))
		u, v := va.at(s), vb.at(t)
		den := u.Cross(v)
		if den == 0 {
			return 0, 0, false
		}
		ds, dt := w.Cross(v)/den, w.Cross(u)/den
		s, t = s+ds, t+dt
		if !(math.Abs(s) < 8 && math.Abs(t) < 8) {
			return 0, 0, false
		}
		if math.Abs(ds)+math.Abs(dt) < 1e-14 {
			break
		}
	}
	return s, t, c.a.At(s).Near(c.b.At(t), touch)
}

// last settles two pieces too small to halve: they cross, or they touch where
// they are parallel, or they pass by. Where curves hug each other, what is found
// within the size of a piece is one touch.
func (c *crossing) last(p, q piece) {
	s, t := (p.lo+p.hi)/2, (q.lo+q.hi)/2
	if x, y, ok := c.meet(s, t); ok {
		c.found(x, y, smallest)
		return
	}
	// Where they are parallel and beside each other: A' x B' = 0 and
	// (B - A) . A' = 0, by Newton's steps.
	va, vb := c.a.velocity(), c.b.velocity()
	for range 12 {
		w := c.a.At(s).To(c.b.At(t))
		u, v := va.at(s), vb.at(t)
		au, av := va.slope(s), vb.slope(t)
		f, g := u.Cross(v), w.Dot(u)
		fs, ft := au.Cross(v), u.Cross(av)
		gs, gt := w.Dot(au)-u.Dot(u), v.Dot(u)
		den := float64(fs*gt) - float64(ft*gs)
		if den == 0 {
			return
		}
		ds := (float64(g*ft) - float64(f*gt)) / den
		dt := (float64(f*gs) - float64(g*fs)) / den
		s, t = s+ds, t+dt
		if !(math.Abs(s) < 8 && math.Abs(t) < 8) {
			return
		}
		if math.Abs(ds)+math.Abs(dt) < 1e-14 {
			break
		}
	}
	c.found(s, t, smallest)
}
