package card

import (
	"math"
	"sort"
	"strings"

	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// nodes are the places of a run that get rows, along it: its start, its named
// points and inner corners, its end.
func (m *marking) nodes(k int) []node {
	r := &m.runs[k]
	first := node{cut: m.corner(r.cut, false), stitch: m.corner(r.stitch, false)}
	last := node{cut: m.corner(r.cut, true), stitch: m.corner(r.stitch, true)}
	m.nameEnd(&first)
	m.nameEnd(&last)
	var inner []node
	if !r.mouth {
		inner = m.onRun(r)
	}
	if r.edge == "dart" {
		last.name = m.legName(true)
	}
	if m.runs[(k+1)%len(m.runs)].mouth {
		last.name = m.legName(false)
	}
	if m.runs[(k+1)%len(m.runs)].edge == "hem" {
		if n, ok := m.finishedHem(r, &last); ok {
			inner = append(inner, n)
		}
	}
	if !r.mouth {
		inner = append(inner, m.corners(r, inner)...)
	}
	for i := range inner {
		m.takeEnd(r, &inner[i], &first)
	}
	sort.SliceStable(inner, func(i, j int) bool { return share(r, &inner[i]) < share(r, &inner[j]) })
	out := append([]node{first}, inner...)
	return append(out, last)
}

// takeEnd moves the stitching corner from the start of a run to the named point
// that it belongs to. So the neck centre by thumb: the seam allowance goes on
// beyond the centre, to a corner of the cutting line that has no name.
func (m *marking) takeEnd(r *run, n, first *node) {
	if m.own() != lineCut || first.name != "" || n.stitch == nil || n.stitch.s > 0.5 || first.stitch == nil {
		return
	}
	n.stitch, first.stitch = first.stitch, nil
	first.name = "corner"
}

// share is how far along its run a node lies, of 1.
func share(r *run, n *node) float64 {
	if n.cut != nil {
		return n.cut.s / max(r.cut.long(), 1e-9)
	}
	return n.stitch.s / max(r.stitch.long(), 1e-9)
}

// nameEnd names a corner after the point that lies there.
func (m *marking) nameEnd(n *node) {
	order := []int{m.own(), lineCut + lineStitch - m.own()}
	for _, which := range order {
		s := n.on(which)
		if s == nil {
			continue
		}
		if p, ok := m.nameAt(s.on); ok {
			n.name = plainName(p.name)
			s.of, s.at = p.at, m.grid.spot(p.at)
			return
		}
	}
}

// onRun are the named points along a run, with their partners on the other
// line: at the same level where the run goes down, at the same distance out
// where it goes across.
func (m *marking) onRun(r *run) []node {
	own := r.line(m.own())
	var out []node
	if r.onCentre() {
		return nil // the fold needs no marks between its ends
	}
	for _, p := range m.named {
		if p.name == "hem_side" {
			continue // finishedHem
		}
		s, off := own.nearest(p.at)
		if off > onLine && (off > roundedOff || !roundable(p.name)) || s <= same || s >= own.long()-same || m.atCorner(p) {
			continue
		}
		mine := &stop{s: s, on: own.at(s), of: p.at, at: m.grid.spot(p.at)}
		n := node{name: plainName(p.name)}
		if off > onLine {
			n.round = off
		}
		other := m.partner(own, mine, r.line(1-m.own()))
		if m.own() == lineCut {
			n.cut, n.stitch = mine, other
		} else {
			n.cut, n.stitch = other, mine
		}
		out = append(out, n)
	}
	return out
}

// atCorner says whether the point lies at a corner between two runs of the
// line that it belongs to.
func (m *marking) atCorner(p namedPoint) bool {
	for i := range m.runs {
		if l := m.runs[i].line(m.own()); !l.empty() && l.end().Dist(p.at) <= same {
			return true
		}
	}
	return false
}

// partner is the stop on the other line at the level, or at the distance out,
// of this one's mark; nil if that line does not come there.
func (m *marking) partner(l line, s *stop, other line) *stop {
	if other.empty() {
		return nil
	}
	d := l.leaning(s.s)
	upright := math.Abs(d.X) > math.Abs(d.Y) // goes across: share the distance out
	return m.crossing(other, s, upright)
}

func (m *marking) crossing(other line, s *stop, upright bool) *stop {
	y := s.at.Y
	if upright {
		y = s.at.X
	}
	var best *stop
	for _, c := range other.crossings(y, upright) {
		on := other.at(c)
		t := &stop{s: c, on: on, of: on, at: m.grid.spot(on)}
		if best == nil || on.Dist(s.on) < best.on.Dist(s.on) {
			best = t
		}
	}
	return best
}

// corners are the corners inside a run that have no name: the top of the
// opening, a blunted corner of the cut line.
func (m *marking) corners(r *run, known []node) []node {
	var out []node
	for which := lineCut; which <= lineStitch; which++ {
		l := r.line(which)
		for i := 1; i < len(l.pts)-1; i++ {
			if !l.corner[i] || l.s[i] < 0.5 || l.s[i] > l.long()-0.5 {
				continue
			}
			if taken(known, which, l.s[i]) {
				continue
			}
			s := &stop{s: l.s[i], on: l.pts[i], of: l.pts[i], at: m.grid.spot(l.pts[i])}
			n := node{name: "corner"}
			if r.edge == "centre_back" {
				n.name = "opening"
			}
			if which == lineCut {
				n.cut = s
			} else {
				n.stitch = s
			}
			out = append(out, n)
		}
	}
	return out
}

// taken says whether a node has a place near length s of the line.
func taken(known []node, which int, s float64) bool {
	for i := range known {
		if k := known[i].on(which); k != nil && math.Abs(k.s-s) < roundedOff {
			return true
		}
	}
	return false
}

// hemSide is the named end of the side at the finished hem, where it lies on
// this run: a panel in the middle of a front has none.
func (m *marking) hemSide(r *run) (geom.Point, bool) {
	p, ok := m.sheet.Point(m.piece.ID, "hem_side")
	if !ok {
		return p, false
	}
	_, off := r.line(m.own()).nearest(p)
	return p, off <= roundedOff
}

// finishedHem is the row of the finished hem at the end of a side: there the
// stitching line turns its corner, while the cutting line runs on to the raw
// edge and has its corner, which stays in last, further down.
func (m *marking) finishedHem(r *run, last *node) (node, bool) {
	if last.stitch == nil || last.cut == nil {
		return node{}, false
	}
	level := *last.stitch
	name := last.name
	p, ok := m.hemSide(r)
	if ok {
		level.at = m.grid.spot(p)
		name = "hem side"
		if m.own() == lineStitch {
			last.stitch.at, last.stitch.of = level.at, p
		} else {
			last.stitch.at = geom.Point{X: last.stitch.at.X, Y: level.at.Y}
		}
	}
	cut := m.crossing(r.cut, &level, false)
	if cut == nil || cut.s >= r.cut.long()-m.grid.step.MM() {
		return node{}, false
	}
	if ok && m.own() == lineCut && cut.on.Dist(p) < roundedOff {
		s, _ := r.cut.nearest(p)
		cut = &stop{s: s, on: r.cut.at(s), of: p, at: level.at}
	}
	n := node{name: name, cut: cut, stitch: last.stitch}
	last.stitch, last.name = nil, "hem corner"
	return n, true
}

// legName is the leg of a dart that the ring comes to, at its first or at its
// second: down a side the upper one comes first, up the back seam of a sleeve
// the lower one.
func (m *marking) legName(second bool) string {
	if strings.HasPrefix(string(m.piece.ID), string(pattern.Sleeve)) {
		second = !second
	}
	if second {
		return "dart, lower leg"
	}
	return "dart, upper leg"
}
