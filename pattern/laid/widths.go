package laid

import (
	"slices"

	"chalkfold/measure"
	"chalkfold/pattern/lay"
)

// Search says how long to search for each answer.
type Search struct {
	Evaluations int64
	Stop        func() bool // nil: never before that
}

// solve lays a problem for so long; with a length it ends as soon as that is
// reached, and goes on where the tape then takes too much of it.
func (s Search) solve(p lay.Problem, enough measure.Length) (lay.Lay, error) {
	if s.stopped() {
		return lay.Shelf(p)
	}
	reached := false
	o := lay.Options{Evaluations: s.Evaluations}
	o.Stop = func() bool { return reached || s.stopped() }
	o.Progress = func(l lay.Lay) {
		reached = enough > 0 && lay.Buy(l.Length+2*p.Cloth.Tape, p.Cloth).Needed <= enough
	}
	l, err := lay.Solve(p, o)
	if err != nil || !reached || lay.Buy(l.Length, p.Cloth).Needed <= enough {
		return l, err
	}
	reached, o.Progress = false, nil
	return lay.Solve(p, o)
}

// stopped says that the answer is wanted as it is by now.
func (s Search) stopped() bool { return s.Stop != nil && s.Stop() }

// part is a shorter search.
func (s Search) part(of int64) Search {
	s.Evaluations = min(s.Evaluations, max(s.Evaluations/of, leastPart))
	return s
}

// leastPart is the least count that a part of a search gets.
const leastPart = 50_000

// shopWidths are the widths in which cloth lies in shops: common practice, no
// source.
var shopWidths = map[measure.Unit][]float64{
	measure.In: {36, 44, 54, 58, 60},
	measure.Cm: {90, 112, 115, 140, 150},
}

// ShopWidths are the usual widths of cloth, and among them one more.
func ShopWidths(u measure.Unit, own measure.Length) []measure.Length {
	list := u
	if u != measure.In {
		list = measure.Cm
	}
	var out []measure.Length
	for _, w := range shopWidths[list] {
		out = append(out, list.Length(w))
	}
	if own > 0 && !slices.ContainsFunc(out, func(w measure.Length) bool { return w-own < 1e-6 && own-w < 1e-6 }) {
		out = append(out, own)
		slices.Sort(out)
	}
	return out
}

// Width is what one width of cloth takes.
type Width struct {
	Width measure.Length
	Own   bool // her own
	Hand  lay.Hand
	Lay   lay.Lay
	Buy   lay.Purchase
	Cost  float64 // of the metres to buy; 0: no price is known
	Err   error   // why it cannot be laid
}

// Widths lays the pieces on each width. Stopped, it gives those that are found
// by then, and of the others the first lays.
func (w Work) Widths(all []measure.Length, s Search) []Width {
	var out []Width
	for _, wide := range all {
		c := w.Cloth
		c.Width = wide
		row := Width{Width: wide, Own: w.Named && wide == w.Cloth.Width}
		row.Hand, _ = w.Hand(wide)
		p := w.Problem
		p.Cloth, p.Pins = lay.FromCloth(c), nil
		row.Lay, row.Err = s.solve(p, 0)
		if row.Err == nil {
			row.Buy = lay.Buy(row.Lay.Length, p.Cloth)
			row.Cost = w.Cost(row.Buy)
		}
		out = append(out, row)
	}
	return out
}

// Cost is the price of what is to buy, 0 where none is known.
func (w Work) Cost(b lay.Purchase) float64 { return float64(b.Metric) / 1000 * w.Cloth.Price }

// NapCost says what it costs that all tops lie the same way, or would cost if
// they had to. Both searches have the same count.
func (w Work) NapCost(l lay.Lay, s Search) measure.Sentence {
	p := w.Problem
	p.Cloth.Nap, p.Cloth.Depth, p.Pins = !p.Cloth.Nap, 0, nil
	other, err := s.solve(p, 0)
	if err != nil {
		return measure.Sentence{}
	}
	nap, free := w.Buy(l), w.Buy(other)
	if !w.Problem.Cloth.Nap {
		nap, free = free, nap
	}
	more := nap.Yards - free.Yards
	switch {
	case more <= 0 && w.Problem.Cloth.Nap:
		return measure.Tell("The nap costs nothing here: one way or both, it takes the same.")
	case more <= 0:
		return measure.Tell("Cloth with a nap, all tops one way, would take no more.")
	case w.Problem.Cloth.Nap:
		return measure.Tell("The nap costs " + lay.Says(more, max(nap.Metric-free.Metric, 0)) + ": without it " + free.Says + " would do.")
	}
	return measure.Tell("Cloth with a nap, all tops one way, would take " + lay.Says(more, max(nap.Metric-free.Metric, 0)) + " more.")
}
