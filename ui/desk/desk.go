package desk

import (
	"path/filepath"
	"reflect"
	"time"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/canvas"
	"chalkfold/ui/keys"
	"chalkfold/ui/session"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
)

// Store is the file behind a session. *session.Session is one.
type Store interface {
	Save(job pattern.Job) error
	SaveOver(job pattern.Job) error
	SaveAs(path string, job pattern.Job) error
	SaveAsOver(path string, job pattern.Job) error
	WriteRescue(job pattern.Job) error
	DropRescue()
}

// Settings are the looks. They are no part of the session.
type Settings struct {
	Glyphs canvas.Glyphs
	Theme  theme.Theme // with its colour
	Mouse  bool
	Motion bool
	Strict bool         // the terminal may give doubtful glyphs two cells: none is sent
	Comma  bool         // decimals are shown with one
	Unit   measure.Unit // of a new client
	Aspect float64      // height of a cell to its width
	Config string       // folder of the settings; empty: nothing is kept
}

// Figures are the glyphs of large numbers: strokes where half-blocks may not
// take one cell.
func (s Settings) Figures() canvas.Glyphs {
	if s.Strict {
		return canvas.ASCII
	}
	return s.Glyphs
}

// Desk holds the work: one session that is worked on, and others that lie
// ready. Only the root changes it.
type Desk struct {
	Settings Settings
	Words    text.Catalogue
	Keys     keys.Set
	Now      func() time.Time

	Message string // what just happened, for the message line
	Warn    bool   // and it is nothing good

	Projecting bool // the projector is on
	Private    bool // sums name her measures instead of giving them

	*seat   // the session on the desk
	seats   []*seat
	given   SeatID // the last one given
	version int
	sheets  sheets
}

// change is one entry of the history: the job on the other side of it and
// the sentence that names the change.
type change struct {
	job  pattern.Job
	says string
}

// New is a desk with an empty session that has no file.
func New(s Settings) *Desk {
	if s.Aspect <= 0 {
		s.Aspect = 2
	}
	d := &Desk{Settings: s, Keys: Keys(), Now: time.Now, Private: true}
	d.Take(Opened{})
	return d
}

// Job is the work as it stands.
func (d *Desk) Job() pattern.Job { return d.job }

// Saved is the work as it is in the file.
func (d *Desk) Saved() pattern.Job { return d.saved }

// Opened is the work as it was when the session was opened.
func (d *Desk) Opened() pattern.Job { return d.opened }

// Before is the job before the last change, and what the change was.
func (d *Desk) Before() (job pattern.Job, says string, ok bool) {
	if len(d.past) == 0 {
		return d.job, "", false
	}
	last := d.past[len(d.past)-1]
	return last.job, last.says, true
}

// Unit is the unit of the session.
func (d *Desk) Unit() measure.Unit { return d.job.Unit }

// Version counts the changes; what was worked out for another version is old.
func (d *Desk) Version() int { return d.version }

// Unsaved says that the job differs from the one in the file.
func (d *Desk) Unsaved() bool { return d.unsaved }

// Store is what keeps the session.
func (d *Desk) Store() Store { return d.store }

// Path is the session's file, empty if it has none yet.
func (d *Desk) Path() string { return d.path }

// Name is the name of the file without its folder, or the client's.
func (d *Desk) Name() string {
	if d.path != "" {
		return filepath.Base(d.path)
	}
	return d.Client()
}

// Stem is the file's name without its ending, for the names of outputs.
func (d *Desk) Stem() string {
	if d.path == "" {
		return "session"
	}
	return session.Stem(d.path)
}

// Client is the client's name, or words for one who has none yet. Before a
// class she has no name.
func (d *Desk) Client() string { return d.nameOf(d.seat) }

func (d *Desk) nameOf(s *seat) string {
	switch {
	case d.Projecting && d.Private && s.job.Client.Name != "":
		return d.Words.Say(text.PrivateName)
	case s.job.Client.Name != "":
		return s.job.Client.Name
	case s.empty():
		return d.Words.Say(text.NoClient)
	}
	return d.Words.Say(text.Unnamed)
}

// Empty says that nothing has been measured or chosen.
func (d *Desk) Empty() bool { return d.seat.empty() }

func (s *seat) empty() bool {
	return s.path == "" && s.job.Body.Len() == 0 && len(s.job.Style.IDs()) == 0 && s.job.Client.Name == ""
}

// Change puts a new job in place of the old one. It says whether anything
// changed; only then there is an entry in the history.
func (d *Desk) Change(job pattern.Job, says string) bool {
	if same(job, d.job) {
		return false
	}
	d.past = append(d.past, change{d.job, says})
	d.future = nil
	d.put(job)
	return true
}

// Undo takes the last change back and says which it was.
func (d *Desk) Undo() (says string, ok bool) { return d.turn(&d.past, &d.future) }

// Redo makes it again.
func (d *Desk) Redo() (says string, ok bool) { return d.turn(&d.future, &d.past) }

// CanUndo and CanRedo say whether there is anything to take back or to make
// again.
func (d *Desk) CanUndo() bool { return len(d.past) > 0 }

// CanRedo says whether a change was taken back.
func (d *Desk) CanRedo() bool { return len(d.future) > 0 }

func (d *Desk) turn(from, to *[]change) (string, bool) {
	n := len(*from)
	if n == 0 {
		return "", false
	}
	c := (*from)[n-1]
	*from = (*from)[:n-1]
	*to = append(*to, change{d.job, c.says})
	d.put(c.job)
	return c.says, true
}

func (d *Desk) put(job pattern.Job) {
	d.job = job
	d.version++
	d.unsaved = !same(job, d.saved)
}

// Say puts a sentence on the message line.
func (d *Desk) Say(id text.ID, args ...any) { d.Message, d.Warn = d.Words.Say(id, args...), false }

func same(a, b pattern.Job) bool { return reflect.DeepEqual(a, b) }
