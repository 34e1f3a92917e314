package canvas

// most is the largest number of columns or rows; beyond it no terminal goes,
// and a slip in a number must not eat the memory.
const most = 2000

// Canvas is a grid of cells to draw on. It keeps its memory between frames.
// It is not safe for use by several goroutines at once.
type Canvas struct {
	cols, rows int
	glyphs     Glyphs
	w, h       int // dots

	dots    []uint8  // the dots set in each cell
	pens    []Pen    // the pen of the dots of each cell
	words   []rune   // the text over each cell, 0 for none
	wordPen []Pen    // its pen
	strokes []stroke // the directions in each cell, only for ASCII

	buf []byte // the last String, kept for its memory
}

// New makes an empty canvas of so many cells.
func New(cols, rows int, g Glyphs) *Canvas {
	c := &Canvas{}
	c.Resize(cols, rows, g)
	return c
}

// Resize gives the canvas another size and set of glyphs and empties it.
// Memory is taken anew only when it has to grow.
func (c *Canvas) Resize(cols, rows int, g Glyphs) {
	c.cols, c.rows = within(cols), within(rows)
	c.glyphs = g.known()
	cw, ch := c.glyphs.Cell()
	c.w, c.h = c.cols*cw, c.rows*ch
	n := c.cols * c.rows
	c.dots = grown(c.dots, n)
	c.pens = grown(c.pens, n)
	c.words = grown(c.words, n)
	c.wordPen = grown(c.wordPen, n)
	if c.glyphs == ASCII {
		c.strokes = grown(c.strokes, n)
	} else {
		c.strokes = c.strokes[:0]
	}
	c.Clear()
}

// Clear empties every cell.
func (c *Canvas) Clear() {
	clear(c.dots)
	clear(c.pens)
	clear(c.words)
	clear(c.wordPen)
	clear(c.strokes)
}

// Size is the number of columns and rows.
func (c *Canvas) Size() (cols, rows int) { return c.cols, c.rows }

// Dots is the number of dots across and down.
func (c *Canvas) Dots() (w, h int) { return c.w, c.h }

// Glyphs is the set the canvas is drawn with.
func (c *Canvas) Glyphs() Glyphs { return c.glyphs }

// At is what one cell shows and with which pen; a blank with None where there
// is nothing or no such cell.
func (c *Canvas) At(col, row int) (rune, Pen) {
	if col < 0 || row < 0 || col >= c.cols || row >= c.rows {
		return ' ', None
	}
	i := row*c.cols + col
	switch {
	case c.words[i] == rest:
		return ' ', c.wordPen[i]
	case c.words[i] != 0:
		return c.words[i], c.wordPen[i]
	case c.dots[i] == 0:
		return ' ', None
	}
	return c.glyph(i), c.pens[i]
}

// glyph is the character of a cell that has dots.
func (c *Canvas) glyph(i int) rune {
	switch c.glyphs {
	case Blocks:
		return blocks[c.dots[i]&3]
	case ASCII:
		return rune(c.strokes[i].char())
	}
	return 0x2800 + rune(c.dots[i])
}

// blocks are the half-blocks by the bits upper and lower.
var blocks = [4]rune{' ', '▀', '▄', '█'}

func within(n int) int { return max(0, min(n, most)) }

func grown[T any](s []T, n int) []T {
	if cap(s) < n {
		return make([]T, n)
	}
	return s[:n]
}
