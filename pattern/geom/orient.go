package geom

import (
	"math"
	"math/big"
)

// turn tells on which side of the line from a to b the point c lies: +1 to the
// right of travel (clockwise to the eye), -1 to the left, 0 exactly on it. It
// is never wrong: plain floats when the result is beyond their rounding, exact
// fractions when in doubt.
func turn(a, b, c Point) int {
	l := float64((b.X - a.X) * (c.Y - a.Y))
	r := float64((b.Y - a.Y) * (c.X - a.X))
	d := l - r
	// Bound of Shewchuk, Adaptive Precision Floating-Point Arithmetic
	// (1997), for the first stage: (3 + 16 e) e times the sum of sizes.
	const bound = (3 + 16*0x1p-53) * 0x1p-53
	// Products below 1e-290 lose bits the bound does not know of.
	if m := math.Abs(l) + math.Abs(r); math.Abs(d) > bound*m && math.Abs(d) > 1e-290 {
		if d > 0 {
			return 1
		}
		return -1
	}
	return turnExact(a, b, c)
}

func turnExact(a, b, c Point) int {
	if a == b || b == c || a == c {
		return 0
	}
	for _, p := range [...]Point{a, b, c} {
		if bad(p.X) || bad(p.Y) {
			return 0
		}
	}
	diff := func(p, q float64) *big.Rat {
		r := new(big.Rat).SetFloat64(p)
		return r.Sub(r, new(big.Rat).SetFloat64(q))
	}
	l := diff(b.X, a.X)
	l.Mul(l, diff(c.Y, a.Y))
	r := diff(b.Y, a.Y)
	r.Mul(r, diff(c.X, a.X))
	return l.Cmp(r)
}

func bad(x float64) bool { return math.IsNaN(x) || math.IsInf(x, 0) }
