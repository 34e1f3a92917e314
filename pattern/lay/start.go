package lay

import (
	"math"
	"sort"
)

const (
	startPlaces = 61  // tried across for each piece
	manyMembers = 150 // above so many, fewer places are tried
)

// startLay lays the largest piece first: at each of some places across it
// slides along until it is free, and the nearest end wins. Moving by the depth
// of the overlap never skips a free place. Upright, every piece lies at its
// first turn, as with nap. It gives the places and the length.
func (s *strip) startLay(upright bool) ([]berth, float64) {
	order := make([]int, s.moving)
	for i := range order {
		order[i] = i
	}
	sort.SliceStable(order, func(a, b int) bool {
		return s.members[order[a]].hull > s.members[order[b]].hull
	})
	across := startPlaces
	if s.moving > manyMembers {
		across = max(startPlaces*manyMembers/s.moving, 9)
	}
	places := make([]berth, s.moving)
	laid, length := s.fixedOnes()
	for _, i := range order {
		best, end := berth{}, math.Inf(1)
		m := &s.members[i]
		for t := range m.stances {
			st := &m.stances[t]
			if !st.gx.has(st.xlo, st.xhi) || upright && st.turn != m.stances[0].turn {
				continue
			}
			last := math.NaN()
			for k := range across {
				x := st.xlo + float64((st.xhi-st.xlo)*(float64(k)/float64(across-1)))
				if x = st.gx.fit(x, st.xlo, st.xhi); x == last {
					continue
				}
				last = x
				if y, ok := s.slide(i, st, x, end-st.down, places, laid); ok && y+st.down < end {
					best, end = berth{t, spot{x, y}}, y+st.down
				}
			}
		}
		places[i] = best
		laid = append(laid, i)
		length = max(length, end)
	}
	return places, length
}

// fixedOnes are the members that do not move, and the length that they take.
func (s *strip) fixedOnes() (laid []int, length float64) {
	for i := s.moving; i < len(s.members); i++ {
		laid = append(laid, i)
		if m := &s.members[i]; m.item >= 0 {
			length = max(length, m.at.y+m.stances[0].down)
		}
	}
	return laid, length
}

// slide moves member i along at x until nothing that is laid overlaps it; it
// gives up beyond most.
func (s *strip) slide(i int, st *stance, x, most float64, places []berth, laid []int) (float64, bool) {
	y := st.gy.atOrAfter(st.up)
	for {
		if y >= most {
			return 0, false
		}
		deep := 0.0
		for _, j := range laid {
			o := &s.members[j]
			so, at := &o.stances[0], o.at
			if !o.fixed {
				so, at = &o.stances[places[j].stance], places[j].at
			}
			gap := s.pairs[i*len(s.members)+j].gap
			if at.x >= x+st.w+gap || at.x+so.w+gap <= x || at.y >= y+st.h+gap || at.y+so.h+gap <= y {
				continue
			}
			deep = max(deep, s.depth(so.kind, st.kind, x-at.x, y-at.y, gap))
		}
		if deep <= 0 {
			return y, true
		}
		next := math.Ceil(y + max(deep, 1))
		if st.gy.step != 1 {
			next = st.gy.from + float64(math.Ceil((next-st.gy.from)/st.gy.step)*st.gy.step)
		}
		y = next
	}
}
