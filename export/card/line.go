package card

import (
	"math"
	"sort"

	"chalkfold/pattern/geom"
)

const (
	// flat is how finely curves are flattened before marks are chosen; it is
	// taken off the bound.
	flat = 0.01
	// turn is the least corner, in radians, that gets a mark of its own: a
	// chalk line drawn freely through less than 8 degrees shows no corner.
	turn = 8 * math.Pi / 180
)

// line is a run of the outline flattened to points, with what the curve was
// there: where its corners are and which parts are curved.
type line struct {
	pts    []geom.Point
	s      []float64 // length from the start to each point
	corner []bool    // a corner at the point
	curved []bool    // the part that ends at the point is of a curve
}

// flatten turns a path into a line.
func flatten(p geom.Path) line {
	var l line
	if len(p) == 0 {
		return l
	}
	l.add(p[0].A, false)
	for i, seg := range p {
		for _, q := range (geom.Path{seg}).Flatten(flat)[1:] {
			l.add(q, seg.Curved)
		}
		if i+1 < len(p) && radians(seg.Tangent(1), p[i+1].Tangent(0)) > turn {
			l.corner[len(l.pts)-1] = true
		}
	}
	return l
}

func (l *line) add(p geom.Point, curved bool) {
	s := 0.0
	if n := len(l.pts); n > 0 {
		s = l.s[n-1] + l.pts[n-1].Dist(p)
	}
	l.pts, l.s = append(l.pts, p), append(l.s, s)
	l.corner, l.curved = append(l.corner, false), append(l.curved, curved)
}

func (l line) empty() bool { return len(l.pts) < 2 }

func (l line) long() float64 {
	if len(l.s) == 0 {
		return 0
	}
	return l.s[len(l.s)-1]
}

func (l line) start() geom.Point { return l.pts[0] }
func (l line) end() geom.Point   { return l.pts[len(l.pts)-1] }

// at is the point at length s.
func (l line) at(s float64) geom.Point {
	if s <= 0 {
		return l.start()
	}
	if s >= l.long() {
		return l.end()
	}
	i := sort.SearchFloat64s(l.s, s)
	if d := l.s[i] - l.s[i-1]; d > 0 {
		return l.pts[i-1].Lerp(l.pts[i], (s-l.s[i-1])/d)
	}
	return l.pts[i]
}

// part is the line from length a to b.
func (l line) part(a, b float64) line {
	var out line
	out.add(l.at(a), false)
	for i, s := range l.s {
		if s > a+1e-7 && s < b-1e-7 {
			out.add(l.pts[i], l.curved[i])
			out.corner[len(out.pts)-1] = l.corner[i]
		}
	}
	i := min(sort.SearchFloat64s(l.s, b-1e-7), len(l.s)-1)
	out.add(l.at(b), l.curved[i])
	return out
}

// then is the line followed by m, which starts where it ends.
func (l line) then(m line) line {
	var out line
	for i, p := range l.pts {
		out.add(p, l.curved[i])
		out.corner[i] = l.corner[i]
	}
	from := 0
	if len(out.pts) > 0 && len(m.pts) > 1 && out.end().Near(m.start(), 1e-6) {
		from = 1
		k := len(out.pts)
		if k > 1 {
			out.corner[k-1] = radians(out.pts[k-2].To(out.pts[k-1]), m.pts[0].To(m.pts[1])) > turn
		}
	}
	for i := from; i < len(m.pts); i++ {
		out.add(m.pts[i], m.curved[i])
		out.corner[len(out.pts)-1] = m.corner[i]
	}
	return out
}

// nearest is the length along the line of its point nearest to p, and how far
// off that is.
func (l line) nearest(p geom.Point) (s, dist float64) {
	dist = math.Inf(1)
	for i := 1; i < len(l.pts); i++ {
		q, t := onto(p, l.pts[i-1], l.pts[i])
		if d := p.Dist(q); d < dist {
			dist, s = d, l.s[i-1]+t*(l.s[i]-l.s[i-1])
		}
	}
	return s, dist
}

// onto is the point of the straight a-b nearest to p.
func onto(p, a, b geom.Point) (geom.Point, float64) {
	v := a.To(b)
	n := v.Dot(v)
	if n == 0 {
		return a, 0
	}
	t := min(max(a.To(p).Dot(v)/n, 0), 1)
	return a.Lerp(b, t), t
}

// crossings are the lengths at which the line meets the level y (or, where
// upright, the distance out y).
func (l line) crossings(y float64, upright bool) []float64 {
	var out []float64
	of := func(p geom.Point) float64 {
		if upright {
			return p.X
		}
		return p.Y
	}
	for i := 1; i < len(l.pts); i++ {
		a, b := of(l.pts[i-1])-y, of(l.pts[i])-y
		if a == b || a > 0 && b > 0 || a < 0 && b < 0 {
			continue
		}
		s := l.s[i-1] + a/(a-b)*(l.s[i]-l.s[i-1])
		if n := len(out); n == 0 || s > out[n-1]+1e-9 {
			out = append(out, s)
		}
	}
	return out
}

// leaning is the direction of travel at length s.
func (l line) leaning(s float64) geom.Vector {
	i := min(max(sort.SearchFloat64s(l.s, s+1e-9), 1), len(l.s)-1)
	for i < len(l.s)-1 && l.s[i] == l.s[i-1] {
		i++
	}
	return l.pts[i-1].To(l.pts[i]).Unit()
}

// ruled says that between two marks a ruler will do: little of it is curved
// and it bends less than a chalk line is wide, but for a corner that is rounded
// afterwards.
func (l line) ruled(a, b stop) bool {
	const chalk = 0.4 // mm; a 64th of an inch
	slack := chalk + max(a.on.Dist(a.of), b.on.Dist(b.of))
	curved, last := 0.0, a.s
	for i := 1; i < len(l.s) && last < b.s; i++ {
		if l.s[i] <= a.s {
			continue
		}
		to := min(l.s[i], b.s)
		if l.curved[i] {
			curved += to - last
		}
		last = to
		p := l.at(to)
		if at, _ := onto(p, a.of, b.of); at.Dist(p) > slack {
			return false
		}
	}
	return curved <= (b.s-a.s)/4
}
