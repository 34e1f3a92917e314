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
	inset, widen = insetFor(k), usualWidenOf(k)
	chosenInset, hasInset := k.Job.Style.Get("shoulder_inset")
	if hasInset {
		inset = chosenInset.Length
	}
	chosenWiden, hasWiden := k.Job.Style.Get("neck_widening")
	if hasWiden {
		widen = chosenWiden.Length
	}
	if !k.Has(shoulderNeeds(k)...) {
		return inset, widen
	}
	full := fullShoulder(k, inset)
	if NeckStyle(k, false) == BoatNeckline {
		if !hasWiden {
			widen = boatWiden(k)
		}
		return inset, widen
	}
	if usual := usualWidenOf(k); full-usual < strapCovers {
		if !hasWiden {
			widen = max(min(usual, leastWiden), (full - strapCovers).Down(rule.Eighth))
		}
		if full-widen < strapCovers && !hasInset && inset > closeInset {
			inset = closeInset
		}
	}
	return inset, widen
}

// insetFor is how far a shoulder end is usually drawn in: not at all where a
// sleeve is set in at the bone.
func insetFor(k pattern.Known) measure.Length {
	if HasSleeve(k) {
		return 0
	}
	return usualInset
}

// widenFor is the usual widening of a neckline (common practice, no source).
func widenFor(style string) measure.Length {
	switch style {
	case JewelNeckline, SlitNeckline, KeyholeNeckline:
		return measure.Inch / 8
	case SweetheartNeckline:
		return 1.5 * measure.Inch
	case FunnelNeckline:
		return 0.375 * measure.Inch
	}
	return usualWiden
}

// boatWiden leaves two inches of shoulder, within what a boat neck bears.
func boatWiden(k pattern.Known) measure.Length {
	full := fullShoulder(k, insetFor(k))
	return min(rule.In(3), max(rule.In(1.5), (full-rule.In(2)).Down(rule.Eighth)))
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
		After: []pattern.ChoiceID{"front_neckline", "armhole_shape", "cut_in_shoulder", "sleeve", "collar"},
		Default: func(k pattern.Known) pattern.Default {
			inset, widen := shoulderFor(k)
			if IsCutIn(k) && k.Has(shoulderNeeds(k)...) {
				return pattern.Default{
					Value:   pattern.LengthValue(cutInInset(k, widen)),
					Because: measure.Tell("Cut in until {} of shoulder are left beside the neck.", k.Length("cut_in_shoulder")),
				}
			}
			if HasSleeve(k) {
				return pattern.Default{Value: pattern.LengthValue(inset), Because: measure.Tell("A sleeve is set in at the shoulder bone.")}
			}
			if rule.Direct(k) && inset == usualInset {
				return gaveWay(directInset(k, widen), usualInset, "She is narrow across the front for her shoulder: {} instead of {}, or the armhole is scooped too deep.")
			}
			return gaveWay(inset, usualInset, "Her shoulder is short: {} instead of {} leaves enough to cover a strap.")
		},
		Limits: between(0, 2.5),
	},
	byDirect(length("shoulder_forward", "Shoulder", "Shoulder seam forward", "How far the seam lies in front of the shoulder's ridge.", 0.25, 0, 0.5, pattern.Measured),
		0, "The block's neck point lies forward already."),
	{
		ID: "neck_widening", Title: "Neck widened", Says: "How far the neck point slides along the shoulder.",
		Group: "Neck", Kind: pattern.KindLength, Methods: onlyMeasured,
		After: []pattern.ChoiceID{"front_neckline", "sleeve", "collar"},
		Default: func(k pattern.Known) pattern.Default {
			_, widen := shoulderFor(k)
			style := NeckStyle(k, false)
			if style == BoatNeckline {
				return pattern.Default{Value: pattern.LengthValue(widen), Because: measure.Tell("A boat neck is widened until {2 in} of shoulder are left.")}
			}
			return gaveWay(widen, usualWidenOf(k), "Her shoulder is short: {} instead of {} leaves enough to cover a strap.")
		},
		Limits: between(0, 3),
	},
}

var armholeDepth = pattern.Choice{
	ID: "armhole_depth", Title: "Armhole depth", Says: "From the top line down to the underarm.",
	Group: "Shape", Kind: pattern.KindLength, Methods: onlyMeasured,
	After: []pattern.ChoiceID{"ease_bust", "shoulder_inset", "shoulder_forward", "neck_widening", "large_cup", "sleeve", "back_shoulder_ease", "back_shoulder_dart", "back_dart_length"},
	Default: func(k pattern.Known) pattern.Default {
		if rule.Direct(k) {
			return directDepth(k)
		}
		if w := waits(k, measure.BustGirth, measure.ShoulderDrop); w != nil {
			return pattern.Default{Waits: w}
		}
		work := rule.UnderarmLevel(k)
		d := pattern.Default{
			Value: pattern.LengthValue(work.Result()), Sum: work,
			Because: measure.Tell("The shoulder drop and {6 in}, and {1/8 in} for each {3 in} of bust over {36 in}: the armpit goes down with the shoulder."),
		}
		if HasSleeve(k) {
			work = work.Plus(measure.Of("for the sleeve", sleevedLower))
			d.Value, d.Sum = pattern.LengthValue(work.Result()), work
			d.Because = measure.Tell("The underarm of a dress with sleeves lies {} lower than without: {}.", sleevedLower, work.Result())
		}
		if !k.Has(measure.NeckBaseGirth, measure.AcrossShoulders, measure.AcrossFront, measure.AcrossBack) {
			return d
		}
		return forArm(k, d, work, "The drop and {6 in} gives {}; lowered to {} so that the armhole passes her arm.")
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
