package geom

import "math"

// lengthDoubt is how far two levels of the length sum may differ to be
// believed. The finer of them is then some hundred times nearer: well within
// the 1e-6 mm promised.
const lengthDoubt = 1e-8

// Nodes and weights of 5-point Gauss-Legendre on [-1, 1] (Abramowitz and
// Stegun, Handbook of Mathematical Functions, table 25.4).
const (
	node1, weight1 = 0.5384693101056830910, 0.4786286704993664680
	node2, weight2 = 0.9061798459386639928, 0.2369268850561890875
	weight0        = 0.5688888888888888889
)

// gauss is the length travelled from t0 to t1 by one 5-point sum.
func (q *quad) gauss(t0, t1 float64) float64 {
	m, h := (t0+t1)/2, (t1-t0)/2
	d1, d2 := float64(h*node1), float64(h*node2)
	sum := float64(weight0 * q.speed(m))
	sum += float64(weight1 * (q.speed(m-d1) + q.speed(m+d1)))
	sum += float64(weight2 * (q.speed(m-d2) + q.speed(m+d2)))
	return float64(sum * h)
}

// length halves until two levels agree. rough is the sum over the whole piece.
// Near a cusp two levels may agree by chance, so a piece in which the velocity
// may turn by a right angle is halved whatever they say.
func (q *quad) length(t0, t1, rough float64, depth int) float64 {
	m := (t0 + t1) / 2
	l, r := q.gauss(t0, m), q.gauss(m, t1)
	if depth == 0 || math.Abs(l+r-rough) <= lengthDoubt && q.steady(t0, t1) {
		return l + r
	}
	return q.length(t0, m, l, depth-1) + q.length(m, t1, r, depth-1)
}

// steady reports whether the velocity keeps within a right angle from t0 to
// t1: its three control vectors do.
func (q *quad) steady(t0, t1 float64) bool {
	v0, v2, vm := q.at(t0), q.at(t1), q.at((t0+t1)/2)
	v1 := vm.Scale(2).Minus(v0.Plus(v2).Scale(0.5))
	return v0.Dot(v1) >= 0 && v1.Dot(v2) >= 0 && v0.Dot(v2) >= 0
}

// lengthDepth ends the halving at a cusp, where a piece is 2^-30 of the whole.
const lengthDepth = 30

func (q *quad) between(t0, t1 float64) float64 {
	return q.length(t0, t1, q.gauss(t0, t1), lengthDepth)
}

// Length is the length of the segment, to 1e-6 mm; of a straight one exactly.
func (s Segment) Length() float64 {
	if !s.Curved {
		return s.A.Dist(s.D)
	}
	q := s.velocity()
	return q.between(0, 1)
}

// LengthTo is the length from the start to t.
func (s Segment) LengthTo(t float64) float64 {
	t = min(max(t, 0), 1)
	if !s.Curved {
		return float64(s.A.Dist(s.D) * t)
	}
	q := s.velocity()
	return q.between(0, t)
}

// TAt is the t at which the given length has been travelled, held in [0, 1].
func (s Segment) TAt(length float64) float64 {
	return s.tAt(length, s.Length())
}

// tAt is TAt for a caller who knows the whole length.
func (s Segment) tAt(length, total float64) float64 {
	switch {
	case length <= 0:
		return 0
	case length >= total:
		return 1
	case !s.Curved:
		return length / total
	}
	q := s.velocity()
	lo, hi := 0.0, 1.0
	t, done := 0.0, 0.0 // done is the length up to t
	next := length / total
	for range 60 {
		done += q.signed(t, next)
		t = next
		over := done - length
		if math.Abs(over) <= 1e-10 {
			break
		}
		if over > 0 {
			hi = t
		} else {
			lo = t
		}
		next = t - over/q.speed(t)
		if !(lo < next && next < hi) {
			next = (lo + hi) / 2
		}
		if next == t || hi-lo < 1e-15 {
			break
		}
	}
	return t
}

func (q *quad) signed(t0, t1 float64) float64 {
	if t1 < t0 {
		return -q.between(t1, t0)
	}
	return q.between(t0, t1)
}
