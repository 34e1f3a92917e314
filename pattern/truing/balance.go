package truing

import (
	"math"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// balance: with the dart closed the waist and hip notches of front and back
// meet, and the side does not dive from waist to hip.
var balance = Check{
	ID: "balance", Title: "Balance",
	Applies: both("underarm", "waist", "hip"),
	Run: func(s *pattern.Sheet) []pattern.Finding {
		out := one(levelsFinding(s))
		if byThumb(s) {
			if f, off := thumbFront(s); off {
				out = append(out, f)
			}
			return out
		}
		w, h := at(s, pattern.Front, "waist"), at(s, pattern.Front, "hip")
		if dive := math.Atan2(h.X-w.X, h.Y-w.Y) * 180 / math.Pi; dive > diveMost+slack {
			f := steep("side_dives", dive, diveMost)
			f.Where, f.Input = on(pattern.Front, w.Lerp(h, 0.5)), string(measure.WaistToHip)
			f.Says = measure.Tell("{} out and {} down from waist to hip, {} degrees: the side will drag.", measure.Length(h.X-w.X), measure.Length(h.Y-w.Y), tenth(dive))
			f.Cure = measure.Tell("Measure the waist to hip again: a lower hip line slants less. If it is right, leave more at the side and pin waist darts.")
			out = append(out, f)
		}
		if f, ask := askLengths(s); ask {
			out = append(out, f)
		}
		if f, sways := swayFinding(s); sways {
			out = append(out, f)
		}
		if f, swings := swingFinding(s); swings {
			out = append(out, f)
		}
		return out
	},
}

// levelsFinding walks both sides from the underarm to waist and hip.
func levelsFinding(s *pattern.Sheet) pattern.Finding {
	fu, fw, fh := at(s, pattern.Front, "underarm"), at(s, pattern.Front, "waist"), at(s, pattern.Front, "hip")
	bu, bw, bh := at(s, pattern.Back, "underarm"), at(s, pattern.Back, "waist"), at(s, pattern.Back, "hip")
	front, back := fu.Dist(fw), bu.Dist(bw)
	if byThumb(s) {
		return thumbLevels(s, fw, bw)
	}
	if u, ok := s.Point(pattern.Front, "underarm_pinched"); ok {
		fu = u // what a pinch turned up is sewn from there
	}
	upper, dart := s.Point(pattern.Front, "dart_upper")
	if lower, ok := s.Point(pattern.Front, "dart_lower"); dart && ok {
		end := fw
		if turned, ok := s.Point(pattern.Front, "waist_turned"); ok {
			end = turned
		}
		front = fu.Dist(upper) + lower.Dist(end)
	}
	notch, got, want := "waist", measure.Length(front), measure.Length(back)
	if hip := measure.Length(fw.Dist(fh)); abs(hip-measure.Length(bw.Dist(bh))) > abs(got-want) {
		notch, got, want = "hip", hip, measure.Length(bw.Dist(bh))
	}
	return levels(s, notch, got, want)
}

// thumbLevels walks the drawn sides: by thumb a side is upright at first.
func thumbLevels(s *pattern.Sheet, fw, bw geom.Point) pattern.Finding {
	f, okF := s.Piece(pattern.Front)
	b, okB := s.Piece(pattern.Back)
	if !okF || !okB {
		return skip("", measure.Tell("The sides are not cut from the draft yet."))
	}
	return levels(s, "waist", measure.Length(walked(f, fw.Y)), measure.Length(walked(b, bw.Y)))
}

// walked is the length of the side from the underarm down to a level, with
// the dart closed.
func walked(p *pattern.Piece, level float64) float64 {
	sum := 0.0
	for i := range p.Edges {
		e := &p.Edges[i]
		if e.Name != "side" {
			continue
		}
		if e.Stitch.End().Y <= level {
			sum += e.Stitch.Length()
			continue
		}
		for _, seg := range e.Stitch {
			at := geom.Path{seg}.AtLevel(level)
			if len(at) == 0 {
				sum += seg.Length()
				continue
			}
			return sum + seg.LengthTo(seg.Nearest(at[0]))
		}
	}
	return sum
}

// levels tells whether the notches of front and back meet.
func levels(s *pattern.Sheet, notch string, got, want measure.Length) pattern.Finding {
	fw, bw := at(s, pattern.Front, "waist"), at(s, pattern.Back, "waist")
	_, dart := s.Point(pattern.Front, "dart_upper")
	f := within(pairPass).compare("balance", got, want)
	f.Where = on(pattern.Front, fw)
	fl, bl := measure.Length(fw.Y), measure.Length(bw.Y)
	f.Says = measure.Tell("{} and {}, front and back waist.", fl, bl)
	if dart {
		f.Says = measure.Tell("{} and {}, front and back waist: the dart takes up {}.", fl, bl, fl-bl)
	}
	if f.Verdict != pattern.Pass {
		f.Where = on(pattern.Front, at(s, pattern.Front, notch))
		f.Says = measure.Tell("{} and {}: the "+notch+" notches miss each other by {}.", got, want, abs(got-want))
		f.Cure = measure.Tell("Walk the seam with the dart closed and move the lower leg of the dart.")
		f.Input = "side_dart_below"
	}
	return f
}

// thumbFront: by thumb every front is longer than its back by the same
// dart, whatever her own front is.
func thumbFront(s *pattern.Sheet) (pattern.Finding, bool) {
	d0, known := surplus(s)
	dart, ok := sideDart(s)
	if !known || !ok {
		return pattern.Finding{}, false
	}
	intake := measure.Length(dart.Legs[0].Dist(dart.Legs[1]))
	off := intake - d0
	if abs(off) <= thumbLong+slack {
		return pattern.Finding{}, false
	}
	f := advice("front_too_long", intake, d0)
	f.Low, f.High, f.Limits = -thumbLong.MM(), thumbLong.MM(), true
	f.Where, f.Input = on(pattern.Front, at(s, pattern.Front, "waist")), string(pattern.Method)
	f.Says = measure.Tell("{} and {}: the front is {} too long for her.", intake, d0, off)
	f.Cure = measure.Tell("Take a smaller dart: {} -> {}; or draft by the measured method.", intake, max(0, d0))
	if off < 0 {
		f.Code = "front_too_short"
		f.Says = measure.Tell("{} and {}: the front is {} too short for her.", intake, d0, -off)
		f.Cure = measure.Tell("Take a larger dart: {} -> {}; or draft by the measured method.", intake, d0)
	}
	return f, true
}

// hemLevel: from the hip down the side must be as long as the centre, or the
// hem dips.
var hemLevel = Check{
	ID: "hem_level", Title: "Hem level",
	Applies: both("hip", "hem_side", "hem_centre"),
	Run: func(s *pattern.Sheet) []pattern.Finding {
		worst, first := pattern.Finding{}, true
		for _, id := range []pattern.PieceID{pattern.Front, pattern.Back} {
			h, e := at(s, id, "hip"), at(s, id, "hem_side")
			side := h.Dist(e)
			if opened, ok := s.Point(id, "skirt_hip"); ok {
				side = opened.Dist(e) // turned with all that lies outside its darts
			}
			if k, ok := s.Point(id, "knee"); ok && k.Y > h.Y && k.Y < e.Y {
				side = h.Dist(k) + k.Dist(e)
			}
			centre := at(s, id, "hem_centre").Y - h.Y + levelled(s, id).MM()
			f := within(pairPass).compare("hem_level", measure.Length(side), measure.Length(centre))
			f.Where = on(id, e)
			f.Says = measure.Tell("{} and {}, side and centre from the hip down.", measure.Length(side), measure.Length(centre))
			if f.Verdict != pattern.Pass {
				d := measure.Length(side - centre)
				f.Input = "hem_peg"
				f.Says = measure.Tell("{} and {}: the side of the "+string(id)+" is {} {} than the centre from the hip down.", measure.Length(side), measure.Length(centre), abs(d), longer(d))
				f.Cure = measure.Tell("Move the hem at the side {} by {} and draw it anew.", upDown(d), abs(d))
			}
			if first || math.Abs(f.Got-f.Want) > math.Abs(worst.Got-worst.Want) {
				worst, first = f, false
			}
		}
		return one(worst)
	},
}

// levelled is what a hem lies higher at the centre than at the side because a
// fitting wanted it so.
func levelled(s *pattern.Sheet, id pattern.PieceID) measure.Length {
	if byThumb(s) {
		return 0
	}
	centre := s.Length("hem_level_front")
	if id == pattern.Back {
		centre = s.Length("hem_level_back")
	}
	return centre - s.Length("hem_level_side")
}

func upDown(d measure.Length) string {
	if d < 0 {
		return "down"
	}
	return "up"
}
