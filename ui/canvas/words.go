package canvas

import "unicode"

// rest stands in the second cell of a wide letter.
const rest rune = -1

// Text lays words over the cells from one cell on, cut at the edges. Letters
// without width are left out: compose accents first. A line break ends it.
func (c *Canvas) Text(col, row int, s string, pen Pen) {
	if row < 0 || row >= c.rows || int(pen) >= NumPens {
		return
	}
	for _, r := range s {
		if r == '\n' || col >= c.cols {
			return
		}
		n := width(r)
		if n == 2 && col+1 >= c.cols {
			r, n = ' ', 1 // half a wide letter does not fit
		}
		if n == 0 {
			continue
		}
		if col < 0 && col+n > 0 {
			c.cell(0, row, ' ', pen)
		} else if col >= 0 {
			c.cell(col, row, r, pen)
			if n == 2 {
				c.cell(col+1, row, rest, pen)
			}
		}
		col += n
	}
}

// cell puts one letter and mends a wide letter that it cuts in two.
func (c *Canvas) cell(col, row int, r rune, pen Pen) {
	i := row*c.cols + col
	if c.words[i] == rest && r != rest && col > 0 {
		c.words[i-1] = ' '
	}
	if col+1 < c.cols && c.words[i+1] == rest {
		c.words[i+1] = ' '
	}
	c.words[i], c.wordPen[i] = r, pen
}

// Width is the number of cells that Text needs.
func Width(s string) int {
	n := 0
	for _, r := range s {
		n += width(r)
	}
	return n
}

// wide are the letters that fill two cells, as far as names need them: East
// Asian scripts and pictures (Unicode Standard Annex 11).
var wide = &unicode.RangeTable{
	R16: []unicode.Range16{
		{Lo: 0x1100, Hi: 0x115F, Stride: 1},
		{Lo: 0x231A, Hi: 0x231B, Stride: 1},
		{Lo: 0x2329, Hi: 0x232A, Stride: 1},
		{Lo: 0x23E9, Hi: 0x23F3, Stride: 1},
		{Lo: 0x2600, Hi: 0x27BF, Stride: 1},
		{Lo: 0x2B1B, Hi: 0x2B1C, Stride: 1},
		{Lo: 0x2B50, Hi: 0x2B55, Stride: 5},
		{Lo: 0x2E80, Hi: 0x303E, Stride: 1},
		{Lo: 0x3041, Hi: 0x4DBF, Stride: 1},
		{Lo: 0x4E00, Hi: 0xA4CF, Stride: 1},
		{Lo: 0xA960, Hi: 0xA97C, Stride: 1},
		{Lo: 0xAC00, Hi: 0xD7A3, Stride: 1},
		{Lo: 0xF900, Hi: 0xFAFF, Stride: 1},
		{Lo: 0xFE10, Hi: 0xFE6F, Stride: 1},
		{Lo: 0xFF01, Hi: 0xFF60, Stride: 1},
		{Lo: 0xFFE0, Hi: 0xFFE6, Stride: 1},
	},
	R32: []unicode.Range32{
		{Lo: 0x16FE0, Hi: 0x18CFF, Stride: 1},
		{Lo: 0x1AFF0, Hi: 0x1B2FF, Stride: 1},
		{Lo: 0x1F000, Hi: 0x1FAFF, Stride: 1},
		{Lo: 0x20000, Hi: 0x3FFFD, Stride: 1},
	},
}

func width(r rune) int {
	switch {
	case r >= ' ' && r < 0x7F:
		return 1
	case r < 0xA0 || unicode.In(r, unicode.Mn, unicode.Me, unicode.Cf, unicode.Cc, unicode.Zl, unicode.Zp):
		return 0
	case r >= 0x1160 && r <= 0x11FF: // vowels and tails that join the letter before
		return 0
	case unicode.Is(wide, r):
		return 2
	}
	return 1
}
