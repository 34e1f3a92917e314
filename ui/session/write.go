package session

import (
	"math"
	"reflect"
	"slices"
	"strconv"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
)

// leaf is one value of a job and where it stands in a session.
type leaf struct {
	path    []string
	literal string
	same    string // equal for equal values, whatever the unit
	length  bool   // its text has no unit and means the session's
	text    bool   // taken away it stays as ""
}

// leaves lists what a job says, in the order of a new file, without the
// lists of fittings and earlier measures.
func leaves(job pattern.Job, lesson map[string]int) []leaf {
	w := &lister{unit: job.Unit}
	w.text("unit", job.Unit.String())
	c := job.Client
	w.words(c.Name, "client", "name")
	w.date(c.Measured, "client", "measured")
	w.words(c.MeasuredBy, "client", "measured_by")
	w.words(c.Shoes, "client", "shoes")
	w.words(c.Notes, "client", "notes")
	w.body(job.Body, "body")
	w.body(job.Left, "body_left")
	w.style(job.Style)
	w.body(job.Confirmed, "confirmed")
	for _, cloth := range job.Cloths {
		w.cloth(cloth)
	}
	for _, l := range job.Lays {
		w.lay(l)
	}
	ids := make([]string, 0, len(lesson))
	for id := range lesson {
		ids = append(ids, id)
	}
	slices.Sort(ids)
	for _, id := range ids {
		w.add(strconv.Itoa(lesson[id]), "lesson", id)
	}
	return w.all
}

// lister collects leaves.
type lister struct {
	unit measure.Unit
	all  []leaf
}

func (w *lister) add(literal string, path ...string) {
	w.all = append(w.all, leaf{path: path, literal: literal, same: literal})
}

func (w *lister) text(key, value string) { w.add(quoted(value), key) }

func (w *lister) words(text string, path ...string) {
	if text != "" {
		w.all = append(w.all, leaf{path: path, literal: quoted(text), same: text, text: true})
	}
}

func (w *lister) date(d pattern.Date, path ...string) {
	if !d.IsZero() {
		w.add(dateLiteral(d), path...)
	}
}

func (w *lister) length(l measure.Length, path ...string) {
	same := strconv.FormatUint(math.Float64bits(float64(l)), 16)
	w.all = append(w.all, leaf{path: path, literal: lengthLiteral(l, w.unit), same: same, length: true})
}

func lengthLiteral(l measure.Length, u measure.Unit) string { return quoted(u.Exact(l)) }

func (w *lister) body(b measure.Body, path ...string) {
	for _, id := range b.IDs() {
		l, _ := b.Get(id)
		w.length(l, append(slices.Clone(path), string(id))...)
	}
}

// style lists the choices in the order of their garment's list, then those
// that it has not.
func (w *lister) style(s pattern.Style) {
	ids := s.IDs()
	var order []pattern.ChoiceID
	for _, c := range workroom.Choices(s.Garment()) {
		order = append(order, c.ID)
	}
	place := func(id pattern.ChoiceID) int {
		switch i := slices.Index(order, id); {
		case id == pattern.Garment:
			return -2
		case id == pattern.Method:
			return -1
		case i >= 0:
			return i
		}
		return len(order)
	}
	slices.SortStableFunc(ids, func(a, b pattern.ChoiceID) int { return place(a) - place(b) })
	for _, id := range ids {
		v, _ := s.Get(id)
		path := []string{"style", string(id)}
		switch v.Kind {
		case pattern.KindLength:
			w.length(v.Length, path...)
		case pattern.KindPick:
			w.add(quoted(v.Pick), path...)
		case pattern.KindSwitch:
			w.add(strconv.FormatBool(v.On), path...)
		default:
			w.add(numberLiteral(v.Number), path...)
		}
	}
}

func (w *lister) cloth(c pattern.Cloth) {
	path := func(key string) []string { return []string{"cloth", c.Name, key} }
	for _, f := range clothFields {
		switch {
		case f.length != nil:
			if l := *f.length(&c); l != 0 {
				w.length(l, path(f.key)...)
			}
		case f.number != nil:
			if n := *f.number(&c); n != 0 {
				w.add(numberLiteral(n), path(f.key)...)
			}
		case f.word != nil:
			if word := *f.word(&c); word != "" {
				w.add(quoted(word), path(f.key)...)
			}
		}
	}
	// A cloth of which nothing else is known stays a cloth.
	w.add(strconv.FormatBool(c.Nap), path("nap")...)
	if len(c.Flaws) > 0 {
		text := "["
		for i, f := range c.Flaws {
			if i > 0 {
				text += ", "
			}
			text += "["
			for k, l := range f {
				if k > 0 {
					text += ", "
				}
				text += lengthLiteral(l, w.unit)
			}
			text += "]"
		}
		w.all = append(w.all, leaf{path: path("flaws"), literal: text + "]", same: text, length: true})
	}
}

// fittingLeaves and earlierLeaves list one element, below its path.
func fittingLeaves(f pattern.Fitting, path ...string) []leaf {
	w := &lister{}
	at := func(keys ...string) []string { return append(slices.Clone(path), keys...) }
	w.date(f.Date, at("date")...)
	w.words(f.Seen, at("seen")...)
	for _, c := range f.Change {
		w.add(quoted(c.By), at("change", c.Input)...)
	}
	w.words(f.Why, at("why")...)
	if f.Out {
		w.add("true", at("out")...)
	}
	return w.all
}

func earlierLeaves(e pattern.Earlier, u measure.Unit, path ...string) []leaf {
	w := &lister{unit: u}
	w.date(e.Measured, append(slices.Clone(path), "measured")...)
	w.body(e.Body, append(slices.Clone(path), "body")...)
	return w.all
}

// change sets what differs between what the file says and what it shall say.
// Lengths without a unit of their own change their text with the unit.
func (e *editor) change(was, now []leaf, stated func(path []string) bool, unitChanged bool) {
	old := map[string]leaf{}
	for _, l := range was {
		old[joined(l.path)] = l
	}
	for _, l := range now {
		before, there := old[joined(l.path)]
		delete(old, joined(l.path))
		if there && before.same == l.same && !(l.length && unitChanged && !stated(l.path)) {
			continue
		}
		e.set(l.path, l.literal)
	}
	for _, l := range was {
		if _, gone := old[joined(l.path)]; !gone {
			continue
		}
		if l.text {
			e.set(l.path, `""`)
		} else {
			e.remove(l.path)
		}
	}
}

// lists changes a list of tables: equal elements at both ends stay, those
// between are changed in pairs, the rest dropped or put in.
func lists[T any](e *editor, name string, was, now []T, same func(a, b T) bool, pair func(i int, a, b T), fields func(T) (keys, literals []string)) {
	p := 0
	for p < len(was) && p < len(now) && same(was[p], now[p]) {
		p++
	}
	q := 0
	for q < len(was)-p && q < len(now)-p && same(was[len(was)-1-q], now[len(now)-1-q]) {
		q++
	}
	a, b := len(was)-p-q, len(now)-p-q
	for k := range min(a, b) {
		pair(p+k, was[p+k], now[p+k])
	}
	for k := a - 1; k >= b; k-- {
		e.dropElement(name, p+k)
	}
	for k := a; k < b; k++ {
		keys, literals := fields(now[p+k])
		e.addElement(name, p+a, p+k, keys, literals)
	}
}

// fields are leaves of one level as keys and literals; deeper ones become
// inline tables.
func fields(all []leaf) (keys, literals []string) {
	for i := 0; i < len(all); i++ {
		key := all[i].path[0]
		literal := all[i].literal
		if len(all[i].path) > 1 {
			literal = "{ " + plainKey(all[i].path[1]) + " = " + all[i].literal
			for i+1 < len(all) && all[i+1].path[0] == key {
				i++
				literal += ", " + plainKey(all[i].path[1]) + " = " + all[i].literal
			}
			literal += " }"
		}
		keys, literals = append(keys, key), append(literals, literal)
	}
	return keys, literals
}

// edited is the session's text with another job in it.
func (s *Session) edited(job pattern.Job) ([]byte, error) {
	e := newEditor(s.layout, s.doc)
	unitChanged := job.Unit != s.read.Unit
	stated := func(path []string) bool { return s.stated[joined(path)] }
	for _, c := range s.read.Cloths {
		if _, stays := job.Cloth(c.Name); !stays {
			e.dropTable([]string{"cloth", c.Name})
		}
	}
	for _, l := range s.read.Lays {
		if _, stays := job.Lay(l.Cloth); !stays {
			e.dropTable([]string{"lay", l.Cloth})
		}
	}
	was := s.read
	was.Lays = slices.DeleteFunc(slices.Clone(was.Lays), func(l pattern.KeptLay) bool { _, stays := job.Lay(l.Cloth); return !stays })
	was.Cloths = slices.DeleteFunc(slices.Clone(was.Cloths), func(c pattern.Cloth) bool { _, stays := job.Cloth(c.Name); return !stays })
	e.change(leaves(was, s.readLesson), leaves(job, s.Lesson), stated, unitChanged)
	lists(e, "earlier", s.read.Earlier, job.Earlier,
		func(a, b pattern.Earlier) bool { return !unitChanged && reflect.DeepEqual(a, b) },
		func(i int, a, b pattern.Earlier) {
			n := strconv.Itoa(i)
			e.change(earlierLeaves(a, s.read.Unit, "earlier", n), earlierLeaves(b, job.Unit, "earlier", n), stated, unitChanged)
		},
		func(x pattern.Earlier) ([]string, []string) { return fields(earlierLeaves(x, job.Unit)) })
	lists(e, "fitting", s.read.Fittings, job.Fittings,
		func(a, b pattern.Fitting) bool { return reflect.DeepEqual(a, b) },
		func(i int, a, b pattern.Fitting) {
			n := strconv.Itoa(i)
			e.change(fittingLeaves(a, "fitting", n), fittingLeaves(b, "fitting", n), stated, false)
		},
		func(x pattern.Fitting) ([]string, []string) { return fields(fittingLeaves(x)) })
	return e.bytes()
}
