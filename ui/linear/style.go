package linear

import (
	"strconv"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/text"
)

func (r *room) countStyle() int { return len(r.d.Choices()) }

func (r *room) enterStyle() {
	r.sayStyle()
	r.say(text.HearStyleHow)
	if r.choice == "" {
		r.choice = r.d.Choices()[0].ID
	}
	r.tellChoice()
}

// inHand is the choice in hand with its setting.
func (r *room) inHand() (pattern.Choice, pattern.Setting, bool) {
	for _, c := range r.d.Choices() {
		if c.ID == r.choice {
			set, ok := r.d.Sheet().Setting(c.ID)
			return c, set, ok
		}
	}
	return pattern.Choice{}, pattern.Setting{}, false
}

// value says a value of a choice.
func (r *room) value(c pattern.Choice, v pattern.Value) string {
	switch c.Kind {
	case pattern.KindLength:
		return r.d.Unit().Say(v.Length)
	case pattern.KindSwitch:
		if v.On {
			return r.d.Words.Say(text.HearYes)
		}
		return r.d.Words.Say(text.HearNo)
	case pattern.KindPick:
		for _, o := range c.Options {
			if o.Value == v.Pick {
				return r.d.Words.Pass(o.Title)
			}
		}
		return v.Pick
	case pattern.KindPercent:
		return strconv.FormatFloat(v.Number, 'g', 6, 64) + " %"
	}
	return strconv.FormatFloat(v.Number, 'g', 6, 64)
}

// options are what may be answered, in words; empty for lengths and numbers.
func (r *room) options(c pattern.Choice) string {
	if c.Kind == pattern.KindSwitch {
		return r.d.Words.Say(text.HearYesNo)
	}
	var titles []string
	for _, o := range c.Options {
		titles = append(titles, r.d.Words.Pass(o.Title))
	}
	return anyOf(titles)
}

func (r *room) tellChoice() {
	c, set, ok := r.inHand()
	if !ok {
		return
	}
	r.choiceLine(c, set)
	r.tell(sentence(r.d.Words.Pass(c.Says)))
	if o := r.options(c); o != "" {
		r.say(text.HearOptions, o)
	}
	if set.Low < set.High {
		u := r.d.Unit()
		r.say(text.HearBetween, u.Tape(set.Low), u.Say(set.High))
	}
}

// choiceLine is one choice with its value.
func (r *room) choiceLine(c pattern.Choice, set pattern.Setting) {
	title := r.d.Words.Pass(c.Title)
	if !set.Known() {
		r.say(text.HearWaitsFor, title, r.waits(set.Default.Waits))
		return
	}
	how := text.HearUsual
	switch {
	case !set.Used:
		how = text.HearNotUsed
	case set.Chosen:
		how = text.HearChosen
	}
	r.say(text.HearChoice, title, r.value(c, set.Value), r.d.Words.Say(how))
}

func (r *room) waits(ids []measure.ID) string {
	var names []string
	for _, id := range ids {
		names = append(names, strings.ToLower(r.term(id)))
	}
	return strings.Join(names, ", ")
}

func (r *room) whyStyle() {
	c, set, ok := r.inHand()
	if !ok {
		return
	}
	u := r.d.Unit()
	if set.Chosen && set.Default.Waits == nil {
		r.say(text.StyleWhy, sentence(r.value(c, set.Default.Value)))
	}
	if because := set.Default.Because.In(u); because != "" {
		r.tell(sentence(capital(r.d.Words.Pass(because))))
	} else if !set.Chosen {
		r.say(text.HearUsualPlain)
	}
	if sum := set.Default.Sum.Sum(u); sum != "" {
		r.say(text.HearSum, r.d.Words.Pass(sum), u)
	}
}

// sayStyle says what was chosen otherwise than usual.
func (r *room) sayStyle() {
	none := true
	for _, c := range r.d.Choices() {
		if set, ok := r.d.Sheet().Setting(c.ID); ok && set.Chosen {
			none = false
			r.choiceLine(c, set)
		}
	}
	if none {
		r.say(text.HearAllUsual)
	}
}

func (r *room) listStyle() {
	for _, c := range r.d.Choices() {
		if set, ok := r.d.Sheet().Setting(c.ID); ok {
			r.choiceLine(c, set)
		}
	}
}

func (r *room) moveStyle(by int) {
	at := 0
	all := r.d.Choices()
	for i, c := range all {
		if c.ID == r.choice {
			at = i
		}
	}
	r.end(at+by, len(all), "draft", r.jumpStyle)
}

func (r *room) jumpStyle(n int) bool {
	r.choice = r.d.Choices()[n-1].ID
	r.tellChoice()
	return true
}

// answerStyle takes a value for the choice in hand.
func (r *room) answerStyle(line string) {
	c, set, ok := r.inHand()
	if !ok {
		return
	}
	v, err := r.readValue(c, line)
	if err != nil {
		r.warn(err)
		return
	}
	if v == set.Value {
		r.say(text.HearSame)
		return
	}
	before := r.d.Sheet().Drawn()
	r.change(r.d.Job().WithStyle(c.ID, v), r.d.Words.Say(text.StyleChanged, r.d.Words.Pass(c.Title), r.value(c, set.Value), r.value(c, v)))
	if set.Low < set.High && c.Kind == pattern.KindLength && (v.Length < set.Low || v.Length > set.High) {
		u := r.d.Unit()
		r.say(text.HearUnusual, u.Tape(set.Low), u.Say(set.High))
	}
	if r.d.Sheet().Drawn() != before {
		r.refused()
	}
}

// refused says what stopped the draft, if anything did.
func (r *room) refused() {
	u := r.d.Unit()
	for _, x := range r.d.Sheet().Refused {
		r.tell(sentence(capital(r.d.Words.Pass(x.Says.In(u)))))
		r.say(text.HearCure, r.d.Words.Pass(strings.TrimSuffix(x.Cure.In(u), ".")))
	}
}

// readValue is what was typed as a value of a choice.
func (r *room) readValue(c pattern.Choice, line string) (pattern.Value, error) {
	set, _ := r.d.Sheet().Setting(c.ID)
	like := r.value(c, set.Value)
	switch c.Kind {
	case pattern.KindLength:
		reading, err := measure.ReadAll(line, r.d.Unit())
		if err != nil {
			return pattern.Value{}, err
		}
		if reading.Length < 0 || reading.Length > 3000 {
			return pattern.Value{}, &measure.Refusal{Read: measure.Quoted(line), Wrong: "that is no length on a dress", Works: "type it like " + like}
		}
		return pattern.LengthValue(reading.Length), nil
	case pattern.KindPick:
		names := make([][]string, len(c.Options))
		for i, o := range c.Options {
			names[i] = []string{o.Title, spaced(o.Value)}
		}
		if at, _, _ := match(strings.ReplaceAll(line, "_", " "), names); at >= 0 {
			return pattern.PickValue(c.Options[at].Value), nil
		}
		return pattern.Value{}, &measure.Refusal{Read: measure.Quoted(line), Wrong: "that is none of its values", Works: "choose " + r.options(c)}
	case pattern.KindSwitch:
		switch strings.ToLower(line) {
		case "yes", "y", "on", "true":
			return pattern.SwitchValue(true), nil
		case "no", "n", "off", "false":
			return pattern.SwitchValue(false), nil
		}
		return pattern.Value{}, &measure.Refusal{Read: measure.Quoted(line), Wrong: "this is yes or no", Works: "type yes, or no"}
	}
	n, err := strconv.ParseFloat(strings.TrimSpace(strings.TrimSuffix(strings.ReplaceAll(line, ",", "."), "%")), 64)
	if err != nil || !(n >= 0 && n <= 1000) {
		return pattern.Value{}, &measure.Refusal{Read: measure.Quoted(line), Wrong: "that is no number for this", Works: "type it like " + like}
	}
	return pattern.NumberValue(c.Kind, n), nil
}

func (r *room) usual(rest string) {
	if rest != "" && !r.namedStyle(rest) {
		r.say(text.LinearUnknown, short(rest))
		return
	}
	c, set, ok := r.inHand()
	if !ok {
		return
	}
	if !set.Chosen {
		r.say(text.HearSame)
		return
	}
	r.change(r.d.Job().WithoutStyle(c.ID), r.d.Words.Say(text.StyleBack, r.d.Words.Pass(c.Title), r.value(c, set.Default.Value)))
}

// namedStyle hears a choice by its name, with or without a value; the name of
// an option answers the choice in hand.
func (r *room) namedStyle(line string) bool {
	all := r.d.Choices()
	names := make([][]string, len(all))
	for i, c := range all {
		names[i] = []string{c.Title, spaced(string(c.ID))}
	}
	at, rest, among := match(line, names)
	switch {
	case at >= 0 && rest == "":
		r.choice = all[at].ID
		r.tellChoice()
	case at >= 0:
		r.choice = all[at].ID
		r.answerStyle(rest)
	case r.answersPick(line):
		r.answerStyle(line)
	case len(among) > 1:
		var titles []string
		for _, i := range among {
			titles = append(titles, all[i].Title)
		}
		r.say(text.HearSeveral, short(line), either(titles))
	default:
		return false
	}
	return true
}

func (r *room) answersPick(line string) bool {
	c, _, ok := r.inHand()
	if !ok || c.Kind != pattern.KindPick && c.Kind != pattern.KindSwitch {
		return false
	}
	_, err := r.readValue(c, line)
	return err == nil
}
