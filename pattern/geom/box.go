package geom

import "math"

// Box is an upright rectangle. The zero Box is empty, so a box can be grown
// from nothing point by point.
type Box struct{ Min, Max Point }

// Empty reports whether the box holds no point at all. A box that holds only
// the origin is told from the zero Box by the sign of its zeros: see Add.
func (b Box) Empty() bool {
	if b.Max.X < b.Min.X || b.Max.Y < b.Min.Y {
		return true
	}
	return b == Box{} && !math.Signbit(b.Min.X)
}

// Add is the smallest box that holds b and p.
func (b Box) Add(p Point) Box {
	if b.Empty() {
		b = Box{p, p}
		if p == (Point{}) {
			b.Min = Point{math.Copysign(0, -1), math.Copysign(0, -1)}
		}
		return b
	}
	return Box{
		Point{min(b.Min.X, p.X), min(b.Min.Y, p.Y)},
		Point{max(b.Max.X, p.X), max(b.Max.Y, p.Y)},
	}
}

// Union is the smallest box that holds both.
func (b Box) Union(c Box) Box {
	if c.Empty() {
		return b
	}
	return b.Add(c.Min).Add(c.Max)
}

// Width is the extent in x, 0 for an empty box.
func (b Box) Width() float64 { return max(0, b.Max.X-b.Min.X) }

// Height is the extent in y, 0 for an empty box.
func (b Box) Height() float64 { return max(0, b.Max.Y-b.Min.Y) }

// Centre is the middle of the box.
func (b Box) Centre() Point { return b.Min.Lerp(b.Max, 0.5) }

// Grow moves every side outward by d. An empty box stays empty, and a negative
// d that eats the box leaves it empty.
func (b Box) Grow(d float64) Box {
	if b.Empty() {
		return Box{}
	}
	b = Box{Point{b.Min.X - d, b.Min.Y - d}, Point{b.Max.X + d, b.Max.Y + d}}
	if b.Empty() {
		return Box{}
	}
	return b
}

// Contains reports whether p lies in the box or on its rim.
func (b Box) Contains(p Point) bool {
	return !b.Empty() && b.Min.X <= p.X && p.X <= b.Max.X && b.Min.Y <= p.Y && p.Y <= b.Max.Y
}

// Overlaps reports whether the boxes share a point, rims included.
func (b Box) Overlaps(c Box) bool {
	return !b.Empty() && !c.Empty() && b.meets(c)
}

// meets is Overlaps for boxes known to hold something.
func (b Box) meets(c Box) bool {
	return b.Min.X <= c.Max.X && c.Min.X <= b.Max.X && b.Min.Y <= c.Max.Y && c.Min.Y <= b.Max.Y
}

// away is the distance from p to the box, 0 inside.
func (b Box) away(p Point) float64 {
	return Vector{
		max(b.Min.X-p.X, p.X-b.Max.X, 0),
		max(b.Min.Y-p.Y, p.Y-b.Max.Y, 0),
	}.Len()
}

// span is the box of two points.
func span(a, b Point) Box {
	return Box{
		Point{min(a.X, b.X), min(a.Y, b.Y)},
		Point{max(a.X, b.X), max(a.Y, b.Y)},
	}
}
