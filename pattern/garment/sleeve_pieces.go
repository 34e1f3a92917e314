package garment

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
)

// sleeve cuts the sleeve from its marks.
func (c cutter) sleeve() pattern.Piece {
	k := c.s.Known
	line := c.line("sleeve.cap")
	long, _, _ := line.Nearest(c.at("sleeve.top_notch"))
	from, to := 0.0, line.Length()
	whole := setIn(k)
	if !whole {
		from, _, _ = line.Nearest(c.at("sleeve.back_hem"))
		to, _, _ = line.Nearest(c.at("sleeve.front_hem"))
	}
	arm, seam, hem := k.Length("armhole_allowance"), k.Length("side_allowance"), k.Length("sleeve_hem")
	edge := func(name string, path geom.Path, allowance measure.Length, to pattern.EdgeRef) bench.Side {
		return bench.Side{Name: name, Stitch: path, Allowance: allowance, SewnTo: to, Role: pattern.RoleStitch}
	}
	into := func(h half) pattern.EdgeRef {
		if !whole {
			return pattern.EdgeRef{}
		}
		return c.armholeOf(h)
	}
	sides := []bench.Side{
		edge("back_cap", line.Part(from, long), arm, into(theBack)),
		edge("front_cap", line.Part(long, to), arm, into(theFront)),
	}
	if whole {
		front := edge("front_seam", c.line("sleeve.front_seam"), seam, pattern.EdgeRef{Piece: pattern.Sleeve, Edge: "back_seam"})
		front.Corner = pattern.Mirrored
		turned := edge("hem", c.line("sleeve.hem"), hem, pattern.EdgeRef{})
		turned.Corner = pattern.Mirrored
		sides = append(append(sides, front, turned), c.backSeam(seam)...)
	} else {
		sides = append(sides, edge("hem", c.line("sleeve.hem"), hem, pattern.EdgeRef{}))
	}
	title := "Sleeve"
	if !whole {
		title = "Cap sleeve"
	}
	p := closed(pattern.Sleeve, title, pattern.Pair, sides)
	c.sleeveMarks(&p, whole)
	return p
}

// backSeam is the back seam from the hem up, with its dart.
func (c cutter) backSeam(allowance measure.Length) []bench.Side {
	to := pattern.EdgeRef{Piece: pattern.Sleeve, Edge: "front_seam"}
	upper := bench.Side{Name: "back_seam", Stitch: c.line("sleeve.back_seam").Reverse(), Allowance: allowance, SewnTo: to, Role: pattern.RoleStitch}
	if !c.has("sleeve.dart_tip") {
		return []bench.Side{upper}
	}
	lower := upper
	lower.Stitch = c.line("sleeve.back_seam_lower").Reverse()
	end := c.line("sleeve.dart_end").Reverse()
	cut := gapCuts(lower, upper, c.at("sleeve.dart_tip"), false)
	dart := func(path, cut geom.Path) bench.Side {
		return bench.Side{Name: "dart", Stitch: path, Cut: cut, Allowance: allowance, Corner: pattern.None, Role: pattern.RoleStitch}
	}
	lower.Cut, lower.Corner, upper.Cut = cut.before, pattern.None, cut.after
	return []bench.Side{lower, dart(end[:1], cut.toCap), dart(end[1:], cut.fromCap), upper}
}

// sleeveMarks are dart, notches and levels of the sleeve.
func (c cutter) sleeveMarks(p *pattern.Piece, whole bool) {
	notch(p, "front_cap", "shoulder", c.at("sleeve.top_notch"), 1)
	if whole {
		notch(p, "front_cap", "front armhole", c.at("sleeve.front_notch"), 1)
		notch(p, "back_cap", "back armhole", c.at("sleeve.back_notch"), 2)
	}
	for _, name := range []string{"front", "back"} {
		if whole {
			notch(p, name+"_seam", "hem fold", c.at("sleeve."+name+"_hem"), 1)
		}
		if name == "back" && c.has("sleeve.dart_tip") {
			continue // the dart's legs mark the elbow there
		}
		if c.has("sleeve."+name+"_elbow") && p.Stitch.Bounds().Max.Y > c.at("sleeve."+name+"_elbow").Y {
			notch(p, name+"_seam", "elbow", c.at("sleeve."+name+"_elbow"), 1)
		}
	}
	half := c.at("sleeve.front_underarm").X
	if whole {
		p.Balance = append(p.Balance, pattern.Balance{Name: "underarm", Line: geom.Straight(geom.Point{X: -half}, geom.Point{X: half})})
	}
	if !c.has("sleeve.dart_tip") {
		return
	}
	putDart(p, pattern.Dart{
		Name: "elbow dart", Tip: c.at("sleeve.dart_tip"), Cap: c.at("sleeve.dart_cap"), Pressed: "down",
		Legs: [2]geom.Point{c.at("sleeve.dart_upper"), c.at("sleeve.dart_lower")},
	}, "back_seam")
}

// sleeveNotches mark on a piece of the dress where the sleeve's notches come:
// as far from the underarm as there.
func (c cutter) sleeveNotches(p *pattern.Piece, h half) {
	arm := p.EdgesNamed("armhole")
	if !setIn(c.s.Known) || !c.has("sleeve.cap") || len(arm) == 0 {
		return
	}
	if detail.PanelSeam(c.s.Known) == detail.ArmholePanel || !h.back && detail.DartPlace(c.s.Known) == detail.ArmholeDart {
		return // a seam or a dart begins there, which marks it
	}
	_, from := detail.ArmholeNotch(c.closedLine(h.id("armhole")))
	last := arm[len(arm)-1].Stitch
	spot, _ := last.At(last.Length() - from.MM())
	marks := 1
	if h.back {
		marks = 2
	}
	notch(p, "armhole", "sleeve", spot, marks)
}

// sleeveFigures reads the lengths of the sleeve off its marks.
func (c cutter) sleeveFigures() {
	if !c.has("sleeve.cap") || !c.has("sleeve.top_notch") {
		return
	}
	add := func(name string, l float64) { c.s.Lengths = append(c.s.Lengths, dim(pattern.Sleeve, name, l)) }
	line := c.line("sleeve.cap")
	top, _, _ := line.Nearest(c.at("sleeve.top_notch"))
	round := c.closedLine("front.armhole").Length() + c.closedLine("back.armhole").Length()
	add("width", c.at("sleeve.front_underarm").X-c.at("sleeve.back_underarm").X)
	add("cap_height", -c.at("sleeve.crown").Y)
	add("cap", line.Length())
	add("cap_front", line.Length()-top)
	add("cap_back", top)
	add("cap_ease", line.Length()-round)
	if c.has("sleeve.front_seam") {
		add("front_seam", c.line("sleeve.front_seam").Length())
		add("back_seam", c.line("sleeve.back_seam").Length()+c.line("sleeve.back_seam_lower").Length())
	}
	if c.has("sleeve.hem") {
		add("hem", c.line("sleeve.hem").Length())
	}
	if !setIn(c.s.Known) {
		for _, h := range []half{theFront, theBack} {
			c.s.Lengths = append(c.s.Lengths, dim(h.piece, "armhole_faced", detail.LowerArmhole(c.closedLine(h.id("armhole"))).Length()))
		}
	}
}
