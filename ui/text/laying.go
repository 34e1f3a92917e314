package text

// The lay on the table.
const (
	LayOn        ID = "{1} cloth, {2} wide, {3}{4}."
	LayNap       ID = ", with a nap"
	LayUsual     ID = "The usual width: none is named."
	LayHers      ID = "Kept lay: {1} long, {2} % used. By the hand rule {3}."
	LayBest      ID = "Best of {1} evaluations: {2} long, {3} % used. By the hand rule {4}."
	LayShelf     ID = "First lay, side by side: {1} long, {2} % used. By the hand rule {3}."
	LayByHand    ID = "Laid by you: {1} long, {2} % used. By the hand rule {3}."
	LayNoHand    ID = "none"
	LaySearch    ID = "Searching; Esc stops it."
	LayDone      ID = "{1} long after {2} evaluations."
	LayFull      ID = "It was searched long enough: 100 million evaluations."
	LayKept      ID = "Lay on the {1} cloth kept: {2}"
	LayKeptYet   ID = "This lay is kept already."
	LayMoved     ID = "{1} moved and pinned; n lays the rest anew."
	LayNoPlace   ID = "{1} finds no free place that way."
	LayNoTurn    ID = "{1} stays as it is: the nap runs one way."
	LayOnFold    ID = "{1} lies on the fold: it moves along it only."
	LayFlawLike  ID = "A flaw, along, across, length, width, like {1}"
	LayFlawIs    ID = "Flaw at {1} along, {2} across"
	LayFlawRead  ID = "A flaw has four lengths, like {1}."
	LayPieceLike ID = "The remnant, along the grain x across, like {1}"
	LayPieceRead ID = "A remnant has a length and a width, like {1}."
	LayPiece     ID = "Remnant {1} by {2}:"
	LayPriced    ID = "price {1}"
	LayTrying    ID = "Laying it on other widths."
	LayRemTrying ID = "Laying it on the remnant."
	LayNothing   ID = "Nothing is searched for."
)

// What is in hand, and the heads of the table of widths.
const (
	LayTakeOne   ID = "Tab takes a piece in hand first."
	LayHeadWidth ID = "wide"
	LayHeadBuy   ID = "laid out"
	LayHeadHand  ID = "by the hand rule"
)
