package card

import (
	"fmt"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
)

// proven are the edges that are measured along the chalk before the cloth is
// cut.
var proven = []string{"shoulder", "armhole", "side", "hem"}

// proofs are the lengths of the piece's own edges on the stitching line, and
// how much the rounded marks may make them differ. The parts of an edge that a
// dart interrupts are added up; of a side the part under the dart is measured
// by itself, since the part above it is short.
func (m *marking) proofs(rows []Row) []Proof {
	var out []Proof
	for _, edge := range proven {
		var parts []Proof
		for k := range m.runs {
			r := &m.runs[k]
			if r.edge != edge || r.stitch.empty() {
				continue
			}
			var l measure.Length
			for _, e := range r.edges {
				l += e.Length()
			}
			off := measure.Length(chalked(rows, k, m.runs)) - l
			parts = append(parts, Proof{What: edge, Length: l, Within: max(off, -off)})
		}
		switch {
		case edge == "side" && len(parts) == 2:
			parts[0].What, parts[1].What = "side above the dart", "side under the dart"
		case len(parts) > 1:
			for _, p := range parts[1:] {
				parts[0].Length += p.Length
				parts[0].Within += p.Within
			}
			parts[0].What = edge + ", its parts together"
			parts = parts[:1]
		}
		for _, p := range parts {
			p.Within = max((p.Within + m.grid.step/4).Up(m.grid.step), m.grid.step)
			out = append(out, p)
		}
	}
	return out
}

// parted says that a dart interrupts an edge of a piece.
func parted(p *pattern.Piece, edge string) bool {
	seen, dart := false, false
	for _, e := range p.Edges {
		switch {
		case e.Name == edge && dart:
			return true
		case e.Name == edge:
			seen = true
		case e.Name == "dart":
			dart = seen
		}
	}
	return false
}

// chalked is the length of run k as its stitching marks are joined: what the
// tape will read on the cloth.
func chalked(rows []Row, k int, runs []run) float64 {
	// The rows of run k are the ones that end it, counted over the ring: a row
	// belongs to the run it is joined along.
	at, sum := 0, 0.0
	var last *Place
	for i := range rows {
		r := &rows[i]
		if i > 0 && r.Edge != runs[at].edge {
			at++
		}
		if r.Stitch == nil || r.AsideStitch {
			continue
		}
		if at == k && last != nil && i > 0 {
			sum += placePoint(*last).Dist(placePoint(*r.Stitch))
		}
		last = r.Stitch
	}
	return sum
}

// agree adds to every proof what it must agree with on the other piece.
func agree(c *Card, s *pattern.Sheet, g grid) {
	for i := range c.Pieces {
		p := &c.Pieces[i]
		other := pattern.Back
		if p.ID == pattern.Back {
			other = pattern.Front
		} else if p.ID != pattern.Front {
			continue
		}
		mine, ok1 := s.Piece(p.ID)
		theirs, ok2 := s.Piece(other)
		if !ok1 || !ok2 || mine.Cut == pattern.Single || theirs.Cut == pattern.Single {
			continue // cut apart for her two sides: each piece is proved by itself
		}
		for j := range p.Proofs {
			p.Proofs[j].Other = agreement(p.Proofs[j].What, mine, theirs, g)
		}
	}
}

func agreement(what string, mine, theirs *pattern.Piece, g grid) string {
	name := string(theirs.ID)
	both := func(edge string) (measure.Length, measure.Length) { return mine.Along(edge), theirs.Along(edge) }
	switch edge, _, _ := strings.Cut(what, ","); edge {
	case "shoulder":
		_, t := both("shoulder")
		return fmt.Sprintf("%s %s", name, g.tape(t))
	case "armhole":
		m, t := both("armhole")
		return fmt.Sprintf("%s %s, together %s", name, g.tape(t), g.tape(m+t))
	case "hem":
		m, t := both("hem")
		return fmt.Sprintf("%s %s, all round %s", name, g.tape(t), g.tape(2*(m+t)))
	case "side above the dart":
		return ""
	}
	m, t := both("side")
	folded := ""
	if parted(mine, "side") {
		folded = fmt.Sprintf("with the part above it %s; ", g.tape(m))
	}
	if parted(theirs, "side") {
		return fmt.Sprintf("%s%s %s, its dart folded", folded, name, g.tape(t))
	}
	return fmt.Sprintf("%s%s %s", folded, name, g.tape(t))
}
