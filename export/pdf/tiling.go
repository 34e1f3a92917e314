package pdf

import (
	"math"
	"sort"
	"strconv"

	"chalkfold/export"
	"chalkfold/pattern/geom"
)

// The frame of a tile, in millimetres: what printers leave white, how far
// neighbours overlap, and how far inside the live edge they are joined.
const (
	tileMargin  = 10.0
	tileOverlap = 10.0
	tileJoin    = tileOverlap / 2
	tileGap     = 8.0 // between pieces
	// mostColumns is how many columns of sheets are tried: more do not lie on
	// a table.
	mostColumns = 5
)

// Tiling is how a drawing is spread over sheets of paper: the pieces packed
// once more, and the sheets that show anything.
type Tiling struct {
	Paper         Paper
	Columns, Rows int
	Tiles         []Tile        // from the top, each row from the left
	Places        []geom.Matrix // of the pieces
	Width, Height float64       // of all sheets joined
}

// Tile is one sheet.
type Tile struct{ Row, Column int }

// Name is a letter for the row and a number for the column: B3.
func (t Tile) Name() string {
	row, letters := t.Row, ""
	for ; ; row = row/26 - 1 {
		letters = string(rune('A'+row%26)) + letters
		if row < 26 {
			break
		}
	}
	return letters + strconv.Itoa(t.Column+1)
}

// Sheets is how many sheets are printed, the cover among them.
func (t Tiling) Sheets() int { return len(t.Tiles) + 1 }

// Has says whether a sheet is printed there.
func (t Tiling) Has(row, column int) bool {
	for _, x := range t.Tiles {
		if x == (Tile{row, column}) {
			return true
		}
	}
	return false
}

// Live is the size of the part of a sheet that shows the pattern.
func (t Tiling) Live() (width, height float64) {
	return t.Paper.Width - 2*tileMargin, t.Paper.Height - 2*tileMargin
}

// Pitch is how far a sheet lies from the one before it.
func (t Tiling) Pitch() geom.Vector {
	w, h := t.Live()
	return geom.Vector{X: w - tileOverlap, Y: h - tileOverlap}
}

// Window is what a sheet shows, in the coordinates of the joined sheets.
func (t Tiling) Window(x Tile) geom.Box {
	w, h := t.Live()
	p := t.Pitch()
	at := geom.Point{X: float64(x.Column) * p.X, Y: float64(x.Row) * p.Y}
	return geom.Box{Min: at, Max: at.Add(geom.Vector{X: w, Y: h})}
}

// Placed is the drawing with its pieces where the tiles have them, and no
// words round them.
func (t Tiling) Placed(d export.Drawing) export.Drawing {
	out := d
	out.Page = nil
	out.Width, out.Height = t.Width, t.Height
	out.Pieces = append([]export.Placed(nil), d.Pieces...)
	for i := range out.Pieces {
		out.Pieces[i].Place = t.Places[i]
	}
	return out
}

// TileUp spreads a drawing over a paper in the way that needs the fewest sheets
// of all it tries: shelves as wide as one to five columns.
func TileUp(d export.Drawing, paper Paper) Tiling {
	best := Tiling{Paper: paper.or()}
	boxes := make([]geom.Box, len(d.Pieces))
	widest := 0.0
	for i, p := range d.Pieces {
		boxes[i] = p.Bounds()
		widest = max(widest, boxes[i].Width())
	}
	if len(boxes) == 0 {
		return best
	}
	spots := make([][]spot, len(d.Pieces))
	for i, p := range d.Pieces {
		spots[i] = spotsOf(p)
	}
	pitch := best.Pitch()
	least := max(int(math.Ceil((widest-tileOverlap)/pitch.X-1e-9)), 1)
	for n := least; n <= max(mostColumns, least); n++ {
		t := Tiling{Paper: best.Paper, Columns: n}
		t.Width = float64(n)*pitch.X + tileOverlap
		t.Places, t.Height = shelve(boxes, t.Width)
		t.Rows = max(int(math.Ceil((t.Height-tileOverlap)/pitch.Y-1e-9)), 1)
		t.Height = float64(t.Rows)*pitch.Y + tileOverlap
		t.Tiles = t.used(d, spots)
		if len(best.Tiles) == 0 || len(t.Tiles) < len(best.Tiles) {
			best = t
		}
	}
	return best
}

// shelve puts boxes on shelves, the tallest first; small ones stand one below
// the other beside tall ones.
func shelve(boxes []geom.Box, wide float64) ([]geom.Matrix, float64) {
	order := make([]int, len(boxes))
	for i := range order {
		order[i] = i
	}
	sort.SliceStable(order, func(a, b int) bool { return boxes[order[a]].Height() > boxes[order[b]].Height() })
	type column struct{ left, width, down float64 }
	var columns []column
	top, high, bottom := 0.0, 0.0, 0.0
	places := make([]geom.Matrix, len(boxes))
	for _, i := range order {
		w, h := boxes[i].Width(), boxes[i].Height()
		at, found := geom.Point{}, false
		for k := range columns {
			c := &columns[k]
			room := c.width
			if k == len(columns)-1 {
				room = wide - c.left
			}
			if w <= room && c.down+tileGap+h <= high {
				at, found = geom.Point{X: c.left, Y: top + c.down + tileGap}, true
				c.down += tileGap + h
				c.width = max(c.width, w)
				break
			}
		}
		if !found {
			left := 0.0
			if n := len(columns); n > 0 {
				left = columns[n-1].left + columns[n-1].width + tileGap
			}
			if len(columns) == 0 || left+w > wide {
				if len(columns) > 0 {
					top += high + tileGap
				}
				high, columns, left = h, nil, 0
			}
			columns = append(columns, column{left, w, h})
			at = geom.Point{X: left, Y: top}
		}
		bottom = max(bottom, at.Y+h)
		places[i] = geom.Move(geom.Vector{X: micron(at.X - boxes[i].Min.X), Y: micron(at.Y - boxes[i].Min.Y)})
	}
	return places, bottom
}

// micron rounds to a thousandth of a millimetre.
func micron(x float64) float64 { return export.Round(x, 1000) }
