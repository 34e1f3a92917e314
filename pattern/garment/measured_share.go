package garment

import (
	"chalkfold/measure"
	"chalkfold/pattern/bench"
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
