package ui

import (
	"slices"
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/overlay"
	"chalkfold/ui/session"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
)

// projecting is what the bench gets back when the projector ends.
type projecting struct{ theme theme.Theme }

// inLight is how long the name of a pressed key is shown.
const inLight = 2 * time.Second

// released says that a key's name was shown long enough.
type released struct{ serial int }

// projector is the projector if it is on, whatever lies over it.
func (m *Model) projector() *overlay.Projector {
	for _, o := range m.over {
		if p, ok := o.(*overlay.Projector); ok {
			return p
		}
	}
	return nil
}

// onProjector is the projector if it gets the keys.
func (m *Model) onProjector() *overlay.Projector {
	p, _ := m.top().(*overlay.Projector)
	return p
}

// project turns the projector on, or off where it is on.
func (m *Model) project() tea.Cmd {
	if m.projector() != nil {
		m.over = nil
		return nil
	}
	cmd := m.settle()
	m.over = nil
	m.shows.theme = m.d.Settings.Theme
	if t, err := theme.For("projector"); err == nil {
		m.d.Settings.Theme = t.With(m.shows.theme.Colour())
	}
	m.d.Projecting, m.d.Private = true, !session.IsDemo(m.d.Job())
	m.d.Message = ""
	return tea.Batch(cmd, m.lay(overlay.NewProjector(m.d, m.draft.Step())))
}

// curtain gives the bench its own colours back once the projector is gone.
func (m *Model) curtain() {
	if m.d.Projecting && m.projector() == nil {
		m.d.Projecting, m.d.Private = false, true
		m.d.Settings.Theme = m.shows.theme.With(m.d.Settings.Theme.Colour())
	}
}

// pressOn is a key on the projector. A blanked screen comes back with any key,
// and that is all the key does; F5 is what a remote sends when nobody meant it.
func (m *Model) pressOn(p *overlay.Projector, name string, rs []rune, id keys.ID, known bool) tea.Cmd {
	digit := len(rs) == 1 && rs[0] >= '0' && rs[0] <= '9'
	a, _ := m.d.Keys.Find(id)
	switch {
	case p.Blank():
		p.Wake()
		return nil
	case name == "f5":
		return nil
	case digit, p.Raw() && a.Where == keys.Projector && len(rs) == 0 && id != "show-end", p.Raw() && !known:
		return m.fulfil(p.Type(desk.Key{Name: name, Runes: rs}), p)
	case !known:
		return nil
	}
	cmd := m.do(id)
	if m.projector() != p {
		return cmd
	}
	words := a.Foot
	switch {
	case id == "show-step":
		words = m.d.Tell(text.ProjectorStep, p.Step())
	case words == "":
		words = a.Title
	}
	serial := p.Press(m.d.Trade(words))
	return tea.Batch(cmd, m.later(inLight, released{serial}))
}

// release takes a key's name from the projector.
func (m *Model) release(r released) {
	if p := m.projector(); p != nil {
		p.Release(r.serial)
	}
}

// showing are the actions that would show names or files before a class, or go
// to a stage below.
var showing = []keys.ID{keys.Open, keys.Clients, keys.Class, keys.First, keys.NewClient, keys.SaveAs, keys.Compare, keys.Fitting, keys.Alterations, keys.Months, keys.Faults, keys.Settings, keys.CopyOut}

// hidden says why an action is not for a class to see, "" if it is.
func (m *Model) hidden(id keys.ID) string {
	if m.d.Projecting && slices.Contains(showing, id) {
		return m.d.Tell(text.ProjectorStop)
	}
	return ""
}
