package fitting

import (
	"strconv"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
)

// arrow parts the old from the new value of a change as it is written down; an
// old value that was not hers has the word usual before it.
const (
	arrow = " -> "
	usual = "usual "
)

// Written is a change as the session keeps it: "1 1/2 in -> 1 5/8 in". Lengths
// carry their unit, so that they still say the same when that of the session
// is changed.
func (c Change) Written(u measure.Unit) pattern.Change {
	by := written(c.Old, u) + arrow + written(c.New, u)
	if c.Usual {
		by = usual + by
	}
	return pattern.Change{Input: c.Input, By: by}
}

func written(v pattern.Value, u measure.Unit) string {
	switch v.Kind {
	case pattern.KindLength:
		return u.Exact(v.Length) + " " + u.String()
	case pattern.KindPick:
		return v.Pick
	case pattern.KindSwitch:
		return strconv.FormatBool(v.On)
	}
	return number(v.Number)
}

// read reads a change of a session back; false where it was written by hand in
// another way, which is kept and shown but cannot be taken back.
func read(garment string, c pattern.Change, u measure.Unit) (Change, bool) {
	out := Change{Input: c.Input, Title: Title(garment, c.Input)}
	was, is, both := strings.Cut(c.By, strings.TrimSpace(arrow))
	kind, ok := kindOf(garment, c.Input)
	if !both || !ok {
		return out, false
	}
	var okOld, okNew bool
	was, out.Usual = strings.CutPrefix(was, usual)
	out.Old, okOld = readValue(kind, strings.TrimSpace(was), u)
	out.New, okNew = readValue(kind, strings.TrimSpace(is), u)
	return out, okOld && okNew
}

func kindOf(garment, input string) (pattern.Kind, bool) {
	if IsBody(input) {
		return pattern.KindLength, true
	}
	c, ok := workroom.FindChoice(garment, pattern.ChoiceID(input))
	return c.Kind, ok
}

func readValue(kind pattern.Kind, text string, u measure.Unit) (pattern.Value, bool) {
	switch kind {
	case pattern.KindLength:
		r, err := measure.ReadAll(text, u)
		return pattern.LengthValue(r.Length), err == nil
	case pattern.KindPick:
		return pattern.PickValue(text), text != ""
	case pattern.KindSwitch:
		on, err := strconv.ParseBool(text)
		return pattern.SwitchValue(on), err == nil
	}
	n, err := strconv.ParseFloat(text, 64)
	return pattern.NumberValue(kind, n), err == nil && n >= 0 && n <= 1000
}

// Keep writes a proposal into its job's log. The date may be zero.
func (p Proposal) Keep(date pattern.Date) pattern.Job {
	f := pattern.Fitting{Date: date, Seen: p.Seen, Why: p.Title + ". " + p.Why}
	for _, c := range p.Changes {
		f.Change = append(f.Change, c.Written(p.Job.Unit))
	}
	return logged(p.Job, f)
}

// logged adds to a copy of the log: jobs share nothing that changes.
func logged(job pattern.Job, f pattern.Fitting) pattern.Job {
	job.Fittings = append(append([]pattern.Fitting{}, job.Fittings...), f)
	return job
}
