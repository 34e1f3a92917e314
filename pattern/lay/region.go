package lay

import "math"

// spot is a place or a way in steps, for the search alone.
type spot struct{ x, y float64 }

func toSpot(p Point) spot { return spot{float64(p.X), float64(p.Y)} }

func (a spot) plus(b spot) spot     { return spot{a.x + b.x, a.y + b.y} }
func (a spot) minus(b spot) spot    { return spot{a.x - b.x, a.y - b.y} }
func (a spot) cross(b spot) float64 { return float64(a.x*b.y) - float64(a.y*b.x) }
func (a spot) dot(b spot) float64   { return float64(a.x*b.x) + float64(a.y*b.y) }
func (a spot) len() float64         { return math.Sqrt(a.dot(a)) }

// side is a directed piece of a region's boundary, the region on its left.
type side struct {
	at, dir spot // dir of length 1
	long    float64
}

// hair is the distance, in steps, below which a place counts as on a line when
// a region is built. Corners are whole, so rounding stays far below it.
const hair = 1e-3

// sum is the sum of two convex parts, with its box.
type sum struct {
	ring   []spot
	lo, hi spot
}

// sums are the sums of each part of a with each reflected part of b.
func sums(a, b [][]Point) []sum {
	out := make([]sum, 0, len(a)*len(b))
	for _, p := range a {
		for _, q := range b {
			s := sum{ring: convexSum(p, negative(q))}
			s.lo, s.hi = s.ring[0], s.ring[0]
			for _, c := range s.ring[1:] {
				s.lo = spot{min(s.lo.x, c.x), min(s.lo.y, c.y)}
				s.hi = spot{max(s.hi.x, c.x), max(s.hi.y, c.y)}
			}
			out = append(out, s)
		}
	}
	return out
}

func negative(o []Point) []Point {
	out := make([]Point, len(o))
	for i, p := range o {
		out[i] = Point{-p.X, -p.Y}
	}
	return out
}

// convexSum adds two convex rings: their edges in order of direction.
func convexSum(p, q []Point) []spot {
	i0, j0 := lowest(p), lowest(q)
	at := p[i0].plus(q[j0])
	out := make([]spot, 0, len(p)+len(q))
	n, m := len(p), len(q)
	for i, j := 0, 0; i < n || j < m; {
		out = append(out, toSpot(at))
		var e, f Point
		if i < n {
			e = p[(i0+i+1)%n].minus(p[(i0+i)%n])
		}
		if j < m {
			f = q[(j0+j+1)%m].minus(q[(j0+j)%m])
		}
		var c int64
		switch {
		case i == n:
			c = -1
		case j == m:
			c = 1
		default:
			c = e.X*f.Y - e.Y*f.X
		}
		if c >= 0 {
			at = at.plus(e)
			i++
		}
		if c <= 0 {
			at = at.plus(f)
			j++
		}
	}
	return out
}

func lowest(p []Point) int {
	k := 0
	for i, c := range p {
		if c.Y < p[k].Y || c.Y == p[k].Y && c.X < p[k].X {
			k = i
		}
	}
	return k
}

// boundary is the boundary of the offsets at which b, carried by the offset,
// overlaps a: loose sides, in no order. It comes only from an edge of one
// outline carried to a convex corner of the other, where the direction of the
// edge lies between the corner's two edges; of these few candidates all that
// lies inside one of the sums is cut away.
func boundary(a, b []Point, within []sum) []side {
	nb := negative(b)
	var out []side
	carry := func(edges, corners []Point) {
		n := len(corners)
		for c := range corners {
			before, here, after := corners[(c+n-1)%n], corners[c], corners[(c+1)%n]
			if turning(before, here, after) <= 0 {
				continue
			}
			in, on := here.minus(before), after.minus(here)
			for i, p := range edges {
				q := edges[(i+1)%len(edges)]
				e := q.minus(p)
				if in.X*e.Y-in.Y*e.X < 0 || e.X*on.Y-e.Y*on.X < 0 {
					continue
				}
				out = appendOutside(out, toSpot(p.plus(here)), toSpot(q.plus(here)), within)
			}
		}
	}
	carry(a, nb)
	carry(nb, a)
	return out
}

// appendOutside appends what of the way from a to b lies in none of the sums.
func appendOutside(out []side, a, b spot, within []sum) []side {
	d := b.minus(a)
	long := d.len()
	dir := spot{d.x / long, d.y / long}
	lo := spot{min(a.x, b.x), min(a.y, b.y)}
	hi := spot{max(a.x, b.x), max(a.y, b.y)}
	var buf [16][2]float64
	left := append(buf[:0], [2]float64{0, long})
	for i := range within {
		s := &within[i]
		if s.hi.x < lo.x || s.lo.x > hi.x || s.hi.y < lo.y || s.lo.y > hi.y {
			continue
		}
		from, to, ok := s.covers(a, dir, long)
		if !ok {
			continue
		}
		if left = without(left, from, to); len(left) == 0 {
			return out
		}
	}
	for _, l := range left {
		at := spot{a.x + float64(dir.x*l[0]), a.y + float64(dir.y*l[0])}
		out = append(out, side{at, dir, l[1] - l[0]})
	}
	return out
}

// covers is the stretch of the way from a along dir that lies inside the sum.
// On its border, what runs the same way stays and what runs against it goes.
func (s *sum) covers(a, dir spot, long float64) (from, to float64, ok bool) {
	from, to = 0, long
	n := len(s.ring)
	for i, p := range s.ring {
		q := s.ring[(i+1)%n]
		e := q.minus(p)
		l := e.len()
		start := e.cross(a.minus(p)) / l // above 0: inside
		slope := e.cross(dir) / l
		end := start + float64(slope*long)
		if math.Abs(start) < hair && math.Abs(end) < hair {
			if e.dot(dir) > 0 {
				return 0, 0, false
			}
			continue
		}
		if start <= 0 && end <= 0 {
			return 0, 0, false
		}
		switch {
		case start < 0:
			from = max(from, -start/slope)
		case end < 0:
			to = min(to, -start/slope)
		}
		if to-from < hair {
			return 0, 0, false
		}
	}
	return from, to, true
}

// without takes the stretch from..to off the list of stretches.
func without(list [][2]float64, from, to float64) [][2]float64 {
	out := list[:0]
	var extra [][2]float64
	for _, l := range list {
		if to <= l[0] || from >= l[1] {
			out = append(out, l)
			continue
		}
		lower, upper := [2]float64{l[0], from}, [2]float64{to, l[1]}
		keepLower, keepUpper := from-l[0] > hair, l[1]-to > hair
		if keepLower {
			out = append(out, lower)
		}
		if keepUpper {
			if keepLower {
				extra = append(extra, upper)
			} else {
				out = append(out, upper)
			}
		}
	}
	return append(out, extra...)
}
