// Package pattern is the vocabulary of the drafting room: the values that
// every other room passes on and none of them changes.
//
// A [Job] is all that she measured and chose. One pure function, Draft in
// pattern/workroom, turns it into a [Sheet]: every choice resolved
// ([Setting]), every [Step] with its sum, the [Mark]s that the steps made,
// the [Piece]s cut from the marks, and the [Finding]s of truing. Screens and
// exports are views of the Sheet; none of them computes a length.
//
// Lengths are measure.Length (millimetres). Points and paths are geom values
// in millimetres in the drafting frame: x outward from the fold or the centre
// line, y down from the top line, which is the level of the side neck point.
//
// The package holds no rule of the trade, draws nothing, and reads no file,
// clock or screen.
package pattern
