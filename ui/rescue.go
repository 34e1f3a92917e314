package ui

import (
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"chalkfold/ui/text"
)

// soon is how long after a change its rescue copy is written: well below the
// two seconds that may be lost, long enough that a held key writes it once.
const soon = 400 * time.Millisecond

// rescuing is where the rescue copy is.
type rescuing struct {
	due     bool // a copy will be written soon
	writing bool
	again   bool // something changed while it was written
}

type (
	rescueDue struct{}
	rescued   struct{ err error }
)

// rescueSoon writes the rescue copy a little later.
func (m *Model) rescueSoon() tea.Cmd {
	if m.rescue.due {
		return nil
	}
	m.rescue.due = true
	return m.later(soon, rescueDue{})
}

// later brings a message when some time has passed.
func later(d time.Duration, msg tea.Msg) tea.Cmd {
	return tea.Tick(d, func(time.Time) tea.Msg { return msg })
}

// rescueNow writes it, or drops it where all is saved again.
func (m *Model) rescueNow() tea.Cmd {
	m.rescue.due = false
	if m.rescue.writing {
		m.rescue.again = true
		return nil
	}
	m.rescue.writing = true
	w := m.latest.Load()
	return m.guard(func() tea.Msg { return rescued{m.copy(w)} })
}

// copy writes or drops the copy of some work.
func (m *Model) copy(w *work) error {
	m.files.Lock()
	defer m.files.Unlock()
	if !w.unsaved {
		w.store.DropRescue()
		return nil
	}
	return w.store.WriteRescue(w.job)
}

func (m *Model) rescueDone(r rescued) tea.Cmd {
	m.rescue.writing = false
	if r.err != nil {
		m.d.Message, m.d.Warn = m.d.Tell(text.RescueNoWrite, m.d.Plain(r.err.Error())), true
	}
	if m.rescue.again {
		m.rescue.again = false
		return m.rescueNow()
	}
	return nil
}

// rescueAndQuit leaves at once; the work is found at the next start.
func (m *Model) rescueAndQuit() tea.Cmd {
	m.settle()
	m.leaving = true
	w := m.latest.Load()
	return tea.Sequence(m.guard(func() tea.Msg {
		_ = m.copy(w) // said after the screen is gone, by keepWork
		return nil
	}), tea.Quit)
}
