package fitting

import (
	"slices"

	"chalkfold/measure"
	"chalkfold/pattern"
)

// NewSet puts the present measurements among the earlier ones, newest first,
// and begins a new set of that date with the same figures, to be taken anew one
// by one. Alterations are kept: one of a measurement stands until that is taken
// again, then it is asked about.
func NewSet(job pattern.Job, date pattern.Date) (pattern.Job, error) {
	if job.Body.Len() == 0 {
		return job, &measure.Refusal{Read: "no measurements", Wrong: "there is no set to put away", Works: "take her measurements first"}
	}
	if len(job.Earlier) > 0 && job.Earlier[0].Body.Equal(job.Body) {
		return job, &measure.Refusal{Read: "the same figures as the set before", Wrong: "nothing was measured since a new set was begun", Works: "take one of her measurements, then begin the next set"}
	}
	job.Earlier = append([]pattern.Earlier{{Measured: job.Client.Measured, Body: job.Body}}, job.Earlier...)
	job.Client.Measured = date
	job.Confirmed = measure.Body{}
	return job, nil
}

// Month is one measurement over the months.
type Month struct {
	ID     measure.ID
	Title  string
	Now    measure.Length
	Taken  bool             // it is in the present set
	Before []measure.Length // of each earlier set, newest first; nothing where it was not taken
	Had    []bool
	Fitted measure.Length // what alterations that stand put on it
}

// By is what it changed since the newest earlier set that has it.
func (m Month) By() (by measure.Length, since int, ok bool) {
	for i, had := range m.Had {
		if had {
			return m.Now - m.Before[i], i, m.Taken
		}
	}
	return 0, 0, false
}

// Then is every measurement that is in the present set or an earlier one, in
// taking order.
func Then(job pattern.Job) []Month {
	fitted := map[string]measure.Length{}
	for _, e := range Log(job) {
		for _, c := range e.Changes {
			if c.State == Stands && IsBody(c.Input) {
				fitted[c.Input] += c.New.Length - c.Old.Length
			}
		}
	}
	var out []Month
	for _, m := range measure.All() {
		row := Month{ID: m.ID, Title: capital(m.Term), Fitted: fitted[string(m.ID)]}
		row.Now, row.Taken = job.Body.Get(m.ID)
		for _, e := range job.Earlier {
			l, had := e.Body.Get(m.ID)
			row.Before, row.Had = append(row.Before, l), append(row.Had, had)
		}
		if row.Taken || slices.Contains(row.Had, true) {
			out = append(out, row)
		}
	}
	return out
}

// Says is what a measurement did, as a sentence; empty where there is nothing
// to compare. names are the dates of the earlier sets as they are shown.
func (m Month) Says(names []string) measure.Sentence {
	by, i, ok := m.By()
	if !ok || i >= len(names) {
		return measure.Sentence{}
	}
	since := "since " + names[i]
	if near(by, 0) {
		return measure.Tell(m.Title+" {}, as "+since+".", m.Now)
	}
	way := "more"
	if by < 0 {
		way = "less"
	}
	if !near(m.Fitted, 0) {
		return measure.Tell(m.Title+" {} -> {}, {} "+way+" "+since+"; {} of it by alterations.", m.Before[i], m.Now, max(by, -by), m.Fitted)
	}
	return measure.Tell(m.Title+" {} -> {}, {} "+way+" "+since+".", m.Before[i], m.Now, max(by, -by))
}
