package text_test

import (
	"fmt"

	"chalkfold/ui/text"
)

func Example() {
	fmt.Println(text.English().Say(text.Undone, "Waist 72 -> 70 cm"))
	fmt.Println(text.Pseudo().Say(text.NothingToUndo))
	// Output:
	// Undone: Waist 72 -> 70 cm
	// Ñóóťhííñg ťóó úúñďóó. óóó
}
