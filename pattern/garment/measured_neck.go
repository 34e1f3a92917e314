package garment

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

// stepWords are what a step says of one style.
type stepWords struct{ title, why, slip, do string }

// necklines are the words of the necklines other than the round one. The
// slots of do: the depth at the centre, and the choice that shapes it.
var necklines = map[string]stepWords{
	detail.JewelNeckline: {
		"Jewel neck", "It lies at the base of her neck. Square ends make a smooth ring.",
		"Counting the depth from the neck point instead of the top line.",
		"Mark the neck {} down the centre and draw the curve: level there, square to the shoulder at the neck point.",
	},
	detail.SquareNeckline: {
		"Square neck", "A side that ran straight down would seem to spread outwards, so it leans in. It turns square at the shoulder, or the ring has a peak there.",
		"Ruling the side upright: on her it looks wider below.",
		"Mark the neck {} down the centre and rule it level, out to {} inside the neck point. Draw the side up from that corner, square to the shoulder at its end.",
	},
	detail.VNeckline: {
		"V neck", "A ruled slant hollows on her. Bowed a little outwards it lies flat; only at the centre is it a point. Its edge runs on the bias: stay it with tape.",
		"Ruling the slant, and meeting the shoulder at a slant too: front and back then make a peak.",
		"Mark the point of the V {} down the centre. Draw the slant up to the neck point, bowed out by {} in its middle and square to the shoulder.",
	},
	detail.BoatNeckline: {
		"Boat neck", "It runs nearly straight from shoulder to shoulder, and lies high so that it does not slide.",
		"Cutting it low and wide: it falls off the shoulder.",
		"Mark the neck {} down the centre and draw a flat curve: level for most of the way, square to the shoulder at the neck point.",
	},
	detail.FunnelNeckline: {
		"Funnel neck", "Cut in one with the dress, it stands up round her neck. The shoulder seam runs up into it, so it wants room at its top.",
		"Running the shoulder straight up: it then strangles her.",
		"Mark {} down the centre: the neck that the funnel stands on. From there and from the neck point go up {}, {1/8 in} nearer to the centre at the shoulder; draw the top edge level at both ends, and the shoulder seam down into the shoulder over its first inch.",
	},
	detail.SweetheartNeckline: {
		"Sweetheart neck", "The arc follows the bust, and dips to a point at the centre. The edge runs on the bias: stay it with tape.",
		"An arc that lies outside the bust: it stands off.",
		"Mark the point {} down the centre. From there draw the arc, {} above the point where it is highest over the bust, and the side up to the neck point, square to the shoulder.",
	},
}

// wordsOf is whose words a neckline uses: slit and keyhole stand below a
// jewel neck.
func wordsOf(style string) string {
	if style == detail.SlitNeckline || style == detail.KeyholeNeckline {
		return detail.JewelNeckline
	}
	return style
}

// styledNeck draws any neck but the round one: one step a neckline, of which
// the job has one.
func styledNeck(h half) []bench.Step {
	styles := []string{
		detail.JewelNeckline, detail.SquareNeckline, detail.VNeckline, detail.BoatNeckline,
		detail.SweetheartNeckline, detail.SlitNeckline, detail.KeyholeNeckline, detail.FunnelNeckline,
	}
	depth := pattern.ChoiceID(string(h.piece) + "_neck_depth")
	var out []bench.Step
	for _, style := range styles {
		words, shaping := necklines[wordsOf(style)], shapedBy[style]
		st := bench.Step{
			ID: h.id("neck"), Piece: h.piece, Title: words.title, Why: measure.Tell(words.why), Slip: measure.Tell(words.slip),
			Choices: []pattern.ChoiceID{pattern.ChoiceID(string(h.piece) + "_neckline"), depth},
			Uses:    h.uses("neck_point"),
			If:      func(k pattern.Known) bool { return detail.NeckStyle(k, h.back) == style },
			Draw:    func(p *bench.Pen) { drawNeck(p, h, depth, shaping) },
		}
		if shaping != "" {
			st.Choices = append(st.Choices, shaping)
		}
		if style == detail.SweetheartNeckline {
			st.Needs = []measure.ID{measure.BustPointDistance, measure.SideNeckToBustPoint}
		}
		out = append(out, st)
	}
	return out
}

// shapedBy is the choice that shapes a neckline beside its depth.
var shapedBy = map[string]pattern.ChoiceID{
	detail.FunnelNeckline: "funnel_rise", detail.SquareNeckline: "neck_lean", detail.VNeckline: "v_bow", detail.SweetheartNeckline: "sweetheart_dip",
}

func drawNeck(p *bench.Pen, h half, depthID, shaping pattern.ChoiceID) {
	depth := p.K.Length(depthID)
	s := shoulderOf(p, h)
	if neckImpossible(p, h, depthID, depth, s) {
		return
	}
	n := detail.NecklineOf(p.K, s, h.back)
	if h.back && behindImpossible(p, n.Style) {
		return
	}
	if n.Style == detail.SweetheartNeckline && (n.Lobe().X <= 0 || n.Corner().Y <= s.Neck.Y) {
		p.Refuse(pattern.Refused{
			Code: "R15", Input: string(measure.BustPointDistance),
			Says: measure.Tell("a sweetheart neck {} deep over a bust point distance of {} cannot be drawn", depth, 2*n.Bust),
			Cure: measure.Tell("a deeper neck, or measure bust point distance again"),
		})
		return
	}
	if funnelImpossible(p, h, n) {
		return
	}
	words := necklines[wordsOf(n.Style)]
	args := []any{depth}
	if shaping != "" {
		args = append(args, p.K.Length(shaping))
	}
	p.Do(words.do, args...)
	set, _ := p.K.Setting(depthID)
	p.Because(set.Default.Because)
	p.Point("neck_centre", n.Centre())
	if n.Style == detail.FunnelNeckline {
		p.Point("neck_top", n.Top())
		p.Draw("shoulder", n.FunnelSeam(s.End), pattern.RoleStitch)
	}
	if n.Style == detail.SweetheartNeckline {
		p.Point("neck_lobe", n.Lobe())
	}
	curve := n.Curve()
	p.Sum(measure.Drawn("neck, half", measure.Length(curve.Length())))
	p.Draw("neck", curve, pattern.RoleStitch)
}

// behindImpossible refuses the necklines that belong in front.
func behindImpossible(p *bench.Pen, style string) bool {
	r := pattern.Refused{Code: "R15", Input: "back_neckline", Cure: measure.Tell("a V or a square neck behind")}
	switch style {
	case detail.SweetheartNeckline:
		r.Says = measure.Tell("a sweetheart neck behind has no bust to follow")
	case detail.SlitNeckline, detail.KeyholeNeckline:
		r.Says = measure.Tell("a " + style + " behind lies where the centre seam is")
	default:
		return false
	}
	p.Refuse(r)
	return true
}

// funnelImpossible refuses a funnel on one half alone, without its zip, or too
// high to stand.
func funnelImpossible(p *bench.Pen, h half, n detail.Neckline) bool {
	front, back := detail.NeckStyle(p.K, false) == detail.FunnelNeckline, detail.NeckStyle(p.K, true) == detail.FunnelNeckline
	r := pattern.Refused{Code: "R15", Input: "back_neckline"}
	switch {
	case !front && !back:
		return false
	case front != back:
		r.Says = measure.Tell("a funnel in front or behind alone has no seam to stand on")
		r.Cure = measure.Tell("a funnel on both, or on none")
	case detail.Closure(p.K) != detail.ZipBehind:
		r.Says = measure.Tell("a funnel needs the zip behind, up to its top")
		r.Cure, r.Input = measure.Tell("close it with a zip behind"), "closure"
	case n.Rise < rule.In(0.25) || n.Rise > rule.In(2.5) || n.Top().X <= 0:
		r.Says = measure.Tell("a funnel that rises {} does not stand", n.Rise)
		r.Cure, r.Input = measure.Tell("a rise between {3/4 in} and {1 1/2 in}"), "funnel_rise"
	default:
		return false
	}
	p.Refuse(r)
	return true
}

// shoulderOfFacing is the shoulder edge of a facing, from the neck out: along
// the seam, which on a funnel is no straight line.
func (c cutter) shoulderOfFacing(h half, neck, outer geom.Path) geom.Path {
	if detail.NeckStyle(c.s.Known, h.back) != detail.FunnelNeckline {
		return geom.Lines(neck.End(), outer.End())
	}
	seam := c.closedLine(h.id("shoulder"))
	s, _, _ := seam.Nearest(outer.End())
	part, _ := seam.Split(s)
	return part
}

// neckOpening is the slit or keyhole below a jewel neck.
func neckOpening() bench.Step {
	return bench.Step{
		ID: "front.neck_opening", Piece: pattern.Front, Title: "Opening in the neck",
		Why:     measure.Tell("The ring alone does not pass her head. What is stitched lies beside the fold; it is slashed along the fold once the facing is on."),
		Slip:    measure.Tell("Cutting it with the piece: the slash must be stitched first, or its point frays."),
		Choices: []pattern.ChoiceID{"front_neckline", "neck_opening_length", "keyhole_width"},
		Uses:    theFront.uses("neck"),
		If:      detail.HasNeckOpening,
		Draw: func(p *bench.Pen) {
			style := detail.NeckStyle(p.K, false)
			l, wide := p.K.Length("neck_opening_length"), p.K.Length("keyhole_width")
			set, _ := p.K.Setting("neck_opening_length")
			p.Sum(measure.Of("length", l))
			p.Because(set.Default.Because)
			if most := detail.MostNeckOpening(style); l > most || l < rule.In(1) {
				cure := measure.Tell("a length between {} and {}; the zip behind lets the head through", rule.In(1), most)
				if style == detail.KeyholeNeckline {
					cure = measure.Tell("a length between {} and {}, or a slit, or the zip behind", rule.In(1), most)
				}
				p.Refuse(pattern.Refused{
					Code: "R15", Input: "neck_opening_length",
					Says: measure.Tell("a "+style+" {} long cannot be made: {} is the most", l, most), Cure: cure,
				})
				return
			}
			o := detail.OpenNeck(style, p.Line("front.neck"), l, wide)
			if style == detail.KeyholeNeckline {
				p.Do("On the fold mark the foot of the keyhole {} below the neck. Draw the drop from the neck to the foot, {} wide in all at two thirds of the way.", l, wide)
			} else {
				p.Do("On the fold mark the foot of the slit {} below the neck. Rule the stitching from {} beside the fold at the neck to one stitch beside it at the foot.", l, rule.In(3.0/16))
			}
			p.Point("opening_foot", o.Foot)
			p.Draw("neck_opening", o.Line, pattern.RoleStitch)
		},
	}
}

// strapTooNarrow refuses a neck and an armhole that leave too little between
// them. Round necks are judged by the shoulder alone.
func strapTooNarrow(p *bench.Pen, h half, armhole geom.Path) bool {
	style := detail.NeckStyle(p.K, h.back)
	line := p.Line(h.id("neck"))
	if style == detail.RoundNeckline || len(line) == 0 {
		return false
	}
	left := detail.Strap(line, armhole)
	if left >= rule.In(1.5)-0.01 {
		return false
	}
	p.Refuse(pattern.Refused{
		Code: "R16", Input: "neck_widening",
		Says: measure.Tell("between the neck and the armhole of the "+string(h.piece)+" there is {}; a strip under {1 1/2 in} cannot be faced", left),
		Cure: measure.Tell("widen the neck less, or draw the shoulder end in less"),
	})
	return true
}

// necks are the edges of a neck, of the garment or of its facing, from the
// fold to the shoulder: with an opening the stitching beside it comes first.
func (c cutter) necks(h half, neck geom.Path, allowance measure.Length, sewnTo pattern.PieceID) (sides []bench.Side, start geom.Point, corner pattern.Corner) {
	to := func(edge string) pattern.EdgeRef {
		if sewnTo == "" {
			return pattern.EdgeRef{}
		}
		return pattern.EdgeRef{Piece: sewnTo, Edge: edge}
	}
	side := bench.Side{Name: "neck", Stitch: neck, Allowance: allowance, SewnTo: to("neck"), Role: pattern.RoleStitch}
	open, name := c.opening(h)
	if len(open) == 0 {
		return []bench.Side{side}, neck.Start(), pattern.Mitre
	}
	if name == "placket" && c.openThrough() {
		side.Stitch = besideCentre(neck)
		return []bench.Side{side}, side.Stitch.Start(), pattern.Mitre
	}
	// The slash runs along the fold; it is trimmed after it is faced.
	side.Cut = neck.Offset(allowance.MM(), bench.OffsetTolerance)
	if at := side.Cut.AtOut(neck.Start().X); len(at) > 0 && side.Cut.Start().X < neck.Start().X {
		_, side.Cut = splitAt(side.Cut, at[0]) // a neck that rises from the fold: its allowance ends there
	}
	if s, _, _ := neck.Nearest(open.End()); s > 0 {
		_, side.Stitch = neck.Split(s)
	}
	slash := bench.Side{
		Name: name, Stitch: open, Cut: geom.Lines(open.Start(), side.Cut.Start()), Corner: pattern.None,
		SewnTo: to(name), Role: pattern.RoleStitch,
	}
	return append(c.footOf(slash), side), open.Start(), pattern.None
}
