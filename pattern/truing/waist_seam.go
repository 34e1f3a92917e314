package truing

import (
	"chalkfold/measure"
	"chalkfold/pattern"
)

// skirtOf is the skirt below each half, where a waist seam parts them.
var skirtOf = map[pattern.PieceID]pattern.PieceID{pattern.Front: pattern.SkirtFront, pattern.Back: pattern.SkirtBack}

// atWaist says whether a seam parts bodice and skirt.
func atWaist(s *pattern.Sheet) bool {
	_, front := s.Piece(pattern.SkirtFront)
	_, back := s.Piece(pattern.SkirtBack)
	return front || back
}

// wholeAtWaist puts bodice and skirt together: the ring of the bodice is begun
// at its waist, and the skirt's, which begins there, follows.
func wholeAtWaist(s *pattern.Sheet) *pattern.Sheet {
	joined := *s
	joined.Pieces = append([]pattern.Piece(nil), s.Pieces...)
	for i := range joined.Pieces {
		p := &joined.Pieces[i]
		skirt, ok := s.Piece(skirtOf[p.ID])
		if !ok {
			continue
		}
		first := 0
		for first < len(p.Edges) && p.Edges[first].Name != "waist" {
			first++
		}
		edges := append(append([]pattern.Edge(nil), p.Edges[first:]...), p.Edges[:first]...)
		p.Edges = append(edges, skirt.Edges...)
	}
	return &joined
}

// below names the skirt where a place of a half lies on it.
func below(s *pattern.Sheet, w pattern.Place) pattern.Place {
	skirt, half := skirtOf[w.Piece]
	if _, parted := s.Piece(skirt); !half || !parted {
		return w
	}
	if waist, ok := s.Point(w.Piece, "waist"); ok && w.At.Y > waist.Y+slack {
		w.Piece = skirt
	}
	return w
}

// waistSeams: bodice and skirt are sewn to each other, and the legs of their
// darts meet.
var waistSeams = Check{
	ID: "waist_seams", Title: "Waist seam meets", Wanted: atWaist,
	Applies: hasPieces,
	Run: func(s *pattern.Sheet) []pattern.Finding {
		var out []pattern.Finding
		var worst pattern.Finding
		first := true
		for _, id := range []pattern.PieceID{pattern.Front, pattern.Back} {
			bodice, skirt, ok := parted(s, id)
			if !ok {
				continue
			}
			f := waistFinding(s, id, bodice, skirt)
			if first || off(f) > off(worst) {
				worst, first = f, false
			}
			if g, wrong := legsMeet(id, bodice, skirt); wrong {
				out = append(out, g)
			}
			for _, p := range []*pattern.Piece{bodice, skirt} {
				out = append(out, waistDartFaults(p)...)
			}
		}
		if first {
			return one(skip("", measure.Tell("Bodice and skirt are not both cut from the draft yet.")))
		}
		return append(one(worst), out...)
	},
}

// parted are bodice and skirt of a half, the bodice without the skirt that
// was put to it.
func parted(s *pattern.Sheet, id pattern.PieceID) (bodice, skirt *pattern.Piece, ok bool) {
	whole, ok := s.Piece(id)
	skirt, ok2 := s.Piece(skirtOf[id])
	if !ok || !ok2 {
		return nil, nil, false
	}
	own := *whole
	if n := len(whole.Edges) - len(skirt.Edges); n > 0 && len(skirt.Edges) > 0 && len(skirt.Edges[0].Stitch) > 0 &&
		len(whole.Edges[n].Stitch) > 0 && whole.Edges[n].Stitch.Start() == skirt.Edges[0].Stitch.Start() {
		own.Edges = whole.Edges[:n]
	}
	return &own, skirt, true
}

func waistFinding(s *pattern.Sheet, id pattern.PieceID, bodice, skirt *pattern.Piece) pattern.Finding {
	got, want := along(bodice, "waist"), along(skirt, "waist")
	f := limits{-pairPass, pairPass, -pairAdvise, pairAdvise}.compare("waist_seams", got, want)
	f.Where = on(id, middleOf(bodice, "waist"))
	f.Says = measure.Tell("{} and {}, bodice and skirt of the "+string(id)+", darts closed.", got, want)
	if f.Verdict != pattern.Pass {
		f.Says = measure.Tell("{} and {}: the bodice of the "+string(id)+" is {} {} than its skirt.", got, want, abs(got-want), longer(got-want))
		f.Input = string(id) + "_waist_dart"
		f.Cure = measure.Tell("Walk the skirt along the bodice with the darts closed, and make the wider dart larger by {}.", abs(got-want))
	}
	return f
}

// legsMeet compares how far from the centre the darts lie along the seam.
func legsMeet(id pattern.PieceID, bodice, skirt *pattern.Piece) (pattern.Finding, bool) {
	up, down := dartsAlong(bodice), dartsAlong(skirt)
	if len(up) != len(down) {
		return pattern.Finding{}, false // one of them is closed, or shapes the bust alone
	}
	for i := 0; i < len(up); i++ {
		// The bodice runs inwards: count both from the centre.
		a, b := along(bodice, "waist")-up[len(up)-1-i], down[i]
		f := within(pairPass).compare("waist_darts_meet", a, b)
		if f.Verdict == pattern.Pass {
			continue
		}
		f.Where = on(id, middleOf(bodice, "waist"))
		f.Input = "waist_seam"
		f.Says = measure.Tell("{} and {} from the centre: the darts of bodice and skirt miss each other by {}.", a, b, abs(a-b))
		f.Cure = measure.Tell("Move the dart of the skirt until its inner leg meets the bodice's.")
		return f, true
	}
	return pattern.Finding{}, false
}

// dartsAlong are the places of the darts along the waist of a ring, from where
// it begins, the darts closed.
func dartsAlong(p *pattern.Piece) []measure.Length {
	var out []measure.Length
	var sum measure.Length
	for i := range p.Edges {
		e := &p.Edges[i]
		switch {
		case e.Name == "waist":
			sum += e.Length()
		case e.Name == "dart" && i > 0 && p.Edges[i-1].Name == "waist":
			out = append(out, sum)
		}
	}
	return out
}

// waistDartFaults are what is wrong with the darts that end in the seam:
// legs, and the folded end.
func waistDartFaults(p *pattern.Piece) []pattern.Finding {
	var out []pattern.Finding
	for i := range p.Darts {
		d := &p.Darts[i]
		if d.Fisheye || !d.Waist {
			continue
		}
		a, b := measure.Length(d.Tip.Dist(d.Legs[0])), measure.Length(d.Tip.Dist(d.Legs[1]))
		f := limits{-legsPass, legsPass, -legsAdvise, legsAdvise}.compare("waist_dart_legs", a, b)
		if f.Verdict != pattern.Pass {
			f.Where, f.Input = on(p.ID, d.Tip), "waist_seam"
			f.Says = measure.Tell("{} and {}: the legs of a waist dart of "+p.Title+" are not of one length.", a, b)
			f.Cure = measure.Tell("Turn the outer leg about the tip until it is {} long.", b)
			out = append(out, f)
		}
		if wrong, ok := capOff(p, d); !ok {
			f := steep("waist_dart_cap", wrong, capPass)
			f.Verdict, f.Where, f.Input = pattern.Fail, on(p.ID, d.Cap), "waist_seam"
			f.Says = measure.Tell("The folded end of a waist dart of "+p.Title+" lies {} degrees off the seam.", wrong)
			f.Cure = measure.Tell("Fold the dart to the centre on paper, draw the waist across it, cut, unfold.")
			out = append(out, f)
		}
	}
	return out
}
