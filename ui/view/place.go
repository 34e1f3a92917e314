package view

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

func length(mm float64) measure.Length { return measure.Length(mm) }

func lengthOf(p geom.Path) measure.Length { return measure.Length(p.Length()) }

// Newest is the room on the table that the marks of the step take.
func (v View) Newest() geom.Box {
	b := geom.Box{}
	if v.scene.Sheet == nil {
		return b
	}
	k := v.scene.Step
	if k == 0 {
		k = v.scene.Sheet.Drawn()
	}
	for i := range v.scene.Sheet.Marks {
		m := &v.scene.Sheet.Marks[i]
		l, ok := at(v.pieces, m.Piece)
		if !ok || m.Born != k {
			continue
		}
		if m.Kind == pattern.MarkPoint {
			b = b.Add(l.to.Apply(m.At))
		} else {
			b = b.Union(boxOn(m.Path.Bounds(), l.to))
		}
	}
	return b
}

// Near is the room round a place.
func (v View) Near(p pattern.Place) geom.Box {
	if l, ok := at(v.pieces, p.Piece); ok {
		return geom.Box{}.Add(l.to.Apply(p.At))
	}
	return geom.Box{}
}

// Under says which piece lies nearest to a point of the table, and where on it
// the point is in the drafting frame.
func (v View) Under(p geom.Point) (pattern.Place, bool) {
	best, found := -1.0, pattern.Place{}
	for _, l := range v.pieces {
		q := geom.Point{X: min(max(p.X, l.box.Min.X), l.box.Max.X), Y: min(max(p.Y, l.box.Min.Y), l.box.Max.Y)}
		if d := p.Dist(q); best < 0 || d < best {
			best, found = d, pattern.Place{Piece: l.id, At: l.back(p)}
		}
	}
	return found, best >= 0
}

// Cell is how much of the table one cell covers, across and down.
func (v View) Cell() (across, down float64) { return v.cw * v.zoom, v.ch * v.zoom * v.tall }

// centre is the middle of a box.
func centre(b geom.Box) geom.Point { return b.Min.Lerp(b.Max, 0.5) }
