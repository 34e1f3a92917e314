package linear

import (
	"strings"

	"chalkfold/pattern"
	"chalkfold/ui/lesson"
	"chalkfold/ui/text"
	"chalkfold/ui/view"
)

// compare tells both methods in numbers, or what moved since she was opened.
func (r *room) compare(rest string) {
	switch {
	case rest == "" || begins("methods", rest):
		other := pattern.Thumb
		if r.d.Job().Style.Method() == pattern.Direct {
			other = pattern.Direct
		}
		r.sayMethods(other)
	case begins("opened", rest):
		r.sayMoved()
	default:
		r.say(text.HearCompare)
	}
}

// sayMethods tells another method beside the measured one.
func (r *room) sayMethods(other string) {
	method := func(m string) *pattern.Sheet {
		return r.d.SheetOf(r.d.Job().WithStyle(pattern.Method, pattern.PickValue(m)))
	}
	u := r.d.Unit()
	way := text.CompareThumb
	if other == pattern.Direct {
		way = text.CompareDirect
		r.say(text.CompareBlockSays)
	} else {
		r.say(text.CompareSays)
	}
	if names := lesson.Rests(method(other), method(pattern.Measured)); len(names) > 0 {
		for i, n := range names {
			names[i] = r.d.Words.Pass(n)
		}
		r.say(text.CompareProposed, strings.Join(names, ", "))
	}
	for _, f := range lesson.Compared(method(other), method(pattern.Measured)) {
		name := f.Name(r.d.Words)
		if f.Group == text.CompareGirths {
			name = r.d.Words.Say(text.HearAllRound, name)
		}
		if !f.Known[0] || !f.Known[1] {
			r.say(text.HearCompareW, name)
			continue
		}
		how, apart := text.HearCompareM, f.Other-f.Tape
		if apart < 0 {
			how, apart = text.HearCompareL, -apart
		}
		if u.Tape(apart) == zero(u) {
			how = text.HearCompareH
		}
		r.say(how, name, u.Say(f.Other), u.Say(f.Tape), r.d.Words.Say(way), u.Say(apart))
	}
}

// most of what moved is told.
const mostMoved = 24

func (r *room) sayMoved() {
	moved := view.Differences(r.d.SheetOf(r.d.Opened()), r.d.Sheet(), r.d.Unit(), mostMoved)
	if len(moved) == 0 {
		r.say(text.HearSinceNot)
		return
	}
	r.say(text.HearSince)
	for _, m := range moved {
		r.tell(sentence(capital(r.d.Words.Pass(m))))
	}
}
