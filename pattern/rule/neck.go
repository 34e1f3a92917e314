package rule

import (
	"chalkfold/measure"
	"chalkfold/pattern"
)

// NeckHalf is how far the base neck point lies out from the centre: a sixth
// of the neck base and 1/2. A teaching page of 2023 (basic bodice block)
// prints the same rule.
func NeckHalf(k pattern.Known) measure.Working {
	return measured(k, measure.NeckBaseGirth, "neck base").Over(6).Plus(fixed(0.5))
}

// BoneOut is how far the shoulder bone lies out from the centre.
func BoneOut(k pattern.Known) measure.Working {
	return measured(k, measure.AcrossShoulders, "across shoulders").Over(2)
}

// ShoulderOut is how far the sleeveless shoulder end lies out.
func ShoulderOut(k pattern.Known) measure.Working {
	return BoneOut(k).Minus(choice(k, "shoulder_inset", "inset"))
}

// FrontHollow is how far the middle of the front armhole lies out, for a
// shoulder end at tipX.
func FrontHollow(k pattern.Known, tipX measure.Length) measure.Working {
	in := 0.5
	if Direct(k) {
		in = 0.25
	}
	return measure.Least(measured(k, measure.AcrossFront, "across front").Over(2),
		measure.Drawn("shoulder end", tipX).Minus(fixed(in)))
}

// BackHollow is the same of the back, which keeps more for reaching.
func BackHollow(k pattern.Known, tipX measure.Length) measure.Working {
	half := measured(k, measure.AcrossBack, "across back").Over(2)
	if Direct(k) {
		return measure.Least(half, measure.Drawn("shoulder end", tipX))
	}
	return measure.Least(half, measure.Drawn("shoulder end", tipX).Minus(fixed(0.125)))
}

// UnderarmLevel is the depth of the armhole before the arm is looked at:
// the shoulder drop and 6, and 1/8 for each 3 in of bust over 36. On the 993
// women of the ANSUR II survey (2012) the armpit follows the drop nearly one
// to one and the bust hardly at all.
func UnderarmLevel(k pattern.Known) measure.Working {
	return measured(k, measure.ShoulderDrop, "shoulder drop").Plus(fixed(6)).
		Plus(measured(k, measure.BustGirth, "bust").Minus(fixed(36)).Over(24)).Near(Eighth)
}

// ArmNeeds is the armhole girth that her upper arm wants, sleeveless.
func ArmNeeds(upperArm measure.Length) measure.Length { return upperArm + In(3.75) }
