package lay

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"chalkfold/measure"
	"chalkfold/pattern"
)

// mm makes a corner from millimetres.
func mm(x, y float64) Point { return Point{int64(x * PerMM), int64(y * PerMM)} }

func ringOf(xy ...float64) []Point {
	var o []Point
	for i := 0; i < len(xy); i += 2 {
		o = append(o, mm(xy[i], xy[i+1]))
	}
	return tidy(o)
}

// toyItems are a small skirt: a front on the fold, a pair of backs, a pair of
// facings, and a pocket that is cut once.
func toyItems() []Item {
	both := []int{0, 180}
	return []Item{
		{ID: "front", Title: "Front", Cut: pattern.OnFold, Count: 1, Turns: both, Outline: ringOf(0, 20, 60, 0, 110, 40, 130, 300, 0, 310), Grain: [2]Point{mm(40, 60), mm(40, 200)}, Match: Match{Along: true, At: mm(0, 100)}},
		{ID: "back", Title: "Back", Cut: pattern.Pair, Count: 2, Turns: both, Outline: ringOf(0, 10, 70, 0, 90, 100, 140, 305, 0, 300), Grain: [2]Point{mm(50, 60), mm(50, 200)}, Match: Match{Along: true, Across: true, At: mm(0, 100)}},
		{ID: "facing", Title: "Facing", Cut: pattern.Pair, Count: 2, Turns: both, Outline: ringOf(0, 0, 80, 10, 60, 60, 40, 30, 5, 40), Grain: [2]Point{mm(20, 10), mm(20, 30)}},
		{ID: "pocket", Title: "Pocket", Cut: pattern.Single, Count: 1, Turns: both, Outline: ringOf(0, 0, 50, 0, 60, 70, 0, 60), Grain: [2]Point{mm(20, 10), mm(20, 50)}},
	}
}

func toyCloth(fold string) Cloth {
	return Cloth{Name: "main", Width: 700 * PerMM, Edge: 10 * PerMM, Fold: fold}
}

func toy(fold string) Problem { return Problem{Cloth: toyCloth(fold), Items: toyItems()} }

// short is a search that is long enough for toys.
const short = 60000

func solved(t testing.TB, p Problem) Lay {
	t.Helper()
	l, err := Solve(p, Options{Evaluations: short, Seed: 1})
	require.NoError(t, err)
	require.Empty(t, Verify(p, l))
	return l
}

func find(t testing.TB, p Problem, l Lay, id string) *Placed {
	t.Helper()
	for i := range l.Placed {
		if p.Items[l.Placed[i].Item].ID == id {
			return &l.Placed[i]
		}
	}
	require.Fail(t, "not laid: "+id)
	return nil
}

// put lays a piece anew, at a turn, as the rules have it.
func put(p Problem, q *Placed, turn int, mirror bool, at Point) {
	o := p.Items[q.Item].Outline
	if mirror {
		o = mirrored(o)
	}
	q.Turn, q.Mirror, q.At, q.Outline = turn, mirror, at, moved(turned(o, turn), at)
}

// someRing draws a simple outline: star-shaped about its middle, convex or
// hollow, with whole corners.
func someRing(t *rapid.T, size float64) []Point {
	n := rapid.IntRange(3, 9).Draw(t, "corners")
	for {
		var o []Point
		for k := range n {
			r := rapid.Float64Range(0.2, 1).Draw(t, "radius") * size / 2
			c, s := circle(float64(k) / float64(n))
			o = append(o, mm(r*c, r*s))
		}
		if o = tidy(o); len(o) >= 3 && plainRing(o) {
			return o
		}
	}
}

// someProblem draws a problem with all kinds of pieces on all kinds of cloth.
func someProblem(t *rapid.T) Problem {
	p := Problem{Cloth: Cloth{
		Width: rapid.Int64Range(500, 900).Draw(t, "width") * PerMM,
		Edge:  rapid.SampledFrom([]int64{0, 10 * PerMM, 7*PerMM + 3}).Draw(t, "edge"),
		Fold:  rapid.SampledFrom(Folds).Draw(t, "fold"),
		Nap:   rapid.Bool().Draw(t, "nap"),
		Gap:   rapid.SampledFrom([]int64{0, 0, 3 * PerMM, 12345}).Draw(t, "gap"),
		Tape:  rapid.SampledFrom([]int64{0, 0, 50000, 31750}).Draw(t, "tape"),
	}}
	if rapid.IntRange(0, 3).Draw(t, "repeat?") == 0 {
		p.Cloth.RepeatAlong = rapid.Int64Range(20, 90).Draw(t, "repeat") * PerMM
	}
	if rapid.IntRange(0, 3).Draw(t, "flaw?") == 0 {
		p.Cloth.Flaws = []Flaw{{Along: 100 * PerMM, Across: rapid.Int64Range(0, 400).Draw(t, "flaw") * PerMM, Length: 30 * PerMM, Width: 50 * PerMM}}
	}
	if p.Cloth.Fold == Across {
		p.Cloth.Flaws = nil // they are refused there
	}
	pieces := rapid.IntRange(1, 5).Draw(t, "pieces")
	for k := range pieces {
		it := Item{
			ID: string(rune('a' + k)), Turns: []int{0, 180}, Outline: someRing(t, 100),
			Cut: rapid.SampledFrom([]pattern.CutKind{pattern.Pair, pattern.Single, pattern.OnFold}).Draw(t, "cut"), Count: 1,
		}
		if k == 0 && (p.Cloth.Fold == Across || p.Cloth.Fold == OffCentre) {
			it.Cut = pattern.Pair // else the fold is of no use, and refused
		}
		lo, _ := bounds(it.Outline)
		it.Outline = moved(it.Outline, Point{-lo.X, -lo.Y})
		switch it.Cut {
		case pattern.Pair:
			it.Count = 2
		case pattern.OnFold:
			it.Outline = ringOf(0, 0, float64(30+10*k), 10, float64(60-5*k), 90, 0, 80)
		}
		if rapid.Bool().Draw(t, "matched") {
			it.Match = Match{Along: true, At: it.Outline[0]}
		}
		p.Items = append(p.Items, it)
	}
	return p
}

// inches makes a length of the tape; hand_test has its own way.
func atTape(x float64) int64 { return steps(measure.In.Length(x)) }
