package lay

import (
	"math"
	"sort"
	"sync"
)

// Options say how long to search. Evaluations of the cost are the clock: the
// same problem, seed and count give the same lay everywhere.
type Options struct {
	Evaluations int64 // allowed; 0: the first lay is all
	Searchers   int   // of each race; 0: two
	Seed        uint64
	From        []Placed    // a lay of the same pieces to go on from, if it is of use
	Stop        func() bool // asked now and then: whether to stop after this race
	Progress    func(Lay)   // each better lay, checked; places go to the tape only at the end
}

const (
	usualSearchers = 2
	trialEvals     = 200000 // for each of several plans
	trialPlans     = 4
)

// Solve lays the pieces: the first lay at once, then better ones as long as
// the evaluations last. Every lay that it gives has passed [Verify].
func Solve(p Problem, o Options) (Lay, error) {
	s, err := Begin(p, o)
	if err != nil {
		return Lay{}, err
	}
	return s.Until(o.Evaluations, o.Stop)
}

// Searching is a search that can be gone on with.
type Searching struct {
	r    *run
	work sync.Mutex
}

// Begin makes the tables and the first lay; nothing is searched for yet.
func Begin(p Problem, o Options) (*Searching, error) {
	r, err := newRun(p, o)
	if err != nil {
		return nil, err
	}
	r.first()
	return &Searching{r: r}, nil
}

// Until searches until so many evaluations are used in all, or until it is told
// to stop; then it can be gone on with, as if there had been no pause. The lay
// is that of [Solve] with the same count.
func (s *Searching) Until(evaluations int64, stop func() bool) (Lay, error) {
	s.work.Lock()
	defer s.work.Unlock()
	r := s.r
	r.o.Evaluations, r.o.Stop = evaluations, stop
	if evaluations > r.used && r.p.Pieces() <= mostSearched && len(r.plans) > 0 {
		r.improve()
	}
	return r.finish()
}

// run is the work of one search.
type run struct {
	p      Problem
	o      Options
	b      *builder
	plans  []*planned
	best   Lay
	winner *planned // whose lay is the best; nil: the shelf lay
	used   int64
	trial  int   // plans that had their trial
	until  int64 // the count at which the trial of the next ends; 0: it has not begun
}

// planned is a plan with the search of each of its strips.
type planned struct {
	plan
	searches []*search
	turn     int
	known    bool // goes on from a lay that was found before
}

func newRun(p Problem, o Options) (*run, error) {
	if err := p.Check(); err != nil {
		return nil, err
	}
	if err := p.checkPins(); err != nil {
		return nil, err
	}
	if o.Searchers <= 0 {
		o.Searchers = usualSearchers
	}
	r := &run{p: p, o: o}
	r.b = newBuilder(&r.p)
	plans, err := r.b.plans()
	if err != nil {
		return nil, err
	}
	for i := range plans {
		for _, s := range plans[i].parts {
			s.ready()
		}
	}
	if len(r.b.kinds.base) > mostOutlines {
		return r, nil // the tables would be too large
	}
	r.b.kinds.build(float64(p.Cloth.Gap) + reachSteps)
	for i := range plans {
		pl := &planned{plan: plans[i]}
		for k, s := range pl.parts {
			s.couple()
			pl.searches = append(pl.searches, newSearch(s, o.Seed*16+uint64(k), o.Searchers))
		}
		pl.goOnFrom(o.From)
		r.plans = append(r.plans, pl)
	}
	return r, nil
}

// length is the length of the whole lay; the opened part begins a gap beyond
// the folded one, where a repeat, or a step of the tape, begins.
func (pl *planned) length(c *Cloth) (folded, whole int64) {
	folded = int64(math.Ceil(pl.searches[0].length))
	switch {
	case !pl.opened && c.Fold == Across:
		folded = c.onTapeAtLeast(folded)
		return folded, 2 * folded
	case !pl.opened:
		return folded, folded
	}
	folded = c.openedAt(folded + c.Gap)
	whole = folded + int64(math.Ceil(pl.searches[1].length))
	if c.Fold == Across { // it lies double so far
		whole += folded
	}
	return folded, whole
}

func (c Cloth) openedAt(folded int64) int64 {
	for _, step := range []int64{c.Tape, c.RepeatAlong} {
		if step > 0 {
			folded = (folded + step - 1) / step * step
		}
	}
	return folded
}

// first lays every plan once and keeps the shortest.
func (r *run) first() {
	sort.SliceStable(r.plans, func(a, b int) bool {
		_, la := r.plans[a].length(&r.p.Cloth)
		_, lb := r.plans[b].length(&r.p.Cloth)
		return la < lb
	})
	for _, pl := range r.plans {
		r.take(pl)
	}
	if s := shelf(&r.p, r.b); s.Length > 0 && (r.best.Length == 0 || s.Length < r.best.Length) && len(Verify(r.p, s)) == 0 {
		r.best, r.winner = s, nil
	}
	r.best.First = r.winner == nil || !r.winner.known
	r.tell()
}

// take makes a lay of the plan's searches and keeps it if it is the best and
// passes the check.
func (r *run) take(pl *planned) bool {
	_, whole := pl.length(&r.p.Cloth)
	if r.best.Length > 0 && whole >= r.best.Length {
		return false
	}
	l := r.p.lay(pl)
	if len(Verify(r.p, l)) > 0 {
		return false
	}
	r.best, r.winner = l, pl
	return true
}

func (r *run) tell() {
	r.best.Evaluations = r.used
	if r.o.Progress != nil && r.best.Length > 0 {
		r.o.Progress(r.best)
	}
}

// improve runs races: a trial for each of the best plans, then all for the
// shortest.
func (r *run) improve() {
	plans := r.plans[:min(len(r.plans), trialPlans)]
	if len(plans) > 1 {
		if !r.tryOut(plans) {
			return
		}
	}
	for !plans[0].done() {
		if r.o.Stop != nil && r.o.Stop() {
			return
		}
		if !r.race(plans[0]) {
			return
		}
	}
}

// tryOut gives each plan its trial and puts the shortest first; false: it was
// stopped before.
func (r *run) tryOut(plans []*planned) bool {
	if r.trial == len(plans) {
		return true
	}
	for ; r.trial < len(plans); r.trial++ {
		if r.until == 0 {
			r.until = r.used + trialEvals
		}
		for r.used < r.until && !plans[r.trial].done() {
			if !r.race(plans[r.trial]) {
				return false
			}
		}
		r.until = 0
	}
	sort.SliceStable(plans, func(a, b int) bool {
		_, la := plans[a].length(&r.p.Cloth)
		_, lb := plans[b].length(&r.p.Cloth)
		return la < lb
	})
	return true
}

func (pl *planned) done() bool {
	for _, h := range pl.searches {
		if !h.done {
			return false
		}
	}
	return true
}

// race runs one race of the plan's next strip; false: it was dropped.
func (r *run) race(pl *planned) bool {
	h := pl.searches[pl.turn%len(pl.searches)]
	if h.done {
		pl.turn++
		return true
	}
	before := h.used
	out := h.race(r.o.Evaluations-r.used+h.used, r.o.Stop)
	if out == dropped {
		return false
	}
	pl.turn++
	r.used += h.used - before
	if out == won && r.take(pl) {
		r.tell()
	}
	return true
}

// finish sets the best lay to the tape, if the cloth asks for it.
func (r *run) finish() (Lay, error) {
	if r.best.Length == 0 {
		return Lay{}, r.p.nothingFits()
	}
	r.best.Evaluations = r.used
	if r.p.Cloth.Tape > 0 {
		return snapped(r), nil
	}
	return r.best, nil
}
