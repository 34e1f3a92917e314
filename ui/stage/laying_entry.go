package stage

import (
	"slices"
	"strings"
	"sync/atomic"

	"chalkfold/measure"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/laid"
	"chalkfold/pattern/lay"
	"chalkfold/pattern/workroom"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/text"
)

// layEntry is what is typed on this stage.
type layEntry int8

const (
	noLayEntry layEntry = iota
	flawEntry
	remnantEntry
	clothEntry
)

// aside is what was asked about the cloth besides the lay.
type aside struct {
	widths []laid.Width
	fit    *laid.Fit
}

// asideSearch is how long is searched for each answer besides the lay.
const asideSearch = 400_000

// edit opens an entry.
func (s *Lay) edit(id keys.ID) {
	s.entry = remnantEntry
	if id == "flaw" {
		s.entry = flawEntry
	}
	s.field.set("")
}

// Type a key of the entry, or of the cross-hair.
func (s *Lay) Type(k desk.Key) desk.Ask {
	switch {
	case s.entry == noLayEntry:
		return s.hairType(k)
	case s.entry == clothEntry:
		return s.formType(k)
	case len(k.Runes) > 0:
		s.field.insert(k.Runes)
	default:
		s.field.key(k.Name)
	}
	return desk.Ask{}
}

// Settle leaves an entry that is open when another screen comes; of the cloth's
// form what is typed is accepted, of others nothing was asked for yet. A search
// stops too: its words would run into other work.
func (s *Lay) Settle() desk.Ask {
	s.halt()
	was := s.entry
	s.entry = noLayEntry
	if was == clothEntry && s.form.dirty() {
		return s.takeRow()
	}
	return desk.Ask{}
}

func (s *Lay) inEntry(id keys.ID) desk.Ask {
	if s.entry == clothEntry {
		return s.inForm(id)
	}
	switch id {
	case keys.Accept:
		return s.accept()
	case keys.Back:
		s.entry = noLayEntry
	case "clear":
		s.field.set("")
	case "text-left":
		s.field.key("left")
	case "text-right":
		s.field.key("right")
	}
	return desk.Ask{}
}

// examples of what is typed, in each unit.
func (s *Lay) example() string {
	in := s.d.Unit() == measure.In
	switch {
	case s.entry == flawEntry && in:
		return "20, 4, 1, 1"
	case s.entry == flawEntry:
		return "50, 10, 3, 3"
	case in:
		return "60 x 45"
	}
	return "150 x 110"
}

// accept takes what is typed.
func (s *Lay) accept() desk.Ask {
	sep, want, none := "x", 2, text.LayPieceRead
	typed := strings.NewReplacer("×", "x", "X", "x").Replace(s.field.string())
	if s.entry == flawEntry {
		sep, want, none = ",", 4, text.LayFlawRead
		if u := s.d.Unit(); u != measure.In && strings.Count(typed, ";") == 3 {
			sep = ";" // a comma may be that of a decimal
		}
	}
	parts := strings.Split(typed, sep)
	var all []measure.Length
	for i, p := range parts {
		l, err := measure.Read(strings.TrimSpace(p), s.d.Unit())
		if err != nil || l > 50_000 || l <= 0 && (s.entry == remnantEntry || i > 1) {
			break
		}
		all = append(all, l)
	}
	if len(all) != want || len(parts) != want {
		return desk.Ask{Say: s.d.Tell(none, s.example()), Warn: true}
	}
	entry := s.entry
	s.entry = noLayEntry
	if entry == flawEntry {
		return s.mark([4]measure.Length(all))
	}
	return s.tryRemnant(all[0], all[1])
}

// mark puts a flaw on the cloth, as one change.
func (s *Lay) mark(f [4]measure.Length) desk.Ask {
	c := s.hers()
	c.Flaws = append(slices.Clone(c.Flaws), f)
	job := s.d.Job().WithCloth(c)
	u := s.d.Unit()
	return desk.Ask{Job: &job, Says: s.d.Tell(text.LayFlawIs, u.Say(f[0]), u.Say(f[1]))}
}

// flaws are those of the cloth where they show as it lies.
func (s *Lay) flaws() []geom.Box {
	c := &s.work.Problem.Cloth
	var out []geom.Box
	for _, f := range c.Flaws {
		add := func(left, right, least, most int64) {
			if left, right = max(left, least), min(right, most); left < right {
				out = append(out, geom.Box{Min: onTable(lay.Point{X: left, Y: f.Along}), Max: onTable(lay.Point{X: right, Y: min(f.Along+f.Length, c.Lies(s.best))})})
			}
		}
		left, right := f.Across, f.Across+f.Width
		switch h := c.Width / 2; c.Fold {
		case lay.Flat:
			add(left, right, 0, c.Width)
		case lay.Lengthwise:
			add(left-h, right-h, 0, h)
			add(h-right, h-left, 0, h)
		case lay.OffCentre:
			d := s.best.Depth
			add(left-d, right-d, 0, c.Width-d)
			add(d-right, d-left, 0, d)
		case lay.Across: // where they lie is not known
		default:
			k := c.Width / 4
			add(left-k, right-k, 0, h)
			add(k-right, k-left, 0, k)
			add(5*k-right, 5*k-left, k, h)
		}
	}
	return slices.DeleteFunc(out, func(b geom.Box) bool { return b.Min.Y >= b.Max.Y })
}

// errand is the answer to what was asked besides the lay.
type errand struct {
	aside
	stop *atomic.Bool
}

// inquire works something out besides the lay; Esc ends it with what is found.
func (s *Lay) inquire(words string, work func(laid.Work, laid.Search) aside) desk.Ask {
	s.halt()
	stop := new(atomic.Bool)
	s.asked = stop
	w, version, search := s.work.Work, s.version, laid.Search{Evaluations: s.effort, Stop: stop.Load}
	return desk.Ask{For: words, Run: func() desk.Answer {
		return desk.Answer{Version: version, Value: errand{work(w, search), stop}}
	}}
}

// answered puts what was asked beside the lay.
func (s *Lay) answered(e errand) desk.Ask {
	if e.stop != s.asked {
		return desk.Ask{} // of a question that is not asked any more
	}
	s.asked, s.aside = nil, e.aside
	if e.fit != nil {
		return desk.Ask{Say: s.d.Trade(e.fit.Says().In(s.d.Unit()))}
	}
	for i := range s.aside.widths {
		// Her own width is laid already, and longer searched for.
		if r := &s.aside.widths[i]; r.Own && s.best.Length <= r.Lay.Length {
			r.Lay, r.Buy = s.best, s.work.Buy(s.best)
			r.Cost = s.work.Cost(r.Buy)
		}
	}
	if e.stop.Load() {
		return desk.Ask{Say: s.d.Tell(text.LayCutShort)}
	}
	return desk.Ask{}
}

// otherWidths lays the pieces on other widths, or puts their table away.
func (s *Lay) otherWidths() desk.Ask {
	if s.aside.widths != nil {
		s.aside = aside{}
		return desk.Ask{}
	}
	u := s.d.Unit()
	return s.inquire(s.d.Tell(text.LayTrying), func(w laid.Work, search laid.Search) aside {
		return aside{widths: w.Widths(laid.ShopWidths(u, w.Cloth.Width), search)}
	})
}

// tryRemnant asks whether a remnant is enough.
func (s *Lay) tryRemnant(along, across measure.Length) desk.Ask {
	return s.inquire(s.d.Tell(text.LayRemTrying), func(w laid.Work, search laid.Search) aside {
		fit := w.Remnant(along, across, search, workroom.Draft)
		return aside{fit: &fit}
	})
}
