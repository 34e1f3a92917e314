package geom

import "math"

// leastBack is the length in mm below which a piece that runs back is left: it
// is a wrinkle at a cusp, not a loop.
const leastBack = 0.05

// withoutBack drops what still runs back on an open path after the loops are
// off: it is at an end, with nothing beyond to cross. What is left starts and
// ends where it is first d away from the source.
func (t tangle) withoutBack(src Path, d, tol float64) Path {
	lo, hi := 0, len(t.path)
	total := t.path.Length()
	done := 0.0
	for i, s := range t.path {
		l := s.Length()
		if t.back[i] && l > leastBack {
			// The end it is nearer to is lost.
			if done+l/2 < total/2 {
				lo = i + 1
			} else {
				hi = min(hi, i)
			}
		}
		done += l
	}
	out := t.path
	if lo >= hi {
		return nil
	}
	out = out[lo:hi]
	if hi < len(t.path) {
		out = out.Reverse().clear(src, math.Abs(d)-tol).Reverse()
	}
	if lo > 0 {
		out = out.clear(src, math.Abs(d)-tol)
	}
	return out
}

// clear is the path from where it first is at least d away from src.
func (p Path) clear(src Path, d float64) Path {
	far := func(at Point) bool {
		_, _, dist := src.Nearest(at)
		return dist >= d
	}
	if far(p.Start()) {
		return p
	}
	const samples = 8
	for i, s := range p {
		for k := range samples {
			lo, hi := float64(k)/samples, float64(k+1)/samples
			if !far(s.At(hi)) {
				continue
			}
			for range 40 {
				if m := (lo + hi) / 2; far(s.At(m)) {
					hi = m
				} else {
					lo = m
				}
			}
			_, rest := p.cut(i, hi)
			return rest
		}
	}
	return nil
}
