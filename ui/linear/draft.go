package linear

import (
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/text"
)

func (r *room) steps() []pattern.Step { return r.d.Sheet().Steps }

func (r *room) countDraft() int { return len(r.steps()) }

func (r *room) enterDraft() {
	steps := r.steps()
	if len(steps) == 0 {
		r.say(text.HearNotWhole)
		return
	}
	for _, m := range r.d.Sheet().Missing {
		r.say(text.HearWaitsFor, r.term(m.ID), r.d.Words.Pass(m.For))
	}
	r.step = max(1, min(r.step, len(steps)))
	r.tellStep()
}

// tellStep says the step in hand: what to do, the sum, why, the slip, and
// where the new marks lie.
func (r *room) tellStep() {
	s, u := r.steps()[r.step-1], r.d.Unit()
	r.hints, r.asked = 0, 0
	r.say(text.HearStep, s.Number, len(r.steps()), strings.ToLower(r.pieceName(s.Piece)), r.d.Words.Pass(s.Title))
	if !s.Drawn {
		r.say(text.HearWaits, strings.TrimSuffix(r.d.Words.Pass(s.Waits.In(u)), "."))
		r.refused()
		return
	}
	r.part(text.HearDo, s.Do)
	if sum := s.Sum.Sum(u); sum != "" {
		r.say(text.HearSum, r.d.Words.Pass(sum), u)
	}
	r.part(text.HearWhy, s.Why)
	r.part(text.HearSlip, s.Slip)
	r.tellMarks(s)
}

func (r *room) part(id text.ID, s measure.Sentence) {
	if words := s.In(r.d.Unit()); words != "" {
		r.say(id, sentence(r.d.Words.Pass(words)))
	}
}

// tellMarks says where the marks of a step lie, by tape.
func (r *room) tellMarks(s pattern.Step) {
	sheet := r.d.Sheet()
	for i := range sheet.Marks {
		m := &sheet.Marks[i]
		if m.Born == s.Number && m.Kind == pattern.MarkPoint && m.Piece == s.Piece {
			r.say(text.HearPoint, capital(r.point(m.Name)), r.at(m.Piece, m.At.X, m.At.Y))
		}
	}
}

func (r *room) pieceName(id pattern.PieceID) string {
	if p, ok := r.d.Sheet().Piece(id); ok {
		return r.d.Words.Pass(p.Title)
	}
	return r.d.Words.Pass(capital(spaced(string(id))))
}

// moveDraft goes on or back; with questions on, a step is asked about first
// where people go wrong in a way that is known.
func (r *room) moveDraft(by int) {
	if by > 0 && r.asked > 0 {
		r.step = r.asked
		r.tellStep()
		return
	}
	n := r.step + by
	if r.asking && by > 0 && n <= len(r.steps()) && r.askAbout(n) {
		return
	}
	r.end(n-1, len(r.steps()), "true", r.jumpDraft)
}

func (r *room) jumpDraft(n int) bool {
	r.step = n
	r.tellStep()
	return true
}

func (r *room) whyDraft() {
	if r.step == 0 {
		return
	}
	s := r.steps()[r.step-1]
	r.part(text.HearWhy, s.Why)
	if rule := s.Rule.In(r.d.Unit()); rule != "" {
		r.tell(sentence(capital(r.d.Words.Pass(rule))))
	}
	for _, id := range s.Assumed {
		r.say(text.HearAssumed, strings.ToLower(r.term(id)))
	}
}

func (r *room) listDraft() {
	u := r.d.Unit()
	for _, s := range r.steps() {
		title := r.d.Words.Pass(s.Title)
		switch {
		case !s.Drawn:
			r.say(text.HearStepWait, s.Number, title, strings.TrimSuffix(r.d.Words.Pass(s.Waits.In(u)), "."))
		case s.Number < r.step:
			r.say(text.HearStepDone, s.Number, title)
		case s.Number == r.step:
			r.say(text.HearStepHere, s.Number, title)
		default:
			r.say(text.HearStepToDo, s.Number, title)
		}
	}
}

// whereDraft says where the marks of the step lie, or a mark by its name.
func (r *room) whereDraft(name string) {
	if r.step == 0 {
		return
	}
	s := r.steps()[r.step-1]
	if name == "" {
		if before := len(r.said); s.Drawn {
			if r.tellMarks(s); len(r.said) > before {
				return
			}
		}
		r.say(text.HearNoMarks)
		return
	}
	sheet := r.d.Sheet()
	found := false
	for i := range sheet.Marks {
		m := &sheet.Marks[i]
		if m.Kind == pattern.MarkPoint && m.AliveAt(r.step) && fit(strings.Fields(name), []string{spaced(m.Name), r.point(m.Name)}) > 0 {
			found = true
			r.say(text.HearPoint, r.pieceName(m.Piece)+", "+r.point(m.Name), r.at(m.Piece, m.At.X, m.At.Y))
		}
	}
	if !found {
		r.say(text.HearNoMark, short(name))
	}
}
