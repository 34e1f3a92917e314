package ui

import (
	tea "github.com/charmbracelet/bubbletea"

	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/overlay"
	"chalkfold/ui/text"
)

// settler is a stage that holds typed text which is not accepted yet.
type settler interface{ Settle() desk.Ask }

// shower is a stage that can show a place on the cloth.
type shower interface{ Show(pattern.Place) }

// enterer is a stage that takes the focus when she comes to it.
type enterer interface{ Enter() }

// beginner is a stage that begins something of its own when she comes to it.
type beginner interface{ Begin() desk.Ask }

// follower is a stage that works something out after every change.
type follower interface{ Follow() desk.Ask }

// fulfil does what was asked for, in the order of the fields.
func (m *Model) fulfil(a desk.Ask, from hearer) tea.Cmd {
	var cmds []tea.Cmd
	add := func(c tea.Cmd) {
		if c != nil {
			cmds = append(cmds, c)
		}
	}
	if a.Job != nil && m.d.Change(*a.Job, a.Says) {
		m.d.Message, m.d.Warn = a.Says, false
		add(m.changed())
	}
	if a.Close && len(m.over) > 0 {
		m.over = m.over[:len(m.over)-1]
	}
	if a.Go != desk.NoStage {
		add(m.goTo(a.Go))
	}
	if a.Place != nil {
		if s, ok := m.stage().(shower); ok {
			s.Show(*a.Place)
		}
	}
	if a.Open != nil {
		m.over = append(m.over, a.Open)
	}
	if a.Run != nil {
		if a.For != "" {
			m.d.Message, m.d.Warn = a.For, false
		}
		add(m.guard(func() tea.Msg { return answered{from, a.Run(), a.For} }))
	}
	if a.Do != "" {
		add(m.do(a.Do))
	}
	if a.Say != "" {
		m.d.Message, m.d.Warn = a.Say, a.Warn
	}
	if a.Take != nil {
		shown := m.projector() != nil
		add(m.takeUp(*a.Take))
		if shown && m.projector() == nil { // it stays before the class
			m.curtain()
			add(m.project())
		}
	}
	if a.Done != nil {
		m.d.Learn(*a.Done)
		keep := m.d.KeepPlace()
		add(m.guard(func() tea.Msg { keep(); return nil }))
	}
	if a.Study != nil {
		add(m.study(*a.Study))
	}
	if a.Seat != 0 {
		add(m.seat(a.Seat))
	}
	if a.Shut != 0 {
		add(m.shut(a.Shut, a.Lose, a.Save != nil))
	}
	if a.Set != nil {
		add(m.set(*a.Set))
	}
	if a.Save != nil {
		add(m.save(*a.Save, a.Quit))
		return tea.Batch(cmds...)
	}
	switch {
	case a.Quit:
		add(m.quit(true))
	case a.Leave:
		add(m.leave())
	}
	return tea.Batch(cmds...)
}

// shut closes an open session: at once if all of it is saved or given up, else
// once it is saved, else it asks.
func (m *Model) shut(id desk.SeatID, lose, saves bool) tea.Cmd {
	var seat desk.Seat
	for _, s := range m.d.Seats() {
		if s.ID == id {
			seat = s
		}
	}
	switch {
	case seat.ID == 0:
		return nil
	case saves:
		m.shutting = id
		return nil
	case seat.Unsaved && !lose:
		return m.lay(overlay.CloseClient(m.d, seat))
	}
	m.shutting = 0
	store := m.d.StoreOf(id)
	if seat.Here {
		m.over = nil
	}
	m.d.Close(id)
	delete(m.bays, id)
	if seat.Here {
		m.sit()
	}
	m.d.Say(text.Closed, seat.Client)
	m.note()
	return m.dropCopies([]desk.Work{{Store: store}})
}

// changed follows every change of the job.
func (m *Model) changed() tea.Cmd {
	m.note()
	return tea.Batch(m.rescueSoon(), m.follow())
}

// follow lets a stage work out beside the screen what the change asks for.
func (m *Model) follow() tea.Cmd {
	if f, ok := m.stage().(follower); ok {
		return m.fulfil(f.Follow(), m.stage())
	}
	return nil
}

// settle accepts what is typed and not yet accepted.
func (m *Model) settle() tea.Cmd {
	s, ok := m.stage().(settler)
	if !ok {
		return nil
	}
	return m.fulfil(s.Settle(), m.stage())
}

// goTo goes to a stage; what was typed is accepted first.
func (m *Model) goTo(id desk.StageID) tea.Cmd {
	if id < desk.Measure || id > desk.Cut {
		return nil
	}
	cmd := m.settle()
	m.at = id
	if e, ok := m.stage().(enterer); ok {
		e.Enter()
	}
	if b, ok := m.stage().(beginner); ok {
		cmd = tea.Batch(cmd, m.fulfil(b.Begin(), m.stage()))
	}
	return cmd
}

// takeUp opens another session. Where it takes the place of the one before,
// the rescue copy of that one was declined with it.
func (m *Model) takeUp(o desk.Opened) tea.Cmd {
	settled := m.settle()
	before := m.d.Store()
	m.take(o)
	if !o.Anew {
		return tea.Batch(settled, m.rescueIfUnsaved())
	}
	return tea.Sequence(settled, m.dropCopies([]desk.Work{{Store: before}}), m.rescueIfUnsaved())
}

// rescueIfUnsaved lets a rescue copy come due where there is something to
// rescue.
func (m *Model) rescueIfUnsaved() tea.Cmd {
	if unsaved(*m.latest.Load()) {
		return m.rescueSoon()
	}
	return nil
}

// set changes the looks.
func (m *Model) set(s desk.Settings) tea.Cmd {
	mouse := s.Mouse != m.d.Settings.Mouse
	keep := m.keepSettings(m.d.Settings, s)
	m.d.Settings = s
	switch {
	case !mouse:
		return keep
	case s.Mouse:
		return tea.Batch(tea.EnableMouseCellMotion, keep)
	}
	return tea.Batch(tea.DisableMouse, keep)
}

// leave leaves at once if all is saved, else asks, once for all that is open.
func (m *Model) leave() tea.Cmd {
	cmd := m.settle()
	if len(m.d.AllUnsaved()) == 0 {
		return tea.Batch(cmd, m.quit(false))
	}
	m.over = append(m.over, overlay.Leave(m.d))
	return cmd
}

// quit ends the program. Declined work needs no rescue copy any more.
func (m *Model) quit(declined bool) tea.Cmd {
	m.leaving = true
	all := m.d.Works()
	drop := m.dropCopies(all)
	if declined {
		for i := range all {
			all[i].Unsaved = false
		}
		m.latest.Store(&all)
	}
	return tea.Sequence(drop, tea.Quit)
}

// undo takes back the last change, or makes it again, and says which it was.
func (m *Model) undo(turn func() (string, bool), done, none text.ID) tea.Cmd {
	says, ok := turn()
	if !ok {
		m.d.Say(none)
		return nil
	}
	m.d.Say(done, says)
	return m.changed()
}
