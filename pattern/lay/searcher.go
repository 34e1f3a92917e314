package lay

import (
	"math"
	"math/bits"
)

// lying is the box of a member where it lies, and its kind.
type lying struct {
	x, y, w, h float64
	kind       int
}

// searcher moves the members of one strip at one length until none overlap.
// It counts every cost that it computes; that count is the clock.
type searcher struct {
	s         *strip
	length    float64
	places    []berth
	boxes     []lying
	weights   []float64
	near      *register
	rng       random
	evals     int64
	limit     int64       // stop beyond
	halt      func() bool // asked now and then whether another has won
	asked     int64       // evaluations at the last question
	best      []berth     // of least plain cost in this parting
	cost      float64     // its plain cost
	couplings []coupling  // as the strip has them, with more room where needed
	pairs     []overlap   // of the present state
	order     []int
}

type overlap struct {
	i, j int
	cost float64
}

func newSearcher(s *strip, length float64, places []berth, rng random) *searcher {
	n := len(s.members)
	q := &searcher{
		s: s, length: length, rng: rng, limit: math.MaxInt64,
		places:    append([]berth(nil), places...),
		boxes:     make([]lying, n),
		couplings: s.pairs, weights: make([]float64, n*n),
		near: newRegister(n, float64(s.low), float64(s.width-s.low), length),
	}
	for i := range q.weights {
		q.weights[i] = 1
	}
	for i := range s.members {
		m := &s.members[i]
		if m.fixed {
			q.set(i, &m.stances[0], m.at)
			continue
		}
		st := &m.stances[q.places[i].stance]
		for k := 0; k < len(m.stances) && !st.fits(length); k++ {
			q.places[i].stance, st = k, &m.stances[k]
		}
		q.places[i].at = st.clamp(q.places[i].at, length)
		q.set(i, st, q.places[i].at)
	}
	return q
}

func (q *searcher) set(i int, st *stance, at spot) {
	q.boxes[i] = lying{at.x, at.y, st.w, st.h, st.kind}
	q.near.put(i, at.x, at.y, st.w, st.h)
}

// move carries a member to a new place.
func (q *searcher) move(i int, p berth) {
	q.near.take(i)
	q.places[i] = p
	q.set(i, &q.s.members[i].stances[p.stance], p.at)
}

// costAt is the weighted cost of member i at a place; it may stop summing once
// the cost reaches most.
func (q *searcher) costAt(i int, st *stance, at spot, most float64) float64 {
	q.evals++
	n := len(q.boxes)
	x0, y0 := at.x-q.s.gap, at.y-q.s.gap
	x1, y1 := at.x+st.w+q.s.gap, at.y+st.h+q.s.gap
	span := q.near.span(x0, y0, x1-x0, y1-y0)
	words := q.near.words
	bx := q.near.begins[0][int(span[1])*words:][:words]
	ex := q.near.ends[0][int(span[0])*words:][:words]
	by := q.near.begins[1][int(span[3])*words:][:words]
	ey := q.near.ends[1][int(span[2])*words:][:words]
	table := q.s.kinds.pairs
	couplings, weights := q.couplings[i*n:][:n], q.weights[i*n:][:n]
	kinds := len(q.s.kinds.all)
	sum := 0.0
	for word := range words {
		m := bx[word] & ex[word] & by[word] & ey[word]
		if i>>6 == word {
			m &^= 1 << (i & 63)
		}
		for ; m != 0; m &= m - 1 {
			j := word<<6 + bits.TrailingZeros64(m)
			o := &q.boxes[j]
			if o.x >= x1 || o.y >= y1 || o.x+o.w <= x0 || o.y+o.h <= y0 {
				continue
			}
			p := &table[o.kind*kinds+st.kind]
			d := p.region.depth(float64(p.sx*(at.x-o.x))+p.ox, float64(p.sy*(at.y-o.y))+p.oy)
			if d == clearOf {
				continue
			}
			c := &couplings[j]
			if d += c.gap; d <= 0 {
				continue
			}
			sum += float64(weights[j] * float64(c.size*(d+float64(partedBonus*c.size))))
			if sum >= most {
				return sum
			}
		}
	}
	return sum
}

// overlaps lists all overlapping pairs with their plain costs.
func (q *searcher) overlaps() float64 {
	q.pairs = q.pairs[:0]
	total := 0.0
	n := len(q.boxes)
	for i := range q.s.moving {
		q.evals++
		for j := i + 1; j < n; j++ {
			c := &q.couplings[i*n+j]
			a, b := &q.boxes[i], &q.boxes[j]
			dx, dy := b.x-a.x, b.y-a.y
			if dx >= a.w+c.gap || dy >= a.h+c.gap || -dx >= b.w+c.gap || -dy >= b.h+c.gap {
				continue
			}
			if d := q.s.depth(a.kind, b.kind, dx, dy, c.gap); d > 0 {
				cost := float64(c.size * (d + float64(partedBonus*c.size)))
				q.pairs = append(q.pairs, overlap{i, j, cost})
				total += cost
			}
		}
	}
	return total
}

const (
	nearSamples = 10
	farSamples  = 20
	descents    = 3
	firstStep   = 0.25 // of the smaller box side
	coarseStep  = 0.02
	fineStep    = 0.001
	stepGrows   = 1.1
	stepShrinks = 0.5
	nearSpread  = 0.4 // of the box side
)

type candidate struct {
	p    berth
	cost float64
}

// relocate finds member i a better place: samples near and anywhere, the best
// of which then descend.
func (q *searcher) relocate(i int) {
	m := &q.s.members[i]
	var best [descents]candidate
	for k := range best {
		best[k].cost = math.Inf(1)
	}
	keep := func(p berth) bool {
		c := q.costAt(i, &m.stances[p.stance], p.at, best[descents-1].cost)
		k := descents - 1
		if c >= best[k].cost {
			return false
		}
		for ; k > 0 && c < best[k-1].cost; k-- {
			best[k] = best[k-1]
		}
		best[k] = candidate{p, c}
		return c == 0
	}
	here := q.places[i]
	now := &m.stances[here.stance]
	mid := spot{here.at.x + now.w/2, here.at.y + now.h/2}
	found := keep(here)
	for k := 0; k < nearSamples+farSamples && !found; k++ {
		t := 0
		if len(m.stances) > 1 {
			t = q.rng.below(len(m.stances))
		}
		st := &m.stances[t]
		if !st.fits(q.length) {
			continue
		}
		var at spot
		if k < nearSamples {
			at.x = mid.x - st.w/2 + float64((q.rng.unit()-0.5)*nearSpread*st.w)
			at.y = mid.y - st.h/2 + float64((q.rng.unit()-0.5)*nearSpread*st.h)
		} else {
			at.x = st.xlo + float64(q.rng.unit()*(st.xhi-st.xlo))
			at.y = float64(q.rng.unit() * (q.length - st.h))
		}
		found = keep(berth{t, st.clamp(at, q.length)})
	}
	if !found {
		for k := range best {
			if !math.IsInf(best[k].cost, 1) {
				q.descend(i, &best[k], firstStep, coarseStep)
			}
		}
		for k := 1; k < descents; k++ {
			if best[k].cost < best[0].cost {
				best[0] = best[k]
			}
		}
		q.descend(i, &best[0], coarseStep, fineStep)
	}
	if best[0].p != here {
		q.move(i, best[0].p)
	}
}

// descend walks downhill: a step each way on a random axis.
func (q *searcher) descend(i int, c *candidate, from, to float64) {
	st := &q.s.members[i].stances[c.p.stance]
	small := min(st.w, st.h)
	step, last := from*small, to*small
	axes := 4
	if st.xhi <= st.xlo {
		axes = 1
	}
	for step > last && c.cost > 0 {
		var d spot
		switch q.rng.below(axes) {
		case 0:
			d.y = step
		case 1:
			d.x = step
		case 2:
			d = spot{step * math.Sqrt2 / 2, step * math.Sqrt2 / 2}
		default:
			d = spot{step * math.Sqrt2 / 2, -step * math.Sqrt2 / 2}
		}
		better := false
		at := c.p.at
		for _, p := range [2]spot{st.clamp(at.plus(d), q.length), st.clamp(at.minus(d), q.length)} {
			if p == at {
				continue
			}
			if cost := q.costAt(i, st, p, c.cost); cost < c.cost {
				c.p.at, c.cost, better = p, cost, true
			}
		}
		if better {
			step *= stepGrows
		} else {
			step *= stepShrinks
		}
	}
}
