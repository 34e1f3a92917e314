package desk

import (
	"strings"

	"github.com/charmbracelet/x/ansi"

	"chalkfold/ui/canvas"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
)

// Paint writes words in the look of a role.
func (d *Desk) Paint(r theme.Role, words string) string {
	return d.Settings.Theme.Style(r).Render(words)
}

// Tell is a sentence of the catalogue, with signs that the glyphs have.
func (d *Desk) Tell(id text.ID, args ...any) string { return d.Plain(d.Words.Say(id, args...)) }

// Trade is a sentence that stands in its row in another room.
func (d *Desk) Trade(words string) string { return d.Plain(d.Words.Pass(words)) }

// Plain takes the signs that ASCII lacks out of a text, where only ASCII is
// drawn, and controls always: a name may come from anywhere.
func (d *Desk) Plain(s string) string {
	s = strings.Map(func(r rune) rune {
		if r < ' ' || r == 0x7f || (r >= 0x80 && r < 0xa0) {
			return ' '
		}
		return r
	}, s)
	if d.Settings.Glyphs == canvas.ASCII {
		return text.Plain(s)
	}
	return s
}

// Fit cuts a line to so many cells, or fills it up with blanks.
func Fit(line string, width int) string {
	w := ansi.StringWidth(line)
	switch {
	case width <= 0:
		return ""
	case w > width:
		return ansi.Truncate(line, width, "")
	case w < width:
		return line + strings.Repeat(" ", width-w)
	}
	return line
}

// Clip cuts a line to so many cells and leaves a short one as it is.
func Clip(line string, width int) string {
	if ansi.StringWidth(line) <= width {
		return line
	}
	return ansi.Truncate(line, max(width, 0), "")
}

// Wrap breaks a text between words into lines of at most so many cells.
func Wrap(words string, width int) []string {
	if width <= 0 || words == "" {
		return nil
	}
	return strings.Split(ansi.Wrap(words, width, ""), "\n")
}

// Block makes exactly so many lines out of some: it cuts what is too much and
// adds empty ones.
func Block(lines []string, r Rect) []string {
	out := make([]string, max(r.Rows, 0))
	for i := range out {
		if i < len(lines) {
			out[i] = Clip(lines[i], r.Columns)
		}
	}
	return out
}
