package lay

const (
	roundsAStrike = 200
	gainWanted    = 0.98
	heavier       = 1.2 // weights of colliding pairs grow by this
	heavierStill  = 0.8 // and this at the worst pair
	lighter       = 0.95
)

// askEvery is how often, in evaluations, a searcher looks up from its work.
const askEvery = 10000

// part moves members until none overlap. It gives up after so many strikes of
// so many rounds without a gain, or when told to halt.
func (q *searcher) part(strikes, rounds int) bool {
	q.best = append(q.best[:0], q.places...)
	q.cost = q.overlaps()
	if q.cost == 0 {
		return true
	}
	mark, idle, strike := q.cost, 0, 0
	for {
		q.round()
		if q.stopped() {
			return false
		}
		total := q.overlaps()
		if total < q.cost {
			q.cost = total
			q.best = append(q.best[:0], q.places...)
		}
		if total == 0 {
			return true
		}
		q.reweigh()
		if q.cost < float64(gainWanted*mark) {
			mark, idle = q.cost, 0
			continue
		}
		if idle++; idle < rounds {
			continue
		}
		if strike++; strike >= strikes {
			return false
		}
		idle, mark = 0, q.cost
		q.restore()
	}
}

// round moves every colliding member once, in random order.
func (q *searcher) round() {
	q.order = q.order[:0]
	hit := make([]bool, len(q.boxes))
	for _, p := range q.pairs {
		hit[p.i], hit[p.j] = true, true
	}
	for i := range q.s.moving {
		if hit[i] {
			q.order = append(q.order, i)
		}
	}
	q.rng.shuffle(q.order)
	for _, i := range q.order {
		st := &q.s.members[i].stances[q.places[i].stance]
		if q.costAt(i, st, q.places[i].at, 1e-300) == 0 {
			continue
		}
		q.relocate(i)
		if q.stopped() {
			return
		}
	}
}

// stopped says whether to look no further.
func (q *searcher) stopped() bool {
	if q.evals > q.limit {
		return true
	}
	if q.halt == nil || q.evals-q.asked < askEvery {
		return false
	}
	q.asked = q.evals
	return q.halt()
}

// reweigh makes pairs that stay together heavier and lets the others forget.
func (q *searcher) reweigh() {
	n := len(q.boxes)
	for i, w := range q.weights {
		if w > 1 {
			q.weights[i] = max(1, w*lighter)
		}
	}
	worst := 0.0
	for _, p := range q.pairs {
		worst = max(worst, p.cost)
	}
	for _, p := range q.pairs {
		k := (heavier + float64(heavierStill*(p.cost/worst))) / lighter
		w := q.weights[p.i*n+p.j] * k
		q.weights[p.i*n+p.j], q.weights[p.j*n+p.i] = w, w
	}
}

// restore goes back to the state of least plain cost; weights are kept.
func (q *searcher) restore() {
	for i, p := range q.best {
		if q.places[i] != p {
			q.move(i, p)
		}
	}
	q.overlaps()
}
