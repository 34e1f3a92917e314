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

func facedBy(kind string) func(pattern.Known) bool {
	return func(k pattern.Known) bool { return detail.FacingKind(k) == kind }
}

// wholeFacing draws a facing that goes round neck and armhole in one, on the
// half itself with the dart closed.
func wholeFacing(h half) bench.Step {
	return bench.Step{
		ID: h.id("facing"), Piece: h.piece, Title: "Facing, all in one", If: facedBy(detail.AllInOneFacing),
		Why:     measure.Tell("Traced from the finished edges in one, neck and armhole hold each other: nothing lies double on the shoulder and nothing rolls out."),
		Slip:    measure.Tell("Joining the shoulders before it is turned: it no longer goes through."),
		Choices: []pattern.ChoiceID{"facing", "facing_depth", "facing_favour"},
		Uses:    h.uses("neck", "armhole", "underarm", "waist", "neck_centre"),
		Draw: func(p *bench.Pen) {
			if detail.HasSleeve(p.K) {
				p.Refuse(pattern.Refused{
					Code: "R19", Input: "facing",
					Says: measure.Tell("an all-in-one facing goes round the armhole, and a sleeve is set in there"),
					Cure: measure.Tell("separate facings, or a bias strip"),
				})
				return
			}
			if depth := p.K.Length("facing_depth"); depth < rule.In(1) || depth > rule.In(6) {
				p.Refuse(pattern.Refused{
					Code: "R19", Input: "facing_depth",
					Says: measure.Tell("a facing {} deep at the centre is none that can be sewn", depth),
					Cure: measure.Tell("a depth between {2 1/2 in} and {3 in}; up to {6 in} can be drawn"),
				})
				return
			}
			u := under(p.Has, p.At, h)
			down := u.To(p.At(h.id("waist"))).Unit()
			below := measure.Length(0)
			if !h.back && dartInSide(p.K) {
				below = p.K.Length("side_dart_below")
				down = u.To(p.At("front.dart_upper")).Unit()
			}
			if h.back && dartInSide(p.K) {
				below = p.K.Length("side_dart_below")
			}
			deep := detail.AllInOneSide(below)
			c := p.At(h.id("neck_centre"))
			c.Y += p.K.Length("facing_depth").MM()
			if foot := p.Line(h.id("neck_opening")); len(foot) > 0 {
				c.Y = math.Max(c.Y, foot.Start().Y+rule.In(1).MM())
			}
			line := detail.AllInOne(c, u, down, deep, p.Line(h.id("armhole")), h.back)
			p.Sum(measure.Of("below the neck", p.K.Length("facing_depth")))
			p.Do("Trace neck, shoulder and armhole. Mark {} down the "+h.centre+" and {} down the side from the underarm, and join them: level at the "+h.centre+", square to the side.",
				measure.Length(c.Y), deep)
			if clear := detail.Strap(line, p.Line(h.id("armhole"))); clear < rule.In(1) {
				p.Refuse(pattern.Refused{
					Code: "R19", Input: "facing",
					Says: measure.Tell("an all-in-one facing would keep only {} from the armhole of the "+string(h.piece)+"; it does not lie flat", clear),
					Cure: measure.Tell("separate facings, or a bias strip"),
				})
				return
			}
			p.Draw("facing", line, pattern.RoleBalance)
		},
	}
}

// biasStep tells the strips that finish the edges of both halves.
func biasStep() bench.Step {
	return bench.Step{
		ID: "front.bias", Piece: pattern.Front, Title: "Bias strips", If: facedBy(detail.BiasFacing),
		Why:     measure.Tell("A strip on the bias follows a curve without clipping. It is cut a little longer than its edge and eased on."),
		Slip:    measure.Tell("Cutting it along the grain: it does not go round."),
		Choices: []pattern.ChoiceID{"facing"},
		Uses:    append(theFront.uses("neck", "armhole"), theBack.uses("neck", "armhole")...),
		Draw: func(p *bench.Pen) {
			if detail.HasNeckOpening(p.K) {
				p.Refuse(pattern.Refused{
					Code: "R19", Input: "facing",
					Says: measure.Tell("an opening in the neck is stitched with its facing; a bias strip cannot go round its point"),
					Cure: measure.Tell("separate facings, or one all in one"),
				})
				return
			}
			neck := measure.Length(2 * (p.Line("front.neck").Length() + p.Line("back.neck").Length()))
			arm := measure.Length(p.Line("front.armhole").Length() + p.Line("back.armhole").Length())
			if detail.HasSleeve(p.K) {
				arm = measure.Length(detail.LowerArmhole(p.Line("front.armhole")).Length() + detail.LowerArmhole(p.Line("back.armhole")).Length())
			}
			p.Sum(measure.Drawn("neck", neck).Plus(measure.Of("more", detail.BiasMore)))
			p.Do("Cut strips {} wide at 45 degrees to the grain: one {} long for the neck, two {} long for the armholes.",
				detail.BiasWidth, neck+detail.BiasMore, arm+detail.BiasMore)
			if setIn(p.K) {
				p.Do("Cut a strip {} wide at 45 degrees to the grain, {} long for the neck.", detail.BiasWidth, neck+detail.BiasMore)
			}
			p.Guide("bias", p.At("front.neck_centre"), p.At("front.neck_centre").Add(geom.Vector{Y: detail.BiasWidth.MM()}))
		},
	}
}

// facingMarks are the marks of the facings of a half, by their kind.
func facingMarks(k pattern.Known, h half) []string {
	switch detail.FacingKind(k) {
	case detail.AllInOneFacing:
		return h.uses("facing")
	case detail.BiasFacing:
		return []string{"front.bias"}
	case detail.LinedEdges:
		return nil
	}
	if setIn(k) {
		return h.uses("neck_facing")
	}
	return h.uses("neck_facing", "armhole_facing")
}

// facings are the pieces that finish the edges, of the halves that are drawn.
func (c cutter) facings(halves []half) []pattern.Piece {
	var out []pattern.Piece
	switch detail.FacingKind(c.s.Known) {
	case detail.AllInOneFacing:
		for _, h := range halves {
			out = append(out, c.wholeFacing(h))
		}
	case detail.LinedEdges: // the lining's own edges finish them
	case detail.BiasFacing:
		if len(halves) == 2 {
			out = append(out, c.strip(pattern.NeckStrip, "Neck strip", "neck", "neck", 2))
			switch {
			case setIn(c.s.Known):
			case detail.HasSleeve(c.s.Known):
				out = append(out, c.strip(pattern.ArmholeStrip, "Armhole strip", "armhole", "armhole_faced", 1))
			default:
				out = append(out, c.strip(pattern.ArmholeStrip, "Armhole strip", "armhole", "armhole", 1))
			}
		}
	default:
		for _, h := range halves {
			out = append(out, c.neckFacing(h))
		}
		for _, h := range halves {
			if !setIn(c.s.Known) {
				out = append(out, c.armholeFacing(h))
			}
		}
	}
	return out
}

func (c cutter) wholeFacing(h half) pattern.Piece {
	k := c.s.Known
	neck, arm, outer := c.closedLine(h.id("neck")), c.closedLine(h.id("armhole")), c.line(h.id("facing"))
	favour := detail.Favour(k)
	necks, end, outer, cut := c.facingFront(h, neck, outer, max(0, k.Length("neck_allowance")-favour))
	id, title, marks := pattern.FrontFacing, "Front facing", 1
	if h.back {
		id, title, marks = pattern.BackFacing, "Back facing", 2
	}
	if h.back && detail.Closure(k) == detail.ZipBehind {
		end = bench.Side{Name: "centre_back", Stitch: end.Stitch, Allowance: k.Length("zip_allowance"), Role: pattern.RoleStitch}
		cut = pattern.Pair
	}
	p := closed(id, title, cut, append(
		necks,
		bench.Side{Name: "shoulder", Stitch: c.shoulderOfFacing(h, neck, arm.Reverse()), Allowance: k.Length("shoulder_allowance"), Role: pattern.RoleStitch},
		bench.Side{
			Name: "armhole", Stitch: arm, Allowance: max(0, k.Length("armhole_allowance")-favour),
			SewnTo: c.armholeOf(h), Role: pattern.RoleStitch,
		},
		bench.Side{Name: "side", Stitch: geom.Lines(arm.End(), outer.End()), Allowance: k.Length("side_allowance"), Role: pattern.RoleStitch},
		c.outerEdge(h, outer.Reverse()),
		end,
	))
	p.Also = []string{"interfacing"}
	mid, _ := neck.At(neck.Length() / 2)
	notch(&p, "neck", "middle of the neck", mid, marks)
	notch(&p, "armhole", "middle of the armhole", c.at(h.id("armhole_mid")), marks)
	return p
}

// strip is a bias strip for an edge, as it lies on the cloth: at 45 degrees
// to the grain, which stands upright as on every piece.
func (c cutter) strip(id pattern.PieceID, title, edge, figure string, times float64) pattern.Piece {
	f, _ := c.s.Dimension(pattern.Front, figure)
	b, _ := c.s.Dimension(pattern.Back, figure)
	long := times*(f.Length+b.Length).MM() + detail.BiasMore.MM()
	way := geom.Vector{X: 1, Y: 1}.Unit()
	across := way.Right().Scale(detail.BiasWidth.MM())
	a := geom.Point{X: -across.X, Y: 0}
	z := a.Add(way.Scale(long))
	corners := []geom.Point{a, z, z.Add(across), a.Add(across), a}
	var sides []bench.Side
	for i, name := range []string{edge, "end", "outer", "end"} {
		sides = append(sides, bench.Side{Name: name, Stitch: geom.Lines(corners[i], corners[i+1]), Role: pattern.RoleStitch})
	}
	p := closed(id, title, pattern.Single, sides)
	if edge == "armhole" {
		p.Count = 2
	}
	return p
}
