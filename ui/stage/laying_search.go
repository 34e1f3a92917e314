package stage

import (
	"sync/atomic"

	"chalkfold/measure"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/lay"
	"chalkfold/ui/desk"
	"chalkfold/ui/text"
)

// How long is searched: by itself on coming here, and when she asks for more.
const (
	usualSearch = 3_000_000
	longSearch  = 100_000_000
)

// firstSlices are the counts after which a search shows what it has at first;
// later it does so after each million.
var firstSlices = []int64{100_000, 300_000}

const laterSlice = 1_000_000

// foundLay is what a slice of a search found.
type foundLay struct {
	lay     lay.Lay
	search  *lay.Searching
	count   int64
	stop    *atomic.Bool // of the search it belongs to
	stopped bool
}

// lookOn looks for a shorter lay, a slice at a time.
func (s *Lay) lookOn(until int64) desk.Ask {
	s.until = until
	if s.stop != nil {
		return desk.Ask{}
	}
	s.stop = new(atomic.Bool)
	return s.slice()
}

// slice is the next part of the search. It goes on where the last one ended, or
// from the lay in hand: by a count alone the same lay is found again.
func (s *Lay) slice() desk.Ask {
	done := s.reached - s.offset
	if s.search == nil {
		done, s.offset = 0, 0
		if s.origin != fromShelf {
			s.offset = s.reached
		}
	}
	count := done - done%laterSlice + laterSlice
	for _, n := range firstSlices {
		if n > done {
			count = n
			break
		}
	}
	count = max(min(count, s.until-s.offset), 1)
	p, stop, version, search, from := s.work.Problem, s.stop, s.version, s.search, s.best.Placed
	if s.origin == fromShelf {
		from = nil
	}
	total := count + s.offset
	return desk.Ask{For: s.d.Tell(text.LaySearch), Run: func() desk.Answer {
		var err error
		if search == nil {
			search, err = lay.Begin(p, lay.Options{From: from})
		}
		var l lay.Lay
		if err == nil {
			l, err = search.Until(count, stop.Load)
		}
		return desk.Answer{Version: version, What: "search", Err: err, Value: foundLay{l, search, total, stop, stop.Load()}}
	}}
}

// found takes what a slice found and goes on.
func (s *Lay) found(f foundLay) desk.Ask {
	if f.stop == nil || f.stop != s.stop && f.stop != s.late {
		return desk.Ask{} // of a search that was stopped before
	}
	s.search = f.search
	if f.lay.Length < s.best.Length || s.origin == fromShelf && f.lay.Length == s.best.Length {
		f.lay.Evaluations += s.offset
		s.take(f.lay, fromSearch)
	}
	if f.stopped {
		late := f.stop == s.late
		s.stop, s.late = nil, nil
		if late {
			return desk.Ask{Say: s.d.Tell(text.LayStopped, s.d.Unit().Say(stepsLong(s.best.Length)))}
		}
		return desk.Ask{}
	}
	s.reached = f.count
	if s.reached < s.until {
		return s.slice()
	}
	s.stop = nil
	return desk.Ask{Say: s.d.Tell(text.LayDone, s.d.Unit().Say(stepsLong(s.best.Length)), text.Count(s.reached))}
}

// busy says that something is searched for that Esc stops.
func (s *Lay) busy() bool { return s.stop != nil || s.asked != nil }

// halt stops what runs, if anything does.
func (s *Lay) halt() {
	if s.stop != nil {
		s.stop.Store(true)
		s.stop = nil
	}
	s.late = nil
	if s.asked != nil {
		s.asked.Store(true)
		s.asked = nil
	}
}

// stopped stops it at her wish. The best so far stays, also what the search has
// in hand at this moment; widths and remnants answer by what they have.
func (s *Lay) stopped() desk.Ask {
	switch {
	case s.asked != nil:
		s.asked.Store(true)
		return desk.Ask{Say: s.d.Tell(text.LayStopping)}
	case s.stop == nil:
		return desk.Ask{Say: s.d.Tell(text.LayNothing)}
	}
	s.stop.Store(true)
	s.stop, s.late = nil, s.stop
	return desk.Ask{Say: s.d.Tell(text.LayStopped, s.d.Unit().Say(stepsLong(s.best.Length)))}
}

// anew forgets the search: the pins are others now.
func (s *Lay) anew() { s.search, s.reached = nil, 0 }

func stepsLong(steps int64) measure.Length { return measure.Length(float64(steps) / lay.PerMM) }

func onTable(p lay.Point) geom.Point {
	return geom.Point{X: float64(p.X) / lay.PerMM, Y: float64(p.Y) / lay.PerMM}
}
