package rule

import (
	"math"

	"chalkfold/measure"
	"chalkfold/pattern"
)

// The direct block: every line from its own measure, as a teaching page of
// 2014 (retro direct-measure bodice) prints it. Front and back have their own
// widths; the levels of shoulder and underarm are counted up from the waist.

// DirectNape is how far above the nape the neck point of the block's back
// lies.
const DirectNape = measure.Inch

// Direct says whether the draft is a block by direct measure.
func Direct(k pattern.Known) bool { return k.Method == pattern.Direct }

// DirectBack is the width of the block's back: a quarter of the upper chest
// and 1/2.
func DirectBack(k pattern.Known) measure.Working {
	return measured(k, measure.UpperChestGirth, "upper chest").Over(4).Plus(fixed(0.5))
}

// DirectFront is the width of its front: the rest of half the bust with half
// the ease.
func DirectFront(k pattern.Known) measure.Working {
	return measured(k, measure.BustGirth, "bust").Over(2).Minus(measured(k, measure.UpperChestGirth, "upper chest").Over(4)).
		Plus(choice(k, "ease_bust", "ease").Over(2)).Minus(fixed(0.5))
}

// DirectWaist is what the waist of one half is to measure when its darts are
// closed.
func DirectWaist(k pattern.Known, back bool) measure.Working {
	quarter := measured(k, measure.WaistGirth, "waist").Over(4)
	if back {
		return quarter.Plus(fixed(0.25))
	}
	return quarter.Plus(choice(k, "ease_waist", "ease").Over(2)).Minus(fixed(0.25))
}

// DirectNeckOut is how far the neck point of one half lies out.
func DirectNeckOut(k pattern.Known, back bool) measure.Working {
	if back {
		return NeckHalf(k).Minus(fixed(0.25))
	}
	return NeckHalf(k)
}

// DirectTip is the level of the shoulder bone below the top line: counted up
// from the waist of that half.
func DirectTip(k pattern.Known, back bool) measure.Working {
	if back {
		return measure.Of("waist level", BackWaist(k).Result()).Minus(measured(k, measure.ShoulderToWaistBack, "shoulder to waist"))
	}
	return measured(k, measure.SideNeckToWaist, "front length").Minus(measured(k, measure.ShoulderToWaistFront, "shoulder to waist"))
}

// DirectSide is the level of the underarm: the side length above the waist of
// the back.
func DirectSide(k pattern.Known) measure.Working {
	return measure.Of("waist level", BackWaist(k).Result()).Minus(measured(k, measure.SideWaistLength, "side length"))
}

// BustLevel is how far below the top line the bust point lies. The block
// takes her measure on the slant from the neck point, the measured method
// straight down.
func BustLevel(k pattern.Known) measure.Length {
	depth := k.Body(measure.SideNeckToBustPoint)
	if !Direct(k) {
		return depth
	}
	in := (NeckHalf(k).Result() - k.Body(measure.BustPointDistance)/2).MM()
	d := depth.MM()
	return measure.Length(math.Sqrt(math.Max(0, float64(d*d)-float64(in*in))))
}

// FrontLower is how much lower than the back's the levels of the front lie.
func FrontLower(k pattern.Known) measure.Working {
	if Direct(k) {
		if more := Levelled(k); more != 0 {
			return FrontSurplus(k).Plus(measure.Of("for the side", more))
		}
		return FrontSurplus(k)
	}
	if more := Levelled(k); more != 0 {
		return measure.Of("for the side", more)
	}
	return DartIntake(k)
}
