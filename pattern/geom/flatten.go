package geom

import "math"

// Flatten is the path as points joined by straight lines, nowhere farther than
// tol from it. It holds the exact ends of every segment, the last point too.
func (p Path) Flatten(tol float64) []Point {
	if len(p) == 0 {
		return nil
	}
	out := make([]Point, 1, 8*len(p)+1)
	out[0] = p[0].A
	for _, s := range p {
		out = s.flatten(tol, out)
	}
	return out
}

// leastTol keeps a tolerance of nothing from asking for endless points.
const leastTol = 1e-6

// flatten appends the points after A. It goes by the longest steps that keep
// within tol: a step of h strays from its chord by at most h²/8 of the
// acceleration, and only what of it is square to the chord counts.
func (s Segment) flatten(tol float64, out []Point) []Point {
	if !s.Curved {
		return append(out, s.D)
	}
	tol = max(tol, leastTol)
	v := s.velocity()
	t, from := 0.0, s.A
	h := 1.0
	for t < 1 {
		// Double the last step and halve down to one that fits.
		h = min(2*h, 1-t)
		var to Point
		for {
			to = s.D
			if h < 1-t {
				to = s.At(t + h)
			}
			e := v.stray(from, to, t, h)
			if e <= tol {
				break
			}
			// Aim a little below the tolerance; shrink always.
			h *= min(max(0.98*math.Sqrt(tol/e), 0.1), 0.95)
		}
		if h >= 1-t {
			break
		}
		t += h
		out = append(out, to)
		from = to
	}
	return append(out, s.D)
}

// stray bounds the distance of the curve between t and t+h from its chord.
func (q *quad) stray(from, to Point, t, h float64) float64 {
	a, b := q.slope(t), q.slope(t+h)
	k := h * h / 8
	chord := from.To(to).Unit()
	v0, v1, vm := q.at(t).Dot(chord), q.at(t+h).Dot(chord), q.at(t+h/2).Dot(chord)
	// The speed along the chord is a quadratic; with v0, 2 vm - (v0+v1)/2 and
	// v1, its Bernstein coefficients, not negative, neither is it.
	if chord == (Vector{}) || v0 < 0 || v1 < 0 || 4*vm < v0+v1 {
		// It may run past the chord's ends: count the whole of it.
		return float64(k * max(a.Len(), b.Len()))
	}
	return float64(k * max(math.Abs(chord.Cross(a)), math.Abs(chord.Cross(b))))
}
