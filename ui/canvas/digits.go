package canvas

import "strings"

// Figures writes a number large enough for the last row of a room: three rows
// of half-blocks, or of strokes in ASCII. Anything but digits leaves a gap.
func Figures(number string, g Glyphs) [3]string {
	font := &blockFigures
	if g == ASCII {
		font = &strokeFigures
	}
	var rows [3]strings.Builder
	for i, r := range number {
		for row := range rows {
			if i > 0 {
				rows[row].WriteByte(' ')
			}
			if r < '0' || r > '9' {
				rows[row].WriteString("   ")
				continue
			}
			rows[row].WriteString(font[r-'0'][row])
		}
	}
	return [3]string{rows[0].String(), rows[1].String(), rows[2].String()}
}

var blockFigures = [10][3]string{
	{"█▀█", "█ █", "█▄█"},
	{"▄█ ", " █ ", "▄█▄"},
	{"▀▀█", "█▀▀", "█▄▄"},
	{"▀▀█", " ▀█", "▄▄█"},
	{"█ █", "▀▀█", "  █"},
	{"█▀▀", "▀▀█", "▄▄█"},
	{"█▀▀", "█▀█", "█▄█"},
	{"▀▀█", "  █", "  █"},
	{"█▀█", "█▀█", "█▄█"},
	{"█▀█", "▀▀█", "▄▄█"},
}

var strokeFigures = [10][3]string{
	{" _ ", "| |", "|_|"},
	{"   ", "  |", "  |"},
	{" _ ", " _|", "|_ "},
	{" _ ", " _|", " _|"},
	{"   ", "|_|", "  |"},
	{" _ ", "|_ ", " _|"},
	{" _ ", "|_ ", "|_|"},
	{" _ ", "  |", "  |"},
	{" _ ", "|_|", "|_|"},
	{" _ ", "|_|", " _|"},
}
