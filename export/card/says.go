package card

import (
	"fmt"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// caution is on every card. Common practice, no source.
const caution = "Try it in cheap cloth first. Shears closed when laid down, pins counted, iron on its heel; the care label of the cloth goes before this card."

// says is what she must know before the first mark.
func says(s *pattern.Sheet, g grid, c Card) []string {
	var out []string
	out = append(out, "For marking straight on folded cloth with a tape and chalk; no printer.")
	count := make([]string, len(c.Pieces))
	for i, p := range c.Pieces {
		count[i] = fmt.Sprintf("%s %d to cut, %d to sew", strings.ToLower(p.Title), p.Cutting, p.Sewing)
	}
	out = append(out,
		fmt.Sprintf("%d marks: %s. Each is a whole %s; the largest rounding made is %s. Joined mark to mark, no line strays more than %s from the drafted one (allowed: %s).",
			c.Marks, strings.Join(count, "; "), g.say(g.step), g.fine(c.Rounding), g.fine(c.Stray), g.say(g.bound)),
		"Order: working edge and top line; all levels, ticked in one pull of the tape; at each level square out and mark the distances; then the lines, ruled or curved as the row says; the dart last.",
	)
	out = append(out, included(s, g)...)
	for _, f := range s.Findings {
		if f.Verdict == pattern.Fail {
			out = append(out, "Do not cut yet, truing fails: "+f.Title+". "+f.Says.In(g.unit))
		}
	}
	for _, f := range s.Proposed() {
		out = append(out, fmt.Sprintf("Proposed, not measured: %s %s. Measure it if you can.", term(f.ID), g.say(f.Value)))
	}
	return out
}

// term is what a measurement is called.
func term(id measure.ID) string {
	if m, ok := measure.Find(id); ok {
		return m.Term
	}
	return plainName(string(id))
}

// included says where the allowances are, and by thumb that there is no ease
// unless the sides are sewn with half of theirs.
func included(s *pattern.Sheet, g grid) []string {
	var in *pattern.Piece
	for i := range s.Pieces {
		if !isTraced(&s.Pieces[i]) {
			in = &s.Pieces[i]
			break
		}
	}
	if in == nil {
		return nil
	}
	if !in.Included {
		return []string{"The named points are those of the draft, on the stitching line; the cutting line has the allowances: " + allowances(in, g) + "."}
	}
	out := []string{"By thumb the allowance is in the figure: the named points lie on the cutting line."}
	cut, ok1 := s.Point(in.ID, "underarm")
	sewn, ok2 := s.SewnPoint(in.ID, "underarm")
	if full := measure.Length(cut.X - sewn.X); ok1 && ok2 && full > 0 {
		out = append(out, fmt.Sprintf("Sew the sides with %s, not %s, or there is no ease.", g.tape(full/2), g.tape(full)))
	}
	return out
}

// otherWaist shows at the waist the level of the other piece, or a
// learner will correct the one that is lower.
func (m *marking) otherWaist(row *Row) {
	other := pattern.Back
	if m.piece.ID == pattern.Back {
		other = pattern.Front
	} else if m.piece.ID != pattern.Front {
		return
	}
	here, ok1 := m.sheet.Point(m.piece.ID, "waist")
	there, ok2 := m.sheet.Point(other, "waist")
	if !ok1 || !ok2 {
		return
	}
	a, b := m.grid.near(here.Y), m.grid.near(there.Y)
	if a == b {
		return
	}
	row.Notes = append(row.Notes, fmt.Sprintf("%s here, %s on the %s: the dart eats the difference",
		m.grid.tape(measure.Length(a)), m.grid.tape(measure.Length(b)), other))
}

func placePoint(p Place) geom.Point { return geom.Point{X: p.Out.MM(), Y: p.Down.MM()} }
