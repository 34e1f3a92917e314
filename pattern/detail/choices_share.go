package detail

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/rule"
)

// shareChoices say whether front and back are equal quarters.
var shareChoices = []pattern.Choice{
	{
		ID: "large_cup", Title: "Large cup", Says: "Whether front and back get their own shares where the bust is much larger than the upper chest.",
		Group: "Shape", Kind: pattern.KindPick, Methods: onlyMeasured,
		Options: []pattern.Option{
			{Value: "auto", Title: "As measured", Says: "Where bust and upper chest differ by 2 1/2 in or more the front is wider, and a pinch goes into the dart."},
			{Value: "off", Title: "Equal", Says: "Front and back are a quarter each."},
		},
		Default: pick("auto"),
	},
}

// usualPinch is what the front armhole gives the dart: for a cut-in armhole,
// and where the front has the larger share.
func usualPinch(k pattern.Known) pattern.Default {
	if k.Has(measure.SideNeckToWaist, measure.BackNeckToWaist) && rule.DartIntake(k).Result() <= 0 {
		return usualLength(0)
	}
	cup := rule.CupPinch(k)
	switch {
	case IsCutIn(k) && cup < rule.In(0.375):
		return pattern.Default{
			Value:   pattern.LengthValue(rule.In(0.375)),
			Because: measure.Tell("A cut-in armhole stands off in front: {3/8 in} of it goes into the dart."),
		}
	case cup > 0:
		return pattern.Default{
			Value: pattern.LengthValue(cup), GaveWay: true,
			Because: measure.Tell("The front has the larger share, so its armhole stands off: {} of it goes into the dart.", cup),
		}
	}
	return usualLength(0)
}
