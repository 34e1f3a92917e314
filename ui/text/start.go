package text

// The first screen: five ways to begin.
const (
	StartTitle       ID = "Chalkfold"
	StartSays        ID = "From the tape to the cloth, step by step."
	StartLearn       ID = "Learn a draft"
	StartLearnSays   ID = "Short lessons; each ends with something to use."
	StartNew         ID = "New client"
	StartNewSays     ID = "Write down the tape, then draft."
	StartOpen        ID = "Open"
	StartOpenSays    ID = "The clients worked on last, then folders."
	StartTakeUp      ID = "Take up the last work"
	StartTakeUpSays  ID = "{1}, {2}"
	StartNothingLast ID = "Nothing was worked on yet."
	StartSample      ID = "Try with the sample client"
	StartSampleSays  ID = "All numbers are there; change what you like."
	StartHow         ID = "Arrows choose, Enter begins. q leaves, here and anywhere."
)

// Rescued work, offered on the first screen.
const (
	RescueTitle    ID = "Unsaved work"
	RescueOffer    ID = "Take up the unsaved work of {1}, {2}?"
	RescueDiffers  ID = "It differs from the file in:"
	RescueNoFile   ID = "It was never saved to a file."
	RescueTake     ID = "Take it up"
	RescueLater    ID = "Ask me again next time"
	RescueDrop     ID = "Let it go"
	RescueTaken    ID = "Unsaved work of {1} taken up. Save keeps it."
	RescueDropped  ID = "The rescue copy is gone."
	RescueUnread   ID = "The rescue copy {1} cannot be read: {2}."
	RescueWritten  ID = "Your work is safe in {1}."
	CrashTitle     ID = "Chalkfold stopped by a fault of its own."
	CrashNext      ID = "Start it again to take up the work."
	CrashLog       ID = "What happened is written in {1}."
	RescueNoWrite  ID = "The rescue copy could not be written: {1}. Save now."
	RescueWhatThen ID = "{1}: {2} in the file, {3} unsaved."
)
