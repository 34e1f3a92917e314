// Package view lays a Sheet on a canvas: which piece lies where, which mark is
// drawn with which pen, what stands beside it.
//
// A [Scene] says what lies on the table, an [Eye] how she looks at it. The
// table is measured in millimetres, x to the right and y down. Lying, the fold
// of the front runs along the top edge with the neck at the left hand; the
// back lies below it, mirrored, its centre along the bottom, so that the two
// side seams face each other as they will be sewn. Standing, the same is
// turned: folds at the left and right, neck at the top.
//
// The package computes no length of the pattern: what it writes beside a mark
// is read off the mark. It knows no key.
package view
