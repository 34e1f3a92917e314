package pdf

import (
	"chalkfold/export"
	"chalkfold/pattern/geom"
)

// spot is a place of a piece, in its own coordinates, that some sheet must
// show.
type spot = geom.Point

// spotStep is how close spots lie on lines. What a sheet that is left out
// would have shown less than the width of the join past its own edge is on its
// neighbour.
const spotStep = 2.0

// spotsOf are places all along the lines of a piece and over its words.
func spotsOf(p export.Placed) []spot {
	var out []spot
	for _, i := range p.Items {
		if i.Kind == export.Line {
			for _, s := range i.Strokes() {
				out = spotsAlong(out, s)
			}
			continue
		}
		b := i.Bounds()
		nx, ny := int(b.Width()/spotStep)+1, int(b.Height()/spotStep)+1
		for x := range nx + 1 {
			for y := range ny + 1 {
				out = append(out, geom.Point{
					X: b.Min.X + b.Width()*float64(x)/float64(nx),
					Y: b.Min.Y + b.Height()*float64(y)/float64(ny),
				})
			}
		}
	}
	return out
}

func spotsAlong(out []spot, path geom.Path) []spot {
	points := path.Flatten(0.2)
	for i := 1; i < len(points); i++ {
		a, b := points[i-1], points[i]
		n := int(a.Dist(b)/spotStep) + 1
		for k := range n + 1 {
			out = append(out, a.Lerp(b, float64(k)/float64(n)))
		}
	}
	return out
}

// used are the sheets that show anything of a piece, or lie inside one.
func (t Tiling) used(d export.Drawing, spots [][]spot) []Tile {
	taken := make([]bool, t.Rows*t.Columns)
	for i, list := range spots {
		for _, s := range list {
			x := t.at(t.Places[i].Apply(s))
			taken[x.Row*t.Columns+x.Column] = true
		}
	}
	for i, p := range d.Pieces {
		ring := p.Piece.CutLine.Transform(t.Places[i]).Outline(0.5)
		for k := range taken {
			if !taken[k] && len(ring) > 2 && ring.Contains(t.Window(Tile{k / t.Columns, k % t.Columns}).Centre()) {
				taken[k] = true
			}
		}
	}
	var out []Tile
	for k, on := range taken {
		if on {
			out = append(out, Tile{k / t.Columns, k % t.Columns})
		}
	}
	return out
}
