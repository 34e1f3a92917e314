package text

// Answers to questions, beside what stands with the stages.
const (
	AskMillimetres ID = "That is millimetres."
	AskRounded     ID = "It was brought to a whole {1} too early."
	AskFractions   ID = "Keep the fractions to the end of the sum."
	AskBelongs     ID = "That belongs elsewhere: {1}."
	AskNearPlace   ID = "Nearly: {1} out and {2} down; it is {3} out and {4} down."
	AskAtPlace     ID = "It is {1} out and {2} down."
	AskTypePlace   ID = "Type it like {1} out, {2} down."
	AskTypePick    ID = "Type the number of a sentence, 1 to {1}."
	AskWhere       ID = "Where does this mark lie: {1}?"
	AskReason      ID = "Why is this step done?"
	AskLook        ID = "look at {1}."
	AskNotThat     ID = "it is not number {1}."
	AskThat        ID = "it is number {1}."
	AskPiece       ID = "think of {1}."
)

// At a question.
const (
	AskLabel     ID = "ASK"
	AskFieldHow  ID = "Enter answers; with nothing typed it helps. Esc skips."
	AskHairHow   ID = "Arrows move the cross-hair, Enter answers; Enter again helps. Esc skips."
	AskTryHow    ID = "Up and Down try it first. Enter answers or helps, Esc skips."
	AskWritten   ID = "Written to her notes."
	AskWriteHow  ID = "Type it, Enter writes it to her notes. Esc leaves it."
	AskNoteTitle ID = "In your own words:"
	AskComes     ID = "A question comes before the next step."
	AskPage      ID = "Skipped."
)

// What if.
const (
	WhatIfPick    ID = "Which measure"
	WhatIfPage    ID = "Turn the page"
	WhatIfMove    ID = "More or less"
	WhatIfKeep    ID = "Keep it"
	WhatIfBack    ID = "Put back"
	WhatIfNothing ID = "Nothing can be moved yet: the drawing waits for {1}."
	WhatIfIs      ID = "{1} {2}"
	WhatIfStill   ID = "Nothing on the cloth moves yet."
	WhatIfFinding ID = "{1}: {2} -> {3}"
	WhatIfHint    ID = "Up and Down change it, Enter keeps, Esc puts back."
)

// A lesson that runs, and the list of them.
const (
	LessonHead     ID = "Lesson {1}  {2}"
	LessonPage     ID = "page {1} of {2}"
	LessonAimEnds  ID = "{1} Ends with {2}."
	LessonListSays ID = "Short lessons over the real steps. Esc leaves one; it goes on where you were."
	LessonListHow  ID = "Enter begins a lesson or goes on with it. Esc goes back."
	LessonAt       ID = "at {1} of {2}"
	LessonWith     ID = "With the sample client"
	LessonWithSays ID = "All her numbers are there; the lessons keep their place with her."
	LessonOwnSays  ID = "Her own numbers; the file keeps the place with the next save."
	LessonBegun    ID = "{1}. Space goes on, Esc leaves the lesson."
	LessonLeft     ID = "The lesson waits at page {1}. Lessons in the command list goes on."
	LessonFirst    ID = "This is the first page."
	LessonMeasure  ID = "Enter types the measure, Space goes on."
	LessonCompare  ID = "Dotted: {1}. Solid: {2}."
	TurnHead       ID = "BUST DART"
	TurnSays       ID = "{1}: {2} wide, {3} from the bust point, {4} degrees."
	TurnSeam       ID = "Dotted: in the side. Solid: {1}."
	TurnKeep       ID = "Keep it here"
	TurnKept       ID = "Bust dart: {1}."
	TurnHow        ID = "Enter keeps the dart here, with the seam that it needs; Space goes on."
)

// Faults on purpose.
const (
	FaultsTitle  ID = "Faults on purpose"
	FaultsSays   ID = "Each spoils a copy of this draft. Hers is not touched, and nothing of it is saved."
	FaultsHow    ID = "Enter shows the spoilt draft. Esc goes back."
	FaultHead    ID = "FAULT ON PURPOSE"
	FaultGuess   ID = "Look at the cloth and guess: which check will find it?"
	FaultReveal  ID = "Show what is found"
	FaultSound   ID = "Back to the sound draft"
	FaultShown   ID = "The sound draft again."
	FaultNoCure  ID = "this draft is spoilt on purpose"
	FaultWaits   ID = "only a whole measured draft can be spoilt so"
	FaultNothing ID = "This draft has not the part that is spoilt here."
	FaultDone    ID = "What was done: {1}"
)
