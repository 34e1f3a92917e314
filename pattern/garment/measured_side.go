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

// sideSteps mark waist, hip and hem of one half.
func sideSteps(h half) []bench.Step {
	return append([]bench.Step{waist(h), hip(h), hem(h)}, otherHems(h)...)
}

// lower is what the levels of a half lie lower than the back's.
func lower(p *bench.Pen, h half) measure.Length {
	if h.back {
		return 0
	}
	return rule.FrontLower(p.K).Result()
}

// levelNeeds are the measurements that the levels of a half rest on.
func levelNeeds(h half, more ...measure.ID) []measure.ID {
	more = append(more, measure.BackNeckToWaist)
	if !h.back {
		more = append(more, measure.SideNeckToWaist)
	}
	return more
}

func waist(h half) bench.Step {
	return bench.Step{
		ID: h.id("waist"), Piece: h.piece, Title: "Waist at the side",
		Why:     measure.Tell("A seam that dives in too fast pulls into folds. What it does not take hangs loose, or goes into waist darts."),
		Slip:    measure.Tell("Taking all the shaping at the side."),
		Needs:   levelNeeds(h, measure.WaistGirth, measure.BustGirth),
		Choices: []pattern.ChoiceID{"ease_waist", "side_waist_limit", "ease_bust"},
		Uses:    h.uses("underarm", "hem_centre"),
		Draw: func(p *bench.Pen) {
			x := p.Sum(rule.WaistWidthOf(p.K, h.back))
			spare := x - rule.WaistWantedOf(p.K, h.back).Result()
			y := rule.BackWaist(p.K).Result() + lower(p, h)
			p.Do("On the waist line, {} down, measure {} out from the "+h.centre+" and mark it.", y, x)
			if spare > 0 {
				p.Rule("She needs {}; the side may come in {} from the underarm, so {} a quarter hang loose.", x-spare, p.K.Length("side_waist_limit"), spare)
			} else {
				p.Rule("A quarter of the waist with its ease; the side comes in far enough.")
			}
			p.Slip(measure.Measured("waist", p.K.Body(measure.WaistGirth)).Over(4), "The ease is left out.")
			p.Slip(measure.Measured("waist", p.K.Body(measure.WaistGirth)).Over(4).Plus(measure.Of("ease", p.K.Length("ease_waist"))), "The whole ease was added to one quarter.")
			p.Slip(rule.WaistWantedOf(p.K, h.back), "All the shaping was taken at the side; it may come in no more than the limit, and the rest hangs loose.")
			if under := p.At(h.id("underarm")); h.back && y.MM()-under.Y < rule.In(5).MM() {
				p.Refuse(pattern.Refused{
					Code: "R6", Input: string(measure.BackNeckToWaist),
					Says: measure.Tell("the back waist at {} lies less than {5 in} below the underarm at {}", y, measure.Length(under.Y)),
					Cure: measure.Tell("measure back neck to waist again, or an armhole depth of {} or less", y-rule.In(5)),
				})
				return
			}
			arcReads(p)
			p.Point("waist", out(x, y.MM()))
		},
	}
}

func hip(h half) bench.Step {
	return bench.Step{
		ID: h.id("hip"), Piece: h.piece, Title: "Hip at the side",
		Why:     measure.Tell("Room to sit. The hip line lies where she is fullest."),
		Slip:    measure.Tell("Measuring the hip too high: the dress climbs when she sits."),
		Needs:   levelNeeds(h, measure.HipGirth, measure.WaistToHip),
		Choices: []pattern.ChoiceID{"ease_hip"},
		Uses:    h.uses("waist", "hem_centre"),
		Draw: func(p *bench.Pen) {
			x := p.Sum(rule.HipWidthOf(p.K, h.back))
			y := rule.BackHip(p.K).Result() + lower(p, h)
			p.Do("On the hip line, {} down, measure {} out from the "+h.centre+" and mark it.", y, x)
			p.Slip(measure.Measured("hip", p.K.Body(measure.HipGirth)).Over(4), "The ease is left out: she could not sit.")
			p.Slip(measure.Measured("hip", p.K.Body(measure.HipGirth)).Over(4).Plus(measure.Of("ease", p.K.Length("ease_hip"))), "The whole ease was added to one quarter.")
			arcReads(p)
			if swing := rule.SeamSwings(p.K); swing > rule.FarthestSwing || swing < -rule.FarthestSwing {
				p.Refuse(pattern.Refused{
					Code: "R21", Input: string(measure.FrontHipArc),
					Says: measure.Tell("a front arc so far from half puts the side seam {} from where it starts under the arm; no seam is drawn so", max(swing, -swing)),
					Cure: measure.Tell("mark the side lines again and measure the front from line to line; up to {} can be drawn", rule.FarthestSwing),
				})
				return
			}
			p.Point("hip", out(x, y.MM()))
		},
	}
}

func hem(h half) bench.Step {
	return bench.Step{
		ID: h.id("hem"), Piece: h.piece, Title: "Hem",
		Why:     measure.Tell("The seam from hip to hem is as long as the centre from hip to hem, so the hem hangs level."),
		Slip:    measure.Tell("Ruling the hem straight across under a slanting side: it dips there."),
		Needs:   levelNeeds(h, measure.WaistToHip),
		Choices: hemLevels(h, "length", "hem_peg"),
		Uses:    h.uses("hip", "hem_centre"),
		If:      func(k pattern.Known) bool { return detail.SkirtLine(k) == detail.PeggedSkirt },
		Draw: func(p *bench.Pen) {
			at := p.At(h.id("hip"))
			centre, higher := evenHem(p, h)
			peg := p.K.Length("hem_peg")
			x := p.Sum(measure.Drawn("hip width", measure.Length(at.X)).Minus(measure.Of("peg", peg)))
			if math.Abs(peg.MM()) >= (centre.Y-at.Y)/3 || x < rule.In(2) {
				p.Refuse(pattern.Refused{
					Code: "R13", Input: "hem_peg",
					Says: measure.Tell("a hem narrowed by {} on a hip of {} over {} of skirt cannot be drawn", peg, measure.Length(at.X), measure.Length(centre.Y-at.Y)),
					Cure: measure.Tell("narrow it by {1 1/2 in} or less"),
				})
				return
			}
			side := detail.HemSide(at, measure.Length(centre.Y), peg)
			if w := measure.Drawn("hip width", measure.Length(at.X)); peg > 0 {
				p.Slip(w, "That is the hip width: the hem is narrowed by the peg.")
				p.Slip(w.Plus(measure.Of("peg", peg)), "The peg was added; it makes the hem narrower, so it is taken off.")
			}
			p.Do("Measure {} out and {} down, and mark the hem at the side; join it to the hem at the "+h.centre+".", x, measure.Length(side.Y))
			p.Point("hem_side", side)
			p.Draw("hem", detail.LevelledHem(geom.Lines(side, centre), higher), pattern.RoleStitch)
		},
	}
}

func hasDart(k pattern.Known) bool {
	return !k.Has(measure.SideNeckToWaist, measure.BackNeckToWaist) || rule.DartIntake(k).Result() > 0
}

func dartSteps() []bench.Step {
	needs := []measure.ID{measure.SideNeckToWaist, measure.BackNeckToWaist, measure.SideNeckToBustPoint, measure.BustPointDistance}
	return []bench.Step{
		{
			ID: "front.dart_start", Piece: pattern.Front, Title: "Side dart, where it starts", If: hasDart,
			Why:     measure.Tell("The dart points at the bust from the side, level or rising a little."),
			Slip:    measure.Tell("Starting it so high that it hangs down to its tip."),
			Needs:   needs,
			Choices: []pattern.ChoiceID{"side_dart_below", "dart_tip_back", "armhole_depth"},
			Uses:    theFront.uses("underarm", "waist", "bust_point"),
			Draw:    drawDartStart,
		},
		{
			ID: "front.dart_legs", Piece: pattern.Front, Title: "Side dart, tip and legs", If: hasDart,
			Why:     measure.Tell("Both legs have one length, so they close. The tip stops short of the bust point, or it would stand up there."),
			Slip:    measure.Tell("Legs of two lengths: the seam steps when the dart is sewn."),
			Needs:   needs,
			Choices: []pattern.ChoiceID{"side_dart_below", "dart_tip_back"},
			Uses:    append(theFront.uses("underarm", "waist", "bust_point", "dart_upper"), "back.underarm", "back.waist"),
			Draw:    drawDartLegs,
		},
		pinchStep(),
		neckPinchStep(),
		{
			ID: "front.dart_cap", Piece: pattern.Front, Title: "Side dart, its cap", If: sideDart,
			Why:   measure.Tell("The dart is pressed down. Its folded end must reach the seam, or there is a bite out of the side."),
			Slip:  measure.Tell("Cutting straight from leg to leg: the fold does not reach the seam."),
			Needs: needs,
			Uses:  theFront.uses("dart_tip", "dart_upper", "dart_lower", "waist"),
			Draw: func(p *bench.Pen) {
				tip, up, low := p.At("front.dart_tip"), p.At("front.dart_upper"), p.At("front.dart_lower")
				bite := detail.CapDown(tip, up, low, low.To(p.At("front.waist")))
				mid := up.Lerp(low, 0.5)
				p.Do("Fold the dart on paper, pressed down, rule the side across it, cut and unfold. The cap lies {} out and {} down.", measure.Length(bite.X), measure.Length(bite.Y))
				if bite.Dist(mid) > rule.In(1.5).MM() {
					p.Refuse(pattern.Refused{
						Code: "R11", Input: "side_dart_below",
						Says: measure.Tell("the dart's cap stands {} from the middle of its legs; more than {1 1/2 in} cannot be sewn", measure.Length(bite.Dist(mid))),
						Cure: measure.Tell("start the dart lower, or measure side neck to waist again"),
					})
					return
				}
				p.Point("dart_cap", bite)
				p.Draw("dart_end", geom.Lines(up, bite, low), pattern.RoleStitch)
			},
		},
	}
}

func dartIn(p *bench.Pen) detail.DartIn {
	in := detail.MeasuredDart(p.K, p.K.Length("side_dart_below"))
	in.Underarm, in.Waist, in.Bust = p.At("front.underarm"), p.At("front.waist"), p.At("front.bust_point")
	return in
}

func drawDartStart(p *bench.Pen) {
	in := dartIn(p)
	below, most := in.Below, measure.Length(in.Underarm.Dist(in.Waist))-rule.In(2)
	p.Sum(measure.Of("below the underarm", below))
	p.Do("From the underarm point go {} down the side and mark the upper leg.", below)
	if set, ok := p.K.Setting("side_dart_below"); ok {
		p.Because(set.Default.Because)
	}
	if below < 0 || below > most {
		p.Refuse(pattern.Refused{
			Code: "R9", Input: "side_dart_below",
			Says: measure.Tell("a dart {} below the underarm lies outside the side seam, which is {} long to the waist", below, most+rule.In(2)),
			Cure: measure.Tell("{} or less below the underarm", most),
		})
		return
	}
	if room := measure.Length(in.Underarm.X-in.Bust.X) - in.TipBack; room < rule.In(2.5) {
		p.Refuse(pattern.Refused{
			Code: "R9", Input: string(measure.BustPointDistance),
			Says: measure.Tell("from the dart's tip to the side there is {}; less than {2 1/2 in} makes no dart", max(0, room)),
			Cure: measure.Tell("measure bust point distance again, or stop the tip less short"),
		})
		return
	}
	p.Point("dart_upper", in.Untrued().Upper)
}

func drawDartLegs(p *bench.Pen) {
	in := dartIn(p)
	in.BackSide = p.At("back.underarm").Dist(p.At("back.waist"))
	d := in.Draw()
	degrees := rule.Degrees(d.Angle)
	if !(degrees <= 30) {
		p.Refuse(pattern.Refused{
			Code: "R10", Input: string(measure.SideNeckToWaist),
			Says: measure.Tell("a dart of {} with legs of {} opens {} degrees; more than 30 cannot be sewn flat", in.Intake, measure.Length(d.Tip.Dist(d.Upper)), degrees),
			Cure: measure.Tell("stop the tip less short, or measure side neck to waist again"),
		})
		return
	}
	if math.Abs(in.Difference(d)) > rule.In(1.0/16).MM() {
		p.Refuse(pattern.Refused{
			Code: "R11", Input: "side_dart_below",
			Says: measure.Tell("with the dart closed the front side is {} off the back side and cannot be trued", measure.Length(math.Abs(in.Difference(d)))),
			Cure: measure.Tell("start the dart nearer the level of the bust point"),
		})
		return
	}
	p.Sum(measure.Of("intake", d.Intake))
	p.Do("Mark the tip {} short of the bust point, {} out and {} down. Rule the upper leg, and the lower leg as long, {} below it at the seam.",
		in.TipBack, measure.Length(d.Tip.X), measure.Length(d.Tip.Y), d.Intake)
	if d.Trued {
		p.Rule("The lower leg was moved until the side, dart closed, is as long as the back's.")
	} else {
		p.Rule("The upper leg turned about the tip: both legs {} long, the angle {} degrees.", measure.Length(d.Tip.Dist(d.Upper)), degrees)
	}
	p.Point("dart_tip", d.Tip)
	p.Point("dart_lower", d.Lower)
	p.Draw("dart", geom.Lines(d.Upper, d.Tip, d.Lower), pattern.RoleDart)
}

// frontSide draws the front's side in one of two ways: in two parts where a
// dart lies between them, or in one.
func frontSide() []bench.Step {
	step := bench.Step{
		ID: "front.side", Piece: pattern.Front, Title: "Side seam",
		Why:     measure.Tell("Below the dart the side is drawn like the back's, so that the two lie on each other when they are sewn."),
		Slip:    measure.Tell("Drawing the front side without folding the dart."),
		Choices: []pattern.ChoiceID{"side_shape"},
	}
	do := "Join the marks of the side from the underarm to the hem: rounded at the waist, bowed over the hip, straight below."
	darted, plain := step, step
	darted.If = sideDart
	darted.Uses = theFront.uses("underarm", "dart_upper", "dart_lower", "dart_cap", "waist", "hip", "hem_side")
	darted.Draw = func(p *bench.Pen) {
		p.Do(do)
		p.Draw("side_upper", geom.Lines(under(p.Has, p.At, theFront), p.At("front.dart_upper")), pattern.RoleStitch)
		drawSide(p, theFront, nil, p.At("front.dart_lower"))
	}
	plain.If = func(k pattern.Known) bool { return !hasDart(k) && !turned(k) }
	plain.Uses = theFront.uses("underarm", "waist", "hip", "hem_side")
	plain.Draw = func(p *bench.Pen) {
		p.Do(do)
		drawSide(p, theFront, nil, p.At("front.underarm"))
	}
	return []bench.Step{darted, plain}
}
