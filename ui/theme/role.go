package theme

import "chalkfold/ui/canvas"

// Role is what a piece of text is, from which its look follows.
type Role int8

// The roles of words on the screen.
const (
	Text     Role = iota
	Muted         // said by the way
	Title         // headings
	Outline       // the drawing
	Guide         // grids, rulers, lines that help
	Ghost         // how it was before
	Newest        // what has just come
	Selected      // the row or field in hand
	Accent        // the stage, the step: where she is
	Key           // a key in the footer or in help
	Warn          // doubts and findings
	Ok            // what is in order
	numRoles = int(Ok) + 1
)

// look is how a role or pen is written in every theme.
type look struct {
	ink                      int
	bold, underline, reverse bool
}

var looks = [numRoles]look{
	Text:     {ink: textInk},
	Muted:    {ink: mutedInk},
	Title:    {ink: textInk, bold: true},
	Outline:  {ink: lineInk},
	Guide:    {ink: guideInk},
	Ghost:    {ink: mutedInk},
	Newest:   {ink: newestInk, bold: true},
	Selected: {ink: selectedInk, bold: true, reverse: true},
	Accent:   {ink: accentInk, bold: true},
	Key:      {ink: textInk, bold: true},
	Warn:     {ink: warnInk, bold: true},
	Ok:       {ink: okInk},
}

// penLooks are those of lines. Nothing is reversed or underlined: a line is
// told apart by weight, thickness and dashes.
var penLooks = [canvas.NumPens]look{
	canvas.None:     {ink: textInk},
	canvas.Grid:     {ink: guideInk},
	canvas.Faint:    {ink: guideInk},
	canvas.Ghost:    {ink: mutedInk},
	canvas.Line:     {ink: lineInk},
	canvas.Second:   {ink: mutedInk},
	canvas.Mark:     {ink: lineInk},
	canvas.Words:    {ink: textInk},
	canvas.Selected: {ink: accentInk, bold: true},
	canvas.Newest:   {ink: newestInk, bold: true},
	canvas.Alarm:    {ink: warnInk, bold: true},
}
