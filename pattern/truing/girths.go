package truing

import (
	"math"

	"chalkfold/measure"
	"chalkfold/pattern"
)

// bustGirth, waistGirth and hipGirth: what is drawn all round must be her
// body and the ease that was chosen. By thumb there is no ease: the sewn
// girths are the body's.
var bustGirth = Check{
	ID: "bust_girth", Title: "Bust girth",
	Applies: girthApplies("underarm", measure.BustGirth),
	Run: func(s *pattern.Sheet) []pattern.Finding {
		out := one(girthFinding(s, "bust_girth", "underarm", measure.BustGirth, "ease_bust", 0))
		if f, large := cupFinding(s); large {
			out = append(out, f)
		}
		return out
	},
}

var waistGirth = Check{
	ID: "waist_girth", Title: "Waist girth",
	Applies: girthApplies("waist", measure.WaistGirth),
	Run: func(s *pattern.Sheet) []pattern.Finding {
		front, back := spareOf(s, pattern.Front), spareOf(s, pattern.Back)
		darts := waistDarts(s)
		out := one(girthFinding(s, "waist_girth", "waist", measure.WaistGirth, "ease_waist", 2*(front+back-darts)))
		if spare := max(front, back) - darts/2; spare > spareMost+slack && !hangsLoose(s) {
			out = append(out, waistSpare(s, out[0], spare, 2*(front+back-darts)))
		}
		if f, out2 := waistOut(s); out2 && !skirtAlone(s) {
			out = append(out, f)
		}
		return out
	},
}

var hipGirth = Check{
	ID: "hip_girth", Title: "Hip girth",
	Applies: girthApplies("hip", measure.HipGirth),
	Run: func(s *pattern.Sheet) []pattern.Finding {
		out := one(girthFinding(s, "hip_girth", "hip", measure.HipGirth, "ease_hip", 0))
		if f, tight := highHipFinding(s); tight {
			out = append(out, f)
		}
		return out
	},
}

func girthApplies(point string, id measure.ID) func(*pattern.Sheet) (bool, measure.Sentence) {
	return all(both(point, "underarm"), func(s *pattern.Sheet) (bool, measure.Sentence) {
		if !s.Has(id) {
			return false, measure.Tell("The " + term(id) + " is not measured.")
		}
		return true, measure.Sentence{}
	})
}

func girthFinding(s *pattern.Sheet, check, point string, id measure.ID, easeID pattern.ChoiceID, spare measure.Length) pattern.Finding {
	got, body := roundAt(s, point), s.Body(id)
	switch {
	case point == "waist" && skirtAlone(s):
		got = sewnWaist(s) // its waist line is curved
	case point == "waist":
		got -= 2 * waistDarts(s)
	}
	var ease measure.Length
	if !byThumb(s) {
		ease = s.Length(easeID)
	}
	want := body + ease + spare
	f := within(girthPass).compare(check, got, want)
	f.Where = on(pattern.Front, at(s, pattern.Front, point))
	parts := measure.Tell("body {}", body)
	switch {
	case byThumb(s):
		parts = measure.Tell("body {}, no ease", body)
	case spare > slack:
		parts = measure.Tell("body {}, ease {}, left over for darts {}", body, ease, spare)
	case ease != 0:
		parts = measure.Tell("body {}, ease {}", body, ease)
	}
	f.Says = measure.Tell("{} and {}: {}.", got, want, parts)
	if f.Verdict != pattern.Pass {
		f.Says = measure.Tell("{} and {}: drawn {} {} than {}.", got, want, abs(got-want), wider(got-want), parts)
		f.Input = string(easeID)
		f.Cure = measure.Tell("Move the side of each quarter {} by {}.", outIn(want-got), abs(got-want)/4)
	}
	return f
}

func wider(d measure.Length) string {
	if d < 0 {
		return "narrower"
	}
	return "wider"
}

// spareOf is what the side could not take in of a quarter at the waist.
func spareOf(s *pattern.Sheet, id pattern.PieceID) measure.Length {
	d, _ := s.Dimension(id, "waist_spare")
	return max(0, d.Length)
}

// waistDarts is what darts and a shaped centre back take up at the waist on
// half of the dress.
func waistDarts(s *pattern.Sheet) measure.Length {
	front, _ := s.Dimension(pattern.Front, "waist_darts")
	back, _ := s.Dimension(pattern.Back, "waist_darts")
	return front.Length + back.Length
}

// hangsLoose says that the garment is not meant to follow the waist.
func hangsLoose(s *pattern.Sheet) bool {
	return s.Garment == pattern.Shift || s.Garment == pattern.Tunic
}

func waistSpare(s *pattern.Sheet, round pattern.Finding, spare, whole measure.Length) pattern.Finding {
	f := advice("waist_spare", spare, spareMost)
	f.Where, f.Input = round.Where, "side_waist_limit"
	f.Says = measure.Tell("{} and {}: hangs {} too wide at the waist.", measure.Length(round.Got), measure.Length(round.Got)-whole, whole)
	f.Cure = measure.Tell("Pin two darts at the waist when she tries it on, front and back.")
	if uses(s.Known, "waist_shaping") && s.Pick("waist_shaping") == "none" {
		darts := pattern.PickValue("fisheye")
		f.Cure = measure.Tell("Take it in with waist darts, front and back.")
		f.Input, f.Try = "waist_shaping", &darts
	}
	limit := s.Length("side_waist_limit")
	const most = 1.5 * inch // a side taken in more dives and drags (common practice)
	if to := (limit + spare - spareMost).Up(step(s)); uses(s.Known, "side_waist_limit") && to <= most+slack {
		f.Input = "side_waist_limit"
		f.Cure = measure.Tell("Take the side in more: {}. Or take waist darts.", change(s.Known, "side_waist_limit", to))
		f.Try = try(s.Known, "side_waist_limit", to)
	}
	return f
}

func waistOut(s *pattern.Sheet) (pattern.Finding, bool) {
	for _, id := range []pattern.PieceID{pattern.Front, pattern.Back} {
		w, u := at(s, id, "waist"), at(s, id, "underarm")
		h, hipDrawn := s.Point(id, "hip")
		limit, name := u, "underarm"
		if hipDrawn && h.X < u.X {
			limit, name = h, "hip"
		}
		if w.X <= limit.X+slack {
			continue
		}
		f := advice("waist_out", sideOut(s, id, "waist"), sideOut(s, id, name))
		f.Where, f.Input = on(id, w), string(measure.HipGirth)
		f.Says = measure.Tell("{} and {}: the waist stands outside the "+name+", and the side runs straight or outwards.", measure.Length(f.Got), measure.Length(f.Want))
		f.Cure = measure.Tell("Measure the hip round the belly, where she is widest; the girth at the hip line may be the waist's.")
		return f, true
	}
	return pattern.Finding{}, false
}

// highHipFinding looks half way between waist and hip, where a high hip
// pulls. It is judged on the drawn side and where she measured it.
func highHipFinding(s *pattern.Sheet) (pattern.Finding, bool) {
	top, ok := s.Measured(measure.TopHipGirth)
	if !ok || byThumb(s) || !hasPoints(s, pattern.Front, "waist", "hip") || !hasPoints(s, pattern.Back, "waist", "hip") {
		return pattern.Finding{}, false
	}
	var round measure.Length
	for _, id := range []pattern.PieceID{pattern.Front, pattern.Back} {
		p, drawn := s.Piece(id)
		if !drawn {
			return pattern.Finding{}, false
		}
		round += 2 * outAtLevel(p, (at(s, id, "waist").Y+at(s, id, "hip").Y)/2)
	}
	want := top + highHip
	if round >= want-slack {
		return pattern.Finding{}, false
	}
	f := advice("high_hip", round, want)
	h := at(s, pattern.Front, "waist").Lerp(at(s, pattern.Front, "hip"), 0.5)
	f.Where, f.Input = on(pattern.Front, h), string(measure.TopHipGirth)
	f.Says = measure.Tell("{} and {}: tight over the high hip by {}.", round, want, want-round)
	f.Cure = measure.Tell("Let the side out there by {} on each quarter, and keep waist darts short.", ((want - round) / 4).Up(inch/16))
	return f, true
}

// outAtLevel is how far the drawn side lies out at a level.
func outAtLevel(p *pattern.Piece, y float64) measure.Length {
	out := 0.0
	for i := range p.Edges {
		if p.Edges[i].Name != "side" {
			continue
		}
		for _, q := range p.Edges[i].Stitch.AtLevel(y) {
			out = math.Max(out, q.X)
		}
	}
	return measure.Length(out)
}
