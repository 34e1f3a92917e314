package geom

// AtLevel lists where the path meets the horizontal line at y, in path order.
// A touch counts; of a stretch lying on the line both ends do.
func (p Path) AtLevel(y float64) []Point {
	at := p.meetsLine(Line{Point{0, y}, Vector{1, 0}})
	for i := range at {
		at[i].Y = y
	}
	return at
}

// AtOut lists where the path meets the vertical line at x, in path order. A
// touch counts; of a stretch lying on the line both ends do.
func (p Path) AtOut(x float64) []Point {
	at := p.meetsLine(Line{Point{x, 0}, Vector{0, 1}})
	for i := range at {
		at[i].X = x
	}
	return at
}

func (p Path) meetsLine(l Line) []Point {
	var out []Point
	var room [6]float64
	for _, s := range p {
		for _, t := range s.onLine(l, room[:0]) {
			at := s.At(t)
			if len(out) == 0 || !out[len(out)-1].Near(at, weld) {
				out = append(out, at)
			}
		}
	}
	return out
}

// onLine appends every t where the segment meets the endless line, rising. An
// end that lies on it within rounding counts.
func (s Segment) onLine(l Line, out []float64) []float64 {
	u := l.Dir.Unit()
	a, d := u.Cross(l.At.To(s.A)), u.Cross(l.At.To(s.D))
	a, d = snap(a), snap(d)
	if !s.Curved {
		switch {
		case a == 0 && d == 0:
			return append(out, 0, 1)
		case a == 0:
			return append(out, 0)
		case d == 0:
			return append(out, 1)
		case (a > 0) != (d > 0):
			return append(out, a/(a-d))
		}
		return out
	}
	f := bern{n: 3, c: [6]float64{a, snap(u.Cross(l.At.To(s.B))), snap(u.Cross(l.At.To(s.C))), d}}
	if f.c == ([6]float64{}) {
		return append(out, 0, 1)
	}
	return f.roots(out)
}

// snapped is the distance below which a control point lies on a line: some
// hundred times the rounding of a coordinate on a large sheet.
const snapped = 1e-10

func snap(d float64) float64 {
	if -snapped < d && d < snapped {
		return 0
	}
	return d
}
