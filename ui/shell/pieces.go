package shell

import (
	"fmt"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

func piecesCommand(w *world) *cobra.Command {
	return w.sheetCommand(
		"pieces FILE", "the pieces: a table, or all geometry",
		"Lists the pieces of a session with how each is cut, its size and the length\nof its seams, and the finished girths. With --json all geometry: points,\noutlines, edges, darts and notches.",
		piecesDocument, piecesText,
	)
}

// pointNames and lengthNames are the keys of front and back in the document, in
// its order; of other pieces with points of their own all are given.
var (
	pointNames = []string{
		"neck_point", "shoulder_end", "neck_centre", "armhole_mid", "underarm", "waist", "hip", "knee", "hem_side", "hem_centre",
		"bust_point", "dart_tip", "dart_upper", "dart_lower", "dart_cap",
	}
	lengthNames = []string{"neck", "shoulder", "armhole", "side", "side_drawn", "hem", "dart_intake", "dart_leg", "dart_angle", "waist_spare"}
	girthNames  = []string{"neck", "armhole", "bust", "waist", "hip", "hem"}
)

// ownPieces are front and back, and what else is drawn with points of its own.
func ownPieces(sheet *pattern.Sheet) []pattern.PieceID {
	out := []pattern.PieceID{pattern.Front, pattern.Back}
	for i := range sheet.Marks {
		if m := &sheet.Marks[i]; m.Kind == pattern.MarkPoint && m.Gone == 0 && m.Piece != "" && !slices.Contains(out, m.Piece) {
			out = append(out, m.Piece)
		}
	}
	return out
}

// pointsOf are the names of the points of a piece.
func pointsOf(sheet *pattern.Sheet, id pattern.PieceID) []string {
	if id == pattern.Front || id == pattern.Back {
		return pointNames
	}
	var out []string
	for i := range sheet.Marks {
		if m := &sheet.Marks[i]; m.Kind == pattern.MarkPoint && m.Gone == 0 && m.Piece == id && !slices.Contains(out, m.Name) {
			out = append(out, m.Name)
		}
	}
	return out
}

// lengthsOf are the names of the lengths of a piece.
func lengthsOf(sheet *pattern.Sheet, id pattern.PieceID) []string {
	if id == pattern.Front || id == pattern.Back {
		return lengthNames
	}
	var out []string
	for _, d := range sheet.Lengths {
		if d.Piece == id && !slices.Contains(out, d.Name) {
			out = append(out, d.Name)
		}
	}
	return out
}

// flatness is how far an outline of points may lie from the curve, in mm.
const flatness = 0.02

func piecesDocument(sheet *pattern.Sheet, u measure.Unit) object {
	s := scale{u}
	doc := s.document()
	doc.add("garment", sheet.Garment)
	doc.add("method", sheet.Method)
	doc.add("client", sheet.Job.Client.Name)
	doc.add("complete", sheet.Complete)
	thumb := sheet.Method == pattern.Thumb
	if thumb {
		doc.add("allowance_included", true)
	}
	missing := list{}
	for _, m := range sheet.Missing {
		missing = append(missing, object{{"id", string(m.ID)}, {"for", m.For}})
	}
	doc.add("missing", missing)
	doc.add("proposed", s.proposed(sheet))
	if refused := s.refused(sheet); len(refused) > 0 {
		doc.add("refused", refused)
	}
	doc.add("points", s.points(sheet, sheet.Point))
	doc.add("lengths", s.lengths(sheet, sheet.Dimension))
	if thumb {
		points, lengths := s.points(sheet, sheet.SewnPoint), s.lengths(sheet, sheet.SewnDimension)
		sewn := object{}
		for i, id := range ownPieces(sheet) {
			sewn.add(string(id), object{{"points", points[i].value}, {"lengths", lengths[i].value}})
		}
		doc.add("sewn", sewn)
	}
	girths := object{}
	for _, name := range girthNames {
		if l, ok := sheet.Girth(name); ok {
			girths.add(name, s.length(l))
		}
	}
	doc.add("girths", girths)
	pieces := list{}
	for i := range sheet.Pieces {
		pieces = append(pieces, s.piece(&sheet.Pieces[i]))
	}
	doc.add("pieces", pieces)
	return doc
}

func (s scale) proposed(sheet *pattern.Sheet) list {
	out := list{}
	for _, f := range sheet.Proposed() {
		out = append(out, object{{"id", string(f.ID)}, {"value", s.length(f.Value)}, {"spread", s.length(f.Proposal.Spread)}, {"source", f.Proposal.Source}})
	}
	return out
}

func (s scale) refused(sheet *pattern.Sheet) list {
	out := list{}
	for _, r := range sheet.Refused {
		out = append(out, object{{"code", r.Code}, {"step", r.Step}, {"says", r.Says.In(s.unit)}, {"cure", r.Cure.In(s.unit)}, {"input", r.Input}})
	}
	return out
}

func (s scale) points(sheet *pattern.Sheet, find func(pattern.PieceID, string) (geom.Point, bool)) object {
	out := object{}
	for _, id := range ownPieces(sheet) {
		points := object{}
		for _, name := range pointsOf(sheet, id) {
			if p, ok := find(id, name); ok {
				points.add(name, s.point(p))
			}
		}
		out.add(string(id), points)
	}
	return out
}

func (s scale) lengths(sheet *pattern.Sheet, find func(pattern.PieceID, string) (pattern.Dimension, bool)) object {
	out := object{}
	for _, id := range ownPieces(sheet) {
		lengths := object{}
		for _, name := range lengthsOf(sheet, id) {
			if d, ok := find(id, name); ok {
				lengths.add(name, s.dimension(d))
			}
		}
		out.add(string(id), lengths)
	}
	return out
}

func (s scale) piece(p *pattern.Piece) object {
	stitch, cut := outline(p.Stitch), outline(p.CutLine)
	o := object{
		{"id", string(p.ID)},
		{"number", p.Number},
		{"of", p.Of},
		{"title", p.Title},
		{"cloth", p.Cloth},
		{"also", words(p.Also)},
		{"cut", string(p.Cut)},
		{"count", p.Count},
		{"stitch", s.ring(stitch)},
		{"cut_line", s.ring(cut)},
		{"area", s.area(abs(cut.Area()))},
		{"stitch_area", s.area(abs(stitch.Area()))},
	}
	if p.Fold != nil {
		o.add("fold", line{s.point(p.Fold.A), s.point(p.Fold.D)})
	} else {
		o.add("fold", nil)
	}
	o.add("grain", line{s.point(p.Grain.A), s.point(p.Grain.D)})
	edges := list{}
	for _, e := range p.Edges {
		edges = append(edges, object{
			{"name", e.Name},
			{"length", s.length(e.Length())},
			{"allowance", s.length(e.Allowance)},
			{"from", s.point(e.Stitch.Start())},
			{"to", s.point(e.Stitch.End())},
		})
	}
	o.add("edges", edges)
	darts := list{}
	for _, d := range p.Darts {
		darts = append(darts, object{
			{"name", d.Name},
			{"tip", s.point(d.Tip)},
			{"legs", line{s.point(d.Legs[0]), s.point(d.Legs[1])}},
			{"cap", s.point(d.Cap)},
			{"intake", s.length(d.Intake)},
			{"angle", degrees(d.Degrees)},
			{"pressed", d.Pressed},
		})
	}
	o.add("darts", darts)
	notches := list{}
	for _, n := range p.Notches {
		notches = append(notches, object{{"at", s.point(n.At)}, {"edge", n.Edge}, {"marks", n.Marks}, {"into", degrees(n.Into)}})
	}
	o.add("notches", notches)
	return o
}

// outline is a closed path as points, the first not repeated.
func outline(p geom.Path) geom.Outline {
	points := p.Flatten(flatness)
	if n := len(points); n > 1 && points[0].Near(points[n-1], 1e-6) {
		points = points[:n-1]
	}
	return geom.Outline(points)
}

func (s scale) ring(o geom.Outline) line {
	out := make(line, len(o))
	for i, p := range o {
		out[i] = s.point(p)
	}
	return out
}

func abs(x float64) float64 {
	if x < 0 {
		return -x
	}
	return x
}

// piecesText is the table for people.
func piecesText(sheet *pattern.Sheet, u measure.Unit) string {
	var p page
	p.line(heading(sheet), ", lengths in ", u.String())
	p.line()
	rows := [][]string{{"", "piece", "cut", "cloth", "long", "wide"}}
	for i := range sheet.Pieces {
		piece := &sheet.Pieces[i]
		box := outline(piece.CutLine).Box()
		rows = append(rows, []string{
			fmt.Sprint(piece.Number), piece.Title, cutWords(piece), clothWords(piece),
			u.Tape(measure.Length(box.Height())), u.Tape(measure.Length(box.Width())),
		})
	}
	if len(sheet.Pieces) > 0 {
		p.table(rows, 0, 4, 5)
		p.line()
	}
	for i := range sheet.Pieces {
		piece := &sheet.Pieces[i]
		p.para(piece.Title+strings.Repeat(" ", max(1, 22-len(piece.Title))), seamWords(piece, u))
	}
	if len(sheet.Pieces) > 0 {
		p.line()
	}
	p.girths(sheet, u)
	return p.String()
}

// heading names the client, the garment and the method.
func heading(sheet *pattern.Sheet) string {
	name := plain(sheet.Job.Client.Name)
	if name == "" {
		name = "No name"
	}
	method := "by measures"
	if sheet.Method == pattern.Direct {
		method = "as a direct block"
	}
	if sheet.Method == pattern.Thumb {
		method = "by thumb"
	}
	return name + ", " + spaced(sheet.Garment) + " " + method
}

func (p *page) girths(sheet *pattern.Sheet, u measure.Unit) {
	rows := [][]string{}
	for _, name := range girthNames {
		if l, ok := sheet.Girth(name); ok {
			rows = append(rows, []string{"finished " + name, u.Say(l)})
		}
	}
	p.table(rows, 1)
}

func cutWords(p *pattern.Piece) string {
	switch p.Cut {
	case pattern.OnFold:
		return fmt.Sprintf("%d on the fold", p.Count)
	case pattern.Pair:
		return fmt.Sprintf("%d, a pair", p.Count)
	}
	return fmt.Sprint(p.Count)
}

func clothWords(p *pattern.Piece) string {
	out := p.Cloth
	for _, a := range p.Also {
		out += ", " + a
	}
	return out
}

// seamWords are the lengths of a piece's seams, each name once.
func seamWords(p *pattern.Piece, u measure.Unit) string {
	out := ""
	seen := map[string]bool{"fold": true}
	for _, e := range p.Edges {
		if seen[e.Name] {
			continue
		}
		seen[e.Name] = true
		if out != "" {
			out += ", "
		}
		out += spaced(e.Name) + " " + u.Tape(p.Along(e.Name))
	}
	return out
}
