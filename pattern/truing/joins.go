package truing

import (
	"chalkfold/measure"
	"chalkfold/pattern"
)

// The joins: two pieces laid together at their seam must give one smooth
// line, so the corners on both sides of the seam make a straight angle.
var (
	neckJoin = join("neck_join", "Neck join", "neck", "shoulder", joinPass, joinAdvise,
		"neck", "neck_widening", "Lay the shoulders together and draw the neck through without peak or dip.")
	armholeJoin = join("armhole_join", "Armhole join", "shoulder", "armhole", joinPass, joinAdvise,
		"armhole", "shoulder_forward", "Lay the shoulders together and draw the armhole through without a jog.")
	underarmJoin = join("underarm_join", "Underarm join", "armhole", "side", underarmPass, underarmAdvise,
		"underarm", "side_waist_limit", "Lay the side seams together and round the armhole by a chalk line over the seam.")
	hemJoin = join("hem_join", "Hem join", "side", "hem", hemPass, hemAdvise,
		"hem", "hem_peg", "")
)

func join(id, title, a, b string, pass, advise float64, line string, input pattern.ChoiceID, cure string) Check {
	return Check{
		ID: id, Title: title, Applies: bothEdges(a, b),
		Run: func(s *pattern.Sheet) []pattern.Finding {
			front, where, ok := corner(piece(s, pattern.Front), a, b, figure)
			back, _, ok2 := corner(piece(s, pattern.Back), a, b, figure)
			if !ok || !ok2 {
				return one(skip("", measure.Tell("The "+spaced(a)+" does not run into the "+spaced(b)+".")))
			}
			f := angle(id, front+back, 180, pass, advise)
			f.Where = on(pattern.Front, where)
			f.Says = measure.Tell("{} and {} degrees, front and back: the "+line+" runs on within {}.", tenth(front), tenth(back), tenth(off(f)))
			if f.Verdict == pattern.Pass {
				return append(append(one(f), sewnCorner(s, id, a, b, line, advise)...), foldUp(s, id)...)
			}
			f.Says = measure.Tell("{} and {} degrees, front and back: the "+line+" has a corner of {} at the seam.", tenth(front), tenth(back), tenth(off(f)))
			f.Cure, f.Input = measure.Tell(cure), string(input)
			if id == "hem_join" {
				cureHem(s, &f)
			}
			return append(one(f), foldUp(s, id)...)
		},
	}
}

// foldUp looks at the turned hem where the hem is joined.
func foldUp(s *pattern.Sheet, id string) []pattern.Finding {
	if id != "hem_join" {
		return nil
	}
	return append(turnedHem(s), fullHem(s)...)
}

// sewnCorner is a note by thumb, where lines are drawn smooth on the cutting
// line: on the stitching line they may meet with a corner, which the hand
// draws through once the seam is sewn.
func sewnCorner(s *pattern.Sheet, id, a, b, line string, most float64) []pattern.Finding {
	front, where, ok := corner(piece(s, pattern.Front), a, b, sewn)
	back, _, ok2 := corner(piece(s, pattern.Back), a, b, sewn)
	off := front + back - 180
	if !byThumb(s) || !ok || !ok2 || max(off, -off) <= most {
		return nil
	}
	f := skip(id+"_sewn", measure.Tell("Smooth as cut; as sewn the "+line+" has a corner of {} degrees: draw it through when the seam is sewn.", tenth(max(off, -off))))
	f.In, f.Got, f.Want, f.Where = pattern.InDegrees, front+back, 180, on(pattern.Front, where)
	return one(f)
}

// cureHem takes the peg back: the corner is twice the slant of the side.
func cureHem(s *pattern.Sheet, f *pattern.Finding) {
	f.Cure = measure.Tell("Round the hem over the last {} at the side.", 2*inch)
	if peg := s.Length("hem_peg"); uses(s.Known, "hem_peg") && peg > 0 {
		to := measure.Length(peg.MM() * hemPass / (f.Got - 180)).Down(step(s))
		f.Cure, f.Try = measure.Tell("Peg it less: {}.", change(s.Known, "hem_peg", max(0, to))), try(s.Known, "hem_peg", max(0, to))
	}
}

// pointedNecks meet the fold at a point on purpose.
var pointedNecks = map[string]bool{"v": true, "sweetheart": true, "slit": true, "keyhole": true}

// centreSquare: half is drawn, so what is not square at the fold or at the
// centre seam opens into a point or a dip.
var centreSquare = Check{
	ID: "centre_square", Title: "Square at centre",
	Applies: bothEdges("hem"),
	Run: func(s *pattern.Sheet) []pattern.Finding {
		var worst pattern.Finding
		found := false
		for _, spot := range []struct {
			piece pattern.PieceID
			a, b  string
			neck  pattern.ChoiceID
		}{
			{pattern.Front, "fold", "neck", "front_neckline"},
			{pattern.Front, "hem", "fold", ""},
			{pattern.Back, "centre_back", "neck", "back_neckline"},
			{pattern.Back, "hem", "centre_back", ""},
		} {
			if spot.neck != "" && pointedNecks[s.Pick(spot.neck)] {
				continue
			}
			got, where, ok := corner(piece(s, spot.piece), spot.a, spot.b, sewn)
			if !ok {
				continue
			}
			f := angle("centre_square", got, 90, squarePass, squareAdvise)
			f.Where = on(spot.piece, where)
			line := spot.b
			if line == "fold" || line == "centre_back" {
				line = "hem"
			}
			f.Says = measure.Tell("{} and 90 degrees: "+string(spot.piece)+" "+line+" at the centre.", tenth(got))
			if f.Verdict != pattern.Pass {
				f.Cure = measure.Tell("Square the "+line+" of the "+string(spot.piece)+" to the centre for its first {}.", inch/2)
				f.Input = squareInput(spot.piece, line)
			}
			if !found || off(f) > off(worst) {
				worst, found = f, true
			}
		}
		if !found {
			return one(skip("", measure.Tell("No line is meant to be square to the centre.")))
		}
		return one(worst)
	},
}

func off(f pattern.Finding) float64 { return max(f.Got-f.Want, f.Want-f.Got) }

func squareInput(id pattern.PieceID, line string) string {
	if line == "hem" {
		return "hem_peg"
	}
	return string(id) + "_neck_depth"
}
