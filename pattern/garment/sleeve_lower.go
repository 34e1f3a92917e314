package garment

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

var pastElbow = sleeveIs(detail.ThreeQuarterSleeve, detail.LongSleeve)

// sleeveBelow are the steps below the cap, by the kind of sleeve.
func sleeveBelow() []bench.Step {
	return []bench.Step{elbowSeams(), elbowDart(), elbowHem(), shortSeams(), shortHem(), capSleeveHem()}
}

// armOf is the sleeve past the elbow, as its measurements give it.
func armOf(p *bench.Pen) (detail.Arm, detail.Elbowed) {
	a := detail.ArmOf(p.K, capDrawn(p))
	return a, a.Draw()
}

func elbowSeams() bench.Step {
	return bench.Step{
		ID: "sleeve.seams", Piece: pattern.Sleeve, Title: "Sleeve, elbow and wrist", If: pastElbow,
		Why:     measure.Tell("The arm narrows to the elbow and again to the wrist, and the hand must go through."),
		Slip:    measure.Tell("Measuring the elbow straight: bent it is larger, and the sleeve then binds."),
		Rule:    measure.Tell("The elbow lies at half the underarm seam, {3/4 in} up; elbow and {1 3/4 in}, hand and {1/2 in}; common practice, no source."),
		Needs:   []measure.ID{measure.UpperArmGirth, measure.ArmLength, measure.ElbowGirth, measure.HandGirth},
		Choices: []pattern.ChoiceID{"sleeve", "sleeve_length", "cap_height"},
		Uses:    append(sleeveMarks("cap", "front_underarm"), armholes...),
		Draw: func(p *bench.Pen) {
			a, e := armOf(p)
			if armImpossible(p, a) {
				return
			}
			elbow := measure.Measured("elbow", p.K.Body(measure.ElbowGirth)).Plus(measure.Of("ease", a.Elbow-p.K.Body(measure.ElbowGirth)))
			p.Sum(elbow)
			p.Slip(measure.Measured("elbow", p.K.Body(measure.ElbowGirth)), "The ease is left out: she cannot bend her arm.")
			p.Do("Down the middle line mark the elbow {} below the underarm line and the wrist {} below it. Set off half of {} to either side at the elbow, half of {} at the wrist, and join them from the underarm down. The sleeve ends {} below the underarm line.",
				a.ElbowLevel(), a.Underarm(), a.Elbow, a.Wrist, a.Length-a.Cap.High)
			p.Point("front_elbow", e.Elbow[0])
			p.Point("back_elbow", e.Elbow[1])
			p.Point("front_wrist", e.Front.End())
			p.Draw("front_seam", e.Front, pattern.RoleStitch)
			p.Draw("back_seam", e.Back, pattern.RoleStitch)
		},
	}
}

// armImpossible refuses an arm that no sleeve can be drawn on.
func armImpossible(p *bench.Pen, a detail.Arm) bool {
	below := a.Length - a.Cap.High
	r := pattern.Refused{Code: "R31", Input: "sleeve_length"}
	switch {
	case a.Underarm() < rule.In(6):
		r.Input = string(measure.ArmLength)
		r.Says = measure.Tell("an arm {} long leaves {} below a cap of {}: there is no elbow to draw", a.Long, max(0, a.Underarm()), a.Cap.High)
		r.Cure = measure.Tell("measure the arm length again, from the shoulder bone over the elbow to the wrist")
	case below < rule.In(2):
		r.Says = measure.Tell("a sleeve {} long ends {} below the underarm line", a.Length, max(0, below))
		r.Cure = measure.Tell("a short sleeve, or a length of {} or more", (a.Cap.High + rule.In(2)).Up(rule.Eighth))
	case a.Length > a.Long+rule.In(3):
		r.Says = measure.Tell("a sleeve {} long goes far over her hand: her arm is {}", a.Length, a.Long)
		r.Cure = measure.Tell("a length of {} or less", a.Long)
	case a.Elbow > 1.5*a.Cap.Wide:
		r.Input = string(measure.ElbowGirth)
		r.Says = measure.Tell("an elbow of {} on an upper arm of {} is no arm", p.K.Body(measure.ElbowGirth), p.K.Body(measure.UpperArmGirth))
		r.Cure = measure.Tell("measure elbow and upper arm again")
	case a.Wrist > 1.5*a.Elbow:
		r.Input = string(measure.HandGirth)
		r.Says = measure.Tell("a hand of {} on an elbow of {} is no arm", p.K.Body(measure.HandGirth), p.K.Body(measure.ElbowGirth))
		r.Cure = measure.Tell("measure hand and elbow again")
	default:
		return false
	}
	p.Refuse(r)
	return true
}

func elbowDart() bench.Step {
	return bench.Step{
		ID: "sleeve.elbow_dart", Piece: pattern.Sleeve, Title: "Sleeve, dart at the elbow", If: pastElbow,
		Why:     measure.Tell("A bent elbow needs more length behind. It is let in along the back seam and taken up again by a dart, so that both seams stay as long."),
		Slip:    measure.Tell("Letting it in and forgetting the dart: the back seam is then longer than the front."),
		Rule:    measure.Tell("{3/4 in} wide, {3 1/4 in} long, square to the seam; common practice, no source."),
		Needs:   []measure.ID{measure.UpperArmGirth, measure.ArmLength, measure.ElbowGirth, measure.HandGirth},
		Choices: []pattern.ChoiceID{"sleeve_length"},
		Uses:    append(sleeveMarks("front_seam", "back_seam"), armholes...),
		Draw: func(p *bench.Pen) {
			_, e := armOf(p)
			if !e.Darted {
				p.Do("The sleeve ends too near the elbow to want a dart; none is drawn.")
				return
			}
			bite := detail.CapDown(e.Tip, e.Upper, e.Low, e.BackBelow.StartTangent())
			p.Sum(measure.Of("intake", measure.Length(e.Upper.Dist(e.Low))))
			p.Do("From the back elbow go {} down the seam and move all that lies below it by as much. Both are ends of the dart's legs; its tip lies {} in from their middle, square to the seam. Fold it down on paper and cut the seam across it.",
				measure.Length(e.Upper.Dist(e.Low)), measure.Length(e.Upper.Lerp(e.Low, 0.5).Dist(e.Tip)))
			p.Point("dart_upper", e.Upper)
			p.Point("dart_lower", e.Low)
			p.Point("dart_tip", e.Tip)
			p.Point("dart_cap", bite)
			p.Draw("dart", geom.Lines(e.Upper, e.Tip, e.Low), pattern.RoleDart)
			p.Draw("back_seam", e.Back, pattern.RoleStitch)
			p.Draw("back_seam_lower", e.BackBelow, pattern.RoleStitch)
			p.Draw("dart_end", geom.Lines(e.Upper, bite, e.Low), pattern.RoleStitch)
		},
	}
}

func elbowHem() bench.Step {
	return bench.Step{
		ID: "sleeve.hem", Piece: pattern.Sleeve, Title: "Sleeve, hem", If: pastElbow,
		Why:     measure.Tell("Both seams slant, so a ruled hem would stand out as a point once the seam is sewn. Square to both it runs on round the arm."),
		Slip:    measure.Tell("Ruling the hem from seam to seam."),
		Needs:   []measure.ID{measure.UpperArmGirth, measure.ArmLength, measure.ElbowGirth, measure.HandGirth},
		Choices: []pattern.ChoiceID{"sleeve_length"},
		Uses:    append(sleeveMarks("front_seam", "back_seam"), armholes...),
		Draw: func(p *bench.Pen) {
			_, e := armOf(p)
			p.Sum(measure.Drawn("hem", measure.Length(e.Hem.Length())))
			p.Do("Draw the hem from the front seam to the back seam, square to both.")
			p.Point("front_hem", e.Hem.Start())
			p.Point("back_hem", e.Hem.End())
			p.Draw("hem", e.Hem, pattern.RoleStitch)
		},
	}
}

func shortSeams() bench.Step {
	return bench.Step{
		ID: "sleeve.seams", Piece: pattern.Sleeve, Title: "Sleeve, its seams", If: sleeveIs(detail.ShortSleeve),
		Why:     measure.Tell("A short sleeve comes in a little to its hem, so that it does not stand off the arm."),
		Slip:    measure.Tell("As wide below as above: it stands out like a wing."),
		Rule:    measure.Tell("{1/4 in} narrower at the hem than at the underarm: her upper arm and {1 3/4 in}, as a rule; common practice, no source."),
		Needs:   []measure.ID{measure.UpperArmGirth},
		Choices: []pattern.ChoiceID{"sleeve", "sleeve_length", "cap_height"},
		Uses:    append(sleeveMarks("cap"), armholes...),
		Draw: func(p *bench.Pen) {
			c := capDrawn(p)
			long := p.K.Length("sleeve_length")
			if below := long - c.High; below < rule.In(0.75) || below > rule.In(10) {
				p.Refuse(pattern.Refused{
					Code: "R31", Input: "sleeve_length",
					Says: measure.Tell("a short sleeve {} long ends {} below the underarm line", long, max(0, below)),
					Cure: measure.Tell("a length between {} and {}, or another sleeve", (c.High + rule.In(1)).Up(rule.Eighth), (c.High + rule.In(10)).Down(rule.Eighth)),
				})
				return
			}
			front, back := detail.ShortSleeveSeams(c, long)
			w := p.Sum(measure.Of("width", c.Wide).Minus(measure.Of("in", c.Wide-measure.Length(front.End().X-back.End().X))))
			p.Do("{} below the underarm line rule a level line {} long, half of it to either side of the middle, and join its ends to the underarm.", long-c.High, w)
			p.Draw("front_seam", front, pattern.RoleStitch)
			p.Draw("back_seam", back, pattern.RoleStitch)
		},
	}
}

func shortHem() bench.Step {
	return bench.Step{
		ID: "sleeve.hem", Piece: pattern.Sleeve, Title: "Sleeve, hem", If: sleeveIs(detail.ShortSleeve),
		Why:  measure.Tell("Straight, so that it turns up straight. Below it the seams spread again, or the turned edge is too tight."),
		Slip: measure.Tell("Running the seams straight on below the hem line."),
		Uses: sleeveMarks("front_seam", "back_seam"),
		Draw: func(p *bench.Pen) {
			hem := geom.Lines(p.Line("sleeve.front_seam").End(), p.Line("sleeve.back_seam").End())
			p.Sum(measure.Drawn("hem", measure.Length(hem.Length())))
			p.Do("The level line is the hem.")
			p.Point("front_hem", hem.Start())
			p.Point("back_hem", hem.End())
			p.Draw("hem", hem, pattern.RoleStitch)
		},
	}
}

func capSleeveHem() bench.Step {
	return bench.Step{
		ID: "sleeve.hem", Piece: pattern.Sleeve, Title: "Cap sleeve, hem", If: sleeveIs(detail.CapSleeve),
		Why:     measure.Tell("It ends on the armhole where the middle of the armhole is, and covers the shoulder end. Below it the armhole is faced."),
		Slip:    measure.Tell("Running it down to the underarm: it then binds when she lifts her arm."),
		Needs:   []measure.ID{measure.UpperArmGirth},
		Choices: []pattern.ChoiceID{"sleeve", "sleeve_length"},
		Uses:    append(sleeveMarks("cap", "crown"), armholes...),
		Draw: func(p *bench.Pen) {
			c, front, back := capDrawn(p), p.Line("front.armhole"), p.Line("back.armhole")
			lowFront, lowBack := measure.Length(detail.LowerArmhole(front).Length()), measure.Length(detail.LowerArmhole(back).Length())
			f, b := detail.CapSleeveEnds(c, front, back)
			long := p.K.Length("sleeve_length")
			middle := geom.Point{Y: (long - c.High).MM()}
			if least := detail.CapSleeveLeast(c, front, back); long < least-0.01 || middle.Y > 0 {
				p.Refuse(pattern.Refused{
					Code: "R31", Input: "sleeve_length",
					Says: measure.Tell("a cap sleeve {} long cannot be drawn on a cap {} high", long, c.High),
					Cure: bounded("a length", least.Up(rule.Eighth), c.High.Down(rule.Eighth), measure.Tell("a short sleeve")),
				})
				return
			}
			p.Sum(measure.Of("length", long))
			p.Do("From the front underarm measure {} along the cap, from the back underarm {}, as the dress's armholes measure below their middle, and mark the ends. {} below the crown mark the hem on the middle line, and draw it from end to end: level in the middle.",
				lowFront, lowBack, long)
			p.Point("front_hem", f)
			p.Point("back_hem", b)
			p.Point("hem_middle", middle)
			p.Draw("hem", detail.CapSleeveHem(f, b, middle), pattern.RoleStitch)
		},
	}
}

func sleeveAllowances() bench.Step {
	return bench.Step{
		ID: "sleeve.allowances", Piece: pattern.Sleeve, Title: "Sleeve, allowances, notches and grain", If: detail.HasSleeve,
		Why:     measure.Tell("The cap gets what the armhole gets, the seam what the sides get, so that all can be let out together."),
		Slip:    measure.Tell("Two right sleeves: the pair is cut once on the right side and once on the wrong side of the cloth."),
		Choices: []pattern.ChoiceID{"armhole_allowance", "side_allowance", "sleeve_hem"},
		Uses:    sleeveMarks("cap", "hem", "top_notch"),
		Draw: func(p *bench.Pen) {
			if !setIn(p.K) {
				p.Do("Outside the net line add {} at the cap and {} at the hem. Mark the notch that meets the shoulder seam. The grain runs along the middle line.",
					p.K.Length("armhole_allowance"), p.K.Length("sleeve_hem"))
				return
			}
			p.Do("Outside the net line add {} at the cap, {} at the seams and {} at the hem. Mark the notches: one in front, two behind, one at the shoulder. The grain runs along the middle line.",
				p.K.Length("armhole_allowance"), p.K.Length("side_allowance"), p.K.Length("sleeve_hem"))
			p.Rule("Below the hem line the seams mirror those above it, so that the turned hem lies flat.")
		},
	}
}
