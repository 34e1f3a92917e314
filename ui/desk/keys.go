package desk

import (
	"runtime"

	"chalkfold/ui/keys"
)

// Keys is the table of what the workbench answers on this system.
func Keys() keys.Set {
	var out keys.Set
	for _, a := range keys.Table() {
		if a.ID == keys.PutToSleep && runtime.GOOS == "windows" { // which has no such sleep
			continue
		}
		out = append(out, a)
	}
	return out
}
