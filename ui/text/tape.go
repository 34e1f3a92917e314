package text

// The tape: proposals, doubts and a pasted table.
const (
	ProposalKeys  ID = "Proposed: {1}. {2} takes it as hers; a number replaces it."
	ProposalTaken ID = "{1} {2}, taken from the proposal"
	NoProposal    ID = "nothing is proposed here"
	NoDoubt       ID = "nothing is doubted here"
	DoubtOther    ID = "{1} takes it so."
	DoubtKeys     ID = "{1}: measured again. Or leave it."
	AgainDone     ID = "{1} {2}, measured again"
	PasteTaken    ID = "Taken: {1}."
	PasteLeft     ID = "Not taken: {1}."
	PasteMore     ID = "{1} more"
	PasteNoName   ID = "{1} (no such measurement)"
	PasteNoNumber ID = "{1} (no number)"
)
