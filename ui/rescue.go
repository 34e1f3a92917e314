package ui

import (
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"chalkfold/ui/desk"
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
	all := *m.latest.Load()
	return m.guard(func() tea.Msg { return rescued{m.copy(all)} })
}

// copy writes the copies of unsaved work and drops those of saved work.
func (m *Model) copy(all []desk.Work) error {
	m.files.Lock()
	defer m.files.Unlock()
	var wrong error
	for _, w := range all {
		if !w.Unsaved {
			w.Store.DropRescue()
		} else if err := w.Store.WriteRescue(w.Job); err != nil {
			wrong = err
		}
	}
	return wrong
}

// dropCopies takes the copies of work away that was saved or given up.
func (m *Model) dropCopies(all []desk.Work) tea.Cmd {
	return m.guard(func() tea.Msg {
		m.files.Lock()
		defer m.files.Unlock()
		for _, w := range all {
			w.Store.DropRescue()
		}
		return nil
	})
}

// unsaved says that there is anything to rescue.
func unsaved(all []desk.Work) bool {
	for _, w := range all {
		if w.Unsaved {
			return true
		}
	}
	return false
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
	all := *m.latest.Load()
	return tea.Sequence(m.guard(func() tea.Msg {
		_ = m.copy(all) // said after the screen is gone, by keepWork
		return nil
	}), tea.Quit)
}
