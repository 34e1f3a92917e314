package card

import (
	"math"

	"chalkfold/measure"
	"chalkfold/pattern/geom"
)

// rows sets the marks of every run and lists them round the piece, from the
// neck centre to where the fold or centre line closes the ring.
func (m *marking) rows() []Row {
	var out []Row
	for k := range m.runs {
		r := &m.runs[k]
		nodes := m.nodes(k)
		last := k == len(m.runs)-1
		if r.mouth {
			row := m.row(r, &nodes[len(nodes)-1])
			row.Join = Dart
			m.count(&nodes[len(nodes)-1])
			out = append(out, row)
			continue
		}
		cut, stitch := m.chains(r, nodes)
		m.weigh(r.cut, cut)
		m.weigh(r.stitch, stitch)
		rows := m.merge(r, nodes, cut, stitch)
		m.notes(k, nodes, rows)
		if k > 0 {
			carryNotes(&out[len(out)-1], rows[0])
			rows = rows[1:]
		} else {
			rows[0].Join = Start
		}
		if last && r.onCentre() {
			carryNotes(&out[0], rows[len(rows)-1])
			rows = rows[:len(rows)-1]
		}
		out = append(out, rows...)
	}
	return out
}

func carryNotes(to *Row, from Row) { to.Notes = append(to.Notes, from.Notes...) }

// weigh remembers the largest rounding and the largest stray of a chain.
func (m *marking) weigh(l line, c chain) {
	for i, s := range c.marks {
		m.rounding = max(m.rounding, s.at.Dist(s.of))
		if i > 0 {
			d, _ := stray(l, c.marks[i-1], s, math.Inf(1))
			m.stray = max(m.stray, d)
		}
	}
}

func (m *marking) count(n *node) {
	for which := lineCut; which <= lineStitch; which++ {
		if s := n.on(which); s != nil {
			m.rounding = max(m.rounding, s.at.Dist(s.of))
		}
	}
}

// row is the row of a node.
func (m *marking) row(r *run, n *node) Row {
	row := Row{Edge: r.edge, Name: n.name, AsideCut: n.aside[lineCut], AsideStitch: n.aside[lineStitch]}
	if n.cut != nil {
		p := placeOf(n.cut.at)
		row.Cut = &p
	}
	if n.stitch != nil {
		p := placeOf(n.stitch.at)
		row.Stitch = &p
	}
	return row
}

// merge brings the chains of both lines into rows: the nodes, and between two
// nodes the marks of the curves side by side.
func (m *marking) merge(r *run, nodes []node, cut, stitch chain) []Row {
	var out []Row
	i, j := 0, 0
	var lastCut, lastStitch *stop
	push := func(row Row, c, s *stop) {
		row.Edge = r.edge
		row.Join = Ruled
		bent := c != nil && lastCut != nil && !r.cut.ruled(*lastCut, *c)
		bentSewn := s != nil && lastStitch != nil && !r.stitch.ruled(*lastStitch, *s)
		if m.own() == lineStitch && s != nil && lastStitch != nil {
			bent = bentSewn // the line as drafted decides
		}
		if bent || bentSewn && c == nil {
			row.Join = Curve
		}
		if c != nil {
			lastCut = c
		}
		if s != nil {
			lastStitch = s
		}
		out = append(out, row)
	}
	for n := range nodes {
		var cs, ss []*stop
		cs, i = upto(cut, i, n)
		ss, j = upto(stitch, j, n)
		m.sideBySide(cs, ss, push)
		var c, s *stop
		if i < len(cut.marks) && cut.node[i] == n {
			c = &cut.marks[i]
			i++
		}
		if j < len(stitch.marks) && stitch.node[j] == n {
			s = &stitch.marks[j]
			j++
		}
		row := m.row(r, &nodes[n])
		if c == nil && !row.AsideCut {
			row.Cut = nil
		}
		if s == nil && !row.AsideStitch {
			row.Stitch = nil
		}
		if n > 0 && row.Cut == nil && row.Stitch == nil {
			continue
		}
		push(row, c, s)
	}
	return out
}

// upto takes the curve marks that stand before node n.
func upto(c chain, from, n int) ([]*stop, int) {
	end := from
	for k := from; k < len(c.marks); k++ {
		if c.node[k] >= 0 && c.node[k] <= n {
			end = k
			break
		}
		if c.node[k] > n {
			return nil, from
		}
	}
	var out []*stop
	for k := from; k < end; k++ {
		out = append(out, &c.marks[k])
	}
	return out, end
}

// sideBySide puts curve marks of both lines into rows: those that share a
// level or a distance out in one, the others in order beside each other.
func (m *marking) sideBySide(cs, ss []*stop, push func(Row, *stop, *stop)) {
	place := func(c, s *stop) {
		var row Row
		if c != nil {
			p := placeOf(c.at)
			row.Cut = &p
		}
		if s != nil {
			p := placeOf(s.at)
			row.Stitch = &p
		}
		push(row, c, s)
	}
	flush := func(a, b []*stop) {
		for k := 0; k < max(len(a), len(b)); k++ {
			place(pick(a, k), pick(b, k))
		}
	}
	for {
		i, j := firstShared(cs, ss)
		if i < 0 {
			flush(cs, ss)
			return
		}
		flush(cs[:i], ss[:j])
		place(cs[i], ss[j])
		cs, ss = cs[i+1:], ss[j+1:]
	}
}

func firstShared(cs, ss []*stop) (int, int) {
	for i := range cs {
		for j := range ss {
			if ss[j].shared && (ss[j].at.Y == cs[i].at.Y || ss[j].at.X == cs[i].at.X) {
				return i, j
			}
		}
	}
	return -1, -1
}

func pick(list []*stop, k int) *stop {
	if k < len(list) {
		return list[k]
	}
	return nil
}

// notes says at the ends of curves how they leave and arrive, and at a rounded
// corner by how much.
func (m *marking) notes(k int, nodes []node, rows []Row) {
	r := &m.runs[k]
	own := r.line(m.own())
	prev, next := &m.runs[(k+len(m.runs)-1)%len(m.runs)], &m.runs[(k+1)%len(m.runs)]
	if !own.empty() && own.curved[1] {
		if w := against(own.leaning(0), prev, prev.line(m.own()), true); w != "" {
			rows[0].Notes = append(rows[0].Notes, "leave "+w)
		}
	}
	if n := len(own.pts); n > 1 && own.curved[n-1] && !next.mouth {
		end := own.leaning(own.long())
		w := against(end, next, next.line(m.own()), false)
		if w == "" && math.Abs(end.Y) < 0.03 {
			w = "level"
		}
		if w != "" {
			rows[len(rows)-1].Notes = append(rows[len(rows)-1].Notes, "arrive "+w)
		}
	}
	for i := range nodes {
		for j := range rows {
			if rows[j].Name != nodes[i].name || nodes[i].name == "" {
				continue
			}
			m.noteNode(r, &nodes[i], &rows[j])
		}
	}
}

func (m *marking) noteNode(r *run, n *node, row *Row) {
	if n.round > 0 {
		by := m.grid.sliver(measure.Length(n.round))
		if n.aside[m.own()] {
			row.Notes = append(row.Notes, "in brackets the corner: pass it "+by+" off, do not touch it")
		} else {
			row.Notes = append(row.Notes, "round the corner by "+by)
		}
	}
	if n.name == "hem side" && r.edge != "hem" && n.cut != nil && n.cut.s < r.cut.long()-1 {
		say := "the finished hem"
		if r.cut.end().X > n.cut.on.X+1 {
			say += "; below it the side turns out again"
		}
		row.Notes = append(row.Notes, say)
	}
	if n.name == "waist" {
		m.otherWaist(row)
	}
	if n.name == "armhole middle" {
		if s := n.on(m.own()); s != nil {
			if d := r.line(m.own()).leaning(s.s); math.Abs(d.X) < 0.05 {
				row.Notes = append(row.Notes, "upright here")
			}
		}
	}
}

// against says which way a curve leaves or arrives where another run begins or
// ends, if it is square to it.
func against(dir geom.Vector, other *run, l line, before bool) string {
	if l.empty() {
		return ""
	}
	o := l.leaning(0)
	if before {
		o = l.leaning(l.long())
	}
	if math.Abs(dir.Dot(o)) > 0.06 { // 3 1/2 degrees
		return ""
	}
	switch other.edge {
	case "fold":
		return "square to the fold"
	case "centre_back":
		return "square to the centre line"
	case "shoulder":
		return "square to the shoulder"
	}
	return ""
}
