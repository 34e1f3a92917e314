package geom

// Path is a run of segments, each starting where the one before it ends.
type Path []Segment

// weld is the gap below which two points are the same place. It is far below
// anything a hand or a machine can cut, and far above rounding.
const weld = 1e-6

// Lines is the path of straight segments through the points.
func Lines(points ...Point) Path {
	if len(points) < 2 {
		return nil
	}
	p := make(Path, len(points)-1)
	for i := range p {
		p[i] = Straight(points[i], points[i+1])
	}
	return p
}

// Start is where the path begins; the origin for a path of nothing.
func (p Path) Start() Point {
	if len(p) == 0 {
		return Point{}
	}
	return p[0].A
}

// End is where the path ends; the origin for a path of nothing.
func (p Path) End() Point {
	if len(p) == 0 {
		return Point{}
	}
	return p[len(p)-1].D
}

// StartTangent is the direction in which the path leaves its start.
func (p Path) StartTangent() Vector {
	for _, s := range p {
		if t := s.Tangent(0); t != (Vector{}) {
			return t
		}
	}
	return Vector{}
}

// EndTangent is the direction in which the path arrives at its end.
func (p Path) EndTangent() Vector {
	for i := len(p) - 1; i >= 0; i-- {
		if t := p[i].Tangent(1); t != (Vector{}) {
			return t
		}
	}
	return Vector{}
}

// Length is the length along the path.
func (p Path) Length() float64 {
	sum := 0.0
	for _, s := range p {
		sum += s.Length()
	}
	return sum
}

// locate finds the segment and its t at length s along the path, held to the
// path's ends. At a joint it is the end of the segment arriving.
func (p Path) locate(s float64) (i int, t float64) {
	for i = range p {
		l := p[i].Length()
		if s <= l {
			return i, p[i].tAt(s, l)
		}
		s -= l
	}
	return len(p) - 1, 1
}

// At is the point at length s along the path, and the direction of travel
// there; before the start and past the end, those of the ends.
func (p Path) At(s float64) (Point, Vector) {
	if len(p) == 0 {
		return Point{}, Vector{}
	}
	i, t := p.locate(s)
	return p[i].At(t), p[i].Tangent(t)
}

// Reverse is the path travelled the other way.
func (p Path) Reverse() Path {
	if p == nil {
		return nil
	}
	q := make(Path, len(p))
	for i, s := range p {
		q[len(p)-1-i] = s.Reverse()
	}
	return q
}

// Then is the path followed by q. A gap between them is bridged by a straight
// segment, so that a path has no gaps; one of rounding only is closed by
// starting q exactly at the path's end.
func (p Path) Then(q Path) Path { return Chain(p, q) }

// Chain is the paths one after another, joined as Then joins two.
func Chain(paths ...Path) Path {
	room := 0
	for _, p := range paths {
		room += len(p) + 1
	}
	out := make(Path, 0, room)
	for _, p := range paths {
		if len(p) == 0 {
			continue
		}
		if len(out) == 0 {
			out = append(out, p...)
			continue
		}
		end := out.End()
		if !end.Near(p[0].A, weld) {
			out = append(out, Straight(end, p[0].A))
		}
		k := len(out)
		out = append(out, p...)
		if out[k].A != end && out[k].A.Near(end, weld) {
			out[k] = out[k].startingAt(end)
		}
	}
	return out
}

// startingAt moves the start by a hair, with its handle.
func (s Segment) startingAt(a Point) Segment {
	if !s.Curved {
		return Straight(a, s.D)
	}
	s.B = s.B.Add(s.A.To(a))
	s.A = a
	return s
}

// endingAt moves the end by a hair, with its handle.
func (s Segment) endingAt(d Point) Segment {
	return s.Reverse().startingAt(d).Reverse()
}

// Split cuts the path at length s into what lies before and after. A cut at or
// beyond an end leaves nothing on that side.
func (p Path) Split(s float64) (Path, Path) {
	if len(p) == 0 {
		return nil, nil
	}
	if s <= 0 {
		return nil, append(Path(nil), p...)
	}
	i, t := p.locate(s)
	return p.cut(i, t)
}

// cut is Split at t of segment i. A cut within rounding of a joint is made at
// the joint.
func (p Path) cut(i int, t float64) (Path, Path) {
	m := p[i].At(t)
	switch {
	case t >= 1 || t > 0.5 && m.Near(p[i].D, cutSlack):
		return append(Path(nil), p[:i+1]...), append(Path(nil), p[i+1:]...)
	case t <= 0 || t < 0.5 && m.Near(p[i].A, cutSlack):
		return append(Path(nil), p[:i]...), append(Path(nil), p[i:]...)
	}
	l, r := p[i].Split(t)
	a := append(make(Path, 0, i+1), p[:i]...)
	b := make(Path, 0, len(p)-i)
	return append(a, l), append(append(b, r), p[i+1:]...)
}

// cutSlack is the longest crumb of a segment that a cut does not keep.
const cutSlack = 1e-9

// Part is the path from length s0 to s1, turned round if s1 is less than s0.
func (p Path) Part(s0, s1 float64) Path {
	if s1 < s0 {
		return p.Part(s1, s0).Reverse()
	}
	if len(p) == 0 {
		return nil
	}
	head, _ := p.Split(s1)
	if s0 <= 0 || len(head) == 0 {
		return head
	}
	_, part := head.Split(s0)
	return part
}

// Nearest is the point of the path nearest to pt, its length along the path
// and its distance; of several the first.
func (p Path) Nearest(pt Point) (s float64, at Point, dist float64) {
	if len(p) == 0 {
		return 0, Point{}, 0
	}
	best, bestT := -1, 0.0
	for i, seg := range p {
		if best >= 0 && seg.hull().away(pt) >= dist {
			continue
		}
		t := seg.Nearest(pt)
		q := seg.At(t)
		if d := q.Dist(pt); best < 0 || d < dist {
			best, bestT, at, dist = i, t, q, d
		}
	}
	return p[:best].Length() + p[best].LengthTo(bestT), at, dist
}

// Bounds is the smallest upright box that holds the path.
func (p Path) Bounds() Box {
	var b Box
	for _, s := range p {
		b = b.Union(s.Bounds())
	}
	return b
}

// Transform maps the path.
func (p Path) Transform(m Matrix) Path {
	if p == nil {
		return nil
	}
	q := make(Path, len(p))
	for i, s := range p {
		q[i] = s.Transform(m)
	}
	return q
}

// Closed reports whether the path ends where it began.
func (p Path) Closed() bool {
	return len(p) > 0 && p.Start().Near(p.End(), weld) && (len(p) > 1 || p[0].Curved)
}

// Area is the area within a closed path, positive when it runs clockwise to
// the eye. An open path counts as closed by a straight line.
func (p Path) Area() float64 {
	if len(p) == 0 {
		return 0
	}
	o := p[0].A
	sum := 0.0
	for _, s := range p {
		a, d := o.To(s.A), o.To(s.D)
		if !s.Curved {
			sum += 10 * a.Cross(d)
			continue
		}
		b, c := o.To(s.B), o.To(s.C)
		// Half the integral of x dy - y dx over a cubic, times 20.
		sum += float64(6*a.Cross(b)) + float64(3*a.Cross(c)) + a.Cross(d) +
			float64(3*b.Cross(c)) + float64(3*b.Cross(d)) + float64(6*c.Cross(d))
	}
	return sum / 20
}
