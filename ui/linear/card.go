package linear

import (
	"strings"

	chalk "chalkfold/export/card"
	"chalkfold/measure"
	"chalkfold/ui/desk"
	"chalkfold/ui/text"
)

// reading is the chalk card being read out. What is ticked is kept with the
// client by the card that it was ticked on, as on the screen.
type reading struct {
	pieces []chalk.Spoken
	at     int // piece
	item   int // of the piece; past the last: it is done
	ticked []int
}

// readCard reads the chalk card out, one mark at a time, from where she stopped.
func (r *room) readCard(string) {
	s := r.d.Sheet()
	if !s.Complete {
		r.notWhole(text.CutEmpty)
		return
	}
	var c reading
	learnt := r.d.Learnt()
	for _, p := range chalk.Make(s, r.d.Unit()).Pieces {
		x := p.Aloud()
		c.pieces = append(c.pieces, x)
		c.ticked = append(c.ticked, learnt[x.Key])
	}
	if len(c.pieces) == 0 {
		r.notWhole(text.CutEmpty)
		return
	}
	c.resume()
	r.say(text.HearCardHow)
	r.tellMark(&c)
	r.hearCard(&c)
}

// resume goes to the first piece that is begun and not done, else to the first
// not begun, else to the beginning.
func (c *reading) resume() {
	for _, begun := range [...]bool{true, false} {
		for i, p := range c.pieces {
			done := c.ticked[i] % len(p.Items)
			if begun && done > 0 || !begun && c.ticked[i] == 0 {
				c.at, c.item = i, done
				return
			}
		}
	}
}

// hearCard takes the next line for the card: nothing typed is a tick.
func (r *room) hearCard(c *reading) {
	r.open = &question{prompt: "card", empty: true, hear: func(line string) bool {
		word := strings.ToLower(line)
		is := func(name string) bool { return strings.HasPrefix(name, word) }
		switch {
		case line == "", is("next"), is("tick"):
			if !r.tick(c) {
				return true
			}
		case is("back"):
			c.back()
		case is("piece"):
			c.piece(c.at + 1)
		case is("again"):
		case is("end"):
			r.say(text.HearCardLeft)
			return true
		default:
			return false
		}
		r.tellMark(c)
		r.hearCard(c)
		return true
	}}
}

func (c *reading) back() {
	switch {
	case c.item > 0:
		c.item--
	case c.at > 0:
		c.at--
		c.item = len(c.pieces[c.at].Items)
	}
}

func (c *reading) piece(i int) {
	if i < len(c.pieces) {
		c.at, c.item = i, c.ticked[i]%len(c.pieces[i].Items)
	}
}

// tick ticks off what was read and goes on; false after the last.
func (r *room) tick(c *reading) bool {
	p := &c.pieces[c.at]
	if c.item >= len(p.Items) {
		if c.at+1 >= len(c.pieces) {
			r.say(text.HearCardEnd)
			return false
		}
		c.piece(c.at + 1)
		return true
	}
	c.item++
	// The round she is in, and how far she is in it.
	if n := c.ticked[c.at]/len(p.Items)*len(p.Items) + c.item; n > c.ticked[c.at] {
		c.ticked[c.at] = n
		r.d.Learn(desk.Running{ID: p.Key, Page: n})
		r.d.KeepPlace()()
	}
	return true
}

var joins = map[chalk.Join]text.ID{chalk.Start: text.ReadoutStart, chalk.Ruled: text.ReadoutRuled, chalk.Curve: text.ReadoutCurve, chalk.Dart: text.ReadoutDart}

// tellMark says the mark in hand: what it is, how it is joined, its numbers.
func (r *room) tellMark(c *reading) {
	p := &c.pieces[c.at]
	if c.item >= len(p.Items) {
		r.say(text.ReadoutDone, r.d.Words.Pass(p.Title), p.Marks)
		if c.at+1 < len(c.pieces) {
			r.say(text.HearCardOn, strings.ToLower(r.d.Words.Pass(c.pieces[c.at+1].Title)))
		} else {
			r.say(text.HearCardEnd)
		}
		return
	}
	i := p.Items[c.item]
	if i.Mark == nil {
		r.say(text.HearCardWord, r.d.Words.Pass(p.Title), sentence(r.d.Words.Pass(i.Says)))
		return
	}
	line, join := text.ReadoutCut, joins[i.Join]
	if i.Sewing {
		line = text.ReadoutSew
	}
	if i.Aside {
		join = text.ReadoutAside
	}
	r.say(text.HearCardAt, r.d.Words.Pass(p.Title), i.Number, p.Marks, r.d.Words.Say(line), r.d.Words.Pass(i.Name))
	r.say(join)
	r.number(i.Mark.Down, text.HearCardDown, text.HearCardUp)
	r.number(i.Mark.Out, text.HearCardOut, text.HearCardOver)
	for _, n := range i.Notes {
		r.tell(sentence(capital(r.d.Words.Pass(n))))
	}
}

func (r *room) number(l measure.Length, forth, away text.ID) {
	if l < 0 {
		r.say(away, r.d.Unit().Say(-l))
		return
	}
	r.say(forth, r.d.Unit().Say(l))
}
