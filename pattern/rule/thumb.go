package rule

import (
	"chalkfold/measure"
	"chalkfold/pattern"
)

// The figures of drafting by thumb, straight on the folded cloth, in inches;
// the seam allowance is part of the figure. Common practice, no source.
const (
	ThumbNeckOut     = 3 * measure.Inch
	ThumbShoulderIn  = 0.5 * measure.Inch  // inside the bone
	ThumbShoulder    = measure.Inch        // down from the top line, front
	ThumbRoll        = 0.25 * measure.Inch // back shoulder end higher, so that the seam rolls forward
	ThumbAllowance   = measure.Inch        // at the sides, taken level
	ThumbArmholeUp   = 1.5 * measure.Inch  // armhole line above the bust line
	ThumbHollow      = 0.5 * measure.Inch
	ThumbDart        = 1.5 * measure.Inch // and the front is cut longer by it
	ThumbDartLength  = 5 * measure.Inch   // from the cloth's edge
	ThumbTipOutside  = 0.5 * measure.Inch // of the middle of the bust line
	ThumbKneeIn      = measure.Inch
	ThumbOverlap     = 2 * measure.Inch // beyond the centre back, at the opening
	ThumbFacingWidth = 2 * measure.Inch
)

// ThumbShoulderOut is how far the shoulder end lies out by thumb.
func ThumbShoulderOut(k pattern.Known) measure.Working {
	return BoneOut(k).Minus(measure.Fixed(ThumbShoulderIn))
}

// ThumbBust, ThumbWaist and ThumbHip are half widths with the allowance in
// them.
func ThumbBust(k pattern.Known) measure.Working {
	return thumbWidth(k, measure.BustGirth, "bust")
}

// ThumbWaist is the half width at the waist.
func ThumbWaist(k pattern.Known) measure.Working {
	return thumbWidth(k, measure.WaistGirth, "waist")
}

// ThumbHip is the half width at the hip.
func ThumbHip(k pattern.Known) measure.Working {
	return thumbWidth(k, measure.HipGirth, "hip")
}

func thumbWidth(k pattern.Known, id measure.ID, name string) measure.Working {
	return measured(k, id, name).Over(4).Plus(measure.Of("allowance", ThumbAllowance))
}

// ThumbKnee is the half width at the knee, which goes on to the hem.
func ThumbKnee(k pattern.Known) measure.Working {
	w := measure.Of("hip width", ThumbHip(k).Result())
	if k.Pick("figure") == "straight" {
		return w
	}
	return w.Minus(measure.Fixed(ThumbKneeIn))
}

// ThumbTip is how far the dart's tip lies out: 5 in from the cloth's edge,
// but at least 1/2 outside the middle of the bust line.
func ThumbTip(k pattern.Known) measure.Working {
	return measure.Most(
		measure.Of("bust width", ThumbBust(k).Result()).Minus(measure.Fixed(ThumbDartLength)),
		measured(k, measure.BustGirth, "bust").Over(8).Plus(measure.Fixed(ThumbTipOutside)),
	)
}

// ThumbArmholeLine is the level of the armhole line.
func ThumbArmholeLine(k pattern.Known) measure.Working {
	return measured(k, measure.SideNeckToBustPoint, "side neck to bust point").Minus(measure.Fixed(ThumbArmholeUp))
}
