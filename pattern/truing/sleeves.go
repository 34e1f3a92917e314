package truing

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// Sleeves (common practice, no source).
const (
	capLeast     = 0
	capMost      = 1.75 * inch // what wool takes; a crisp cloth takes 1 1/4
	capCrisp     = 1.25 * inch
	capShort     = -inch / 16
	capTooMuch   = 2.5 * inch
	capLow       = 0.24 // of the armhole
	capHigh      = 0.36
	topOff       = 0.625 * inch // of the crown
	armEaseLeast = 1.5 * inch
)

func hasSleeve(s *pattern.Sheet) bool {
	k := s.Pick("sleeve")
	return !byThumb(s) && k != "" && k != "none"
}

// setInSleeve says that a sleeve goes all round the armhole.
func setInSleeve(s *pattern.Sheet) bool { return hasSleeve(s) && s.Pick("sleeve") != "cap" }

func sleeveCut(s *pattern.Sheet) (bool, measure.Sentence) {
	if _, ok := s.Piece(pattern.Sleeve); !ok {
		return false, measure.Tell("The sleeve is not cut from the draft yet.")
	}
	return true, measure.Sentence{}
}

// sleeveCap walks the cap of the sleeve along the armhole of the dress.
var sleeveCap = Check{
	ID: "sleeve_cap", Title: "Sleeve into armhole", Wanted: hasSleeve,
	Applies: all(sleeveCut, bothEdges("armhole")),
	Run: func(s *pattern.Sheet) []pattern.Finding {
		out := one(capEase(s))
		if setInSleeve(s) {
			for _, h := range []pattern.PieceID{pattern.Front, pattern.Back} {
				if f, off := walkCap(s, h); off {
					out = append(out, f)
				}
			}
		}
		for _, check := range []func(*pattern.Sheet) (pattern.Finding, bool){capShare, capFull, capTop} {
			if f, off := check(s); off {
				out = append(out, f)
			}
		}
		return out
	},
}

// armholeInto is the part of both armholes that the sleeve is sewn to.
func armholeInto(s *pattern.Sheet) measure.Length {
	round := along(piece(s, pattern.Front), "armhole") + along(piece(s, pattern.Back), "armhole")
	if setInSleeve(s) {
		return round
	}
	return round - armholeFaced(s, pattern.Front) - armholeFaced(s, pattern.Back)
}

// armholeFaced is the part of an armhole that a facing finishes: below a cap
// sleeve, or all of it.
func armholeFaced(s *pattern.Sheet, half pattern.PieceID) measure.Length {
	if d, ok := s.Dimension(half, "armhole_faced"); ok {
		return d.Length
	}
	return along(piece(s, half), "armhole")
}

// capEase: what the cap is longer must be eased in, and too much puckers.
func capEase(s *pattern.Sheet) pattern.Finding {
	p := piece(s, pattern.Sleeve)
	got, want := along(p, "back_cap")+along(p, "front_cap"), armholeInto(s)
	f := limits{capLeast, capMost, capShort, capTooMuch}.compare("cap_ease", got, want)
	f.Where = on(pattern.Sleeve, at(s, pattern.Sleeve, "crown"))
	more := got - want
	switch {
	case f.Verdict == pattern.Pass:
		f.Says = measure.Tell("{} and {}, cap and armhole: {} to ease in.", got, want, more)
		return f
	case more < 0:
		f.Says = measure.Tell("{} and {}: the cap is {} too short for the armhole.", got, want, -more)
	default:
		f.Says = measure.Tell("{} and {}: {} to ease in is more than most cloth takes; it will pucker.", got, want, more)
	}
	f.Input = "cap_height"
	f.Cure = measure.Tell("Let the height of the cap follow from the ease.")
	if set, ok := s.Setting("cap_height"); ok && set.Chosen {
		f.Cure = measure.Tell("Draw the cap as its ease asks: {}.", change(s.Known, "cap_height", set.Default.Value.Length))
		f.Try = try(s.Known, "cap_height", set.Default.Value.Length)
	}
	return f
}

// walkCap: from the underarm to the notch nothing is eased, so both are as
// long.
func walkCap(s *pattern.Sheet, half pattern.PieceID) (pattern.Finding, bool) {
	sleeve := piece(s, pattern.Sleeve)
	name := string(half)
	edge, ok := firstEdge(sleeve, name+"_cap")
	mine, found := notchAlong(sleeve, name+"_cap", name+" armhole")
	if !ok || !found {
		return pattern.Finding{}, false
	}
	if half == pattern.Front {
		mine = edge.Length() - mine // its cap runs down to the underarm
	}
	theirs, found := dressNotch(s, half)
	if !found {
		return pattern.Finding{}, false
	}
	f := within(pairPass).compare("cap_notch", mine, theirs)
	if f.Verdict == pattern.Pass {
		return f, false
	}
	f.Where, f.Input = on(pattern.Sleeve, edge.Stitch.Start()), "sleeve"
	f.Says = measure.Tell("{} and {}: from the underarm to the "+name+" notch the sleeve is {} {} than the dress.", mine, theirs, abs(mine-theirs), longer(mine-theirs))
	f.Cure = measure.Tell("Walk the sleeve along the armhole from the underarm, and move its notch.")
	return f, true
}

// dressNotch is how far the notch for the sleeve lies from the underarm along
// the armhole of a half. Where a dart or a seam begins there, it is the mark.
func dressNotch(s *pattern.Sheet, half pattern.PieceID) (measure.Length, bool) {
	for _, id := range []pattern.PieceID{half, half + "_side"} {
		p, ok := s.Piece(id)
		if !ok {
			continue
		}
		if from, ok := notchAlong(p, "armhole", "sleeve"); ok {
			last, _ := lastEdge(p, "armhole")
			return last.Length() - from, true
		}
	}
	for _, id := range []pattern.PieceID{half + "_side", half} {
		if p, ok := s.Piece(id); ok {
			if last, ok := lastEdge(p, "armhole"); ok {
				return last.Length(), true
			}
		}
	}
	return 0, false
}

// notchAlong is how far a notch lies along the last edge of that name.
func notchAlong(p *pattern.Piece, edge, name string) (measure.Length, bool) {
	e, ok := lastEdge(p, edge)
	if !ok {
		return 0, false
	}
	for _, n := range p.Notches {
		if n.Edge == edge && n.Name == name {
			along, _, _ := e.Stitch.Nearest(n.At)
			return measure.Length(along), true
		}
	}
	return 0, false
}

func firstEdge(p *pattern.Piece, name string) (*pattern.Edge, bool) {
	for i := range p.Edges {
		if p.Edges[i].Name == name {
			return &p.Edges[i], true
		}
	}
	return nil, false
}

func lastEdge(p *pattern.Piece, name string) (*pattern.Edge, bool) {
	for i := len(p.Edges) - 1; i >= 0; i-- {
		if p.Edges[i].Name == name {
			return &p.Edges[i], true
		}
	}
	return nil, false
}

// capShare: a low cap gives freedom and folds, a high one a clean look and
// none.
func capShare(s *pattern.Sheet) (pattern.Finding, bool) {
	d, ok := s.Dimension(pattern.Sleeve, "cap_height")
	round := along(piece(s, pattern.Front), "armhole") + along(piece(s, pattern.Back), "armhole")
	if !ok || round <= 0 {
		return pattern.Finding{}, false
	}
	low, high := measure.Length(capLow*round.MM()), measure.Length(capHigh*round.MM())
	switch {
	case d.Length > high+slack:
		f := advice("cap_high", d.Length, high)
		f.Where, f.Input = on(pattern.Sleeve, at(s, pattern.Sleeve, "crown")), "ease_upper_arm"
		f.Says = measure.Tell("{} and {}: so high a cap binds when she lifts her arm.", d.Length, high)
		// A sleeve that is 1/8 wider has a cap that is at least 1/16 lower.
		to := (s.Length("ease_upper_arm") + max(inch/4, 2*(d.Length-high))).Up(step(s))
		f.Cure = measure.Tell("A wider sleeve: {}.", change(s.Known, "ease_upper_arm", to))
		f.Try = try(s.Known, "ease_upper_arm", to)
		return f, true
	case d.Length < low-slack:
		f := advice("cap_low", d.Length, low)
		f.Where, f.Input = on(pattern.Sleeve, at(s, pattern.Sleeve, "crown")), "armhole_depth"
		f.Says = measure.Tell("{} and {}: so low a cap lies in folds when her arm hangs.", d.Length, low)
		f.Cure = measure.Tell("A deeper armhole, {} at a time.", inch/4)
		to := (s.Length("ease_upper_arm") - max(inch/4, 2*(low-d.Length))).Down(step(s))
		if !s.Known.Chosen("full_arm") || s.Length("full_arm") > 0 {
			// What can be let in was.
		} else if set, ok := s.Setting("full_arm"); ok && set.Default.Value.Length > 0 {
			let := set.Default.Value.Length
			f.Input, f.Try = "full_arm", try(s.Known, "full_arm", let)
			f.Cure = measure.Tell("Let it in at the upper arm alone, so that the cap keeps its height: {}.", change(s.Known, "full_arm", let))
			return f, true
		}
		if to >= armEaseLeast {
			f.Input = "ease_upper_arm"
			f.Cure = measure.Tell("A narrower sleeve: {}; or a deeper armhole.", change(s.Known, "ease_upper_arm", to))
			f.Try = try(s.Known, "ease_upper_arm", to)
		}
		return f, true
	}
	return pattern.Finding{}, false
}

// capFull: what is let in for a full arm must be eased into the cap, and only
// soft cloth takes more than a crisp one does.
func capFull(s *pattern.Sheet) (pattern.Finding, bool) {
	let := s.Length("full_arm")
	p := piece(s, pattern.Sleeve)
	more := along(p, "back_cap") + along(p, "front_cap") - armholeInto(s)
	if let <= 0 || more <= capCrisp+slack || more > capMost+slack {
		return pattern.Finding{}, false // too much is said by cap_ease
	}
	f := advice("arm_full", more, capCrisp)
	f.Where, f.Input = on(pattern.Sleeve, at(s, pattern.Sleeve, "crown")), "armhole_depth"
	f.Says = measure.Tell("{} and {}: with {} let in for a full upper arm the cap has more to ease in than a crisp cloth takes; wool takes it.", more, measure.Length(capCrisp), let)
	f.Cure = measure.Tell("A deeper armhole, {} at a time; or less ease in the cap: {}.", inch/4, change(s.Known, "cap_ease", inch/2))
	return f, true
}

// capTop: the shoulder seam meets the cap near its crown, or the sleeve hangs
// askew.
func capTop(s *pattern.Sheet) (pattern.Finding, bool) {
	top, ok := s.Point(pattern.Sleeve, "top_notch")
	crown, ok2 := s.Point(pattern.Sleeve, "crown")
	off := measure.Length(top.Dist(crown))
	if !ok || !ok2 || off <= topOff+slack {
		return pattern.Finding{}, false
	}
	f := advice("cap_askew", off, topOff)
	f.Where, f.Input = on(pattern.Sleeve, top), "shoulder_forward"
	f.Says = measure.Tell("{} and {}: the shoulder seam meets the cap so far from its crown that the sleeve swings.", off, measure.Length(topOff))
	f.Cure = measure.Tell("Measure across the front and across the back again; the two armholes differ much.")
	return f, true
}

// sleeveSeams: both seams of the sleeve are as long, its hem runs on over the
// seam, and her arm has room in it.
var sleeveSeams = Check{
	ID: "sleeve_seams", Title: "Sleeve seams meet", Wanted: setInSleeve,
	Applies: sleeveCut,
	Run: func(s *pattern.Sheet) []pattern.Finding {
		p := piece(s, pattern.Sleeve)
		front, back := along(p, "front_seam"), along(p, "back_seam")
		f := limits{-pairPass, pairPass, -pairAdvise, pairAdvise}.compare("sleeve_seams", back, front)
		f.Where = on(pattern.Sleeve, middleOf(p, "back_seam"))
		f.Says = measure.Tell("{} and {}, back and front.", back, front)
		if f.Verdict != pattern.Pass {
			f.Says = measure.Tell("{} and {}: the back seam, its dart closed, is {} {} than the front seam.", back, front, abs(back-front), longer(back-front))
			f.Cure = measure.Tell("Take the dart at the elbow by {}, as much as was let in.", abs(back-front))
		}
		out := one(f)
		if g, off := sleeveHem(p); off {
			out = append(out, g)
		}
		if g, off := armEase(s); off {
			out = append(out, g)
		}
		return out
	},
}

// sleeveHem: the corners of the hem make a straight line once the seam is
// sewn.
func sleeveHem(p *pattern.Piece) (pattern.Finding, bool) {
	front, where, ok := corner(p, "front_seam", "hem", sewn)
	back, _, ok2 := corner(p, "hem", "back_seam", sewn)
	f := angle("sleeve_hem", front+back, 180, hemPass, hemAdvise)
	if !ok || !ok2 || f.Verdict == pattern.Pass {
		return f, false
	}
	f.Where, f.Input = on(p.ID, where), "sleeve_length"
	f.Says = measure.Tell("{} and {} degrees, front and back: the hem of the sleeve has a corner of {} at the seam.", tenth(front), tenth(back), tenth(off(f)))
	f.Cure = measure.Tell("Draw the hem square to both seams.")
	return f, true
}

// armEase: a sleeve that is too near her arm drags.
func armEase(s *pattern.Sheet) (pattern.Finding, bool) {
	arm, known := bodyOf(s, measure.UpperArmGirth)
	front, ok := s.Point(pattern.Sleeve, "front_underarm")
	back, ok2 := s.Point(pattern.Sleeve, "back_underarm")
	wide := measure.Length(geom.Vector{X: front.X - back.X}.Len())
	if !known || !ok || !ok2 || wide >= arm+armEaseLeast-slack {
		return pattern.Finding{}, false
	}
	f := advice("sleeve_tight", wide, arm+armEaseLeast)
	f.Where, f.Input = on(pattern.Sleeve, front), "ease_upper_arm"
	f.Says = measure.Tell("{} and {}: the sleeve has {} over her upper arm and will drag.", wide, arm+armEaseLeast, wide-arm)
	f.Cure = measure.Tell("More ease: {}.", change(s.Known, "ease_upper_arm", 2*inch))
	f.Try = try(s.Known, "ease_upper_arm", 2*inch)
	return f, true
}
