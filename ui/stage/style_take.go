package stage

import (
	"strconv"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/text"
)

// read is what was typed as a value of the choice.
func (s *Style) read(c pattern.Choice, typed string) (pattern.Value, error) {
	typed = strings.TrimSpace(typed)
	if c.Kind == pattern.KindLength {
		r, err := measure.ReadAll(typed, s.d.Unit())
		if err != nil {
			return pattern.Value{}, withoutPlace(err)
		}
		if r.Length < 0 || r.Length > 3*1000*measure.Millimetre {
			return pattern.Value{}, &measure.Refusal{Read: measure.Quoted(typed), Wrong: "that is no length on a dress", Works: s.like(c)}
		}
		return pattern.LengthValue(r.Length), nil
	}
	n, err := strconv.ParseFloat(strings.TrimSuffix(strings.ReplaceAll(typed, ",", "."), "%"), 64)
	if err != nil || n < 0 || n > 1000 {
		return pattern.Value{}, &measure.Refusal{Read: measure.Quoted(typed), Wrong: "that is no number for this", Works: s.like(c)}
	}
	return pattern.NumberValue(c.Kind, n), nil
}

// like is an example that works: the value as it stands.
func (s *Style) like(c pattern.Choice) string {
	set, _ := s.d.Sheet().Setting(c.ID)
	return s.d.Words.Say(text.TypeLike, s.exact(c, set.Value))
}

// accept takes what is typed in the row in hand; an emptied row goes back to
// what is usual.
func (s *Style) accept() desk.Ask {
	c, set, ok := s.choice()
	if r, has := s.form.row(); !ok || !has || r.pick || !s.form.typed() {
		return desk.Ask{}
	}
	typed := strings.TrimSpace(s.form.field.string())
	if typed == "" {
		s.form.accepted()
		return s.usual(c, set)
	}
	v, err := s.read(c, typed)
	if err != nil {
		s.form.keep(err.Error())
		return desk.Ask{Say: s.d.Plain(err.Error()), Warn: true}
	}
	s.form.accepted()
	return s.take(c, set, v)
}

// take asks for one choice to be made. What is usual is not written down.
func (s *Style) take(c pattern.Choice, set pattern.Setting, v pattern.Value) desk.Ask {
	if same(v, set.Value) {
		s.form.load(true)
		return desk.Ask{}
	}
	if same(v, set.Default.Value) {
		return s.usual(c, set)
	}
	job := s.d.Job().WithStyle(c.ID, v)
	return desk.Ask{Job: &job, Says: s.d.Words.Say(text.StyleChanged, s.d.Words.Pass(c.Title), s.short(c, set.Value), s.says(c, v))}
}

// short is the old value, without its unit where the new one says it.
func (s *Style) short(c pattern.Choice, v pattern.Value) string {
	if c.Kind == pattern.KindLength {
		return s.d.Unit().Tape(v.Length)
	}
	return s.exact(c, v)
}

// usual gives a choice back to its default.
func (s *Style) usual(c pattern.Choice, set pattern.Setting) desk.Ask {
	if !set.Chosen {
		s.form.load(true)
		return desk.Ask{}
	}
	job := s.d.Job().WithoutStyle(c.ID)
	return desk.Ask{Job: &job, Says: s.d.Words.Say(text.StyleBack, s.d.Words.Pass(c.Title), s.says(c, set.Default.Value))}
}

// turn takes the next or the former option of a pick.
func (s *Style) turn(by int) desk.Ask {
	c, set, ok := s.choice()
	if !ok {
		return desk.Ask{}
	}
	if c.Kind == pattern.KindSwitch {
		return s.take(c, set, pattern.SwitchValue(!set.Value.On))
	}
	n := len(c.Options)
	if n == 0 {
		return desk.Ask{}
	}
	at := 0
	for i, o := range c.Options {
		if o.Value == set.Value.Pick {
			at = i
		}
	}
	return s.take(c, set, pattern.PickValue(c.Options[(at+by+n)%n].Value))
}

// nudge changes the number in hand by one step.
func (s *Style) nudge(by int) desk.Ask {
	c, set, ok := s.choice()
	if !ok {
		return desk.Ask{}
	}
	if r, _ := s.form.row(); r.pick {
		return s.turn(by)
	}
	v := set.Value
	if s.form.typed() {
		typed, err := s.read(c, s.form.field.string())
		if err != nil {
			return desk.Ask{Say: s.d.Tell(text.NothingToMove)}
		}
		v = typed
	}
	if c.Kind == pattern.KindLength {
		v.Length = max(0, stepped(v.Length, float64(by), s.d.Unit()))
	} else {
		v.Number = max(0, v.Number+float64(by))
	}
	s.form.accepted()
	return s.take(c, set, v)
}
