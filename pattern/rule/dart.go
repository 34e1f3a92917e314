package rule

import (
	"math"

	"chalkfold/measure"
)

// DartAngle is the angle of a dart, radians, from its intake and the length
// of its legs: the chord of a circle about the tip. NaN where the intake is
// wider than two legs.
func DartAngle(intake, leg measure.Length) float64 {
	return 2 * math.Asin(intake.MM()/(2*leg.MM()))
}

// DartWidth is the intake of the same dart at another edge: a dart turned
// about the bust point keeps its angle, so its width grows with its length
// (NIMI, Dress Making textbook, Government of India 2024, read in part).
func DartWidth(angle float64, leg measure.Length) measure.Length {
	return measure.Length(2 * leg.MM() * math.Sin(angle/2))
}

// Degrees of an angle in radians.
func Degrees(radians float64) float64 { return radians * 180 / math.Pi }
