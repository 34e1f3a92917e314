package truing

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/rule"
)

// cupFinding doubts a front that takes far more of the bust than the back.
func cupFinding(s *pattern.Sheet) (pattern.Finding, bool) {
	if byThumb(s) {
		return pattern.Finding{}, false
	}
	shift := rule.CupShift(s.Known).Result()
	if shift <= rule.MostCup+slack {
		return pattern.Finding{}, false
	}
	f := advice("cup_large", shift, rule.MostCup)
	f.Where, f.Input = on(pattern.Front, at(s, pattern.Front, "underarm")), string(measure.UpperChestGirth)
	f.Says = measure.Tell("{} and {}: so much wider than a quarter is each half of the front, because the bust is {} larger than the upper chest.",
		shift, rule.MostCup, 4*shift)
	f.Cure = measure.Tell("Measure the upper chest again, close under the arms. If it is right, a seam over the bust shapes it better than one dart.")
	if uses(s.Known, "panel_seam") && s.Pick("panel_seam") == "none" {
		seam := pattern.PickValue("shoulder")
		f.Input, f.Try = "panel_seam", &seam
	}
	return f, true
}

// swingFinding: the side seam starts at her quarter under the arm and ends
// where the arcs of waist and hip say.
func swingFinding(s *pattern.Sheet) (pattern.Finding, bool) {
	swing := rule.SeamSwings(s.Known)
	if byThumb(s) || abs(swing) <= rule.MostSwing+slack {
		return pattern.Finding{}, false
	}
	way := "forward"
	if swing < 0 {
		way = "back"
	}
	f := advice("seam_swings", abs(swing), rule.MostSwing)
	f.Where, f.Input = on(pattern.Front, at(s, pattern.Front, "hip")), string(measure.FrontHipArc)
	f.Says = measure.Tell("{} and {}: so far the side seam swings "+way+" on its way from the underarm to the hip.", abs(swing), rule.MostSwing)
	f.Cure = measure.Tell("Measure the front from side line to side line again. If it is right, measure the upper chest too, so that the seam starts where it should.")
	return f, true
}

// roundBack: easing the shoulder takes up a little of a round back, no more.
func roundBack(s *pattern.Sheet) (pattern.Finding, bool) {
	if s.Method != pattern.Measured {
		return pattern.Finding{}, false
	}
	w, ok := rule.RoundBack(s.Known)
	if !ok || w.Result() <= rule.MostRound+slack {
		return pattern.Finding{}, false
	}
	direct := pattern.PickValue(pattern.Direct)
	f := advice("back_round", w.Result(), rule.MostRound)
	f.Where, f.Input, f.Try = on(pattern.Back, at(s, pattern.Back, "shoulder_end")), string(pattern.Method), &direct
	f.Says = measure.Tell("{} and {}: from the shoulder her back is that much longer than its slope gives. It is rounder than an eased shoulder takes up.", w.Result(), rule.MostRound)
	f.Cure = measure.Tell("Draft it as a direct block, which counts the shoulder up from her waist: method measured -> direct. Or pin a shoulder dart at the fitting.")
	return f, true
}

// askLengths is a note: rules that propose lengths are made for a middle
// height.
func askLengths(s *pattern.Sheet) (pattern.Finding, bool) {
	height, ok := s.Measured(measure.Height)
	if !ok || height >= petite && height <= tall || byThumb(s) {
		return pattern.Finding{}, false
	}
	words, n := "", 0
	for _, id := range []measure.ID{measure.BackNeckToWaist, measure.SideNeckToWaist, measure.SideNeckToBustPoint, measure.WaistToHip} {
		if fig, ok := s.Figure(id); ok && fig.Proposed {
			if n > 0 {
				words += ", "
			}
			words += term(id)
			n++
		}
	}
	if n == 0 {
		return pattern.Finding{}, false
	}
	who := "tall"
	if height < petite {
		who = "petite"
	}
	f := skip("ask_lengths", measure.Tell("She is "+who+", {} high. Such figures differ in their lengths first: measure "+words+".", height))
	f.Input = string(measure.BackNeckToWaist)
	f.Where = on(pattern.Front, at(s, pattern.Front, "waist"))
	return f, true
}
