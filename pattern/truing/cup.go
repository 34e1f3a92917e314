package truing

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/rule"
)

// cupFinding doubts a front that takes far more of the bust than the back.
func cupFinding(s *pattern.Sheet) (pattern.Finding, bool) {
	if byThumb(s) {
		return pattern.Finding{}, false
	}
	shift := rule.CupShift(s.Known).Result()
	if shift <= rule.MostCup+slack {
		return pattern.Finding{}, false
	}
	f := advice("cup_large", shift, rule.MostCup)
	f.Where, f.Input = on(pattern.Front, at(s, pattern.Front, "underarm")), string(measure.UpperChestGirth)
	f.Says = measure.Tell("{} and {}: so much wider than a quarter is each half of the front, because the bust is {} larger than the upper chest.",
		shift, rule.MostCup, 4*shift)
	f.Cure = measure.Tell("Measure the upper chest again, close under the arms. If it is right, a seam over the bust shapes it better than one dart.")
	if uses(s.Known, "panel_seam") && s.Pick("panel_seam") == "none" {
		seam := pattern.PickValue("shoulder")
		f.Input, f.Try = "panel_seam", &seam
	}
	return f, true
}
