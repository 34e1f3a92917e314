package lesson

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/text"
)

// Figure is one length of two drafts of a body: by another method, and
// measured.
type Figure struct {
	Group text.ID
	Title text.ID
	Of    text.ID // the piece, where the title has a slot for it
	Other measure.Length
	Tape  measure.Length
	Known [2]bool // each of them; what waits is not
}

// reading reads one length off a sheet.
type reading func(s *pattern.Sheet) (measure.Length, bool)

// Compared puts two drafts of the same body side by side in numbers, as sewn:
// where the other method is generous and where it pinches.
func Compared(other, tape *pattern.Sheet) []Figure {
	var out []Figure
	add := func(group, title, of text.ID, read reading) {
		f := Figure{Group: group, Title: title, Of: of}
		f.Other, f.Known[0] = read(other)
		f.Tape, f.Known[1] = read(tape)
		out = append(out, f)
	}
	add(text.CompareLevels, text.CompareDepth, "", levelOf(pattern.Front, "underarm"))
	for _, g := range []struct {
		title text.ID
		name  string
	}{
		{text.CompareNeckRing, "neck"},
		{text.CompareArmRing, "armhole"},
		{text.CompareBust, "bust"},
		{text.CompareWaist, "waist"},
		{text.CompareHip, "hip"},
		{text.CompareHem, "hem"},
	} {
		add(text.CompareGirths, g.title, "", func(s *pattern.Sheet) (measure.Length, bool) { return s.Girth(g.name) })
	}
	for _, e := range []struct {
		title text.ID
		name  string
	}{{text.CompareSide, "side"}, {text.CompareShoulder, "shoulder"}} {
		add(text.CompareEdges, e.title, text.CompareFront, alongOf(pattern.Front, e.name))
		add(text.CompareEdges, e.title, text.CompareBack, alongOf(pattern.Back, e.name))
	}
	add(text.CompareEdges, text.CompareDart, "", alongOf(pattern.Front, "dart_intake"))
	add(text.CompareRoom, text.CompareEaseBust, "", easeOf("bust", measure.BustGirth))
	add(text.CompareRoom, text.CompareEaseWaist, "", easeOf("waist", measure.WaistGirth))
	add(text.CompareRoom, text.CompareEaseHip, "", easeOf("hip", measure.HipGirth))
	return out
}

// Rests names the measurements that drafts rest on without her tape: proposals,
// in taking order, each once.
func Rests(sheets ...*pattern.Sheet) []string {
	var out []string
	for _, m := range measure.All() {
		proposed := false
		for _, s := range sheets {
			f, ok := s.Figure(m.ID)
			proposed = proposed || ok && f.Proposed
		}
		if proposed {
			out = append(out, m.Term)
		}
	}
	return out
}

func alongOf(p pattern.PieceID, name string) reading {
	return func(s *pattern.Sheet) (measure.Length, bool) {
		dim, ok := s.SewnDimension(p, name)
		return dim.Length, ok
	}
}

func levelOf(p pattern.PieceID, name string) reading {
	return func(s *pattern.Sheet) (measure.Length, bool) {
		at, ok := s.SewnPoint(p, name)
		return measure.Length(at.Y), ok
	}
}

// easeOf is what a finished girth has more than the body.
func easeOf(name string, id measure.ID) reading {
	return func(s *pattern.Sheet) (measure.Length, bool) {
		g, ok := s.Girth(name)
		f, also := s.Figure(id)
		return g - f.Value, ok && also
	}
}

// Name is what the figure is called.
func (f Figure) Name(words text.Catalogue) string {
	if f.Of == "" {
		return words.Say(f.Title)
	}
	return words.Say(f.Title, words.Say(f.Of))
}

// Apart is by how much the other has more, by tape with its sign; empty where one
// of them waits.
func (f Figure) Apart(u measure.Unit) string {
	d := f.Other - f.Tape
	switch apart := u.Tape(d); {
	case !f.Known[0] || !f.Known[1]:
		return ""
	case d > 0 && apart != u.Tape(0):
		return "+" + apart
	default:
		return apart
	}
}
