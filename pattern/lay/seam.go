package lay

import "chalkfold/pattern"

// Seamed is a piece of the fold cut as a pair, with a seam where the fold was
// and so much for it on each side; false for any other piece.
func Seamed(it Item, allowance int64) (Item, bool) {
	if it.Cut != pattern.OnFold {
		return it, false
	}
	n := len(it.Outline)
	for i, p := range it.Outline {
		q := it.Outline[(i+1)%n]
		if p.X != 0 || q.X != 0 {
			continue
		}
		var out []Point
		for k := range n {
			c := it.Outline[(i+1+k)%n]
			c.X += allowance
			out = append(out, c)
		}
		// From the start of the fold edge out to the seam, along it, and back.
		out = append(out, Point{0, p.Y}, Point{0, q.Y})
		it.Outline, it.Cut, it.Count = tidy(out), pattern.Pair, 2*it.Count
		for k := range it.Grain {
			it.Grain[k].X += allowance
		}
		it.Match.At.X += allowance
		return it, true
	}
	return it, false
}
