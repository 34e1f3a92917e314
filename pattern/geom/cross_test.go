package geom

import (
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestCrossCounts(t *testing.T) {
	up := Curve(pt(0, 0), pt(30, 60), pt(70, 60), pt(100, 0))
	down := Curve(pt(0, 40), pt(30, -20), pt(70, -20), pt(100, 40))
	wave := Curve(pt(0, 20), pt(50, 90), pt(50, -50), pt(100, 20))
	for name, c := range map[string]struct {
		a, b Path
		want []Point // nil: only the number counts
		n    int
	}{
		"lines":             {Lines(pt(0, 0), pt(10, 10)), Lines(pt(0, 10), pt(10, 0)), []Point{pt(5, 5)}, 1},
		"lines apart":       {Lines(pt(0, 0), pt(10, 10)), Lines(pt(0, 10), pt(4, 6)), nil, 0},
		"lines end on line": {Lines(pt(0, 0), pt(10, 0)), Lines(pt(4, 0), pt(4, 9)), []Point{pt(4, 0)}, 1},
		"lines share a bit": {Lines(pt(0, 0), pt(10, 0)), Lines(pt(4, 0), pt(20, 0)), []Point{pt(4, 0), pt(10, 0)}, 2},
		"parallel":          {Lines(pt(0, 0), pt(10, 0)), Lines(pt(0, 1), pt(10, 1)), nil, 0},
		"joint once":        {Lines(pt(0, 0), pt(5, 5), pt(10, 0)), Lines(pt(5, 0), pt(5, 5), pt(5, 9)), []Point{pt(5, 5)}, 1},
		"line, curve":       {Lines(pt(50, -10), pt(50, 100)), Path{up}, []Point{pt(50, 45)}, 1},
		"line, curve twice": {Lines(pt(-9, 20), pt(200, 20)), Path{up}, nil, 2},
		"line, wave thrice": {Lines(pt(-9, 20.5), pt(200, 19.5)), Path{wave}, nil, 3},
		"line touches":      {Lines(pt(0, 45), pt(100, 45)), Path{up}, []Point{pt(50, 45)}, 1},
		"curves twice":      {Path{up}, Path{down}, nil, 2},
		"curves thrice":     {Path{wave}, Path{Curve(pt(0, 30), pt(30, 26), pt(70, 14), pt(100, 10))}, nil, 3},
		"curves nine":       {Path{Curve(pt(0, 0), pt(300, 100), pt(-200, 100), pt(100, 0))}, Path{Curve(pt(0, 100), pt(33, -300), pt(66, 400), pt(100, 0))}, nil, -1},
		"share an end":      {Path{up}, Path{Curve(pt(100, 0), pt(130, -60), pt(160, -60), pt(200, 0))}, []Point{pt(100, 0)}, 1},
		"smooth end":        {Path{up}, Path{Curve(pt(100, 0), pt(110, -20), pt(160, -30), pt(200, 0))}, []Point{pt(100, 0)}, 1},
		"same":              {Path{up}, Path{up}, []Point{pt(0, 0), pt(100, 0)}, 2},
		"same, reversed":    {Path{up}, Path{up.Reverse()}, []Point{pt(0, 0), pt(100, 0)}, 2},
		"part of itself":    {Path{up}, Path{up.Part(0.2, 0.7)}, []Point{up.At(0.2), up.At(0.7)}, 2},
		"touch":             {Path{up}, Path{Curve(pt(0, 90), pt(30, 30), pt(70, 30), pt(100, 90))}, []Point{pt(50, 45)}, 1},
	} {
		got := Cross(c.a, c.b)
		if c.n >= 0 {
			require.Len(t, got, c.n, "%s: %v", name, got)
		}
		for i, w := range c.want {
			require.True(t, got[i].At.Near(w, 1e-5), "%s: %v", name, got)
		}
	}
}

// flatCount counts crossings of the paths flattened within tol.
func flatCount(a, b Path, tol float64) int {
	n := 0
	pa, pb := a.Flatten(tol), b.Flatten(tol)
	for i := 1; i < len(pa); i++ {
		box := span(pa[i-1], pa[i])
		for j := 1; j < len(pb); j++ {
			if box.meets(span(pb[j-1], pb[j])) &&
				turn(pa[i-1], pa[i], pb[j-1])*turn(pa[i-1], pa[i], pb[j]) < 0 &&
				turn(pb[j-1], pb[j], pa[i-1])*turn(pb[j-1], pb[j], pa[i]) < 0 {
				n++
			}
		}
	}
	return n
}

func TestCrossAgreesWithChords(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := Path{genSegment().Draw(t, "a")}, Path{genSegment().Draw(t, "b")}
		got := Cross(a, b)
		plain := true
		for i, c := range got {
			p, u := a.At(c.S)
			q, v := b.At(c.T)
			require.True(t, p.Near(c.At, 1e-5) && q.Near(c.At, 1e-5), "on both")
			if i > 0 {
				require.LessOrEqual(t, got[i-1].S, c.S, "in order along a")
			}
			const end = 0.01
			plain = plain && c.S > end && c.S < a.Length()-end && c.T > end && c.T < b.Length()-end &&
				math.Abs(u.Cross(v)) > 0.05
		}
		require.Len(t, Cross(b, a), len(got), "the same from the other side")
		for _, p := range []Path{a, b} {
			for _, q := range []Path{a, b} {
				_, _, d0 := p.Nearest(q.Start())
				_, _, d1 := p.Nearest(q.End())
				plain = plain && (&p[0] == &q[0] || d0 > 0.01 && d1 > 0.01)
			}
		}
		// At ends and touches chords may miss; then they seldom agree.
		if n := flatCount(a, b, 0.0005); plain && n == flatCount(a, b, 0.003) {
			require.Len(t, got, n)
		}
	})
}

func TestCrossMovesWithThePaths(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := Path{genArc().Draw(t, "a")}, Path{genArc().Draw(t, "b")}
		m := genMotion().Draw(t, "m")
		moved := Cross(a.Transform(m), b.Transform(m))
		for _, c := range Cross(a, b) {
			_, u := a.At(c.S)
			_, v := b.At(c.T)
			if math.Abs(u.Cross(v)) < 0.01 {
				continue // A touch may be lost by rounding.
			}
			require.True(t, slices.ContainsFunc(moved, func(k Crossing) bool {
				return m.Apply(c.At).Near(k.At, 1e-6)
			}), "%v %v", c, moved)
		}
	})
}

// TestFirstCross finds what Cross lists first, bit for bit, also at joints,
// where two segments are met at once.
func TestFirstCross(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		at := func(name string) Point {
			return Point{X: rapid.Float64Range(-50, 50).Draw(t, name), Y: rapid.Float64Range(-50, 50).Draw(t, name)}
		}
		var p Path
		end := at("start")
		for range rapid.IntRange(1, 5).Draw(t, "segments") {
			next := at("next")
			if rapid.Bool().Draw(t, "curved") {
				p = append(p, Curve(end, at("b"), at("c"), next))
			} else {
				p = append(p, Straight(end, next))
			}
			end = next
		}
		line := Straight(at("from"), at("to"))
		if rapid.Bool().Draw(t, "through a joint") {
			line.D = line.A.Lerp(p[len(p)-1].A, 2)
			line = Straight(line.A, line.D)
		}
		want := Cross(Path{line}, p)
		got, ok := FirstCross(line, p)
		require.Equal(t, len(want) > 0, ok)
		if ok {
			require.Equal(t, want[0].At, got)
		}
	})
}
