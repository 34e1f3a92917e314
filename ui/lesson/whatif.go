package lesson

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
)

// WhatIfs lists what can be moved on a sheet, in the order in which Left and
// Right go through it: the measurements of the draft, then its lengths of
// choice.
func WhatIfs(sheet *pattern.Sheet) []string {
	var out []string
	for _, f := range sheet.Figures {
		out = append(out, string(f.ID))
	}
	for _, s := range sheet.Settings {
		if s.Used && s.Known() && s.Value.Kind == pattern.KindLength {
			out = append(out, string(s.ID))
		}
	}
	return out
}

// Nudge is one step of what if: Up and Down 1/4 in (0.5 cm), PgUp and PgDn 1 in
// (2 cm).
func Nudge(u measure.Unit, large bool) measure.Length {
	switch {
	case u == measure.In && large:
		return measure.Inch
	case u == measure.In:
		return measure.Inch / 4
	case large:
		return 2 * measure.Centimetre
	}
	return measure.Centimetre / 2
}

// WhatIf is the job with a measurement or a choice moved by delta, and the
// sentence of it: what it is called, before, and after. A length that cannot
// be stays, and the sentence says so. What moves on the cloth is the view's to
// say, from the two sheets.
func WhatIf(job pattern.Job, id string, delta measure.Length) (pattern.Job, measure.Sentence) {
	if m, ok := measure.Find(measure.ID(id)); ok {
		from, known := job.Body.Get(m.ID)
		if f, ok := workroom.Draft(job).Figure(m.ID); ok && !known {
			from, known = f.Value, true
		}
		if !known {
			return job, measure.Tell(m.Term + " is not known yet.")
		}
		if measure.Check(m.ID, from+delta) != nil {
			return job, measure.Tell(m.Term+" stays {say}.", from)
		}
		return job.WithBody(m.ID, from+delta), measure.Tell(m.Term+" {} -> {say}", from, from+delta)
	}
	c, ok := workroom.FindChoice(job.Style.Garment(), pattern.ChoiceID(id))
	if !ok || c.Kind != pattern.KindLength {
		return job, measure.Tell("There is nothing to move.")
	}
	set, ok := workroom.Draft(job).Setting(c.ID)
	if !ok || !set.Known() {
		return job, measure.Tell(c.Title + " is not known yet.")
	}
	from := set.Value.Length
	if from+delta < 0 && from >= 0 {
		return job, measure.Tell(c.Title+" stays {say}.", from)
	}
	return job.WithStyle(c.ID, pattern.LengthValue(from+delta)), measure.Tell(c.Title+" {} -> {say}", from, from+delta)
}
