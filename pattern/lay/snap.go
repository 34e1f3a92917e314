package lay

const (
	tapeRounds  = 60
	tapeLonger  = 2  // steps by which the strip is lengthened at first
	tapeLongest = 24 // and at last, before the shelf lay is taken
)

// snapped sets the best lay to whole steps of the tape, so that the numbers
// that she chalks are the numbers that were checked. The strip is lengthened by
// up to two steps for it; if that fails places go to halves of a step, and then
// to whole steps in a strip that is longer still. It works on the lay alone and
// counts no evaluations.
func snapped(r *run) Lay {
	tape := r.p.Cloth.Tape
	best := r.shelfOnTape(tape)
	keep := func(step int64, first, last int) bool {
		l, ok := r.onTape(step, first, last)
		if ok && (best.Length == 0 || l.Length < best.Length) {
			best = l
		}
		return ok
	}
	if r.winner != nil && !keep(tape, 0, tapeLonger) {
		if tape%2 != 0 || !keep(tape/2, 0, 2*tapeLonger) {
			keep(tape, tapeLonger+1, tapeLongest)
		}
	}
	if best.Length == 0 {
		best = r.best
	}
	best.Evaluations, best.First = r.used, r.best.First
	return best
}

func (r *run) shelfOnTape(step int64) Lay {
	b := newBuilder(&r.p)
	b.tape = step
	if l := shelf(&r.p, b); l.Length > 0 && len(Verify(r.p, l)) == 0 {
		return l
	}
	return Lay{}
}

// onTape parts the winning plan again with places on the tape only.
func (r *run) onTape(step int64, first, last int) (Lay, bool) {
	b := newBuilder(&r.p)
	b.kinds, b.tape, b.phase = r.b.kinds, step, r.winner.phase
	pl, err := b.plan(b.singles(), r.winner.ways)
	if err != nil {
		return Lay{}, false
	}
	done := &planned{plan: pl}
	for k, s := range pl.parts {
		s.ready()
		s.couple()
		was := r.winner.searches[k]
		h := &search{s: s}
		if !h.partOnTape(was, float64(step), first, last, newRandom(r.o.Seed, uint64(step), uint64(k))) {
			return Lay{}, false
		}
		done.searches = append(done.searches, h)
	}
	l := r.p.lay(done)
	l.Tape = step
	return l, len(Verify(r.p, l)) == 0
}

// partOnTape starts from the lay found and parts it on the tape, in a strip
// that is lengthened step by step.
func (h *search) partOnTape(was *search, step float64, first, last int, rng random) bool {
	from := make([]berth, len(was.places))
	for i, p := range was.places {
		old := &was.s.members[i].stances[p.stance]
		from[i] = berth{0, p.at}
		for t := range h.s.members[i].stances {
			st := &h.s.members[i].stances[t]
			if st.turn == old.turn && st.mirror == old.mirror && st.far == old.far {
				from[i].stance = t
			}
		}
	}
	length := grating{0, step}.atOrAfter(was.length) + float64(step*float64(first))
	for range last - first + 1 {
		if h.s.room(length) {
			q := newSearcher(h.s, length, from, rng)
			if q.partWhole(1, tapeRounds) {
				h.places, h.length = q.places, length
				h.trim()
				return true
			}
		}
		length += step
	}
	return false
}

// room says whether every member has a place in a strip of that length.
func (s *strip) room(length float64) bool {
	for i := range s.members[:s.moving] {
		fits := false
		for k := range s.members[i].stances {
			fits = fits || s.members[i].stances[k].fits(length)
		}
		if !fits {
			return false
		}
	}
	return true
}

// trim takes off the length that no piece reaches.
func (h *search) trim() {
	end := 0.0
	for i := range h.s.members {
		m := &h.s.members[i]
		switch {
		case i < h.s.moving:
			end = max(end, h.places[i].at.y+m.stances[h.places[i].stance].down)
		case m.item >= 0:
			end = max(end, m.at.y+m.stances[0].down)
		}
	}
	h.length = min(h.length, end)
}
