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

// sliceCounts are the counts after which a search shows what it has. A search of a
// count begins anew each time, so that a count alone gives the same lay again:
// they grow, and all together take less than twice the last.
var sliceCounts = []int64{100_000, 300_000, 1_000_000, usualSearch, 10_000_000, 30_000_000, longSearch}

// foundLay is what a slice of a search found.
type foundLay struct {
	lay     lay.Lay
	count   int64
	stop    *atomic.Bool // of the search it belongs to
	stopped bool
}

// search looks for a shorter lay, a slice at a time.
func (s *Lay) search(until int64) desk.Ask {
	s.until = until
	if s.stop != nil {
		return desk.Ask{}
	}
	s.stop = new(atomic.Bool)
	return s.slice()
}

// slice is the next part of the search.
func (s *Lay) slice() desk.Ask {
	count := int64(longSearch)
	for _, n := range sliceCounts {
		if n > s.reached {
			count = n
			break
		}
	}
	p, stop, version := s.shown.Problem, s.stop, s.version
	return desk.Ask{For: s.d.Tell(text.LaySearch), Run: func() desk.Answer {
		l, err := lay.Solve(p, lay.Options{Evaluations: count, Stop: stop.Load})
		return desk.Answer{Version: version, What: "search", Err: err, Value: foundLay{l, count, stop, stop.Load()}}
	}}
}

// found takes what a slice found and goes on.
func (s *Lay) found(f foundLay) desk.Ask {
	if s.stop != f.stop || f.stop == nil {
		return desk.Ask{} // of a search that was stopped before
	}
	if f.lay.Length < s.best.Length || s.origin == fromShelf && f.lay.Length == s.best.Length {
		s.take(f.lay, fromSearch)
	}
	if f.stopped {
		s.stop = nil
		return desk.Ask{}
	}
	s.reached = f.count
	if s.reached < s.until {
		return s.slice()
	}
	s.stop = nil
	return desk.Ask{Say: s.d.Tell(text.LayDone, s.d.Unit().Say(stepsLong(s.best.Length)), s.reached)}
}

// halt stops the search that runs, if one does.
func (s *Lay) halt() {
	if s.stop != nil {
		s.stop.Store(true)
		s.stop = nil
	}
}

// stopped stops it at her wish; the best so far stays.
func (s *Lay) stopped() desk.Ask {
	if s.stop == nil {
		return desk.Ask{Say: s.d.Tell(text.LayNothing)}
	}
	s.halt()
	return desk.Ask{Say: s.d.Tell(text.LayStopped, s.d.Unit().Say(stepsLong(s.best.Length)))}
}

func stepsLong(steps int64) measure.Length { return measure.Length(float64(steps) / lay.PerMM) }

func onTable(p lay.Point) geom.Point {
	return geom.Point{X: float64(p.X) / lay.PerMM, Y: float64(p.Y) / lay.PerMM}
}
