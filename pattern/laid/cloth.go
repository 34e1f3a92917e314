package laid

import (
	"slices"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/lay"
)

// Main is the cloth that pieces are cut from where nothing else is said.
const Main = "main"

// Names are the cloths that pieces of a sheet are cut from, the main one first.
func Names(s *pattern.Sheet) []string {
	var out []string
	add := func(name string) {
		if name == "" {
			name = Main
		}
		if !slices.Contains(out, name) {
			out = append(out, name)
		}
	}
	for i := range s.Pieces {
		add(s.Pieces[i].Cloth)
	}
	for i := range s.Pieces {
		for _, a := range s.Pieces[i].Also {
			add(a)
		}
	}
	return out
}

// ClothOf is a cloth of a job with what is usual where she said nothing; named
// says that its width is hers.
func ClothOf(job pattern.Job, name string) (c pattern.Cloth, named bool) {
	c, _ = job.Cloth(name)
	usual := lay.DefaultCloth(name, job.Unit)
	c.Name = name
	named = c.Width > 0
	if !named {
		c.Width = usual.Width
	}
	if c.Edges == 0 {
		c.Edges = usual.Edges
	}
	if c.Fold == "" {
		c.Fold = usual.Fold
	}
	if c.Step == 0 {
		c.Step = usual.Step
	}
	return c, named
}

// need is what the pieces of a sheet that are cut from a cloth ask by hand.
func need(s *pattern.Sheet, name string) (lay.Need, bool) {
	part := pattern.Sheet{Known: s.Known, Complete: s.Complete}
	for i := range s.Pieces {
		p := s.Pieces[i]
		switch {
		case p.Cloth == name || p.Cloth == "" && name == Main:
		case slices.Contains(p.Also, name):
			p.CutLine = p.Stitch
		default:
			continue
		}
		part.Pieces = append(part.Pieces, p)
	}
	return lay.NeedOf(&part)
}

// Hand is the answer of the hand rule for the cloth at one width; false where
// the rule has none.
func (w Work) Hand(width measure.Length) (lay.Hand, bool) {
	var all lay.Need
	for _, s := range w.Sheets {
		n, ok := need(s, w.Cloth.Name)
		if !ok {
			return lay.Hand{}, false
		}
		all = all.And(n)
	}
	c := w.Cloth
	c.Width = width
	h := lay.Rule(all, c)
	return h, h.Lengths > 0
}
