package card

import (
	"fmt"

	"chalkfold/measure"
	"chalkfold/pattern"
)

// proven are the edges that are measured along the chalk before the cloth is
// cut.
var proven = []string{"shoulder", "armhole", "side", "hem"}

// proofs are the lengths of the piece's own edges on the stitching line, and
// how much the rounded marks may make them differ.
func (m *marking) proofs(rows []Row) []Proof {
	darted := m.sides() > 1
	var out []Proof
	for _, edge := range proven {
		nth := 0
		for k := range m.runs {
			r := &m.runs[k]
			if r.edge != edge || r.stitch.empty() {
				continue
			}
			what := edge
			if edge == "side" && darted {
				what = []string{"side above the dart", "side under the dart"}[min(nth, 1)]
			}
			nth++
			var l measure.Length
			for _, e := range r.edges {
				l += e.Length()
			}
			off := measure.Length(chalked(rows, k, m.runs)) - l
			out = append(out, Proof{
				What: what, Length: l,
				Within: max((max(off, -off) + m.grid.step/4).Up(m.grid.step), m.grid.step),
			})
		}
	}
	return out
}

func (m *marking) sides() int {
	n := 0
	for i := range m.runs {
		if m.runs[i].edge == "side" {
			n++
		}
	}
	return n
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
		if !ok1 || !ok2 {
			continue
		}
		for j := range p.Proofs {
			p.Proofs[j].Other = agreement(p.Proofs[j].What, mine, theirs, g)
		}
	}
}

func agreement(what string, mine, theirs *pattern.Piece, g grid) string {
	name := string(theirs.ID)
	both := func(edge string) (measure.Length, measure.Length) { return mine.Along(edge), theirs.Along(edge) }
	switch what {
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
	if len(mine.Darts) > 0 {
		folded = fmt.Sprintf("with the part above it %s; ", g.tape(m))
	}
	if len(theirs.Darts) > 0 {
		return fmt.Sprintf("%s%s %s, its dart folded", folded, name, g.tape(t))
	}
	return fmt.Sprintf("%s%s %s", folded, name, g.tape(t))
}
