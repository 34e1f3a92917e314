package text

// Before a class.
const (
	PrivateName     ID = "the client"
	ProjectorOf     ID = "of {1}"
	ProjectorStep   ID = "step {1}"
	ProjectorPart   ID = "part {1} of {2}"
	ProjectorNobody ID = "Nobody is on the table yet. Enter draws the sample client, F9 goes back."
	ProjectorSample ID = "The sample client is on the table."
	ProjectorNone   ID = "Nothing to draw yet."
	ProjectorDone   ID = "All pieces are drawn."
	ProjectorType   ID = "Type a number, then Enter."
	ProjectorAsks   ID = "What comes here?"
	ProjectorStop   ID = "not before a class; F9 first"
	ProjectorPage   ID = "of {1}"
	ProjectorLast   ID = "That was the last page. {1}."
	ProjectorTry    ID = "w moves it before the class."
	ProjectorMiss   ID = "{1}: look again, or Space shows it."
	ProjectorWhat   ID = "Up, Down, PgUp, PgDn; Left, Right choose; Enter keeps"
)
