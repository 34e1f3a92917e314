package desk

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
)

// sheets keeps the last few drafts, since old and new are often looked at
// together: the present one, the one before, the one as saved.
type sheets struct {
	kept    []drafted
	now     *pattern.Sheet // of the present job
	version int
}

type drafted struct {
	job   pattern.Job
	sheet *pattern.Sheet
}

// few is how many drafts are kept.
const few = 4

// Sheet is the present job drafted. A draft takes less than a frame's time, so
// it is made where it is needed and kept until the job changes.
func (d *Desk) Sheet() *pattern.Sheet {
	if d.sheets.now == nil || d.sheets.version != d.version {
		d.sheets.now, d.sheets.version = d.SheetOf(d.Drafted()), d.version
	}
	return d.sheets.now
}

// SheetOf is any job drafted: the one before, a cure tried.
func (d *Desk) SheetOf(job pattern.Job) *pattern.Sheet {
	k := d.sheets.kept
	for i := len(k) - 1; i >= 0; i-- {
		if same(k[i].job, job) {
			return k[i].sheet
		}
	}
	s := workroom.Draft(job)
	if len(k) >= few {
		k = append(k[:0], k[1:]...)
	}
	d.sheets.kept = append(k, drafted{job, s})
	return s
}

// Needs are the measurements that the draft reads, in taking order.
func (d *Desk) Needs() []measure.ID {
	return workroom.NeedsOf(d.job.Style)
}

// Choices are the style choices of the garment.
func (d *Desk) Choices() []pattern.Choice { return workroom.Choices(d.job.Style.Garment()) }
