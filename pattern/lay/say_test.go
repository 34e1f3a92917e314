package lay

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"chalkfold/measure"
	"chalkfold/testdata/golden"
)

func TestTheLayIsSaidByTape(t *testing.T) {
	var b strings.Builder
	for _, c := range []struct {
		name string
		unit measure.Unit
		p    Problem
	}{
		{"folded lengthwise, inches", measure.In, toy(Lengthwise)},
		{"flat, centimetres", measure.Cm, toy(Flat)},
		{"flat, every other piece turned, centimetres", measure.Cm, Problem{Cloth: toyCloth(Flat), Items: turnedToys()}},
		{"to the middle, centimetres, with nap", measure.Cm, toy(ToMiddle)},
		{"off centre, inches", measure.In, toy(OffCentre)},
		{"off centre, pairs beside, centimetres", measure.Cm, besideToy()},
		{"across, inches", measure.In, toy(Across)},
		{"across, centimetres, with nap", measure.Cm, Problem{Cloth: toyCloth(Across), Items: toyItems()[1:3]}},
	} {
		c.p.Cloth.Nap = strings.Contains(c.name, "nap")
		c.p.Cloth.Tape = steps(c.unit.Step())
		fmt.Fprintf(&b, "%s\n", c.name)
		l, err := Shelf(c.p) // a lay that no change of the search touches
		require.NoError(t, err)
		for _, s := range Say(c.p, l) {
			fmt.Fprintf(&b, "  %s\n", s.In(c.unit))
		}
	}
	golden.Check(t, "said.txt", b.String())
}

// besideToy is a front so narrow that the backs lie single.
func besideToy() Problem {
	p := toy(OffCentre)
	p.Cloth.Width = 560 * PerMM
	p.Items[1].Outline = ringOf(0, 10, 150, 0, 170, 100, 200, 305, 0, 300)
	return p
}

// turnedToys are the toys, all but the front and the pocket turned.
func turnedToys() []Item {
	items := toyItems()
	items[1].Turns, items[2].Turns = []int{180}, []int{180}
	return items
}

func TestEachNumberSaidComesFromTheOutline(t *testing.T) {
	p := toy(Lengthwise)
	p.Cloth.Tape = atTape(0.125)
	l := solved(t, p)
	said := ""
	for _, s := range Say(p, l) {
		said += s.In(measure.In) + "\n"
	}
	for i := range l.Placed {
		q := &l.Placed[i]
		lo, hi := bounds(q.Outline)
		for _, v := range []int64{lo.Y, hi.Y} {
			require.Contains(t, said, measure.In.Tape(length(v)))
		}
	}
}

func TestWhatIsLeftOverIsFree(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := someProblem(t)
		l, err := Shelf(p)
		require.NoError(t, err)
		w, h, _, ok := leftOver(&p.Cloth, &l)
		if !ok {
			return
		}
		used := 0.0
		for i := range l.Placed {
			used += float64(twiceArea(l.Placed[i].Outline)) / 2
		}
		wide := float64(p.Cloth.Lying(l))
		require.LessOrEqual(t, float64(w)*float64(h)+used, wide*float64(p.Cloth.Lies(l))*(1+1e-9))
	})
}

// Boxes are laid in rows, or filled in where that takes less, and tucked in.
func TestTheShelfLayIsNoLongerThanRows(t *testing.T) {
	shorter := 0
	rapid.Check(t, func(t *rapid.T) {
		p := someProblem(t)
		l, err := Shelf(p)
		require.NoError(t, err)
		require.Empty(t, Verify(p, l))
		b := newBuilder(&p)
		b.grid = grid{p.Cloth.Tape, p.Cloth.Tape}
		plans, err := b.plans()
		require.NoError(t, err)
		rows := int64(most)
		for _, pl := range plans {
			done := &planned{plan: pl}
			for k, s := range pl.parts {
				s.frame()
				h := &search{s: s}
				var ok bool
				h.places, h.length, ok = s.rows(!p.Cloth.Warps() || k > 0)
				require.True(t, ok)
				done.searches = append(done.searches, h)
			}
			if uniform(pl.ways) {
				_, whole := done.length(&p.Cloth)
				rows = min(rows, whole)
			}
		}
		require.LessOrEqual(t, l.Length, rows)
		if l.Length < rows {
			shorter++
		}
	})
	require.Positive(t, shorter)
}

// uniform says that all single pieces lie in their first way, or in their second.
func uniform(ws []way) bool {
	first := 0
	for _, w := range ws {
		if w == inOpened || w == besides {
			first++
		}
	}
	return first == 0 || first == len(ws)
}

func TestAKeptLayIsTheSameLay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := someProblem(t)
		l, err := Solve(p, Options{Evaluations: 2000})
		require.NoError(t, err)
		var placed []Placed
		for _, q := range l.Placed {
			q.Outline, q.Layers = nil, 0
			placed = append(placed, q)
		}
		p.Cloth.Depth = l.Depth
		kept, errs := Kept(p, placed)
		require.Empty(t, errs)
		require.Equal(t, l.Placed, kept.Placed)
		require.LessOrEqual(t, kept.Length, l.Length)
	})
	_, errs := Kept(toy(Flat), []Placed{{Item: 4, Copy: 1}})
	require.NotEmpty(t, errs)
}
