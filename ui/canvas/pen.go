package canvas

import "strings"

// Pen is what a cell is drawn with. A cell has one pen, since a terminal
// gives it one colour: the highest wins.
type Pen uint8

// The pens, weakest first.
const (
	None     Pen = iota // nothing drawn here
	Grid                // single dots to measure by
	Faint               // what was drawn before, guides, leader lines
	Ghost               // how it was: usually dotted
	Line                // the drawing itself
	Second              // lines beside the drawing: inner, outer
	Mark                // marks on the drawing
	Words               // plain labels
	Selected            // what is chosen
	Newest              // what has just been drawn
	Alarm               // what is doubtful
	NumPens  = int(Alarm) + 1
)

// Palette holds the SGR sequence of each pen, "" for none. A sequence must
// begin with a reset ("\x1b[0;...m"), so that one sequence changes from any
// pen to any other. The sequence of None is that of empty cells and is only
// needed where the background is painted.
type Palette [NumPens]string

// blankLook is what a sequence shows on an empty cell: its background, as
// written, and whether it underlines, reverses or strikes. Empty cells stay in
// the pen before them where that shows nothing of its own, which saves bytes.
func blankLook(sgr string) (back string, marked bool) {
	sgr = strings.TrimSuffix(strings.TrimPrefix(sgr, "\x1b["), "m")
	for sgr != "" {
		n := CodeLength(sgr)
		switch code := sgr[:n]; {
		case code == "4" || code == "7" || code == "9":
			marked = true
		case strings.HasPrefix(code, "48;"), len(code) == 2 && code[0] == '4' && code[1] < '8', len(code) == 3 && code[:2] == "10":
			back = code
		}
		sgr = strings.TrimPrefix(sgr[n:], ";")
	}
	return back, marked
}

// CodeLength is the length of the code that a list of SGR codes ("0;38;5;12;1")
// begins with: 38 and 48 take the numbers of their colour with them.
func CodeLength(codes string) int {
	parts := 1
	switch {
	case strings.HasPrefix(codes, "38;5;"), strings.HasPrefix(codes, "48;5;"):
		parts = 3
	case strings.HasPrefix(codes, "38;2;"), strings.HasPrefix(codes, "48;2;"):
		parts = 5
	}
	for i := 0; i < len(codes); i++ {
		if codes[i] != ';' {
			continue
		}
		if parts--; parts == 0 {
			return i
		}
	}
	return len(codes)
}
