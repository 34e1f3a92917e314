package garment

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

// sleeveNeeds are the measurements that a sleeve reads, by its kind.
func sleeveNeeds(kind string) []measure.ID {
	switch kind {
	case detail.CapSleeve, detail.ShortSleeve:
		return []measure.ID{measure.UpperArmGirth}
	case detail.ThreeQuarterSleeve, detail.LongSleeve:
		return []measure.ID{measure.UpperArmGirth, measure.ElbowGirth, measure.HandGirth, measure.ArmLength}
	}
	return nil
}

func sleeveIs(kinds ...string) func(pattern.Known) bool {
	return func(k pattern.Known) bool {
		for _, kind := range kinds {
			if detail.SleeveKind(k) == kind {
				return true
			}
		}
		return false
	}
}

// setIn says that a sleeve goes all round the armhole, so that nothing of it
// is faced.
var setIn = sleeveIs(detail.ShortSleeve, detail.ThreeQuarterSleeve, detail.LongSleeve)

var armholes = []string{"front.armhole", "back.armhole"}

func sleeveMarks(names ...string) []string {
	out := make([]string, len(names))
	for i, n := range names {
		out[i] = string(pattern.Sleeve) + "." + n
	}
	return out
}

// sleeveSteps draw the sleeve from the dress's own armholes, on a frame of
// its own: the underarm line level, the middle of the sleeve upright.
func sleeveSteps() []bench.Step {
	return append([]bench.Step{sleeveWidth(), sleeveCrown(), sleeveCap()}, append(sleeveBelow(), sleeveAllowances())...)
}

// capOf is the cap of the job's sleeve, and both armholes.
func capOf(p *bench.Pen) (c detail.Cap, front, back geom.Path, ok bool) {
	front, back = p.Line("front.armhole"), p.Line("back.armhole")
	c, ok = detail.CapFor(p.K, measure.Length(front.Length()+back.Length()))
	return c, front, back, ok
}

// capDrawn is the cap whose width and height are drawn: the same one, not
// worked out again.
func capDrawn(p *bench.Pen) detail.Cap {
	return detail.NewCap(measure.Length(2*p.At("sleeve.front_underarm").X), measure.Length(-p.At("sleeve.crown").Y))
}

func sleeveWidth() bench.Step {
	return bench.Step{
		ID: "sleeve.width", Piece: pattern.Sleeve, Title: "Sleeve, its width", If: detail.HasSleeve,
		Why:     measure.Tell("She bends and lifts her arm in it, so the sleeve is wider than her arm. Its underarm line is where it is widest."),
		Slip:    measure.Tell("Measuring the arm with a tight muscle, or no ease: the sleeve drags across."),
		Rule:    measure.Tell("Her upper arm and {2 in} of ease; common practice, no source."),
		Needs:   []measure.ID{measure.UpperArmGirth},
		Choices: []pattern.ChoiceID{"sleeve", "ease_upper_arm", "full_arm"},
		Uses:    armholes,
		Draw: func(p *bench.Pen) {
			c, front, back, ok := capOf(p)
			round := measure.Length(front.Length() + back.Length())
			if sleeveImpossible(p, ok, round) {
				return
			}
			w := p.Sum(detail.SleeveWidth(p.K))
			arm := measure.Measured("upper arm", p.K.Body(measure.UpperArmGirth))
			p.Slip(arm, "The ease is left out.")
			p.Slip(arm.Over(2).Plus(measure.Of("ease", p.K.Length("ease_upper_arm"))), "Half of the arm: the sleeve is drawn whole.")
			if c.Wide > w {
				p.Rule("On {} the cap would stand too high for an armhole of {}: the sleeve is widened to {}.", w, round, c.Wide)
				p.Sum(detail.SleeveWidth(p.K).Plus(measure.Of("for the cap", c.Wide-w)))
			} else if let := detail.LetIn(p.K); let > 0 {
				set, _ := p.K.Setting("full_arm")
				p.Because(set.Default.Because)
				p.Rule("{} of it are let in at the upper arm alone: the cap is as high as on a sleeve of {}.", let, w-let)
			}
			p.Do("Rule a level line {} long, the underarm line, and a line square to it through its middle. The front lies on the right.", c.Wide)
			half := c.Wide.MM() / 2
			p.Guide("underarm_line", geom.Point{X: -half}, geom.Point{X: half})
			p.Point("back_underarm", geom.Point{X: -half})
			p.Point("front_underarm", geom.Point{X: half})
		},
	}
}

// sleeveImpossible refuses what no sleeve can be set into.
func sleeveImpossible(p *bench.Pen, solved bool, round measure.Length) bool {
	r := pattern.Refused{Code: "R31", Input: "sleeve"}
	wide := detail.SleeveWidth(p.K).Result()
	switch {
	case detail.IsCutIn(p.K):
		r.Says = measure.Tell("an armhole cut in towards the neck leaves no shoulder to set a sleeve to")
		r.Cure, r.Input = measure.Tell("a plain armhole, or no sleeve"), "armhole_shape"
	case detail.LetIn(p.K) > detail.MostLetIn, !solved && p.K.Chosen("full_arm") && detail.LetIn(p.K) > 0:
		r.Says = measure.Tell("of a sleeve {} wide {} cannot be let in at the upper arm alone", wide, detail.LetIn(p.K))
		r.Cure, r.Input = measure.Tell("{2 in} or less"), "full_arm"
	case !solved, wide < rule.In(4), wide > round:
		r.Says = measure.Tell("a sleeve of {} at the upper arm does not go into an armhole of {}", wide, round)
		r.Cure = measure.Tell("measure the upper arm again, or a deeper armhole: {}", (p.K.Length("armhole_depth") + rule.In(0.5)).Up(rule.Eighth))
		r.Input = string(measure.UpperArmGirth)
	default:
		return false
	}
	p.Refuse(r)
	return true
}

func sleeveCrown() bench.Step {
	return bench.Step{
		ID: "sleeve.crown", Piece: pattern.Sleeve, Title: "Sleeve, height of the cap", If: detail.HasSleeve,
		Why:     measure.Tell("A cap that is a little longer than the armhole can be eased in over the round of the arm. Its height decides how much longer."),
		Slip:    measure.Tell("Taking a third of the armhole without walking the seam: the cap is then too long to ease, and puckers."),
		Rule:    measure.Tell("As high as the ease asks for; found on the drawing."),
		Needs:   []measure.ID{measure.UpperArmGirth},
		Choices: []pattern.ChoiceID{"cap_ease", "cap_height", "full_arm"},
		Uses:    append(sleeveMarks("front_underarm"), armholes...),
		Draw: func(p *bench.Pen) {
			c, front, back, _ := capOf(p)
			round := measure.Length(front.Length() + back.Length())
			more := c.Length() - round
			if capImpossible(p, c, round, more) {
				return
			}
			p.Sum(measure.Drawn("cap height", c.High))
			p.Do("Measure front and back armhole of the dress: {} together. On the middle line go up {} and mark the crown. So high, the cap is {} long, {} more than the armhole.",
				round, c.High, c.Length(), more)
			if p.K.Chosen("cap_height") {
				p.Rule("Her own height; the ease follows from it.")
			}
			third := measure.Drawn("armhole", round).Over(3)
			p.Slip(third, "That is a third of the armhole, as old books draw it: too much ease for most cloth.")
			p.Point("crown", geom.Point{Y: -c.High.MM()})
			p.Guide("middle", geom.Point{}, geom.Point{Y: -c.High.MM()})
		},
	}
}

// capImpossible refuses a cap that cannot be sewn into the armhole.
func capImpossible(p *bench.Pen, c detail.Cap, round, more measure.Length) bool {
	r := pattern.Refused{Code: "R31", Input: "cap_height"}
	switch {
	case c.High < rule.In(1.5):
		r.Says = measure.Tell("a cap {} high has no shape: on a sleeve of {} an armhole of {} leaves no more", c.High, c.Wide, round)
		r.Cure = measure.Tell("a deeper armhole: {}", (p.K.Length("armhole_depth") + rule.In(0.5)).Up(rule.Eighth))
		r.Input = "armhole_depth"
	case more < rule.In(-0.25), more > rule.In(3):
		r.Says = measure.Tell("a cap {} high is {} long on an armhole of {}: it cannot be sewn in", c.High, c.Length(), round)
		r.Cure = measure.Tell("a height that gives the cap 0 to {1 3/4 in} of ease")
		if p.K.Chosen("full_arm") && !p.K.Chosen("cap_height") {
			r.Cure, r.Input = measure.Tell("let in less at the upper arm"), "full_arm"
			break
		}
		if solved, ok := detail.SolvedCap(p.K, round); ok {
			r.Cure = measure.Tell("a height of {}, which gives the cap {} of ease", solved.High, p.K.Length("cap_ease"))
		}
	default:
		return false
	}
	p.Refuse(r)
	return true
}

func sleeveCap() bench.Step {
	return bench.Step{
		ID: "sleeve.cap", Piece: pattern.Sleeve, Title: "Sleeve, the cap", If: detail.HasSleeve,
		Why:     measure.Tell("The front is hollowed more than the back, since the arm swings forward. Nothing is eased below the notches: that part must lie flat under the arm."),
		Slip:    measure.Tell("Notches set off on the sleeve alone: they must lie as far from the underarm as on the dress."),
		Rule:    measure.Tell("Ease 55 of the back to 45 of the front, all above the notches; common practice, no source."),
		Needs:   []measure.ID{measure.UpperArmGirth},
		Choices: []pattern.ChoiceID{"cap_ease"},
		Uses:    append(sleeveMarks("crown", "front_underarm"), armholes...),
		Draw: func(p *bench.Pen) {
			c, front, back := capDrawn(p), p.Line("front.armhole"), p.Line("back.armhole")
			round := measure.Length(front.Length() + back.Length())
			more := c.Length() - round
			top := measure.Length(front.Length()) + measure.Length(detail.CapFrontEase*more.MM())
			_, fromFront := detail.ArmholeNotch(front)
			_, fromBack := detail.ArmholeNotch(back)
			p.Sum(measure.Drawn("front armhole", measure.Length(front.Length())).Plus(measure.Of("its ease", measure.Length(detail.CapFrontEase*more.MM()))))
			p.Do("Draw the cap from the back underarm over the crown to the front underarm: level at both and at the crown. From the front underarm measure {} along it to the notch that meets the shoulder seam, {} to the front notch; from the back underarm {} to the back notch, a double one.",
				top, fromFront, fromBack)
			p.Point("top_notch", c.FromFront(top))
			if setIn(p.K) {
				p.Point("front_notch", c.FromFront(fromFront))
				p.Point("back_notch", c.FromBack(fromBack))
			}
			p.Draw("cap", c.Line(), pattern.RoleStitch)
		},
	}
}
