package detail

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/rule"
)

// byDirect gives a choice another usual figure in the block by direct
// measure.
func byDirect(c pattern.Choice, direct float64, why string) pattern.Choice {
	usual := c.Default
	c.Default = func(k pattern.Known) pattern.Default {
		if rule.Direct(k) {
			return pattern.Default{Value: pattern.LengthValue(rule.In(direct)), Because: measure.Tell(why)}
		}
		return usual(k)
	}
	return c
}

// pickDirect is the same for a pick.
func pickDirect(usual, direct, why string) func(pattern.Known) pattern.Default {
	return func(k pattern.Known) pattern.Default {
		if rule.Direct(k) {
			return pattern.Default{Value: pattern.PickValue(direct), Because: measure.Tell(why)}
		}
		return pick(usual)(k)
	}
}

// directDepth is the depth of the block's armhole: what is left above her
// side length.
func directDepth(k pattern.Known) pattern.Default {
	if w := waits(k, measure.BackNeckToWaist, measure.SideWaistLength); w != nil {
		return pattern.Default{Waits: w}
	}
	work := rule.DirectSide(k)
	_, own := k.Measured(measure.SideWaistLength)
	d := pattern.Default{
		Value: pattern.LengthValue(work.Result()), Sum: work, Proposed: !own,
		Because: measure.Tell("Her side length is counted up from the waist; what is left above it is the armhole."),
	}
	if HasSleeve(k) {
		work = work.Plus(measure.Of("for the sleeve", sleevedLower))
		d.Value, d.Sum = pattern.LengthValue(work.Result()), work
		d.Because = measure.Tell("The underarm of a dress with sleeves lies {} lower than her side length says: {}.", sleevedLower, work.Result())
	}
	if !k.Has(append(shoulderNeeds(k), measure.BustGirth, measure.UpperChestGirth, measure.AcrossFront, measure.AcrossBack)...) {
		return d
	}
	return forArm(k, d, work, "Her side length gives {}; lowered to {} so that the armhole passes her arm.")
}

// forArm lowers an armhole by as little as lets her arm through, in steps of
// an eighth and no more than four of them.
func forArm(k pattern.Known, d pattern.Default, work measure.Working, why string) pattern.Default {
	arm, ok := k.Measured(measure.UpperArmGirth)
	if !ok {
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
		d.Because = measure.Tell(why, work.Result(), depth)
	}
	return d
}
