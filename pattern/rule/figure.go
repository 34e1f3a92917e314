package rule

import (
	"chalkfold/measure"
	"chalkfold/pattern"
)

const (
	// LeastRound: from this surplus on a back is taken as round; less is
	// within what two lengths are out (common practice, no source).
	LeastRound = 0.25 * measure.Inch
	// MostRound: beyond it easing the shoulder is not enough.
	MostRound = 0.75 * measure.Inch
	// MostRoundDarted: beyond it a dart in the shoulder is not enough.
	MostRoundDarted = 1.25 * measure.Inch
	// MostRoundEase is what a shoulder can be eased by without a dart
	// (common practice).
	MostRoundEase = 0.375 * measure.Inch
	// LeastRoundDart and MostRoundDart are what a dart in the back shoulder
	// takes up: less is not worth sewing, more leaves a point at the blade
	// (common practice, no source).
	LeastRoundDart = 0.375 * measure.Inch
	MostRoundDart  = 0.75 * measure.Inch
)

const (
	// LeastSway: from this much on a back is taken as hollow; less is within
	// what two lengths to the floor are out (common practice, no source).
	LeastSway = 0.25 * measure.Inch
	// MostSway is what one fold at the waist takes out without pulling the
	// side (common practice, no source).
	MostSway = 0.75 * measure.Inch
)

// Sway is how much lower her waist string lies behind than at the side: so
// much less length a hollow back has between nape and seat. Skirts were long
// measured to the floor in front, at the side and behind for that (Rosenfeld,
// Practical Designer, 1911).
func Sway(k pattern.Known) (measure.Working, bool) {
	side, ok := k.Measured(measure.WaistToFloor)
	back, ok2 := k.Measured(measure.WaistToFloorBack)
	if !ok || !ok2 {
		return measure.Working{}, false
	}
	return measure.Measured("waist to floor", side).Minus(measure.Measured("behind", back)), true
}

// RoundBack is how much longer her back is from the shoulder bone down than
// nape and shoulder drop give; only her own length from shoulder to waist
// tells it.
func RoundBack(k pattern.Known) (measure.Working, bool) {
	long, ok := k.Measured(measure.ShoulderToWaistBack)
	if !ok || !k.Has(measure.BackNeckToWaist, measure.ShoulderDrop) {
		return measure.Working{}, false
	}
	return measure.Measured("shoulder to waist", long).Minus(BackWaist(k)).Plus(measured(k, measure.ShoulderDrop, "shoulder drop")), true
}

// RoundEase is what the back shoulder is then eased by: half, since the blade
// lies in the middle of the way.
func RoundEase(round measure.Length) measure.Length {
	return min(MostRoundEase, max(Eighth, (round/2).Near(Eighth)))
}

// RoundDart is what a dart in the back shoulder takes up of a round back.
func RoundDart(round measure.Length) measure.Length {
	return min(MostRoundDart, max(LeastRoundDart, round.Near(Eighth)))
}
