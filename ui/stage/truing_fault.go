package stage

import (
	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/lesson"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
)

// spoilt is a fault on purpose: a copy of the draft that was made faulty. The
// job is never touched.
type spoilt struct {
	fault lesson.Fault
	of    *pattern.Sheet // the sound one
	sheet *pattern.Sheet
	piece pattern.PieceID // where it can be seen
	told  bool            // what is found is shown
	was   int             // the finding in hand before
}

// sheet is the draft whose findings are listed: the spoilt one, or hers.
func (s *True) sheet() *pattern.Sheet {
	sound := s.d.Sheet()
	if s.bad.sheet == nil {
		return sound
	}
	if s.bad.of != sound {
		bad := s.bad
		s.spoil(bad.fault.ID)
		s.bad.told, s.bad.was = bad.told, bad.was
	}
	if s.bad.sheet == nil {
		return sound
	}
	return s.bad.sheet
}

func (s *True) spoilt() bool { return s.bad.sheet != nil }

// guessing says that the fault is shown and what truing finds is not.
func (s *True) guessing() bool { return s.spoilt() && !s.bad.told }

// spoil shows a fault on purpose. It says whether this draft has the part.
func (s *True) spoil(id string) bool {
	if s.spoilt() {
		s.sound()
	}
	sound := s.d.Sheet()
	f, ok := lesson.FindFault(id)
	if !ok {
		return false
	}
	sheet, ok := f.Of(sound)
	if !ok {
		return false
	}
	s.bad = spoilt{fault: f, of: sound, sheet: sheet, piece: pattern.Front, was: s.at}
	if x, found := f.Finding(sheet); found && x.Where.Piece != "" {
		s.bad.piece = x.Where.Piece
	}
	s.try = trying{}
	s.eye = s.eye.Fit()
	s.eye.Hair = false
	if s.ask.open {
		s.ask.title = s.faultHead
	}
	return true
}

// sound puts her own draft back.
func (s *True) sound() {
	if s.spoilt() {
		s.at = s.bad.was
	}
	s.bad, s.of = spoilt{}, nil
}

// Fault shows a fault on purpose, for the list of them.
func (s *True) Fault(id string) desk.Ask {
	if !s.spoil(id) {
		return desk.Ask{Say: s.d.Tell(text.FaultNothing), Warn: true}
	}
	return desk.Ask{Close: true, Go: desk.True}
}

// Spoilt says that the draft shown here is a fault on purpose.
func (s *True) Spoilt() bool { return s.spoilt() }

func (s *True) faultOffers() []desk.Offer {
	there := offer("go-there")
	if s.guessing() {
		there.Title = s.d.Tell(text.FaultReveal)
	}
	back := desk.Offer{ID: keys.Back, Title: s.d.Tell(text.FaultSound)}
	try := desk.Offer{ID: "try-cure", WhyNot: s.d.Tell(text.FaultNoCure), Quiet: true}
	what := desk.Offer{ID: "true-what-if", WhyNot: s.d.Tell(text.FaultNoCure), Quiet: true}
	out := []desk.Offer{there, back}
	if !s.guessing() {
		out = append(out, offer("finding-down"), quiet("finding-up"))
	}
	return append(append(out, try, what), s.tableOffers()...)
}

// faultDo does an action while a fault is shown; false: it is as always.
func (s *True) faultDo(id keys.ID) (desk.Ask, bool) {
	switch id {
	case "try-cure", "true-what-if":
		return desk.Ask{Say: capital(s.d.Tell(text.FaultNoCure)) + "."}, true
	case keys.Back:
		s.sound()
		s.refresh()
		return desk.Ask{Say: s.d.Tell(text.FaultShown)}, true
	case "go-there", "zoom-newest":
		if s.guessing() {
			s.reveal()
			return desk.Ask{}, true
		}
	case "finding-up", "finding-down":
		return desk.Ask{}, s.guessing()
	}
	return desk.Ask{}, false
}

// reveal shows what truing finds, with the fault's own finding in hand.
func (s *True) reveal() {
	s.bad.told = true
	s.refresh()
	want, ok := s.bad.fault.Finding(s.bad.sheet)
	for i, r := range s.rows {
		if f := s.bad.sheet.Findings[r]; ok && f.Check == want.Check && f.Verdict == want.Verdict && f.Where == want.Where {
			s.at = i
			return
		}
	}
}

// AskDo does an action at a question; a settled one shows what is found.
func (s *True) AskDo(id keys.ID) desk.Ask {
	ask := s.bench.AskDo(id)
	if !s.ask.open && s.guessing() {
		s.reveal()
	}
	return ask
}

// faultHead marks plainly what is shown.
func (s *True) faultHead(cols int) []string {
	d := s.d
	return []string{desk.Clip(" "+d.Paint(theme.Selected, " "+d.Tell(text.FaultHead)+" ")+"   "+d.Paint(theme.Title, d.Trade(s.bad.fault.Title)), cols)}
}

// faultSays is what was done to the draft, for the reveal.
func (s *True) faultSays(cols int) []string {
	return desk.Wrap(s.d.Tell(text.FaultDone, s.d.Trade(s.bad.fault.Says.In(s.d.Unit()))), cols)
}

// guessWords ask for the check that will find it.
func (s *True) guessWords(cols, rows int) ([]string, string) {
	d := s.d
	head := s.faultHead(cols)
	out := append([]string{""}, head...)
	if rows < 8 {
		out = head
	}
	out = append(out, "")
	for _, l := range desk.Wrap(d.Tell(text.FaultGuess), cols-2) {
		out = append(out, " "+l)
	}
	if q, ok := s.bad.fault.Question(); ok {
		for _, o := range q.Pick {
			out = append(out, desk.Clip("   "+d.Trade(o.Says.In(d.Unit())), cols))
		}
	}
	return out, head[0]
}

// tryOffer is what if, where there is anything to move.
func (s *True) tryOffer() desk.Offer {
	o := offer("true-what-if")
	if len(s.d.Sheet().Figures) == 0 {
		o.WhyNot = s.d.Tell(text.WhatIfNothing, waits(s.d, s.d.Sheet()))
	}
	return o
}

// whatIf begins at the measure or choice that the finding names.
func (s *True) whatIf() desk.Ask {
	f, _ := s.finding()
	return s.tryOpen(f.Input)
}
