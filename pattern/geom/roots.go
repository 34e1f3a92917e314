package geom

import "math"

// quadRoots solves a t² + b t + c = 0; what is not there comes as NaN.
func quadRoots(a, b, c float64) [2]float64 {
	nan := math.NaN()
	if a == 0 {
		if b == 0 {
			return [2]float64{nan, nan}
		}
		return [2]float64{-c / b, nan}
	}
	d := float64(b*b) - float64(4*a*c)
	if d < 0 {
		return [2]float64{nan, nan}
	}
	// The larger in size first, the other by the product of the roots, so
	// that nothing cancels.
	q := -(b + math.Copysign(math.Sqrt(d), b)) / 2
	r := [2]float64{q / a, nan}
	if q != 0 {
		r[1] = c / q
	}
	return r
}

// bern is a polynomial on [0, 1] in Bernstein form, of degree n <= 5.
type bern struct {
	c [6]float64
	n int
}

// rootDepth ends the halving where roots lie closer than floats can part.
const rootDepth = 48

// roots lists the zeros in [0, 1] in rising order, a multiple one once. A
// polynomial that is zero throughout has none.
func (b bern) roots(out []float64) []float64 {
	flat := true
	for _, c := range b.c[:b.n+1] {
		flat = flat && c == 0
	}
	if flat {
		return out
	}
	if b.c[0] == 0 {
		out = append(out, 0)
	}
	out = b.inside(0, 1, rootDepth, out)
	if b.c[b.n] == 0 && (len(out) == 0 || out[len(out)-1] < 1) {
		out = append(out, 1)
	}
	return out
}

// inside appends the zeros strictly between the ends of the piece [lo, hi].
// By Descartes' rule there are no more of them than changes of sign.
func (b *bern) inside(lo, hi float64, depth int, out []float64) []float64 {
	changes, last := 0, 0.0
	for _, c := range b.c[:b.n+1] {
		if c == 0 {
			continue
		}
		if last != 0 && (c > 0) != (last > 0) {
			changes++
		}
		last = c
	}
	switch {
	case changes == 0:
		return out
	case changes == 1 && b.c[0] != 0 && b.c[b.n] != 0:
		return append(out, lo+float64((hi-lo)*b.bracketed()))
	case depth == 0:
		return append(out, (lo+hi)/2)
	}
	l, r := b.halve()
	mid := (lo + hi) / 2
	out = l.inside(lo, mid, depth-1, out)
	if r.c[0] == 0 {
		out = append(out, mid)
	}
	return r.inside(mid, hi, depth-1, out)
}

func (b *bern) halve() (bern, bern) {
	l, r := bern{n: b.n}, bern{c: b.c, n: b.n}
	for k := 0; k <= b.n; k++ {
		l.c[k] = r.c[0]
		for i := range b.n - k {
			r.c[i] = (r.c[i] + r.c[i+1]) / 2
		}
	}
	return l, r
}

// at is the value at t, and how fast it changes there.
func (b *bern) at(t float64) (value, slope float64) {
	c := b.c
	u := 1 - t
	for k := b.n; k > 1; k-- {
		for i := range k {
			c[i] = float64(c[i]*u) + float64(c[i+1]*t)
		}
	}
	return float64(c[0]*u) + float64(c[1]*t), float64(b.n) * (c[1] - c[0])
}

// bracketed is the one zero of a polynomial with unlike signs at its ends:
// Newton's steps, and halving where a step leaves the bracket or is slow.
func (b *bern) bracketed() float64 {
	lo, hi := 0.0, 1.0
	rising := b.c[b.n] > 0
	t := b.c[0] / (b.c[0] - b.c[b.n])
	last := 1.0 // the step before
	for range 100 {
		f, slope := b.at(t)
		if f == 0 {
			return t
		}
		if (f > 0) == rising {
			hi = t
		} else {
			lo = t
		}
		next := t - f/slope
		if !(lo < next && next < hi) || math.Abs(next-t) > last/2 {
			next = lo + (hi-lo)/2
		}
		last = math.Abs(next - t)
		if last < 1e-16 || next == t {
			return next
		}
		t = next
	}
	return t
}
