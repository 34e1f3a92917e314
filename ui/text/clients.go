package text

import "strings"

// Several clients in one evening.
const (
	Closed        ID = "{1} is put away."
	CloseTitle    ID = "Close this client?"
	CloseSave     ID = "Save and close"
	CloseLose     ID = "Close without saving"
	CloseNot      ID = "Keep it open"
	ClientNotOpen ID = "That client is not open."
	ClientsOpen   ID = "Open now"
	ClientsEarly  ID = "Worked on before"
	ClientsHow    ID = "Type a name. Enter goes to it; all of them stay open."
	ClientUnsaved ID = "* not saved"
	ClientSaved   ID = "saved"
	ClientHere    ID = "here"
	ClientStep    ID = "step {1} of {2}"
	ClientTaken   ID = "{1} measures"
	ClientNoFile  ID = "no file yet"
	SeatNow       ID = "Now {1}. The others stay open; Clients lists them."
	WasOpen       ID = "{1} was open already."
	NothingToTake ID = "there is nothing to take here"
	AndLast       ID = "{1} and {2}"
)

// List joins names: "A, B and C".
func (c Catalogue) List(names []string) string {
	n := len(names)
	if n < 2 {
		return strings.Join(names, "")
	}
	return c.Say(AndLast, strings.Join(names[:n-1], ", "), names[n-1])
}
