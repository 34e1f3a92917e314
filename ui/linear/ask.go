package linear

import (
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/text"
)

// How near an answer must be: right, and nearly right. In centimetres the
// tape is finer.
func tolerance(u measure.Unit) (right, nearly measure.Length) {
	if u == measure.In {
		return measure.Inch / 16, measure.Inch / 4
	}
	return 2, 6
}

// askFirst puts a question before each step, or no more.
func (r *room) askFirst(string) {
	r.asking, r.asked = !r.asking, 0
	if r.asking {
		r.say(text.AskOnShort)
	} else {
		r.say(text.DraftAskOff)
	}
}

// answerDraft holds an answer against the result and against what people
// really do wrong; the first that fits is said.
func (r *room) answerDraft(line string) {
	if r.asked == 0 {
		r.say(text.LinearNumberOnly)
		return
	}
	u := r.d.Unit()
	l, err := measure.Read(line, u)
	if err != nil {
		r.warn(err)
		return
	}
	s := r.steps()[r.asked-1]
	want := s.Sum.Result()
	right, nearly := tolerance(u)
	near := func(a, b, within measure.Length) bool { return a-b <= within && b-a <= within }
	switch {
	case near(l, want, right):
		r.say(text.AskRight, u.Say(want)+".")
		r.step = r.asked
		r.tellStep()
		return
	case r.slipped(s, l, right):
	case u == measure.In && near(l/2.54, want, right):
		r.say(text.AskMetric)
	case u == measure.Cm && near(l*2.54, want, right):
		r.say(text.HearInches)
	case near(2*l, want, right):
		r.say(text.AskHalf)
	case near(l, 4*want, right):
		r.say(text.AskAround)
	case near(l, want, nearly):
		r.say(text.AskNearly, u.Say(l), u.Say(want))
		r.step = r.asked
		r.tellStep()
		return
	}
	r.hintDraft()
}

// slipped says which slip gives this answer.
func (r *room) slipped(s pattern.Step, l, within measure.Length) bool {
	for _, x := range s.Slips {
		if d := x.Sum.Result() - l; d <= within && -d <= within {
			r.tell(sentence(r.d.Words.Pass(x.Says.In(r.d.Unit()))))
			return true
		}
	}
	return false
}

// hintDraft helps in three steps: where to look, the sum without her numbers,
// the sum with them and the answer.
func (r *room) hintDraft() {
	n := r.step
	if r.asked > 0 {
		n = r.asked
	}
	if n == 0 {
		return
	}
	s, u := r.steps()[n-1], r.d.Unit()
	if s.Sum.IsZero() {
		r.say(text.HearHintNone)
		return
	}
	r.hints = min(r.hints+1, 3)
	switch r.hints {
	case 1:
		r.say(text.HearHintWhere, r.d.Words.Pass(r.sources(s)))
	case 2:
		sum := s.Sum.Private(u)
		if i := strings.LastIndex(sum, "="); i > 0 {
			sum = strings.TrimSpace(sum[:i])
		}
		r.say(text.HearHintSum, r.d.Words.Pass(sum))
	default:
		r.say(text.HearHintAll, r.d.Words.Pass(s.Sum.Sum(u)), u)
	}
}

// sources are the measurements and choices that a step uses, in words.
func (r *room) sources(s pattern.Step) string {
	var names []string
	for _, id := range s.From {
		names = append(names, spaced(id))
	}
	if len(names) == 0 {
		return strings.ToLower(s.Title)
	}
	return strings.Join(names, ", ")
}
