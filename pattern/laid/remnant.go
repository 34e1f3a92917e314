package laid

import (
	"slices"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/lay"
)

// Fit is whether a remnant is enough.
type Fit struct {
	Along, Across measure.Length
	Work          Work    // on the remnant
	Lay           lay.Lay // the shortest found; none where Narrow
	Fits          bool
	Needed        measure.Length // of its length, before the wash
	ShortBy       measure.Length
	Narrow        error // it is too narrow for a piece
	Cures         []Cure
	Stopped       bool // before all was tried
}

// Cure is a change with which the pieces fit; each was laid.
type Cure struct {
	Says  measure.Sentence
	Input string // what to change: fold, nap, facings, seam, hem_allowance, length
	Lay   lay.Lay
}

// enough says whether a lay may be cut from so much.
func enough(w Work, l lay.Lay, along measure.Length) bool {
	return w.Buy(l).Needed <= along+1e-6
}

// Remnant says whether a piece of cloth, so long along the grain and so wide,
// is enough, and if it is not, what would make it so. Shorter dresses are
// drafted by redraft; nil: none is tried. Stopped, it answers by what was found.
func (w Work) Remnant(along, across measure.Length, s Search, redraft func(pattern.Job) *pattern.Sheet) Fit {
	c := w.Cloth
	c.Width = across
	f := Fit{Along: along, Across: across, Work: w.with(c)}
	var err error
	if f.Lay, err = s.solve(f.Work.Problem, along); err != nil {
		f.Narrow = err
	} else {
		f.Needed = f.Work.Buy(f.Lay).Needed
		f.Fits = enough(f.Work, f.Lay, along)
	}
	if f.Fits {
		return f
	}
	f.ShortBy = f.Needed - along
	if f.Narrow != nil {
		f.ShortBy = 0
	}
	t := trial{f: &f, s: s.part(4), redraft: redraft}
	t.folds()
	t.nap()
	t.facings()
	t.seam()
	t.shorter()
	f.Stopped = !f.Fits && s.stopped()
	return f
}

// with is the work on another cloth, without its pins.
func (w Work) with(c pattern.Cloth) Work {
	w.Cloth = c
	w.Problem.Cloth, w.Problem.Pins = lay.FromCloth(c), nil
	return w
}

// trial tries cures one after the other.
type trial struct {
	f       *Fit
	s       Search
	redraft func(pattern.Job) *pattern.Sheet
}

// try keeps the cure if the pieces fit with it; short is what still lacks.
func (t trial) try(w Work, input string, says measure.Sentence) (short measure.Length, fits bool) {
	if t.s.stopped() {
		return 0, false
	}
	l, err := t.s.solve(w.Problem, t.f.Along)
	if err != nil {
		return 0, false
	}
	if !enough(w, l, t.f.Along) {
		return w.Buy(l).Needed - t.f.Along, false
	}
	t.f.Cures = append(t.f.Cures, Cure{Says: says, Input: input, Lay: l})
	return 0, true
}

func (t trial) folds() {
	for _, fold := range []struct{ id, says string }{
		{lay.Flat, "Lay it flat, in one layer: then it is enough."},
		{lay.Lengthwise, "Fold it lengthwise: then it is enough."},
		{lay.ToMiddle, "Fold both edges to the middle: then it is enough."},
		{lay.OffCentre, "Fold it off centre, no farther in than the widest double piece needs: then it is enough."},
		{lay.Across, "Fold it across, end to end: then it is enough."},
	} {
		if c := t.f.Work.Cloth; c.Fold != fold.id {
			c.Fold = fold.id
			t.try(t.f.Work.with(c), "fold", measure.Tell(fold.says))
		}
	}
}

func (t trial) nap() {
	if c := t.f.Work.Cloth; c.Nap {
		c.Nap = false
		t.try(t.f.Work.with(c), "nap", measure.Tell("With tops both ways it is enough: look at the cloth from both ends first."))
	}
}

// facings leaves out the pieces that are cut from another cloth besides.
func (t trial) facings() {
	w := t.f.Work
	small := map[string]bool{}
	for _, s := range w.Sheets {
		for i := range s.Pieces {
			if p := &s.Pieces[i]; len(p.Also) > 0 && p.Cloth == w.Cloth.Name {
				small[string(p.ID)] = true
			}
		}
	}
	items := slices.DeleteFunc(slices.Clone(w.Problem.Items), func(it lay.Item) bool { return small[it.ID] })
	if len(items) == 0 || len(items) == len(w.Problem.Items) {
		return
	}
	w.Problem.Items = items
	t.try(w, "facings", measure.Tell("Cut the facings from another cloth: then it is enough."))
}

// seamAllowance is what a seam takes on each side that stood on the fold before:
// the usual 5/8 in; common practice, no source.
const seamAllowance = 5 * measure.Inch / 8

// seam cuts the long pieces of the fold as pairs, with a seam in place of the
// fold.
func (t trial) seam() {
	w := t.f.Work
	items := slices.Clone(w.Problem.Items)
	name, n := "", 0
	for i := range items {
		if it, ok := lay.Seamed(items[i], steps(seamAllowance)); ok && long(it, items) {
			items[i], name = it, it.Title
			n++
		}
	}
	if n == 0 {
		return
	}
	where := strings.ToLower(name)
	if n > 1 {
		where = "those that lie on the fold"
	}
	w.Problem.Items = items
	t.try(w, "seam", measure.Tell("Cut the "+where+" with a seam in the middle, {say} more on each side: then it is enough.", seamAllowance))
}

// long says that a piece is at least half as long as the longest.
func long(it lay.Item, all []lay.Item) bool {
	most := int64(0)
	for i := range all {
		most = max(most, tall(all[i].Outline))
	}
	return 2*tall(it.Outline) >= most
}

func tall(o []lay.Point) int64 {
	lo, hi := o[0].Y, o[0].Y
	for _, c := range o {
		lo, hi = min(lo, c.Y), max(hi, c.Y)
	}
	return hi - lo
}

// Style cures stop here: a dress much shorter is another dress.
const (
	leastHem    = 1 * measure.Inch // a plain turned hem; common practice, no source
	mostShorter = 0.15
)

// shorter tries a narrower hem, then a shorter dress.
func (t trial) shorter() {
	w := t.f.Work
	if t.redraft == nil || t.f.Narrow != nil || len(w.Sheets) != 1 {
		return
	}
	sheet := w.Sheets[0]
	if hem := sheet.Length("hem_allowance"); hem > leastHem {
		if r, ok := t.redrafted("hem_allowance", leastHem); ok {
			if _, fits := t.try(r, "hem_allowance", measure.Tell("A hem of {say} instead of {say}: then it is enough.", leastHem, hem)); fits {
				return
			}
		}
	}
	long, less, step := sheet.Length("length"), t.f.ShortBy, w.Cloth.Step
	if step <= 0 {
		step = measure.Millimetre
	}
	for range 2 {
		less = less.Up(step)
		if less <= 0 || less > long*mostShorter {
			return
		}
		r, ok := t.redrafted("length", long-less)
		if !ok {
			return
		}
		short, fits := t.try(r, "length", measure.Tell("Make the dress {say} shorter, {say} long: then it is enough.", less, long-less))
		if fits || short <= 0 {
			return
		}
		less += short
	}
}

// redrafted is the work with one length of the style changed.
func (t trial) redrafted(id pattern.ChoiceID, l measure.Length) (Work, bool) {
	s := t.redraft(t.f.Work.Sheets[0].Job.WithStyle(id, pattern.LengthValue(l)))
	if !s.Complete {
		return Work{}, false
	}
	w, err := On([]*pattern.Sheet{s}, t.f.Work.Cloth)
	return w, err == nil
}

// Says is the answer in one sentence.
func (f Fit) Says() measure.Sentence {
	switch {
	case f.Narrow != nil:
		return measure.Tell("It does not fit: the remnant is too narrow for a piece.")
	case f.Fits:
		return measure.Tell("It fits: {say} of the {say} are needed.", f.Needed, f.Along)
	case f.Stopped:
		return measure.Tell("It does not fit yet: {say} are needed by now, {say} more than there is; the search was stopped.", f.Needed, f.ShortBy)
	}
	return measure.Tell("It does not fit: {say} are needed, {say} more than there is.", f.Needed, f.ShortBy)
}
