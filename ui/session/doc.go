// Package session reads and writes the session file: the one file in which
// a client's measures, the style and all that was noted with them are kept.
//
// A Session is the file as it was read: its bytes, what was understood of
// them (a pattern.Job), and where every value stands. Saving makes edits in
// place: a value that changed gets new bytes, a new key goes after the last
// line of its table, and all else, comments and tables of others among it,
// stays as it was. What was written is read again before it reaches the disk;
// if it does not say what was meant, nothing is written.
//
// The files of a reading:
//
//	guard.go   size, letters and nesting, before the decoder sees anything
//	scan.go    where every key and value stands
//	read.go    tables into a Job; every fault of a file, not the first one
//	edit.go    changes as bytes
//	write.go   two Jobs into changes
//	rescue.go  copies of unsaved work; recent.go the clients worked on last
//	lesson.go  the lesson begun last
//	demo.go    the demonstration's own session
//
// Every fault is a measure.Refusal whose place is file, line and column.
//
// The package never drafts, never asks anybody and never shows anything.
package session
