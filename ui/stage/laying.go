package stage

import (
	"strconv"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/lay"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
	"chalkfold/ui/view"
)

// Lay says how much cloth to buy, by the lengths rule, for the widths that
// shops have, and shows the pieces on the cloth.
type Lay struct {
	bench
	at int // the width in hand
}

// NewLay is the fifth stage.
func NewLay(d *desk.Desk) *Lay { return &Lay{bench: bench{d: d, table: true}, at: -1} }

// widths are those that shops have, in inches.
var widths = [...]float64{36, 44, 54, 58}

// usualWidth is taken where the session names none.
const usualWidth = 58 * measure.Inch

// Title names the stage.
func (s *Lay) Title() string { return s.d.Tell(text.StageLay) }

// Fact: line 1 has none for this stage.
func (s *Lay) Fact() string { return "" }

// Typing: only the cross-hair takes letters here.
func (s *Lay) Typing() bool { return s.eye.Hair }

// cloth is her cloth, or the usual one of which nothing is known.
func (s *Lay) cloth() (pattern.Cloth, bool) {
	c, ok := s.d.Job().Cloth("main")
	if !ok || c.Width <= 0 {
		c.Width = usualWidth
		return c, false
	}
	return c, true
}

// option is one line of the table of widths.
type option struct {
	hand lay.Hand
	own  bool
}

// options are her own width among those of the shops, narrowest first.
func (s *Lay) options(n lay.Need) []option {
	c, known := s.cloth()
	var all []measure.Length
	for _, w := range widths {
		all = append(all, measure.In.Length(w))
	}
	var out []option
	placed := !known
	add := func(w measure.Length, own bool) {
		k := c
		k.Width = w
		out = append(out, option{lay.Rule(n, k), own})
	}
	for _, w := range all {
		if !placed && c.Width <= w {
			placed = true
			add(c.Width, true)
			if c.Width == w {
				continue
			}
		}
		add(w, false)
	}
	if !placed {
		add(c.Width, true)
	}
	return out
}

// hand is the option in hand: her own, the usual, or the one chosen.
func (s *Lay) hand(all []option) int {
	if s.at >= 0 && s.at < len(all) {
		return s.at
	}
	best := len(all) - 1
	c, _ := s.cloth()
	for i, o := range all {
		if o.own || o.hand.Width == c.Width {
			best = i
		}
	}
	return best
}

// Actions are what can be done here.
func (s *Lay) Actions() []desk.Offer {
	if s.eye.Hair {
		return s.hairOffers()
	}
	widths := offer("widths")
	if _, ok := lay.NeedOf(s.d.Sheet()); !ok {
		widths.WhyNot = s.d.Tell(text.LayEmpty, waits(s.d, s.d.Sheet()))
	}
	return append([]desk.Offer{widths}, s.tableOffers()...)
}

// Do an action.
func (s *Lay) Do(id keys.ID) desk.Ask {
	if s.eye.Hair {
		ask, _ := s.tableDo(id)
		return ask
	}
	n, ok := lay.NeedOf(s.d.Sheet())
	count := len(s.options(n))
	switch id {
	case "widths":
		if !ok {
			return desk.Ask{Say: s.d.Tell(text.LayEmpty, waits(s.d, s.d.Sheet()))}
		}
		s.at = (s.hand(s.options(n)) + 1) % count
	case keys.FieldNext, keys.FieldBack:
		s.swap()
	default:
		ask, _ := s.tableDo(id)
		return ask
	}
	return desk.Ask{}
}

// Type is the cross-hair's.
func (s *Lay) Type(k desk.Key) desk.Ask { return s.hairType(k) }

// Hear nothing: this stage has no errands yet.
func (s *Lay) Hear(desk.Answer) desk.Ask { return desk.Ask{} }

// View is what to buy above the cloth.
func (s *Lay) View(r desk.Rect) []string {
	sheet := s.d.Sheet()
	sc := view.Scene{Sheet: sheet}
	if n, ok := lay.NeedOf(sheet); ok {
		all := s.options(n)
		h := all[s.hand(all)].hand
		if h.Lengths > 0 {
			sc.Cloth = &view.Cloth{Half: h.Half, Long: h.Lay.Result(), Lengths: h.Lengths, Beside: h.Lengths > 1 && !h.Extra}
		}
	}
	return s.compose(r, 11, s.words, sc)
}

func (s *Lay) words(cols, rows int) ([]string, string) {
	d := s.d
	n, ok := lay.NeedOf(d.Sheet())
	if !ok {
		line := " " + d.Tell(text.LayEmpty, waits(d, d.Sheet()))
		return []string{"", line}, line
	}
	all := s.options(n)
	at := s.hand(all)
	h := all[at].hand
	title := " " + d.Paint(theme.Title, d.Tell(text.LayBuy, s.says(h)))
	if cols >= 70 {
		title += "   " + d.Paint(theme.Muted, d.Tell(text.LayHandTitle))
	}
	out := []string{"", title, ""}
	if rows < 9 {
		out = []string{title}
	}
	for i, o := range all {
		out = append(out, s.line(o, i == at, cols))
	}
	out = append(out, "")
	add := func(words string) {
		for _, l := range desk.Wrap(words, cols-2) {
			out = append(out, " "+l)
		}
	}
	u := d.Unit()
	if h.Lengths > 0 {
		add(d.Trade(capital(h.Buy.Sum(u)) + " " + u.String()))
	}
	c, _ := s.cloth()
	if c.ShrinkAlong > 0 || c.ShrinkAcross > 0 {
		add(d.Tell(text.LayHandWash, number(c.ShrinkAlong), number(c.ShrinkAcross)))
	} else {
		add(d.Tell(text.LayHandNoNum))
	}
	return out, title
}

// line is one width: how wide, how many lengths, how much to buy.
func (s *Lay) line(o option, here bool, cols int) string {
	d := s.d
	h := o.hand
	run := d.Tell(text.LayHandOne)
	switch {
	case h.Lengths == 0:
		run = d.Tell(text.LayHandNot)
	case h.Lengths > 1:
		run = d.Tell(text.LayHandMany, h.Lengths)
	}
	line := marker(here) + desk.Fit(d.Tell(text.LayWidth, d.Unit().Say(h.Width), ""), 18) + desk.Fit(s.says(h), 20) + run
	if cols < 70 {
		line = marker(here) + desk.Fit(d.Unit().Say(h.Width), 8) + desk.Fit(s.says(h), 20) + s.brief(h)
	}
	if o.own {
		line += ", " + d.Tell(text.LayHandOwn)
	}
	if here {
		return d.Paint(theme.Title, desk.Clip(line, cols))
	}
	return line
}

// brief is how many lengths, where there is little room to say it.
func (s *Lay) brief(h lay.Hand) string {
	switch h.Lengths {
	case 0:
		return s.d.Tell(text.LayHandNarrow)
	case 1:
		return s.d.Tell(text.LayHandLength)
	}
	return s.d.Tell(text.LayHandRuns, h.Lengths)
}

// says is what to ask for in the shop.
func (s *Lay) says(h lay.Hand) string {
	if h.Lengths == 0 {
		return "-"
	}
	return lay.Says(h.Yards, h.Metric)
}

func number(x float64) string {
	return strings.TrimSuffix(strconv.FormatFloat(x, 'f', 1, 64), ".0")
}
