// Chalkfold drafts made-to-measure sewing patterns in the terminal.
package main

import (
	"os"

	_ "chalkfold/ui/early" // before the screen framework is loaded
	"chalkfold/ui/shell"
)

func main() {
	os.Exit(shell.Main(os.Args[1:], os.Stdin, os.Stdout, os.Stderr, os.Getenv))
}
