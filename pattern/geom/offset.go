package geom

import "math"

// miterReach is how far, in offsets, the lines at an outer corner inside a path
// may be lengthened to meet: corners sharper than some 30 degrees are blunted.
const miterReach = 4

// Offset is the path parallel at distance d, to the Left of travel where d is
// positive, nowhere more than tol out (nor less than leastTol asked of it).
//
// Straight segments stay straight. Neighbours that run on smoothly stay
// together. At a corner the parallels are lengthened to meet on the outer side
// and cut where they cross on the inner. Where d passes the radius of
// curvature, or a corner is nearer than d, the parallel would run back in a
// loop: the loop is cut off where the path crosses itself. If nothing is left
// the result is nil.
func (p Path) Offset(d, tol float64) Path {
	if d == 0 || len(p) == 0 {
		return append(Path(nil), p...)
	}
	o := offsetting{d: d, tol: max(tol, leastTol)}
	closed := p.Closed()
	last := Vector{}
	for _, s := range p {
		if s.size() <= cutSlack {
			continue
		}
		if first := s.Tangent(0); len(o.out) == 0 {
			o.segment(s)
		} else {
			k := len(o.out)
			o.segment(s)
			o.corner(k, last, first)
		}
		last = s.Tangent(1)
	}
	if len(o.out) == 0 {
		return nil
	}
	if closed {
		o.wrap(last, p.StartTangent())
	}
	if !o.tangled {
		return o.out
	}
	t := tangle{path: o.out, back: o.back, closed: closed}
	if closed {
		return t.ring(p.Area())
	}
	return t.strand().withoutBack(p, d, o.tol)
}

// offsetting is a parallel in the making. Beside each piece stands whether it
// runs back: such a piece is there only to be crossed and cut off.
type offsetting struct {
	d, tol  float64
	out     Path
	back    []bool
	tangled bool
}

func (o *offsetting) add(s Segment, back bool) {
	o.out = append(o.out, s)
	o.back = append(o.back, back)
	o.tangled = o.tangled || back
}

// insert puts a straight piece before piece k.
func (o *offsetting) insert(k int, s Segment, back bool) {
	o.add(s, back)
	copy(o.out[k+1:], o.out[k:])
	copy(o.back[k+1:], o.back[k:])
	o.out[k], o.back[k] = s, back
}

// corner joins the piece before k to piece k, whose sources arrive in
// direction u and leave in v.
func (o *offsetting) corner(k int, u, v Vector) {
	if k >= len(o.out) {
		return
	}
	a, b := o.out[k-1].D, o.out[k].A
	switch at, how := o.meeting(a, b, u, v); how {
	case smooth:
		o.out[k] = o.out[k].startingAt(a)
	case outer:
		if !o.out[k].Curved {
			o.out[k] = Straight(at, o.out[k].D)
		} else {
			o.insert(k, Straight(at, b), false)
		}
		if !o.out[k-1].Curved {
			o.out[k-1] = Straight(o.out[k-1].A, at)
		} else {
			o.insert(k, Straight(a, at), false)
		}
	default:
		o.insert(k, Straight(a, b), how == inner)
	}
}

// wrap joins the last piece to the first.
func (o *offsetting) wrap(u, v Vector) {
	n := len(o.out)
	a, b := o.out[n-1].D, o.out[0].A
	switch at, how := o.meeting(a, b, u, v); how {
	case smooth:
		o.out[n-1] = o.out[n-1].endingAt(b)
	case outer:
		if !o.out[n-1].Curved {
			o.out[n-1] = Straight(o.out[n-1].A, at)
		} else {
			o.add(Straight(a, at), false)
		}
		if !o.out[0].Curved {
			o.out[0] = Straight(at, o.out[0].D)
		} else {
			o.insert(0, Straight(at, b), false)
		}
	default:
		o.add(Straight(a, b), how == inner)
	}
}

// How two parallels come together.
type joint int8

const (
	smooth joint = iota // they meet, but for rounding
	outer               // lengthened, they meet
	inner               // they have crossed already
	blunt               // lengthened, they would meet too far away
)

func (o *offsetting) meeting(a, b Point, u, v Vector) (Point, joint) {
	if a.Near(b, o.tol/4) {
		return a, smooth
	}
	turn := u.Cross(v)
	if o.d*turn < 0 {
		return Point{}, inner
	}
	at, ok := Meet(Line{a, u}, Line{b, v})
	reach := miterReach * math.Abs(o.d)
	if !ok || !at.Near(a, reach) || !at.Near(b, reach) {
		return Point{}, blunt
	}
	return at, outer
}

// segment appends the parallel of one segment.
func (o *offsetting) segment(s Segment) {
	if !s.Curved {
		n := s.Tangent(0).Left().Scale(o.d)
		o.add(Straight(s.A.Add(n), s.D.Add(n)), false)
		return
	}
	c := parallelOf{s: s, v: s.velocity(), d: o.d, least: still * s.size()}
	lo := 0.0
	var room [8]float64
	for _, hi := range append(c.turns(room[:0]), 1) {
		back := c.forward((lo+hi)/2) < 0
		for _, q := range c.fit(lo, hi, o.tol, fitDepth, nil) {
			if len(o.out) > 0 && lo > 0 {
				q = q.startingAt(o.out[len(o.out)-1].D)
			}
			if q.size() > cutSlack {
				o.add(q, back)
			}
		}
		lo = hi
	}
}

// parallelOf is the exact parallel of a curve, which is no cubic.
type parallelOf struct {
	s        Segment
	v        quad
	d, least float64
}

// at is the point of the parallel beside the curve's point at t.
func (c *parallelOf) at(t float64) Point {
	return c.s.At(t).Add(c.s.Tangent(t).Left().Scale(c.d))
}

// velocity is that of the parallel: B'(t)(1 - d k).
func (c *parallelOf) velocity(t float64) Vector {
	if v := c.v.at(t); v.Len() > c.least {
		l := v.Len()
		return v.Scale(1 - c.d*c.v.slope(t).Cross(v)/float64(l*l*l))
	}
	// The curve stands still; its parallel need not. Look beside.
	const beside = 1e-4
	u := t + beside
	if t > 0.5 {
		u = t - beside
	}
	v := c.v.at(u)
	l := v.Len()
	if l == 0 {
		return Vector{}
	}
	return c.s.Tangent(t).Scale(l - c.d*c.v.slope(u).Cross(v)/float64(l*l))
}

// forward has the sign of 1 - d k, without a division by the speed.
func (c *parallelOf) forward(t float64) float64 {
	v := c.v.at(t)
	l := v.Len()
	return float64(l*l*l) - float64(c.d*c.v.slope(t).Cross(v))
}

// turnSamples is how finely a curve is searched for places where its parallel
// turns back; lows between the samples are followed down.
const turnSamples = 32

// turns appends the places where the parallel turns back or forward again.
func (c *parallelOf) turns(out []float64) []float64 {
	var f [turnSamples + 1]float64
	for i := range f {
		f[i] = c.forward(float64(i) / turnSamples)
	}
	for i := range turnSamples {
		lo, hi := float64(i)/turnSamples, float64(i+1)/turnSamples
		if f[i]*f[i+1] < 0 {
			out = append(out, c.zero(lo, hi))
			continue
		}
		if i == 0 || f[i] <= 0 || f[i] > f[i-1] || f[i] > f[i+1] {
			continue
		}
		// A low: it may dip under nought on either side of the sample.
		lo -= 1.0 / turnSamples
		if m := c.low(lo, hi); c.forward(m) < 0 {
			out = append(out, c.zero(lo, m), c.zero(m, hi))
		}
	}
	return out
}

// zero halves down to the change of sign between lo and hi.
func (c *parallelOf) zero(lo, hi float64) float64 {
	up := c.forward(hi) > 0
	for hi-lo > 1e-14 {
		m := (lo + hi) / 2
		if m == lo || m == hi {
			break
		}
		if (c.forward(m) > 0) == up {
			hi = m
		} else {
			lo = m
		}
	}
	return (lo + hi) / 2
}

// low finds the least of forward between lo and hi by thirds.
func (c *parallelOf) low(lo, hi float64) float64 {
	for range 40 {
		a := lo + (hi-lo)/3
		b := hi - (hi-lo)/3
		if c.forward(a) < c.forward(b) {
			hi = b
		} else {
			lo = a
		}
	}
	return (lo + hi) / 2
}

const (
	// fitDepth ends the halving where the source itself has a corner.
	fitDepth = 10
	// fitShare of the tolerance is what a fit may be out at the places
	// looked at; between them it may be a little worse.
	fitShare = 0.7
)

// fit appends cubics for the parallel between t0 and t1: each with the exact
// ends and the exact velocities there, halved until within tol.
func (c *parallelOf) fit(t0, t1, tol float64, depth int, out Path) Path {
	h := (t1 - t0) / 3
	a, d := c.at(t0), c.at(t1)
	q := Curve(a, a.Add(c.velocity(t0).Scale(h)), d.Add(c.velocity(t1).Scale(-h)), d)
	if depth == 0 || c.near(q, t0, t1, tol) {
		return append(out, q)
	}
	m := (t0 + t1) / 2
	out = c.fit(t0, m, tol, depth-1, out)
	return c.fit(m, t1, tol, depth-1, out)
}

// near reports whether q keeps to the parallel: across the way within the
// tolerance; along it, where it does not matter, only loosely.
func (c *parallelOf) near(q Segment, t0, t1, tol float64) bool {
	for _, u := range [...]float64{0.25, 0.5, 0.75} {
		t := t0 + float64((t1-t0)*u)
		e := c.at(t).To(q.At(u))
		w := c.s.Tangent(t)
		if math.Abs(w.Cross(e)) > fitShare*tol || math.Abs(w.Dot(e)) > 10*tol {
			return false
		}
	}
	return true
}
