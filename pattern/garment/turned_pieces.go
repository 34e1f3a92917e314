package garment

import (
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

// gap is the cutting line at a dart that lies in an edge.
type gap struct{ before, toCap, fromCap, after geom.Path }

// gapCuts ends the cutting lines on both sides of a dart on its legs, run on,
// and cuts the cap with the dart folded: the line on the side it is pressed
// to, mirrored in that leg, as far as the dart's middle. Joined like other
// corners the two lines would cross.
func gapCuts(before, after bench.Side, tip geom.Point, onAfter bool) gap {
	first, second := before.Stitch.End(), after.Stitch.Start()
	leg := func(end geom.Point) geom.Line { return geom.Line{At: tip, Dir: tip.To(end)} }
	moved := func(s bench.Side) geom.Path {
		if s.Cut != nil {
			return s.Cut
		}
		return s.Stitch.Offset(s.Allowance.MM(), bench.OffsetTolerance)
	}
	a := toLeg(moved(before), leg(first))
	b := toLeg(moved(after).Reverse(), leg(second)).Reverse()
	start, on, off, seam := b.Start(), second, first, b.StartTangent()
	if !onAfter {
		start, on, off, seam = a.End(), first, second, a.EndTangent().Scale(-1)
	}
	bite := detail.CapDown(tip, off, on, seam)
	if at, ok := geom.Meet(geom.Line{At: start, Dir: on.To(bite)}, geom.Line{At: tip, Dir: tip.To(off.Lerp(on, 0.5))}); ok {
		bite = at
	}
	return gap{a, geom.Lines(a.End(), bite), geom.Lines(bite, b.Start()), b}
}

// toLeg cuts a line off where it last meets a dart's leg, or runs its end on
// until it does.
func toLeg(p geom.Path, leg geom.Line) geom.Path {
	far := leg.At.Add(leg.Dir.Unit().Scale(1e4))
	if c := geom.Cross(p, geom.Lines(leg.At, far)); len(c) > 0 {
		cut, _ := p.Split(c[len(c)-1].S)
		return cut
	}
	at, ok := geom.Meet(geom.Line{At: p.End(), Dir: p.EndTangent()}, leg)
	if !ok || at.Dist(p.End()) > rule.In(6).MM() {
		return p
	}
	if way := p.StartTangent(); p.Start().To(at).Dot(way) < 0 {
		return geom.Lines(at.Add(way.Scale(-1)), at) // all of it lies past the leg: its corner runs on from here
	}
	return p.Then(geom.Lines(p.End(), at))
}

// withGap is an edge with a dart in it as sides of the ring.
func (c cutter) withGap(place string, before, after bench.Side) []bench.Side {
	end := c.line("front.dart_end")
	allowance := before.Allowance
	cut := gapCuts(before, after, c.at("front.dart_tip"), detail.PressedOnMoved(place))
	before.Cut, before.Corner, after.Cut = cut.before, pattern.None, cut.after
	return []bench.Side{
		before,
		{Name: "dart", Stitch: end[:1], Cut: cut.toCap, Allowance: allowance, Corner: pattern.None, Role: pattern.RoleStitch},
		{Name: "dart", Stitch: end[1:], Cut: cut.fromCap, Allowance: allowance, Corner: pattern.None, Role: pattern.RoleStitch},
		after,
	}
}

// turnedUpper puts the turned dart into the edges of neck, shoulder or
// armhole.
func (c cutter) turnedUpper(sides []bench.Side) []bench.Side {
	place := detail.DartPlace(c.s.Known)
	edge := map[string]string{detail.ArmholeDart: "armhole", detail.ShoulderDart: "shoulder", detail.NeckDart: "neck"}[place]
	if edge == "" || len(c.line("front.dart_end")) != 2 {
		return sides
	}
	var out []bench.Side
	for _, s := range sides {
		if s.Name != edge {
			out = append(out, s)
			continue
		}
		before, after := s, s
		switch edge {
		case "armhole":
			before.Stitch = c.line("front.armhole_upper")
		case "shoulder":
			after.Stitch = c.line("front.shoulder_outer")
		case "neck":
			after.Stitch, after.Cut = c.line("front.neck_outer"), nil
		}
		out = append(out, c.withGap(place, before, after)...)
	}
	return out
}

// closedLine is an edge as it lies with the dart closed, for what is traced
// from it.
func (c cutter) closedLine(full string) geom.Path {
	if p := c.line(full + "_closed"); len(p) > 0 {
		return p
	}
	return c.line(full)
}

// moved is a point where a turned part took it.
func (c cutter) moved(full string) geom.Point {
	if c.has(full + "_turned") {
		return c.at(full + "_turned")
	}
	return c.at(full)
}

// dartLegsOf are the legs of the bust dart, the one it is pressed on last.
func (c cutter) dartLegsOf() (off, on geom.Point) {
	if !c.has("front.dart_fixed") || splitDart(c.s.Known) {
		return c.at("front.dart_upper"), c.at("front.dart_lower")
	}
	fixed, moved := c.at("front.dart_fixed"), c.at("front.dart_moved")
	if detail.PressedOnMoved(detail.DartPlace(c.s.Known)) {
		return fixed, moved
	}
	return moved, fixed
}

// sideTip is the tip of the bust dart, or of the share of it that stayed in the
// side.
func (c cutter) sideTip() geom.Point {
	if splitDart(c.s.Known) {
		return c.at("front.side_dart_tip")
	}
	return c.at("front.dart_tip")
}
