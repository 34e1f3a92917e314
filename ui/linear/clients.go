package linear

import (
	"path/filepath"
	"strconv"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/classroom"
	"chalkfold/ui/desk"
	"chalkfold/ui/files"
	"chalkfold/ui/lesson"
	"chalkfold/ui/session"
	"chalkfold/ui/text"
)

// place is where she stands with one client.
type place struct {
	stage   desk.StageID
	id      measure.ID
	choice  pattern.ChoiceID
	step    int
	finding int
}

// leavePlace and findPlace keep where she stands with each open client.
func (r *room) leavePlace() { r.places[r.d.At()] = r.place }

func (r *room) findPlace() {
	p, ok := r.places[r.d.At()]
	if !ok {
		p.stage = desk.Measure
	}
	r.place, r.asked, r.hints = p, 0, 0
	r.page = page{}
}

// put puts a session on the desk; the one that lay there stays open, and says
// so, unless nothing would be lost with it.
func (r *room) put(o desk.Opened) {
	was, from := r.d.Client(), r.d.At()
	r.leavePlace()
	if r.d.Open(o) {
		delete(r.places, r.d.At())
	}
	r.findPlace()
	if r.d.At() != from {
		r.say(text.HearStays, was)
	}
}

// choice is one line of a numbered list with what its number does.
type numbered struct {
	says string
	do   func()
}

// clients lists who is open, then who was worked on before; a number goes there.
func (r *room) clients(rest string) {
	var all []numbered
	seats := r.d.Seats()
	for _, s := range seats {
		how := text.HearOpen
		switch {
		case s.Here && s.Unsaved:
			how = text.HearHereNot
		case s.Here:
			how = text.HearHere
		case s.Unsaved:
			how = text.HearUnsaved
		}
		id := s.ID
		all = append(all, numbered{r.d.Words.Say(text.HearClient, len(all)+1, s.Client, r.d.Words.Say(how)), func() { r.switchTo(id) }})
	}
	for _, c := range session.Recent() {
		if len(all) >= 12+len(seats) || isOpen(seats, c.Path) {
			continue
		}
		path := c.Path
		name := c.Name
		if name == "" {
			name = filepath.Base(path)
		}
		all = append(all, numbered{r.d.Words.Say(text.HearClient, len(all)+1, name, r.d.Words.Say(text.HearBefore)), func() { r.load(path) }})
	}
	if n, err := strconv.Atoi(rest); err == nil {
		r.pickNumber(all, n)
		return
	}
	r.numbers(all, "clients", text.HearClientHow)
}

// numbers tells a list and takes the number of one of its lines.
func (r *room) numbers(all []numbered, prompt string, how text.ID) {
	for _, n := range all {
		r.tell(n.says)
	}
	r.say(how)
	r.open = &question{prompt: prompt, hear: func(line string) bool {
		n, err := strconv.Atoi(line)
		if err != nil {
			return false
		}
		r.pickNumber(all, n)
		return true
	}}
}

func (r *room) pickNumber(all []numbered, n int) {
	if n < 1 || n > len(all) {
		r.say(text.LinearNoNumber, n)
		return
	}
	all[n-1].do()
}

func (r *room) switchTo(id desk.SeatID) {
	r.leavePlace()
	r.d.Switch(id)
	r.findPlace()
	r.whose()
	r.enter()
}

func isOpen(seats []desk.Seat, path string) bool {
	for _, s := range seats {
		if s.Path != "" && samePath(s.Path, path) {
			return true
		}
	}
	return false
}

func samePath(a, b string) bool {
	a, err := filepath.Abs(a)
	b, also := filepath.Abs(b)
	return err == nil && also == nil && a == b
}

// class tells of a folder of learners' sessions how far each has come.
func (r *room) class(rest string) {
	if rest == "" {
		r.say(text.HearClassHow)
		return
	}
	folder := files.Expand(rest)
	c, err := classroom.Folder(folder)
	if err != nil {
		r.warn(err)
		return
	}
	if len(c.Rows) == 0 {
		r.say(text.HearClassNone, folder)
		return
	}
	var all []numbered
	for _, row := range c.Rows {
		path := filepath.Join(folder, row.File)
		all = append(all, numbered{r.learner(len(all)+1, row), func() { r.load(path) }})
	}
	if c.More > 0 {
		r.say(text.HearClassMore, c.More)
	}
	r.numbers(all, "class", text.HearClassOpen)
}

// learner is one row of the class, further sentences on lines of their own.
func (r *room) learner(number int, row classroom.Row) string {
	if row.Trouble != "" {
		return r.d.Words.Say(text.HearClassBad, number, sentence(row.Trouble))
	}
	name := row.Client
	if name == "" {
		name = row.File
	}
	verdict := string(row.Verdict)
	if id, ok := verdicts[row.Verdict]; ok {
		verdict = r.d.Words.Say(id)
	}
	out := r.d.Words.Say(text.HearClassRow, number, name, row.Taken, row.Of, row.Step, row.Steps, verdict)
	if len(row.Failed) > 0 {
		var titles []string
		for _, t := range row.Failed {
			titles = append(titles, lower(r.d.Words.Pass(t)))
		}
		out += "\n" + r.d.Words.Say(text.HearClassFail, name, r.d.Words.List(titles))
	}
	for i, l := range lesson.All() {
		if l.ID == row.Lesson {
			out += "\n" + r.d.Words.Say(text.HearClassAt, strconv.Itoa(i+1)+", "+r.d.Words.Pass(l.Title))
		}
	}
	return out
}

// unsavedNames are the clients whose work is not saved.
func (r *room) unsavedNames() []string {
	var names []string
	for _, s := range r.d.AllUnsaved() {
		names = append(names, s.Client)
	}
	return names
}

// saveAll saves what is unsaved, one client after another; it stops at the one
// that cannot be.
func (r *room) saveAll(name string) bool {
	for r.d.Unsaved() || len(r.d.AllUnsaved()) > 0 {
		if !r.d.Unsaved() {
			r.leavePlace()
			r.d.Switch(r.d.AllUnsaved()[0].ID)
			r.findPlace()
			r.whose()
			name = ""
		}
		r.save(name)
		if r.d.Unsaved() {
			return false
		}
	}
	return true
}

// dropAll takes all rescue copies away.
func (r *room) dropAll() {
	for _, w := range r.d.Works() {
		w.Store.DropRescue()
	}
}

// keepAll writes a rescue copy of all that is unsaved.
func (r *room) keepAll() {
	for _, w := range r.d.Works() {
		if !w.Unsaved {
			w.Store.DropRescue()
		} else if err := w.Store.WriteRescue(w.Job); err != nil {
			r.say(text.RescueNoWrite, err)
		}
	}
}

// word of a list that begins so.
func begins(word, typed string) bool {
	return typed != "" && strings.HasPrefix(word, strings.ToLower(typed))
}
