package truing

import (
	"math"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// dartLegs: both legs are sewn on each other, and the cap lets the folded
// end lie along the seam.
var dartLegs = Check{
	ID: "dart_legs", Title: "Dart legs",
	Applies: hasDart,
	Run: func(s *pattern.Sheet) []pattern.Finding {
		d, _ := sideDart(s)
		upper, lower := measure.Length(d.Tip.Dist(d.Legs[0])), measure.Length(d.Tip.Dist(d.Legs[1]))
		f := limits{-legsPass, legsPass, -legsAdvise, legsAdvise}.compare("dart_legs", upper, lower)
		f.Where = on(pattern.Front, d.Tip)
		f.Says = measure.Tell("{} and {}, upper and lower leg.", upper, lower)
		if f.Verdict != pattern.Pass {
			f.Says = measure.Tell("{} and {}: the upper leg is {} {} than the lower.", upper, lower, abs(upper-lower), longer(upper-lower))
			f.Cure = measure.Tell("Turn the lower leg about the tip until it is {} long.", upper)
			f.Input = "side_dart_below"
		}
		out := one(f)
		if g, off := dartCap(s, d); off {
			out = append(out, g)
		}
		return out
	},
}

// dartCap folds the cap over the lower leg and looks whether it runs on
// along the seam below.
func dartCap(s *pattern.Sheet, d *pattern.Dart) (pattern.Finding, bool) {
	p := piece(s, pattern.Front)
	off, ok := capOff(p, d)
	if ok {
		return pattern.Finding{}, false
	}
	f := steep("dart_cap", off, capPass)
	f.Verdict = pattern.Fail
	f.Where = on(pattern.Front, d.Cap)
	f.Input = "side_dart_below"
	f.Says = measure.Tell("The folded end of the dart lies {} degrees off the seam.", off)
	f.Cure = measure.Tell("Fold the dart down on paper, draw the side seam across it, cut, unfold.")
	return f, true
}

// capOff is how far the folded end of a dart lies off the seam it is pressed
// along, degrees, and whether that will do.
func capOff(p *pattern.Piece, d *pattern.Dart) (float64, bool) {
	var seam geom.Vector
	for i := range p.Edges {
		next := &p.Edges[(i+1)%len(p.Edges)]
		if p.Edges[i].Name == "dart" && next.Name != "dart" {
			seam = next.Stitch.StartTangent()
			if next.Stitch.Start().Near(d.Legs[1], slack) {
				break // there may be another dart farther on
			}
		} else if p.Edges[i].Name != "dart" && next.Name == "dart" && p.Edges[i].Stitch.End().Near(d.Legs[1], slack) {
			// Pressed to the centre: the seam to lie along runs the other way.
			seam = p.Edges[i].Stitch.EndTangent().Scale(-1)
			break
		}
	}
	folded := geom.MirrorIn(geom.Line{At: d.Legs[1], Dir: d.Tip.To(d.Legs[1])}).ApplyVector(d.Legs[1].To(d.Cap))
	off := 180.0 // no cap, or no seam to lie along
	if seam != (geom.Vector{}) && folded.Len() > slack {
		off = degrees(folded, seam)
	}
	return off, off <= capPass
}

func middle(d *pattern.Dart) geom.Point { return d.Legs[0].Lerp(d.Legs[1], 0.5) }

// falls is how far a dart slopes down from the middle of its legs to its
// tip, degrees.
func falls(mid, tip geom.Point) float64 {
	return math.Atan2(tip.Y-mid.Y, mid.X-tip.X) * 180 / math.Pi
}

// dartAim: a bust dart points at the bust, level or rising.
var dartAim = Check{
	ID: "dart_aim", Title: "Dart aim",
	Applies: all(hasDart, func(s *pattern.Sheet) (bool, measure.Sentence) {
		if !hasPoints(s, pattern.Front, "bust_point", "underarm") {
			return false, measure.Tell("The bust point is not drawn yet.")
		}
		return true, measure.Sentence{}
	}),
	Run: func(s *pattern.Sheet) []pattern.Finding {
		d, _ := sideDart(s)
		fall := falls(middle(d), d.Tip)
		out := one(fallFinding(s, d, fall))
		if fromAbove(s) {
			out = one(aimedDown(d))
		} else if fromBelow(s) {
			out = one(aimedUp(d))
		}
		bp, u := at(s, pattern.Front, "bust_point"), at(s, pattern.Front, "underarm")
		if off := degrees(middle(d).To(d.Tip), middle(d).To(bp)); !byThumb(s) && (off > aimPass || fromSide(s) && d.Tip.X < bp.X-slack) {
			f := steep("dart_off", off, aimPass)
			f.Where, f.Input = on(pattern.Front, d.Tip), string(measure.BustPointDistance)
			f.Says = measure.Tell("The dart points {} degrees past the bust point.", off)
			f.Cure = measure.Tell("Lay the tip on the line from the bust point to the middle of the legs, {} back.", s.Length("dart_tip_back"))
			out = append(out, f)
		}
		if below := measure.Length(bp.Y - u.Y); !byThumb(s) && below < bustUnder-slack {
			f := advice("bust_line_high", below, bustUnder)
			f.Where, f.Input = on(pattern.Front, bp), string(measure.SideNeckToBustPoint)
			f.Says = measure.Tell("{} and {}: bust line and underarm lie at one level.", measure.Length(bp.Y), measure.Length(u.Y))
			f.Cure = measure.Tell("Measure the side neck to the bust point again, in the bra she will wear.")
			out = append(out, f)
		}
		return out
	},
}

// fromAbove says whether the dart comes from armhole, shoulder or neck.
func fromAbove(s *pattern.Sheet) bool {
	switch s.Pick("bust_dart") {
	case "armhole", "shoulder", "neck":
		return !byThumb(s)
	}
	return false
}

// fromBelow says whether the bust dart comes from a waist seam.
func fromBelow(s *pattern.Sheet) bool { return !byThumb(s) && s.Pick("bust_dart") == "waist" }

// fromSide says whether it comes from the side, so that its tip stays outside
// of the bust point.
func fromSide(s *pattern.Sheet) bool {
	return !fromAbove(s) && !fromBelow(s) && (byThumb(s) || s.Pick("bust_dart") != "centre_front")
}

// aimedUp is what there is to say of a dart from the waist.
func aimedUp(d *pattern.Dart) pattern.Finding {
	rise := -falls(middle(d), d.Tip)
	return pattern.Finding{
		Verdict: pattern.Pass, In: pattern.InDegrees, Got: rise, Want: rise, Where: on(pattern.Front, middle(d)),
		Says: measure.Tell("Rises from the waist to its tip below the bust point, as it should."),
	}
}

// aimedDown is what there is to say of a dart from above: it may fall as
// steeply as it likes.
func aimedDown(d *pattern.Dart) pattern.Finding {
	fall := falls(middle(d), d.Tip)
	return pattern.Finding{
		Verdict: pattern.Pass, In: pattern.InDegrees, Got: fall, Want: fall, Where: on(pattern.Front, middle(d)),
		Says: measure.Tell("Falls {} degrees from above to its tip, as it should.", tenth(fall)),
	}
}

func fallFinding(s *pattern.Sheet, d *pattern.Dart, fall float64) pattern.Finding {
	f := pattern.Finding{
		Verdict: pattern.Pass, In: pattern.InDegrees, Got: fall, Want: fallMost,
		Where: on(pattern.Front, middle(d)),
	}
	if fall <= fallMost+slack {
		f.Says = measure.Tell("Falls {} degrees to its tip; {} at most.", tenth(max(fall, 0)), fallMost)
		if fall < -0.05 {
			f.Says = measure.Tell("Rises {} degrees to its tip.", tenth(-fall))
		}
		return f
	}
	f.Code, f.Verdict = "dart_droops", pattern.Advise
	f.Says = measure.Tell("Falls {} degrees to its tip, {} at most: the bust point lies far below the underarm.", tenth(fall), fallMost)
	f.Input = string(measure.SideNeckToBustPoint)
	f.Cure = measure.Tell("Measure the side neck to the bust point again. If it is right, a French dart from lower down is better.")
	if uses(s.Known, "bust_dart") && s.Pick("bust_dart") == "side" {
		french := pattern.PickValue("french")
		f.Input, f.Try = "bust_dart", &french
	}
	below := s.Length("side_dart_below")
	lower := min(lowestDart, below+measure.Length(d.Tip.Y-middle(d).Y).Up(step(s)))
	moved := middle(d)
	moved.Y += (lower - below).MM()
	if uses(s.Known, "side_dart_below") && lower > below && falls(moved, d.Tip) <= fallMost {
		f.Input = "side_dart_below"
		f.Cure = measure.Tell("Start it lower: {}.", change(s.Known, "side_dart_below", lower))
		f.Try = try(s.Known, "side_dart_below", lower)
	}
	return f
}

// tenth keeps an angle from being shown as longer than it matters.
func tenth(degrees float64) float64 { return math.Round(degrees*10) / 10 }
