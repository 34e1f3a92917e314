package truing

import (
	"math"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

const (
	// liningHigher is how much higher a lining is hemmed than the garment,
	// sleeveHigher that of a sleeve; liningLevel is how much that may vary
	// (common practice, no source).
	liningHigher = inch
	sleeveHigher = inch / 2
	liningLevel  = inch / 4
	// liningMore is how much longer the edge of a lining may be than the
	// facing it is sewn to: it is eased in.
	liningMore = inch / 8
)

const liningEnd = "_lining"

// isLining says that a piece lines another one, and which.
func isLining(id pattern.PieceID) (of pattern.PieceID, ok bool) {
	base, ok := strings.CutSuffix(string(id), liningEnd)
	return pattern.PieceID(base), ok
}

func hasLining(s *pattern.Sheet) bool {
	for i := range s.Pieces {
		if _, ok := isLining(s.Pieces[i].ID); ok {
			return true
		}
	}
	return false
}

// liningFit: the pieces of a lining meet each other, it ends above the hem, and
// its upper edge is as long as what it is sewn to.
var liningFit = Check{
	ID: "lining_fit", Title: "Lining fits", Wanted: hasLining, Applies: hasPieces,
	Run: func(s *pattern.Sheet) []pattern.Finding {
		out := one(liningSides(s))
		for _, f := range []func(*pattern.Sheet) (pattern.Finding, bool){liningHem, liningEdge} {
			if got, ok := f(s); ok {
				out = append(out, got)
			}
		}
		return out
	},
}

// liningSides compares the side seams of front and back, darts closed.
func liningSides(s *pattern.Sheet) pattern.Finding {
	var got, want measure.Length
	where := pattern.Place{}
	for i := range s.Pieces {
		p := &s.Pieces[i]
		of, ok := isLining(p.ID)
		switch {
		case !ok:
		case strings.Contains(string(of), "front"):
			if got += along(p, "side"); where.Piece == "" && hasEdge(p, "side") {
				where = on(p.ID, middleOf(p, "side"))
			}
		case strings.Contains(string(of), "back"):
			want += along(p, "side")
		}
	}
	f := within(pairPass).compare("lining_sides", got, want)
	f.Where = where
	f.Says = measure.Tell("{} and {}, sides of the lining in front and behind.", got, want)
	if f.Verdict != pattern.Pass {
		f.Says = measure.Tell("{} and {}: the lining's side in front is {} {} than behind.", got, want, abs(got-want), longer(got-want))
		f.Cure, f.Input = measure.Tell("Trace the lining once more from front and back, darts closed."), "lining"
	}
	return f
}

// liningHem: at both ends of its hem a lining ends so far above the garment's;
// the worst is told.
func liningHem(s *pattern.Sheet) (worst pattern.Finding, found bool) {
	for i := range s.Pieces {
		p := &s.Pieces[i]
		of, ok := isLining(p.ID)
		main, whole := s.Piece(of)
		if !ok || !whole {
			continue
		}
		want := liningHigher
		if of == pattern.Sleeve {
			want = sleeveHigher
		}
		for _, e := range p.Edges {
			if e.Name != "hem" {
				continue
			}
			for _, q := range [...]geom.Point{e.Stitch.Start(), e.Stitch.End()} {
				got, ok := aboveHem(main, q)
				if !ok {
					continue
				}
				f := limits{-liningLevel, liningLevel, -2 * liningLevel, 2 * liningLevel}.compare("lining_hem", got, want)
				f.Where = on(p.ID, q)
				f.Says = measure.Tell("{} and {}, the lining hemmed above the hem.", got, want)
				if f.Verdict != pattern.Pass {
					f.Says = measure.Tell("{} and {}: "+p.Title+" ends {} above the hem of its piece.", got, want, got)
					f.Cure, f.Input = measure.Tell("Mark its hem {} above the garment's, all along.", want), "lining"
				}
				if !found || off(f) > off(worst) {
					worst, found = f, true
				}
			}
		}
	}
	return worst, found
}

// aboveHem is how far above the hem of a piece a point lies, negative below it.
func aboveHem(p *pattern.Piece, q geom.Point) (above measure.Length, ok bool) {
	best := math.Inf(1)
	for i := range p.Edges {
		if p.Edges[i].Name != "hem" {
			continue
		}
		if _, at, d := p.Edges[i].Stitch.Nearest(q); d < best {
			if best, above = d, measure.Length(d); q.Y > at.Y {
				above = -above
			}
		}
	}
	return above, !math.IsInf(best, 1)
}

// liningEdge compares the upper edge of a lining with the edges that it is sewn
// to: those of the garment, or the facing's.
func liningEdge(s *pattern.Sheet) (worst pattern.Finding, found bool) {
	for _, e := range liningEdges(s) {
		if e.got == 0 || e.want == 0 {
			continue
		}
		f := limits{-pairPass, liningMore, -pairAdvise, 2 * liningMore}.compare("lining_edge", e.got, e.want)
		f.Where = e.where
		f.Says = measure.Tell("{} and {}, the lining and the "+e.says+" it is sewn to.", e.got, e.want)
		if f.Verdict != pattern.Pass {
			f.Says = measure.Tell("{} and {}: the lining is {} {} than the "+e.says+" it is sewn to.", e.got, e.want, abs(e.got-e.want), longer(e.got-e.want))
			f.Cure, f.Input = measure.Tell("Trace its upper edge once more from the "+e.says+"."), "lining"
		}
		if !found || off(f) > off(worst) {
			worst, found = f, true
		}
	}
	return worst, found
}

// linedEdge is an edge of a lining, of all its panels, and what it is sewn to.
type linedEdge struct {
	got, want measure.Length
	says      string
	where     pattern.Place
}

func liningEdges(s *pattern.Sheet) []linedEdge {
	var out []linedEdge
	for _, half := range []pattern.PieceID{pattern.Front, pattern.Back} {
		l, ok := s.Piece(half + liningEnd)
		main, ok2 := s.Piece(half)
		if !ok || !ok2 {
			continue
		}
		if hasEdge(l, "facing") {
			out = append(out, linedEdge{along(l, "facing"), outerOf(s, l.ID), "facing of the " + string(half), on(l.ID, middleOf(l, "facing"))})
			continue
		}
		edges := []string{"neck", "armhole"}
		if skirtAlone(s) {
			edges = []string{"waist"}
		}
		for _, e := range edges {
			got := along(l, e)
			if side, ok := s.Piece(half + "_side" + liningEnd); ok {
				got += along(side, e)
			}
			out = append(out, linedEdge{got, along(main, e), e + " of the " + string(half), on(l.ID, middleOf(l, e))})
		}
	}
	return out
}

// outerOf is the inner edge of the facing that a lining is sewn to.
func outerOf(s *pattern.Sheet, lining pattern.PieceID) measure.Length {
	for i := range s.Pieces {
		f := &s.Pieces[i]
		for j := range f.Edges {
			if f.Edges[j].Name == "outer" && f.Edges[j].SewnTo.Piece == lining {
				return along(f, "outer")
			}
		}
	}
	return 0
}
