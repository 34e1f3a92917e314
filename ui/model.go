package ui

import (
	"sync"
	"sync/atomic"
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"chalkfold/ui/desk"
	"chalkfold/ui/overlay"
	"chalkfold/ui/session"
	"chalkfold/ui/stage"
	"chalkfold/ui/text"
)

// Model is the whole workbench.
type Model struct {
	d     *desk.Desk
	*bay  // of the session on the desk
	bays  map[desk.SeatID]*bay
	over  []desk.Overlay
	shows projecting
	cols  int
	rows  int
	spans []span // what can be clicked on line 1 and in the footer

	interrupted time.Time // the last Ctrl+C
	leaving     bool
	shutting    desk.SeatID // to be closed once it is saved
	fault       *fault

	files   *sync.Mutex                  // one file work at a time
	latest  *atomic.Pointer[[]desk.Work] // what would have to be rescued now
	rescue  rescuing
	pixels  func() (aspect float64, ok bool)
	clip    func(words string)
	strokes int           // of a line that grows; another number ends it
	send    func(tea.Msg) // from outside Update
	later   func(time.Duration, tea.Msg) tea.Cmd
}

// bay is where she works on one session: its six stages, each with where she
// was in it.
type bay struct {
	draft  *stage.Draft
	stages [6]desk.Stage
	at     desk.StageID
	step   int // the step shown when she left
}

func newBay(d *desk.Desk) *bay {
	b := &bay{draft: stage.NewDraft(d), at: desk.Measure}
	b.stages = [6]desk.Stage{stage.NewMeasure(d), stage.NewStyle(d), b.draft, stage.NewTrue(d), stage.NewLay(d), stage.NewCut(d)}
	return b
}

// hearer is who asked for a Run.
type hearer interface{ Hear(desk.Answer) desk.Ask }

// answered brings an answer back to the one who asked.
type answered struct {
	to     hearer
	answer desk.Answer
	said   string // on the message line while it worked
}

// NewModel is a workbench with an empty desk. Take puts a session on it.
func NewModel(set desk.Settings) *Model {
	d := desk.New(set)
	m := &Model{d: d, bay: newBay(d), files: &sync.Mutex{}, latest: &atomic.Pointer[[]desk.Work]{}, later: later}
	m.bays = map[desk.SeatID]*bay{d.At(): m.bay}
	m.note()
	return m
}

// Take begins with a session.
func (m *Model) Take(s *session.Session) {
	m.take(desk.Opened{Store: s, Path: s.Path, Saved: s.Job})
}

// take puts another session on the desk and begins anew with it; one that is
// open already is as she left it.
func (m *Model) take(o desk.Opened) {
	fresh := true
	m.step = m.draft.Stand()
	if o.Anew {
		m.d.Take(o)
	} else {
		fresh = m.d.Open(o)
	}
	m.d.Message, m.d.Warn = o.Says, false
	if fresh {
		delete(m.bays, m.d.At())
		m.sayLayGone()
	} else {
		m.d.Say(text.WasOpen, m.d.Name())
	}
	m.sit()
	if fresh && o.Go != desk.NoStage {
		m.at = o.Go
	}
	m.note()
}

// sit goes to the bay of the session on the desk.
func (m *Model) sit() {
	b := m.bays[m.d.At()]
	if b == nil {
		b = newBay(m.d)
		m.bays[m.d.At()] = b
	}
	m.bay = b
	m.over = nil
}

// seat goes to another open session, with what was typed here accepted.
func (m *Model) seat(to desk.SeatID) tea.Cmd {
	if to == m.d.At() {
		m.over = nil
		return nil
	}
	cmd := m.settle()
	m.step = m.draft.Stand()
	if m.d.Switch(to) {
		m.sit()
		m.d.Say(text.SeatNow, m.d.Client())
		m.note()
	}
	return cmd
}

// stepOf is the step that an open session stands at, and how many it has.
func (m *Model) stepOf(id desk.SeatID) (at, of int) {
	b := m.bays[id]
	switch {
	case b == nil:
		return 0, 0
	case id == m.d.At():
		return m.draft.Step(), len(m.d.Sheet().Steps)
	}
	of = len(m.d.SheetOf(m.d.JobOf(id)).Steps)
	return min(max(b.step, 1), of), of
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
	all := m.d.Works()
	m.latest.Store(&all)
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
	cmd = m.update(msg)
	m.curtain()
	return m, cmd
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
	case released:
		m.release(msg)
	case rescueDue:
		return m.rescueNow()
	case rescued:
		return m.rescueDone(msg)
	case copied:
		m.copiedNow(msg)
	case grown:
		return m.growOn(msg)
	case settingsKept:
		m.settingsDone(msg)
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
	if a.said != "" && m.d.Message == a.said {
		m.d.Message = ""
	}
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
