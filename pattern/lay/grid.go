package lay

import (
	"math"
	"slices"
)

// region is the set of offsets at which one kind overlaps another, made ready
// for the question of the search: how deep? A grid lies over it; each cell
// knows whether it is outside, inside or on the edge, and keeps only those
// sides of the boundary that can be nearest to one of its places.
type region struct {
	lo, hi       spot
	perX, perY   float64 // cells in a step
	across, down int
	cells        []cell
	nearest      []uint16
	sides        []side
}

// cell packs, from the low end, its kind in 2 bits, the number of its sides in
// 8, and in the rest where they begin in region.nearest.
type cell uint32

const (
	cellOutside = iota
	cellInside
	cellEdge

	kindBits  = 2
	countBits = 8
	mostNear  = 1<<countBits - 1
	mostLists = 1 << (32 - kindBits - countBits)
)

const (
	cellsWanted = 784 // as 28 by 28: more cost more to make than they save
	blockSide   = 4   // sides are sifted through blocks of cells first
	mostSides   = 1<<16 - 1
)

// newRegion builds the region of b's offsets against a. Within reach outside
// of it distances are still told, for gaps.
func newRegion(a, b shape, reach float64) *region {
	within := sums(a.parts, b.parts)
	r := &region{sides: boundary(a.outline, b.outline, within)}
	if len(r.sides) > mostSides {
		r.sides = r.sides[:mostSides]
	}
	r.lo, r.hi = within[0].lo, within[0].hi
	for _, s := range within[1:] {
		r.lo = spot{min(r.lo.x, s.lo.x), min(r.lo.y, s.lo.y)}
		r.hi = spot{max(r.hi.x, s.hi.x), max(r.hi.y, s.hi.y)}
	}
	r.lo = spot{r.lo.x - reach, r.lo.y - reach}
	r.hi = spot{r.hi.x + reach, r.hi.y + reach}
	w, h := r.hi.x-r.lo.x, r.hi.y-r.lo.y
	size := math.Sqrt(w * h / cellsWanted)
	r.across = min(max(int(math.Ceil(w/size)), 4), cellsWanted/4)
	r.down = min(max(int(math.Ceil(h/size)), 4), cellsWanted/4)
	r.perX, r.perY = float64(r.across)/w, float64(r.down)/h
	r.cells = make([]cell, r.across*r.down)
	inside := r.paint(within)
	r.sift(inside, reach)
	return r
}

// paint marks the cells whose middle lies in one of the sums.
func (r *region) paint(within []sum) []bool {
	inside := make([]bool, len(r.cells))
	for i := range within {
		s := &within[i]
		first := max(int((s.lo.y-r.lo.y)*r.perY-0.5), 0)
		last := min(int((s.hi.y-r.lo.y)*r.perY+0.5), r.down-1)
		for row := first; row <= last; row++ {
			y := r.lo.y + (float64(row)+0.5)/r.perY
			x0, x1, ok := s.cutAt(y)
			if !ok {
				continue
			}
			a := max(int(math.Ceil((x0-r.lo.x)*r.perX-0.5)), 0)
			b := min(int(math.Floor((x1-r.lo.x)*r.perX-0.5)), r.across-1)
			for c := a; c <= b; c++ {
				inside[row*r.across+c] = true
			}
		}
	}
	return inside
}

// cutAt is the stretch of the level y that lies in the sum.
func (s *sum) cutAt(y float64) (x0, x1 float64, ok bool) {
	x0, x1 = math.Inf(1), math.Inf(-1)
	n := len(s.ring)
	for i, p := range s.ring {
		q := s.ring[(i+1)%n]
		if (p.y <= y) == (q.y <= y) {
			continue
		}
		x := p.x + float64((q.x-p.x)*((y-p.y)/(q.y-p.y)))
		x0, x1 = min(x0, x), max(x1, x)
	}
	return x0, x1, x0 < x1
}

// sift gives each cell its sides: first by block, then by cell, then by
// quarters of the cell. Distances change by no more than the way moved, so a
// side that is farther from the middle than the nearest by twice the radius
// is nowhere the nearest.
func (r *region) sift(inside []bool, reach float64) {
	w, h := 1/r.perX, 1/r.perY
	f := sifter{r: r, w: w, h: h, radius: math.Sqrt(float64(w*w)+float64(h*h)) / 2, reach: reach, far: make([]float64, len(r.sides))}
	all := make([]uint16, len(r.sides))
	for i := range all {
		all[i] = uint16(i)
	}
	for by := 0; by < r.down; by += blockSide {
		for bx := 0; bx < r.across; bx += blockSide {
			f.block, _ = f.closest(f.block[:0], all, f.at(float64(bx)+blockSide/2, float64(by)+blockSide/2), blockSide*f.radius)
			for y := by; y < min(by+blockSide, r.down); y++ {
				for x := bx; x < min(bx+blockSide, r.across); x++ {
					r.cells[y*r.across+x] = f.cell(x, y, inside[y*r.across+x])
				}
			}
		}
	}
}

// sifter holds what sifting uses again and again.
type sifter struct {
	r                         *region
	w, h, radius, reach       float64
	block, own, quarter, list []uint16
	far                       []float64
}

// at is the place of column x and row y of the grid.
func (f *sifter) at(x, y float64) spot {
	return spot{f.r.lo.x + float64(x*f.w), f.r.lo.y + float64(y*f.h)}
}

// cell sifts the block's sides for one cell.
func (f *sifter) cell(x, y int, inside bool) cell {
	var dist float64
	f.own, dist = f.closest(f.own[:0], f.block, f.at(float64(x)+0.5, float64(y)+0.5), f.radius)
	kind := cellEdge
	switch {
	case dist > f.radius+f.reach && !inside:
		return cellOutside
	case dist > f.radius && inside:
		kind = cellInside
	}
	f.list = f.list[:0]
	for k := range 4 {
		at := f.at(float64(x)+0.25+float64(k&1)/2, float64(y)+0.25+float64(k>>1)/2)
		f.quarter, _ = f.closest(f.quarter[:0], f.own, at, f.radius/2)
		for _, s := range f.quarter {
			if !slices.Contains(f.list, s) {
				f.list = append(f.list, s)
			}
		}
	}
	return f.r.pack(kind, f.list)
}

// pack keeps a list of sides, sharing it with the cell before if it is equal.
func (r *region) pack(kind int, list []uint16) cell {
	list = list[:min(len(list), mostNear)]
	from := len(r.nearest) - len(list)
	if from < 0 || !slices.Equal(r.nearest[from:], list) {
		from = len(r.nearest)
		r.nearest = append(r.nearest, list...)
	}
	if from >= mostLists {
		from, list = 0, r.nearest[:min(len(list), mostNear)]
	}
	return cell(kind | len(list)<<kindBits | from<<(kindBits+countBits))
}

// closest appends those of the listed sides that can be nearest to a place
// within radius of at, and gives the least distance from at.
func (f *sifter) closest(out, list []uint16, at spot, radius float64) ([]uint16, float64) {
	least := math.Inf(1)
	for k, s := range list {
		f.far[k] = math.Sqrt(f.r.sides[s].away2(at))
		least = min(least, f.far[k])
	}
	most := least + 2.0001*radius
	for k, s := range list {
		if f.far[k] <= most {
			out = append(out, s)
		}
	}
	return out, least
}

// away2 is the squared distance of p from the side.
func (s *side) away2(p spot) float64 {
	v := p.minus(s.at)
	along := v.dot(s.dir)
	if along <= 0 {
		return v.dot(v)
	}
	if along >= s.long {
		v = spot{v.x - float64(s.dir.x*s.long), v.y - float64(s.dir.y*s.long)}
		return v.dot(v)
	}
	off := s.dir.cross(v)
	return float64(off * off)
}

// clearOf is what depth says where nothing is near.
const clearOf = -1e300

// depth is how far the offset lies inside the region: the shortest move that
// parts the two kinds. Outside it is below 0: the distance, or clearOf.
func (r *region) depth(x, y float64) float64 {
	if x <= r.lo.x || y <= r.lo.y || x >= r.hi.x || y >= r.hi.y {
		return clearOf
	}
	col, row := int((x-r.lo.x)*r.perX), int((y-r.lo.y)*r.perY)
	if col >= r.across {
		col = r.across - 1
	}
	if row >= r.down {
		row = r.down - 1
	}
	c := r.cells[row*r.across+col]
	if c == cellOutside {
		return clearOf
	}
	from := c >> (kindBits + countBits)
	list := r.nearest[from : from+c>>kindBits&mostNear]
	if c&(1<<kindBits-1) == cellInside {
		best := math.Inf(1)
		for _, k := range list {
			s := &r.sides[k]
			vx, vy := x-s.at.x, y-s.at.y
			along := float64(vx*s.dir.x) + float64(vy*s.dir.y)
			var d float64
			if along <= 0 {
				d = float64(vx*vx) + float64(vy*vy)
			} else if along >= s.long {
				vx -= float64(s.dir.x * s.long)
				vy -= float64(s.dir.y * s.long)
				d = float64(vx*vx) + float64(vy*vy)
			} else {
				d = float64(s.dir.x*vy) - float64(s.dir.y*vx)
				d = float64(d * d)
			}
			if d < best {
				best = d
			}
		}
		return math.Sqrt(best)
	}
	return r.signed(list, x, y)
}

// signed is depth in a cell on the edge: the nearest side says on which side
// of it the offset lies; at a shared corner it is the side whose line is
// farther.
func (r *region) signed(list []uint16, x, y float64) float64 {
	best, line := math.Inf(1), 0.0
	for _, k := range list {
		s := &r.sides[k]
		vx, vy := x-s.at.x, y-s.at.y
		along := float64(vx*s.dir.x) + float64(vy*s.dir.y)
		off := float64(s.dir.x*vy) - float64(s.dir.y*vx)
		var d float64
		switch {
		case along <= 0:
			d = float64(vx*vx) + float64(vy*vy)
		case along >= s.long:
			vx -= float64(s.dir.x * s.long)
			vy -= float64(s.dir.y * s.long)
			d = float64(vx*vx) + float64(vy*vy)
		default:
			d = float64(off * off)
		}
		tie := float64(cornerTie*best) + cornerTie
		if d < best-tie || d < best+tie && math.Abs(off) > math.Abs(line) {
			best, line = min(d, best), off
		}
	}
	if line > 0 {
		return math.Sqrt(best)
	}
	return -math.Sqrt(best)
}

// cornerTie is the part by which squared distances to one corner may differ
// through rounding.
const cornerTie = 1e-6
