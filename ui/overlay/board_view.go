package overlay

import (
	"strings"

	"github.com/charmbracelet/x/ansi"

	"chalkfold/ui/desk"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
)

// From these rows on there is room for more than the list.
const (
	titleFrom = 3  // the title
	howFrom   = 6  // how to use it
	airFrom   = 14 // empty lines between the parts
)

// View composes title, sentences, field and rows; what does not fit of the
// rows scrolls, what does not fit of the rest is left out.
func (b *board) View(r desk.Rect) []string {
	if r.Rows <= 0 || r.Columns <= 0 {
		b.hit = nil
		return desk.Block(nil, r)
	}
	b.list() // what stands above the rows may come of them
	head := b.head(r)
	tail := b.foot(desk.Rect{Columns: r.Columns, Rows: r.Rows - len(head)})
	room := r.Rows - len(head) - len(tail)
	lines, of := b.body(r.Columns)
	b.scroll(of, len(lines), room)
	b.hit = make([]int, r.Rows)
	for i := range b.hit {
		b.hit[i] = -1
	}
	out := make([]string, 0, r.Rows)
	out = append(out, head...)
	for i := b.top; i < len(lines) && i < b.top+room; i++ {
		if of[i] >= 0 {
			b.hit[len(out)] = of[i]
		}
		out = append(out, lines[i])
	}
	for len(out) < r.Rows-len(tail) {
		out = append(out, "")
	}
	if len(tail) > 0 && len(lines) > b.top+room {
		more := b.d.Plain(b.d.Words.Count(len(lines)-b.top-room, text.HelpMoreOne, text.HelpMore))
		tail[0] = b.d.Paint(theme.Muted, rightAligned(more, r.Columns))
	}
	return desk.Block(append(out, tail...), r)
}

// head is all that stands above the rows. At least one line is left for them.
func (b *board) head(r desk.Rect) []string {
	d := b.d
	var out []string
	if r.Rows >= titleFrom {
		out = append(out, " "+d.Paint(theme.Title, desk.Clip(d.Plain(b.title), r.Columns-1)))
	}
	if r.Rows >= airFrom {
		out = append(out, "")
	}
	out = append(out, b.told(r.Columns-2, r.Rows/2-len(out))...)
	if b.field != "" && r.Rows >= 2 {
		line := " " + d.Tell(b.field, d.Plain(tailOf(b.typed, r.Columns-10))+"_")
		count := ""
		if n := len(b.list()); b.typed != "" && !b.reads && !b.entry {
			count = d.Tell(text.FoundCount, n)
		}
		if ansi.StringWidth(line)+ansi.StringWidth(count)+2 <= r.Columns {
			line = desk.Fit(line, r.Columns-ansi.StringWidth(count)-1) + d.Paint(theme.Muted, count)
		}
		out = append(out, line)
	}
	if n := len(out); r.Rows >= airFrom && n > 0 && out[n-1] != "" {
		out = append(out, "")
	}
	return out[:min(len(out), r.Rows-1)]
}

// told are the sentences above the rows, as many lines as there is room for;
// the last says how many are left out.
func (b *board) told(width, most int) []string {
	var out []string
	for _, s := range b.says {
		for _, l := range desk.Wrap(b.d.Plain(s), width) {
			out = append(out, " "+b.d.Paint(theme.Text, l))
		}
	}
	if left := len(out) - most + 1; left > 1 && most > 0 {
		out = append(out[:most-1], " "+b.d.Paint(theme.Muted, b.d.Tell(text.HelpMore, left)))
	}
	return out[:max(0, min(len(out), most))]
}

// foot is what stands below the rows: a line of air that also says how much
// more there is, a picture where there is one, and how to use it.
func (b *board) foot(r desk.Rect) []string {
	if r.Rows < howFrom {
		return nil
	}
	out := []string{""}
	if b.tail != nil {
		out = append(out, b.tail(desk.Rect{Columns: r.Columns, Rows: r.Rows - 5})...)
	}
	if b.how == "" {
		return out
	}
	for _, l := range desk.Wrap(b.d.Tell(b.how), r.Columns-2) {
		if len(out) < r.Rows-3 {
			out = append(out, " "+b.d.Paint(theme.Muted, l))
		}
	}
	return out
}

// scroll keeps the row in hand in sight.
func (b *board) scroll(of []int, all, room int) {
	b.page = max(1, room)
	if !b.reads {
		first, last := -1, -1
		for i, n := range of {
			if n == b.at {
				if first < 0 {
					first = i
				}
				last = i
			}
		}
		if first > 0 && of[first-1] < 0 && b.at == 0 {
			first = 0 // the heading of the first group
		}
		if last >= b.top+room {
			b.top = last - room + 1
		}
		if first >= 0 && first < b.top {
			b.top = first
		}
	}
	b.top = max(0, min(b.top, all-room))
}

// body is all rows as lines, and which row each line belongs to.
func (b *board) body(cols int) (lines []string, of []int) {
	rows := b.list()
	if len(rows) == 0 {
		says := b.d.Tell(text.ListEmpty)
		if b.typed != "" {
			says = b.d.Tell(text.FindNothing, b.d.Plain(b.typed))
		}
		if b.reads || b.typed == "" && b.field != "" && b.field != text.FindLabel {
			says = "" // nothing is looked for
		}
		for _, l := range desk.Wrap(says, cols-4) {
			lines, of = append(lines, "  "+b.d.Paint(theme.Muted, l)), append(of, -1)
		}
		return lines, of
	}
	c := b.columns(rows, cols)
	group := ""
	for i, r := range rows {
		if r.group != group {
			group = r.group
			if len(lines) > 0 {
				lines, of = append(lines, ""), append(of, -1)
			}
			lines, of = append(lines, " "+b.d.Paint(theme.Title, desk.Clip(b.d.Plain(group), cols-1))), append(of, -1)
		}
		for _, l := range b.row(r, i == b.at && !b.reads, c) {
			lines, of = append(lines, l), append(of, i)
		}
	}
	return lines, of
}

// columns is how a list shares its width.
type columns struct {
	all, title, right int
	beside            bool // the sentence beside the title
}

// leastSays is the least room for a sentence beside its title; widest is what
// the eye follows without losing the line.
const (
	leastSays = 26
	widest    = 90
)

func (b *board) columns(rows []row, cols int) columns {
	c := columns{all: cols}
	for _, r := range rows {
		c.title = max(c.title, ansi.StringWidth(b.d.Plain(r.title)))
		c.right = max(c.right, ansi.StringWidth(b.d.Plain(r.right)))
	}
	least := 0
	for _, r := range rows {
		if r.says != "" || r.whyNot != "" {
			least = leastSays
		}
	}
	c.beside = cols-2-c.title-2-c.right-2 >= least
	return c
}

// row is one row as lines.
func (b *board) row(r row, on bool, c columns) []string {
	d := b.d
	marker, look := "  ", theme.Text
	switch {
	case on:
		marker, look = "> ", theme.Selected
	case r.whyNot != "":
		look = theme.Muted
	case r.here:
		look = theme.Accent
	}
	says := d.Plain(r.says)
	if r.whyNot != "" {
		says = notNow(d, r.whyNot)
	}
	title, right := d.Plain(r.title), d.Plain(r.right)
	if !c.beside {
		return b.stacked(marker, look, title, says, right, c)
	}
	indent := 2 + c.title + 2
	if c.right > 0 {
		indent += c.right + 2
	}
	said := desk.Wrap(says, min(c.all-indent-1, widest))
	if len(said) == 0 {
		said = []string{""}
	}
	out := make([]string, len(said))
	for i, s := range said {
		if i > 0 {
			out[i] = strings.Repeat(" ", indent) + d.Paint(theme.Muted, s)
			continue
		}
		out[i] = marker + d.Paint(look, title) + strings.Repeat(" ", c.title-ansi.StringWidth(title)+2)
		if c.right > 0 {
			out[i] += d.Paint(theme.Key, right) + strings.Repeat(" ", c.right-ansi.StringWidth(right)+2)
		}
		out[i] = strings.TrimRight(out[i]+d.Paint(theme.Muted, s), " ")
	}
	return out
}

// stacked is a row whose sentence stands below its title.
func (b *board) stacked(marker string, look theme.Role, title, says, right string, c columns) []string {
	d := b.d
	room := c.all - 2
	line := marker + d.Paint(look, desk.Clip(title, room))
	switch w := ansi.StringWidth(title); {
	case right == "":
	case 2+c.title+2+c.right <= c.all:
		line += strings.Repeat(" ", c.title-w+2) + d.Paint(theme.Key, right)
	case w+2+ansi.StringWidth(right) <= room:
		line += strings.Repeat(" ", room-w-ansi.StringWidth(right)) + d.Paint(theme.Key, right)
	}
	out := []string{line}
	if right != "" && 2+c.title+2+c.right > c.all && ansi.StringWidth(title)+2+ansi.StringWidth(right) > room {
		out = append(out, "    "+d.Paint(theme.Key, desk.Clip(right, c.all-4))) // below, not left out
	}
	for _, s := range desk.Wrap(says, c.all-6) {
		out = append(out, "    "+d.Paint(theme.Muted, s))
	}
	return out
}

func rightAligned(s string, cols int) string {
	return strings.Repeat(" ", max(0, cols-ansi.StringWidth(s)-1)) + s
}

// tailOf is the end of a text that is too long for its field.
func tailOf(s string, width int) string {
	w := ansi.StringWidth(s)
	if w <= width || width < 1 {
		return s
	}
	return ansi.TruncateLeft(s, w-width, "")
}
