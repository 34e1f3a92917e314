package pdf

import (
	"fmt"
	"io"

	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// Layout is how a document stands on its paper.
type Layout struct {
	Title   string  // of the file, and at the foot of every page
	Paper   Paper   // zero: the usual one
	Strip   float64 // width of one long strip in millimetres instead of pages; zero: pages
	Size    float64 // of the text, points; zero: 10
	Columns int     // zero: one
	Date    pattern.Date
}

// Document is flowing text: what does not fit goes on in the next column or
// on the next page. Documents are never scaled for a printer.
type Document struct {
	*pen
	layout  Layout
	size    float64 // millimetres
	margin  float64
	top     float64 // of the columns on this page
	column  int
	y       float64
	fresh   bool // nothing stands in this column yet
	columns int
}

const (
	documentMargin = 15.0
	stripMargin    = 5.0
	columnGap      = 8.0
	footRoom       = 8.0
	// endless is the height of a strip until its end is known.
	endless = longest
)

// NewDocument begins a document.
func NewDocument(l Layout) *Document {
	if l.Size <= 0 {
		l.Size = 10
	}
	l.Paper = l.Paper.Leaf()
	d := &Document{pen: newPen(l.Title, l.Date), layout: l, size: l.Size * millimetresAPoint, columns: max(l.Columns, 1), margin: documentMargin}
	if l.Strip > 0 {
		d.columns, d.margin = 1, stripMargin
	}
	d.Page()
	return d
}

// Page goes on on a new page.
func (d *Document) Page() {
	w, h := d.layout.Paper.Width, d.layout.Paper.Height
	if d.layout.Strip > 0 {
		w, h = d.layout.Strip, endless
	}
	d.page(w, h)
	d.top, d.y, d.column, d.fresh = d.margin, d.margin, 0, true
}

// Columns goes on in so many columns, from here down.
func (d *Document) Columns(n int) {
	if d.layout.Strip > 0 || n == d.columns {
		return
	}
	if d.column > 0 {
		d.Page()
	}
	d.columns, d.top, d.fresh = max(n, 1), d.y, true
}

// Width is that of the open column.
func (d *Document) Width() float64 {
	return (d.last().width - 2*d.margin - columnGap*float64(d.columns-1)) / float64(d.columns)
}

// Size is the size of the text in millimetres.
func (d *Document) Size() float64 { return d.size }

func (d *Document) left() float64 {
	return d.margin + float64(d.column)*(d.Width()+columnGap)
}

func (d *Document) bottom() float64 { return d.last().height - d.margin - footRoom }

// need goes on where so much room is left, unless nothing stands here yet.
func (d *Document) need(high float64) {
	if d.fresh || d.y+high <= d.bottom() {
		return
	}
	if d.column+1 < d.columns {
		d.column++
		d.y, d.fresh = d.top, true
		return
	}
	d.Page()
}

// Keep goes on in the next column or on the next page unless so much height is
// left here.
func (d *Document) Keep(high float64) { d.need(high) }

// Space leaves some room, but not at the top of a column.
func (d *Document) Space(high float64) {
	if !d.fresh {
		d.y += high
	}
}

// headings by level: how much larger than the text.
var headings = []float64{1.8, 1.3, 1.05}

// Heading writes a heading and a bookmark; level 0 is the title.
func (d *Document) Heading(level int, text string) {
	level = min(max(level, 0), len(headings)-1)
	size := headings[level] * d.size
	lines := d.wrap(text, size, d.Width())
	d.Space(0.9 * size)
	d.need(lead*size*float64(len(lines)) + 4*lead*d.size)
	if level < 2 {
		d.bookmark(text, level, d.y)
	}
	for _, l := range lines {
		d.setLine(l, size, 0, true)
	}
	d.y += 0.35 * size
}

// setLine writes one line and goes down; it does not ask for room.
func (d *Document) setLine(text string, size, indent float64, bold bool) {
	d.write(geom.Point{X: d.left() + indent, Y: d.y + 0.95*size}, words{text: text, size: size, bold: bold})
	d.y += lead * size
	d.fresh = false
}

// Text writes a paragraph.
func (d *Document) Text(text string) {
	for _, l := range d.wrap(text, d.size, d.Width()) {
		d.need(lead * d.size)
		d.setLine(l, d.size, 0, false)
	}
	d.y += 0.35 * d.size
}

// Item is an entry of a list, its first words bold. A small drawing stands at
// the right of its words.
type Item struct {
	Lead, Text string
	Figure     *Figure
}

// Mark is what stands before the entries of a list.
type Mark int8

// A bullet, the number of the entry, or a box to tick.
const (
	Bullet Mark = iota
	Number
	Tick
)

// beside is how wide a drawing beside the words of an item is, and how high.
const (
	besideWide = 40.0
	besideHigh = 30.0
)

// List writes a list.
func (d *Document) List(items []Item, mark Mark) {
	indent := 1.6 * d.size
	if mark == Number {
		indent = d.pen.width(fmt.Sprintf("%d. ", len(items)), d.size) + 0.4*d.size
	}
	for i, item := range items {
		d.item(item, mark, i+1, indent)
	}
	d.y += 0.25 * d.size
}

func (d *Document) item(item Item, mark Mark, n int, indent float64) {
	room := d.Width() - indent
	drawn := item.Figure != nil && d.layout.Strip == 0 && room > 2*besideWide
	if drawn {
		room -= besideWide
	}
	var bold, lines []string
	if item.Lead != "" {
		bold = d.wrap(item.Lead, d.size, room)
	}
	if item.Text != "" {
		lines = d.wrap(item.Text, d.size, room)
	}
	high := lead * d.size * float64(min(len(bold)+len(lines), 3))
	if drawn {
		high = max(besideHigh, lead*d.size*float64(len(bold)+len(lines)))
	}
	d.need(high)
	top := d.y
	d.mark(mark, n)
	for k, l := range append(bold, lines...) {
		d.need(lead * d.size)
		d.setLine(l, d.size, indent, k < len(bold))
	}
	if drawn {
		right := d.left() + d.Width()
		d.fit(*item.Figure, geom.Box{Min: geom.Point{X: right - besideWide, Y: top}, Max: geom.Point{X: right, Y: top + besideHigh}})
		d.y = max(d.y, top+besideHigh)
	}
	d.y += 0.25 * d.size
}

func (d *Document) mark(mark Mark, n int) {
	at := geom.Point{X: d.left(), Y: d.y + 0.95*d.size}
	switch mark {
	case Number:
		d.write(at, words{text: fmt.Sprintf("%d.", n), size: d.size})
	case Tick:
		side := 0.75 * d.size
		d.frame(geom.Box{Min: geom.Point{X: at.X, Y: at.Y - side}, Max: geom.Point{X: at.X + side, Y: at.Y}}, stroke{weight: 0.25})
	default:
		d.dot(geom.Point{X: at.X + 0.45*d.size, Y: at.Y - 0.33*d.size}, 0.14*d.size)
	}
}

// Write ends the document.
func (d *Document) Write(w io.Writer) error {
	if d.layout.Strip > 0 {
		d.last().height = min(d.y+d.margin, longest)
		return d.finish(w)
	}
	n := len(d.pages)
	size := 0.75 * d.size
	if size > 3.2 {
		size = 3.2
	}
	all := d.pages
	for i, l := range all {
		// The foot is written as the page's own last words.
		d.pages = all[:i+1]
		y := l.height - d.margin
		says := fmt.Sprintf("%d / %d", i+1, n)
		right := l.width - d.margin
		room := right - d.margin - d.pen.width(says, size) - 5
		d.write(geom.Point{X: d.margin, Y: y}, words{text: d.shortened(d.layout.Title, size, room), size: size})
		d.write(geom.Point{X: right, Y: y}, words{text: says, size: size, right: true})
	}
	return d.finish(w)
}

// Warning says what the reader should know about the file; empty: nothing.
func (d *Document) Warning() string { return d.warning() }
