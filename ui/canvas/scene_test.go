package canvas

import "math"

// shape is a closed figure in units of the canvas width: straight runs, a
// hollow curve, a narrow wedge and a long slow curve, as the figures that are
// drawn here for real have them.
func shape(w, h float64) []Dot {
	at := func(x, y float64) Dot { return Dot{3 + x*(w-7), 1 + y*(h-3)} }
	var pts []Dot
	pts = append(pts, at(0.11, 0), at(1, 0), at(1, 0.86))
	curve := func(a, b, c, d Dot) {
		const n = 24
		for i := 1; i <= n; i++ {
			t := float64(i) / n
			u := 1 - t
			pts = append(pts, Dot{
				u*u*u*a.X + 3*u*u*t*b.X + 3*u*t*t*c.X + t*t*t*d.X,
				u*u*u*a.Y + 3*u*u*t*b.Y + 3*u*t*t*c.Y + t*t*t*d.Y,
			})
		}
	}
	curve(at(1, 0.86), at(0.7, 1.02), at(0.5, 0.8), at(0.28, 0.98))
	pts = append(pts, at(0.25, 0.42), at(0.22, 0.98), at(0.17, 0.96))
	curve(at(0.17, 0.96), at(0.15, 0.6), at(0.09, 0.62), at(0.03, 0.72))
	pts = append(pts, at(0, 0.42))
	curve(at(0, 0.42), at(0.08, 0.36), at(0.1, 0.2), at(0.11, 0))
	return pts[:len(pts)-1]
}

// ring is a circle of n points.
func ring(x, y, r float64, n int) []Dot {
	pts := make([]Dot, n)
	for i := range pts {
		s, c := math.Sincos(2 * math.Pi * float64(i) / float64(n))
		pts[i] = Dot{x + r*c, y + r*s}
	}
	return pts
}

// signs is a palette that can be read in a golden: ESC is shown as a word by
// the tests.
var signs = Palette{
	Grid: "\x1b[0;38;5;243m", Faint: "\x1b[0;38;5;243m", Ghost: "\x1b[0;38;5;245m", Line: "\x1b[0;37m",
	Second: "\x1b[0;36m", Mark: "\x1b[0;37m", Words: "\x1b[0;37m", Selected: "\x1b[0;1;34m",
	Newest: "\x1b[0;1;33m", Alarm: "\x1b[0;1;31m",
}

// scene draws one of everything.
func scene(g Glyphs) *Canvas {
	c := New(70, 18, g)
	w, h := c.Dots()
	fw, fh := float64(w), float64(h)*0.66
	c.Polyline(shape(fw, fh), true, Line, Solid, 1)
	c.Polyline([]Dot{{fw * 0.3, fh * 0.35}, {fw * 0.95, fh * 0.35}}, false, Second, DashDot, 1)
	c.Polyline([]Dot{{fw * 0.3, fh * 0.55}, {fw * 0.95, fh * 0.55}}, false, Second, Dashed, 1)
	c.Polyline(ring(fw*0.1, float64(h)*0.83, float64(h)*0.13, 60), true, Line, Solid, 1)
	c.Polyline(ring(fw*0.3, float64(h)*0.83, float64(h)*0.13, 60), true, Ghost, Dotted, 1)
	c.Polyline([]Dot{{fw * 0.42, fh * 1.1}, {fw * 0.52, fh * 1.45}}, false, Selected, Solid, 2)
	c.Polyline([]Dot{{fw * 0.55, fh * 1.1}, {fw * 0.7, fh * 1.1}, {fw * 0.7, fh * 1.4}, {fw * 0.55, fh * 1.4}}, true, Line, Solid, 1)
	c.Mark(fw*0.25, fh*0.42, Newest)
	c.Label(fw*0.25, fh*0.42, "tip 9 5/8", Newest)
	c.Mark(fw*0.85, fh*1.25, Alarm)
	c.Label(fw*0.85, fh*1.25, "look", Alarm)
	c.Text(50, 17, "at the foot", Words)
	return c
}
