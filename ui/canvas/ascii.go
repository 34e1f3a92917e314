package canvas

// stroke gathers what passes through one cell, so that one character can
// stand for it. Directions are summed with doubled angles: there a line and
// the same line backwards are one, and two lines at right angles cancel.
type stroke struct {
	cos, sin float32 // of the doubled angle, one for each sample
	height   float32 // sum of the rows 0 to 3 within the cell
	n        float32 // samples
	corner   bool
	dotted   bool
}

// towards is one sample of a line going this way.
func towards(dx, dy float64) stroke {
	l := dx*dx + dy*dy
	if l == 0 || !finite(l) {
		return stroke{}
	}
	return stroke{cos: float32((dx*dx - dy*dy) / l), sin: float32(2 * dx * dy / l)}
}

// setStroke adds a sample to a cell. A stronger pen drives out what a weaker
// one drew there; a weaker one is not taken.
func (c *Canvas) setStroke(i, row int, pen Pen, s *stroke) {
	if pen < c.pens[i] {
		return
	}
	k := &c.strokes[i]
	if pen > c.pens[i] {
		c.pens[i], *k = pen, stroke{dotted: s.dotted}
	}
	c.dots[i] = 1
	k.cos += s.cos
	k.sin += s.sin
	k.height += float32(row)
	k.n++
	k.corner = k.corner || s.corner
	k.dotted = k.dotted && s.dotted
}

// sharp is the squared cosine of the turn from which on a vertex is a corner:
// 45 degrees. Flattened curves turn far less at each vertex.
const sharp = 0.5

// corners marks the sharp vertices of a path.
func (c *Canvas) corners(pts []Dot, closed bool, pen Pen) {
	n := len(pts)
	for i := range pts {
		if !closed && (i == 0 || i == n-1) {
			continue
		}
		before, after := i-1, i+1
		if i == 0 {
			before = n - 1
		}
		if i == n-1 {
			after = 0
		}
		a, b, d := pts[before], pts[i], pts[after]
		ux, uy, vx, vy := b.X-a.X, b.Y-a.Y, d.X-b.X, d.Y-b.Y
		lu, lv, along := ux*ux+uy*uy, vx*vx+vy*vy, ux*vx+uy*vy
		if !(lu >= 1) || !(lv >= 1) || (along > 0 && !(along*along < sharp*lu*lv)) {
			continue
		}
		if x, y, ok := c.nearest(b.X, b.Y); ok {
			c.set(x, y, pen, &stroke{corner: true})
		}
	}
}

// Slopes by the tangent of the doubled angle: flat up to 12 degrees, leaning
// up to 35, upright from 75.
const (
	flat    = 0.4452 // tan 24
	leaning = 2.7475 // tan 70
	upright = 0.5774 // tan 30
	agreed  = 0.6    // share of samples that must agree on a direction
)

// char is the character that reads most like the strokes of a cell.
func (s *stroke) char() byte {
	mean := s.height / max(s.n, 1)
	size := s.cos*s.cos + s.sin*s.sin
	lean := s.sin
	if lean < 0 {
		lean = -lean
	}
	switch {
	case s.corner:
		return '+'
	case size == 0 && s.n <= 1: // a point
		return low(mean)
	case s.dotted:
		if s.cos < 0 {
			return ':'
		}
		return low(mean)
	case size < agreed*agreed*s.n*s.n:
		return '+'
	case s.cos > 0 && lean < flat*s.cos:
		if mean >= 2.5 {
			return '_'
		}
		return '-'
	case s.cos > 0 && lean < leaning*s.cos:
		switch {
		case mean < 0.9:
			return '\''
		case mean > 2.1:
			return '.'
		}
		return '-'
	case s.cos < 0 && lean < -upright*s.cos:
		return '|'
	case s.sin > 0:
		return '\\'
	}
	return '/'
}

// low is a dot in the upper or the lower half of its cell.
func low(mean float32) byte {
	if mean < 1.5 {
		return '\''
	}
	return '.'
}
