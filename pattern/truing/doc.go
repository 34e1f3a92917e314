// Package truing holds the checks that a finished draft must pass before
// cloth is cut: what is sewn together must be of one length, lines must run
// on smoothly over the seams, corners must be square, girths must be body and
// ease, and she must be able to get in, walk and sit.
//
// A check reads a [pattern.Sheet], pieces, edges, points, figures, settings,
// and measures on the drawing. It never knows how the draft was made, changes
// nothing, and refuses nothing: it names two lengths, what is wrong, and what
// to change. The list is [Checks]; [Run] performs it.
//
// Where a limit comes from stands beside it in limits.go: published, found on
// the 993 women of the ANSUR II survey (2012), common practice, or memory.
package truing
