package truing

import (
	"math"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

func byThumb(s *pattern.Sheet) bool { return s.Method == pattern.Thumb }

// at is a named point that the check knows to be drawn.
func at(s *pattern.Sheet, piece pattern.PieceID, name string) geom.Point {
	p, _ := s.Point(piece, name)
	return p
}

// hasPoints says whether all these points are drawn on the piece.
func hasPoints(s *pattern.Sheet, piece pattern.PieceID, names ...string) bool {
	for _, n := range names {
		if _, ok := s.Point(piece, n); !ok {
			return false
		}
	}
	return true
}

// both is the Applies of checks that need points on front and back.
func both(names ...string) func(*pattern.Sheet) (bool, measure.Sentence) {
	return func(s *pattern.Sheet) (bool, measure.Sentence) {
		for _, piece := range []pattern.PieceID{pattern.Front, pattern.Back} {
			for _, n := range names {
				if skirtAlone(s) && n == "underarm" {
					continue
				}
				if _, ok := s.Point(piece, n); !ok {
					return false, measure.Tell("The " + string(piece) + " has no " + spaced(n) + " yet.")
				}
			}
		}
		return true, measure.Sentence{}
	}
}

// bothEdges is the Applies of checks that need edges of front and back.
func bothEdges(names ...string) func(*pattern.Sheet) (bool, measure.Sentence) {
	return func(s *pattern.Sheet) (bool, measure.Sentence) {
		for _, id := range []pattern.PieceID{pattern.Front, pattern.Back} {
			p, ok := s.Piece(id)
			if !ok {
				return false, measure.Tell("The " + string(id) + " is not cut from the draft yet.")
			}
			for _, n := range names {
				if !hasEdge(p, n) {
					return false, measure.Tell("The " + string(id) + " has no edge called " + spaced(n) + ".")
				}
			}
		}
		return true, measure.Sentence{}
	}
}

// all joins conditions: the first that does not hold gives the reason.
func all(conditions ...func(*pattern.Sheet) (bool, measure.Sentence)) func(*pattern.Sheet) (bool, measure.Sentence) {
	return func(s *pattern.Sheet) (bool, measure.Sentence) {
		for _, c := range conditions {
			if ok, why := c(s); !ok {
				return false, why
			}
		}
		return true, measure.Sentence{}
	}
}

func hasPieces(s *pattern.Sheet) (bool, measure.Sentence) {
	if len(s.Pieces) == 0 {
		return false, measure.Tell("No piece is cut from the draft yet.")
	}
	return true, measure.Sentence{}
}

func piece(s *pattern.Sheet, id pattern.PieceID) *pattern.Piece {
	p, _ := s.Piece(id)
	return p
}

func hasEdge(p *pattern.Piece, name string) bool {
	for i := range p.Edges {
		if p.Edges[i].Name == name {
			return true
		}
	}
	return false
}

// along is the stitch line of all edges of that name, without the copies
// that Piece.Along makes.
func along(p *pattern.Piece, name string) measure.Length {
	var sum measure.Length
	for i := range p.Edges {
		if p.Edges[i].Name == name {
			sum += p.Edges[i].Length()
		}
	}
	return sum
}

// figure is the line that the draft drew: the stitch line, or by thumb the
// cutting line, which has the allowance in it.
func figure(p *pattern.Piece, e *pattern.Edge) geom.Path {
	if p.Included && len(e.Cut) > 0 {
		return e.Cut
	}
	return e.Stitch
}

// sewn is the line that is sewn.
func sewn(_ *pattern.Piece, e *pattern.Edge) geom.Path { return e.Stitch }

// corner is the angle inside the piece where an edge named a runs into one
// named b, degrees, and where that is.
func corner(p *pattern.Piece, a, b string, line func(*pattern.Piece, *pattern.Edge) geom.Path) (degrees float64, where geom.Point, ok bool) {
	n := len(p.Edges)
	for i := range p.Edges {
		next := &p.Edges[(i+1)%n]
		if p.Edges[i].Name != a || next.Name != b {
			continue
		}
		u, v := line(p, &p.Edges[i]).EndTangent(), line(p, next).StartTangent()
		return 180 - turnOf(u, v), next.Stitch.Start(), true
	}
	return 0, geom.Point{}, false
}

// turnOf is how far one direction turns into another, degrees. Rings run
// clockwise, so a turn to the right closes a corner.
func turnOf(u, v geom.Vector) float64 { return math.Atan2(u.Cross(v), u.Dot(v)) * 180 / math.Pi }

// middleOf is a spot half way along the first edge of that name.
func middleOf(p *pattern.Piece, name string) geom.Point {
	for i := range p.Edges {
		if e := &p.Edges[i]; e.Name == name && len(e.Stitch) > 0 {
			s := e.Stitch[len(e.Stitch)/2]
			return s.At(0.5)
		}
	}
	return geom.Point{}
}

// sideDart is the dart in the side seam of the front, as it is sewn.
func sideDart(s *pattern.Sheet) (*pattern.Dart, bool) {
	p, ok := s.Piece(pattern.Front)
	if !ok || len(p.Darts) == 0 || p.Darts[0].Fisheye || p.Darts[0].Waist {
		return nil, false // the bust dart comes before the darts at the waist
	}
	return &p.Darts[0], true
}

func hasDart(s *pattern.Sheet) (bool, measure.Sentence) {
	if _, ok := s.Piece(pattern.Front); !ok {
		return false, measure.Tell("The front is not cut from the draft yet.")
	}
	if _, ok := sideDart(s); !ok {
		return false, measure.Tell("The front has no dart.")
	}
	return true, measure.Sentence{}
}

// sideOut is how far the sewn side lies out from the centre at a named
// point. By thumb the side's allowance is part of the figure and is taken
// level, so it is the same at every level as at the underarm.
func sideOut(s *pattern.Sheet, id pattern.PieceID, name string) measure.Length {
	p, _ := s.Point(id, name)
	if q, ok := s.SewnPoint(id, name); ok && q != p {
		return measure.Length(q.X)
	}
	cut, _ := s.Point(id, "underarm")
	sewn, _ := s.SewnPoint(id, "underarm")
	return measure.Length(p.X - (cut.X - sewn.X))
}

// roundAt is a girth off the drawing: two halves of front and back.
func roundAt(s *pattern.Sheet, name string) measure.Length {
	return 2 * (sideOut(s, pattern.Front, name) + sideOut(s, pattern.Back, name))
}

// surplus is how much longer her front is than her back, as measured.
// The draft itself need not use both lengths.
func surplus(s *pattern.Sheet) (measure.Length, bool) {
	front, ok := bodyOf(s, measure.SideNeckToWaist)
	back, ok2 := bodyOf(s, measure.BackNeckToWaist)
	if !ok || !ok2 {
		return 0, false
	}
	k := pattern.Known{Figures: []pattern.Figure{
		{ID: measure.SideNeckToWaist, Value: front}, {ID: measure.BackNeckToWaist, Value: back},
	}}
	return rule.FrontSurplus(k).Result(), true
}

// bodyOf is a measurement as the draft uses it, or as she took it where the
// draft has no use for it.
func bodyOf(s *pattern.Sheet, id measure.ID) (measure.Length, bool) {
	if f, ok := s.Figure(id); ok {
		return f.Value, true
	}
	return s.Measured(id)
}

// degrees between two directions, 0 to 180.
func degrees(u, v geom.Vector) float64 {
	return math.Abs(math.Atan2(u.Cross(v), u.Dot(v))) * 180 / math.Pi
}

// spaced turns an id into words.
func spaced(id string) string { return strings.ReplaceAll(id, "_", " ") }

// term is what a measurement is called.
func term(id measure.ID) string {
	if m, ok := measure.Find(id); ok {
		return m.Term
	}
	return spaced(string(id))
}
