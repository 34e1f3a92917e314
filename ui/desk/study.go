package desk

import (
	"maps"

	"chalkfold/pattern"
)

// Running is the lesson that runs, at one of its pages. It is no part of the
// job: it makes no star and no entry of the history.
type Running struct {
	ID     string
	Page   int    // from 1
	Method string // the drafting method that it needs; empty: hers
}

// On says that a lesson runs.
func (r Running) On() bool { return r.ID != "" }

// learner is a store that keeps how far she is in the lessons. *session.Session
// is one.
type learner interface {
	Learnt() map[string]int
	Learn(lesson string, page int)
	KeepPlace()
}

// Running is the lesson of the session on the desk.
func (d *Desk) Running() Running { return d.study }

// Study begins a lesson, goes to another page of it, or with the zero Running
// ends it.
func (d *Desk) Study(r Running) {
	if r.Method != d.study.Method {
		d.version++ // it is drafted another way
	}
	d.study = r
}

// Drafted is the job as it is drafted now: by the method of the lesson while
// one runs, else as it stands.
func (d *Desk) Drafted() pattern.Job {
	m := d.study.Method
	if m == "" || d.job.Style.Method() == m {
		return d.job
	}
	return d.job.WithStyle(pattern.Method, pattern.PickValue(m))
}

// Learnt is how far she is: by lesson, the last page that is done.
func (d *Desk) Learnt() map[string]int {
	if l, ok := d.store.(learner); ok {
		return maps.Clone(l.Learnt())
	}
	return nil
}

// KeepPlace writes how far she is where it outlives the program, beside the
// session's file. It may run beside the work.
func (d *Desk) KeepPlace() func() {
	if l, ok := d.store.(learner); ok {
		return l.KeepPlace
	}
	return func() {}
}

// Learn notes that a page is done. The next save writes it.
func (d *Desk) Learn(r Running) {
	if l, ok := d.store.(learner); ok && r.On() {
		l.Learn(r.ID, r.Page)
	}
}
