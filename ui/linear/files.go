package linear

import (
	"errors"
	"path/filepath"
	"strconv"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/files"
	"chalkfold/ui/session"
	"chalkfold/ui/text"
)

func (r *room) undo(string) {
	says, ok := r.d.Undo()
	r.turned(says, ok, text.Undone, text.NothingToUndo)
}

func (r *room) redo(string) {
	says, ok := r.d.Redo()
	r.turned(says, ok, text.Redone, text.NothingToRedo)
}

func (r *room) turned(says string, ok bool, done, nothing text.ID) {
	if !ok {
		r.say(nothing)
		return
	}
	r.tell(sentence(r.d.Words.Say(done, says)))
	r.keep()
}

// save writes the session; "over" writes over whatever stands there.
func (r *room) save(rest string) {
	over := false
	if rest == "over" || strings.HasPrefix(rest, "over ") {
		over, rest = true, strings.TrimSpace(strings.TrimPrefix(rest, "over"))
	}
	if rest == "" {
		r.saveHere(over)
		return
	}
	path := session.Suffixed(files.Expand(rest))
	if !over {
		r.saved(path, r.d.Store().SaveAs(path, r.d.Job()))
		return
	}
	s, ok := r.d.Store().(*session.Session)
	if !ok {
		return
	}
	old := s.Path
	s.Path = path
	err := s.SaveOver(r.d.Job())
	if err != nil {
		s.Path = old
	}
	r.saved(path, err)
}

func (r *room) saveHere(over bool) {
	if r.d.Path() == "" {
		r.say(text.SaveNameFirst)
		r.say(text.LinearSaveHow)
		return
	}
	var err error
	if over {
		err = r.d.Store().SaveOver(r.d.Job())
	} else {
		err = r.d.Store().Save(r.d.Job())
	}
	r.saved(r.d.Path(), err)
}

func (r *room) saved(path string, err error) {
	switch {
	case errors.Is(err, session.ErrChanged):
		r.say(text.ElsewhereSays, filepath.Base(path))
		r.say(text.LinearSaveOver)
	case errors.Is(err, session.ErrExists):
		r.say(text.LinearExists, path)
	case err != nil:
		r.warn(err)
		r.say(text.SaveKept)
	default:
		r.d.MarkSaved(r.d.Job(), path)
		r.d.Store().DropRescue()
		session.Remember(path, r.d.Job())
		r.tell(sentence(r.d.Words.Say(text.Saved, path, r.d.Now().Format("15:04"))))
	}
}

// openFile opens a path, or lists the clients worked on last.
func (r *room) openFile(rest string) {
	if rest != "" {
		r.load(files.Expand(rest))
		return
	}
	recent := session.Recent()
	if len(recent) == 0 {
		r.say(text.RecentEmpty)
		r.say(text.LinearWhich)
		return
	}
	for i, c := range recent {
		if i < 12 {
			r.tell(sentence(strconv.Itoa(i+1) + " " + c.Name + ", " + c.Path))
		}
	}
	r.say(text.LinearWhich)
	r.open = &question{prompt: "open", hear: func(line string) bool {
		n, err := strconv.Atoi(line)
		switch {
		case err != nil:
			return false
		case n < 1 || n > len(recent):
			r.say(text.LinearNoNumber, n)
		default:
			r.load(recent[n-1].Path)
		}
		return true
	}}
}

func (r *room) load(path string) {
	for _, s := range r.d.Seats() {
		if s.Path != "" && samePath(s.Path, path) {
			r.switchTo(s.ID)
			return
		}
	}
	s, err := session.Open(path)
	if err != nil {
		r.warn(err)
		return
	}
	session.Remember(path, s.Job)
	r.take(s, s.Job.Unit)
	r.say(text.Opened, path)
	for _, w := range s.Warnings {
		r.tell(w)
	}
	r.whose()
	r.enter()
}

func (r *room) begin(string) {
	r.take(nil, r.d.Unit())
	r.whose()
	r.enter()
}

func (r *room) changeUnit(rest string) {
	u, err := measure.ParseUnit(rest)
	if err != nil {
		r.say(text.LinearUnitHow)
		return
	}
	r.change(session.InUnit(r.d.Job(), u), r.d.Words.Say(text.UnitNow, r.unitName(u)))
}

// quit leaves, after a question where work is unsaved.
func (r *room) quit(string) {
	names := r.unsavedNames()
	switch {
	case len(names) == 0:
		r.leave()
		return
	case len(names) > 1:
		r.say(text.LeaveUnsaved, r.d.Words.List(names))
	}
	r.say(text.LinearQuit)
	r.open = &question{prompt: "quit", hear: func(line string) bool {
		answer, rest, _ := strings.Cut(strings.ToLower(line), " ")
		begins := func(word string) bool { return answer != "" && strings.HasPrefix(word, answer) }
		switch {
		case begins("save") && answer != "s":
			if r.saveAll(strings.TrimSpace(rest)) {
				r.leave()
			}
		case begins("drop"):
			r.dropAll()
			r.say(text.LinearDropped)
			r.over = true
		case begins("stay") && answer != "s":
			r.say(text.LinearStays)
		case begins("quit"):
			r.keepAll()
			r.say(text.LinearRescued, session.RescueDir())
			r.over, r.status = true, NotSaved
		default:
			r.quit("")
		}
		return true
	}}
}

func (r *room) leave() {
	r.dropAll()
	r.say(text.LinearBye)
	r.over = true
}

// offerRescue offers unsaved work of an earlier run; any other word than an
// answer leaves it for the next time.
func (r *room) offerRescue() {
	if len(r.rescues) == 0 {
		return
	}
	c := r.rescues[0]
	r.rescues = r.rescues[1:]
	name := c.Client
	if name == "" {
		name = r.d.Words.Say(text.NoName)
	}
	r.say(text.RescueOffer, name, c.Saved.Local().Format("2006-01-02 15:04"))
	if len(c.Differs) > 0 {
		r.say(text.RescueDiffers)
		for _, l := range c.Differs {
			r.tell(sentence(capital(r.d.Words.Pass(l))))
		}
	}
	r.say(text.LinearRescue)
	r.open = &question{prompt: "unsaved work", hear: func(line string) bool {
		answer := strings.ToLower(line)
		begins := func(word string) bool { return strings.HasPrefix(word, answer) }
		switch {
		case begins("yes"):
			r.takeUp(c)
			r.rescues = nil
		case begins("no"):
			c.Drop()
			r.say(text.RescueDropped)
			r.offerRescue()
		case begins("later"):
			r.offerRescue()
		default:
			return false
		}
		if r.open == nil {
			r.enter()
		}
		return true
	}}
}

func (r *room) takeUp(c session.Rescue) {
	s := c.Session()
	o := desk.Opened{Store: s, Path: c.Path, Job: &c.Job}
	o.Saved = pattern.Job{Unit: c.Job.Unit}
	if was, err := session.Open(c.Path); c.Path != "" && err == nil {
		o.Saved = was.Job
	}
	r.take(s, c.Job.Unit)
	r.d.Take(o)
	if s.WriteRescue(c.Job) == nil {
		c.Drop()
	}
	r.tell(r.d.Words.Say(text.RescueTaken, r.d.Client()))
	r.whose()
}
