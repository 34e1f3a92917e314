package geom

import "math"

// Line is an endless line through At along Dir.
type Line struct {
	At  Point
	Dir Vector
}

// parallel is the sine below which two directions count as parallel: at 1e-9
// the meeting point would be out by more than the whole sheet.
const parallel = 1e-9

// Meet gives the point where two endless lines meet. Parallel lines, and a
// line without direction, meet nowhere.
func Meet(a, b Line) (Point, bool) {
	u, v := a.Dir.Unit(), b.Dir.Unit()
	s := u.Cross(v)
	if math.Abs(s) <= parallel {
		return Point{}, false
	}
	return a.At.Add(u.Scale(a.At.To(b.At).Cross(v) / s)), true
}

// Foot is the point of the line nearest to p.
func (l Line) Foot(p Point) Point {
	u := l.Dir.Unit()
	return l.At.Add(u.Scale(l.At.To(p).Dot(u)))
}
