package shell

import (
	"strings"

	"github.com/charmbracelet/x/ansi"

	"chalkfold/ui/text"
)

// pageWidth is the width of words for people.
const pageWidth = 78

// page collects lines of words.
type page struct {
	strings.Builder
	ascii bool // no signs beyond ASCII
}

// line writes one line, its pieces joined.
func (p *page) line(pieces ...string) {
	s := strings.TrimRight(strings.Join(pieces, ""), " ")
	if p.ascii {
		s = text.Plain(s)
	}
	p.WriteString(s + "\n")
}

// para writes words behind a label, wrapped, the label's width kept free.
func (p *page) para(label, words string) {
	if words == "" {
		return
	}
	indent := strings.Repeat(" ", ansi.StringWidth(label))
	for i, l := range strings.Split(ansi.Wordwrap(words, pageWidth-len(indent), ""), "\n") {
		if i > 0 {
			label = indent
		}
		p.line(label, l)
	}
}

// table writes rows with their columns under each other. Columns named in
// right stand at the right.
func (p *page) table(rows [][]string, right ...int) {
	var width []int
	for _, r := range rows {
		for i, cell := range r {
			if i == len(width) {
				width = append(width, 0)
			}
			width[i] = max(width[i], ansi.StringWidth(cell))
		}
	}
	flush := map[int]bool{}
	for _, i := range right {
		flush[i] = true
	}
	for _, r := range rows {
		var b strings.Builder
		for i, cell := range r {
			pad := strings.Repeat(" ", width[i]-ansi.StringWidth(cell))
			if flush[i] {
				cell = pad + cell
			} else if i < len(r)-1 {
				cell += pad
			}
			if i > 0 {
				b.WriteString("  ")
			}
			b.WriteString(cell)
		}
		p.line(b.String())
	}
}

// spaced is an id in words: front_neck_facing, front neck facing.
func spaced[T ~string](id T) string { return strings.ReplaceAll(string(id), "_", " ") }

// title is the same with a capital.
func capital(s string) string {
	if s == "" {
		return s
	}
	return strings.ToUpper(s[:1]) + s[1:]
}
