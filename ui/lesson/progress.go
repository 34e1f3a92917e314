package lesson

import "maps"

// Progress is how far she is: by lesson id, the number of the last page that
// was answered or done. A session keeps it.
type Progress map[string]int

// State says how a lesson stands.
type State int8

// Not begun, begun, all pages done.
const (
	New State = iota
	Begun
	Done
)

// State of a lesson.
func (p Progress) State(l Lesson) State {
	switch n := p[l.ID]; {
	case n <= 0:
		return New
	case n >= len(l.Pages):
		return Done
	}
	return Begun
}

// Resume is the page to go on at, from 1: the one after the last answered. A
// lesson that is done begins again.
func (p Progress) Resume(l Lesson) int {
	n := p[l.ID]
	if n <= 0 || n >= len(l.Pages) {
		return 1
	}
	return n + 1
}

// Answered is the progress with that page done. Going back over earlier pages
// loses nothing.
func (p Progress) Answered(id string, page int) Progress {
	out := maps.Clone(p)
	if out == nil {
		out = Progress{}
	}
	out[id] = max(out[id], page)
	return out
}

// Next is the first lesson in the order of the course that is not done; false
// where all are.
func (p Progress) Next() (Lesson, bool) {
	for _, l := range All() {
		if p.State(l) != Done {
			return l, true
		}
	}
	return Lesson{}, false
}
