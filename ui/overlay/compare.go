package overlay

import (
	"strings"

	"github.com/charmbracelet/x/ansi"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/desk"
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

// figure reads one length off a sheet.
type figure func(s *pattern.Sheet) (measure.Length, bool)

func (c comparison) rows() []row {
	d := c.d
	girth := func(name string) figure {
		return func(s *pattern.Sheet) (measure.Length, bool) { return s.Girth(name) }
	}
	along := func(p pattern.PieceID, name string) figure {
		return func(s *pattern.Sheet) (measure.Length, bool) {
			dim, ok := s.SewnDimension(p, name)
			return dim.Length, ok
		}
	}
	level := func(p pattern.PieceID, name string) figure {
		return func(s *pattern.Sheet) (measure.Length, bool) {
			at, ok := s.SewnPoint(p, name)
			return measure.Length(at.Y), ok
		}
	}
	ease := func(name string, id measure.ID) figure {
		return func(s *pattern.Sheet) (measure.Length, bool) {
			g, ok := s.Girth(name)
			f, also := s.Figure(id)
			return g - f.Value, ok && also
		}
	}
	front, back := d.Tell(text.CompareFront), d.Tell(text.CompareBack)
	levels, girths, edges, room := d.Tell(text.CompareLevels), d.Tell(text.CompareGirths), d.Tell(text.CompareEdges), d.Tell(text.CompareRoom)
	return []row{
		{group: levels, title: "", right: c.cells(d.Tell(c.name), d.Tell(text.CompareMeasured), d.Tell(text.CompareApart))},
		c.row(levels, d.Tell(text.CompareDepth), level(pattern.Front, "underarm")),
		c.row(girths, d.Tell(text.CompareNeckRing), girth("neck")),
		c.row(girths, d.Tell(text.CompareArmRing), girth("armhole")),
		c.row(girths, d.Tell(text.CompareBust), girth("bust")),
		c.row(girths, d.Tell(text.CompareWaist), girth("waist")),
		c.row(girths, d.Tell(text.CompareHip), girth("hip")),
		c.row(girths, d.Tell(text.CompareHem), girth("hem")),
		c.row(edges, d.Tell(text.CompareSide, front), along(pattern.Front, "side")),
		c.row(edges, d.Tell(text.CompareSide, back), along(pattern.Back, "side")),
		c.row(edges, d.Tell(text.CompareShoulder, front), along(pattern.Front, "shoulder")),
		c.row(edges, d.Tell(text.CompareShoulder, back), along(pattern.Back, "shoulder")),
		c.row(edges, d.Tell(text.CompareDart), along(pattern.Front, "dart_intake")),
		c.row(room, d.Tell(text.CompareEaseBust), ease("bust", measure.BustGirth)),
		c.row(room, d.Tell(text.CompareEaseWaist), ease("waist", measure.WaistGirth)),
		c.row(room, d.Tell(text.CompareEaseHip), ease("hip", measure.HipGirth)),
	}
}

// row is one figure of both methods; one that waits says so.
func (c comparison) row(group, title string, f figure) row {
	u := c.d.Unit()
	say := func(l measure.Length, ok bool) string {
		if !ok {
			return c.d.Tell(text.CompareWaits)
		}
		return u.Tape(l)
	}
	a, okA := f(c.other)
	b, okB := f(c.tape)
	apart := ""
	if okA && okB {
		if apart = u.Tape(a - b); a-b > 0 && apart != "0" {
			apart = "+" + apart
		}
	}
	return row{group: group, title: title, right: c.cells(say(a, okA), say(b, okB), apart)}
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
