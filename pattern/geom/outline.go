package geom

// Outline is a closed polygon; its last point is not the first one repeated.
type Outline []Point

// Area is the area within, positive when the outline runs clockwise to the eye
// (y down), negative the other way.
func (o Outline) Area() float64 {
	if len(o) < 3 {
		return 0
	}
	// From the first vertex, not the origin: far from it the products would
	// lose the digits that matter.
	sum := 0.0
	for i := 1; i+1 < len(o); i++ {
		sum += o[0].To(o[i]).Cross(o[0].To(o[i+1]))
	}
	return sum / 2
}

// Perimeter is the length all round.
func (o Outline) Perimeter() float64 {
	sum := 0.0
	for i, p := range o {
		sum += p.Dist(o[o.next(i)])
	}
	return sum
}

func (o Outline) next(i int) int {
	if i+1 == len(o) {
		return 0
	}
	return i + 1
}

// Box is the smallest upright box that holds the outline.
func (o Outline) Box() Box {
	var b Box
	for _, p := range o {
		b = b.Add(p)
	}
	return b
}

// Contains reports whether the outline runs round p, or through it.
func (o Outline) Contains(p Point) bool {
	wind := 0
	for i, a := range o {
		b := o[o.next(i)]
		if a == p {
			return true
		}
		// Half-open in y, so that a vertex at p's level counts once.
		switch {
		case a.Y <= p.Y && p.Y < b.Y:
			s := turn(a, b, p)
			if s == 0 {
				return true
			}
			if s > 0 {
				wind++
			}
		case b.Y <= p.Y && p.Y < a.Y:
			s := turn(a, b, p)
			if s == 0 {
				return true
			}
			if s < 0 {
				wind--
			}
		case a.Y == p.Y && b.Y == p.Y:
			if min(a.X, b.X) <= p.X && p.X <= max(a.X, b.X) {
				return true
			}
		}
	}
	return wind != 0
}

// Closest is the point of the outline nearest to p, and how far it is.
func (o Outline) Closest(p Point) (at Point, dist float64) {
	for i, a := range o {
		s := Straight(a, o[o.next(i)])
		q := s.At(s.Nearest(p))
		if d := q.Dist(p); i == 0 || d < dist {
			at, dist = q, d
		}
	}
	return at, dist
}

// Reverse is the outline run the other way, from the same first point.
func (o Outline) Reverse() Outline {
	if o == nil {
		return nil
	}
	q := make(Outline, len(o))
	for i, p := range o {
		q[(len(o)-i)%len(o)] = p
	}
	return q
}

// Transform maps the outline.
func (o Outline) Transform(m Matrix) Outline {
	if o == nil {
		return nil
	}
	q := make(Outline, len(o))
	for i, p := range o {
		q[i] = m.Apply(p)
	}
	return q
}

// Path is the outline as a closed path of straight segments.
func (o Outline) Path() Path {
	if len(o) < 2 {
		return nil
	}
	return Lines(append(append([]Point(nil), o...), o[0])...)
}

// Outline is the closed path as a polygon, flattened within tol. An open path
// is closed by a straight line.
func (p Path) Outline(tol float64) Outline {
	o := Outline(p.Flatten(tol))
	for len(o) > 1 && o[len(o)-1].Near(o[0], weld) {
		o = o[:len(o)-1]
	}
	return o
}
