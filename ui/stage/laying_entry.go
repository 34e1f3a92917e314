package stage

import (
	"slices"
	"strings"

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
	case len(k.Runes) > 0:
		s.field.insert(k.Runes)
	default:
		s.field.key(k.Name)
	}
	return desk.Ask{}
}

// Settle leaves an entry that is open when another screen comes; nothing in it
// was asked for yet. A search stops too: its words would run into other work.
func (s *Lay) Settle() desk.Ask {
	s.halt()
	s.entry = noLayEntry
	return desk.Ask{}
}

func (s *Lay) inEntry(id keys.ID) desk.Ask {
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
	c := s.cloth()
	c.Flaws = append(slices.Clone(c.Flaws), f)
	job := s.d.Job().WithCloth(c)
	u := s.d.Unit()
	return desk.Ask{Job: &job, Says: s.d.Tell(text.LayFlawIs, u.Say(f[0]), u.Say(f[1]))}
}

// flaws are those of the cloth where they show as it lies.
func (s *Lay) flaws() []geom.Box {
	c := &s.shown.Problem.Cloth
	var out []geom.Box
	for _, f := range c.Flaws {
		add := func(left, right, least, most int64) {
			if left, right = max(left, least), min(right, most); left < right {
				out = append(out, geom.Box{Min: onTable(lay.Point{X: left, Y: f.Along}), Max: onTable(lay.Point{X: right, Y: min(f.Along+f.Length, s.best.Length)})})
			}
		}
		left, right := f.Across, f.Across+f.Width
		switch h := c.Width / 2; c.Fold {
		case lay.Flat:
			add(left, right, 0, c.Width)
		case lay.Lengthwise:
			add(left-h, right-h, 0, h)
			add(h-right, h-left, 0, h)
		default:
			k := c.Width / 4
			add(left-k, right-k, 0, h)
			add(k-right, k-left, 0, k)
			add(5*k-right, 5*k-left, k, h)
		}
	}
	return slices.DeleteFunc(out, func(b geom.Box) bool { return b.Min.Y >= b.Max.Y })
}

// otherWidths lays the pieces on other widths, or puts their table away.
func (s *Lay) otherWidths() desk.Ask {
	if s.aside.widths != nil {
		s.aside = aside{}
		return desk.Ask{}
	}
	s.halt()
	w, u, version, search := s.shown.Work, s.d.Unit(), s.version, laid.Search{Evaluations: s.effort}
	return desk.Ask{For: s.d.Tell(text.LayTrying), Run: func() desk.Answer {
		rows := w.Widths(laid.ShopWidths(u, w.Cloth.Width), search)
		return desk.Answer{Version: version, What: "widths", Value: rows}
	}}
}

// tryRemnant asks whether a remnant is enough.
func (s *Lay) tryRemnant(along, across measure.Length) desk.Ask {
	s.halt()
	w, version, search := s.shown.Work, s.version, laid.Search{Evaluations: s.effort}
	return desk.Ask{For: s.d.Tell(text.LayRemTrying), Run: func() desk.Answer {
		fit := w.Remnant(along, across, search, workroom.Draft)
		return desk.Answer{Version: version, What: "remnant", Value: fit}
	}}
}
