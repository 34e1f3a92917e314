package keys

// ID names an action. It is also its name in a file of changed keys.
type ID string

// Where is the place in which a key works.
type Where int8

// The places. Everywhere also while typing; NotTyping as long as no field has
// the focus; OnTable whenever the cloth is shown and no field has the focus.
const (
	Everywhere Where = iota
	Field
	NotTyping
	OnTable
	Measure
	Style
	Draft
	Question
	True
	Lay
	Cut
	Projector
	Overlay
	Lesson
	numWheres
)

var whereTitles = [numWheres]string{
	Everywhere: "Everywhere, also while typing",
	Field:      "In a field",
	NotTyping:  "When no field has the focus",
	OnTable:    "At the table",
	Measure:    "Measure",
	Style:      "Style",
	Draft:      "Draft",
	Question:   "At a question",
	True:       "True",
	Lay:        "Lay",
	Cut:        "Cut",
	Projector:  "On the projector",
	Overlay:    "In a list or window",
	Lesson:     "While a lesson runs",
}

// Wheres are all places, in the order help shows them.
func Wheres() []Where {
	all := make([]Where, numWheres)
	for i := range all {
		all[i] = Where(i)
	}
	return all
}

// Title is the heading of a place.
func (w Where) Title() string {
	if w < 0 || w >= numWheres {
		return ""
	}
	return whereTitles[w]
}

// typing tells whether letters belong to a text here.
func (w Where) typing() bool { return w == Field || w == Question || w == Overlay }

// stage tells whether this is a stage, with the table below it.
func (w Where) stage() bool {
	switch w {
	case Measure, Style, Draft, True, Lay, Cut, Projector:
		return true
	}
	return false
}

// Action is one row of the table.
type Action struct {
	ID       ID
	Keys     []string // as bubbletea names them; none: command list only
	Untyped  []string // further keys, only while no field has the focus
	Shown    string   // the keys as people read them
	Title    string   // in help and in the command list
	Foot     string   // the same in one or two words, for the footer
	Says     string   // one sentence
	Synonyms []string // what she may type in the command list
	Where    Where

	// Special is the action of Everywhere whose key this row takes and whose
	// meaning it narrows: Enter accepts, and in True that is "go there".
	Special ID
	// Instead is what to do where something on the way swallows the key.
	Instead []string
}
