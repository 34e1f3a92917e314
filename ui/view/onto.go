package view

import (
	"strconv"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/ui/canvas"
)

// Cloth is the folded cloth on the table: the fold along the top edge, the
// selvages along the bottom.
type Cloth struct {
	Half    measure.Length // across, half the width
	Long    measure.Length // along
	Lengths int            // how many lengths lie one after another
	Beside  bool           // the small pieces lie beside the large ones
	Laid    *Laid          // where each piece lies; nil: as the hand rule counts them
}

// onto lays the pieces on the cloth as the hand rule counts them: the large
// ones side by side or one after another, the small ones in what is left.
func (s Scene) onto() []lying {
	if s.Cloth.Laid != nil {
		return s.laid()
	}
	var out []lying
	next := 0.0
	for i := range s.Sheet.Pieces {
		p := &s.Sheet.Pieces[i]
		if p.ID != pattern.Front && p.ID != pattern.Back {
			continue
		}
		b := s.pieceBox(p)
		l := lying{id: p.ID}
		switch {
		case s.Cloth.Lengths > 1:
			l.to = geom.Matrix{0, 1, 1, 0, next - b.Min.Y, -b.Min.X}
		case mirrored(p.ID):
			l.to = geom.Matrix{0, -1, 1, 0, -b.Min.Y, float64(s.Cloth.Half) + b.Min.X}
		default:
			l.to = geom.Matrix{0, 1, 1, 0, -b.Min.Y, -b.Min.X}
		}
		l.box = boxOn(b, l.to)
		out = append(out, l)
		next = max(next, l.box.Max.X+gap/4)
	}
	return s.turned(append(out, s.small(out, next)...))
}

// small lays the small pieces beside the large ones, or beyond them.
func (s Scene) small(large []lying, next float64) []lying {
	x, y := next, 0.0
	if s.Cloth.Beside {
		for _, l := range large {
			y = max(y, l.box.Max.Y+gap/4)
		}
		x = 0
	}
	from, high := y, 0.0
	var out []lying
	for i := range s.Sheet.Pieces {
		p := &s.Sheet.Pieces[i]
		b := s.pieceBox(p)
		if p.ID == pattern.Front || p.ID == pattern.Back || b.Empty() {
			continue
		}
		if y > from && y+b.Width() > float64(s.Cloth.Half) {
			x, y, high = x+high+gap/4, from, 0
		}
		l := lying{id: p.ID, to: geom.Matrix{0, 1, 1, 0, x - b.Min.Y, y - b.Min.X}}
		l.box = boxOn(b, l.to)
		out = append(out, l)
		y, high = y+b.Width()+gap/4, max(high, b.Height())
	}
	return out
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
	if l := v.scene.Cloth.Laid; l != nil && l.Flat {
		edge = canvas.Solid
	}
	c.Polyline(fold[:], false, canvas.Second, edge, 1)
	c.Polyline(self[:], false, canvas.Second, canvas.Solid, 1)
	for _, ends := range [...][2]canvas.Dot{{fold[0], self[0]}, {fold[1], self[1]}} {
		c.Polyline(ends[:], false, canvas.Faint, canvas.Dashed, 1)
	}
}

// titles writes the name of each piece into it.
func (v View) titles(c *canvas.Canvas) {
	cw, ch := c.Glyphs().Cell()
	if v.scene.Cloth.Laid != nil {
		defer v.alongs(c) // names come first
	}
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
		if !v.clear(c, int(d.X)/cw-canvas.Width(title)/2, int(d.Y)/ch, title, canvas.Words) && v.scene.Cloth.Laid != nil {
			v.clear(c, int(d.X)/cw, int(d.Y)/ch, strconv.Itoa(k+1), canvas.Words) // as in the words
		}
	}
}
