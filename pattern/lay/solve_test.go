package lay

import (
	"runtime"
	"sync/atomic"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// crowd is a problem of many pieces of curved and hollow outlines.
func crowd(n int) Problem {
	p := Problem{Cloth: Cloth{Width: 600 * PerMM, Fold: Flat}}
	ring := rapid.Custom(func(t *rapid.T) []Point { return someRing(t, 150) })
	for k := range n {
		o := ring.Example(k)
		lo, _ := bounds(o)
		p.Items = append(p.Items, Item{ID: string(rune('a' + k)), Cut: "single", Count: 2, Turns: []int{0, 180}, Outline: moved(o, Point{-lo.X, -lo.Y})})
	}
	return p
}

func TestTheSameLayOnAnyNumberOfCores(t *testing.T) {
	p := crowd(10)
	before := runtime.GOMAXPROCS(1)
	one, err := Solve(p, Options{Evaluations: 300000, Seed: 7})
	runtime.GOMAXPROCS(2)
	require.NoError(t, err)
	two, err := Solve(p, Options{Evaluations: 300000, Seed: 7})
	runtime.GOMAXPROCS(before)
	require.NoError(t, err)
	require.Equal(t, one, two)
	other, err := Solve(p, Options{Evaluations: 300000, Seed: 8})
	require.NoError(t, err)
	require.NotEqual(t, one, other)
}

func TestStoppedAfterNIsTheLayOfNEvaluations(t *testing.T) {
	for _, fold := range []string{Flat, Lengthwise} {
		p := crowd(8)
		p.Cloth.Fold = fold
		var asked atomic.Int64
		stopped, err := Solve(p, Options{Evaluations: 1 << 40, Seed: 2, Stop: func() bool { return asked.Add(1) > 30 }})
		require.NoError(t, err)
		require.Positive(t, stopped.Evaluations)
		again, err := Solve(p, Options{Evaluations: stopped.Evaluations, Seed: 2})
		require.NoError(t, err)
		require.Equal(t, stopped, again)
	}
}

func TestWithoutEvaluationsTheFirstLayIsAll(t *testing.T) {
	p := toy(Lengthwise)
	l, err := Solve(p, Options{})
	require.NoError(t, err)
	require.True(t, l.First)
	require.Zero(t, l.Evaluations)
	require.Empty(t, Verify(p, l))
	halted, err := Solve(p, Options{Evaluations: 1 << 40, Stop: func() bool { return true }})
	require.NoError(t, err)
	require.Equal(t, l, halted)
}

func TestMoreEvaluationsNeverMakeALongerLay(t *testing.T) {
	p := crowd(8)
	last := int64(most)
	for _, n := range []int64{0, 20000, 100000, 400000} {
		l, err := Solve(p, Options{Evaluations: n, Seed: 5})
		require.NoError(t, err)
		require.LessOrEqual(t, l.Evaluations, n)
		require.LessOrEqual(t, l.Length, last)
		last = l.Length
	}
}

func TestProgressTellsBetterAndBetterLays(t *testing.T) {
	p := crowd(8)
	var told []Lay
	l, err := Solve(p, Options{Evaluations: 300000, Progress: func(l Lay) { told = append(told, l) }})
	require.NoError(t, err)
	require.Greater(t, len(told), 2)
	require.True(t, told[0].First)
	for i, x := range told {
		require.Empty(t, Verify(p, x))
		if i > 0 {
			require.Less(t, x.Length, told[i-1].Length)
		}
	}
	require.Equal(t, told[len(told)-1].Placed, l.Placed)
	// The search is worth its while.
	shelf, err := Shelf(p)
	require.NoError(t, err)
	require.Less(t, float64(l.Length), 0.8*float64(shelf.Length))
}

func TestAPanicOfAHelpingHandComesUpInTheCaller(t *testing.T) {
	require.PanicsWithValue(t, "dropped", func() {
		together(3, func(k int) {
			if k == 1 {
				panic("dropped")
			}
		})
	})
}

// TestDepthIsTheShortestMoveThatParts compares the tables with the exact test.
func TestDepthIsTheShortestMoveThatParts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := someRing(t, 100), someRing(t, 60)
		var k kinds
		i, j := k.add(a), k.add(b)
		k.build(reachSteps)
		s := strip{kinds: &k}
		alo, _ := bounds(a)
		blo, _ := bounds(b)
		d := Point{rapid.Int64Range(-800000, 800000).Draw(t, "dx"), rapid.Int64Range(-800000, 800000).Draw(t, "dy")}
		depth := func(at Point) float64 {
			x := at.plus(blo).minus(alo)
			return s.depth(i, j, float64(x.X), float64(x.Y), 0)
		}
		deep := depth(d)
		switch {
		case apart(a, moved(b, d), 0):
			require.LessOrEqual(t, deep, touch)
			return
		case deep < 3:
			return // too shallow to ask in whole steps
		}
		// No shorter move parts them, and some move of that length nearly does.
		least := deep
		for n := range 720 {
			c, q := circle(float64(n) / 720)
			shorter := moved(b, d.plus(Point{int64(c * (deep - 2)), int64(q * (deep - 2))}))
			require.False(t, apart(a, shorter, 0))
			least = min(least, depth(d.plus(Point{int64(c * deep), int64(q * deep)})))
		}
		require.LessOrEqual(t, least, 0.01*deep+2)
		// Exchanging the two asks the same question.
		x := d.plus(blo).minus(alo)
		require.InDelta(t, deep, s.depth(j, i, -float64(x.X), -float64(x.Y), 0), 1e-3)
	})
}

func TestReflectedKindsShareTheirRegions(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := someRing(t, 100), someRing(t, 60)
		var k, plain kinds
		var four [2][4]int
		for n, o := range [][]Point{a, b} {
			four[n] = [4]int{k.add(o), k.add(turned(o, 180)), k.add(mirrored(o)), k.add(turned(mirrored(o), 180))}
		}
		require.Len(t, k.base, 2)
		k.build(reachSteps)
		x, y := rapid.Float64Range(-1e6, 1e6).Draw(t, "x"), rapid.Float64Range(-1e6, 1e6).Draw(t, "y")
		for n := range 4 {
			for m := range 4 {
				i, j := four[0][n], four[1][m]
				plain = kinds{}
				u, v := plain.add(k.all[i].shape.outline), plain.add(k.all[j].shape.outline)
				plain.build(reachSteps)
				want := (&strip{kinds: &plain}).depth(u, v, x, y, 0)
				got := (&strip{kinds: &k}).depth(i, j, x, y, 0)
				if want > 0 || got > 0 {
					require.InDelta(t, want, got, 1e-3)
				}
			}
		}
	})
}

func TestASimplifiedOutlineHoldsTheTrueOne(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		// A curved outline of many corners, hollow and round.
		n := rapid.IntRange(120, 300).Draw(t, "corners")
		waves := rapid.IntRange(2, 5).Draw(t, "waves")
		depth := rapid.Float64Range(0, 0.4).Draw(t, "depth")
		var o []Point
		for k := range n {
			c, s := circle(float64(k) / float64(n))
			w, _ := circle(float64(k*waves) / float64(n))
			r := 100 * (1 + depth*w)
			o = append(o, mm(r*c, 1.7*r*s))
		}
		o = tidy(o)
		simple := forSearch(o, mostOutlineCorners)
		require.Less(t, len(simple), len(o))
		require.True(t, plainRing(simple))
		for _, c := range o {
			require.True(t, !strictlyOutside(c, simple), "%v", c)
		}
		for _, c := range simple {
			near := float64(most)
			for i, p := range o {
				q := o[(i+1)%len(o)]
				d := q.minus(p)
				s := side{toSpot(p), spot{float64(d.X) / toSpot(d).len(), float64(d.Y) / toSpot(d).len()}, toSpot(d).len()}
				near = min(near, s.away2(toSpot(c)))
			}
			require.LessOrEqual(t, near, float64(4*slackSteps*slackSteps))
		}
	})
}

// strictlyOutside says whether a point lies outside an outline, not on it.
func strictlyOutside(p Point, o []Point) bool {
	for i, a := range o {
		if b := o[(i+1)%len(o)]; p == a || onEdge(a, b, p) {
			return false
		}
	}
	return !strictlyInside(p.plus(p), o)
}

// A search that is paused, stopped and gone on with gives what one of the same
// count gives at once.
func TestASearchIsGoneOnWithAsIfThereWereNoPause(t *testing.T) {
	for _, fold := range Folds {
		p := toy(fold)
		p.Cloth.Tape = 31750
		s, err := Begin(p, Options{Seed: 4})
		require.NoError(t, err)
		for _, n := range []int64{0, 1000, 70_001, 300_000, 650_000} {
			got, err := s.Until(n, nil)
			require.NoError(t, err)
			asked := 0
			_, err = s.Until(2_000_000, func() bool { asked++; return true })
			require.NoError(t, err)
			want, err := Solve(p, Options{Seed: 4, Evaluations: max(n, got.Evaluations)}) // a pause may come after the count
			require.NoError(t, err)
			require.Equal(t, want, got, "%s, %d", fold, n)
			require.Empty(t, Verify(p, got))
		}
	}
}

// What was found once is never lost when a search begins from it.
func TestASearchGoesOnFromALay(t *testing.T) {
	for _, fold := range Folds {
		for _, tape := range []int64{0, 31750} {
			p := toy(fold)
			p.Cloth.Tape = tape
			found, err := Solve(p, Options{Seed: 4, Evaluations: 800_000})
			require.NoError(t, err)
			on, err := Solve(p, Options{Seed: 9, From: found.Placed})
			require.NoError(t, err)
			require.Equal(t, found.First, on.First, fold)
			require.Equal(t, found.Length, on.Length, fold)
			on, err = Solve(p, Options{Seed: 9, Evaluations: 50_000, From: found.Placed})
			require.NoError(t, err)
			require.LessOrEqual(t, on.Length, found.Length, fold)
			require.Empty(t, Verify(p, on))
			// Of other pieces it is of no use, and does no harm.
			p.Items[1].Outline = moved(p.Items[1].Outline, Point{0, 0})
			p.Items[1].Turns = []int{0}
			p.Items[2].Count = 4
			on, err = Solve(p, Options{Seed: 9, Evaluations: 5000, From: found.Placed})
			require.NoError(t, err)
			require.Empty(t, Verify(p, on))
		}
	}
}
