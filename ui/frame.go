package ui

import (
	"chalkfold/ui/desk"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
)

// The least screen on which the workbench works.
const (
	leastCols = 60
	leastRows = 16
)

func (m *Model) small() bool { return m.cols < leastCols || m.rows < leastRows }

// View is exactly as many lines as the screen has, none wider than it.
func (m *Model) View() (frame string) {
	if m.cols <= 0 || m.rows <= 0 || m.leaving || m.fault != nil {
		return ""
	}
	defer func() {
		if r := recover(); r != nil {
			m.fault = newFault(r)
			frame = m.d.Tell(text.CrashTitle)
			if m.send != nil {
				m.send(*m.fault)
			}
		}
	}()
	var b []byte
	for i, line := range m.painted() {
		if i > 0 {
			b = append(b, '\n')
		}
		b = theme.Thrift(b, line)
	}
	return string(b)
}

// painted are the lines of the window, each in full.
func (m *Model) painted() []string {
	lines, out := m.lines(), make([]string, m.rows)
	for i := range out {
		line := ""
		if i < len(lines) {
			line = lines[i]
			if m.d.Settings.Comma {
				line = text.Comma(line)
			}
		}
		out[i] = m.d.Settings.Theme.Fill(line, m.cols)
	}
	return out
}

func (m *Model) lines() []string {
	m.spans = m.spans[:0]
	whole := desk.Rect{Columns: m.cols, Rows: m.rows}
	o := m.top()
	switch {
	case m.small() && o != nil:
		return desk.Block(o.View(whole), whole)
	case m.small():
		return m.tooSmall()
	case o != nil && (o.Covers() || m.d.Projecting):
		return desk.Block(o.View(whole), whole)
	}
	body := m.body()
	lines := make([]string, 0, m.rows)
	lines = append(lines, m.first())
	if o != nil {
		lines = append(lines, desk.Block(o.View(body), body)...)
	} else {
		lines = append(lines, desk.Block(m.stage().View(body), body)...)
	}
	return append(lines, m.message(), m.last())
}

// body is the room between line 1 and the message line.
func (m *Model) body() desk.Rect { return desk.Rect{Columns: m.cols, Rows: max(m.rows-3, 0)} }

// tooSmall is one calm message in the middle of what there is.
func (m *Model) tooSmall() []string {
	d := m.d
	says := []string{
		d.Tell(text.SmallTitle) + ".",
		d.Tell(text.SmallSizes, m.cols, m.rows, leastCols, leastRows),
		d.Tell(text.SmallKeys),
	}
	if m.d.Message != "" {
		says = append(says, m.d.Message)
	}
	var out []string
	for _, s := range says {
		out = append(out, desk.Wrap(s, m.cols)...)
	}
	if len(out) > m.rows {
		out = []string{d.Tell(text.SmallBriefs, leastCols, leastRows)}
	}
	for len(out) < m.rows && len(out) < m.rows/2+2 {
		out = append([]string{""}, out...)
	}
	return desk.Block(out, desk.Rect{Columns: m.cols, Rows: m.rows})
}

// message is the line for what just happened.
func (m *Model) message() string {
	if m.d.Message == "" {
		return ""
	}
	line := desk.Brief(" "+m.d.Plain(m.d.Message), m.cols)
	if m.d.Warn {
		return m.d.Paint(theme.Warn, line)
	}
	return m.d.Paint(theme.Title, line)
}
