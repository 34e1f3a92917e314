package detail

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/rule"
)

// usualOpening is the finished height of a hem opening.
const usualOpening = 6 * measure.Inch

// ZipEnd is the level of the end of the zip: far enough down to pass the
// hips, 1 1/2 above the hip line, or where the chosen zip ends.
func ZipEnd(k pattern.Known) measure.Working {
	if k.Garment == pattern.Skirt {
		return SkirtZipEnd(k)
	}
	if v, ok := k.Job.Style.Get("zip_length"); ok {
		return backNeckTop(k).Plus(measure.Of("zip", v.Length))
	}
	return measure.Of("hip level", rule.BackHip(k).Result()).Minus(measure.Fixed(rule.In(1.5)))
}

// backNeckTop is where the centre back begins: at the neck, or at the top of
// a funnel.
func backNeckTop(k pattern.Known) measure.Working {
	depth := measure.Of("back neck depth", k.Length("back_neck_depth"))
	if NeckStyle(k, true) != FunnelNeckline {
		return depth
	}
	return measure.Of("top of the funnel", k.Length("back_neck_depth")-k.Length("funnel_rise"))
}

// Walking reckons a step in this dress, by the measured figure; false where
// neither height nor floor length is known.
func Walking(k pattern.Known) (rule.Walk, bool) {
	if k.Garment == pattern.Skirt {
		return skirtWalk(k)
	}
	height, ok := k.Measured(measure.Height)
	if !ok || !k.Has(measure.HipGirth, measure.BackNeckToWaist, measure.WaistToHip) {
		return rule.Walk{}, false
	}
	w := rule.Walk{Step: rule.UsualStep, LegGirth: rule.LegGirth}
	if s, ok := k.Measured(measure.StepLength); ok {
		w.Step, w.StepGiven = s, true
	}
	w.Leg = measure.Length(height.MM() * rule.LegOfHeight)
	length := k.Length("length")
	if floor, ok := k.Measured(measure.WaistToFloor); ok {
		w.Hem = floor - (length - rule.BackWaist(k).Result())
	} else if nape, ok := k.Measured(measure.BackNeckToFloor); ok {
		w.Hem = nape - (length - rule.NapeDrop)
	} else {
		return rule.Walk{}, false
	}
	heel := k.Length("heel_height")
	w.Leg, w.Hem = w.Leg+heel, w.Hem+heel
	hip := rule.HipWidth(k).Result()
	w.HipGirth = 4 * hip
	w.HemGirth = 4 * (hip - HemNarrower(k) + PanelFlare(k))
	w.HipAbove = length - rule.BackHip(k).Result()
	w.ZipAbove = length - ZipEnd(k).Result()
	if Closure(k) != ZipBehind {
		w.ZipAbove = length // nothing opens from above
	}
	if w.Hem < 0 || w.Hem >= w.Leg || w.HipAbove <= 0 {
		return rule.Walk{}, false
	}
	return w, true
}

var openingChoices = []pattern.Choice{{
	ID: "slit_height", Title: "Hem opening", Says: "How high the hem stays open above its finished edge, to walk.",
	Group: "Opening", Kind: pattern.KindLength,
	After: []pattern.ChoiceID{"length", "ease_hip", "hem_peg", "back_neck_depth", "skirt_line", "hem_flare", "hem_opening", "closure", "back_neckline", "funnel_rise", "panel_seam", "panel_flare"},
	Default: func(k pattern.Known) pattern.Default {
		d := pattern.Default{Value: pattern.LengthValue(usualOpening), Because: measure.Tell("The usual height; her height and floor length would tell what she needs.")}
		if k.Method == pattern.Thumb {
			d.Because = measure.Tell("{7 in} marked from the raw edge, a hem of {1 in}: {6 in} open.")
			return d
		}
		usual := UsualOpening(k)
		if HemOpening(k) == SideSlits {
			return pattern.Default{Value: pattern.LengthValue(usual), Because: measure.Tell("{3 in} on a top; else they begin {1 in} below the hip line, and are no higher than {12 in}; common practice.")}
		}
		d.Value = pattern.LengthValue(usual)
		w, ok := Walking(k)
		if !ok || usual == 0 {
			return d
		}
		height := w.Opening(usual)
		d.Value = pattern.LengthValue(height)
		d.GaveWay = height != usual
		d.Because = measure.Tell("A step of {} wants at least {}; the usual height is {}.", w.Step, w.LeastOpening(w.Step), usual)
		return d
	},
	Limits: between(0, 12),
}}

var zipLength = pattern.Choice{
	ID: "zip_length", Title: "Zip", Says: "Length of the zip: from the neck to 1 1/2 above the hip line, the next stock length.",
	Group: "Opening", Kind: pattern.KindLength,
	After: []pattern.ChoiceID{
		"back_neck_depth", "back_neckline", "funnel_rise", "closure", "armhole_depth", "side_dart_below", "bust_dart", "ease_bust", "ease_waist", "side_waist_limit",
	},
	Default: func(k pattern.Known) pattern.Default {
		if d, other := zipDefault(k); other {
			return d
		}
		if w := waits(k, measure.BackNeckToWaist, measure.WaistToHip); w != nil {
			return pattern.Default{Waits: w}
		}
		sum := measure.Of("end of the zip", rule.BackHip(k).Result()-rule.In(1.5)).
			Minus(backNeckTop(k))
		return pattern.Default{
			Value: pattern.LengthValue(rule.ZipFor(sum.Result())), Sum: sum,
			Because: measure.Tell("The opening is {} long; the next zip in the shops is taken and shortened.", sum.Result()),
		}
	},
	Limits: between(4, 30),
}
