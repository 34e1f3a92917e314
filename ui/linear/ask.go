package linear

import (
	"strconv"

	"chalkfold/measure"
	"chalkfold/ui/lesson"
	"chalkfold/ui/text"
)

// askFirst puts a question before each step, or no more.
func (r *room) askFirst(string) {
	r.asking, r.asked = !r.asking, 0
	if r.asking {
		r.say(text.AskOnShort)
	} else {
		r.say(text.DraftAskOff)
	}
}

// askAbout asks about a step before it is told. It says whether there is
// anything to ask.
func (r *room) askAbout(n int) bool {
	s := r.steps()[n-1]
	q, ok := lesson.Ask(r.d.Sheet(), s.ID)
	if !ok {
		return false
	}
	r.asked, r.hints = n, 0
	r.say(text.HearAskFirst, n, r.d.Words.Pass(s.Title))
	r.tell(q.Prompt(r.d.Words, r.d.Unit()))
	for i, o := range q.Pick {
		r.tell(strconv.Itoa(i+1) + ". " + r.d.Words.Pass(o.Says.In(r.d.Unit())))
	}
	r.say(text.HearAskHow)
	return true
}

// answerDraft holds an answer against what is right and what people really do
// wrong; the first that fits is said.
func (r *room) answerDraft(line string) {
	if r.asked == 0 {
		r.say(text.LinearNumberOnly)
		return
	}
	q, ok := lesson.Ask(r.d.Sheet(), r.steps()[r.asked-1].ID)
	if !ok {
		return
	}
	v := q.Judge(line, r.d.Unit())
	if v.Outcome == lesson.Unread && v.Wrong != nil {
		r.warn(v.Wrong)
		return
	}
	v.Why = measure.Sentence{} // the step follows, and says it
	if says := v.Say(r.d.Words, r.d.Unit()); says != "" {
		r.tell(sentence(says))
	}
	switch {
	case v.Closed():
		r.step = r.asked
		r.tellStep()
	case v.Outcome == lesson.Missed:
		r.hintDraft()
	}
}

// hintDraft helps in three steps: where to look, the sum without her numbers,
// the sum with them and the answer. A step that was told is helped with its
// sum alone.
func (r *room) hintDraft() {
	n, kind := r.step, lesson.Number
	if r.asked > 0 {
		n, kind = r.asked, lesson.Any
	}
	if n == 0 {
		return
	}
	q, ok := lesson.AskFor(r.d.Sheet(), r.steps()[n-1].ID, kind)
	if !ok {
		r.say(text.HearHintNone)
		return
	}
	r.hints = min(r.hints+1, lesson.Hints)
	r.tell(sentence(q.Hint(r.hints, r.d.Words, r.d.Unit(), false)))
}
