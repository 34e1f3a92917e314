package garment

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

// pinchStep takes a pinch out of the front armhole and gives it to the dart.
func pinchStep() bench.Step {
	return bench.Step{
		ID: "front.pinch", Piece: pattern.Front, Title: "Pinch the armhole into the dart", If: pinched,
		Why:     measure.Tell("Over a full bust the armhole stands off. What is pinched out of it turns about the bust point and opens the dart more."),
		Slip:    measure.Tell("Taking it off at the side seam: then the bust is too tight and the armhole still gapes."),
		Needs:   dartNeeds,
		Choices: []pattern.ChoiceID{"armhole_pinch", "dart_tip_back"},
		Uses: append(theFront.uses("bust_point", "armhole", "armhole_mid", "shoulder_end", "neck_base", "bone_end", "waist"),
			"back.underarm", "back.waist"),
		Also: dartMarks,
		Draw: func(p *bench.Pen) {
			if noDart(p, "armhole_pinch", "leave the armhole as it is: a pinch of 0") {
				return
			}
			pinch := p.Sum(measure.Of("pinch", p.K.Length("armhole_pinch")))
			b := bustOf(p).Pinched(pinch)
			intake := measure.Length(b.Upper.Dist(b.Lower))
			if pinchTooBig(p, "armhole_pinch", pinch, b) {
				return
			}
			p.Do("On the armhole, a third of the way from its middle to the underarm, fold {} out to nothing at the bust point. Underarm and upper leg turn up; the dart is now {} wide. Draw the armhole anew.", pinch, intake)
			p.Rule("The dart is brought to the bust point: {} degrees there.", rule.Degrees(b.Angle()))
			drawPinched(p, b)
			p.Draw("armhole", drawArmhole(p, theFront, b.Underarm), pattern.RoleStitch)
		},
	}
}

// pinchTooBig refuses a pinch that makes a dart which cannot be sewn flat.
func pinchTooBig(p *bench.Pen, input string, pinch measure.Length, b detail.Bust) bool {
	if pinch <= rule.In(1) && rule.Degrees(b.Angle()) <= 30 {
		return false
	}
	p.Refuse(pattern.Refused{
		Code: "R17", Input: input,
		Says: measure.Tell("a pinch of {} opens the dart to {}, {} degrees at the bust point; that cannot be sewn flat",
			pinch, measure.Length(b.Upper.Dist(b.Lower)), rule.Degrees(b.Angle())),
		Cure: measure.Tell("a pinch of {3/4 in} or less"),
	})
	return true
}

// drawPinched draws underarm and dart where a pinch took them.
func drawPinched(p *bench.Pen, b detail.Bust) {
	tip := b.Point.Add(b.Point.To(b.Upper.Lerp(b.Lower, 0.5)).Unit().Scale(p.K.Length("dart_tip_back").MM()))
	p.Point("underarm_pinched", b.Underarm)
	p.Point("dart_upper", b.Upper)
	p.Point("dart_lower", b.Lower)
	p.Point("dart_tip", tip)
	p.Draw("dart", geom.Lines(b.Upper, tip, b.Lower), pattern.RoleDart)
}

// dartMarks are the marks of the side dart, where there is to be one.
func dartMarks(k pattern.Known) []string {
	if !hasDart(k) {
		return nil
	}
	return theFront.uses("dart_upper", "dart_lower")
}

// noDart refuses what wants a dart on a front that has none.
func noDart(p *bench.Pen, input, cure string) bool {
	if hasDart(p.K) {
		return false
	}
	p.Refuse(pattern.Refused{
		Code: "R17", Input: input,
		Says: measure.Tell("her front is not longer than her back, so there is no dart to work with"),
		Cure: measure.Tell(cure),
	})
	return true
}

// drawArmhole is the armhole of a half to an underarm point.
func drawArmhole(p *bench.Pen, h half, underarm geom.Point) geom.Path {
	s := outerShoulder(p, h)
	scoop := 0.0
	if set, ok := p.K.Setting("armhole_scoop"); ok && !h.back {
		scoop = set.Value.Number
	}
	return detail.ScoopedArmhole(s.End, s.Down, p.At(h.id("armhole_mid")), underarm, scoop)
}

// scoopImpossible refuses a scoop that would cut into the underarm.
func scoopImpossible(p *bench.Pen) bool {
	set, _ := p.K.Setting("armhole_scoop")
	if set.Value.Number >= 0 && set.Value.Number <= 15 {
		return false
	}
	p.Refuse(pattern.Refused{
		Code: "R17", Input: "armhole_scoop",
		Says: measure.Tell("an armhole scooped by {} per cent cannot be drawn", set.Value.Number),
		Cure: measure.Tell("0 to 15 per cent"),
	})
	return true
}
