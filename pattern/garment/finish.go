package garment

import (
	"math"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/geom"
)

// cutter cuts pieces from the marks of a finished draft.
type cutter struct {
	s *pattern.Sheet
}

func (c cutter) at(full string) geom.Point {
	piece, name, _ := strings.Cut(full, ".")
	for i := len(c.s.Marks) - 1; i >= 0; i-- {
		m := &c.s.Marks[i]
		if m.Kind == pattern.MarkPoint && m.Gone == 0 && m.Name == name && string(m.Piece) == piece {
			return m.At
		}
	}
	return geom.Point{}
}

func (c cutter) has(full string) bool {
	piece, name, _ := strings.Cut(full, ".")
	for i := range c.s.Marks {
		m := &c.s.Marks[i]
		if m.Gone == 0 && m.Name == name && string(m.Piece) == piece {
			return true
		}
	}
	return false
}

func (c cutter) line(full string) geom.Path {
	piece, name, _ := strings.Cut(full, ".")
	for i := len(c.s.Marks) - 1; i >= 0; i-- {
		m := &c.s.Marks[i]
		if m.Kind != pattern.MarkPoint && m.Gone == 0 && m.Name == name && string(m.Piece) == piece {
			return m.Path
		}
	}
	return nil
}

// drawn says whether a step was drawn, and its number.
func (c cutter) drawn(id string) (int, bool) {
	for i := range c.s.Steps {
		if st := &c.s.Steps[i]; st.ID == id && st.Drawn {
			return st.Number, true
		}
	}
	return 0, false
}

// close turns sides into a piece with its outlines, grain and fold.
func closed(id pattern.PieceID, title string, cut pattern.CutKind, sides []bench.Side) pattern.Piece {
	p := pattern.Piece{ID: id, Title: title, Cloth: "main", Cut: cut, Count: 1}
	if cut == pattern.Pair {
		p.Count = 2
	}
	p.Edges, p.Stitch, p.CutLine = bench.Ring(sides)
	for i := range p.Edges {
		if e := &p.Edges[i]; e.Role == pattern.RoleFold {
			f := geom.Straight(e.Cut.Start(), e.Cut.End())
			p.Fold = &f
		}
	}
	p.Grain, p.Label = grain(p.Stitch)
	return p
}

// grain finds the longest upright run inside a piece, a little in from the
// middle, and lays the grain arrow along it.
func grain(stitch geom.Path) (geom.Segment, geom.Point) {
	b := stitch.Bounds()
	best, run := geom.Segment{}, 0.0
	for _, share := range []float64{0.42, 0.3, 0.55, 0.7, 0.85} {
		x := b.Min.X + float64(share*b.Width())
		at := stitch.AtOut(x)
		lo, hi := math.Inf(1), math.Inf(-1)
		if len(at) == 2 {
			lo, hi = math.Min(at[0].Y, at[1].Y), math.Max(at[0].Y, at[1].Y)
		}
		// A later place must win clearly, so that arrows stand alike.
		if hi-lo > 1.1*run {
			run = hi - lo
			best = geom.Straight(geom.Point{X: x, Y: lo + 0.1*run}, geom.Point{X: x, Y: hi - 0.1*run})
		}
	}
	if run == 0 {
		c := b.Min.Lerp(b.Max, 0.5)
		best = geom.Straight(geom.Point{X: c.X, Y: b.Min.Y + b.Height()/4}, geom.Point{X: c.X, Y: b.Max.Y - b.Height()/4})
	}
	return best, best.At(0.45)
}

// notch puts a notch on the cutting line of an edge, beside the point of its
// stitching line nearest to at.
func notch(p *pattern.Piece, edge, name string, at geom.Point, marks int) {
	best, where, s, on := math.Inf(1), -1, 0.0, geom.Point{}
	for i := range p.Edges {
		if p.Edges[i].Name != edge {
			continue
		}
		if along, near, d := p.Edges[i].Stitch.Nearest(at); d < best-1e-9 {
			best, where, s, on = d, i, along, near
		}
	}
	if where < 0 {
		return
	}
	e := p.Edges[where]
	_, dir := e.Stitch.At(s)
	in := dir.Right()
	spot := beside(p, e, on, dir.Left())
	p.Notches = append(p.Notches, pattern.Notch{
		At: spot, Edge: edge, Marks: marks, Into: degrees(in), Name: name,
	})
}

// beside is the point of the cutting line square out from a point of the
// stitching line: on the edge's own cut, or where corners took that over.
func beside(p *pattern.Piece, e pattern.Edge, on geom.Point, out geom.Vector) geom.Point {
	if e.Allowance == 0 {
		return on
	}
	ray := geom.Straight(on, on.Add(out.Scale(3*e.Allowance.MM()+1)))
	for _, cut := range []geom.Path{e.Cut, p.CutLine} {
		if x, ok := geom.FirstCross(ray, cut); ok {
			return x
		}
	}
	_, at, _ := p.CutLine.Nearest(on)
	return at
}

func degrees(v geom.Vector) float64 {
	d := math.Atan2(v.Y, v.X) * 180 / math.Pi
	if d < 0 {
		d += 360
	}
	return d
}

// balance lays a thin line across the piece at a level, from the centre to
// the stitching line of the side.
func balance(p *pattern.Piece, name string, level float64) {
	for _, e := range p.Edges {
		if e.Name != "side" && e.Name != "dart" {
			continue
		}
		if at := e.Stitch.AtLevel(level); len(at) > 0 {
			p.Balance = append(p.Balance, pattern.Balance{Name: name, Line: geom.Straight(geom.Point{Y: level}, at[0])})
			return
		}
	}
}

// number counts the pieces of a sheet through.
func number(pieces []pattern.Piece) {
	for i := range pieces {
		pieces[i].Number, pieces[i].Of = i+1, len(pieces)
	}
}

func dim(piece pattern.PieceID, name string, l float64) pattern.Dimension {
	return pattern.Dimension{Piece: piece, Name: name, Length: measure.Length(l)}
}

func girth(name string, l float64) pattern.Dimension {
	return pattern.Dimension{Name: name, Length: measure.Length(l)}
}

func angle(piece pattern.PieceID, name string, degrees float64) pattern.Dimension {
	return pattern.Dimension{Piece: piece, Name: name, Degrees: degrees, Angle: true}
}

// ruled is the length of the straight figure through points.
func ruled(points ...geom.Point) float64 {
	sum := 0.0
	for i := 1; i < len(points); i++ {
		sum += points[i-1].Dist(points[i])
	}
	return sum
}
