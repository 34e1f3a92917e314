package shop

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/lay"
)

// Main is the cloth that pieces are cut from where nothing else is said.
const Main = "main"

// Buy is how much of one cloth to buy at one width.
type Buy struct {
	Cloth pattern.Cloth
	Named bool // the width is the session's own, not the usual one
	lay.Hand
}

// usualWidths are taken where the session has no width, main cloth first:
// common practice, no source.
var usualWidths = map[measure.Unit][2]measure.Length{
	measure.In: {58 * measure.Inch, 36 * measure.Inch},
	measure.Cm: {150 * measure.Centimetre, 90 * measure.Centimetre},
	measure.Mm: {150 * measure.Centimetre, 90 * measure.Centimetre},
}

// shopWidths are the widths in which cloth lies in shops: common practice, no
// source.
var shopWidths = map[measure.Unit][]measure.Length{
	measure.In: {36 * measure.Inch, 44 * measure.Inch, 54 * measure.Inch, 58 * measure.Inch, 60 * measure.Inch},
	measure.Cm: metric,
	measure.Mm: metric,
}

var metric = []measure.Length{
	90 * measure.Centimetre, 112 * measure.Centimetre, 115 * measure.Centimetre, 140 * measure.Centimetre, 150 * measure.Centimetre,
}

// Of is what to buy of one cloth by the hand rule; false where no piece is cut
// from it or the draft is not complete.
func Of(s *pattern.Sheet, name string, u measure.Unit) (Buy, bool) {
	need, ok := needOf(s, name)
	if !ok {
		return Buy{}, false
	}
	c, named := s.Job.Cloth(name)
	if !named || c.Width <= 0 {
		named = false
		c.Name, c.Width = name, usualWidths[u][0]
		if name != Main {
			c.Width = usualWidths[u][1]
		}
	}
	return Buy{c, named, lay.Rule(need, c)}, true
}

// Widths is what to buy of a cloth at the widths in shops, those alone that
// are wide enough.
func Widths(s *pattern.Sheet, name string, u measure.Unit) []Buy {
	need, ok := needOf(s, name)
	if !ok {
		return nil
	}
	c, _ := s.Job.Cloth(name)
	c.Name = name
	var out []Buy
	for _, w := range shopWidths[u] {
		c.Width = w
		if h := lay.Rule(need, c); h.Lengths > 0 {
			out = append(out, Buy{c, false, h})
		}
	}
	return out
}

func needOf(s *pattern.Sheet, name string) (lay.Need, bool) {
	part := pattern.Sheet{Known: s.Known, Complete: s.Complete}
	for _, p := range s.Pieces {
		if cutFrom(p, name) {
			part.Pieces = append(part.Pieces, p)
		}
	}
	return lay.NeedOf(&part)
}

func cutFrom(p pattern.Piece, cloth string) bool {
	if p.Cloth == cloth || p.Cloth == "" && cloth == Main {
		return true
	}
	for _, a := range p.Also {
		if a == cloth {
			return true
		}
	}
	return false
}

// Others are the further cloths that pieces are cut from, in the order in
// which they come.
func Others(s *pattern.Sheet) []string {
	var out []string
	for i := range s.Pieces {
		all := s.Pieces[i].Also
		if c := s.Pieces[i].Cloth; c != "" && c != Main {
			all = append([]string{c}, all...)
		}
		for _, a := range all {
			known := false
			for _, o := range out {
				known = known || o == a
			}
			if !known {
				out = append(out, a)
			}
		}
	}
	return out
}

// Notions are the small things, a line each. What is no length of the draft
// is common practice, no source.
func Notions(s *pattern.Sheet, u measure.Unit) []string {
	var list []string
	if z := s.Length("zip_length"); z > 0 {
		list = append(list, "zip, "+u.Say(z)+"; hook and eye, size 1")
	}
	list = append(list, "thread, 200 m")
	if l := backShoulder(s); l > 0 {
		list = append(list, "stay tape for two shoulders, "+u.Say(2*l)+" and some to spare")
	}
	if hem, ok := s.Girth("hem"); ok {
		list = append(list, "seam binding for the hem, "+u.Say(hem))
	}
	return append(list, "machine needle: 80 for middling cloth, 70 for light, 90 for heavy")
}

// backShoulder is the shoulder seam of the back, its panels together.
func backShoulder(s *pattern.Sheet) measure.Length {
	var sum measure.Length
	for i := range s.Pieces {
		if id := s.Pieces[i].ID; id == pattern.Back || id == pattern.BackSide {
			sum += s.Pieces[i].Along("shoulder")
		}
	}
	return sum
}
