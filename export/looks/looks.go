package looks

import (
	"fmt"
	"io"
	"math"
	"strconv"
	"strings"

	"chalkfold/export/leaflet"
	"chalkfold/export/pdf"
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/trial"
)

// Options of a choosing sheet.
type Options struct {
	Unit  measure.Unit
	Paper pdf.Paper
	Warn  func(string)
}

// Measures of the sheet, millimetres: the width that every paper has, and the
// room of one outline in it.
const (
	wide     = 186.0
	tallest  = 56.0
	air      = 4.0
	nameHigh = 6.0
)

// tile is one option in its place on the sheet.
type tile struct {
	name  string
	note  string // why it cannot be
	now   bool
	at    geom.Point // of the name
	lines []pdf.FigureLine
}

// spread lays the options of a pick beside each other, all at one scale, and
// gives the height that they take.
func spread(set trial.Set, u measure.Unit) ([]tile, float64) {
	n := len(set.Options)
	across := n
	if n > 4 {
		across = (n + (n+4)/5 - 1) / ((n + 4) / 5) // as even rows of at most five
	}
	room := wide/float64(across) - air
	scale := math.Min(math.Min(room, 60)/set.Box.Width(), tallest/set.Box.Height())
	high := set.Box.Height()*scale + nameHigh + air
	var out []tile
	for i, o := range set.Options {
		left, top := float64(i%across)*(room+air), float64(i/across)*high
		t := tile{name: o.Title, now: o.Now, note: o.WhyNot.In(u)}
		width := set.Box.Width() * scale
		t.at = geom.Point{X: left + room/2, Y: top + nameHigh/2}
		move := geom.Matrix{scale, 0, 0, scale, left + (room-width)/2 - set.Box.Min.X*scale, top + nameHigh - set.Box.Min.Y*scale}
		for _, l := range set.Shown(o) {
			ink := pdf.InkPlain
			switch {
			case l.Dart:
				ink = pdf.InkDashed
			case o.Now:
				ink = pdf.InkHeavy
			}
			t.lines = append(t.lines, pdf.FigureLine{Path: geom.Lines(l.Points...).Transform(move), Ink: ink})
		}
		out = append(out, t)
	}
	return out, float64((n+across-1)/across) * high
}

// shown leaves out picks whose options draw the same outlines.
func shown(sets []trial.Set) []trial.Set {
	var out []trial.Set
	for _, s := range sets {
		if !s.Alike && !s.Box.Empty() {
			out = append(out, s)
		}
	}
	return out
}

// notes are the options that cannot be, one sentence each.
func notes(set trial.Set, u measure.Unit) []string {
	var out []string
	for _, o := range set.Options {
		if why := o.WhyNot.In(u); why != "" {
			says := o.Title + ": not for her. " + capital(strings.TrimSuffix(why, ".")) + "."
			if cure := o.Cure.In(u); cure != "" {
				says += " It would take " + strings.TrimSuffix(cure, ".") + "."
			}
			out = append(out, says)
		}
	}
	return out
}

func capital(s string) string {
	if s == "" {
		return s
	}
	return strings.ToUpper(s[:1]) + s[1:]
}

const (
	title = "To choose by looking"
	intro = "Each small outline is drafted from her own measurements, all of one choice at one scale. What stands now is drawn heavy."
)

// WritePDF writes the sheet for printing.
func WritePDF(w io.Writer, s *pattern.Sheet, sets []trial.Set, o Options) error {
	l := &leaflet.Leaflet{Title: title, Date: s.Job.Client.Measured}
	l.Text(leaflet.For(s))
	l.Text(intro)
	for _, set := range shown(sets) {
		tiles, high := spread(set, o.Unit)
		l.Keep(high + 20)
		l.Heading(1, set.Choice.Title)
		l.Text(set.Choice.Says)
		f := pdf.Figure{Height: high}
		for _, t := range tiles {
			f.Lines = append(f.Lines, t.lines...)
			f.Words = append(f.Words, pdf.FigureWords{At: t.at, Text: t.label(), Bold: t.now})
		}
		l.Figure(f)
		l.Texts(notes(set, o.Unit)...)
	}
	return l.WritePDF(w, leaflet.Options{Paper: o.Paper, Warn: o.Warn})
}

func (t tile) label() string {
	if t.note != "" {
		return t.name + " (not for her)"
	}
	return t.name
}

// WriteSVG writes the sheet as one drawing, as long as it has to be.
func WriteSVG(w io.Writer, s *pattern.Sheet, sets []trial.Set, o Options) error {
	var b strings.Builder
	y := 12.0
	words := func(x, y, size float64, style, text string) {
		fmt.Fprintf(&b, "<text x=\"%s\" y=\"%s\" font-size=\"%s\"%s>%s</text>\n", num(x), num(y), num(size), style, escaped(text))
	}
	words(12, y, 6, ` font-weight="bold"`, title)
	y += 8
	words(12, y, 3.6, "", leaflet.For(s))
	y += 5
	words(12, y, 3.2, "", intro)
	for _, set := range shown(sets) {
		tiles, high := spread(set, o.Unit)
		y += 11
		fmt.Fprintf(&b, "<g id=\"%s\">\n", escaped(string(set.Choice.ID)))
		words(12, y, 4.6, ` font-weight="bold"`, set.Choice.Title)
		y += 5
		words(12, y, 3.2, "", set.Choice.Says)
		y += 3
		for _, t := range tiles {
			style := ` text-anchor="middle"`
			if t.now {
				style += ` font-weight="bold"`
			}
			words(12+t.at.X, y+t.at.Y+1, 3.4, style, t.label())
			for _, l := range t.lines {
				line(&b, l, 12, y)
			}
		}
		y += high
		for _, n := range notes(set, o.Unit) {
			words(12, y, 3.2, "", n)
			y += 4.4
		}
		b.WriteString("</g>\n")
	}
	high := num(y + 10)
	_, err := io.WriteString(w, `<?xml version="1.0" encoding="UTF-8"?>`+"\n"+
		`<svg xmlns="http://www.w3.org/2000/svg" width="210mm" height="`+high+`mm" viewBox="0 0 210 `+high+"\" font-family=\"sans-serif\">\n<title>"+title+"</title>\n"+
		"<rect width=\"210\" height=\""+high+"\" fill=\"#fff\"/>\n"+b.String()+"</svg>\n")
	return err
}

// line is one line of an outline; darts are dashed, what stands now is heavy.
func line(b *strings.Builder, l pdf.FigureLine, dx, dy float64) {
	b.WriteString(`<path d="M`)
	for i, s := range l.Path {
		if i == 0 {
			b.WriteString(num(dx+s.A.X) + " " + num(dy+s.A.Y))
		}
		b.WriteString("L" + num(dx+s.D.X) + " " + num(dy+s.D.Y))
	}
	style := ` stroke-width="0.3"`
	switch l.Ink {
	case pdf.InkHeavy:
		style = ` stroke-width="0.7"`
	case pdf.InkDashed:
		style = ` stroke-width="0.25" stroke-dasharray="1.6 0.9"`
	}
	b.WriteString(`" fill="none" stroke="#000"` + style + "/>\n")
}

func num(x float64) string {
	return strconv.FormatFloat(math.Round(x*1000)/1000+0, 'f', -1, 64)
}

func escaped(s string) string {
	return strings.NewReplacer("&", "&amp;", "<", "&lt;", ">", "&gt;", `"`, "&quot;").Replace(s)
}
