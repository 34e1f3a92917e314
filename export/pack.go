package export

import (
	"math"
	"sort"

	"chalkfold/pattern/geom"
)

const (
	defaultRoll = 914.0 // 36 in, a common plotter roll
	margin      = 12.0
	gap         = 20.0 // between pieces, room for the shears
)

// pack puts the furniture on top and the pieces on shelves below it, the
// tallest first, and sets the size of the page. Small pieces stand over each
// other beside tall ones. Ties keep the order of the draft.
func pack(d *Drawing, roll float64, page func(width float64) []Item) []Item {
	boxes := make([]geom.Box, len(d.Pieces))
	order := make([]int, len(d.Pieces))
	wide := roll - 2*margin
	for i, p := range d.Pieces {
		boxes[i], order[i] = p.Bounds(), i
		wide = max(wide, boxes[i].Width())
	}
	sort.SliceStable(order, func(a, b int) bool { return boxes[order[a]].Height() > boxes[order[b]].Height() })

	s := shelves{wide: wide}
	corners := make([]geom.Point, len(boxes))
	for _, i := range order {
		corners[i] = s.put(boxes[i].Width(), boxes[i].Height())
	}
	width := max(s.right, leastPage)
	furniture := page(width)
	top := margin
	if b := bounds(furniture); !b.Empty() {
		top = b.Max.Y + gap
	}
	for i := range d.Pieces {
		d.Pieces[i].Place = geom.Move(geom.Vector{
			X: micron(margin + corners[i].X - boxes[i].Min.X),
			Y: micron(top + corners[i].Y - boxes[i].Min.Y),
		})
	}
	d.Width = math.Ceil(width + 2*margin)
	d.Height = math.Ceil(top + s.bottom + margin)
	return furniture
}

// shelves is a page being filled from the top: shelves one below the other,
// each with columns, each column with pieces one below the other.
type shelves struct {
	wide          float64
	top, high     float64 // of the open shelf
	columns       []column
	right, bottom float64
}

type column struct{ left, width, down float64 }

// put finds the place of a box no taller than those before it.
func (s *shelves) put(w, h float64) geom.Point {
	for i := range s.columns {
		c := &s.columns[i]
		room := c.width
		if i == len(s.columns)-1 {
			room = s.wide - c.left
		}
		if w <= room && c.down+gap+h <= s.high {
			at := geom.Point{X: c.left, Y: s.top + c.down + gap}
			c.down += gap + h
			c.width = max(c.width, w)
			return s.placed(at, w, h)
		}
	}
	left := 0.0
	if n := len(s.columns); n > 0 {
		left = s.columns[n-1].left + s.columns[n-1].width + gap
	}
	if len(s.columns) == 0 || left+w > s.wide {
		if len(s.columns) > 0 {
			s.top += s.high + gap
		}
		s.high, s.columns, left = h, nil, 0
	}
	s.columns = append(s.columns, column{left, w, h})
	return s.placed(geom.Point{X: left, Y: s.top}, w, h)
}

func (s *shelves) placed(at geom.Point, w, h float64) geom.Point {
	s.right = max(s.right, at.X+w)
	s.bottom = max(s.bottom, at.Y+h)
	return at
}
