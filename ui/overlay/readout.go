package overlay

import (
	"fmt"
	"hash/fnv"
	"strings"

	chalk "chalkfold/export/card"
	"chalkfold/measure"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
)

// readout reads the chalk card to her who kneels on the cloth: one mark a
// screen, in figures that are read from there. Each piece goes through its
// cutting line, its stitching line, then what is said of darts, notches and
// proofs. What is ticked is kept as the pages of a lesson are, by the card it
// was ticked on: on a card that has changed she begins anew.
type readout struct {
	d      *desk.Desk
	pieces []spoken
	at     int // piece
	item   int // of the piece; past the last: it is done
	// ticked is the count for each piece, of all times it was gone through: a
	// second pair of the same card counts on.
	ticked []int
}

// spoken is a piece to be read out.
type spoken struct {
	title string
	key   string
	items []item
	marks int
}

// item is one screen: a mark with its place, or a sentence.
type item struct {
	mark    *chalk.Place
	line    text.ID // which line it lies on
	name    string
	join    chalk.Join
	aside   bool
	notes   []string
	says    string
	counted int // of marks, the number of this one
}

// Readout reads the chalk card of the draft on the desk, from where she
// stopped.
func Readout(d *desk.Desk) desk.Overlay {
	r := &readout{d: d}
	if s := d.Sheet(); s.Complete {
		learnt := d.Learnt()
		for _, p := range chalk.Make(s, d.Unit()).Pieces {
			x := aloud(p)
			r.pieces = append(r.pieces, x)
			r.ticked = append(r.ticked, learnt[x.key])
		}
	}
	r.resume()
	return r
}

// resume goes to the first piece that is begun and not done, else to the first
// not begun, else to the beginning.
func (r *readout) resume() {
	for _, begun := range [2]bool{true, false} {
		for i, p := range r.pieces {
			done := r.ticked[i] % len(p.items)
			if begun && done > 0 || !begun && r.ticked[i] == 0 {
				r.at, r.item = i, done
				return
			}
		}
	}
}

// aloud puts a piece of the card in the order of reading.
func aloud(p chalk.Piece) spoken {
	s := spoken{title: p.Title}
	say := func(words ...string) {
		for _, w := range words {
			s.items = append(s.items, item{says: w})
		}
	}
	say(p.Set...)
	for _, line := range [2]text.ID{text.ReadoutCut, text.ReadoutSew} {
		for i := range p.Rows {
			row := &p.Rows[i]
			x := item{mark: row.Cut, line: line, name: row.Name, join: row.Join, aside: row.AsideCut, notes: row.Notes}
			if line == text.ReadoutSew {
				x.mark, x.aside = row.Stitch, row.AsideStitch
			}
			if x.mark == nil {
				continue
			}
			if x.name == "" {
				x.name = strings.ReplaceAll(row.Edge, "_", " ")
			}
			s.marks++
			x.counted = s.marks
			s.items = append(s.items, x)
		}
	}
	say(p.Darts...)
	say(p.Notches...)
	if p.Grain != "" {
		say(p.Grain)
	}
	if len(s.items) == 0 {
		say(p.Cut)
	}
	s.key = cardKey + string(p.ID) + "." + fingerprint(s)
	return s
}

// cardKey begins the keys under which ticks are kept.
const cardKey = "card."

// fingerprint tells two cards of one piece apart.
func fingerprint(s spoken) string {
	h := fnv.New32a()
	for _, i := range s.items {
		if i.mark != nil {
			fmt.Fprintf(h, "%s %.3f %.3f\n", i.line, i.mark.Down.MM(), i.mark.Out.MM())
		} else {
			fmt.Fprintln(h, i.says)
		}
	}
	return fmt.Sprintf("%04x", h.Sum32()>>16^h.Sum32()&0xffff)
}

func (r *readout) Title() string                 { return r.d.Tell(text.ReadoutTitle) }
func (r *readout) Covers() bool                  { return false }
func (r *readout) Typing() bool                  { return false }
func (r *readout) Hear(desk.Answer) (a desk.Ask) { return a }

// Actions are the keys of a list, by what they do here.
func (r *readout) Actions() []desk.Offer {
	return []desk.Offer{
		{ID: "choose", Title: r.d.Tell(text.ReadoutTick)},
		{ID: "row-up", Title: r.d.Tell(text.ReadoutBack)},
		{ID: "page-down", Title: r.d.Tell(text.ReadoutPiece)},
		{ID: "close"},
		{ID: "row-down", Quiet: true},
		{ID: "page-up", Quiet: true},
	}
}

// Do an action.
func (r *readout) Do(id keys.ID) desk.Ask {
	switch id {
	case "choose", keys.Accept:
		return r.tick()
	case "row-up":
		r.back()
	case "row-down":
		r.forward()
	case "page-up", keys.FieldBack:
		r.piece(r.at - 1)
	case "page-down", keys.FieldNext:
		r.piece(r.at + 1)
	case "close", keys.Back:
		return desk.Ask{Close: true}
	}
	return desk.Ask{}
}

// Type is a key that is no action of a list: Left goes back, Right on without
// a tick, Space is Enter.
func (r *readout) Type(k desk.Key) desk.Ask {
	switch {
	case k.Paste:
	case k.Name == "left":
		r.back()
	case k.Name == "right":
		r.forward()
	case k.Name == " ":
		return r.tick()
	case k.Name == "q":
		return desk.Ask{Leave: true}
	case k.Name == "?":
		return desk.Ask{Do: keys.Help}
	}
	return desk.Ask{}
}

// tick ticks the screen in hand off and goes on; the tick is kept.
func (r *readout) tick() desk.Ask {
	if len(r.pieces) == 0 {
		return desk.Ask{Close: true}
	}
	p := &r.pieces[r.at]
	if r.item >= len(p.items) {
		if r.at+1 >= len(r.pieces) {
			return desk.Ask{Close: true}
		}
		r.piece(r.at + 1)
		return desk.Ask{}
	}
	r.item++
	// The round she is in, and how far she is in it.
	n := r.ticked[r.at]/len(p.items)*len(p.items) + r.item
	if n <= r.ticked[r.at] {
		return desk.Ask{}
	}
	r.ticked[r.at] = n
	return desk.Ask{Done: &desk.Running{ID: p.key, Page: n}}
}

func (r *readout) back() {
	switch {
	case r.item > 0:
		r.item--
	case r.at > 0:
		r.at--
		r.item = len(r.pieces[r.at].items)
	}
}

func (r *readout) forward() {
	if len(r.pieces) > 0 && r.item < len(r.pieces[r.at].items) {
		r.item++
	}
}

// piece goes to a piece, where she stopped in it.
func (r *readout) piece(i int) {
	if i >= 0 && i < len(r.pieces) {
		r.at, r.item = i, r.ticked[i]%len(r.pieces[i].items)
	}
}

// View is the mark in hand.
func (r *readout) View(at desk.Rect) []string {
	d := r.d
	if at.Rows <= 0 || at.Columns <= 0 {
		return desk.Block(nil, at)
	}
	if len(r.pieces) == 0 {
		return desk.Block(indented(desk.Wrap(d.Tell(text.ReadoutNone), at.Columns-2)), at)
	}
	var lines []string
	p := &r.pieces[r.at]
	switch {
	case r.item >= len(p.items):
		lines = r.ended(p, at.Columns)
	case p.items[r.item].mark == nil:
		head := d.Tell(text.ReadoutWord, d.Trade(p.title), r.item+1, len(p.items))
		lines = append([]string{" " + d.Paint(theme.Title, head) + r.tickedHere(), ""}, indented(desk.Wrap(d.Trade(p.items[r.item].says), at.Columns-2))...)
	default:
		lines = r.mark(p, p.items[r.item], at)
	}
	how := indented(desk.Wrap(d.Tell(text.ReadoutHow), at.Columns-2))
	for i := range how {
		how[i] = d.Paint(theme.Muted, how[i])
	}
	if len(lines)+len(how) < at.Rows {
		for len(lines)+len(how) < at.Rows {
			lines = append(lines, "")
		}
		lines = append(lines, how...)
	}
	return desk.Block(lines, at)
}

func indented(lines []string) []string {
	for i, l := range lines {
		lines[i] = " " + l
	}
	return lines
}

// tickedHere says that the screen in hand was ticked in this round.
func (r *readout) tickedHere() string {
	if n := len(r.pieces[r.at].items); r.item < r.ticked[r.at]%n {
		return "  " + r.d.Paint(theme.Ok, "["+r.d.Tell(text.ReadoutTicked)+"]")
	}
	return ""
}

func (r *readout) ended(p *spoken, cols int) []string {
	d := r.d
	on := d.Tell(text.ReadoutEnd)
	if r.at+1 < len(r.pieces) {
		on = d.Tell(text.ReadoutNext, strings.ToLower(d.Trade(r.pieces[r.at+1].title)))
	}
	return append([]string{" " + d.Paint(theme.Title, d.Tell(text.ReadoutDone, d.Trade(p.title), p.marks)), ""}, indented(desk.Wrap(on, cols-2))...)
}

var joinWords = map[chalk.Join]text.ID{chalk.Start: text.ReadoutStart, chalk.Ruled: text.ReadoutRuled, chalk.Curve: text.ReadoutCurve, chalk.Dart: text.ReadoutDart}

// mark is a mark: what it is, how it is joined, its two numbers.
func (r *readout) mark(p *spoken, i item, at desk.Rect) []string {
	d := r.d
	lines := []string{
		" " + d.Paint(theme.Muted, d.Tell(text.ReadoutMark, d.Trade(p.title), i.counted, p.marks, d.Tell(i.line))) + r.tickedHere(),
		" " + d.Paint(theme.Title, capital(d.Trade(i.name))),
	}
	join := joinWords[i.join]
	if i.aside {
		join = text.ReadoutAside
	}
	lines = append(lines, indented(desk.Wrap(d.Tell(join), at.Columns-2))...)
	lines = append(lines, r.number(i.mark.Down, text.ReadoutDown, text.ReadoutUp)...)
	lines = append(lines, "")
	lines = append(lines, r.number(i.mark.Out, text.ReadoutOut, text.ReadoutBeyond)...)
	for _, n := range i.notes {
		lines = append(lines, indented(desk.Wrap(capital(d.Trade(n))+".", at.Columns-2))...)
	}
	return lines
}

const figuresFrom = 20 // columns: the words beside the figures

// number is one of the two numbers, large, after the word for its way.
func (r *readout) number(l measure.Length, forth, away text.ID) []string {
	way := forth
	if l < 0 {
		way, l = away, -l
	}
	d := r.d
	var out []string
	for row, f := range large(d.Unit().Tape(l), d.Settings.Glyphs) {
		beside := strings.Repeat(" ", figuresFrom)
		if row == 1 {
			beside = desk.Fit(" "+d.Tell(way), figuresFrom)
		}
		line := beside + d.Paint(theme.Accent, f)
		if row == 2 {
			line += " " + d.Paint(theme.Muted, d.Unit().String())
		}
		out = append(out, line)
	}
	return out
}
