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
	c.sleeveFigures()
	c.collarFigures()
	var pieces []pattern.Piece
	frontDone, frontOK := c.drawn("front.allowances")
	backDone, backOK := c.drawn("back.allowances")
	switch panels := detail.HasPanels(s.Known); {
	case detail.HasWaistSeam(s.Known):
		pieces = c.atWaist(frontOK, backOK)
	case panels:
		for _, h := range []half{theFront, theBack} {
			if _, ok := c.drawn(h.id("allowances")); ok {
				pieces = append(pieces, c.panelled(h)...)
			}
		}
	default:
		if frontOK {
			pieces = append(pieces, c.front())
		}
		if backOK {
			pieces = append(pieces, c.back())
		}
	}
	var halves []half
	if frontOK {
		halves = append(halves, theFront)
	}
	if backOK {
		halves = append(halves, theBack)
	}
	pieces = append(pieces, c.facings(halves)...)
	pieces = append(pieces, c.hemFacings(pieces)...)
	added, addedOK := c.added()
	pieces = append(pieces, added...)
	pieces = append(pieces, c.linings(pieces)...)
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
	s.Complete = frontOK && backOK && addedOK
}

// added are the pieces that are sewn to the dress and not traced from it;
// false where one that was asked for could not be drawn.
func (c cutter) added() ([]pattern.Piece, bool) {
	var out []pattern.Piece
	whole := true
	for _, a := range []struct {
		wanted bool
		step   string
		cut    func() []pattern.Piece
	}{
		{detail.HasSleeve(c.s.Known), "sleeve.allowances", func() []pattern.Piece { return []pattern.Piece{c.sleeve()} }},
		{detail.HasCollar(c.s.Known), "collar.allowances", c.collar},
		{detail.HasPlacket(c.s.Known), "front.placket", func() []pattern.Piece { return []pattern.Piece{c.placketBand()} }},
	} {
		if !a.wanted {
			continue
		}
		if _, ok := c.drawn(a.step); ok {
			out = append(out, a.cut()...)
		} else {
			whole = false
		}
	}
	return out, whole
}

// upperSides are neck, shoulder and armhole of a half.
func (c cutter) upperSides(h half) []bench.Side {
	k, other := c.s.Known, pattern.Back
	if h.back {
		other = pattern.Front
	}
	necks, _, _ := c.necks(h, c.line(h.id("neck")), k.Length("neck_allowance"), c.finishOf(h, "neck").Piece)
	return append(
		necks,
		bench.Side{
			Name: "shoulder", Stitch: c.line(h.id("shoulder")), Allowance: k.Length("shoulder_allowance"),
			SewnTo: pattern.EdgeRef{Piece: other, Edge: "shoulder"}, Role: pattern.RoleStitch,
		},
		bench.Side{
			Name: "armhole", Stitch: c.line(h.id("armhole")), Allowance: k.Length("armhole_allowance"),
			SewnTo: c.finishOf(h, "armhole"), Role: pattern.RoleStitch,
		},
	)
}

func facingOf(h half, edge string) pattern.PieceID {
	return h.piece + pattern.PieceID("_"+edge+"_facing")
}

// finishOf is the piece that finishes an edge of a half; none where a strip
// does.
func (c cutter) finishOf(h half, edge string) pattern.EdgeRef {
	if edge == "armhole" && detail.HasSleeve(c.s.Known) {
		if !setIn(c.s.Known) {
			return pattern.EdgeRef{}
		}
		return pattern.EdgeRef{Piece: pattern.Sleeve, Edge: string(h.piece) + "_cap"}
	}
	switch detail.FacingKind(c.s.Known) {
	case detail.BiasFacing:
		return pattern.EdgeRef{}
	case detail.LinedEdges:
		return pattern.EdgeRef{Piece: liningID(h.piece), Edge: edge}
	case detail.AllInOneFacing:
		return pattern.EdgeRef{Piece: h.piece + "_facing", Edge: edge}
	}
	return pattern.EdgeRef{Piece: facingOf(h, edge), Edge: edge}
}

// frontSides are the edges of the front from the neck to the end of the side,
// which ends in a corner of its own.
func (c cutter) frontSides(end pattern.Corner) []bench.Side {
	side := c.s.Known.Length("side_allowance")
	toBack := pattern.EdgeRef{Piece: pattern.Back, Edge: "side"}
	sides := c.turnedUpper(c.upperSides(theFront))
	lower := bench.Side{Name: "side", Stitch: c.line("front.side"), Allowance: side, Corner: end, SewnTo: toBack, Role: pattern.RoleStitch}
	if end := c.line("front.dart_end"); len(end) == 2 && c.has("front.side_upper") {
		cut := c.dartCuts(side)
		lower.Cut = cut.lower
		sides = append(
			sides,
			bench.Side{Name: "side", Stitch: c.line("front.side_upper"), Cut: cut.upper, Allowance: side, Corner: pattern.None, SewnTo: toBack, Role: pattern.RoleStitch},
			bench.Side{Name: "dart", Stitch: end[:1], Cut: cut.toCap, Allowance: side, Corner: pattern.None, Role: pattern.RoleStitch},
			bench.Side{Name: "dart", Stitch: end[1:], Cut: cut.fromCap, Allowance: side, Corner: pattern.None, Role: pattern.RoleStitch},
		)
	}
	if end != pattern.Mirrored {
		return append(sides, lower) // ends at the waist
	}
	return append(sides, c.openSides(theFront, lower)...)
}

func (c cutter) front() pattern.Piece {
	k := c.s.Known
	hem := c.line("front.hem")
	if detail.PlacketToHem(k) {
		hem = besideCentre(hem.Reverse()).Reverse()
	}
	edge := bench.Side{Name: "hem", Stitch: hem, Allowance: k.Length("hem_allowance"), Role: pattern.RoleStitch}
	if detail.HasFrontSeam(k) && !detail.PlacketToHem(k) {
		edge.Corner = pattern.Mirrored
	}
	sides := append(c.frontSides(pattern.Mirrored), edge)
	sides = append(sides, c.frontCentre(hem.End())...)
	p := closed(pattern.Front, "Front", frontCut(k), sides)
	c.frontDart(&p)
	c.commonMarks(&p, theFront, 1)
	c.waistDarts(&p, theFront)
	c.sideZipNotches(&p, 1)
	c.slitNotch(&p, theFront)
	return p
}

// dartCuts is the cutting line at the side dart.
type dartCuts struct{ upper, toCap, fromCap, lower geom.Path }

// dartCuts ends the cutting lines above and below the dart on its legs, run
// on, and cuts the cap with the dart folded down: the line below, mirrored in
// the lower leg, as far as the dart's middle. Joined like other corners the
// two would cross on a dart that falls to its tip.
func (c cutter) dartCuts(allowance measure.Length) dartCuts {
	tip := c.sideTip()
	up, low := c.dartLegsOf()
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
	up, low := c.dartLegsOf()
	place := detail.DartPlace(c.s.Known)
	d := pattern.Dart{Name: dartNames[place], Tip: c.sideTip(), Legs: [2]geom.Point{up, low}, Cap: c.at("front.dart_cap"), Pressed: "down"}
	if place == detail.ShoulderDart || place == detail.NeckDart {
		d.Pressed = "to the centre"
	}
	putDart(p, d, "")
}

// putDart puts a dart into its piece: how wide and how long it is and its
// angle, where its legs leave the cutting line, with a notch at each if an edge
// is named, and the hole short of its tip.
func putDart(p *pattern.Piece, d pattern.Dart, edge string) {
	d.Intake = measure.Length(d.Legs[0].Dist(d.Legs[1]))
	if d.Leg == 0 {
		d.Leg = measure.Length(d.Tip.Dist(d.Legs[0]))
	}
	d.Degrees = rule.Degrees(rule.DartAngle(d.Intake, d.Leg))
	for i, leg := range d.Legs {
		d.Ends[i] = legEnd(d.Tip, leg, p.CutLine)
		if edge != "" {
			p.Notches = append(p.Notches, pattern.Notch{At: d.Ends[i], Edge: edge, Marks: 1, Into: degrees(d.Ends[i].To(d.Tip)), Name: "dart leg"})
		}
	}
	p.Darts = append(p.Darts, d)
	p.Holes = append(p.Holes, d.Tip.Add(d.Tip.To(d.Legs[0].Lerp(d.Legs[1], 0.5)).Unit().Scale(rule.In(0.5).MM())))
}

// dartNames are what the bust dart is called, by its place; dartEdges the
// edges that it lies in.
var (
	dartNames = map[string]string{
		detail.SideDartPlace: "side dart", detail.FrenchDart: "French dart", detail.ArmholeDart: "armhole dart",
		detail.ShoulderDart: "shoulder dart", detail.NeckDart: "neck dart", detail.CentreDart: "centre dart", detail.SplitDart: "side dart",
	}
	dartEdges = map[string]string{
		detail.SideDartPlace: "side", detail.FrenchDart: "side", detail.ArmholeDart: "armhole",
		detail.ShoulderDart: "shoulder", detail.NeckDart: "neck", detail.CentreDart: "centre_front", detail.SplitDart: "side",
	}
)

// legEnd runs a dart leg on to the cutting line.
func legEnd(tip, leg geom.Point, cut geom.Path) geom.Point {
	far := leg.Add(tip.To(leg).Unit().Scale(rule.In(6).MM()))
	if x, ok := geom.FirstCross(geom.Straight(leg, far), cut); ok {
		return x
	}
	return leg
}

func (c cutter) back() pattern.Piece {
	k := c.s.Known
	sides := append(c.backUpper(), c.openSides(theBack, bench.Side{
		Name: "side", Stitch: c.line("back.side"), Allowance: k.Length("side_allowance"), Corner: pattern.Mirrored,
		SewnTo: pattern.EdgeRef{Piece: pattern.Front, Edge: "side"}, Role: pattern.RoleStitch,
	})...)
	cut := pattern.Pair
	if detail.BackOnFold(k) {
		cut = pattern.OnFold
	}
	hem := c.line("back.hem")
	p := closed(pattern.Back, "Back", cut, append(sides, c.centreSides(hem, c.centreUp(hem))...))
	c.commonMarks(&p, theBack, 2)
	c.backDart(&p)
	c.waistDarts(&p, theBack)
	c.sideZipNotches(&p, 2)
	c.slitNotch(&p, theBack)
	c.backMarks(&p)
	return p
}

// backMarks are the marks of the centre back.
func (c cutter) backMarks(p *pattern.Piece) {
	if c.has("back.zip_end") {
		notch(p, "centre_back", "zip end", c.folded("back.zip_end"), 1)
	}
	if c.opens() {
		notch(p, "centre_back", "top of the opening", c.folded("back.slit_top"), 1)
	}
	c.openingFolds(p)
}

// commonMarks adds the notches and balance lines of a half.
func (c cutter) commonMarks(p *pattern.Piece, h half, marks int) {
	c.upperMarks(p, h, marks)
	waist, hip := c.at(h.id("waist")), c.folded(h.id("hip"))
	notch(p, "side", "waist", waist, marks)
	notch(p, "side", "hip", hip, marks)
	notch(p, "side", "hem fold", c.folded(h.id("hem_side")), 1)
	if c.has(h.id("sway_line")) {
		c.swayLines(p)
		return
	}
	balance(p, "waist", waist.Y)
	balance(p, "hip", hip.Y)
}

// upperMarks are the notches of armhole and darts and the bust line.
func (c cutter) upperMarks(p *pattern.Piece, h half, marks int) {
	notch(p, "armhole", "middle of the armhole", c.moved(h.id("armhole_mid")), marks)
	c.sleeveNotches(p, h)
	for _, d := range p.Darts {
		for _, leg := range d.Ends {
			p.Notches = append(p.Notches, pattern.Notch{At: leg, Edge: dartEdges[detail.DartPlace(c.s.Known)], Marks: 1, Into: degrees(leg.To(d.Tip)), Name: "dart leg"})
		}
	}
	balance(p, "bust", rule.BustLevel(c.s.Known).MM())
}

func (c cutter) neckFacing(h half) pattern.Piece {
	k := c.s.Known
	neck, outer := c.closedLine(h.id("neck")), c.line(h.id("neck_facing"))
	neckAllowance := max(0, k.Length("neck_allowance")-detail.Favour(k))
	necks, end, outer, cut := c.facingFront(h, neck, outer, neckAllowance)
	title, marks := "Front neck facing", 1
	if h.back {
		title, marks = "Back neck facing", 2
	}
	if h.back && detail.Closure(k) == detail.ZipBehind {
		end = bench.Side{Name: "centre_back", Stitch: end.Stitch, Allowance: k.Length("zip_allowance"), Role: pattern.RoleStitch}
		cut = pattern.Pair
	}
	p := closed(facingOf(h, "neck"), title, cut, append(
		necks,
		bench.Side{Name: "shoulder", Stitch: c.shoulderOfFacing(h, neck, outer), Allowance: k.Length("shoulder_allowance"), Role: pattern.RoleStitch},
		c.outerEdge(h, outer.Reverse()),
		end,
	))
	p.Also = []string{"interfacing"}
	mid, _ := neck.At(neck.Length() / 2)
	notch(&p, "neck", "middle of the neck", mid, marks)
	return p
}

func (c cutter) armholeFacing(h half) pattern.Piece {
	k := c.s.Known
	arm, outer := c.closedLine(h.id("armhole")), c.line(h.id("armhole_facing"))
	first := bench.Side{Name: "shoulder", Stitch: geom.Lines(outer.Start(), arm.Start()), Allowance: k.Length("shoulder_allowance"), Role: pattern.RoleStitch}
	sewnTo := c.armholeOf(h)
	if detail.HasSleeve(k) {
		arm = detail.LowerArmhole(arm)
		first = bench.Side{Name: "end", Stitch: geom.Lines(outer.Start(), arm.Start()), Allowance: k.Length("armhole_allowance"), Role: pattern.RoleStitch}
		sewnTo = pattern.EdgeRef{} // to a part of that edge
	}
	title, marks := "Front armhole facing", 1
	if h.back {
		title, marks = "Back armhole facing", 2
	}
	side := k.Length("side_allowance")
	p := closed(facingOf(h, "armhole"), title, pattern.Pair, []bench.Side{
		first,
		{
			Name: "armhole", Stitch: arm, Allowance: max(0, k.Length("armhole_allowance")-detail.Favour(k)),
			SewnTo: sewnTo, Role: pattern.RoleStitch,
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
			add(dim(h.piece, name, c.closedLine(h.id(name)).Length()))
		}
	}
	if c.has(h.id("side")) {
		straight, drawn := c.sides(h)
		add(dim(h.piece, "side", straight))
		add(dim(h.piece, "side_drawn", drawn))
	}
	if c.has(h.id("hem")) {
		add(dim(h.piece, "hem", c.line(h.id("hem")).Length()+c.flaredBy(h)))
	}
	if c.s.Method == pattern.Thumb {
		return
	}
	if c.has(h.id("dart_lower")) && !detail.HasPanels(c.s.Known) {
		tip := c.at(h.id("dart_tip"))
		up, low := c.dartLegsOf()
		add(dim(h.piece, "dart_intake", up.Dist(low)))
		add(dim(h.piece, "dart_leg", tip.Dist(up)))
		add(angle(h.piece, "dart_angle", rule.Degrees(rule.DartAngle(measure.Length(up.Dist(low)), measure.Length(tip.Dist(up))))))
	}
	if c.has(h.id("waist")) {
		add(dim(h.piece, "waist_spare", c.at(h.id("waist")).X-rule.WaistWantedOf(c.s.Known, h.back).Result().MM()))
		if taken := c.waistTaken(h); taken > 0 {
			add(dim(h.piece, "waist_darts", taken))
		}
	}
}

// sides measures the side of a half, dart closed: on the straight figure,
// and as it is drawn.
func (c cutter) sides(h half) (straight, drawn float64) {
	upper := 0.0
	from := under(c.has, c.at, h)
	if end := "bust_side"; c.has(h.id(end)) {
		upper = from.Dist(c.at(h.id(end)))
		from = c.at(h.id(end))
	} else if c.has(h.id("dart_lower")) {
		upper = from.Dist(c.at(h.id("dart_upper")))
		from = c.at(h.id("dart_lower"))
	}
	drawn = upper + c.line(h.id("side")).Length() + c.line(h.id("skirt_side")).Length()
	if name := h.id("waist_turned"); c.has(name) {
		upper += from.Dist(c.at(name))
		from = c.at(h.id("waist"))
	}
	points := append([]geom.Point{from, c.at(h.id("waist")), c.at(h.id("hip"))}, thumbBelow(c.at, c.has, h)...)
	if name := h.id("skirt_hip"); c.has(name) {
		upper += ruled(points[:3]...)
		points = []geom.Point{c.at(name), c.at(h.id("hem_side"))}
	}
	if !h.back && c.has("front.dart_corner") && !splitDart(c.s.Known) {
		// The side dart is closed: its corner was drawn through.
		drawn = c.line("front.side_upper").Length() + c.line("front.side").Length() + c.line("front.skirt_side").Length()
	}
	return upper + ruled(points...), drawn
}

// flaredBy is what flared panels add to the hem of a half.
func (c cutter) flaredBy(h half) float64 {
	if !c.has(h.id("panel_hem_side")) {
		return 0
	}
	return c.line(h.id("panel_hem_side")).Length() + c.line(h.id("panel_hem_centre")).Length() - c.line(h.id("hem")).Length()
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
			round := c.at("front."+g.point).X + c.at("back."+g.point).X
			switch {
			case g.name == "waist":
				round -= c.waistTaken(theFront) + c.waistTaken(theBack)
			case g.name == "hem" && c.s.Method != pattern.Thumb && detail.Widens(c.s.Known):
				round = c.line("front.hem").Length() + c.line("back.hem").Length()
			}
			if g.name == "hem" {
				round += c.flaredBy(theFront) + c.flaredBy(theBack)
			}
			add(girth(g.name, 2*round))
		}
	}
}
