// Package cardpdf prints the chalk card large: 14 points, two columns, to be
// read from the floor beside the cloth. First the cutting marks of a piece,
// then its stitching marks, each mark a row with two numbers and its join.
//
// The numbers are those of export/card; this package only sets them.
package cardpdf
