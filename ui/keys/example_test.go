package keys_test

import (
	"fmt"

	"chalkfold/ui/keys"
)

func Example() {
	id, _ := keys.ByKey(keys.Draft, " ")
	fmt.Println(id)
	for _, a := range keys.Table().Footer(keys.Draft) {
		fmt.Print(a.Short(), " ", a.Foot, "  ")
	}
	// Output:
	// step-next
	// Space Next  Left Back  z Zoom to it  a Ask me first  F2 Commands  F1 Help
}
