package detail

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// The three places at which a hem is measured from the floor, and what a
// fitting raised it by there. Cloth is taken up where the hem hangs low; a
// hem that is too high all round is the length's business.
const (
	HemLevelFront pattern.ChoiceID = "hem_level_front"
	HemLevelSide  pattern.ChoiceID = "hem_level_side"
	HemLevelBack  pattern.ChoiceID = "hem_level_back"
)

// levelChoices level a hem after the dress was seen on her.
var levelChoices = []pattern.Choice{
	levelled(HemLevelFront, "Hem raised in front", "How much higher the hem lies at the centre front than it was drafted, once levelled from the floor."),
	levelled(HemLevelSide, "Hem raised at the sides", "How much higher the hem lies at the side seams than it was drafted, once levelled from the floor."),
	levelled(HemLevelBack, "Hem raised behind", "How much higher the hem lies at the centre back than it was drafted, once levelled from the floor."),
}

func levelled(id pattern.ChoiceID, title, says string) pattern.Choice {
	c := length(id, "Hem", title, says, 0, 0, 2, pattern.Measured)
	c.Default = func(pattern.Known) pattern.Default {
		return pattern.Default{Value: pattern.LengthValue(0), Because: measure.Tell("Only where a fitting asks for it.")}
	}
	return c
}

// HemRaised is what the hem of a half is raised by at its centre, and at the
// side, where front and back share one seam.
func HemRaised(k pattern.Known, back bool) (centre, side measure.Length) {
	centre = k.Length(HemLevelFront)
	if back {
		centre = k.Length(HemLevelBack)
	}
	return centre, k.Length(HemLevelSide)
}

// LevelledHem lets a hem that runs from the side to the centre end so much
// higher at the centre, and lower where it is negative. The change runs out
// level at both ends, so that the hem stays square at the fold and meets the
// side as it did.
func LevelledHem(hem geom.Path, higher measure.Length) geom.Path {
	if higher == 0 || len(hem) == 0 {
		return hem
	}
	last := hem[len(hem)-1]
	up := geom.Vector{Y: -higher.MM()}
	b, c := last.A.Lerp(last.D, 1.0/3), last.A.Lerp(last.D, 2.0/3)
	if last.Curved {
		b, c = last.B, last.C
	}
	bent := geom.Curve(last.A, b, c.Add(up), last.D.Add(up))
	// In two parts: a hem of one is taken for a ruled one where it is turned up.
	near, far := bent.Split(0.5)
	return append(append(geom.Path{}, hem[:len(hem)-1]...), near, far)
}
