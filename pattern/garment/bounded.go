package garment

import (
	"chalkfold/measure"
	"chalkfold/pattern/rule"
)

// bounded says what of an input can be drawn, and on a body that leaves nothing
// between the two bounds what else would help.
func bounded(what string, low, high measure.Length, other measure.Sentence) measure.Sentence {
	if low > high {
		return other
	}
	return measure.Tell(what+" between {} and {}", low, high)
}

// bustBetween says at which depth a bust point can be drawn in a bodice from
// the underarm to the waist, and what to measure again.
func bustBetween(what string, under, waist measure.Length) measure.Sentence {
	return bounded("measure "+what+" again; what can be drawn lies", under-rule.In(1), waist-rule.In(2),
		measure.Tell("measure the shoulder drop, the armhole depth and the lengths to the waist again: the underarm lies as low as the waist"))
}
