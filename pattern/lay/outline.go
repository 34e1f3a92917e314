package lay

import "slices"

// Point is a place on the cloth or on a piece, in whole steps of 0.0001 mm:
// the steps that are printed, so that what is printed is what was checked.
type Point struct{ X, Y int64 }

// PerMM is the number of steps in a millimetre.
const PerMM = 10000

// mostSteps is the size that a piece may have: two pieces that touch then lie
// within 2^30 steps, and products of such lengths fit whole numbers.
const mostSteps = 1 << 29

func (p Point) plus(q Point) Point  { return Point{p.X + q.X, p.Y + q.Y} }
func (p Point) minus(q Point) Point { return Point{p.X - q.X, p.Y - q.Y} }

// turning is twice the area of the triangle a, b, c: above 0 where the way
// from a over b to c turns x towards y.
func turning(a, b, c Point) int64 {
	return (b.X-a.X)*(c.Y-a.Y) - (b.Y-a.Y)*(c.X-a.X)
}

// twiceArea is twice the area within the outline, above 0 where it runs from
// x towards y.
func twiceArea(o []Point) int64 {
	var sum int64
	for i := 1; i+1 < len(o); i++ {
		sum += turning(o[0], o[i], o[i+1])
	}
	return sum
}

// bounds are the least and greatest coordinates.
func bounds(o []Point) (lo, hi Point) {
	lo, hi = o[0], o[0]
	for _, p := range o[1:] {
		lo = Point{min(lo.X, p.X), min(lo.Y, p.Y)}
		hi = Point{max(hi.X, p.X), max(hi.Y, p.Y)}
	}
	return lo, hi
}

// tidy drops repeated and collinear corners and turns the outline the right
// way round.
func tidy(o []Point) []Point {
	out := make([]Point, 0, len(o))
	for _, p := range o {
		out = append(out, p)
		for len(out) > 1 && out[len(out)-1] == out[len(out)-2] {
			out = out[:len(out)-1]
		}
		for len(out) > 2 && turning(out[len(out)-3], out[len(out)-2], out[len(out)-1]) == 0 {
			out[len(out)-2] = out[len(out)-1]
			out = out[:len(out)-1]
			for len(out) > 1 && out[len(out)-1] == out[len(out)-2] {
				out = out[:len(out)-1]
			}
		}
	}
	for again := true; again && len(out) > 2; {
		again = false
		n := len(out)
		switch {
		case out[n-1] == out[0] || turning(out[n-2], out[n-1], out[0]) == 0:
			out, again = out[:n-1], true
		case turning(out[n-1], out[0], out[1]) == 0:
			out, again = out[1:], true
		}
	}
	if len(out) > 2 && twiceArea(out) < 0 {
		slices.Reverse(out)
	}
	return out
}

// moved is the outline carried by v.
func moved(o []Point, v Point) []Point {
	out := make([]Point, len(o))
	for i, p := range o {
		out[i] = p.plus(v)
	}
	return out
}

// hull is the convex hull, from x towards y.
func hull(o []Point) []Point {
	s := slices.Clone(o)
	slices.SortFunc(s, func(a, b Point) int {
		if a.X != b.X {
			return int(min(max(a.X-b.X, -1), 1))
		}
		return int(min(max(a.Y-b.Y, -1), 1))
	})
	var out []Point
	for pass := range 2 {
		base := len(out)
		for _, p := range s {
			for len(out) > base+1 && turning(out[len(out)-2], out[len(out)-1], p) <= 0 {
				out = out[:len(out)-1]
			}
			out = append(out, p)
		}
		out = out[:len(out)-1]
		if pass == 0 {
			slices.Reverse(s)
		}
	}
	return out
}
