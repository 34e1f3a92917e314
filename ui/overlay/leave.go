package overlay

import (
	"path/filepath"
	"strconv"

	"chalkfold/ui/desk"
	"chalkfold/ui/session"
	"chalkfold/ui/text"
)

// Leave asks what becomes of unsaved work: saving it is the first answer.
func Leave(d *desk.Desk) desk.Overlay {
	save := func() desk.Ask {
		if d.Path() == "" {
			return desk.Ask{Close: true, Open: SaveAsThen(d, nil, true)}
		}
		return desk.Ask{Close: true, Save: &desk.Save{}, Quit: true}
	}
	b := question(d, text.LeaveTitle, []string{d.Tell(text.LeaveUnsaved, d.Plain(d.Client())), d.Tell(text.LeaveAgain)},
		row{title: d.Tell(text.LeaveSave), do: save},
		row{title: d.Tell(text.LeaveLose), do: func() desk.Ask { return desk.Ask{Close: true, Quit: true} }},
		row{title: d.Tell(text.LeaveStay), do: func() desk.Ask { return desk.Ask{Close: true} }})
	b.leaving = true
	return b
}

// Switch asks the same before another session is taken up.
func Switch(d *desk.Desk, next *desk.Opened) desk.Overlay {
	save := func() desk.Ask {
		if d.Path() == "" {
			return desk.Ask{Close: true, Open: SaveAsThen(d, next, false)}
		}
		return desk.Ask{Close: true, Save: &desk.Save{Then: next}}
	}
	return question(d, text.SwitchTitle, []string{d.Tell(text.LeaveUnsaved, d.Plain(d.Client()))},
		row{title: d.Tell(text.SwitchSave), do: save},
		row{title: d.Tell(text.SwitchLose), do: func() desk.Ask { return desk.Ask{Close: true, Take: next} }},
		row{title: d.Tell(text.LeaveStay), do: func() desk.Ask { return desk.Ask{Close: true} }})
}

// Changed says that the file was changed elsewhere and asks what to do.
func Changed(d *desk.Desk) desk.Overlay {
	name, free := filepath.Base(d.Path()), beside(d.Path())
	path := d.Path()
	b := question(d, text.ElsewhereTitle, []string{d.Tell(text.ElsewhereSays, name)},
		row{title: d.Tell(text.ElsewhereBeside, filepath.Base(free)), do: func() desk.Ask {
			return desk.Ask{Close: true, Save: &desk.Save{Path: free}}
		}},
		row{title: d.Tell(text.ElsewhereOver), do: func() desk.Ask {
			return desk.Ask{Close: true, Save: &desk.Save{Over: true}}
		}},
		row{title: d.Tell(text.ElsewhereReload), do: func() desk.Ask { return open(d, path) }},
		row{title: d.Tell(text.OverwriteNot), do: func() desk.Ask { return desk.Ask{Close: true} }})
	b.hear = func(a desk.Answer) desk.Ask {
		s, ok := a.Value.(*session.Session)
		if a.Err != nil || !ok || s == nil {
			return b.opened(a)
		}
		o := taken(d, s)
		o.Says = d.Tell(text.ElsewhereReloads, name)
		return desk.Ask{Close: true, Take: o}
	}
	return b
}

// Message says something that needs more than the message line.
func Message(d *desk.Desk, title, words string) desk.Overlay {
	b := &board{d: d, title: title, how: text.ReadHow, reads: true}
	rows := make([]row, 0, 4)
	for _, p := range sentencesOf(words) {
		rows = append(rows, row{title: "", says: p})
	}
	b.rows = func(string) []row { return rows }
	return b
}

// question is a few sentences and a few answers, the first in hand.
func question(d *desk.Desk, title text.ID, says []string, rows ...row) *board {
	b := &board{d: d, title: d.Tell(title), how: text.RowsHow, says: says}
	b.rows = func(string) []row { return rows }
	return b
}

func itoa(n int) string { return strconv.Itoa(n) }
