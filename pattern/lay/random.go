package lay

// random is a small generator of our own, so that a lay is the same with every
// release of the language. It is xorshift64* (Vigna 2016).
type random struct{ state uint64 }

// newRandom mixes the parts of a seed, by the finisher of splitmix64.
func newRandom(parts ...uint64) random {
	var h uint64 = 0x9e3779b97f4a7c15
	for _, p := range parts {
		h += p + 0x9e3779b97f4a7c15
		h = (h ^ h>>30) * 0xbf58476d1ce4e5b9
		h = (h ^ h>>27) * 0x94d049bb133111eb
		h ^= h >> 31
	}
	if h == 0 {
		h = 1
	}
	return random{h}
}

func (r *random) next() uint64 {
	r.state ^= r.state >> 12
	r.state ^= r.state << 25
	r.state ^= r.state >> 27
	return r.state * 0x2545f4914f6cdd1d
}

// unit is a number from 0 up to 1.
func (r *random) unit() float64 { return float64(r.next()>>11) * (1.0 / (1 << 53)) }

// below is a whole number from 0 up to n.
func (r *random) below(n int) int {
	return int((r.next() >> 32) * uint64(n) >> 32)
}

// shuffle puts the list in random order.
func (r *random) shuffle(list []int) {
	for i := len(list) - 1; i > 0; i-- {
		j := r.below(i + 1)
		list[i], list[j] = list[j], list[i]
	}
}
