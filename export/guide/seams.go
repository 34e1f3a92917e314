package guide

import (
	"fmt"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
)

// seam is what is sewn together: the edges of one name of a piece, and those of
// another. Both are the same where a pair of pieces is joined to itself.
type seam struct{ a, b pattern.EdgeRef }

// seamsOf are all seams of a draft, in the order of its pieces and their rings.
// They come from what each edge says it is sewn to, so that a piece nobody
// thought of when the order of sewing was written down has its seams too.
func seamsOf(s *pattern.Sheet) []seam {
	var out []seam
	known := map[seam]bool{}
	add := func(x seam) {
		if !known[x] && !known[seam{x.b, x.a}] {
			known[x] = true
			out = append(out, x)
		}
	}
	for i := range s.Pieces {
		p := &s.Pieces[i]
		for _, e := range p.Edges {
			here := pattern.EdgeRef{Piece: p.ID, Edge: e.Name}
			switch other, ok := s.Piece(e.SewnTo.Piece); {
			case e.Role == pattern.RoleFold:
			case ok && len(other.EdgesNamed(e.SewnTo.Edge)) > 0:
				add(seam{here, e.SewnTo})
			case p.Cut == pattern.Pair && isCentre(e.Name) && !finishes(p):
				add(seam{here, here})
			}
		}
	}
	return out
}

func isCentre(edge string) bool { return strings.HasPrefix(edge, "centre_") }

// finishes says that a piece only finishes the edges of others.
func finishes(p *pattern.Piece) bool {
	id := string(p.ID)
	return strings.HasSuffix(id, "facing") || strings.HasSuffix(id, "strip")
}

// isSleeve says that a piece goes round an arm.
func isSleeve(id pattern.PieceID) bool {
	return strings.Contains(string(id), "sleeve") || strings.Contains(string(id), "cuff")
}

// garment says that a piece is part of the garment's body: no sleeve, no
// finishing, nothing that is put on.
func (g *guide) garment(id pattern.PieceID) bool {
	p := g.piece(id)
	if finishes(p) || isSleeve(id) {
		return false
	}
	for _, name := range []string{"side", "hem", "panel", "shoulder"} {
		if p.Along(name) > 0 {
			return true
		}
	}
	return false
}

// of says that both sides of a seam are edges of that name on the body.
func of(edge string) func(*guide, seam) bool {
	return func(g *guide, s seam) bool {
		return s.a.Edge == edge && s.b.Edge == edge && s.a != s.b && g.garment(s.a.Piece) && g.garment(s.b.Piece)
	}
}

// finishing are seams of facings.
func finishing(g *guide, s seam) bool {
	return finishes(g.piece(s.a.Piece)) || finishes(g.piece(s.b.Piece))
}

// atCentre are seams that join a pair of pieces to itself.
func atCentre(_ *guide, s seam) bool { return s.a == s.b }

// length is that of one side of a seam.
func (g *guide) length(r pattern.EdgeRef) measure.Length { return g.along(r.Piece, r.Edge) }

// called is a piece in running words: "front", "front (side panel)".
func (g *guide) called(id pattern.PieceID) string {
	p := g.piece(id)
	if p.Title == "" {
		return strings.ReplaceAll(string(id), "_", " ")
	}
	title := strings.ToLower(p.Title)
	if head, rest, ok := strings.Cut(title, ", "); ok {
		return head + " (" + rest + ")"
	}
	return title
}

// copies is how often an edge of a piece comes in the garment.
func copies(p *pattern.Piece) int {
	if p.Cut == pattern.OnFold || p.Cut == pattern.Pair {
		return 2 * max(p.Count/2, 1)
	}
	return max(p.Count, 1)
}

// joined says a seam in figures: what goes to what, how long each is, the
// allowances, and what is eased in.
func (g *guide) joined(s seam) string {
	a, b := g.length(s.a), g.length(s.b)
	name := func(r pattern.EdgeRef) string {
		if s.a.Edge == s.b.Edge && s.a.Piece != s.b.Piece {
			return g.called(r.Piece)
		}
		return g.called(r.Piece) + ", " + strings.ReplaceAll(r.Edge, "_", " ")
	}
	says := fmt.Sprintf("%s %s to %s %s", name(s.a), g.say(a), name(s.b), g.say(b))
	switch x, y := g.allowed(s.a.Piece, s.a.Edge), g.allowed(s.b.Piece, s.b.Edge); {
	case x == y:
		says += ", allowance " + x
	default:
		says += fmt.Sprintf(", allowance %s and %s", x, y)
	}
	if copies(g.piece(s.a.Piece)) > 1 || copies(g.piece(s.b.Piece)) > 1 {
		says += ", on both sides"
	}
	says += "."
	longer := s.a
	if b > a {
		longer = s.b
	}
	if d := max(a-b, b-a); g.say(d) != "0" {
		says += fmt.Sprintf(" The %s is longer by %s: ease it in between its ends.", name(longer), g.say(d))
	}
	return says
}

// first is a text that begins with a capital.
func first(text string) string {
	if text == "" {
		return text
	}
	return strings.ToUpper(text[:1]) + text[1:]
}

func refs(list []seam) []pattern.EdgeRef {
	var out []pattern.EdgeRef
	for _, s := range list {
		out = append(out, s.a)
		if s.b != s.a {
			out = append(out, s.b)
		}
	}
	return out
}
