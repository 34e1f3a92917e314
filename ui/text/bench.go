package text

// The table and the forms.
const (
	BackAtWork    ID = "Back at the words."
	NothingDrawn  ID = "nothing is drawn yet"
	FieldOpen     ID = "Out of the field: 1 to 6 change the stage, q leaves."
	UnitRow       ID = "Unit"
	UnitHow       ID = "Left and Right change it. Lengths already typed stay what they are."
	NameHow       ID = "Whose pattern this is. It stands on every piece."
	MeasureGroup  ID = "Also useful"
	NoOtherUnit   ID = "There is nothing to take in the other unit."
	NothingToMove ID = "There is no number to change."
	AsUnit        ID = "As {1}"
	NextRow       ID = "Next"
	WouldWork     ID = "Works: {1}."
	HairMoves     ID = "Move"
	HairReads     ID = "Read"
	NotRead       ID = "not read"
	TypeLike      ID = "Type it like {1}."
)

// Style, Draft and True beside what stands with their stages.
const (
	StyleUsually  ID = "usual {1}"
	StyleKept     ID = "not used"
	NoRule        ID = "No other rule stands behind this step."
	DraftNotYet   ID = "not yet"
	TruePlace     ID = "{1}, {2}"
	TrueNothing   ID = "There is no place to show."
	TrueTry       ID = "{1} {2} -> {3}"
	MessageSaving ID = "Saving."
)

// Lay by the hand rule.
const (
	LayHandTitle  ID = "Cloth to buy, by the lengths rule"
	LayHandRun    ID = "lengths"
	LayHandOne    ID = "side by side in one length"
	LayHandMany   ID = "{1} lengths, one after another"
	LayHandNot    ID = "too narrow for the widest piece"
	LayHandNarrow ID = "too narrow"
	LayHandLength ID = "1 length"
	LayHandRuns   ID = "{1} lengths"
	LayHandWash   ID = "Washed first: shrinks {1} % along, {2} % across."
	LayHandNoNum  ID = "Shrinkage is not known. Wash a piece of 10 by 10 and measure it again."
	LayHandOwn    ID = "her cloth"
)

// Cut.
const (
	CutTitle   ID = "What leaves for the table and the printer"
	CutInto    ID = "Folder"
	CutDone    ID = "Written into {1}: {2} files."
	CutDoneOne ID = "Written into {1}: 1 file."
	CutWriting ID = "Writing."
	CutAgain   ID = "{1} is there already and differs. Enter again replaces it."
	CutNone    ID = "Nothing was written."
)
