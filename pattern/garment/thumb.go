package garment

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

// By thumb: marked straight on the folded cloth, the allowance in the
// figure. Front first; the back is traced from it without the dart.
func thumbSteps() []bench.Step {
	s := []bench.Step{
		thumbLevels(theFront), thumbNeck(), thumbShoulder(), thumbUnderarm(theFront), thumbArmholeMid(), thumbArmhole(theFront),
		thumbDart(), thumbWaist(theFront), thumbHip(theFront), thumbKnee(theFront), thumbHem(theFront), thumbSide(theFront),
		thumbLevels(theBack), thumbBackTop(), thumbUnderarm(theBack), thumbArmhole(theBack),
		thumbWaist(theBack), thumbHip(theBack), thumbKnee(theBack), thumbHem(theBack), thumbSide(theBack), thumbOpening(),
	}
	for _, h := range []half{theFront, theBack} {
		s = append(s, thumbNeckFacing(h), thumbArmholeFacing(h), thumbStitching(h))
	}
	return s
}

var thumbLevelNeeds = []measure.ID{measure.SideNeckToBustPoint, measure.BackNeckToWaist, measure.WaistToHip, measure.WaistToKnee}

// thumbLower is what the front's levels below the bust lie lower.
func thumbLower(h half) measure.Length {
	if h.back {
		return 0
	}
	return rule.ThumbDart
}

func thumbLevels(h half) bench.Step {
	st := bench.Step{
		ID: h.id("levels"), Piece: h.piece, Title: "Fold, top line and levels",
		Why:     measure.Tell("The front is cut {1 1/2 in} longer below the bust: that is the dart, and once it is sewn the sides meet."),
		Slip:    measure.Tell("Forgetting the {1 1/2 in}: the front side comes out short when the dart is sewn."),
		Needs:   thumbLevelNeeds,
		Choices: []pattern.ChoiceID{"length"},
	}
	if h.back {
		st.Title = "Centre line, top line and levels"
		st.Why = measure.Tell("The back is traced from the front without the dart, so its levels below the bust lie {1 1/2 in} higher.")
		st.Slip = measure.Tell("Tracing the front's levels as they are: then the back is too long.")
	}
	st.Draw = func(p *bench.Pen) {
		more := thumbLower(h)
		arm := rule.ThumbArmholeLine(p.K).Result()
		bust := p.K.Body(measure.SideNeckToBustPoint)
		waist, hip := rule.BackWaist(p.K).Result()+more, rule.BackHip(p.K).Result()+more
		knee, hem := rule.Knee(p.K).Result()+more, p.K.Length("length")+more
		p.Sum(rule.BackWaist(p.K).Plus(measure.Of("for the dart", more)))
		p.Slip(measure.Measured("back length", p.K.Body(measure.BackNeckToWaist)).Plus(measure.Of("for the dart", more)),
			"That is counted from the nape; the top line lies {3/4 in} above it.")
		if h.back {
			p.Slip(rule.BackWaist(p.K).Plus(measure.Of("for the dart", rule.ThumbDart)), "That is the front's waist: the back has no dart, so it is {1 1/2 in} shorter.")
		} else {
			p.Slip(rule.BackWaist(p.K), "The {1 1/2 in} for the dart is left out: sewn, the front would be short.")
		}
		p.Do("From the top line down the "+h.centre+" mark: armhole line {}, bust {}, waist {}, hip {}, knee {}, hem {}.", arm, bust, waist, hip, knee, hem)
		if thumbLevelsImpossible(p, waist-more, hip-more, knee-more, hem-more) {
			return
		}
		levels(p, waist, hip, hem)
		wide := rule.In(12).MM()
		p.Guide("bust_line", out(0, bust.MM()), geom.Point{X: wide, Y: bust.MM()})
		p.Guide("armhole_line", out(0, arm.MM()), geom.Point{X: wide, Y: arm.MM()})
		if knee < hem {
			p.Guide("knee_line", out(0, knee.MM()), geom.Point{X: wide, Y: knee.MM()})
		}
	}
	return st
}

func thumbLevelsImpossible(p *bench.Pen, waist, hip, knee, hem measure.Length) bool {
	bust := p.K.Body(measure.SideNeckToBustPoint)
	switch {
	case hemTooHigh(p, hem, hip):
	case waist-bust < rule.In(1):
		p.Refuse(pattern.Refused{
			Code: "R7", Input: string(measure.SideNeckToBustPoint),
			Says: measure.Tell("the bust line at {} lies less than {1 in} above the waist at {}", bust, waist),
			Cure: measure.Tell("measure side neck to bust point again; {} or less can be drawn", waist-rule.In(1)),
		})
	case knee-hip < rule.In(2):
		p.Refuse(pattern.Refused{
			Code: "R8", Input: string(measure.WaistToKnee),
			Says: measure.Tell("the knee at {} lies less than {2 in} below the hip at {}", knee, hip),
			Cure: measure.Tell("measure waist to knee again; it is longer than waist to hip"),
		})
	default:
		return false
	}
	return true
}

func thumbNeck() bench.Step {
	return bench.Step{
		ID: "front.neck", Piece: pattern.Front, Title: "Neck",
		Why:     measure.Tell("{3 in} out and as much down gives a plain round neck on most people."),
		Slip:    measure.Tell("Forgetting that the edge is turned in: the sewn neck is wider and deeper by the allowance."),
		Needs:   []measure.ID{measure.AcrossShoulders},
		Choices: []pattern.ChoiceID{"front_neck_depth"},
		Uses:    theFront.uses("hem_centre"),
		Draw: func(p *bench.Pen) {
			depth := p.K.Length("front_neck_depth")
			p.Do("On the top line mark {} out from the fold, and on the fold {} down. Join them with a curve, level at the fold.", rule.ThumbNeckOut, depth)
			drawThumbNeck(p, theFront, depth, geom.Point{X: rule.ThumbShoulderOut(p.K).Result().MM(), Y: rule.ThumbShoulder.MM()})
		},
	}
}

// drawThumbNeck marks neck point and centre and draws the curve square to the
// shoulder line that runs to end.
func drawThumbNeck(p *bench.Pen, h half, depth measure.Length, end geom.Point) {
	n := out(rule.ThumbNeckOut, 0)
	s := detail.Shoulder{Base: n, Bone: end, Neck: n, End: end, Dir: n.To(end).Unit()}
	s.Down = s.Dir.Right()
	if end.X-n.X < rule.In(2).MM() {
		p.Refuse(pattern.Refused{
			Code: "R3", Input: string(measure.AcrossShoulders),
			Says: measure.Tell("the shoulder end lies {} out and the neck {3 in}; the shoulder between them is too short to sew", measure.Length(end.X)),
			Cure: measure.Tell("measure across shoulders again; {} or more can be drawn by thumb", rule.In(11)),
		})
		return
	}
	if neckImpossible(p, h, pattern.ChoiceID(string(h.piece)+"_neck_depth"), depth, s) {
		return
	}
	p.Point("neck_point", n)
	p.Point("neck_centre", out(0, depth.MM()))
	p.Draw("neck", detail.RoundNeck(n, s.Down, depth, h.back), pattern.RoleCut)
}

func thumbShoulder() bench.Step {
	return bench.Step{
		ID: "front.shoulder_end", Piece: pattern.Front, Title: "Shoulder",
		Why:   measure.Tell("The edge lies {1/2 in} inside the shoulder bone, since there is no sleeve."),
		Slip:  measure.Tell("The whole across-shoulders instead of half."),
		Needs: []measure.ID{measure.AcrossShoulders},
		Uses:  theFront.uses("neck_point"),
		Draw: func(p *bench.Pen) {
			x := p.Sum(rule.ThumbShoulderOut(p.K))
			p.Do("Measure {} out and {} down, mark the shoulder end, and rule to the neck point.", x, rule.ThumbShoulder)
			p.Slip(measure.Measured("across shoulders", p.K.Body(measure.AcrossShoulders)).Minus(measure.Fixed(rule.ThumbShoulderIn)), "Half of across shoulders is used.")
			p.Slip(rule.BoneOut(p.K), "That is the bone; the edge lies {1/2 in} inside it.")
			end := out(x, rule.ThumbShoulder.MM())
			p.Point("shoulder_end", end)
			p.Draw("shoulder", geom.Lines(p.At("front.neck_point"), end), pattern.RoleCut)
		},
	}
}

func thumbBackTop() bench.Step {
	return bench.Step{
		ID: "back.top", Piece: pattern.Back, Title: "Neck and shoulder",
		Why:     measure.Tell("Traced from the front, the neck only {1 in} deep. The shoulder end lies {1/4 in} higher, so that the seam rolls to the front."),
		Slip:    measure.Tell("Raising the neck point too: then the back neck stands off."),
		Needs:   []measure.ID{measure.AcrossShoulders},
		Choices: []pattern.ChoiceID{"back_neck_depth"},
		Uses:    append(theBack.uses("hem_centre"), "front.neck_point", "front.shoulder_end"),
		Draw: func(p *bench.Pen) {
			depth := p.K.Length("back_neck_depth")
			end := p.At("front.shoulder_end").Add(geom.Vector{Y: -rule.ThumbRoll.MM()})
			p.Do("Trace neck point and shoulder end from the front. Raise the shoulder end to {} down, and mark the neck {} down the centre line.", measure.Length(end.Y), depth)
			drawThumbNeck(p, theBack, depth, end)
			if p.Stopped() {
				return
			}
			p.Point("shoulder_end", end)
			p.Draw("shoulder", geom.Lines(out(rule.ThumbNeckOut, 0), end), pattern.RoleCut)
		},
	}
}

func thumbUnderarm(h half) bench.Step {
	return bench.Step{
		ID: h.id("bust_width"), Piece: h.piece, Title: "Bust width",
		Why:   measure.Tell("A quarter of the bust and {1 in} for the seam, at the bust line and {1 1/2 in} above it, where the armhole ends."),
		Slip:  measure.Tell("Sewing the sides with {1/2 in} instead of {1 in}, without meaning to: the dress is {2 in} wider."),
		Needs: []measure.ID{measure.BustGirth, measure.SideNeckToBustPoint},
		Uses:  h.uses("shoulder_end"),
		Draw: func(p *bench.Pen) {
			x := p.Sum(rule.ThumbBust(p.K))
			arm, bust := rule.ThumbArmholeLine(p.K).Result(), p.K.Body(measure.SideNeckToBustPoint)
			p.Do("On the armhole line ({} down) and on the bust line ({} down) measure {} out from the "+h.centre+".", arm, bust, x)
			b := measure.Measured("bust", p.K.Body(measure.BustGirth))
			p.Slip(b.Over(4), "The {1 in} for the seam is left out.")
			p.Slip(b.Over(2).Plus(measure.Of("allowance", rule.ThumbAllowance)), "Half of her was used; the cloth lies double, so a quarter is.")
			if end := p.At(h.id("shoulder_end")); arm.MM()-end.Y < rule.In(3.5).MM() {
				p.Refuse(pattern.Refused{
					Code: "R4", Input: string(measure.SideNeckToBustPoint),
					Says: measure.Tell("the armhole line at {} lies less than {3 1/2 in} below the shoulder end", arm),
					Cure: measure.Tell("measure side neck to bust point again; {} or more can be drawn", measure.Length(end.Y)+rule.In(5)),
				})
				return
			}
			p.Point("underarm", out(x, arm.MM()))
			if h.back {
				p.Point("bust_side", out(x, bust.MM()))
				return
			}
			p.Point("dart_upper", out(x, bust.MM()))
			if p.K.Has(measure.BustPointDistance) {
				p.Point("bust_point", out(p.K.Body(measure.BustPointDistance)/2, bust.MM()))
			}
		},
	}
}

func thumbArmholeMid() bench.Step {
	return bench.Step{
		ID: "front.armhole_mid", Piece: pattern.Front, Title: "Middle of the armhole",
		Why:  measure.Tell("A straight line from the shoulder end down, halved, and {1/2 in} inside it: there the armhole passes."),
		Slip: measure.Tell("Measuring the {1/2 in} outwards."),
		Uses: theFront.uses("shoulder_end", "underarm"),
		Draw: func(p *bench.Pen) {
			s, u := p.At("front.shoulder_end"), p.At("front.underarm")
			x := p.Sum(measure.Drawn("shoulder end", measure.Length(s.X)).Minus(measure.Fixed(rule.ThumbHollow)))
			p.Slip(measure.Drawn("shoulder end", measure.Length(s.X)), "That is straight below the shoulder end: the armhole is hollow there.")
			p.Slip(measure.Drawn("shoulder end", measure.Length(s.X)).Plus(measure.Fixed(rule.ThumbHollow)), "The {1/2 in} was measured outwards; the hollow lies inside the line.")
			mid := detail.ArmholeMid(s, measure.Length(u.Y), x)
			p.Do("Rule down from the shoulder end to the armhole line, halve it at {} down, and mark {} out from the fold.", measure.Length(mid.Y), x)
			if u.X-mid.X < rule.In(1).MM() {
				p.Refuse(pattern.Refused{
					Code: "R5", Input: string(measure.AcrossShoulders),
					Says: measure.Tell("the underarm lies {} out and the middle of the armhole {}; between them no armhole can be drawn", measure.Length(u.X), x),
					Cure: measure.Tell("measure across shoulders and bust again; across shoulders {} or less can be drawn", 2*(measure.Length(u.X)-rule.In(0))),
				})
				return
			}
			p.Guide("armhole_guide", s, geom.Point{X: s.X, Y: u.Y})
			p.Point("armhole_mid", mid)
		},
	}
}

func thumbArmhole(h half) bench.Step {
	return bench.Step{
		ID: h.id("armhole"), Piece: h.piece, Title: "Armhole",
		Why:  measure.Tell("It leaves the shoulder square and arrives level under the arm."),
		Slip: measure.Tell("A point under the arm."),
		Uses: append(h.uses("neck_point", "shoulder_end", "underarm"), "front.armhole_mid"),
		Draw: func(p *bench.Pen) {
			s, u, mid := p.At(h.id("shoulder_end")), p.At(h.id("underarm")), p.At("front.armhole_mid")
			p.Do("Draw the armhole from the shoulder end through its middle to the side.")
			curve := detail.Armhole(s, p.At(h.id("neck_point")).To(s).Unit().Right(), mid, u)
			p.Sum(measure.Drawn("armhole", measure.Length(curve.Length())))
			if h.back {
				p.Point("armhole_mid", mid)
			}
			p.Draw("armhole", curve, pattern.RoleCut)
		},
	}
}

func thumbDart() bench.Step {
	return bench.Step{
		ID: "front.dart_legs", Piece: pattern.Front, Title: "Side dart",
		Why:   measure.Tell("{1 1/2 in} at the side, {5 in} long from the cloth's edge, short of the middle of the bust line. In the allowance it runs on level, so that the whole {1 1/2 in} is taken at the seam."),
		Slip:  measure.Tell("Ruling the legs from the tip to the cloth's edge: then only {1.2 in} is taken at the seam, and the front is too long."),
		Needs: []measure.ID{measure.BustGirth, measure.SideNeckToBustPoint},
		Uses:  theFront.uses("dart_upper"),
		Draw: func(p *bench.Pen) {
			up := p.At("front.dart_upper")
			low := up.Add(geom.Vector{Y: rule.ThumbDart.MM()})
			x := p.Sum(rule.ThumbTip(p.K))
			tip := out(x, (up.Y+low.Y)/2)
			b := measure.Measured("bust", p.K.Body(measure.BustGirth))
			p.Slip(b.Over(4).Minus(measure.Fixed(rule.ThumbDartLength)), "That is counted from the seam; the dart is {5 in} long from the cloth's edge.")
			p.Slip(b.Over(8), "That is the middle of the bust line: the tip stops {1/2 in} short of it.")
			sewn := geom.Vector{X: -rule.ThumbAllowance.MM()}
			if up.X+sewn.X-tip.X < rule.In(1.5).MM() {
				p.Refuse(pattern.Refused{
					Code: "R9", Input: string(measure.BustGirth),
					Says: measure.Tell("from the dart's tip to the seam there is {}; less than {1 1/2 in} makes no dart", measure.Length(up.X+sewn.X-tip.X)),
					Cure: measure.Tell("measure the bust again; by thumb it must be {16 in} or more"),
				})
				return
			}
			p.Do("Mark the lower leg {} below the upper. Mark the tip {} out, level with the middle between them, and rule both legs to it; the last {1 in} to the edge runs level.", rule.ThumbDart, x)
			p.Point("dart_lower", low)
			p.Point("dart_tip", tip)
			p.Draw("dart", geom.Lines(up, up.Add(sewn), tip, low.Add(sewn), low), pattern.RoleDart)
		},
	}
}
