package garment

import (
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
)

// liningTop begins the lining of a piece at the edge of its facing, where it
// has one.
func (c cutter) liningTop(p *pattern.Piece, sides []bench.Side) ([]bench.Side, []pattern.Dart) {
	if detail.Lining(c.s.Known) != detail.FacingLining {
		return sides, p.Darts
	}
	h := theFront
	if p.ID == pattern.Back {
		h = theBack
	}
	switch {
	case p.ID != h.piece:
		return sides, p.Darts // below the facing, or beside it
	case c.s.Garment == pattern.Skirt:
		return c.belowWaist(p, h, sides)
	}
	line := c.line(h.id(facingEdge(c.s.Known)))
	ends := "side"
	if setIn(c.s.Known) {
		ends = "shoulder"
	}
	return fromFacing(line, ends, sides), p.Darts
}

// fromFacing puts the edge of the facing, which runs from the centre out, in
// the place of what lies above it.
func fromFacing(line geom.Path, ends string, sides []bench.Side) []bench.Side {
	var slash, rest []bench.Side
	past := false
	for _, s := range sides {
		switch {
		case past:
			rest = append(rest, s)
		case s.Name == "placket" || s.Name == "placket_foot":
			slash = append(slash, s)
		case s.Name == ends:
			past = true
			_, s.Stitch = splitAt(s.Stitch, line.End())
			s.Stitch, s.Cut = startingAt(s.Stitch, line.End()), nil
			rest = append(rest, s)
		}
	}
	last := &rest[len(rest)-1] // the centre
	if len(slash) == 2 && slash[0].Stitch.Start().Y > line.Start().Y {
		// The placket is open below the facing: its line ends there.
		if at := line.AtOut(slash[1].Stitch.Start().X); len(at) > 0 {
			_, line = splitAt(line, at[0])
			slash[1].Stitch = geom.Lines(slash[1].Stitch.Start(), line.Start())
			slash[1].Cut = geom.Lines(slash[1].Cut.Start(), geom.Point{X: slash[1].Cut.Start().X, Y: line.Start().Y})
		}
	} else {
		if slash = nil; last.Name == "placket" {
			line = besideCentre(line) // open all along
		}
		last.Stitch, _ = splitAt(last.Stitch, line.Start())
		last.Stitch = endingAt(last.Stitch, line.Start())
		last.Corner = pattern.Mitre
	}
	top := bench.Side{Name: "facing", Stitch: line, Allowance: detail.LiningSeam, Role: pattern.RoleStitch}
	return append(append(slash, top), rest...)
}

// belowWaist takes the lining of a skirt down to the edge of its waist facing:
// the darts are shorter by the width of the facing.
func (c cutter) belowWaist(p *pattern.Piece, h half, sides []bench.Side) ([]bench.Side, []pattern.Dart) {
	w, wide := c.skirtWaistline(h), c.s.Known.Length("waist_facing_width").MM()
	first := 0
	for first < len(sides) && sides[first].Name != "side" {
		first++
	}
	rest := append([]bench.Side(nil), sides[first:]...)
	down := fitted(lowered(w, rest[0].Stitch, wide), c.line(h.id("waist_facing")).Length())
	_, rest[0].Stitch = splitAt(rest[0].Stitch, down.Parts[len(down.Parts)-1].End())
	last := &rest[len(rest)-1] // the centre
	last.Stitch, _ = splitAt(last.Stitch, down.Parts[0].Start())
	var top []bench.Side
	darts := append([]pattern.Dart(nil), p.Darts...)
	for i, part := range down.Parts {
		top = append(top, bench.Side{Name: "facing", Stitch: part, Allowance: detail.LiningSeam, Role: pattern.RoleStitch})
		if i == len(down.Darts) {
			break
		}
		d := down.Darts[i]
		end := func(a, b geom.Point) bench.Side {
			return bench.Side{Name: "dart", Stitch: geom.Lines(a, b), Allowance: detail.LiningSeam, Role: pattern.RoleStitch}
		}
		top = append(top, end(d.Inner, d.Cap), end(d.Cap, d.Outer))
		for k := range darts {
			if darts[k].Tip.Near(d.Tip, sameSide) {
				darts[k].Legs, darts[k].Cap = [2]geom.Point{d.Outer, d.Inner}, d.Cap
				darts[k].Intake, darts[k].Leg = d.Intake(), d.Leg()
			}
		}
	}
	return append(top, rest...), darts
}

// lowered is a waistline so much lower down, as far as the side, with what is
// left of its darts.
func lowered(w detail.Waistline, side geom.Path, wide float64) detail.Waistline {
	var out detail.Waistline
	for i, part := range w.Parts {
		line := part.Offset(-wide, bench.OffsetTolerance)
		line = geom.Lines(line.Start().Add(line.StartTangent().Scale(-wide)), line.Start()).Then(line)
		line = line.Then(geom.Lines(line.End(), line.End().Add(line.EndTangent().Scale(wide))))
		if i == 0 {
			if at := line.AtOut(part.Start().X); len(at) > 0 {
				_, line = splitAt(line, at[0])
			}
		} else {
			// Its legs must close: the outer one as long as the inner.
			d := &out.Darts[i-1]
			_, line = splitAt(line, crossing(line, geom.Lines(d.Tip, d.Outer)))
			d.Outer = d.Tip.Add(d.Tip.To(d.Outer).Unit().Scale(d.Tip.Dist(d.Inner)))
			line = startingAt(line, d.Outer)
		}
		if i == len(w.Darts) {
			line, _ = splitAt(line, crossing(line, side))
			out.Parts = append(out.Parts, line)
			break
		}
		d := w.Darts[i]
		line, _ = splitAt(line, crossing(line, geom.Lines(d.Tip, d.Inner)))
		d.Inner = line.End()
		out.Parts, out.Darts = append(out.Parts, line), append(out.Darts, d)
	}
	return out
}

// fitted makes a waistline as long as the edge it is sewn to, darts closed: the
// darts give or take what it lacks, in equal shares, and keep equal legs.
func fitted(w detail.Waistline, long float64) detail.Waistline {
	if len(w.Darts) == 0 {
		return w
	}
	share := (long - w.Length().MM()) / float64(2*len(w.Darts))
	for i := range w.Darts {
		d, before, after := &w.Darts[i], &w.Parts[i], &w.Parts[i+1]
		*before = lengthened(*before, share)
		*after = lengthened(after.Reverse(), share).Reverse()
		d.Inner = before.End()
		d.Outer = d.Tip.Add(d.Tip.To(after.Start()).Unit().Scale(d.Tip.Dist(d.Inner)))
		*after = startingAt(*after, d.Outer)
		d.Cap = detail.CapDown(d.Tip, d.Outer, d.Inner, before.EndTangent().Scale(-1))
	}
	return w
}

// lengthened runs a line straight on at its end, or takes it back.
func lengthened(p geom.Path, by float64) geom.Path {
	if by < 0 {
		cut, _ := p.Split(p.Length() + by)
		return cut
	}
	return p.Then(geom.Lines(p.End(), p.End().Add(p.EndTangent().Scale(by))))
}

// crossing is where two lines first cross; the end of the first if they do not.
func crossing(a, b geom.Path) geom.Point {
	if x := geom.Cross(a, b); len(x) > 0 {
		return x[0].At
	}
	return a.End()
}

func splitAt(p geom.Path, at geom.Point) (before, after geom.Path) {
	s, _, _ := p.Nearest(at)
	return p.Split(s)
}

// startingAt moves the start of a line by the hair that it is off.
func startingAt(p geom.Path, at geom.Point) geom.Path {
	out := append(geom.Path(nil), p...)
	if out[0].A = at; !out[0].Curved {
		out[0] = geom.Straight(at, out[0].D)
	}
	return out
}

func endingAt(p geom.Path, at geom.Point) geom.Path { return startingAt(p.Reverse(), at).Reverse() }
