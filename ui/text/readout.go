package text

// The chalk card read out, one mark a screen.
const (
	ReadoutTitle  ID = "Read it to me"
	ReadoutMark   ID = "{1}: mark {2} of {3}, {4}"
	ReadoutWord   ID = "{1}: {2} of {3}"
	ReadoutCut    ID = "cutting line"
	ReadoutSew    ID = "stitching line"
	ReadoutDown   ID = "down"
	ReadoutUp     ID = "up"
	ReadoutOut    ID = "out"
	ReadoutBeyond ID = "beyond the centre"
	ReadoutTicked ID = "ticked"
	ReadoutStart  ID = "Begin the line here."
	ReadoutRuled  ID = "Rule from the last mark."
	ReadoutCurve  ID = "By hand along the curve from the last mark."
	ReadoutDart   ID = "Leave a gap: the dart lies between, cut folded."
	ReadoutAside  ID = "A corner to know, not a mark of the line."
	ReadoutDone   ID = "{1} is marked: {2} marks."
	ReadoutNext   ID = "Enter goes on to {1}."
	ReadoutEnd    ID = "That was the last piece. Enter ends."
	ReadoutHow    ID = "Enter ticks and goes on, Left goes back. Esc ends; it goes on here later."
	ReadoutNone   ID = "No card yet: the draft is not whole. Draft says what its steps wait for."
	ReadoutTick   ID = "Tick, next"
	ReadoutBack   ID = "Mark before"
	ReadoutPiece  ID = "Next piece"
)
