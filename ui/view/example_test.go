package view

import (
	"fmt"
	"strings"

	"chalkfold/pattern"
	"chalkfold/ui/canvas"
)

func Example() {
	// An invented draft; for a real one ask pattern/workroom.
	text := Outline(sheet(), pattern.Front, 40, 7, canvas.ASCII)
	for _, line := range strings.Split(strings.TrimRight(text, "\n"), "\n") {
		fmt.Println("|" + line)
	}
	// Output:
	// |
	// |    +---------------------------------+
	// | +-'                                  |
	// | \\__                                 |
	// |  +- '-\                              |
	// |       |+_____________________________+
}
