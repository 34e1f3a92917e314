package text

// Plain mode: the drawing in sentences.
const (
	HearAround   ID = "{1}, {2}, {3} long and {4} wide."
	HearFrom1    ID = "It begins at {1}, {2}."
	HearEdgeTo   ID = "{1}, {2}, {3}, to {4}: {5}."
	HearEdgeFree ID = "{1}, {2}, {3}, to a place {4}."
	HearStraight ID = "straight"
	HearCurved   ID = "curved"
	HearDartLegs ID = "Its dart is {1} wide; its legs are {2} and {3}."
	HearFisheye  ID = "It has a dart inside, {1} wide at the waist."
	HearEdgeNet  ID = "{1} {2}."
	HearOutside  ID = "{1} {2}, cut {3} outside."
	HearHemCut   ID = "Turned down, the hem ends {1} wide."
	HearFalls    ID = "From the neck it falls {1}."
	HearTop      ID = "The cutting line reaches {1} above the top line."
	HearNoTop    ID = "The cutting line does not reach above the top line."
	HearSayOne   ID = "Type say and a piece, like say front, to go round it; say all tells all."
	HearNoPiece  ID = "There is no piece {1}. There are {2}."
	HearPointOf  ID = "{1} point"
)

// Plain mode: the lay.
const (
	HearLayHow     ID = "list tells where each piece lies, search looks for less cloth, keep keeps this lay."
	HearLayMore    ID = "widths tries other widths, remnant 60 x 45 asks whether a piece is enough."
	HearSearches   ID = "Searching, {1} tries. That may take a while."
	HearSearched   ID = "The best after {1} tries is {2} long; before it was {3}."
	HearNoBetter   ID = "After {1} tries nothing shorter was found."
	HearTries      ID = "Type search, or search and a number of tries, like search 3000000."
	HearRemnantHow ID = "Type remnant, its length along the grain, x, and its width, like remnant {1}."
	HearWidthRow   ID = "Cloth {1} wide: {2} laid out, {3} by the hand rule."
	HearWidthNot   ID = "Cloth {1} wide: too narrow for a piece."
	HearPrice      ID = "That costs {1}."
	HearHandSays   ID = "By the hand rule, {1}"
	HearNoLay      ID = "No lay: {1}"
)

// Plain mode: the card read out.
const (
	HearCardHow  ID = "Enter ticks a mark and goes on, back goes back. piece takes the next piece, end ends."
	HearCardAt   ID = "{1}, mark {2} of {3}, {4}: {5}."
	HearCardWord ID = "{1}. {2}"
	HearCardDown ID = "Down {1}."
	HearCardUp   ID = "Up {1}, above the top line."
	HearCardOut  ID = "Out {1}."
	HearCardOver ID = "Beyond the centre {1}."
	HearCardOn   ID = "Enter goes on to the {1}."
	HearCardEnd  ID = "That was the last piece."
	HearCardLeft ID = "The card waits here; read goes on."
	HearLast     ID = "This is the last stage. write writes the files, quit leaves."
	HearIntoHere ID = "Into the folder that you are in."
	HearReadHow  ID = "Type read to have the chalk card read out, mark by mark."
)

// Plain mode: clients, a class, two drafts beside each other.
const (
	HearClient    ID = "{1} {2}, {3}."
	HearHere      ID = "here"
	HearOpen      ID = "open"
	HearUnsaved   ID = "open, not saved"
	HearHereNot   ID = "here, not saved"
	HearBefore    ID = "worked on before"
	HearStays     ID = "{1} stays open; clients lists who is open."
	HearClientHow ID = "Type the number of a client."
	HearOneClient ID = "Nobody else is open. open lists who was worked on before."
	HearClassHow  ID = "Type class and a folder, like class ~/learners."
	HearClassRow  ID = "{1} {2}: {3} of {4} measures, step {5} of {6}, {7}."
	HearClassBad  ID = "{1} {2}"
	HearClassFail ID = "{1} does not pass: {2}."
	HearClassAt   ID = "Lesson {1} was begun last."
	HearClassNone ID = "No session lies in {1}."
	HearClassMore ID = "{1} more were not read."
	HearClassOpen ID = "Type a number to open that learner, or go on."
	HearCompareH  ID = "{1}: {2} {4}, {3} measured."
	HearCompareM  ID = "{1}: {2} {4}, {3} measured; that is {5} more."
	HearCompareL  ID = "{1}: {2} {4}, {3} measured; that is {5} less."
	HearCompareW  ID = "{1}: it waits for a measure."
	HearAllRound  ID = "{1}, all round"
	HearSince     ID = "Since it was opened:"
	HearSinceNot  ID = "Nothing on the cloth has moved since it was opened."
	HearCompare   ID = "Type compare for both methods, compare opened for what moved."
)

// Plain mode: what if.
const (
	HearWhatIs   ID = "What if: {1} is {2}."
	HearWhatHow  ID = "Type a length, more, less or a name. keep keeps it, back puts it back."
	HearWhatNone ID = "There is nothing called {1} to move. list names what can be moved."
	HearWhatNow  ID = "{1}."
	HearWhatStay ID = "Nothing was moved, so there is nothing to keep."
)

// Plain mode: lessons.
const (
	HearLesson     ID = "{1} {2}: {3}, {4}."
	HearLessonHow  ID = "Type lesson and a number to begin it or go on with it. After it sample takes the sample client, own your client."
	HearLessonNone ID = "There is no lesson {1}. Type lesson alone for the list."
	HearLessonWait ID = "{1} cannot begin yet: {2}."
	HearEndsWith   ID = "ends with {1}"
	HearTurnHow    ID = "Type keep to keep the dart here, or next to go on."
	HearTryFirst   ID = "more and less try it before you answer; more 1 goes so far."
	HearFaultHow   ID = "Type the number of one to hear that draft."
	HearLessonEnds ID = "It ends with {1}."
	HearLessonWith ID = "With the measures of {1}."
	HearPage       ID = "Lesson {1}, {2}, page {3} of {4}."
	HearPageBy     ID = "Lesson {1}, {2}, page {3} of {4}, {5}."
	HearNewWord    ID = "A word, {1}: {2}"
	HearPickHow    ID = "Type 1 to {1}, hint for help, or next to go past it."
	HearPlaceHow   ID = "Type it like {1} out, {2} down, hint for help, or next to hear it."
	HearPageNext   ID = "Type next to go on."
	HearPageFirst  ID = "say tells the figures once more."
	HearNotesHow   ID = "Type it in your own words, or next to go past it."
	HearSpoilt     ID = "This is how the spoilt draft lies."
	HearPageWrite  ID = "Type write to write it, next to go on."
	HearPageNot    ID = "Nothing has moved since she was opened, so there is nothing to write yet."
	HearNoLesson   ID = "No lesson is under way."
	HearCheckNone  ID = "This draft has nothing to check there."
	HearLessonLeft ID = "The lesson waits at page {1}. Type lesson {2} to go on."
)

// Plain mode: further words.
const (
	WordLesson  ID = "lesson lists the lessons; lesson N begins one or goes on"
	WordLeave   ID = "leave the lesson; it waits where you are"
	WordFault   ID = "spoil a copy of the draft on purpose and guess what finds it"
	WordWhat    ID = "what if a measure were another: what bust 37"
	WordMore    ID = "what if it were a little more; more 1 goes so far"
	WordLess    ID = "what if it were a little less"
	WordCompare ID = "both methods in numbers; compare opened tells what moved"
	WordClients ID = "list who is open; clients N goes to one"
	WordClass   ID = "class FOLDER tells how far each learner is"
	WordSearch  ID = "look for a lay that takes less cloth; search N takes N tries"
	WordKeepLay ID = "keep this lay with the client"
	WordRemnant ID = "remnant 60 x 45 asks whether a piece of cloth is enough"
	WordWidths  ID = "what other widths of cloth would take"
	WordRead    ID = "read the chalk card out, one mark at a time"
)
