package lessonpage

import (
	"math"

	"chalkfold/export"
	"chalkfold/export/leaflet"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// window is a part of the table that a drawing shows. dot is what one dot of
// the narrowest phone is there, in millimetres: words and gaps go by it.
type window struct {
	box geom.Box
	dot float64
}

const (
	phone     = 334.0 // dots across, of the narrowest phone, without margins
	lettering = 13.0  // lettering, in dots of a phone
	air       = 8.0   // between a mark and its name
	closest   = 260.0 // millimetres across: closer nobody knows where she is
	heavier   = 1.1   // bold lettering to plain
	worth     = 0.75  // a closer drawing that shows more than this is left out
)

// wholeWindow has room for names round all marks.
func wholeWindow(all geom.Box) window {
	dot := all.Width() / (phone - 2*margin)
	return window{all.Grow(margin * dot), dot}
}

const margin = 18.0 // dots

// nearWindow is the place of the new marks, four to three, inside the whole.
func nearWindow(fresh geom.Box, whole window) (window, bool) {
	if fresh.Empty() {
		return window{}, false
	}
	wide := max(closest, 1.5*fresh.Width(), 1.5*fresh.Height()*4/3)
	if wide > worth*whole.box.Width() {
		return window{}, false
	}
	high := wide * 3 / 4
	c := fresh.Centre()
	x := within(c.X-wide/2, whole.box.Min.X, whole.box.Max.X-wide)
	y := within(c.Y-high/2, whole.box.Min.Y, whole.box.Max.Y-high)
	return window{geom.Box{Min: geom.Point{X: x, Y: y}, Max: geom.Point{X: x + wide, Y: y + high}}, wide / phone}, true
}

// within keeps a corner where the window still shows the piece; a window
// larger than the piece has it in the middle.
func within(x, low, high float64) float64 {
	if low > high {
		return (low + high) / 2
	}
	return max(low, min(x, high))
}

// names writes what the new marks are called, each beside its mark and clear
// of the other names; close up the earlier points as well, where there is room.
func (p *page) names(alive []int, step int, w window, close bool) {
	var taken []geom.Box
	lines := p.ink(alive, w)
	size := lettering * w.dot
	p.add(`<g font-size="%s" stroke-width="%s">`, number(size), number(3*w.dot))
	defer p.add(`</g>`)
	put := func(i int, fresh bool) {
		m := &p.sheet.Marks[i]
		at := lying(m.At)
		if m.Kind != pattern.MarkPoint {
			at = lying(m.Path.End())
			if m.Kind == pattern.MarkLine {
				q, _ := m.Path.At(m.Path.Length() / 2)
				at = lying(q)
			}
		}
		name := leaflet.Words(m.Name)
		width := export.TextWidth(name, size)
		if fresh {
			width *= heavier
		}
		box, anchor, free := place(at, width, w, taken, lines)
		if !free && !fresh {
			return
		}
		taken = append(taken, box)
		class := ""
		if fresh {
			class = ` class="name"`
		}
		x, anchored := box.Min.X, ""
		switch anchor {
		case middle:
			x, anchored = box.Centre().X, ` text-anchor="middle"`
		case end:
			x, anchored = box.Max.X, ` text-anchor="end"`
		}
		p.add(`<text%s%s x="%s" y="%s">%s</text>`, class, anchored, number(x), number(box.Max.Y-0.24*size), words(name))
	}
	for _, kind := range [...]pattern.MarkKind{pattern.MarkPoint, pattern.MarkLine, pattern.MarkGuide} {
		for _, i := range alive {
			if m := &p.sheet.Marks[i]; m.Born == step && m.Kind == kind {
				put(i, true)
			}
		}
	}
	if !close {
		return
	}
	for _, i := range alive {
		if m := &p.sheet.Marks[i]; m.Born != step && m.Kind == pattern.MarkPoint && w.box.Contains(lying(m.At)) {
			put(i, false)
		}
	}
}

// anchor is which part of a name stays where it is when it is set smaller.
type anchor int8

const (
	start anchor = iota
	middle
	end
)

// ink are spots of the lines that show in a window, close enough together
// that no name slips between two.
func (p *page) ink(alive []int, w window) []geom.Point {
	var out []geom.Point
	apart := 5 * w.dot
	for _, i := range alive {
		points := p.sheet.Marks[i].Path.Flatten(w.dot)
		for k := 1; k < len(points); k++ {
			a, b := lying(points[k-1]), lying(points[k])
			n := int(a.Dist(b)/apart) + 1
			for j := range n {
				if q := a.Lerp(b, float64(j)/float64(n)); w.box.Contains(q) {
					out = append(out, q)
				}
			}
		}
	}
	return out
}

// place finds a box for a name of that width near its mark: beside it, above,
// below, then farther off. It keeps clear of other names, and of lines where
// that costs little; free says that no name is covered.
func place(at geom.Point, width float64, w window, taken []geom.Box, lines []geom.Point) (best geom.Box, held anchor, free bool) {
	const name, far = 1000, 3 // what covering a name costs, and each row farther off; a spot of a line costs one
	high, gap := 1.2*lettering*w.dot, air*w.dot
	inner := w.box.Grow(-3 * w.dot)
	fit := func(x, y float64) geom.Box {
		x = within(x, inner.Min.X, inner.Max.X-width)
		y = within(y, inner.Min.Y, inner.Max.Y-high)
		return geom.Box{Min: geom.Point{X: x, Y: y}, Max: geom.Point{X: x + width, Y: y + high}}
	}
	others := append(taken[:len(taken):len(taken)], geom.Box{}.Add(at).Grow(0.6*gap))
	least := math.MaxInt
	for row := 0; row < 6 && row*far < least; row++ {
		off := gap + float64(row)*0.8*high
		for _, c := range [...]struct {
			x, y float64
			anchor
		}{
			{off, -high / 2, start},
			{-width - off, -high / 2, end},
			{gap, -high - off/2, start},
			{gap, off / 2, start},
			{-width / 2, -high - off, middle},
			{-width / 2, off, middle},
			{-width - gap, -high - off/2, end},
			{-width - gap, off / 2, end},
		} {
			b := fit(at.X+c.x, at.Y+c.y)
			cost := row * far
			for _, o := range others {
				if b.Overlaps(o) {
					cost += name
				}
			}
			if cost >= least {
				continue
			}
			for _, q := range lines {
				if b.Contains(q) {
					cost++
				}
			}
			if cost < least {
				best, held, least = b, c.anchor, cost
			}
		}
	}
	return best, held, least < name
}
