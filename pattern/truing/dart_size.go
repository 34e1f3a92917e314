package truing

import (
	"math"

	"chalkfold/measure"
	"chalkfold/pattern"
)

// dartSize: a dart too small is not worth sewing, one too large points.
var dartSize = Check{
	ID: "dart_size", Title: "Dart size",
	Applies: func(s *pattern.Sheet) (bool, measure.Sentence) {
		if _, ok := s.Piece(pattern.Front); !ok {
			return false, measure.Tell("The front is not cut from the draft yet.")
		}
		if panelled(s) {
			return false, measure.Tell("The panel seam takes the dart.")
		}
		_, dart := sideDart(s)
		if d0, known := surplus(s); !dart && !(known && d0 < leastDart) {
			return false, measure.Tell("The front has no dart.")
		}
		return true, measure.Sentence{}
	},
	Run: func(s *pattern.Sheet) []pattern.Finding {
		d, ok := sideDart(s)
		if !ok {
			return one(dartNone(s))
		}
		if byThumb(s) {
			return one(dartByThumb(s, d))
		}
		intake := measure.Length(d.Legs[0].Dist(d.Legs[1]))
		out := one(intakeFinding(s, d, intake))
		tip := degrees(d.Tip.To(d.Legs[0]), d.Tip.To(d.Legs[1]))
		if back := s.Length("dart_tip_back"); tip > sharpDart && back < sharpBack-slack {
			f := steep("dart_sharp", tip, sharpDart)
			f.Where, f.Input = on(pattern.Front, d.Tip), "dart_tip_back"
			f.Says = measure.Tell("{} degrees at the tip, {} at most with the tip {} back: it will point.", tenth(tip), sharpDart, back)
			to := sharpBack.Up(step(s))
			f.Cure = measure.Tell("Set the tip back: {}.", change(s.Known, "dart_tip_back", to))
			f.Try = try(s.Known, "dart_tip_back", to)
			out = append(out, f)
		}
		return out
	},
}

// intakeFinding judges what the dart takes up, and what her front asks for.
func intakeFinding(s *pattern.Sheet, d *pattern.Dart, intake measure.Length) pattern.Finding {
	f := pattern.Finding{
		Verdict: pattern.Pass, Got: intake.MM(), Want: leastDart.MM(), High: (mostDart - leastDart).MM(), Limits: true,
		Where: on(pattern.Front, middle(d)),
	}
	d0, known := surplus(s)
	switch {
	case known && d0 < leastDart-slack:
		f.Code, f.Verdict, f.Input = "dart_least", pattern.Advise, string(measure.SideNeckToWaist)
		f.Got = d0.MM()
		f.Says = measure.Tell("{} and {}: her front is only {} longer than her back, drafted with the least dart.", d0, leastDart, d0)
		if d0 < 0 {
			f.Says = measure.Tell("{} and {}: her front is {} shorter than her back, drafted with the least dart.", d0, leastDart, -d0)
		}
		f.Cure = measure.Tell("Measure front and back length again, in the bra she will wear. If both are right, pinch the rest at the fitting.")
	case intake < leastDart-slack:
		f.Code, f.Verdict, f.Input = "dart_least", pattern.Advise, string(measure.SideNeckToWaist)
		f.Says = measure.Tell("{} and {}: a dart so small is not worth sewing.", intake, leastDart)
		f.Cure = measure.Tell("Measure front and back length again, in the bra she will wear.")
	case intake > mostDart+slack:
		f.Code, f.Verdict, f.Input = "dart_big", pattern.Advise, string(measure.SideNeckToWaist)
		f.Says = measure.Tell("{} and {}: one dart so large looks pointed.", intake, mostDart)
		f.Cure = measure.Tell("Turn it to a French dart, or where there is a waist seam take side and waist together.")
	default:
		f.Says = measure.Tell("Takes up {}; {} to {} is good to sew.", intake, leastDart, mostDart)
	}
	return f
}

func dartNone(s *pattern.Sheet) pattern.Finding {
	d0, _ := surplus(s)
	front, _ := bodyOf(s, measure.SideNeckToWaist)
	f := advice("dart_none", d0, 0)
	f.Where = on(pattern.Front, middleOf(piece(s, pattern.Front), "side"))
	f.Input = string(measure.SideNeckToWaist)
	f.Says = measure.Tell("{} and {}: her front is {} shorter than her back, drafted without a dart.",
		front, front-d0, -d0)
	f.Cure = measure.Tell("Measure both again: the string at the waist slipped, or her back is round and wants shoulder darts, which this draft has not.")
	if d0 >= 0 {
		f.Says = measure.Tell("{} and {}: her front is only {} longer than her back, drafted without a dart.", front, front-d0, d0)
		f.Cure = measure.Tell("Measure front and back length again, in the bra she will wear. If both are right, pinch what gapes at the fitting.")
	}
	return f
}

// dartByThumb: five from the cutting edge, but never over the middle of the
// bust: on a small bust the dart is shorter.
func dartByThumb(s *pattern.Sheet, d *pattern.Dart) pattern.Finding {
	edge, ok := s.Point(pattern.Front, "dart_upper")
	if !ok {
		edge = d.Legs[0]
	}
	long := measure.Length(math.Abs(edge.X - d.Tip.X))
	f := pattern.Finding{Verdict: pattern.Pass, Got: long.MM(), Want: thumbDart.MM(), Where: on(pattern.Front, d.Tip)}
	f.Says = measure.Tell("{} and {}, the dart and what the thumb gives it.", long, thumbDart)
	if long < thumbDart-slack {
		f.Code, f.Verdict, f.Input = "dart_shorter", pattern.Advise, string(measure.BustGirth)
		f.Says = measure.Tell("{} and {}: on a bust of {} the dart stops short, {} outside the middle of the bust line.", long, thumbDart, s.Body(measure.BustGirth), inch/2)
		f.Cure = measure.Tell("Sew it as drawn. By the measured method it points at her own bust point.")
	}
	return f
}
