package garment

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
)

// hemLevels are the choices that a hem reads besides its own.
func hemLevels(h half, own ...pattern.ChoiceID) []pattern.ChoiceID {
	if h.back {
		return append(own, detail.HemLevelSide, detail.HemLevelBack)
	}
	return append(own, detail.HemLevelSide, detail.HemLevelFront)
}

// hemCentre are the choices that the hem of a half reads at its centre.
func hemCentre(h half, own pattern.ChoiceID) []pattern.ChoiceID {
	if h.back {
		return []pattern.ChoiceID{own, detail.HemLevelBack}
	}
	return []pattern.ChoiceID{own, detail.HemLevelFront}
}

// raised is what the hem of a half was raised by at its centre.
func raised(k pattern.Known, h half) measure.Length {
	centre, _ := detail.HemRaised(k, h.back)
	return centre
}

// evenHem is where the hem would meet the centre if it were raised there as at
// the side, and what it lies higher than that.
func evenHem(p *bench.Pen, h half) (centre geom.Point, higher measure.Length) {
	atCentre, atSide := detail.HemRaised(p.K, h.back)
	centre, higher = p.At(h.id("hem_centre")), atCentre-atSide
	centre.Y += higher.MM()
	return centre, higher
}
