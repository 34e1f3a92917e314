// Package fitting turns what was seen on the body into inputs to change.
//
// A dress is never altered by moving points of its pieces: what was pinned goes
// back into the measurement or the choice that it came from, everything is
// drafted anew, and the alteration is written down in the session with its
// date, so that it can be compared, taken back and made again next month.
//
// [Signs] is the list of what may be seen, in plain words; [Propose] says for
// one of them which inputs would change, old and new. [Explain] goes the other
// way: from all pins at once it looks for the least change of inputs that
// accounts for them. [Level] reads a hem from the floor. [Log] tells how the
// alterations of a session stand, and [Then] what her measurements did over the
// months.
//
// The package is pure: it reads no clock (dates come from the caller) and it
// decides nothing. It proposes jobs; who asked takes one or leaves it.
package fitting
