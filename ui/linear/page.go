package linear

import (
	"strconv"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/lesson"
	"chalkfold/ui/outlet"
	"chalkfold/ui/text"
)

// page is the page of a lesson in hand.
type page struct {
	asks   bool // its question is open
	hints  int
	spoilt *pattern.Sheet // of a fault on purpose
	try    *trying        // of what if, while its question is open
}

// toPage goes to the stage that a page belongs to and tells the page.
func (r *room) toPage() {
	_, _, p, ok := r.sitting()
	if !ok {
		return
	}
	r.page = page{}
	r.stage, r.asked, r.hints = r.stageOf(p.Show), 0, 0
	switch p.Show.What {
	case lesson.OfMeasurement:
		r.id = measure.ID(p.Show.ID)
	case lesson.OfChoice:
		r.choice = pattern.ChoiceID(p.Show.ID)
	case lesson.OfStep:
		for i, s := range r.steps() {
			if s.ID == p.Show.ID {
				r.step = i + 1
			}
		}
	case lesson.OfFault:
		if f, ok := lesson.FindFault(p.Show.ID); ok {
			r.page.spoilt, _ = f.Of(r.d.Sheet())
		}
	case lesson.OfCheck:
		r.finding = 0
		for i, f := range r.told() {
			if f.Check == p.Show.ID {
				r.finding = i
				break
			}
		}
	case lesson.OfWhatIf, lesson.OfCompare, lesson.OfOutput, lesson.OfNotes, lesson.OfTurn:
	}
	_, r.page.asks = p.Question(r.d.Sheet())
	r.tellPage("", false)
}

// stageOf is the stage whose words are understood on a page.
func (r *room) stageOf(s lesson.Show) desk.StageID {
	switch s.What {
	case lesson.OfMeasurement:
		return desk.Measure
	case lesson.OfChoice:
		return desk.Style
	case lesson.OfCheck, lesson.OfFault:
		return desk.True
	case lesson.OfOutput:
		if s.ID == "lay" {
			return desk.Lay
		}
		return desk.Cut
	case lesson.OfStep, lesson.OfWhatIf, lesson.OfCompare, lesson.OfNotes, lesson.OfTurn:
	}
	return desk.Draft
}

// tellPage says the page: which it is, its words, the word that is new, then
// its question or what it shows. say alone tells what there is to look at.
func (r *room) tellPage(rest string, again bool) {
	l, number, p, ok := r.sitting()
	if !ok {
		return
	}
	if rest != "" {
		r.sayDraft(rest)
		return
	}
	if again && p.Show.What == lesson.OfCompare {
		r.sayMethods(p.Show.ID)
		return
	}
	at, count := r.d.Running().Page, len(l.Pages)
	if l.Method != "" {
		by := text.CompareMeasured
		if l.Method == pattern.Thumb {
			by = text.CompareThumb
		}
		r.say(text.HearPageBy, number, r.d.Words.Pass(l.Title), at, count, r.d.Words.Say(by))
	} else {
		r.say(text.HearPage, number, r.d.Words.Pass(l.Title), at, count)
	}
	r.tell(r.d.Words.Pass(p.Words.In(r.d.Unit())))
	if w, ok := text.Explain(p.Word); ok && p.Word != "" {
		r.say(text.HearNewWord, r.d.Words.Pass(w.Name), r.d.Words.Pass(w.Says))
	}
	if q, ok := p.Question(r.d.Sheet()); ok && r.page.asks {
		r.tellAround(p, q)
		r.tellQuestion(q)
		return
	}
	r.page.asks = false
	if l.Veils(at) {
		s := r.steps()[r.step-1]
		r.say(text.HearStep, s.Number, len(r.steps()), strings.ToLower(r.pieceName(s.Piece)), r.d.Words.Pass(s.Title))
		r.say(text.HearPageNext)
		return
	}
	r.tellShown(p)
}

// tellAround is what must be known to answer: which step it is, what the
// figures are, how a spoilt draft lies.
func (r *room) tellAround(p lesson.Page, q lesson.Question) {
	switch p.Show.What {
	case lesson.OfStep:
		s := r.steps()[r.step-1]
		r.say(text.HearStep, s.Number, len(r.steps()), strings.ToLower(r.pieceName(s.Piece)), r.d.Words.Pass(s.Title))
		if q.Kind == lesson.Sentence {
			r.part(text.HearDo, s.Do)
		}
		if q.Kind == lesson.Sentence && q.Step == "" {
			r.tellMarks(s) // a question of the page's own is about what lies there
		}
	case lesson.OfFault:
		if r.page.spoilt != nil {
			r.spoiltSays(r.d.Sheet(), r.page.spoilt)
		}
	case lesson.OfTurn:
		if len(p.OwnWords()) > 0 {
			r.tellTurn(p.Show.ID)
			return
		}
		r.sayTurn(lesson.TurnOf(r.d.Drafted(), "side", r.d.SheetOf))
	case lesson.OfCompare:
		r.say(text.HearPageFirst)
	case lesson.OfCheck:
		r.tellCheck(p.Show.ID)
	case lesson.OfWhatIf:
		r.page.try = &trying{ids: lesson.WhatIfs(r.d.Sheet()), id: p.Show.ID, job: r.d.Job()}
		r.say(text.HearWhatIs, lower(r.d.Words.Pass(r.called(p.Show.ID)[0])), r.d.Unit().Say(stands(r.d.Sheet(), p.Show.ID)))
		r.say(text.HearTryFirst)
	case lesson.OfMeasurement, lesson.OfChoice, lesson.OfOutput, lesson.OfNotes:
	}
}

// tellQuestion asks, with the answers to choose from.
func (r *room) tellQuestion(q lesson.Question) {
	u := r.d.Unit()
	r.tell(q.Prompt(r.d.Words, u))
	for i, o := range q.Pick {
		r.tell(strconv.Itoa(i+1) + ". " + r.d.Words.Pass(o.Says.In(u)))
	}
	switch q.Kind {
	case lesson.Sentence:
		r.say(text.HearPickHow, len(q.Pick))
	case lesson.Place:
		r.say(text.HearPlaceHow, u.Tape(9*measure.Inch), u.Tape(7*measure.Inch))
	case lesson.Any, lesson.Number:
		r.say(text.HearAskHow)
	}
}

// tellShown tells what the page shows.
func (r *room) tellShown(p lesson.Page) {
	switch p.Show.What {
	case lesson.OfStep:
		if len(r.steps()) > 0 {
			r.tellStep()
		}
	case lesson.OfMeasurement:
		r.id = measure.ID(p.Show.ID)
		r.tellMeasure()
	case lesson.OfChoice:
		r.tellChoice()
	case lesson.OfCheck:
		r.tellCheck(p.Show.ID)
	case lesson.OfWhatIf:
		r.tryOn(p.Show.ID)
	case lesson.OfCompare:
		r.sayMethods(p.Show.ID)
	case lesson.OfTurn:
		r.tellTurn(p.Show.ID)
		r.keepTurn(p.Show.ID)
	case lesson.OfFault:
		if f, ok := lesson.FindFault(p.Show.ID); ok && r.page.spoilt != nil {
			r.tellFault(f, r.page.spoilt)
		}
	case lesson.OfOutput:
		if p.Show.ID == "lay" {
			r.sayLay("")
			r.say(text.HearLayHow)
			r.say(text.HearLayMore)
			return
		}
		r.tellFormat(p.Show.ID)
	case lesson.OfNotes:
		r.askNotes()
	}
}

// tellTurn tells the dart in a place and in the side; sayTurn in a place alone.
func (r *room) tellTurn(place string) {
	t := lesson.TurnOf(r.d.Drafted(), place, r.d.SheetOf)
	if !t.Drawn {
		for _, x := range t.Sheet.Refused {
			r.tell(sentence(capital(r.d.Words.Pass(x.Says.In(r.d.Unit())))))
		}
		return
	}
	r.sayTurn(t)
	if place != "side" {
		r.sayTurn(lesson.TurnOf(r.d.Drafted(), "side", r.d.SheetOf))
	}
}

func (r *room) sayTurn(t lesson.Turn) {
	u := r.d.Unit()
	r.say(text.TurnSays, r.d.Words.Pass(t.Title), u.Say(t.Wide), u.Say(t.Far), strconv.FormatFloat(t.Degrees, 'f', 1, 64))
}

// whyTurn tells why a dart lies there, and the rule of its width.
func (r *room) whyTurn(place string) {
	t := lesson.TurnOf(r.d.Drafted(), place, r.d.SheetOf)
	id := lesson.TurnStep
	if place == "side" {
		id = "front.dart_legs"
	}
	for i := range t.Sheet.Steps {
		if s := &t.Sheet.Steps[i]; s.ID == id {
			r.part(text.HearWhy, s.Why)
			if !s.Rule.IsEmpty() {
				r.tell(sentence(r.d.Words.Pass(s.Rule.In(r.d.Unit()))))
			}
		}
	}
}

// keepTurn keeps the dart where a page shows it, at the word keep.
func (r *room) keepTurn(place string) {
	t := lesson.TurnOf(r.d.Drafted(), place, r.d.SheetOf)
	if !t.Drawn {
		return
	}
	r.say(text.HearTurnHow)
	r.open = &question{prompt: "dart", hear: func(line string) bool {
		if !begins("keep", line) {
			return false
		}
		r.change(lesson.Turned(r.d.Job(), place), r.d.Words.Say(text.TurnKept, lower(r.d.Words.Pass(t.Title))))
		r.say(text.HearPageNext)
		return true
	}}
}

// tellCheck tells what a check finds.
func (r *room) tellCheck(id string) {
	none := true
	for _, f := range r.d.Sheet().Findings {
		if f.Check == id {
			none = false
			r.tellOne(f)
		}
	}
	if none {
		r.say(text.HearCheckNone)
	}
}

// tellFormat tells what is written on a page, and how.
func (r *room) tellFormat(id string) {
	there := false
	for _, f := range outlet.Offered(r.outlets()) {
		if f.ID == id {
			there = true
			r.say(text.HearFormat, f.ID, r.d.Words.Pass(f.Title), r.d.Words.Pass(f.Says))
		}
	}
	if !there {
		r.say(text.HearPageNot)
		return
	}
	r.say(text.HearPageWrite)
}

// askNotes takes words of her own for the notes of the client; a word of the
// vocabulary alone is that word.
func (r *room) askNotes() {
	r.say(text.HearNotesHow)
	r.open = &question{prompt: "notes", hear: func(line string) bool {
		if !strings.Contains(line, " ") && len(r.fitting(strings.ToLower(line))) > 0 {
			return false
		}
		job := r.d.Job()
		job.Client.Notes = strings.TrimSpace(job.Client.Notes + "\n" + line)
		r.change(job, r.d.Words.Say(text.AskWritten))
		r.say(text.HearPageNext)
		return true
	}}
}

// answerPage takes an answer: to the question, or to what the page shows.
func (r *room) answerPage(line string) {
	_, _, p, ok := r.sitting()
	if !ok {
		return
	}
	q, asked := p.Question(r.d.Sheet())
	switch {
	case asked && r.page.asks:
		r.judgePage(p, q, line)
	case p.Show.What == lesson.OfMeasurement:
		r.answerMeasure(line)
	case p.Show.What == lesson.OfChoice:
		r.answerStyle(line)
	case p.Show.What == lesson.OfOutput && p.Show.ID == "lay":
		r.clothWidth(line)
	default:
		r.say(text.LinearNumberOnly)
	}
}

// judgePage holds the answer against what is right and the known slips.
func (r *room) judgePage(p lesson.Page, q lesson.Question, line string) {
	u := r.d.Unit()
	v := q.Judge(line, u)
	if v.Outcome == lesson.Unread && v.Wrong != nil {
		r.warn(withoutPlace(v.Wrong))
		return
	}
	if p.Show.What == lesson.OfStep && q.Step != "" {
		v.Why = measure.Sentence{} // the step follows, and says it
	}
	if says := v.Say(r.d.Words, u); says != "" {
		r.tell(sentence(says))
	}
	switch {
	case v.Closed():
		r.page.asks = false
		r.pageDone()
		if p.OwnWords() == nil || p.Show.What == lesson.OfWhatIf {
			r.tellShown(p)
		}
		r.say(text.HearPageNext)
	case v.Outcome == lesson.Missed:
		r.hintPage()
	}
}

// hintPage helps in three steps at a question; elsewhere as the stage does.
func (r *room) hintPage() {
	_, _, p, ok := r.sitting()
	if !ok {
		return
	}
	q, asked := p.Question(r.d.Sheet())
	switch {
	case asked && r.page.asks:
		r.page.hints = min(r.page.hints+1, lesson.Hints)
		r.tell(sentence(q.Hint(r.page.hints, r.d.Words, r.d.Unit(), false)))
	case p.Show.What == lesson.OfStep:
		r.hintDraft()
	case p.Show.What == lesson.OfMeasurement:
		r.hintMeasure()
	default:
		r.say(text.HearPageNext)
	}
}

func (r *room) whyPage() {
	_, _, p, _ := r.sitting()
	switch p.Show.What {
	case lesson.OfStep:
		r.whyDraft()
	case lesson.OfMeasurement:
		r.whyMeasure()
	case lesson.OfChoice:
		r.whyStyle()
	case lesson.OfOutput:
		if p.Show.ID == "lay" {
			r.whyLay()
			return
		}
		r.say(text.LinearNothing, "why")
	case lesson.OfTurn:
		r.whyTurn(p.Show.ID)
	case lesson.OfCheck, lesson.OfWhatIf, lesson.OfCompare, lesson.OfFault, lesson.OfNotes:
		r.say(text.LinearNothing, "why")
	}
}

func (r *room) wherePage(name string) {
	_, _, p, _ := r.sitting()
	switch p.Show.What {
	case lesson.OfMeasurement:
		r.whereMeasure(name)
	case lesson.OfCheck:
		r.whereTrue(name)
	case lesson.OfStep, lesson.OfChoice, lesson.OfWhatIf, lesson.OfCompare, lesson.OfFault, lesson.OfOutput, lesson.OfNotes, lesson.OfTurn:
		if r.page.asks && p.Show.What == lesson.OfStep && name == "" {
			r.hintPage()
			return
		}
		if r.step == 0 {
			r.step = len(r.steps())
		}
		r.whereDraft(name)
	}
}

// listPage tells the lay where a page is about it, else the course.
func (r *room) listPage() {
	if _, _, p, _ := r.sitting(); p.Show.What == lesson.OfOutput && p.Show.ID == "lay" {
		r.listLay()
		return
	}
	r.listLessons()
}

func (r *room) namedPage(line string) bool {
	switch _, _, p, _ := r.sitting(); p.Show.What {
	case lesson.OfMeasurement:
		return !r.page.asks && r.namedMeasure(line)
	case lesson.OfChoice:
		return !r.page.asks && r.namedStyle(line)
	case lesson.OfStep, lesson.OfCheck, lesson.OfWhatIf, lesson.OfCompare, lesson.OfFault, lesson.OfOutput, lesson.OfNotes, lesson.OfTurn:
	}
	return false
}
