package ui

import (
	"fmt"
	"os"
	"path/filepath"
	"runtime/debug"

	tea "github.com/charmbracelet/bubbletea"

	"chalkfold/ui/session"
	"chalkfold/ui/text"
)

// fault is a fault of our own: what failed, and where, for the log.
type fault struct {
	what  string
	stack []byte
}

func newFault(r any) *fault { return &fault{fmt.Sprint(r), debug.Stack()} }

// guard runs a command so that a fault in it comes back as a message.
func (m *Model) guard(run func() tea.Msg) tea.Cmd {
	return func() (msg tea.Msg) {
		defer func() {
			if r := recover(); r != nil {
				msg = *newFault(r)
			}
		}()
		return run()
	}
}

// start runs a goroutine of ours; a fault in it is handed to tell.
func start(run func(), tell func(fault)) {
	go func() {
		defer func() {
			if r := recover(); r != nil {
				tell(*newFault(r))
			}
		}()
		run()
	}()
}

// stop ends the program after a fault; the work is rescued when the screen is
// gone.
func (m *Model) stop(f *fault) tea.Cmd {
	if m.fault == nil {
		m.fault = f
	}
	m.leaving = true
	return tea.Quit
}

// keepWork writes the rescue copy of unsaved work, if there is any, and says
// where it is.
func (m *Model) keepWork() (says string) {
	all := m.latest.Load()
	if all == nil || !unsaved(*all) {
		return ""
	}
	defer func() {
		if r := recover(); r != nil {
			says = m.d.Tell(text.RescueNoWrite, r)
		}
	}()
	if err := m.copy(*all); err != nil {
		return m.d.Tell(text.RescueNoWrite, err)
	}
	return m.d.Tell(text.RescueWritten, session.RescueDir()) + " " + m.d.Tell(text.CrashNext)
}

// log writes what happened beside the rescue copies and gives the file's name.
func (f *fault) log() string {
	dir := filepath.Dir(session.RescueDir())
	path := filepath.Join(dir, "fault.log")
	if err := os.MkdirAll(dir, 0o700); err != nil {
		return ""
	}
	if err := os.WriteFile(path, append([]byte(f.what+"\n\n"), f.stack...), 0o600); err != nil {
		return ""
	}
	return path
}
