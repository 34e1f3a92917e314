package overlay

import (
	"fmt"

	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/text"
	"chalkfold/ui/view"
)

// Steps lists the steps of the draft: done, here, to come, and what waits. at
// is the step in hand; to goes to the chosen one.
func Steps(d *desk.Desk, at int, to func(step int) desk.Ask) desk.Overlay {
	b := &board{d: d, title: d.Tell(text.StepsTitle), how: text.HelpHow, field: text.FindLabel}
	var rows []row
	sheet := d.Sheet()
	changed := map[string]bool{}
	if before, _, ok := d.Before(); ok {
		changed = view.Changed(d.SheetOf(before), sheet, d.Unit())
	}
	for _, s := range sheet.Steps {
		r := row{group: pieceTitle(d, sheet, s.Piece), title: fmt.Sprintf("%2d %s", s.Number, d.Trade(s.Title)), here: s.Number == at, finds: s.ID}
		switch {
		case !s.Drawn:
			r.whyNot = d.Trade(s.Waits.In(d.Unit()))
		case s.Number < at:
			r.right = d.Tell(text.StepDone)
		case s.Number == at:
			r.right = d.Tell(text.StepCurrent)
			b.at = len(rows)
		default:
			r.right = d.Tell(text.StepToDo)
		}
		if changed[s.ID] && r.right != "" {
			r.right += ", " + d.Tell(text.DraftChanged)
		}
		n := s.Number
		r.do = func() desk.Ask {
			ask := to(n)
			ask.Close = true
			return ask
		}
		rows = append(rows, r)
	}
	b.rows = func(typed string) []row { return found(rows, typed, false) }
	return b
}

// pieceTitle is the name of a piece, also of one that is not cut yet.
func pieceTitle(d *desk.Desk, s *pattern.Sheet, id pattern.PieceID) string {
	if p, ok := s.Piece(id); ok {
		return d.Trade(p.Title)
	}
	return d.Trade(plainID(string(id)))
}
