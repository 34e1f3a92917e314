package detail

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/rule"
)

var waistNeeds = []measure.ID{
	measure.BustGirth, measure.WaistGirth, measure.BackNeckToWaist, measure.SideNeckToWaist, measure.SideNeckToBustPoint,
}

var waistAfter = []pattern.ChoiceID{"waist_shaping", "panel_seam", "ease_bust", "ease_waist", "side_waist_limit", "large_cup", "armhole_depth"}

// waistChoices say how the waist is shaped besides the side seam.
var waistChoices = []pattern.Choice{
	{
		ID: "waist_shaping", Title: "Waist", Says: "How the waist is taken in besides the side seam.", Group: "Shape",
		Kind: pattern.KindPick, Methods: onlyMeasured,
		Default: pickDirect(NoWaistShaping, FisheyeWaist, "The block is fitted: what the side does not take in goes into darts."),
		Options: []pattern.Option{
			{Value: NoWaistShaping, Title: "Loose", Says: "What the side does not take in hangs as ease."},
			{Value: FisheyeWaist, Title: "Darts", Says: "A dart in front and behind, to nothing above and below the waist."},
			{Value: TwoBackWaist, Title: "Two back darts", Says: "A dart in front, two smaller ones on each side of the back."},
			{Value: ShapedBack, Title: "Shaped back", Says: "The centre back seam comes in at the waist, and darts take the rest."},
		},
	},
	length("centre_back_in", "Shape", "Centre back in at the waist", "How far a shaped centre back seam comes in at the waist.", 0.5, 0.375, 0.625, pattern.Measured),
}

// waistDartChoices say what the waist darts take up.
var waistDartChoices = []pattern.Choice{
	{
		ID: "front_waist_dart", Title: "Front waist dart", Says: "What the waist dart of each half of the front takes up.", Group: "Dart",
		Kind: pattern.KindLength, Methods: onlyMeasured, After: waistAfter, Limits: between(0, 0.875),
		Default: func(k pattern.Known) pattern.Default {
			if WaistShaping(k) == NoWaistShaping && !HasPanels(k) {
				return pattern.Default{Value: pattern.LengthValue(0), Because: measure.Tell("The waist has no darts.")}
			}
			if w := waits(k, waistNeeds...); w != nil {
				return pattern.Default{Waits: w}
			}
			spare := max(0, rule.WaistSpare(k).Result())
			f := rule.FrontWaistDart(spare, FrontUpperHalf(k))
			return pattern.Default{
				Value:   pattern.LengthValue(f),
				Because: measure.Tell("{} a quarter are to spare; the front takes {}, no more than a fifth of the dart's length.", spare, f),
			}
		},
	},
	{
		ID: "back_waist_dart", Title: "Back waist darts", Says: "What each half of the back takes up at the waist, darts and centre seam together.", Group: "Dart",
		Kind: pattern.KindLength, Methods: onlyMeasured, After: append([]pattern.ChoiceID{"front_waist_dart"}, waistAfter...), Limits: between(0, 2.5),
		Default: func(k pattern.Known) pattern.Default {
			if WaistShaping(k) == NoWaistShaping && !HasPanels(k) {
				return pattern.Default{Value: pattern.LengthValue(0), Because: measure.Tell("The waist has no darts.")}
			}
			if w := waits(k, waistNeeds...); w != nil {
				return pattern.Default{Waits: w}
			}
			spare, f := max(0, rule.WaistSpare(k).Result()), k.Length("front_waist_dart")
			b := rule.BackWaistDart(spare, f)
			if HasPanels(k) {
				b = min(b, MostPanelBack)
			}
			return pattern.Default{
				Value:   pattern.LengthValue(b),
				Because: measure.Tell("What the front leaves of twice {}: the back is hollower.", spare),
			}
		},
	},
}
