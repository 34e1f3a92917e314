package rule

import (
	"math"

	"chalkfold/measure"
)

// Walk is what is needed to reckon a step: two straight legs from the hip
// joint, an estimate and no published standard.
type Walk struct {
	Step      measure.Length // heel to heel
	Leg       measure.Length // floor to hip joint
	Hem       measure.Length // hem above the floor
	LegGirth  measure.Length // girth of one leg at the hem
	HemGirth  measure.Length // of the skirt
	HipGirth  measure.Length // of the skirt at the hip line
	HipAbove  measure.Length // hip line above the hem
	ZipAbove  measure.Length // end of the zip above the hem
	StepGiven bool           // the step is hers, not the usual one
}

const (
	// UsualStep is an office step, heel to heel; StairsStep hurries or
	// climbs (both from memory).
	UsualStep  = 24 * measure.Inch
	StairsStep = 30 * measure.Inch
	// LegGirth is the girth of one leg at the hem (from memory).
	LegGirth = 14.5 * measure.Inch
	// LegOfHeight is floor to hip joint as a share of height (from memory).
	LegOfHeight = 0.515
)

// Need is the girth that the hem must open to for a step.
func (w Walk) Need(step measure.Length) measure.Length {
	return measure.Length(2*step.MM()*(w.Leg-w.Hem).MM()/w.Leg.MM()) + w.LegGirth
}

// Least is the lowest level above the hem where the skirt is as wide as the
// step needs there; zero where the hem is wide enough.
func (w Walk) Least(step measure.Length) measure.Length {
	short := (w.Need(step) - w.HemGirth).MM()
	if short <= 0 {
		return 0
	}
	grow := (w.HipGirth-w.HemGirth).MM()/w.HipAbove.MM() + 2*step.MM()/w.Leg.MM()
	return measure.Length(short / grow)
}

// LeastOpening is the practical least height of an opening: 3 in above that
// level, since its top must never take the strain, up to the next 1/2, and
// not under 4.
func (w Walk) LeastOpening(step measure.Length) measure.Length {
	if w.Need(step) <= w.HemGirth {
		return 0
	}
	return max(In(4), (w.Least(step) + In(3)).Up(measure.Inch/2))
}

// MostOpening is the greatest height: 6 below the hip line and below the
// end of the zip, and not over 9 1/2.
func (w Walk) MostOpening() measure.Length {
	most := math.Min((w.HipAbove - In(6)).MM(), (w.ZipAbove - In(6)).MM())
	return max(0, measure.Length(math.Min(most, In(9.5).MM())).Down(measure.Inch/2))
}

// Opening is the height taken: the usual one, raised to the least and cut to
// the most.
func (w Walk) Opening(usual measure.Length) measure.Length {
	return min(max(usual, w.LeastOpening(w.Step)), w.MostOpening())
}
