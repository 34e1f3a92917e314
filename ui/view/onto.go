package view

import (
	"strconv"

	"chalkfold/measure"
	"chalkfold/pattern/geom"
	"chalkfold/ui/canvas"
)

// Cloth is the cloth on the table: the fold along the top edge, the selvages
// along the bottom.
type Cloth struct {
	Half measure.Length // across, as it lies: of folded cloth half the width
	Long measure.Length // along
	Laid *Laid          // where each piece lies
}

// box is the cloth itself on the table.
func (c Cloth) box(stand bool) geom.Box {
	far := geom.Point{X: float64(c.Long), Y: float64(c.Half)}
	if stand {
		far.X, far.Y = far.Y, far.X
	}
	return geom.Box{}.Add(geom.Point{}).Add(far)
}

// cloth draws the edges of the cloth: the fold, the selvages, both cut ends.
func (v View) cloth(c *canvas.Canvas) {
	b := v.scene.Cloth.box(v.scene.Stand)
	at := func(x, y float64) canvas.Dot { return v.dot(geom.Point{X: x, Y: y}) }
	fold := [2]canvas.Dot{at(0, 0), at(b.Max.X, 0)}
	self := [2]canvas.Dot{at(0, b.Max.Y), at(b.Max.X, b.Max.Y)}
	if v.scene.Stand {
		fold = [2]canvas.Dot{at(0, 0), at(0, b.Max.Y)}
		self = [2]canvas.Dot{at(b.Max.X, 0), at(b.Max.X, b.Max.Y)}
	}
	edge := canvas.DashDot
	if v.scene.Cloth.Laid.Flat || v.scene.Cloth.Laid.Ends {
		edge = canvas.Solid
	}
	c.Polyline(fold[:], false, canvas.Second, edge, 1)
	c.Polyline(self[:], false, canvas.Second, canvas.Solid, 1)
	for k, ends := range [...][2]canvas.Dot{{fold[0], self[0]}, {fold[1], self[1]}} {
		if k == 0 && v.scene.Cloth.Laid.Ends {
			c.Polyline(ends[:], false, canvas.Second, canvas.DashDot, 1)
			continue
		}
		c.Polyline(ends[:], false, canvas.Faint, canvas.Dashed, 1)
	}
}

// titles writes the name of each piece into it.
func (v View) titles(c *canvas.Canvas) {
	cw, ch := c.Glyphs().Cell()
	defer v.alongs(c) // names come first
	for k, l := range v.pieces {
		p, ok := v.scene.Sheet.Piece(l.id)
		if !ok {
			continue
		}
		title := p.Title
		if title == "" {
			title = plain(string(l.id))
		}
		mid := l.box.Centre()
		d := v.dot(mid)
		if !v.clear(c, int(d.X)/cw-canvas.Width(title)/2, int(d.Y)/ch, title, canvas.Words) {
			v.clear(c, int(d.X)/cw, int(d.Y)/ch, strconv.Itoa(k+1), canvas.Words) // as in the words
		}
	}
}
