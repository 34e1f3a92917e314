package linear

import (
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/ui/text"
)

var cuts = map[pattern.CutKind]text.ID{pattern.OnFold: text.HearCutFold, pattern.Pair: text.HearCutPair, pattern.Single: text.HearCutOne}

// sayDraft tells the drawing in sentences: each piece in one, or a piece by its
// name all round.
func (r *room) sayDraft(name string) {
	sheet := r.d.Sheet()
	if len(sheet.Pieces) == 0 {
		r.say(text.HearNotWhole)
		return
	}
	if name == "" {
		for i := range sheet.Pieces {
			r.pieceLine(&sheet.Pieces[i])
		}
		r.say(text.HearSayOne)
		return
	}
	names := make([][]string, len(sheet.Pieces))
	var titles []string
	for i := range sheet.Pieces {
		p := &sheet.Pieces[i]
		names[i] = []string{p.Title, spaced(string(p.ID))}
		titles = append(titles, strings.ToLower(r.d.Words.Pass(p.Title)))
	}
	at, _, among := match(name, names)
	switch {
	case strings.EqualFold(name, "all"):
		for i := range sheet.Pieces {
			r.around(sheet, &sheet.Pieces[i])
		}
	case at >= 0:
		r.around(sheet, &sheet.Pieces[at])
	case len(among) > 1:
		for _, i := range among {
			r.around(sheet, &sheet.Pieces[i])
		}
	default:
		r.say(text.HearNoPiece, short(name), r.d.Words.List(titles))
	}
}

// pieceLine is a piece with how it is cut and how large it is.
func (r *room) pieceLine(p *pattern.Piece) {
	u, b := r.d.Unit(), p.Stitch.Bounds()
	r.say(text.HearAround, r.d.Words.Pass(p.Title), r.d.Words.Say(cuts[p.Cut]), u.Say(measure.Length(b.Height())), u.Say(measure.Length(b.Width())))
}

// around goes round a piece, from one named point to the next, by tape.
func (r *room) around(sheet *pattern.Sheet, p *pattern.Piece) {
	u := r.d.Unit()
	r.pieceLine(p)
	if len(p.Edges) == 0 {
		return
	}
	start := p.Edges[0].Stitch.Start()
	name := r.pointAt(sheet, p, start)
	if name == "" {
		name = r.d.Words.Pass(spaced(p.Edges[0].Name))
	}
	r.say(text.HearFrom1, name, r.at(p.ID, start.X, start.Y))
	for _, e := range p.Edges {
		shape, end := text.HearStraight, e.Stitch.End()
		for _, s := range e.Stitch {
			if s.Curved {
				shape = text.HearCurved
			}
		}
		title, long, at := capital(r.d.Words.Pass(spaced(e.Name))), u.Say(e.Length()), r.at(p.ID, end.X, end.Y)
		if to := r.pointAt(sheet, p, end); to != "" {
			r.say(text.HearEdgeTo, title, r.d.Words.Say(shape), long, to, at)
		} else {
			r.say(text.HearEdgeFree, title, r.d.Words.Say(shape), long, at)
		}
	}
	r.tellDarts(p)
}

func (r *room) tellDarts(p *pattern.Piece) {
	u := r.d.Unit()
	for i, d := range p.Darts {
		switch {
		case d.Fisheye && i%2 == 0:
			r.say(text.HearFisheye, u.Say(d.Intake))
		case !d.Fisheye:
			r.say(text.HearDartLegs, u.Say(d.Intake), u.Tape(apart(d.Tip, d.Legs[0])), u.Say(apart(d.Tip, d.Legs[1])))
		}
	}
}

func apart(a, b geom.Point) measure.Length { return measure.Length(a.Dist(b)) }

// sameSpot is how near a mark must lie to name a corner, in millimetres.
const sameSpot = 0.5

// pointAt names the mark that lies at a corner of a piece: one of its own, or
// of the piece that it is traced from; empty where none does.
func (r *room) pointAt(sheet *pattern.Sheet, p *pattern.Piece, at geom.Point) string {
	for _, own := range [...]bool{true, false} {
		for i := range sheet.Marks {
			m := &sheet.Marks[i]
			near := m.Kind == pattern.MarkPoint && m.Gone == 0 && m.At.Dist(at) < sameSpot
			if near && (m.Piece == p.ID || !own && strings.HasPrefix(string(p.ID), string(m.Piece)+"_")) {
				return r.point(m.Name)
			}
		}
	}
	return ""
}

// levels are names of marks that are levels too; as points they are said so.
var levels = map[string]bool{"underarm": true, "waist": true, "hip": true, "knee": true}

// points are marks that are called otherwise by who draws.
var points = map[string]string{
	"armhole_mid": "middle of the armhole", "hem_side": "hem at the side", "hem_centre": "hem at the centre",
	"dart_upper": "upper leg of the dart at the seam", "dart_lower": "lower leg of the dart at the seam", "dart_tip": "tip of the dart", "dart_cap": "cap of the dart",
}

// point is the name of a mark as it is said.
func (r *room) point(name string) string {
	switch words, ok := points[name]; {
	case ok:
		return r.d.Words.Pass(words)
	case levels[name]:
		return r.d.Words.Say(text.HearPointOf, r.d.Words.Pass(name))
	}
	return r.d.Words.Pass(spaced(name))
}

// spoiltSays tells what a spoilt draft looks like: the pieces that are not as
// they were, and of front and back the other one too, edges and how far outside
// each is cut. What is odd is hers to find.
func (r *room) spoiltSays(sound, spoilt *pattern.Sheet) {
	r.say(text.HearSpoilt)
	changed := func(p *pattern.Piece) bool {
		was, ok := sound.Piece(p.ID)
		return !ok || !sameLines(was, p)
	}
	main := false
	for i := range spoilt.Pieces {
		p := &spoilt.Pieces[i]
		main = main || r.mainPiece(p.ID) && changed(p)
	}
	told := map[pattern.PieceID]bool{}
	for i := range spoilt.Pieces {
		p := &spoilt.Pieces[i]
		if r.mainPiece(p.ID) {
			told[p.ID] = main
			continue
		}
		if !main && changed(p) {
			told[p.ID] = true
			for _, id := range [...]pattern.PieceID{pattern.Front, pattern.Back} {
				told[id] = told[id] || strings.HasPrefix(string(p.ID), string(id)+"_")
			}
		}
	}
	for i := range spoilt.Pieces {
		if p := &spoilt.Pieces[i]; told[p.ID] {
			r.pieceLine(p)
			r.tellEdges(p)
		}
	}
}

func (r *room) mainPiece(id pattern.PieceID) bool { return id == pattern.Front || id == pattern.Back }

// sameLines says that two states of a piece have the same outlines.
func sameLines(a, b *pattern.Piece) bool {
	same := func(p, q geom.Path) bool {
		if len(p) != len(q) {
			return false
		}
		for i := range p {
			if p[i] != q[i] {
				return false
			}
		}
		return true
	}
	return same(a.Stitch, b.Stitch) && same(a.CutLine, b.CutLine)
}

// tellEdges says how long each edge is and how far outside the seam line it is
// cut, read off the drawing.
func (r *room) tellEdges(p *pattern.Piece) {
	u := r.d.Unit()
	for _, e := range p.Edges {
		name := capital(r.d.Words.Pass(spaced(e.Name)))
		far := measure.Length(0)
		if len(e.Cut) > 0 && e.Stitch.Length() > 0 {
			mid, _ := e.Stitch.At(e.Stitch.Length() / 2)
			_, _, d := e.Cut.Nearest(mid)
			far = measure.Length(d)
		}
		switch {
		case e.Name == "dart":
		case u.Tape(far) == zero(u):
			r.say(text.HearEdgeNet, name, u.Say(e.Length()))
		default:
			r.say(text.HearOutside, name, u.Tape(e.Length()), u.Say(far))
		}
		switch e.Name {
		case "hem":
			r.say(text.HearHemCut, u.Say(measure.Length(e.Cut.Length())))
		case "shoulder":
			if fall := measure.Length(e.Stitch.End().Y - e.Stitch.Start().Y); fall > 0 {
				r.say(text.HearFalls, u.Say(fall))
			}
		}
	}
	r.tellDarts(p)
	if top := measure.Length(-p.CutLine.Bounds().Min.Y); u.Tape(top) != zero(u) {
		r.say(text.HearTop, u.Say(top))
	} else {
		r.say(text.HearNoTop)
	}
}
