package guide

import (
	"io"

	"chalkfold/export/ease"
	"chalkfold/export/leaflet"
	"chalkfold/export/pdf"
	"chalkfold/export/shop"
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
)

// Options of a guide.
type Options struct {
	Unit  measure.Unit
	Paper pdf.Paper
	Lays  *shop.Lays // of the draft and the unit; nil: they are worked out here
	Warn  func(string)
}

// WriteMarkdown writes the guide as Markdown.
func WriteMarkdown(w io.Writer, s *pattern.Sheet, o Options) error {
	return build(s, o, false).WriteMarkdown(w)
}

// WritePDF writes the guide for printing, with drawings.
func WritePDF(w io.Writer, s *pattern.Sheet, o Options) error {
	return build(s, o, true).WritePDF(w, leaflet.Options{Paper: o.Paper, Warn: o.Warn})
}

// guide is the guide being written.
type guide struct {
	*leaflet.Leaflet
	sheet *pattern.Sheet
	unit  measure.Unit
	drawn bool
	lays  *shop.Lays
	lined []pattern.Piece // in the sewing order: the lining, which sheet is then without
}

func build(s *pattern.Sheet, o Options, drawn bool) *leaflet.Leaflet {
	g := guide{&leaflet.Leaflet{Title: "Cutting guide and sewing order", Date: s.Job.Client.Measured}, s, o.Unit, drawn, o.Lays.Or(s, o.Unit), nil}
	g.Foot = leaflet.For(s) + ": cutting guide and sewing order"
	g.head()
	g.measurements()
	g.style()
	g.ease()
	g.cutting()
	g.cloth()
	g.notions()
	g.before()
	g.marks()
	g.Heading(1, "Sewing order")
	g.Text("Lengths are those of the stitching line, in " + leaflet.UnitWords(o.Unit) + ". Press each seam before the next one crosses it, never over pins, and darts over something round.")
	g.Items(pdf.Number, g.sewing())
	g.truing()
	g.Heading(1, "Cautions")
	g.List(pdf.Bullet, cautions...)
	return g.Leaflet
}

// say is a length for the reader.
func (g *guide) say(l measure.Length) string { return g.unit.Tape(l) }

func (g *guide) head() {
	c := g.sheet.Job.Client
	rows := [][]string{{"For", leaflet.For(g.sheet)}}
	if d := leaflet.Day(c.Measured); d != "" {
		if c.MeasuredBy != "" {
			d += ", by " + c.MeasuredBy
		}
		rows = append(rows, []string{"Measured", d})
	}
	if c.Shoes != "" {
		rows = append(rows, []string{"Shoes", c.Shoes})
	}
	rows = append(rows, []string{"Method", leaflet.MethodWords(g.sheet.Method)}, []string{"Lengths in", leaflet.UnitWords(g.unit)})
	g.Table(pdf.Table{Heads: []string{"Job", ""}, Rows: rows})
	for _, f := range g.sheet.Findings {
		if f.Verdict == pattern.Fail {
			g.Text("Do not cut yet, truing fails: " + f.Title + ". " + f.Says.In(g.unit) + " " + f.Cure.In(g.unit))
		}
	}
	for _, n := range g.sheet.Notes {
		g.Text(n.In(g.unit))
	}
}

func (g *guide) measurements() {
	g.Heading(1, "Measurements used")
	var rows [][]string
	for _, f := range g.sheet.Figures {
		how := "measured"
		if f.Proposed {
			how = "proposed, give or take " + g.say(f.Proposal.Spread) + ": measure it before cutting good cloth"
		}
		rows = append(rows, []string{leaflet.Term(f.ID), g.say(f.Value), how})
	}
	g.Table(pdf.Table{Heads: []string{"Measurement", leaflet.UnitWords(g.unit), ""}, Rows: rows, Right: []bool{false, true}})
}

// style lists what she chose, and of the rest what the steps of the draft
// read.
func (g *guide) style() {
	g.Heading(1, "Style")
	read := map[string]bool{}
	for _, st := range g.sheet.Steps {
		for _, id := range st.From {
			read[id] = true
		}
	}
	var rows [][]string
	for _, set := range g.sheet.Settings {
		c, ok := workroom.FindChoice(g.sheet.Garment, set.ID)
		if !ok || !set.Used || !set.Known() || set.ID == pattern.Garment || !set.Chosen && !read[string(set.ID)] {
			continue
		}
		who := "usual"
		switch {
		case set.Chosen:
			who = "chosen"
		case set.Default.GaveWay || set.Default.Proposed:
			who = set.Default.Because.In(g.unit)
		}
		rows = append(rows, []string{c.Title, leaflet.Value(c, set.Value, g.unit), who})
	}
	g.Table(pdf.Table{Heads: []string{"Choice", "Value", ""}, Rows: rows, Right: []bool{false, true}})
}

// ease says body, garment and what lies between them.
func (g *guide) ease() {
	var rows [][]string
	half := g.halfSides()
	for _, x := range []struct {
		name string
		id   measure.ID
	}{{"bust", measure.BustGirth}, {"waist", measure.WaistGirth}, {"hip", measure.HipGirth}} {
		f, ok := g.sheet.Figure(x.id)
		girth, known := g.sheet.Girth(x.name)
		if !ok || !known {
			continue
		}
		girth += 4 * half
		rows = append(rows, []string{x.name, g.say(f.Value), g.say(girth), g.say(girth - f.Value)})
	}
	if len(rows) == 0 {
		return
	}
	g.Heading(1, "Ease")
	g.Table(pdf.Table{Heads: []string{"Round the", "body", "garment", "ease"}, Rows: rows, Right: []bool{false, true, true, true}})
	if f, ok := ease.Picture(g.sheet, g.unit); ok && half == 0 && g.drawn {
		g.Figure(f)
	}
	if half > 0 {
		g.Text("By thumb the allowance gives the ease: sides sewn with " + g.say(half) + ". Sewn with all of the " + g.say(2*half) + " there is none.")
	}
}

// halfSides is what of the side allowance is left for ease where the
// allowance is part of the figure: half of it; zero else.
func (g *guide) halfSides() measure.Length {
	for i := range g.sheet.Pieces {
		p := &g.sheet.Pieces[i]
		if !p.Included {
			continue
		}
		cut, ok := g.sheet.Point(p.ID, "underarm")
		sewn, known := g.sheet.SewnPoint(p.ID, "underarm")
		if full := cut.X - sewn.X; ok && known && full > 0 {
			return measure.Length(full / 2)
		}
	}
	return 0
}

func (g *guide) truing() {
	g.Heading(1, "Truing")
	var rows [][]string
	for _, f := range g.sheet.Findings {
		says := f.Says.In(g.unit)
		if c := f.Cure.In(g.unit); c != "" && f.Verdict != pattern.Pass {
			says += " " + c
		}
		rows = append(rows, []string{f.Title, string(f.Verdict), says})
	}
	g.Table(pdf.Table{Heads: []string{"Check", "", "Found"}, Rows: rows})
}
