package lay

import (
	"fmt"

	"chalkfold/measure"
	"chalkfold/pattern"
)

// builder turns a problem into strips to pack.
type builder struct {
	p     *Problem
	cloth *Cloth
	phase int64 // of the repeat along
	layout
	grid   grid // steps on which places lie; 0: anywhere
	simple [][]Point
	halves [][]Point // of single pieces that are their own mirror image
	kinds  *kinds
}

// way is how a piece that is cut once is laid on folded cloth.
type way int8

const (
	inOpened way = iota // in a part opened flat, one layer
	wasting             // two layers, the second one wasted
	asHalf              // its own mirror image: as half, on the fold
	besides             // in the single part of cloth folded off centre
)

// plan is one model of the whole lay: the folded part and, where single
// pieces ask for it, a part beyond that is opened flat.
type plan struct {
	parts  []*strip
	opened bool // parts[1] is opened
	ways   []way
	phase  int64
	layout
}

func newBuilder(p *Problem) *builder {
	b := &builder{p: p, cloth: &p.Cloth, kinds: &kinds{}}
	for i := range p.Items {
		it := &p.Items[i]
		b.simple = append(b.simple, forSearch(it.Outline, cornersFor(len(p.Items))))
		var half []Point
		if it.Cut == pattern.Single && p.Cloth.Warps() {
			half = halved(it.Outline)
		}
		b.halves = append(b.halves, half)
	}
	return b
}

// single names a piece that is cut once.
type single struct{ item, copy int }

// singles lists the pieces cut once. Two alike that are their own mirror image
// come from two layers and are not among them.
func (b *builder) singles() []single {
	var out []single
	if b.cloth.Fold == Flat {
		return nil
	}
	for i := range b.p.Items {
		it := &b.p.Items[i]
		if it.Cut != pattern.Single && !(it.Cut == pattern.OnFold && b.cloth.Fold == Across) {
			continue
		}
		for c := 1; c <= it.Count; c++ {
			if !b.twoAlike(i, c) && b.pin(i, c) == nil {
				out = append(out, single{i, c})
			}
		}
	}
	return out
}

// twoAlike says whether this copy of a single item is cut from two layers
// together with another.
func (b *builder) twoAlike(item, copy int) bool {
	it := &b.p.Items[item]
	_, own := ownMirror(it.Outline)
	if it.Cut == pattern.OnFold { // opened it is, and lies so where the fold is of no use to it
		own = b.cloth.Fold == Across
	}
	if !own || b.cloth.Fold == Flat {
		return false
	}
	return copy <= it.Count/2*2
}

const mostMixed = 4 // above so many single pieces only all one way or the other

// ways lists for each plan how each single piece is laid.
func (b *builder) ways(singles []single) [][]way {
	if len(singles) == 0 {
		return [][]way{nil}
	}
	if b.cloth.Fold == OffCentre {
		ws := make([]way, len(singles))
		for k, s := range singles {
			ws[k] = b.wayBeside(s.item)
		}
		return [][]way{ws}
	}
	// The second choice of a piece: as half where it can be, else wasting.
	second := make([]way, len(singles))
	for k, s := range singles {
		second[k] = wasting
		if b.halves[s.item] != nil {
			second[k] = asHalf
		}
	}
	mixes := 1 << len(singles)
	if len(singles) > mostMixed {
		mixes = 2
	}
	var out [][]way
	for m := range mixes {
		ws := make([]way, len(singles))
		for k := range ws {
			if m>>k&1 != 0 || mixes == 2 && m == 1 {
				ws[k] = second[k]
			}
		}
		out = append(out, ws)
	}
	if len(b.cloth.Flaws) > 0 {
		// Where the opened part begins is not known beforehand, so neither is
		// what the flaws bar in it: two layers then.
		out = out[len(out)-1:]
	}
	return out
}

// phasesTried are the places of the repeat, against the cut end, that are
// tried.
const phasesTried = 8

func (b *builder) phases() []int64 {
	if b.cloth.RepeatAlong == 0 {
		return []int64{0}
	}
	var out []int64
	if b.cloth.Fold == Across {
		// The repeat is the same in both layers only where the fold lies on its
		// middle, or midway.
		out = append(out, 0)
		if b.cloth.RepeatAlong%2 == 0 {
			out = append(out, b.cloth.RepeatAlong/2)
		}
		return out
	}
	for k := range int64(phasesTried) {
		out = append(out, k*b.cloth.RepeatAlong/phasesTried)
	}
	return out
}

func (b *builder) plans() ([]plan, error) {
	singles := b.singles()
	var out []plan
	layouts, problem := b.layouts()
	if problem != nil {
		return nil, problem
	}
	for _, phase := range b.phases() {
		b.phase = phase
		for _, b.layout = range layouts {
			for _, ws := range b.ways(singles) {
				p, err := b.plan(singles, ws)
				if err != nil {
					if problem == nil {
						problem = err
					}
					continue
				}
				out = append(out, p)
			}
		}
	}
	if len(out) == 0 {
		return nil, problem
	}
	return out, nil
}

// plan builds the strips of one mix.
func (b *builder) plan(singles []single, ws []way) (plan, error) {
	c := b.cloth
	s := &strip{low: 0, width: c.Width/2 - c.Edge, gap: float64(c.Gap), kinds: b.kinds}
	switch c.Fold {
	case Flat:
		s.low, s.width = c.Edge, c.Width-c.Edge
	case ToMiddle:
		s.width = c.Width / 2
	case OffCentre:
		s.width = b.single().to
	case Across:
		s.low, s.width = c.Edge, c.Width-c.Edge
	}
	pl := plan{parts: []*strip{s}, ways: ws, phase: b.phase, layout: b.layout}
	open := &strip{opened: true, low: c.Edge, width: c.Width - c.Edge, gap: float64(c.Gap), kinds: b.kinds}
	way := map[single]way{}
	for k, one := range singles {
		way[one] = ws[k]
	}
	for i := range b.p.Items {
		it := &b.p.Items[i]
		for copy := 1; copy <= it.Count; copy++ {
			if b.pin(i, copy) != nil {
				continue
			}
			into, m, skip := b.member(s, open, i, copy, way)
			if skip {
				continue
			}
			if err := b.tooWide(into, &m); err != nil {
				return plan{}, err
			}
			into.members = append(into.members, m)
		}
	}
	if err := b.fixtures(s); err != nil {
		return plan{}, err
	}
	if len(open.members) > 0 {
		open.moving = len(open.members)
		pl.parts, pl.opened = append(pl.parts, open), true
	}
	return pl, nil
}

// member makes the member of one copy; skip: it is cut with another.
func (b *builder) member(s, open *strip, item, copy int, ways map[single]way) (into *strip, m member, skip bool) {
	it := &b.p.Items[item]
	flat := b.cloth.Fold == Flat
	m = member{item: item, copy: copy, layers: 2, group: item}
	across := zone{s.low, s.width}
	if b.cloth.Fold == OffCentre {
		across = b.double()
	}
	outline, simple, how := it.Outline, b.simple[item], freely
	into = s
	switch {
	case flat:
		m.layers = 1
		switch {
		case it.Cut == pattern.OnFold:
			outline, how = opened(outline), wholly
		case it.Cut == pattern.Pair && copy%2 == 0:
			how = freelyMirrored
		}
	case it.Cut == pattern.OnFold && b.cloth.Fold != Across:
		m.onFold, how = true, onTheFold
	case b.cloth.Fold == OffCentre && (it.Cut == pattern.Pair || b.twoAlike(item, copy)):
		if m.beside, skip = b.liesBeside(item, copy); skip {
			return nil, m, true
		}
		if m.beside && it.Cut == pattern.Pair && copy%2 == 0 {
			how = freelyMirrored
		}
	case it.Cut == pattern.Pair || b.twoAlike(item, copy):
		// An odd copy brings its mirror image with it.
		if copy%2 == 0 {
			return nil, m, true
		}
		if it.Cut == pattern.OnFold {
			outline, how = opened(outline), wholly
		}
	default:
		if it.Cut == pattern.OnFold { // on cloth folded across
			outline, how = opened(outline), wholly
		}
		switch ways[single{item, copy}] {
		case inOpened:
			into, m.layers = open, 1
			across = zone{open.low, open.width}
		case besides:
			m.beside = true
		case asHalf:
			outline = b.halves[item]
			simple = forSearch(outline, cornersFor(len(b.p.Items)))
			m.onFold, how = true, onTheFold
		case wasting:
			m.wasted = true
		}
	}
	if how == wholly {
		simple = forSearch(outline, cornersFor(len(b.p.Items)))
	}
	if m.beside {
		m.layers, across = 1, b.single()
	}
	m.room = across.wide()
	if b.cloth.Fold == ToMiddle && into == s {
		m.room = b.cloth.Width/4 - b.cloth.Edge
	}
	m.stances = b.stances(across, it, simple, outline, how)
	into.area += float64(twiceArea(outline)) / 2
	return into, m, false
}

// tooWide refuses a member that fits at no allowed turn, with the least width
// that would do; stances that do not fit are left out.
func (b *builder) tooWide(s *strip, m *member) error {
	var fit []stance
	least := int64(most)
	for _, st := range m.stances {
		lo, hi := bounds(st.outline)
		least = min(least, hi.X-lo.X)
		if m.onFold {
			if hi.X-lo.X <= m.room {
				fit = append(fit, st)
			}
		} else if st.gx.has(st.xlo, st.xhi) && hi.X-lo.X <= m.room {
			fit = append(fit, st)
		}
	}
	if len(fit) > 0 {
		m.stances = fit
		return nil
	}
	it := &b.p.Items[m.item]
	cloth, works, need := "the cloth", "", least+2*b.cloth.Edge
	switch {
	case s.opened || b.cloth.Fold == Flat:
	case b.cloth.Fold == Across:
		cloth, works = "the cloth folded across", "lay it flat, or "
	case b.cloth.Fold == OffCentre && m.beside:
		cloth, works, need = "the single part", "lay it flat, or ", least+2*b.depth+b.cloth.Edge
	case b.cloth.Fold == OffCentre:
		cloth, works, need = "the double part", "lay it flat, or ", 2*(least+b.cloth.Edge)
	case b.cloth.Fold == ToMiddle:
		cloth, works, need = "each side of the cloth folded to the middle", "fold it lengthwise, or ", 4*(least+b.cloth.Edge)
	default:
		cloth, works, need = "the folded cloth", "lay it flat, or ", 2*(least+b.cloth.Edge)
	}
	u := b.p.Unit
	wrong := "it fits at no turn that the grain allows"
	if least <= m.room {
		wrong = "its match point cannot lie on the stripe"
	}
	return &measure.Refusal{
		Where: it.name(),
		Read:  fmt.Sprintf("%s across, %s %s", u.Say(length(least)), cloth, u.Say(length(m.room))),
		Wrong: wrong,
		Works: works + "buy cloth of " + u.Say(length(need).Up(u.Length(1))),
	}
}

func length(steps int64) measure.Length { return measure.Length(float64(steps) / PerMM) }

// fixtures adds what does not move: pinned pieces, flaws, and where both edges
// are folded to the middle the parting there.
func (b *builder) fixtures(s *strip) error {
	s.moving = len(s.members)
	for k := range b.p.Pins {
		pin := &b.p.Pins[k]
		m := member{item: pin.Item, copy: pin.Copy, layers: pin.Layers, onFold: pin.OnFold, wasted: pin.Wasted, beside: pin.Beside, fixed: true}
		b.fix(s, m, pin.Outline)
	}
	for _, f := range b.cloth.Flaws {
		for _, r := range b.cloth.flawOn(f, b.depth) {
			b.fix(s, member{item: -1, fixed: true}, box(r[0], r[1], f.Along, f.Along+f.Length))
		}
	}
	if b.cloth.Fold == ToMiddle {
		e := max(b.cloth.Edge, 1)
		mid := b.cloth.Width / 4
		b.fix(s, member{item: -1, fixed: true}, box(mid-e, mid+e, 0, b.endless()))
	}
	return nil
}

func (b *builder) fix(s *strip, m member, outline []Point) {
	lo, _ := bounds(outline)
	m.at = toSpot(lo)
	m.stances = []stance{{outline: outline, simple: outline, gx: grating{0, 1}, gy: grating{0, 1}}}
	s.members = append(s.members, m)
}

// endless is a length that no lay passes.
func (b *builder) endless() int64 {
	var sum int64
	for i := range b.p.Items {
		lo, hi := bounds(b.p.Items[i].Outline)
		d := hi.minus(lo)
		sum += int64(b.p.Items[i].Count) * (2*max(d.X, d.Y) + b.cloth.Gap + 2*b.cloth.RepeatAlong + 2*b.cloth.Tape)
	}
	for _, f := range b.cloth.Flaws {
		sum += max(f.Along+f.Length, 0)
	}
	for _, p := range b.p.Pins {
		_, hi := bounds(p.Outline)
		sum += max(hi.Y, 0)
	}
	return min(sum, 1<<40)
}

// flawOn is where a flaw lies across the folded cloth, in one or more strips.
func (c Cloth) flawOn(f Flaw, depth int64) [][2]int64 {
	l, r := max(f.Across, 0), min(f.Across+f.Width, c.Width)
	if l >= r {
		return nil
	}
	w := c.Width
	var out [][2]int64
	add := func(a, b int64) {
		if a < b {
			out = append(out, [2]int64{a, b})
		}
	}
	switch c.Fold {
	case Lengthwise:
		add(max(w/2-r, 0), w/2-l) // the left half, fold at the middle
		add(max(l-w/2, 0), r-w/2) // the right half
	case OffCentre:
		add(max(l-depth, 0), r-depth) // what lies below
		add(max(depth-r, 0), depth-l) // what is folded over
	case ToMiddle:
		add(max(l-w/4, 0), min(r-w/4, w/2))       // the middle half lies below
		add(max(w/4-r, 0), w/4-l)                 // the left quarter on it
		add(max(5*w/4-r, w/4), min(5*w/4-l, w/2)) // the right quarter
	default:
		add(l, r)
	}
	return out
}

func box(x0, x1, y0, y1 int64) []Point {
	return []Point{{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}}
}

func (b *builder) pin(item, copy int) *Placed {
	for k := range b.p.Pins {
		if p := &b.p.Pins[k]; p.Item == item && p.Copy == copy {
			return p
		}
	}
	return nil
}
