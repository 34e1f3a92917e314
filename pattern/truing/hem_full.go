package truing

import (
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// A turned hem lies flat while its raw edge is hardly longer than the cloth it
// is folded onto: up to 3 per cent is eased in by the stitch, up to 6 only by
// shrinking wool (common practice, no source).
const hemEased, hemShrunk = 0.03, 0.06

// fullHem compares the raw edge of a turned hem with the cloth as far above
// the hem line. Silent where it can be eased in.
func fullHem(s *pattern.Sheet) []pattern.Finding {
	if s.Pick("hem_finish") == "faced" {
		return nil
	}
	var raw, onto, whole float64
	var where pattern.Place
	for _, p := range s.Pieces {
		if strings.HasPrefix(string(p.ID), string(pattern.Sleeve)) {
			continue // its hem is narrow, and is not the skirt's
		}
		if _, lines := isLining(p.ID); lines {
			continue
		}
		for i := range p.Edges {
			hem, before, after := &p.Edges[i], &p.Edges[(i+len(p.Edges)-1)%len(p.Edges)], &p.Edges[(i+1)%len(p.Edges)]
			deep := hem.Allowance.MM()
			if hem.Name != "hem" || p.Included || deep <= 0 || before.Stitch.Length() < deep || after.Stitch.Length() < deep {
				continue
			}
			if where.Piece == "" {
				where = on(p.ID, hem.Stitch.Start())
			}
			raw += spanned(hem.Stitch.Offset(deep, flat), foldedDown(*before, *hem, true), foldedDown(*after, *hem, false))
			onto += spanned(hem.Stitch.Offset(-deep, flat), before.Stitch, after.Stitch)
			whole += hem.Stitch.Length()
		}
	}
	if whole == 0 || (raw-onto)/whole <= hemEased {
		return nil
	}
	over := (raw - onto) / whole
	deep := s.Length("hem_allowance")
	round, wide := measure.Length(2*raw), measure.Length(2*onto)
	f := advice("hem_full", round, wide)
	f.Where, f.Input = where, "hem_allowance"
	to := measure.Length(deep.MM() * hemEased / over).Down(step(s))
	if over > hemShrunk || to < measure.Inch/2 {
		v := pattern.PickValue("faced")
		f.Says = measure.Tell("{} and {}: turned up by {}, the raw edge of the hem is longer by more than can be eased in.", round, wide, deep)
		f.Cure = measure.Tell("Face the hem, or turn up {} only.", max(to, measure.Inch/2))
		f.Input, f.Try = "hem_finish", &v
		return one(f)
	}
	f.Says = measure.Tell("{} and {}: turned up by {}, only wool can be shrunk to lie flat there.", round, wide, deep)
	f.Cure = measure.Tell("Turn up less: {}. Or face the hem.", change(s.Known, "hem_allowance", to))
	f.Try = try(s.Known, "hem_allowance", to)
	return one(f)
}

// foldedDown is the end of an edge beside the hem, mirrored below it as it is
// cut.
func foldedDown(e, hem pattern.Edge, before bool) geom.Path {
	long, deep := e.Stitch.Length(), 2*hem.Allowance.MM()
	if deep > long {
		deep = long
	}
	part, at, dir := e.Stitch.Part(0, deep), hem.Stitch.End(), hem.Stitch.EndTangent()
	if before {
		part, at, dir = e.Stitch.Part(long-deep, long), hem.Stitch.Start(), hem.Stitch.StartTangent()
	}
	return part.Transform(geom.MirrorIn(geom.Line{At: at, Dir: dir}))
}

// spanned is how long a line is between its crossings with two others; where
// it does not reach one of them its own end counts.
func spanned(line, from, to geom.Path) float64 {
	start, end := 0.0, line.Length()
	if x := geom.Cross(line, from); len(x) > 0 {
		start = x[0].S
	}
	if x := geom.Cross(line, to); len(x) > 0 {
		end = x[len(x)-1].S
	}
	return end - start
}
