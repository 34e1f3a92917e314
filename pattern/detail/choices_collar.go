package detail

import (
	"chalkfold/measure"
	"chalkfold/pattern"
)

// byCollar is a length whose usual figure hangs on the kind of collar.
func byCollar(id pattern.ChoiceID, title, says string, usual map[string]float64, low, high float64) pattern.Choice {
	return pattern.Choice{
		ID: id, Title: title, Says: says, Group: "Collar", Kind: pattern.KindLength, Methods: onlyMeasured,
		After: []pattern.ChoiceID{"collar"},
		Default: func(k pattern.Known) pattern.Default {
			if x, ok := usual[CollarKind(k)]; ok {
				return usualLength(x)
			}
			why := "This collar has none."
			if !HasCollar(k) {
				why = "The dress has no collar."
			}
			return pattern.Default{Value: pattern.LengthValue(0), Because: measure.Tell(why)}
		},
		Limits: between(low, high),
	}
}

// collarChoices are what a collar is made of.
var collarChoices = []pattern.Choice{
	{
		ID: "collar", Title: "Collar", Says: "What is sewn to the neck: it wants a round neck that lies close, and an opening behind or in front.", Group: "Collar",
		Kind: pattern.KindPick, Methods: onlyMeasured, Default: pick(NoCollar),
		Options: []pattern.Option{
			{Value: NoCollar, Title: "None", Says: "The neck is faced or bound."},
			{Value: StandCollar, Title: "Stand", Says: "A band that stands up round her neck."},
			{Value: FlatCollar, Title: "Flat", Says: "Lies on the shoulders, rolling a little at the neck."},
			{Value: ConvertibleCollar, Title: "Convertible", Says: "Worn open or closed; wants a placket in front."},
		},
	},
	byCollar("collar_height", "Collar height", "How high a collar stands, or how wide it lies, at the centre.",
		map[string]float64{StandCollar: 1.25, FlatCollar: 2.5, ConvertibleCollar: 3}, 1, 3.25),
	byCollar("collar_rise", "Collar rises by", "How far the neck edge of a standing collar rises to its end, so that it leans in to her neck.",
		map[string]float64{StandCollar: 0.625, ConvertibleCollar: 0.375}, 0.25, 0.75),
	byCollar("collar_lap", "Shoulders lapped by", "How far the shoulder ends lap where a flat collar is traced: none lies flat, more makes it roll.",
		map[string]float64{FlatCollar: 0.5}, 0, 1),
}

// collarWiden is how far a neck is widened that a collar is sewn to; collarBack
// is how deep it is behind (common practice, no source).
const (
	collarWiden = measure.Inch / 4
	collarBack  = measure.Inch
)

// collared gives the depth of a round neck its usual figure below a collar.
func collared(k pattern.Known, back bool) (pattern.Default, bool) {
	if !HasCollar(k) {
		return pattern.Default{}, false
	}
	if s := NeckStyle(k, back); s != RoundNeckline && s != JewelNeckline {
		return pattern.Default{}, false
	}
	if back {
		return pattern.Default{Value: pattern.LengthValue(collarBack), Because: measure.Tell("A collar wants a neck that lies close.")}, true
	}
	return sixthOfNeck(k, 0.5, "A sixth of the neck base and {1/2 in}: a collar wants a neck that lies close."), true
}

// usualWidenOf is how far the neck of this dress is usually widened.
func usualWidenOf(k pattern.Known) measure.Length {
	if HasCollar(k) {
		return collarWiden
	}
	return widenFor(NeckStyle(k, false))
}
