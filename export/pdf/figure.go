package pdf

import (
	"chalkfold/pattern/geom"
)

// Ink is how a line of a small drawing looks.
type Ink int8

// The inks of small drawings.
const (
	InkPlain Ink = iota
	InkHeavy
	InkFaint
	InkDashed
	InkFold
)

var inks = [...]stroke{
	InkPlain:  {weight: 0.25},
	InkHeavy:  {weight: 0.6},
	InkFaint:  {weight: 0.18, gray: 130},
	InkDashed: {weight: 0.2, dash: []float64{1.6, 0.9}},
	InkFold:   {weight: 0.3, dash: []float64{4, 1, 0.8, 1}},
}

// FigureLine is a line of a small drawing.
type FigureLine struct {
	Path geom.Path
	Ink  Ink
}

// FigureDot is a point with a name beside it.
type FigureDot struct {
	At    geom.Point
	Label string
	Heavy bool
}

// FigureWords are words in the middle of a place.
type FigureWords struct {
	At   geom.Point
	Text string
	Bold bool
}

// Figure is a small drawing in any measure, y down; it is scaled to fit.
type Figure struct {
	Lines   []FigureLine
	Dots    []FigureDot
	Words   []FigureWords
	Height  float64 // at most so high on paper, millimetres
	Caption string
}

// Bounds is the room that the drawing takes in its own measure.
func (f Figure) Bounds() geom.Box {
	var b geom.Box
	for _, l := range f.Lines {
		b = b.Union(l.Path.Bounds())
	}
	for _, d := range f.Dots {
		b = b.Add(d.At)
	}
	for _, w := range f.Words {
		b = b.Add(w.At)
	}
	return b
}

const figureAir = 4.0 // round a drawing, for the names at its edge

// Figure draws a small drawing, as large as the column and its height allow.
func (d *Document) Figure(f Figure) {
	b := f.Bounds()
	if b.Empty() || b.Width() <= 0 && b.Height() <= 0 {
		return
	}
	room := d.Width() - 2*figureAir
	k := room / max(b.Width(), 1e-6)
	if f.Height > 0 {
		k = min(k, (f.Height-2*figureAir)/max(b.Height(), 1e-6))
	}
	k = min(k, (d.bottom()-d.margin-2*figureAir-4*d.size)/max(b.Height(), 1e-6))
	high := k*b.Height() + 2*figureAir
	caption := 0.0
	if f.Caption != "" {
		caption = lead * d.size
	}
	d.need(high + caption)
	left := d.left() + (d.Width()-k*b.Width())/2
	at := geom.Point{X: left, Y: d.y + figureAir}
	place := geom.Matrix{k, 0, 0, k, at.X - k*b.Min.X, at.Y - k*b.Min.Y}
	d.figure(f, place, geom.Box{Min: geom.Point{X: d.left(), Y: d.y}, Max: geom.Point{X: d.left() + d.Width(), Y: d.y + high}})
	d.y += high
	d.fresh = false
	if f.Caption != "" {
		d.Text(f.Caption)
	}
}

// fit draws a figure in the middle of a room, as large as it goes in.
func (d *Document) fit(f Figure, room geom.Box) {
	b := f.Bounds()
	if b.Empty() {
		return
	}
	in := room.Grow(-1.5)
	k := min(in.Width()/max(b.Width(), 1e-6), in.Height()/max(b.Height(), 1e-6))
	c := in.Centre()
	at := b.Centre()
	d.figure(f, geom.Matrix{k, 0, 0, k, c.X - k*at.X, c.Y - k*at.Y}, room)
}

func (d *Document) figure(f Figure, m geom.Matrix, room geom.Box) {
	size := min(0.8*d.size, 3.2)
	for _, l := range f.Lines {
		d.line(l.Path.Transform(m), inks[l.Ink])
	}
	var taken []geom.Box
	for _, w := range f.Words {
		at := m.Apply(w.At)
		at.Y += 0.36 * size
		wide := d.write(at, words{text: w.Text, size: size, bold: w.Bold, middle: true})
		taken = append(taken, geom.Box{Min: geom.Point{X: at.X - wide/2, Y: at.Y - size}, Max: geom.Point{X: at.X + wide/2, Y: at.Y + 0.2*size}})
	}
	for _, p := range f.Dots {
		at := m.Apply(p.At)
		radius := 0.5
		if p.Heavy {
			radius = 0.8
		}
		d.dot(at, radius)
		taken = append(taken, geom.Box{Min: at, Max: at}.Grow(radius))
	}
	for _, p := range f.Dots {
		if p.Label != "" {
			taken = append(taken, d.label(m.Apply(p.At), p.Label, size, room, taken))
		}
	}
}

// label writes a name beside a point: the first of eight places round it that
// is free.
func (d *Document) label(at geom.Point, text string, size float64, room geom.Box, taken []geom.Box) geom.Box {
	wide := d.pen.width(text, size)
	const off = 1.4
	var best geom.Box
	for i, c := range [...]geom.Point{
		{X: off, Y: -off},
		{X: off, Y: off + size},
		{X: -off - wide, Y: -off},
		{X: -off - wide, Y: off + size},
		{X: -wide / 2, Y: -2 * off},
		{X: -wide / 2, Y: 2*off + size},
		{X: 2 * off, Y: 0.36 * size},
		{X: -2*off - wide, Y: 0.36 * size},
	} {
		p := at.Add(geom.Vector{X: c.X, Y: c.Y})
		b := geom.Box{Min: geom.Point{X: p.X, Y: p.Y - 0.8*size}, Max: geom.Point{X: p.X + wide, Y: p.Y + 0.2*size}}
		if i == 0 {
			best = b
		}
		if free(b, room, taken) {
			best = b
			break
		}
	}
	d.write(geom.Point{X: best.Min.X, Y: best.Max.Y - 0.2*size}, words{text: text, size: size})
	return best
}

func free(b, room geom.Box, taken []geom.Box) bool {
	if !room.Contains(b.Min) || !room.Contains(b.Max) {
		return false
	}
	for _, t := range taken {
		if t.Overlaps(b) {
			return false
		}
	}
	return true
}
