package rule

import (
	"chalkfold/measure"
	"chalkfold/pattern"
)

// In is a length given in inches, as the rules of the trade are.
func In(x float64) measure.Length { return measure.Length(x * 25.4) }

// Eighth is the step to which a draft is rounded.
const Eighth = measure.Inch / 8

// NapeDrop is how far the nape lies below the level of the side neck point:
// 3/4 in, range 1/2 to 1 (common practice, no source).
const NapeDrop = 0.75 * measure.Inch

func measured(k pattern.Known, id measure.ID, name string) measure.Working {
	return measure.Measured(name, k.Body(id))
}

func choice(k pattern.Known, id pattern.ChoiceID, name string) measure.Working {
	return measure.Of(name, k.Length(id))
}

func fixed(inches float64) measure.Working { return measure.Fixed(In(inches)) }
