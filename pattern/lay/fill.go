package lay

import (
	"math"
	"sort"
)

// mostFilled is how many members are laid by filling; of more, rows do.
const mostFilled = 120

// fillings are the orders in which pieces are laid by filling: what makes a
// piece come first, and whether pieces of the double part keep to the fold.
var fillings = []struct {
	first  func(st *stance) float64
	toFold bool
}{
	{func(st *stance) float64 { return st.h }, false},
	{func(st *stance) float64 { return st.h }, true},
	{func(st *stance) float64 { return st.w * st.h }, false},
	{func(st *stance) float64 { return st.w * st.h }, true},
	{func(st *stance) float64 { return st.w }, false},
	{func(st *stance) float64 { return st.w + st.h }, false},
}

// boxed is a box that is taken, with the room that it wants around it.
type boxed struct{ x0, y0, x1, y1 float64 }

// filled lays the members one after the other, each as near to the cut end as
// there is room for its box: so small pieces come to lie one below the other
// beside large ones, as a cutter puts facings into the gaps. Of several orders
// the shortest lay is given.
func (s *strip) filled(flat bool) (best []berth, length float64, ok bool) {
	if s.moving > mostFilled {
		return nil, 0, false
	}
	for _, f := range fillings {
		places, end, done := s.fill(f.first, flat || f.toFold)
		if done && (!ok || end < length) {
			best, length, ok = places, end, true
		}
	}
	return best, length, ok
}

func (s *strip) fill(first func(*stance) float64, near bool) ([]berth, float64, bool) {
	order := make([]int, s.moving)
	size := make([]float64, s.moving)
	for i := range order {
		order[i], size[i] = i, math.Inf(1)
		for k := range s.members[i].stances {
			size[i] = min(size[i], first(&s.members[i].stances[k]))
		}
	}
	sort.SliceStable(order, func(a, b int) bool { return size[order[a]] > size[order[b]] })
	var taken []boxed
	length := 0.0
	for i := s.moving; i < len(s.members); i++ {
		m := &s.members[i]
		gap := 0.0
		if m.item >= 0 {
			gap = s.gap
			length = max(length, m.at.y+m.stances[0].h)
		}
		taken = append(taken, boxed{m.at.x - gap, m.at.y - gap, m.at.x + m.stances[0].w + gap, m.at.y + m.stances[0].h + gap})
	}
	places := make([]berth, s.moving)
	for _, i := range order {
		b, end, ok := s.nearest(i, taken, near)
		if !ok {
			return nil, 0, false
		}
		st := &s.members[i].stances[b.stance]
		places[i] = b
		taken = append(taken, boxed{b.at.x - s.gap, b.at.y - s.gap, b.at.x + st.w + s.gap, end + s.gap})
		length = max(length, end)
	}
	return places, length, true
}

// nearest is the place of a member that ends nearest to the cut end.
func (s *strip) nearest(i int, taken []boxed, near bool) (best berth, end float64, ok bool) {
	m := &s.members[i]
	starts := []float64{0}
	for _, t := range taken {
		if t.y1 > 0 && !math.IsInf(t.y1, 1) {
			starts = append(starts, t.y1)
		}
	}
	sort.Float64s(starts)
	for t := range m.stances {
		st := &m.stances[t]
		for _, start := range starts {
			y := st.gy.atOrAfter(math.Ceil(start))
			if ok && y+st.h >= end {
				break
			}
			free := [][2]float64{{float64(s.low), float64(s.width)}}
			for _, b := range taken {
				if b.y0 < y+st.h && b.y1 > y {
					free = cutOut(free, b.x0, b.x1)
				}
			}
			found := false
			for k := range free {
				if !near { // from the far side
					k = len(free) - 1 - k
				}
				if x, fits := s.along(st, free[k], m.onFold, near); fits {
					best, end, ok, found = berth{t, spot{x, y}}, y+st.h, true, true
					break
				}
			}
			if found {
				break
			}
		}
	}
	return best, end, ok
}
