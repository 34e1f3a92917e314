package stage

import (
	"strconv"
	"strings"

	"chalkfold/pattern/laid"
	"chalkfold/pattern/lay"
	"chalkfold/ui/desk"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
)

// words say what to buy, which lay it is, what is in hand and what was asked
// besides.
func (s *Lay) words(cols, rows int) ([]string, string) {
	d := s.d
	if s.entry == clothEntry {
		lines := s.formLines(cols, rows)
		return lines, lines[0]
	}
	if !s.ready() {
		var out []string
		for _, l := range desk.Wrap(s.whyNot(), cols-2) {
			out = append(out, " "+l)
		}
		return append([]string{""}, out...), " " + desk.Clip(s.whyNot(), cols-1)
	}
	title := " " + d.Paint(theme.Title, d.Tell(text.LayBuy, d.Trade(s.work.Buy(s.best).Says)))
	caption := title + "   " + d.Unit().Say(stepsLong(s.best.Length))
	out := []string{"", title}
	if rows < 9 {
		out = []string{title}
	}
	add := func(words string) {
		for _, l := range desk.Wrap(words, cols-2) {
			out = append(out, " "+l)
		}
	}
	add(s.says())
	if s.stop != nil {
		add(d.Paint(theme.Muted, d.Tell(text.LaySearch)))
	}
	if s.entry != noLayEntry {
		return append(out, s.typed(cols)...), caption
	}
	if i := s.index(); i >= 0 {
		add(d.Trade(lay.Tell(s.work.Problem, s.best).Pieces[i].In(d.Unit())))
	}
	switch {
	case s.aside.widths != nil:
		out = append(out, s.widthRows(cols)...)
		return out, caption
	case s.aside.fit != nil:
		s.fitSays(add)
		return out, caption
	}
	add(s.onWhat())
	if !s.work.Dropped.IsEmpty() && s.origin != fromSession {
		add(d.Trade(s.work.Dropped.In(d.Unit())))
	}
	for _, t := range s.last() {
		add(t)
	}
	return out, caption
}

// last are the sentences behind those of the pieces; before them, how to fold.
func (s *Lay) last() []string {
	told := lay.Tell(s.work.Problem, s.best)
	var out []string
	for _, t := range append(told.Folding, told.After...) {
		out = append(out, s.d.Trade(t.In(s.d.Unit())))
	}
	return out
}

// says is which lay it is, how long, how much of the cloth it uses, and the
// hand rule beside.
func (s *Lay) says() string {
	d := s.d
	hand := d.Tell(text.LayNoHand)
	if h, ok := s.work.Hand(s.work.Cloth.Width); ok {
		hand = d.Trade(lay.Says(h.Yards, h.Metric))
	}
	long, used := d.Unit().Say(stepsLong(s.best.Length)), number(s.best.Density)
	switch s.origin {
	case fromSession:
		return d.Tell(text.LayHers, long, used, hand)
	case fromSearch:
		if s.best.Evaluations == 0 { // stopped before anything shorter was tried
			break
		}
		return d.Tell(text.LayBest, text.Count(s.best.Evaluations), long, used, hand)
	case fromHand:
		return d.Tell(text.LayByHand, long, used, hand)
	}
	return d.Tell(text.LayShelf, long, used, hand)
}

// onWhat is the cloth.
func (s *Lay) onWhat() string {
	d, c := s.d, s.work.Cloth
	nap := ""
	if c.Nap {
		nap = d.Tell(text.LayNap)
	}
	words := d.Tell(text.LayOn, capital(d.Plain(c.Name)), d.Unit().Say(c.Width), d.Trade(laid.Folds(c)), nap)
	if !s.work.Named {
		words += " " + d.Tell(text.LayUsual)
	}
	if c.ShrinkAlong > 0 || c.ShrinkAcross > 0 {
		words += " " + d.Tell(text.LayHandWash, number(c.ShrinkAlong), number(c.ShrinkAcross))
	} else {
		words += " " + d.Tell(text.LayHandNoNum)
	}
	return words
}

// typed is the entry with what it wants.
func (s *Lay) typed(cols int) []string {
	id := text.LayPieceLike
	if s.entry == flawEntry {
		id = text.LayFlawLike
	}
	var out []string
	for _, l := range desk.Wrap(s.d.Tell(id, s.example()), cols-2) {
		out = append(out, " "+l)
	}
	return append(out, " "+s.field.view(s.d, max(min(cols-4, 40), 4)))
}

// widthRows are the widths, what each takes, by hand beside, and the price.
func (s *Lay) widthRows(cols int) []string {
	d, u := s.d, s.d.Unit()
	var out []string
	for _, r := range s.aside.widths {
		buy, hand := "-", ""
		if r.Err == nil {
			buy = d.Trade(r.Buy.Says)
		} else {
			hand = d.Tell(text.LayHandNarrow)
		}
		line := marker(r.Own) + desk.Fit(u.Say(r.Width), 9) + desk.Fit(buy, 19)
		if r.Hand.Lengths > 0 {
			hand = d.Trade(lay.Says(r.Hand.Yards, r.Hand.Metric))
		}
		line += desk.Fit(hand, 19)
		if r.Cost > 0 {
			line += d.Tell(text.LayPriced, strconv.FormatFloat(r.Cost, 'f', 2, 64))
		}
		line = strings.TrimRight(line, " ")
		if r.Own {
			line = d.Paint(theme.Title, desk.Clip(line, cols))
		}
		out = append(out, line)
	}
	head := " " + d.Paint(theme.Muted, desk.Fit(d.Tell(text.LayHeadWidth), 9)+desk.Fit(d.Tell(text.LayHeadBuy), 19)+d.Tell(text.LayHeadHand))
	return append([]string{head}, out...)
}

// fitSays is whether the remnant is enough, and what would make it so.
func (s *Lay) fitSays(add func(string)) {
	f, u := s.aside.fit, s.d.Unit()
	add(s.d.Tell(text.LayPiece, u.Tape(f.Along), u.Say(f.Across)) + " " + s.d.Trade(f.Says().In(u)))
	for _, c := range f.Cures {
		add(s.d.Trade(c.Says.In(u)))
	}
}

func number(x float64) string {
	return strings.TrimSuffix(strconv.FormatFloat(x, 'f', 1, 64), ".0")
}
