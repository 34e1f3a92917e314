package overlay

import (
	"strings"

	"github.com/charmbracelet/x/ansi"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/lesson"
	"chalkfold/ui/text"
)

// Compare puts two methods side by side in numbers, for this body: where
// thumb is generous and where it pinches; of a direct block, where it parts
// from the measured draft.
func Compare(d *desk.Desk) desk.Overlay {
	method := func(m string) *pattern.Sheet {
		return d.SheetOf(d.Job().WithStyle(pattern.Method, pattern.PickValue(m)))
	}
	c := comparison{d: d, name: text.CompareThumb, other: method(pattern.Thumb), tape: method(pattern.Measured)}
	says := text.CompareSays
	if d.Job().Style.Method() == pattern.Direct {
		c.name, c.other, says = text.CompareDirect, method(pattern.Direct), text.CompareBlockSays
	}
	b := &board{d: d, title: d.Tell(text.CompareTitle), how: text.ReadHow, says: []string{d.Tell(says)}, reads: true}
	if names := missing(d, c.tape); names != "" {
		b.says = append(b.says, d.Tell(text.StyleNotDrawn, names))
	}
	if names := lesson.Rests(c.other, c.tape); len(names) > 0 {
		for i, n := range names {
			names[i] = d.Trade(n)
		}
		b.says = append(b.says, d.Tell(text.CompareProposed, strings.Join(names, ", ")))
	}
	rows := c.rows()
	b.rows = func(string) []row { return rows }
	return b
}

// missing names the measurements that the draft waits for.
func missing(d *desk.Desk, s *pattern.Sheet) string {
	var names []string
	for _, x := range s.Missing {
		if m, ok := measure.Find(x.ID); ok {
			names = append(names, strings.ToLower(d.Trade(m.Term)))
		}
	}
	return strings.Join(names, ", ")
}

// comparison is the two sheets of one body.
type comparison struct {
	d           *desk.Desk
	name        text.ID // of the other method
	other, tape *pattern.Sheet
}

func (c comparison) rows() []row {
	d, u := c.d, c.d.Unit()
	rows := []row{{
		group: d.Tell(text.CompareLevels), right: c.cells(d.Tell(c.name), d.Tell(text.CompareMeasured), d.Tell(text.CompareApart)),
	}}
	for _, f := range lesson.Compared(c.other, c.tape) {
		say := func(l measure.Length, ok bool) string {
			if !ok {
				return d.Tell(text.CompareWaits)
			}
			return u.Tape(l)
		}
		rows = append(rows, row{
			group: d.Tell(f.Group), title: d.Plain(f.Name(d.Words)),
			right: c.cells(say(f.Other, f.Known[0]), say(f.Tape, f.Known[1]), f.Apart(u)),
		})
	}
	return rows
}

// cells are three columns of figures, each ending where the others end.
func (c comparison) cells(values ...string) string {
	var b strings.Builder
	for _, v := range values {
		v = c.d.Plain(v)
		b.WriteString(strings.Repeat(" ", max(1, 10-ansi.StringWidth(v))) + v)
	}
	return strings.TrimPrefix(b.String(), " ")
}
