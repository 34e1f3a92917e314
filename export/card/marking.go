package card

import (
	"strings"

	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// marking works one piece out.
type marking struct {
	sheet *pattern.Sheet
	piece *pattern.Piece
	grid  grid
	runs  []run
	named []namedPoint

	rounding, stray float64
}

type namedPoint struct {
	name string
	at   geom.Point
}

const (
	// same is how near a corner of the outline and a named point must lie to
	// be one place.
	same = 1.0
	// roundedOff is how far a named corner may lie off the line that was
	// drawn round it (the waist: 2 mm on the most nipped of real bodies).
	roundedOff = 5.0
	// onLine is how far a point may lie from the line it is on.
	onLine = 0.05
)

// roundable are the named corners of a side that is drawn rounded past them.
func roundable(name string) bool { return name == "waist" || name == "hip" || name == "knee" }

// node is a place that gets a row whatever the curve needs: a corner, a named
// point, or both. Its place on one of the lines may be missing.
type node struct {
	name        string
	cut, stitch *stop
	aside       [2]bool // of lineCut, lineStitch
	round       float64 // how far the named corner is off the line drawn
}

const (
	lineCut = iota
	lineStitch
)

func (n *node) on(which int) *stop {
	if which == lineCut {
		return n.cut
	}
	return n.stitch
}

func (r *run) line(which int) line {
	if which == lineCut {
		return r.cut
	}
	return r.stitch
}

// onCentre says whether the run closes the ring along the fold or centre line.
func (r *run) onCentre() bool { return r.edge == "fold" || r.edge == "centre_back" }

// own is the line on which the named points lie: where the allowance is part
// of the figure, the cutting line.
func (m *marking) own() int {
	if m.piece.Included {
		return lineCut
	}
	return lineStitch
}

func (m *marking) make() Piece {
	p := m.piece
	m.runs = runs(p)
	m.named = m.points()
	out := Piece{ID: p.ID, Title: p.Title, Number: p.Number, Of: p.Of, Cut: cutting(p)}
	out.Rows = m.rows()
	for i := range out.Rows {
		r := &out.Rows[i]
		if r.Cut != nil && !r.AsideCut {
			out.Cutting++
		}
		if r.Stitch != nil && !r.AsideStitch {
			out.Sewing++
		}
	}
	out.Levels = levels(out.Rows)
	out.Set = setting(p, m.sheet.Job, out.Rows, m.grid)
	out.Darts = m.darts()
	out.Notches = notches(p, m.grid)
	out.Grain = grain(p, m.sheet.Job)
	out.Proofs = m.proofs(out.Rows)
	return out
}

// points are the named points of the finished draft that can lie on an
// outline; those of the dart have rows of their own.
func (m *marking) points() []namedPoint {
	var out []namedPoint
	for _, k := range m.sheet.Marks {
		if k.Kind != pattern.MarkPoint || k.Gone != 0 || k.Piece != m.piece.ID ||
			strings.HasPrefix(k.Name, "dart") || k.Name == "bust_point" {
			continue
		}
		out = append(out, namedPoint{k.Name, k.At})
	}
	return out
}

// nameAt is the named point at p, if there is one.
func (m *marking) nameAt(p geom.Point) (namedPoint, bool) {
	best, found := namedPoint{}, false
	for _, n := range m.named {
		if d := n.at.Dist(p); d <= same && (!found || d < best.at.Dist(p)) {
			best, found = n, true
		}
	}
	return best, found
}

// A point that a pinch, a turned dart or a fold moved keeps its name: the piece
// has it but once.
func plainName(name string) string {
	for _, done := range []string{"_pinched", "_turned", "_folded"} {
		name = strings.TrimSuffix(name, done)
	}
	switch name {
	case "armhole_mid":
		return "armhole middle"
	}
	return strings.ReplaceAll(name, "_", " ")
}

// corner is the stop at an end of a line.
func (m *marking) corner(l line, end bool) *stop {
	if l.empty() {
		return nil
	}
	p, s := l.start(), 0.0
	if end {
		p, s = l.end(), l.long()
	}
	return &stop{s: s, on: p, of: p, at: m.grid.spot(p)}
}
