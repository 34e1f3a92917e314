package truing

import (
	"math"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/rule"
)

// armholeGirth: a hole too small cuts, one too large gapes.
var armholeGirth = Check{
	ID: "armhole_girth", Title: "Armhole girth",
	Applies: all(bothEdges("armhole"), both("underarm", "armhole_mid", "shoulder_end")),
	Run: func(s *pattern.Sheet) []pattern.Finding {
		front, back := along(piece(s, pattern.Front), "armhole"), along(piece(s, pattern.Back), "armhole")
		out := one(armFinding(s, front+back))
		if out[0].Code != "armhole_wide" {
			if f, wide := armholeWide(s, front+back); wide {
				out = append(out, f)
			}
		}
		if byThumb(s) {
			if f, off := thumbDepth(s); off {
				out = append(out, f)
			}
		} else {
			if f, deep := frontHollow(s); deep {
				out = append(out, f)
			}
			if f, ask := askUpperChest(s); ask {
				out = append(out, f)
			}
		}
		if f, off := armholeShares(s, front, back); off {
			out = append(out, f)
		}
		return out
	},
}

// armFinding holds the girth against her upper arm.
func armFinding(s *pattern.Sheet, round measure.Length) pattern.Finding {
	where := on(pattern.Front, at(s, pattern.Front, "underarm"))
	arm, known := s.Measured(measure.UpperArmGirth)
	if !known {
		f := skip("", measure.Tell("{} round the armhole; the "+term(measure.UpperArmGirth)+" is not measured.", round))
		f.Got, f.Where = round.MM(), where
		return f
	}
	want := rule.ArmNeeds(arm)
	f := pattern.Finding{
		Verdict: pattern.Pass, Got: round.MM(), Want: want.MM(), High: (armMost - armLeast).MM(), Limits: true, Where: where,
	}
	switch {
	case round < want-slack:
		f.Code, f.Verdict = "armhole_small", pattern.Advise
		if round < arm+armFail-slack && !byThumb(s) { // by thumb it is part of the lesson
			f.Verdict = pattern.Fail
		}
		short := want - round
		f.Says = measure.Tell("{} and {}: {} short for her arm of {}.", round, want, short, arm)
		f.Input = string(measure.UpperArmGirth)
		f.Cure = measure.Tell("Sew the sides with {} instead of {}, and do not lower the underarm more.", inch/2, inch)
		if uses(s.Known, "ease_bust") {
			to := (s.Length("ease_bust") + measure.Length(math.Ceil(short.MM()/armStep.MM()-slack))*inch/2).Up(step(s))
			f.Input = "ease_bust"
			f.Cure = measure.Tell("Give more ease: {}. Do not lower the underarm more.", change(s.Known, "ease_bust", to))
			f.Try = try(s.Known, "ease_bust", to)
		}
	case round > arm+armMost+slack && !setInSleeve(s):
		f.Code, f.Verdict = "armhole_wide", pattern.Advise
		f.Says = measure.Tell("{} and {}: {} too wide for her arm of {}, it will gape.", round, arm+armMost, round-arm-armMost, arm)
		gapes(s, &f)
	default:
		f.Says = measure.Tell("{} and {} at least, for her arm of {}.", round, want, arm)
	}
	return f
}

// gapes says what helps against a wide armhole.
func gapes(s *pattern.Sheet, f *pattern.Finding) {
	f.Input = string(measure.UpperChestGirth)
	switch {
	case byThumb(s):
		f.Input = string(pattern.Method)
		f.Cure = measure.Tell("Pinch the armhole at the fitting, or draft it by the measured method.")
	case s.Job.Body.Has(measure.UpperChestGirth):
		f.Cure = measure.Tell("Pinch {} to {} of the front armhole into the dart at the fitting.", inch/4, inch/2)
	default:
		f.Cure = measure.Tell("Measure the upper chest first: front and back can then have their own shares. Then pinch what gapes into the dart.")
	}
}

// armholeWide judges the shape where the girth alone says nothing: the hole
// runs farther out under the arm than it is deep, or is wider than the girth
// that she measured round her armhole.
func armholeWide(s *pattern.Sheet, round measure.Length) (pattern.Finding, bool) {
	if byThumb(s) || setInSleeve(s) {
		return pattern.Finding{}, false // a sleeve fills it
	}
	fu, bu := at(s, pattern.Front, "underarm"), at(s, pattern.Back, "underarm")
	out := fu.X - at(s, pattern.Front, "armhole_mid").X + bu.X - at(s, pattern.Back, "armhole_mid").X
	tips := (at(s, pattern.Front, "shoulder_end").Y + at(s, pattern.Back, "shoulder_end").Y) / 2
	down := fu.Y - tips
	if down > 0 && out/down > armWide+slack {
		f := advice("armhole_wide", measure.Length(out), measure.Length(armWide*down))
		f.Where = on(pattern.Front, fu)
		f.Says = measure.Tell("{} and {}: out under the arm and down from the shoulder. So wide an armhole will gape.", measure.Length(out), measure.Length(down))
		gapes(s, &f)
		return f, true
	}
	if body, ok := s.Measured(measure.ArmscyeGirth); ok && round > body+armRound+slack {
		f := advice("armhole_wide", round, body+armRound)
		f.Where = on(pattern.Front, fu)
		f.Says = measure.Tell("{} and {}: {} more than round her own arm, it will gape.", round, body, round-body)
		gapes(s, &f)
		return f, true
	}
	return pattern.Finding{}, false
}

// frontHollow: the arm swings forward, but cloth cut away too deep leaves
// the front narrow.
func frontHollow(s *pattern.Sheet) (pattern.Finding, bool) {
	tip, m := at(s, pattern.Front, "shoulder_end"), at(s, pattern.Front, "armhole_mid")
	deep, most := measure.Length(tip.X-m.X), measure.Length(hollow)
	if hasSleeve(s) {
		most += usualInset // its shoulder goes out to the bone
	}
	if deep <= most+slack {
		return pattern.Finding{}, false
	}
	f := advice("front_hollow", deep, most)
	f.Where, f.Input = on(pattern.Front, m), string(measure.AcrossFront)
	f.Says = measure.Tell("{} and {}: the front armhole is scooped {} inside the shoulder end.", measure.Length(tip.X), measure.Length(m.X), deep)
	f.Cure = measure.Tell("Measure across the front again.")
	to := (s.Length("shoulder_inset") + deep - most).Up(step(s))
	if uses(s.Known, "shoulder_inset") && to <= inch+slack {
		f.Cure = measure.Tell("Measure across the front again. If it is right: {}.", change(s.Known, "shoulder_inset", to))
		f.Input, f.Try = "shoulder_inset", try(s.Known, "shoulder_inset", to)
	}
	return f, true
}

// askUpperChest is a note, not advice: what is known is enough to draft.
func askUpperChest(s *pattern.Sheet) (pattern.Finding, bool) {
	if s.Job.Body.Has(measure.UpperChestGirth) {
		return pattern.Finding{}, false
	}
	d0, known := surplus(s)
	if bust := s.Body(measure.BustGirth); bust < askBust-slack && !(known && d0 >= askSurplus-slack) {
		return pattern.Finding{}, false
	}
	f := skip("ask_upper_chest", measure.Tell("Measure the upper chest; front and back can then have their own shares."))
	f.Input = string(measure.UpperChestGirth)
	f.Where = on(pattern.Front, at(s, pattern.Front, "underarm"))
	return f, true
}

// armholeShares: the back armhole may be a little longer, for reaching.
func armholeShares(s *pattern.Sheet, front, back measure.Length) (pattern.Finding, bool) {
	least := measure.Length(backUnder)
	if at(s, pattern.Front, "underarm").X-at(s, pattern.Back, "underarm").X > pairAdvise.MM() {
		least = backUnderCup
	}
	if s.Method == pattern.Direct {
		least = backUnderBlock
	}
	off := back - front
	if off >= least-slack && off <= backOver+slack {
		return pattern.Finding{}, false
	}
	f := advice("armhole_shares", back, front)
	f.Low, f.High, f.Limits = least.MM(), backOver.MM(), true
	f.Where, f.Input = on(pattern.Back, at(s, pattern.Back, "armhole_mid")), string(measure.AcrossBack)
	f.Says = measure.Tell("{} and {}: the back armhole is {} {} than the front.", back, front, abs(off), longer(off))
	f.Cure = measure.Tell("Measure across the back and across the front again.")
	return f, true
}

// thumbDepth holds the sewn underarm of the thumb method against the depth
// that her own measurements ask for: the shoulder seam lifts it by its
// allowance, the armhole seam lowers it.
func thumbDepth(s *pattern.Sheet) (pattern.Finding, bool) {
	if s.MeasuredDepth <= 0 {
		return pattern.Finding{}, false
	}
	u := at(s, pattern.Front, "underarm")
	got := measure.Length(u.Y) + s.Length("armhole_allowance") - s.Length("shoulder_allowance")
	off := got - s.MeasuredDepth
	if abs(off) <= thumbDeep+slack {
		return pattern.Finding{}, false
	}
	f := advice("armhole_deep", got, s.MeasuredDepth)
	f.Where, f.Input = on(pattern.Front, u), string(pattern.Method)
	f.Low, f.High, f.Limits = -thumbDeep.MM(), thumbDeep.MM(), true
	f.Says = measure.Tell("{} and {}: the underarm lies {} lower than her measurements ask for; a bra will show.", got, s.MeasuredDepth, off)
	if off < 0 {
		f.Code = "armhole_high"
		f.Says = measure.Tell("{} and {}: the underarm lies {} higher than her measurements ask for; it will cut.", got, s.MeasuredDepth, -off)
	}
	f.Cure = measure.Tell("Draw it at {} on both pieces, or draft by the measured method.", measure.Length(u.Y)-off)
	return f, true
}
