package lay

import (
	"math"
	"sort"
	"sync"
	"sync/atomic"
)

// phase is what the search of a strip is doing.
type phase int8

const (
	shortening phase = iota // by steps that follow success and failure
	squeezing               // tiny steps, little effort
	swapping                // two large pieces change places
)

const (
	firstShorter = 0.02 // of the length
	leastShorter = 0.001
	quickSuccess = 100000 // evaluations
	bolder       = 1.3
	firstSqueeze = 0.0005
	leastSqueeze = 0.00002
	squeezeFalls = 0.5
	squeezeRound = 40
	strikesAtMin = 3
	// After a swap, many short tries find more than few long ones.
	strikesSwapped = 2
	roundsSwapped  = 120
	poolSize       = 20
)

// failed is a state that could not be parted.
type failed struct {
	places []berth
	cost   float64
}

// search shortens the lay of one strip, race by race. All of its state is
// changed between races only.
type search struct {
	s         *strip
	seed      uint64
	searchers int
	races     uint64
	places    []berth // the best lay, parted and checked
	length    float64
	used      int64 // evaluations charged
	phase     phase
	step      float64
	pool      []failed
	done      bool // no shorter lay can be
}

func newSearch(s *strip, seed uint64, searchers int) *search {
	h := &search{s: s, seed: seed, searchers: searchers, step: firstShorter}
	for _, upright := range []bool{false, true} {
		if upright && (!s.turns() || s.moving > manyMembers) {
			continue
		}
		places, length := s.startLay(upright)
		// The tables may have misjudged a touch.
		q := newSearcher(s, length, places, newRandom(seed))
		good := q.partWhole(1, roundsAStrike)
		if h.places == nil || good && length < h.length {
			h.places, h.length = q.places, length
		}
	}
	h.done = s.moving == 0 || h.length <= s.least()
	return h
}

// turns says whether any member may be turned.
func (s *strip) turns() bool {
	for i := range s.members[:s.moving] {
		if len(s.members[i].stances) > 1 {
			return true
		}
	}
	return false
}

// least is the length that no lay can be shorter than.
func (s *strip) least() float64 {
	longest := 0.0
	for _, m := range s.members[s.moving:] {
		if m.item >= 0 { // a pinned piece
			longest = max(longest, m.at.y+m.stances[0].down)
		}
	}
	for i := range s.members[:s.moving] {
		own := math.Inf(1)
		for k := range s.members[i].stances {
			st := &s.members[i].stances[k]
			own = min(own, st.gy.atOrAfter(st.up)+st.down)
		}
		longest = max(longest, own)
	}
	return max(longest, math.Ceil(s.area/float64(s.width-s.low)))
}

// plan is the length to try next, where to start from, and with what effort.
func (h *search) plan(rng *random) (length float64, from []berth, strikes, rounds int) {
	step := h.step
	strikes, rounds = 1, roundsAStrike
	switch h.phase {
	case squeezing:
		rounds = squeezeRound
	case swapping:
		step, strikes, rounds = leastShorter, strikesSwapped, roundsSwapped
	default:
		if h.step <= leastShorter {
			strikes = strikesAtMin
		}
	}
	length = min(math.Floor(h.length*(1-step)), h.length-1)
	length = max(length, h.s.least())
	from = append([]berth(nil), h.places...)
	// Close up at a random cut across the strip.
	cut := float64(rng.unit() * h.length)
	for i := range from {
		st := &h.s.members[i].stances[from[i].stance]
		if from[i].at.y+st.h/2 > cut {
			from[i].at.y -= h.length - length
		}
	}
	return length, from, strikes, rounds
}

// swapped draws a failed state, better ones more often, and exchanges two of
// its large pieces.
func (h *search) swapped(rng *random) []berth {
	from := append([]berth(nil), h.places...)
	if n := len(h.pool); n > 0 {
		u := rng.unit()
		from = append(from[:0], h.pool[int(float64(n)*float64(u*u))].places...)
	}
	large := make([]int, h.s.moving)
	for i := range large {
		large[i] = i
	}
	sort.SliceStable(large, func(a, b int) bool { return h.s.members[large[a]].hull > h.s.members[large[b]].hull })
	large = large[:max((len(large)+1)/2, min(len(large), 2))]
	if len(large) < 2 {
		return from
	}
	i, j := 0, 0
	for range 50 {
		i, j = large[rng.below(len(large))], large[rng.below(len(large))]
		if h.s.members[i].group != h.s.members[j].group {
			break
		}
	}
	if i == j {
		return from
	}
	a, b := &h.s.members[i].stances[from[i].stance], &h.s.members[j].stances[from[j].stance]
	mi := spot{from[i].at.x + a.w/2, from[i].at.y + a.h/2}
	mj := spot{from[j].at.x + b.w/2, from[j].at.y + b.h/2}
	from[i].at = spot{mj.x - a.w/2, mj.y - a.h/2}
	from[j].at = spot{mi.x - b.w/2, mi.y - b.h/2}
	return from
}

// outcome of a race.
type outcome int8

const (
	dropped outcome = iota // stopped, or beyond the allowance: nothing changed
	lost
	won
)

// race lets the searchers part the same start with different seeds, or, after
// a swap, each its own start. The one that needs the fewest evaluations wins,
// then the one with the lower number; so the result hangs on no clock and no
// number of cores.
func (h *search) race(allowed int64, stop func() bool) outcome {
	rng := newRandom(h.seed, h.races)
	length, from, strikes, rounds := h.plan(&rng)
	var best atomic.Int64 // fewest evaluations of a success
	var quit atomic.Bool
	limit := (allowed - h.used) / int64(h.searchers)
	best.Store(limit)
	runners := make([]*searcher, h.searchers)
	parted := make([]bool, h.searchers)
	var ask sync.Mutex
	run := func(k int) {
		own, start := newRandom(h.seed, h.races, uint64(k)+1), from
		if h.phase == swapping {
			start = h.swapped(&own) // each its own
		}
		q := newSearcher(h.s, length, start, own)
		runners[k] = q
		q.limit = limit
		q.halt = func() bool {
			if stop != nil && ask.TryLock() {
				if stop() {
					quit.Store(true)
				}
				ask.Unlock()
			}
			q.limit = best.Load()
			return quit.Load() || q.evals > q.limit
		}
		if parted[k] = q.partWhole(strikes, rounds); !parted[k] {
			return
		}
		for {
			was := best.Load()
			if q.evals >= was || best.CompareAndSwap(was, q.evals) {
				return
			}
		}
	}
	together(h.searchers, run)
	if quit.Load() {
		return dropped
	}
	return h.settle(runners, parted, length, limit)
}

// settle takes the winner's lay, or learns from the failure.
func (h *search) settle(runners []*searcher, parted []bool, length float64, limit int64) outcome {
	winner := -1
	for k, q := range runners {
		if parted[k] && q.evals <= limit && (winner < 0 || q.evals < runners[winner].evals) {
			winner = k
		}
	}
	if winner >= 0 {
		q := runners[winner]
		h.races++
		h.used += q.evals * int64(h.searchers)
		h.places, h.length = q.places, length
		h.succeed(q.evals)
		h.done = length <= h.s.least()
		return won
	}
	var sum int64
	good := 0
	for k, q := range runners {
		if q.evals > limit {
			return dropped
		}
		sum += q.evals
		if q.cost < runners[good].cost {
			good = k
		}
	}
	if sum > limit*int64(h.searchers) {
		return dropped
	}
	h.races++
	h.used += sum
	h.fail(failed{runners[good].best, runners[good].cost})
	return lost
}

// succeed chooses the next step after a success. What failed at a greater
// length says little of the new one.
func (h *search) succeed(evals int64) {
	if h.phase != squeezing {
		h.pool = h.pool[:0]
	}
	switch h.phase {
	case squeezing:
	case swapping:
		h.phase, h.step = shortening, leastShorter
	default:
		if evals < quickSuccess {
			h.step = min(h.step*bolder, firstShorter)
		}
	}
}

// fail chooses what to do after a failure.
func (h *search) fail(f failed) {
	switch h.phase {
	case squeezing:
		if h.step *= squeezeFalls; h.step < leastSqueeze {
			h.phase = swapping
		}
		return
	case shortening:
		if h.step > leastShorter {
			h.step = max(h.step/2, leastShorter)
			return
		}
		h.phase, h.step = squeezing, firstSqueeze
	}
	at := sort.Search(len(h.pool), func(i int) bool { return h.pool[i].cost > f.cost })
	h.pool = append(h.pool, failed{})
	copy(h.pool[at+1:], h.pool[at:])
	h.pool[at] = f
	if len(h.pool) > poolSize {
		h.pool = h.pool[:poolSize]
	}
}
