package overlay

import (
	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/lesson"
	"chalkfold/ui/text"
)

// Faults lists the faults on purpose; to shows the chosen one.
func Faults(d *desk.Desk, to func(id string) desk.Ask) desk.Overlay {
	b := &board{d: d, title: d.Tell(text.FaultsTitle), how: text.FaultsHow, field: text.FindLabel, says: []string{d.Tell(text.FaultsSays)}}
	whole := d.Sheet().Complete && d.Sheet().Method == pattern.Measured
	var rows []row
	for _, f := range lesson.Faults() {
		r := row{title: d.Trade(f.Title), finds: f.ID, do: func() desk.Ask { return to(f.ID) }}
		if !whole {
			r.whyNot = d.Tell(text.FaultWaits)
		}
		rows = append(rows, r)
	}
	b.rows = func(typed string) []row { return found(rows, typed, false) }
	return b
}
