package guide

import (
	"fmt"
	"strings"

	"chalkfold/export/pdf"
	"chalkfold/pattern"
)

// leftEnd marks a piece of her left side where the two sides are cut apart.
const leftEnd = "_left"

// halved is a draft of two sides seen as its right half: what is sewn to what is
// the same on both, and is said once. Others come back as they are.
func halved(s *pattern.Sheet) (half *pattern.Sheet, two bool) {
	lefts := map[pattern.PieceID]bool{}
	for _, p := range s.Pieces {
		if base, ok := strings.CutSuffix(string(p.ID), leftEnd); ok {
			lefts[pattern.PieceID(base)] = true
		}
	}
	if len(lefts) == 0 {
		return s, false
	}
	out := *s
	out.Pieces = nil
	for _, p := range s.Pieces {
		if strings.HasSuffix(string(p.ID), leftEnd) {
			continue
		}
		head, _, _ := strings.Cut(p.Title, ", whole")
		head, _, _ = strings.Cut(head, ", right")
		p.Title = head
		switch n := len(p.Edges); {
		case lefts[p.ID]:
			p.Cut, p.Count = pattern.Pair, 2
		case p.Cut == pattern.Single && n%2 == 0 && mirrorNamed(p.Edges):
			p.Cut, p.Edges, p.Darts = pattern.OnFold, p.Edges[:n/2], p.Darts[:(len(p.Darts)+1)/2]
		}
		p.Edges = append([]pattern.Edge(nil), p.Edges...)
		for i := range p.Edges {
			p.Edges[i].SewnTo = partner(p.ID, p.Edges[i])
		}
		out.Pieces = append(out.Pieces, p)
	}
	return &out, true
}

// mirrorNamed says that the edges have the same names from both ends.
func mirrorNamed(edges []pattern.Edge) bool {
	for i := range edges {
		if edges[i].Name != edges[len(edges)-1-i].Name {
			return false
		}
	}
	return true
}

// partner is what an edge is sewn to by its name, where the sides are apart and
// the edge itself no longer says it.
func partner(id pattern.PieceID, e pattern.Edge) pattern.EdgeRef {
	if e.SewnTo.Piece != "" {
		return e.SewnTo
	}
	name := string(id)
	for _, end := range []string{"_neck_facing", "_armhole_facing", "_facing"} {
		if base, ok := strings.CutSuffix(name, end); ok {
			if e.Name == "neck" || e.Name == "armhole" {
				return pattern.EdgeRef{Piece: pattern.PieceID(base), Edge: e.Name}
			}
			return pattern.EdgeRef{}
		}
	}
	switch e.Name {
	case "shoulder", "side", "waist":
		if rest, ok := strings.CutPrefix(name, "front"); ok && e.Name != "waist" {
			return pattern.EdgeRef{Piece: pattern.PieceID("back" + rest), Edge: e.Name}
		}
	case "front_cap":
		return pattern.EdgeRef{Piece: pattern.Front, Edge: "armhole"}
	case "back_cap":
		return pattern.EdgeRef{Piece: pattern.Back, Edge: "armhole"}
	case "front_seam":
		return pattern.EdgeRef{Piece: id, Edge: "back_seam"}
	case "panel":
		if base, ok := strings.CutSuffix(name, "_side"); ok {
			return pattern.EdgeRef{Piece: pattern.PieceID(base), Edge: "panel"}
		}
	}
	return pattern.EdgeRef{}
}

// leftLengths are the seams of her left side that come out otherwise.
func (g *guide) leftLengths(s *pattern.Sheet) []pdf.Item {
	var out []string
	for i := range s.Pieces {
		p := &s.Pieces[i]
		base, ok := strings.CutSuffix(string(p.ID), leftEnd)
		if !ok || finishes(&pattern.Piece{ID: pattern.PieceID(base)}) {
			continue
		}
		for _, name := range []string{"shoulder", "armhole", "side"} {
			if r, l := g.along(pattern.PieceID(base), name), p.Along(name); l > 0 && g.say(r) != g.say(l) {
				out = append(out, fmt.Sprintf("%s %s (right %s)", g.called(pattern.PieceID(base))+" "+name, g.say(l), g.say(r)))
			}
		}
	}
	text := "Her sides differ: keep the pieces of each side together, right on right. Lengths below are those of the right side; each seam of the left is as long as its own pieces."
	if len(out) > 0 {
		text += " On the left: " + strings.Join(out, ", ") + "."
	}
	return []pdf.Item{item("Two sides.", "%s", text)}
}
