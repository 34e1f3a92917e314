// Package theme gives colours and weight to what stands on the screen.
//
// A theme is a row of a table: a background it is made for, and a few inks. A
// role (text, newest, warning ...) says with which ink and which weight it is
// written, the same in all themes, so that colour is never the only sign: take
// all colours away and what is newest is still bold, what is selected still
// reversed. The contrast of every ink is computed in the tests.
//
// The package asks the terminal nothing. What the terminal can show is taken
// from the environment (ColourFrom), which theme suits from COLORFGBG (Auto).
// It writes the escape sequences itself.
package theme
