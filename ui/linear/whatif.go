package linear

import (
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/lesson"
	"chalkfold/ui/text"
	"chalkfold/ui/view"
)

// trying is what if: one length is moved, and what moves with it is told. The
// job stays as it is until she keeps it.
type trying struct {
	ids []string
	id  string
	by  measure.Length
	job pattern.Job
}

// whatIf moves a length: "what", "what bust girth 37", "what dress length".
func (r *room) whatIf(rest string) {
	t := &trying{ids: lesson.WhatIfs(r.d.Sheet()), job: r.d.Job()}
	if len(t.ids) == 0 {
		r.notWhole(text.WhatIfNothing)
		return
	}
	t.id = r.restsOn(t.ids)
	if rest != "" && !isNumber(rest) {
		if !r.pickWhat(t, rest) {
			return
		}
	} else {
		r.tellWhat(t)
		if rest != "" {
			r.moveTo(t, rest)
		}
	}
	r.hearWhat(t)
}

// tryOn is what if about one length, chosen by a lesson.
func (r *room) tryOn(id string) {
	t := &trying{ids: lesson.WhatIfs(r.d.Sheet()), id: id, job: r.d.Job()}
	r.tellWhat(t)
	r.hearWhat(t)
}

// restsOn is what the step in hand rests on, else the measurement or choice in
// hand, else the first.
func (r *room) restsOn(ids []string) string {
	first := []string{string(r.id), string(r.choice)}
	if n := r.step; n > 0 && n <= len(r.steps()) {
		first = append(r.steps()[n-1].From, first...)
	}
	for _, f := range first {
		for _, id := range ids {
			if f == id {
				return id
			}
		}
	}
	return ids[0]
}

// called are the names of a length.
func (r *room) called(id string) []string {
	if m, ok := measure.Find(measure.ID(id)); ok {
		return []string{m.Term, m.Short, spaced(id)}
	}
	for _, c := range r.d.Choices() {
		if string(c.ID) == id {
			return []string{c.Title, spaced(id)}
		}
	}
	return []string{spaced(id)}
}

// stands is how long it is on a sheet.
func stands(s *pattern.Sheet, id string) measure.Length {
	if f, ok := s.Figure(measure.ID(id)); ok {
		return f.Value
	}
	set, _ := s.Setting(pattern.ChoiceID(id))
	return set.Value.Length
}

func (r *room) tellWhat(t *trying) {
	r.say(text.HearWhatIs, lower(r.d.Words.Pass(r.called(t.id)[0])), r.d.Unit().Say(stands(r.d.Sheet(), t.id)))
	r.say(text.HearWhatHow)
}

// pickWhat takes another length by its name, with a value if there is one.
func (r *room) pickWhat(t *trying, line string) bool {
	names := make([][]string, len(t.ids))
	for i, id := range t.ids {
		names[i] = r.called(id)
	}
	at, rest, among := match(line, names)
	switch {
	case at >= 0:
		t.id, t.by, t.job = t.ids[at], 0, r.d.Job()
		if rest == "" {
			r.tellWhat(t)
		} else {
			r.moveTo(t, rest)
		}
		return true
	case len(among) > 1:
		var some []string
		for _, i := range among {
			some = append(some, names[i][0])
		}
		r.say(text.HearSeveral, short(line), either(some))
		return false
	}
	r.say(text.HearWhatNone, short(line))
	return false
}

// isLength says that a line names a length that can be moved.
func (r *room) isLength(t *trying, line string) bool {
	names := make([][]string, len(t.ids))
	for i, id := range t.ids {
		names[i] = r.called(id)
	}
	at, _, _ := match(line, names)
	return at >= 0
}

// moveTo makes it so long; moveBy so much longer.
func (r *room) moveTo(t *trying, line string) {
	words := strings.ToLower(line)
	for _, way := range [...]struct {
		word string
		sign measure.Length
	}{{"more", 1}, {"less", -1}} {
		if rest, ok := strings.CutPrefix(words, way.word); ok {
			by := lesson.Nudge(r.d.Unit(), false)
			if rest = strings.TrimSpace(rest); rest != "" {
				l, err := measure.Read(rest, r.d.Unit())
				if err != nil {
					r.warn(withoutPlace(err))
					return
				}
				by = l
			}
			r.moveBy(t, way.sign*by)
			return
		}
	}
	l, err := measure.Read(line, r.d.Unit())
	if err != nil {
		r.warn(withoutPlace(err))
		return
	}
	r.moveBy(t, l-stands(r.d.Sheet(), t.id)-t.by)
}

// more and less move what a lesson asks about, else begin what if.
func (r *room) more(rest string) { r.nudge("more " + rest) }
func (r *room) less(rest string) { r.nudge("less " + rest) }

func (r *room) nudge(line string) {
	if t := r.page.try; t != nil && r.page.asks {
		r.moveTo(t, line)
		return
	}
	t := &trying{ids: lesson.WhatIfs(r.d.Sheet()), job: r.d.Job()}
	if len(t.ids) == 0 {
		r.notWhole(text.WhatIfNothing)
		return
	}
	t.id = r.restsOn(t.ids)
	r.moveTo(t, line)
	r.hearWhat(t)
}

func (r *room) moveBy(t *trying, by measure.Length) {
	u, base := r.d.Unit(), r.d.Job()
	job, says := lesson.WhatIf(base, t.id, t.by+by)
	now := r.d.SheetOf(r.drafted(job))
	r.say(text.HearWhatNow, capital(r.d.Words.Pass(strings.TrimSuffix(says.In(u), "."))))
	if t.by+by != 0 && stands(now, t.id) == stands(r.d.Sheet(), t.id) {
		return // it cannot be so, and the sentence said it
	}
	t.by, t.job = t.by+by, job
	moved := view.Differences(r.d.Sheet(), now, u, 6)
	for _, m := range moved {
		r.tell(sentence(capital(r.d.Words.Pass(m))))
	}
	if len(moved) == 0 {
		r.say(text.WhatIfStill)
	}
	r.tellVerdicts(r.d.Sheet(), now)
	for _, x := range now.Refused {
		r.tell(sentence(capital(r.d.Words.Pass(x.Says.In(u)))))
	}
}

// tellVerdicts tells the checks that say something else now.
func (r *room) tellVerdicts(old, now *pattern.Sheet) {
	was, is := worst(old), worst(now)
	said := map[string]bool{}
	for _, f := range now.Findings {
		a, b := was[f.Check], is[f.Check]
		if a == b || a == "" || b == "" || said[f.Check] {
			continue
		}
		said[f.Check] = true
		r.tell(sentence(r.d.Words.Say(text.WhatIfFinding, r.d.Words.Pass(f.Title), r.d.Words.Say(verdicts[a]), r.d.Words.Say(verdicts[b]))))
	}
}

// worst is the worst verdict of each check.
func worst(s *pattern.Sheet) map[string]pattern.Verdict {
	rank := map[pattern.Verdict]int{pattern.Pass: 1, pattern.Advise: 2, pattern.Fail: 3}
	out := map[string]pattern.Verdict{}
	for _, f := range s.Findings {
		if rank[f.Verdict] > rank[out[f.Check]] {
			out[f.Check] = f.Verdict
		}
	}
	return out
}

// drafted is a job as the desk would draft it: by the method of a lesson.
func (r *room) drafted(job pattern.Job) pattern.Job {
	m := r.d.Running().Method
	if m == "" || job.Style.Method() == m {
		return job
	}
	return job.WithStyle(pattern.Method, pattern.PickValue(m))
}

// hearWhat takes the next line for what if.
func (r *room) hearWhat(t *trying) {
	r.open = &question{prompt: "what if", hear: func(line string) bool {
		word := strings.ToLower(line)
		first, _, _ := strings.Cut(word, " ")
		switch {
		case nameWords(line) > 1 && r.isLength(t, line):
			r.pickWhat(t, line)
		case isNumber(line), first == "more", first == "less":
			r.moveTo(t, line)
		case word == "keep":
			r.keepWhat(t)
			return true
		case word == "back" && t.by != 0:
			t.by, t.job = 0, r.d.Job()
			r.say(text.WhatIfPutBack)
		case word == "list":
			for _, id := range t.ids {
				r.say(text.HearSet, capital(r.d.Words.Pass(r.called(id)[0])), r.d.Unit().Say(stands(r.d.Sheet(), id)))
			}
		case len(r.fitting(first)) > 0:
			if t.by != 0 {
				r.say(text.WhatIfPutBack)
			}
			return false
		default:
			r.pickWhat(t, line)
		}
		r.hearWhat(t)
		return true
	}}
}

func (r *room) keepWhat(t *trying) {
	if t.by == 0 {
		r.say(text.HearWhatStay)
		r.hearWhat(t)
		return
	}
	_, says := lesson.WhatIf(r.d.Job(), t.id, t.by)
	r.change(t.job, capital(r.d.Words.Pass(says.In(r.d.Unit()))))
}
