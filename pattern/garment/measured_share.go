package garment

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

// shareSlip says what goes wrong where front and back have their own shares
// of the girth, and why they have them.
func shareSlip(p *bench.Pen, h half, because measure.Sentence) {
	shift := rule.CupShift(p.K).Result()
	if shift == 0 {
		return
	}
	p.Reads(measure.UpperChestGirth)
	more := "more"
	if h.back {
		more = "less"
	}
	p.Rule("{} The bust is {} larger than the upper chest, and that lies in front: the "+string(h.piece)+" takes {} "+more+" than a quarter.",
		because, 4*shift, shift)
	p.Slip(rule.BustWidth(p.K), "That is the quarter. Her bust lies in front, so the front takes more and the back as much less.")
	if h.back {
		p.Slip(rule.BustWidthOf(p.K, false), "That is the front's share. The back takes the smaller one.")
	} else {
		p.Slip(rule.BustWidthOf(p.K, true), "That is the back's share. The front takes the larger one.")
	}
}

// arcReads says that waist and hip follow the arcs of the front where she
// took them.
func arcReads(p *bench.Pen) {
	for _, id := range []measure.ID{measure.FrontHipArc, measure.FrontWaistArc} {
		if _, ok := p.K.Measured(id); ok {
			p.Reads(id)
		}
	}
}

// shoulderEase makes the back shoulder longer for a round back.
func shoulderEase() bench.Step {
	return bench.Step{
		ID: "back.shoulder_ease", Piece: pattern.Back, Title: "Back shoulder, longer to ease",
		Why:     measure.Tell("A round back needs a hollow at the shoulder blade. Eased onto the front, a longer back shoulder gives it without a dart."),
		Slip:    measure.Tell("Stretching the front to match: the ease is meant to stay."),
		Choices: []pattern.ChoiceID{"back_shoulder_ease"},
		Uses:    theBack.uses("shoulder_end", "neck_point", "neck_base", "bone_end"),
		If:      func(k pattern.Known) bool { return k.Length("back_shoulder_ease") > 0 },
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
					Cure: measure.Tell("{} or less; the direct block takes up a rounder back", rule.MostRoundEase),
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
