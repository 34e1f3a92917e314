package overlay

import (
	"chalkfold/ui/desk"
	"chalkfold/ui/files"
	"chalkfold/ui/session"
	"chalkfold/ui/text"
)

// Clients lists the open sessions, each with how far it is, then the clients
// worked on before. Enter goes to it; nothing is closed. step is the step that
// an open session stands at, and how many there are.
func Clients(d *desk.Desk, step func(desk.SeatID) (at, of int)) desk.Overlay {
	b := &board{d: d, title: d.Tell(text.ClientsTitle), how: text.ClientsHow, field: text.FindLabel}
	var rows []row
	seats := d.Seats()
	for i, s := range seats {
		r := row{group: d.Tell(text.ClientsOpen), title: d.Plain(s.Client), right: d.Tell(text.ClientSaved), says: d.Plain(files.Shown(s.Path)), here: s.Here}
		if s.Unsaved {
			r.right = d.Tell(text.ClientUnsaved)
		}
		if s.Path == "" {
			r.says = d.Tell(text.ClientNoFile)
		}
		if at, of := step(s.ID); of > 0 {
			r.says = d.Tell(text.ClientStep, at, of) + ", " + r.says
		}
		if s.Here {
			r.says = d.Tell(text.ClientHere) + ", " + r.says
		}
		if s.Here || i == 0 {
			b.at = i
		}
		id := s.ID
		r.do = func() desk.Ask { return desk.Ask{Close: true, Seat: id} }
		rows = append(rows, r)
	}
	if n := len(seats); n > 1 {
		b.at = (b.at + 1) % n // Enter alone goes to the next one
	}
	for _, c := range session.Recent() {
		if opened(seats, c.Path) {
			continue
		}
		path := c.Path
		rows = append(rows, row{
			group: d.Tell(text.ClientsEarly), title: clientName(d, c.Name), right: ago(d, c.Seen), says: d.Plain(files.Shown(path)),
			do: func() desk.Ask { return open(d, path) },
		})
	}
	b.rows = func(typed string) []row { return found(rows, typed, false) }
	b.hear = func(a desk.Answer) desk.Ask { return b.opened(a) }
	return b
}

func opened(seats []desk.Seat, path string) bool {
	for _, s := range seats {
		if same(path, s.Path) {
			return true
		}
	}
	return false
}
