package view

import (
	"chalkfold/ui/canvas"
)

// Paper is what views are drawn on. It keeps its memory between frames.
type Paper struct{ canvas *canvas.Canvas }

// A zoomed table keeps the whole of it in the corner from this size on.
const (
	insetFrom = 96
	insetCols = 26
	insetRows = 7
)

// Rows draws a scene as seen with an eye and gives its lines, and the view, for
// finding places in it.
func (p *Paper) Rows(s Scene, e Eye, cols, rows int, g canvas.Glyphs, aspect float64, pens canvas.Palette) ([]string, View) {
	if p.canvas == nil {
		p.canvas = canvas.New(cols, rows, g)
	} else {
		p.canvas.Resize(cols, rows, g)
	}
	v := Look(s, e, cols, rows, g, aspect)
	v.Draw(p.canvas)
	if !e.Fits() && cols >= insetFrom && rows >= 3*insetRows {
		p.inset(s, g, aspect)
	}
	return p.canvas.Rows(pens), v
}

// inset puts the whole table into the lower right corner.
func (p *Paper) inset(s Scene, g canvas.Glyphs, aspect float64) {
	cols, rows := p.canvas.Size()
	small := canvas.New(insetCols, insetRows, g)
	s.Step, s.Spot, s.Says = 0, nil, ""
	Look(s, Eye{Plain: true}, insetCols, insetRows, g, aspect).Draw(small)
	for y := range insetRows {
		for x := range insetCols {
			r, pen := small.At(x, y)
			p.canvas.Text(cols-insetCols+x, rows-insetRows+y, string(r), pen)
		}
	}
}
