package geom

// Nearest is the t of the segment's point that is nearest to p; of several the
// first.
func (s Segment) Nearest(p Point) (t float64) {
	if !s.Curved {
		v := s.A.To(s.D)
		l := v.Dot(v)
		if l == 0 {
			return 0
		}
		return min(max(s.A.To(p).Dot(v)/l, 0), 1)
	}
	// At the nearest point the way to p is square to the velocity, or it is
	// an end: (B(t) - p) . B'(t) = 0, of degree 3 + 2, in Bernstein form.
	w := [4]Vector{p.To(s.A), p.To(s.B), p.To(s.C), p.To(s.D)}
	v := [3]Vector{s.A.To(s.B), s.B.To(s.C), s.C.To(s.D)}
	f := bern{n: 5}
	f.c[0] = w[0].Dot(v[0])
	f.c[1] = (float64(2*w[0].Dot(v[1])) + float64(3*w[1].Dot(v[0]))) / 5
	f.c[2] = (w[0].Dot(v[2]) + float64(6*w[1].Dot(v[1])) + float64(3*w[2].Dot(v[0]))) / 10
	f.c[3] = (float64(3*w[1].Dot(v[2])) + float64(6*w[2].Dot(v[1])) + w[3].Dot(v[0])) / 10
	f.c[4] = (float64(3*w[2].Dot(v[2])) + float64(2*w[3].Dot(v[1]))) / 5
	f.c[5] = w[3].Dot(v[2])
	best := p.Dist(s.A)
	var room [8]float64
	for _, r := range f.roots(room[:0]) {
		if d := p.Dist(s.At(r)); d < best {
			t, best = r, d
		}
	}
	if p.Dist(s.D) < best {
		t = 1
	}
	return t
}
