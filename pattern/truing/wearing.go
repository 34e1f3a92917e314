package truing

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/rule"
)

// sitting: a seat spreads by 1 1/2 to 3 when she sits.
var sitting = Check{
	ID: "sitting", Title: "Sitting",
	Applies: girthApplies("hip", measure.HipGirth),
	Run: func(s *pattern.Sheet) []pattern.Finding {
		got, body := roundAt(s, "hip"), s.Body(measure.HipGirth)
		ease := got - body
		f := pattern.Finding{Verdict: pattern.Pass, Got: ease.MM(), Want: sitLeast.MM()}
		f.Where = on(pattern.Front, at(s, pattern.Front, "hip"))
		f.Says = measure.Tell("{} and {}: {} to sit on; the hem comes up {} to {}.", got, body, ease, 1.5*inch, 3*inch)
		gives := rule.ClothGives(s.Known, rule.AtHip)
		want := (rule.HipEase(body) - gives).Up(step(s))
		switch {
		case byThumb(s):
			if ease < sitFail-slack {
				f.Code, f.Verdict, f.Input = "no_ease", pattern.Advise, string(pattern.Method)
				f.Says = measure.Tell("{} and {}: no ease to sit, walk or breathe in.", got, body)
				f.Cure = measure.Tell("Sew the sides with {} instead of {}: she gains {} all round. Or draft by the measured method.", inch/2, inch, 2*inch)
			}
			return one(f)
		case ease < sitFail-gives-slack:
			f.Code, f.Verdict = "sit_tight", pattern.Fail
			f.Says = measure.Tell("{} and {}: {} is too little to sit on.", got, body, ease)
		case ease < sitLeast-gives-slack:
			f.Code, f.Verdict = "sit_tight", pattern.Advise
			f.Says = measure.Tell("{} and {}: {} is little to sit on.", got, body, ease)
		case ease < rule.HipEase(body)-gives-slack:
			f.Code, f.Verdict, f.Want = "sit_snug", pattern.Advise, want.MM()
			f.Says = measure.Tell("{} and {}: {} on a fuller seat will ride up when she sits.", got, body, ease)
		default:
			return one(f)
		}
		f.Input = "ease_hip"
		f.Cure = measure.Tell("Give more ease: {}.", change(s.Known, "ease_hip", want))
		f.Try = try(s.Known, "ease_hip", want)
		return one(f)
	},
}

// shoulderLeft: what is left of the shoulder must cover a bra strap.
var shoulderLeft = Check{
	ID: "shoulder_left", Title: "Shoulder left",
	Applies: bothEdges("shoulder"),
	Run: func(s *pattern.Sheet) []pattern.Finding {
		front, back := along(piece(s, pattern.Front), "shoulder"), along(piece(s, pattern.Back), "shoulder")
		left := min(front, back)
		f := pattern.Finding{Verdict: pattern.Pass, Got: left.MM(), Want: bareLeast.MM()}
		f.Where = on(pattern.Front, middleOf(piece(s, pattern.Front), "shoulder"))
		f.Says = measure.Tell("{} and {} at least, to cover a strap.", left, bareLeast)
		if left >= bareLeast-slack {
			return one(f)
		}
		f.Code, f.Verdict = "shoulder_left", pattern.Advise
		if left < bareFail-slack {
			f.Verdict = pattern.Fail
		}
		f.Says = measure.Tell("{} and {}: a strap will show.", left, bareLeast)
		f.Input = string(measure.AcrossShoulders)
		f.Cure = again(measure.AcrossShoulders)
		short := (bareLeast - left).Up(step(s))
		if widen := s.Length("neck_widening"); uses(s.Known, "neck_widening") && widen >= short {
			f.Input = "neck_widening"
			f.Cure = measure.Tell("Widen less: {}.", change(s.Known, "neck_widening", widen-short))
			f.Try = try(s.Known, "neck_widening", widen-short)
		}
		return one(f)
	},
}
