package leaflet

import (
	"math"
	"strconv"
	"strings"

	"chalkfold/export/pdf"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

const pieceGap = 40.0

// Pieces draws all pieces of a sheet side by side, each with its number; the
// small ones stand one below the other.
func Pieces(s *pattern.Sheet, high float64) pdf.Figure {
	f := pdf.Figure{Height: high}
	tallest := 0.0
	for i := range s.Pieces {
		tallest = max(tallest, s.Pieces[i].CutLine.Bounds().Height())
	}
	left, right, down := 0.0, 0.0, math.Inf(1) // the first piece begins a column
	for i := range s.Pieces {
		p := &s.Pieces[i]
		b := p.CutLine.Bounds()
		if b.Empty() {
			continue
		}
		if down+b.Height() > tallest {
			if right > 0 {
				left = right + pieceGap
			}
			down = 0
		}
		piece(&f, p, geom.Move(geom.Vector{X: left - b.Min.X, Y: down - b.Min.Y}))
		right = max(right, left+b.Width())
		down += b.Height() + pieceGap
	}
	return f
}

func piece(f *pdf.Figure, p *pattern.Piece, m geom.Matrix) {
	line := func(path geom.Path, ink pdf.Ink) {
		if len(path) > 0 {
			f.Lines = append(f.Lines, pdf.FigureLine{Path: path.Transform(m), Ink: ink})
		}
	}
	line(p.CutLine, pdf.InkPlain)
	line(p.Stitch, pdf.InkDashed)
	if p.Fold != nil {
		line(geom.Path{*p.Fold}, pdf.InkFold)
	}
	line(geom.Path{p.Grain}, pdf.InkFaint)
	for _, d := range p.Darts {
		line(geom.Lines(d.Legs[0], d.Tip, d.Legs[1]), pdf.InkDashed)
	}
	f.Words = append(f.Words, pdf.FigureWords{At: m.Apply(inside(p)), Text: strconv.Itoa(p.Number), Bold: true})
}

// inside is a place well inside a piece: half way across it where it is
// widest about its middle.
func inside(p *pattern.Piece) geom.Point {
	b := p.CutLine.Bounds()
	best, at := 0.0, b.Centre()
	for _, part := range []float64{0.5, 0.6, 0.4, 0.7, 0.3, 0.8} {
		y := b.Min.Y + part*b.Height()
		xs := p.CutLine.AtLevel(y)
		for i := 1; i < len(xs); i++ {
			if d := xs[i-1].Dist(xs[i]); d > best*1.2 && p.CutLine.Outline(0.5).Contains(xs[i-1].Lerp(xs[i], 0.5)) {
				best, at = d, xs[i-1].Lerp(xs[i], 0.5)
			}
		}
	}
	// Off the middle, where the grain arrow often stands.
	return at.Add(geom.Vector{X: 0.12 * best})
}

// Step draws a piece as it is after a step, lying on the table: the fold or
// centre along the upper edge, the neck at the left. What the step made is
// heavy and named.
func Step(s *pattern.Sheet, st pattern.Step, high float64) pdf.Figure {
	f := pdf.Figure{Height: high}
	// Across the cloth is down the paper.
	lying := geom.Matrix{0, 1, 1, 0, 0, 0}
	whole := extent(s, st.Piece)
	for _, k := range s.Marks {
		if k.Piece != st.Piece || !k.AliveAt(st.Number) {
			continue
		}
		fresh := k.Born == st.Number
		switch k.Kind {
		case pattern.MarkPoint:
			d := pdf.FigureDot{At: lying.Apply(k.At), Heavy: fresh}
			if fresh {
				d.Label = strings.ReplaceAll(k.Name, "_", " ")
			}
			f.Dots = append(f.Dots, d)
		default:
			if len(k.Path) == 0 {
				continue
			}
			ink := pdf.InkPlain
			switch {
			case fresh:
				ink = pdf.InkHeavy
			case k.Kind == pattern.MarkGuide:
				ink = pdf.InkFaint
			case k.Role == pattern.RoleFold:
				ink = pdf.InkFold
			}
			f.Lines = append(f.Lines, pdf.FigureLine{Path: k.Path.Transform(lying), Ink: ink})
		}
	}
	if len(f.Lines) > 0 && !whole.Empty() {
		// Every step has the same scale: the room of the finished piece.
		corner := geom.Lines(lying.Apply(whole.Min), lying.Apply(whole.Min))
		far := geom.Lines(lying.Apply(whole.Max), lying.Apply(whole.Max))
		f.Lines = append(f.Lines, pdf.FigureLine{Path: corner, Ink: pdf.InkFaint}, pdf.FigureLine{Path: far, Ink: pdf.InkFaint})
	}
	return f
}

// extent is the room that all marks of a piece take.
func extent(s *pattern.Sheet, id pattern.PieceID) geom.Box {
	var b geom.Box
	for _, k := range s.Marks {
		if k.Piece != id {
			continue
		}
		if k.Kind == pattern.MarkPoint {
			b = b.Add(k.At)
		} else if len(k.Path) > 0 {
			b = b.Union(k.Path.Bounds())
		}
	}
	return b
}

// Seam draws pieces side by side with some of their edges heavy: those that
// a step of sewing joins.
func Seam(s *pattern.Sheet, edges ...pattern.EdgeRef) *pdf.Figure {
	f := &pdf.Figure{}
	var ids []pattern.PieceID
	for _, e := range edges {
		known := false
		for _, id := range ids {
			known = known || id == e.Piece
		}
		if !known {
			ids = append(ids, e.Piece)
		}
	}
	left := 0.0
	for _, id := range ids {
		p, ok := s.Piece(id)
		if !ok || len(p.Stitch) == 0 {
			continue
		}
		b := p.Stitch.Bounds()
		m := geom.Move(geom.Vector{X: left - b.Min.X, Y: -b.Min.Y})
		f.Lines = append(f.Lines, pdf.FigureLine{Path: p.Stitch.Transform(m), Ink: pdf.InkFaint})
		for _, e := range edges {
			if e.Piece != id {
				continue
			}
			for _, x := range p.EdgesNamed(e.Edge) {
				f.Lines = append(f.Lines, pdf.FigureLine{Path: x.Stitch.Transform(m), Ink: pdf.InkHeavy})
			}
			if e.Edge == DartEdge {
				for _, d := range p.Darts {
					f.Lines = append(f.Lines, pdf.FigureLine{Path: geom.Lines(d.Legs[0], d.Tip, d.Legs[1]).Transform(m), Ink: pdf.InkHeavy})
				}
			}
		}
		left += b.Width() + pieceGap/2
	}
	if len(f.Lines) == 0 {
		return nil
	}
	return f
}

// DartEdge names the darts of a piece in Seam.
const DartEdge = "dart"
