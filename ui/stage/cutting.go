package stage

import (
	"os"
	"path/filepath"
	"strconv"
	"strings"

	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/outlet"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
	"chalkfold/ui/view"
)

// Cut writes what is ticked into a folder.
type Cut struct {
	bench
	at     int
	ticked map[string]bool
	typing bool // in the folder's field
	folder field
	own    bool // the folder was typed
	paper  int
	said   []string // what became of each file
	again  bool     // something that differs is there: Enter replaces it
}

// NewCut is the sixth stage.
func NewCut(d *desk.Desk) *Cut {
	c := &Cut{bench: bench{d: d}, ticked: map[string]bool{}}
	for _, id := range usual {
		c.ticked[id] = true
	}
	return c
}

// usual is what is ticked at first: what she cuts by, and the picture.
var usual = [...]string{"svg", "card", "guide"}

// papers are the sizes that printers take, the usual one first.
var papers = [...]string{"a4-letter", "a4", "letter", "a3", "legal", "tabloid"}

// Title names the stage.
func (s *Cut) Title() string { return s.d.Tell(text.StageCut) }

// Fact: line 1 has none for this stage.
func (s *Cut) Fact() string { return "" }

// Typing says that the folder is being typed.
func (s *Cut) Typing() bool { return s.typing || s.eye.Hair }

// into is the folder: as typed, or that of the session.
func (s *Cut) into() string {
	if s.own {
		return strings.TrimSpace(s.folder.string())
	}
	if p := s.d.Path(); p != "" {
		return filepath.Dir(p)
	}
	return "."
}

// rows: the formats, then the folder.
func (s *Cut) rows() int { return len(outlet.Formats()) + 1 }

func (s *Cut) onFolder() bool { return s.at == s.rows()-1 }

// why is why nothing can be written, empty if it can.
func (s *Cut) why() string {
	if !s.d.Sheet().Complete {
		return s.d.Tell(text.CutEmpty, waits(s.d, s.d.Sheet()))
	}
	for _, f := range outlet.Formats() {
		if s.ticked[f.ID] {
			return ""
		}
	}
	return s.d.Tell(text.CutNothing)
}

// Actions are what can be done here.
func (s *Cut) Actions() []desk.Offer {
	if s.eye.Hair {
		return s.hairOffers()
	}
	if s.typing {
		return []desk.Offer{offer(keys.Accept), offer(keys.Back), quiet("field-up"), quiet("field-down"), quiet("clear")}
	}
	write := offer("write")
	write.WhyNot = s.why()
	if s.onFolder() {
		write.Title = s.d.Tell(text.CutInto)
		write.WhyNot = ""
	}
	return append([]desk.Offer{write, offer("tick"), quiet("format-up"), quiet("format-down"), offer("variant-next"), quiet("variant-back")}, s.tableOffers()...)
}

// Do an action.
func (s *Cut) Do(id keys.ID) desk.Ask {
	if s.eye.Hair {
		ask, _ := s.tableDo(id)
		return ask
	}
	if s.typing {
		return s.inFolder(id)
	}
	switch id {
	case "format-up":
		s.move(-1)
	case "format-down":
		s.move(1)
	case "tick":
		if s.onFolder() {
			s.edit()
		} else {
			f := outlet.Formats()[s.at].ID
			s.ticked[f] = !s.ticked[f]
			s.again = false
		}
	case "variant-next":
		s.paper = (s.paper + 1) % len(papers)
	case "variant-back":
		s.paper = (s.paper + len(papers) - 1) % len(papers)
	case "write":
		if s.onFolder() {
			s.edit()
			return desk.Ask{}
		}
		return s.write()
	case keys.FieldNext, keys.FieldBack:
		s.swap()
	default:
		ask, _ := s.tableDo(id)
		return ask
	}
	return desk.Ask{}
}

func (s *Cut) move(by int) { s.at = max(0, min(s.at+by, s.rows()-1)) }

func (s *Cut) edit() {
	s.folder.set(s.into())
	s.typing = true
}

// inFolder is an action while the folder is typed.
func (s *Cut) inFolder(id keys.ID) desk.Ask {
	switch id {
	case keys.Accept, "field-up", "field-down", keys.FieldNext, keys.FieldBack:
		s.typing, s.own = false, strings.TrimSpace(s.folder.string()) != ""
		s.again = false
		if id == "field-up" || id == keys.FieldBack {
			s.move(-1)
		}
	case keys.Back:
		s.typing = false
	case "clear":
		s.folder.set("")
	case "text-left":
		s.folder.key("left")
	case "text-right":
		s.folder.key("right")
	}
	return desk.Ask{}
}

// Type a key of the folder.
func (s *Cut) Type(k desk.Key) desk.Ask {
	if !s.typing {
		return s.hairType(k)
	}
	if len(k.Runes) > 0 {
		s.folder.insert(k.Runes)
	} else {
		s.folder.key(k.Name)
	}
	return desk.Ask{}
}

// written is what comes back from writing.
type written struct {
	folder  string
	results []outlet.Result
	there   bool // something else is there in place of one of them
}

// write asks for what is ticked to be written. A second Enter replaces what is
// there and differs.
func (s *Cut) write() desk.Ask {
	if why := s.why(); why != "" {
		return desk.Ask{Say: why, Warn: true}
	}
	var formats []outlet.Format
	for _, f := range outlet.Formats() {
		if s.ticked[f.ID] {
			formats = append(formats, f)
		}
	}
	sheet, stem, folder, o := s.d.Sheet(), s.d.Stem(), s.into(), outlet.Options{Session: s.d.Unit(), Paper: papers[s.paper], Force: s.again}
	version := s.d.Version()
	return desk.Ask{For: s.d.Tell(text.CutWriting), Run: func() desk.Answer {
		rs, err := outlet.Export(sheet, stem, folder, formats, o, nil)
		w := written{folder: folder, results: rs}
		for _, r := range rs {
			_, gone := os.Stat(r.Path)
			w.there = w.there || (r.Err != nil && gone == nil)
		}
		return desk.Answer{Version: version, What: "write", Err: err, Value: w, Keep: true}
	}}
}

// Hear what was written.
func (s *Cut) Hear(a desk.Answer) desk.Ask {
	w, ok := a.Value.(written)
	if !ok {
		return desk.Ask{}
	}
	s.said, s.again = nil, false
	if a.Err != nil {
		s.said = []string{a.Err.Error()}
		return desk.Ask{Say: s.d.Tell(text.CutNone) + " " + s.d.Plain(a.Err.Error()), Warn: true}
	}
	done, warn := 0, ""
	for _, r := range w.results {
		s.said = append(s.said, r.Says())
		switch {
		case r.Err == nil:
			done++
		case w.there && !s.again:
			s.again = true
			warn = s.d.Tell(text.CutAgain, filepath.Base(r.Path))
		case warn == "":
			warn = s.d.Plain(r.Err.Error())
		}
	}
	if warn != "" {
		return desk.Ask{Say: warn, Warn: true}
	}
	if done == 1 {
		return desk.Ask{Say: s.d.Tell(text.CutDoneOne, w.folder)}
	}
	return desk.Ask{Say: s.d.Tell(text.CutDone, w.folder, done)}
}

// View is what leaves above the cloth.
func (s *Cut) View(r desk.Rect) []string {
	return s.compose(r, 11, s.words, view.Scene{Sheet: s.d.Sheet()})
}

func (s *Cut) words(cols, rows int) ([]string, string) {
	d := s.d
	title := " " + d.Paint(theme.Title, d.Tell(text.CutTitle))
	out := []string{"", title, ""}
	if rows < 9 {
		out = []string{title}
	}
	foot := append(s.places(cols), s.notes(cols)...)
	room := max(rows-len(out)-min(len(foot), 4), 2)
	formats := outlet.Formats()
	from, to := window(min(s.at, len(formats)-1), len(formats), room)
	for i := from; i < to; i++ {
		out = append(out, s.line(i, formats[i], cols))
	}
	return append(out, foot...), title + "  " + d.Paint(theme.Muted, d.Plain(s.into()))
}

// line is one format: ticked or not, and what it is for.
func (s *Cut) line(i int, f outlet.Format, cols int) string {
	box := "[ ] "
	if s.ticked[f.ID] {
		box = "[x] "
	}
	line := marker(i == s.at) + box + desk.Fit(s.d.Trade(f.Title), 16) + s.d.Trade(f.Says)
	if i == s.at {
		return s.d.Paint(theme.Title, desk.Clip(line, cols))
	}
	return line
}

// places are where it goes: the folder, and the paper.
func (s *Cut) places(cols int) []string {
	d := s.d
	folder := d.Plain(s.into())
	if s.typing {
		folder = s.folder.view(d, max(min(cols-24, 50), 10))
	}
	line := marker(s.onFolder()) + "    " + desk.Fit(d.Tell(text.CutInto), 16)
	if s.onFolder() {
		line = d.Paint(theme.Title, line)
	}
	return []string{line + folder, "     " + desk.Fit(d.Tell(text.CutPaper, ""), 16) + papers[s.paper]}
}

// notes are what stands in the way, and what became of each file.
func (s *Cut) notes(cols int) []string {
	d, sheet := s.d, s.d.Sheet()
	var out []string
	switch fails := sheet.Count("fail"); {
	case !sheet.Complete:
		out = append(out, " "+s.why())
	case fails > 0:
		out = append(out, " "+d.Paint(theme.Warn, "! "+d.Tell(text.CutFindings, strconv.Itoa(fails))))
	}
	for _, l := range s.said {
		for _, p := range desk.Wrap(d.Plain(l), cols-2) {
			out = append(out, " "+d.Paint(theme.Muted, p))
		}
	}
	return out
}
