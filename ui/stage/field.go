package stage

import (
	"unicode"

	"github.com/charmbracelet/bubbles/textinput"
	tea "github.com/charmbracelet/bubbletea"

	"chalkfold/ui/desk"
	"chalkfold/ui/theme"
)

// field is one line of text that is being typed. The library's input edits;
// how it looks is ours, so that the theme paints it and it has just its cells.
type field struct {
	input textinput.Model
	ready bool
}

// longest is the most a field takes; a paste of a whole book must not fill
// the memory.
const longest = 200

// in is the input, made when it is first wanted: its cursor does not blink, so
// that nothing ticks while she thinks.
func (f *field) in() *textinput.Model {
	if !f.ready {
		f.input = textinput.New()
		f.input.CharLimit = longest
		f.input.Focus()
		f.ready = true
	}
	return &f.input
}

func (f *field) set(s string) {
	f.in().SetValue(s)
	f.in().CursorEnd()
}

func (f *field) string() string { return f.in().Value() }

// insert puts letters in at the cursor; controls become blanks.
func (f *field) insert(rs []rune) {
	var clean []rune
	for _, r := range rs {
		switch {
		case unicode.IsControl(r):
			clean = append(clean, ' ')
		case unicode.IsPrint(r) || unicode.Is(unicode.M, r):
			clean = append(clean, r)
		}
	}
	if len(clean) > 0 {
		f.send(tea.KeyMsg{Type: tea.KeyRunes, Runes: clean})
	}
}

func (f *field) send(k tea.KeyMsg) { *f.in(), _ = f.in().Update(k) }

// editing are the keys that edit.
var editing = map[string]tea.KeyType{
	"backspace": tea.KeyBackspace, "delete": tea.KeyDelete, "left": tea.KeyLeft, "right": tea.KeyRight, "home": tea.KeyHome, "end": tea.KeyEnd,
}

// key is an editing key; false: not one of them.
func (f *field) key(name string) bool {
	k, ok := editing[name]
	if ok {
		f.send(tea.KeyMsg{Type: k})
	}
	return ok
}

// view shows the text in so many cells, reversed, with the cursor as a plain
// cell in it, and scrolls so that the cursor is seen.
func (f *field) view(d *desk.Desk, width int) string {
	if width < 2 {
		return desk.Fit("", width)
	}
	typed, cursor := []rune(f.string()), f.in().Position()
	from := max(0, cursor-width+1)
	head := d.Plain(string(typed[from:cursor]))
	at, tail := " ", ""
	if cursor < len(typed) {
		at = d.Plain(string(typed[cursor]))
		tail = d.Plain(string(typed[cursor+1:]))
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
