package rule

import (
	"chalkfold/measure"
	"chalkfold/pattern"
)

// Way is one way to get a quantity.
type Way struct {
	Name   string       // "drop plus 6"
	Source string       // where the way comes from
	Needs  []measure.ID // her own measurements
	Work   func(pattern.Known) measure.Working
}

// Chain lists the ways to get one quantity, best first.
type Chain []Way

// Pick takes the first way whose needs were measured, or the last of all if
// none was, and says which it is and what the others would have given.
func (c Chain) Pick(k pattern.Known) (measure.Working, measure.Sentence) {
	used := len(c) - 1
	for i, w := range c {
		if w.measured(k) {
			used = i
			break
		}
	}
	work := c[used].Work(k)
	words, args := "By the rule: {}, "+c[used].Source+".", []any{measure.Tell(c[used].Name)}
	for i, w := range c {
		if i != used && w.known(k) {
			words += " {} would give {}."
			args = append(args, measure.Tell(upper(w.Name)), w.Work(k).Result())
		}
	}
	return work, measure.Tell(words, args...)
}

func (w Way) measured(k pattern.Known) bool {
	for _, id := range w.Needs {
		if _, ok := k.Measured(id); !ok {
			return false
		}
	}
	return true
}

func (w Way) known(k pattern.Known) bool { return k.Has(w.Needs...) }

func upper(s string) string {
	if s == "" {
		return s
	}
	if s[0] >= 'a' && s[0] <= 'z' {
		return string(s[0]-32) + s[1:]
	}
	return s
}
