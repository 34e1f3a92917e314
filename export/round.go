package export

import "math"

// Round rounds to parts of one, so that what is written does not hang on the
// last digit of a sum, in which machines differ. It is first rounded ten
// thousand times finer: many places lie half way between two steps, and a sum
// that misses such a place by a last digit must still be rounded as the place
// itself. What is no number becomes nothing.
func Round(x, parts float64) float64 {
	const finer = 1e4
	x = math.Round(math.Round(x*parts*finer)/finer) / parts
	if math.IsNaN(x) || math.IsInf(x, 0) || x == 0 {
		return 0 // no negative nothing either
	}
	return x
}
