package geom

import "math"

// Matrix is an affine map: x' = m0 x + m2 y + m4, y' = m1 x + m3 y + m5.
type Matrix [6]float64

// Identity leaves everything where it is.
var Identity = Matrix{1, 0, 0, 1, 0, 0}

// Move shifts by v.
func Move(v Vector) Matrix { return Matrix{1, 0, 0, 1, v.X, v.Y} }

// Scale stretches about the origin.
func Scale(sx, sy float64) Matrix { return Matrix{sx, 0, 0, sy, 0, 0} }

// TurnAbout turns about p by an angle in radians, clockwise to the eye.
func TurnAbout(p Point, radians float64) Matrix {
	s, c := math.Sincos(radians)
	return Matrix{
		c, s, -s, c,
		p.X - float64(c*p.X) + float64(s*p.Y),
		p.Y - float64(s*p.X) - float64(c*p.Y),
	}
}

// MirrorIn reflects in the line; a line without direction mirrors nothing.
func MirrorIn(l Line) Matrix {
	u := l.Dir.Unit()
	if u == (Vector{}) {
		return Identity
	}
	a := float64(u.X*u.X) - float64(u.Y*u.Y)
	b := float64(2 * u.X * u.Y)
	return Matrix{
		a, b, b, -a,
		l.At.X - float64(a*l.At.X) - float64(b*l.At.Y),
		l.At.Y - float64(b*l.At.X) + float64(a*l.At.Y),
	}
}

// Then is the map that does m first and n after it.
func (m Matrix) Then(n Matrix) Matrix {
	x := n.ApplyVector(Vector{m[0], m[1]})
	y := n.ApplyVector(Vector{m[2], m[3]})
	o := n.Apply(Point{m[4], m[5]})
	return Matrix{x.X, x.Y, y.X, y.Y, o.X, o.Y}
}

// Apply maps a point.
func (m Matrix) Apply(p Point) Point {
	return Point{
		float64(m[0]*p.X) + float64(m[2]*p.Y) + m[4],
		float64(m[1]*p.X) + float64(m[3]*p.Y) + m[5],
	}
}

// ApplyVector maps a way, which has no place and so is not shifted.
func (m Matrix) ApplyVector(v Vector) Vector {
	return Vector{
		float64(m[0]*v.X) + float64(m[2]*v.Y),
		float64(m[1]*v.X) + float64(m[3]*v.Y),
	}
}
