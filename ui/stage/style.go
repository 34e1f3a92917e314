package stage

import (
	"slices"
	"strconv"

	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/text"
	"chalkfold/ui/view"
)

// Style is the form of the choices, with the old outline dotted under the new
// one.
type Style struct {
	bench
	form    form
	version int
	fresh   bool
	choices []pattern.Choice
	old     bool // show the outline from before the last change
	look    byEye
}

// NewStyle is the second stage.
func NewStyle(d *desk.Desk) *Style {
	return &Style{bench: bench{d: d}, form: form{typing: true}, fresh: true, old: true}
}

// Title names the stage.
func (s *Style) Title() string { return s.d.Tell(text.StageStyle) }

// Fact: line 1 has none for this stage.
func (s *Style) Fact() string { return "" }

// Typing says that letters are text here: a row that takes a number has the
// focus.
func (s *Style) Typing() bool { return s.form.typing || s.eye.Hair }

// Dirty says that something is typed and not accepted.
func (s *Style) Dirty() bool { return s.form.typing && s.form.dirty() }

func (s *Style) refresh() {
	if !s.fresh && s.version == s.d.Version() {
		return
	}
	s.version = s.d.Version()
	sheet := s.d.Sheet()
	s.choices = s.used(sheet)
	var rows []row
	for _, c := range s.choices {
		set, _ := sheet.Setting(c.ID)
		rows = append(rows, row{id: string(c.ID), title: s.d.Trade(c.Title), group: c.Group, text: s.stored(c, set), pick: c.Kind == pattern.KindPick || c.Kind == pattern.KindSwitch})
	}
	s.form.sync(rows)
	if s.fresh {
		s.fresh = false
		for i, r := range rows {
			if !r.pick {
				s.form.to(i)
				break
			}
		}
	}
}

// used are the choices of the present method, then those of the other that she
// has made and that are kept for it.
func (s *Style) used(sheet *pattern.Sheet) []pattern.Choice {
	var out, kept []pattern.Choice
	method := sheet.Job.Style.Method()
	for _, c := range s.d.Choices() {
		set, _ := sheet.Setting(c.ID)
		switch {
		case c.UsedBy(method):
			out = append(out, c)
		case set.Chosen:
			kept = append(kept, c)
		}
	}
	return grouped(append(out, kept...))
}

// grouped puts the choices of one group together, so that its heading stands
// once: the groups in the order in which they first come, in each the choices
// as they came.
func grouped(all []pattern.Choice) []pattern.Choice {
	place := map[string]int{}
	for _, c := range all {
		if _, ok := place[c.Group]; !ok {
			place[c.Group] = len(place)
		}
	}
	slices.SortStableFunc(all, func(a, b pattern.Choice) int { return place[a.Group] - place[b.Group] })
	return all
}

// stored is the text of a row: as she typed it, or of what is usual what the
// tape shows.
func (s *Style) stored(c pattern.Choice, set pattern.Setting) string {
	if c.Kind == pattern.KindLength && !set.Chosen {
		if !set.Known() {
			return ""
		}
		return s.d.Unit().Tape(set.Value.Length)
	}
	return s.exact(c, set.Value)
}

// choice is the one of the row in hand, with its setting.
func (s *Style) choice() (pattern.Choice, pattern.Setting, bool) {
	if s.form.at < 0 || s.form.at >= len(s.choices) {
		return pattern.Choice{}, pattern.Setting{}, false
	}
	c := s.choices[s.form.at]
	set, _ := s.d.Sheet().Setting(c.ID)
	return c, set, true
}

// exact is a value as it would be typed.
func (s *Style) exact(c pattern.Choice, v pattern.Value) string {
	switch c.Kind {
	case pattern.KindLength:
		return shortExact(s.d.Unit(), v.Length)
	case pattern.KindCount, pattern.KindPercent:
		return strconv.FormatFloat(v.Number, 'f', -1, 64)
	case pattern.KindSwitch:
		if v.On {
			return s.d.Tell(text.SettingOn)
		}
		return s.d.Tell(text.SettingOff)
	}
	for _, o := range c.Options {
		if o.Value == v.Pick && o.Title != "" {
			return s.d.Trade(o.Title)
		}
	}
	return v.Pick
}

// says is a value with its unit.
func (s *Style) says(c pattern.Choice, v pattern.Value) string {
	t := s.exact(c, v)
	if c.Kind == pattern.KindLength {
		return s.d.Unit().Say(v.Length)
	}
	return t
}

// Actions are what can be done here.
func (s *Style) Actions() []desk.Offer {
	if s.eye.Hair {
		return s.hairOffers()
	}
	s.refresh()
	why := ""
	if _, _, ok := s.d.Before(); !ok {
		why = s.d.Tell(text.NothingToUndo)
	}
	if !s.form.typing {
		out := []desk.Offer{{ID: keys.Accept, Title: s.d.Tell(text.StageStyle)}, offer(keys.FieldNext), {ID: "old-new", WhyNot: why}}
		return append(out, s.tableOffers()...)
	}
	right := offer("text-right")
	if r, ok := s.form.row(); ok && !r.pick {
		right.Quiet = true
	}
	return []desk.Offer{
		{ID: keys.Accept, Title: s.d.Tell(text.NextRow)},
		right, offer("field-down"), quiet("field-up"), quiet("text-left"), quiet("nudge-up"), quiet("nudge-down"),
		quiet("clear"), quiet(keys.FieldNext), quiet(keys.FieldBack), quiet(keys.Room),
	}
}

// Do an action.
func (s *Style) Do(id keys.ID) desk.Ask { return s.followed(s.do(id)) }

func (s *Style) do(id keys.ID) desk.Ask {
	s.refresh()
	if s.eye.Hair {
		ask, _ := s.tableDo(id)
		return ask
	}
	if !s.form.typing {
		switch id {
		case keys.Accept, keys.FieldNext, keys.FieldBack, "style", "clear":
			s.form.typing = true
			return desk.Ask{}
		case "old-new":
			s.old = !s.old
			return desk.Ask{}
		}
		ask, _ := s.tableDo(id)
		return ask
	}
	switch id {
	case keys.Room:
		s.swap()
	case keys.Back:
		return s.form.out(s.d, s.hands())
	}
	ask, _ := s.form.do(s.d, id, s.hands())
	return ask
}

func (s *Style) hands() hands { return hands{s.accept, s.nudge, s.turn} }

// Enter puts the focus on the row in hand.
func (s *Style) Enter() { s.form.Enter() }

// Settle accepts what is typed, before the work is saved or another screen
// comes.
func (s *Style) Settle() desk.Ask {
	s.refresh()
	if !s.Dirty() {
		return desk.Ask{}
	}
	return s.accept()
}

// Type a key.
func (s *Style) Type(k desk.Key) desk.Ask { return s.followed(s.typeKey(k)) }

func (s *Style) typeKey(k desk.Key) desk.Ask {
	s.refresh()
	if s.eye.Hair {
		return s.hairType(k)
	}
	if r, ok := s.form.row(); ok && r.pick && len(k.Runes) == 1 && k.Runes[0] == ' ' {
		return s.turn(1)
	}
	s.form.typeKey(k)
	return desk.Ask{}
}

// View is the choices above the cloth.
func (s *Style) View(r desk.Rect) []string {
	s.refresh()
	s.instead = s.small
	return s.compose(r, 11, s.words, s.scene(r))
}

// scene is the draft as it would be with what is being typed, over the one
// that stands or the one before the last change.
func (s *Style) scene(r desk.Rect) view.Scene {
	out := view.Scene{Sheet: s.d.Sheet()}
	if c, _, ok := s.choice(); ok && s.Dirty() {
		if v, err := s.read(c, s.form.field.string()); err == nil {
			out.Old = out.Sheet
			out.Sheet = s.d.SheetOf(s.d.Job().WithStyle(c.ID, v))
		}
	}
	if job, _, ok := s.d.Before(); ok && out.Old == nil && s.old {
		out.Old = s.d.SheetOf(job)
	}
	if r.Rows < bothRows {
		out.Piece = s.side()
	}
	return out
}

// side is the piece that the choice in hand shapes.
func (s *Style) side() pattern.PieceID {
	c, _, _ := s.choice()
	switch c.ID {
	case "back_neck_depth", "zip_allowance", "zip_length", "slit_height":
		return pattern.Back
	}
	return pattern.Front
}

var _ = [...]desk.Stage{(*Measure)(nil), (*Style)(nil), (*Draft)(nil), (*True)(nil), (*Lay)(nil), (*Cut)(nil)}
