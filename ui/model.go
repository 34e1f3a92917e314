package ui

import (
	"sync"
	"sync/atomic"
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/overlay"
	"chalkfold/ui/session"
	"chalkfold/ui/stage"
)

// Model is the whole workbench.
type Model struct {
	d      *desk.Desk
	draft  *stage.Draft
	stages [6]desk.Stage
	at     desk.StageID
	over   []desk.Overlay
	cols   int
	rows   int
	spans  []span // what can be clicked on line 1 and in the footer

	interrupted time.Time // the last Ctrl+C
	leaving     bool
	fault       *fault

	files  *sync.Mutex           // one file work at a time
	latest *atomic.Pointer[work] // what would have to be rescued now
	rescue rescuing
	pixels func() (aspect float64, ok bool)
	send   func(tea.Msg) // from outside Update
	later  func(time.Duration, tea.Msg) tea.Cmd
}

// work is the job on the desk as others than Update may see it.
type work struct {
	store   desk.Store
	job     pattern.Job
	unsaved bool
}

// hearer is who asked for a Run.
type hearer interface{ Hear(desk.Answer) desk.Ask }

// answered brings an answer back to the one who asked.
type answered struct {
	to     hearer
	answer desk.Answer
}

// NewModel is a workbench with an empty desk. Take puts a session on it.
func NewModel(set desk.Settings) *Model {
	d := desk.New(set)
	m := &Model{d: d, at: desk.Measure, draft: stage.NewDraft(d), files: &sync.Mutex{}, latest: &atomic.Pointer[work]{}, later: later}
	m.stages = [6]desk.Stage{stage.NewMeasure(d), stage.NewStyle(d), m.draft, stage.NewTrue(d), stage.NewLay(d), stage.NewCut(d)}
	m.note()
	return m
}

// Take begins with a session.
func (m *Model) Take(s *session.Session) {
	m.take(desk.Opened{Store: s, Path: s.Path, Saved: s.Job})
}

// take puts another session on the desk and begins anew with it.
func (m *Model) take(o desk.Opened) {
	m.d.Take(o)
	d := m.d
	m.draft = stage.NewDraft(d)
	m.stages = [6]desk.Stage{stage.NewMeasure(d), stage.NewStyle(d), m.draft, stage.NewTrue(d), stage.NewLay(d), stage.NewCut(d)}
	m.over = nil
	m.at = desk.Measure
	if o.Go != desk.NoStage {
		m.at = o.Go
	}
	d.Message, d.Warn = o.Says, false
	m.note()
}

// Offer lays the question about rescued work over the first screen.
func (m *Model) Offer(left []session.Rescue) {
	if len(left) > 0 {
		m.over = append(m.over, overlay.RescueOffer(m.d, left))
	}
}

// Begin shows the five ways to begin.
func (m *Model) Begin() { m.over = append(m.over, overlay.Start(m.d)) }

// note keeps what would have to be rescued where a signal finds it.
func (m *Model) note() {
	m.latest.Store(&work{m.d.Store(), m.d.Job(), m.d.Unsaved()})
}

func (m *Model) stage() desk.Stage { return m.stages[m.at-1] }

// top is the overlay that gets the keys, nil if there is none.
func (m *Model) top() desk.Overlay {
	if len(m.over) == 0 {
		return nil
	}
	return m.over[len(m.over)-1]
}

// Init asks for nothing: the first paint waits for nobody.
func (m *Model) Init() tea.Cmd { return nil }

// Update takes a message. A fault of our own ends the program in order.
func (m *Model) Update(msg tea.Msg) (next tea.Model, cmd tea.Cmd) {
	defer func() {
		if r := recover(); r != nil {
			next, cmd = m, m.stop(newFault(r))
		}
	}()
	return m, m.update(msg)
}

func (m *Model) update(msg tea.Msg) tea.Cmd {
	switch msg := msg.(type) {
	case tea.WindowSizeMsg:
		m.cols, m.rows = msg.Width, msg.Height
		m.proportions()
		return nil
	case tea.KeyMsg:
		return m.key(msg)
	case tea.MouseMsg:
		return m.mouse(msg)
	case answered:
		return m.hear(msg)
	case saved:
		return m.savedNow(msg)
	case rescueDue:
		return m.rescueNow()
	case rescued:
		return m.rescueDone(msg)
	case fault:
		return m.stop(&msg)
	}
	return nil
}

// proportions asks the terminal's driver, not the terminal, how high a cell
// is; where it says nothing the setting stands.
func (m *Model) proportions() {
	if m.pixels == nil {
		return
	}
	if a, ok := m.pixels(); ok {
		m.d.Settings.Aspect = a
	}
}

// hear passes an answer on, if it is still about the present job and the one
// who asked is still there.
func (m *Model) hear(a answered) tea.Cmd {
	if a.answer.Version != 0 && a.answer.Version != m.d.Version() && !a.answer.Keep {
		return nil
	}
	if !m.present(a.to) {
		return nil
	}
	return m.fulfil(a.to.Hear(a.answer), a.to)
}

func (m *Model) present(h hearer) bool {
	for _, s := range m.stages {
		if h == hearer(s) {
			return true
		}
	}
	for _, o := range m.over {
		if h == hearer(o) {
			return true
		}
	}
	return false
}
