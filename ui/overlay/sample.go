package overlay

import (
	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/session"
)

// Sample is the sample client: the invented learner of the demonstration, all
// of whose measures are taken, in the unit of the desk.
func Sample(d *desk.Desk) pattern.Job { return session.InUnit(session.Demo().Job, d.Unit()) }
