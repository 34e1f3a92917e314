package stage

import (
	"slices"
	"strconv"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/laid"
	"chalkfold/pattern/lay"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
)

// clothRow is one line of the cloth's form: a length, a number, or one of some
// words.
type clothRow struct {
	id     string
	title  text.ID
	length func(*pattern.Cloth) *measure.Length
	number func(*pattern.Cloth) *float64
	most   float64 // of a number
	word   func(*pattern.Cloth) *string
	words  []string
}

// The rows that are neither.
const (
	rowCloth = "cloth"
	rowNap   = "nap"
	rowOff   = "off_grain"
	rowFlaws = "flaws"
)

var clothRows = []clothRow{
	{id: rowCloth, title: text.LayRowCloth},
	{id: "width", title: text.LayRowWidth, length: func(c *pattern.Cloth) *measure.Length { return &c.Width }},
	{id: "edges", title: text.LayRowEdges, length: func(c *pattern.Cloth) *measure.Length { return &c.Edges }},
	{id: "fold", title: text.LayRowFold, word: func(c *pattern.Cloth) *string { return &c.Fold }, words: lay.Folds},
	{id: rowNap, title: text.LayRowNap},
	{id: "shrink_along", title: text.LayRowShrinkAlong, number: func(c *pattern.Cloth) *float64 { return &c.ShrinkAlong }, most: 50},
	{id: "shrink_across", title: text.LayRowShrinkAcross, number: func(c *pattern.Cloth) *float64 { return &c.ShrinkAcross }, most: 50},
	{id: "repeat_along", title: text.LayRowRepeatAlong, length: func(c *pattern.Cloth) *measure.Length { return &c.RepeatAlong }},
	{id: "repeat_across", title: text.LayRowRepeatAcross, length: func(c *pattern.Cloth) *measure.Length { return &c.RepeatAcross }},
	{id: "stripe", title: text.LayRowStripe, word: func(c *pattern.Cloth) *string { return &c.Stripe }, words: []string{"centre", "midway"}},
	{id: rowOff, title: text.LayRowOff},
	{id: "gap", title: text.LayRowGap, length: func(c *pattern.Cloth) *measure.Length { return &c.Gap }},
	{id: "step", title: text.LayRowStep, length: func(c *pattern.Cloth) *measure.Length { return &c.Step }},
	{id: "price", title: text.LayRowPrice, number: func(c *pattern.Cloth) *float64 { return &c.Price }, most: 1e9},
	{id: rowFlaws, title: text.LayRowFlaws},
}

func (s *Lay) cannotCloth() string {
	if len(s.names) == 0 {
		return s.whyNot()
	}
	return ""
}

// openForm shows what is known of the cloth, to be changed.
func (s *Lay) openForm() desk.Ask {
	if why := s.cannotCloth(); why != "" {
		return desk.Ask{Say: why}
	}
	s.halt()
	s.entry, s.form = clothEntry, form{typing: true}
	s.syncForm()
	s.form.to(s.form.find("width"))
	return desk.Ask{}
}

// syncForm takes the rows as the session has them.
func (s *Lay) syncForm() {
	c := s.hers()
	var rows []row
	for _, r := range clothRows {
		if r.id == rowCloth && len(s.names) < 2 || r.id == "stripe" && c.RepeatAcross == 0 {
			continue
		}
		rows = append(rows, row{id: r.id, title: s.d.Tell(r.title), text: s.stored(r, &c), pick: r.length == nil && r.number == nil})
	}
	s.form.sync(rows)
}

// stored is what the session has in a row; empty: nothing.
func (s *Lay) stored(r clothRow, c *pattern.Cloth) string {
	switch {
	case r.length != nil:
		if l := *r.length(c); l != 0 {
			return s.d.Unit().Exact(l)
		}
	case r.number != nil:
		if x := *r.number(c); x != 0 {
			return strconv.FormatFloat(x, 'g', -1, 64)
		}
	case r.word != nil:
		return *r.word(c)
	}
	return ""
}

// shownAs is a row as she reads it: what is stored, or what is taken instead.
func (s *Lay) shownAs(r clothRow) string {
	d, hers := s.d, s.hers()
	usual, _ := laid.ClothOf(d.Job(), s.cloth)
	switch r.id {
	case rowCloth:
		return d.Plain(s.cloth)
	case rowNap:
		if hers.Nap {
			return d.Tell(text.LayNapYes)
		}
		return d.Tell(text.LayNapNo)
	case rowOff:
		if hers.OffGrain == 0 {
			return d.Tell(text.LayNever)
		}
		return d.Tell(text.LayDegrees, number(hers.OffGrain))
	case rowFlaws:
		if n := len(hers.Flaws); n > 0 {
			return d.Tell(text.LayFlaws, n)
		}
		return d.Tell(text.LayNever)
	case "fold":
		return d.Trade(laid.Folds(usual))
	case "stripe":
		if hers.Stripe == "midway" {
			return d.Tell(text.LayMidway)
		}
		return d.Tell(text.LayCentre)
	}
	switch {
	case r.length != nil:
		if l := *r.length(&usual); l != 0 {
			said := d.Unit().Say(l)
			if *r.length(&hers) == 0 {
				said = d.Tell(text.LayTaken, said)
			}
			return said
		}
		return d.Tell(text.LayNever)
	case *r.number(&hers) == 0:
		return d.Tell(text.LayUnknown)
	}
	return number(*r.number(&hers))
}

// inHand is the row of the form in hand.
func (s *Lay) inHand() (clothRow, bool) {
	r, ok := s.form.row()
	i := slices.IndexFunc(clothRows, func(c clothRow) bool { return c.id == r.id })
	if !ok || i < 0 {
		return clothRow{}, false
	}
	return clothRows[i], true
}

// formOffers are what can be done in the form.
func (s *Lay) formOffers() []desk.Offer {
	right := offer("text-right")
	if r, ok := s.form.row(); ok && !r.pick {
		right.Quiet = true
	}
	return []desk.Offer{
		{ID: keys.Accept, Title: s.d.Tell(text.NextRow)},
		{ID: keys.Back, Title: s.d.Tell(text.LayFormDone)},
		right, offer("field-down"), quiet("field-up"), quiet("text-left"), quiet("nudge-up"), quiet("nudge-down"),
		quiet("clear"), quiet(keys.FieldNext), quiet(keys.FieldBack),
	}
}

// inForm is an action in the form.
func (s *Lay) inForm(id keys.ID) desk.Ask {
	s.syncForm()
	if id == keys.Back {
		ask := s.takeRow()
		s.entry = noLayEntry
		if ask.Job == nil && !ask.Warn {
			return s.Begin()
		}
		return ask
	}
	ask, _ := s.form.do(s.d, id, s.hands())
	return ask
}

func (s *Lay) hands() hands { return hands{s.takeRow, s.turnRow, s.turnRow} }

// formType is a key while the form is open.
func (s *Lay) formType(k desk.Key) desk.Ask {
	s.syncForm()
	if r, ok := s.form.row(); ok && r.pick && len(k.Runes) == 1 && k.Runes[0] == ' ' {
		return s.turnRow(1)
	}
	s.form.typeKey(k)
	return desk.Ask{}
}

// takeRow accepts what is typed in the row in hand, as one change.
func (s *Lay) takeRow() desk.Ask {
	r, ok := s.inHand()
	if !ok || !s.form.dirty() {
		return desk.Ask{}
	}
	typed, c := strings.TrimSpace(s.form.field.string()), s.hers()
	refuse := func(why string) desk.Ask {
		s.form.keep(why)
		return desk.Ask{Say: why, Warn: true}
	}
	switch {
	case r.length != nil:
		l := measure.Length(0)
		if typed != "" {
			var err error
			if l, err = measure.Read(typed, s.d.Unit()); err != nil {
				return refuse(s.d.Plain(withoutPlace(err).Error()))
			}
		}
		*r.length(&c) = l
	default:
		x := 0.0
		if typed != "" {
			var err error
			if x, err = strconv.ParseFloat(strings.Replace(strings.TrimSuffix(typed, "%"), ",", ".", 1), 64); err != nil || !(x >= 0 && x <= r.most) {
				return refuse(s.d.Tell(text.LayNumber, number(r.most)))
			}
		}
		*r.number(&c) = x
	}
	return s.takeCloth(c, r)
}

// takeCloth puts the cloth into the session, if it can be cut from.
func (s *Lay) takeCloth(c pattern.Cloth, r clothRow) desk.Ask {
	job := s.d.Job().WithCloth(c)
	on, _ := laid.ClothOf(job, c.Name)
	if _, err := laid.On([]*pattern.Sheet{s.d.Sheet()}, on); err != nil {
		why := s.d.Plain(withoutPlace(err).Error())
		if rw, ok := s.form.row(); ok && !rw.pick {
			s.form.keep(why)
		}
		return desk.Ask{Say: why, Warn: true}
	}
	s.form.accepted()
	return desk.Ask{Job: &job, Says: s.changeOf(r, c)}
}

// changeOf is the entry of the history: "Main cloth, width: 54 in".
func (s *Lay) changeOf(r clothRow, c pattern.Cloth) string {
	now := s.stored(r, &c)
	switch {
	case r.id == rowNap && c.Nap:
		now = s.d.Tell(text.LayNapYes)
	case r.id == rowNap:
		now = s.d.Tell(text.LayNapNo)
	case r.id == rowOff:
		now = s.d.Tell(text.LayDegrees, number(c.OffGrain))
	case r.id == rowFlaws:
		now = s.d.Tell(text.LayFlaws, len(c.Flaws))
	case r.id == "fold":
		now = s.d.Trade(laid.Folds(c))
	case r.id == "stripe" && now == "midway":
		now = s.d.Tell(text.LayMidway)
	case r.id == "stripe":
		now = s.d.Tell(text.LayCentre)
	case now == "":
		now = s.d.Tell(text.LayNever)
	case r.length != nil:
		now = s.d.Unit().Say(*r.length(&c))
	}
	return s.d.Tell(text.LayClothSet, capital(s.d.Plain(c.Name)), s.d.Tell(r.title), now)
}

// turnRow takes the next value of the row in hand: the next width of the shops,
// the next fold; of other lengths a step of the tape.
func (s *Lay) turnRow(by int) desk.Ask {
	s.syncForm()
	r, ok := s.inHand()
	if !ok {
		return desk.Ask{}
	}
	c := s.hers()
	usual, _ := laid.ClothOf(s.d.Job(), s.cloth)
	switch {
	case r.id == rowCloth:
		ask := s.otherCloth(by)
		s.halt() // the form is open
		s.syncForm()
		return desk.Ask{Say: ask.Say}
	case r.id == rowNap:
		c.Nap = !c.Nap
	case r.id == rowOff:
		c.OffGrain = float64((int(c.OffGrain) + by + 4) % 4)
	case r.id == rowFlaws:
		if len(c.Flaws) == 0 {
			return desk.Ask{Say: s.d.Tell(text.LayFlawHow)}
		}
		c.Flaws = c.Flaws[:len(c.Flaws)-1]
	case r.word != nil:
		w := r.word(&usual)
		at := max(slices.Index(r.words, *w), 0)
		*r.word(&c) = r.words[(at+by+len(r.words))%len(r.words)]
	case r.id == "width":
		c.Width = nextWidth(laid.ShopWidths(s.d.Unit(), 0), usual.Width, by)
	case r.length != nil:
		*r.length(&c) = max(0, stepped(*r.length(&usual), float64(by), s.d.Unit()))
	default:
		*r.number(&c) = max(0, min(*r.number(&c)+float64(by), r.most))
	}
	return s.takeCloth(c, r)
}

// nextWidth is the next of the widths in shops, that way.
func nextWidth(all []measure.Length, now measure.Length, by int) measure.Length {
	if by < 0 {
		for i := len(all) - 1; i >= 0; i-- {
			if all[i] < now-1e-6 {
				return all[i]
			}
		}
		return all[len(all)-1]
	}
	for _, w := range all {
		if w > now+1e-6 {
			return w
		}
	}
	return all[0]
}

// formLines are the rows of the form, the one in hand with its field.
func (s *Lay) formLines(cols, rows int) []string {
	s.syncForm()
	out := []string{" " + s.d.Paint(theme.Title, s.d.Tell(text.LayFormTitle, capital(s.d.Plain(s.cloth))))}
	from, to := window(s.form.at, len(s.form.rows), max(rows-2, 1))
	const wide = 26
	for i := from; i < to; i++ {
		r := s.form.rows[i]
		head := marker(i == s.form.at) + desk.Fit(r.title, min(wide, max(cols-14, 8)))
		at := slices.IndexFunc(clothRows, func(c clothRow) bool { return c.id == r.id })
		said := s.shownAs(clothRows[at])
		u, unread := s.form.kept[r.id]
		switch {
		case i == s.form.at && !r.pick:
			s.form.load(false)
			out = append(out, s.d.Paint(theme.Title, head)+s.form.field.view(s.d, max(min(cols-len(head)-2, 20), 4)))
			if s.form.field.string() == "" && said != "" {
				out[len(out)-1] = desk.Clip(out[len(out)-1]+" "+s.d.Paint(theme.Muted, said), cols)
			}
		case i == s.form.at:
			out = append(out, desk.Clip(s.d.Paint(theme.Title, head+said), cols))
		case unread:
			out = append(out, desk.Clip(head+s.d.Paint(theme.Warn, "! "+s.d.Plain(u.text)), cols))
		default:
			out = append(out, desk.Clip(head+said, cols))
		}
	}
	return out
}
