package rule

import (
	"chalkfold/measure"
	"chalkfold/pattern"
)

// How close a dress is worn, and what its cloth gives. Fitted in woven cloth
// is the usual dress; the others stand off it by what the trade gives each
// (common practice; the gift of knits from memory).

// The classes of ease and the kinds of cloth, as a session names them.
const (
	Close   = "close"
	Fitted  = "fitted"
	Easy    = "easy"
	Roomy   = "roomy"
	Woven   = "woven"
	Stretch = "stretch"
	Knit    = "knit"
)

// Level is where ease is counted.
type Level int8

// The levels of ease that have a class.
const (
	AtBust Level = iota
	AtWaist
	AtHip
	AtArm
)

// easeRow is a class at one level: what it adds to the fitted dress, and the
// range that is good in woven cloth, inches.
type easeRow struct{ more, low, high float64 }

var easeClasses = map[string][4]easeRow{
	Close:  {{-0.75, 1.5, 2}, {-0.75, 1, 1.5}, {0, 1.5, 2}, {-0.5, 1.5, 2}},
	Fitted: {{0, 2, 3.5}, {0, 1.5, 2.5}, {0, 2, 3.5}, {0, 1.5, 2.5}},
	Easy:   {{1.5, 3, 5}, {3, 4, 6}, {2, 3, 5}, {0.5, 2, 3}},
	Roomy:  {{3.5, 5, 8}, {6, 4, 10}, {4, 5, 8}, {1, 3, 4}},
}

// cloths are what a cloth gives at each level.
var cloths = map[string][4]float64{
	Stretch: {1, 0.5, 1, 1},
	Knit:    {2, 2, 2, 2},
}

// EaseClass is how close the dress is to be worn.
func EaseClass(k pattern.Known) string {
	if c := k.Pick("ease_class"); k.Method != pattern.Thumb && easeClasses[c] != [4]easeRow{} {
		return c
	}
	return Fitted
}

// ClothGives is what the cloth stretches at a level, so that it needs less
// ease.
func ClothGives(k pattern.Known, at Level) measure.Length {
	if k.Method == pattern.Thumb {
		return 0
	}
	return In(cloths[k.Pick("cloth_kind")][at])
}

// EaseMore is what class and cloth add to the ease of the fitted dress.
func EaseMore(k pattern.Known, at Level) measure.Length {
	return In(easeClasses[EaseClass(k)][at].more) - ClothGives(k, at)
}

// LooseWaist is how much a waist without darts may hang, since the side alone
// takes it in.
const LooseWaist = 6 * measure.Inch

// EaseRange is the ease that is good at a level for class and cloth.
func EaseRange(k pattern.Known, at Level) (low, high measure.Length) {
	r, gives := easeClasses[EaseClass(k)][at], ClothGives(k, at)
	return In(r.low) - gives, In(r.high) - gives
}
