package overlay

import (
	"fmt"

	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/lesson"
	"chalkfold/ui/session"
	"chalkfold/ui/text"
)

// Lessons lists the course: what is done, where she is, what is to come, and
// what each lesson ends with. Enter begins one or goes on with it. Without a
// client on the desk the sample client sits for them.
func Lessons(d *desk.Desk) desk.Overlay {
	b := &board{d: d, title: d.Tell(text.LessonsTitle), how: text.LessonListHow, field: text.FindLabel, says: []string{d.Tell(text.LessonListSays)}}
	c := &course{d: d, sample: d.Empty()}
	next, _ := c.learnt().Next()
	for i, l := range lesson.All() {
		if l.ID == next.ID && !d.Running().On() || l.ID == d.Running().ID {
			b.at = i
		}
	}
	b.rows = func(typed string) []row { return found(c.rows(b), typed, false) }
	return b
}

// course is the list of lessons for somebody.
type course struct {
	d      *desk.Desk
	sample bool // for the sample client, not for the one on the desk
}

// job is whose measures the lessons are given with.
func (c *course) job() pattern.Job {
	if c.sample {
		return Sample(c.d)
	}
	return c.d.Job()
}

func (c *course) learnt() lesson.Progress {
	if c.sample {
		s := session.New("", c.job())
		s.ResumePlace()
		return lesson.Progress(s.Learnt())
	}
	return lesson.Progress(c.d.Learnt())
}

// rows are the lessons, and below them whose measures they are given with.
func (c *course) rows(b *board) []row {
	d := c.d
	var rows []row
	for i, l := range lesson.All() {
		rows = append(rows, c.row(i+1, l))
	}
	if d.Empty() {
		return rows
	}
	whose := row{title: d.Tell(text.LessonWith), says: d.Tell(text.LessonWithSays)}
	if c.sample {
		whose.title, whose.says = d.Tell(text.LessonOwn, d.Plain(d.Client())), d.Tell(text.LessonOwnSays)
	}
	whose.do = func() desk.Ask {
		c.sample = !c.sample
		b.renew()
		return desk.Ask{}
	}
	return append(rows, whose)
}

// row is one lesson, with how it stands.
func (c *course) row(number int, l lesson.Lesson) row {
	d, p := c.d, c.learnt()
	r := row{
		title: fmt.Sprintf("%2d %s", number, d.Trade(l.Title)), finds: l.ID, here: l.ID == d.Running().ID,
		says: d.Tell(text.LessonAimEnds, d.Trade(l.Aim.In(d.Unit())), d.Trade(l.Ends.In(d.Unit()))),
	}
	switch p.State(l) {
	case lesson.Done:
		r.right = d.Tell(text.LessonDone)
	case lesson.Begun:
		r.right = d.Tell(text.LessonAt, p.Resume(l), len(l.Pages))
	default:
		r.right = d.Tell(text.LessonNew)
	}
	r.whyNot = c.waits(l)
	at := desk.Running{ID: l.ID, Page: p.Resume(l), Method: l.Method}
	r.do = func() desk.Ask {
		ask := desk.Ask{Close: true, Study: &at, Say: d.Tell(text.LessonBegun, d.Trade(l.Title))}
		if c.sample {
			ask.Take = sampleOpened(d, ask.Say)
		}
		return ask
	}
	return r
}

// waits says what a lesson waits for; empty where it can begin.
func (c *course) waits(l lesson.Lesson) string {
	u := c.d.Unit()
	if l.ID == "tape" {
		return "" // what the others wait for is taken there
	}
	return c.d.Trade(l.Waits(c.d.SheetOf(l.Job(c.job()))).In(u))
}

// sampleOpened is the sample client, to be put on the desk.
func sampleOpened(d *desk.Desk, says string) *desk.Opened {
	job := Sample(d)
	s := session.New("", job)
	s.ResumePlace()
	return &desk.Opened{Store: s, Saved: job, Says: says, Go: desk.Draft}
}
