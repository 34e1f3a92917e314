package pdf

import (
	"math"

	"chalkfold/export"
	"chalkfold/pattern/geom"
)

// ground is a sheet seen as small squares, free or taken.
type ground struct {
	from       geom.Point
	wide, high int
	taken      []bool
}

// groundCell is the size of a square: the least air round the block is about
// half of it.
const groundCell = 3.0

func newGround(b geom.Box) *ground {
	g := &ground{from: b.Min, wide: int(b.Width() / groundCell), high: int(b.Height() / groundCell)}
	g.taken = make([]bool, max(g.wide*g.high, 0))
	return g
}

func (g *ground) bounds() geom.Box {
	return geom.Box{Min: g.from, Max: g.from.Add(geom.Vector{X: float64(g.wide) * groundCell, Y: float64(g.high) * groundCell})}
}

func (g *ground) take(t *thing) {
	all := g.bounds()
	if !t.box.Overlaps(all) {
		return
	}
	if t.item.Kind == export.Words || t.item.Kind == export.Dot {
		g.box(t.box)
		return
	}
	for i := range t.strokes {
		r := &t.strokes[i]
		for k, s := range r.path {
			if !r.boxes[k].Overlaps(all) {
				continue
			}
			points := geom.Path{s}.Flatten(0.5)
			for j := 1; j < len(points); j++ {
				g.line(points[j-1], points[j])
			}
		}
	}
}

func (g *ground) line(a, b geom.Point) {
	n := int(a.Dist(b)/(groundCell/2)) + 1
	for k := range n + 1 {
		p := a.Lerp(b, float64(k)/float64(n))
		x, y := int(math.Floor((p.X-g.from.X)/groundCell)), int(math.Floor((p.Y-g.from.Y)/groundCell))
		if x >= 0 && y >= 0 && x < g.wide && y < g.high {
			g.taken[y*g.wide+x] = true
		}
	}
}

func (g *ground) box(b geom.Box) {
	x0, y0 := int(math.Floor((b.Min.X-g.from.X)/groundCell)), int(math.Floor((b.Min.Y-g.from.Y)/groundCell))
	x1, y1 := int(math.Floor((b.Max.X-g.from.X)/groundCell)), int(math.Floor((b.Max.Y-g.from.Y)/groundCell))
	for y := max(y0, 0); y <= min(y1, g.high-1); y++ {
		for x := max(x0, 0); x <= min(x1, g.wide-1); x++ {
			g.taken[y*g.wide+x] = true
		}
	}
}

// find is the upper left corner of a free box, as low as there is one and of
// those the leftmost.
func (g *ground) find(width, height float64) (geom.Point, bool) {
	nx, ny := int(math.Ceil(width/groundCell))+1, int(math.Ceil(height/groundCell))+1
	for y := g.high - ny; y >= 0; y-- {
		for x := 0; x+nx <= g.wide; x++ {
			if g.free(x, y, nx, ny) {
				return g.from.Add(geom.Vector{X: (float64(x) + 0.5) * groundCell, Y: (float64(y) + 0.5) * groundCell}), true
			}
		}
	}
	return geom.Point{}, false
}

func (g *ground) free(x0, y0, nx, ny int) bool {
	for y := y0; y < y0+ny; y++ {
		for x := x0; x < x0+nx; x++ {
			if g.taken[y*g.wide+x] {
				return false
			}
		}
	}
	return true
}
