package shell

import (
	"errors"
	"io"
	"runtime/debug"

	"github.com/spf13/cobra"
)

// Env looks up an environment variable, as os.Getenv does.
type Env func(string) string

// Exit statuses.
const (
	Done          = 0 // advice allowed
	NotDone       = 1 // the work could not be done, or a check failed
	NotUnderstood = 2 // the call or the file could not be understood
)

// gcPercent lets the heap grow to five times what lives before it is swept:
// what lives is a few megabytes, and a draft that makes half of one on every
// key is a third quicker so.
const gcPercent = 400

// Main runs one call, its arguments without the program's name, and gives its
// exit status.
func Main(args []string, in io.Reader, out, err io.Writer, env Env) int {
	debug.SetGCPercent(gcPercent)
	w := &world{in: in, out: out, err: err, env: env}
	root := tree(w)
	root.SetArgs(args)
	root.SetIn(in)
	root.SetOut(out)
	root.SetErr(err)
	// A double click on Windows shall start the workbench, not a notice.
	cobra.MousetrapHelpText = ""
	failed := root.Execute()
	if failed == nil {
		return w.status
	}
	w.tell(failed)
	var f *fault
	if errors.As(failed, &f) {
		return f.status
	}
	return NotUnderstood
}

// tree is the command tree of the table.
func tree(w *world) *cobra.Command {
	root := workbenchCommand(w)
	w.root = root
	for _, make := range commands {
		c := make(w)
		c.SetFlagErrorFunc(w.flagFault)
		c.DisableFlagsInUseLine = true
		root.AddCommand(c)
		w.commands = append(w.commands, c)
	}
	root.SetFlagErrorFunc(w.flagFault)
	help := helpCommand(w)
	help.DisableFlagsInUseLine = true
	w.commands = append(w.commands, help)
	root.SetHelpCommand(help)
	root.SetHelpFunc(func(c *cobra.Command, _ []string) { w.print(w.help(c)) })
	root.CompletionOptions.DisableDefaultCmd = true
	root.SilenceErrors, root.SilenceUsage = true, true
	return root
}
