package lay

import "math"

const (
	mostTucked = 60 // members; of more, none is tucked in
	tucks      = 10 // pieces that are tried, one after the other
	tuckAcross = 16 // places across that are tried
	tuckAlong  = 24 // and along
	tuckReach  = 300 * PerMM
)

// tuck carries the piece that reaches the end of a lay of boxes to where it ends
// sooner, into the hollows of others; then the one that now reaches the end. It
// gives the length that is left.
func (s *strip) tuck(places []berth, length float64) float64 {
	if s.moving > mostTucked {
		return length
	}
	for range tucks {
		last, end, next := -1, 0.0, 0.0
		for i := range s.members {
			m := &s.members[i]
			var e float64
			switch {
			case i < s.moving:
				e = places[i].at.y + m.stances[places[i].stance].h
			case m.item >= 0:
				e = m.at.y + m.stances[0].h
			}
			if e > end {
				last, end, next = i, e, end
			} else {
				next = max(next, e)
			}
		}
		if last < 0 || last >= s.moving {
			return end
		}
		length = end
		b, ok := s.sooner(last, places)
		if !ok {
			return length
		}
		places[last] = b
		length = max(next, b.at.y+s.members[last].stances[b.stance].h)
	}
	return length
}

// sooner is a place of a member that ends sooner than its own, clear of all
// others by their true outlines, or by those that hold them.
func (s *strip) sooner(i int, places []berth) (berth, bool) {
	m := &s.members[i]
	now := places[i]
	end := now.at.y + m.stances[now.stance].h
	for k := range tuckAlong {
		for t := range m.stances {
			st := &m.stances[t]
			y := st.gy.atOrAfter(math.Ceil(max(end-st.h-tuckReach+float64(k)*(tuckReach/tuckAlong), 0)))
			if y+st.h >= end {
				continue
			}
			last := math.NaN()
			for c := range tuckAcross {
				x := st.gx.fit(st.xlo+float64((st.xhi-st.xlo)*(float64(c)/(tuckAcross-1))), st.xlo, st.xhi)
				if x == last {
					break // as on the fold
				}
				if last = x; st.gx.has(x, x) && x >= st.xlo && x <= st.xhi && s.clear(i, st, spot{x, y}, places) {
					return berth{t, spot{x, y}}, true
				}
			}
		}
	}
	return berth{}, false
}

// clear says whether a member overlaps no other at a place.
func (s *strip) clear(i int, st *stance, at spot, places []berth) bool {
	var own []Point
	for j := range s.members {
		if j == i {
			continue
		}
		o := &s.members[j]
		so, there := &o.stances[0], o.at
		if j < s.moving {
			so, there = &o.stances[places[j].stance], places[j].at
		}
		gap := s.gap
		if o.fixed && o.item < 0 {
			gap = 0
		}
		if at.x >= there.x+so.w+gap || at.y >= there.y+so.h+gap || at.x+st.w+gap <= there.x || at.y+st.h+gap <= there.y {
			continue
		}
		if own == nil {
			own = moved(st.simple, st.offset(at))
		}
		if !apart(own, moved(so.simple, so.offset(there)), int64(gap)) {
			return false
		}
	}
	return true
}
