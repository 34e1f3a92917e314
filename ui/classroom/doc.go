// Package classroom reads a folder of learners' sessions, so that who teaches
// sees at a glance how far each has come: what is measured, how far the draft
// goes, what truing says, which lesson was begun last.
//
// Every session of the folder is one [Row]; folders inside it are not looked
// into. A file that cannot be read is a row too, with a sentence, and stops
// nobody else. The number of files and the size of each are bounded.
//
// The package never writes, never asks and never shows anything; it says
// verdicts as words of the trade and leaves the rest to those who show it.
package classroom
