package text

// Cut: the printer's two control lines, and what to do with what was written.
const (
	CutAcross    ID = "{1} across came out"
	CutAlong     ID = "{1} along came out"
	CutTrue      ID = "as it should"
	CutTypeIt    ID = "Type it"
	CutThen      ID = "After the fitting change what was seen in 1 or 2 and come back here."
	CutThenTiles ID = "Print the cover alone, measure its two lines, type here what is off."
	CutThenCard  ID = "Take the card to the table: fold, level, chalk, in its order."
	CutThenGuide ID = "The guide names what to cut and the order of sewing."
)
