package session

import (
	"fmt"
	"slices"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
)

// Template is the text of a session to fill in: every measurement of the
// garment as a commented line with what it is, those that the draft reads
// first. It is itself a session.
func Template(garment, method string, u measure.Unit) []byte {
	var b strings.Builder
	fmt.Fprintf(&b, "form = 1\nunit = %q\n\n[client]\nname = \"\"\n# measured = 2026-03-04\n\n", u)
	b.WriteString("[body]      # take the mark off a line and write her measure in the quotes\n")
	needs := workroom.Needs(garment, method)
	line := func(m measure.Measurement) {
		fmt.Fprintf(&b, "# %-*s  # %s\n", 31, string(m.ID)+` = ""`, m.Plain)
	}
	b.WriteString("# read by the draft:\n")
	for _, id := range needs {
		if m, ok := measure.Find(id); ok {
			line(m)
		}
	}
	more := choicesNeed(garment, method)
	if len(more) > 0 {
		b.WriteString("# some choices read more:\n")
		for _, c := range more {
			fmt.Fprintf(&b, "#   %s: %s\n", c.when, strings.Join(c.reads, ", "))
		}
		for _, m := range measure.All() {
			if slices.ContainsFunc(more, func(c choiceNeeds) bool { return slices.Contains(c.reads, string(m.ID)) }) {
				needs = append(needs, m.ID)
				line(m)
			}
		}
	}
	b.WriteString("# better with:\n")
	for _, m := range measure.All() {
		if !slices.Contains(needs, m.ID) && (slices.Contains(m.NeededFor, garment) || slices.Contains(m.UsefulFor, garment)) {
			line(m)
		}
	}
	fmt.Fprintf(&b, "\n[style]\ngarment = %q\nmethod = %q\n", garment, method)
	return []byte(b.String())
}

// choiceNeeds is what a choice reads beside what the plain garment does.
type choiceNeeds struct {
	when  string // sleeve = "short", "long"
	reads []string
}

// choicesNeed are the choices of a garment that read more of her tape, in the
// order of forms; options that read the same stand together.
func choicesNeed(garment, method string) []choiceNeeds {
	plain := pattern.Style{}.With("garment", pattern.PickValue(garment)).With(pattern.Method, pattern.PickValue(method))
	usual := workroom.NeedsOf(plain)
	var out []choiceNeeds
	for _, c := range workroom.Choices(garment) {
		if c.ID == "garment" || c.ID == pattern.Method {
			continue
		}
		values := map[string]pattern.Value{}
		var names []string
		add := func(name string, v pattern.Value) { values[name], names = v, append(names, name) }
		for _, o := range c.Options {
			add(fmt.Sprintf("%q", o.Value), pattern.PickValue(o.Value))
		}
		if c.Kind == pattern.KindSwitch {
			add("true", pattern.SwitchValue(true))
		}
		first := len(out)
		for _, name := range names {
			var reads []string
			for _, id := range workroom.NeedsOf(plain.With(c.ID, values[name])) {
				if !slices.Contains(usual, id) {
					reads = append(reads, string(id))
				}
			}
			switch at := slices.IndexFunc(out[first:], func(x choiceNeeds) bool { return slices.Equal(x.reads, reads) }); {
			case len(reads) == 0:
			case at >= 0:
				out[first+at].when += ", " + name
			default:
				out = append(out, choiceNeeds{string(c.ID) + " = " + name, reads})
			}
		}
	}
	return out
}

// InUnit is the job in another unit of writing. Changes noted at fittings
// have no unit of their own: they get the one they were written in.
func InUnit(job pattern.Job, u measure.Unit) pattern.Job {
	if u == job.Unit {
		return job
	}
	fittings := slices.Clone(job.Fittings)
	for i, f := range fittings {
		f.Change = slices.Clone(f.Change)
		for k, c := range f.Change {
			if r, err := measure.ReadAll(c.By, job.Unit); err == nil && !r.Stated && isLengthInput(c.Input) {
				f.Change[k].By = c.By + " " + job.Unit.String()
			}
		}
		fittings[i] = f
	}
	job.Fittings, job.Unit = fittings, u
	return job
}

// isLengthInput says whether an input of a fitting is a length, as most are.
func isLengthInput(input string) bool {
	for _, g := range workroom.Garments() {
		if c, ok := workroom.FindChoice(g.ID, pattern.ChoiceID(input)); ok {
			return c.Kind == pattern.KindLength
		}
	}
	return true
}
