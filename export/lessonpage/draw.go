package lessonpage

import (
	"strconv"
	"strings"

	"chalkfold/export"
	"chalkfold/export/leaflet"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// marks stores every mark of the draft once, in its own coordinates; the
// drawings of the steps refer to them.
func (p *page) marks() {
	p.add(`<svg class="store" aria-hidden="true"><defs>`)
	for i := range p.sheet.Marks {
		m := &p.sheet.Marks[i]
		if d := outline(m); d != "" {
			p.add(`<path id="m%d" class="%s" d="%s"/>`, i, class(m), d)
		}
	}
	p.add(`</defs></svg>`)
}

// class says how a mark is drawn.
func class(m *pattern.Mark) string {
	switch {
	case m.Kind == pattern.MarkPoint:
		return "point"
	case m.Role == pattern.RoleFold:
		return "line fold"
	case m.Kind == pattern.MarkGuide:
		return "guide"
	}
	return "line"
}

// outline is a mark as the d of a path. A point is a line of no length with
// round ends.
func outline(m *pattern.Mark) string {
	if m.Kind == pattern.MarkPoint {
		return "M" + pair(m.At) + "h0"
	}
	var b strings.Builder
	for i, s := range m.Path {
		if i == 0 || !s.A.Near(m.Path[i-1].D, 1e-6) {
			b.WriteString("M" + pair(s.A))
		}
		if s.Curved {
			b.WriteString("C" + pair(s.B) + " " + pair(s.C) + " " + pair(s.D))
		} else {
			b.WriteString("L" + pair(s.D))
		}
	}
	return b.String()
}

func pair(p geom.Point) string { return number(p.X) + "," + number(p.Y) }

// number is a length with a thousandth of a millimetre, the tail cut.
func number(x float64) string {
	s := strconv.FormatFloat(export.Round(x, 1e3), 'f', 3, 64)
	s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	if s == "-0" || s == "" {
		return "0"
	}
	return s
}

// lying turns a piece as it lies on the table: what goes down goes right.
func lying(q geom.Point) geom.Point { return geom.Point{X: q.Y, Y: q.X} }

// drawings are the whole piece as it is after a step and, where that is much
// smaller, the place where something is new.
func (p *page) drawings(st pattern.Step) {
	alive, fresh := p.alive(st)
	if len(alive) == 0 {
		return
	}
	whole := wholeWindow(p.extent(st.Piece))
	near, closer := nearWindow(p.span(fresh), whole)
	id := "drawn-" + strconv.Itoa(st.Number)
	p.add(`<div class="drawings">`)
	pair := ""
	if closer {
		pair = " pair"
	}
	p.open("whole"+pair, whole, p.told(st, fresh))
	p.add(`<g id="%s" transform="matrix(0 1 1 0 0 0)">`, id)
	p.uses(alive, st.Number, false)
	p.uses(alive, st.Number, true)
	p.add(`</g>`)
	p.names(alive, st.Number, whole, false)
	p.add(`</svg>`)
	if closer {
		p.open("near", near, "Closer: "+p.told(st, fresh))
		p.add(`<use href="#%s"/>`, id)
		p.names(alive, st.Number, near, true)
		p.add(`</svg>`)
	}
	p.add(`</div>`)
}

// alive are the marks of the step's piece that stand after it, and those of
// them that it made, by their places in the sheet.
func (p *page) alive(st pattern.Step) (alive, fresh []int) {
	for i := range p.sheet.Marks {
		m := &p.sheet.Marks[i]
		if m.Piece != st.Piece || !m.AliveAt(st.Number) || m.Kind != pattern.MarkPoint && len(m.Path) == 0 {
			continue
		}
		alive = append(alive, i)
		if m.Born == st.Number {
			fresh = append(fresh, i)
		}
	}
	return alive, fresh
}

// uses puts the marks on the drawing: the earlier ones, or the new ones above
// them.
func (p *page) uses(alive []int, step int, fresh bool) {
	open := false
	for _, i := range alive {
		if (p.sheet.Marks[i].Born == step) != fresh {
			continue
		}
		if fresh && !open {
			p.b.WriteString(`<g class="new">`)
			open = true
		}
		p.b.WriteString(`<use href="#m` + strconv.Itoa(i) + `"/>`)
	}
	if open {
		p.b.WriteString(`</g>`)
	}
	p.b.WriteByte('\n')
}

// told is the drawing for those who do not see it.
func (p *page) told(st pattern.Step, fresh []int) string {
	var names []string
	for _, i := range fresh {
		names = append(names, leaflet.Words(p.sheet.Marks[i].Name))
	}
	says := p.pieceTitle(st.Piece) + " after step " + strconv.Itoa(st.Number)
	if len(names) == 0 {
		return says + ", nothing new drawn"
	}
	return says + ", new: " + strings.Join(names, ", ")
}

func (p *page) open(class string, w window, says string) {
	p.add(`<svg class="drawing %s" role="img" aria-label="%s" viewBox="%s %s %s %s" preserveAspectRatio="xMidYMid meet">`,
		class, words(says), number(w.box.Min.X), number(w.box.Min.Y), number(w.box.Width()), number(w.box.Height()))
}

// extent is the room of all marks of a piece, lying, so that every step has
// one scale.
func (p *page) extent(id pattern.PieceID) geom.Box {
	var all []int
	for i := range p.sheet.Marks {
		if p.sheet.Marks[i].Piece == id {
			all = append(all, i)
		}
	}
	return p.span(all)
}

func (p *page) span(marks []int) geom.Box {
	var b geom.Box
	for _, i := range marks {
		m := &p.sheet.Marks[i]
		if m.Kind == pattern.MarkPoint {
			b = b.Add(lying(m.At))
			continue
		}
		if len(m.Path) > 0 {
			c := m.Path.Bounds()
			b = b.Add(lying(c.Min)).Add(lying(c.Max))
		}
	}
	return b
}
