package stage

import (
	"strconv"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/text"
	"chalkfold/ui/view"
)

// The two rows that are no measurements.
const (
	clientRow = "client"
	unitRow   = "unit"
)

// Measure is the form of the tape: a row for the client, one for the unit, one
// for each measurement, those that the draft needs first.
type Measure struct {
	bench
	form    form
	version int
	fresh   bool
	needs   map[measure.ID]bool
	doubts  map[measure.ID]measure.Doubt
}

// NewMeasure is the first stage.
func NewMeasure(d *desk.Desk) *Measure {
	m := &Measure{bench: bench{d: d}, form: form{typing: true}, fresh: true}
	m.edge = m.tape
	return m
}

// Title names the stage.
func (m *Measure) Title() string { return m.d.Tell(text.StageMeasure) }

// Fact is how many of the needed measurements are taken.
func (m *Measure) Fact() string {
	needs := m.d.Needs()
	n := 0
	for _, id := range needs {
		if m.d.Job().Body.Has(id) {
			n++
		}
	}
	return strconv.Itoa(n) + "/" + strconv.Itoa(len(needs))
}

// Typing says that letters are text here.
func (m *Measure) Typing() bool { return m.form.typing || m.eye.Hair }

// Dirty says that something is typed and not accepted.
func (m *Measure) Dirty() bool { return m.form.typing && m.form.dirty() }

// refresh takes the rows from the job as it is now.
func (m *Measure) refresh() {
	if !m.fresh && m.version == m.d.Version() {
		return
	}
	job := m.d.Job()
	m.version = m.d.Version()
	m.needs = map[measure.ID]bool{}
	for _, id := range m.d.Needs() {
		m.needs[id] = true
	}
	m.doubts = map[measure.ID]measure.Doubt{}
	for _, x := range measure.Doubts(job.Body) {
		if kept, ok := job.Confirmed.Get(x.ID); ok {
			if l, _ := job.Body.Get(x.ID); l == kept {
				continue
			}
		}
		m.doubts[x.ID] = x
	}
	m.form.sync(m.rows(job))
	if m.fresh {
		m.fresh = false
		m.form.to(m.first(job))
	}
}

// rows are the client, the unit, what is needed or taken, then the rest.
func (m *Measure) rows(job pattern.Job) []row {
	rows := []row{
		{id: clientRow, title: m.d.Tell(text.MeasureName), text: job.Client.Name},
		{id: unitRow, title: m.d.Tell(text.UnitRow), text: job.Unit.String(), pick: true},
	}
	var rest []row
	for _, x := range measure.All() {
		r := row{id: string(x.ID), title: capital(m.d.Trade(plainName(x)))}
		l, taken := job.Body.Get(x.ID)
		if taken {
			r.text = shortExact(job.Unit, l)
		}
		if m.needs[x.ID] || taken {
			rows = append(rows, r)
			continue
		}
		r.group = m.d.Tell(text.MeasureGroup)
		rest = append(rest, r)
	}
	return append(rows, rest...)
}

// shortExact is a length as it was typed; one taken from the other unit, which
// has no short form in this one, is shown as the tape shows it. What is stored
// stays as it is unless she types over it.
func shortExact(u measure.Unit, l measure.Length) string {
	if s := u.Exact(l); len(s) < valueCells-1 {
		return s
	}
	return u.Tape(l)
}

// plainName is the name of a measurement as it stands in a list: its term, or
// where that is too long a shorter one.
func plainName(x measure.Measurement) string {
	if x.Short != "" && len(x.Term) >= titleCells {
		return x.Short
	}
	return x.Term
}

// first is the row to begin at: the first needed number that is not taken,
// else the first number.
func (m *Measure) first(job pattern.Job) int {
	number := -1
	for i, r := range m.form.rows {
		id := measure.ID(r.id)
		if !m.needs[id] {
			continue
		}
		if number < 0 {
			number = i
		}
		if !job.Body.Has(id) {
			return i
		}
	}
	return max(number, 0)
}

// Actions are what can be done here.
func (m *Measure) Actions() []desk.Offer {
	if m.eye.Hair {
		return m.hairOffers()
	}
	m.refresh()
	if !m.form.typing {
		return append([]desk.Offer{{ID: keys.Accept, Title: m.d.Tell(text.StageMeasure)}, offer(keys.FieldNext)}, m.tableOffers()...)
	}
	out := []desk.Offer{
		{ID: keys.Accept, Title: m.d.Tell(text.NextRow)},
		offer("field-down"), quiet("field-up"), quiet("nudge-up"), quiet("nudge-down"), quiet("clear"),
		quiet("text-left"), quiet("text-right"), quiet(keys.FieldNext), quiet(keys.FieldBack),
	}
	as := desk.Offer{ID: keys.OtherUnit, Title: m.d.Tell(text.AsUnit, other(m.d.Unit())), Quiet: true}
	if _, ok := m.inOther(); !ok {
		as.WhyNot = m.d.Tell(text.NoOtherUnit)
	} else if _, doubted := m.doubts[m.id()]; doubted {
		as.Quiet = false
	}
	return append(out, m.settling(keepID), m.settling(againID), as, quiet(keys.Room))
}

// Two actions of a row that is not settled: to take what is proposed, and to
// say of a doubted number that it was measured again.
const (
	keepID  keys.ID = "take-proposal"
	againID keys.ID = "measured-again"
)

// settling is one of those as it stands for the row in hand.
func (m *Measure) settling(id keys.ID) desk.Offer {
	o := offer(id)
	if _, ok := m.proposal(m.id()); id == keepID && !ok {
		o.WhyNot = m.d.Tell(text.NoProposal)
	}
	if _, ok := m.doubts[m.id()]; id == againID && (!ok || m.form.dirty()) {
		o.WhyNot = m.d.Tell(text.NoDoubt)
	}
	return o
}

// id is the measurement of the row in hand, empty for the other rows.
func (m *Measure) id() measure.ID {
	r, ok := m.form.row()
	if !ok || r.id == clientRow || r.id == unitRow {
		return ""
	}
	return measure.ID(r.id)
}

// Do an action.
func (m *Measure) Do(id keys.ID) desk.Ask {
	m.refresh()
	if m.eye.Hair {
		ask, _ := m.tableDo(id)
		return ask
	}
	if !m.form.typing {
		switch id {
		case keys.Accept, keys.FieldNext, keys.FieldBack, "measure", "clear":
			m.form.typing = true
			return desk.Ask{}
		}
		ask, _ := m.tableDo(id)
		return ask
	}
	switch id {
	case keys.Room:
		m.swap()
	case keys.Back:
		return m.form.out(m.d, m.hands())
	case keys.OtherUnit:
		return m.takeOther()
	case keepID:
		return m.takeProposal()
	case againID:
		return m.again()
	}
	ask, _ := m.form.do(m.d, id, m.hands())
	return ask
}

func (m *Measure) hands() hands { return hands{m.accept, m.nudge, m.turnUnit} }

// turnUnit takes the next unit.
func (m *Measure) turnUnit(by int) desk.Ask {
	job := m.d.Job()
	job.Unit = measure.Unit((int(job.Unit) + by + 3) % 3)
	return desk.Ask{Job: &job, Says: m.d.Words.Say(text.UnitNow, job.Unit)}
}

// Enter puts the focus on the row in hand.
func (m *Measure) Enter() { m.form.Enter() }

// Settle accepts what is typed, before the work is saved or another screen
// comes.
func (m *Measure) Settle() desk.Ask {
	m.refresh()
	if !m.Dirty() {
		return desk.Ask{}
	}
	return m.accept()
}

// Type a key.
func (m *Measure) Type(k desk.Key) desk.Ask {
	m.refresh()
	if m.eye.Hair {
		return m.hairType(k)
	}
	if k.Paste && strings.ContainsAny(string(k.Runes), "\n\r\t") {
		return m.paste(string(k.Runes))
	}
	if k.Paste && !m.form.typing {
		return desk.Ask{}
	}
	m.form.typeKey(k)
	return desk.Ask{}
}

// Hear nothing: this stage has no errands.
func (m *Measure) Hear(desk.Answer) desk.Ask { return desk.Ask{} }

// View is the form above the cloth.
func (m *Measure) View(r desk.Rect) []string {
	m.refresh()
	return m.compose(r, 11, m.words, m.scene(r))
}

// scene is the draft as it would be with what is being typed.
func (m *Measure) scene(r desk.Rect) view.Scene {
	job := m.d.Job()
	if l, ok := m.reading(); ok && m.Dirty() {
		job = job.WithBody(m.id(), l)
	}
	s := view.Scene{Sheet: m.d.SheetOf(job)}
	if r.Rows < bothRows {
		s.Piece = pattern.Front
		switch m.id() {
		case measure.AcrossBack, measure.BackNeckToWaist, measure.BackNeckToBustPoint, measure.BackNeckToFloor:
			s.Piece = pattern.Back
		}
	}
	return s
}

// bothRows is how many rows it takes before both pieces are shown together.
const bothRows = 26
