package rule

import (
	"math"

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

// lowerShift is the same at waist and hip: as at the bust, unless she took the
// front from side line to side line, at the hip or else at the waist. Both
// levels then go by one of them, so that the sides stay alike below the waist.
func lowerShift(k pattern.Known) measure.Length {
	if k.Method == pattern.Thumb {
		return 0
	}
	for _, a := range []struct{ arc, girth measure.ID }{
		{measure.FrontHipArc, measure.HipGirth}, {measure.FrontWaistArc, measure.WaistGirth},
	} {
		if arc, ok := k.Measured(a.arc); ok && k.Has(a.girth) {
			return arc/2 - k.Body(a.girth)/4
		}
	}
	return bustShift(k)
}

// SeamSwings is how much farther forward the side seam lies at the hip than
// at the underarm; behind it is negative.
func SeamSwings(k pattern.Known) measure.Length { return lowerShift(k) - bustShift(k) }

const (
	// MostSwing: a side seam that swings more shows, and pulls.
	MostSwing = 0.75 * measure.Inch
	// FarthestSwing cannot be drawn: one of the arcs is wrong.
	FarthestSwing = 2 * measure.Inch
	// mostSideIn: a seam that comes in more than this dives (common practice).
	mostSideIn = 1.5 * measure.Inch
)

// Levelled is what the front is lowered by where no dart trues its side: a
// seam with less slant is shorter, and both must be as long.
func Levelled(k pattern.Known) measure.Length {
	depth := k.Length("armhole_depth")
	if SeamSwings(k) == 0 || depth <= 0 || DartIntake(k).Result() > 0 || !k.Has(measure.BustGirth, measure.WaistGirth) {
		return 0
	}
	down := (BackWaist(k).Result() - depth).MM()
	in := func(back bool) float64 { return (BustWidthOf(k, back).Result() - WaistWidthOf(k, back).Result()).MM() }
	front, back := in(false), in(true)
	long := float64(back*back) + float64(down*down)
	return measure.Length(math.Sqrt(math.Max(0, long-float64(front*front))) - down)
}

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
	arc, ok := k.Measured(measure.FrontWaistArc)
	switch {
	case ok && back:
		return measured(k, measure.WaistGirth, "waist").Minus(measure.Measured("front arc", arc)).Over(2).Plus(choice(k, "ease_waist", "ease").Over(4))
	case ok:
		return measure.Measured("front arc", arc).Over(2).Plus(choice(k, "ease_waist", "ease").Over(4))
	case Direct(k):
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
	if _, arc := k.Measured(measure.FrontWaistArc); shift == 0 && !arc {
		return 0
	}
	more := max(0, WaistWantedOf(k, false).Result()-base-shift, WaistWantedOf(k, true).Result()-base+shift)
	if swing := SeamSwings(k); swing != 0 {
		in := BustWidth(k).Result() - base - more + max(swing, -swing)
		more += max(0, in-max(mostSideIn, k.Length("side_waist_limit")))
	}
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
