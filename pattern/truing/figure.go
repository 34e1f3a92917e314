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

// roundBack: easing the shoulder takes up a little of a round back, a dart in
// it more, neither all of a very round one.
func roundBack(s *pattern.Sheet) (pattern.Finding, bool) {
	if s.Method != pattern.Measured {
		return pattern.Finding{}, false
	}
	most, darted := rule.MostRound, s.Pick("back_shoulder") == "dart"
	if darted {
		most = rule.MostRoundDarted
	}
	w, ok := rule.RoundBack(s.Known)
	if !ok || w.Result() <= most+slack {
		return pattern.Finding{}, false
	}
	f := advice("back_round", w.Result(), most)
	f.Where = on(pattern.Back, at(s, pattern.Back, "shoulder_end"))
	if !darted && w.Result() <= rule.MostRoundDarted+slack && uses(s.Known, "back_shoulder") {
		dart := pattern.PickValue("dart")
		f.Input, f.Try = "back_shoulder", &dart
		f.Says = measure.Tell("{} and {}: from the shoulder her back is that much longer than its slope gives. It is rounder than an eased shoulder takes up.", w.Result(), most)
		f.Cure = measure.Tell("A dart in the back shoulder: ease -> dart. Or draft it as a direct block, which counts the shoulder up from her waist.")
		return f, true
	}
	direct := pattern.PickValue(pattern.Direct)
	f.Input, f.Try = string(pattern.Method), &direct
	f.Says = measure.Tell("{} and {}: from the shoulder her back is that much longer than its slope gives. It is rounder than a shoulder takes up.", w.Result(), most)
	f.Cure = measure.Tell("Draft it as a direct block, which counts the shoulder up from her waist: method measured -> direct.")
	return f, true
}

// swayFinding: what a hollow back has too much in length is folded out where
// the style lets it be, up to what one fold takes.
func swayFinding(s *pattern.Sheet) (pattern.Finding, bool) {
	w, ok := rule.Sway(s.Known)
	taken := s.Length("sway_back")
	if !ok || byThumb(s) || !uses(s.Known, "sway_back") || w.Result() < rule.LeastSway-slack {
		return pattern.Finding{}, false
	}
	f := advice("sway_back", w.Result(), taken)
	f.Where, f.Input = on(pattern.Back, at(s, pattern.Back, "waist")), "sway_back"
	most := min(rule.MostSway, w.Result().Near(inch/8))
	switch set, _ := s.Setting("sway_back"); {
	case w.Result() > rule.MostSway+slack && taken >= rule.MostSway-slack:
		f.Says = measure.Tell("{} and {}: her waist lies lower behind by more than one fold takes out.", w.Result(), taken)
		f.Cure = measure.Tell("Pin the rest at the fitting, into a centre seam that is shaped. Measure to the floor again, the string where it settles.")
	case taken >= most-slack:
		return pattern.Finding{}, false
	case set.Chosen:
		f.Says = measure.Tell("{} and {}: so much lower her waist lies behind, and so much is folded out; what is left lies in folds above the seat.", w.Result(), taken)
		f.Cure = measure.Tell("Fold it out: {}.", change(s.Known, "sway_back", most))
		f.Try = try(s.Known, "sway_back", most)
	case s.On("waist_seam") || s.Pick("panel_seam") != "none":
		f.Says = measure.Tell("{} and {}: so much lower her waist lies behind, and nothing is folded out; the seams run across it.", w.Result(), taken)
		f.Cure = measure.Tell("At the fitting take the skirt up at the waist behind, to nothing at the sides; or cut the back in one.")
	default:
		zip := pattern.PickValue("zip_back")
		f.Input, f.Try = "closure", &zip
		f.Says = measure.Tell("{} and {}: so much lower her waist lies behind, and nothing is folded out; the centre back has no seam that could bend.", w.Result(), taken)
		f.Cure = measure.Tell("A seam down the centre back: a zip behind, or a shaped centre.")
	}
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
