package truing

import (
	"math"

	"chalkfold/measure"
	"chalkfold/pattern"
)

// neckRing is the sewn neck, all round.
func neckRing(s *pattern.Sheet) measure.Length {
	if g, ok := s.Girth("neck"); ok && (neckOpening(s) > 0 || hasPlacket(s)) {
		return g // the edges leave out what a slit takes of them
	}
	return 2 * (along(piece(s, pattern.Front), "neck") + along(piece(s, pattern.Back), "neck"))
}

// neckGirth: a neck that is not widened follows the base of her neck; any
// other must not be tighter than it.
var neckGirth = Check{
	ID: "neck_girth", Title: "Neck girth",
	Applies: all(bothEdges("neck"), func(s *pattern.Sheet) (bool, measure.Sentence) {
		if _, ok := bodyOf(s, measure.NeckBaseGirth); !ok {
			return false, measure.Tell("The " + term(measure.NeckBaseGirth) + " is not measured.")
		}
		return true, measure.Sentence{}
	}),
	Run: func(s *pattern.Sheet) []pattern.Finding {
		ring := neckRing(s)
		base, _ := bodyOf(s, measure.NeckBaseGirth)
		f := pattern.Finding{Verdict: pattern.Pass, Got: ring.MM(), Want: base.MM()}
		f.Where = on(pattern.Front, middleOf(piece(s, pattern.Front), "neck"))
		f.Says = measure.Tell("{} and {}, the ring and the base of her neck.", ring, base)
		natural := !byThumb(s) && uses(s.Known, "neck_widening") && s.Length("neck_widening") < neckWidened-slack
		switch short := base - ring; {
		case natural && abs(short) <= naturalBy(s)+slack:
			f.Low, f.High, f.Limits = -naturalBy(s).MM(), naturalBy(s).MM(), true
		case !natural && short <= slack:
		case short > 0:
			f.Code, f.Verdict = "neck_tight", pattern.Advise
			f.Says = measure.Tell("{} and {}: the neck is {} too tight.", ring, base, short)
			cureTightNeck(s, &f, short)
		case naturalDepth(s, base):
			f.Code, f.Verdict = "neck_loose", pattern.Advise
			f.Input = string(measure.NeckBaseGirth)
			f.Says = measure.Tell("{} and {}: the neck stands {} off the base of her neck.", ring, base, -short)
			f.Cure = measure.Tell("Measure the neck base again, with the cord close.")
		}
		return append(one(f), neckStyle(s)...)
	},
}

// naturalDepth: a neck left narrow but cut low on purpose is no natural one.
func naturalDepth(s *pattern.Sheet, base measure.Length) bool {
	const usual = 0.75 * inch // over a sixth of the neck base, in front
	return s.Length("front_neck_depth") <= base/6+usual
}

// cureTightNeck lowers the front: out and down 1/8 each give 1/2 of ring, so
// down alone gives a little less than half of that.
func cureTightNeck(s *pattern.Sheet, f *pattern.Finding, short measure.Length) {
	const each = 0.17 * inch // ring gained by 1/8 more depth in front
	eighths := measure.Length(math.Ceil(short.MM() / (inch / 2).MM()))
	f.Input = "front_neck_depth"
	f.Cure = measure.Tell("Draw it {} out and {} down.", eighths*inch/8, eighths*inch/8)
	if uses(s.Known, "front_neck_depth") {
		to := (s.Length("front_neck_depth") + measure.Length(math.Ceil(short.MM()/each.MM()))*inch/8).Up(step(s))
		f.Cure = measure.Tell("Draw it {} out and {} down; or only lower: {}.", eighths*inch/8, eighths*inch/8, change(s.Known, "front_neck_depth", to))
		f.Try = try(s.Known, "front_neck_depth", to)
	}
}
