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
		r.seat = id
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
	b.offers = []desk.Offer{{ID: "choose"}, {ID: "row-down"}, {ID: "close-seat"}, {ID: "close"}, {ID: "row-up", Quiet: true}, {ID: "page-up", Quiet: true}, {ID: "page-down", Quiet: true}}
	b.shut = func(at int) desk.Ask {
		if shown := b.list(); at < len(shown) && shown[at].seat != 0 {
			return desk.Ask{Close: true, Shut: shown[at].seat}
		}
		return desk.Ask{Say: d.Tell(text.ClientNotOpen)}
	}
	b.rows = func(typed string) []row { return found(rows, typed, false) }
	b.hear = func(a desk.Answer) desk.Ask { return b.opened(a) }
	return b
}

// CloseClient asks what becomes of the unsaved work of a client that is put
// away; saving it is the first answer.
func CloseClient(d *desk.Desk, s desk.Seat) desk.Overlay {
	return question(d, text.CloseTitle, []string{d.Tell(text.LeaveUnsaved, d.Plain(s.Client))},
		row{title: d.Tell(text.CloseSave), do: func() desk.Ask {
			return desk.Ask{Close: true, Seat: s.ID, Save: &desk.Save{}, Shut: s.ID}
		}},
		row{title: d.Tell(text.CloseLose), do: func() desk.Ask { return desk.Ask{Close: true, Shut: s.ID, Lose: true} }},
		row{title: d.Tell(text.CloseNot), do: func() desk.Ask { return desk.Ask{Close: true} }})
}

func opened(seats []desk.Seat, path string) bool {
	for _, s := range seats {
		if same(path, s.Path) {
			return true
		}
	}
	return false
}
