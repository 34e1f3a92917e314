package truing

import (
	"math"

	"chalkfold/measure"
	"chalkfold/pattern"
)

// Sides holds two sides that were drafted apart against each other: at the
// centre of front and back they are sewn together or cut in one, so neck,
// hem and waist must lie on one level there.
func Sides(right, left *pattern.Sheet) pattern.Finding {
	worst, name := 0.0, "neck_centre"
	where := pattern.Place{Piece: pattern.Front}
	for _, id := range []pattern.PieceID{pattern.Front, pattern.Back} {
		for _, point := range []string{"neck_centre", "hem_centre", "waist"} {
			r, okR := right.Point(id, point)
			l, okL := left.Point(id, point)
			if !okR || !okL {
				f := skip("", measure.Tell("The two sides are not drawn yet."))
				f.Check, f.Title = "two_sides", sidesTitle
				return f
			}
			if off := math.Abs(r.Y - l.Y); off > worst {
				worst, name, where = off, point, on(id, r)
			}
		}
	}
	f := within(pairPass).compare("two_sides", measure.Length(worst), 0)
	f.Check, f.Title, f.Where = "two_sides", sidesTitle, where
	f.Says = measure.Tell("{} and {}: right and left lie level at the centre.", measure.Length(worst), measure.Length(0))
	if f.Verdict != pattern.Pass {
		f.Says = measure.Tell("{} and {}: at the "+spaced(name)+" right and left do not meet.", measure.Length(worst), measure.Length(0))
		f.Cure = measure.Tell("Give both sides one length at the centre: measure the right again.")
		f.Input = string(measure.SideNeckToWaist)
	}
	return f
}

const sidesTitle = "Right and left meet"
