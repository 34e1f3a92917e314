package export

import (
	"math"
	"strconv"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/laid"
	"chalkfold/pattern/lay"
)

// LayOptions say how a lay is drawn.
type LayOptions struct {
	Unit   measure.Unit // of the words
	Width  float64      // of the page, millimetres; zero: as wide as A4
	Height float64      // what the drawing and the words should fit on; zero: as high as Letter
	Full   bool         // pieces alone, at true size, for other software
}

const (
	layWidth  = 210.0
	layHeight = 279.4
	layMargin = 12.0
	rulerRoom = 14.0 // left of the cloth, for the lengths along
	layPart   = 0.6  // of the page that the cloth takes at most
	layTitle  = 5.5
	layNote   = 3.4
	layName   = 3.2
)

// layScales are the denominators that are used.
var layScales = []float64{2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 60, 80, 100, 150, 200, 300, 500, 1000}

// NewLay makes the drawing of a lay: the cloth to scale with the pieces on it,
// lengths along its edge, and below where each piece lies by tape.
func NewLay(s laid.Shown, o LayOptions) Drawing {
	l := layout{shown: s, unit: o.Unit, k: 1}
	d := Drawing{Facts: l.facts()}
	kind := "Lay"
	if !s.Kept {
		kind = "First lay"
	}
	d.Title = kind + " on the " + s.Cloth.Name + " cloth: " + heading(d.Facts)
	d.Says = l.says()
	if o.Full {
		d.Width, d.Height = math.Ceil(l.mm(l.across())), math.Ceil(l.mm(l.long()))
		d.Pieces = l.pieces()
		return d
	}
	d.Width, d.Height = o.Width, o.Height
	if d.Width <= 0 {
		d.Width = layWidth
	}
	if d.Height <= 0 {
		d.Height = layHeight
	}
	y := layMargin
	write := func(text string, size float64) {
		for _, line := range wrap(text, size, d.Width-2*layMargin) {
			d.Page = append(d.Page, Item{
				Role: pattern.RoleText, Kind: Words, Name: "note", Text: line,
				At: geom.Point{X: layMargin, Y: micron(y + ascent*size)}, Height: size,
			})
			y += leading * size
		}
	}
	write(d.Title, layTitle)
	for _, n := range l.notes() {
		write(n, layNote)
	}
	l.scale(d.Width-2*layMargin-rulerRoom, layPart*d.Height)
	write("Drawn at 1 : "+strconv.FormatFloat(1/l.k, 'f', -1, 64)+". Lengths in words are in "+unitWords[o.Unit]+".", layNote)
	y += 2 * layNote
	l.at = geom.Point{X: layMargin + rulerRoom, Y: micron(y)}
	d.Page = append(d.Page, l.cloth()...)
	d.Pieces = l.pieces()
	y += l.mm(l.long()) + 2.5*layNote
	for _, t := range lay.Say(s.Problem, s.Lay) {
		write(t.In(o.Unit), layNote)
	}
	d.Height = max(d.Height, math.Ceil(y+layMargin))
	return d
}

// layout places a lay on a page.
type layout struct {
	shown laid.Shown
	unit  measure.Unit
	k     float64    // page millimetres in one of the cloth
	at    geom.Point // of the corner of the cloth at the cut end
}

// mm is steps of the lay as millimetres on the page.
func (l *layout) mm(steps int64) float64 { return float64(float64(steps) / lay.PerMM * l.k) }

func (l *layout) point(p lay.Point) geom.Point {
	return geom.Point{X: micron(l.at.X + l.mm(p.X)), Y: micron(l.at.Y + l.mm(p.Y))}
}

func (l *layout) facts() Facts {
	s := l.shown.Sheets[0]
	return Facts{Client: s.Job.Client.Name, Garment: plainTitle(s.Garment), Method: s.Method, Measured: s.Job.Client.Measured, Unit: l.unit}
}

// opened says that a part is opened flat beyond the folded one.
func (l *layout) opened() bool { return l.shown.Problem.Cloth.Opens(l.shown.Lay) }

// folded is the width of the cloth as it lies folded, long how long it lies.
func (l *layout) folded() int64 { return l.shown.Problem.Cloth.Lying(l.shown.Lay) }
func (l *layout) long() int64   { return l.shown.Problem.Cloth.Lies(l.shown.Lay) }

// across is the widest that the cloth lies.
func (l *layout) across() int64 {
	if l.opened() {
		return l.shown.Problem.Cloth.Width
	}
	return l.folded()
}

// scale picks the largest scale at which the cloth fits.
func (l *layout) scale(width, height float64) {
	for _, n := range layScales {
		if l.k = 1 / n; l.mm(l.across()) <= width && l.mm(l.long()) <= height {
			return
		}
	}
}

// notes are what stands above the cloth.
func (l *layout) notes() []string {
	s, u := l.shown, l.unit
	c := s.Cloth
	words := plainTitle(c.Name) + " cloth " + u.Say(c.Width) + " wide"
	if !s.Named {
		words += " (the usual width, none is named)"
	}
	words += ", " + laid.Folds(c) + "."
	if c.Nap {
		words += " It has a nap: every top to the cut end."
	}
	out := []string{words, s.Says().In(u)}
	if !s.Dropped.IsEmpty() {
		out = append(out, s.Dropped.In(u))
	}
	return out
}

// says is the one sentence for those who cannot see the drawing.
func (l *layout) says() string {
	var names []string
	for _, q := range l.shown.Lay.Placed {
		names = append(names, strings.ToLower(l.shown.Problem.Items[q.Item].Title))
	}
	return "The pieces on the cloth, from the cut end on: " + strings.Join(names, ", ") + "."
}
