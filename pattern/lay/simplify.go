package lay

import "math"

const (
	plainCorners = 40        // outlines up to so many corners are searched as they are
	slackSteps   = PerMM / 2 // a simplified outline is nowhere farther out than this
	sureCorners  = 2000      // up to so many, each change is checked to touch nothing else

	// An outline that still has very many corners is simplified more, so that
	// no outline can keep the tables from being built.
	mostOutlineCorners = 300
	allOutlineCorners  = 6000 // of all items together, roughly
	leastMost          = 40
)

// cornersFor is how many corners each of so many outlines may keep.
func cornersFor(items int) int {
	return min(max(allOutlineCorners/max(items, 1), leastMost), mostOutlineCorners)
}

// forSearch is the outline with fewer corners, nowhere inside the true one:
// hollow corners are dropped and edges extended over rounded ones. The true
// outline is what is verified.
func forSearch(o []Point, most int) []Point {
	if len(o) <= plainCorners {
		return o
	}
	c := newChain(o)
	for _, tol := range []float64{slackSteps / 8, slackSteps / 4, slackSteps / 2, slackSteps} {
		c.simplify(tol)
	}
	lo, hi := bounds(o)
	for tol := 2.0 * slackSteps; c.n > most && tol < float64(max(hi.X-lo.X, hi.Y-lo.Y)); tol *= 2 {
		c.simplify(tol)
	}
	out := tidy(c.outline())
	switch {
	case len(out) <= most && plainRing(out):
		return out
	case len(o) > most:
		return forSearch(hull(o), len(o))
	}
	return o
}

// chain is a ring of corners from which some are taken.
type chain struct {
	at         []Point
	next, prev []int
	strayed    []float64 // how far the edge from each corner is off the true one
	first, n   int
	sure       bool // each change is checked against all edges
}

func newChain(o []Point) *chain {
	n := len(o)
	c := &chain{at: append([]Point(nil), o...), next: make([]int, n), prev: make([]int, n), strayed: make([]float64, n), n: n, sure: n <= sureCorners}
	for i := range o {
		c.next[i], c.prev[i] = (i+1)%n, (i+n-1)%n
	}
	return c
}

func (c *chain) outline() []Point {
	var out []Point
	for i, k := c.first, 0; k < c.n; i, k = c.next[i], k+1 {
		out = append(out, c.at[i])
	}
	return out
}

// take removes a corner.
func (c *chain) take(i int) {
	p, q := c.prev[i], c.next[i]
	c.next[p], c.prev[q] = q, p
	c.n--
	if c.first == i {
		c.first = q
	}
}

// simplify goes round at one tolerance until nothing more can go.
func (c *chain) simplify(tol float64) {
	for again := true; again; {
		again = false
		for i, k, n := c.first, 0, c.n; k < n && c.n > 4; i, k = c.next[i], k+1 {
			if c.dropHollow(i, tol) || c.extend(i, tol) {
				again = true
			}
		}
	}
}

// dropHollow leaves a hollow corner out: the outline grows by a triangle.
func (c *chain) dropHollow(i int, tol float64) bool {
	p, q := c.prev[i], c.next[i]
	a, b, d := c.at[p], c.at[i], c.at[q]
	if turning(a, b, d) > 0 {
		return false
	}
	off := distance(a, d, b) + max(c.strayed[p], c.strayed[i])
	if off > tol || !c.empty(a, d, b, p, i, i) {
		return false
	}
	c.strayed[p] = off
	c.take(i)
	return true
}

// extend replaces the edge from corner i by a corner where the edges before
// and after it meet: the outline grows by a triangle.
func (c *chain) extend(i int, tol float64) bool {
	p, j := c.prev[i], c.next[i]
	k := c.next[j]
	op, oi, oj, ok := c.at[p], c.at[i], c.at[j], c.at[k]
	if p == k || turning(op, oi, oj) <= 0 || turning(oi, oj, ok) <= 0 {
		return false
	}
	b, d := toSpot(oi), toSpot(oj)
	u, v := b.minus(toSpot(op)), toSpot(ok).minus(d)
	den := u.cross(v)
	if den <= 0 {
		return false
	}
	t := d.minus(b).cross(v) / den
	// Two steps outwards, so that rounding never cuts into the piece.
	out := spot{u.x/u.len() - v.x/v.len(), u.y/u.len() - v.y/v.len()}
	l := out.len()
	if l == 0 || t < 0 {
		return false
	}
	corner := Point{
		int64(math.Round(b.x + float64(u.x*t) + float64(2*out.x/l))),
		int64(math.Round(b.y + float64(u.y*t) + float64(2*out.y/l))),
	}
	if turning(op, oi, corner) > 0 || turning(corner, oj, ok) > 0 {
		return false
	}
	off := distance(oi, oj, corner) + max(c.strayed[p], c.strayed[i], c.strayed[j])
	if off > tol || !c.empty(oi, corner, oj, p, i, j) {
		return false
	}
	c.strayed[p], c.strayed[i] = max(c.strayed[p], off), max(c.strayed[j], off)
	c.at[i] = corner
	c.take(j)
	return true
}

// distance of p from the line through a and b.
func distance(a, b, p Point) float64 {
	d := toSpot(b.minus(a))
	l := d.len()
	if l == 0 {
		return toSpot(p.minus(a)).len()
	}
	return math.Abs(d.cross(toSpot(p.minus(a)))) / l
}

// empty says whether no edge but those from three known corners comes into
// the triangle's box: more than is needed, and quick.
func (c *chain) empty(x, y, z Point, e, f, g int) bool {
	if !c.sure {
		return true
	}
	lo, hi := bounds([]Point{x, y, z})
	for i, k := c.first, 0; k < c.n; i, k = c.next[i], k+1 {
		p, q := c.at[i], c.at[c.next[i]]
		if i == e || i == f || i == g || max(p.X, q.X) < lo.X || min(p.X, q.X) > hi.X || max(p.Y, q.Y) < lo.Y || min(p.Y, q.Y) > hi.Y {
			continue
		}
		// The edges beside share a corner with the triangle's neighbours.
		if c.next[i] != e && i != c.next[g] {
			return false
		}
	}
	return true
}
