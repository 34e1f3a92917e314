package rule

import "chalkfold/measure"

// ZipStock are the lengths of zips in the shops, inches (from memory).
var ZipStock = []float64{7, 9, 12, 14, 16, 18, 20, 22, 24}

// ZipFor is the next stock length for an opening; longer ones are ordered to
// the next inch.
func ZipFor(opening measure.Length) measure.Length {
	for _, z := range ZipStock {
		if opening <= In(z)+0.01 {
			return In(z)
		}
	}
	return opening.Up(measure.Inch)
}
