package stage

import (
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/lesson"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
	"chalkfold/ui/view"
)

// askFirst puts a question before each step from now on, or no more.
func (s *Draft) askFirst() desk.Ask {
	s.first = !s.first
	s.done = nil
	if !s.first {
		return desk.Ask{Say: s.d.Tell(text.DraftAskOff)}
	}
	return desk.Ask{Say: s.d.Tell(text.AskComes)}
}

// question asks about the step that was gone to, unless it was settled before
// or there is nothing to ask about it.
func (s *Draft) question() bool {
	st, ok := s.current()
	if !ok || !s.first || s.done[st.ID] {
		return false
	}
	s.hidden = s.put(func() (lesson.Question, bool) { return lesson.Ask(s.d.Sheet(), st.ID) }, func(cols int) []string { return s.title(st, cols) })
	return s.hidden
}

// AskDo does an action at a question; once it is settled the step is shown.
func (s *Draft) AskDo(id keys.ID) desk.Ask {
	switch {
	case id == "question-back" && s.try.open:
		s.tryDo("nudge-up")
		return desk.Ask{}
	case id == "question-back" && !s.OnPage():
		s.GoTo(max(s.at()-1, 1))
		return desk.Ask{}
	}
	ask := s.bench.AskDo(id)
	if !s.ask.open {
		s.shownNow(&ask)
	}
	return ask
}

// shownNow shows the step whose question is settled.
func (s *Draft) shownNow(ask *desk.Ask) {
	if !s.hidden {
		return
	}
	s.hidden = false
	if st, ok := s.current(); ok {
		if s.done == nil {
			s.done = map[string]bool{}
		}
		s.done[st.ID] = true
	}
	if s.OnPage() {
		return
	}
	s.heard = nil
	if s.ask.right {
		s.heard = s.ask.said
		ask.Say = s.marked()
	} else {
		ask.Say = s.d.Tell(text.AskSkipped)
	}
}

// AskType is a key at a question. What if goes on beside it.
func (s *Draft) AskType(k desk.Key) desk.Ask {
	if s.try.open {
		if id, ok := tryKeys[k.Name]; ok {
			s.tryDo(id)
			return desk.Ask{Say: s.trySays()}
		}
	}
	return s.bench.AskType(k)
}

// tryKeys move what if while a question has the other keys.
var tryKeys = map[string]keys.ID{"up": "field-up", "down": "field-down", "pgdown": "nudge-down"}

// whatIf begins at the measure that the step rests on.
func (s *Draft) whatIf() desk.Ask {
	st, _ := s.current()
	return s.tryOpen(st.From...)
}

// trySide is the piece to show alone: the back for its own measures, else the
// one that is drawn.
func (s *Draft) trySide(st pattern.Step) pattern.PieceID {
	switch measure.ID(s.try.ids[s.try.at]) {
	case measure.AcrossBack, measure.BackNeckToWaist:
		return pattern.Back
	case measure.AcrossFront, measure.SideNeckToWaist, measure.SideNeckToBustPoint, measure.BustPointDistance:
		return pattern.Front
	}
	if st.Piece == pattern.Back {
		return pattern.Back
	}
	return pattern.Front
}

// compared says where two methods part.
func (s *Draft) compared(old *pattern.Sheet, method string, label, cols int) []string {
	d := s.d
	out := labelled(d, "", label, cols, d.Tell(text.LessonCompare, methodWords(d, method), methodWords(d, d.Drafted().Style.Method())), theme.Muted)
	for _, l := range view.Differences(old, d.Sheet(), d.Unit(), 6) {
		out = append(out, labelled(d, "", label, cols, d.Trade(capital(l))+".", theme.Text)...)
	}
	return out
}

// Word is the trade word nearest to where she looks: a mark under the
// cross-hair, else the first of the step, or of the last step that has one.
func (s *Draft) Word() string {
	steps := s.d.Sheet().Steps
	if s.OnPage() || s.eye.Hair || s.hidden || len(steps) == 0 {
		return s.bench.Word()
	}
	for i := s.at() - 1; i >= 0; i-- {
		st, in := &steps[i], func(x measure.Sentence) string { return x.In(measure.In) }
		if w := wordOf(st.Title, in(st.Do), in(st.Why), in(st.Slip), in(st.Rule), name(strings.Join(st.Marks, " "))); w != "" {
			return w
		}
	}
	return s.bench.Word()
}

// Changed are the steps that the last change made other than they were, by id.
func Changed(d *desk.Desk) map[string]bool {
	before, _, ok := d.Before()
	if !ok {
		return nil
	}
	return view.Changed(d.SheetOf(before), d.Sheet(), d.Unit())
}

// blankOf is the table before the first step; where a place is asked for it
// has its marks all the same, for the cross-hair to move on.
func (s *Draft) blankOf(sheet *pattern.Sheet) *pattern.Sheet {
	if s.ask.point {
		return sheet
	}
	if s.blank == nil {
		s.blank = &pattern.Sheet{}
	}
	return s.blank
}
