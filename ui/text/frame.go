package text

// Line 1 and the six stages.
const (
	StageMeasure ID = "Measure"
	StageStyle   ID = "Style"
	StageDraft   ID = "Draft"
	StageTrue    ID = "True"
	StageLay     ID = "Lay"
	StageCut     ID = "Cut"
	NoClient     ID = "no client"
	Nobody       ID = "nobody"
	Unnamed      ID = "unnamed"
)

// The message line: what just happened.
const (
	Undone          ID = "Undone: {1}"
	Redone          ID = "Done again: {1}"
	NothingToUndo   ID = "Nothing to undo."
	NothingToRedo   ID = "Nothing to do again."
	EscGround       ID = "Esc goes back; q leaves."
	FieldPutBack    ID = "The field is as it was. Undo again for the change before."
	UnitNow         ID = "Lengths are in {1} now."
	GlyphsNow       ID = "Drawn with {1}:  {2}"
	ThemeNow        ID = "Theme {1}."
	MouseOn         ID = "Mouse on. Shift and drag still marks text."
	MouseOff        ID = "Mouse off. The terminal marks text again."
	NotNow          ID = "Not now: {1}."
	Working         ID = "Working. Esc stops it."
	Stopped         ID = "Stopped. Nothing changed."
	Pasted          ID = "Pasted: {1} values."
	PastedOne       ID = "Pasted: 1 value."
	PasteUnread     ID = "Nothing in the paste could be read as a length."
	Copied          ID = "Copied, and written to {1}."
	CopiedOnly      ID = "Given to the clipboard only: {1}."
	CopiedNone      ID = "There is nothing here to copy yet."
	ManyChanges     ID = "{1} later steps follow."
	OneChange       ID = "1 later step follows."
	MoreWords       ID = "{1} more lines: {2}"
	MoreWordsAlone  ID = "{1} more lines"
	StageUnknownKey ID = "That key does nothing here. F1 shows what does."
)

// The screen that is too small, and the terminal that is none.
const (
	SmallTitle  ID = "This window is too small"
	SmallSizes  ID = "It has {1} x {2}; {3} x {4} is enough."
	SmallKeys   ID = "Ctrl+S saves, q leaves. All is kept."
	NoTerminal  ID = "The workbench needs a terminal. Try: chalkfold help"
	SmallBriefs ID = "Enlarge to {1} x {2}"
)

// Leaving.
const (
	LeaveTitle   ID = "Leave Chalkfold?"
	LeaveUnsaved ID = "The work on {1} is not saved."
	LeaveSave    ID = "Save and leave"
	LeaveLose    ID = "Leave without saving"
	LeaveStay    ID = "Stay"
	LeaveAgain   ID = "Ctrl+C again leaves at once; the work is rescued."
)
