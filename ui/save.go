package ui

import (
	"errors"
	"path/filepath"

	tea "github.com/charmbracelet/bubbletea"

	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/files"
	"chalkfold/ui/overlay"
	"chalkfold/ui/session"
	"chalkfold/ui/text"
)

// saved is what became of saving.
type saved struct {
	seat desk.SeatID // 0: the session on the desk
	job  pattern.Job
	path string
	err  error
	quit bool
}

// save writes the session in a command. Without a file it asks for a name. On
// the way out it is the first of those that are not saved.
func (m *Model) save(s desk.Save, quit bool) tea.Cmd {
	if left := m.d.AllUnsaved(); quit && s == (desk.Save{}) && len(left) > 0 && !left[0].Here {
		m.d.Switch(left[0].ID)
		m.sit()
	}
	if s.Path == "" && m.d.Path() == "" {
		return m.lay(overlay.SaveAsThen(m.d, quit))
	}
	store, job, path, at := m.d.Store(), m.d.Job(), m.d.Path(), m.d.At()
	if s.Path != "" {
		path = s.Path
	}
	m.d.Say(text.MessageSaving)
	return m.guard(func() tea.Msg {
		m.files.Lock()
		defer m.files.Unlock()
		out := saved{seat: at, job: job, path: path, quit: quit}
		if out.err = write(store, job, s); out.err == nil {
			store.DropRescue()
			session.Remember(path, job)
		}
		return out
	})
}

// write saves in the way that was asked for.
func write(store desk.Store, job pattern.Job, s desk.Save) error {
	switch {
	case s.Path != "" && s.Over:
		return store.SaveAsOver(s.Path, job)
	case s.Path != "":
		return store.SaveAs(s.Path, job)
	case s.Over:
		return store.SaveOver(job)
	}
	return store.Save(job)
}

// savedNow says that it is saved, or asks what to do.
func (m *Model) savedNow(s saved) tea.Cmd {
	if s.seat == 0 {
		s.seat = m.d.At()
	}
	if s.err != nil {
		m.d.Switch(s.seat) // what is asked is about that one
		if m.bay != m.bays[m.d.At()] {
			m.sit()
		}
		return m.notSaved(s)
	}
	m.d.SavedIn(s.seat, s.job, s.path)
	m.note()
	m.d.Say(text.Saved, filepath.Base(s.path), m.d.Now().Format("15:04"))
	if m.shutting != 0 && m.shutting == s.seat && !s.quit {
		return m.shut(s.seat, false, false)
	}
	switch left := m.d.AllUnsaved(); {
	case s.quit && len(left) > 0:
		return m.save(desk.Save{}, true)
	case s.quit:
		return m.quit(false)
	}
	return m.rescueIfUnsaved()
}

// notSaved asks what to do, or says what stands in the way.
func (m *Model) notSaved(s saved) tea.Cmd {
	switch {
	case errors.Is(s.err, session.ErrChanged):
		m.d.Message = ""
		return m.lay(overlay.Changed(m.d))
	case errors.Is(s.err, session.ErrExists):
		m.d.Message, m.d.Warn = m.d.Plain(s.err.Error()), true
		return m.lay(overlay.SaveAsThen(m.d, s.quit))
	}
	m.d.Message = ""
	return m.lay(overlay.NotSaved(m.d, files.Shown(m.d.Plain(s.err.Error()))+".", s.quit))
}
