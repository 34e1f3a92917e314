package view

import (
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/ui/canvas"
)

// Pages are sheets of paper laid edge to edge, with the pieces where the
// printer has them: in the coordinates of the joined sheets, upright.
type Pages struct {
	Places map[pattern.PieceID]geom.Matrix
	Sheets []Page
}

// Page is what one sheet shows, and its name.
type Page struct {
	Name string
	Room geom.Box
}

// lengthwise turns upright paper so that it lies along the table, as the cloth
// does.
var lengthwise = geom.Matrix{0, 1, 1, 0, 0, 0}

// paged lays the pieces where the sheets have them.
func (s Scene) paged() []lying {
	var out []lying
	for i := range s.Sheet.Pieces {
		p := &s.Sheet.Pieces[i]
		place, ok := s.Pages.Places[p.ID]
		if !ok {
			continue
		}
		l := lying{id: p.ID, to: place.Then(lengthwise)}
		l.box = boxOn(s.pieceBox(p), l.to)
		out = append(out, l)
	}
	return s.turned(out)
}

// room is a sheet on the table.
func (s Scene) room(p Page) geom.Box {
	if s.Stand {
		return p.Room
	}
	return boxOn(p.Room, lengthwise)
}

// sheets draws the edges of the sheets.
func (v View) sheets(c *canvas.Canvas) {
	for _, p := range v.scene.Pages.Sheets {
		b := v.scene.room(p)
		at := func(x, y float64) canvas.Dot { return v.dot(geom.Point{X: x, Y: y}) }
		c.Polyline([]canvas.Dot{at(b.Min.X, b.Min.Y), at(b.Max.X, b.Min.Y), at(b.Max.X, b.Max.Y), at(b.Min.X, b.Max.Y)}, true, canvas.Faint, canvas.Dotted, 1)
	}
}

// sheetNames writes the name of each sheet into its corner, or where it finds
// room in it.
func (v View) sheetNames(c *canvas.Canvas) {
	cw, ch := c.Glyphs().Cell()
	for _, p := range v.scene.Pages.Sheets {
		b := v.scene.room(p)
		from, to := v.dot(b.Min), v.dot(b.Max)
		n := canvas.Width(p.Name)
		for row := int(from.Y)/ch + 1; row < int(to.Y)/ch; row++ {
			if v.clear(c, int(from.X)/cw+2, row, p.Name, canvas.Words) || v.clear(c, int(to.X)/cw-n-1, row, p.Name, canvas.Words) {
				break
			}
		}
	}
}
