package fitting

import (
	"math"
	"strconv"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
)

// Change is one input, a measurement or a choice, as it was and as it is to be.
type Change struct {
	Input string
	Title string
	Old   pattern.Value
	New   pattern.Value
	Usual bool // the old value was not hers: a default, or a proposal
}

// Says is "Shoulder drop 1 1/2 -> 1 5/8".
func (c Change) Says() measure.Sentence {
	if c.New.Kind == pattern.KindLength {
		return measure.Tell(c.Title+" {} -> {}", c.Old.Length, c.New.Length)
	}
	return measure.Tell(c.Title + " " + words(c.Input, c.Old) + " -> " + words(c.Input, c.New))
}

// IsBody says whether an input is a measurement; else it is a choice.
func IsBody(input string) bool {
	_, ok := measure.Find(measure.ID(input))
	return ok
}

// Title is what an input is called.
func Title(garment, input string) string {
	if m, ok := measure.Find(measure.ID(input)); ok {
		return capital(m.Term)
	}
	if c, ok := workroom.FindChoice(garment, pattern.ChoiceID(input)); ok {
		return c.Title
	}
	return capital(strings.ReplaceAll(input, "_", " "))
}

func capital(s string) string {
	if s == "" {
		return s
	}
	return strings.ToUpper(s[:1]) + s[1:]
}

// words is a value that is no length, as it is called.
func words(input string, v pattern.Value) string {
	switch v.Kind {
	case pattern.KindPick:
		for _, g := range workroom.Garments() {
			c, _ := workroom.FindChoice(g.ID, pattern.ChoiceID(input))
			for _, o := range c.Options {
				if o.Value == v.Pick && o.Title != "" {
					return strings.ToLower(o.Title)
				}
			}
		}
		return strings.ReplaceAll(v.Pick, "_", " ")
	case pattern.KindSwitch:
		if v.On {
			return "on"
		}
		return "off"
	case pattern.KindPercent:
		return number(v.Number) + " %"
	}
	return number(v.Number)
}

func number(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }

// present is the value of an input as the draft uses it. It is unknown where
// nothing gives it, or where the method has no such choice.
func present(s *pattern.Sheet, input string) (pattern.Value, bool) {
	if IsBody(input) {
		f, ok := s.Figure(measure.ID(input))
		if !ok {
			l, taken := s.Job.Body.Get(measure.ID(input))
			return pattern.LengthValue(l), taken
		}
		return pattern.LengthValue(f.Value), ok
	}
	set, ok := s.Setting(pattern.ChoiceID(input))
	return set.Value, ok && set.Used && set.Known()
}

// put sets an input of a job.
func put(job pattern.Job, input string, v pattern.Value) pattern.Job {
	if IsBody(input) {
		return job.WithBody(measure.ID(input), v.Length)
	}
	return job.WithStyle(pattern.ChoiceID(input), v)
}

// own says that an input is hers: measured or chosen, not what the draft takes
// by itself.
func own(job pattern.Job, input string) bool {
	if IsBody(input) {
		return job.Body.Has(measure.ID(input))
	}
	_, chosen := job.Style.Get(pattern.ChoiceID(input))
	return chosen
}

// forget gives an input back to what the draft takes by itself.
func forget(job pattern.Job, input string) pattern.Job {
	if IsBody(input) {
		return job.WithoutBody(measure.ID(input))
	}
	return job.WithoutStyle(pattern.ChoiceID(input))
}

// hair is the difference that no tape shows.
const hair = 1e-4 * measure.Millimetre

func near(a, b measure.Length) bool { return math.Abs(float64(a-b)) < float64(hair) }

// same says that two values are one for all that a tape can tell.
func same(a, b pattern.Value) bool {
	if a.Kind == pattern.KindLength && b.Kind == pattern.KindLength {
		return near(a.Length, b.Length)
	}
	return a == b
}
