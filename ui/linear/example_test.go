package linear_test

import (
	"bytes"
	"fmt"
	"strings"

	"chalkfold/ui/linear"
)

func Example() {
	var heard bytes.Buffer
	status := linear.Run(linear.Options{In: strings.NewReader("word dart\nquit\n"), Out: &heard, Why: "--plain"})
	lines := strings.Split(heard.String(), "\n")
	fmt.Println(lines[0])
	fmt.Println(strings.Join(lines[len(lines)-3:], "\n"))
	fmt.Println(status)
	// Output:
	// Plain mode, words only, because of --plain.
	// It turns flat cloth round a part of the body.
	// measure> Goodbye.
	//
	// 0
}
