// Package ease draws how much wider a garment is than she is, level by level
// from the shoulders to the hem: what is good there, where her body lies, and
// where the garment does. The guide prints it, a command writes it as SVG.
//
// It works nothing out: every length is a row of the table that the checks
// make, and the picture places it on a scale.
package ease
