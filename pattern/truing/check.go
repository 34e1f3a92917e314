package truing

import (
	"chalkfold/measure"
	"chalkfold/pattern"
)

// Check is one thing that a draft must stand. Applies says whether it can be
// judged on this sheet and, if not, why it is skipped. Run gives one finding
// or more; it is only called where the check applies. Wanted says whether the
// garment has the part that it judges; nil: every one has.
type Check struct {
	ID      string
	Title   string
	Wanted  func(*pattern.Sheet) bool
	Applies func(*pattern.Sheet) (bool, measure.Sentence)
	Run     func(*pattern.Sheet) []pattern.Finding
}

// Checks are all checks, in the order in which they are shown: seams, darts,
// joins, girths, wearing, cutting.
func Checks() []Check {
	return []Check{
		sideSeams, shoulderSeams, waistSeams, waistEdge,
		dartLegs, dartAim, dartSize,
		neckJoin, armholeJoin, underarmJoin, hemJoin, centreSquare,
		facingFit, liningFit,
		sleeveCap, sleeveSeams, collarNeck, placketFit,
		bustGirth, waistGirth, hipGirth, armholeGirth, neckGirth,
		headPassage, bodyPassage,
		balance, hemLevel, walking, slitHeight, sitting, shoulderLeft,
		outlineSimple, allowanceFits, labels, clothWidth,
	}
}

// Run performs every check on the sheet. A check that does not apply gives
// one finding that says why.
func Run(s *pattern.Sheet) []pattern.Finding {
	s = whole(s)
	checks := Checks()
	out := make([]pattern.Finding, 0, len(checks)+8)
	for _, c := range checks {
		if c.Wanted != nil && !c.Wanted(s) || skirtAlone(s) && aboveWaist[c.ID] {
			continue
		}
		for _, f := range c.findings(s) {
			f.Check, f.Title = c.ID, c.Title
			if set, ok := s.Setting(pattern.ChoiceID(f.Input)); ok && !set.Used {
				f.Input = string(pattern.Method) // only another method has that choice
			}
			f.Where = below(s, f.Where)
			out = append(out, f)
		}
	}
	return out
}

func (c Check) findings(s *pattern.Sheet) []pattern.Finding {
	if ok, why := c.Applies(s); !ok {
		return one(skip("", why))
	}
	return c.Run(s)
}
