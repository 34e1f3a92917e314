package measuring

import (
	"io"
	"slices"
	"strings"

	"chalkfold/export/leaflet"
	"chalkfold/export/pdf"
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
)

// Options of a measuring sheet.
type Options struct {
	Unit  measure.Unit
	Paper pdf.Paper
	Warn  func(string)
}

// WritePDF writes the sheet for printing.
func WritePDF(w io.Writer, s *pattern.Sheet, o Options) error {
	return build(s, o.Unit).WritePDF(w, leaflet.Options{Paper: o.Paper, Warn: o.Warn})
}

func build(s *pattern.Sheet, u measure.Unit) *leaflet.Leaflet {
	l := &leaflet.Leaflet{Title: "Measuring sheet", Foot: "Measuring sheet: " + leaflet.Words(s.Garment), Size: 9}
	name := s.Job.Client.Name
	l.Table(pdf.Table{
		Heads: []string{"For", "Date", "Measured by", "Shoes"}, Rows: [][]string{{name, "", "", ""}},
		Least: []float64{18, 11, 14, 11}, Tall: 2.2, Lines: true,
	})
	l.List(pdf.Bullet,
		"Say what comes before touching; she may hold the end of the tape herself. Her usual bra, thin close clothes, no belt, the shoes she will wear.",
		"Tie a string at the waist and one round the base of the neck. Mark the bones and the armpit creases with chalk or pins.",
		"Snug, not tight, the tape level behind: use a mirror. Each measure twice, all once and then all again.",
		"Two takes must agree: girths within "+agreed(u, true)+", lengths and widths within "+agreed(u, false)+". If they do not, take it a third time and use the middle one. All in "+leaflet.UnitWords(u)+".",
	)
	l.Heading(1, "Landmarks")
	l.Figure(body())
	l.List(pdf.Number, landmarks...)
	needed := workroom.NeedsOf(s.Job.Style)
	l.Heading(1, "For this draft, in taking order")
	l.Table(takes(u, func(m measure.Measurement) bool { return slices.Contains(needed, m.ID) }))
	l.Heading(1, "Worth taking too")
	l.Table(takes(u, func(m measure.Measurement) bool {
		return !slices.Contains(needed, m.ID) && (slices.Contains(m.UsefulFor, s.Garment) || slices.Contains(m.NeededFor, s.Garment))
	}))
	return l
}

// agreed is how far two takes may differ: common practice, no source.
func agreed(u measure.Unit, girth bool) string {
	l, m := measure.Inch/4, 5*measure.Millimetre
	if girth {
		l, m = measure.Inch/2, measure.Centimetre
	}
	if u == measure.In {
		return u.Tape(l)
	}
	return u.Tape(m)
}

func isGirth(id measure.ID) bool { return strings.HasSuffix(string(id), "_girth") }

// takes is the table of the measurements that want says yes to.
func takes(u measure.Unit, want func(measure.Measurement) bool) pdf.Table {
	t := pdf.Table{
		Heads: []string{"Measure", "From where to where, and how", "1st", "2nd", "agree within"},
		Least: []float64{0, 0, 7, 7}, Most: []float64{13}, Tall: 2.6, Lines: true,
	}
	for _, m := range measure.All() {
		if want(m) {
			t.Rows = append(t.Rows, []string{capital(m.Term), sentence(m.Landmarks) + " " + m.How, "", "", agreed(u, isGirth(m.ID))})
		}
	}
	return t
}

func capital(s string) string {
	if s == "" {
		return s
	}
	return strings.ToUpper(s[:1]) + s[1:]
}

func sentence(s string) string {
	if s == "" || strings.HasSuffix(s, ".") {
		return capital(s)
	}
	return capital(s) + "."
}
