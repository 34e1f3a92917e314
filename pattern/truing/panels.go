package truing

import (
	"chalkfold/measure"
	"chalkfold/pattern"
)

// panelEase is how much longer a side panel may be than the centre panel, to
// be eased over the bust (common practice, no source).
const panelEase = 0.375 * inch

// panelHemPass, degrees, is how far the hem may bend at a panel seam
// (common practice, no source).
const panelHemPass, panelHemAdvise = 3.0, 6.0

// whole is the sheet with its panels put together again, or its bodice and
// its skirt: edges of the front are those of both its pieces, each ring begun
// where they were parted so that what runs into each other stays side by
// side. Of a sheet in whole halves it is the sheet itself.
func whole(s *pattern.Sheet) *pattern.Sheet {
	if atWaist(s) {
		return wholeAtWaist(s)
	}
	if !panelled(s) {
		return s
	}
	joined := *s
	joined.Pieces = append([]pattern.Piece(nil), s.Pieces...)
	for i := range joined.Pieces {
		p := &joined.Pieces[i]
		if p.ID != pattern.Front && p.ID != pattern.Back {
			continue
		}
		first := 0
		for first < len(p.Edges) && p.Edges[first].Name != "hem" {
			first++
		}
		edges := append(append([]pattern.Edge(nil), p.Edges[first:]...), p.Edges[:first]...)
		if side, ok := s.Piece(p.ID + "_side"); ok {
			edges = append(edges, side.Edges...)
		}
		p.Edges = edges
	}
	return &joined
}

// panelled says whether seams part the front into panels.
func panelled(s *pattern.Sheet) bool {
	_, front := s.Piece(pattern.FrontSide)
	_, back := s.Piece(pattern.BackSide)
	return front || back
}

// panelSeams compares both edges of each panel seam; silent where they meet.
func panelSeams(s *pattern.Sheet) []pattern.Finding {
	var out []pattern.Finding
	for _, id := range []pattern.PieceID{pattern.Front, pattern.Back} {
		side, ok := s.Piece(id + "_side")
		centre, ok2 := s.Piece(id)
		if !ok || !ok2 {
			continue
		}
		got := along(side, "panel")
		want := along(centre, "panel") - got // both edges stand in the whole front
		if f, off := panelHem(centre, side); off {
			out = append(out, f)
		}
		f := limits{-pairPass, panelEase, -pairAdvise, panelEase}.compare("panel_seams", got, want)
		if f.Verdict == pattern.Pass {
			continue
		}
		f.Where, f.Input = on(side.ID, middleOf(side, "panel")), "panel_seam"
		f.Says = measure.Tell("{} and {}: the side panel of the "+string(id)+" is {} {} than the centre panel.", got, want, abs(got-want), longer(got-want))
		f.Cure = measure.Tell("Walk the panels along each other, and draw the side panel flatter over the bust.")
		out = append(out, f)
	}
	return out
}

// panelHem: where a panel seam ends the hem runs on without a point, so that
// the corners of both panels make 180 degrees together.
func panelHem(centre, side *pattern.Piece) (pattern.Finding, bool) {
	there, where, ok := corner(side, "hem", "panel", sewn)
	seam, ok2 := edgeNamed(centre, "panel")
	hem, ok3 := edgeNamed(centre, "hem")
	if !ok || !ok2 || !ok3 {
		return pattern.Finding{}, false
	}
	here := 180 - turnOf(seam.Stitch.EndTangent(), hem.Stitch.StartTangent())
	f := angle("panel_hem", here+there, 180, panelHemPass, panelHemAdvise)
	if f.Verdict == pattern.Pass {
		return f, false
	}
	f.Where, f.Input = on(side.ID, where), "panel_flare"
	f.Says = measure.Tell("{} and 180 degrees: at the panel seam of the "+string(centre.ID)+" the hem makes a point.", here+there)
	f.Cure = measure.Tell("Draw the hem of each panel square to its seam over the last {2 in}.")
	return f, true
}

// edgeNamed is the first edge of that name; of a whole half it is one of the
// centre panel.
func edgeNamed(p *pattern.Piece, name string) (*pattern.Edge, bool) {
	for i := range p.Edges {
		if p.Edges[i].Name == name {
			return &p.Edges[i], true
		}
	}
	return nil, false
}
