package geom

import "math"

// Point is a place in the plane.
type Point struct{ X, Y float64 }

// Vector is a way from one place to another.
type Vector struct{ X, Y float64 }

// Add gives the point reached from p by v.
func (p Point) Add(v Vector) Point { return Point{p.X + v.X, p.Y + v.Y} }

// Sub gives the way from q to p.
func (p Point) Sub(q Point) Vector { return Vector{p.X - q.X, p.Y - q.Y} }

// To gives the way from p to q.
func (p Point) To(q Point) Vector { return Vector{q.X - p.X, q.Y - p.Y} }

// Dist is the distance between the two points.
func (p Point) Dist(q Point) float64 { return p.To(q).Len() }

// Lerp is the point at share t of the way to q; at 0 and 1 exactly p and q.
func (p Point) Lerp(q Point, t float64) Point {
	u := 1 - t
	return Point{
		float64(p.X*u) + float64(q.X*t),
		float64(p.Y*u) + float64(q.Y*t),
	}
}

// Near reports whether the points are at most tol apart.
func (p Point) Near(q Point, tol float64) bool { return p.Dist(q) <= tol }

// Scale makes v k times as long.
func (v Vector) Scale(k float64) Vector { return Vector{float64(v.X * k), float64(v.Y * k)} }

// Plus adds w.
func (v Vector) Plus(w Vector) Vector { return Vector{v.X + w.X, v.Y + w.Y} }

// Minus takes w away.
func (v Vector) Minus(w Vector) Vector { return Vector{v.X - w.X, v.Y - w.Y} }

// Len is the length of v.
func (v Vector) Len() float64 { return math.Sqrt(v.Dot(v)) }

// Unit is v made one millimetre long; the zero vector stays zero.
func (v Vector) Unit() Vector {
	l := v.Len()
	if l < 1e-150 || l > 1e150 {
		// Its square is at the rim of floats: bring v near 1 first.
		m := max(math.Abs(v.X), math.Abs(v.Y))
		if m == 0 || math.IsInf(m, 0) {
			return Vector{}
		}
		v = Vector{v.X / m, v.Y / m}
		l = v.Len()
	}
	return Vector{v.X / l, v.Y / l}
}

// Left is v turned a quarter to the left of travel, y being down.
func (v Vector) Left() Vector { return Vector{v.Y, -v.X} }

// Right is v turned a quarter to the right of travel, y being down.
func (v Vector) Right() Vector { return Vector{-v.Y, v.X} }

// Dot is the scalar product.
func (v Vector) Dot(w Vector) float64 { return float64(v.X*w.X) + float64(v.Y*w.Y) }

// Cross is the vector product, positive where w lies to the right of v.
func (v Vector) Cross(w Vector) float64 { return float64(v.X*w.Y) - float64(v.Y*w.X) }

// Turn turns v by an angle in radians, clockwise to the eye since y is down.
func (v Vector) Turn(radians float64) Vector {
	s, c := math.Sincos(radians)
	return Vector{
		float64(v.X*c) - float64(v.Y*s),
		float64(v.X*s) + float64(v.Y*c),
	}
}
