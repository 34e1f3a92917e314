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
	return measure.Most(WaistWanted(k),
		measure.Of("bust width", BustWidth(k).Result()).Minus(choice(k, "side_waist_limit", "limit")))
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
