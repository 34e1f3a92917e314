package detail

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/rule"
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

// PlacketFront closes the dress in front.
const PlacketFront = "placket"

// PlacketWidth is the finished width of the bands of a placket; half of it
// lies on each side of the centre (common practice).
const PlacketWidth = measure.Inch

const (
	placketLeast = 5 * measure.Inch
	placketHip   = 1.5 * measure.Inch // a long one ends so far above the hip line
	// Buttons: the first so far below the neck, the last so far above the end,
	// about so far apart, one of them at the bust line (common practice).
	buttonTop  = 0.625 * measure.Inch
	buttonEnd  = measure.Inch
	buttonStep = 3.25 * measure.Inch
)

// HasPlacket says whether buttons close the front.
func HasPlacket(k pattern.Known) bool { return Closure(k) == PlacketFront }

// placketLength: long enough for her head, and where her bust does not pass
// the waist, down to above the hip.
var placketLength = pattern.Choice{
	ID: "placket_length", Title: "Placket", Says: "How far down the front is open, from the neck.", Group: "Opening",
	Kind: pattern.KindLength, Methods: onlyMeasured,
	After: []pattern.ChoiceID{
		"closure", "front_neckline", "back_neckline", "front_neck_depth", "back_neck_depth", "neck_widening", "shoulder_inset", "shoulder_forward", "neck_lean",
		"v_bow", "sweetheart_dip", "funnel_rise", "ease_bust", "ease_waist", "side_waist_limit", "front_waist_dart", "back_waist_dart", "large_cup", "collar", "neck_pinch",
	},
	Default: func(k pattern.Known) pattern.Default {
		if !HasPlacket(k) {
			return pattern.Default{Value: pattern.LengthValue(0), Because: measure.Tell("The dress has no placket.")}
		}
		need := append(shoulderNeeds(k), measure.BustGirth, measure.WaistGirth, measure.BackNeckToWaist, measure.SideNeckToWaist, measure.WaistToHip)
		if w := waits(k, need...); w != nil {
			return pattern.Default{Waits: w}
		}
		waist := 2 * (rule.WaistWidthOf(k, false).Result() + rule.WaistWidthOf(k, true).Result() - k.Length("front_waist_dart") - k.Length("back_waist_dart"))
		if waist < k.Body(measure.BustGirth)+measure.Inch {
			work := measure.Of("front hip level", rule.BackHip(k).Result()+rule.FrontLower(k).Result()).Minus(measure.Fixed(placketHip)).
				Minus(measure.Of("neck", k.Length("front_neck_depth")))
			return pattern.Default{
				Value: pattern.LengthValue(work.Result()), Sum: work,
				Because: measure.Tell("To {} above the hip line: her bust does not pass a waist of {} closed.", placketHip, waist),
			}
		}
		head, ok := k.Measured(measure.HeadGirth)
		if p, proposed := measure.Propose(k.Job.Body, measure.HeadGirth); !ok && proposed {
			head = p.Value
		}
		work := measure.Measured("head", head).Minus(measure.Drawn("ring of the neck", NeckRing(k))).Over(2).Plus(measure.Fixed(measure.Inch))
		return pattern.Default{
			Value: pattern.LengthValue(max(placketLeast, work.Result().Up(rule.Eighth))), Sum: work, Proposed: !ok,
			Because: measure.Tell("Half of what the ring lacks to pass her head, and {1 in}; no less than {}.", placketLeast),
		}
	},
	Limits: between(4, 44),
}

// Buttons are the levels of the buttons of a placket: the first below the
// neck, one at the bust line where the placket reaches it, evenly between and
// below.
func Buttons(neck, end, bust float64) []float64 {
	top, last := neck+buttonTop.MM(), end-buttonEnd.MM()
	if last <= top {
		return []float64{top}
	}
	goal := bust
	if bust > last || bust <= top+buttonStep.MM()/2 {
		goal = last
	}
	n := max(1, int((goal-top)/buttonStep.MM()+0.5))
	step := (goal - top) / float64(n)
	out := []float64{top}
	for i := 1; top+float64(i)*step <= last+0.5; i++ {
		out = append(out, top+float64(float64(i)*step))
	}
	return out
}
