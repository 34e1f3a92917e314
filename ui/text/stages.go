package text

// Measure.
const (
	MeasureEmpty      ID = "No client yet. Type the first number, or take the sample client."
	MeasureName       ID = "Client"
	MeasureDate       ID = "Measured"
	MeasureBy         ID = "Measured by"
	MeasureNotes      ID = "Notes, private"
	MeasureNotYet     ID = "not yet"
	MeasureProposed   ID = "proposed"
	MeasureTaken      ID = "{1} of {2} taken"
	MeasureMissing    ID = "Still needed: {1}."
	MeasureSlip       ID = "Slip: {1}"
	MeasureEquals     ID = "= {1}"
	MeasureDoubt      ID = "{1}: outside what was measured on women ({2} to {3})."
	MeasureKept       ID = "Kept as typed. Measure again when you can."
	MeasureConfirmed  ID = "measured again"
	MeasureConfirm    ID = "I measured again"
	MeasureSet        ID = "{1} {2}"
	MeasureChanged    ID = "{1} {2} -> {3}"
	MeasureTookOut    ID = "{1} {2} taken out"
	MeasureImpossible ID = "{1}: read {2}. Type it like {3}."
	MeasureSides      ID = "Left side where it differs"
)

// Style.
const (
	StyleDefault   ID = "as usual"
	StyleChosen    ID = "chosen"
	StyleWhy       ID = "Usual: {1}"
	StyleRange     ID = "{1} to {2}"
	StyleChanged   ID = "{1} {2} -> {3}"
	StyleBack      ID = "{1} back to {2}"
	StyleNotThis   ID = "Not here: {1}."
	StyleSame      ID = "Nothing on the cloth moves."
	StyleUnused    ID = "Kept; {1} does not use it."
	StyleOutside   ID = "{1} is outside {2} to {3}. Take one between."
	StyleGarment   ID = "Garment"
	StyleNotDrawn  ID = "The drawing waits for {1}."
	StyleOldDotted ID = "Dotted: before."
)

// Draft.
const (
	DraftStep     ID = "Step {1} of {2}"
	DraftDo       ID = "DO"
	DraftSum      ID = "SUM"
	DraftWhy      ID = "WHY"
	DraftSlip     ID = "SLIP"
	DraftMarked   ID = "Marked: {1}."
	DraftFirst    ID = "This is the first step."
	DraftDone     ID = "All pieces are drawn. 4 checks them, 5 lays them on the cloth."
	DraftWaits    ID = "Step {1} waits for {2}. Others go on."
	DraftEmpty    ID = "Nothing to draw yet. Begin with {1}."
	DraftChanged  ID = "changed"
	DraftRule     ID = "By {1}."
	DraftOthers   ID = "{1} would give {2}."
	DraftAskOn    ID = "A question comes before each step."
	DraftAskOff   ID = "No more questions."
	WhatIfTitle   ID = "What if"
	WhatIfHow     ID = "Left and Right choose, Up and Down change. Enter keeps, Esc puts back."
	WhatIfKept    ID = "Kept: {1}."
	WhatIfPutBack ID = "Put back."
	CrossAt       ID = "{1} out, {2} down"
	NoPage        ID = "There is no page {1}; the last is {2}."
	NoStep        ID = "There is no step {1}; the last is {2}."
)

// Questions.
const (
	AskTitle   ID = "Before you look"
	AskRight   ID = "Right: {1}"
	AskNearly  ID = "Nearly: {1}, and it is {2}."
	AskHint    ID = "Hint {1} of 3: {2}"
	AskAnswer  ID = "It is {1}."
	AskMetric  ID = "That is centimetres."
	AskHalf    ID = "That is half of it."
	AskAround  ID = "That is all round; here lies a quarter of her."
	AskNumber  ID = "Type a number like {1}."
	AskSkipped ID = "Skipped. The step is shown."
	AskPoint   ID = "Move the cross-hair there. Enter answers."
)

// Lessons.
const (
	LessonsTitle ID = "Lessons"
	LessonEnds   ID = "Ends with: {1}"
	LessonTime   ID = "about {1} minutes"
	LessonResume ID = "go on at {1}"
	LessonDone   ID = "done"
	LessonNew    ID = "new"
	LessonBody   ID = "Whose measures?"
	LessonSample ID = "The sample client"
	LessonOwn    ID = "{1}, as open now"
	LessonOver   ID = "Done. {1} is yours now."
)

// True.
const (
	TruePass    ID = "pass"
	TrueAdvise  ID = "advise"
	TrueFail    ID = "fail"
	TrueSkip    ID = "skip"
	TrueTally   ID = "{1} pass, {2} advise, {3} fail, {4} skipped"
	TrueClean   ID = "All {1} checks pass."
	TrueGotWant ID = "got {1}   want {2}   {3}"
	TrueCure    ID = "Cure: {1}"
	TrueCureHow ID = "t tries it, Ctrl+Z undoes"
	TrueNoCure  ID = "No single change cures this."
	TrueTried   ID = "Tried: {1}."
	TrueCured   ID = "Cured: {1}."
	TrueStill   ID = "It still stands; {1} now."
	TrueEmpty   ID = "No checks yet: the drawing waits for {1}."
)
