package linear

import (
	"strconv"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern/laid"
	"chalkfold/pattern/lay"
	"chalkfold/pattern/workroom"
	"chalkfold/ui/text"
)

// usualTries is how long is searched where no count is said, and how long for
// each answer besides the lay.
const (
	usualTries = 3_000_000
	mostTries  = 100_000_000
	asideTries = 400_000
)

// table is the lay in hand; it is for one version of the job.
type table struct {
	known   bool
	version int
	shown   laid.Shown
	best    lay.Lay
	tried   int64 // evaluations of a search of this run; 0: none was made
	trouble error
}

// laid is the lay in hand: the kept one, the first one, or what was found.
func (r *room) laid() *table {
	t := &r.cloth
	if t.known && t.version == r.d.Version() {
		return t
	}
	*t = table{known: true, version: r.d.Version()}
	if s := r.d.Sheet(); s.Complete && len(s.Pieces) > 0 {
		t.shown, t.trouble = laid.Show(s, laid.Main)
		t.best = t.shown.Lay
	}
	return t
}

// ready says why nothing is laid, if so.
func (r *room) ready() (*table, bool) {
	t := r.laid()
	switch {
	case t.trouble != nil:
		r.say(text.HearNoLay, sentence(withoutPlace(t.trouble).Error()))
	case len(t.best.Placed) == 0:
		r.notWhole(text.LayEmpty)
	default:
		return t, true
	}
	return t, false
}

func (r *room) enterLay() {
	r.sayLay("")
	if t := r.laid(); len(t.best.Placed) == 0 {
		return
	}
	r.say(text.HearLayHow)
	r.say(text.HearLayMore)
	if !r.laid().shown.Named {
		r.say(text.HearWidthAsk, r.unitName(r.d.Unit()))
	}
}

// sayLay says what to buy, which lay it is, and on what cloth.
func (r *room) sayLay(string) {
	t, ok := r.ready()
	if !ok {
		return
	}
	r.say(text.HearBuy, r.d.Unit().Say(t.shown.Cloth.Width), r.d.Words.Pass(t.shown.Buy(t.best).Says))
	r.tell(r.which(t))
	c := t.shown.Cloth
	nap := ""
	if c.Nap {
		nap = r.d.Words.Say(text.LayNap)
	}
	r.say(text.LayOn, capital(c.Name), r.d.Unit().Say(c.Width), r.d.Words.Pass(laid.Folds(c)), nap)
	if !t.shown.Named {
		r.say(text.LayUsual)
	}
	if c.ShrinkAlong > 0 || c.ShrinkAcross > 0 {
		r.say(text.LayHandWash, percent(c.ShrinkAlong), percent(c.ShrinkAcross))
	}
	if !t.shown.Dropped.IsEmpty() && t.tried == 0 {
		r.tell(sentence(r.d.Words.Pass(t.shown.Dropped.In(r.d.Unit()))))
	}
}

// which is the lay in hand, how long, how much of the cloth it uses, and the
// hand rule beside.
func (r *room) which(t *table) string {
	hand := r.d.Words.Say(text.LayNoHand)
	if h, ok := t.shown.Hand(t.shown.Cloth.Width); ok {
		hand = r.d.Words.Pass(lay.Says(h.Yards, h.Metric))
	}
	long, used := r.d.Unit().Say(onCloth(t.best.Length)), percent(t.best.Density)
	switch {
	case t.tried > 0:
		return r.d.Words.Say(text.LayBest, text.Count(t.best.Evaluations), long, used, hand)
	case t.shown.Kept:
		return r.d.Words.Say(text.LayHers, long, used, hand)
	}
	return r.d.Words.Say(text.LayShelf, long, used, hand)
}

func onCloth(steps int64) measure.Length { return measure.Length(float64(steps) / lay.PerMM) }

func percent(x float64) string {
	return strings.TrimSuffix(strconv.FormatFloat(x, 'f', 1, 64), ".0")
}

// listLay tells the lay by tape in laying order, piece by piece, what decides
// the length, and what is left over.
func (r *room) listLay() {
	t, ok := r.ready()
	if !ok {
		return
	}
	for _, s := range lay.Say(t.shown.Problem, t.best) {
		r.tell(sentence(r.d.Words.Pass(s.In(r.d.Unit()))))
	}
}

func (r *room) whyLay() {
	t, ok := r.ready()
	if !ok {
		return
	}
	u := r.d.Unit()
	if h, ok := t.shown.Hand(t.shown.Cloth.Width); ok {
		r.say(text.HearSum, r.d.Words.Pass(h.Buy.Sum(u)), u)
		r.say(text.HearHandSays, lower(r.d.Words.Say(text.HearHandRule)))
	}
	told := lay.Tell(t.shown.Problem, t.best)
	for _, s := range append(told.Folding, told.After...) {
		r.tell(sentence(r.d.Words.Pass(s.In(u))))
	}
}

func lower(s string) string {
	for i, c := range s {
		return strings.ToLower(string(c)) + s[i+len(string(c)):]
	}
	return s
}

// searchLay looks for a lay that takes less cloth. The count alone decides when
// it ends, so that the same words give the same lay.
func (r *room) searchLay(rest string) {
	t, ok := r.ready()
	if !ok {
		return
	}
	tries := int64(usualTries)
	if rest != "" {
		n, err := strconv.ParseInt(strings.NewReplacer(" ", "", ",", "").Replace(rest), 10, 64)
		if err != nil || n < 1 || n > mostTries {
			r.say(text.HearTries)
			return
		}
		tries = n
	}
	r.say(text.HearSearches, text.Count(tries))
	r.speak()
	found, err := lay.Solve(t.shown.Problem, lay.Options{Evaluations: tries})
	if err != nil {
		r.warn(withoutPlace(err))
		return
	}
	was := t.best.Length
	if found.Length >= was {
		r.say(text.HearNoBetter, tries)
		return
	}
	t.best, t.tried = found, tries
	u := r.d.Unit()
	r.say(text.HearSearched, text.Count(tries), u.Say(onCloth(found.Length)), u.Say(onCloth(was)))
	r.sayLay("")
}

// keepLay puts the lay in hand into the session.
func (r *room) keepLay(string) {
	t, ok := r.ready()
	if !ok {
		return
	}
	if t.shown.Kept && t.tried == 0 {
		r.say(text.LayKeptYet)
		return
	}
	says := r.d.Words.Say(text.LayKept, t.shown.Cloth.Name, r.d.Words.Pass(t.shown.Buy(t.best).Says))
	r.change(r.d.Job().WithLay(t.shown.Keep(t.best)), says)
}

// widthsLay lays the pieces on other widths of cloth.
func (r *room) widthsLay(string) {
	t, ok := r.ready()
	if !ok {
		return
	}
	u := r.d.Unit()
	r.say(text.LayTrying)
	r.speak()
	for _, w := range t.shown.Widths(laid.ShopWidths(u, t.shown.Cloth.Width), laid.Search{Evaluations: asideTries}) {
		if w.Err != nil {
			r.say(text.HearWidthNot, u.Say(w.Width))
			continue
		}
		hand := r.d.Words.Say(text.LayNoHand)
		if w.Hand.Lengths > 0 {
			hand = r.d.Words.Pass(lay.Says(w.Hand.Yards, w.Hand.Metric))
		}
		r.say(text.HearWidthRow, u.Say(w.Width), r.d.Words.Pass(w.Buy.Says), hand)
		if w.Cost > 0 {
			r.say(text.HearPrice, strconv.FormatFloat(w.Cost, 'f', 2, 64))
		}
	}
}

// remnantLay answers whether a piece of cloth is enough, and what would make it
// so.
func (r *room) remnantLay(rest string) {
	t, ok := r.ready()
	if !ok {
		return
	}
	u := r.d.Unit()
	along, across, ok := sides(rest, u)
	if !ok {
		like := "60 x 45"
		if u != measure.In {
			like = "150 x 110"
		}
		r.say(text.HearRemnantHow, like)
		return
	}
	r.say(text.LayRemTrying)
	r.speak()
	fit := t.shown.Remnant(along, across, laid.Search{Evaluations: asideTries}, workroom.Draft)
	r.tell(sentence(r.d.Words.Pass(fit.Says().In(u))))
	for _, c := range fit.Cures {
		r.tell(sentence(r.d.Words.Pass(c.Says.In(u))))
	}
}

// sides reads "60 x 45": along the grain, then across.
func sides(words string, u measure.Unit) (along, across measure.Length, ok bool) {
	parts := strings.FieldsFunc(words, func(c rune) bool { return c == 'x' || c == 'X' || c == '×' })
	if len(parts) != 2 {
		return 0, 0, false
	}
	for i, into := range [...]*measure.Length{&along, &across} {
		l, err := measure.Read(strings.TrimSpace(parts[i]), u)
		if err != nil || l <= 0 || l > 50_000 {
			return 0, 0, false
		}
		*into = l
	}
	return along, across, true
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
	c, _ := r.d.Job().Cloth(laid.Main)
	c.Name, c.Width = laid.Main, w
	r.change(r.d.Job().WithCloth(c), r.d.Words.Say(text.HearWidthSet, u.Say(w)))
	r.sayLay("")
}
