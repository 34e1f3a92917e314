package pdf

import (
	"strings"

	"codeberg.org/go-pdf/fpdf"

	"chalkfold/export"
	"chalkfold/pattern/geom"
)

// words is text on one line.
type words struct {
	text   string
	size   float64 // millimetres
	bold   bool
	turn   float64 // degrees, clockwise to the eye
	middle bool    // at is the middle of the base line
	right  bool    // at is its end
}

// boldWeight is how heavy the outline of bold letters is, in parts of the
// size: the same face, so that bold costs no second one.
const boldWeight = 0.035

// write sets words with the start of their base line at a place and returns
// their width.
func (p *pen) write(at geom.Point, w words) float64 {
	w.text = p.clean(w.text)
	wide := p.face.width(w.text, w.size)
	if strings.TrimSpace(w.text) == "" || w.size <= 0 {
		return wide
	}
	for _, r := range w.text {
		p.letters[r] = true
	}
	start := at
	switch {
	case w.middle:
		start.X -= wide / 2
	case w.right:
		start.X -= wide
	}
	p.do(func(f *fpdf.Fpdf) {
		f.SetFontSize(settled(w.size / millimetresAPoint))
		if w.bold {
			f.SetLineWidth(settled(boldWeight * w.size))
			f.SetDashPattern(nil, 0)
			f.SetDrawColor(0, 0, 0)
			f.SetTextRenderingMode(2)
		}
		if w.turn != 0 {
			f.TransformBegin()
			f.TransformRotate(settled(-w.turn), settled(at.X), settled(at.Y))
		}
		f.Text(settled(start.X), settled(start.Y), w.text)
		if w.turn != 0 {
			f.TransformEnd()
		}
		if w.bold {
			f.SetTextRenderingMode(0)
		}
	})
	if w.bold {
		p.weights = false
	}
	return wide
}

// width of words as they would be set.
func (p *pen) width(text string, size float64) float64 {
	text, _ = Clean(text)
	return p.face.width(text, size)
}

// wrap breaks text into lines no wider than width; a mixed number such as
// "1 1/2" stays together. A word wider than that is cut.
func (p *pen) wrap(text string, size, width float64) []string {
	text = p.clean(text)
	var out []string
	line, long := "", 0.0
	space := p.face.width(" ", size)
	put := func(word string, wide float64) {
		if line != "" && long+space+wide > width {
			out = append(out, line)
			line, long = "", 0
		}
		if line != "" {
			line, long = line+" ", long+space
		}
		line, long = line+word, long+wide
	}
	for _, word := range export.Unbroken(text) {
		wide := p.face.width(word, size)
		for wide > width {
			head, tail := p.cut(word, size, width)
			if tail == "" {
				break
			}
			put(head, p.face.width(head, size))
			word, wide = tail, p.face.width(tail, size)
		}
		put(word, wide)
	}
	return append(out, line)
}

// cut is as much of a word as fits, at least one letter.
func (p *pen) cut(word string, size, width float64) (head, tail string) {
	sum := 0.0
	for i, r := range word {
		if sum += p.face.width(string(r), size); sum > width && i > 0 {
			return word[:i], word[i:]
		}
	}
	return word, ""
}
