package geom

import "math"

// Segment is a cubic Bézier from A to D with handles B and C. A straight one
// has Curved false and its handles on the thirds; its handles are not read.
type Segment struct {
	A, B, C, D Point
	Curved     bool
}

// Straight is the straight segment from a to d.
func Straight(a, d Point) Segment {
	return Segment{A: a, B: a.Lerp(d, 1.0/3), C: a.Lerp(d, 2.0/3), D: d}
}

// Curve is the cubic from a to d with handles b and c.
func Curve(a, b, c, d Point) Segment {
	return Segment{A: a, B: b, C: c, D: d, Curved: true}
}

// At is the point at parameter t. At 0 and 1 it is exactly A and D.
func (s Segment) At(t float64) Point {
	if !s.Curved {
		return s.A.Lerp(s.D, t)
	}
	bc := s.B.Lerp(s.C, t)
	l := s.A.Lerp(s.B, t).Lerp(bc, t)
	r := bc.Lerp(s.C.Lerp(s.D, t), t)
	return l.Lerp(r, t)
}

// Derivative is the velocity at t, in millimetres per unit of t.
func (s Segment) Derivative(t float64) Vector {
	if !s.Curved {
		return s.A.To(s.D)
	}
	return s.velocity().at(t)
}

// quad is a vector polynomial a t² + b t + c: the velocity of a cubic.
type quad struct{ a, b, c Vector }

func (s Segment) velocity() quad {
	p, q, r := s.A.To(s.B), s.B.To(s.C), s.C.To(s.D)
	return quad{
		a: Vector{3 * (p.X - 2*q.X + r.X), 3 * (p.Y - 2*q.Y + r.Y)},
		b: Vector{6 * (q.X - p.X), 6 * (q.Y - p.Y)},
		c: Vector{3 * p.X, 3 * p.Y},
	}
}

func (q quad) at(t float64) Vector {
	return Vector{
		float64((float64(q.a.X*t)+q.b.X)*t) + q.c.X,
		float64((float64(q.a.Y*t)+q.b.Y)*t) + q.c.Y,
	}
}

// slope is the acceleration of the cubic.
func (q quad) slope(t float64) Vector {
	return Vector{float64(2*q.a.X*t) + q.b.X, float64(2*q.a.Y*t) + q.b.Y}
}

func (q quad) speed(t float64) float64 {
	x := float64((float64(q.a.X*t)+q.b.X)*t) + q.c.X
	y := float64((float64(q.a.Y*t)+q.b.Y)*t) + q.c.Y
	return math.Sqrt(float64(x*x) + float64(y*y))
}

// still is the share of the control polygon's size below which a velocity has
// no direction worth reading.
const still = 1e-9

// size is the length of the control polygon: no part of the curve is longer.
func (s Segment) size() float64 {
	return s.A.Dist(s.B) + s.B.Dist(s.C) + s.C.Dist(s.D)
}

// Tangent is the direction of travel at t, one long. Where a handle coincides
// with its end it is the direction the curve leaves or arrives in; at a cusp
// inside, the direction it goes on in. A segment that is a single point has no
// direction: its tangent is zero.
func (s Segment) Tangent(t float64) Vector {
	if !s.Curved {
		return s.A.To(s.D).Unit()
	}
	v := s.velocity()
	d := v.at(t)
	least := still * s.size()
	if d.Len() > least {
		return d.Unit()
	}
	var tries [3]Vector
	switch {
	case t <= 0:
		tries = [3]Vector{s.A.To(s.B), s.A.To(s.C), s.A.To(s.D)}
	case t >= 1:
		tries = [3]Vector{s.C.To(s.D), s.B.To(s.D), s.A.To(s.D)}
	default:
		tries = [3]Vector{v.slope(t), v.a, s.A.To(s.D)}
	}
	for _, w := range tries {
		if w.Len() > least {
			return w.Unit()
		}
	}
	return s.A.To(s.D).Unit()
}

// Curvature is one over the radius at t, positive where the curve bends to the
// Left of travel: the parallel at distance d has velocity B'(t)(1 - d k). It is
// infinite where the curve stands still and turns.
func (s Segment) Curvature(t float64) float64 {
	if !s.Curved {
		return 0
	}
	v := s.velocity()
	d := v.at(t)
	l := d.Len()
	x := v.slope(t).Cross(d)
	if x == 0 {
		return 0
	}
	return x / float64(l*l*l)
}

// Split cuts the segment at t into what lies before and after.
func (s Segment) Split(t float64) (Segment, Segment) {
	if !s.Curved {
		m := s.At(t)
		return Straight(s.A, m), Straight(m, s.D)
	}
	ab, bc, cd := s.A.Lerp(s.B, t), s.B.Lerp(s.C, t), s.C.Lerp(s.D, t)
	l, r := ab.Lerp(bc, t), bc.Lerp(cd, t)
	m := l.Lerp(r, t)
	return Curve(s.A, ab, l, m), Curve(m, r, cd, s.D)
}

// Part is the segment from t0 to t1, turned round if t1 is less than t0.
func (s Segment) Part(t0, t1 float64) Segment {
	if t1 < t0 {
		return s.Part(t1, t0).Reverse()
	}
	a, d := s.At(t0), s.At(t1)
	if !s.Curved {
		return Straight(a, d)
	}
	if t1 < 1 {
		s, _ = s.Split(t1)
		if t1 > 0 {
			t0 /= t1
		}
	}
	if t0 > 0 {
		_, s = s.Split(min(t0, 1))
	}
	// The ends are those of At to the last bit, so that parts meet.
	s.A, s.D = a, d
	return s
}

// Reverse is the segment travelled the other way.
func (s Segment) Reverse() Segment {
	return Segment{A: s.D, B: s.C, C: s.B, D: s.A, Curved: s.Curved}
}

// Transform maps the segment.
func (s Segment) Transform(m Matrix) Segment {
	if !s.Curved {
		return Straight(m.Apply(s.A), m.Apply(s.D))
	}
	return Curve(m.Apply(s.A), m.Apply(s.B), m.Apply(s.C), m.Apply(s.D))
}

// Bounds is the smallest upright box that holds the segment.
func (s Segment) Bounds() Box {
	b := span(s.A, s.D)
	if !s.Curved || b.Contains(s.B) && b.Contains(s.C) {
		return b
	}
	v := s.velocity()
	for _, t := range quadRoots(v.a.X, v.b.X, v.c.X) {
		if 0 < t && t < 1 {
			x := s.At(t).X
			b.Min.X, b.Max.X = min(b.Min.X, x), max(b.Max.X, x)
		}
	}
	for _, t := range quadRoots(v.a.Y, v.b.Y, v.c.Y) {
		if 0 < t && t < 1 {
			y := s.At(t).Y
			b.Min.Y, b.Max.Y = min(b.Min.Y, y), max(b.Max.Y, y)
		}
	}
	return b
}

// hull is the box of the control points: larger than Bounds, but quick.
func (s Segment) hull() Box {
	b := span(s.A, s.D)
	if !s.Curved {
		return b
	}
	return Box{
		Point{min(b.Min.X, s.B.X, s.C.X), min(b.Min.Y, s.B.Y, s.C.Y)},
		Point{max(b.Max.X, s.B.X, s.C.X), max(b.Max.Y, s.B.Y, s.C.Y)},
	}
}
