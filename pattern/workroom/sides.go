package workroom

import (
	"slices"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/garment"
	"chalkfold/pattern/truing"
)

// bothSides drafts her left side apart where it differs, trues it, holds the
// two against each other at the centre, and puts both into the sheet.
func bothSides(s *pattern.Sheet, g garment.Garment, m garment.Method) {
	job, used, kept := garment.LeftJob(s)
	if kept > 0 {
		s.Notes = append(s.Notes, measure.Tell("Her left side has "+counted(kept, "measurement")+" more of its own. Girths, widths and the lengths at the centre are the right's; the left is kept."))
	}
	if used == 0 {
		return
	}
	left := drawn(job, g, m, s.Method)
	left.MeasuredDepth = s.MeasuredDepth
	s.Notes = append(s.Notes, measure.Tell("Her left side differs in "+counted(used, "measurement")+". Right and left are drafted apart, and their pieces are cut single."))
	s.Findings = append(s.Findings, leftFindings(truing.Run(left), s.Findings)...)
	s.Findings = append(s.Findings, truing.Sides(s, left))
	garment.Join(s, left)
}

// leftFindings are the findings of the left side that are not the right's as
// well, said as such and placed on its pieces.
func leftFindings(all, right []pattern.Finding) []pattern.Finding {
	var out []pattern.Finding
	for _, f := range all {
		known := slices.ContainsFunc(right, func(r pattern.Finding) bool {
			return r.Check == f.Check && r.Code == f.Code && r.Verdict == f.Verdict && r.Says.In(measure.Mm) == f.Says.In(measure.Mm)
		})
		if known {
			continue
		}
		f.Title += ", left side"
		f.Where.At.X = -f.Where.At.X
		switch f.Where.Piece {
		case pattern.Front:
			// the whole front holds both halves
		case pattern.Back:
			f.Where.Piece = pattern.BackLeft
		}
		out = append(out, f)
	}
	return out
}
