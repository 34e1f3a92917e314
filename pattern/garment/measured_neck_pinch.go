package garment

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

func neckPinched(k pattern.Known) bool {
	return k.Method != pattern.Thumb && k.Length("neck_pinch") > 0
}

// neckPinchStep takes a pinch out of the front neck and gives it to the dart.
func neckPinchStep() bench.Step {
	return bench.Step{
		ID: "front.neck_pinch", Piece: pattern.Front, Title: "Pinch the neck into the dart", If: neckPinched,
		Why:     measure.Tell("A low neck sets cloth free above the bust, and it stands off. What is pinched out of it turns about the bust point and opens the dart more."),
		Slip:    measure.Tell("Taking it off at the centre: then the fold no longer lies on the grain, and the neck gapes beside it."),
		Needs:   dartNeeds,
		Choices: []pattern.ChoiceID{"neck_pinch", "dart_tip_back", "front_neck_depth"},
		Uses: append(theFront.uses("bust_point", "neck", "neck_point", "neck_centre", "shoulder", "shoulder_end", "neck_base", "bone_end",
			"armhole", "armhole_mid", "waist"), "back.underarm", "back.waist"),
		Also: dartMarks,
		Draw: drawNeckPinch,
	}
}

func drawNeckPinch(p *bench.Pen) {
	if noDart(p, "neck_pinch", "leave the neck as it is: a pinch of 0; or a neck that is less deep") {
		return
	}
	pinch := p.Sum(measure.Of("pinch", p.K.Length("neck_pinch")))
	if detail.NeckStyle(p.K, false) == detail.FunnelNeckline {
		p.Refuse(pattern.Refused{
			Code: "R17", Input: "neck_pinch",
			Says: measure.Tell("a funnel stands up from the neck; a pinch of {} has no edge to be taken from", pinch),
			Cure: measure.Tell("a pinch of 0"),
		})
		return
	}
	was := bustOf(p)
	b, turn := was.NeckPinched(pinch)
	if pinchTooBig(p, "neck_pinch", pinch, b) {
		return
	}
	s := detail.Shoulder{Base: turn.Apply(p.At("front.neck_base")), Bone: turn.Apply(p.At("front.bone_end")), Neck: b.Shoulder.Start(), End: b.Shoulder.End()}
	s.Dir = s.Base.To(s.Bone).Unit()
	s.Down = s.Dir.Right()
	n := detail.NecklineOf(p.K, s, false)
	if n.Style == detail.SweetheartNeckline && (n.Lobe().X <= 0 || n.Corner().Y <= s.Neck.Y) || s.Neck.X < rule.In(1).MM() {
		p.Refuse(pattern.Refused{
			Code: "R17", Input: "neck_pinch",
			Says: measure.Tell("pinched by {} the neck lies {} from the centre at the shoulder; no neck is left to draw", pinch, measure.Length(s.Neck.X)),
			Cure: measure.Tell("a smaller pinch, or a neck that is widened more"),
		})
		return
	}
	neck := n.Curve()
	if pinchedStrapTooNarrow(p, neck, b.Armhole) {
		return
	}
	p.Do("In the middle of the neck fold {} out to nothing at the bust point: neck point, shoulder, armhole and upper leg turn towards the centre, and the dart is now {} wide. Draw the neck anew, from the same depth, square to the shoulder.",
		pinch, measure.Length(b.Upper.Dist(b.Lower)))
	p.Rule("The dart is brought to the bust point: {} degrees there.", rule.Degrees(b.Angle()))
	drawPinched(p, b)
	p.Guide("neck_pinch", was.NeckPlace(), b.Point)
	p.Point("neck_base", s.Base)
	p.Point("bone_end", s.Bone)
	p.Point("neck_point", s.Neck)
	p.Point("shoulder_end", s.End)
	p.Point("armhole_mid", turn.Apply(p.At("front.armhole_mid")))
	if n.Style == detail.SweetheartNeckline {
		p.Point("neck_lobe", n.Lobe())
	}
	p.Draw("neck", neck, pattern.RoleStitch)
	p.Draw("shoulder", b.Shoulder, pattern.RoleStitch)
	p.Draw("armhole", b.Armhole, pattern.RoleStitch)
	if detail.HasNeckOpening(p.K) {
		o := detail.OpenNeck(n.Style, neck, p.K.Length("neck_opening_length"), p.K.Length("keyhole_width"))
		p.Draw("neck_opening", o.Line, pattern.RoleStitch)
	}
}

// pinchedStrapTooNarrow refuses a pinch that leaves too little between neck
// and armhole.
func pinchedStrapTooNarrow(p *bench.Pen, neck, armhole geom.Path) bool {
	left := detail.Strap(neck, armhole)
	if left >= rule.In(1.25) {
		return false
	}
	p.Refuse(pattern.Refused{
		Code: "R16", Input: "neck_pinch",
		Says: measure.Tell("with the neck pinched there is {} between it and the armhole; a strip under {1 1/4 in} cannot be faced", left),
		Cure: measure.Tell("a smaller pinch, or a neck that is widened less"),
	})
	return true
}
