package overlay

import (
	"os"
	"path/filepath"
	"strconv"

	"chalkfold/ui/desk"
	"chalkfold/ui/files"
	"chalkfold/ui/session"
	"chalkfold/ui/text"
)

// Leave asks what becomes of unsaved work, of all open clients at once: saving
// it is the first answer.
func Leave(d *desk.Desk) desk.Overlay {
	var names []string
	for _, s := range d.AllUnsaved() {
		names = append(names, d.Plain(s.Client))
	}
	if len(names) == 0 {
		names = []string{d.Plain(d.Client())}
	}
	b := question(d, text.LeaveTitle, []string{d.Tell(text.LeaveUnsaved, d.Words.List(names)), d.Tell(text.LeaveAgain)},
		row{title: d.Tell(text.LeaveSave), do: func() desk.Ask { return desk.Ask{Close: true, Save: &desk.Save{}, Quit: true} }},
		row{title: d.Tell(text.LeaveLose), do: func() desk.Ask { return desk.Ask{Close: true, Quit: true} }},
		row{title: d.Tell(text.LeaveStay), do: func() desk.Ask { return desk.Ask{Close: true} }})
	b.leaving = true
	return b
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
		o.Says, o.Anew = d.Tell(text.ElsewhereReloads, name), true
		return desk.Ask{Close: true, Take: o}
	}
	return b
}

// NotSaved says what stood in the way of saving and offers another place: her
// home folder, or one that she names. quit leaves after it, as she wanted.
func NotSaved(d *desk.Desk, why string, quit bool) desk.Overlay {
	save := func(path string) func() desk.Ask {
		return func() desk.Ask { return desk.Ask{Close: true, Save: &desk.Save{Path: path}, Quit: quit} }
	}
	var rows []row
	name := suggested(d)
	if home := files.Expand("~"); home != "~" && !same(home, here(d.Path())) {
		path := filepath.Join(home, name)
		if _, err := os.Lstat(path); err == nil {
			path = beside(path)
		}
		rows = append(rows, row{title: d.Tell(text.SaveOtherPlace, d.Plain(files.Shown(path))), do: save(path)})
	}
	rows = append(rows,
		row{title: d.Tell(text.SaveOtherName), do: func() desk.Ask { return desk.Ask{Close: true, Open: SaveAsThen(d, quit)} }},
		row{title: d.Tell(text.SaveAgain), do: save("")},
		row{title: d.Tell(text.OverwriteNot), do: func() desk.Ask { return desk.Ask{Close: true} }})
	return question(d, text.SaveFailed, []string{why, d.Tell(text.SaveKept)}, rows...)
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
