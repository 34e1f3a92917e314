package lay

// slots is the number of slots along each axis.
const slots = 64

// register knows which members can be near a box. For each slot of an axis it
// keeps a mask of the members that begin at or before it and one of those
// that end at or after it; three ANDs give the candidates.
type register struct {
	words  int
	perX   float64
	perY   float64
	x0     float64
	begins [2][]uint64 // [axis][slot*words+word]
	ends   [2][]uint64
	spans  [][4]uint8 // slots of each member: first and last across, then along
}

func newRegister(members int, x0, width, length float64) *register {
	w := (members + 63) / 64
	r := &register{words: w, x0: x0, perX: slots / width, perY: slots / length, spans: make([][4]uint8, members)}
	for axis := range 2 {
		r.begins[axis] = make([]uint64, slots*w)
		r.ends[axis] = make([]uint64, slots*w)
	}
	return r
}

func slotOf(v float64) uint8 {
	if v < 0 {
		return 0
	}
	if v >= slots-1 {
		return slots - 1
	}
	return uint8(v)
}

func (r *register) span(x, y, w, h float64) [4]uint8 {
	return [4]uint8{
		slotOf((x - r.x0) * r.perX), slotOf((x + w - r.x0) * r.perX),
		slotOf(y * r.perY), slotOf((y + h) * r.perY),
	}
}

func (r *register) put(i int, x, y, w, h float64) {
	r.spans[i] = r.span(x, y, w, h)
	r.mark(i, true)
}

func (r *register) take(i int) { r.mark(i, false) }

func (r *register) mark(i int, on bool) {
	word, bit := i>>6, uint64(1)<<(i&63)
	for axis := range 2 {
		first, last := int(r.spans[i][2*axis]), int(r.spans[i][2*axis+1])
		begins, ends := r.begins[axis], r.ends[axis]
		for s := first; s < slots; s++ {
			if on {
				begins[s*r.words+word] |= bit
			} else {
				begins[s*r.words+word] &^= bit
			}
		}
		for s := 0; s <= last; s++ {
			if on {
				ends[s*r.words+word] |= bit
			} else {
				ends[s*r.words+word] &^= bit
			}
		}
	}
}
