package lay

import (
	"slices"
	"sort"

	"chalkfold/measure"
)

const (
	tapeRounds  = 60
	tapeLonger  = 2  // steps by which the strip is lengthened at first
	tapeLongest = 48 // and at last
	tapeAside   = 4  // steps that a piece may go aside for the tape
)

// snapped sets the best lay to whole steps of the tape, so that the numbers
// that she chalks are the numbers that were checked. The strip is lengthened by
// up to two steps for it; if that fails places go to finer marks of the tape,
// then to a strip that is longer still. Where pieces fill the cloth so that
// none can go aside, only their places along lie on the tape; and before a
// search is lost to the tape altogether, the lay stays as it was found. It
// works on the lay alone and counts no evaluations.
func snapped(r *run) Lay {
	tape := r.p.Cloth.Tape
	if r.p.tapeOf(&r.best) == tape { // as one that was gone on from
		l := r.best
		l.Tape, l.Evaluations = tape, r.used
		return l
	}
	var best Lay
	keep := func(l Lay, ok bool) bool {
		if ok && (best.Length == 0 || l.Length < best.Length) {
			best = l
		}
		return ok
	}
	keep(r.shelfOnTape(tape))
	if w := r.winner; w != nil {
		fine := finer(tape, r.p.Unit)
		steps := tapeSteps(w.members())
		done := keep(r.onTape(grid{tape, tape}, lengthenings(0, tapeLonger))) ||
			fine > 0 && keep(r.onTape(grid{fine, fine}, lengthenings(0, tapeLonger*tape/fine)))
		if !done {
			ask := lengthenings(tapeLonger+1, steps)
			done = keep(r.onTape(grid{tape, tape}, ask))
			done = keep(r.pushed(grid{tape, tape})) || done
			done = keep(r.onTape(grid{tape, 1}, lengthenings(0, steps))) || done
			done = keep(r.pushed(grid{tape, 1})) || done
		}
		if !done || best.Length > r.best.Length+steps*tape {
			best = r.best
		}
	}
	if best.Length == 0 {
		best = r.best
	}
	best.Tape = r.p.tapeOf(&best)
	best.Evaluations, best.First = r.used, r.best.First
	return best
}

// tapeSteps is by how many steps of the tape a lay of so many members may grow
// for it.
func tapeSteps(members int) int64 { return min(max(int64(2*members), 4), tapeLongest) }

func (pl *planned) members() int {
	n := 0
	for _, s := range pl.parts {
		n += s.moving
	}
	return n
}

// finer are the smaller marks of a tape: half a step of a tape in inches, the
// millimetres of another; 0: there are none.
func finer(tape int64, u measure.Unit) int64 {
	if u != measure.In && tape > PerMM && tape%PerMM == 0 {
		return PerMM
	}
	if tape%2 == 0 {
		return tape / 2
	}
	return 0
}

// lengthenings are counts of steps, first one by one, then wider apart.
func lengthenings(first, last int64) []int64 {
	var out []int64
	for k := first; k <= last; k += max(1, k/4) {
		out = append(out, k)
	}
	return out
}

// grid is the step of the places along and of those across.
type grid struct{ along, across int64 }

// tapeOf is the coarsest mark of the tape on which all places lie; 0: none.
func (p *Problem) tapeOf(l *Lay) int64 {
	for _, step := range []int64{p.Cloth.Tape, finer(p.Cloth.Tape, p.Unit)} {
		if step > 0 && !slices.ContainsFunc(l.Placed, func(q Placed) bool { return !p.onTape(&q, step) }) {
			return step
		}
	}
	return 0
}

// onTape says whether a piece lies on whole steps: its end towards the cut
// end, and its grain line, or else its nearest edge. What a repeat or the fold
// says is not asked of the tape.
func (p *Problem) onTape(q *Placed, step int64) bool {
	it := &p.Items[q.Item]
	if p.pinned(q.Item, q.Copy) != nil {
		return true
	}
	lo, _ := bounds(q.Outline)
	across := lo.X
	if it.Grain[0] != it.Grain[1] {
		across = q.grain(it)
	}
	along := p.Cloth.RepeatAlong > 0 && it.Match.Along || lo.Y%step == 0
	return along && (q.OnFold || p.Cloth.RepeatAcross > 0 && it.Match.Across || across%step == 0)
}

func (r *run) shelfOnTape(step int64) (Lay, bool) {
	b := newBuilder(&r.p)
	b.grid = grid{step, step}
	l := shelf(&r.p, b)
	return l, l.Length > 0 && len(Verify(r.p, l)) == 0
}

// again builds the winning plan anew with places on a grid and has each of its
// strips laid.
func (r *run) again(g grid, lay func(h, was *search, k int) bool) (Lay, bool) {
	b := newBuilder(&r.p)
	b.kinds, b.grid, b.phase, b.layout = r.b.kinds, g, r.winner.phase, r.winner.layout
	pl, err := b.plan(b.singles(), r.winner.ways)
	if err != nil {
		return Lay{}, false
	}
	done := &planned{plan: pl}
	for k, s := range pl.parts {
		s.ready()
		s.couple()
		h := &search{s: s}
		if !lay(h, r.winner.searches[k], k) {
			return Lay{}, false
		}
		h.trim()
		done.searches = append(done.searches, h)
	}
	l := r.p.lay(done)
	if g.across == 1 {
		r.p.aside(&l)
	}
	return l, len(Verify(r.p, l)) == 0
}

// onTape parts the winning plan again with places on the grid only, in a strip
// that is lengthened step by step.
func (r *run) onTape(g grid, longer []int64) (Lay, bool) {
	return r.again(g, func(h, was *search, k int) bool {
		from := h.fromOther(was)
		step := float64(g.along)
		start := grating{0, step}.atOrAfter(was.length)
		for _, n := range longer {
			length := start + float64(step*float64(n))
			if !h.s.room(length) {
				continue
			}
			q := newSearcher(h.s, length, from, newRandom(r.o.Seed, uint64(g.along), uint64(g.across), uint64(k), uint64(n)))
			if q.partWhole(1, tapeRounds) {
				h.places, h.length = q.places, length
				return true
			}
		}
		return false
	})
}

// pushed lays the winning plan again piece by piece in its order along, each
// at the first free place of the grid near its place across.
func (r *run) pushed(g grid) (Lay, bool) {
	return r.again(g, func(h, was *search, _ int) bool {
		places, length, ok := h.s.push(h.fromOther(was))
		if !ok || !h.s.room(length) {
			return false
		}
		q := newSearcher(h.s, length, places, newRandom(r.o.Seed))
		ok = q.partWhole(1, tapeRounds)
		h.places, h.length = q.places, length
		return ok
	})
}

// fromOther are the places of another search of the same members.
func (h *search) fromOther(was *search) []berth {
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
	return from
}

// push slides the members along one after the other, as they lie from the cut
// end on, each at the place across near its own that ends first.
func (s *strip) push(from []berth) ([]berth, float64, bool) {
	order := make([]int, s.moving)
	for i := range order {
		order[i] = i
	}
	sort.SliceStable(order, func(a, b int) bool { return from[order[a]].at.y < from[order[b]].at.y })
	places := slices.Clone(from)
	laid, length := s.fixedOnes()
	for _, i := range order {
		st := &s.members[i].stances[from[i].stance]
		end, found := most*1.0, false
		for k := range 2*tapeAside + 1 {
			x := st.gx.fit(from[i].at.x+float64(float64(k-tapeAside)*st.gx.step), st.xlo, st.xhi)
			if y, ok := s.slide(i, st, x, end-st.down, places, laid); ok && y+st.down < end {
				places[i], end, found = berth{from[i].stance, spot{x, y}}, y+st.down, true
			}
		}
		if !found {
			return nil, 0, false
		}
		laid = append(laid, i)
		length = max(length, end)
	}
	return places, length, true
}

// aside carries pieces to whole steps across where they stay clear of all
// others: first whole steps, then finer ones.
func (p *Problem) aside(l *Lay) {
	for _, step := range []int64{p.Cloth.Tape, finer(p.Cloth.Tape, p.Unit)} {
		for changed, pass := true, 0; step > 0 && changed && pass < tapeAside; pass++ {
			changed = false
			for i := range l.Placed {
				if q := &l.Placed[i]; !p.onTape(q, step) {
					changed = p.setAside(l, i, step) || changed
				}
			}
		}
	}
}

// setAside carries one piece to the nearest whole step across where it may lie.
func (p *Problem) setAside(l *Lay, i int, step int64) bool {
	q := &l.Placed[i]
	it := &p.Items[q.Item]
	if q.OnFold || p.Cloth.RepeatAcross > 0 && it.Match.Across {
		return false
	}
	lo, _ := bounds(q.Outline)
	across := lo.X
	if it.Grain[0] != it.Grain[1] {
		across = q.grain(it)
	}
	down := ((across % step) + step) % step
	was := *q
	for k := range int64(tapeAside) {
		for _, by := range []int64{-down - k*step, step - down + k*step} {
			q.At = Point{was.At.X + by, was.At.Y}
			q.Outline = moved(was.Outline, Point{by, 0})
			if verifyOne(p, l, q) == nil && p.standsClear(l, i) {
				return true
			}
		}
	}
	*q = was
	return false
}

// standsClear says whether a piece overlaps no other.
func (p *Problem) standsClear(l *Lay, i int) bool {
	q := &l.Placed[i]
	lo, hi := bounds(q.Outline)
	for j := range l.Placed {
		if j == i {
			continue
		}
		o := &l.Placed[j]
		a, b := bounds(o.Outline)
		if g := p.Cloth.Gap; a.X < hi.X+g && a.Y < hi.Y+g && lo.X < b.X+g && lo.Y < b.Y+g && !apart(q.Outline, o.Outline, g) {
			return false
		}
	}
	return true
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
