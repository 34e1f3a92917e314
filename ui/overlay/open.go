package overlay

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"chalkfold/ui/desk"
	"chalkfold/ui/files"
	"chalkfold/ui/session"
	"chalkfold/ui/text"
)

// opener is what Open remembers beside its board.
type opener struct {
	*board
	folder      string
	all, hidden bool
	recent      []session.Client
}

// Open offers the clients worked on last, then the files of a folder. Typing
// finds a name; what looks like a path is one, and Tab completes it.
func Open(d *desk.Desk) desk.Overlay {
	o := &opener{folder: here(d.Path()), recent: session.Recent()}
	o.board = &board{d: d, title: d.Tell(text.OpenTitle), how: text.OpenPath, field: text.FindLabel}
	o.board.rows = o.rows
	for i, c := range o.recent {
		if !same(c.Path, d.Path()) {
			o.at = i // Enter alone goes back to the client before this one
			break
		}
	}
	o.hear = o.answer
	o.finish = func() {
		if o.typed != "" {
			at := complete(o.typed, o.folder)
			o.retype(at)
		}
	}
	return o
}

// rows are clients, then the folder; a typed path shows its own folder.
func (o *opener) rows(typed string) []row {
	if isPath(typed) {
		dir, base := split(whole(typed, o.folder))
		list := o.entries(dir, strings.HasPrefix(base, "."))
		var out []row
		for _, r := range list {
			if strings.HasPrefix(r.title, base) {
				out = append(out, r)
			}
		}
		if len(out) == 0 {
			path := whole(typed, o.folder)
			out = append(out, row{title: o.d.Tell(text.OpenTitle), says: files.Shown(path), do: func() desk.Ask { return o.enter(path) }})
		}
		return out
	}
	var out []row
	for _, c := range o.recent {
		out = append(out, row{
			group: o.d.Tell(text.OpenRecent), title: clientName(o.d, c.Name), says: files.Shown(c.Path), right: ago(o.d, c.Seen),
			do: func() desk.Ask { return open(o.d, c.Path) },
		})
	}
	out = append(out, o.entries(o.folder, o.hidden)...)
	return found(out, typed, false)
}

// entries are the rows of a folder, with the way up and what is left out.
func (o *opener) entries(dir string, hidden bool) []row {
	d := o.d
	group := d.Tell(text.OpenHere, files.Shown(dir))
	out := []row{}
	if up := filepath.Dir(dir); up != dir {
		out = append(out, row{group: group, title: "..", says: d.Tell(text.OpenUp), do: func() desk.Ask { return o.enter(up) }})
	}
	list, err := look(dir, o.all, hidden)
	if err != nil {
		out = append(out, row{group: group, title: d.Tell(text.OpenFolders), whyNot: reason(err)})
	}
	for _, e := range list {
		path := filepath.Join(dir, e.name)
		r := row{group: group, title: e.name, do: func() desk.Ask { return o.enter(path) }}
		if e.folder {
			r.title += "/"
		}
		out = append(out, r)
	}
	show, hide := text.OpenAll, text.OpenHidden
	if o.all {
		show = text.AllOn
	}
	if o.hidden {
		hide = text.HiddenOff
	}
	return append(out,
		row{group: group, title: d.Tell(show), do: func() desk.Ask { o.all = !o.all; o.renew(); return desk.Ask{} }},
		row{group: group, title: d.Tell(hide), do: func() desk.Ask { o.hidden = !o.hidden; o.renew(); return desk.Ask{} }})
}

// enter goes into a folder or opens a file.
func (o *opener) enter(path string) desk.Ask {
	if info, err := os.Stat(path); err == nil && info.IsDir() {
		o.folder = filepath.Clean(path)
		o.retype("")
		o.says = nil
		for i, r := range o.list() {
			if r.title != ".." && r.group == o.d.Tell(text.OpenHere, files.Shown(o.folder)) {
				o.at = i
				break
			}
		}
		return desk.Ask{}
	}
	return open(o.d, path)
}

func (o *opener) answer(a desk.Answer) desk.Ask { return o.opened(a) }

// errandOpen is the Run that reads a session.
const errandOpen = "open"

// open reads a session beside the work.
func open(d *desk.Desk, path string) desk.Ask {
	version := d.Version()
	return desk.Ask{For: d.Tell(text.OpenTitle), Run: func() desk.Answer {
		s, err := session.Open(path)
		if err == nil {
			session.Remember(path, s.Job)
		}
		return desk.Answer{Version: version, What: errandOpen, Err: err, Value: s, Keep: true}
	}}
}

// opened takes the session up, or says why it could not be read and stays.
// What was open before stays open.
func (b *board) opened(a desk.Answer) desk.Ask {
	if a.What != errandOpen {
		return desk.Ask{}
	}
	s, ok := a.Value.(*session.Session)
	if a.Err != nil || !ok || s == nil {
		b.says = sentences(a.Err)
		b.top = 0
		return desk.Ask{Say: b.d.Tell(text.SeeAbove), Warn: true}
	}
	return desk.Ask{Close: true, Take: taken(b.d, s)}
}

// taken is a session just read.
func taken(d *desk.Desk, s *session.Session) *desk.Opened {
	says := d.Tell(text.Opened, filepath.Base(s.Path))
	if len(s.Warnings) > 0 {
		says += " " + s.Warnings[0]
	}
	return &desk.Opened{Store: s, Path: s.Path, Saved: s.Job, Says: says}
}

// sentences are the reasons of an error, one each.
func sentences(err error) []string {
	if err == nil {
		return []string{""}
	}
	lines := strings.Split(err.Error(), "\n")
	for i, l := range lines {
		lines[i] = files.Shown(l)
	}
	if len(lines) > 8 {
		lines = lines[:8]
	}
	return lines
}

// reason is why a folder cannot be read, without its path.
func reason(err error) string {
	var t *files.Trouble
	switch {
	case errors.As(err, &t):
		return t.Wrong
	case errors.Is(err, fs.ErrNotExist):
		return "there is no such folder"
	case errors.Is(err, fs.ErrPermission):
		return "you may not read it"
	}
	var p *fs.PathError
	if errors.As(err, &p) {
		return p.Err.Error()
	}
	return err.Error()
}
