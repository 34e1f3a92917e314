package lay

import "math"

// grating is a set of allowed places along one axis: from + k*step. A step of
// 1 with from 0 allows every whole step.
type grating struct{ from, step float64 }

// fit is the allowed place nearest to v within lo..hi; if there is none it is
// lo, which the caller has ruled out beforehand.
func (g grating) fit(v, lo, hi float64) float64 {
	if v < lo {
		v = lo
	} else if v > hi {
		v = hi
	}
	if g.step == 1 {
		return math.Floor(v + 0.5)
	}
	v = g.from + float64(math.Floor((v-g.from)/g.step+0.5)*g.step)
	if v < lo {
		v += g.step
	} else if v > hi {
		v -= g.step
	}
	return v
}

// atOrAfter is the first allowed place not before v.
func (g grating) atOrAfter(v float64) float64 {
	return g.from + float64(math.Ceil((v-g.from)/g.step)*g.step)
}

// has says whether any allowed place lies within lo..hi.
func (g grating) has(lo, hi float64) bool {
	if hi < lo {
		return false
	}
	v := g.fit(lo, lo, hi)
	return v >= lo && v <= hi
}

// stance is one way in which a piece may lie: its outline at a turn, and where
// its box corner may be.
type stance struct {
	turn     int
	mirror   bool
	far      bool    // on the far fold
	outline  []Point // as turned, not simplified; placed by adding the offset
	simple   []Point // the same, simplified outwards for the search
	corner   Point   // of the simple outline's box
	up, down float64 // from that corner to the true ends along
	kind     int
	w, h     float64
	xlo, xhi float64 // of the offset; once ready, of the box corner
	gx, gy   grating
}

// member is one thing to place in a strip: something of the problem, or a
// fixed thing (a flaw, a band, a pinned piece).
type member struct {
	item, copy int // of the problem; item < 0: nothing of it
	layers     int
	wasted     bool
	beside     bool
	room       int64 // how wide it may be
	onFold     bool
	stances    []stance
	fixed      bool
	at         spot // box corner, of a fixed member
	hull       float64
	group      int // equal members are of one group
}

// strip is one packing problem: members between two lines, to be kept short.
type strip struct {
	opened  bool  // beyond the folded part
	width   int64 // the far border; the near one is low
	low     int64
	members []member
	moving  int // members[:moving] move, the others are fixed
	kinds   *kinds
	gap     float64
	pairs   []coupling // [i*len(members)+j]
	area    float64    // of all moving members
}

// coupling is what the cost needs of two members.
type coupling struct {
	size float64 // k of the cost
	gap  float64
}

// partedBonus is the share of a pair's size by which an overlap, however
// small, costs more than none.
const partedBonus = 0.003

// touch is the depth, in steps, up to which two pieces count as touching: far
// above what rounding does in the tables, and checked exactly afterwards.
const touch = 1e-6

// reachSteps is how far beyond touching the tables tell distances, so that
// two steps of room can be asked for.
const reachSteps = 8

// ready finds the kinds of all members and brings places to box corners. The
// regions are built once all strips are ready.
func (s *strip) ready() {
	for i := range s.members {
		m := &s.members[i]
		for k := range m.stances {
			st := &m.stances[k]
			st.kind = s.kinds.add(st.simple)
			st.frame(st.simple)
			m.hull = s.kinds.all[st.kind].shape.hull
		}
	}
}

// frame brings the places of a stance from its offset to the box corner of an
// outline.
func (st *stance) frame(o []Point) {
	lo, hi := bounds(o)
	st.corner = lo
	st.w, st.h = float64(hi.X-lo.X), float64(hi.Y-lo.Y)
	truly, end := bounds(st.outline)
	st.up, st.down = float64(lo.Y-truly.Y), float64(end.Y-lo.Y)
	c := toSpot(lo)
	st.xlo, st.xhi = st.xlo+c.x, st.xhi+c.x
	st.gx.from, st.gy.from = st.gx.from+c.x, st.gy.from+c.y
}

func (s *strip) couple() {
	n := len(s.members)
	s.pairs = make([]coupling, n*n)
	for i := range s.members {
		for j := range s.members {
			a, b := &s.members[i], &s.members[j]
			c := coupling{gap: s.gap - touch}
			switch {
			case a.fixed && b.fixed:
			case a.fixed:
				c.size = math.Sqrt(b.hull)
			case b.fixed:
				c.size = math.Sqrt(a.hull)
			default:
				c.size = math.Sqrt(math.Sqrt(a.hull * b.hull))
			}
			if a.fixed && a.item < 0 || b.fixed && b.item < 0 {
				c.gap = -touch
			}
			s.pairs[i*n+j] = c
		}
	}
}

// depth is how deep member j at stance kj overlaps member i, dx and dy being
// the way from i's box corner to j's. Not above 0: they are clear.
func (s *strip) depth(ki, kj int, dx, dy, gap float64) float64 {
	p := &s.kinds.pairs[ki*len(s.kinds.all)+kj]
	return p.region.depth(float64(p.sx*dx)+p.ox, float64(p.sy*dy)+p.oy) + gap
}

// berth is where each moving member lies.
type berth struct {
	stance int
	at     spot
}

// fits says whether the stance has any place in a strip of that length.
func (st *stance) fits(length float64) bool {
	return st.gy.has(st.up, length-st.down) && st.gx.has(st.xlo, st.xhi)
}

// clamp is the allowed place nearest to at.
func (st *stance) clamp(at spot, length float64) spot {
	return spot{st.gx.fit(at.x, st.xlo, st.xhi), st.gy.fit(at.y, st.up, length-st.down)}
}

// offset is what to add to the outline of a stance whose box corner is at.
func (st *stance) offset(at spot) Point {
	return Point{int64(at.x) - st.corner.X, int64(at.y) - st.corner.Y}
}
