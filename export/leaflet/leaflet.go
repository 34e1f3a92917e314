package leaflet

import (
	"chalkfold/export/pdf"
	"chalkfold/pattern"
)

// Leaflet is a document.
type Leaflet struct {
	Title  string
	Foot   string // at the foot of printed pages; empty: the title
	Date   pattern.Date
	Size   float64 // of the text, points; zero: the usual
	Strip  float64 // width of one long strip of paper; zero: pages
	blocks []block
}

// block is one thing of a document, said in two ways.
type block interface {
	markdown(m *marker)
	paper(d *pdf.Document)
}

func (l *Leaflet) add(b block) { l.blocks = append(l.blocks, b) }

// Heading begins a part; level 1 is a part, 2 a part of it.
func (l *Leaflet) Heading(level int, text string) { l.add(heading{level, text}) }

// Text is a paragraph.
func (l *Leaflet) Text(text string) { l.add(paragraph(text)) }

// Texts are paragraphs.
func (l *Leaflet) Texts(texts ...string) {
	for _, t := range texts {
		l.Text(t)
	}
}

// List is a list of plain entries.
func (l *Leaflet) List(mark pdf.Mark, texts ...string) {
	items := make([]pdf.Item, len(texts))
	for i, t := range texts {
		items[i].Text = t
	}
	l.Items(mark, items)
}

// Items is a list of entries with leads.
func (l *Leaflet) Items(mark pdf.Mark, items []pdf.Item) {
	if len(items) > 0 {
		l.add(list{items, mark})
	}
}

// Table is a table.
func (l *Leaflet) Table(t pdf.Table) {
	if len(t.Rows) > 0 {
		l.add(table(t))
	}
}

// Figure is a small drawing; Markdown has its caption alone.
func (l *Leaflet) Figure(f pdf.Figure) { l.add(figure(f)) }

// Page goes on on a new page of paper.
func (l *Leaflet) Page() { l.add(turn{}) }

// Keep goes on on a new page of paper unless so much height is left, in
// millimetres.
func (l *Leaflet) Keep(high float64) { l.add(keep(high)) }

// Columns sets how many columns the paper has from here down.
func (l *Leaflet) Columns(n int) { l.add(columns(n)) }

type (
	heading struct {
		level int
		text  string
	}
	paragraph string
	list      struct {
		items []pdf.Item
		mark  pdf.Mark
	}
	table   pdf.Table
	figure  pdf.Figure
	turn    struct{}
	keep    float64
	columns int
)
