package stage

import "chalkfold/ui/desk"

// form is a list of rows with a field on the row in hand. What is typed and
// cannot be read stays in its row with the sentence that says why; it never
// holds her up and never gets lost.
type form struct {
	rows   []row
	at     int
	typing bool
	field  field
	kept   map[string]unread
	shown  string // the row whose text the field holds
	was    string // and that text as it is stored
}

// row is one line of a form.
type row struct {
	id    string
	title string
	group string
	text  string // as stored; empty: nothing
	pick  bool   // Left and Right change it; nothing is typed
}

// unread is an entry that was left but not understood.
type unread struct{ text, why string }

// sync takes the rows as they are now. An entry that is being typed stays.
func (f *form) sync(rows []row) {
	id := ""
	if f.at < len(f.rows) {
		id = f.rows[f.at].id
	}
	f.rows = rows
	for i := range rows {
		if rows[i].id == id {
			f.at = i
		}
	}
	f.at = max(0, min(f.at, len(rows)-1))
	f.load(false)
}

// load brings the row in hand into the field, unless it is there already with
// something typed over it.
func (f *form) load(again bool) {
	r, ok := f.row()
	if !ok {
		return
	}
	if !again && f.shown == r.id && (f.was == r.text || f.typed()) {
		f.was = r.text
		return
	}
	f.shown, f.was = r.id, r.text
	if u, ok := f.kept[r.id]; ok {
		f.field.set(u.text)
		return
	}
	f.field.set(r.text)
}

// typed says that the field holds something else than what is stored.
func (f *form) typed() bool { return f.field.string() != f.was }

// dirty says the same of a form in use.
func (f *form) dirty() bool {
	r, ok := f.row()
	return ok && !r.pick && f.shown == r.id && f.typed()
}

func (f *form) row() (row, bool) {
	if f.at < 0 || f.at >= len(f.rows) {
		return row{}, false
	}
	return f.rows[f.at], true
}

// to goes to a row.
func (f *form) to(i int) {
	f.at = max(0, min(i, len(f.rows)-1))
	f.shown = ""
	f.load(true)
}

func (f *form) find(id string) int {
	for i := range f.rows {
		if f.rows[i].id == id {
			return i
		}
	}
	return -1
}

// keep notes that the entry of the row in hand could not be read.
func (f *form) keep(why string) {
	r, ok := f.row()
	if !ok {
		return
	}
	if f.kept == nil {
		f.kept = map[string]unread{}
	}
	f.kept[r.id] = unread{f.field.string(), why}
}

// put back the stored value; false if it was there already.
func (f *form) restore() bool {
	r, ok := f.row()
	if !ok {
		return false
	}
	_, kept := f.kept[r.id]
	if !f.dirty() && !kept {
		return false
	}
	delete(f.kept, r.id)
	f.shown = ""
	f.load(true)
	return true
}

// accepted forgets what was typed in the row in hand.
func (f *form) accepted() {
	if r, ok := f.row(); ok {
		delete(f.kept, r.id)
	}
	f.shown = ""
}

// window is the part of the rows to show in so many lines, the one in hand
// among them with one more on each side.
func window(at, n, lines int) (from, to int) {
	if n <= lines {
		return 0, n
	}
	from = max(0, min(at-lines/2, n-lines))
	return from, from + lines
}

// Enter puts the focus on the row in hand: digits are answers on entry.
func (f *form) Enter() { f.typing = true }

// typeKey is a key while typing.
func (f *form) typeKey(k desk.Key) {
	if r, ok := f.row(); !ok || r.pick {
		return
	}
	f.load(false)
	if len(k.Runes) > 0 {
		f.field.insert(k.Runes)
		return
	}
	f.field.key(k.Name)
}
