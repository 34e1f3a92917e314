package detail

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/rule"
)

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
	// One that goes to the hem is left open below its last button, so that she
	// can walk (common practice).
	buttonHem = 4 * measure.Inch
)

// How far down a placket goes.
const (
	PlacketNeeded = "needed"
	PlacketHip    = "hip"
	PlacketHem    = "hem"
)

// PlacketToHem says whether the front is open all along, from neck to hem.
func PlacketToHem(k pattern.Known) bool {
	return HasPlacket(k) && picked(k, "placket_to", PlacketNeeded) == PlacketHem
}

var placketTo = pattern.Choice{
	ID: "placket_to", Title: "Placket to", Says: "How far down the front is buttoned.", Group: "Opening",
	Kind: pattern.KindPick, Methods: onlyMeasured, Default: pick(PlacketNeeded),
	Options: []pattern.Option{
		{Value: PlacketNeeded, Title: "As far as needed", Says: "So far that her head goes through, and where the waist is narrow her bust."},
		{Value: PlacketHip, Title: "Above the hip", Says: "To 1 1/2 above the hip line, however wide the waist is."},
		{Value: PlacketHem, Title: "To the hem", Says: "The front is open all along and buttoned like a coat."},
	},
}

// HasPlacket says whether buttons close the front.
func HasPlacket(k pattern.Known) bool { return Closure(k) == PlacketFront }

// placketLength: long enough for her head, and where her bust does not pass
// the waist, down to above the hip.
var placketLength = pattern.Choice{
	ID: "placket_length", Title: "Placket", Says: "How far down the front is open, from the neck.", Group: "Opening",
	Kind: pattern.KindLength, Methods: onlyMeasured,
	After: []pattern.ChoiceID{
		"closure", "placket_to", "length", "front_neckline", "back_neckline", "front_neck_depth", "back_neck_depth", "neck_widening", "shoulder_inset", "shoulder_forward", "neck_lean",
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
		neck := measure.Of("neck", k.Length("front_neck_depth"))
		if PlacketToHem(k) {
			work := measure.Of("front length", k.Length("length")+rule.FrontLower(k).Result()).Minus(neck)
			return pattern.Default{Value: pattern.LengthValue(work.Result()), Sum: work, Because: measure.Tell("The front is open from the neck to the hem.")}
		}
		waist := 2 * (rule.WaistWidthOf(k, false).Result() + rule.WaistWidthOf(k, true).Result() - k.Length("front_waist_dart") - k.Length("back_waist_dart"))
		if narrow := waist < k.Body(measure.BustGirth)+measure.Inch; narrow || picked(k, "placket_to", PlacketNeeded) == PlacketHip {
			work := measure.Of("front hip level", rule.BackHip(k).Result()+rule.FrontLower(k).Result()).Minus(measure.Fixed(placketHip)).
				Minus(neck)
			if !narrow {
				return pattern.Default{Value: pattern.LengthValue(work.Result()), Sum: work, Because: measure.Tell("To {} above the hip line.", placketHip)}
			}
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
// below. At a hem the last stands higher.
func Buttons(neck, end, bust float64, hem bool) []float64 {
	top, last := neck+buttonTop.MM(), end-buttonEnd.MM()
	if hem {
		last = end - buttonHem.MM()
	}
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
