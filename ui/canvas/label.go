package canvas

// spots are the places round a mark, best first: which way the label lies
// from it, in cells.
var spots = [8][2]int{{1, 0}, {-1, 0}, {1, -1}, {1, 1}, {-1, -1}, {-1, 1}, {0, -1}, {0, 1}}

// reach is how many rows off a label may stand at the end of a leader line.
const reach = 4

// Label writes words beside a dot. It takes the first of eight spots where
// they cover neither a line nor other words and keep a cell of air all round;
// then the first with air at both ends; then one where only faint lines give
// way; then one farther off with a leader line. What is newest, chosen or
// doubtful is written over lines before it goes unsaid, never over words. If
// there is no room at all it writes nothing and says false. Grid dots may be
// covered.
func (c *Canvas) Label(x, y float64, s string, pen Pen) bool {
	dx, dy, ok := c.nearest(x, y)
	n := Width(s)
	if !ok || n == 0 || n > c.cols {
		return false
	}
	cw, ch := c.glyphs.Cell()
	at := spot{col: dx / cw, row: dy / ch, n: n}
	for _, w := range [...]ways{{1, Grid}, {0, Grid}, {0, Faint}} {
		if p, ok := c.beside(at, w); ok {
			c.Text(p.col, p.row, s, pen)
			return true
		}
	}
	for _, gives := range [...]Pen{Grid, Faint} {
		for far := 2; far <= reach; far++ {
			for _, way := range spots {
				if p := at.moved(way, far, far); c.free(p, ways{0, gives}, at) && c.leader(at, p, way) {
					c.Text(p.col, p.row, s, pen)
					return true
				}
			}
		}
	}
	if pen < Selected {
		return false
	}
	p, ok := c.beside(at, ways{0, Alarm})
	if ok {
		c.Text(p.col, p.row, s, pen)
	}
	return ok
}

// ways is how much air a label wants above and below, and the highest pen
// whose lines give way to it.
type ways struct {
	above int
	gives Pen
}

// beside is the first of the eight spots that is free. A mark may fill two
// cells: then the label stands one farther.
func (c *Canvas) beside(at spot, w ways) (spot, bool) {
	for _, way := range spots {
		for gap := 1; gap <= 2; gap++ {
			if p := at.moved(way, 1, gap); c.free(p, w, at) {
				return p, true
			}
		}
	}
	return spot{}, false
}

// spot is where a label of n cells begins.
type spot struct{ col, row, n int }

// moved is the spot this way off the mark: so many rows, and beside it with so
// many cells between.
func (p spot) moved(way [2]int, rows, gap int) spot {
	q := spot{row: p.row + way[1]*rows, n: p.n}
	switch way[0] {
	case 1:
		q.col = p.col + 1 + gap
	case -1:
		q.col = p.col - gap - p.n
	default:
		q.col = p.col - p.n/2
	}
	return q
}

// free tells whether a label may stand here: its own cells and those at both
// ends empty, and so many rows above and below. The mark itself may be near.
func (c *Canvas) free(p spot, w ways, mark spot) bool {
	if p.col < 0 || p.row < 0 || p.col+p.n > c.cols || p.row >= c.rows {
		return false
	}
	for row := p.row - w.above; row <= p.row+w.above; row++ {
		for col := p.col - 1; col <= p.col+p.n; col++ {
			if row < 0 || row >= c.rows || col < 0 || col >= c.cols {
				continue
			}
			if row != p.row && abs(row-mark.row) <= 1 && abs(col-mark.col) <= 1 {
				continue
			}
			if c.taken(row*c.cols+col, w.gives) {
				return false
			}
		}
	}
	return true
}

func (c *Canvas) taken(i int, gives Pen) bool {
	return c.words[i] != 0 || (c.dots[i] != 0 && c.pens[i] > gives)
}

// leader draws a faint line from the mark to the label, unless other words
// stand in the way or would lose their air.
func (c *Canvas) leader(from, to spot, way [2]int) bool {
	end := spot{col: to.col - 2, row: to.row}
	switch {
	case way[0] < 0:
		end.col = to.col + to.n + 1
	case way[0] == 0:
		end.col, end.row = from.col, to.row-way[1]
	}
	cells := max(abs(end.col-from.col), abs(end.row-from.row), 1)
	for k := 0; k <= cells; k++ {
		col := from.col + (end.col-from.col)*k/cells
		row := from.row + (end.row-from.row)*k/cells
		for beside := max(col-2, 0); beside <= min(col+2, c.cols-1); beside++ { // rounding takes one
			if c.words[row*c.cols+beside] != 0 {
				return false
			}
		}
	}
	cw, ch := c.glyphs.Cell()
	centre := func(p spot) (float64, float64) {
		return float64(p.col*cw) + float64(cw-1)/2, float64(p.row*ch) + float64(ch-1)/2
	}
	x0, y0 := centre(from)
	x1, y1 := centre(end)
	c.Line(x0, y0, x1, y1, Faint)
	return true
}
