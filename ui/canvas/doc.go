// Package canvas turns lines in dots into cells of text.
//
// A canvas is a grid of cells. Every cell is split into dots (braille two by
// four, half-blocks one by two), lines are drawn into the dots with a pen, and
// words are laid over them. The dots are square as long as a cell is twice as
// high as it is wide, so a circle in dots is a circle on the screen.
//
// Dot coordinates: the centre of the first dot is (0, 0), x grows to the
// right, y grows downwards, and a point belongs to the dot it is nearest to.
//
// Order matters once: draw all lines before the first Label, because a label
// looks for free cells.
//
// The package never knows what it draws, never asks the terminal anything and
// never chooses a colour: the caller gives a Palette.
package canvas
