package desk

import (
	"slices"

	"chalkfold/pattern"
	"chalkfold/ui/session"
)

// SeatID names one of the open sessions for as long as the program runs.
type SeatID int

// seat is one open session with all that belongs to it alone: its file, its
// work, its history. Several may be open; one is on the desk.
type seat struct {
	id      SeatID
	store   Store
	path    string
	job     pattern.Job
	saved   pattern.Job
	opened  pattern.Job
	unsaved bool
	past    []change
	future  []change
	study   Running // the lesson that runs
}

// Seat is an open session as the list of clients shows it.
type Seat struct {
	ID      SeatID
	Client  string
	Path    string
	Unsaved bool
	Here    bool // it is the one on the desk
}

// Work is what would have to be rescued of one session.
type Work struct {
	Store   Store
	Job     pattern.Job
	Unsaved bool
}

func (s *seat) set(o Opened) {
	if o.Store == nil {
		o.Store = session.New(o.Path, o.Saved)
	}
	s.store, s.path = o.Store, o.Path
	s.saved, s.job = o.Saved, o.Saved
	if o.Job != nil {
		s.job = *o.Job
	}
	s.opened = s.saved
	s.past, s.future = nil, nil
	s.study = Running{}
	s.unsaved = !same(s.job, s.saved)
}

// idle says that nothing is lost if another session takes its place: it has no
// file, and nothing was changed in it.
func (s *seat) idle() bool { return s.path == "" && !s.unsaved && len(s.past) == 0 }

// Take puts another session in the place of the one on the desk; its history
// is empty.
func (d *Desk) Take(o Opened) {
	if d.seat == nil {
		d.add()
	}
	d.seat.set(o)
	d.version++
}

// Open puts a session on the desk and keeps the one that lay there, unless
// nothing would be lost with it. A session that is open already is taken as it
// is: two of the same file would overwrite each other. It says whether the
// session is a new one here.
func (d *Desk) Open(o Opened) (fresh bool) {
	at, there := d.find(o.Path)
	switch {
	case there && o.Job == nil:
		d.Switch(at)
		return false
	case there:
		d.Switch(at) // rescued work takes the place of what is in the file
	case !d.seat.idle():
		d.add()
	}
	d.Take(o)
	return true
}

func (d *Desk) add() {
	d.given++
	d.seat = &seat{id: d.given}
	d.seats = append(d.seats, d.seat)
}

// find is the open session of a file.
func (d *Desk) find(path string) (SeatID, bool) {
	for _, s := range d.seats {
		if path != "" && s.path == path {
			return s.id, true
		}
	}
	return 0, false
}

// At is which session is on the desk.
func (d *Desk) At() SeatID { return d.seat.id }

// Switch puts another open session on the desk. It says whether there is one.
func (d *Desk) Switch(to SeatID) bool {
	s := d.byID(to)
	if s == nil {
		return false
	}
	if s != d.seat {
		d.seat = s
		d.version++
	}
	return true
}

func (d *Desk) byID(id SeatID) *seat {
	for _, s := range d.seats {
		if s.id == id {
			return s
		}
	}
	return nil
}

// Close takes an open session away; where it was the last, an empty one comes
// in its place.
func (d *Desk) Close(id SeatID) {
	at := slices.IndexFunc(d.seats, func(s *seat) bool { return s.id == id })
	if at < 0 {
		return
	}
	here := d.seats[at] == d.seat
	d.seats = slices.Delete(d.seats, at, at+1)
	switch {
	case len(d.seats) == 0:
		unit := d.job.Unit
		d.add()
		d.Take(Opened{Saved: pattern.Job{Unit: unit}})
	case here:
		d.Switch(d.seats[min(at, len(d.seats)-1)].id)
	}
}

// JobOf is the work on an open session.
func (d *Desk) JobOf(id SeatID) pattern.Job {
	if s := d.byID(id); s != nil {
		return s.job
	}
	return pattern.Job{}
}

// StoreOf is what keeps an open session.
func (d *Desk) StoreOf(id SeatID) Store {
	if s := d.byID(id); s != nil {
		return s.store
	}
	return nil
}

// Seats are the open sessions in the order in which they were opened.
func (d *Desk) Seats() []Seat {
	var out []Seat
	for _, s := range d.seats {
		out = append(out, Seat{ID: s.id, Client: d.nameOf(s), Path: s.path, Unsaved: s.unsaved, Here: s == d.seat})
	}
	return out
}

// AllUnsaved are those with work that is not saved, the one on the desk first.
func (d *Desk) AllUnsaved() []Seat {
	var out []Seat
	for _, s := range d.Seats() {
		switch {
		case s.Unsaved && s.Here:
			out = append([]Seat{s}, out...)
		case s.Unsaved:
			out = append(out, s)
		}
	}
	return out
}

// Works is the work on all open sessions.
func (d *Desk) Works() []Work {
	var out []Work
	for _, s := range d.seats {
		out = append(out, Work{s.store, s.job, s.unsaved})
	}
	return out
}

// SavedIn notes that a job of one session is now in its file. It may be an
// older one than that on the desk: saving runs beside the work.
func (d *Desk) SavedIn(id SeatID, job pattern.Job, path string) {
	s := d.byID(id)
	if s == nil {
		return
	}
	s.saved = job
	if path != "" {
		s.path = path
	}
	s.unsaved = !same(s.job, s.saved)
}

// MarkSaved is SavedIn of the session on the desk.
func (d *Desk) MarkSaved(job pattern.Job, path string) { d.SavedIn(d.seat.id, job, path) }
