// Package lessonpage writes the steps of a draft as one web page for a
// learner's phone: a step at a time, the drawing growing with it, what to do,
// the sum, why, and the usual slip.
//
// The page is one file that asks the network for nothing and holds no name,
// date or note of the client; sums name her measures instead of giving them,
// unless that is asked for. Without its script, and on paper, all steps stand
// one below the other. The drawing is the marks alive at the step, each path in
// the coordinates of the draft, in millimetres; the piece lies on the table,
// the neck at the left.
//
// The package drafts nothing and knows no date: the same sheet makes the same
// bytes.
package lessonpage
