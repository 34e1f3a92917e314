package geom

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestLeftIsUpWhenGoingRight(t *testing.T) {
	require.Equal(t, vec(0, -1), vec(1, 0).Left(), "y is down: left of going right is up")
	require.Equal(t, vec(0, 1), vec(1, 0).Right())
	require.Equal(t, vec(1, 0), vec(0, 1).Left())
	require.Positive(t, vec(1, 0).Cross(vec(0, 1)), "right turns are positive")
	v := vec(1, 0).Turn(math.Pi / 2)
	require.InDelta(t, 0, v.X, 1e-15)
	require.InDelta(t, 1, v.Y, 1e-15)
}

func TestUnit(t *testing.T) {
	for _, c := range []struct{ in, want Vector }{
		{vec(3, 4), vec(0.6, 0.8)},
		{vec(0, 0), vec(0, 0)},
		{vec(0, -1e-200), vec(0, -1)},
		{vec(1e200, 0), vec(1, 0)},
	} {
		require.Equal(t, c.want, c.in.Unit(), "%v", c.in)
	}
}

func TestPointsAndVectors(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, q := genPoint().Draw(t, "p"), genPoint().Draw(t, "q")
		require.Equal(t, p.To(q), q.Sub(p))
		require.Equal(t, p, p.Lerp(q, 0))
		require.Equal(t, q, p.Lerp(q, 1))
		require.InDelta(t, p.Dist(q)/2, p.Dist(p.Lerp(q, 0.5)), 1e-9)
		require.True(t, p.Add(p.To(q)).Near(q, 1e-9))
		v, w := p.To(q), Vector(p)
		require.Equal(t, v.Left(), v.Right().Scale(-1))
		require.Equal(t, v, v.Left().Right())
		require.InDelta(t, 0, v.Dot(v.Left()), 1e-6)
		require.InDelta(t, v.Len(), v.Turn(1).Len(), 1e-9)
		require.InDelta(t, v.Plus(w).X, v.Minus(w.Scale(-1)).X, 0)
		require.Equal(t, v.Cross(w), -w.Cross(v))
	})
}

func TestMeet(t *testing.T) {
	for name, c := range map[string]struct {
		a, b Line
		want Point
		ok   bool
	}{
		"square":    {Line{pt(0, 5), vec(1, 0)}, Line{pt(7, 0), vec(0, 2)}, pt(7, 5), true},
		"behind":    {Line{pt(0, 0), vec(1, 1)}, Line{pt(-4, 0), vec(0, 1)}, pt(-4, -4), true},
		"parallel":  {Line{pt(0, 0), vec(1, 0)}, Line{pt(0, 1), vec(-3, 0)}, Point{}, false},
		"same":      {Line{pt(0, 0), vec(1, 0)}, Line{pt(5, 0), vec(1, 0)}, Point{}, false},
		"direction": {Line{pt(0, 0), vec(0, 0)}, Line{pt(5, 0), vec(1, 0)}, Point{}, false},
	} {
		got, ok := Meet(c.a, c.b)
		require.Equal(t, c.ok, ok, name)
		require.True(t, got.Near(c.want, 1e-12), "%s: %v", name, got)
	}
}

func TestFoot(t *testing.T) {
	require.True(t, Line{pt(0, 0), vec(2, 2)}.Foot(pt(4, 0)).Near(pt(2, 2), 1e-12))
}

func TestMatrixTurnsClockwiseToTheEye(t *testing.T) {
	require.True(t, TurnAbout(pt(1, 1), math.Pi/2).Apply(pt(2, 1)).Near(pt(1, 2), 1e-12))
	require.True(t, MirrorIn(Line{pt(3, 9), vec(0, 1)}).Apply(pt(1, 4)).Near(pt(5, 4), 1e-12))
	require.Equal(t, Identity, MirrorIn(Line{}))
	require.Equal(t, pt(6, -2), Scale(2, -1).Apply(pt(3, 2)))
	require.Equal(t, vec(3, 2), Move(vec(9, 9)).ApplyVector(vec(3, 2)))
}

func TestMotionsThereAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, c := genPoint().Draw(t, "p"), genPoint().Draw(t, "c")
		v := Vector(genPoint().Draw(t, "v"))
		a := rapid.Float64Range(-7, 7).Draw(t, "angle")
		for name, m := range map[string]Matrix{
			"move":   Move(v).Then(Move(v.Scale(-1))),
			"turn":   TurnAbout(c, a).Then(TurnAbout(c, -a)),
			"mirror": MirrorIn(Line{c, v}).Then(MirrorIn(Line{c, v})),
			"scale":  Scale(2, 4).Then(Scale(0.5, 0.25)),
			"none":   Identity.Then(Identity),
		} {
			require.True(t, m.Apply(p).Near(p, 1e-9), name)
		}
		m, n := genMotion().Draw(t, "m"), genMotion().Draw(t, "n")
		require.True(t, m.Then(n).Apply(p).Near(n.Apply(m.Apply(p)), 1e-9), "Then does m first")
		require.InDelta(t, p.Dist(c), m.Apply(p).Dist(m.Apply(c)), 1e-9, "a motion keeps distances")
	})
}

func TestBoxGrowsFromNothing(t *testing.T) {
	var b Box
	require.True(t, b.Empty())
	require.False(t, b.Contains(pt(0, 0)))
	b = b.Add(pt(0, 0))
	require.False(t, b.Empty(), "the origin alone is a box")
	b = b.Add(pt(5, 7))
	require.Equal(t, Box{pt(0, 0), pt(5, 7)}, b, "the origin is kept")
	require.Equal(t, Box{pt(5, 7), pt(5, 7)}, Box{}.Add(pt(5, 7)), "and not invented")
	require.Equal(t, 5.0, b.Width())
	require.Equal(t, 7.0, b.Height())
	require.Equal(t, Box{pt(-1, -1), pt(6, 8)}, b.Grow(1))
	require.True(t, b.Grow(-3).Empty())
	require.True(t, Box{}.Grow(3).Empty())
	require.Equal(t, b, b.Union(Box{}))
	require.Equal(t, b, Box{}.Union(b))
	require.False(t, Box{}.Add(pt(0, 0)).Union(Box{}).Empty())
	require.True(t, b.Overlaps(Box{pt(5, 7), pt(9, 9)}))
	require.False(t, b.Overlaps(Box{}))
	require.False(t, b.Overlaps(Box{pt(6, 0), pt(9, 9)}))
	require.Equal(t, pt(2.5, 3.5), b.Centre())
	require.Equal(t, 5.0, b.away(pt(8, 11)))
}
