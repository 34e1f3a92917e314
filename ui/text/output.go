package text

// Lay.
const (
	LayBuy       ID = "Buy {1}"
	LayCloth     ID = "{1}, {2} wide, {3}"
	LayUsed      ID = "{1} % used"
	LayLeft      ID = "Left over: {1}"
	LayWidth     ID = "{1} wide: {2}"
	LaySearching ID = "Searching; the best so far is {1}. Esc stops it."
	LayFound     ID = "Shorter by {1}."
	LayStopped   ID = "Stopped at {1}."
	LayEnough    ID = "The piece is enough."
	LayShort     ID = "The piece is {1} short."
	LayPinned    ID = "{1} is pinned."
	LayLoose     ID = "{1} is loose."
	LayBlocked   ID = "{1} would lie on {2}."
	LayTooWide   ID = "{1} is wider than the cloth. Take cloth of {2} or more."
	LayEmpty     ID = "Nothing to lay yet: the drawing waits for {1}."
	LayByLength  ID = "Two lengths and the hem, by the usual rule."
	LayRemnant   ID = "Size of the piece, like {1}"
	LayFlaw      ID = "Flaw: along, across, length, width"
)

// Cut.
const (
	CutFolder   ID = "Into {1}"
	CutPages    ID = "{1} pages"
	CutPage     ID = "1 page"
	CutSize     ID = "{1} x {2}"
	CutPaper    ID = "Paper {1}"
	CutNothing  ID = "Nothing is ticked. Space ticks a line."
	CutWritten  ID = "Written: {1} files into {2}."
	CutOne      ID = "Written: {1}."
	CutSame     ID = "{1} is there already, the same."
	CutExists   ID = "{1} is there already and differs."
	CutReplace  ID = "Replace it"
	CutLeave    ID = "Leave it"
	CutOther    ID = "Another folder"
	CutNot      ID = "{1} was not written: {2}."
	CutFindings ID = "{1} checks fail. It can be written; look at True first."
	CutProgress ID = "Writing {1} of {2}."
	CutEmpty    ID = "Nothing to write yet: the drawing waits for {1}."
)

// The projector.
const (
	ProjectorPressed ID = "-> {1}"
	ProjectorPrivate ID = "Her numbers are hidden. p shows them."
	ProjectorShown   ID = "Her numbers show. p hides them."
	ProjectorBack    ID = "Back at the bench."
	ProjectorDark    ID = "any key shows it again"
)

// The linear mode: prompt and answer.
const (
	LinearMode       ID = "Plain mode, words only, because of {1}. Type help for the words."
	LinearPrompt     ID = "{1}> "
	LinearUnknown    ID = "\"{1}\" is no word here. Type help."
	LinearUnclear    ID = "\"{1}\" may be {2}. Type more of it."
	LinearEnd        ID = "The input ended. The work is rescued in {1}."
	LinearQuit       ID = "The work is not saved. Type save, drop or stay."
	LinearNumberOnly ID = "A number is an answer; no question is open."
)
