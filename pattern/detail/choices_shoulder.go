package detail

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/rule"
)

const (
	usualInset  = 0.75 * measure.Inch
	closeInset  = 0.5 * measure.Inch
	usualWiden  = measure.Inch
	leastWiden  = measure.Inch / 4
	strapCovers = 2.5 * measure.Inch // a shoulder that covers a strap
)

// shoulderFor settles how far the neck is widened and the shoulder end drawn
// in on this shoulder: a short one is widened less, and if that is not
// enough the end is drawn in less. What she chose never gives way.
func shoulderFor(k pattern.Known) (inset, widen measure.Length) {
	inset, widen = usualInset, usualWiden
	chosenInset, hasInset := k.Job.Style.Get("shoulder_inset")
	if hasInset {
		inset = chosenInset.Length
	}
	chosenWiden, hasWiden := k.Job.Style.Get("neck_widening")
	if hasWiden {
		widen = chosenWiden.Length
	}
	if !k.Has(measure.NeckBaseGirth, measure.AcrossShoulders, measure.ShoulderDrop) {
		return inset, widen
	}
	full := FullShoulder(rule.NeckHalf(k).Result(), rule.BoneOut(k).Result(), k.Body(measure.ShoulderDrop), inset)
	if full-usualWiden < strapCovers {
		if !hasWiden {
			widen = max(leastWiden, (full - strapCovers).Down(rule.Eighth))
		}
		if full-widen < strapCovers && !hasInset {
			inset = closeInset
		}
	}
	return inset, widen
}

func gaveWay(value, usual measure.Length, why string) pattern.Default {
	d := pattern.Default{Value: pattern.LengthValue(value), Because: measure.Tell("The usual figure, common practice.")}
	if value != usual {
		d.GaveWay, d.Because = true, measure.Tell(why, value, usual)
	}
	return d
}

var shoulderChoices = []pattern.Choice{
	{
		ID: "shoulder_inset", Title: "Shoulder end drawn in", Says: "How far the sleeveless edge lies inside the shoulder bone.",
		Group: "Shoulder", Kind: pattern.KindLength, Methods: onlyMeasured,
		Default: func(k pattern.Known) pattern.Default {
			inset, _ := shoulderFor(k)
			return gaveWay(inset, usualInset, "Her shoulder is short: {} instead of {} leaves enough to cover a strap.")
		},
		Limits: between(0, 2.5),
	},
	length("shoulder_forward", "Shoulder", "Shoulder seam forward", "How far the seam lies in front of the shoulder's ridge.", 0.25, 0, 0.5, pattern.Measured),
	{
		ID: "neck_widening", Title: "Neck widened", Says: "How far the neck point slides along the shoulder.",
		Group: "Neck", Kind: pattern.KindLength, Methods: onlyMeasured,
		Default: func(k pattern.Known) pattern.Default {
			_, widen := shoulderFor(k)
			return gaveWay(widen, usualWiden, "Her shoulder is short: {} instead of {} leaves enough to cover a strap.")
		},
		Limits: between(0, 3),
	},
}

var neckChoices = []pattern.Choice{
	byMethod(length("front_neck_depth", "Neck", "Front neck depth", "From the top line down the centre front.", 4.5, 2.5, 8), 3),
	byMethod(length("back_neck_depth", "Neck", "Back neck depth", "From the top line down the centre back; shallower than the front.", 1.5, 0.75, 4), 1),
}

var armholeDepth = pattern.Choice{
	ID: "armhole_depth", Title: "Armhole depth", Says: "From the top line down to the underarm.",
	Group: "Shape", Kind: pattern.KindLength, Methods: onlyMeasured,
	After: []pattern.ChoiceID{"ease_bust", "shoulder_inset", "shoulder_forward", "neck_widening"},
	Default: func(k pattern.Known) pattern.Default {
		if w := waits(k, measure.BustGirth, measure.ShoulderDrop); w != nil {
			return pattern.Default{Waits: w}
		}
		work := rule.UnderarmLevel(k)
		d := pattern.Default{
			Value: pattern.LengthValue(work.Result()), Sum: work,
			Because: measure.Tell("The shoulder drop and {6 in}, and {1/8 in} for each {3 in} of bust over {36 in}: the armpit goes down with the shoulder."),
		}
		arm, ok := k.Measured(measure.UpperArmGirth)
		if !ok || !k.Has(measure.NeckBaseGirth, measure.AcrossShoulders, measure.AcrossFront, measure.AcrossBack) {
			return d
		}
		depth := work.Result()
		for range 4 {
			if ArmholeGirth(k, depth) >= rule.ArmNeeds(arm) {
				break
			}
			depth += rule.Eighth
		}
		if depth != work.Result() {
			d.GaveWay = true
			d.Sum = work.Plus(measure.Of("for the arm", depth-work.Result()))
			d.Value = pattern.LengthValue(d.Sum.Result())
			d.Because = measure.Tell("The drop and {6 in} gives {}; lowered to {} so that the armhole passes her arm.", work.Result(), depth)
		}
		return d
	},
	Limits: between(5.5, 11),
}

// ArmholeGirth draws front and back armhole at a depth and measures them.
func ArmholeGirth(k pattern.Known, depth measure.Length) measure.Length {
	var sum float64
	for _, back := range []bool{false, true} {
		s := MeasuredShoulder(k, back)
		_, path := MeasuredArmhole(k, s, depth, back)
		sum += path.Length()
	}
	return measure.Length(sum)
}
