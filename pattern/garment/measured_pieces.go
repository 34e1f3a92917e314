package garment

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

// finishMeasured cuts the pieces of a measured dress from its marks and reads
// the figures off them. Pieces whose last step could not be drawn are left
// out.
func finishMeasured(s *pattern.Sheet) {
	c := cutter{s}
	c.figures(theFront)
	c.figures(theBack)
	c.girths()
	var pieces []pattern.Piece
	frontDone, frontOK := c.drawn("front.allowances")
	backDone, backOK := c.drawn("back.allowances")
	if frontOK {
		pieces = append(pieces, c.front())
	}
	if backOK {
		pieces = append(pieces, c.back())
	}
	if frontOK {
		pieces = append(pieces, c.neckFacing(theFront))
	}
	if backOK {
		pieces = append(pieces, c.neckFacing(theBack))
	}
	if frontOK {
		pieces = append(pieces, c.armholeFacing(theFront))
	}
	if backOK {
		pieces = append(pieces, c.armholeFacing(theBack))
	}
	number(pieces)
	s.Pieces = pieces
	for _, p := range pieces {
		born := frontDone
		if p.ID == pattern.Back {
			born = backDone
		}
		if p.ID == pattern.Front || p.ID == pattern.Back {
			s.Marks = append(s.Marks, pattern.Mark{
				Piece: p.ID, Name: "cut_line", Kind: pattern.MarkLine, Path: p.CutLine, Role: pattern.RoleCut, Born: born,
			})
		}
	}
	s.Complete = frontOK && backOK
}

// upperSides are neck, shoulder and armhole of a half.
func (c cutter) upperSides(h half) []bench.Side {
	k, other := c.s.Known, pattern.Back
	if h.back {
		other = pattern.Front
	}
	return []bench.Side{
		{
			Name: "neck", Stitch: c.line(h.id("neck")), Allowance: k.Length("neck_allowance"),
			SewnTo: pattern.EdgeRef{Piece: facingOf(h, "neck"), Edge: "neck"}, Role: pattern.RoleStitch,
		},
		{
			Name: "shoulder", Stitch: c.line(h.id("shoulder")), Allowance: k.Length("shoulder_allowance"),
			SewnTo: pattern.EdgeRef{Piece: other, Edge: "shoulder"}, Role: pattern.RoleStitch,
		},
		{
			Name: "armhole", Stitch: c.line(h.id("armhole")), Allowance: k.Length("armhole_allowance"),
			SewnTo: pattern.EdgeRef{Piece: facingOf(h, "armhole"), Edge: "armhole"}, Role: pattern.RoleStitch,
		},
	}
}

func facingOf(h half, edge string) pattern.PieceID {
	return h.piece + pattern.PieceID("_"+edge+"_facing")
}

func (c cutter) front() pattern.Piece {
	k := c.s.Known
	side := k.Length("side_allowance")
	toBack := pattern.EdgeRef{Piece: pattern.Back, Edge: "side"}
	sides := c.upperSides(theFront)
	lower := bench.Side{Name: "side", Stitch: c.line("front.side"), Allowance: side, Corner: pattern.Mirrored, SewnTo: toBack, Role: pattern.RoleStitch}
	if end := c.line("front.dart_end"); len(end) == 2 {
		cut := c.dartCuts(side)
		lower.Cut = cut.lower
		sides = append(
			sides,
			bench.Side{Name: "side", Stitch: c.line("front.side_upper"), Cut: cut.upper, Allowance: side, Corner: pattern.None, SewnTo: toBack, Role: pattern.RoleStitch},
			bench.Side{Name: "dart", Stitch: end[:1], Cut: cut.toCap, Allowance: side, Corner: pattern.None, Role: pattern.RoleStitch},
			bench.Side{Name: "dart", Stitch: end[1:], Cut: cut.fromCap, Allowance: side, Corner: pattern.None, Role: pattern.RoleStitch},
		)
	}
	hem := c.line("front.hem")
	sides = append(
		sides,
		lower,
		bench.Side{Name: "hem", Stitch: hem, Allowance: k.Length("hem_allowance"), Role: pattern.RoleStitch},
		bench.Side{Name: "fold", Stitch: geom.Lines(hem.End(), c.at("front.neck_centre")), Role: pattern.RoleFold},
	)
	p := closed(pattern.Front, "Front", pattern.OnFold, sides)
	c.frontDart(&p)
	c.commonMarks(&p, theFront, 1)
	return p
}

// dartCuts is the cutting line at the side dart.
type dartCuts struct{ upper, toCap, fromCap, lower geom.Path }

// dartCuts ends the cutting lines above and below the dart on its legs, run
// on, and cuts the cap with the dart folded down: the line below, mirrored in
// the lower leg, as far as the dart's middle. Joined like other corners the
// two would cross on a dart that falls to its tip.
func (c cutter) dartCuts(allowance measure.Length) dartCuts {
	tip, up, low := c.at("front.dart_tip"), c.at("front.dart_upper"), c.at("front.dart_lower")
	leg := func(end geom.Point) geom.Line { return geom.Line{At: tip, Dir: tip.To(end)} }
	out := func(name string) geom.Path { return c.line(name).Offset(allowance.MM(), bench.OffsetTolerance) }
	lower := bench.ToLine(out("front.side").Reverse(), leg(low)).Reverse()
	upper := bench.ToLine(out("front.side_upper"), leg(up))
	bite := detail.CapDown(tip, up, low, lower.StartTangent())
	if at, ok := geom.Meet(
		geom.Line{At: lower.Start(), Dir: low.To(bite)},
		geom.Line{At: tip, Dir: tip.To(up.Lerp(low, 0.5))},
	); ok {
		bite = at
	}
	return dartCuts{upper, geom.Lines(upper.End(), bite), geom.Lines(bite, lower.Start()), lower}
}

func (c cutter) frontDart(p *pattern.Piece) {
	if !c.has("front.dart_cap") {
		return
	}
	tip, up, low := c.at("front.dart_tip"), c.at("front.dart_upper"), c.at("front.dart_lower")
	d := pattern.Dart{
		Name: "side dart", Tip: tip, Legs: [2]geom.Point{up, low}, Cap: c.at("front.dart_cap"),
		Intake: measure.Length(up.Dist(low)), Leg: measure.Length(tip.Dist(up)), Pressed: "down",
	}
	d.Degrees = rule.Degrees(rule.DartAngle(d.Intake, d.Leg))
	for i, leg := range d.Legs {
		d.Ends[i] = legEnd(tip, leg, p.CutLine)
	}
	p.Darts = append(p.Darts, d)
	p.Holes = append(p.Holes, tip.Add(tip.To(up.Lerp(low, 0.5)).Unit().Scale(rule.In(0.5).MM())))
}

// legEnd runs a dart leg on to the cutting line.
func legEnd(tip, leg geom.Point, cut geom.Path) geom.Point {
	far := leg.Add(tip.To(leg).Unit().Scale(rule.In(6).MM()))
	if x := geom.Cross(geom.Lines(leg, far), cut); len(x) > 0 {
		return x[0].At
	}
	return leg
}

func (c cutter) back() pattern.Piece {
	k := c.s.Known
	hem := c.line("back.hem")
	split := c.at("back.slit_top").Add(geom.Vector{Y: -rule.In(0.5).MM()})
	top := c.at("back.neck_centre")
	if split.Y <= top.Y {
		split = top.Lerp(hem.End(), 0.5)
	}
	sides := append(
		c.upperSides(theBack),
		bench.Side{
			Name: "side", Stitch: c.line("back.side"), Allowance: k.Length("side_allowance"), Corner: pattern.Mirrored,
			SewnTo: pattern.EdgeRef{Piece: pattern.Front, Edge: "side"}, Role: pattern.RoleStitch,
		},
		bench.Side{Name: "hem", Stitch: hem, Allowance: k.Length("hem_allowance"), Corner: pattern.Mirrored, Role: pattern.RoleStitch},
		bench.Side{Name: "centre_back", Stitch: geom.Lines(hem.End(), split), Allowance: slitAllowance, Corner: pattern.Square, Role: pattern.RoleStitch},
		bench.Side{Name: "centre_back", Stitch: geom.Lines(split, top), Allowance: k.Length("zip_allowance"), Role: pattern.RoleStitch},
	)
	p := closed(pattern.Back, "Back", pattern.Pair, sides)
	c.commonMarks(&p, theBack, 2)
	notch(&p, "centre_back", "zip end", c.at("back.zip_end"), 1)
	notch(&p, "centre_back", "top of the opening", c.at("back.slit_top"), 1)
	return p
}

// slitAllowance is the allowance of a plain slit (common practice).
const slitAllowance = measure.Inch

// commonMarks adds the notches and balance lines of a half.
func (c cutter) commonMarks(p *pattern.Piece, h half, marks int) {
	notch(p, "armhole", "middle of the armhole", c.at(h.id("armhole_mid")), marks)
	for _, d := range p.Darts {
		for _, leg := range d.Ends {
			p.Notches = append(p.Notches, pattern.Notch{At: leg, Edge: "side", Marks: 1, Into: degrees(leg.To(d.Tip)), Name: "dart leg"})
		}
	}
	waist, hip := c.at(h.id("waist")), c.at(h.id("hip"))
	notch(p, "side", "waist", waist, marks)
	notch(p, "side", "hip", hip, marks)
	notch(p, "side", "hem fold", c.at(h.id("hem_side")), 1)
	bust := c.s.Known.Body(measure.SideNeckToBustPoint).MM()
	balance(p, "bust", bust)
	balance(p, "waist", waist.Y)
	balance(p, "hip", hip.Y)
}

func (c cutter) neckFacing(h half) pattern.Piece {
	k := c.s.Known
	neck, outer := c.line(h.id("neck")), c.line(h.id("neck_facing"))
	neckAllowance := max(0, k.Length("neck_allowance")-detail.FacingLess)
	end := bench.Side{Name: "fold", Stitch: geom.Lines(outer.Start(), neck.Start()), Role: pattern.RoleFold}
	title, cut, marks := "Front neck facing", pattern.OnFold, 1
	if h.back {
		end = bench.Side{Name: "centre_back", Stitch: end.Stitch, Allowance: k.Length("zip_allowance"), Role: pattern.RoleStitch}
		title, cut, marks = "Back neck facing", pattern.Pair, 2
	}
	p := closed(facingOf(h, "neck"), title, cut, []bench.Side{
		{Name: "neck", Stitch: neck, Allowance: neckAllowance, SewnTo: pattern.EdgeRef{Piece: h.piece, Edge: "neck"}, Role: pattern.RoleStitch},
		{Name: "shoulder", Stitch: geom.Lines(neck.End(), outer.End()), Allowance: k.Length("shoulder_allowance"), Role: pattern.RoleStitch},
		{Name: "outer", Stitch: outer.Reverse(), Role: pattern.RoleStitch},
		end,
	})
	p.Also = []string{"interfacing"}
	mid, _ := neck.At(neck.Length() / 2)
	notch(&p, "neck", "middle of the neck", mid, marks)
	return p
}

func (c cutter) armholeFacing(h half) pattern.Piece {
	k := c.s.Known
	arm, outer := c.line(h.id("armhole")), c.line(h.id("armhole_facing"))
	title, marks := "Front armhole facing", 1
	if h.back {
		title, marks = "Back armhole facing", 2
	}
	side := k.Length("side_allowance")
	p := closed(facingOf(h, "armhole"), title, pattern.Pair, []bench.Side{
		{Name: "shoulder", Stitch: geom.Lines(outer.Start(), arm.Start()), Allowance: k.Length("shoulder_allowance"), Role: pattern.RoleStitch},
		{
			Name: "armhole", Stitch: arm, Allowance: max(0, k.Length("armhole_allowance")-detail.FacingLess),
			SewnTo: pattern.EdgeRef{Piece: h.piece, Edge: "armhole"}, Role: pattern.RoleStitch,
		},
		{Name: "side", Stitch: geom.Lines(arm.End(), outer.End()), Allowance: side, Role: pattern.RoleStitch},
		{Name: "outer", Stitch: outer.Reverse(), Role: pattern.RoleStitch},
	})
	p.Also = []string{"interfacing"}
	notch(&p, "armhole", "middle of the armhole", c.at(h.id("armhole_mid")), marks)
	return p
}

// figures reads the lengths of a half off its marks.
func (c cutter) figures(h half) {
	add := func(d pattern.Dimension) { c.s.Lengths = append(c.s.Lengths, d) }
	for _, name := range []string{"neck", "shoulder", "armhole"} {
		if c.has(h.id(name)) {
			add(dim(h.piece, name, c.line(h.id(name)).Length()))
		}
	}
	if c.has(h.id("side")) {
		straight, drawn := c.sides(h)
		add(dim(h.piece, "side", straight))
		add(dim(h.piece, "side_drawn", drawn))
	}
	if c.has(h.id("hem")) {
		add(dim(h.piece, "hem", c.line(h.id("hem")).Length()))
	}
	if c.s.Method == pattern.Thumb {
		return
	}
	if c.has(h.id("dart_lower")) {
		tip, up, low := c.at(h.id("dart_tip")), c.at(h.id("dart_upper")), c.at(h.id("dart_lower"))
		add(dim(h.piece, "dart_intake", up.Dist(low)))
		add(dim(h.piece, "dart_leg", tip.Dist(up)))
		add(angle(h.piece, "dart_angle", rule.Degrees(rule.DartAngle(measure.Length(up.Dist(low)), measure.Length(tip.Dist(up))))))
	}
	if c.has(h.id("waist")) {
		add(dim(h.piece, "waist_spare", c.at(h.id("waist")).X-rule.WaistWanted(c.s.Known).Result().MM()))
	}
}

// sides measures the side of a half, dart closed: on the straight figure,
// and as it is drawn.
func (c cutter) sides(h half) (straight, drawn float64) {
	upper := 0.0
	from := c.at(h.id("underarm"))
	if end := "bust_side"; c.has(h.id(end)) {
		upper = from.Dist(c.at(h.id(end)))
		from = c.at(h.id(end))
	} else if c.has(h.id("dart_lower")) {
		upper = from.Dist(c.at(h.id("dart_upper")))
		from = c.at(h.id("dart_lower"))
	}
	points := append([]geom.Point{from, c.at(h.id("waist")), c.at(h.id("hip"))}, thumbBelow(c.at, c.has, h)...)
	return upper + ruled(points...), upper + c.line(h.id("side")).Length()
}

// girths adds up what goes round her, both halves and both sides.
func (c cutter) girths() {
	add := func(d pattern.Dimension) { c.s.Girths = append(c.s.Girths, d) }
	for _, g := range []struct {
		name  string
		times float64
	}{{"neck", 2}, {"armhole", 1}} {
		f, okF := c.s.Dimension(pattern.Front, g.name)
		b, okB := c.s.Dimension(pattern.Back, g.name)
		if okF && okB {
			add(girth(g.name, g.times*(f.Length+b.Length).MM()))
		}
	}
	for _, g := range []struct{ name, point string }{{"bust", "underarm"}, {"waist", "waist"}, {"hip", "hip"}, {"hem", "hem_side"}} {
		if c.has("front."+g.point) && c.has("back."+g.point) {
			add(girth(g.name, 2*(c.at("front."+g.point).X+c.at("back."+g.point).X)))
		}
	}
}
