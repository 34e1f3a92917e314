package shell_test

import (
	"os"
	"strings"

	"chalkfold/ui/shell"
)

// A call is its arguments, its streams and an environment.
func Example() {
	session := strings.NewReader("form = 1\n[body]\nbust_girth = 36\n[studio]\nshelf = 7\n")
	nowhere := func(string) string { return "" }
	shell.Main([]string{"new", "-", "--from", "-"}, session, os.Stdout, os.Stderr, nowhere)
	// Output:
	// form = 1
	// [body]
	// bust_girth = 36
	// [studio]
	// shelf = 7
}
