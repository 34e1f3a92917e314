package geom

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// offTol is the tolerance the package is used with.
const offTol = 0.002

// worst is how far any point of o is from being d away from src.
func worst(src, o Path, d float64) float64 {
	out := 0.0
	for _, s := range o {
		for i := range 41 {
			_, _, dist := src.Nearest(s.At(float64(i) / 40))
			out = max(out, math.Abs(dist-math.Abs(d)))
		}
	}
	return out
}

func TestOffsetKeepsItsDistance(t *testing.T) {
	for name, p := range shapes() {
		if name == "corner" || name == "ring" {
			continue // Mitres are farther, rightly.
		}
		for _, d := range []float64{-60, -15, -6, 6, 15, 60} {
			o := p.Offset(d, offTol)
			require.NotEmpty(t, o, "%s %g", name, d)
			require.LessOrEqual(t, worst(p, o, d), offTol, "%s %g", name, d)
		}
	}
}

func TestOffsetPlusIsLeft(t *testing.T) {
	require.Equal(t, Lines(pt(0, -5), pt(9, -5)), Lines(pt(0, 0), pt(9, 0)).Offset(5, offTol))
	ring := shapes()["ring"]
	require.Positive(t, ring.Area())
	require.InDelta(t, 100*70, ring.Offset(5, offTol).Area(), 1e-9, "outward of a clockwise ring")
	require.InDelta(t, 80*50, ring.Offset(-5, offTol).Area(), 1e-9)
	require.InDelta(t, 80*50, -ring.Reverse().Offset(5, offTol).Area(), 1e-9)
	require.Nil(t, ring.Offset(-31, offTol), "nothing is left inside")
	require.Equal(t, ring, ring.Offset(0, offTol))
}

func TestOffsetAtCorners(t *testing.T) {
	for name, c := range map[string]struct {
		p    Path
		d    float64
		want Path
	}{
		"outer": {
			Lines(pt(0, 0), pt(100, 0), pt(100, 80)), 10,
			Lines(pt(0, -10), pt(110, -10), pt(110, 80)),
		},
		"inner": {
			Lines(pt(0, 0), pt(100, 0), pt(100, 80)), -10,
			Lines(pt(0, 10), pt(90, 10), pt(90, 80)),
		},
		"inner, past a short piece": {
			Lines(pt(0, 0), pt(100, 0), pt(103, 3), pt(103, 80)), -10,
			Lines(pt(0, 10), pt(93, 10), pt(93, 80)),
		},
		"straight on": {
			Lines(pt(0, 0), pt(50, 0), pt(100, 0)), 10,
			Lines(pt(0, -10), pt(50, -10), pt(100, -10)),
		},
		"point among lines": {
			Path{Straight(pt(0, 0), pt(50, 0)), Straight(pt(50, 0), pt(50, 0)), Straight(pt(50, 0), pt(100, 0))},
			10,
			Lines(pt(0, -10), pt(50, -10), pt(100, -10)),
		},
		"too sharp is blunted": {Lines(pt(0, 0), pt(100, 0), pt(0, 1)), 10, nil},
	} {
		got := c.p.Offset(c.d, offTol)
		if c.want == nil {
			require.Len(t, got, 3, name)
			continue
		}
		require.Len(t, got, len(c.want), "%s: %v", name, got)
		for i := range got {
			require.True(t, got[i].A.Near(c.want[i].A, 1e-6) && got[i].D.Near(c.want[i].D, 1e-6), "%s: %v", name, got)
		}
	}
}

func TestOffsetTrimsTheLoopInATightBend(t *testing.T) {
	// A corner rounded with a radius of some 8 mm, 20 mm inside.
	p := Path{
		Straight(pt(0, 0), pt(90, 0)),
		Curve(pt(90, 0), pt(96, 0), pt(100, 4), pt(100, 10)),
		Straight(pt(100, 10), pt(100, 120)),
	}
	for _, d := range []float64{-8, -10, -12, -20, -40} {
		o := p.Offset(d, offTol)
		require.LessOrEqual(t, worst(p, o, d), 2*offTol, "%g: a loop is left", d)
		require.True(t, o.Start().Near(pt(0, -d), 1e-9))
		require.True(t, o.End().Near(pt(100+d, 120), 1e-9))
	}
	o := p.Offset(-20, offTol)
	require.Len(t, o, 2)
	require.True(t, o[0].D.Near(pt(80, 20), 1e-6), "%v", o[0].D)
	// Bends within one curve, where the parallel has two cusps.
	one := Path{Curve(pt(0, 0), pt(60, 0), pt(60, 0), pt(60, 60))}
	for _, d := range []float64{-10, -20, -30} {
		o := one.Offset(d, offTol)
		require.NotEmpty(t, o)
		require.LessOrEqual(t, worst(one, o, d), 2*offTol, "%g", d)
	}
}

func TestOffsetDropsABendAtTheEnd(t *testing.T) {
	p := Path{Curve(pt(0, 0), pt(2, 0), pt(4, 1), pt(5, 4)), Straight(pt(5, 4), pt(30, 79))}
	o := p.Offset(-12, offTol)
	require.NotEmpty(t, o)
	require.LessOrEqual(t, worst(p, o, -12), 2*offTol)
}

func TestOffsetHasNoGapsAndIsFewPieces(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := genPath().Draw(t, "p")
		o := p.Offset(rapid.Float64Range(-60, 60).Draw(t, "d"), offTol)
		for i := 1; i < len(o); i++ {
			require.Equal(t, o[i-1].D, o[i].A)
		}
	})
	require.LessOrEqual(t, len(Path{armhole}.Offset(10, 0.01)), 6)
	require.LessOrEqual(t, len(Path{armhole}.Offset(10, offTol)), 10)
}

func TestOffsetThereAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := Path{genArc().Draw(t, "p")}
		d := rapid.Float64Range(-15, 15).Draw(t, "d")
		for i := range 101 {
			if 1-d*p[0].Curvature(float64(i)/100) < 0.3 {
				return // A parallel that is cut does not come back.
			}
		}
		back := p.Offset(d, offTol).Offset(-d, offTol)
		require.True(t, back.Start().Near(p.Start(), 2*offTol))
		require.True(t, back.End().Near(p.End(), 2*offTol))
		require.LessOrEqual(t, worst(p, back, 0), 2*offTol)
		require.InDelta(t, p.Length(), back.Length(), 0.01)
		o := p.Offset(d, offTol)
		require.LessOrEqual(t, worst(p, o, d), offTol+1e-6)
		other := p.Reverse().Offset(-d, offTol)
		require.LessOrEqual(t, worst(o, other, 0), 2*offTol, "the other way round it is the same")
	})
}

func TestJoin(t *testing.T) {
	quarter := Curve(pt(40, 0), pt(62, 0), pt(80, 18), pt(80, 40)) // ends straight down
	for name, c := range map[string]struct {
		a, b  Path
		limit float64
		at    Point // where they meet
		blunt bool
	}{
		"lengthened":          {Lines(pt(0, 0), pt(10, 0)), Lines(pt(15, 5), pt(15, 30)), 50, pt(15, 0), false},
		"cut":                 {Lines(pt(0, 0), pt(20, 0)), Lines(pt(15, -5), pt(15, 30)), 50, pt(15, 0), false},
		"one reaches":         {Lines(pt(0, 0), pt(10, 0)), Lines(pt(15, -5), pt(15, 30)), 50, pt(15, 0), false},
		"the other reaches":   {Lines(pt(0, 0), pt(20, 0)), Lines(pt(15, 5), pt(15, 30)), 50, pt(15, 0), false},
		"curve lengthened":    {Path{quarter}, Lines(pt(70, 55), pt(0, 55)), 50, pt(80, 55), false},
		"they meet":           {Lines(pt(0, 0), pt(10, 0)), Lines(pt(10, 0), pt(10, 9)), 1, pt(10, 0), false},
		"too far":             {Lines(pt(0, 0), pt(10, 0)), Lines(pt(70, 60), pt(70, 90)), 50, Point{}, true},
		"far for one only":    {Lines(pt(0, 0), pt(10, 0)), Lines(pt(70, 5), pt(70, 90)), 50, pt(70, 0), false},
		"parallel":            {Lines(pt(0, 0), pt(10, 0)), Lines(pt(10, 5), pt(0, 5)), 50, Point{}, true},
		"apart, turned away":  {Lines(pt(0, 0), pt(10, 0)), Lines(pt(9, 20), pt(9, 90)), 5, Point{}, true},
		"cut nearest the end": {Lines(pt(0, 5), pt(30, 5)), Lines(pt(25, 0), pt(25, 20), pt(10, 20), pt(10, 0)), 50, pt(25, 5), false},
	} {
		a, b := Join(c.a, c.b, c.limit)
		require.Equal(t, a.End(), b.Start(), name)
		if c.blunt {
			require.Equal(t, c.b, b, name)
			require.Len(t, a, len(c.a)+1, name)
			continue
		}
		require.True(t, a.End().Near(c.at, 1e-6), "%s: %v", name, a.End())
		require.Equal(t, c.a.Start(), a.Start(), name)
		require.Equal(t, c.b.End(), b.End(), name)
	}
	a, b := Join(nil, bend(), 5)
	require.Nil(t, a)
	require.Equal(t, bend(), b)
}

// edges are the sides of a clockwise ring, each its own path.
func edges(points ...Point) []Path {
	out := make([]Path, len(points))
	for i, p := range points {
		out[i] = Lines(p, points[(i+1)%len(points)])
	}
	return out
}

func offsets(edges []Path, ds ...float64) []Path {
	out := make([]Path, len(edges))
	for i, e := range edges {
		out[i] = e.Offset(ds[i%len(ds)], offTol)
	}
	return out
}

func TestLoop(t *testing.T) {
	box := edges(pt(0, 0), pt(100, 0), pt(100, 60), pt(0, 60))
	notch := edges(pt(0, 0), pt(48, 0), pt(48, 5), pt(52, 5), pt(52, 0), pt(100, 0), pt(100, 60), pt(0, 60))
	lens := []Path{
		{Curve(pt(0, 0), pt(30, -40), pt(70, -40), pt(100, 0))},
		{Curve(pt(100, 0), pt(70, 40), pt(30, 40), pt(0, 0))},
	}
	for name, c := range map[string]struct {
		edges []Path
		limit float64
		want  float64
	}{
		"one width":           {offsets(box, 10), 40, 120 * 80},
		"a width each":        {offsets(box, 10, 0, 30, 5), 90, 105 * 100},
		"inside":              {offsets(box, -10), 40, 80 * 40},
		"nothing":             {nil, 40, 0},
		"one edge, closed":    {[]Path{shapes()["ring"]}, 40, 90 * 60},
		"one edge, open":      {[]Path{Lines(pt(0, 0), pt(10, 0), pt(10, 10), pt(0, 10), pt(0, 5))}, 40, 100},
		"notch is overgrown":  {offsets(notch, 10), 40, 120 * 80},
		"empty edges between": {append(offsets(box, 10), nil, Path{}), 40, 120 * 80},
	} {
		got := Loop(c.edges, c.limit)
		require.InDelta(t, c.want, got.Area(), 1e-6, name)
		if c.want != 0 {
			require.True(t, got.Closed(), name)
			require.Equal(t, got.Start(), got.End(), name)
			require.True(t, got.Outline(0.02).Simple(), name)
		}
	}
	out := Loop(offsets(lens, 10), 100)
	require.True(t, out.Closed())
	require.True(t, out.Outline(0.02).Simple())
	require.Greater(t, out.Area(), Path{lens[0][0], lens[1][0]}.Area()+10*2*100)
}

func TestLoopIsSimpleAndHoldsTheRing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		// A star-shaped ring of curved and straight edges.
		n := rapid.IntRange(3, 7).Draw(t, "n")
		corners := make([]Point, n)
		for i := range corners {
			r := rapid.Float64Range(80, 200).Draw(t, "r")
			corners[i] = pt(0, 0).Add(vec(r, 0).Turn(2 * math.Pi * float64(i) / float64(n)))
		}
		ring := edges(corners...)
		for i := range ring {
			if rapid.Bool().Draw(t, "curved") {
				s := ring[i][0]
				bow := s.A.To(s.D).Left().Scale(rapid.Float64Range(-0.08, 0.2).Draw(t, "bow"))
				ring[i] = Path{Curve(s.A, s.B.Add(bow), s.C.Add(bow), s.D)}
			}
		}
		var src Path
		for _, e := range ring {
			src = src.Then(e)
		}
		if !src.Outline(0.02).Simple() {
			return
		}
		d := rapid.Float64Range(3, 25).Draw(t, "d")
		out := Loop(offsets(ring, d), 4*d)
		require.True(t, out.Closed())
		o := out.Outline(0.005)
		require.True(t, o.Simple())
		require.Greater(t, out.Area(), src.Area())
		for _, p := range src.Flatten(1) {
			require.True(t, o.Contains(p))
		}
		for _, p := range o {
			_, _, dist := src.Nearest(p)
			require.GreaterOrEqual(t, dist, d-0.01, "nowhere nearer than the width")
		}
	})
}

func TestOffsetOfClosedCurves(t *testing.T) {
	const k = 0.5522847498 * 50
	circle := Path{
		Curve(pt(0, -50), pt(k, -50), pt(50, -k), pt(50, 0)), Curve(pt(50, 0), pt(50, k), pt(k, 50), pt(0, 50)),
		Curve(pt(0, 50), pt(-k, 50), pt(-50, k), pt(-50, 0)), Curve(pt(-50, 0), pt(-50, -k), pt(-k, -50), pt(0, -50)),
	}
	// A drop with its point at the seam, and one with the seam on a smooth place.
	drop := Path{Curve(pt(0, 0), pt(60, 40), pt(60, 100), pt(0, 100)), Curve(pt(0, 100), pt(-60, 100), pt(-60, 40), pt(0, 0))}
	turned := Path{drop[1], drop[0]}
	for name, p := range map[string]Path{"circle": circle, "drop": drop, "turned": turned} {
		for _, d := range []float64{-20, -5, 5, 20} {
			o := p.Offset(d, offTol)
			require.True(t, o.Closed(), "%s %g", name, d)
			require.Equal(t, o.Start(), o.End(), "%s %g", name, d)
			require.True(t, o.Outline(0.02).Simple(), "%s %g", name, d)
			require.Equal(t, d > 0, o.Area() > p.Area(), "%s %g", name, d)
			if name == "circle" || d < 0 { // Outside, the drop has a mitre.
				require.LessOrEqual(t, worst(p, o, d), 2*offTol, "%s %g", name, d)
			}
		}
	}
	require.Nil(t, circle.Offset(-60, offTol), "past the middle nothing is left")
	require.InDelta(t, drop.Offset(-15, offTol).Area(), turned.Offset(-15, offTol).Area(), 0.05)
	require.InDelta(t, drop.Offset(15, offTol).Area(), turned.Offset(15, offTol).Area(), 0.05)
}
