package lay

import (
	"math"
	"slices"
)

// roomTries is how often a parted lay is parted again because the exact test
// found pairs that the tables had taken for clear.
const roomTries = 20

// roomSteps is what such a pair is then kept apart.
const roomSteps = 2

// partWhole parts the members so that the exact test agrees. Places are whole
// steps already; where the tables misjudge a touch, that pair gets two steps of
// room and all is parted again.
func (q *searcher) partWhole(strikes, rounds int) bool {
	for range roomTries {
		if !q.part(strikes, rounds) {
			return false
		}
		bad := q.clashing()
		if len(bad) == 0 {
			return true
		}
		q.couplings = slices.Clone(q.couplings)
		n := len(q.boxes)
		for _, b := range bad {
			q.couplings[b[0]*n+b[1]].gap += roomSteps
			q.couplings[b[1]*n+b[0]].gap += roomSteps
		}
	}
	return false
}

// clashing lists the pairs that the exact test does not pass.
func (q *searcher) clashing() [][2]int {
	var out [][2]int
	n := len(q.boxes)
	laid := make([][]Point, n)
	whole := func(i int) []Point {
		if laid[i] == nil {
			st := &q.s.members[i].stances[0]
			at := q.s.members[i].at
			if i < q.s.moving {
				st, at = &q.s.members[i].stances[q.places[i].stance], q.places[i].at
			}
			laid[i] = moved(st.outline, st.offset(at))
		}
		return laid[i]
	}
	for i := range q.s.moving {
		for j := i + 1; j < n; j++ {
			gap := q.s.pairs[i*n+j].gap + touch
			a, b := &q.boxes[i], &q.boxes[j]
			dx, dy := b.x-a.x, b.y-a.y
			if dx > a.w+gap || dy > a.h+gap || -dx > b.w+gap || -dy > b.h+gap {
				continue
			}
			if !apart(whole(i), whole(j), int64(math.Round(gap))) {
				out = append(out, [2]int{i, j})
			}
		}
	}
	return out
}
