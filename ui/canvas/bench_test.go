package canvas

import "testing"

// curves are 30 closed curves of 100 points: 3,000 short segments.
func curves(w, h int) [][]Dot {
	var all [][]Dot
	for i := range 30 {
		r := float64(h)/2.2 - float64(3*i)
		if r < 20 {
			r = 20
		}
		all = append(all, ring(float64(w)/2+float64(4*i-60), float64(h)/2, r, 100))
	}
	return all
}

func benchRaster(b *testing.B, g Glyphs, d Dash) {
	c := New(200, 60, g)
	all := curves(c.Dots())
	b.ReportAllocs()
	for b.Loop() {
		c.Clear()
		for i, pts := range all {
			c.Polyline(pts, true, Line+Pen(i%3), d, 1)
		}
	}
}

// The limit for the first is 0.5 ms and no allocation.
func BenchmarkRasterBraille(b *testing.B) { benchRaster(b, Braille, Solid) }
func BenchmarkRasterBlocks(b *testing.B)  { benchRaster(b, Blocks, Solid) }
func BenchmarkRasterASCII(b *testing.B)   { benchRaster(b, ASCII, Solid) }
func BenchmarkRasterDashed(b *testing.B)  { benchRaster(b, Braille, DashDot) }

func benchString(b *testing.B, g Glyphs) {
	c := New(200, 60, g)
	for i, pts := range curves(c.Dots()) {
		c.Polyline(pts, true, Line+Pen(i%3), Solid, 1)
	}
	b.ReportAllocs()
	for b.Loop() {
		_ = c.String(signs)
	}
}

// The limit is 0.1 ms and two allocations.
func BenchmarkStringBraille(b *testing.B) { benchString(b, Braille) }
func BenchmarkStringBlocks(b *testing.B)  { benchString(b, Blocks) }
func BenchmarkStringASCII(b *testing.B)   { benchString(b, ASCII) }

func BenchmarkLabels(b *testing.B) {
	c := New(200, 60, Braille)
	all := curves(c.Dots())
	b.ReportAllocs()
	for b.Loop() {
		c.Clear()
		c.Polyline(all[0], true, Line, Solid, 1)
		for _, p := range all[0][:30] {
			c.Label(p.X, p.Y, "underneath 9 5/8", Words)
		}
	}
}
