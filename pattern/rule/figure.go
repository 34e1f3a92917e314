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
	// MostRoundEase is what a shoulder can be eased by without a dart
	// (common practice).
	MostRoundEase = 0.375 * measure.Inch
)

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
