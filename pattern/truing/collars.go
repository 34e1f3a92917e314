package truing

import (
	"chalkfold/measure"
	"chalkfold/pattern"
)

const (
	// collarOff is how far the neck edge of a collar may lie off the neck it
	// is sewn to (common practice).
	collarOff = inch / 8
	// standsOff: round a neck so much larger than her own a standing collar
	// no longer stands (ours).
	standsOff = 3 * inch
)

func hasCollar(s *pattern.Sheet) bool {
	k := s.Pick("collar")
	return !byThumb(s) && k != "" && k != "none"
}

func hasPlacket(s *pattern.Sheet) bool { return !byThumb(s) && s.Pick("closure") == "placket" }

// placketOpen is how far a placket is open, from the front neck down; zero
// where the garment has none.
func placketOpen(s *pattern.Sheet) measure.Length {
	end, ok := s.Point(pattern.Front, "placket_end")
	neck, ok2 := s.Point(pattern.Front, "neck_centre")
	if !ok || !ok2 {
		return 0
	}
	return measure.Length(max(0, end.Y-neck.Y))
}

// placketAbove is how far above the hip line of the front a placket ends.
func placketAbove(s *pattern.Sheet) measure.Length {
	return measure.Length(at(s, pattern.Front, "hip").Y - at(s, pattern.Front, "placket_end").Y)
}

// collarNeck holds the collar against the ring of the neck.
var collarNeck = Check{
	ID: "collar_neck", Title: "Collar onto neck", Wanted: hasCollar,
	Applies: all(bothEdges("neck"), func(s *pattern.Sheet) (bool, measure.Sentence) {
		if _, ok := s.Piece(pattern.Collar); !ok {
			return false, measure.Tell("The collar is not cut from the draft yet.")
		}
		return true, measure.Sentence{}
	}),
	Run: func(s *pattern.Sheet) []pattern.Finding {
		want := neckRing(s) / 2
		var out []pattern.Finding
		for _, id := range []pattern.PieceID{pattern.Collar, pattern.UnderCollar} {
			p, ok := s.Piece(id)
			if !ok {
				continue
			}
			got := along(p, "front_neck") + along(p, "back_neck")
			f := within(collarOff).compare("collar_neck", got, want)
			f.Where = on(id, middleOf(p, "back_neck"))
			f.Says = measure.Tell("{} and {}, collar and half the neck.", got, want)
			if f.Verdict != pattern.Pass {
				f.Says = measure.Tell("{} and {}: "+p.Title+" is {} {} than half the neck.", got, want, abs(got-want), longer(got-want))
				f.Cure = measure.Tell("Draw its neck edge anew from the finished neck.")
				f.Input = "collar"
			}
			if id == pattern.Collar || f.Verdict != pattern.Pass {
				out = append(out, f)
			}
		}
		if f, off := collarStandsOff(s); off {
			out = append(out, f)
		}
		return out
	},
}

// collarStandsOff: a stand wants a neck that lies close.
func collarStandsOff(s *pattern.Sheet) (pattern.Finding, bool) {
	base, ok := bodyOf(s, measure.NeckBaseGirth)
	ring := neckRing(s)
	if s.Pick("collar") == "flat" || !ok || ring <= base+standsOff+slack {
		return pattern.Finding{}, false
	}
	f := advice("collar_stands_off", ring, base+standsOff)
	f.Where, f.Input = on(pattern.Front, at(s, pattern.Front, "neck_centre")), "front_neck_depth"
	f.Says = measure.Tell("{} and {}: round so wide a neck the collar stands away from her.", ring, base+standsOff)
	f.Cure = measure.Tell("A closer neck, or a flat collar.")
	if set, known := s.Setting("front_neck_depth"); known && set.Chosen && set.Default.Value.Length > 0 && set.Default.Value.Length < set.Value.Length {
		f.Cure = measure.Tell("Draw it higher: {}.", change(s.Known, "front_neck_depth", set.Default.Value.Length))
	}
	return f, true
}

// placketFit: the bands are as long as the opening, and a button holds it
// where it would gape.
var placketFit = Check{
	ID: "placket_fit", Title: "Placket fits", Wanted: hasPlacket,
	Applies: func(s *pattern.Sheet) (bool, measure.Sentence) {
		for _, id := range []pattern.PieceID{pattern.Front, pattern.Placket} {
			if p, ok := s.Piece(id); !ok || !hasEdge(p, "placket") {
				return false, measure.Tell("The placket is not cut from the draft yet.")
			}
		}
		return true, measure.Sentence{}
	},
	Run: func(s *pattern.Sheet) []pattern.Finding {
		band := piece(s, pattern.Placket)
		got, want := along(band, "placket"), along(piece(s, pattern.Front), "placket")
		f := limits{-pairPass, pairPass, -pairAdvise, pairAdvise}.compare("placket_fit", got, want)
		f.Where = on(pattern.Placket, middleOf(band, "placket"))
		f.Says = measure.Tell("{} and {}, band and opening.", got, want)
		if f.Verdict != pattern.Pass {
			f.Says = measure.Tell("{} and {}: the band is {} {} than the opening it is sewn to.", got, want, abs(got-want), longer(got-want))
			f.Cure, f.Input = measure.Tell("Cut the band as long as the opening."), "placket_length"
		}
		out := one(f)
		if g, off := buttonAtBust(s, band); off {
			out = append(out, g)
		}
		return out
	},
}

// buttonNear is how near a button must be to the bust line.
const buttonNear = inch / 2

// buttonAtBust: where no button lies at the bust line the placket gapes.
func buttonAtBust(s *pattern.Sheet, band *pattern.Piece) (pattern.Finding, bool) {
	bust, ok := s.Point(pattern.Front, "bust_point")
	end, ok2 := s.Point(pattern.Front, "placket_end")
	if !ok || !ok2 || end.Y < bust.Y+float64(inch) || len(band.Holes) == 0 {
		return pattern.Finding{}, false
	}
	least, where := measure.Length(1e9), band.Holes[0]
	for _, h := range band.Holes {
		if d := abs(measure.Length(h.Y - bust.Y)); d < least {
			least, where = d, h
		}
	}
	if least <= buttonNear+slack {
		return pattern.Finding{}, false
	}
	f := advice("placket_gapes", measure.Length(where.Y), measure.Length(bust.Y))
	f.Where, f.Input = on(pattern.Placket, where), "placket_length"
	f.Says = measure.Tell("{} and {}: no button lies at the bust line, where the placket gapes.", measure.Length(where.Y), measure.Length(bust.Y))
	f.Cure = measure.Tell("Set a button at the bust line and space the others from it.")
	return f, true
}
