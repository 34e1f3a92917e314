package leaflet

import (
	"fmt"
	"io"
	"strings"
	"unicode"

	"chalkfold/export/pdf"
)

// WriteMarkdown writes the document as Markdown.
func (l *Leaflet) WriteMarkdown(w io.Writer) error {
	m := &marker{}
	m.line("# " + plain(l.Title))
	for _, b := range l.blocks {
		b.markdown(m)
	}
	_, err := io.WriteString(w, m.b.String())
	return err
}

// marker writes Markdown, a blank line between blocks.
type marker struct{ b strings.Builder }

func (m *marker) line(s string) {
	m.b.WriteString(strings.TrimRight(s, " "))
	m.b.WriteByte('\n')
}

func (m *marker) gap() { m.b.WriteByte('\n') }

func (h heading) markdown(m *marker) {
	m.gap()
	m.line(strings.Repeat("#", h.level+1) + " " + plain(h.text))
}

func (p paragraph) markdown(m *marker) {
	m.gap()
	m.line(plain(string(p)))
}

func (l list) markdown(m *marker) {
	m.gap()
	for i, item := range l.items {
		mark := "- "
		switch l.mark {
		case pdf.Number:
			mark = fmt.Sprintf("%d. ", i+1)
		case pdf.Tick:
			mark = "- [ ] "
		}
		text := plain(item.Text)
		if item.Lead != "" {
			text = strings.TrimSpace("**" + plain(item.Lead) + "** " + text)
		}
		m.line(mark + text)
	}
}

func (t table) markdown(m *marker) {
	m.gap()
	n := len(t.Heads)
	for _, r := range t.Rows {
		n = max(n, len(r))
	}
	row := func(cells []string) {
		s := "|"
		for i := range n {
			c := ""
			if i < len(cells) {
				c = plain(cells[i])
			}
			s += " " + c + " |"
		}
		m.line(s)
	}
	row(t.Heads)
	rule := "|"
	for i := range n {
		if i < len(t.Right) && t.Right[i] {
			rule += "---:|"
		} else {
			rule += "---|"
		}
	}
	m.line(rule)
	for _, r := range t.Rows {
		row(r)
	}
}

func (f figure) markdown(m *marker) {
	if f.Caption != "" {
		m.gap()
		m.line(plain(f.Caption))
	}
}

func (turn) markdown(*marker)    {}
func (keep) markdown(*marker)    {}
func (columns) markdown(*marker) {}

// plainer keeps what stands in a name from being read as Markdown.
var plainer = strings.NewReplacer(`\`, `\\`, "|", `\|`, "*", `\*`, "_", `\_`, "`", "\\`", "<", `\<`, "[", `\[`, "]", `\]`, "#", `\#`)

func plain(s string) string {
	s = strings.ToValidUTF8(s, "\ufffd")
	s = strings.Map(func(r rune) rune {
		switch {
		case unicode.IsSpace(r) && r != '\u00a0':
			return ' '
		case unicode.IsControl(r):
			return -1
		}
		return r
	}, s)
	return plainer.Replace(s)
}
