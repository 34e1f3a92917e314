package garment

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

// upperSteps draw shoulder, neck and armhole of one half.
func upperSteps(h half, from beginning) []bench.Step {
	s := []bench.Step{from.end(h), neckPoint(h)}
	if h.back {
		s = append(s, shoulderEase(), shoulderDart())
	}
	s = append(s, neck(h))
	s = append(s, styledNeck(h)...)
	if !h.back {
		s = append(s, neckOpening())
	}
	return append(s, from.width(h), armholeMid(h), armhole(h))
}

// shoulderOf gathers the shoulder of a half from its marks.
func shoulderOf(p *bench.Pen, h half) detail.Shoulder {
	s := detail.Shoulder{
		Base: p.At(h.id("neck_base")), Bone: p.At(h.id("bone_end")),
		Neck: p.At(h.id("neck_point")), End: p.At(h.id("shoulder_end")),
	}
	s.Dir = s.Base.To(s.Bone).Unit()
	s.Down = s.Dir.Right()
	return s
}

func shoulderEnd(h half) bench.Step {
	return bench.Step{
		ID: h.id("shoulder_end"), Piece: h.piece, Title: "Shoulder end, drawn in",
		Why:     measure.Tell("Without a sleeve the edge would stand off the arm bone, so it lies inside it."),
		Slip:    measure.Tell("Moving straight in instead of along the shoulder line: the slope changes."),
		Needs:   []measure.ID{measure.AcrossShoulders},
		Choices: []pattern.ChoiceID{"shoulder_inset"},
		Uses:    h.uses("neck_base", "bone_end"),
		Draw: func(p *bench.Pen) {
			x := p.Sum(rule.ShoulderOut(p.K))
			s := shoulderOf(p, h)
			end := s.Base
			if w := s.Bone.X - s.Base.X; w > 0 {
				end = s.Base.Lerp(s.Bone, (x.MM()-s.Base.X)/w)
			}
			p.Do("Along the shoulder line come in until it lies {} out from the {}. Mark the shoulder end.", x, h.centre)
			p.Slip(rule.BoneOut(p.K), "That is the bone itself; a sleeveless edge lies inside it.")
			p.Slip(measure.Measured("across shoulders", p.K.Body(measure.AcrossShoulders)).Minus(measure.Of("inset", p.K.Length("shoulder_inset"))),
				"The whole width was used; take half of it first.")
			p.Point("shoulder_end", end)
		},
	}
}

func neckPoint(h half) bench.Step {
	return bench.Step{
		ID: h.id("neck_point"), Piece: h.piece, Title: "Neck point, widened",
		Why:     measure.Tell("The neck is opened along the shoulder, so that the shoulder keeps its slope."),
		Slip:    measure.Tell("Widening on the top line: it lifts the shoulder, and the edge stands off."),
		Choices: []pattern.ChoiceID{"neck_widening"},
		Uses:    h.uses("neck_base", "bone_end", "shoulder_end"),
		Draw: func(p *bench.Pen) {
			s := shoulderOf(p, h)
			widen := p.K.Length("neck_widening")
			s.Neck = s.Base.Add(s.Dir.Scale(widen.MM()))
			left := s.Left()
			p.Do("From the neck base slide {} along the shoulder line and mark the neck point. {} of shoulder are left.", widen, max(0, left))
			if left < rule.In(1.5) {
				p.Refuse(pattern.Refused{
					Code: "R3", Input: "neck_widening",
					Says: measure.Tell("neck widened by {} and the end drawn in by {} leave {} of shoulder; less than {1 1/2 in} cannot be sewn",
						widen, p.K.Length("shoulder_inset"), max(0, left)),
					Cure: measure.Tell("widen by {} or less, or measure neck base and across shoulders again", max(0, widen+left-rule.In(1.5))),
				})
				return
			}
			p.Sum(measure.Drawn("shoulder left", left))
			p.Point("neck_point", s.Neck)
			p.Draw("shoulder", geom.Lines(s.Neck, s.End), pattern.RoleStitch)
		},
	}
}

func neck(h half) bench.Step {
	depthID := pattern.ChoiceID(string(h.piece) + "_neck_depth")
	why := "A back neck that is shallower than the front keeps the dress from falling backwards. Square ends make a smooth ring."
	if !h.back {
		why = "The curve leaves the shoulder square and meets the fold square, so that the ring has no peak and no dip."
	}
	return bench.Step{
		ID: h.id("neck"), Piece: h.piece, Title: "Neck curve", Why: measure.Tell(why),
		Slip:    measure.Tell("Counting the depth from the neck point instead of the top line."),
		Choices: []pattern.ChoiceID{depthID},
		Uses:    h.uses("neck_point"),
		If:      func(k pattern.Known) bool { return detail.NeckStyle(k, h.back) == detail.RoundNeckline },
		Draw: func(p *bench.Pen) {
			depth := p.K.Length(depthID)
			s := shoulderOf(p, h)
			if neckImpossible(p, h, depthID, depth, s) {
				return
			}
			p.Do("Mark the neck {} down the "+h.centre+" and draw the curve: level there, square to the shoulder at the neck point.", depth)
			p.Point("neck_centre", out(0, depth.MM()))
			curve := detail.RoundNeck(s.Neck, s.Down, depth, h.back)
			p.Sum(measure.Drawn("neck, half", measure.Length(curve.Length())))
			p.Draw("neck", curve, pattern.RoleStitch)
		},
	}
}

func neckImpossible(p *bench.Pen, h half, id pattern.ChoiceID, depth measure.Length, s detail.Shoulder) bool {
	least := measure.Length(s.Neck.Y) + rule.In(0.25)
	most := rule.In(60)
	if h.back {
		if p.K.Has(measure.BackNeckToWaist) {
			most = rule.BackWaist(p.K).Result() - rule.In(3)
		}
	} else if p.K.Has(measure.SideNeckToBustPoint) {
		most = rule.BustLevel(p.K) - rule.In(1.5)
	}
	if depth >= least && depth <= most {
		return false
	}
	p.Refuse(pattern.Refused{
		Code: "R12", Input: string(id),
		Says: measure.Tell("a "+string(h.piece)+" neck {} deep cannot be drawn: the neck point lies at {} and it must end above {}", depth, measure.Length(s.Neck.Y), most),
		Cure: bounded("a depth", least, most, measure.Tell("measure the lengths from the neck to bust point and waist again: they leave no room for a neck")),
	})
	return true
}

func bustWidth(h half) bench.Step {
	return bench.Step{
		ID: h.id("bust_width"), Piece: h.piece, Title: "Bust width",
		Why:     measure.Tell("A quarter of the girth goes on each quarter of the dress."),
		Slip:    measure.Tell("Adding the whole ease to one quarter: four times too much."),
		Needs:   []measure.ID{measure.BustGirth, measure.ShoulderDrop},
		Choices: []pattern.ChoiceID{"armhole_depth", "ease_bust"},
		Uses:    h.uses("shoulder_end", "hem_centre"),
		Draw: func(p *bench.Pen) {
			depth := p.K.Length("armhole_depth")
			x := p.Sum(rule.BustWidthOf(p.K, h.back))
			p.Do("Square out a line {} below the top line. On it measure {} out from the "+h.centre+" and mark the underarm point.", depth, x)
			if set, ok := p.K.Setting("armhole_depth"); ok {
				p.Because(set.Default.Because)
				shareSlip(p, h, set.Default.Because)
			}
			bust, ease := measure.Measured("bust", p.K.Body(measure.BustGirth)), measure.Of("ease", p.K.Length("ease_bust"))
			p.Slip(bust.Over(4).Plus(ease), "The whole ease was added to one quarter: it is shared by four quarters too.")
			p.Slip(bust.Over(4), "The ease is left out: a dress as tight as the tape.")
			p.Slip(bust.Over(2).Plus(ease.Over(4)), "That is half of her; front and back lie double, so a quarter is used.")
			end := p.At(h.id("shoulder_end"))
			if depth.MM()-end.Y < rule.In(3.5).MM() {
				p.Refuse(pattern.Refused{
					Code: "R4", Input: "armhole_depth",
					Says: measure.Tell("an armhole depth of {} leaves {} below the shoulder end; an arm needs {3 1/2 in} and more", depth, depth-measure.Length(end.Y)),
					Cure: measure.Tell("an armhole depth of {} or more", (measure.Length(end.Y) + rule.In(3.5)).Up(rule.Eighth)),
				})
				return
			}
			p.Guide("underarm_line", out(0, depth.MM()), out(x, depth.MM()))
			p.Point("underarm", out(x, depth.MM()))
		},
	}
}

func armholeMid(h half) bench.Step {
	needs, name, least := measure.AcrossFront, "across front", 1.0
	why := "The arm swings forward: cloth in front of it must be cut away."
	if h.back {
		needs, name, least = measure.AcrossBack, "across back", 0.75
		why = "The back keeps more width than the front, so that she can reach."
	}
	return bench.Step{
		ID: h.id("armhole_mid"), Piece: h.piece, Title: "Middle of the armhole", Why: measure.Tell(why),
		Slip:  measure.Tell("The same hollow in front and behind: the front bags and the back tears."),
		Needs: []measure.ID{needs},
		Uses:  h.uses("shoulder_end", "underarm"),
		Draw: func(p *bench.Pen) {
			s, u := shoulderOf(p, h), p.At(h.id("underarm"))
			hollow := rule.FrontHollow(p.K, measure.Length(s.End.X))
			if h.back {
				hollow = rule.BackHollow(p.K, measure.Length(s.End.X))
			}
			x := p.Sum(hollow)
			mid := detail.ArmholeMid(s.End, measure.Length(u.Y), x)
			p.Do("Half way between shoulder end and underarm line, {} down, measure {} out from the "+h.centre+" and mark the middle of the armhole.", measure.Length(mid.Y), x)
			p.Slip(measure.Measured(name, p.K.Body(needs)), "That is the whole width; half of it lies on this side of the "+h.centre+".")
			p.Slip(measure.Drawn("shoulder end", measure.Length(s.End.X)), "That is straight below the shoulder end: the armhole is hollow there.")
			if u.X-mid.X < rule.In(least).MM() {
				p.Refuse(pattern.Refused{
					Code: "R5", Input: string(needs),
					Says: measure.Tell("the underarm lies {} out and the middle of the "+string(h.piece)+" armhole {}; between them no armhole can be drawn", measure.Length(u.X), x),
					Cure: measure.Tell("measure "+name+" again, or more ease at the bust; "+name+" {} or less can be drawn", 2*(measure.Length(u.X)-rule.In(least))),
				})
				return
			}
			p.Point("armhole_mid", mid)
		},
	}
}

func armhole(h half) bench.Step {
	return bench.Step{
		ID: h.id("armhole"), Piece: h.piece, Title: "Armhole curve",
		Why:  measure.Tell("A smooth ring under the arm: it leaves the shoulder square, stands upright in the middle and arrives level."),
		Slip: measure.Tell("A point under the arm, or a scoop at the shoulder."),
		Uses: h.uses("shoulder_end", "armhole_mid", "underarm", "neck_base", "bone_end"),
		Draw: func(p *bench.Pen) {
			if scoopImpossible(p) {
				return
			}
			curve := drawArmhole(p, h, p.At(h.id("underarm")))
			if strapTooNarrow(p, h, curve) {
				return
			}
			p.Do("Draw the armhole from the shoulder end through its middle to the underarm point.")
			p.Sum(measure.Drawn("armhole", measure.Length(curve.Length())))
			p.Draw("armhole", curve, pattern.RoleStitch)
		},
	}
}
