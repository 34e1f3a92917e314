package desk

import (
	"runtime"
	"slices"

	"chalkfold/ui/keys"
)

// asked are the rows of the key table that no screen of this version answers:
// they belong to rooms that are built later and are neither shown nor live.
var asked = []keys.ID{
	keys.CopyOut,
}

// Keys is the table of what the workbench answers.
func Keys() keys.Set {
	var out keys.Set
	for _, a := range keys.Table() {
		if slices.Contains(asked, a.ID) || a.ID == keys.PutToSleep && runtime.GOOS == "windows" { // which has no such sleep
			continue
		}
		out = append(out, a)
	}
	return out
}
