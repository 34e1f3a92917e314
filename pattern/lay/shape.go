package lay

import (
	"runtime"
	"slices"
	"sync/atomic"
)

// shape is an outline as the search sees it: its box corner at 0, simplified
// outwards where it has many corners, and cut into convex parts.
type shape struct {
	outline []Point
	parts   [][]Point
	size    Point
	hull    float64 // area of the convex hull, in steps squared
}

func newShape(o []Point) shape {
	lo, hi := bounds(o)
	s := shape{outline: moved(o, Point{-lo.X, -lo.Y}), size: hi.minus(lo)}
	s.parts = convexParts(s.outline)
	s.hull = float64(twiceArea(hull(s.outline))) / 2
	return s
}

// flipped reflects the shape in x, in y or in both, within its box.
func (s shape) flipped(fx, fy bool) shape {
	turnRing := func(o []Point) []Point {
		out := make([]Point, len(o))
		for i, p := range o {
			if fx {
				p.X = s.size.X - p.X
			}
			if fy {
				p.Y = s.size.Y - p.Y
			}
			out[i] = p
		}
		if fx != fy {
			slices.Reverse(out)
		}
		return out
	}
	out := shape{outline: turnRing(s.outline), size: s.size, hull: s.hull}
	for _, p := range s.parts {
		out.parts = append(out.parts, turnRing(p))
	}
	return out
}

// sameOutline says whether two rings are equal from some first corner on.
func sameOutline(a, b []Point) bool {
	if len(a) != len(b) {
		return false
	}
	for k := range b {
		if b[k] != a[0] {
			continue
		}
		same := true
		for i := range a {
			if a[i] != b[(k+i)%len(b)] {
				same = false
				break
			}
		}
		if same {
			return true
		}
	}
	return false
}

// kind is a shape in one of its four reflections.
type kind struct {
	base   int // in kinds.base
	fx, fy bool
	shape  shape
}

// pairing tells where the region of two kinds is tabled, and how the offset
// is to be reflected for it.
type pairing struct {
	region *region
	sx, sy float64
	ox, oy float64 // offset = s*(d) + o
}

// kinds are all shapes of a strip at all their turns, with the forbidden
// regions of every two of them.
type kinds struct {
	base  []shape
	all   []kind
	pairs []pairing // [lying*len(all)+moving]
}

// add finds the kind of a shape, or adds it.
func (k *kinds) add(o []Point) int {
	lo, _ := bounds(o)
	o = moved(o, Point{-lo.X, -lo.Y})
	for i := range k.all {
		if sameOutline(k.all[i].shape.outline, o) {
			return i
		}
	}
	for b := range k.base {
		for f := 1; f < 4; f++ {
			s := k.base[b].flipped(f&1 != 0, f&2 != 0)
			if sameOutline(s.outline, o) {
				k.all = append(k.all, kind{b, f&1 != 0, f&2 != 0, s})
				return len(k.all) - 1
			}
		}
	}
	k.base = append(k.base, newShape(o))
	k.all = append(k.all, kind{base: len(k.base) - 1, shape: k.base[len(k.base)-1]})
	return len(k.all) - 1
}

// task is one region to build: base shape a against base shape b reflected.
type task struct {
	a, b   int
	fx, fy bool
}

// build makes the regions, each once, on all cores. Reflecting both kinds
// reflects the region, and so does exchanging them.
func (k *kinds) build(reach float64) {
	n := len(k.all)
	k.pairs = make([]pairing, n*n)
	known := map[task]int{}
	var tasks []task
	which := make([]int, n*n)
	swapped := make([]bool, n*n)
	for i := range k.all {
		for j := range k.all {
			a, b := &k.all[i], &k.all[j]
			t := task{a.base, b.base, a.fx != b.fx, a.fy != b.fy}
			back := task{b.base, a.base, t.fx, t.fy}
			at, ok := known[t]
			if !ok {
				if at, ok = known[back]; ok {
					swapped[i*n+j] = true
				}
			}
			if !ok {
				at = len(tasks)
				known[t] = at
				tasks = append(tasks, t)
			}
			which[i*n+j] = at
		}
	}
	regions := make([]*region, len(tasks))
	var next atomic.Int64
	together(min(runtime.GOMAXPROCS(0), max(len(tasks), 1)), func(int) {
		for {
			i := int(next.Add(1)) - 1
			if i >= len(tasks) {
				return
			}
			t := tasks[i]
			regions[i] = newRegion(k.base[t.a], k.base[t.b].flipped(t.fx, t.fy), reach)
		}
	})
	for i := range k.all {
		for j := range k.all {
			k.pairs[i*n+j] = k.pairing(i, j, regions[which[i*n+j]], swapped[i*n+j])
		}
	}
}

// pairing works out how the offset of corner of j against corner of i becomes
// an offset in the region. Reflected boxes keep their corner at 0, so the
// reflected offset is counted between the opposite corners.
func (k *kinds) pairing(i, j int, r *region, swap bool) pairing {
	a, b := &k.all[i], &k.all[j]
	p := pairing{region: r, sx: 1, sy: 1}
	// The offset d of b against a; reflecting both in x makes it wa - wb - d.
	flip := a
	if swap {
		// b takes the part of a: the offset of a against b is -d.
		a, b = b, a
		flip = a
		p.sx, p.sy = -1, -1
	}
	if flip.fx {
		p.sx = -p.sx
		p.ox = float64(a.shape.size.X - b.shape.size.X)
	}
	if flip.fy {
		p.sy = -p.sy
		p.oy = float64(a.shape.size.Y - b.shape.size.Y)
	}
	return p
}
