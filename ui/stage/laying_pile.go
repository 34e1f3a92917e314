package stage

import (
	"reflect"
	"sync/atomic"

	"chalkfold/pattern"
	"chalkfold/pattern/laid"
	"chalkfold/pattern/lay"
	"chalkfold/ui/desk"
	"chalkfold/ui/text"
	"chalkfold/ui/view"
)

// pile is the work on one cloth.
type pile struct {
	known   bool
	version int // of the job that the rest is for
	work    laid.Shown
	begun   lay.Problem     // as it was shown at first
	kept    pattern.KeptLay // in the session then
	trouble error           // why nothing can be laid; nil with an empty best: nothing to lay yet
	best    lay.Lay
	origin  origin
	search  *lay.Searching // of this problem; nil: none was begun
	offset  int64          // evaluations that the lay had where the search began
	reached int64          // evaluations that the best of this problem had
	until   int64
	stop    *atomic.Bool // of the search that runs; nil: none
	late    *atomic.Bool // of one that she stopped and that still brings what it has
	asked   *atomic.Bool // stops the widths or the remnant that are worked out; nil: none
	held    piece        // the piece in hand
	aside   aside
	drawn   *view.Laid // of best and held; nil: to be made
}

// renew takes the job as it is now. What was worked out for another one is
// dropped and its search stopped; where pieces and cloth are as they were, it
// stays.
func (s *Lay) renew() {
	if s.known && s.version == s.d.Version() {
		return
	}
	s.halt()
	sheet := s.d.Sheet()
	s.names = nil
	if sheet.Complete && len(sheet.Pieces) > 0 {
		s.names = laid.Names(sheet)
	}
	if s.nameAt(s.cloth) < 0 {
		s.cloth = laid.Main
		if len(s.names) > 0 {
			s.cloth = s.names[0]
		}
	}
	s.pile = s.again(s.pile, s.cloth)
}

// nameAt is where a cloth stands among those of the pieces, -1: nowhere.
func (s *Lay) nameAt(name string) int {
	for i, n := range s.names {
		if n == name {
			return i
		}
	}
	return -1
}

// again is the pile of a cloth for the job as it is now.
func (s *Lay) again(was pile, name string) pile {
	now := pile{known: true, version: s.d.Version()}
	sheet := s.d.Sheet()
	if len(s.names) == 0 {
		return now
	}
	now.work, now.trouble = laid.Show(sheet, name)
	if now.trouble != nil {
		return now
	}
	now.begun, now.best = now.work.Problem, now.work.Lay
	now.kept, _ = s.d.Job().Lay(name)
	if now.work.Kept {
		now.origin, now.reached = fromSession, now.best.Evaluations
	}
	if len(was.work.Problem.Items) == len(now.work.Problem.Items) {
		now.held = was.held
	}
	samePieces := was.known && was.trouble == nil && reflect.DeepEqual(was.begun.Items, now.begun.Items) && reflect.DeepEqual(was.begun.Cloth, now.begun.Cloth)
	switch {
	case !samePieces:
	case reflect.DeepEqual(was.kept, now.kept):
		// Nothing of this cloth has changed.
		was.version, was.work.Sheets, was.work.Cloth, was.work.Named = now.version, now.work.Sheets, now.work.Cloth, now.work.Named
		return was
	case now.work.Kept && reflect.DeepEqual(was.work.Problem.Pins, now.work.Problem.Pins):
		now.aside = was.aside
		if now.best.Length == was.best.Length { // she has just kept it: the search goes on where it was
			now.search, now.offset, now.reached = was.search, was.offset, was.reached
		}
	}
	return now
}

// otherCloth shows the next cloth that pieces are cut from.
func (s *Lay) otherCloth(by int) desk.Ask {
	if why := s.cannotOther(); why != "" {
		return desk.Ask{Say: why}
	}
	s.halt()
	n := len(s.names)
	name := s.names[((s.nameAt(s.cloth)+by)%n+n)%n]
	if s.others == nil {
		s.others = map[string]pile{}
	}
	s.others[s.cloth] = s.pile
	s.pile, s.cloth = s.others[name], name
	if !s.known || s.version != s.d.Version() {
		s.pile = s.again(s.pile, name)
	}
	s.drawn = nil
	ask := s.Begin()
	ask.Say = s.d.Tell(text.LayNowOn, s.d.Plain(name))
	ask.For = ""
	return ask
}

func (s *Lay) cannotOther() string {
	if len(s.names) < 2 {
		return s.d.Tell(text.LayOneCloth)
	}
	return ""
}
