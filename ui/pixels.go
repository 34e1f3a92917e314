package ui

// plausible keeps a driver's nonsense out.
func plausible(aspect float64) (float64, bool) {
	return aspect, aspect >= 1.2 && aspect <= 3.5
}
