package view

import (
	"math"

	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/ui/canvas"
)

// View is a scene seen with an eye through so many cells. It knows where each
// millimetre of the table falls among the dots.
type View struct {
	scene  Scene
	eye    Eye
	pieces []lying
	all    geom.Box // the table
	cols   int
	rows   int
	cw, ch float64 // dots a cell
	dw, dh float64 // dots across and down
	tall   float64 // how much higher than wide a dot is
	fit    float64 // millimetres across a dot when all is seen
	zoom   float64 // millimetres across a dot now
	ox, oy float64 // the table at dot 0, 0
}

// margin is the room kept free round the drawing, in cells: for the levels
// outside each fold, and a little air.
type margin struct{ left, top, right, bottom int }

// sideCells is the room for a level beside a standing fold.
const sideCells = 7

func (v View) margin() margin {
	if v.rows < 6 || v.cols < 24 {
		return margin{}
	}
	m := margin{left: 1, right: 1}
	if v.eye.Plain {
		return m
	}
	for _, l := range v.pieces {
		switch far := l.far; {
		case v.scene.Cloth != nil && v.scene.Stand:
			m.right = sideCells // for the lengths along
		case v.scene.Cloth != nil:
			m.bottom = 1
		case v.scene.placed() || l.traced:
		case v.scene.Stand && far:
			m.right = sideCells
		case v.scene.Stand:
			m.left = sideCells
		case far:
			m.bottom = 1
		default:
			m.top = 1
		}
	}
	return m
}

// Look prepares a view. The aspect is the height of a cell to its width.
func Look(s Scene, e Eye, cols, rows int, g canvas.Glyphs, aspect float64) View {
	v := View{scene: s, eye: e, cols: max(cols, 0), rows: max(rows, 0)}
	cw, ch := g.Cell()
	v.cw, v.ch = float64(cw), float64(ch)
	v.dw, v.dh = float64(v.cols)*v.cw, float64(v.rows)*v.ch
	if aspect <= 0 {
		aspect = 2
	}
	v.tall = aspect * v.cw / v.ch
	// Where the cut line is too near to the stitch line to be told from it, it
	// takes no room either.
	v.scene.cut = s.placed()
	v.lie()
	if s.roomy() {
		far := v
		v.scene.low = true
		if v.lie(); v.fit > far.fit*patience {
			v = far
		}
	}
	if !v.scene.cut && !v.stepping() && v.DotsPerInch() >= bothLines {
		v.scene.cut = true
		v.lie()
	}
	if !e.Fits() {
		v.zoom = e.Zoom
		v.ox = e.At.X - (v.dw-1)/2*v.zoom
		v.oy = e.At.Y - (v.dh-1)/2*v.zoom*v.tall
	}
	return v
}

// patience is how much larger the drawing must get before the pieces are laid
// out another way.
const patience = 0.87

// lie places the pieces and fits them in.
func (v *View) lie() {
	v.pieces = v.scene.place()
	v.all = whole(v.pieces)
	if v.scene.Cloth != nil {
		v.all = v.all.Union(v.scene.Cloth.box(v.scene.Stand))
	}
	if v.scene.Pages != nil {
		for _, p := range v.scene.Pages.Sheets {
			v.all = v.all.Union(v.scene.room(p))
		}
	}
	m := v.margin()
	w, h := v.cells()
	v.fit = max(v.all.Width()/w, v.all.Height()/h, nearest)
	v.zoom = v.fit
	mid := centre(v.all)
	v.ox = mid.X - (float64(m.left)*v.cw+w/2)*v.zoom
	v.oy = mid.Y - (float64(m.top)*v.ch*v.tall+h/2)*v.zoom
}

// cells is the room for the drawing, margins left free, both ways in the
// measure of a dot's width.
func (v View) cells() (w, h float64) {
	m := v.margin()
	return max(v.dw-float64(m.left+m.right)*v.cw-1, 1), max(v.dh-float64(m.top+m.bottom)*v.ch-1, 1) * v.tall
}

// size is what is seen of the table, in millimetres.
func (v View) size() (w, h float64) { return v.dw * v.zoom, v.dh * v.zoom * v.tall }

func (v View) middle() geom.Point {
	return geom.Point{X: v.ox + (v.dw-1)/2*v.zoom, Y: v.oy + (v.dh-1)/2*v.zoom*v.tall}
}

// dot is where a point of the table falls.
func (v View) dot(p geom.Point) canvas.Dot {
	return canvas.Dot{X: (p.X - v.ox) / v.zoom, Y: (p.Y - v.oy) / (v.zoom * v.tall)}
}

// tolerance is a third of a dot, in millimetres.
func (v View) tolerance() float64 { return max(v.zoom*min(1, v.tall)/3, 0.01) }

// DotsPerInch is how large the drawing is: the arrangement with more wins.
func (v View) DotsPerInch() float64 {
	if v.zoom == 0 || v.all.Empty() {
		return 0
	}
	return 25.4 / v.zoom / math.Sqrt(v.tall)
}

// Empty says that there is nothing to see.
func (v View) Empty() bool { return v.all.Empty() }

// Middle is what is in the middle of the view, on the table.
func (v View) Middle() geom.Point { return v.middle() }

// Started says that front and back both have marks at a step.
func Started(s *pattern.Sheet, step int) bool {
	seen := map[pattern.PieceID]bool{}
	for i := range s.Marks {
		if s.Marks[i].AliveAt(step) {
			seen[s.Marks[i].Piece] = true
		}
	}
	return seen[pattern.Front] && seen[pattern.Back]
}
