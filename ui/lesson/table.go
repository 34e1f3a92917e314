package lesson

import (
	"slices"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/geom"
)

// table is a copy of a sheet to be altered.
type table struct{ s *pattern.Sheet }

// spread copies all that a fault may alter. Paths are never written into: an
// altered edge gets a new one.
func spread(s *pattern.Sheet) *table {
	c := *s
	c.Marks = slices.Clone(s.Marks)
	c.Lengths = slices.Clone(s.Lengths)
	c.Girths = slices.Clone(s.Girths)
	c.Pieces = slices.Clone(s.Pieces)
	for i := range c.Pieces {
		p := &c.Pieces[i]
		p.Edges, p.Darts, p.Notches = slices.Clone(p.Edges), slices.Clone(p.Darts), slices.Clone(p.Notches)
		p.Holes, p.Balance = slices.Clone(p.Holes), slices.Clone(p.Balance)
	}
	return &table{&c}
}

func (t *table) piece(id pattern.PieceID) *pattern.Piece {
	p, _ := t.s.Piece(id)
	return p
}

// edge is the number of the first edge of that name, or -1.
func edge(p *pattern.Piece, name string) int {
	return slices.IndexFunc(p.Edges, func(e pattern.Edge) bool { return e.Name == name })
}

// point moves a standing point.
func (t *table) point(id pattern.PieceID, name string, at geom.Point) {
	for i := range t.s.Marks {
		if m := &t.s.Marks[i]; m.Gone == 0 && m.Kind == pattern.MarkPoint && m.Piece == id && m.Name == name {
			m.At = at
		}
	}
}

// line draws a standing line anew.
func (t *table) line(id pattern.PieceID, name string, path geom.Path) {
	for i := range t.s.Marks {
		if m := &t.s.Marks[i]; m.Gone == 0 && m.Kind != pattern.MarkPoint && m.Piece == id && m.Name == name {
			m.Path = path
		}
	}
}

// cutAgain closes a piece anew after alter has changed its sides. Corners keep
// their names.
func (t *table) cutAgain(id pattern.PieceID, alter func([]bench.Side)) {
	p := t.piece(id)
	sides := make([]bench.Side, len(p.Edges))
	corners := make([]pattern.Corner, len(p.Edges))
	for i, e := range p.Edges {
		sides[i] = bench.Side{Name: e.Name, Stitch: e.Stitch, Cut: e.Cut, Allowance: e.Allowance, Corner: e.Corner, SewnTo: e.SewnTo, Role: e.Role}
		corners[i] = e.Corner
	}
	alter(sides)
	p.Edges, p.Stitch, p.CutLine = bench.Ring(sides)
	for i := range p.Edges {
		p.Edges[i].Corner = corners[i]
	}
	t.line(id, "cut_line", p.CutLine)
}

// known are the figures of a half that a fault may change.
var known = []string{"neck", "shoulder", "armhole", "side", "hem"}

// lengths measures the edges of both halves.
func (t *table) lengths() map[pattern.PieceID]map[string]measure.Length {
	out := map[pattern.PieceID]map[string]measure.Length{}
	for _, id := range []pattern.PieceID{pattern.Front, pattern.Back} {
		out[id] = map[string]measure.Length{}
		if p := t.piece(id); p != nil {
			for _, name := range known {
				out[id][name] = p.Along(name)
			}
		}
	}
	return out
}

// remeasure carries what the edges gained or lost into the sheet's figures.
func (t *table) remeasure(before map[pattern.PieceID]map[string]measure.Length) {
	after := t.lengths()
	gain := func(id pattern.PieceID, name string) measure.Length { return after[id][name] - before[id][name] }
	for i := range t.s.Lengths {
		d := &t.s.Lengths[i]
		name := d.Name
		if name == "side_drawn" {
			name = "side"
		}
		d.Length += gain(d.Piece, name)
	}
	for i := range t.s.Girths {
		d := &t.s.Girths[i]
		both := gain(pattern.Front, d.Name) + gain(pattern.Back, d.Name)
		switch d.Name {
		case "neck":
			d.Length += 2 * both
		case "armhole":
			d.Length += both
		}
	}
}

// bent moves every point of a path.
func bent(p geom.Path, f func(geom.Point) geom.Point) geom.Path {
	out := make(geom.Path, len(p))
	for i, s := range p {
		out[i] = geom.Segment{A: f(s.A), B: f(s.B), C: f(s.C), D: f(s.D), Curved: s.Curved}
	}
	return out
}
