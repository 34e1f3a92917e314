package view

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/ui/canvas"
)

// Laid is a lay: where each piece lies on the cloth. Places are in millimetres,
// x across from the fold or the left selvage, y along from the cut end, or from
// the fold where that runs across.
type Laid struct {
	Pieces []LaidPiece
	Flat   bool    // one layer, a selvage where else the fold is
	Middle bool    // both edges folded to the middle, where the selvages meet
	Ends   bool    // folded across: the fold is where else the cut end is
	Depth  float64 // folded off centre: where the selvage that is folded in lies; 0: it is not
	Opened float64 // where the part that is opened flat begins; 0: there is none
	Flaws  []geom.Box
	Hand   int // the piece in hand; -1: none
}

// LaidPiece is one piece of a lay.
type LaidPiece struct {
	ID      pattern.PieceID
	Title   string
	Outline []geom.Point
	Pinned  bool
}

// swap carries a place on the cloth to the lying table: along to the right.
var swap = geom.Matrix{0, 1, 1, 0, 0, 0}

// laid places the pieces of a lay.
func (s Scene) laid() []lying {
	var out []lying
	for _, p := range s.Cloth.Laid.Pieces {
		l := lying{id: p.ID, to: swap}
		for _, q := range p.Outline {
			l.box = l.box.Add(swap.Apply(q))
		}
		out = append(out, l)
	}
	return s.turned(out)
}

// laidOut draws the outlines of a lay, pinned ones and the one in hand in their
// own pens, its flaws, and where it is opened.
func (v View) laidOut(c *canvas.Canvas) {
	lay := v.scene.Cloth.Laid
	for k, p := range lay.Pieces {
		pen := canvas.Line
		if p.Pinned {
			pen = canvas.Mark
		}
		if k == lay.Hand {
			pen = canvas.Selected
		}
		dots := make([]canvas.Dot, len(p.Outline))
		for i, q := range p.Outline {
			dots[i] = v.dot(v.pieces[k].to.Apply(q))
		}
		c.Polyline(dots, true, pen, canvas.Solid, v.thick(pen))
	}
	on := func(p geom.Point) canvas.Dot {
		if !v.scene.Stand {
			p = swap.Apply(p)
		}
		return v.dot(p)
	}
	line := func(pen canvas.Pen, dash canvas.Dash, points ...geom.Point) {
		var dots []canvas.Dot
		for _, p := range points {
			dots = append(dots, on(p))
		}
		c.Polyline(dots, false, pen, dash, 1)
	}
	for _, f := range lay.Flaws {
		a, b := f.Min, f.Max
		line(canvas.Mark, canvas.Dotted, a, geom.Point{X: b.X, Y: a.Y}, b, geom.Point{X: a.X, Y: b.Y}, a)
		line(canvas.Mark, canvas.Dotted, a, b)
	}
	wide, long := float64(v.scene.Cloth.Half), float64(v.scene.Cloth.Long)
	if lay.Opened > 0 {
		line(canvas.Second, canvas.Dashed, geom.Point{Y: lay.Opened}, geom.Point{X: wide, Y: lay.Opened})
	}
	if lay.Depth > 0 {
		end := long
		if lay.Opened > 0 {
			end = lay.Opened
		}
		line(canvas.Second, canvas.Solid, geom.Point{X: lay.Depth}, geom.Point{X: lay.Depth, Y: end})
	}
	if lay.Middle {
		line(canvas.Second, canvas.Solid, geom.Point{X: wide / 2}, geom.Point{X: wide / 2, Y: long})
	}
}

// alongs writes the lengths along the edge of the cloth that is cut last, as far
// apart as leaves room.
func (v View) alongs(c *canvas.Canvas) {
	u := v.scene.Unit
	step := 200.0
	if u == measure.In {
		step = 6 * 25.4
	}
	wide, long := float64(v.scene.Cloth.Half), float64(v.scene.Cloth.Long)
	cw, ch := c.Glyphs().Cell()
	room := 6 * v.cw * v.zoom
	if v.scene.Stand {
		room = 2 * v.ch * v.zoom * v.tall
	}
	for step < room {
		step *= 2
	}
	for along := step; along <= long-room/2; along += step {
		text := u.Tape(length(along))
		if v.scene.Stand {
			d := v.dot(geom.Point{X: wide, Y: along})
			v.clear(c, int(d.X)/cw+2, int(d.Y)/ch, text, canvas.Words)
			continue
		}
		d := v.dot(geom.Point{X: along, Y: wide})
		v.clear(c, int(d.X)/cw-canvas.Width(text)/2, int(d.Y)/ch+1, text, canvas.Words)
	}
}
