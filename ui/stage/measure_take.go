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

// accept takes what is typed in the row in hand. A row left empty stays as it
// is: proposed, or not yet taken.
func (m *Measure) accept() desk.Ask {
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

// takeProposal writes what is proposed down as hers.
func (m *Measure) takeProposal() desk.Ask {
	id := m.id()
	p, ok := m.proposal(id)
	if !ok || m.form.dirty() {
		return desk.Ask{Say: m.d.Tell(text.NotNow, m.d.Tell(text.NoProposal))}
	}
	m.form.accepted()
	now := m.d.Job().WithBody(id, p.Value)
	return desk.Ask{Job: &now, Says: m.d.Words.Say(text.ProposalTaken, m.term(id), m.d.Unit().Say(p.Value))}
}

// again settles a doubt: she measured again, and the number stays.
func (m *Measure) again() desk.Ask {
	id := m.id()
	if o := m.settling(againID); o.WhyNot != "" {
		return desk.Ask{Say: m.d.Tell(text.NotNow, o.WhyNot)}
	}
	l, _ := m.d.Job().Body.Get(id)
	now := m.d.Job().Confirm(id, l)
	return desk.Ask{Job: &now, Says: m.d.Words.Say(text.AgainDone, m.term(id), m.d.Unit().Say(l))}
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
func (m *Measure) nudge(by int) desk.Ask {
	id := m.id()
	l, ok := m.reading()
	if !ok {
		p, has := m.proposal(id)
		if !has || m.form.field.string() != "" {
			return desk.Ask{Say: m.d.Tell(text.NothingToMove)}
		}
		l = p.Value
	}
	l = stepped(l, float64(by), m.d.Unit())
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
