package linear

import (
	"strconv"
	"strings"

	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/lesson"
	"chalkfold/ui/session"
	"chalkfold/ui/text"
)

// lessons lists the course, or begins a lesson of it: "lesson 3", "lesson back
// sample".
func (r *room) lessons(rest string) {
	name, whose, _ := strings.Cut(rest, " ")
	whose = strings.ToLower(strings.TrimSpace(whose))
	if name == "" {
		r.listLessons()
		r.say(text.HearLessonHow)
		r.open = &question{prompt: "lessons", hear: func(line string) bool {
			if isNumber(line) {
				r.lessons(line)
				return true
			}
			return false
		}}
		return
	}
	l, ok := r.lessonCalled(name)
	if !ok {
		r.say(text.HearLessonNone, short(name))
		return
	}
	if r.d.Empty() && whose == "" || begins("sample", whose) {
		job := session.InUnit(session.Demo().Job, r.d.Unit())
		if r.d.Client() != job.Client.Name {
			s := session.New("", job)
			s.ResumePlace()
			r.put(desk.Opened{Store: s, Saved: job})
		}
	}
	if waits := l.Waits(r.d.SheetOf(l.Job(r.d.Job()))); !waits.IsEmpty() && l.ID != "tape" {
		r.say(text.HearLessonWait, r.d.Words.Pass(l.Title), strings.TrimSuffix(r.d.Words.Pass(waits.In(r.d.Unit())), "."))
		return
	}
	u := r.d.Unit()
	r.tell(r.d.Words.Pass(l.Aim.In(u)))
	r.say(text.HearLessonEnds, r.d.Words.Pass(l.Ends.In(u)))
	r.say(text.HearLessonWith, r.d.Client())
	r.d.Study(desk.Running{ID: l.ID, Page: lesson.Progress(r.d.Learnt()).Resume(l), Method: l.Method})
	r.toPage()
}

// lessonCalled finds a lesson by its number, its id or the beginning of its
// title.
func (r *room) lessonCalled(name string) (lesson.Lesson, bool) {
	all := lesson.All()
	if n, err := strconv.Atoi(name); err == nil {
		if n < 1 || n > len(all) {
			return lesson.Lesson{}, false
		}
		return all[n-1], true
	}
	for _, l := range all {
		if begins(l.ID, name) {
			return l, true
		}
	}
	return lesson.Lesson{}, false
}

// listLessons tells what is done, where she is, what is to come, and what each
// lesson ends with.
func (r *room) listLessons() {
	p, u := lesson.Progress(r.d.Learnt()), r.d.Unit()
	for i, l := range lesson.All() {
		how := r.d.Words.Say(text.LessonNew)
		switch p.State(l) {
		case lesson.Done:
			how = r.d.Words.Say(text.LessonDone)
		case lesson.Begun:
			how = r.d.Words.Say(text.LessonAt, p.Resume(l), len(l.Pages))
		case lesson.New:
		}
		r.say(text.HearLesson, i+1, r.d.Words.Pass(l.Title), r.d.Words.Say(text.HearEndsWith, r.d.Words.Pass(l.Ends.In(u))), how)
	}
}

// sitting is the lesson that runs, with its page.
func (r *room) sitting() (l lesson.Lesson, number int, p lesson.Page, ok bool) {
	at := r.d.Running()
	for i, l := range lesson.All() {
		if l.ID == at.ID && at.Page >= 1 && at.Page <= len(l.Pages) {
			return l, i + 1, l.Pages[at.Page-1], true
		}
	}
	return l, 0, p, false
}

// countPages counts the pages of the lesson.
func (r *room) countPages() int {
	l, _, _, _ := r.sitting()
	return len(l.Pages)
}

// movePage turns the page. A question that is open is gone past first: what it
// asked is told.
func (r *room) movePage(by int) {
	at := r.d.Running()
	l, _, p, ok := r.sitting()
	switch {
	case !ok:
		return
	case by > 0 && r.page.asks:
		r.page.asks = false
		if p.OwnWords() == nil || p.Show.What == lesson.OfWhatIf {
			r.tellShown(p)
		} else if q, ok := p.Question(r.d.Sheet()); ok {
			r.tell(sentence(q.Hint(lesson.Hints, r.d.Words, r.d.Unit(), false)))
		}
		r.say(text.HearPageNext)
		return
	case by > 0:
		r.pageDone()
		if at.Page >= len(l.Pages) {
			r.say(text.LessonOver, capital(r.d.Words.Pass(l.Ends.In(r.d.Unit()))))
			r.restLesson()
			return
		}
	case at.Page <= 1:
		r.say(text.LessonFirst)
		return
	}
	at.Page += by
	r.d.Study(at)
	r.toPage()
}

// pageDone keeps that the page is done.
func (r *room) pageDone() {
	r.d.Learn(r.d.Running())
	r.d.KeepPlace()()
}

func (r *room) jumpPage(n int) bool {
	at := r.d.Running()
	at.Page = n
	r.d.Study(at)
	r.toPage()
	return true
}

// leaveLesson leaves the lesson where it is.
func (r *room) leaveLesson(string) {
	_, number, _, ok := r.sitting()
	if !ok {
		r.say(text.HearNoLesson)
		return
	}
	r.say(text.HearLessonLeft, r.d.Running().Page, number)
	r.restLesson()
}

// restLesson is the bench again, in the stage that the lesson was shown in.
func (r *room) restLesson() {
	r.d.Study(desk.Running{})
	r.page = page{}
	if n := len(r.steps()); r.step > n {
		r.step = n
	}
	r.finding = 0
}

// faults lists the faults on purpose, or shows one of them.
func (r *room) faults(rest string) {
	if !r.d.Sheet().Complete || r.d.Sheet().Method != pattern.Measured {
		r.tell(sentence(capital(r.d.Words.Say(text.FaultWaits))))
		return
	}
	var all []numbered
	for i, f := range lesson.Faults() {
		all = append(all, numbered{strconv.Itoa(i+1) + " " + sentence(r.d.Words.Pass(f.Title)), func() { r.spoil(f) }})
	}
	if n, err := strconv.Atoi(rest); err == nil {
		r.pickNumber(all, n)
		return
	}
	r.say(text.FaultsSays)
	r.numbers(all, "faults", text.HearFaultHow)
}

// spoil tells a spoilt copy of the draft and asks which check finds it.
func (r *room) spoil(f lesson.Fault) {
	spoilt, ok := f.Of(r.d.Sheet())
	if !ok {
		r.say(text.FaultNothing)
		return
	}
	r.spoiltSays(r.d.Sheet(), spoilt)
	q, ok := f.Question()
	if !ok {
		return
	}
	hints := 0
	r.tellQuestion(q)
	var hear func(line string) bool
	hear = func(line string) bool {
		switch {
		case begins("hint", line):
			hints = min(hints+1, lesson.Hints)
			r.tell(sentence(q.Hint(hints, r.d.Words, r.d.Unit(), false)))
		case isNumber(line):
			v := q.Judge(line, r.d.Unit())
			r.tell(sentence(v.Say(r.d.Words, r.d.Unit())))
			if v.Closed() {
				r.tellFault(f, spoilt)
				return true
			}
		case begins("next", line):
			r.tellFault(f, spoilt)
			return true
		default:
			return false
		}
		r.open = &question{prompt: "fault", hear: hear}
		return true
	}
	r.open = &question{prompt: "fault", hear: hear}
}

// tellFault tells what was done and what the check says of it.
func (r *room) tellFault(f lesson.Fault, spoilt *pattern.Sheet) {
	r.say(text.FaultDone, r.d.Words.Pass(f.Says.In(r.d.Unit())))
	if found, ok := f.Finding(spoilt); ok {
		r.tellOne(found)
	}
}
