package geom

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestPathOfNothing(t *testing.T) {
	var p Path
	require.Zero(t, p.Length())
	require.Zero(t, p.Start())
	require.Zero(t, p.End())
	require.Zero(t, p.StartTangent())
	require.Zero(t, p.EndTangent())
	require.Nil(t, p.Reverse())
	require.Nil(t, p.Flatten(1))
	require.Nil(t, p.Part(0, 1))
	require.Nil(t, p.Offset(3, 0.1))
	require.Nil(t, Cross(p, bend()))
	require.Nil(t, Loop(nil, 1))
	require.True(t, p.Bounds().Empty())
	require.False(t, p.Closed())
	at, way := p.At(3)
	require.Zero(t, at)
	require.Zero(t, way)
	require.Nil(t, Lines(pt(1, 1)))
	require.Equal(t, bend(), p.Then(bend()))
	require.Equal(t, bend(), bend().Then(p))
}

func TestPathAt(t *testing.T) {
	p := Lines(pt(0, 0), pt(10, 0), pt(10, 5))
	for _, c := range []struct {
		s    float64
		at   Point
		way  Vector
		name string
	}{
		{-3, pt(0, 0), vec(1, 0), "before the start"},
		{4, pt(4, 0), vec(1, 0), "within"},
		{10, pt(10, 0), vec(1, 0), "at a joint, arriving"},
		{12, pt(10, 2), vec(0, 1), "past it"},
		{99, pt(10, 5), vec(0, 1), "past the end"},
	} {
		at, way := p.At(c.s)
		require.True(t, at.Near(c.at, 1e-12), c.name)
		require.Equal(t, c.way, way, c.name)
	}
	require.Equal(t, vec(1, 0), p.StartTangent())
	require.Equal(t, vec(0, 1), p.EndTangent())
}

func TestThenBridgesAGapAndClosesAHair(t *testing.T) {
	p := Lines(pt(0, 0), pt(10, 0))
	require.Equal(t, Lines(pt(0, 0), pt(10, 0), pt(12, 0), pt(12, 9)), p.Then(Lines(pt(12, 0), pt(12, 9))))
	require.Equal(t, Lines(pt(0, 0), pt(10, 0), pt(12, 9)), p.Then(Lines(pt(10, 1e-9), pt(12, 9))))
	require.Len(t, p, 1, "the path itself is as it was")
}

func TestClosed(t *testing.T) {
	require.True(t, shapes()["ring"].Closed())
	require.False(t, bend().Closed())
	require.False(t, Path{Straight(pt(1, 1), pt(1, 1))}.Closed())
}

func TestPathSplitJoinPart(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := genPath().Draw(t, "p")
		total := p.Length()
		u := rapid.Float64Range(-0.1, 1.1)
		m := u.Draw(t, "m") * total
		l, r := p.Split(m)
		require.InDelta(t, total, l.Length()+r.Length(), 1e-5)
		if m > 0 {
			require.InDelta(t, min(m, total), l.Length(), 1e-5)
		}
		back := l.Then(r)
		require.InDelta(t, total, back.Length(), 1e-5)
		require.Equal(t, p.Start(), back.Start())
		require.Equal(t, p.End(), back.End())

		s0, s1 := u.Draw(t, "s0")*total, u.Draw(t, "s1")*total
		part := p.Part(s0, s1)
		in := func(s float64) float64 { return min(max(s, 0), total) }
		require.InDelta(t, math.Abs(in(s1)-in(s0)), part.Length(), 1e-5)
		if len(part) == 0 {
			return
		}
		at, _ := p.At(s0)
		require.True(t, part.Start().Near(at, 1e-5))
		v := rapid.Float64Range(0, 1).Draw(t, "v") * part.Length()
		got, _ := part.At(v)
		want, _ := p.At(in(s0) + math.Copysign(v, s1-s0))
		require.True(t, got.Near(want, 1e-3), "a part is the path itself: %v %v", got, want)
	})
}

func TestPathReverseAndTransform(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, m := genPath().Draw(t, "p"), genMotion().Draw(t, "m")
		require.Equal(t, p, p.Reverse().Reverse())
		require.Equal(t, p.Start(), p.Reverse().End())
		require.InDelta(t, 0, p.StartTangent().Plus(p.Reverse().EndTangent()).Len(), 1e-6)
		require.InDelta(t, p.Length(), p.Reverse().Length(), 1e-5)
		q := p.Transform(m)
		require.InDelta(t, p.Length(), q.Length(), 1e-5)
		require.True(t, q.End().Near(m.Apply(p.End()), 1e-9))
		require.InDelta(t, p.Area(), q.Area(), 1e-4)
		require.InDelta(t, p.Area(), -p.Reverse().Area(), 1e-4)
	})
}

func TestPathNearest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, q := genPath().Draw(t, "p"), genPoint().Draw(t, "q")
		s, at, dist := p.Nearest(q)
		require.InDelta(t, at.Dist(q), dist, 0)
		back, _ := p.At(s)
		require.True(t, back.Near(at, 1e-3), "%v %v", back, at)
		for _, c := range p.Flatten(1) {
			require.LessOrEqual(t, dist, c.Dist(q)+1e-9)
		}
		require.True(t, p.Bounds().Grow(1e-9).Contains(at))
	})
}

func TestAtLevelAndAtOut(t *testing.T) {
	p := bend()
	require.Equal(t, []Point{pt(200, 150)}, p.AtLevel(150))
	require.Equal(t, []Point{pt(50, 0)}, p.AtOut(50))
	require.Nil(t, p.AtLevel(-1))
	require.Equal(t, []Point{pt(0, 0), pt(100, 0)}, p.AtLevel(0), "both ends of a stretch on the line")
	require.Equal(t, []Point{pt(200, 100), pt(200, 220)}, p.AtOut(200))
	require.Equal(t, []Point{pt(200, 100)}, p.AtLevel(100), "a joint once")
	zigzag := Lines(pt(0, 0), pt(2, 10), pt(4, 0), pt(6, 10))
	require.Equal(t, []Point{pt(1, 5), pt(3, 5), pt(5, 5)}, zigzag.AtLevel(5), "in path order")
	require.Equal(t, []Point{pt(2, 10), pt(6, 10)}, zigzag.AtLevel(10), "touches")
	rapid.Check(t, func(t *rapid.T) {
		p := genPath().Draw(t, "p")
		y := rapid.Float64Range(-400, 400).Draw(t, "y")
		at := p.AtLevel(y)
		for _, q := range at {
			_, _, d := p.Nearest(q)
			require.InDelta(t, 0, d, 1e-6)
			require.Equal(t, y, q.Y)
		}
		if (p.Start().Y < y) != (p.End().Y < y) {
			require.NotEmpty(t, at, "it must cross on its way")
		}
		turned := p.Transform(Matrix{0, 1, 1, 0, 0, 0})
		require.Len(t, turned.AtOut(y), len(at))
	})
}

func TestFlattenKeepsWithin(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := genPath().Draw(t, "p")
		tol := rapid.SampledFrom([]float64{0.02, 0.3, 2}).Draw(t, "tol")
		points := p.Flatten(tol)
		require.Equal(t, p.Start(), points[0])
		require.Equal(t, p.End(), points[len(points)-1])
		flat := Lines(points...)
		for _, s := range p {
			for i := range 201 {
				_, _, d := flat.Nearest(s.At(float64(i) / 200))
				require.LessOrEqual(t, d, tol+1e-9)
			}
		}
		for _, s := range flat {
			_, _, d := p.Nearest(s.At(0.5))
			require.LessOrEqual(t, d, tol+1e-9, "nor does the chord stray")
		}
		require.Equal(t, points, p.Flatten(tol), "the same again")
	})
}

func TestFlattenIsSparing(t *testing.T) {
	require.Equal(t, []Point{pt(0, 0), pt(30, 40)}, shapes()["line"].Flatten(0.02))
	// The best any chords can do is sqrt(l / sqrt(8 tol r)) for an arc: about
	// 208 / sqrt(8*0.02*70) = 62 here.
	n := len(Path{armhole}.Flatten(0.02)) - 1
	require.Less(t, n, 75)
	require.Greater(t, n, 40)
}
