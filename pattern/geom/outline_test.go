package geom

import (
	"math"
	"math/big"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

var square = Outline{pt(0, 0), pt(10, 0), pt(10, 10), pt(0, 10)}

func TestOutlineOfASquare(t *testing.T) {
	require.Equal(t, 100.0, square.Area(), "clockwise to the eye")
	require.Equal(t, -100.0, square.Reverse().Area())
	require.Equal(t, square[0], square.Reverse()[0])
	require.Equal(t, 40.0, square.Perimeter())
	require.Equal(t, Box{pt(0, 0), pt(10, 10)}, square.Box())
	require.True(t, square.Simple())
	at, dist := square.Closest(pt(5, -3))
	require.Equal(t, pt(5, 0), at)
	require.Equal(t, 3.0, dist)
	require.Equal(t, 100.0, square.Path().Area())
	require.True(t, square.Path().Closed())
	require.Equal(t, square, square.Path().Outline(0.1))
	for _, c := range []struct {
		p    Point
		want bool
	}{
		{pt(5, 5), true},
		{pt(11, 5), false},
		{pt(-1, 10), false},
		{pt(5, 11), false},
		{pt(-1, 0), false},
		{pt(0, 0), true},
		{pt(10, 10), true},
		{pt(5, 0), true},
		{pt(5, 10), true},
		{pt(0, 5), true},
		{pt(10, 5), true},
	} {
		require.Equal(t, c.want, square.Contains(c.p), "%v", c.p)
	}
	require.Zero(t, Outline{}.Area())
	require.Zero(t, Outline{}.Perimeter())
	require.False(t, Outline{}.Contains(pt(0, 0)))
	require.Nil(t, Outline(nil).Reverse())
	require.Nil(t, Outline(nil).Transform(Identity))
	require.Nil(t, Outline{}.Path())
}

func TestAreaFarFromTheOrigin(t *testing.T) {
	m := Move(vec(1e9, -1e9))
	require.Equal(t, 100.0, square.Transform(m).Area())
}

func TestPathAreaIsTheFlattenedArea(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := genPath().Draw(t, "p")
		require.InDelta(t, Outline(p.Flatten(0.001)).Area(), p.Area(), 0.002*p.Length()+1e-6)
	})
}

func TestTurnIsExact(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		// Nearly straight triples, where plain floats are a lottery.
		a, b := genPoint().Draw(t, "a"), genPoint().Draw(t, "b")
		c := a.Lerp(b, rapid.Float64Range(-1, 2).Draw(t, "share"))
		r := func(x float64) *big.Rat { return new(big.Rat).SetFloat64(x) }
		sub := func(x, y float64) *big.Rat { return new(big.Rat).Sub(r(x), r(y)) }
		l := new(big.Rat).Mul(sub(b.X, a.X), sub(c.Y, a.Y))
		want := l.Cmp(new(big.Rat).Mul(sub(b.Y, a.Y), sub(c.X, a.X)))
		require.Equal(t, want, turn(a, b, c))
		require.Equal(t, -want, turn(b, a, c))
	})
	require.Equal(t, 1, turn(pt(0, 0), pt(1, 0), pt(0, 1)), "right is positive")
	require.Equal(t, 1, turn(pt(0, 0), pt(1e-200, 0), pt(0, 1e-200)), "even very small")
	require.Zero(t, turn(pt(0, 0), pt(math.NaN(), 0), pt(0, 1)))
}

func TestSimpleAndCrossing(t *testing.T) {
	for name, c := range map[string]struct {
		o      Outline
		simple bool
		i, j   int // -1 for no crossing
		at     Point
	}{
		"square":            {square, true, -1, 0, Point{}},
		"repeated points":   {Outline{pt(0, 0), pt(0, 0), pt(10, 0), pt(10, 10), pt(10, 10), pt(0, 0)}, true, -1, 0, Point{}},
		"point on edge":     {Outline{pt(0, 0), pt(5, 0), pt(10, 0), pt(10, 10)}, true, -1, 0, Point{}},
		"nothing":           {Outline{}, false, -1, 0, Point{}},
		"two points":        {Outline{pt(0, 0), pt(5, 0)}, false, -1, 0, Point{}},
		"flat":              {Outline{pt(0, 0), pt(5, 0), pt(9, 0)}, false, -1, 0, Point{}},
		"bow tie":           {Outline{pt(0, 0), pt(10, 10), pt(10, 0), pt(0, 10)}, false, 0, 2, pt(5, 5)},
		"bow tie, repeated": {Outline{pt(0, 0), pt(0, 0), pt(10, 10), pt(10, 0), pt(0, 10)}, false, 1, 3, pt(5, 5)},
		"corner on corner":  {Outline{pt(0, 0), pt(5, 5), pt(10, 0), pt(10, 10), pt(5, 5), pt(0, 10)}, false, -1, 0, Point{}},
		"corner on edge":    {Outline{pt(0, 0), pt(10, 0), pt(10, 10), pt(5, 0), pt(0, 10)}, false, -1, 0, Point{}},
		"spike":             {Outline{pt(0, 0), pt(10, 0), pt(10, 10), pt(10, 20), pt(10, 10), pt(0, 10)}, false, -1, 0, Point{}},
		"spike at start":    {Outline{pt(0, -9), pt(0, 0), pt(10, 0), pt(10, 10), pt(0, 0)}, false, -1, 0, Point{}},
		"through a corner":  {Outline{pt(0, 0), pt(5, 5), pt(10, 10), pt(10, 0), pt(5, 5), pt(0, 10)}, false, 1, 4, pt(5, 5)},
		"corner past edge":  {Outline{pt(0, 0), pt(10, 0), pt(10, 10), pt(5, 10), pt(5, 0), pt(2, -5), pt(0, 5)}, false, 0, 4, pt(5, 0)},
	} {
		require.Equal(t, c.simple, c.o.Simple(), name)
		i, j, at, found := c.o.Crossing()
		require.Equal(t, c.i >= 0, found, name)
		if found {
			require.Equal(t, []int{c.i, c.j}, []int{i, j}, name)
			require.True(t, at.Near(c.at, 1e-9), "%s: %v", name, at)
		}
	}
}

func TestContainsAgreesWithWalkingRound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		o := Outline(rapid.SliceOfN(genPoint(), 3, 9).Draw(t, "o"))
		p := genPoint().Draw(t, "p")
		if _, d := o.Closest(p); d < 1e-6 {
			return
		}
		round := 0.0
		for i, a := range o {
			v, w := p.To(a), p.To(o[o.next(i)])
			round += math.Atan2(v.Cross(w), v.Dot(w))
		}
		require.Equal(t, math.Abs(round) > 1, o.Contains(p))
		require.Equal(t, o.Contains(p), o.Reverse().Contains(p))
	})
}

// wheel is a simple ring of n points whose radius goes in and out.
func wheel(n int) Outline {
	o := make(Outline, n)
	for i := range o {
		r := 200 + 40*math.Sin(float64(i)*0.7)
		o[i] = pt(0, 0).Add(vec(r, 0).Turn(2 * math.Pi * float64(i) / float64(n)))
	}
	return o
}

func TestSweepAgreesWithAllPairs(t *testing.T) {
	for _, n := range []int{sweepFrom - 1, sweepFrom, 2000} {
		o := wheel(n)
		require.True(t, o.Simple(), "%d", n)
		o[n/3], o[n/3+4] = o[n/3+4], o[n/3]
		require.False(t, o.Simple(), "%d", n)
		r := o.ring()
		for _, hit := range []func(i, j int) bool{
			r.contact,
			func(i, j int) bool { _, yes := r.crosses(i, j); return yes },
		} {
			want, found := r.allPairs(r.boxes(), hit)
			require.True(t, found)
			got, found := r.sweep(r.boxes(), hit)
			require.True(t, found)
			require.Equal(t, want, got, "the same first pair")
		}
	}
}

// plainSimple is Simple by fractions over all pairs, for small whole numbers.
func plainSimple(o Outline) bool {
	var r Outline
	for i, p := range o {
		if p != o[o.next(i)] {
			r = append(r, p)
		}
	}
	n := len(r)
	if n < 3 {
		return false
	}
	side := func(a, b, c Point) float64 { // exact for small whole numbers
		return (b.X-a.X)*(c.Y-a.Y) - (b.Y-a.Y)*(c.X-a.X)
	}
	on := func(a, b, p Point) bool {
		return side(a, b, p) == 0 && a.To(p).Dot(b.To(p)) <= 0
	}
	for i := range n {
		a, b, c := r[i], r[(i+1)%n], r[(i+2)%n]
		if on(a, b, c) || on(b, c, a) {
			return false
		}
		for k := 2; k < n-1; k++ {
			c, d := r[(i+k)%n], r[(i+k+1)%n]
			if on(a, b, c) || on(a, b, d) || on(c, d, a) || on(c, d, b) ||
				side(a, b, c)*side(a, b, d) < 0 && side(c, d, a)*side(c, d, b) < 0 {
				return false
			}
		}
	}
	return true
}

func FuzzSimple(f *testing.F) {
	f.Add([]byte{0, 0, 9, 0, 9, 9, 0, 9})
	f.Add([]byte{0, 0, 9, 9, 9, 0, 0, 9})
	f.Add([]byte{0, 0, 5, 5, 9, 9, 9, 0, 5, 5, 0, 9})
	f.Add([]byte{1, 1, 1, 1, 1, 1})
	f.Fuzz(func(t *testing.T, b []byte) {
		var o Outline
		for i := 0; i+1 < len(b) && len(o) < 12; i += 2 {
			o = append(o, pt(float64(b[i]%16), float64(b[i+1]%16)))
		}
		simple := o.Simple()
		require.Equal(t, plainSimple(o), simple, "%v", o)
		require.Equal(t, simple, o.Reverse().Simple(), "%v", o)
		i, j, at, found := o.Crossing()
		if !found {
			return
		}
		require.False(t, simple, "a crossing is not simple")
		require.Less(t, i, j)
		for _, k := range []int{i, j} {
			s := Straight(o[k], o[o.next(k)])
			require.True(t, s.At(s.Nearest(at)).Near(at, 1e-9), "%v edge %d", o, k)
		}
	})
}
