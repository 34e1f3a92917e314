package overlay

import (
	"fmt"
	"path/filepath"
	"strings"

	"github.com/charmbracelet/x/ansi"

	"chalkfold/pattern"
	"chalkfold/ui/classroom"
	"chalkfold/ui/desk"
	"chalkfold/ui/files"
	"chalkfold/ui/keys"
	"chalkfold/ui/session"
	"chalkfold/ui/text"
)

// errandClass is the Run that reads the folder.
const errandClass = "class"

// class is what Class remembers beside its board.
type class struct {
	*board
	folder  string
	reading bool
	read    *classroom.Class
}

// Class lists the sessions of a folder at a glance: that of the open session,
// or where the program was started. Each is read and drafted, which takes
// longer than a key may: [keys.Class] begins it, and so does the only row that
// there is before.
func Class(d *desk.Desk) desk.Overlay {
	c := &class{folder: here(d.Path())}
	c.board = &board{d: d, title: d.Tell(text.ClassTitle, files.Shown(c.folder)), how: text.ClassHow, field: text.FindLabel}
	c.rows = c.learners
	c.hear = c.answer
	return c
}

// Do begins to read; the rest is a list's.
func (c *class) Do(id keys.ID) desk.Ask {
	if id == keys.Class {
		return c.begin()
	}
	return c.board.Do(id)
}

// begin reads the folder beside the work.
func (c *class) begin() desk.Ask {
	folder, version := c.folder, c.d.Version()
	c.reading = true
	c.renew()
	return desk.Ask{Run: func() desk.Answer {
		read, err := classroom.Folder(folder)
		return desk.Answer{Version: version, What: errandClass, Err: err, Value: read, Keep: true}
	}}
}

// answer is the folder, or a session out of it.
func (c *class) answer(a desk.Answer) desk.Ask {
	if a.What != errandClass {
		return c.opened(a)
	}
	c.reading = false
	c.renew()
	read, ok := a.Value.(classroom.Class)
	if a.Err != nil || !ok {
		c.says = sentences(a.Err)
		return desk.Ask{Say: c.d.Tell(text.SeeAbove), Warn: true}
	}
	c.read, c.says = &read, c.glance(read)
	for i, r := range c.list() {
		if r.here {
			c.at = i
		}
	}
	return desk.Ask{}
}

// glance is the whole class in a sentence.
func (c *class) glance(read classroom.Class) []string {
	if len(read.Rows) == 0 {
		return []string{c.d.Tell(text.ClassEmpty, files.Shown(c.folder))}
	}
	says := []string{c.d.Tell(text.ClassCount, len(read.Rows), read.Count(pattern.Pass), read.Count(pattern.Advise),
		read.Count(pattern.Fail), read.Count(classroom.Missing), read.Count(""))}
	if read.More > 0 {
		says = append(says, c.d.Tell(text.ClassMore, read.More, classroom.Most))
	}
	return says
}

func (c *class) learners(typed string) []row {
	if c.read == nil {
		if c.reading {
			return []row{{title: c.d.Tell(text.ClassReading)}}
		}
		return []row{{title: c.d.Tell(text.ClassRead), do: c.begin}}
	}
	named := map[string]int{}
	for _, r := range c.read.Rows {
		named[r.Client]++
	}
	rows := make([]row, len(c.read.Rows))
	for i, r := range c.read.Rows {
		rows[i] = c.learner(r, named[r.Client] == 1)
	}
	rows = found(rows, typed, false)
	head := c.heading(rows)
	for i := range rows {
		rows[i].group = head
	}
	return rows
}

// widestName is the widest that a name may be, so that what is said of the
// learner has room beside it.
const widestName = 26

// learner is one session as a row. One that cannot be read says why; Enter
// then tells all that is wrong with it. A name that several have gets the name
// of its file too.
func (c *class) learner(r classroom.Row, only bool) row {
	d, path := c.d, filepath.Join(c.folder, r.File)
	out := row{title: d.Plain(r.Client), finds: r.File, do: func() desk.Ask { return open(d, path) }}
	switch stem := d.Plain(session.Stem(r.File)); {
	case r.Client == "" || r.Trouble != "":
		out.title = stem
	case !only:
		out.title += " (" + stem + ")"
	}
	out.title = ansi.Truncate(out.title, widestName, "...")
	if r.Trouble != "" {
		out.says = d.Tell(text.ClassUnread, r.Trouble)
		return out
	}
	out.finds += " " + r.Client
	out.right = cells(fmt.Sprintf("%d/%d", r.Taken, r.Of), fmt.Sprintf("%d/%d", r.Step, r.Steps))
	state := []string{c.verdict(r)}
	if r.Lesson != "" {
		state = append(state, d.Tell(text.ClassLesson, ansi.Truncate(d.Plain(r.Lesson), widestName, "...")))
	}
	if same(path, d.Path()) {
		out.here = true
		state = append(state, d.Tell(text.ClassHere))
	}
	out.says = strings.Join(state, ", ")
	return out
}

// cells are the two columns of figures.
func cells(taken, step string) string { return fmt.Sprintf("%5s  %5s", taken, step) }

// heading names the columns below it, which stand one cell farther in.
func (c *class) heading(rows []row) string {
	title, right := 0, 0
	for _, r := range rows {
		title, right = max(title, ansi.StringWidth(r.title)), max(right, ansi.StringWidth(r.right))
	}
	if right == 0 { // nobody has figures
		return ""
	}
	return " " + desk.Fit(c.d.Tell(text.ClassName), title) + "  " + desk.Fit(cells(c.d.Tell(text.ClassTaken), c.d.Tell(text.ClassStep)), right) + "  " + c.d.Tell(text.ClassTruing)
}

// verdict is what truing says, in words.
func (c *class) verdict(r classroom.Row) string {
	d := c.d
	switch r.Verdict {
	case pattern.Fail:
		first := ""
		if len(r.Failed) > 0 {
			first = d.Trade(r.Failed[0])
		}
		if n := len(r.Failed) - 1; n > 0 {
			return d.Tell(text.ClassFails, first, n)
		}
		return d.Tell(text.ClassFail, first)
	case pattern.Advise:
		return d.Tell(text.ClassAdvise)
	case classroom.Missing:
		return d.Tell(text.ClassMissing)
	}
	return d.Tell(text.ClassPass)
}
