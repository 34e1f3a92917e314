package linear

import (
	"strings"

	"chalkfold/measure"
	"chalkfold/ui/text"
)

// asked are the measurements that are asked for: those of the draft.
func (r *room) needs() []measure.ID { return r.d.Needs() }

func (r *room) term(id measure.ID) string {
	if m, ok := measure.Find(id); ok {
		return capital(r.d.Words.Pass(m.Term))
	}
	return capital(spaced(string(id)))
}

func (r *room) countMeasure() int { return len(r.needs()) }

func (r *room) enterMeasure() {
	taken := 0
	for _, id := range r.needs() {
		if r.d.Job().Body.Has(id) {
			taken++
		}
	}
	r.say(text.HearTaken, taken, len(r.needs()))
	r.nextMissing()
}

// nextMissing asks for the next measurement that is not taken, from the one in
// hand on.
func (r *room) nextMissing() {
	if r.d.Running().On() {
		r.say(text.HearPageNext)
		return
	}
	needs := r.needs()
	from := 0
	for i, id := range needs {
		if id == r.id {
			from = i
		}
	}
	for i := range needs {
		id := needs[(from+i)%len(needs)]
		if !r.d.Job().Body.Has(id) {
			r.id = id
			r.tellMeasure()
			return
		}
	}
	r.id = ""
	r.say(text.HearAll)
}

// tellMeasure asks for the measurement in hand.
func (r *room) tellMeasure() {
	u := r.d.Unit()
	m, ok := measure.Find(r.id)
	if !ok {
		r.say(text.HearAll)
		return
	}
	l, taken := r.d.Job().Body.Get(r.id)
	if taken {
		r.say(text.HearHas, r.term(r.id), u.Say(l))
		r.doubt()
		return
	}
	r.say(text.HearAsk, r.term(r.id), r.unitName(u))
	r.tell(sentence(r.d.Words.Pass(m.How)))
	if m.Slip != "" {
		r.say(text.MeasureSlip, sentence(r.d.Words.Pass(m.Slip)))
	}
	if p, ok := measure.Propose(r.d.Job().Body, r.id); ok {
		r.say(text.HearProposed, u.Say(p.Value))
	}
}

// answerMeasure takes a number for the measurement in hand.
func (r *room) answerMeasure(line string) {
	if r.id == "" {
		r.say(text.LinearNumberOnly)
		return
	}
	reading, err := measure.ReadAll(line, r.d.Unit())
	if err == nil {
		err = measure.Check(r.id, reading.Length)
	}
	if err != nil {
		r.warn(err)
		return
	}
	r.tell(sentence(reading.Echo))
	r.setMeasure(reading.Length)
}

// setMeasure writes it down, says what is doubted, and asks for the next.
func (r *room) setMeasure(l measure.Length) {
	u := r.d.Unit()
	old, had := r.d.Job().Body.Get(r.id)
	says := r.d.Words.Say(text.MeasureSet, r.term(r.id), u.Say(l))
	if had {
		says = r.d.Words.Say(text.MeasureChanged, r.term(r.id), u.Tape(old), u.Say(l))
	}
	if !r.change(r.d.Job().WithBody(r.id, l), says) && had {
		return
	}
	if r.doubt() {
		return
	}
	r.nextMissing()
}

// doubted is the doubt about the measurement in hand that she has not answered.
func (r *room) doubted() (measure.Doubt, bool) {
	job := r.d.Job()
	for _, x := range measure.Doubts(job.Body) {
		l, _ := job.Body.Get(x.ID)
		kept, confirmed := job.Confirmed.Get(x.ID)
		if x.ID == r.id && !(confirmed && kept == l) {
			return x, true
		}
	}
	return measure.Doubt{}, false
}

// doubt says it, if there is one, and what can be done. Only a strong one asks
// for an answer.
func (r *room) doubt() bool {
	x, ok := r.doubted()
	if !ok {
		return false
	}
	u := r.d.Unit()
	r.tell(r.d.Words.Pass(x.Says.In(u)))
	switch {
	case !x.Strong:
		return false
	case x.HasOther:
		r.say(text.HearDoubtKeep, u.Say(x.InOther))
	default:
		r.say(text.HearDoubtOnly)
	}
	return true
}

func (r *room) keepDoubted(string) {
	l, taken := r.d.Job().Body.Get(r.id)
	if _, ok := r.doubted(); !ok || !taken {
		r.say(text.HearNoDoubt)
		return
	}
	r.change(r.d.Job().Confirm(r.id, l), r.d.Words.Say(text.HearKept, r.term(r.id), r.d.Unit().Say(l)))
	r.nextMissing()
}

func (r *room) takeOther(string) {
	x, ok := r.doubted()
	if !ok || !x.HasOther {
		r.say(text.HearNoDoubt)
		return
	}
	r.setMeasure(x.InOther)
}

func (r *room) takeProposal(string) {
	p, ok := measure.Propose(r.d.Job().Body, r.id)
	if !ok || r.d.Job().Body.Has(r.id) {
		r.say(text.HearNoTake)
		return
	}
	r.setMeasure(p.Value)
}

func (r *room) remove(string) {
	l, taken := r.d.Job().Body.Get(r.id)
	if !taken {
		r.say(text.HearNotTaken, r.term(r.id))
		return
	}
	r.change(r.d.Job().WithoutBody(r.id), r.d.Words.Say(text.MeasureTookOut, r.term(r.id), r.d.Unit().Say(l)))
}

func (r *room) nameClient(rest string) {
	if rest == "" {
		r.say(text.HearName)
		return
	}
	job := r.d.Job()
	job.Client.Name = strings.TrimSpace(rest)
	r.change(job, r.d.Words.Say(text.HearNamed, job.Client.Name))
}

func (r *room) moveMeasure(by int) {
	needs := r.needs()
	at := -1
	for i, id := range needs {
		if id == r.id {
			at = i
		}
	}
	if at < 0 && by < 0 {
		at = len(needs)
	}
	r.end(at+by, len(needs), "style", r.jumpMeasure)
}

// end goes to place n, counted from 0, or says that there is none.
func (r *room) end(n, count int, onward string, jump func(int) bool) {
	switch {
	case n < 0:
		r.say(text.LinearNone)
	case n >= count:
		r.say(text.LinearNoMore, capital(onward))
	default:
		jump(n + 1)
	}
}

func (r *room) jumpMeasure(n int) bool {
	r.id = r.needs()[n-1]
	r.tellMeasure()
	return true
}

func (r *room) whyMeasure() {
	m, ok := measure.Find(r.id)
	if !ok {
		r.say(text.HearAll)
		return
	}
	for _, x := range r.d.Sheet().Missing {
		if x.ID == r.id {
			r.say(text.HearNeeded, r.d.Words.Pass(x.For))
			return
		}
	}
	r.tell(sentence(capital(r.d.Words.Pass(m.Plain))))
	r.say(text.HearUsed)
}

func (r *room) hintMeasure() {
	m, ok := measure.Find(r.id)
	if !ok {
		r.say(text.HearAll)
		return
	}
	r.tell(sentence(r.d.Words.Pass(m.How)))
	if m.Slip != "" {
		r.say(text.MeasureSlip, sentence(r.d.Words.Pass(m.Slip)))
	}
}

func (r *room) whereMeasure(string) {
	m, ok := measure.Find(r.id)
	if !ok {
		r.say(text.HearAll)
		return
	}
	r.say(text.HearFrom, strings.TrimSuffix(r.d.Words.Pass(m.Landmarks), "."))
}

func (r *room) listMeasure() {
	u := r.d.Unit()
	for _, id := range r.needs() {
		l, taken := r.d.Job().Body.Get(id)
		p, likely := measure.Propose(r.d.Job().Body, id)
		switch {
		case taken:
			r.say(text.HearSet, r.term(id), u.Say(l))
		case likely:
			r.say(text.HearLikely, r.term(id), u.Say(p.Value))
		default:
			r.say(text.HearUnset, r.term(id))
		}
	}
}

// namedMeasure hears a measurement by its name, with or without a number.
func (r *room) namedMeasure(line string) bool {
	line = strings.NewReplacer(":", " ", "=", " ").Replace(line) // as lists have them
	all := measure.All()
	names := make([][]string, len(all))
	for i, m := range all {
		names[i] = []string{m.Term, m.Short, spaced(string(m.ID))}
	}
	at, rest, among := match(line, names)
	switch {
	case at >= 0 && rest == "":
		r.id = all[at].ID
		r.tellMeasure()
	case at >= 0 && isNumber(rest):
		r.id = all[at].ID
		r.answerMeasure(rest)
	case len(among) > 1:
		var terms []string
		for _, i := range among {
			terms = append(terms, all[i].Term)
		}
		r.say(text.HearSeveral, short(line), either(terms))
	default:
		return false
	}
	return true
}
