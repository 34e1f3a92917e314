package desk

import (
	"chalkfold/pattern"
	"chalkfold/ui/keys"
)

// Stage is one of the six stages of the work. It sits behind a pointer,
// keeps its cursor, zoom and caches by version, and never a copy of the Job.
// It does not act: it returns an Ask, which the root fulfils.
type Stage interface {
	Title() string
	Fact() string         // one short fact for line 1: "9/14"
	Actions() []Offer     // possible here and now, likeliest first
	Do(id keys.ID) Ask    // an action of the key table
	Type(k Key) Ask       // a key while Typing
	Typing() bool         // a field has the focus: letters are text
	Hear(a Answer) Ask    // the answer to a Run of this stage
	View(r Rect) []string // exactly r.Rows lines, none wider than r.Columns
}

// Overlay lies over a stage: help, commands, open, leave ... The top one
// gets the keys first.
type Overlay interface {
	Title() string
	Actions() []Offer
	Do(id keys.ID) Ask
	Type(k Key) Ask
	Typing() bool
	Hear(a Answer) Ask
	View(r Rect) []string
	Covers() bool // the whole screen, line 1 and footer too
}

// Offer is a row of the key table as it stands now: possible, or why not.
type Offer struct {
	ID     keys.ID
	Title  string // another title than the table's, if it fits better here
	WhyNot string // empty: possible
	Quiet  bool   // not in the footer
}

// Key is one key: its name in the key table ("ctrl+s", "enter"), or the
// letters that were typed or pasted.
type Key struct {
	Name  string
	Runes []rune
	Paste bool
}

// Rect is the room that a stage or an overlay may fill.
type Rect struct{ Columns, Rows int }

// StageID numbers the stages from 1, as the digits do.
type StageID int

// The six stages.
const (
	NoStage StageID = iota
	Measure
	Style
	Draft
	True
	Lay
	Cut
)

// Ask is what a stage or an overlay wants done. The zero Ask wants nothing;
// several wishes of one Ask are fulfilled in the order of the fields.
type Ask struct {
	Job   *pattern.Job   // the new job; with Says it is one entry of the history
	Says  string         // "Waist 72 -> 70 cm"
	Close bool           // close the top overlay
	Go    StageID        // go to a stage
	Place *pattern.Place // and show that spot there
	Open  Overlay        // lay an overlay over it
	Run   func() Answer  // work for a command: files, exports
	For   string         // a word for the message line while Run works
	Do    keys.ID        // do this action as if its key had been pressed
	Say   string         // the message line
	Warn  bool           // Say is about something that went wrong
	Take  *Opened        // open another session; that on the desk stays open
	Done  *Running       // a page of a lesson is done
	Study *Running       // go to a page of a lesson; without an id: no more
	Seat  SeatID         // put one of the open sessions on the desk
	Shut  SeatID         // close one of them; with Save, once it is saved
	Lose  bool           // Shut without asking about unsaved work
	Save  *Save          // save, and say so on the message line
	Set   *Settings      // change the looks
	Leave bool           // leave the program, asking if anything is unsaved
	Quit  bool           // leave at once, after Save if there is one
}

// Opened is a session to be taken up. The history begins anew with it.
type Opened struct {
	Store Store
	Path  string       // empty: it has no file yet
	Saved pattern.Job  // as it is in the file
	Job   *pattern.Job // other work on it, from a rescue copy; nil: Saved
	Says  string       // for the message line: "Opened anna.chalkfold.toml."
	Go    StageID      // where to begin; NoStage: Measure
	Anew  bool         // in place of the one on the desk: the file was read again
}

// Save says how to save. The zero Save writes to the session's own file and
// asks for a name if it has none, or what to do if the file was changed
// elsewhere.
type Save struct {
	Path string // under another name, which becomes the session's own
	Over bool   // whatever stands there
}

// Answer comes back from Run to the stage or overlay that asked; it carries
// the version of the job it was made for and is dropped if that is old.
type Answer struct {
	Version int
	What    string // which of its errands
	Err     error
	Value   any
	Keep    bool // deliver it even if the job has changed since
}
