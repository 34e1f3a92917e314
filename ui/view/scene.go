package view

import (
	"strings"

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
	Cloth *Cloth  // the pieces lie on cloth, not beside each other
	Pages *Pages  // the pieces lie on sheets of paper
	Part  float64 // how much of the newest lines is drawn yet, of their length; 0: all
	Bold  bool    // outlines two dots thick, for the last row of a room
	cut   bool    // the cut lines are drawn too
	low   bool    // what belongs to no half lies below, not beyond the hem
}

// lying is a piece with its place on the table.
type lying struct {
	id     pattern.PieceID
	to     geom.Matrix // from the drafting frame to the table
	box    geom.Box    // of the piece, on the table
	far    bool        // its fold or centre lies at the far side
	traced bool        // it lies on the piece that it is traced from
}

// gap is the room between pieces on the table, millimetres.
const gap = 40.0

// placed says that the pieces lie on something that has its own places for
// them.
func (s Scene) placed() bool { return s.Cloth != nil || s.Pages != nil }

// place lays the pieces out.
func (s Scene) place() []lying {
	switch {
	case s.Sheet == nil:
		return nil
	case s.Cloth != nil:
		return s.laid()
	case s.Pages != nil:
		return s.paged()
	case s.Piece != "":
		return s.turned(s.single(s.Piece))
	}
	out := s.half(frontHalf, 0)
	from := 0.0
	if len(out) > 0 {
		from = whole(out).Max.Y + gap
	}
	out = append(out, s.half(backHalf, from)...)
	return s.turned(append(out, s.others(out)...))
}

// half lays the pieces of one half of the body: the main one with its fold
// along the top, or of the back along the bottom; panels beside it, towards the
// side seam; what is sewn on below it behind its end.
func (s Scene) half(h half, from float64) []lying {
	var out []lying
	var boxes []geom.Box
	across, along := 0.0, 0.0
	for i, id := range s.members(h) {
		b, ok := s.boxOf(id)
		if !ok {
			continue
		}
		var right, down float64 // from where the frame would put it
		switch {
		case i == 0 || len(out) == 0:
		case s.beside(b, boxes[0], id):
			down = across + gap/2 - b.Min.X
		default:
			right = along + gap - b.Min.Y
		}
		across, along = max(across, b.Max.X+down), max(along, b.Max.Y+right)
		out = append(out, lying{id: id, far: h == backHalf, to: geom.Matrix{0, 1, 1, 0, right, from + down}})
		boxes = append(boxes, b)
	}
	for i := range out {
		if l := &out[i]; l.far {
			l.to = geom.Matrix{0, -1, 1, 0, l.to[4], from + across - (l.to[5] - from)} // x' = y, y' = low - x
		}
		out[i].box = boxOn(boxes[i], out[i].to)
	}
	return out
}

// beside says that a piece of the same drawing lies next to the main one, not
// below it.
func (s Scene) beside(b, main geom.Box, id pattern.PieceID) bool {
	shared := min(b.Max.Y, main.Max.Y) - max(b.Min.Y, main.Min.Y)
	return !s.drawn(id) && shared > b.Height()/2
}

// single is one piece: a main one with all of its half, what is traced from
// another lying on it, any other alone.
func (s Scene) single(id pattern.PieceID) []lying {
	h := halfOf(id)
	all := s.half(h, 0)
	switch {
	case h == neither || len(all) == 0 || s.drawn(id) && all[0].id != id:
		b, ok := s.boxOf(id)
		if !ok {
			return nil
		}
		l := lying{id: id, far: h == backHalf, to: geom.Matrix{0, 1, 1, 0, 0, 0}}
		if l.far {
			l.to = geom.Matrix{0, -1, 1, 0, 0, b.Max.X}
		}
		l.box = boxOn(b, l.to)
		return []lying{l}
	case !facing(id):
		return all
	}
	on := all[0]
	on.id, on.traced = id, true
	return append(all[:1:1], on)
}

// others puts what belongs to no half, and facings, into the free room beyond
// the hem, one below the other, a new column where one is full; or below the
// main pieces, where that room is wider.
func (s Scene) others(main []lying) []lying {
	if s.stepping() {
		return s.traced(main)
	}
	room := whole(main)
	x, y := room.Max.X+gap, 0.0
	if s.low {
		x, y = 0, room.Max.Y+gap
	}
	if len(main) == 0 {
		x, y = 0, 0
	}
	most := 0.0 // of the column or row in hand
	var out []lying
	for i := range s.Sheet.Pieces {
		p := &s.Sheet.Pieces[i]
		b := s.pieceBox(p)
		if _, there := at(main, p.ID); there || b.Empty() || lining(p.ID) {
			continue
		}
		// The cloth lies neck to the left here too: length across, width down.
		switch {
		case s.low && x > 0 && x+b.Height() > room.Max.X:
			x, y, most = 0, y+most+gap/2, 0
		case !s.low && y > 0 && y+b.Width() > room.Max.Y:
			x, y, most = x+most+gap, 0, 0
		}
		l := lying{id: p.ID, to: geom.Matrix{0, 1, 1, 0, x - b.Min.Y, y - b.Min.X}, traced: !s.drawn(p.ID)}
		l.far = halfOf(p.ID) == backHalf
		l.box = boxOn(b, l.to)
		out = append(out, l)
		if s.low {
			x, most = x+b.Height()+gap/2, max(most, b.Width())
		} else {
			y, most = y+b.Width()+gap/2, max(most, b.Height())
		}
	}
	return append(out, s.linings(append(main[:len(main):len(main)], out...))...)
}

// linings lie on the pieces that they line: but for the hem and the upper edge
// their lines are the same.
func (s Scene) linings(on []lying) []lying {
	var out []lying
	for i := range s.Sheet.Pieces {
		id := s.Sheet.Pieces[i].ID
		if l, ok := at(on, pattern.PieceID(strings.TrimSuffix(string(id), "_lining"))); ok && lining(id) {
			l.id, l.traced = id, true
			out = append(out, l)
		}
	}
	return out
}

// traced lays what has no marks of its own where it is drawn: on the piece it
// is traced from. A piece of its own that is drawn by now lies beyond.
func (s Scene) traced(main []lying) []lying {
	var out []lying
	x := whole(main).Max.X + gap
	for i := range s.Sheet.Pieces {
		id := s.Sheet.Pieces[i].ID
		if _, there := at(main, id); there {
			continue
		}
		if s.drawn(id) {
			if b, ok := s.boxOf(id); ok && s.alive(id) {
				l := lying{id: id, to: geom.Matrix{0, 1, 1, 0, x - b.Min.Y, -b.Min.X}}
				l.box = boxOn(b, l.to)
				out, x = append(out, l), l.box.Max.X+gap
			}
			continue
		}
		for _, l := range main {
			if halfOf(id) == halfOf(l.id) && halfOf(id) != neither {
				out = append(out, lying{id: id, to: l.to, box: l.box, far: l.far, traced: true})
				break
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
	bare, steps := b.Empty(), s.stepping()
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
