package classroom

import (
	"io/fs"
	"slices"
	"strings"

	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/ui/session"
)

// Most is how many sessions of a folder are read. A class is far smaller; a
// folder that holds more is probably another one.
const Most = 500

// Missing is the verdict on a draft that waits for a measurement. The others
// are those of truing.
const Missing pattern.Verdict = "missing"

// Class is a folder of sessions.
type Class struct {
	Rows []Row // by the names of the files
	More int   // sessions beyond Most, which were not read
}

// Row is one learner at a glance.
type Row struct {
	File    string // its name in the folder
	Client  string
	Taken   int // measurements taken, of those that her draft reads
	Of      int
	Step    int // the last step drawn before one that waits: as far as she can work
	Steps   int
	Verdict pattern.Verdict // pass, advise, fail or missing; empty if Trouble
	Failed  []string        // titles of the checks that failed, or of the steps that cannot be drawn
	Lesson  string          // id of the lesson begun last
	Trouble string          // why the file cannot be read; the rest is empty then
}

// Fine says that nothing in the session needs to be put right; advice and
// measurements that are still to come may wait.
func (r Row) Fine() bool { return r.Trouble == "" && r.Verdict != pattern.Fail }

// Fine says the same of the whole class.
func (c Class) Fine() bool {
	for _, r := range c.Rows {
		if !r.Fine() {
			return false
		}
	}
	return true
}

// Count is how many have a verdict; that on files which cannot be read is
// empty.
func (c Class) Count(v pattern.Verdict) int {
	n := 0
	for _, r := range c.Rows {
		if r.Verdict == v {
			n++
		}
	}
	return n
}

// Read reads the sessions that lie in a folder, by name. Hidden files are
// left out.
func Read(dir fs.FS) (Class, error) {
	list, err := fs.ReadDir(dir, ".")
	if err != nil {
		return Class{}, err
	}
	var c Class
	for _, e := range list {
		if name := e.Name(); e.IsDir() || strings.HasPrefix(name, ".") || !strings.HasSuffix(name, session.Suffix) {
			continue
		}
		if len(c.Rows) == Most {
			c.More++
			continue
		}
		c.Rows = append(c.Rows, rowOf(dir, e.Name()))
	}
	return c, nil
}

// rowOf reads one session and drafts it.
func rowOf(dir fs.FS, name string) Row {
	s, err := open(dir, name)
	if err != nil {
		return Row{File: name, Trouble: sentence(err)}
	}
	sheet := workroom.Draft(s.Job)
	r := Row{File: name, Client: s.Job.Client.Name, Step: reached(sheet), Steps: len(sheet.Steps), Lesson: s.LastLesson()}
	for _, id := range workroom.NeedsOf(s.Job.Style) {
		r.Of++
		if s.Job.Body.Has(id) {
			r.Taken++
		}
	}
	r.Verdict, r.Failed = verdict(sheet)
	return r
}

// verdict is the worst that truing says of a draft, or that it waits. What can
// be known of a draft that waits comes first: an impossible line stays one
// whatever is still to be measured.
func verdict(sheet *pattern.Sheet) (pattern.Verdict, []string) {
	var failed []string
	add := func(title string) {
		if !slices.Contains(failed, title) {
			failed = append(failed, title)
		}
	}
	for _, r := range sheet.Refused {
		add(stepTitle(sheet, r.Step))
	}
	for _, f := range sheet.Findings {
		if f.Verdict == pattern.Fail {
			add(f.Title)
		}
	}
	switch {
	case len(failed) > 0:
		return pattern.Fail, failed
	case !sheet.Complete:
		return Missing, nil
	case sheet.Count(pattern.Advise) > 0:
		return pattern.Advise, nil
	}
	return pattern.Pass, nil
}

// reached is how far a draft goes without a gap. Later steps may be drawn all
// the same, but who works them in order stops here.
func reached(sheet *pattern.Sheet) int {
	n := 0
	for _, s := range sheet.Steps {
		if !s.Drawn {
			break
		}
		n = s.Number
	}
	return n
}

func stepTitle(sheet *pattern.Sheet, id string) string {
	for _, s := range sheet.Steps {
		if s.ID == id {
			return s.Title
		}
	}
	return id
}
