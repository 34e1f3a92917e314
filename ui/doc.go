// Package ui is the workbench: the root model that holds the desk, the six
// stages, the overlays over them, and the size of the screen.
//
// What happens to a message:
//
//	key      the top overlay; else a field that is typed in; else the stage,
//	         by the key table: what is everywhere first (keys.go)
//	ask      what a stage or an overlay wants is fulfilled in one place (ask.go)
//	answer   goes to the one who asked, and is dropped if its job is old
//	size     one line above, one message line, one footer, the rest to the
//	         stage (frame.go, line.go)
//
// Several clients may be open at once: each has a bay with its own six stages
// (model.go), and leaving asks once about all of them. The projector lies over
// everything (projecting.go); the bench below waits as it was.
//
// What she changes of the looks is kept (keeping.go), the words of a stage can
// be copied (copying.go), and a new line grows into its place, the only thing
// that moves by itself (motion.go). What all this promises stands, with the
// tests that hold it, in requirements_test.go.
//
// Files are only touched in commands (save.go, rescue.go, keeping.go). Every command and
// goroutine runs behind one guard (guard.go), so that whatever fails, the work
// is rescued, the terminal restored and a plain sentence said (run.go).
//
// The package works out nothing about patterns.
package ui
