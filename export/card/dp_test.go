package card

import (
	"math"
	"math/bits"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"chalkfold/measure"
	"chalkfold/pattern/geom"
)

// brute is the fewest marks by trying every choice of stops.
func brute(l line, all []stop, bound float64) int {
	inner := len(all) - 2
	least := inner + 3
	for set := 0; set < 1<<inner; set++ {
		if n := bits.OnesCount(uint(set)) + 2; n < least {
			marks := []stop{all[0]}
			for i := 0; i < inner; i++ {
				if set&(1<<i) != 0 {
					marks = append(marks, all[i+1])
				}
			}
			if holds(l, append(marks, all[len(all)-1]), bound) {
				least = n
			}
		}
	}
	return least
}

func anyCurve(t *rapid.T, size float64) line {
	n := rapid.Float64Range(-size, size)
	p := func(name string) geom.Point { return geom.Point{X: n.Draw(t, name+"x"), Y: n.Draw(t, name+"y")} }
	return flatten(geom.Path{geom.Curve(p("a"), p("b"), p("c"), p("d"))})
}

func ends(l line, g grid) (stop, stop) {
	a, b := l.start(), l.end()
	return stop{on: a, of: a, at: g.spot(a)}, stop{s: l.long(), on: b, of: b, at: g.spot(b)}
}

func TestFewestIsFewest(t *testing.T) {
	g := gridOf(measure.In)
	rapid.Check(t, func(t *rapid.T) {
		l := anyCurve(t, 60)
		a, b := ends(l, g)
		all := stops(l, g, a, b)
		// Few enough to try them all: every k-th stop.
		k := len(all)/12 + 1
		few := []stop{all[0]}
		for i := k; i < len(all)-1; i += k {
			few = append(few, all[i])
		}
		few = append(few, all[len(all)-1])
		bound := rapid.Float64Range(1.5, 8).Draw(t, "bound")
		got, ok := fewest(l, few, bound, nil)
		want := brute(l, few, bound)
		if !ok {
			require.Greater(t, want, len(few), "brute force found a way")
			return
		}
		require.Equal(t, want, len(got))
		require.True(t, holds(l, got, bound))
	})
}

func TestStopsAlwaysGiveAWay(t *testing.T) {
	for _, u := range []measure.Unit{measure.In, measure.Cm, measure.Mm} {
		g := gridOf(u)
		rapid.Check(t, func(t *rapid.T) {
			l := anyCurve(t, 150)
			a, b := ends(l, g)
			all := stops(l, g, a, b)
			for _, s := range all[1 : len(all)-1] {
				require.LessOrEqual(t, s.at.Dist(s.on), g.step.MM()/math.Sqrt2+1e-6)
			}
			got, ok := fewest(l, all, g.bound.MM()-flat, nil)
			require.True(t, ok)
			line := []geom.Point{}
			for _, s := range got {
				line = append(line, s.at)
			}
			require.LessOrEqual(t, apart(line, l.pts), g.bound.MM())
		})
	}
}

func TestFussNeverBuysAMark(t *testing.T) {
	g := gridOf(measure.Cm)
	l := flatten(geom.Path{geom.Curve(geom.Point{}, geom.Point{X: 60}, geom.Point{X: 100, Y: 40}, geom.Point{X: 100, Y: 110})})
	a, b := ends(l, g)
	all := stops(l, g, a, b)
	free, ok := fewest(l, all, 3, nil)
	require.True(t, ok)
	odd, ok := fewest(l, all, 3, func(_, j int) int { return j % 2 })
	require.True(t, ok)
	require.Equal(t, len(free), len(odd))
}
