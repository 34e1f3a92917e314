package card

import (
	"fmt"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
)

// isLining says that a piece is the lining of another one.
func isLining(p *pattern.Piece) bool { return strings.HasSuffix(string(p.ID), "_lining") }

// tracedLining says how a lining is chalked from the piece that it lines: the
// same marks, but for its hem, its upper edge and its allowances.
func tracedLining(s *pattern.Sheet, p *pattern.Piece, g grid) Traced {
	t := Traced{Title: p.Title, Number: p.Number, Of: p.Of, Cut: cutting(p) + ", from the lining cloth"}
	from := strings.ToLower(strings.TrimSuffix(p.Title, ", lining"))
	t.Says = append(t.Says, fmt.Sprintf("Chalk the stitching line of the %s once more, by the same marks.", from))
	if p.Along("facing") > 0 {
		t.Says = append(t.Says, "Begin it at the inner edge of the facing: lay that on by its side and its centre and trace its outer edge.")
	}
	if main, ok := s.Piece(pattern.PieceID(strings.TrimSuffix(string(p.ID), "_lining"))); ok {
		if by := higher(main, p); by > 0 {
			t.Says = append(t.Says, fmt.Sprintf("Hem: %s above that of the %s all along.", g.tape(by), from))
		}
		if len(main.EdgesNamed("hem_extension")) > 0 {
			t.Says = append(t.Says, "Leave out what is added for the opening of the hem: the centre runs straight on to the hem.")
		}
	}
	pressed := map[string]bool{}
	for _, d := range p.Darts {
		if !pressed[d.Pressed] {
			pressed[d.Pressed] = true
			t.Says = append(t.Says, fmt.Sprintf("Darts by the same marks; cut their folded ends with the dart pressed %s.", d.Pressed))
		}
	}
	for _, n := range p.Notches {
		if n.Name == "open below" {
			t.Says = append(t.Says, fmt.Sprintf("Clip the %s %s: it stays open below.", strings.ReplaceAll(n.Edge, "_", " "), g.at(placeOf(g.spot(n.At)))))
		}
	}
	t.Says = append(t.Says, "Allowances: "+allowances(p, g)+".")
	return t
}

// higher is how far above the hem of its piece a lining ends, at the centre or
// the front of its ring.
func higher(main, lining *pattern.Piece) measure.Length {
	a, b := main.EdgesNamed("hem"), lining.EdgesNamed("hem")
	if len(a) == 0 || len(b) == 0 {
		return 0
	}
	_, _, far := a[0].Stitch.Nearest(b[0].Stitch.Start())
	return measure.Length(far)
}
