package truing

import (
	"chalkfold/measure"
	"chalkfold/pattern"
)

// Necklines (common practice, no source).
const (
	neckJewel    = 0.75 * inch // a jewel neck against her neck base
	wideSlides   = 1.5 * inch  // so wide a neck wants a high back
	backSlides   = 3 * inch
	officeNeck   = 3 * inch // a front stays so far above the bust point
	neckGapes    = 5 * inch // from here on cloth above the bust is set free
	neckGapesBig = 7.5 * inch
	lobeOff      = 0.75 * inch // a lobe so far inside the bust looks narrow
	footClear    = 2 * inch    // of an opening in the neck, above the bust point
)

// neckOpening is the slit or keyhole in the front neck; zero without one.
func neckOpening(s *pattern.Sheet) measure.Length {
	foot, ok := s.Point(pattern.Front, "opening_foot")
	centre, ok2 := s.Point(pattern.Front, "neck_centre")
	if !ok || !ok2 {
		return 0
	}
	return measure.Length(foot.Y - centre.Y)
}

// naturalBy is how far a neck that is not widened may lie off her neck base.
func naturalBy(s *pattern.Sheet) measure.Length {
	switch s.Pick("front_neckline") {
	case "jewel", "slit", "keyhole":
		return neckJewel
	}
	return neckNatural
}

// neckStyle says what the shape of a neck wants besides its girth: whether it
// stays on the shoulder, shows too much, or stands off.
func neckStyle(s *pattern.Sheet) []pattern.Finding {
	if byThumb(s) {
		return nil
	}
	var out []pattern.Finding
	for _, check := range []func(*pattern.Sheet) (pattern.Finding, bool){neckWide, neckSlides, neckLow, neckGape, lobeNarrow, footLow} {
		if f, off := check(s); off {
			f.Where = on(pattern.Front, at(s, pattern.Front, "neck_centre"))
			out = append(out, f)
		}
	}
	return out
}

func neckWide(s *pattern.Sheet) (pattern.Finding, bool) {
	base, ok := s.Point(pattern.Front, "neck_base")
	bone, ok2 := s.Point(pattern.Front, "bone_end")
	widen, half := s.Length("neck_widening"), measure.Length(base.Dist(bone))/2
	if !ok || !ok2 || widen <= half+slack {
		return pattern.Finding{}, false
	}
	f := advice("neck_wide", widen, half)
	f.Input = "neck_widening"
	f.Says = measure.Tell("{} and {}: widened by more than half of the shoulder, the neck will slide off it.", widen, half)
	f.Cure = measure.Tell("Widen less: {}.", change(s.Known, "neck_widening", half.Down(step(s))))
	f.Try = try(s.Known, "neck_widening", half.Down(step(s)))
	return f, true
}

func neckSlides(s *pattern.Sheet) (pattern.Finding, bool) {
	back := s.Length("back_neck_depth")
	if s.Length("neck_widening") <= wideSlides+slack || back <= backSlides+slack {
		return pattern.Finding{}, false
	}
	f := advice("neck_slides", back, backSlides)
	f.Input = "back_neck_depth"
	f.Says = measure.Tell("{} and {}: wide and deep behind, the dress slides off the shoulder.", back, measure.Length(backSlides))
	f.Cure = measure.Tell("Keep the back higher: {}.", change(s.Known, "back_neck_depth", backSlides))
	f.Try = try(s.Known, "back_neck_depth", backSlides)
	return f, true
}

func neckLow(s *pattern.Sheet) (pattern.Finding, bool) {
	bust, ok := bodyOf(s, measure.SideNeckToBustPoint)
	depth, most := s.Length("front_neck_depth"), bust-officeNeck
	if !ok || depth <= most+slack {
		return pattern.Finding{}, false
	}
	f := advice("neck_low", depth, most)
	f.Input = "front_neck_depth"
	f.Says = measure.Tell("{} and {}: lower than {} above the bust point is not for the office.", depth, most, measure.Length(officeNeck))
	f.Cure = measure.Tell("Draw it higher: {}.", change(s.Known, "front_neck_depth", most.Down(step(s))))
	f.Try = try(s.Known, "front_neck_depth", most.Down(step(s)))
	return f, true
}

func neckGape(s *pattern.Sheet) (pattern.Finding, bool) {
	depth := s.Length("front_neck_depth")
	if depth <= neckGapes+slack {
		return pattern.Finding{}, false
	}
	pinch := inch / 4
	if depth > neckGapesBig+slack || s.Pick("front_neckline") == "sweetheart" {
		pinch = inch / 2
	}
	if s.Length("neck_pinch") > 0 {
		return pattern.Finding{}, false // it was seen to
	}
	f := advice("neck_gape", depth, neckGapes)
	f.Input = "front_neck_depth"
	f.Says = measure.Tell("{} and {}: so low a neck sets cloth free above the bust, and it may stand off.", depth, measure.Length(neckGapes))
	f.Cure = measure.Tell("At the fitting try a pinch of {} on each half, turned into the bust dart; stay the edge with tape.", pinch)
	if _, ok := s.Point(pattern.Front, "dart_upper"); ok && uses(s.Known, "neck_pinch") {
		f.Input, f.Try = "neck_pinch", try(s.Known, "neck_pinch", pinch)
		f.Cure = measure.Tell("Pinch each half into the bust dart: {}; first pin it at the fitting, and stay the edge with tape.", change(s.Known, "neck_pinch", pinch))
	}
	return f, true
}

func lobeNarrow(s *pattern.Sheet) (pattern.Finding, bool) {
	bust, ok := s.Point(pattern.Front, "bust_point")
	lobe, ok2 := s.Point(pattern.Front, "neck_lobe")
	if !ok || !ok2 || measure.Length(bust.X-lobe.X) <= lobeOff+slack {
		return pattern.Finding{}, false
	}
	f := advice("sweetheart_narrow", measure.Length(lobe.X), measure.Length(bust.X))
	f.Input = "neck_widening"
	f.Says = measure.Tell("{} and {}: the arcs lie inside the bust and look narrow.", measure.Length(lobe.X), measure.Length(bust.X))
	f.Cure = measure.Tell("Widen the neck along the shoulder, or take another neckline.")
	return f, true
}

func footLow(s *pattern.Sheet) (pattern.Finding, bool) {
	bust, ok := bodyOf(s, measure.SideNeckToBustPoint)
	foot, ok2 := s.Point(pattern.Front, "opening_foot")
	if !ok || !ok2 || bust-measure.Length(foot.Y) >= footClear-slack {
		return pattern.Finding{}, false
	}
	f := advice("opening_low", measure.Length(foot.Y), bust-footClear)
	f.Input = "neck_opening_length"
	f.Says = measure.Tell("{} and {}: the foot of the opening comes within {} of the bust line.", measure.Length(foot.Y), bust-footClear, measure.Length(footClear))
	to := (s.Length("neck_opening_length") - measure.Length(foot.Y) + bust - footClear).Down(step(s))
	f.Cure = measure.Tell("Open it less: {}.", change(s.Known, "neck_opening_length", to))
	f.Try = try(s.Known, "neck_opening_length", to)
	return f, true
}
