package ui

import (
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"chalkfold/pattern"
	"chalkfold/ui/canvas"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/overlay"
	"chalkfold/ui/text"
)

// key takes one message of the keyboard. Letters read at once come in one
// message; each is a key of its own, since the first may go to another screen.
func (m *Model) key(msg tea.KeyMsg) tea.Cmd {
	if m.leaving {
		return nil
	}
	m.d.Message, m.d.Warn = "", false
	m.still()
	if m.top() == nil {
		m.shutting = 0
	}
	if msg.Paste {
		return m.typed(desk.Key{Runes: msg.Runes, Paste: true})
	}
	if msg.Alt {
		return nil
	}
	if msg.Type == tea.KeyCtrlC {
		return m.interrupt()
	}
	if msg.Type != tea.KeyRunes {
		return m.press(msg.String(), msg.Runes)
	}
	var cmds []tea.Cmd
	for _, r := range msg.Runes {
		if c := m.press(string(r), []rune{r}); c != nil {
			cmds = append(cmds, c)
		}
		if m.leaving {
			break
		}
	}
	return tea.Batch(cmds...)
}

// press is one key.
func (m *Model) press(name string, rs []rune) tea.Cmd {
	id, ok := m.learnKey(name)
	if !ok {
		id, ok = m.d.Keys.ByKey(m.where(), name)
	}
	if p := m.onProjector(); p != nil {
		return m.pressOn(p, name, rs, id, ok)
	}
	switch {
	case m.small() && m.top() == nil:
		return m.pressSmall(id)
	case ok:
		return m.do(id)
	}
	return m.typed(desk.Key{Name: name, Runes: rs})
}

// pressSmall is a key while the window is too small: save, leave, undo.
func (m *Model) pressSmall(id keys.ID) tea.Cmd {
	switch id {
	case keys.Save, keys.Leave, keys.Undo, keys.Redo:
		return m.do(id)
	}
	return nil
}

// typed is a key that no action took: text, if there is a field for it.
func (m *Model) typed(k desk.Key) tea.Cmd {
	if o := m.top(); o != nil {
		return m.fulfil(o.Type(k), o)
	}
	s := m.stage()
	if p := m.pupil(); p != nil && p.Asking() {
		return m.fulfil(p.AskType(k), s)
	}
	if s.Typing() {
		return m.fulfil(s.Type(k), s)
	}
	return nil
}

// placed is a stage that works by other keys for a while: at a question, in a
// lesson. The zero place is its usual one.
type placed interface{ Where() keys.Where }

// where is the place whose keys work now.
func (m *Model) where() keys.Where {
	switch {
	case m.onProjector() != nil:
		return keys.Projector
	case m.top() != nil:
		return keys.Overlay
	case m.small():
		return keys.NotTyping
	}
	if p, ok := m.stage().(placed); ok && p.Where() != keys.Everywhere {
		return p.Where()
	}
	if m.stage().Typing() {
		return keys.Field
	}
	return places[m.at-1]
}

var places = [6]keys.Where{keys.Measure, keys.Style, keys.Draft, keys.True, keys.Lay, keys.Cut}

var digits = map[keys.ID]desk.StageID{"measure": desk.Measure, "style": desk.Style, "draft": desk.Draft, "true": desk.True, "lay": desk.Lay, "cut": desk.Cut}

// do does an action of the key table: what belongs to the whole workbench
// here, the rest where it belongs.
func (m *Model) do(id keys.ID) tea.Cmd {
	if to, ok := digits[id]; ok {
		return m.digit(to, id)
	}
	if why := m.hidden(id); why != "" {
		m.projector().Note(m.d.Tell(text.NotNow, why))
		return nil
	}
	if cmd, ok := m.learn(id); ok {
		return cmd
	}
	if o := m.window(id); o != nil {
		return m.lay(o)
	}
	switch id {
	case keys.Fitting:
		if why := m.whyNot(id); why != "" {
			m.d.Message, m.d.Warn = m.d.Words.Say(text.NotNow, why), true
			return nil
		}
		return tea.Batch(m.settle(), m.lay(overlay.Fitting(m.d)))
	case keys.Class:
		o := overlay.Class(m.d)
		return tea.Batch(m.lay(o), m.fulfil(o.Do(id), o))
	case keys.SaveAs:
		return tea.Batch(m.settle(), m.lay(overlay.SaveAs(m.d)))
	case keys.Save:
		return tea.Batch(m.settle(), m.save(desk.Save{}, false))
	case keys.Undo:
		return m.undoKey()
	case keys.Redo:
		return m.undo(m.d.Redo, text.Redone, text.NothingToRedo)
	case keys.StageNext:
		return m.turn(1)
	case keys.StageBack:
		return m.turn(-1)
	case keys.Leave:
		return m.leaveKey()
	case keys.CloseClient:
		return tea.Batch(m.settle(), m.shut(m.d.At(), false, false))
	case keys.NewClient:
		return m.newClient()
	case keys.Project:
		return m.project()
	case keys.CopyOut:
		return m.copyOut()
	case keys.PutToSleep:
		return tea.Suspend
	}
	if cmd, ok := m.looks(id); ok {
		return cmd
	}
	return m.pass(id)
}

// window is the overlay that an action opens, nil if it opens none.
func (m *Model) window(id keys.ID) desk.Overlay {
	switch id {
	case keys.Help:
		return overlay.Help(m.d, m.help())
	case keys.Commands:
		return overlay.Commands(m.d, m.offers())
	case keys.Open:
		return overlay.Open(m.d)
	case keys.Clients:
		return overlay.Clients(m.d, m.stepOf)
	case keys.First:
		return overlay.Start(m.d)
	case keys.Settings:
		return overlay.Settings(m.d)
	case keys.Compare:
		return overlay.Compare(m.d)
	case keys.Alterations:
		return overlay.Alterations(m.d)
	case keys.Months:
		return overlay.Months(m.d)
	case keys.Words:
		return overlay.Words(m.d)
	case "ease":
		return overlay.Ease(m.d)
	case "readout":
		if m.d.Sheet().Complete {
			return overlay.Readout(m.d)
		}
	case "steps":
		return overlay.Steps(m.d, m.draft.Step(), m.toStep)
	}
	return nil
}

// pass hands an action to the top overlay or the stage.
func (m *Model) pass(id keys.ID) tea.Cmd {
	if o := m.top(); o != nil {
		return m.fulfil(o.Do(id), o)
	}
	s := m.stage()
	typing := s.Typing()
	step := m.draft.Step()
	cmd := m.fulfil(s.Do(id), s)
	if m.draft.Step() > step {
		cmd = tea.Batch(cmd, m.grow(id))
	}
	if id == keys.Back && !typing && m.d.Message == "" {
		m.d.Say(text.EscGround)
	}
	return cmd
}

// digit goes to a stage; the digit of the present one returns to its field.
func (m *Model) digit(to desk.StageID, id keys.ID) tea.Cmd {
	if m.top() != nil {
		m.over = nil
	}
	if to == m.at {
		return m.fulfil(m.stage().Do(id), m.stage())
	}
	return m.goTo(to)
}

// lay lays an overlay over what is there; one of the same kind does not come
// twice.
func (m *Model) lay(o desk.Overlay) tea.Cmd {
	if t := m.top(); t != nil && t.Title() == o.Title() {
		return nil
	}
	m.over = append(m.over, o)
	return nil
}

// toStep shows a step of the draft.
func (m *Model) toStep(n int) desk.Ask {
	m.draft.GoTo(n)
	return desk.Ask{Close: true, Go: desk.Draft}
}

// turn goes a stage on or back, round the end.
func (m *Model) turn(by int) tea.Cmd {
	m.over = nil
	return m.goTo(desk.StageID((int(m.at)-1+by+6)%6 + 1))
}

// undoKey: in a field with unaccepted text the stored value comes back first.
func (m *Model) undoKey() tea.Cmd {
	if m.top() == nil {
		if ask := m.stage().Do(keys.Undo); ask.Say != "" {
			return m.fulfil(ask, m.stage())
		}
	}
	return m.undo(m.d.Undo, text.Undone, text.NothingToUndo)
}

// again is how soon a second Ctrl+C leaves at once.
const again = 2 * time.Second

// interrupt is Ctrl+C: it leaves. A second time within two seconds it asks
// nothing more: the work is rescued.
func (m *Model) interrupt() tea.Cmd {
	now := m.d.Now()
	if now.Sub(m.interrupted) < again && m.d.Unsaved() {
		return m.rescueAndQuit()
	}
	m.interrupted = now
	return m.leaveKey()
}

// leaveKey leaves, or asks; it does not ask twice at once.
func (m *Model) leaveKey() tea.Cmd {
	if o := m.top(); o != nil && o.Title() == overlay.Leave(m.d).Title() {
		return nil
	}
	return m.leave()
}

// newClient begins with an empty tape list; the client before stays open.
func (m *Model) newClient() tea.Cmd {
	return m.takeUp(desk.Opened{Saved: pattern.Job{Unit: m.d.Unit()}, Says: m.d.Tell(text.StartBegun)})
}

// looks are the actions that change how things look.
func (m *Model) looks(id keys.ID) (tea.Cmd, bool) {
	s := m.d.Settings
	switch id {
	case keys.Glyphs:
		if s.Glyphs = s.Glyphs.Next(); s.Strict && s.Glyphs == canvas.Blocks {
			s.Glyphs = s.Glyphs.Next()
		}
		m.d.Say(text.GlyphsNow, s.Glyphs, s.Glyphs.Sample())
	case keys.NextTheme:
		s.Theme = s.Theme.Next()
		if m.d.Projecting {
			s.Theme = m.d.Settings.Theme.Swap()
		}
		m.d.Say(text.ThemeNow, s.Theme.Name())
	case keys.Mouse:
		s.Mouse = !s.Mouse
		m.d.Say(text.MouseOff)
		if s.Mouse {
			m.d.Say(text.MouseOn)
		}
	case keys.ChangeUnit:
		cmd := m.settle()
		job := m.d.Job()
		job.Unit = (job.Unit + 1) % 2
		return tea.Batch(cmd, m.fulfil(desk.Ask{Job: &job, Says: m.d.Words.Say(text.UnitNow, job.Unit)}, nil)), true
	default:
		return nil, false
	}
	return m.set(s), true
}
