package ui

import (
	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/x/ansi"

	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
)

// clicker and wheeler are overlays that can be used with the mouse.
type clicker interface {
	Click(column, line int) desk.Ask
}

type wheeler interface{ Wheel(n int) }

// pointer is a stage with rows that can be clicked; it finds the one by what
// stands on the line.
type pointer interface {
	Click(line string) (ask desk.Ask, ok bool)
}

// mouse: a click on line 1 or the footer does what stands there, one on a list
// takes the row; the wheel moves a list or the zoom.
func (m *Model) mouse(msg tea.MouseMsg) tea.Cmd {
	if !m.d.Settings.Mouse || m.leaving || m.small() {
		return nil
	}
	switch {
	case msg.Button == tea.MouseButtonWheelUp:
		return m.wheel(-1)
	case msg.Button == tea.MouseButtonWheelDown:
		return m.wheel(1)
	case msg.Button != tea.MouseButtonLeft || msg.Action != tea.MouseActionPress:
		return nil
	}
	m.d.Message, m.d.Warn = "", false
	for _, s := range m.spans {
		if msg.Y == s.row && msg.X >= s.from && msg.X < s.to {
			return m.do(s.id)
		}
	}
	if o := m.top(); o != nil {
		if c, ok := o.(clicker); ok {
			return m.fulfil(c.Click(msg.X, msg.Y-1), o)
		}
		return nil
	}
	return m.clickRow(msg.X, msg.Y)
}

// clickRow takes the row of the stage at that place: rows stand at the left.
func (m *Model) clickRow(x, y int) tea.Cmd {
	s, ok := m.stage().(pointer)
	lines := m.lines()
	if !ok || x > m.cols*2/3 || y < 1 || y >= len(lines)-2 {
		return nil
	}
	m.still()
	if ask, ok := s.Click(ansi.Strip(lines[y])); ok {
		return m.fulfil(ask, m.stage())
	}
	return nil
}

func (m *Model) wheel(n int) tea.Cmd {
	o := m.top()
	if o == nil {
		id := zooms[(n+1)/2]
		if m.stage().Typing() {
			id = fields[(n+1)/2]
		}
		return m.fulfil(m.stage().Do(id), m.stage())
	}
	if w, ok := o.(wheeler); ok {
		w.Wheel(n)
	}
	return nil
}

// What the wheel does at the table and in a form, away from her and towards
// her.
var (
	zooms  = [2]keys.ID{"zoom-in", "zoom-out"}
	fields = [2]keys.ID{"field-up", "field-down"}
)
