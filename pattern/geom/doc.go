// Package geom is the plane: points, lines, cubic curves, paths of them,
// parallels, crossings and closed outlines.
//
// Everything is counted in float64 millimetres, with x to the right and y
// DOWN, as on paper and screen. Left of travel is therefore (x,y) -> (y,-x),
// and a ring has a positive area when it runs clockwise to the eye.
//
// Curves stay cubic Béziers from end to end; a straight segment is a cubic
// with its handles on the thirds and a flag, and is treated exactly. Nothing
// is flattened unless Flatten is asked to, and then within a stated distance.
//
// The package is pure: no value is changed in place, nothing is read or kept,
// and the same input gives the same bits on every machine (products that feed
// sums are converted, so that no compiler fuses them). It knows no word of any
// trade and never will.
package geom
