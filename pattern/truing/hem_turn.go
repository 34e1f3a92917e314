package truing

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// turnedHem folds the hem up: below the hem line the cut edge of the side
// must mirror the edge above it, or the turned hem is narrower than the skirt
// and pulls it together. Silent where it lies flat.
func turnedHem(s *pattern.Sheet) []pattern.Finding {
	var out []pattern.Finding
	ids := []pattern.PieceID{pattern.Front, pattern.Back}
	if atWaist(s) {
		ids = []pattern.PieceID{pattern.SkirtFront, pattern.SkirtBack}
	} else if panelled(s) {
		ids = []pattern.PieceID{pattern.FrontSide, pattern.BackSide} // where the sides are
	}
	for _, id := range ids {
		p, ok := s.Piece(id)
		if !ok {
			continue
		}
		for i := range p.Edges {
			side, hem := &p.Edges[i], &p.Edges[(i+1)%len(p.Edges)]
			if side.Name != "side" || hem.Name != "hem" || side.Corner != pattern.Mirrored || len(hem.Cut) == 0 || len(hem.Stitch) == 0 {
				continue
			}
			fold := geom.Line{At: hem.Stitch.Start(), Dir: hem.Stitch.StartTangent()}
			corner := geom.MirrorIn(fold).Apply(hem.Cut.Start())
			off, _ := nearest(p.CutLine.Flatten(flat), corner)
			f := within(allowanceOff).compare("hem_turn", measure.Length(off), 0)
			if f.Verdict == pattern.Pass {
				continue
			}
			f.Where, f.Input = on(id, hem.Stitch.Start()), "hem_allowance"
			f.Says = measure.Tell("{} and 0: turned up, the hem of the "+spaced(string(id))+" ends {} off the side.", measure.Length(off), measure.Length(off))
			f.Cure = measure.Tell("Fold the hem up on paper, cut along the side, unfold.")
			out = append(out, f)
		}
	}
	return out
}
