package slip

import (
	"io"

	"chalkfold/export/leaflet"
	"chalkfold/export/pdf"
	"chalkfold/export/shop"
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/lay"
)

// Options of a slip.
type Options struct {
	Unit measure.Unit
	Lays *shop.Lays // of the draft and the unit; nil: they are worked out here
	Warn func(string)
}

// strip is the width of the paper that till printers take, millimetres.
const strip = 80.0

// WriteMarkdown writes the slip as Markdown.
func WriteMarkdown(w io.Writer, s *pattern.Sheet, o Options) error {
	return build(s, o).WriteMarkdown(w)
}

// WritePDF writes the slip on a narrow strip.
func WritePDF(w io.Writer, s *pattern.Sheet, o Options) error {
	return build(s, o).WritePDF(w, leaflet.Options{Warn: o.Warn})
}

func build(s *pattern.Sheet, o Options) *leaflet.Leaflet {
	u, lays := o.Unit, o.Lays.Or(s, o.Unit)
	l := &leaflet.Leaflet{Title: "Shop slip", Foot: "Shop slip: " + leaflet.For(s), Date: s.Job.Client.Measured, Strip: strip, Size: 10}
	l.Text(leaflet.For(s))
	for _, name := range append([]string{shop.Main}, shop.Others(s)...) {
		cloth(l, s, name, u, lays)
	}
	l.Heading(1, "Small things")
	l.List(pdf.Tick, shop.Notions(s, u)...)
	l.Text("Cloth by the hand rule, folded lengthwise; with a nap or a one-way print take 1/4 to 1/2 yd (25 to 50 cm) more. Ask for the care label.")
	return l
}

func cloth(l *leaflet.Leaflet, s *pattern.Sheet, name string, u measure.Unit, lays *shop.Lays) {
	b, ok := shop.Of(s, name, u)
	if !ok {
		return
	}
	l.Heading(1, leaflet.Title(name))
	if b.Named {
		if b.Lengths == 0 {
			l.Text(u.Say(b.Width) + " wide is too narrow, folded.")
		} else {
			l.List(pdf.Tick, u.Say(b.Width)+" wide: "+lay.Says(b.Yards, b.Metric))
		}
		if says := lays.Says(name); says != "" {
			l.Text(says)
		}
	}
	var rows [][]string
	for _, w := range shop.Widths(s, name, u) {
		if !b.Named || w.Width != b.Width {
			rows = append(rows, []string{u.Say(w.Width), lay.Says(w.Yards, w.Metric)})
		}
	}
	l.Table(pdf.Table{Heads: []string{"If it is wide", "buy"}, Rows: rows})
	if b.Cloth.ShrinkAlong > 0 {
		l.Text("What it loses in the wash is in it.")
	}
}
