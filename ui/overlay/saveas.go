package overlay

import (
	"os"
	"path/filepath"
	"strings"
	"unicode"

	"chalkfold/ui/desk"
	"chalkfold/ui/files"
	"chalkfold/ui/session"
	"chalkfold/ui/text"
)

// saver is what SaveAs remembers beside its board.
type saver struct {
	*board
	folder string
	quit   bool
}

// SaveAs asks for a name. A file of that name is only written over after a
// question.
func SaveAs(d *desk.Desk) desk.Overlay { return SaveAsThen(d, false) }

// SaveAsThen is SaveAs, and leaving after it.
func SaveAsThen(d *desk.Desk, quit bool) desk.Overlay {
	s := &saver{folder: here(d.Path()), quit: quit}
	s.board = &board{d: d, title: d.Tell(text.SaveTitle), how: text.SaveHow, field: text.NameLabel, typed: suggested(d)}
	s.board.rows = s.rows
	s.hear = s.answer
	s.finish = func() {
		if s.typed != "" {
			s.retype(complete(s.typed, s.folder))
		}
	}
	return s
}

// suggested is a name for the file: that of the session, or the client's.
func suggested(d *desk.Desk) string {
	if d.Path() != "" {
		return filepath.Base(d.Path())
	}
	var b strings.Builder
	for _, r := range strings.ToLower(d.Job().Client.Name) {
		switch {
		case unicode.IsLetter(r) || unicode.IsDigit(r):
			b.WriteRune(r)
		case b.Len() > 0 && !strings.HasSuffix(b.String(), "-"):
			b.WriteByte('-')
		}
	}
	name := strings.Trim(b.String(), "-")
	if name == "" {
		name = "client"
	}
	return name + session.Suffix
}

// rows are to save under the typed name, or a new folder for it, and what is
// in the folder.
func (s *saver) rows(typed string) []row {
	d := s.d
	path := whole(typed, s.folder)
	dir, base := split(path)
	group := d.Tell(text.OpenHere, files.Shown(dir))
	first := row{group: group, title: d.Tell(text.SaveHere), says: files.Shown(session.Suffixed(path)), do: func() desk.Ask { return s.save(session.Suffixed(path)) }}
	list, err := look(dir, false, false)
	switch {
	case os.IsNotExist(err):
		first = row{group: group, title: d.Tell(text.MakeFolder, files.Shown(dir)), do: func() desk.Ask { return s.make(dir) }}
	case err != nil:
		first.whyNot = reason(err)
	case base == "":
		first.says, first.whyNot = "", strings.TrimSuffix(d.Tell(text.SaveNameFirst), ".")
	}
	out := []row{first}
	for _, e := range list {
		name := e.name
		if e.folder {
			out = append(out, row{group: group, title: name + "/", do: func() desk.Ask { s.show(filepath.Join(dir, name), base); return desk.Ask{} }})
			continue
		}
		out = append(out, row{group: group, title: name, do: func() desk.Ask { s.show(dir, name); return desk.Ask{} }})
	}
	return out
}

// show shows another folder with a name in the field.
func (s *saver) show(dir, name string) {
	s.folder = dir
	s.retype(name)
}

func (s *saver) make(dir string) desk.Ask {
	if err := files.Folder(dir); err != nil {
		s.says = sentences(err)
		return desk.Ask{Say: s.d.Tell(text.SeeAbove), Warn: true}
	}
	s.renew()
	return desk.Ask{}
}

// clash is a file that stands where she wants to save.
type clash struct{ path, client string }

const errandClash = "clash"

// save saves at once where nothing is in the way, else looks whose file it is.
func (s *saver) save(path string) desk.Ask {
	info, err := os.Stat(path)
	switch {
	case err == nil && info.IsDir():
		s.show(path, "")
		return desk.Ask{}
	case err != nil || same(path, s.d.Path()):
		return s.saved(path, false)
	}
	return desk.Ask{For: s.d.Tell(text.SaveTitle), Run: func() desk.Answer {
		c := clash{path: path}
		if other, err := session.Open(path); err == nil {
			c.client = other.Job.Client.Name
		}
		return desk.Answer{What: errandClash, Value: c, Keep: true}
	}}
}

func same(a, b string) bool {
	x, err := filepath.Abs(a)
	y, also := filepath.Abs(b)
	return b != "" && err == nil && also == nil && x == y
}

func (s *saver) saved(path string, over bool) desk.Ask {
	return desk.Ask{Close: true, Save: &desk.Save{Path: path, Over: over}, Quit: s.quit}
}

func (s *saver) answer(a desk.Answer) desk.Ask {
	c, ok := a.Value.(clash)
	if !ok || a.What != errandClash {
		return desk.Ask{}
	}
	d := s.d
	free := beside(c.path)
	q := &board{
		d: d, title: d.Tell(text.OverwriteTitle), how: text.RowsHow,
		says: []string{d.Tell(text.OverwriteSays, filepath.Base(c.path), clientName(d, c.client))},
	}
	rows := []row{
		{title: d.Tell(text.OverwriteBeside, filepath.Base(free)), do: func() desk.Ask { return s.saved(free, false) }},
		{title: d.Tell(text.OverwriteDo), do: func() desk.Ask { return s.saved(c.path, true) }},
		{title: d.Tell(text.OverwriteNot), do: func() desk.Ask { return desk.Ask{Close: true} }},
	}
	q.rows = func(string) []row { return rows }
	return desk.Ask{Close: true, Open: q}
}

// beside is a name near the given one that no file has.
func beside(path string) string {
	stem, suffix := path, ""
	for _, end := range []string{session.Suffix, ".toml"} {
		if cut, ok := strings.CutSuffix(path, end); ok {
			stem, suffix = cut, end
			break
		}
	}
	for n := 2; ; n++ {
		next := stem + "-" + itoa(n) + suffix
		if _, err := os.Lstat(next); err != nil {
			return next
		}
	}
}
