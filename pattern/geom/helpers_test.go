package geom

import (
	"math"

	"pgregory.net/rapid"
)

// pt and vec keep tables short.
func pt(x, y float64) Point   { return Point{x, y} }
func vec(x, y float64) Vector { return Vector{x, y} }

// armhole is a curve such as the package is used on most: a quarter turn,
// sharper at one end.
var armhole = Curve(pt(150, 30), pt(135, 120), pt(150, 205), pt(235, 210))

// bend is a smooth path of a line, a curve and a line.
func bend() Path {
	return Path{
		Straight(pt(0, 0), pt(100, 0)),
		Curve(pt(100, 0), pt(160, 0), pt(200, 40), pt(200, 100)),
		Straight(pt(200, 100), pt(200, 220)),
	}
}

// shapes lists paths of every kind for tests that hold for all.
func shapes() map[string]Path {
	return map[string]Path{
		"line":    Lines(pt(0, 0), pt(30, 40)),
		"corner":  Lines(pt(0, 0), pt(100, 0), pt(100, 80)),
		"curve":   {armhole},
		"bend":    bend(),
		"s":       {Curve(pt(0, 0), pt(120, 0), pt(0, 100), pt(120, 100))},
		"no hand": {Curve(pt(0, 0), pt(0, 0), pt(60, 80), pt(100, 80))},
		"ring":    Lines(pt(0, 0), pt(90, 0), pt(90, 60), pt(0, 60), pt(0, 0)),
	}
}

func genPoint() *rapid.Generator[Point] {
	return rapid.Custom(func(t *rapid.T) Point {
		c := rapid.Float64Range(-500, 500)
		return Point{c.Draw(t, "x"), c.Draw(t, "y")}
	})
}

// genCurve draws a cubic with handles anywhere, loops and cusps too.
func genCurve() *rapid.Generator[Segment] {
	return rapid.Custom(func(t *rapid.T) Segment {
		p := genPoint()
		return Curve(p.Draw(t, "a"), p.Draw(t, "b"), p.Draw(t, "c"), p.Draw(t, "d"))
	})
}

// genArc draws a cubic without loop or cusp, turning by less than a half turn
// and with handles of sensible length.
func genArc() *rapid.Generator[Segment] {
	return rapid.Custom(func(t *rapid.T) Segment {
		a := genPoint().Draw(t, "a")
		l := rapid.Float64Range(20, 400).Draw(t, "chord")
		u := vec(l, 0).Turn(rapid.Float64Range(-math.Pi, math.Pi).Draw(t, "way"))
		turn := rapid.Float64Range(-1.2, 1.2)
		k := rapid.Float64Range(0.2, 0.5)
		d := a.Add(u)
		b := a.Add(u.Turn(turn.Draw(t, "leave")).Scale(k.Draw(t, "kb")))
		c := d.Add(u.Turn(turn.Draw(t, "arrive")).Scale(-k.Draw(t, "kc")))
		return Curve(a, b, c, d)
	})
}

func genSegment() *rapid.Generator[Segment] {
	return rapid.OneOf(genCurve(), genArc(), rapid.Custom(func(t *rapid.T) Segment {
		return Straight(genPoint().Draw(t, "a"), genPoint().Draw(t, "d"))
	}))
}

// genPath draws one to four segments end to end.
func genPath() *rapid.Generator[Path] {
	return rapid.Custom(func(t *rapid.T) Path {
		var p Path
		for range rapid.IntRange(1, 4).Draw(t, "segments") {
			s := genSegment().Draw(t, "segment")
			if len(p) > 0 {
				s = s.Transform(Move(s.A.To(p.End())))
				s.A = p.End()
				if !s.Curved {
					s = Straight(s.A, s.D)
				}
			}
			p = append(p, s)
		}
		return p
	})
}

func genMotion() *rapid.Generator[Matrix] {
	return rapid.Custom(func(t *rapid.T) Matrix {
		m := TurnAbout(genPoint().Draw(t, "about"), rapid.Float64Range(-4, 4).Draw(t, "angle"))
		return m.Then(Move(Vector(genPoint().Draw(t, "move"))))
	})
}
