package export

import (
	"math"

	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// room is the piece seen as small squares, free or taken, so that words can
// look for a place that covers no line.
type room struct {
	from       geom.Point
	cell       float64 // the side of a square; also the least air between words and a line
	wide, high int
	taken      []bool
	sum        []int32 // taken squares above and left of each corner
	stale      bool
}

const pieceCell = 2.5 // millimetres, of a piece at true size

// newRoom is the room in a piece: within its stitch line, clear of all that is
// drawn.
func newRoom(items []Item, p pattern.Piece) *room {
	if len(p.Stitch) > 0 {
		return newRoomIn(items, p.Stitch, pieceCell)
	}
	return newRoomIn(items, p.CutLine, pieceCell)
}

// newRoomIn takes all that lies outside a ring and all that is drawn.
func newRoomIn(items []Item, inside geom.Path, cell float64) *room {
	box := inside.Bounds()
	if box.Empty() {
		return &room{cell: cell}
	}
	r := &room{from: box.Min, cell: cell, wide: int(box.Width()/cell) + 1, high: int(box.Height()/cell) + 1, stale: true}
	r.taken = make([]bool, r.wide*r.high)
	r.sum = make([]int32, (r.wide+1)*(r.high+1))
	r.outside(inside.Outline(0.5))
	for _, i := range items {
		if i.Kind == Words || i.Kind == Dot {
			r.take(i.Bounds())
			continue
		}
		for _, s := range i.Strokes() {
			r.line(s)
		}
	}
	r.line(inside)
	return r
}

// outside takes the squares whose middle lies outside the ring, inside those
// whose middle lies in it.
func (r *room) outside(ring geom.Outline) { r.fill(ring, false) }
func (r *room) inside(ring geom.Outline)  { r.fill(ring, true) }

// fill goes over the squares row by row.
func (r *room) fill(ring geom.Outline, inside bool) {
	for y := range r.high {
		at := r.from.Y + (float64(y)+0.5)*r.cell
		var xs []float64
		for i, a := range ring {
			b := ring[(i+1)%len(ring)]
			if (a.Y <= at) != (b.Y <= at) {
				xs = append(xs, a.X+(at-a.Y)*(b.X-a.X)/(b.Y-a.Y))
			}
		}
		for x := range r.wide {
			mid := r.from.X + (float64(x)+0.5)*r.cell
			in := false
			for _, c := range xs {
				if c > mid {
					in = !in
				}
			}
			if in == inside {
				r.taken[y*r.wide+x] = true
			}
		}
	}
	r.stale = true
}

// line takes the squares that a line runs through.
func (r *room) line(p geom.Path) {
	points := p.Flatten(0.3)
	for i := 1; i < len(points); i++ {
		a, b := points[i-1], points[i]
		n := int(a.Dist(b)/(r.cell/2)) + 1
		for k := 0; k <= n; k++ {
			r.mark(a.Lerp(b, float64(k)/float64(n)))
		}
	}
}

func (r *room) mark(p geom.Point) {
	x, y := int(math.Floor((p.X-r.from.X)/r.cell)), int(math.Floor((p.Y-r.from.Y)/r.cell))
	if x >= 0 && y >= 0 && x < r.wide && y < r.high {
		r.taken[y*r.wide+x] = true
		r.stale = true
	}
}

// cells are the squares that a box touches, and whether they all are in the
// room.
func (r *room) cells(b geom.Box) (x0, y0, x1, y1 int, in bool) {
	x0, y0 = int(math.Floor((b.Min.X-r.from.X)/r.cell)), int(math.Floor((b.Min.Y-r.from.Y)/r.cell))
	x1, y1 = int(math.Floor((b.Max.X-r.from.X)/r.cell)), int(math.Floor((b.Max.Y-r.from.Y)/r.cell))
	in = x0 >= 0 && y0 >= 0 && x1 < r.wide && y1 < r.high
	return max(x0, 0), max(y0, 0), min(x1, r.wide-1), min(y1, r.high-1), in
}

// take marks a box as taken.
func (r *room) take(b geom.Box) {
	x0, y0, x1, y1, _ := r.cells(b)
	for y := y0; y <= y1; y++ {
		for x := x0; x <= x1; x++ {
			r.taken[y*r.wide+x] = true
		}
	}
	r.stale = true
}

// add brings the sums up to date.
func (r *room) add() {
	if !r.stale {
		return
	}
	w := r.wide + 1
	for y := range r.high {
		row := int32(0)
		for x := range r.wide {
			if r.taken[y*r.wide+x] {
				row++
			}
			r.sum[(y+1)*w+x+1] = r.sum[y*w+x+1] + row
		}
	}
	r.stale = false
}

func (r *room) empty(x0, y0, x1, y1 int) bool {
	w := r.wide + 1
	return r.sum[(y1+1)*w+x1+1]-r.sum[y0*w+x1+1]-r.sum[(y1+1)*w+x0]+r.sum[y0*w+x0] == 0
}

// free says whether nothing is in the box.
func (r *room) free(b geom.Box) bool {
	x0, y0, x1, y1, in := r.cells(b)
	for y := y0; in && y <= y1; y++ {
		for x := x0; in && x <= x1; x++ {
			in = !r.taken[y*r.wide+x]
		}
	}
	return in
}

// find is the upper left corner of a free box of that size, the nearest to a
// wish for its middle; of equals the uppermost.
func (r *room) find(width, height float64, wish geom.Point) (geom.Point, bool) {
	r.add()
	nx, ny := int(math.Ceil(width/r.cell)), int(math.Ceil(height/r.cell))
	if all := len(r.sum) - 1; all < 0 || r.wide*r.high-int(r.sum[all]) < nx*ny {
		return geom.Point{}, false
	}
	best, found := math.Inf(1), false
	var at geom.Point
	for y := 0; y+ny <= r.high; y++ {
		cy := r.from.Y + (float64(y)*r.cell + height/2)
		dy := cy - wish.Y
		if dy*dy >= best {
			continue
		}
		for x := 0; x+nx <= r.wide; x++ {
			dx := r.from.X + (float64(x)*r.cell + width/2) - wish.X
			d := float64(dx*dx) + float64(dy*dy)
			if d < best && r.empty(x, y, x+nx-1, y+ny-1) {
				best, found = d, true
				at = geom.Point{X: r.from.X + float64(x)*r.cell, Y: r.from.Y + float64(y)*r.cell}
			}
		}
	}
	return at, found
}
