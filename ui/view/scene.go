package view

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// Scene is what lies on the table.
type Scene struct {
	Sheet *pattern.Sheet
	Old   *pattern.Sheet  // drawn dotted under it; nil: none
	Step  int             // the draft after this step; 0: finished pieces
	Piece pattern.PieceID // only this piece, and those traced from it; empty: all
	Stand bool
	Spot  *pattern.Place // a place to point at
	Says  string         // the words beside it
	Unit  measure.Unit
	Cloth *Cloth // the pieces lie on cloth, not beside each other
	Pages *Pages // the pieces lie on sheets of paper
	Bold  bool   // outlines two dots thick, for the last row of a room
	cut   bool   // the cut lines are drawn too
}

// lying is a piece with its place on the table.
type lying struct {
	id  pattern.PieceID
	to  geom.Matrix // from the drafting frame to the table
	box geom.Box    // of the piece, on the table
}

// gap is the room between pieces on the table, millimetres.
const gap = 40.0

// parents are the pieces that facings are traced from: in the draft they are
// drawn where they are traced.
var parents = map[pattern.PieceID]pattern.PieceID{
	pattern.FrontNeckFacing: pattern.Front, pattern.FrontArmholeFacing: pattern.Front,
	pattern.BackNeckFacing: pattern.Back, pattern.BackArmholeFacing: pattern.Back,
}

// mirrored says that the piece lies with its fold or centre at the far side.
func mirrored(id pattern.PieceID) bool {
	return id == pattern.Back || parents[id] == pattern.Back
}

// placed says that the pieces lie on something that has its own places for
// them.
func (s Scene) placed() bool { return s.Cloth != nil || s.Pages != nil }

// place lays the pieces out.
func (s Scene) place() []lying {
	if s.Sheet == nil {
		return nil
	}
	if s.Cloth != nil {
		return s.onto()
	}
	if s.Pages != nil {
		return s.paged()
	}
	if s.Piece != "" {
		return s.single(s.Piece)
	}
	front, hasFront := s.boxOf(pattern.Front)
	back, hasBack := s.boxOf(pattern.Back)
	var out []lying
	if hasFront {
		out = append(out, lay(pattern.Front, front, 0))
	}
	if hasBack {
		from := 0.0
		if hasFront {
			from = front.Max.X + gap
		}
		out = append(out, lay(pattern.Back, back, from))
	}
	out = append(out, s.others(out)...)
	return s.turned(out)
}

// lay gives a piece its place in the lying table: fold along the top, or for a
// mirrored piece along the bottom, no nearer to the top than from.
func lay(id pattern.PieceID, b geom.Box, from float64) lying {
	l := lying{id: id}
	if mirrored(id) {
		low := from + b.Max.X
		l.to = geom.Matrix{0, -1, 1, 0, 0, low} // x' = y, y' = low - x
	} else {
		l.to = geom.Matrix{0, 1, 1, 0, 0, from} // x' = y, y' = from + x
	}
	l.box = boxOn(b, l.to)
	return l
}

// single is one piece with the facings traced from it lying on it.
func (s Scene) single(id pattern.PieceID) []lying {
	main := id
	if p, ok := parents[id]; ok {
		main = p
	}
	b, ok := s.boxOf(main)
	if !ok {
		return nil
	}
	l := lay(main, b, 0)
	out := []lying{l}
	if main != id {
		l.id = id
		out = append(out, l)
	}
	return s.turned(out)
}

// others puts facings and all that is neither front nor back into the free
// room beyond the hem, one below the other, a new column where one is full.
func (s Scene) others(main []lying) []lying {
	if s.Step > 0 && s.Step < s.Sheet.Drawn() {
		return s.traced(main)
	}
	var high, right float64
	for _, l := range main {
		high, right = max(high, l.box.Max.Y), max(right, l.box.Max.X)
	}
	var out []lying
	x, y, wide := right+gap, 0.0, 0.0
	for i := range s.Sheet.Pieces {
		p := &s.Sheet.Pieces[i]
		if p.ID == pattern.Front || p.ID == pattern.Back {
			continue
		}
		b := s.pieceBox(p)
		if b.Empty() {
			continue
		}
		// The cloth lies neck to the left here too: length across, width down.
		if y > 0 && y+b.Width() > high {
			x, y, wide = x+wide+gap, 0, 0
		}
		l := lying{id: p.ID, to: geom.Matrix{0, 1, 1, 0, x - b.Min.Y, y - b.Min.X}}
		l.box = boxOn(b, l.to)
		out = append(out, l)
		y, wide = y+b.Width()+gap/2, max(wide, b.Height())
	}
	return out
}

// traced lays facings where they are drawn: on the piece they are traced from.
func (s Scene) traced(main []lying) []lying {
	var out []lying
	for _, l := range main {
		for _, id := range [...]pattern.PieceID{pattern.FrontNeckFacing, pattern.FrontArmholeFacing, pattern.BackNeckFacing, pattern.BackArmholeFacing} {
			if parents[id] == l.id {
				out = append(out, lying{id: id, to: l.to, box: l.box})
			}
		}
	}
	return out
}

// turned stands the table up where she asked for that.
func (s Scene) turned(all []lying) []lying {
	if !s.Stand {
		return all
	}
	swap := geom.Matrix{0, 1, 1, 0, 0, 0}
	for i := range all {
		all[i].to = all[i].to.Then(swap)
		all[i].box = boxOn(all[i].box, swap)
	}
	return all
}

// boxOf is what a piece needs, the same at every step so that the drawing
// never jumps: its outline if it is finished, and while it is drawn its points,
// which may lie outside the seams; else all its marks.
func (s Scene) boxOf(id pattern.PieceID) (geom.Box, bool) {
	b := geom.Box{}
	if p, ok := s.Sheet.Piece(id); ok {
		b = s.pieceBox(p)
	}
	bare, steps := b.Empty(), s.Step > 0 && s.Step < s.Sheet.Drawn()
	for i := range s.Sheet.Marks {
		m := &s.Sheet.Marks[i]
		switch {
		case m.Piece != id || !bare && !steps:
		case m.Kind == pattern.MarkPoint:
			b = b.Add(m.At)
		case bare:
			b = b.Union(m.Path.Bounds())
		}
	}
	return b, !b.Empty()
}

func (s Scene) pieceBox(p *pattern.Piece) geom.Box {
	b := geom.Box{}
	if len(p.Stitch) > 0 {
		b = b.Union(p.Stitch.Bounds())
	}
	if s.cut && len(p.CutLine) > 0 {
		b = b.Union(p.CutLine.Bounds())
	}
	return b
}

func boxOn(b geom.Box, m geom.Matrix) geom.Box {
	return geom.Box{}.Add(m.Apply(b.Min)).Add(m.Apply(b.Max))
}

// whole is the room that all of it takes on the table.
func whole(all []lying) geom.Box {
	b := geom.Box{}
	for _, l := range all {
		b = b.Union(l.box)
	}
	return b
}

// at finds where a piece lies.
func at(all []lying, id pattern.PieceID) (lying, bool) {
	for _, l := range all {
		if l.id == id {
			return l, true
		}
	}
	return lying{}, false
}

// back takes a point of the table into the drafting frame; the matrices here
// only swap, mirror and move.
func (l lying) back(p geom.Point) geom.Point {
	m := l.to
	det := m[0]*m[3] - m[1]*m[2]
	x, y := p.X-m[4], p.Y-m[5]
	return geom.Point{X: (m[3]*x - m[2]*y) / det, Y: (m[0]*y - m[1]*x) / det}
}
