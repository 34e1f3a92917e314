package stage

import (
	"os"
	"path/filepath"
	"strconv"

	"github.com/charmbracelet/x/ansi"

	"chalkfold/measure"
	"chalkfold/ui/desk"
	"chalkfold/ui/files"
	"chalkfold/ui/keys"
	"chalkfold/ui/outlet"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
	"chalkfold/ui/view"
)

// Cut writes what is ticked into a folder.
type Cut struct {
	bench
	at      int
	ticked  map[string]bool
	typing  entry // the entry that is typed in
	field   field
	folder  string // as typed; empty: that of the session
	paper   int
	printed [2]measure.Length // how long the two control lines came out
	tiles   tiling
	said    []string // what became of each file
	next    []string // and what to do with them
	again   bool     // something that differs is there: Enter replaces it
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

// Title names the stage.
func (s *Cut) Title() string { return s.d.Tell(text.StageCut) }

// Fact: line 1 has none for this stage.
func (s *Cut) Fact() string { return "" }

// Typing says that something is being typed.
func (s *Cut) Typing() bool { return s.typing != noEntry || s.eye.Hair }

// into is the folder: as typed, or that of the session.
func (s *Cut) into() string {
	if s.folder != "" {
		return s.folder
	}
	if p := s.d.Path(); p != "" {
		return filepath.Dir(p)
	}
	return "."
}

// place is the folder as it is shown.
func (s *Cut) place() string {
	if s.into() == "." {
		if dir, err := os.Getwd(); err == nil {
			return files.Shown(dir)
		}
	}
	return files.Shown(s.into())
}

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
	if s.typing != noEntry {
		return []desk.Offer{offer(keys.Accept), offer(keys.Back), quiet("field-up"), quiet("field-down"), quiet("clear")}
	}
	write := offer("write")
	write.WhyNot = s.why()
	switch s.onEntry() {
	case noEntry:
	case folderEntry:
		write.Title, write.WhyNot = s.d.Tell(text.CutInto), ""
	default:
		write.Title, write.WhyNot = s.d.Tell(text.CutTypeIt), ""
	}
	read := offer("readout")
	if !s.d.Sheet().Complete {
		read.WhyNot = s.why()
	}
	return append([]desk.Offer{write, offer("tick"), read, quiet("format-up"), quiet("format-down"), offer("variant-next"), quiet("variant-back")}, s.tableOffers()...)
}

// Do an action.
func (s *Cut) Do(id keys.ID) desk.Ask {
	if s.eye.Hair {
		ask, _ := s.tableDo(id)
		return ask
	}
	if s.typing != noEntry {
		return s.inEntry(id)
	}
	switch id {
	case "format-up":
		s.move(-1)
	case "format-down":
		s.move(1)
	case "tick":
		if s.onEntry() != noEntry {
			s.edit()
		} else {
			f := outlet.Formats()[s.at].ID
			s.ticked[f] = !s.ticked[f]
			s.again = false
		}
	case "variant-next":
		return s.turn(1)
	case "variant-back":
		return s.turn(-1)
	case "write":
		if s.onEntry() != noEntry {
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

// turn takes another paper. Lines that were measured on the one before say
// nothing about it.
func (s *Cut) turn(by int) desk.Ask {
	n := len(outlet.Papers())
	s.paper = (s.paper + by + n) % n
	s.printed = [2]measure.Length{}
	return desk.Ask{Say: s.d.Tell(text.CutPaper, s.d.Trade(outlet.Papers()[s.paper].Title))}
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
	sheet, stem, folder, o := s.d.Sheet(), s.d.Stem(), s.into(), s.options()
	version, config, tiled := s.d.Version(), s.d.Settings.Config, s.ticked["tiles"]
	return desk.Ask{For: s.d.Tell(text.CutWriting), Run: func() desk.Answer {
		rs, err := outlet.Export(sheet, stem, folder, formats, o, nil)
		w := written{folder: folder, results: rs}
		if err == nil && tiled {
			// Not kept is no trouble: she can type it again.
			_ = outlet.KeepPrinted(config, o.Paper, o.PrintedAcross, o.PrintedAlong)
		}
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
	s.said, s.next, s.again = nil, nil, false
	if a.Err != nil {
		s.said = []string{a.Err.Error()}
		return desk.Ask{Say: s.d.Tell(text.CutNone) + " " + s.d.Plain(a.Err.Error()), Warn: true}
	}
	done, warn := 0, ""
	for _, r := range w.results {
		s.said = append(s.said, files.Shown(r.Says()))
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
	s.next = s.then(w.results)
	if done == 1 {
		return desk.Ask{Say: s.d.Tell(text.CutDoneOne, files.Shown(w.folder))}
	}
	return desk.Ask{Say: s.d.Tell(text.CutDone, files.Shown(w.folder), done)}
}

// then says what to do with what was written.
func (s *Cut) then(rs []outlet.Result) []string {
	wrote := map[string]bool{}
	for _, r := range rs {
		wrote[r.Format] = true
	}
	var out []string
	for _, n := range nexts {
		if wrote[n.format] {
			out = append(out, s.d.Tell(n.says))
		}
	}
	return append(out, s.d.Tell(text.CutThen))
}

// nexts are what to do with a format, the nearest to the cloth first.
var nexts = []struct {
	format string
	says   text.ID
}{{"tiles", text.CutThenTiles}, {"card", text.CutThenCard}, {"guide", text.CutThenGuide}}

// View is what leaves above the cloth; with tiles, the sheets of paper lie over
// the pieces.
func (s *Cut) View(r desk.Rect) []string {
	return s.compose(r, 11, s.words, view.Scene{Sheet: s.d.Sheet(), Pages: s.pages()})
}

func (s *Cut) words(cols, rows int) ([]string, string) {
	d := s.d
	title := " " + d.Paint(theme.Title, d.Tell(text.CutTitle))
	out := []string{"", title, ""}
	if rows < 9 || len(s.next) > 0 {
		out = []string{title}
	}
	places, notes := s.places(cols), s.notes(cols)
	if len(s.next) > 0 && s.onEntry() == noEntry {
		places = places[1:2] // what to do next needs the room
	}
	foot := append(places, notes...)
	room := max(rows-len(out)-min(len(foot), 7), 3)
	formats := outlet.Formats()
	from, to := window(min(s.at, len(formats)-1), len(formats), room)
	for i := from; i < to; i++ {
		out = append(out, s.line(i, formats[i], cols))
	}
	return append(out, foot...), title + "  " + d.Paint(theme.Muted, d.Plain(s.place()))
}

// line is one format: ticked or not, and what it is for.
func (s *Cut) line(i int, f outlet.Format, cols int) string {
	box := "[ ] "
	if s.ticked[f.ID] {
		box = "[x] "
	}
	line := marker(i == s.at) + box + desk.Fit(s.d.Trade(f.Title), 16)
	if says := s.d.Trade(f.Says); ansi.StringWidth(line+says) <= cols {
		line += says
	} else {
		line += desk.Brief(says, cols-ansi.StringWidth(line))
	}
	if i == s.at {
		return s.d.Paint(theme.Title, desk.Clip(line, cols))
	}
	return line
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
	for _, l := range s.next {
		for _, p := range desk.Wrap(l, cols-2) {
			out = append(out, " "+d.Paint(theme.Accent, p))
		}
	}
	for _, l := range s.said {
		for _, p := range desk.Wrap(d.Plain(l), cols-2) {
			out = append(out, " "+d.Paint(theme.Muted, p))
		}
	}
	return out
}
