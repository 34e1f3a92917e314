package overlay

import (
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
	pieces []chalk.Spoken
	at     int // piece
	item   int // of the piece; past the last: it is done
	// ticked is the count for each piece, of all times it was gone through: a
	// second pair of the same card counts on.
	ticked []int
}

// Readout reads the chalk card of the draft on the desk, from where she
// stopped.
func Readout(d *desk.Desk) desk.Overlay {
	r := &readout{d: d}
	if s := d.Sheet(); s.Complete {
		learnt := d.Learnt()
		for _, p := range chalk.Make(s, d.Unit()).Pieces {
			x := p.Aloud()
			r.pieces = append(r.pieces, x)
			r.ticked = append(r.ticked, learnt[x.Key])
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
			done := r.ticked[i] % len(p.Items)
			if begun && done > 0 || !begun && r.ticked[i] == 0 {
				r.at, r.item = i, done
				return
			}
		}
	}
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
	if r.item >= len(p.Items) {
		if r.at+1 >= len(r.pieces) {
			return desk.Ask{Close: true}
		}
		r.piece(r.at + 1)
		return desk.Ask{}
	}
	r.item++
	// The round she is in, and how far she is in it.
	n := r.ticked[r.at]/len(p.Items)*len(p.Items) + r.item
	if n <= r.ticked[r.at] {
		return desk.Ask{}
	}
	r.ticked[r.at] = n
	return desk.Ask{Done: &desk.Running{ID: p.Key, Page: n}}
}

func (r *readout) back() {
	switch {
	case r.item > 0:
		r.item--
	case r.at > 0:
		r.at--
		r.item = len(r.pieces[r.at].Items)
	}
}

func (r *readout) forward() {
	if len(r.pieces) > 0 && r.item < len(r.pieces[r.at].Items) {
		r.item++
	}
}

// piece goes to a piece, where she stopped in it.
func (r *readout) piece(i int) {
	if i >= 0 && i < len(r.pieces) {
		r.at, r.item = i, r.ticked[i]%len(r.pieces[i].Items)
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
	case r.item >= len(p.Items):
		lines = r.ended(p, at.Columns)
	case p.Items[r.item].Mark == nil:
		head := d.Tell(text.ReadoutWord, d.Trade(p.Title), r.item+1, len(p.Items))
		lines = append([]string{" " + d.Paint(theme.Title, head) + r.tickedHere(), ""}, indented(desk.Wrap(d.Trade(p.Items[r.item].Says), at.Columns-2))...)
	default:
		lines = r.mark(p, p.Items[r.item], at)
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
	if n := len(r.pieces[r.at].Items); r.item < r.ticked[r.at]%n {
		return "  " + r.d.Paint(theme.Ok, "["+r.d.Tell(text.ReadoutTicked)+"]")
	}
	return ""
}

func (r *readout) ended(p *chalk.Spoken, cols int) []string {
	d := r.d
	on := d.Tell(text.ReadoutEnd)
	if r.at+1 < len(r.pieces) {
		on = d.Tell(text.ReadoutNext, strings.ToLower(d.Trade(r.pieces[r.at+1].Title)))
	}
	return append([]string{" " + d.Paint(theme.Title, d.Tell(text.ReadoutDone, d.Trade(p.Title), p.Marks)), ""}, indented(desk.Wrap(on, cols-2))...)
}

var joinWords = map[chalk.Join]text.ID{chalk.Start: text.ReadoutStart, chalk.Ruled: text.ReadoutRuled, chalk.Curve: text.ReadoutCurve, chalk.Dart: text.ReadoutDart}

// mark is a mark: what it is, how it is joined, its two numbers.
func (r *readout) mark(p *chalk.Spoken, i chalk.Said, at desk.Rect) []string {
	d := r.d
	line := text.ReadoutCut
	if i.Sewing {
		line = text.ReadoutSew
	}
	lines := []string{
		" " + d.Paint(theme.Muted, d.Tell(text.ReadoutMark, d.Trade(p.Title), i.Number, p.Marks, d.Tell(line))) + r.tickedHere(),
		" " + d.Paint(theme.Title, capital(d.Trade(i.Name))),
	}
	join := joinWords[i.Join]
	if i.Aside {
		join = text.ReadoutAside
	}
	lines = append(lines, indented(desk.Wrap(d.Tell(join), at.Columns-2))...)
	lines = append(lines, r.number(i.Mark.Down, text.ReadoutDown, text.ReadoutUp)...)
	lines = append(lines, "")
	lines = append(lines, r.number(i.Mark.Out, text.ReadoutOut, text.ReadoutBeyond)...)
	for _, n := range i.Notes {
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
	for row, f := range large(d.Unit().Tape(l), d.Settings.Figures()) {
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
