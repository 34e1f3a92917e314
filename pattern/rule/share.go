package rule

import (
	"chalkfold/measure"
	"chalkfold/pattern"
)

// Front and back have equal quarters, unless her own measurements give each
// its share. What one is wider by the other is narrower, so that the girth is
// body and ease all the same, and both sides keep their slant.

const (
	// LargeCup: from this difference of bust and upper chest on the front
	// needs more than a quarter (common practice, no source).
	LargeCup = 2.5 * measure.Inch
	// MostCup: a larger share of the front is doubted.
	MostCup = 0.75 * measure.Inch

	leastPinch = 0.375 * measure.Inch
	mostPinch  = 0.75 * measure.Inch
)

// CupShift is how far the front is wider than a quarter, and the back
// narrower, because her bust lies in front: a quarter of what the bust is
// larger than the upper chest. Only her own upper chest says so; a proposal
// does not. A teaching page of 2014 (retro direct-measure bodice) gives the
// two shares.
func CupShift(k pattern.Known) measure.Working {
	chest, ok := k.Measured(measure.UpperChestGirth)
	none := measure.Of("shift", 0)
	if !ok || k.Method == pattern.Thumb || k.Pick("large_cup") == "off" || !k.Has(measure.BustGirth) {
		return none
	}
	if k.Body(measure.BustGirth)-chest < LargeCup-slack {
		return none
	}
	return measured(k, measure.BustGirth, "bust").Minus(measure.Measured("upper chest", chest)).Over(4)
}

// CupPinch is what is then taken out of the front armhole, which the wider
// front makes longer: three quarters of the shift.
func CupPinch(k pattern.Known) measure.Length {
	shift := bustShift(k)
	if shift <= 0 || Direct(k) && shift < leastBlockShift {
		return 0
	}
	return min(mostPinch, max(leastPinch, measure.Length(0.75*shift.MM()).Near(Eighth)))
}

// leastBlockShift: a block whose front is wider than a quarter by less keeps
// its armhole (ours).
const leastBlockShift = 0.5 * measure.Inch

// bustShift is how far the front is wider than a quarter at the bust.
func bustShift(k pattern.Known) measure.Length {
	switch {
	case !Direct(k):
		return CupShift(k).Result()
	case !k.Has(measure.BustGirth, measure.UpperChestGirth):
		return 0
	}
	return (DirectFront(k).Result() - DirectBack(k).Result()) / 2
}

// lowerShift is the same at waist and hip.
func lowerShift(k pattern.Known) measure.Length { return bustShift(k) }

// BustWidthOf is the half width of one half at the underarm line.
func BustWidthOf(k pattern.Known, back bool) measure.Working {
	switch {
	case Direct(k) && back:
		return DirectBack(k)
	case Direct(k):
		return DirectFront(k)
	}
	return shared(BustWidth(k), bustShift(k), back)
}

// WaistWidthOf is the half width of one half at the waist.
func WaistWidthOf(k pattern.Known, back bool) measure.Working {
	return shared(WaistWidth(k), lowerShift(k), back)
}

// WaistWantedOf is the half width that the waist of one half wants.
func WaistWantedOf(k pattern.Known, back bool) measure.Working {
	if Direct(k) {
		return DirectWaist(k, back)
	}
	return shared(WaistWanted(k), lowerShift(k), back)
}

// HipWidthOf is the half width of one half at the hip line.
func HipWidthOf(k pattern.Known, back bool) measure.Working {
	return shared(HipWidth(k), lowerShift(k), back)
}

// waistRaise is how much wider both halves are at the waist than their side
// seams would leave them, so that the fuller one goes round her. Both give
// the same, or the sides would part.
func waistRaise(k pattern.Known, base measure.Length) measure.Length {
	shift := lowerShift(k)
	if shift == 0 {
		return 0
	}
	more := max(0, WaistWantedOf(k, false).Result()-base-shift, WaistWantedOf(k, true).Result()-base+shift)
	if more < slack {
		return 0
	}
	return more
}

// shared gives the front more and the back less; where the back is the fuller
// one the shift is negative.
func shared(quarter measure.Working, shift measure.Length, back bool) measure.Working {
	if back {
		shift = -shift
	}
	switch {
	case shift == 0:
		return quarter
	case shift < 0:
		return quarter.Minus(measure.Of("share", -shift))
	}
	return quarter.Plus(measure.Of("share", shift))
}
