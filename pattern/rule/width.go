package rule

import (
	"chalkfold/measure"
	"chalkfold/pattern"
)

// quarter is a quarter of a girth with a quarter of its ease.
func quarter(k pattern.Known, id measure.ID, name string, ease pattern.ChoiceID) measure.Working {
	return measured(k, id, name).Over(4).Plus(choice(k, ease, "ease").Over(4))
}

// BustWidth is the half width at the underarm line.
func BustWidth(k pattern.Known) measure.Working {
	return quarter(k, measure.BustGirth, "bust", "ease_bust")
}

// WaistWanted is the half width that her waist wants.
func WaistWanted(k pattern.Known) measure.Working {
	return quarter(k, measure.WaistGirth, "waist", "ease_waist")
}

// WaistWidth is the half width at the waist: the side may come in only so
// far from the underarm, counted on the same piece.
func WaistWidth(k pattern.Known) measure.Working {
	w := measure.Most(WaistWanted(k),
		measure.Of("bust width", BustWidth(k).Result()).Minus(choice(k, "side_waist_limit", "limit")))
	if more := waistRaise(k, w.Result()); more > 0 {
		w = w.Plus(measure.Of("for the fuller half", more))
	}
	return w
}

// HipWidth is the half width at the hip line.
func HipWidth(k pattern.Known) measure.Working {
	return quarter(k, measure.HipGirth, "hip", "ease_hip")
}

// HipEase is the ease a hip wants: a fuller seat sits on more.
func HipEase(hip measure.Length) measure.Length {
	switch {
	case hip >= In(50):
		return In(3)
	case hip >= In(44):
		return In(2.5)
	}
	return In(2)
}

// WaistSpare is what a quarter is wider at the waist than she wants, because
// the side may come in only so far: ease, or cloth for a waist dart.
func WaistSpare(k pattern.Known) measure.Working {
	return measure.Of("waist width", WaistWidth(k).Result()).Minus(measure.Of("wanted", WaistWanted(k).Result()))
}

const (
	// mostFrontWaist: a front waist dart of more shows as a point (ours).
	mostFrontWaist = 0.875 * measure.Inch
	// frontShare is the front's part of what half the waist has to spare,
	// twice counted: 42 to 43 per cent of it (common practice, no source).
	frontShare = 0.85
	// dartSlope: a waist dart takes up no more than a fifth of the length of
	// the half that it narrows over, or it points (common practice).
	dartSlope = 5
)

// FrontWaistDart is the intake of the front waist dart, whose upper half may
// be so long; zero where it is not worth sewing.
func FrontWaistDart(spare, upperHalf measure.Length) measure.Length {
	f := min(measure.Length(frontShare*spare.MM()).Near(Eighth), mostFrontWaist, MostWaistDart(upperHalf))
	if f < leastDart-slack {
		return 0
	}
	return f
}

// BackWaistDart is what the back takes up of what half the waist has to
// spare, once the front has its dart; zero where it is not worth sewing.
func BackWaistDart(spare, front measure.Length) measure.Length {
	if b := 2*spare - front; b >= leastDart-slack {
		return b
	}
	return 0
}

// MostWaistDart is the widest that a dart may be which narrows to nothing
// over a length.
func MostWaistDart(half measure.Length) measure.Length {
	return max(0, (half / dartSlope).Down(Eighth))
}

// LeastWaistDart is the least that is worth sewing.
const LeastWaistDart = leastDart
