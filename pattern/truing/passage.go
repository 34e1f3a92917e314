package truing

import (
	"chalkfold/measure"
	"chalkfold/pattern"
)

// zipOf is the length of the opening from the back neck down; zero where the
// garment has none. A zip bought longer than its opening is shortened.
func zipOf(s *pattern.Sheet) measure.Length {
	if c := s.Pick("closure"); c != "" && c != "zip_back" {
		return 0
	}
	end, ok := s.Point(pattern.Back, "zip_end")
	if neck, ok2 := s.SewnPoint(pattern.Back, "neck_centre"); ok && ok2 {
		return measure.Length(max(0, end.Y-neck.Y))
	}
	return s.Length("zip_length")
}

// otherClosure says that the dress has no zip behind.
func otherClosure(s *pattern.Sheet) bool {
	c := s.Pick("closure")
	return !byThumb(s) && c != "" && c != "zip_back"
}

// zipBehind is the cure of a dress that she cannot get into.
func zipBehind(f *pattern.Finding) {
	v := pattern.PickValue("zip_back")
	f.Input, f.Try = "closure", &v
	f.Cure = measure.Tell("Close it with a zip behind.")
}

// placket is the opening that a neck wants to pass a head, before the inch
// that cloth needs. Published example: head 22 and neck 20 ask for 1.
func placket(head, ring measure.Length) measure.Length { return max(0, (head-ring)/2) }

// headPassage: a woven neck must open to her head and an inch.
var headPassage = Check{
	ID: "head_passage", Title: "Head passage",
	Applies: all(bothEdges("neck"), func(s *pattern.Sheet) (bool, measure.Sentence) {
		if _, _, ok := headOf(s); !ok {
			return false, measure.Tell("The " + term(measure.HeadGirth) + " is not measured.")
		}
		return true, measure.Sentence{}
	}),
	Run: func(s *pattern.Sheet) []pattern.Finding {
		head, proposed, _ := headOf(s)
		ring, zip := neckRing(s)+2*neckOpening(s), zipOf(s)
		opening, open := "zip", pattern.ChoiceID("zip_length")
		if hasPlacket(s) {
			opening, open, zip = "placket", "placket_length", placketOpen(s)
		}
		f := pattern.Finding{Verdict: pattern.Pass, Got: (ring + 2*zip).MM(), Want: (head + headOver).MM()}
		f.Where = on(pattern.Back, piece(s, pattern.Back).Edges[0].Stitch.Start())
		who := "head"
		if proposed {
			who = "head (proposed)"
		}
		switch {
		case ring >= head+headOver-slack:
			f.Says = measure.Tell("Neck {}, "+who+" {}: it goes over her head.", ring, head)
		case ring+2*zip >= head+headOver-slack:
			f.Says = measure.Tell("Neck {}, "+who+" {}: the "+opening+", open {}, lets her through.", ring, head, zip)
		default:
			to := (s.Length(open) + placket(head, ring) + headOver - zip).Up(4 * step(s))
			f.Code, f.Verdict, f.Input = "head_passage", pattern.Fail, string(open)
			f.Says = measure.Tell("Neck {}, "+who+" {}: an opening of {} does not let her head through.", ring, head, zip)
			f.Cure = measure.Tell("Open it more: {}.", change(s.Known, open, to))
			f.Try = try(s.Known, open, to)
			if otherClosure(s) && !hasPlacket(s) {
				f.Says = measure.Tell("Neck {}, "+who+" {}: her head does not go through.", ring, head)
				zipBehind(&f)
			}
		}
		return one(f)
	},
}

// headOf is her head girth, or the one that is proposed for her.
func headOf(s *pattern.Sheet) (head measure.Length, proposed, ok bool) {
	if l, ok := s.Measured(measure.HeadGirth); ok {
		return l, false, true
	}
	if f, ok := s.Figure(measure.HeadGirth); ok {
		return f.Value, f.Proposed, true
	}
	p, ok := measure.Propose(s.Job.Body, measure.HeadGirth)
	return p.Value, true, ok
}

// bodyPassage: over raised arms the waist must pass the bust; else the zip
// must end low enough to step in.
var bodyPassage = Check{
	ID: "body_passage", Title: "Body passage",
	Applies: all(both("waist", "hip", "underarm", "neck_centre"), func(s *pattern.Sheet) (bool, measure.Sentence) {
		if !s.Has(measure.BustGirth) {
			return false, measure.Tell("The " + term(measure.BustGirth) + " is not measured.")
		}
		return true, measure.Sentence{}
	}),
	Run: func(s *pattern.Sheet) []pattern.Finding {
		waist, bust, zip := roundAt(s, "waist")-2*waistDarts(s), s.Body(measure.BustGirth), zipOf(s)
		hip := at(s, pattern.Back, "hip")
		neck, _ := s.SewnPoint(pattern.Back, "neck_centre")
		end := neck
		end.Y += zip.MM()
		above := measure.Length(hip.Y - end.Y)
		f := pattern.Finding{Verdict: pattern.Pass, Got: waist.MM(), Want: (bust + bodyOver).MM(), Where: on(pattern.Back, end)}
		switch {
		case waist >= bust+bodyOver-slack:
			f.Says = measure.Tell("Waist {}, bust {}: it goes over her arms and bust.", waist, bust)
		case s.Pick("closure") == "zip_side":
			f.Says = measure.Tell("Waist {}, bust {}: the zip in the side opens it over bust and hips.", waist, bust)
		case hasPlacket(s) && placketAbove(s) <= zipAbove+slack:
			f.Got, f.Want = placketAbove(s).MM(), zipAbove.MM()
			f.Where = on(pattern.Front, at(s, pattern.Front, "placket_end"))
			f.Says = measure.Tell("Waist {}, bust {}: the placket opens it to {} above the hip line.", waist, bust, placketAbove(s))
		case hasPlacket(s):
			to := (s.Length("placket_length") + placketAbove(s) - 1.5*inch).Up(step(s))
			f.Code, f.Verdict, f.Input = "body_passage", pattern.Fail, "placket_length"
			f.Where = on(pattern.Front, at(s, pattern.Front, "placket_end"))
			f.Says = measure.Tell("Waist {}, bust {}: too narrow to pull on, and the placket ends {} above the hip line.", waist, bust, placketAbove(s))
			f.Cure = measure.Tell("A longer placket: {}.", change(s.Known, "placket_length", to))
			f.Try = try(s.Known, "placket_length", to)
		case zip > 0 && above <= zipAbove+slack:
			f.Got, f.Want = above.MM(), zipAbove.MM()
			f.Says = measure.Tell("Waist {}, bust {}: the zip opens it to {} above the hip line.", waist, bust, above)
			if above <= slack {
				f.Says = measure.Tell("Waist {}, bust {}: the zip opens it down to the hip line.", waist, bust)
			}
		default:
			to := (s.Length("zip_length") + above - zipAbove).Up(4 * step(s))
			f.Code, f.Verdict, f.Input = "body_passage", pattern.Fail, "zip_length"
			if end.Y > at(s, pattern.Back, "waist").Y+slack {
				f.Verdict = pattern.Advise
			}
			f.Says = measure.Tell("Waist {}, bust {}: too narrow to pull on, and the zip ends {} above the hip line.", waist, bust, above)
			f.Cure = measure.Tell("A longer zip: {}.", change(s.Known, "zip_length", to))
			f.Try = try(s.Known, "zip_length", to)
			if otherClosure(s) {
				f.Verdict = pattern.Fail
				f.Says = measure.Tell("Waist {}, bust {}: too narrow to pull on, and nothing opens it.", waist, bust)
				zipBehind(&f)
			}
		}
		return one(f)
	},
}
