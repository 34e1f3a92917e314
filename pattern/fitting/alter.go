package fitting

import (
	"fmt"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
)

// entry is the n-th of the log, counted from 1.
func entry(job pattern.Job, n int) ([]Entry, *Entry, error) {
	all := Log(job)
	if n < 1 || n > len(all) {
		works := fmt.Sprintf("take one of 1 to %d", len(all))
		if len(all) == 0 {
			works = "the log is empty"
		}
		return nil, nil, &measure.Refusal{Read: fmt.Sprintf("alteration %d", n), Wrong: "there is no such alteration", Works: works}
	}
	return all, &all[n-1], nil
}

// Before is the job as it would be without the n-th alteration, the others
// kept: to compare. It is what Back gives, without the log.
func Before(job pattern.Job, n int) (pattern.Job, error) {
	back, err := Back(job, n)
	back.Fittings = job.Fittings
	return back, err
}

// Back takes the n-th alteration back: what still stands of it is undone, what
// was overtaken is left as it is. The entry stays in the log, so that it can be
// made again.
func Back(job pattern.Job, n int) (pattern.Job, error) {
	all, e, err := entry(job, n)
	switch {
	case err != nil:
		return job, err
	case e.State == TakenBack:
		return job, &measure.Refusal{Read: fmt.Sprintf("alteration %d", n), Wrong: "it was taken back already", Works: "it can be made again"}
	case e.State == Noted:
		return job, &measure.Refusal{Read: fmt.Sprintf("alteration %d", n), Wrong: "it was written by hand, and what the input was before is not known", Works: "change the input by hand"}
	}
	out := job
	out.Fittings = append([]pattern.Fitting{}, job.Fittings...)
	for _, c := range e.Changes {
		if c.State != Stands {
			continue
		}
		v, rests := c.Old, false
		if c.New.Kind == pattern.KindLength {
			v = c.Now
			v.Length -= c.New.Length - c.Old.Length
			if v.Length < 0 {
				v.Length = 0
			}
			rests = later(out.Fittings, all, n, c.Change, job.Unit)
		} else if !same(c.Now, c.New) {
			return job, &measure.Refusal{Read: c.Title, Wrong: "a later alteration rests on this one", Works: "take the later one back first"}
		}
		if c.Usual && !rests {
			out = forget(out, c.Input)
		} else {
			out = put(out, c.Input, v)
		}
	}
	out.Fittings[n-1].Out = true
	return out, nil
}

// later moves the later alterations of the same input along, so that each
// still begins where the one before it ended. It says whether there are any.
func later(log []pattern.Fitting, all []Entry, n int, gone Change, u measure.Unit) bool {
	found, by := false, gone.New.Length-gone.Old.Length
	for j := n; j < len(all); j++ {
		if all[j].Kept.Out {
			continue
		}
		change := append([]pattern.Change{}, log[j].Change...)
		for k, c := range all[j].Changes {
			if c.Input == gone.Input && c.State == Stands {
				moved := c.Change
				moved.Old.Length -= by
				moved.New.Length -= by
				moved.Usual = gone.Usual && !found
				found = true
				change[k] = moved.Written(u)
			}
		}
		log[j].Change = change
	}
	return found
}

// Again makes an alteration once more that was taken back or overtaken: by as
// much as before, on what the inputs are now. It goes to the end of the log
// with the date of today.
func Again(job pattern.Job, n int, date pattern.Date) (pattern.Job, error) {
	_, e, err := entry(job, n)
	switch {
	case err != nil:
		return job, err
	case e.State == Stands:
		return job, &measure.Refusal{Read: fmt.Sprintf("alteration %d", n), Wrong: "it stands already", Works: "one that was taken back or overtaken can be made again"}
	case e.State == Noted:
		return job, &measure.Refusal{Read: fmt.Sprintf("alteration %d", n), Wrong: "it was written by hand, and what the input was before is not known", Works: "change the input by hand"}
	}
	out := job
	f := e.Kept
	f.Out, f.Date, f.Change = false, date, nil
	for _, c := range e.Changes {
		if c.State == Noted || c.State == Stands {
			f.Change = append(f.Change, pattern.Change{Input: c.Input, By: c.By})
			continue
		}
		v, ok := c.again()
		if !ok {
			return job, &measure.Refusal{Read: c.Title, Wrong: "there is not so much left to change, or it is so already", Works: "change the input by hand"}
		}
		out = put(out, c.Input, v)
		f.Change = append(f.Change, Change{c.Input, c.Title, c.Now, v, !own(job, c.Input)}.Written(job.Unit))
	}
	out.Fittings = append(append([]pattern.Fitting{}, job.Fittings[:n-1]...), job.Fittings[n:]...)
	out = logged(out, f)
	if s := workroom.Draft(out); !s.Complete && len(s.Refused) > 0 && workroom.Draft(job).Complete {
		return job, &measure.Refusal{Read: fmt.Sprintf("alteration %d", n), Wrong: "with it the dress could not be drafted: " + s.Refused[0].Says.In(job.Unit), Works: s.Refused[0].Cure.In(job.Unit)}
	}
	return out, nil
}

// Settle leaves an overtaken alteration as it is: what was measured or chosen
// since holds. The entry counts as taken back from then on.
func Settle(job pattern.Job, n int) (pattern.Job, error) {
	_, e, err := entry(job, n)
	if err != nil {
		return job, err
	}
	if e.State != Overtaken {
		return job, &measure.Refusal{Read: fmt.Sprintf("alteration %d", n), Wrong: "nothing was measured or chosen anew since", Works: "there is nothing to settle"}
	}
	return Back(job, n)
}

// Asked lists the alterations that have to be asked about, by number.
func Asked(job pattern.Job) []Entry {
	var out []Entry
	for _, e := range Log(job) {
		if e.State == Overtaken {
			out = append(out, e)
		}
	}
	return out
}
