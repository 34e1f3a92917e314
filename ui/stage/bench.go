package stage

import (
	"strings"

	"github.com/charmbracelet/x/ansi"

	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
	"chalkfold/ui/view"
)

// room says who has the screen.
type room int8

const (
	shared room = iota
	wordsOnly
	tableOnly
)

// From these sizes of the whole screen on words and table stand together.
// Line 1, the message line and the footer take three rows of it.
const (
	sharedColumns = 80
	sharedRows    = 20 - 3
	besideColumns = 120
	leastTable    = 9
	leastBeside   = 46
	leastTo       = 4 // rows below which even words alone are all there is
)

// bench is what every stage has: the desk, the table and how she looks at it,
// and who has the screen.
type bench struct {
	d     *desk.Desk
	eye   view.Eye
	room  room
	table bool // opens on the table where only one has room
	stand int8 // 0: by itself, 1: lie, 2: stand
	now   bool // standing now
	seen  view.View
	keep  picture
	lines []string
	paper view.Paper
	alone bool                  // one has all the room
	reads bool                  // what is in the words now goes before the table
	edge  func(cols int) string // what lies along the edge of the table; nil: air
	// instead is what lies on the table in place of the cloth; nil, or lines
	// of nil: the cloth.
	instead func(cols, rows int) []string

	shown  []string // the words as they were last seen
	scroll int      // how far they are scrolled
	ask    asking   // a question, open or answered last
	try    trying   // what if
	class  studying // the page of a lesson that is shown here
}

// words are lines for so many columns and rows; the second is a caption for
// when the table has the screen: one line, or the few that cannot be done
// without.
type words func(cols, rows int) (lines []string, caption string)

// compose shares the room between words and table. want is how many rows the
// words would like.
func (b *bench) compose(r desk.Rect, want int, w words, s view.Scene) []string {
	if r.Columns <= 0 || r.Rows <= 0 {
		return desk.Block(nil, r)
	}
	s.Unit = b.d.Unit()
	b.alone = r.Columns < sharedColumns || r.Rows < sharedRows
	b.renewAsk()
	bar := append(b.bar(r), b.pointBar(r)...)
	if r.Rows -= len(bar); r.Rows <= 0 {
		return bar
	}
	if b.ask.open {
		w, want = b.askWords, b.askRows(r.Columns)
	}
	read := func(cols, rows int) ([]string, string) {
		lines, caption := w(cols, rows)
		b.shown = lines
		if !b.ask.open {
			lines = b.cropped(lines, " ", cols, rows)
		}
		return lines, caption
	}
	return append(bar, b.share(r, want, read, s)...)
}

// share gives words and table their parts of the rectangle.
func (b *bench) share(r desk.Rect, want int, w words, s view.Scene) []string {
	read := b.ask.open && !b.ask.point || b.reads // there is something to read or to type
	switch {
	case b.room == wordsOnly, b.room == shared && b.alone && (!b.table || read):
		return b.onlyWords(r, w)
	case b.room == tableOnly, b.alone:
		return b.onlyTable(r, w, s)
	case r.Columns >= besideColumns:
		return b.beside(r, wide(r.Columns), w, b.standing(s, r.Columns-wide(r.Columns)-2, r.Rows-1, r.Columns-wide(r.Columns)-2, r.Rows-1))
	}
	high := max(min(max(want, r.Rows*2/5), r.Rows-leastTable-1), 1)
	half := r.Columns / 2
	s = b.standing(s, r.Columns, r.Rows-high-1, r.Columns-half-2, r.Rows-1)
	if s.Stand {
		return b.beside(r, half, w, s)
	}
	lines, _ := w(r.Columns, high)
	out := desk.Block(lines, desk.Rect{Columns: r.Columns, Rows: high})
	out = append(out, b.along(r.Columns))
	return append(out, b.cloth(s, r.Columns, r.Rows-high-1)...)
}

// wide is the width of the words where the table stands beside them.
func wide(cols int) int { return min(max(cols*2/5, 46), 60) }

// patience is how much larger the other arrangement must be before the cloth
// turns by itself.
const patience = 1.15

// standing decides whether the cloth lies or stands.
func (b *bench) standing(s view.Scene, lieCols, lieRows, standCols, standRows int) view.Scene {
	switch b.stand {
	case 1:
		b.now = false
	case 2:
		b.now = true
	default:
		if standCols < leastBeside {
			// The words beside it would have too little room.
			b.now = false
			break
		}
		g, a := b.d.Settings.Glyphs, b.d.Settings.Aspect
		lie, up := s, s
		lie.Stand, up.Stand = false, true
		dl := view.Look(lie, view.Eye{}, lieCols, lieRows, g, a).DotsPerInch()
		du := view.Look(up, view.Eye{}, standCols, standRows, g, a).DotsPerInch()
		if b.now && dl > du*patience || !b.now && du > dl*patience {
			b.now = !b.now
		}
	}
	s.Stand = b.now
	return s
}

func (b *bench) onlyWords(r desk.Rect, w words) []string {
	lines, _ := w(r.Columns, r.Rows)
	return desk.Block(lines, r)
}

func (b *bench) onlyTable(r desk.Rect, w words, s view.Scene) []string {
	if r.Rows < leastTo {
		return b.onlyWords(r, w)
	}
	_, caption := w(r.Columns, r.Rows)
	head := strings.Split(caption, "\n")
	head = head[:max(min(len(head), r.Rows-leastTable), 1)]
	for i := range head {
		head[i] = desk.Brief(head[i], r.Columns)
	}
	rows := r.Rows - len(head)
	s = b.standing(s, r.Columns, rows, r.Columns, rows)
	return append(head, b.cloth(s, r.Columns, rows)...)
}

// beside puts the words left and the table right.
func (b *bench) beside(r desk.Rect, left int, w words, s view.Scene) []string {
	lines, _ := w(left, r.Rows)
	lines = desk.Block(lines, desk.Rect{Columns: left, Rows: r.Rows})
	cols := r.Columns - left - 2
	cloth := append([]string{b.along(cols)}, b.cloth(s, cols, r.Rows-1)...)
	for i := range lines {
		if cloth[i] != "" {
			lines[i] = desk.Fit(lines[i], left+2) + cloth[i]
		}
	}
	return lines
}

// along is the line that parts words and table.
func (b *bench) along(cols int) string {
	if b.edge == nil {
		return ""
	}
	return b.edge(cols)
}

// picture is all that a drawing depends on; while it stays the same the lines
// are kept.
type picture struct {
	sheet, old *pattern.Sheet
	step       int
	part       float64
	piece      pattern.PieceID
	stand      bool
	spot       pattern.Place
	says       string
	unit       int8
	eye        view.Eye
	cols, rows int
	looks      desk.Settings
	cloth      view.Cloth
	pages      *view.Pages
}

// cloth is the table as lines.
func (b *bench) cloth(s view.Scene, cols, rows int) []string {
	if cols < 1 || rows < 1 {
		return make([]string, max(rows, 0))
	}
	if b.instead != nil {
		if lines := b.instead(cols, rows); lines != nil {
			return lines
		}
	}
	set := b.d.Settings
	p := picture{
		sheet: s.Sheet, old: s.Old, step: s.Step, part: s.Part, piece: s.Piece, stand: s.Stand, says: s.Says, unit: int8(s.Unit), eye: b.eye,
		cols: cols, rows: rows, looks: set, pages: s.Pages,
	}
	if s.Cloth != nil {
		p.cloth = *s.Cloth
	}
	if s.Spot != nil {
		p.spot = *s.Spot
	}
	if b.lines != nil && p == b.keep {
		return b.lines
	}
	b.keep = p
	b.lines, b.seen = b.paper.Rows(s, b.eye, cols, rows, set.Glyphs, set.Aspect, set.Theme.Pens())
	if b.d.Job().Body.Len() == 0 {
		b.lines, b.seen = make([]string, rows), view.View{} // the levels of nobody would say nothing
	}
	if b.seen.Empty() {
		for i, l := range b.bare(s, cols) {
			if at := max(rows/2+i-1, 0); at < rows {
				b.lines[at] = l
			}
		}
	}
	return b.lines
}

// bare is what an empty table says: what the drawing waits for.
func (b *bench) bare(s view.Scene, cols int) []string {
	if b.ask.open {
		return nil // nothing is drawn before the first step
	}
	words := b.d.Tell(text.MeasureEmpty)
	if !b.d.Empty() && s.Sheet != nil {
		words = refused(b.d, s.Sheet)
		if wait := waits(b.d, s.Sheet); wait != "" || words == "" {
			words = b.d.Tell(text.StyleNotDrawn, wait)
		}
	}
	var out []string
	for _, l := range desk.Wrap(words, max(cols-4, 1)) {
		out = append(out, strings.Repeat(" ", (cols-ansi.StringWidth(l))/2)+b.d.Paint(theme.Muted, l))
	}
	return out
}

// tableDo does what a key of the table asks for; false: it is none.
func (b *bench) tableDo(id keys.ID) (desk.Ask, bool) {
	if b.eye.Hair {
		if ask, ok := b.hairDo(id); ok {
			return ask, true
		}
	}
	switch id {
	case keys.Room:
		b.swap()
	case "zoom-in":
		b.eye = b.eye.Closer(b.seen)
	case "zoom-out":
		b.eye = b.eye.Farther(b.seen)
	case "fit":
		b.eye = b.eye.Fit()
	case "zoom-newest":
		b.zoomTo(b.seen.Newest())
	case "pan-left":
		b.eye = b.eye.Panned(b.seen, -0.25, 0)
	case "pan-right":
		b.eye = b.eye.Panned(b.seen, 0.25, 0)
	case "pan-up":
		b.eye = b.eye.Panned(b.seen, 0, -0.25)
	case "pan-down":
		b.eye = b.eye.Panned(b.seen, 0, 0.25)
	case "stand":
		b.stand = 2
		if b.now {
			b.stand = 1
		}
		b.eye = b.eye.Fit()
	case "dimensions":
		b.eye.Plain = !b.eye.Plain
	case "marks":
		b.eye.Names = !b.eye.Names
	case "grid":
		b.eye.Grid = !b.eye.Grid
	case "cross":
		b.eye.Hair = !b.eye.Hair
		b.eye.Hairs = b.seen.Middle()
		if b.eye.Hair {
			return desk.Ask{Say: b.hairSays()}, true
		}
	default:
		return desk.Ask{}, false
	}
	return desk.Ask{}, true
}

// zoomTo goes close to a part of the table; from there again shows all.
func (b *bench) zoomTo(box geom.Box) {
	if !b.eye.Fits() {
		b.eye = b.eye.Fit()
		return
	}
	b.eye = b.eye.On(b.seen, box)
}

// hairDo moves the cross-hair.
func (b *bench) hairDo(id keys.ID) (desk.Ask, bool) {
	step := 2.0
	switch id {
	case "field-up":
		b.eye = b.eye.Stepped(b.seen, 0, -step)
	case "field-down":
		b.eye = b.eye.Stepped(b.seen, 0, step)
	case "text-left":
		b.eye = b.eye.Stepped(b.seen, -step, 0)
	case "text-right":
		b.eye = b.eye.Stepped(b.seen, step, 0)
	case keys.Accept:
	case keys.Back, "cross":
		b.eye.Hair = false
		return desk.Ask{Say: b.d.Tell(text.BackAtWork)}, true
	default:
		return desk.Ask{}, false
	}
	return desk.Ask{Say: b.hairSays()}, true
}

// hairType is a letter while the cross-hair is shown.
func (b *bench) hairType(k desk.Key) desk.Ask {
	var ask desk.Ask
	for _, r := range k.Runes {
		if id, ok := b.d.Keys.ByKey(keys.OnTable, string(r)); ok {
			ask, _ = b.tableDo(id)
		}
	}
	return ask
}

func (b *bench) hairSays() string {
	at, ok := b.seen.Under(b.eye.Hairs)
	if !ok {
		return ""
	}
	u := b.d.Unit()
	return b.d.Tell(text.CrossAt, u.Tape(mm(at.At.X)), u.Tape(mm(at.At.Y)))
}

// swap gives the room to words, to the table, or shares it again.
func (b *bench) swap() {
	first, second := wordsOnly, tableOnly
	if b.table {
		first, second = second, first
	}
	switch {
	case b.alone && b.room == second:
		b.room = shared
	case b.alone:
		b.room = second
	case b.room == shared:
		b.room = first
	case b.room == first:
		b.room = second
	default:
		b.room = shared
	}
}

// hairOffers are the actions while the cross-hair is shown.
func (b *bench) hairOffers() []desk.Offer {
	move := b.d.Tell(text.HairMoves)
	return []desk.Offer{
		{ID: "field-up", Title: move},
		{ID: "text-left", Title: move},
		{ID: keys.Accept, Title: b.d.Tell(text.HairReads)},
		offer(keys.Back),
		{ID: "field-down", Title: move, Quiet: true},
		{ID: "text-right", Title: move, Quiet: true},
	}
}

// tableOffers are the actions of the table.
func (b *bench) tableOffers() []desk.Offer {
	why := ""
	if b.seen.Empty() {
		why = b.d.Tell(text.NothingDrawn)
	}
	var out []desk.Offer
	for _, a := range b.d.Keys.In(keys.OnTable) {
		switch a.ID {
		case "old-new":
			continue
		case "word":
			out = append(out, quiet(a.ID))
			continue
		}
		out = append(out, desk.Offer{ID: a.ID, WhyNot: why, Quiet: a.ID != "zoom-in"})
	}
	return append(out, desk.Offer{ID: keys.Room, Quiet: !b.alone})
}

// Show goes close to a place.
func (b *bench) Show(p pattern.Place) {
	b.eye = b.eye.On(b.seen, b.seen.Near(p))
}
