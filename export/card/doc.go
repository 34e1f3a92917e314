// Package card writes the chalk card: a drafted piece as rows of two numbers,
// down from the top line and out from the fold, for marking it straight on the
// cloth with a tape and chalk, kneeling, without printer or screen.
//
// The cutting line and the stitching line of every piece become a list of
// [Row]s in the order in which she goes round it. Straight edges need their
// ends only. Curves get marks between: the fewest whose rounded places, joined
// by straight chords, stay within an eighth of an inch (3 mm) of the drafted
// line, found by dynamic programming over the places that the tape offers
// (dp.go). Named points always have a row with both their numbers; a corner
// that is drawn rounded, like the waist, is said to be rounded, and where no
// chord through it holds it stands in brackets. A dart's mouth has no marks:
// its cap is cut folded. Facings are traced by their widths.
//
// [Make] gives the card as data; [WriteText] and [WriteMarkdown] say it.
// The package never drafts: every place is read off the lines of the sheet.
package card
