package truing

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// sideSeams: front (dart closed) and back are sewn to each other from the
// underarm to the hem.
var sideSeams = Check{
	ID: "side_seams", Title: "Side seams meet",
	Applies: bothEdges("side"),
	Run: func(s *pattern.Sheet) []pattern.Finding {
		f := sideFinding(s, figureSide(s, pattern.Front), figureSide(s, pattern.Back))
		// The drawn line rounds the waist and follows the hip: it is the one
		// that is sewn, so it must meet too.
		drawn := sideFinding(s, along(piece(s, pattern.Front), "side"), along(piece(s, pattern.Back), "side"))
		if f.Verdict == pattern.Pass && drawn.Verdict != pattern.Pass {
			f = drawn
		}
		return append(one(f), panelSeams(s)...)
	},
}

// figureSide is the side on the straight figure, as the sheet states it, or
// the drawn one.
func figureSide(s *pattern.Sheet, id pattern.PieceID) measure.Length {
	if d, ok := s.SewnDimension(id, "side"); ok {
		return d.Length
	}
	return along(piece(s, id), "side")
}

func sideFinding(s *pattern.Sheet, front, back measure.Length) pattern.Finding {
	f := limits{-pairPass, pairPass, -pairAdvise, pairAdvise}.compare("side_seams", front, back)
	f.Where = on(pattern.Front, middleOf(piece(s, pattern.Front), "side"))
	if f.Verdict == pattern.Pass {
		f.Says = measure.Tell("{} and {}, front and back.", front, back)
		return f
	}
	f.Says = measure.Tell("{} and {}: the front is {} {} than the back.", front, back, abs(front-back), longer(front-back))
	f.Input = "side_dart_below"
	f.Cure = measure.Tell("Walk the back along the front with the dart closed, and move the lower leg of the dart by {}.", abs(front-back))
	if set, ok := s.Setting("side_dart_below"); ok && set.Chosen && set.Default.Value.Length != set.Value.Length {
		to := set.Default.Value.Length
		f.Cure, f.Try = measure.Tell("Move the dart: {}.", change(s.Known, "side_dart_below", to)), try(s.Known, "side_dart_below", to)
	}
	return f
}

// shoulderSeams: the back may be a little longer and is eased in. By thumb
// the cutting lines are compared, as they are laid on each other on cloth.
var shoulderSeams = Check{
	ID: "shoulder_seams", Title: "Shoulders meet",
	Applies: all(both("neck_point", "shoulder_end"), bothEdges("shoulder")),
	Run: func(s *pattern.Sheet) []pattern.Finding {
		front, back := shoulderOf(s, pattern.Front), shoulderOf(s, pattern.Back)
		if !byThumb(s) && s.Pick("back_shoulder") == "ease" {
			back -= s.Length("back_shoulder_ease")
		}
		f := limits{-pairPass, easedBack, -pairAdvise, 2 * easedBack}.compare("shoulder_seams", back, front)
		f.Where = on(pattern.Front, at(s, pattern.Front, "shoulder_end"))
		f.Says = measure.Tell("{} and {}, back and front.", back, front)
		if f.Verdict != pattern.Pass {
			f.Says = measure.Tell("{} and {}: the back is {} {} than the front.", back, front, abs(back-front), longer(back-front))
			f.Input = "shoulder_forward"
			f.Cure = measure.Tell("Run the back shoulder {} {} at the arm, and draw the armhole into it.", abs(back-front), outIn(front-back))
			if byThumb(s) {
				f.Input = string(measure.AcrossShoulders)
			}
		}
		out := one(f)
		out = append(out, backDartFaults(s)...)
		if g, round := roundBack(s); round {
			out = append(out, g)
		}
		if g, off := shoulderTape(s); off {
			out = append(out, g)
		}
		return out
	},
}

// backDartFaults are what is wrong with a dart in the back shoulder: legs of
// two lengths, or an end that does not reach the seam when it is folded.
func backDartFaults(s *pattern.Sheet) []pattern.Finding {
	p := piece(s, pattern.Back)
	var out []pattern.Finding
	for i := range p.Darts {
		d := &p.Darts[i]
		if d.Waist || d.Fisheye || d.Cap == (geom.Point{}) {
			continue
		}
		outer, inner := measure.Length(d.Tip.Dist(d.Legs[0])), measure.Length(d.Tip.Dist(d.Legs[1]))
		if f := (limits{-legsPass, legsPass, -legsAdvise, legsAdvise}).compare("back_dart_legs", outer, inner); f.Verdict != pattern.Pass {
			f.Where, f.Input = on(pattern.Back, d.Tip), "back_shoulder"
			f.Says = measure.Tell("{} and {}: the outer leg of the shoulder dart is {} {} than the inner.", outer, inner, abs(outer-inner), longer(outer-inner))
			f.Cure = measure.Tell("Turn the outer leg about the tip until it is {} long.", inner)
			out = append(out, f)
		}
		if wrong, ok := capOff(p, d); !ok {
			f := steep("back_dart_cap", wrong, capPass)
			f.Verdict, f.Where, f.Input = pattern.Fail, on(pattern.Back, d.Cap), "back_shoulder"
			f.Says = measure.Tell("The folded end of the shoulder dart lies {} degrees off the seam.", wrong)
			f.Cure = measure.Tell("Fold the dart to the centre on paper, rule the shoulder across it, cut, unfold.")
			out = append(out, f)
		}
	}
	return out
}

// shoulderOf is the shoulder seam: of a net draft the stitch line, by thumb
// the cutting line.
func shoulderOf(s *pattern.Sheet, id pattern.PieceID) measure.Length {
	if byThumb(s) {
		return measure.Length(at(s, id, "neck_point").Dist(at(s, id, "shoulder_end")))
	}
	return along(piece(s, id), "shoulder")
}

// shoulderTape holds the whole shoulder line, from the base of the neck to
// the bone, against the shoulder length that she measured.
func shoulderTape(s *pattern.Sheet) (pattern.Finding, bool) {
	taped, ok := s.Measured(measure.ShoulderLength)
	if !ok || byThumb(s) {
		return pattern.Finding{}, false
	}
	n, e := at(s, pattern.Front, "neck_point"), at(s, pattern.Front, "shoulder_end")
	line := measure.Length(n.Dist(e))
	if e.X <= n.X {
		return pattern.Finding{}, false
	}
	// Widening is counted along the line, the inset straight in.
	whole := line + s.Length("neck_widening") + measure.Length(s.Length("shoulder_inset").MM()*line.MM()/(e.X-n.X))
	off := whole - taped
	if off >= shoulderShort-slack && off <= shoulderLong+slack {
		return pattern.Finding{}, false
	}
	f := advice("shoulder_line", whole, taped)
	f.Low, f.High, f.Limits = shoulderShort.MM(), shoulderLong.MM(), true
	f.Where = on(pattern.Front, e)
	f.Input = string(measure.AcrossShoulders)
	f.Says = measure.Tell("{} and {}: the shoulder line from neck to bone is {} {} than her shoulder.", whole, taped, abs(off), longer(off))
	f.Cure = measure.Tell("Measure again what makes it: across shoulders, neck base, shoulder drop.")
	return f, true
}

func abs(l measure.Length) measure.Length { return max(l, -l) }

func longer(d measure.Length) string {
	if d < 0 {
		return "shorter"
	}
	return "longer"
}

func outIn(d measure.Length) string {
	if d < 0 {
		return "in"
	}
	return "out"
}
