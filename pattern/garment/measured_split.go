package garment

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
)

// splitDart says whether side and waist share the bust dart.
func splitDart(k pattern.Known) bool { return detail.DartPlace(k) == detail.SplitDart }

// splitSteps draw what the side keeps of a dart that it shares with the
// waist.
func splitSteps() []bench.Step {
	return []bench.Step{
		{
			ID: "front.dart_legs_again", Piece: pattern.Front, Title: "Side dart, the share it keeps", If: splitDart,
			Why:     measure.Tell("The waist has taken its share, and the lower leg came up with it. Two small darts show less than one large one."),
			Slip:    measure.Tell("Keeping the old tip: the legs are then of two lengths."),
			Choices: []pattern.ChoiceID{"bust_dart", "dart_share", "dart_tip_back"},
			Uses:    theFront.uses("bust_point", "dart_upper", "dart_lower", "dart_fixed"),
			Draw: func(p *bench.Pen) {
				up, low := p.At("front.dart_upper"), p.At("front.dart_lower")
				bust := p.At("front.bust_point")
				tip := detail.Turned{Fixed: up, Moved: low}.Tip(bust, p.K.Length("dart_tip_back"))
				intake := p.Sum(measure.Drawn("intake", measure.Length(up.Dist(low))))
				p.Do("Mark the tip {} short of the bust point, towards the middle of the legs, and rule both legs. They take up {} at the side.", p.K.Length("dart_tip_back"), intake)
				p.Point("side_dart_tip", tip)
				p.Draw("side_dart", geom.Lines(up, tip, low), pattern.RoleDart)
			},
		},
		{
			ID: "front.dart_cap", Piece: pattern.Front, Title: "Side dart, its cap", If: splitDart,
			Why:  measure.Tell("The dart is pressed down. Its folded end must reach the seam, or there is a bite out of the side."),
			Slip: measure.Tell("Cutting straight from leg to leg: the fold does not reach the seam."),
			Uses: theFront.uses("side_dart_tip", "dart_upper", "dart_lower", "waist_turned"),
			Draw: func(p *bench.Pen) {
				tip, up, low := p.At("front.side_dart_tip"), p.At("front.dart_upper"), p.At("front.dart_lower")
				bite := detail.CapDown(tip, up, low, low.To(p.At("front.waist_turned")))
				p.Do("Fold the dart on paper, pressed down, rule the side across it, cut and unfold. The cap lies {} out and {} down.", measure.Length(bite.X), measure.Length(bite.Y))
				p.Point("dart_cap", bite)
				p.Draw("dart_end", geom.Lines(up, bite, low), pattern.RoleStitch)
			},
		},
		{
			ID: "front.side", Piece: pattern.Front, Title: "Side seam", If: splitDart,
			Why:     measure.Tell("With both darts sewn the side lies like the back's."),
			Slip:    measure.Tell("Drawing the front side without folding the dart."),
			Choices: []pattern.ChoiceID{"side_shape", "bust_dart"},
			Uses:    theFront.uses("dart_end", "waist_turned", "waist", "hip", "hem_side"),
			Draw: func(p *bench.Pen) {
				p.Do("Rule the side of the bodice from the underarm to the dart and from its lower leg to the waist. From the waist down join waist, hip and hem.")
				p.Draw("side_upper", geom.Lines(under(p.Has, p.At, theFront), p.At("front.dart_upper")), pattern.RoleStitch)
				p.Draw("side", geom.Lines(p.At("front.dart_lower"), p.At("front.waist_turned")), pattern.RoleStitch)
				drawSkirtSide(p, theFront)
			},
		},
	}
}

// drawSkirtSide draws the side of the skirt where a seam parts it from the
// bodice.
func drawSkirtSide(p *bench.Pen, h half) {
	w := p.At(h.id("waist"))
	_, skirt := detail.SeamSide(w, w, p.At(h.id("hip")), p.K.Pick("side_shape") != "straight", p.At(h.id("hem_side")))
	p.Draw("skirt_side", skirt, pattern.RoleStitch)
}

// drawSide draws the side from an upper point to the hem as one line, or as
// two where a waist seam parts them; before is what lies above that point.
func drawSide(p *bench.Pen, h half, before geom.Path, upper geom.Point) {
	w, hip, hem := p.At(h.id("waist")), p.At(h.id("hip")), p.At(h.id("hem_side"))
	if !detail.HasWaistSeam(p.K) {
		p.Draw("side", before.Then(side(p.K, upper, w, hip, hem)), pattern.RoleStitch)
		return
	}
	end := w
	if name := h.id("waist_turned"); p.Has(name) {
		end = p.At(name)
	}
	p.Draw("side", before.Then(geom.Lines(upper, end)), pattern.RoleStitch)
	drawSkirtSide(p, h)
}

// centreSeam draws the centre front where a seam runs down it.
func centreSeam() bench.Step {
	return bench.Step{
		ID: "front.centre_seam", Piece: pattern.Front, Title: "Centre front, a seam", If: detail.HasFrontSeam,
		Why:     measure.Tell("A seam down the centre front may lean and take a dart, which a fold cannot."),
		Slip:    measure.Tell("Laying the front on the fold all the same: then there is no cloth for the seam."),
		Choices: []pattern.ChoiceID{"front_seam", "bust_dart", "front_neckline"},
		Uses:    theFront.uses("neck", "hem_centre", "side"),
		Draw: func(p *bench.Pen) {
			if detail.HasNeckOpening(p.K) {
				p.Refuse(pattern.Refused{
					Code: "R30", Input: "front_seam",
					Says: measure.Tell("a slit or keyhole is slashed into the fold of the front, and a seam there has no fold"),
					Cure: measure.Tell("no seam at the centre front, or a neckline without an opening"),
				})
				return
			}
			top, foot := p.Line("front.neck").Start(), p.At("front.hem_centre")
			p.Do("The front is cut as a pair. From the hem up to the neck the centre is a seam, with an allowance of {}.", frontSeamAllowance)
			line := geom.Lines(foot, top)
			if detail.DartPlace(p.K) == detail.CentreDart && p.Has("front.dart_fixed") {
				line = geom.Lines(foot, p.At("front.dart_fixed")).Then(geom.Lines(p.At("front.dart_moved"), top))
			}
			p.Draw("centre_front", line, pattern.RoleStitch)
		},
	}
}
