package ui

import (
	"errors"
	"os"
	"path/filepath"

	tea "github.com/charmbracelet/bubbletea"

	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/overlay"
	"chalkfold/ui/session"
	"chalkfold/ui/text"
)

// saved is what became of saving.
type saved struct {
	job  pattern.Job
	path string
	err  error
	then *desk.Opened
	quit bool
}

// save writes the session in a command. Without a file it asks for a name.
func (m *Model) save(s desk.Save, quit bool) tea.Cmd {
	if s.Path == "" && m.d.Path() == "" {
		return m.lay(overlay.SaveAsThen(m.d, s.Then, quit))
	}
	store, job, path := m.d.Store(), m.d.Job(), m.d.Path()
	if s.Path != "" {
		path = s.Path
	}
	m.d.Say(text.MessageSaving)
	return m.guard(func() tea.Msg {
		m.files.Lock()
		defer m.files.Unlock()
		out := saved{job: job, path: path, then: s.Then, quit: quit}
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
		return replace(store, job, s.Path)
	case s.Path != "":
		return store.SaveAs(s.Path, job)
	case s.Over:
		return store.SaveOver(job)
	}
	return store.Save(job)
}

// replace saves under a name that is taken: what stands there is kept beside
// it, as with every save, and comes back if saving goes wrong.
func replace(store desk.Store, job pattern.Job, path string) error {
	kept := path + "~"
	if err := os.Rename(path, kept); err != nil && !errors.Is(err, os.ErrNotExist) {
		return err
	}
	if err := store.SaveAs(path, job); err != nil {
		_ = os.Rename(kept, path) // there is nothing better to do
		return err
	}
	return nil
}

// savedNow says that it is saved, or asks what to do.
func (m *Model) savedNow(s saved) tea.Cmd {
	switch {
	case errors.Is(s.err, session.ErrChanged):
		m.d.Message = ""
		return m.lay(overlay.Changed(m.d))
	case errors.Is(s.err, session.ErrExists):
		m.d.Message, m.d.Warn = m.d.Plain(s.err.Error()), true
		return m.lay(overlay.SaveAsThen(m.d, s.then, s.quit))
	case s.err != nil:
		m.d.Message, m.d.Warn = m.d.Tell(text.SaveNotDone, m.d.Plain(s.err.Error()))+" "+m.d.Tell(text.SaveKept), true
		return m.lay(overlay.Message(m.d, m.d.Tell(text.SaveTitle), m.d.Message))
	}
	m.d.MarkSaved(s.job, s.path)
	m.note()
	m.d.Say(text.Saved, filepath.Base(s.path), m.d.Now().Format("15:04"))
	switch {
	case s.quit:
		return m.quit(false)
	case s.then != nil:
		return m.takeUp(*s.then)
	case m.d.Unsaved():
		return m.rescueSoon()
	}
	return nil
}
