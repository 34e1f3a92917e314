package stage

import (
	"errors"
	"strings"

	"chalkfold/measure"
	"chalkfold/ui/desk"
	"chalkfold/ui/text"
)

// reading is what the field holds as a length.
func (m *Measure) reading() (measure.Length, bool) {
	if m.id() == "" || m.form.field.string() == "" {
		return 0, false
	}
	r, err := measure.ReadAll(m.form.field.string(), m.d.Unit())
	if err != nil || measure.Check(m.id(), r.Length) != nil {
		return 0, false
	}
	return r.Length, true
}

// accept takes what is typed in the row in hand. With enter an empty row takes
// its proposal.
func (m *Measure) accept(enter bool) desk.Ask {
	r, ok := m.form.row()
	if !ok || r.pick {
		return desk.Ask{}
	}
	typed := strings.TrimSpace(m.form.field.string())
	if r.id == clientRow {
		return m.acceptName(typed)
	}
	id := measure.ID(r.id)
	if typed == "" && r.text == "" {
		if enter {
			return m.acceptProposal(id)
		}
		m.form.accepted()
		return desk.Ask{}
	}
	if !m.form.typed() {
		return desk.Ask{}
	}
	if typed == "" {
		return m.takeOut(id)
	}
	l, err := m.read(id, typed)
	if err != nil {
		m.form.keep(err.Error())
		return desk.Ask{Say: m.d.Plain(err.Error()), Warn: true}
	}
	return m.set(id, l)
}

func (m *Measure) read(id measure.ID, typed string) (measure.Length, error) {
	r, err := measure.ReadAll(typed, m.d.Unit())
	if err != nil {
		return 0, withoutPlace(err)
	}
	if err := measure.Check(id, r.Length); err != nil {
		return 0, withoutPlace(err)
	}
	return r.Length, nil
}

// withoutPlace leaves out where a value was read: it stands right there.
func withoutPlace(err error) error {
	var r *measure.Refusal
	if errors.As(err, &r) {
		return &measure.Refusal{Read: r.Read, Wrong: r.Wrong, Works: r.Works}
	}
	return err
}

// set asks for one measurement to be changed.
func (m *Measure) set(id measure.ID, l measure.Length) desk.Ask {
	job := m.d.Job()
	old, had := job.Body.Get(id)
	m.form.accepted()
	if had && old == l {
		m.form.load(true)
		return desk.Ask{}
	}
	now := job.WithBody(id, l)
	return desk.Ask{Job: &now, Says: m.changed(id, old, had, l)}
}

func (m *Measure) changed(id measure.ID, old measure.Length, had bool, l measure.Length) string {
	u := m.d.Unit()
	if !had {
		return m.d.Words.Say(text.MeasureSet, m.term(id), u.Say(l))
	}
	return m.d.Words.Say(text.MeasureChanged, m.term(id), u.Tape(old), u.Say(l))
}

func (m *Measure) term(id measure.ID) string {
	if x, ok := measure.Find(id); ok {
		return capital(m.d.Words.Pass(plainName(x)))
	}
	return name(string(id))
}

func (m *Measure) takeOut(id measure.ID) desk.Ask {
	job := m.d.Job()
	old, _ := job.Body.Get(id)
	m.form.accepted()
	now := job.WithoutBody(id)
	return desk.Ask{Job: &now, Says: m.d.Words.Say(text.MeasureTookOut, m.term(id), m.d.Unit().Say(old))}
}

func (m *Measure) acceptName(typed string) desk.Ask {
	job := m.d.Job()
	old := job.Client.Name
	m.form.accepted()
	if typed == old {
		return desk.Ask{}
	}
	job.Client.Name = typed
	if old == "" {
		return desk.Ask{Job: &job, Says: m.d.Words.Say(text.MeasureSet, m.d.Words.Say(text.MeasureName), typed)}
	}
	return desk.Ask{Job: &job, Says: m.d.Words.Say(text.MeasureChanged, m.d.Words.Say(text.MeasureName), old, typed)}
}

func (m *Measure) acceptProposal(id measure.ID) desk.Ask {
	p, ok := m.proposal(id)
	if !ok {
		return desk.Ask{}
	}
	return m.set(id, p.Value)
}

// proposal is what the draft uses as long as she has not measured.
func (m *Measure) proposal(id measure.ID) (measure.Proposal, bool) {
	body := m.d.Job().Body
	if id == "" || body.Has(id) {
		return measure.Proposal{}, false
	}
	return measure.Propose(body, id)
}

// nudge changes the number in hand by one step of the tape.
func (m *Measure) nudge(by float64) desk.Ask {
	id := m.id()
	l, ok := m.reading()
	if !ok {
		p, has := m.proposal(id)
		if !has || m.form.field.string() != "" {
			return desk.Ask{Say: m.d.Tell(text.NothingToMove)}
		}
		l = p.Value
	}
	l = stepped(l, by, m.d.Unit())
	if err := measure.Check(id, l); err != nil {
		return desk.Ask{Say: m.d.Plain(withoutPlace(err).Error()), Warn: true}
	}
	return m.set(id, l)
}

// stepped is a length so many steps of the tape longer, as exact as if it had
// been typed: up and down again is where it was.
func stepped(l measure.Length, by float64, u measure.Unit) measure.Length {
	l += measure.Length(by) * u.Step()
	if exact, err := measure.Read(u.Exact(l), u); err == nil {
		return exact
	}
	return l
}

// inOther is the number in hand taken in the other unit: of what is typed, or
// of a stored value that is doubted.
func (m *Measure) inOther() (measure.Length, bool) {
	id := m.id()
	if id == "" {
		return 0, false
	}
	if m.form.dirty() {
		r, err := measure.ReadAll(m.form.field.string(), other(m.d.Unit()))
		if err != nil || r.Stated || measure.Check(id, r.Length) != nil {
			return 0, false
		}
		return r.Length, true
	}
	if x, ok := m.doubts[id]; ok && x.HasOther {
		return x.InOther, true
	}
	return 0, false
}

func (m *Measure) takeOther() desk.Ask {
	l, ok := m.inOther()
	if !ok {
		return desk.Ask{Say: m.d.Tell(text.NoOtherUnit)}
	}
	return m.set(m.id(), l)
}

// paste takes a table: a line for each measurement with its id or its name,
// or numbers alone, which go into the rows from the one in hand on.
func (m *Measure) paste(s string) desk.Ask {
	job := m.d.Job()
	at, n := m.form.at, 0
	for _, line := range strings.FieldsFunc(s, func(r rune) bool { return r == '\n' || r == '\r' }) {
		id, value := m.pasted(line)
		if id == "" && at < len(m.form.rows) {
			id = measure.ID(m.form.rows[at].id)
			at++
		}
		l, err := m.read(id, value)
		if _, known := measure.Find(id); err != nil || !known {
			continue
		}
		job = job.WithBody(id, l)
		n++
	}
	if n == 0 {
		return desk.Ask{Say: m.d.Tell(text.PasteUnread), Warn: true}
	}
	m.form.accepted()
	return desk.Ask{Job: &job, Says: m.d.Words.Count(n, text.PastedOne, text.Pasted)}
}

// pasted splits a line into the measurement it names, if it names one, and
// the value.
func (m *Measure) pasted(line string) (measure.ID, string) {
	head, value, ok := strings.Cut(line, "\t")
	if !ok {
		return "", line
	}
	key := strings.ToLower(strings.TrimSpace(head))
	for _, x := range measure.All() {
		if key == string(x.ID) || key == strings.ToLower(x.Term) || key == strings.ReplaceAll(string(x.ID), "_", " ") {
			return x.ID, value
		}
	}
	return "", head
}
