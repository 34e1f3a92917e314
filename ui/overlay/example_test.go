package overlay_test

import (
	"fmt"
	"strings"

	"chalkfold/ui/desk"
	"chalkfold/ui/overlay"
	"chalkfold/ui/theme"
)

func Example() {
	plain, _ := theme.For("plain") // a row of the table
	d := desk.New(desk.Settings{Theme: plain.With(theme.NoCodes)})
	words := overlay.WordsAt(d, "selvage")
	for _, line := range words.View(desk.Rect{Columns: 72, Rows: 5}) {
		fmt.Println(strings.TrimRight(line, " "))
	}
	fmt.Println(words.Do("close").Close)
	// Output:
	//  Words of the trade
	//  Find: selvage_                                                 2 found
	// > Selvage  The firm edge of the cloth as it comes from the loom. It is
	//            not used.
	//   Warp     The threads that run along the cloth, beside the selvage.
	// true
}
