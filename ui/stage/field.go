package stage

import (
	"unicode"

	"chalkfold/ui/desk"
	"chalkfold/ui/theme"
)

// field is one line of text that is being typed.
type field struct {
	text   []rune
	cursor int
}

// longest is the most a field takes; a paste of a whole book must not fill
// the memory.
const longest = 200

func (f *field) set(s string) {
	f.text = []rune(s)
	f.cursor = len(f.text)
}

func (f *field) string() string { return string(f.text) }

// insert puts letters in at the cursor; controls become blanks.
func (f *field) insert(rs []rune) {
	var clean []rune
	for _, r := range rs {
		switch {
		case len(f.text)+len(clean) >= longest:
		case unicode.IsControl(r):
			clean = append(clean, ' ')
		case unicode.IsPrint(r) || unicode.Is(unicode.M, r):
			clean = append(clean, r)
		}
	}
	t := make([]rune, 0, len(f.text)+len(clean))
	t = append(t, f.text[:f.cursor]...)
	t = append(t, clean...)
	f.text = append(t, f.text[f.cursor:]...)
	f.cursor += len(clean)
}

// key is an editing key; false: not one of them.
func (f *field) key(name string) bool {
	switch name {
	case "backspace":
		if f.cursor > 0 {
			f.text = append(f.text[:f.cursor-1], f.text[f.cursor:]...)
			f.cursor--
		}
	case "delete":
		if f.cursor < len(f.text) {
			f.text = append(f.text[:f.cursor], f.text[f.cursor+1:]...)
		}
	case "left":
		f.cursor = max(0, f.cursor-1)
	case "right":
		f.cursor = min(len(f.text), f.cursor+1)
	case "home":
		f.cursor = 0
	case "end":
		f.cursor = len(f.text)
	default:
		return false
	}
	return true
}

// view shows the text in so many cells, reversed, with the cursor as a plain
// cell in it, and scrolls so that the cursor is seen.
func (f *field) view(d *desk.Desk, width int) string {
	if width < 2 {
		return desk.Fit("", width)
	}
	from := max(0, f.cursor-width+1)
	head := d.Plain(string(f.text[from:f.cursor]))
	at, tail := " ", ""
	if f.cursor < len(f.text) {
		at = d.Plain(string(f.text[f.cursor]))
		tail = d.Plain(string(f.text[f.cursor+1:]))
	}
	line := desk.Fit(head+at+tail, width)
	headCells := len([]rune(head))
	rs := []rune(line)
	if headCells >= len(rs) {
		return d.Paint(theme.Selected, line)
	}
	sel := func(s []rune) string { return d.Paint(theme.Selected, string(s)) }
	return sel(rs[:headCells]) + d.Settings.Theme.Underlined(theme.Key).Render(string(rs[headCells:headCells+1])) + sel(rs[headCells+1:])
}
