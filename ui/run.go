package ui

import (
	"errors"
	"fmt"
	"io"
	"os"
	"os/signal"
	"strings"
	"sync"
	"syscall"
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/session"
	"chalkfold/ui/text"
)

// Options of the workbench.
type Options struct {
	Session  *session.Session // nil: the first screen
	Unit     measure.Unit     // of a new client; a session has its own
	Settings desk.Settings
	Keys     keys.Set // nil: the usual
	Told     []string // what is wrong with the file of settings
	In       *os.File // nil: the terminal's standard input
	Out      *os.File // nil: standard output
	Err      io.Writer
	Env      func(string) string
}

// Exit codes beside 0.
const (
	exitFault  = 1
	exitSignal = 128
)

// Run shows the workbench until she leaves, and returns the exit code.
func Run(o Options) int { return run(o, func(*Model) {}) }

// run is Run with a word with the model before it begins.
func run(o Options, ready func(*Model)) int {
	if o.Out == nil {
		o.Out = os.Stdout
	}
	if o.Err == nil {
		o.Err = os.Stderr
	}
	if o.Env == nil {
		o.Env = os.Getenv
	}
	m := NewModel(o.Settings)
	m.pixels = func() (float64, bool) { return cellAspect(o.Out) }
	if o.Keys != nil {
		m.d.Keys = o.Keys
	}
	begin(m, o.Session, o.Unit)
	m.warn(o.Told)
	out := frames{o.Out, &sync.Mutex{}}
	if pictures(o.Env) {
		m.clip = out.clip
	}
	p := tea.NewProgram(m, programOptions(o, out)...)
	m.send = func(msg tea.Msg) { start(func() { p.Send(msg) }, func(fault) {}) }
	caught := make(chan os.Signal, 2)
	signal.Notify(caught, syscall.SIGHUP, syscall.SIGTERM, syscall.SIGINT)
	defer signal.Stop(caught)
	got, done := make(chan os.Signal, 1), make(chan struct{})
	ready(m)
	start(func() { wait(m, p, caught, got, done) }, func(f fault) { p.Send(f) })
	_, err := p.Run()
	close(done)
	return farewell(m, o.Err, err, got)
}

// begin puts the session on the desk and offers work that was rescued: with a
// file only its own, without one all there is.
func begin(m *Model, s *session.Session, u measure.Unit) {
	left := session.FindRescues()
	if s == nil {
		m.take(desk.Opened{Saved: pattern.Job{Unit: u}})
		m.Begin()
		m.Offer(left)
		return
	}
	m.Take(s)
	var own []session.Rescue
	for _, r := range left {
		if r.Path == s.Path || samePath(r.Path, s.Path) {
			own = append(own, r)
		}
	}
	m.Offer(own)
}

func samePath(a, b string) bool {
	if a == "" || b == "" {
		return false
	}
	x, errX := os.Stat(a)
	y, errY := os.Stat(b)
	return errX == nil && errY == nil && os.SameFile(x, y)
}

// How often a second a screen is sent at most: over a line, and else. The first
// paint and the answer to a key both wait for the next of these moments, and
// between them nothing is drawn.
const (
	slowFrames = 30
	fastFrames = 120
)

// pictures says that the terminal takes sequences that it does not know.
func pictures(env func(string) string) bool {
	term := env("TERM")
	return term != "dumb" && term != "linux"
}

func programOptions(o Options, whole frames) []tea.ProgramOption {
	opts := []tea.ProgramOption{tea.WithAltScreen(), tea.WithoutSignalHandler()}
	var out io.Writer = o.Out
	if pictures(o.Env) {
		out = whole
	}
	opts = append(opts, tea.WithOutput(out))
	if o.In != nil && o.In != os.Stdin {
		// The standard input is the framework's own way: on Windows only there
		// do resizing and the mouse come through.
		opts = append(opts, tea.WithInput(o.In))
	}
	if o.Settings.Mouse {
		opts = append(opts, tea.WithMouseCellMotion())
	}
	if o.Env("SSH_CONNECTION") != "" {
		return append(opts, tea.WithFPS(slowFrames))
	}
	return append(opts, tea.WithFPS(fastFrames))
}

// patience is how long after a signal the screen may take to end in order.
const patience = 400 * time.Millisecond

// wait rescues the work when the window is closed or the program is told to
// end, and ends it.
func wait(m *Model, p *tea.Program, caught, got chan os.Signal, done chan struct{}) {
	select {
	case <-done:
	case s := <-caught:
		if all := *m.latest.Load(); unsaved(all) {
			_ = m.copy(all) // tried again, and said, when the screen is gone
		}
		got <- s
		p.Quit()
		select {
		case <-done:
		case <-time.After(patience):
			p.Kill()
		}
	}
}

// farewell says, after the screen is gone, what she must know.
func farewell(m *Model, w io.Writer, err error, got chan os.Signal) int {
	code := 0
	var says []string
	select {
	case s := <-got:
		code = exitSignal
		if n, ok := s.(syscall.Signal); ok {
			code += int(n)
		}
	default:
	}
	switch {
	case m.fault != nil:
		code = exitFault
		says = append(says, m.d.Tell(text.CrashTitle))
	case code == 0 && err != nil && !errors.Is(err, tea.ErrProgramKilled):
		code = exitFault
		says = append(says, m.d.Tell(text.CrashTitle)+" "+err.Error())
	}
	if kept := m.keepWork(); kept != "" {
		says = append(says, kept)
	}
	if m.fault != nil {
		if path := m.fault.log(); path != "" {
			says = append(says, m.d.Tell(text.CrashLog, path))
		}
	}
	if len(says) > 0 {
		fmt.Fprintln(w, "chalkfold: "+strings.Join(says, " "))
	}
	return code
}
