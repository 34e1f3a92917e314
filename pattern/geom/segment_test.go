package geom

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestStraightHandlesOnTheThirds(t *testing.T) {
	s := Straight(pt(0, 0), pt(9, 3))
	require.True(t, s.B.Near(pt(3, 1), 1e-12))
	require.True(t, s.C.Near(pt(6, 2), 1e-12))
	require.False(t, s.Curved)
	require.Equal(t, 5.0, Straight(pt(1, 1), pt(4, 5)).Length())
}

func TestTangentWhereAHandleIsMissing(t *testing.T) {
	a, d := pt(0, 0), pt(10, 0)
	for name, c := range map[string]struct {
		s    Segment
		t    float64
		want Vector
	}{
		"start, no handle":       {Curve(a, a, pt(3, 4), d), 0, vec(0.6, 0.8)},
		"start, no handles":      {Curve(a, a, a, d), 0, vec(1, 0)},
		"end, no handle":         {Curve(a, pt(10, 5), d, d), 1, vec(0, -1)},
		"end, no handles":        {Curve(a, d, d, d), 1, vec(1, 0)},
		"both":                   {Curve(a, a, d, d), 0, vec(1, 0)},
		"a hair is no handle":    {Curve(a, pt(0, 1e-12), pt(3, 4), d), 0, vec(0.6, 0.8)},
		"point":                  {Curve(a, a, a, a), 0.5, vec(0, 0)},
		"closed, handles at one": {Curve(a, a, d, a), 0, vec(1, 0)},
		"straight":               {Straight(a, d), 0.3, vec(1, 0)},
		"plain":                  {Curve(a, pt(0, 5), pt(10, 5), d), 0, vec(0, 1)},
		"cusp goes on":           {Curve(pt(0, 0), pt(10, 10), pt(0, 10), pt(10, 0)), 0.5, vec(0, -1)},
	} {
		got := c.s.Tangent(c.t)
		require.InDelta(t, c.want.X, got.X, 1e-9, name)
		require.InDelta(t, c.want.Y, got.Y, 1e-9, name)
	}
}

func TestTangentIsTheLimitBesideTheEnd(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := genArc().Draw(t, "s")
		if rapid.Bool().Draw(t, "no handle") {
			s.B = s.A
		}
		got, beside := s.Tangent(0), s.Tangent(1e-6)
		require.InDelta(t, 1, got.Len(), 1e-12)
		require.InDelta(t, 0, got.Cross(beside), 1e-3)
		require.Positive(t, got.Dot(beside))
	})
}

func TestCurvature(t *testing.T) {
	// A quarter turn of radius 100 to the right, then the same to the left.
	const k = 0.5522847498 * 100
	right := Curve(pt(0, 0), pt(k, 0), pt(100, 100-k), pt(100, 100))
	require.InDelta(t, -0.01, right.Curvature(0), 3e-4)
	require.InDelta(t, 0.01, right.Reverse().Curvature(1), 3e-4)
	require.Zero(t, Straight(pt(0, 0), pt(1, 1)).Curvature(0.5))
}

func TestDerivativeIsTheDifference(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := genSegment().Draw(t, "s")
		u := rapid.Float64Range(0.01, 0.99).Draw(t, "t")
		const h = 1e-5
		got := s.Derivative(u)
		want := s.At(u - h).To(s.At(u + h)).Scale(1 / (2 * h))
		require.InDelta(t, 0, got.Minus(want).Len(), 1e-4)
	})
}

func TestSplitAndPart(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := genSegment().Draw(t, "s")
		u := rapid.Float64Range(0, 1)
		m := u.Draw(t, "m")
		l, r := s.Split(m)
		require.Equal(t, s.A, l.A)
		require.Equal(t, s.D, r.D)
		require.Equal(t, s.At(m), l.D)
		require.Equal(t, l.D, r.A)
		require.InDelta(t, s.Length(), l.Length()+r.Length(), 1e-6)

		t0, t1, v := u.Draw(t, "t0"), u.Draw(t, "t1"), u.Draw(t, "v")
		p := s.Part(t0, t1)
		require.True(t, p.At(v).Near(s.At(t0+(t1-t0)*v), 1e-6), "a part is the curve itself")
		require.Equal(t, s.At(t0), p.A)
		require.Equal(t, s.At(t1), p.D)
		x := p.Part(0.25, 0.75)
		require.True(t, x.At(v).Near(s.At(t0+(t1-t0)*(0.25+v/2)), 1e-6), "and a part of a part")
		require.True(t, s.Part(0, 1).At(v).Near(s.At(v), 1e-9))
		require.Equal(t, s, s.Reverse().Reverse())
		require.True(t, s.Reverse().At(v).Near(s.At(1-v), 1e-9))
	})
}

// polyline is the length by brute force: chords, with the error of the order
// of their number squared taken out by doing it twice.
func polyline(s Segment) float64 {
	sum := func(n int) float64 {
		l, from := 0.0, s.A
		for i := 1; i <= n; i++ {
			to := s.At(float64(i) / float64(n))
			l += from.Dist(to)
			from = to
		}
		return l
	}
	a, b := sum(4000), sum(8000)
	return b + (b-a)/3
}

func TestLengthAgainstChords(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := genArc().Draw(t, "s")
		require.InDelta(t, polyline(s), s.Length(), 1e-6)
	})
	for name, s := range map[string]Segment{
		"no handle":  Curve(pt(0, 0), pt(0, 0), pt(60, 80), pt(100, 80)),
		"no handles": Curve(pt(0, 0), pt(0, 0), pt(100, 80), pt(100, 80)),
		"s":          Curve(pt(0, 0), pt(120, 0), pt(0, 100), pt(120, 100)),
		"point":      Curve(pt(1, 1), pt(1, 1), pt(1, 1), pt(1, 1)),
	} {
		require.InDelta(t, polyline(s), s.Length(), 1e-6, name)
	}
	// A cusp, and a curve that runs out and back, where chords are poor: by
	// symmetry and by hand.
	there := Curve(pt(0, 0), pt(100, 0), pt(100, 0), pt(0, 0))
	require.InDelta(t, 150, there.Length(), 1e-6)
	cusp := Curve(pt(0, 0), pt(100, 100), pt(0, 100), pt(100, 0))
	l, r := cusp.Split(0.5)
	require.InDelta(t, l.Length()+r.Length(), cusp.Length(), 1e-6)
}

func TestLengthThereAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := genSegment().Draw(t, "s")
		u := rapid.Float64Range(0, 1).Draw(t, "t")
		l := s.LengthTo(u)
		require.InDelta(t, l, s.LengthTo(s.TAt(l)), 1e-6)
		require.InDelta(t, s.Length(), s.Reverse().Length(), 1e-6)
		require.InDelta(t, s.Length(), s.Transform(genMotion().Draw(t, "m")).Length(), 1e-6)
		require.Equal(t, 0.0, s.TAt(-1))
		require.Equal(t, 1.0, s.TAt(s.Length()+1))
	})
}

func TestNearestIsNotFartherThanAnySample(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := genSegment().Draw(t, "s")
		p := genPoint().Draw(t, "p")
		u := s.Nearest(p)
		require.GreaterOrEqual(t, u, 0.0)
		require.LessOrEqual(t, u, 1.0)
		got := s.At(u).Dist(p)
		for i := range 401 {
			require.LessOrEqual(t, got, s.At(float64(i)/400).Dist(p)+1e-9)
		}
		on := s.At(u)
		require.True(t, s.At(s.Nearest(on)).Near(on, 1e-6), "a point on the curve is its own nearest")
	})
}

func TestBoundsHoldEverySampleAndAreTight(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := genSegment().Draw(t, "s")
		b := s.Bounds()
		var seen Box
		for i := range 1001 {
			p := s.At(float64(i) / 1000)
			require.True(t, b.Grow(1e-9).Contains(p))
			seen = seen.Add(p)
		}
		require.InDelta(t, b.Width(), seen.Width(), 0.02)
		require.InDelta(t, b.Height(), seen.Height(), 0.02)
	})
}

func TestTransformMovesEveryPoint(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, m := genSegment().Draw(t, "s"), genMotion().Draw(t, "m")
		u := rapid.Float64Range(0, 1).Draw(t, "t")
		require.True(t, s.Transform(m).At(u).Near(m.Apply(s.At(u)), 1e-9))
		require.Equal(t, s.Curved, s.Transform(m).Curved)
	})
}

func TestRoots(t *testing.T) {
	for name, c := range map[string]struct {
		c    []float64
		want []float64
	}{
		"line":        {[]float64{-1, 3}, []float64{0.25}},
		"none":        {[]float64{1, 2, 3, 4}, nil},
		"nought":      {[]float64{0, 0, 0}, nil},
		"double":      {[]float64{1, -1, 1}, []float64{0.5}},
		"ends":        {[]float64{0, 1, 1, 0}, []float64{0, 1}},
		"three":       {[]float64{-1, 9, -9, 1}, []float64{0.0371, 0.5, 0.9629}},
		"end, inside": {[]float64{0, -1, 1, 1}, []float64{0, 0.4417}},
	} {
		b := bern{n: len(c.c) - 1}
		copy(b.c[:], c.c)
		got := b.roots(nil)
		require.Len(t, got, len(c.want), "%s: %v", name, got)
		for i := range got {
			require.InDelta(t, c.want[i], got[i], 1e-4, name)
			f, _ := b.at(got[i])
			require.InDelta(t, 0, f, 1e-9, name)
		}
	}
	for _, r := range quadRoots(1e-30, 1, -0.5) {
		require.True(t, math.Abs(r-0.5) < 1e-12 || math.Abs(r) > 1e20, "%v", r)
	}
}
