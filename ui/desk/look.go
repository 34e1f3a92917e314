package desk

import (
	"regexp"
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
	lines := strings.Split(ansi.Wrap(tied(words), width, ""), "\n")
	for i := range lines {
		lines[i] = untied.Replace(lines[i])
	}
	return lines
}

// tie is a blank and minus a sign that no line is broken at.
const (
	tie   = "\u00a0"
	minus = "\u2011"
)

var untied = strings.NewReplacer(tie, " ", minus, "-")

// numbers are what is read as one thing: 36 1/2, 1/2 in, 10.5 cm, 20 %, -1.
var numbers = regexp.MustCompile(`\B-\d|\d(?: \d+/\d+)?(?: (?:in|cm|mm|m|yd|yards|degrees)\b| %)?`)

// tied keeps numbers and what they count on one line.
func tied(words string) string {
	if !strings.ContainsAny(words, "0123456789") {
		return words
	}
	words = strings.ReplaceAll(words, " - ", " "+minus+" ") // a sign that stands alone would be lost at the end of a line
	return numbers.ReplaceAllStringFunc(words, func(s string) string { return strings.ReplaceAll(strings.ReplaceAll(s, " ", tie), "-", minus) })
}

// Brief is as much of a line as there is room for, cut between words, with
// dots where it was cut.
func Brief(words string, width int) string {
	const dots = "..."
	if ansi.StringWidth(words) <= width {
		return words
	}
	if width <= len(dots) {
		return Clip(words, width)
	}
	cut := ansi.Truncate(words, width-len(dots), "")
	if at := strings.LastIndexByte(cut, ' '); at > 0 && 2*ansi.StringWidth(cut[:at]) > width/2 {
		end := ""
		if strings.Contains(cut, "\x1b") {
			end = ansi.ResetStyle
		}
		cut = strings.TrimRight(cut[:at], " ,;:") + end
	}
	return cut + dots
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
