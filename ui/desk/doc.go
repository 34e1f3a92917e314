// Package desk is what the six stages share: the open session, the history of
// its Job, the Sheet drafted from it, the settings, and the message line.
//
// The Desk alone holds the Job. A stage or an overlay never changes anything
// itself: it returns an [Ask], and the root fulfils it with the methods of the
// Desk. Undo is a stack of former Jobs, each with the sentence that led away
// from it, so nothing ever has to be computed backwards.
//
// Several sessions may be open, each in a seat with its own history and its own
// rescue copy (seat.go); one of them is on the desk.
//
// The package knows no key and no cell, and writes no file: files are behind
// the [Store].
package desk
