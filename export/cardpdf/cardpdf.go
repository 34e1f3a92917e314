package cardpdf

import (
	"fmt"
	"io"
	"strings"

	"chalkfold/export/card"
	"chalkfold/export/leaflet"
	"chalkfold/export/pdf"
	"chalkfold/measure"
	"chalkfold/pattern"
)

// Options of a printed card.
type Options struct {
	Unit  measure.Unit
	Card  *card.Card // what card.Make gave for the draft and the unit; nil: it is worked out here
	Paper pdf.Paper
	Warn  func(string)
}

// size of the lettering, points.
const size = 14

// Write prints the card.
func Write(w io.Writer, s *pattern.Sheet, o Options) error {
	var c card.Card
	if o.Card != nil {
		c = *o.Card
	} else {
		c = card.Make(s, o.Unit)
	}
	if !s.Complete || len(c.Pieces) == 0 {
		return &measure.Refusal{Where: "card", Wrong: "the draft is not finished, so there is nothing to mark yet", Works: "finish the draft first"}
	}
	return build(c, s).WritePDF(w, leaflet.Options{Paper: o.Paper, Warn: o.Warn})
}

func build(c card.Card, s *pattern.Sheet) *leaflet.Leaflet {
	l := &leaflet.Leaflet{Title: "Chalk card", Foot: "Chalk card: " + leaflet.For(s), Date: s.Job.Client.Measured, Size: size}
	l.Columns(2)
	l.Text(leaflet.For(s) + ", " + leaflet.MethodWords(c.Method) + ". All lengths in " + leaflet.UnitWords(c.Unit) + ".")
	l.Text("In the tables: | ruled from the mark before, ~ joined by hand along a curve, ^ about the mark above, in brackets a corner that the line only passes. Where nothing stands before a dart's name the cap is cut folded.")
	l.List(pdf.Bullet, c.Says...)
	l.Text(c.Caution)
	for _, p := range c.Pieces {
		piece(l, p, c.Unit)
	}
	if len(c.Traced) > 0 {
		l.Page()
		l.Heading(1, "Facings, traced by width")
		for _, t := range c.Traced {
			l.Heading(2, fmt.Sprintf("%d of %d %s: %s", t.Number, t.Of, t.Title, t.Cut))
			l.List(pdf.Bullet, t.Says...)
		}
	}
	return l
}

func piece(l *leaflet.Leaflet, p card.Piece, u measure.Unit) {
	l.Page()
	l.Heading(1, fmt.Sprintf("%d of %d %s: %s", p.Number, p.Of, p.Title, p.Cut))
	l.List(pdf.Bullet, p.Set...)
	var levels []string
	for _, y := range p.Levels {
		levels = append(levels, down(y, u))
	}
	l.Text("Levels: " + strings.Join(levels, ", "))
	l.Heading(2, "Cutting line")
	marks(l, p.Rows, u, func(r card.Row) (*card.Place, bool) { return r.Cut, r.AsideCut })
	l.Heading(2, "Stitching line")
	marks(l, p.Rows, u, func(r card.Row) (*card.Place, bool) { return r.Stitch, r.AsideStitch })
	part(l, "Dart", pdf.Bullet, p.Darts)
	part(l, "Clips into the edge", pdf.Bullet, p.Notches)
	if p.Grain != "" {
		l.Text(p.Grain)
	}
	var proofs []string
	for _, f := range p.Proofs {
		says := fmt.Sprintf("%s %s, give or take %s", f.What, u.Tape(f.Length), u.Tape(f.Within))
		if f.Other != "" {
			says += "; " + f.Other
		}
		proofs = append(proofs, says)
	}
	part(l, "Proof, before the shears", pdf.Tick, proofs)
}

func part(l *leaflet.Leaflet, head string, mark pdf.Mark, texts []string) {
	if len(texts) > 0 {
		l.Heading(2, head)
		l.List(mark, texts...)
	}
}

// marks are the rows that have a place on one of the two lines. A corner that
// the line passes at a distance stands in brackets.
func marks(l *leaflet.Leaflet, rows []card.Row, u measure.Unit, of func(card.Row) (*card.Place, bool)) {
	var out [][]string
	for _, r := range rows {
		p, aside := of(r)
		if p == nil {
			continue
		}
		name := r.Name
		if name == "" {
			name = leaflet.Words(r.Edge)
		}
		name = strings.TrimSpace(join(r.Join) + " " + name)
		d, o := down(p.Down, u), across(p.Out, u)
		if aside {
			d, o = "("+d+")", "("+o+")"
		}
		out = append(out, []string{name, d, o})
		for _, n := range r.Notes {
			out = append(out, []string{"^ " + n})
		}
	}
	l.Table(pdf.Table{Heads: []string{"mark", "down", "out"}, Rows: out, Right: []bool{false, true, true}})
}

// join says how a mark is joined to the one before it: by ruler or by hand;
// nothing where it is the first or the dart lies between, cut folded.
func join(j card.Join) string {
	switch j {
	case card.Ruled:
		return "|"
	case card.Curve:
		return "~"
	}
	return ""
}

// down is a level: no minus signs, above the top line is up.
func down(l measure.Length, u measure.Unit) string {
	if l < 0 {
		return "up " + u.Tape(-l)
	}
	return u.Tape(l)
}

// across is a distance out: on the other side of the centre is beyond it.
func across(l measure.Length, u measure.Unit) string {
	if l < 0 {
		return "beyond " + u.Tape(-l)
	}
	return u.Tape(l)
}
