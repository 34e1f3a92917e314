package trial

import "chalkfold/pattern/geom"

// Shown are the lines of an option that lie in the part that is shown.
func (s Set) Shown(o Option) []Line {
	var out []Line
	for _, l := range s.Lines(o) {
		for _, run := range within(l.Points, s.Box) {
			out = append(out, Line{Points: run, Dart: l.Dart})
		}
	}
	return out
}

// within are the parts of a line that lie between the top and the foot of a
// box.
func within(pts []geom.Point, box geom.Box) [][]geom.Point {
	var out [][]geom.Point
	var run []geom.Point
	for i := 0; i+1 < len(pts); i++ {
		a, b, ok := cut(pts[i], pts[i+1], box)
		if !ok {
			continue
		}
		if n := len(run); n == 0 || run[n-1] != a {
			if n > 0 {
				out = append(out, run)
			}
			run = []geom.Point{a}
		}
		run = append(run, b)
	}
	if len(run) > 0 {
		out = append(out, run)
	}
	return out
}

// cut is the part of a straight piece between top and foot; false: none.
func cut(a, b geom.Point, box geom.Box) (geom.Point, geom.Point, bool) {
	if max(a.Y, b.Y) < box.Min.Y || min(a.Y, b.Y) > box.Max.Y {
		return a, b, false
	}
	at := func(p geom.Point) geom.Point {
		y := max(box.Min.Y, min(box.Max.Y, p.Y))
		if y == p.Y {
			return p
		}
		return a.Lerp(b, (y-a.Y)/(b.Y-a.Y))
	}
	return at(a), at(b), true
}
