// Package keys is the table of everything that can be asked for, and of the
// keys that ask for it.
//
// Footer, help, command list, README and man page are read from this one
// table, so what is shown and what works cannot part. A row is plain data:
// what an action does stands with the stage or overlay that does it, bound by
// the row's ID. Names of keys are those that bubbletea gives ("ctrl+p",
// "pgdown", " " for the space bar).
//
// The package never handles a key and never draws.
package keys
