package geom

import "testing"

func BenchmarkCubicLength(b *testing.B) {
	for b.Loop() {
		armhole.Length()
	}
}

func BenchmarkTAt(b *testing.B) {
	for b.Loop() {
		armhole.TAt(100)
	}
}

func BenchmarkNearest(b *testing.B) {
	for b.Loop() {
		armhole.Nearest(pt(200, 100))
	}
}

func BenchmarkFlatten(b *testing.B) {
	p := Path{armhole}
	for b.Loop() {
		p.Flatten(0.02)
	}
}

func BenchmarkOffset(b *testing.B) {
	p := Path{armhole}
	for b.Loop() {
		p.Offset(10, offTol)
	}
}

func BenchmarkOffsetTrimmed(b *testing.B) {
	p := Path{Curve(pt(0, 0), pt(60, 0), pt(60, 0), pt(60, 60))}
	for b.Loop() {
		p.Offset(-20, offTol)
	}
}

func BenchmarkCrossCurves(b *testing.B) {
	p, q := Path{armhole}, Path{Curve(pt(120, 200), pt(180, 190), pt(200, 100), pt(210, 40))}
	for b.Loop() {
		Cross(p, q)
	}
}

func BenchmarkCrossLine(b *testing.B) {
	p, q := Path{armhole}, Lines(pt(100, 100), pt(300, 130))
	for b.Loop() {
		Cross(p, q)
	}
}

func BenchmarkLoop(b *testing.B) {
	ring := edges(pt(0, 0), pt(70, 0), pt(120, -60), pt(240, -30), pt(250, 400), pt(0, 410))
	ring[3] = Path{armhole.Transform(Move(armhole.A.To(pt(240, -30))))}
	ring[3] = ring[3].Then(Lines(ring[3].End(), pt(250, 400)))
	out := offsets(ring, 10)
	for b.Loop() {
		Loop(out, 40)
	}
}

func BenchmarkSimple(b *testing.B) {
	for name, n := range map[string]int{"200": 200, "2000": 2000} {
		o := wheel(n)
		b.Run(name, func(b *testing.B) {
			for b.Loop() {
				o.Simple()
			}
		})
	}
}

func BenchmarkTurn(b *testing.B) {
	p, q, r := pt(0.1, 0.3), pt(100, 7), pt(50, 3)
	for b.Loop() {
		turn(p, q, r)
	}
}

func BenchmarkTurnInDoubt(b *testing.B) {
	p, q := pt(0.1, 0.3), pt(100, 7)
	r := p.Lerp(q, 0.37)
	for b.Loop() {
		turn(p, q, r)
	}
}
