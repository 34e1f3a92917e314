package svg

import (
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"chalkfold/export"
	"chalkfold/pattern/geom"
)

// scribe writes elements, one a line, indented.
type scribe struct {
	out   []byte
	depth int
}

func (s *scribe) raw(text string) { s.out = append(s.out, text...) }

func (s *scribe) tag(name string, attributes []string) {
	for range s.depth {
		s.raw(" ")
	}
	s.raw("<" + name)
	for i := 0; i < len(attributes); i += 2 {
		s.raw(" " + attributes[i] + "=\"" + escape(attributes[i+1]) + "\"")
	}
}

// open begins an element; attributes are names and values in turn.
func (s *scribe) open(name string, attributes ...string) {
	s.tag(name, attributes)
	s.raw(">\n")
	s.depth++
}

func (s *scribe) close(name string) {
	s.depth--
	for range s.depth {
		s.raw(" ")
	}
	s.raw("</" + name + ">\n")
}

// leaf is an element without content.
func (s *scribe) leaf(name string, attributes ...string) {
	s.tag(name, attributes)
	s.raw("/>\n")
}

// element is an element that holds text.
func (s *scribe) element(name, text string, attributes ...string) {
	s.tag(name, attributes)
	s.raw(">" + escape(text) + "</" + name + ">\n")
}

// path writes a line; solid says that the dash of its group is not for it.
func (s *scribe) path(p geom.Path, solid bool) {
	a := []string{"d", data(p)}
	if solid {
		a = append(a, "stroke-dasharray", "none")
	}
	s.leaf("path", a...)
}

// data is a path in the words of SVG: lines stay lines, curves stay cubics.
func data(p geom.Path) string {
	b := make([]byte, 0, 48*len(p)+32)
	point := func(letter byte, q geom.Point) {
		b = append(b, letter)
		b = appendNumber(b, q.X)
		b = append(b, ' ')
		b = appendNumber(b, q.Y)
	}
	point('M', p.Start())
	closed := p.Closed()
	for i, s := range p {
		switch {
		case s.Curved:
			point('C', s.B)
			point(' ', s.C)
			point(' ', s.D)
		case closed && i == len(p)-1:
			// The closing line is drawn by Z.
		default:
			point('L', s.D)
		}
	}
	if closed {
		b = append(b, 'Z')
	}
	return string(b)
}

func matrix(m geom.Matrix) string {
	if m[0] == 1 && m[1] == 0 && m[2] == 0 && m[3] == 1 {
		return "translate(" + number(m[4]) + " " + number(m[5]) + ")"
	}
	parts := make([]string, len(m))
	for i, x := range m {
		// Turns need more digits than places do.
		parts[i] = strconv.FormatFloat(export.Round(x, 1e9), 'f', -1, 64)
	}
	return "matrix(" + strings.Join(parts, " ") + ")"
}

// number is a length in millimetres with three decimals: a thousandth is
// finer than any cutter. It is rounded first, so that the text depends on the
// value alone, and a zero has no sign.
func number(x float64) string { return string(appendNumber(nil, x)) }

func appendNumber(b []byte, x float64) []byte {
	return strconv.AppendFloat(b, export.Round(x, 1e3), 'f', 3, 64)
}

// escape makes text safe in XML 1.0: what has a meaning there is escaped,
// control characters and what XML forbids are dropped, broken UTF-8 becomes
// the replacement letter.
func escape(text string) string {
	var b strings.Builder
	for _, r := range text {
		switch {
		case r == '&':
			b.WriteString("&amp;")
		case r == '<':
			b.WriteString("&lt;")
		case r == '>':
			b.WriteString("&gt;")
		case r == '"':
			b.WriteString("&quot;")
		case r == '\'':
			b.WriteString("&#39;")
		case r == '\t' || r == '\n' || r == '\r' || r == '\u2028' || r == '\u2029':
			b.WriteByte(' ')
		case unicode.IsControl(r) || r&0xfffe == 0xfffe || (r >= 0xfdd0 && r <= 0xfdef):
		case !utf8.ValidRune(r):
			b.WriteRune(utf8.RuneError)
		default:
			b.WriteRune(r)
		}
	}
	return b.String()
}
