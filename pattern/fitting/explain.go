package fitting

import (
	"math"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
)

// Explanation is the least change of inputs that accounts for all that was
// pinned, and how well it does.
type Explanation struct {
	Proposal
	Told  []Told           // every pin and what the change gives there
	Also  []Told           // places that move though nothing was pinned
	Share float64          // of what was pinned, 0 to 1
	How   measure.Sentence // how well, in words
}

// Told is one spot: what was pinned and what the draft does there.
type Told struct {
	Spot  Spot
	By    measure.Length // pinned
	Gives measure.Length
}

// Left is what the change does not account for.
func (t Told) Left() measure.Length { return t.By - t.Gives }

// fitted is the work on one set of pins.
type fitted struct {
	sheet  *pattern.Sheet
	u      measure.Unit
	frozen pattern.Job // with every input hers, so that none follows another
	names  []string    // inputs that move something
	old    []pattern.Value
	spots  []Spot
	base   []float64 // figures of the spots now
	cold   []float64 // the same of the frozen job
	pinned []bool
	system
}

// Explain looks for the least change of inputs that accounts for pins: a small
// least-squares fit over the draft itself. Few inputs are preferred, and each
// is a whole step of the tape.
func Explain(s *pattern.Sheet, pins []Pin) (Explanation, error) {
	f, err := newFitted(s, pins)
	if err != nil {
		return Explanation{}, err
	}
	f.effects()
	best := f.fewest()
	x := make([]float64, len(f.names))
	for i, j := range best.columns {
		x[j] = best.amounts[i]
	}
	f.refine(best.columns, x)
	f.snap(best.columns, x)
	return f.told(x), nil
}

func newFitted(s *pattern.Sheet, pins []Pin) (*fitted, error) {
	if !s.Complete {
		return nil, &measure.Refusal{Read: "a draft that is not complete", Wrong: "there is nothing to fit yet", Works: "finish the draft first"}
	}
	by := map[string]measure.Length{}
	for _, p := range pins {
		spot, ok := FindSpot(p.Spot)
		if !ok {
			return nil, &measure.Refusal{Read: measure.Quoted(p.Spot), Wrong: "there is no such place", Works: "take one of the list"}
		}
		if _, twice := by[p.Spot]; twice {
			return nil, &measure.Refusal{Read: measure.Quoted(spot.Title), Wrong: "it was pinned twice", Works: "add the two amounts"}
		}
		if p.By > 6*measure.Inch || p.By < -6*measure.Inch {
			return nil, &measure.Refusal{Read: s.Job.Unit.Say(p.By), Wrong: "that is no pin but another dress", Works: "measure what was pinned again"}
		}
		if !near(p.By, 0) {
			by[p.Spot] = p.By
		}
	}
	if len(by) == 0 {
		return nil, &measure.Refusal{Read: "no pins", Wrong: "nothing is to be explained", Works: "enter what was pinned, place by place"}
	}
	f := &fitted{sheet: s, u: s.Job.Unit}
	for _, spot := range spots {
		now, ok := spot.read(s)
		_, pinned := by[spot.ID]
		if !ok {
			if pinned {
				return nil, &measure.Refusal{Read: measure.Quoted(spot.Title), Wrong: "this draft has no such place", Works: "leave it out"}
			}
			continue
		}
		f.spots, f.base, f.pinned = append(f.spots, spot), append(f.base, now), append(f.pinned, pinned)
		f.want = append(f.want, spot.gain*by[spot.ID].MM())
		weight := 1 / math.Abs(spot.gain)
		if !pinned {
			weight *= unpinned
		}
		f.weight = append(f.weight, weight)
	}
	f.freeze()
	return f, nil
}

// freeze writes every input down as hers.
func (f *fitted) freeze() {
	f.frozen = f.sheet.Job
	for _, id := range inputs {
		if v, ok := present(f.sheet, id); ok && v.Kind == pattern.KindLength {
			f.names, f.old = append(f.names, id), append(f.old, v)
			f.frozen = put(f.frozen, id, v)
		}
	}
	f.cold = f.figures(workroom.Draft(f.frozen))
}

// figures reads all spots; a spot that is gone has no figure.
func (f *fitted) figures(s *pattern.Sheet) []float64 {
	out := make([]float64, len(f.spots))
	for i, spot := range f.spots {
		x, ok := spot.read(s)
		if !ok || !s.Complete {
			x = math.NaN()
		}
		out[i] = x
	}
	return out
}

// step is one step of the tape, by which inputs change.
func (f *fitted) step() measure.Length {
	if f.u == measure.In {
		return measure.Inch / 8
	}
	return 2 * measure.Millimetre
}

// change is what a job does to each spot. Where nothing was pinned, what only
// follows of itself is not held against it: an armhole goes down with its
// shoulder.
func (f *fitted) change(set func(pattern.Job) pattern.Job) ([]float64, bool) {
	out := f.figures(workroom.Draft(set(f.sheet.Job)))
	follows := false
	for i := range out {
		out[i] -= f.base[i]
		if math.IsNaN(out[i]) {
			return nil, false
		}
		follows = follows || !f.pinned[i] && math.Abs(out[i]) > 1e-6
	}
	if !follows {
		return out, true
	}
	for i, cold := range f.figures(workroom.Draft(set(f.frozen))) {
		if by := cold - f.cold[i]; !f.pinned[i] && math.Abs(by) < math.Abs(out[i]) {
			out[i] = by
		}
	}
	return out, true
}

// effects measures what a step of each input does: up, down where that moves
// nothing or cannot be drafted, or a larger step where another measure sets the
// limit. Inputs that move no spot fall out.
func (f *fitted) effects() {
	f.effect = make([][]float64, len(f.spots))
	var names []string
	var old []pattern.Value
	for k, id := range f.names {
		by, h := f.trial(id, f.old[k])
		if by == nil {
			continue
		}
		names, old = append(names, id), append(old, f.old[k])
		f.room = append(f.room, -f.old[k].Length.MM())
		for i := range by {
			f.effect[i] = append(f.effect[i], by[i]/h)
		}
	}
	f.names, f.old = names, old
}

// trial is what the first step that moves anything does; nil if none does.
func (f *fitted) trial(id string, old pattern.Value) (by []float64, h float64) {
	for _, steps := range []float64{1, -1, 4, -4} {
		h = steps * f.step().MM()
		if old.Length.MM()+h < 0 {
			continue
		}
		if by, ok := f.change(f.moving(id, old, h)); ok && !still(by) {
			return by, h
		}
	}
	return nil, 0
}

func still(by []float64) bool {
	for _, x := range by {
		if math.Abs(x) > 1e-6 {
			return false
		}
	}
	return true
}

func (f *fitted) moving(id string, old pattern.Value, by float64) func(pattern.Job) pattern.Job {
	return func(job pattern.Job) pattern.Job {
		v := old
		v.Length = max(0, v.Length+measure.Length(by))
		return put(job, id, v)
	}
}

// job makes all changes of x.
func (f *fitted) set(x []float64) func(pattern.Job) pattern.Job {
	return func(job pattern.Job) pattern.Job {
		for j, by := range x {
			if by != 0 {
				job = f.moving(f.names[j], f.old[j], by)(job)
			}
		}
		return job
	}
}

// leaves is what a change leaves of each spot, and the whole of it.
func (f *fitted) leaves(x []float64) (left []float64, sum float64) {
	by, ok := f.change(f.set(x))
	if !ok {
		return nil, math.Inf(1)
	}
	left = make([]float64, len(by))
	for i := range by {
		left[i] = f.want[i] - by[i]
		sum += float64(f.weight[i] * f.weight[i] * left[i] * left[i])
	}
	return left, sum
}

// refine corrects the amounts by what the real draft leaves: the draft is not
// quite linear.
func (f *fitted) refine(columns []int, x []float64) {
	left, sum := f.leaves(x)
	for range 4 {
		if left == nil || len(columns) == 0 {
			return
		}
		next := append([]float64{}, x...)
		for i, more := range f.amounts(columns, left) {
			j := columns[i]
			next[j] = math.Max(next[j]+more, f.room[j])
		}
		l, s := f.leaves(next)
		if !(s < sum-1e-9) {
			return
		}
		copy(x, next)
		left, sum = l, s
	}
}

// snap brings every amount to whole steps of the tape, then tries a few steps
// either way as long as that leaves less.
func (f *fitted) snap(columns []int, x []float64) {
	step := f.step().MM()
	for _, j := range columns {
		x[j] = math.Max(math.Round(x[j]/step)*step, f.room[j])
	}
	_, sum := f.leaves(x)
	steps := []float64{step, -step, 4 * step, -4 * step}
	for better, rounds := true, 0; better && rounds < 3 && sum > explained; rounds++ {
		better = false
		for _, j := range columns {
			for _, by := range steps {
				was := x[j]
				if x[j] = math.Max(was+by, f.room[j]); math.Abs(x[j]) < 1e-9 {
					x[j] = 0
				}
				if _, s := f.leaves(x); s < sum-1e-9 {
					sum, better = s, true
					break
				}
				x[j] = was
			}
		}
		steps = steps[:2]
	}
}

// explained is so little that no step of the tape could better it, square
// millimetres.
const explained = 0.1

// told is the answer: changes, what each pin gets, and how well that is.
func (f *fitted) told(x []float64) Explanation {
	var e Explanation
	e.Title, e.Why = "What explains the pins", "It is the least change of inputs that accounts for what was pinned."
	e.Changes = f.changes(x)
	var said []string
	for i, spot := range f.spots {
		if f.pinned[i] {
			said = append(said, strings.ToLower(spot.Title[:1])+spot.Title[1:]+" "+spot.Says(measure.Length(f.want[i]/spot.gain)).In(f.u)+" "+f.u.String())
		}
	}
	e.Seen = "Pinned: " + strings.Join(said, "; ") + "."
	if len(e.Changes) == 0 {
		e.WhyNot = measure.Tell("no input of this draft accounts for it")
	} else {
		e.Proposal.work(f.sheet)
	}
	now := f.base
	if e.Sheet != nil {
		now = f.figures(e.Sheet)
	}
	var asked, left float64
	for i, spot := range f.spots {
		t := Told{spot, measure.Length(f.want[i] / spot.gain), measure.Length((now[i] - f.base[i]) / spot.gain)}
		switch {
		case f.pinned[i]:
			e.Told = append(e.Told, t)
			asked += float64(t.By * t.By)
			left += float64(t.Left() * t.Left())
		case math.Abs(t.Gives.MM()) > measure.Inch.MM()/16:
			e.Also = append(e.Also, t)
		}
	}
	e.Share = math.Max(0, 1-left/asked)
	e.How = e.how()
	return e
}

// changes are the inputs that differ, without those that come to the same value
// of themselves once the others have changed.
func (f *fitted) changes(x []float64) []Change {
	var out []Change
	for j, id := range f.names {
		if math.Abs(x[j]) < 1e-9 {
			continue
		}
		v := f.old[j]
		v.Length = max(0, v.Length+measure.Length(x[j]))
		rest := append([]float64{}, x...)
		rest[j] = 0
		if !own(f.sheet.Job, id) && !IsBody(id) {
			if w, ok := present(workroom.Draft(f.set(rest)(f.sheet.Job)), id); ok && same(w, v) {
				continue
			}
		}
		out = append(out, changed(f.sheet, id, f.old[j], v))
	}
	return out
}

// how says how well the change explains the pins.
func (e Explanation) how() measure.Sentence {
	worst := Told{}
	for _, t := range e.Told {
		if math.Abs(t.Left().MM()) > math.Abs(worst.Left().MM()) {
			worst = t
		}
	}
	over := worst.Left()
	switch {
	case !e.Possible():
		return measure.Tell("Nothing accounts for it.")
	case math.Abs(over.MM()) <= measure.Inch.MM()/32:
		return measure.Tell("It accounts for all that was pinned.")
	case e.Share >= 0.9:
		return measure.Tell("It accounts for nearly all; {} is left at \""+worst.Spot.Title+"\".", max(over, -over))
	case e.Share >= 0.5:
		return measure.Tell("It accounts for most of it; {} is left at \""+worst.Spot.Title+"\".", max(over, -over))
	}
	return measure.Tell("It accounts for little of it; {} is left at \""+worst.Spot.Title+"\". Look at the signs one by one.", max(over, -over))
}

// Compare is what a dress drafted one way would be pinned by to become one
// drafted another way, spot by spot.
func Compare(was, now *pattern.Sheet) ([]Told, error) {
	if !was.Complete || !now.Complete {
		return nil, &measure.Refusal{Read: "a draft that is not complete", Wrong: "there is nothing to compare yet", Works: "finish both first"}
	}
	var out []Told
	for _, spot := range spots {
		a, ok := spot.read(was)
		b, also := spot.read(now)
		if ok && also {
			out = append(out, Told{Spot: spot, Gives: measure.Length((b - a) / spot.gain)})
		}
	}
	return out, nil
}
