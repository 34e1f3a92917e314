package leaflet

import (
	"io"

	"chalkfold/export/pdf"
)

// Options of a printed document.
type Options struct {
	Paper pdf.Paper    // zero: the usual one
	Warn  func(string) // told what the reader should know about the file; nil: nobody
}

// WritePDF sets the document on paper.
func (l *Leaflet) WritePDF(w io.Writer, o Options) error {
	foot := l.Foot
	if foot == "" {
		foot = l.Title
	}
	d := pdf.NewDocument(pdf.Layout{Title: foot, Paper: o.Paper, Strip: l.Strip, Size: l.Size, Date: l.Date})
	d.Heading(0, l.Title)
	for _, b := range l.blocks {
		b.paper(d)
	}
	if o.Warn != nil && d.Warning() != "" {
		o.Warn(d.Warning())
	}
	return d.Write(w)
}

func (h heading) paper(d *pdf.Document)   { d.Heading(h.level, h.text) }
func (p paragraph) paper(d *pdf.Document) { d.Text(string(p)) }
func (l list) paper(d *pdf.Document)      { d.List(l.items, l.mark) }
func (t table) paper(d *pdf.Document)     { d.Table(pdf.Table(t)) }
func (f figure) paper(d *pdf.Document)    { d.Figure(pdf.Figure(f)) }
func (turn) paper(d *pdf.Document)        { d.Page() }
func (k keep) paper(d *pdf.Document)      { d.Keep(float64(k)) }
func (c columns) paper(d *pdf.Document)   { d.Columns(int(c)) }
