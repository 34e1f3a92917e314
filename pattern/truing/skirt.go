package truing

import (
	"chalkfold/measure"
	"chalkfold/pattern"
)

// skirtAlone says that the garment begins at the waist.
func skirtAlone(s *pattern.Sheet) bool { return s.Garment == pattern.Skirt }

// aboveWaist are the checks of what a skirt has not.
var aboveWaist = map[string]bool{
	"shoulder_seams": true, "dart_legs": true, "dart_aim": true, "dart_size": true, "neck_join": true, "armhole_join": true,
	"underarm_join": true, "facing_fit": true, "bust_girth": true, "armhole_girth": true, "neck_girth": true, "head_passage": true,
	"body_passage": true, "balance": true, "shoulder_left": true,
}

// sewnWaist is the waist of a skirt all round, its darts closed.
func sewnWaist(s *pattern.Sheet) measure.Length {
	front, _ := s.Dimension(pattern.Front, "waist")
	back, _ := s.Dimension(pattern.Back, "waist")
	return 2 * (front.Length + back.Length)
}

// waistLevel is the level from which a length to the floor is counted: of a
// skirt the waist at the centre.
func waistLevel(s *pattern.Sheet) float64 {
	if p, ok := s.Point(pattern.Back, "waist_centre"); ok {
		return p.Y
	}
	return at(s, pattern.Back, "waist").Y
}

// waistEdge: what finishes the waist of a skirt is as long as it, its darts
// close, and the zip lets her hips through.
var waistEdge = Check{
	ID: "waist_edge", Title: "Waist edge", Wanted: skirtAlone,
	Applies: bothEdges("waist"),
	Run: func(s *pattern.Sheet) []pattern.Finding {
		out := one(finishFinding(s))
		for _, id := range []pattern.PieceID{pattern.Front, pattern.Back} {
			out = append(out, waistDartFaults(piece(s, id))...)
		}
		if f, short := stepIn(s); short {
			out = append(out, f)
		}
		return out
	},
}

// finishFinding compares the facing, or the band, with the waist it is sewn
// to.
func finishFinding(s *pattern.Sheet) pattern.Finding {
	if band, ok := s.Piece(pattern.WaistBand); ok {
		got, want := along(band, "waist"), sewnWaist(s)+inch
		f := within(pairPass).compare("waist_edge", got, want)
		f.Where = on(band.ID, middleOf(band, "waist"))
		f.Says = measure.Tell("{} and {}, the band and the waist with {} to lap.", got, want, measure.Length(inch))
		if f.Verdict != pattern.Pass {
			f.Cure, f.Input = measure.Tell("Cut the band {} long.", want), "waist_finish"
		}
		return f
	}
	worst, first := skip("", measure.Tell("Nothing finishes the waist yet.")), true
	for _, pair := range []struct{ facing, half pattern.PieceID }{
		{pattern.FrontWaistFacing, pattern.Front}, {pattern.BackWaistFacing, pattern.Back},
	} {
		p, ok := s.Piece(pair.facing)
		if !ok {
			continue
		}
		got, want := along(p, "waist"), along(piece(s, pair.half), "waist")
		f := limits{facingShort, facingOver, 2 * facingShort, facingAdvise}.compare("waist_edge", got, want)
		f.Where = on(p.ID, middleOf(p, "waist"))
		f.Says = measure.Tell("{} and {}, "+p.Title+" and its waist, darts closed.", got, want)
		if f.Verdict != pattern.Pass {
			f.Says = measure.Tell("{} and {}: "+p.Title+" is {} {} than the waist it faces.", got, want, abs(got-want), longer(got-want))
			f.Cure, f.Input = measure.Tell("Trace it once more with the darts closed."), "waist_facing_width"
		}
		if first || off(f) > off(worst) {
			worst, first = f, false
		}
	}
	return worst
}

// stepIn: the zip of a skirt must end low enough for the hips.
func stepIn(s *pattern.Sheet) (pattern.Finding, bool) {
	name := "zip_end"
	if s.Pick("closure") == "zip_side" {
		name = "side_zip_end"
	}
	end, ok := s.Point(pattern.Back, name)
	if !ok {
		return pattern.Finding{}, false
	}
	above := measure.Length(at(s, pattern.Back, "hip").Y - end.Y)
	if above <= zipAbove+slack {
		return pattern.Finding{}, false
	}
	f := advice("step_in", above, zipAbove)
	f.Where, f.Input = on(pattern.Back, end), "zip_length"
	to := (s.Length("zip_length") + above - zipAbove).Up(step(s))
	f.Says = measure.Tell("{} and {}: the zip ends so far above the hip line that her hips do not go through.", above, measure.Length(zipAbove))
	f.Cure = measure.Tell("A longer zip: {}.", change(s.Known, "zip_length", to))
	f.Try = try(s.Known, "zip_length", to)
	return f, true
}
