package client

import (
	"fmt"
	"io"
	"strconv"
	"strings"

	"chalkfold/export/leaflet"
	"chalkfold/export/pdf"
	"chalkfold/export/shop"
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/lay"
	"chalkfold/pattern/workroom"
)

// Options of a client card.
type Options struct {
	Unit  measure.Unit
	Notes bool // with the private notes
	Paper pdf.Paper
	Lays  *shop.Lays // of the draft and the unit; nil: they are worked out here
	Warn  func(string)
}

// WriteMarkdown writes the card as Markdown.
func WriteMarkdown(w io.Writer, s *pattern.Sheet, o Options) error {
	return build(s, o).WriteMarkdown(w)
}

// WritePDF writes the card for printing.
func WritePDF(w io.Writer, s *pattern.Sheet, o Options) error {
	return build(s, o).WritePDF(w, leaflet.Options{Paper: o.Paper, Warn: o.Warn})
}

func build(s *pattern.Sheet, o Options) *leaflet.Leaflet {
	l := &leaflet.Leaflet{Title: "Client card", Date: s.Job.Client.Measured}
	head(l, s, o)
	measurements(l, s.Job, o.Unit)
	style(l, s, o.Unit)
	cloths(l, s, o.Unit, o.Lays.Or(s, o.Unit))
	fittings(l, s.Job)
	if o.Notes && s.Job.Client.Notes != "" {
		l.Heading(1, "Notes, private")
		for _, line := range strings.Split(s.Job.Client.Notes, "\n") {
			if strings.TrimSpace(line) != "" {
				l.Text(line)
			}
		}
	}
	l.Text("Keep this card private. Measure again every six months, or when she has changed.")
	return l
}

func head(l *leaflet.Leaflet, s *pattern.Sheet, o Options) {
	c := s.Job.Client
	var rows [][]string
	for _, r := range [][]string{
		{"Name", c.Name},
		{"Measured", leaflet.Day(c.Measured)},
		{"Measured by", c.MeasuredBy},
		{"Shoes", c.Shoes},
		{"Garment", leaflet.Title(s.Garment)},
		{"Method", leaflet.MethodWords(s.Method)},
		{"Lengths in", leaflet.UnitWords(o.Unit)},
	} {
		if r[1] != "" {
			rows = append(rows, r)
		}
	}
	l.Table(pdf.Table{Heads: []string{"Client", ""}, Rows: rows})
}

// measurements are hers, in taking order, with her left side and the older
// sets beside them where they differ.
func measurements(l *leaflet.Leaflet, j pattern.Job, u measure.Unit) {
	if j.Body.Len() == 0 {
		return
	}
	l.Heading(1, "Measurements")
	heads := []string{"Measurement", leaflet.UnitWords(u)}
	right := []bool{false, true}
	left := j.Left.Len() > 0
	if left {
		heads, right = append(heads, "left side"), append(right, true)
	}
	for _, e := range j.Earlier {
		day := leaflet.Day(e.Measured)
		if day == "" {
			day = "earlier"
		}
		heads, right = append(heads, day), append(right, true)
	}
	tape := func(b measure.Body, id measure.ID) string {
		if x, ok := b.Get(id); ok {
			return u.Tape(x)
		}
		return ""
	}
	var rows [][]string
	for _, m := range measure.All() {
		row := []string{leaflet.Term(m.ID), tape(j.Body, m.ID)}
		if left {
			row = append(row, tape(j.Left, m.ID))
		}
		for _, e := range j.Earlier {
			row = append(row, tape(e.Body, m.ID))
		}
		for _, c := range row[1:] {
			if c != "" {
				rows = append(rows, row)
				break
			}
		}
	}
	l.Table(pdf.Table{Heads: heads, Rows: rows, Right: right})
}

func style(l *leaflet.Leaflet, s *pattern.Sheet, u measure.Unit) {
	var rows [][]string
	for _, set := range s.Settings {
		c, ok := workroom.FindChoice(s.Garment, set.ID)
		if ok && set.Chosen {
			rows = append(rows, []string{c.Title, leaflet.Value(c, set.Value, u)})
		}
	}
	if len(rows) > 0 {
		l.Heading(1, "Chosen for her")
		l.Table(pdf.Table{Heads: []string{"Choice", "Value"}, Rows: rows, Right: []bool{false, true}})
	}
}

// cloths are her cloths, and what to buy of each by the lay beside the hand rule.
func cloths(l *leaflet.Leaflet, s *pattern.Sheet, u measure.Unit, lays *shop.Lays) {
	var rows [][]string
	for _, c := range s.Job.Cloths {
		row := []string{c.Name, "", "", ""}
		if c.Width > 0 {
			row[1] = u.Tape(c.Width)
		}
		if c.ShrinkAlong > 0 || c.ShrinkAcross > 0 {
			row[2] = fmt.Sprintf("%s %% along, %s %% across", percent(c.ShrinkAlong), percent(c.ShrinkAcross))
		}
		if c.Nap {
			row[3] = "nap"
		}
		rows = append(rows, row)
	}
	if len(rows) > 0 {
		l.Heading(1, "Cloth")
		l.Table(pdf.Table{Heads: []string{"Cloth", "width", "shrinks", ""}, Rows: rows})
	}
	if !s.Complete {
		return
	}
	for _, c := range s.Job.Cloths {
		b, ok := shop.Of(s, c.Name, u)
		if !ok {
			continue
		}
		says := "To buy, " + c.Name + " cloth " + u.Say(b.Cloth.Width) + " wide:"
		if b.Lengths > 0 {
			says += " by the hand rule " + lay.Says(b.Yards, b.Metric) + "."
		}
		l.Text(strings.TrimSuffix(says+" "+lays.Says(c.Name), " "))
	}
}

func percent(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }

func fittings(l *leaflet.Leaflet, j pattern.Job) {
	var rows [][]string
	for _, f := range j.Fittings {
		var changes []string
		for _, c := range f.Change {
			changes = append(changes, leaflet.Words(c.Input)+" "+c.By)
		}
		if f.Out && len(changes) > 0 {
			changes[len(changes)-1] += " (taken back)"
		}
		rows = append(rows, []string{leaflet.Day(f.Date), f.Seen, strings.Join(changes, ", "), f.Why})
	}
	if len(rows) > 0 {
		l.Heading(1, "Fittings")
		l.Table(pdf.Table{Heads: []string{"Date", "Seen", "Changed", "Why"}, Rows: rows})
	}
}
