package garment

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

// shoulderEase makes the back shoulder longer for a round back.
func shoulderEase() bench.Step {
	return bench.Step{
		ID: "back.shoulder_ease", Piece: pattern.Back, Title: "Back shoulder, longer to ease",
		Why:     measure.Tell("A round back needs a hollow at the shoulder blade. Eased onto the front, a longer back shoulder gives it without a dart."),
		Slip:    measure.Tell("Stretching the front to match: the ease is meant to stay."),
		Choices: []pattern.ChoiceID{"back_shoulder_ease", "back_shoulder"},
		Uses:    theBack.uses("shoulder_end", "neck_point", "neck_base", "bone_end"),
		If:      func(k pattern.Known) bool { return detail.BackEase(k) > 0 },
		Draw: func(p *bench.Pen) {
			s, ease := shoulderOf(p, theBack), p.K.Length("back_shoulder_ease")
			set, _ := p.K.Setting("back_shoulder_ease")
			if !set.Default.Sum.IsZero() && !set.Chosen {
				p.Reads(measure.ShoulderToWaistBack)
				p.Because(set.Default.Because)
			}
			p.Sum(measure.Drawn("shoulder", s.Left()).Plus(measure.Of("ease", ease)))
			if ease > rule.In(0.5) {
				p.Refuse(pattern.Refused{
					Code: "R22", Input: "back_shoulder_ease",
					Says: measure.Tell("a back shoulder {} longer than the front cannot be eased in without pleats", ease),
					Cure: measure.Tell("{} or less; a dart in the shoulder takes up more", rule.MostRoundEase),
				})
				return
			}
			p.Do("Run the shoulder line on by {} at the arm. In sewing, ease that much in between the middle and the neck.", ease)
			end := s.End.Add(s.Dir.Scale(ease.MM()))
			p.Point("shoulder_end", end)
			p.Draw("shoulder", geom.Lines(s.Neck, end), pattern.RoleStitch)
		},
	}
}

// shoulderDart opens a dart in the back shoulder for a round back.
func shoulderDart() bench.Step {
	return bench.Step{
		ID: "back.shoulder_dart", Piece: pattern.Back, Title: "Dart in the back shoulder",
		Why:     measure.Tell("A round back is longer over the shoulder blade than at its edges. The dart gives it that hollow; closed, the shoulder is as long as the front's."),
		Slip:    measure.Tell("Running the shoulder straight on and cutting the dart out of it: closed, the shoulder has a corner."),
		Choices: []pattern.ChoiceID{"back_shoulder", "back_shoulder_dart", "back_dart_length"},
		Uses:    theBack.uses("shoulder_end", "neck_point", "neck_base", "bone_end"),
		If:      detail.HasBackDart,
		Draw:    drawShoulderDart,
	}
}

func drawShoulderDart(p *bench.Pen) {
	s, intake, long := shoulderOf(p, theBack), p.K.Length("back_shoulder_dart"), p.K.Length("back_dart_length")
	if shoulderDartImpossible(p, s, intake, long) {
		return
	}
	set, _ := p.K.Setting("back_shoulder_dart")
	if !set.Default.Sum.IsZero() && !set.Chosen {
		p.Reads(measure.ShoulderToWaistBack)
	}
	p.Because(set.Default.Because)
	p.Sum(measure.Of("takes up", intake))
	d := detail.NewBackDart(s, intake, long)
	p.Do("Raise the shoulder line by {} at its end, from its middle rule the inner leg {} down, square to it, and turn what lies outside about the foot of the leg until the dart is {} wide. Fold it to the centre, rule the shoulder across it, cut and unfold.", d.Raised, long, intake)
	p.Rule("Raised as much as its end falls when the dart opens: the armhole keeps its length.")
	s = d.Closed
	p.Point("neck_base", s.Base)
	p.Point("bone_end", s.Bone)
	p.Point("shoulder_end_closed", s.End)
	p.Draw("shoulder_closed", geom.Lines(s.Neck, s.End), pattern.RoleGuide)
	p.Point("shoulder_dart_tip", d.Tip)
	p.Point("shoulder_dart_inner", d.Inner)
	p.Point("shoulder_dart_outer", d.Outer)
	p.Point("shoulder_dart_cap", d.Cap)
	p.Point("shoulder_end", d.End)
	p.Draw("shoulder", geom.Lines(s.Neck, d.Inner), pattern.RoleStitch)
	p.Draw("shoulder_dart_end", geom.Lines(d.Inner, d.Cap, d.Outer), pattern.RoleStitch)
	p.Draw("shoulder_outer", geom.Lines(d.Outer, d.End), pattern.RoleStitch)
	p.Draw("shoulder_dart", geom.Lines(d.Inner, d.Tip, d.Outer), pattern.RoleDart)
}

// shoulderDartImpossible refuses a dart that her shoulder has no room for, or
// that something else of the style takes the place of.
func shoulderDartImpossible(p *bench.Pen, s detail.Shoulder, intake, long measure.Length) bool {
	r := pattern.Refused{Code: "R22", Input: "back_shoulder"}
	switch k := p.K; {
	case detail.HasPanels(k):
		r.Says = measure.Tell("the panel seams run over the shoulder blades and shape them; beside them lies no dart")
		r.Cure = measure.Tell("a plain or an eased back shoulder, or no panel seams")
	case detail.FacingKind(k) == detail.AllInOneFacing:
		r.Says = measure.Tell("an all-in-one facing goes over the shoulder, and a dart there would lie double in it")
		r.Cure = measure.Tell("separate facings, or an eased back shoulder")
	case detail.NeckStyle(k, true) == detail.FunnelNeckline:
		r.Says = measure.Tell("a funnel runs up out of the shoulder seam, and a dart cannot run into that")
		r.Cure = measure.Tell("an eased back shoulder, or another neckline")
	case s.Left() < leastSplit:
		r.Says = measure.Tell("{} of shoulder are left; a dart in the middle leaves too little on either side", max(0, s.Left()))
		r.Cure = measure.Tell("an eased back shoulder, or a neck that is widened less")
	case intake < rule.In(0.125) || intake > rule.In(1):
		r.Input = "back_shoulder_dart"
		r.Says = measure.Tell("a shoulder dart that takes up {} cannot be sewn", intake)
		r.Cure = measure.Tell("between {} and {}", rule.LeastRoundDart, rule.MostRoundDart)
	case long < rule.In(2) || long > rule.In(4.5) || intake > long/3:
		r.Input = "back_dart_length"
		r.Says = measure.Tell("a shoulder dart {} long that takes up {} points", long, intake)
		r.Cure = measure.Tell("a dart {2 1/2 in} to {4 in} long")
	default:
		return false
	}
	p.Refuse(r)
	return true
}

// outerShoulder is the shoulder beside the armhole: behind, beyond a dart in
// it, where its outer part turned.
func outerShoulder(p *bench.Pen, h half) detail.Shoulder {
	s := shoulderOf(p, h)
	if outer := "back.shoulder_dart_outer"; h.back && p.Has(outer) {
		s.Dir = p.At(outer).To(s.End).Unit()
		s.Down = s.Dir.Right()
		s.Neck = p.At(outer)
	}
	return s
}

// closedShoulder is the shoulder with a dart in it closed.
func closedShoulder(p *bench.Pen, h half) detail.Shoulder {
	s := shoulderOf(p, h)
	if end := "back.shoulder_end_closed"; h.back && p.Has(end) {
		s.End = p.At(end)
	}
	return s
}

// backUpper are neck, shoulder and armhole of the back, with the dart in the
// shoulder.
func (c cutter) backUpper() []bench.Side {
	sides := c.upperSides(theBack)
	end := c.line("back.shoulder_dart_end")
	if len(end) != 2 {
		return sides
	}
	var out []bench.Side
	for _, s := range sides {
		if s.Name != "shoulder" {
			out = append(out, s)
			continue
		}
		before, after := s, s
		after.Stitch = c.line("back.shoulder_outer")
		cut := gapCuts(before, after, c.at("back.shoulder_dart_tip"), false)
		before.Cut, before.Corner, after.Cut = cut.before, pattern.None, cut.after
		dart := func(stitch, cut geom.Path) bench.Side {
			return bench.Side{Name: "dart", Stitch: stitch, Cut: cut, Allowance: s.Allowance, Corner: pattern.None, Role: pattern.RoleStitch}
		}
		out = append(out, before, dart(end[:1], cut.toCap), dart(end[1:], cut.fromCap), after)
	}
	return out
}

// backDart puts the dart of the back shoulder into its piece.
func (c cutter) backDart(p *pattern.Piece) {
	if len(c.line("back.shoulder_dart_end")) != 2 {
		return
	}
	putDart(p, pattern.Dart{
		Name: "back shoulder dart", Tip: c.at("back.shoulder_dart_tip"), Cap: c.at("back.shoulder_dart_cap"), Pressed: "to the centre",
		Legs: [2]geom.Point{c.at("back.shoulder_dart_outer"), c.at("back.shoulder_dart_inner")},
		Leg:  measure.Length(c.at("back.shoulder_dart_tip").Dist(c.at("back.shoulder_dart_inner"))),
	}, "shoulder")
}
