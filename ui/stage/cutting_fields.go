package stage

import (
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/ui/desk"
	"chalkfold/ui/files"
	"chalkfold/ui/keys"
	"chalkfold/ui/outlet"
	"chalkfold/ui/session"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
	"chalkfold/ui/view"
)

// entry is a row below the formats in which something is typed.
type entry int8

const (
	noEntry entry = iota
	folderEntry
	acrossEntry // how long the line across came out on paper
	alongEntry
)

// entries are those that stand now: how the printer prints is asked for tiles
// alone.
func (s *Cut) entries() []entry {
	if s.ticked["tiles"] {
		return []entry{folderEntry, acrossEntry, alongEntry}
	}
	return []entry{folderEntry}
}

// rows: the formats, then the entries.
func (s *Cut) rows() int { return len(outlet.Formats()) + len(s.entries()) }

// onEntry is the entry in hand, if there is one.
func (s *Cut) onEntry() entry {
	all := s.entries()
	if i := s.at - len(outlet.Formats()); i >= 0 {
		return all[min(i, len(all)-1)]
	}
	return noEntry
}

func (s *Cut) move(by int) { s.at = max(0, min(s.at+by, s.rows()-1)) }

// edit opens the entry in hand.
func (s *Cut) edit() {
	s.typing = s.onEntry()
	text := s.textOf(s.typing)
	if text == "" && s.typing != folderEntry {
		// What was measured on this paper before is offered: Enter takes it.
		across, along := outlet.Printed(s.d.Settings.Config, s.paperID())
		kept := across
		if s.typing == alongEntry {
			kept = along
		}
		if kept > 0 {
			text = s.d.Unit().Exact(kept)
		}
	}
	s.field.set(text)
}

// textOf is what an entry holds.
func (s *Cut) textOf(e entry) string {
	l := s.printed[0]
	switch e {
	case folderEntry:
		return s.place()
	case alongEntry:
		l = s.printed[1]
	}
	if l == 0 {
		return ""
	}
	return s.d.Unit().Exact(l)
}

// inEntry is an action while something is typed.
func (s *Cut) inEntry(id keys.ID) desk.Ask {
	switch id {
	case keys.Accept, "field-up", "field-down", keys.FieldNext, keys.FieldBack:
		ask := s.accept()
		if ask.Warn {
			return ask
		}
		s.typing, s.again = noEntry, false
		switch id {
		case "field-up", keys.FieldBack:
			s.move(-1)
		case "field-down", keys.FieldNext:
			s.move(1)
		}
	case keys.Back:
		s.typing = noEntry
	case "clear":
		s.field.set("")
	case "text-left":
		s.field.key("left")
	case "text-right":
		s.field.key("right")
	}
	return desk.Ask{}
}

// accept takes what is typed.
func (s *Cut) accept() desk.Ask {
	typed := strings.TrimSpace(s.field.string())
	if s.typing == folderEntry {
		s.folder = files.Expand(typed)
		return desk.Ask{}
	}
	was := s.printed
	l := measure.Length(0)
	if typed != "" {
		var err error
		if l, err = measure.Read(typed, s.d.Unit()); err != nil {
			return desk.Ask{Say: s.d.Plain(withoutPlace(err).Error()), Warn: true}
		}
	}
	s.printed[s.typing-acrossEntry] = l
	if err := s.options().Check(); err != nil {
		s.printed = was
		return desk.Ask{Say: s.d.Plain(withoutPlace(err).Error()), Warn: true}
	}
	return desk.Ask{}
}

// options are those of writing.
func (s *Cut) options() outlet.Options {
	return outlet.Options{Session: s.d.Unit(), Paper: s.paperID(), Force: s.again, PrintedAcross: s.printed[0], PrintedAlong: s.printed[1], Numbers: session.IsDemo(s.d.Job())}
}

func (s *Cut) paperID() string { return outlet.Papers()[s.paper].ID }

// Settle accepts what is typed before another screen comes; what cannot be
// read is dropped.
func (s *Cut) Settle() desk.Ask {
	if s.typing == noEntry {
		return desk.Ask{}
	}
	s.accept()
	s.typing = noEntry
	return desk.Ask{}
}

// Type a key of the entry.
func (s *Cut) Type(k desk.Key) desk.Ask {
	if s.typing == noEntry {
		return s.hairType(k)
	}
	if len(k.Runes) > 0 {
		s.field.insert(k.Runes)
	} else {
		s.field.key(k.Name)
	}
	return desk.Ask{}
}

// places are where it goes: the folder, the paper, and how the printer prints.
func (s *Cut) places(cols int) []string {
	d, wide := s.d, min(entryCells, max(cols-26, 8))
	paper := outlet.Papers()[s.paper].Title
	if n := s.sheets(); n > 0 {
		paper += ", " + d.Words.Count(n, text.CutPage, text.CutPages)
	}
	out := []string{"     " + desk.Fit(d.Tell(text.CutPaper, ""), wide) + d.Trade(paper)}
	across, along := outlet.Controls(s.paperID())
	for i, e := range s.entries() {
		here := s.onEntry() == e
		label, value := d.Tell(text.CutInto), d.Plain(s.textOf(e))
		switch e {
		case acrossEntry:
			label = d.Tell(text.CutAcross, d.Unit().Say(across))
		case alongEntry:
			label = d.Tell(text.CutAlong, d.Unit().Say(along))
		}
		if value == "" {
			value = d.Paint(theme.Muted, d.Tell(text.CutTrue))
		}
		line := marker(here) + "    " + desk.Fit(shortTitle(label, wide-1), wide)
		if here {
			line = d.Paint(theme.Title, line)
		}
		if here && s.typing == e {
			value = s.field.view(d, max(min(cols-wide-8, 50), 10))
		}
		out = append(out, line+value)
		if i == 0 && cols < 70 && s.onEntry() <= folderEntry {
			break // the rest is seen when she comes to it
		}
	}
	return out
}

// entryCells is the width of the labels of entries.
const entryCells = 24

// tiling is how the tiles lie, kept while sheet and paper stay.
type tiling struct {
	of    *pattern.Sheet
	paper int
	pages *view.Pages
}

// pages are the tiles over the pieces, nil while they are not ticked.
func (s *Cut) pages() *view.Pages {
	sheet := s.d.Sheet()
	if !s.ticked["tiles"] || !sheet.Complete {
		return nil
	}
	if s.tiles.of == sheet && s.tiles.paper == s.paper {
		return s.tiles.pages
	}
	s.tiles = tiling{of: sheet, paper: s.paper}
	t, drawing, err := outlet.TileUp(sheet, s.d.Unit(), s.paperID())
	if err != nil || len(t.Tiles) == 0 {
		return nil
	}
	p := &view.Pages{Places: map[pattern.PieceID]geom.Matrix{}}
	for i, x := range drawing.Pieces {
		p.Places[x.Piece.ID] = t.Places[i]
	}
	for _, x := range t.Tiles {
		p.Sheets = append(p.Sheets, view.Page{Name: x.Name(), Room: t.Window(x)})
	}
	s.tiles.pages = p
	return p
}

// sheets is how many sheets the tiles take, the cover among them.
func (s *Cut) sheets() int {
	if p := s.pages(); p != nil {
		return len(p.Sheets) + 1
	}
	return 0
}
