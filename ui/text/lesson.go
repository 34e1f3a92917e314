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
