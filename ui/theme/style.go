package theme

import (
	"strings"

	"github.com/charmbracelet/x/ansi"
)

const reset = "\x1b[0m"

// Style writes text in one look. The zero Style writes it as it is.
type Style struct{ on string }

// Style is the look of a role.
func (t Theme) Style(r Role) Style {
	if r < 0 || int(r) >= numRoles {
		r = Text
	}
	return Style{t.sgr(looks[r])}
}

// Underlined is the look of a role with a line under it: words that can be
// explained, links.
func (t Theme) Underlined(r Role) Style {
	if r < 0 || int(r) >= numRoles {
		r = Text
	}
	l := looks[r]
	l.underline = true
	return Style{t.sgr(l)}
}

// Render writes the text. Text that carries looks of its own keeps them and
// comes back to this one after each; every line stands for itself.
func (s Style) Render(text string) string {
	if s.on == "" || text == "" {
		return text
	}
	if strings.Contains(text, reset) {
		text = strings.TrimSuffix(text, reset)
		text = strings.ReplaceAll(text, reset, s.on)
	}
	if strings.Contains(text, "\n") {
		text = strings.ReplaceAll(text, "\n", reset+"\n"+s.on)
	}
	return s.on + text + reset
}

// On is the sequence that begins the look, "" for none.
func (s Style) On() string { return s.on }

// Fill lays a line on the painted background and makes it exactly so wide: it
// cuts what is too long and fills what is short. Where the theme paints
// nothing a short line stays as it is, since blanks at the end only cost
// bytes.
func (t Theme) Fill(line string, width int) string {
	w := ansi.StringWidth(line)
	if w > width {
		line = ansi.Truncate(line, max(width, 0), "")
		w = ansi.StringWidth(line)
	}
	if !t.Paints() {
		return line
	}
	return t.Style(Text).Render(line + reset + strings.Repeat(" ", max(width-w, 0)))
}
