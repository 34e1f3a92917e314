package canvas

import "math"

// Dot is a point in dot coordinates.
type Dot struct{ X, Y float64 }

// Dash is how a line is broken up, measured along the whole path.
type Dash int8

// The ways to break a line.
const (
	Solid Dash = iota
	Dashed
	Dotted
	DashDot
)

// dashes are lengths in dots: on, off, on, off.
var dashes = [...][4]float64{
	Solid:   {1, 0, 0, 0},
	Dashed:  {3, 2, 3, 2},
	Dotted:  {1, 2, 1, 2},
	DashDot: {5, 2, 1, 2},
}

// asciiDash is by how much dashes grow in ASCII, where a sample is not seen
// but only the cell it falls into.
const asciiDash = 4

// Line draws from one dot to another.
func (c *Canvas) Line(x0, y0, x1, y1 float64, pen Pen) {
	c.segment(Dot{x0, y0}, Dot{x1, y1}, &run{pen: pen, thick: 1})
}

// Point sets one dot.
func (c *Canvas) Point(x, y float64, pen Pen) {
	if x, y, ok := c.nearest(x, y); ok {
		c.set(x, y, pen, &stroke{})
	}
}

// Mark sets a small cross: enough to be seen on a line and beside one.
func (c *Canvas) Mark(x, y float64, pen Pen) {
	cx, cy, ok := c.nearest(x, y)
	if !ok {
		return
	}
	switch c.glyphs {
	case ASCII:
		c.set(cx, cy, pen, &stroke{corner: true})
	case Blocks:
		c.set(cx, cy&^1, pen, &stroke{})
		c.set(cx, cy|1, pen, &stroke{})
	default:
		for _, d := range [...][2]int{{0, 0}, {-1, 0}, {1, 0}, {0, -1}, {0, 1}} {
			c.set(cx+d[0], cy+d[1], pen, &stroke{})
		}
	}
}

// Grid sets single dots at every step across and down, counted from an origin
// that may lie outside. A step below two dots would fill the canvas and draws
// nothing.
func (c *Canvas) Grid(stepX, stepY, originX, originY float64, pen Pen) {
	if !(stepX >= 2) || !(stepY >= 2) || !finite(stepX+stepY+originX+originY) {
		return
	}
	x0, y0 := math.Mod(originX, stepX), math.Mod(originY, stepY)
	for y := y0 - stepY; y < float64(c.h); y += stepY {
		for x := x0 - stepX; x < float64(c.w); x += stepX {
			c.Point(x, y, pen)
		}
	}
}

// Polyline draws a path through the points; closed joins the last to the
// first. A thickness of 2 lays a second line beside the first. Dashes run on
// over the corners.
func (c *Canvas) Polyline(pts []Dot, closed bool, pen Pen, dash Dash, thick int) {
	if dash < 0 || int(dash) >= len(dashes) {
		dash = Solid
	}
	n := len(pts)
	if n == 1 {
		c.Point(pts[0].X, pts[0].Y, pen)
		return
	}
	closed = closed && n > 2
	r := run{pen: pen, dash: dash, thick: c.thickness(thick)}
	for i := 1; i < n; i++ {
		c.segment(pts[i-1], pts[i], &r)
	}
	if closed {
		c.segment(pts[n-1], pts[0], &r)
	}
	if c.glyphs == ASCII {
		c.corners(pts, closed, pen)
	}
}

// thickness keeps the second line to sets fine enough to show it.
func (c *Canvas) thickness(n int) int {
	if c.glyphs == ASCII {
		return 1
	}
	return max(1, min(n, 4))
}

// run is the pen on its way along a path.
type run struct {
	pen    Pen
	dash   Dash
	thick  int
	length float64 // of the path so far, for the dashes
	stroke stroke  // one sample of the segment in hand, for ASCII
}

// segment clips a straight piece to the canvas and steps along it dot by dot.
func (c *Canvas) segment(a, b Dot, r *run) {
	if r.pen == None || int(r.pen) >= NumPens || c.w == 0 || c.h == 0 || !finite(a.X+a.Y) || !finite(b.X+b.Y) {
		return
	}
	a, b = a.near(), b.near()
	dx, dy := b.X-a.X, b.Y-a.Y
	var l, from float64
	if r.dash != Solid {
		l, from = math.Sqrt(dx*dx+dy*dy), r.length
		r.length += l
	}
	right, low := float64(c.w)-0.5, float64(c.h)-0.5
	t0, t1 := 0.0, 1.0
	if !(inside(a, right, low) && inside(b, right, low)) {
		var ok bool
		if t0, t1, ok = clip(a, dx, dy, right, low); !ok {
			return
		}
	}
	x0, y0 := c.round(a.X+t0*dx, a.Y+t0*dy)
	x1, y1 := c.round(a.X+t1*dx, a.Y+t1*dy)
	if c.glyphs == ASCII {
		r.stroke = towards(dx, dy)
		r.stroke.dotted = r.dash == Dotted
	}
	g := gait{steady: true}
	// In ASCII a dotted line is drawn with dots and needs no gaps.
	if r.dash != Solid && (c.glyphs != ASCII || r.dash != Dotted) {
		if t0 > 0 && l > 0 {
			// from the dot itself, not from the edge: clipping must not move dashes
			from += (float64(x0)-a.X)*dx/l + (float64(y0)-a.Y)*dy/l
		}
		g = c.gait(r.dash, from, (t1-t0)*l/float64(max(abs(x1-x0), abs(y1-y0), 1)))
	}
	if g.steady && c.glyphs == Braille && r.thick == 1 {
		c.walkBraille(x0, y0, x1, y1, r.pen)
		return
	}
	c.walk(x0, y0, x1, y1, r, g)
	// More lines lie to the side that the line moves along less.
	for k := 1; k < r.thick; k++ {
		off := (k + 1) / 2
		if k%2 == 0 {
			off = -off
		}
		if math.Abs(dx) >= math.Abs(dy) {
			c.walk(x0, y0+off, x1, y1+off, r, g)
		} else {
			c.walk(x0+off, y0, x1+off, y1, r, g)
		}
	}
}

// gait tells at each step whether the pen is down.
type gait struct {
	steady bool // always down
	at     float64
	step   float64
	ends   [4]float64 // where on, off, on, off end
}

func (c *Canvas) gait(dash Dash, from, step float64) gait {
	grow := 1.0
	if c.glyphs == ASCII {
		grow = asciiDash
	}
	g := gait{step: step}
	sum := 0.0
	for i, n := range dashes[dash] {
		sum += n * grow
		g.ends[i] = sum
	}
	if g.at = math.Mod(from, sum); g.at < 0 {
		g.at += sum
	}
	g.step = math.Mod(step, sum)
	return g
}

// next is whether the pen is down here; then it goes one step on.
func (g *gait) next() bool {
	if g.steady {
		return true
	}
	at := g.at
	if g.at += g.step; g.at >= g.ends[3] {
		g.at -= g.ends[3]
	}
	return at < g.ends[0] || (at >= g.ends[1] && at < g.ends[2])
}

// walk steps from dot to dot in whole numbers (Bresenham).
func (c *Canvas) walk(x0, y0, x1, y1 int, r *run, g gait) {
	dx, dy := abs(x1-x0), -abs(y1-y0)
	sx, sy := sign(x1-x0), sign(y1-y0)
	for off := dx + dy; ; {
		if g.next() {
			c.set(x0, y0, r.pen, &r.stroke)
		}
		if x0 == x1 && y0 == y1 {
			return
		}
		twice := 2 * off
		if twice >= dy {
			off += dy
			x0 += sx
		}
		if twice <= dx {
			off += dx
			y0 += sy
		}
	}
}

// walkBraille is walk for the commonest case, without asking anything at each
// dot: both ends are on the canvas.
func (c *Canvas) walkBraille(x0, y0, x1, y1 int, pen Pen) {
	dx, dy := abs(x1-x0), -abs(y1-y0)
	sx, sy := sign(x1-x0), sign(y1-y0)
	dots, pens := c.dots, c.pens[:len(c.dots)]
	for off := dx + dy; ; {
		i := (y0>>2)*c.cols + x0>>1
		dots[i] |= bits[y0&3][x0&1]
		if pens[i] < pen {
			pens[i] = pen
		}
		if x0 == x1 && y0 == y1 {
			return
		}
		twice := 2 * off
		if twice >= dy {
			off += dy
			x0 += sx
		}
		if twice <= dx {
			off += dx
			y0 += sy
		}
	}
}

// bits are the braille dots by row and column of a cell, as Unicode numbers
// them.
var bits = [4][2]uint8{{0x01, 0x08}, {0x02, 0x10}, {0x04, 0x20}, {0x40, 0x80}}

// set puts one dot. Outside the canvas it does nothing.
func (c *Canvas) set(x, y int, pen Pen, s *stroke) {
	if uint(x) >= uint(c.w) || uint(y) >= uint(c.h) || int(pen) >= NumPens || pen == None {
		return
	}
	switch c.glyphs {
	case Blocks:
		i := (y>>1)*c.cols + x
		c.dots[i] |= 1 << (y & 1)
		c.pens[i] = max(c.pens[i], pen)
	case ASCII:
		c.setStroke((y>>2)*c.cols+x>>1, y&3, pen, s)
	default:
		i := (y>>2)*c.cols + x>>1
		c.dots[i] |= bits[y&3][x&1]
		c.pens[i] = max(c.pens[i], pen)
	}
}

// nearest is the dot a point belongs to.
func (c *Canvas) nearest(x, y float64) (int, int, bool) {
	if !(x >= -0.5) || !(y >= -0.5) || !(x < float64(c.w)-0.5) || !(y < float64(c.h)-0.5) {
		return 0, 0, false
	}
	cx, cy := c.round(x, y)
	return cx, cy, true
}

// round is the dot of a point that lies on the canvas, or within rounding of it.
func (c *Canvas) round(x, y float64) (int, int) {
	// +0.5 is never below 0 here, so cutting off rounds
	return max(0, min(int(x+0.5), c.w-1)), max(0, min(int(y+0.5), c.h-1))
}
