package garment

import (
	"math"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

// seam is the stitching line of a half by thumb: inside the cutting edges,
// joined where they meet.
type seam struct {
	neck, shoulder, armhole geom.Path
	upper                   geom.Path // side, underarm to dart (back: to the bust line)
	dart                    geom.Path // over the cap
	side                    geom.Path
	hem                     geom.Path
}

const (
	insideTolerance = 0.002
	insideLimit     = 3 * 25.4
)

// level is the side's allowance: taken level, so that the sewn half width is
// a quarter of the girth everywhere.
var level = geom.Vector{X: -rule.ThumbAllowance.MM()}

// seam finds the stitching line of a half.
func (c cutter) seam(h half) seam {
	k := c.s.Known
	inside := func(name string, id pattern.ChoiceID) geom.Path {
		return c.line(h.id(name)).Offset(-k.Length(id).MM(), insideTolerance)
	}
	var s seam
	s.neck, s.shoulder = geom.Join(inside("neck", "neck_allowance"), inside("shoulder", "shoulder_allowance"), insideLimit)
	s.shoulder, s.armhole = geom.Join(s.shoulder, inside("armhole", "armhole_allowance"), insideLimit)
	s.upper = c.line(h.id("side_upper")).Transform(geom.Move(level))
	s.armhole, s.upper = geom.Join(s.armhole, s.upper, insideLimit)
	s.side = c.line(h.id("side")).Transform(geom.Move(level))
	if !h.back {
		s.dart = geom.Lines(s.upper.End(), c.thumbCap(s), s.side.Start())
	}
	s.hem = geom.Lines(s.side.End(), c.line(h.id("hem")).End())
	return s
}

func (c cutter) thumbCap(s seam) geom.Point {
	tip, low := c.at("front.dart_tip"), s.side.Start()
	return detail.CapDown(tip, s.upper.End(), low, low.To(c.at("front.waist").Add(level)))
}

// finishThumb cuts the pieces of a dress by thumb and reads the figures off
// both lines.
func finishThumb(s *pattern.Sheet) {
	c := cutter{s}
	var seams [2]seam
	ok := [2]bool{}
	for i, h := range []half{theFront, theBack} {
		c.figures(h)
		step, done := c.drawn(h.id("stitching"))
		if ok[i] = done; !done {
			continue
		}
		seams[i] = c.seam(h)
		c.sewn(h, seams[i], step)
	}
	c.thumbGirths()
	var pieces []pattern.Piece
	for _, make := range []func(half, seam) pattern.Piece{c.thumbHalf, c.thumbNeckPiece, c.thumbArmholePiece} {
		for i, h := range []half{theFront, theBack} {
			if ok[i] {
				p := make(h, seams[i])
				p.Included = true
				pieces = append(pieces, p)
			}
		}
	}
	number(pieces)
	s.Pieces = pieces
	for _, p := range pieces {
		if step, done := c.drawn(string(p.ID) + ".stitching"); done {
			s.Marks = append(s.Marks,
				pattern.Mark{Piece: p.ID, Name: "stitch_line", Kind: pattern.MarkLine, Path: p.Stitch, Role: pattern.RoleStitch, Born: step},
				pattern.Mark{Piece: p.ID, Name: "cut_line", Kind: pattern.MarkLine, Path: p.CutLine, Role: pattern.RoleCut, Born: step})
		}
	}
	s.Complete = ok[0] && ok[1]
}

// sewn keeps points and lengths of the stitching line.
func (c cutter) sewn(h half, s seam, step int) {
	put := func(name string, at geom.Point) {
		c.s.SewnAt = append(c.s.SewnAt, pattern.Mark{Piece: h.piece, Name: name, Kind: pattern.MarkPoint, At: at, Born: step})
	}
	put("neck_point", s.neck.End())
	put("shoulder_end", s.shoulder.End())
	put("neck_centre", s.neck.Start())
	put("underarm", s.armhole.End())
	below := thumbBelow(c.at, c.has, h)
	for _, name := range []string{"waist", "hip", "knee", "hem_side"} {
		if c.has(h.id(name)) {
			put(name, c.at(h.id(name)).Add(level))
		}
	}
	put("hem_centre", c.at(h.id("hem_centre")))
	add := func(d pattern.Dimension) { c.s.Sewn = append(c.s.Sewn, d) }
	add(dim(h.piece, "neck", s.neck.Length()))
	add(dim(h.piece, "shoulder", s.shoulder.Length()))
	add(dim(h.piece, "armhole", s.armhole.Length()))
	start := s.side.Start()
	points := []geom.Point{start, c.at(h.id("waist")).Add(level), c.at(h.id("hip")).Add(level)}
	for _, b := range below {
		points = append(points, b.Add(level))
	}
	add(dim(h.piece, "side", s.upper.Length()+ruled(points...)))
	add(dim(h.piece, "side_drawn", s.upper.Length()+s.side.Length()))
	add(dim(h.piece, "hem", s.hem.Length()))
	if h.back {
		return
	}
	tip := c.at("front.dart_tip")
	put("dart_tip", tip)
	put("dart_upper", s.upper.End())
	put("dart_lower", start)
	put("dart_cap", s.dart[0].D)
	for _, list := range []*[]pattern.Dimension{&c.s.Sewn, &c.s.Lengths} {
		intake, leg := measure.Length(s.upper.End().Dist(start)), measure.Length(tip.Dist(start))
		*list = append(*list, dim(h.piece, "dart_intake", intake.MM()), dim(h.piece, "dart_leg", leg.MM()),
			angle(h.piece, "dart_angle", rule.Degrees(rule.DartAngle(intake, leg))))
	}
}

// thumbGirths are the finished girths: of the stitching line.
func (c cutter) thumbGirths() {
	for _, g := range []struct {
		name  string
		times float64
	}{{"neck", 2}, {"armhole", 1}} {
		f, okF := dimensionOf(c.s.Sewn, pattern.Front, g.name)
		b, okB := dimensionOf(c.s.Sewn, pattern.Back, g.name)
		if okF && okB {
			c.s.Girths = append(c.s.Girths, girth(g.name, g.times*(f+b)))
		}
	}
	for _, g := range []struct{ name, point string }{{"bust", "underarm"}, {"waist", "waist"}, {"hip", "hip"}, {"hem", "hem_side"}} {
		if c.has("front."+g.point) && c.has("back."+g.point) {
			c.s.Girths = append(c.s.Girths, girth(g.name, 2*(c.at("front."+g.point).X+c.at("back."+g.point).X+2*level.X)))
		}
	}
}

func dimensionOf(list []pattern.Dimension, piece pattern.PieceID, name string) (float64, bool) {
	for _, d := range list {
		if d.Piece == piece && d.Name == name {
			return d.Length.MM(), true
		}
	}
	return 0, false
}

// runs makes an edge of every run of a side, each with its allowance square
// to the seam: 1 in taken level is less on a slant.
func runs(name string, stitch geom.Path, sewnTo pattern.EdgeRef) []bench.Side {
	var out []bench.Side
	for _, seg := range stitch {
		run := seg.A.To(seg.D)
		slant := math.Abs(run.Unit().Y)
		path := geom.Path{seg}
		out = append(out, bench.Side{
			Name: name, Stitch: path, Cut: path.Transform(geom.Move(level.Scale(-1))), Corner: pattern.None,
			Allowance: measure.Length(float64(rule.ThumbAllowance.MM() * slant)), SewnTo: sewnTo, Role: pattern.RoleStitch,
		})
	}
	return out
}

func (c cutter) thumbHalf(h half, s seam) pattern.Piece {
	k := c.s.Known
	other := pattern.Back
	if h.back {
		other = pattern.Front
	}
	across := pattern.EdgeRef{Piece: other, Edge: "side"}
	sides := []bench.Side{
		{
			Name: "neck", Stitch: s.neck, Cut: c.line(h.id("neck")), Allowance: k.Length("neck_allowance"),
			SewnTo: pattern.EdgeRef{Piece: facingOf(h, "neck"), Edge: "neck"}, Role: pattern.RoleStitch,
		},
		{
			Name: "shoulder", Stitch: s.shoulder, Cut: c.line(h.id("shoulder")), Allowance: k.Length("shoulder_allowance"),
			SewnTo: pattern.EdgeRef{Piece: other, Edge: "shoulder"}, Role: pattern.RoleStitch,
		},
		{
			Name: "armhole", Stitch: s.armhole, Cut: c.line(h.id("armhole")), Allowance: k.Length("armhole_allowance"), Corner: pattern.None,
			SewnTo: pattern.EdgeRef{Piece: facingOf(h, "armhole"), Edge: "armhole"}, Role: pattern.RoleStitch,
		},
	}
	upper := runs("side", s.upper, across)
	upper[0].Cut = c.line(h.id("side_upper"))
	sides = append(sides, upper...)
	if !h.back {
		sides = append(sides, runs("dart", s.dart, pattern.EdgeRef{})...)
	}
	sides = append(sides, runs("side", s.side, across)...)
	sides[len(sides)-1].Corner = pattern.Mirrored
	hem := bench.Side{Name: "hem", Stitch: s.hem, Allowance: k.Length("hem_allowance"), Role: pattern.RoleStitch}
	if !h.back {
		sides = append(sides, hem, bench.Side{Name: "fold", Stitch: geom.Lines(s.hem.End(), s.neck.Start()), Role: pattern.RoleFold})
		p := closed(pattern.Front, "Front", pattern.OnFold, sides)
		c.thumbDartOf(&p, s)
		c.thumbMarks(&p, h, 1)
		return p
	}
	hem.Corner = pattern.Mirrored
	top := c.at("back.slit_top")
	sides = append(sides, hem,
		bench.Side{Name: "centre_back", Stitch: geom.Lines(s.hem.End(), top), Allowance: rule.ThumbOverlap, Corner: pattern.Square, Role: pattern.RoleStitch},
		bench.Side{Name: "centre_back", Stitch: geom.Lines(top, s.neck.Start()), Allowance: k.Length("zip_allowance"), Role: pattern.RoleStitch})
	p := closed(pattern.Back, "Back", pattern.Pair, sides)
	c.thumbMarks(&p, h, 2)
	notch(&p, "centre_back", "zip end", c.at("back.zip_end"), 1)
	notch(&p, "centre_back", "top of the opening", top, 1)
	return p
}

func (c cutter) thumbDartOf(p *pattern.Piece, s seam) {
	tip, up, low := c.at("front.dart_tip"), s.upper.End(), s.side.Start()
	d := pattern.Dart{
		Name: "side dart", Tip: tip, Legs: [2]geom.Point{up, low}, Cap: s.dart[0].D,
		Ends:   [2]geom.Point{c.at("front.dart_upper"), c.at("front.dart_lower")},
		Intake: measure.Length(up.Dist(low)), Leg: measure.Length(tip.Dist(up)), Pressed: "down",
	}
	d.Degrees = rule.Degrees(rule.DartAngle(d.Intake, d.Leg))
	p.Darts = append(p.Darts, d)
	p.Holes = append(p.Holes, tip.Add(geom.Vector{X: rule.In(0.5).MM()}))
}

func (c cutter) thumbMarks(p *pattern.Piece, h half, marks int) {
	c.commonMarks(p, h, marks)
	if c.has(h.id("knee")) {
		balance(p, "knee", c.at(h.id("knee")).Y)
	}
}

func (c cutter) thumbNeckPiece(h half, s seam) pattern.Piece {
	k := c.s.Known
	outer := c.line(h.id("neck_facing"))
	inner := trimAt(outer, onwards(s.shoulder))
	end := bench.Side{Name: "fold", Stitch: geom.Lines(outer.Start(), s.neck.Start()), Role: pattern.RoleFold}
	title, cut, marks := "Front neck facing", pattern.OnFold, 1
	if h.back {
		end = bench.Side{Name: "centre_back", Stitch: end.Stitch, Allowance: k.Length("zip_allowance"), Role: pattern.RoleStitch}
		title, cut, marks = "Back neck facing", pattern.Pair, 2
	}
	p := closed(facingOf(h, "neck"), title, cut, []bench.Side{
		{
			Name: "neck", Stitch: s.neck, Allowance: max(0, k.Length("neck_allowance")-detail.FacingLess),
			SewnTo: pattern.EdgeRef{Piece: h.piece, Edge: "neck"}, Role: pattern.RoleStitch,
		},
		{
			Name: "shoulder", Stitch: geom.Lines(s.neck.End(), inner.End()), Cut: geom.Lines(c.at(h.id("neck_point")), outer.End()),
			Allowance: k.Length("shoulder_allowance"), Role: pattern.RoleStitch,
		},
		{Name: "outer", Stitch: inner.Reverse(), Cut: outer.Reverse(), Role: pattern.RoleStitch},
		end,
	})
	p.Also = []string{"interfacing"}
	mid, _ := s.neck.At(s.neck.Length() / 2)
	notch(&p, "neck", "middle of the neck", mid, marks)
	return p
}

// onwards runs a straight seam on past its end, for a facing that is as wide
// as the shoulder is long.
func onwards(p geom.Path) geom.Path {
	return p.Then(geom.Lines(p.End(), p.End().Add(p.EndTangent().Scale(rule.In(6).MM()))))
}

// trimAt cuts a path where it meets another; whole where it does not.
func trimAt(p, at geom.Path) geom.Path {
	if x := geom.Cross(p, at); len(x) > 0 {
		cut, _ := p.Split(x[len(x)-1].S)
		return cut
	}
	return p
}

func (c cutter) thumbArmholePiece(h half, s seam) pattern.Piece {
	k := c.s.Known
	outer := c.line(h.id("armhole_facing")) // from the shoulder to the side
	under := c.at(h.id("underarm"))
	sewnSide := plumb(s.armhole.End())
	inner := trimAt(outer, sewnSide)
	inner = trimAt(inner.Reverse(), s.shoulder).Reverse()
	title, marks := "Front armhole facing", 1
	if h.back {
		title, marks = "Back armhole facing", 2
	}
	p := closed(facingOf(h, "armhole"), title, pattern.Pair, []bench.Side{
		{
			Name: "shoulder", Stitch: geom.Lines(inner.Start(), s.shoulder.End()), Cut: geom.Lines(outer.Start(), c.at(h.id("shoulder_end"))),
			Allowance: k.Length("shoulder_allowance"), Role: pattern.RoleStitch,
		},
		{
			Name: "armhole", Stitch: s.armhole, Allowance: max(0, k.Length("armhole_allowance")-detail.FacingLess),
			SewnTo: pattern.EdgeRef{Piece: h.piece, Edge: "armhole"}, Role: pattern.RoleStitch,
		},
		{
			Name: "side", Stitch: geom.Lines(s.armhole.End(), inner.End()), Cut: geom.Lines(under, outer.End()),
			Allowance: rule.ThumbAllowance, Role: pattern.RoleStitch,
		},
		{Name: "outer", Stitch: inner.Reverse(), Cut: outer.Reverse(), Role: pattern.RoleStitch},
	})
	p.Also = []string{"interfacing"}
	notch(&p, "armhole", "middle of the armhole", c.at(h.id("armhole_mid")), marks)
	return p
}
