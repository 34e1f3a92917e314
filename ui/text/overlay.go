package text

// Signs and words that several lists and windows share.
const (
	FindLabel    ID = "Find: {1}"
	NameLabel    ID = "Name: {1}"
	RowsHow      ID = "Up and Down choose, Enter takes, Esc goes back."
	ReadHow      ID = "Up and Down read on, Esc goes back."
	NotAtStage   ID = "go to {1} first"
	NotAtPlace   ID = "only {1}"
	HelpMoreOne  ID = "1 more line below"
	HelpMore     ID = "{1} more lines below"
	StartSampled ID = "The sample client. Change what you like."
	StartBegun   ID = "A new client. Type the first number."
	NothingYet   ID = "nothing was worked on yet"
	NoName       ID = "no name"
	SaveHere     ID = "Save"
	SaveHow      ID = "Type a name, Tab completes, Enter saves."
	MakeFolder   ID = "New folder {1}"
	AllOn        ID = "Show only session files"
	HiddenOff    ID = "Leave hidden files out"
	RescueMore   ID = "{1} more after this one"
	DropSure     ID = "It cannot be brought back."
	GlossaryHow  ID = "Type a word. Esc goes back."
	UnitIn       ID = "inches"
	UnitCm       ID = "centimetres"
	UnitMm       ID = "millimetres"
	SettingHow   ID = "Up and Down choose, Left and Right change, Esc goes back."
)

// Comparing the two methods.
const (
	CompareThumb     ID = "by thumb"
	CompareMeasured  ID = "measured"
	CompareDirect    ID = "direct"
	CompareApart     ID = "apart"
	CompareWaits     ID = "waits"
	CompareLevels    ID = "Levels"
	CompareGirths    ID = "All round, finished"
	CompareEdges     ID = "Edges"
	CompareRoom      ID = "Room more than the body"
	CompareSays      ID = "The same body by both methods, as sewn. Thumb goes by few measures and the rules of the trade; measured follows her tape."
	CompareBlockSays ID = "The same body by both methods, as sewn. The direct block counts each line from its own length; measured gives front and back a quarter each."
	CompareProposed  ID = "It rests on proposals, not her tape, for {1}."
	CompareDepth     ID = "Armhole depth"
	CompareNeckRing  ID = "Neck"
	CompareArmRing   ID = "Armhole"
	CompareBust      ID = "Bust"
	CompareWaist     ID = "Waist"
	CompareHip       ID = "Hip"
	CompareHem       ID = "Hem"
	CompareSide      ID = "Side seam, {1}"
	CompareShoulder  ID = "Shoulder, {1}"
	CompareFront     ID = "front"
	CompareBack      ID = "back"
	CompareDart      ID = "Dart intake"
	CompareEaseBust  ID = "Ease at the bust"
	CompareEaseWaist ID = "Ease at the waist"
	CompareEaseHip   ID = "Ease at the hip"
)

// The ease of the dress, level by level.
const (
	EaseTitle   ID = "Ease, level by level"
	EaseSays    ID = "[===] is the ease that is good there. An x is the garment, a | her skin."
	EaseNone    ID = "Nothing is drawn yet that goes round her."
	EaseLevels  ID = "From the shoulders to the hem"
	EaseBody    ID = "body"
	EaseGarment ID = "garment"
	EaseEase    ID = "ease"
	EaseBar     ID = "tight ... loose"
)

// Lists that are read.
const (
	ReadOn       ID = "Read on"
	CompletePath ID = "Complete the path"
	FoundCount   ID = "{1} found"
	HelpHead     ID = "Help"
)
