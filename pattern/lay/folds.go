package lay

import (
	"slices"

	"chalkfold/measure"
	"chalkfold/pattern"
)

// layout is one way to fold and to divide the pieces: how deep cloth is folded
// off centre, and whether pairs lie in its single part, one beside the other.
type layout struct {
	depth  int64
	beside bool
}

// depthsTried is how many depths of a fold off centre are tried at most.
const depthsTried = 4

// layouts are the ways to fold that are tried; of most folds there is one.
func (b *builder) layouts() ([]layout, error) {
	switch b.cloth.Fold {
	case OffCentre:
		return b.offCentre()
	case Across:
		return []layout{{}}, b.checkAcross()
	}
	return []layout{{}}, nil
}

// checkAcross refuses what cannot lie on cloth that is folded across.
func (b *builder) checkAcross() error {
	if len(b.cloth.Flaws) > 0 {
		return &measure.Refusal{
			Where: b.p.where(), Read: "flaws, and the cloth folded across",
			Wrong: "where they come to lie in the other layer hangs on where the fold is", Works: "fold it lengthwise, or lay it flat",
		}
	}
	if len(b.p.Pins) > 0 || b.anyDouble() {
		return nil
	}
	return b.nothingDouble()
}

func (b *builder) nothingDouble() error {
	return &measure.Refusal{Where: b.p.where(), Read: "no piece that is cut double", Wrong: "the fold would be of no use", Works: "lay it flat"}
}

// anyDouble says whether any piece comes from two layers off a fold.
func (b *builder) anyDouble() bool {
	for i := range b.p.Items {
		if b.p.Items[i].Cut == pattern.Pair || b.twoAlike(i, 1) {
			return true
		}
	}
	return false
}

// offCentre lists how far in the cloth may be folded: as far as the widest
// piece on the fold needs, as the pairs need, or both side by side; at each
// depth the pairs lie double, or beside in the single part.
func (b *builder) offCentre() ([]layout, error) {
	widest, onFold := int64(0), ""
	var pairs []int64
	for i := range b.p.Items {
		it := &b.p.Items[i]
		switch {
		case it.Cut == pattern.OnFold:
			if _, hi := bounds(it.Outline); hi.X > widest {
				widest, onFold = hi.X, it.name()
			}
		case it.Cut == pattern.Pair || b.twoAlike(i, 1):
			pairs = append(pairs, b.least(it))
		}
	}
	for k := range b.p.Pins {
		if q := &b.p.Pins[k]; q.OnFold {
			_, hi := bounds(q.Outline)
			widest = max(widest, hi.X)
		}
	}
	var need []int64
	if widest > 0 {
		need = append(need, widest)
	}
	for _, w := range pairs {
		need = append(need, max(w, widest))
		if widest > 0 {
			need = append(need, widest+b.cloth.Gap+w)
		}
	}
	var depths []int64
	for _, n := range need {
		if d := b.cloth.onTapeAtLeast(n + b.cloth.Edge); 2*d <= b.cloth.Width {
			depths = append(depths, d)
		}
	}
	slices.Sort(depths)
	depths = few(slices.Compact(depths))
	if d := b.cloth.Depth; d > 0 {
		depths = []int64{d}
	}
	switch {
	case len(need) == 0 && b.cloth.Depth == 0:
		return nil, b.nothingDouble()
	case len(depths) == 0:
		where, read := onFold, b.p.Unit.Say(length(widest))+" across"
		if where == "" {
			where, widest = b.p.where(), slices.Min(pairs)
			read = "pairs " + b.p.Unit.Say(length(widest)) + " across and more"
		}
		return nil, &measure.Refusal{
			Where: where, Read: read + ", half the cloth " + b.p.Unit.Say(length(b.cloth.Width/2-b.cloth.Edge)),
			Wrong: "no more than half can lie double", Works: "lay it flat, or buy cloth of " + b.p.Unit.Say(length(2*(widest+b.cloth.Edge)).Up(b.p.Unit.Length(1))),
		}
	}
	var out []layout
	for _, d := range depths {
		out = append(out, layout{d, false})
		if widest > 0 && len(pairs) > 0 {
			out = append(out, layout{d, true})
		}
	}
	return out, nil
}

// few keeps the first, the last and some between.
func few(all []int64) []int64 {
	if len(all) <= depthsTried {
		return all
	}
	var out []int64
	for k := range depthsTried {
		out = append(out, all[k*(len(all)-1)/(depthsTried-1)])
	}
	return out
}

// least is how wide a piece is at least at the turns that it may take.
func (b *builder) least(it *Item) int64 {
	least := int64(most)
	for _, t := range b.turns(it, false) {
		lo, hi := bounds(turned(it.Outline, t))
		least = min(least, hi.X-lo.X)
	}
	return least
}

// onTapeAtLeast is the next whole step of the tape.
func (c Cloth) onTapeAtLeast(v int64) int64 {
	if c.Tape > 0 {
		return (v + c.Tape - 1) / c.Tape * c.Tape
	}
	return v
}

// zone is where across a piece may lie.
type zone struct{ from, to int64 }

func (z zone) wide() int64 { return z.to - z.from }

// double and single are the zones of cloth folded off centre.
func (b *builder) double() zone { return zone{0, b.depth - b.cloth.Edge} }

func (b *builder) single() zone { return zone{b.depth, b.cloth.Width - b.depth - b.cloth.Edge} }

// liesBeside says whether a copy of what can be cut double is cut from the
// single part of cloth folded off centre; skip: it is cut with its twin.
func (b *builder) liesBeside(item, copy int) (beside, skip bool) {
	twin := copy + 1
	if copy%2 == 0 {
		twin = copy - 1
	}
	if pin := b.pin(item, twin); pin != nil {
		return pin.Beside, !pin.Beside
	}
	if b.least(&b.p.Items[item]) > b.double().wide() || b.beside && b.least(&b.p.Items[item]) <= b.single().wide() {
		return true, false
	}
	return false, copy%2 == 0
}

// single member ways on cloth folded off centre: beside where there is room,
// else in a part that is opened, or where flaws bar that, in two layers.
func (b *builder) wayBeside(item int) way {
	switch {
	case b.least(&b.p.Items[item]) <= b.single().wide():
		return besides
	case len(b.cloth.Flaws) > 0:
		return wasting
	}
	return inOpened
}
