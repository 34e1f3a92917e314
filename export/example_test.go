package export_test

import (
	"fmt"

	"chalkfold/export"
	"chalkfold/export/accept"
	"chalkfold/measure"
)

// A sheet becomes a page of placed pieces; every line has a role.
func Example() {
	d := export.New(accept.Sheet(), export.Options{Unit: measure.In})
	fmt.Println(d.Title)
	for _, p := range d.Pieces {
		fmt.Printf("%s: %s, first line: %s\n", p.Piece.Title, p.Cut, p.Items[0].Role)
	}
	// Output:
	// Dress for Learner Four
	// Front: Cut 1 on fold, first line: cut
	// Back neck facing: Cut 2 (one pair), first line: cut
}
