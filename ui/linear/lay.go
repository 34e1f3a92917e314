package linear

import (
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/lay"
	"chalkfold/ui/text"
)

// mainCloth is the name of the cloth of the dress itself.
const mainCloth = "main"

// usualWidth is taken where the session names none, as in all of Chalkfold.
const usualWidth = 58 * measure.Inch

// shops are the widths that shops have, in inches: common practice, no source.
var shops = [...]float64{36, 44, 54, 58}

// cloth is hers, or the usual one of which nothing is known.
func (r *room) cloth() pattern.Cloth {
	c, ok := r.d.Job().Cloth(mainCloth)
	if !ok {
		c.Name = mainCloth
	}
	if c.Width <= 0 {
		c.Width = usualWidth
	}
	return c
}

func (r *room) enterLay() {
	r.sayLay()
	r.say(text.HearWidthAsk, r.unitName(r.d.Unit()))
}

func (r *room) sayLay() {
	n, ok := lay.NeedOf(r.d.Sheet())
	if !ok {
		r.notWhole(text.LayEmpty)
		return
	}
	r.buy(lay.Rule(n, r.cloth()))
}

// buy says what to ask for in the shop.
func (r *room) buy(h lay.Hand) {
	w := r.d.Unit().Say(h.Width)
	switch h.Lengths {
	case 0:
		r.say(text.HearNarrow, w)
	case 1:
		r.say(text.HearBuy, w, lay.Says(h.Yards, h.Metric))
		r.say(text.HearOneLength)
	default:
		r.say(text.HearBuy, w, lay.Says(h.Yards, h.Metric))
		r.say(text.HearLengths, h.Lengths)
	}
}

// notWhole says what the drawing waits for.
func (r *room) notWhole(id text.ID) {
	s := r.d.Sheet()
	if len(s.Missing) == 0 {
		r.refused()
		r.say(text.HearNotWhole)
		return
	}
	var names []string
	for _, m := range s.Missing {
		names = append(names, strings.ToLower(r.term(m.ID)))
	}
	r.say(id, strings.Join(names, ", "))
}

func (r *room) whyLay() {
	n, ok := lay.NeedOf(r.d.Sheet())
	if !ok {
		r.notWhole(text.LayEmpty)
		return
	}
	if h := lay.Rule(n, r.cloth()); h.Lengths > 0 {
		r.say(text.HearSum, r.d.Words.Pass(h.Buy.Sum(r.d.Unit())), r.d.Unit())
	}
	r.say(text.HearHandRule)
}

// listLay says what cloth of other widths would take.
func (r *room) listLay() {
	n, ok := lay.NeedOf(r.d.Sheet())
	if !ok {
		r.notWhole(text.LayEmpty)
		return
	}
	for _, w := range shops {
		c := r.cloth()
		c.Width = measure.In.Length(w)
		r.buy(lay.Rule(n, c))
	}
}

// clothWidth writes down how wide her cloth is.
func (r *room) clothWidth(line string) {
	u := r.d.Unit()
	if line == "" {
		r.say(text.HearWidthAsk, r.unitName(u))
		return
	}
	w, err := measure.Read(line, u)
	if err != nil {
		r.warn(err)
		return
	}
	if low, high := 4*measure.Inch, 200*measure.Inch; w < low || w > high {
		r.say(text.HearWidthSmall, u.Tape(low), u.Say(high))
		return
	}
	c := r.cloth()
	c.Width = w
	job := r.d.Job()
	cloths := append([]pattern.Cloth(nil), job.Cloths...)
	job.Cloths = cloths
	found := false
	for i := range cloths {
		if cloths[i].Name == mainCloth {
			cloths[i], found = c, true
		}
	}
	if !found {
		job.Cloths = append(cloths, c)
	}
	r.change(job, r.d.Words.Say(text.HearWidthSet, u.Say(w)))
	r.sayLay()
}
