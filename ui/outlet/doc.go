// Package outlet puts a sheet into a folder in the formats that were asked
// for, under the names that README lists: STEM.svg, STEM.dxf, STEM-card.txt.
//
// It knows which formats there are ([Formats]: one row each), what their files
// are called, and the rule for files that exist: equal content is left and
// said, other content is refused unless forced, and nothing is ever half
// written. One file's trouble does not stop the others.
//
// It does not draft, asks nobody and prints nothing; the caller says the
// results.
package outlet
