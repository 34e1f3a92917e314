// Package svg writes a drawing as a picture at true size.
//
// One user unit is one millimetre and the page states its millimetres, so a
// print without scaling is a pattern to cut by. A piece is a group with the
// piece's id; in it stands one group for each role, of that class, and lines
// of different roles differ by dash and weight, never by colour alone. Curves
// stay cubic, text stays text.
//
// The package draws what is in the drawing and adds nothing; it writes no
// style sheet, script, link or picture, so any reader will do.
package svg
