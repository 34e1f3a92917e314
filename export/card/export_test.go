package card

import "chalkfold/measure"

// For the tests that draft with the workroom.
var (
	ReadBack = readBack
	Text     = textOf
	Markdown = markdownOf
)

// Bound is how far chalked lines may stray, in millimetres.
func Bound(u measure.Unit) float64 { return gridOf(u).bound.MM() }
