package export

import (
	"fmt"
	"math"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

const (
	degree = math.Pi / 180

	leastPage  = 520.0 // the squares and a readable column of words
	squareGap  = 12.0  // more than the 5 mm that must stay clear round a square
	titleSize  = 10.0
	noteSize   = 5.5
	squareSize = 8.0 // lettering in the squares
)

// squares are the control squares that prove the scale: one for a metric
// tape, one for an inch tape.
var squares = []struct {
	side float64
	says string
}{{100, "10 cm"}, {101.6, "4 in"}}

// furniture makes, for a width of page, all that stands above the pieces.
func furniture(sheet *pattern.Sheet, d Drawing) func(width float64) []Item {
	return func(width float64) []Item {
		var out []Item
		x := margin
		for _, s := range squares {
			out = append(out, square(geom.Point{X: x, Y: margin}, s.side, s.says)...)
			x += s.side + squareGap
		}
		y := margin
		room := margin + width - x
		write := func(text string, size float64) {
			for _, l := range wrap(text, size, room) {
				out = append(out, Item{
					Role: pattern.RoleText, Kind: Words, Name: "note", Text: l,
					At: geom.Point{X: x, Y: micron(y + ascent*size)}, Height: size,
				})
				y += leading * size
			}
		}
		write(d.Title, titleSize)
		for _, n := range notes(sheet, d.Facts) {
			write(n, noteSize)
		}
		return out
	}
}

func square(at geom.Point, side float64, says string) []Item {
	a, b := geom.Point{X: at.X + side, Y: at.Y}, geom.Point{X: at.X + side, Y: at.Y + side}
	c := geom.Point{X: at.X, Y: at.Y + side}
	middle := geom.Point{X: at.X + side/2, Y: at.Y + side/2 + squareSize/3}
	return []Item{
		{Role: pattern.RoleGuide, Name: says + " square", Path: geom.Lines(at, a, b, c, at)},
		{Role: pattern.RoleText, Kind: Words, Name: says, Text: says, At: middle, Height: squareSize, Middle: true},
	}
}

// methods are the drafting methods as the paper names them.
var methods = map[string]string{
	pattern.Measured: "Method: drafted from her measurements",
	pattern.Direct:   "Method: drafted as a block by direct measure",
	pattern.Thumb:    "Method: drafted by the rule of thumb",
}

// notes are the sentences on the page, the caution last.
func notes(sheet *pattern.Sheet, f Facts) []string {
	var out []string
	method := methods[f.Method]
	if method == "" {
		method = "Method: " + plainTitle(f.Method)
	}
	if !f.Measured.IsZero() {
		method += "; measured " + day(f.Measured)
	}
	out = append(out, method+".", "Drawn at full size; lengths in words are in "+unitWords[f.Unit]+".", allowanceNote(sheet))
	if f.Whole {
		out = append(out, "Pieces for the fold are drawn whole: cut them in a single layer.")
	}
	if p := proposedNote(sheet, f.Unit); p != "" {
		out = append(out, p)
	}
	for _, n := range sheet.Notes {
		out = append(out, n.In(f.Unit))
	}
	if !sheet.Complete {
		out = append(out, "The draft is not complete: not for cutting.")
	}
	for _, finding := range sheet.Findings {
		if finding.Verdict == pattern.Fail {
			out = append(out, "Truing found a fault: "+finding.Title+". Put it right before cutting.")
		}
	}
	return append(out,
		"Before cutting, measure the control squares with your tape: 10 cm and 4 in, both ways. If they are not true, print again without scaling.",
		"Sew it in a test cloth first.")
}

const lineKinds = "Heavy line: cut. Dashed line: sew. Dash and dot: the fold of the cloth, not cut."

func allowanceNote(sheet *pattern.Sheet) string {
	for _, p := range sheet.Pieces {
		if p.Included {
			return "The figures include the seam allowances. " + lineKinds
		}
	}
	return "Seam allowances are drawn. " + lineKinds
}

// proposedNote names the figures that are not hers.
func proposedNote(sheet *pattern.Sheet, u measure.Unit) string {
	var parts []string
	for _, f := range sheet.Proposed() {
		name := strings.ReplaceAll(string(f.ID), "_", " ")
		if m, ok := measure.Find(f.ID); ok {
			name = m.Term
		}
		parts = append(parts, name+" "+u.Tape(f.Value))
	}
	if len(parts) == 0 {
		return ""
	}
	return "Proposed, not measured: " + strings.Join(parts, ", ") + ". Measure them before cutting good cloth."
}

// says is the one sentence on the drawing for those who cannot see it.
func says(d Drawing) string {
	names := make([]string, len(d.Pieces))
	for i, p := range d.Pieces {
		names[i] = strings.ToLower(p.Piece.Title)
	}
	if len(names) == 1 {
		return "Sewing pattern at full size, one piece: " + names[0] + "."
	}
	return fmt.Sprintf("Sewing pattern at full size, %d pieces: %s.", len(names), strings.Join(names, ", "))
}
