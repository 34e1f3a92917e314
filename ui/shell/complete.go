package shell

import (
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"chalkfold/pattern"
	"chalkfold/pattern/trial"
	"chalkfold/pattern/workroom"
	"chalkfold/ui/session"
)

// ends is what a shell asks for the end of a word.
type ends = func(c *cobra.Command, args []string, typed string) ([]string, cobra.ShellCompDirective)

// endsOn offers what how finds for an option.
func (w *world) endsOn(c *cobra.Command, name string, how ends) {
	if err := c.RegisterFlagCompletionFunc(name, how); err != nil {
		panic("shell: " + c.Name() + " has no option " + name)
	}
}

// listOf completes the last of several values with commas between them, each
// once.
func listOf(values ...string) ends {
	return func(_ *cobra.Command, _ []string, typed string) ([]string, cobra.ShellCompDirective) {
		before := typed[:strings.LastIndexByte(typed, ',')+1]
		given := strings.Split(before, ",")
		var out []string
		for _, v := range values {
			if !slices.Contains(given, v) {
				out = append(out, before+v)
			}
		}
		return out, cobra.ShellCompDirectiveNoFileComp | cobra.ShellCompDirectiveNoSpace
	}
}

// ofSession completes what the session of the call has, as find tells; where it
// cannot be read, what the sample client has.
func ofSession(find func(*pattern.Sheet) []string) ends {
	return func(_ *cobra.Command, args []string, _ string) ([]string, cobra.ShellCompDirective) {
		job := session.Demo().Job
		if len(args) > 0 && args[0] != "-" {
			if s, err := session.Open(args[0]); err == nil {
				job = s.Job
			}
		}
		return find(workroom.Draft(job)), cobra.ShellCompDirectiveNoFileComp
	}
}

// pieceIDs are the pieces of a sheet.
func pieceIDs(sheet *pattern.Sheet) []string {
	var out []string
	for i := range sheet.Pieces {
		out = append(out, string(sheet.Pieces[i].ID))
	}
	return out
}

// pickIDs are the picks that a sheet to choose by looking is made of.
func pickIDs(sheet *pattern.Sheet) []string {
	var out []string
	for _, c := range trial.Picks(sheet.Job) {
		out = append(out, string(c.ID))
	}
	return out
}
