package lay

import (
	"math"
	"sort"
)

// Shelf is the simplest lay: by their boxes, side by side in rows by falling
// length, or each where it ends nearest to the cut end if that takes less; then
// the pieces that reach the end are tucked into the hollows of others. It is made
// at once, without a search, and no other lay may be longer.
func Shelf(p Problem) (Lay, error) {
	if err := p.Check(); err != nil {
		return Lay{}, err
	}
	if err := p.checkPins(); err != nil {
		return Lay{}, err
	}
	b := newBuilder(&p)
	b.grid = grid{p.Cloth.Tape, p.Cloth.Tape}
	if _, err := b.plans(); err != nil { // for what it refuses
		return Lay{}, err
	}
	l := shelf(&p, b)
	if l.Length == 0 || len(Verify(p, l)) > 0 {
		return Lay{}, p.nothingFits()
	}
	return l, nil
}

// shelf tries every piece that is cut once one way and then the other, and
// every phase of the repeat.
func shelf(p *Problem, b *builder) Lay {
	singles := b.singles()
	var best Lay
	var shortest *planned
	layouts, err := b.layouts()
	if err != nil {
		return best
	}
	for _, phase := range b.phases() {
		b.phase = phase
		for _, b.layout = range layouts {
			ways := b.ways(singles)
			for k, ws := range ways {
				if k > 0 && k < len(ways)-1 {
					continue
				}
				pl, err := b.plan(singles, ws)
				if err != nil {
					continue
				}
				for _, s := range pl.parts {
					s.frame()
				}
				if l, done, ok := p.shelfOf(pl); ok && (best.Length == 0 || l.Length < best.Length) {
					best, shortest = l, done
				}
			}
		}
	}
	if shortest != nil {
		for _, h := range shortest.searches {
			h.length = h.s.tuck(h.places, h.length)
		}
		if l := p.lay(shortest); len(Verify(*p, l)) == 0 {
			best = l
		}
	}
	best.First, best.Tape = true, p.tapeOf(&best)
	return best
}

// shelfOf lays one plan in rows.
func (p *Problem) shelfOf(pl plan) (Lay, *planned, bool) {
	done := &planned{plan: pl}
	for _, s := range pl.parts {
		h := &search{s: s}
		var ok bool
		flat := !p.Cloth.Warps() || len(done.searches) > 0
		if h.places, h.length, ok = s.rows(flat); !ok {
			return Lay{}, nil, false
		}
		if places, length, ok := s.filled(flat); ok && length < h.length {
			h.places, h.length = places, length
		}
		done.searches = append(done.searches, h)
	}
	return p.lay(done), done, true
}

// row is one row of the shelf lay with what is free across it.
type row struct {
	from, to float64
	free     [][2]float64
}

// rows lays the members in rows. From the left on flat cloth; on folded cloth
// away from the folds, which are kept for what must lie there.
func (s *strip) rows(flat bool) ([]berth, float64, bool) {
	order := make([]int, s.moving)
	for i := range order {
		order[i] = i
	}
	tall := func(i int) float64 {
		h := math.Inf(1)
		for k := range s.members[i].stances {
			h = min(h, s.members[i].stances[k].h)
		}
		return h
	}
	sort.SliceStable(order, func(a, b int) bool { return tall(order[a]) > tall(order[b]) })
	places := make([]berth, s.moving)
	var rows []row
	end := 0.0
	for _, i := range order {
		placed := false
		for k := range rows {
			if placed = s.intoRow(&rows[k], i, places, flat, false); placed {
				break
			}
		}
		for y := end; !placed; {
			r := s.newRow(y)
			if placed = s.intoRow(&r, i, places, flat, true); placed {
				rows = append(rows, r)
				end = max(end, r.to+s.gap)
				break
			}
			// Go on beyond the next thing in the way.
			next := math.Inf(1)
			for _, m := range s.members[s.moving:] {
				if e := m.at.y + m.stances[0].h + s.gap; e > y {
					next = min(next, e)
				}
			}
			if math.IsInf(next, 1) {
				return nil, 0, false
			}
			y = math.Ceil(next)
		}
	}
	length := 0.0
	for i := range s.members {
		if m := &s.members[i]; i < s.moving {
			length = max(length, places[i].at.y+m.stances[places[i].stance].h)
		} else if m.item >= 0 {
			length = max(length, m.at.y+m.stances[0].h)
		}
	}
	return places, length, true
}

func (s *strip) newRow(y float64) row {
	return row{from: y, to: y, free: [][2]float64{{float64(s.low), float64(s.width)}}}
}

// intoRow lays member i into the row, if there is room; a new row becomes as
// long as its first member.
func (s *strip) intoRow(r *row, i int, places []berth, flat, fresh bool) bool {
	m := &s.members[i]
	for t := range m.stances {
		st := &m.stances[t]
		y := st.gy.atOrAfter(r.from)
		if !fresh && y+st.h > r.to {
			continue
		}
		for _, f := range s.freeIn(r.free, y, y+st.h) {
			x, ok := s.along(st, f, m.onFold, flat)
			if !ok {
				continue
			}
			places[i] = berth{t, spot{x, y}}
			r.to = max(r.to, y+st.h)
			r.free = cutOut(r.free, x-s.gap, x+st.w+s.gap)
			return true
		}
	}
	return false
}

// along is where in a free stretch a stance lies.
func (s *strip) along(st *stance, f [2]float64, onFold, flat bool) (float64, bool) {
	lo, hi := max(f[0], st.xlo), min(f[1]-st.w, st.xhi)
	if onFold {
		return st.xlo, st.xlo >= f[0] && st.xlo+st.w <= f[1]
	}
	if !st.gx.has(lo, hi) {
		return 0, false
	}
	if flat || f[0] > float64(s.low) && f[1] >= float64(s.width) {
		return st.gx.fit(lo, lo, hi), true
	}
	return st.gx.fit(hi, lo, hi), true
}

// freeIn takes what is fixed between two levels out of the free stretches.
func (s *strip) freeIn(free [][2]float64, from, to float64) [][2]float64 {
	for i := s.moving; i < len(s.members); i++ {
		m := &s.members[i]
		gap := 0.0
		if m.item >= 0 {
			gap = s.gap
		}
		if m.at.y < to+gap && m.at.y+m.stances[0].h > from-gap {
			free = cutOut(free, m.at.x-gap, m.at.x+m.stances[0].w+gap)
		}
	}
	return free
}

func cutOut(free [][2]float64, from, to float64) [][2]float64 {
	var out [][2]float64
	for _, f := range free {
		if to <= f[0] || from >= f[1] {
			out = append(out, f)
			continue
		}
		if from > f[0] {
			out = append(out, [2]float64{f[0], from})
		}
		if to < f[1] {
			out = append(out, [2]float64{to, f[1]})
		}
	}
	return out
}

// frame brings places to box corners of the true outlines: all that a shelf
// lay needs to know.
func (s *strip) frame() {
	for i := range s.members {
		for k := range s.members[i].stances {
			s.members[i].stances[k].frame(s.members[i].stances[k].outline)
		}
	}
}
