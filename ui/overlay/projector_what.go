package overlay

import (
	"slices"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/lesson"
	"chalkfold/ui/text"
	"chalkfold/ui/view"
)

// whatIf is one measure changed before the class, until it is kept or put back.
type whatIf struct {
	ids   []string
	at    int
	moved measure.Length
	job   pattern.Job
	says  measure.Sentence
}

// begin opens "what if" with the first measure, or closes it again.
func (p *Projector) begin() {
	if p.what != nil {
		p.what = nil
		return
	}
	ids := lesson.WhatIfs(p.d.Sheet())
	if len(ids) == 0 {
		p.note = p.d.Tell(text.ProjectorNone)
		return
	}
	p.what = &whatIf{ids: ids, job: p.d.Job()}
	if _, page, ok := p.sits(); ok && page.Show.What == lesson.OfWhatIf {
		p.what.at = max(slices.Index(ids, page.Show.ID), 0)
	}
}

// move is a key while "what if" is on.
func (p *Projector) move(key string) desk.Ask {
	w, u := p.what, p.d.Unit()
	by := func(l measure.Length) {
		w.moved += l
		w.job, w.says = p.d.Job(), measure.Sentence{}
		if w.moved != 0 {
			w.job, w.says = lesson.WhatIf(p.d.Job(), w.ids[w.at], w.moved)
		}
	}
	switch key {
	case "left", "right":
		n := len(w.ids)
		w.at = (w.at + map[string]int{"left": n - 1, "right": 1}[key]) % n
		w.moved, w.job, w.says = 0, p.d.Job(), measure.Sentence{}
	case "up":
		by(lesson.Nudge(u, false))
	case "down":
		by(-lesson.Nudge(u, false))
	case "pgup":
		by(lesson.Nudge(u, true))
	case "pgdown":
		by(-lesson.Nudge(u, true))
	case "enter":
		p.what = nil
		if w.says.IsEmpty() {
			return desk.Ask{}
		}
		job := w.job
		return desk.Ask{Job: &job, Says: p.d.Words.Pass(w.says.In(u))}
	case "esc":
		p.what = nil
		p.note = p.d.Tell(text.WhatIfPutBack)
	}
	return desk.Ask{}
}

// measureOf is the name of what is changed.
func (p *Projector) measureOf(id string) string {
	if m, ok := measure.Find(measure.ID(id)); ok {
		return capital(p.d.Trade(m.Term))
	}
	for _, c := range p.d.Choices() {
		if string(c.ID) == id {
			return p.d.Trade(c.Title)
		}
	}
	return plainID(id)
}

// told is what is changed and what moves by it: her own figure only where it
// may be seen.
func (w *whatIf) told(p *Projector) (title string, moves string) {
	d := p.d
	name := p.measureOf(w.ids[w.at])
	_, hers := measure.Find(measure.ID(w.ids[w.at]))
	switch {
	case w.moved == 0:
		title = d.Tell(text.WhatIfTitle) + ": " + name
	case d.Private && hers:
		sign := "+"
		if w.moved < 0 {
			sign = "-"
		}
		title = name + " " + sign + d.Unit().Tape(max(w.moved, -w.moved))
	default:
		title = d.Trade(w.says.In(d.Unit()))
	}
	diff := view.Differences(d.Sheet(), d.SheetOf(w.job), d.Unit(), 3)
	if len(diff) == 0 {
		return title, d.Tell(text.ProjectorWhat)
	}
	return title, capital(d.Trade(strings.Join(diff, ", "))) + "."
}
