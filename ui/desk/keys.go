package desk

import (
	"slices"

	"chalkfold/ui/keys"
)

// asked are the rows of the key table that no screen of this version answers:
// they belong to rooms that are built later and are neither shown nor live.
var asked = []keys.ID{
	keys.Project, keys.Class, keys.Lessons, keys.CopyOut, keys.HideNumbers,
	"word", "ask-first", "what-if", "true-what-if", "answer", "skip",
	"piece-next", "piece-left", "piece-right", "piece-up", "piece-down", "pin", "turn-piece", "flaw", "search-on", "remnant", "stop-lay",
}

// Keys is the table of what the workbench answers.
func Keys() keys.Set {
	var out keys.Set
	for _, a := range keys.Table() {
		if a.Where == keys.Projector || slices.Contains(asked, a.ID) {
			continue
		}
		out = append(out, a)
	}
	return out
}
