package workroom

import (
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
)

// toileAllowance is left all round a toile, to pin, to let out and to move
// seams (common practice, no source).
const toileAllowance = measure.Inch

// Toile drafts a job as its trial in cheap cloth: the same stitching lines and
// marks, an inch of allowance wherever an allowance is chosen, and no facings,
// linings or strips, which the trial goes without. By thumb the allowances are part of
// the figure and stay as they are. The job itself stays as it is.
func Toile(job pattern.Job) *pattern.Sheet {
	says := "no facings"
	if job.Style.Method() != pattern.Thumb {
		job, says = wide(job), "an inch of allowance all round, no facings"
	}
	s := Draft(job)
	var kept []pattern.Piece
	for _, p := range s.Pieces {
		if id := string(p.ID); strings.HasSuffix(id, "facing") || strings.HasSuffix(id, "strip") || strings.HasSuffix(id, "_lining") {
			continue
		}
		p.Also = nil
		kept = append(kept, p)
	}
	for i := range kept {
		kept[i].Number, kept[i].Of = i+1, len(kept)
	}
	s.Pieces = kept
	s.Notes = append(s.Notes, measure.Tell("A toile, to be fitted: {}. Long stitches; leave the last of each dart open at its tip, pin where the zip will be, draw the balance lines on the cloth.", says))
	return s
}

// wide is the job with an inch wherever an allowance is chosen.
func wide(job pattern.Job) pattern.Job {
	for _, c := range Choices(job.Style.Garment()) {
		if c.Kind == pattern.KindLength && strings.HasSuffix(string(c.ID), "_allowance") {
			job.Style = job.Style.With(c.ID, pattern.LengthValue(toileAllowance))
		}
	}
	return job
}
