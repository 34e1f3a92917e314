package canvas

import (
	"strings"
	"unicode/utf8"
)

const reset = "\x1b[0m"

// String is the canvas as text: exactly one line for each row, none wider
// than the columns, blanks at the ends of lines left out, one SGR sequence
// for each run of cells of one pen and one reset at the end of a line that
// had any.
func (c *Canvas) String(p Palette) string {
	c.buf = c.buf[:0]
	var shows [NumPens]bool // on an empty cell
	bare, _ := blankLook(p[None])
	for i, sgr := range p {
		back, marked := blankLook(sgr)
		shows[i] = marked || back != bare
	}
	for row := 0; row < c.rows; row++ {
		if row > 0 {
			c.buf = append(c.buf, '\n')
		}
		c.appendRow(row, &p, &shows)
	}
	return string(c.buf)
}

// Rows is String cut into its lines.
func (c *Canvas) Rows(p Palette) []string {
	if c.rows == 0 {
		return nil
	}
	return strings.Split(c.String(p), "\n")
}

func (c *Canvas) appendRow(row int, p *Palette, shows *[NumPens]bool) {
	at := row * c.cols
	end := at + c.cols
	for end > at && c.blank(end-1) {
		end--
	}
	buf := c.buf
	now, begun := None, false
	for i := at; i < end; i++ {
		word := c.words[i]
		if word == rest {
			continue
		}
		pen := None
		switch {
		case word != 0:
			pen = c.wordPen[i]
		case c.dots[i] != 0:
			pen = c.pens[i]
		case begun && !shows[now]:
			pen = now // nothing of it shows on an empty cell: stay in it
		}
		if pen != now || !begun {
			if p[pen] != p[now] || !begun {
				buf = change(buf, p[pen], begun && p[now] != "")
			}
			now, begun = pen, true
		}
		switch {
		case word != 0:
			buf = utf8.AppendRune(buf, word)
		case c.dots[i] == 0:
			buf = append(buf, ' ')
		case c.glyphs == Braille:
			d := c.dots[i]
			buf = append(buf, 0xE2, 0xA0|d>>6, 0x80|d&0x3F)
		case c.glyphs == ASCII:
			buf = append(buf, c.strokes[i].char())
		default:
			buf = utf8.AppendRune(buf, blocks[c.dots[i]&3])
		}
	}
	if begun && p[now] != "" {
		buf = append(buf, reset...)
	}
	c.buf = buf
}

// change goes over to another sequence, or to none.
func change(buf []byte, to string, on bool) []byte {
	if to == "" && on {
		return append(buf, reset...)
	}
	return append(buf, to...)
}

// blank tells whether a cell shows nothing. A space laid by Text with a pen
// may be underlined or reversed and is kept.
func (c *Canvas) blank(i int) bool {
	w := c.words[i]
	return (w == ' ' && c.wordPen[i] == None) || (w == 0 && c.dots[i] == 0)
}
