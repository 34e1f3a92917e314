package moved

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"chalkfold/export/card"
	"chalkfold/export/leaflet"
	"chalkfold/export/pdf"
	"chalkfold/measure"
	"chalkfold/pattern"
)

// Options of a card of moved marks.
type Options struct {
	Unit measure.Unit
	Now  *card.Card // what card.Make gives for the later draft; nil: it is worked out here
}

// Write writes the marks that moved from one draft to the next as Markdown.
func Write(w io.Writer, before, after *pattern.Sheet, o Options) error {
	if err := ready(before, after); err != nil {
		return err
	}
	l := &leaflet.Leaflet{Title: "What moved", Date: after.Job.Client.Measured}
	l.Text(leaflet.For(after))
	was := card.Make(before, o.Unit)
	now := o.now(after)
	l.Text(fmt.Sprintf("Places in %s, down from the top line and out from the fold or centre line, each a whole %s, as on the chalk card. What is not listed stays.",
		leaflet.UnitWords(o.Unit), o.Unit.Say(now.Step)))
	inputs(l, before, after, o)
	some := false
	for _, p := range now.Pieces {
		some = piece(l, was, p, before, after, o.Unit) || some
	}
	for _, p := range was.Pieces {
		if !slices.ContainsFunc(now.Pieces, func(q card.Piece) bool { return q.ID == p.ID }) {
			l.Heading(1, p.Title)
			l.Text("This piece falls away.")
			some = true
		}
	}
	some = facings(l, was, now, before, after) || some
	if !some {
		l.Heading(1, "Marks")
		l.Text("No mark moves by a step of the tape: what is chalked stays.")
	}
	return l.WriteMarkdown(w)
}

func (o Options) now(after *pattern.Sheet) card.Card {
	if o.Now != nil {
		return *o.Now
	}
	return card.Make(after, o.Unit)
}

// ready refuses drafts that cannot be told apart mark by mark.
func ready(before, after *pattern.Sheet) error {
	for _, s := range []*pattern.Sheet{before, after} {
		if s == nil || !s.Complete || len(s.Pieces) == 0 {
			return &measure.Refusal{Where: "moved", Read: "a draft that is not complete", Wrong: "marks are compared only where both drafts are whole", Works: "finish both first"}
		}
	}
	if before.Garment != after.Garment || before.Method != after.Method {
		return &measure.Refusal{
			Where: "moved", Read: leaflet.Words(before.Garment+" "+before.Method) + " and " + leaflet.Words(after.Garment+" "+after.Method),
			Wrong: "these are two patterns, not one that changed", Works: "chalkfold compare tells them apart in numbers",
		}
	}
	return nil
}

// inputs lists the measures and choices that differ.
func inputs(l *leaflet.Leaflet, before, after *pattern.Sheet, o Options) {
	var rows [][]string
	for _, f := range after.Figures {
		if g, ok := before.Figure(f.ID); ok && o.Unit.Tape(g.Value) != o.Unit.Tape(f.Value) {
			rows = append(rows, []string{leaflet.Title(leaflet.Term(f.ID)), o.Unit.Tape(g.Value), o.Unit.Tape(f.Value)})
		}
	}
	for _, x := range after.Settings {
		y, ok := before.Setting(x.ID)
		if !ok || !x.Used || !x.Known() || !y.Known() {
			continue
		}
		c := pattern.Choice{Kind: x.Value.Kind}
		if a, b := leaflet.Value(c, y.Value, o.Unit), leaflet.Value(c, x.Value, o.Unit); a != b {
			rows = append(rows, []string{leaflet.Title(string(x.ID)), a, b})
		}
	}
	if len(rows) > 0 {
		l.Heading(1, "What changed")
		l.Table(pdf.Table{Heads: []string{"", "was", "is"}, Rows: rows, Right: []bool{false, true, true}})
	}
}

// piece lists the marks of one piece that moved, and its curves that changed.
func piece(l *leaflet.Leaflet, was card.Card, now card.Piece, before, after *pattern.Sheet, u measure.Unit) bool {
	i := slices.IndexFunc(was.Pieces, func(p card.Piece) bool { return p.ID == now.ID })
	if i < 0 {
		l.Heading(1, now.Title)
		l.Text("This piece is new: mark it from the chalk card.")
		return true
	}
	rows := changes(spots(was.Pieces[i], before, was.Step), spots(now, after, was.Step), u)
	curves := curvesChanged(before, after, now.ID)
	if len(rows) == 0 && len(curves) == 0 {
		return false
	}
	l.Heading(1, now.Title)
	l.Table(pdf.Table{Heads: []string{"Mark", "was down", "was out", "now down", "now out"}, Rows: rows, Right: []bool{false, true, true, true, true}})
	if len(curves) > 0 {
		l.Text("Draw anew, with the marks between from the chalk card: " + strings.Join(curves, ", ") + ".")
	}
	return true
}

// spot is a named place of a piece on one of its two lines.
type spot struct {
	name  string
	place card.Place
}

// spots are the named places of a piece in the order of the card, then its
// darts. Corners that come twice are numbered.
func spots(p card.Piece, s *pattern.Sheet, step measure.Length) []spot {
	var out []spot
	seen := map[string]int{}
	add := func(name string, at *card.Place) {
		if at == nil {
			return
		}
		if seen[name]++; seen[name] > 1 {
			name = fmt.Sprintf("%s (%d)", name, seen[name])
		}
		out = append(out, spot{name, *at})
	}
	for _, r := range p.Rows {
		if r.Name != "" {
			add(r.Name+", cut", r.Cut)
			add(r.Name+", sew", r.Stitch)
		}
	}
	if piece, ok := s.Piece(p.ID); ok {
		for _, d := range piece.Darts {
			add(d.Name+", tip", &card.Place{Down: measure.Length(d.Tip.Y).Near(step), Out: measure.Length(d.Tip.X).Near(step)})
			add(d.Name+", cap", &card.Place{Down: measure.Length(d.Cap.Y).Near(step), Out: measure.Length(d.Cap.X).Near(step)})
		}
	}
	return out
}

// changes are the rows of the places that differ, the new ones and those that
// fall away with them.
func changes(was, now []spot, u measure.Unit) [][]string {
	const none = "-"
	var rows [][]string
	find := func(list []spot, name string) (card.Place, bool) {
		i := slices.IndexFunc(list, func(s spot) bool { return s.name == name })
		if i < 0 {
			return card.Place{}, false
		}
		return list[i].place, true
	}
	for _, s := range now {
		switch old, ok := find(was, s.name); {
		case !ok:
			rows = append(rows, []string{s.name, none, none, down(s.place, u), out(s.place, u)})
		case old != s.place:
			rows = append(rows, []string{s.name, down(old, u), out(old, u), down(s.place, u), out(s.place, u)})
		}
	}
	for _, s := range was {
		if _, ok := find(now, s.name); !ok {
			rows = append(rows, []string{s.name, down(s.place, u), out(s.place, u), none, none})
		}
	}
	return rows
}

func down(p card.Place, u measure.Unit) string {
	if p.Down < 0 {
		return "up " + u.Tape(-p.Down)
	}
	return u.Tape(p.Down)
}

func out(p card.Place, u measure.Unit) string {
	if p.Out < 0 {
		return "beyond the centre " + u.Tape(-p.Out)
	}
	return u.Tape(p.Out)
}

// shifts is how far a line must lie off its old place to be drawn anew: half
// the width of a chalk line.
const shifts = 0.5

// curvesChanged are the curved edges of a piece that do not lie where they lay.
func curvesChanged(before, after *pattern.Sheet, id pattern.PieceID) []string {
	was, ok1 := before.Piece(id)
	now, ok2 := after.Piece(id)
	if !ok1 || !ok2 {
		return nil
	}
	var out []string
	for i, e := range now.Edges {
		name := leaflet.Words(e.Name)
		if e.Role == pattern.RoleFold || !curved(e) || slices.Contains(out, name) {
			continue
		}
		if i >= len(was.Edges) || was.Edges[i].Name != e.Name || apart(was.Edges[i], e) {
			out = append(out, name)
		}
	}
	return out
}

func curved(e pattern.Edge) bool {
	for _, s := range e.Stitch {
		if s.Curved {
			return true
		}
	}
	return false
}

func apart(a, b pattern.Edge) bool {
	if len(a.Stitch) == 0 || len(b.Stitch) == 0 {
		return len(a.Stitch) != len(b.Stitch)
	}
	for _, p := range b.Stitch.Flatten(shifts / 4) {
		if _, _, d := a.Stitch.Nearest(p); d > shifts {
			return true
		}
	}
	return a.Stitch.Start().Dist(b.Stitch.Start()) > shifts || a.Stitch.End().Dist(b.Stitch.End()) > shifts
}

// facings says which of the traced pieces have to be traced again.
func facings(l *leaflet.Leaflet, was, now card.Card, before, after *pattern.Sheet) bool {
	var again, gone []string
	var news []card.Traced
	for _, t := range now.Traced {
		i := slices.IndexFunc(was.Traced, func(o card.Traced) bool { return o.Title == t.Title })
		switch {
		case i < 0 || !slices.Equal(was.Traced[i].Says, t.Says):
			news = append(news, t)
		case retraced(before, after, t.Title):
			again = append(again, strings.ToLower(t.Title))
		}
	}
	for _, t := range was.Traced {
		if !slices.ContainsFunc(now.Traced, func(o card.Traced) bool { return o.Title == t.Title }) {
			gone = append(gone, strings.ToLower(t.Title))
		}
	}
	if len(again)+len(gone)+len(news) == 0 {
		return false
	}
	l.Heading(1, "Facings")
	if len(again) > 0 {
		l.Text("Trace again, the widths stay: " + strings.Join(again, ", ") + ".")
	}
	for _, t := range news {
		l.Heading(2, t.Title)
		l.Texts(t.Says...)
	}
	if len(gone) > 0 {
		l.Text("No longer needed: " + strings.Join(gone, ", ") + ".")
	}
	return true
}

// retraced says that a facing's outline is not what it was.
func retraced(before, after *pattern.Sheet, title string) bool {
	find := func(s *pattern.Sheet) *pattern.Piece {
		for i := range s.Pieces {
			if s.Pieces[i].Title == title {
				return &s.Pieces[i]
			}
		}
		return nil
	}
	a, b := find(before), find(after)
	if a == nil || b == nil || len(a.Edges) != len(b.Edges) {
		return true
	}
	for i := range a.Edges {
		if apart(a.Edges[i], b.Edges[i]) {
			return true
		}
	}
	return false
}
