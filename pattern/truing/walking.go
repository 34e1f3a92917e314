package truing

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/rule"
)

// walkOf reads off the sheet what a step needs; the last value says what is
// missing.
func walkOf(s *pattern.Sheet) (rule.Walk, bool, measure.Sentence) {
	w := rule.Walk{Step: rule.UsualStep, LegGirth: rule.LegGirth}
	if l, ok := s.Measured(measure.StepLength); ok {
		w.Step = l
	}
	hem, hip := at(s, pattern.Back, "hem_centre"), at(s, pattern.Back, "hip")
	w.HemGirth, w.HipGirth = roundAt(s, "hem_side"), roundAt(s, "hip")
	if panelled(s) {
		w.HemGirth += 4 * s.Length("panel_flare") // at each of four seams
	}
	w.HipAbove = measure.Length(hem.Y - hip.Y)
	w.ZipAbove = w.HipAbove
	if neck, ok := s.Point(pattern.Back, "neck_centre"); ok {
		if sewn, ok := s.SewnPoint(pattern.Back, "neck_centre"); ok {
			neck = sewn
		}
		w.ZipAbove = measure.Length(hem.Y-neck.Y) - zipOf(s)
	}
	height, ok := s.Measured(measure.Height)
	if !ok {
		return w, false, measure.Tell("Her height is not measured.")
	}
	heel := s.Length("heel_height")
	w.Leg = measure.Length(rule.LegOfHeight*height.MM()) + heel
	if floor, ok := s.Measured(measure.WaistToFloor); ok {
		w.Hem = floor - measure.Length(hem.Y-waistLevel(s))
	} else if floor, ok := s.Measured(measure.BackNeckToFloor); ok && !skirtAlone(s) {
		w.Hem = floor + rule.NapeDrop - measure.Length(hem.Y)
	} else {
		return w, false, measure.Tell("Neither waist to floor nor back neck to floor is measured.")
	}
	w.Hem += heel
	switch {
	case w.Hem < 0:
		return w, false, measure.Tell("The hem lies on the floor.")
	case w.Hem >= w.Leg || w.HipAbove <= 0:
		return w, false, measure.Tell("The hem lies above the hip joint.")
	}
	return w, true, measure.Sentence{}
}

var hemPoints = both("waist", "hip", "hem_side", "hem_centre", "underarm")

// walking: the hem, or its slit, must open to her step. Legs are taken as
// two straight lines from the hip: an estimate, so it is only advice.
var walking = Check{
	ID: "walking", Title: "Walking",
	Applies: all(hemPoints, func(s *pattern.Sheet) (bool, measure.Sentence) {
		_, ok, why := walkOf(s)
		return ok, why
	}),
	Run: func(s *pattern.Sheet) []pattern.Finding {
		w, _, _ := walkOf(s)
		need, slit := w.Need(w.Step), slitOf(s)
		f := pattern.Finding{Verdict: pattern.Pass, Got: w.HemGirth.MM(), Want: need.MM()}
		f.Where = on(pattern.Back, at(s, pattern.Back, "hem_centre"))
		stairs := measure.Tell("")
		if more := w.Least(rule.StairsStep) - slit; slit > 0 && more > slack {
			stairs = measure.Tell(" For stairs (step {}) {} more.", rule.StairsStep, more)
		}
		switch least := w.Least(w.Step); {
		case least <= 0:
			f.Says = measure.Tell("Hem {}, wanted {} for a step of {}.{}", w.HemGirth, need, w.Step, stairs)
		case slit >= least-slack:
			f.Says = measure.Tell("Hem {}, wanted {} for a step of {}: the slit of {} opens it.{}", w.HemGirth, need, w.Step, slit, stairs)
		default:
			f.Code, f.Verdict, f.Input = "walking", pattern.Advise, "slit_height"
			f.Says = measure.Tell("Hem {}, wanted {} for a step of {}: the skirt will catch her.", w.HemGirth, need, w.Step)
			cureSlit(s, w, &f)
		}
		return one(f)
	},
}

// slitOf is how high the hem opens at the centre back; zero where it is
// closed.
func slitOf(s *pattern.Sheet) measure.Length {
	if closedHem(s) {
		return 0
	}
	return s.Length("slit_height")
}

func closedHem(s *pattern.Sheet) bool { return !byThumb(s) && s.Pick("hem_opening") == "none" }

// sideSlits says that the hem opens in both sides, not behind.
func sideSlits(s *pattern.Sheet) bool { return !byThumb(s) && s.Pick("hem_opening") == "side_slits" }

// laidOver says that cloth is added at the opening: it cannot be of no
// height.
func laidOver(s *pattern.Sheet) bool {
	switch s.Pick("hem_opening") {
	case "vent", "kick_pleat", "inverted":
		return !byThumb(s)
	}
	return false
}

// cureSlit raises the slit, or where there is no room for it takes the peg
// back.
func cureSlit(s *pattern.Sheet, w rule.Walk, f *pattern.Finding) {
	to := w.LeastOpening(w.Step)
	if closedHem(s) && to <= w.MostOpening() {
		slit := pattern.PickValue("slit")
		f.Cure = measure.Tell("Open the hem at the centre back by a slit.")
		f.Input, f.Try = "hem_opening", &slit
		return
	}
	if to <= w.MostOpening() {
		f.Cure = measure.Tell("Open it higher: {}.", change(s.Known, "slit_height", to))
		f.Try = try(s.Known, "slit_height", to)
		return
	}
	f.Cure = measure.Tell("There is no room for a slit of {} below the zip and the hip line: widen the hem.", to)
	if line := s.Pick("skirt_line"); uses(s.Known, "hem_peg") && s.Length("hem_peg") > 0 && (line == "" || line == "pegged") {
		f.Input = "hem_peg"
		f.Cure = measure.Tell("There is no room for a slit of {}; widen the hem: {}.", to, change(s.Known, "hem_peg", 0))
	}
}

// slitHeight: the top of a slit must never take the strain, and it needs
// unbroken seam up to the zip and the seat.
var slitHeight = Check{
	ID: "slit_height", Title: "Slit height",
	Applies: all(hemPoints, func(s *pattern.Sheet) (bool, measure.Sentence) {
		if slitOf(s) <= 0 {
			return false, measure.Tell("There is no slit.")
		}
		return true, measure.Sentence{}
	}),
	Run: func(s *pattern.Sheet) []pattern.Finding {
		w, known, _ := walkOf(s)
		slit := slitOf(s)
		most, room := min(w.HipAbove-slitClear, w.ZipAbove-slitClear, slitMost), w.MostOpening()
		top := min(w.ZipAbove, w.HipAbove)
		if sideSlits(s) { // no zip stands above them, and they may show
			top = w.HipAbove + measure.Length(at(s, pattern.Back, "hip").Y-at(s, pattern.Back, "waist").Y)
			most = top - sideSlitClear
			room = most
		}
		f := pattern.Finding{Verdict: pattern.Pass, Got: slit.MM(), Want: most.MM(), Input: ""}
		place := at(s, pattern.Back, "hem_centre")
		place.Y -= slit.MM()
		f.Where = on(pattern.Back, place)
		f.Says = measure.Tell("{} and {} at most.", slit, max(0, most))
		var least measure.Length
		if known {
			least = w.LeastOpening(w.Step)
			f.Want, f.High, f.Limits = least.MM(), (most - least).MM(), true
			f.Says = measure.Tell("{} and {} at least for a step of {}.", slit, least, w.Step)
		}
		switch {
		case slit >= top-slack:
			f.Code, f.Verdict = "slit_high", pattern.Fail
			f.Says = measure.Tell("{} and {}: the slit runs into the zip or past the hip line.", slit, top)
		case slit > most+slack:
			f.Code, f.Verdict = "slit_high", pattern.Advise
			f.Says = measure.Tell("{} and {}: the slit comes too near to the zip or the seat.", slit, max(0, most))
		case slit < least-slack:
			f.Code, f.Verdict = "slit_low", pattern.Advise
			f.Says = measure.Tell("{} and {}: at a step of {} the top of the slit takes the strain.", slit, least, w.Step)
		default:
			return one(f)
		}
		cureHeight(s, &f, least, room)
		return one(f)
	},
}

func cureHeight(s *pattern.Sheet, f *pattern.Finding, least, most measure.Length) {
	f.Input = "slit_height"
	to := most
	if f.Code == "slit_low" {
		to = min(least, most)
	}
	switch {
	case to <= 0 && laidOver(s):
		none := pattern.PickValue("none")
		f.Cure = measure.Tell("There is no room for an opening here: close the hem.")
		f.Input, f.Try = "hem_opening", &none
	case to <= 0:
		f.Cure = measure.Tell("There is no room for a slit here: leave it out, {}.", change(s.Known, "slit_height", 0))
		f.Try = try(s.Known, "slit_height", 0)
	case f.Code == "slit_low" && to < least:
		f.Cure = measure.Tell("Sew a bar across its top; below the zip there is room for {} only.", most)
	case f.Code == "slit_low":
		f.Cure = measure.Tell("Open it higher: {}.", change(s.Known, "slit_height", to))
		f.Try = try(s.Known, "slit_height", to)
	default:
		f.Cure = measure.Tell("End it lower: {}.", change(s.Known, "slit_height", to))
		f.Try = try(s.Known, "slit_height", to)
	}
}
