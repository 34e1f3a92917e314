package canvas

// far is the largest coordinate taken as it is. Farther out the numbers of a
// float no longer tell neighbouring dots apart.
const far = 1e12

// near brings a dot within the numbers that can be reckoned with.
func (d Dot) near() Dot {
	return Dot{max(-far, min(d.X, far)), max(-far, min(d.Y, far))}
}

// clip is Liang and Barsky's: the part of a + t(dx, dy), 0 <= t <= 1, between
// -0.5 and the given right and lower limits.
func clip(a Dot, dx, dy, right, low float64) (t0, t1 float64, ok bool) {
	t1 = 1
	for _, e := range [4][2]float64{{-dx, a.X + 0.5}, {dx, right - a.X}, {-dy, a.Y + 0.5}, {dy, low - a.Y}} {
		p, q := e[0], e[1]
		switch {
		case p == 0:
			if q < 0 {
				return 0, 0, false
			}
		case p < 0:
			t0 = max(t0, q/p)
		default:
			t1 = min(t1, q/p)
		}
		if t0 > t1 {
			return 0, 0, false
		}
	}
	return t0, t1, true
}

// inside tells whether a dot needs no clipping.
func inside(d Dot, right, low float64) bool {
	return d.X >= -0.5 && d.Y >= -0.5 && d.X < right && d.Y < low
}

func finite(x float64) bool { return x-x == 0 }

func abs(n int) int {
	if n < 0 {
		return -n
	}
	return n
}

func sign(n int) int {
	switch {
	case n < 0:
		return -1
	case n > 0:
		return 1
	}
	return 0
}
