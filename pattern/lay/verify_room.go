package lay

import (
	"errors"
	"fmt"
	"sort"

	"chalkfold/pattern"
)

// verifySelvages: no point beyond the selvages or the fold, also where both
// edges meet in the middle.
func verifySelvages(p *Problem, l *Lay, q *Placed, _ *Item) error {
	c := &p.Cloth
	lo, hi := int64(0), c.Width/2-c.Edge
	switch {
	case c.Fold == Flat || q.Opened:
		lo, hi = c.Edge, c.Width-c.Edge
	case c.Fold == ToMiddle:
		hi = c.Width / 2
	case c.Fold == Across:
		lo, hi = c.Edge, c.Width-c.Edge
	case q.Beside: // beyond what lies double
		lo, hi = l.Depth, c.Width-l.Depth-c.Edge
	case c.Fold == OffCentre:
		hi = l.Depth - c.Edge
	}
	least, greatest := q.Outline[0].X, q.Outline[0].X
	for _, pt := range q.Outline {
		least, greatest = min(least, pt.X), max(greatest, pt.X)
		switch {
		case pt.X < lo:
			return fmt.Errorf("it lies %d steps over the near border", lo-pt.X)
		case pt.X > hi:
			return fmt.Errorf("it lies %d steps over the far border", pt.X-hi)
		case pt.Y < 0:
			return fmt.Errorf("it lies %d steps before the cut end", -pt.Y)
		}
	}
	if c.Fold == ToMiddle && !q.Opened {
		mid := c.Width / 4
		if least < mid+c.Edge && greatest > mid-c.Edge && !(least >= mid && c.Edge == 0) && !(greatest <= mid && c.Edge == 0) {
			return errors.New("it lies over the edges that meet in the middle")
		}
	}
	return nil
}

// verifyDepth: cloth that is folded off centre lies double no farther than
// half, and as far as was settled; what lies beside it is cut from one layer,
// and could be cut double.
func verifyDepth(p *Problem, l *Lay, q *Placed, it *Item) error {
	c := &p.Cloth
	if c.Fold != OffCentre {
		if q.Beside {
			return errors.New("it is to lie beside what is folded, and there is no such part")
		}
		return nil
	}
	switch {
	case l.Depth <= 0 || 2*l.Depth > c.Width:
		return fmt.Errorf("the cloth is folded in by %d steps of %d", l.Depth, c.Width)
	case c.Depth > 0 && l.Depth != c.Depth:
		return fmt.Errorf("the cloth is folded in by %d steps and not by %d", l.Depth, c.Depth)
	case q.Beside && (q.OnFold || q.Opened || q.Wasted || it.Cut == pattern.OnFold):
		return errors.New("it lies beside the double part where it does not belong")
	}
	return nil
}

// verifyRoom: no piece beyond the end, and each in its part of the cloth.
func verifyRoom(p *Problem, l *Lay, q *Placed) error {
	name := p.Items[q.Item].name()
	end := l.Length
	if p.Cloth.Fold == Across { // double from the fold on, so it takes that much more
		end = l.Length - l.Folded
		if l.Folded <= 0 || end < l.Folded {
			return fmt.Errorf("the cloth is folded across at %d of %d steps", l.Folded, l.Length)
		}
	}
	for _, pt := range q.Outline {
		switch {
		case pt.Y > end:
			return fmt.Errorf("%s %d: it lies %d steps beyond the end", name, q.Copy, pt.Y-end)
		case q.Opened && pt.Y < l.Folded:
			return fmt.Errorf("%s %d: it is to lie opened and lies in the folded part", name, q.Copy)
		case !q.Opened && p.Cloth.Fold != Flat && pt.Y > l.Folded:
			return fmt.Errorf("%s %d: it is to lie folded and lies in the opened part", name, q.Copy)
		}
	}
	return nil
}

// verifyFlaws: the piece and the flaw share no inside. On folded cloth a flaw
// in either layer counts.
func verifyFlaws(p *Problem, l *Lay, q *Placed, _ *Item) error {
	c := &p.Cloth
	if c.Fold == Across && len(c.Flaws) > 0 {
		return errors.New("where the flaws lie in cloth folded across is not known")
	}
	for i, f := range c.Flaws {
		corners := func(x0, x1 int64) []Point {
			return []Point{{x0, f.Along}, {x1, f.Along}, {x1, f.Along + f.Length}, {x0, f.Along + f.Length}}
		}
		left, right := max(f.Across, 0), min(f.Across+f.Width, c.Width)
		// Each layer of the folded cloth shows the flaw at its own place.
		var seen [][2]int64
		switch {
		case c.Fold == Flat || q.Opened:
			seen = append(seen, [2]int64{left, right})
		case c.Fold == Lengthwise:
			h := c.Width / 2
			seen = append(seen, [2]int64{left - h, right - h}, [2]int64{h - right, h - left})
		case c.Fold == OffCentre:
			d := l.Depth
			seen = append(seen, [2]int64{left - d, right - d}, [2]int64{d - right, d - left})
		default:
			k := c.Width / 4
			seen = append(seen, [2]int64{left - k, right - k}, [2]int64{k - right, min(k-left, k)}, [2]int64{max(5*k-right, k), 5*k - left})
		}
		for _, s := range seen {
			if s[0] < s[1] && !apart(q.Outline, corners(s[0], s[1]), 0) {
				return fmt.Errorf("it lies over flaw %d", i+1)
			}
		}
	}
	return nil
}

// verifyPairs: no two pieces overlap or stand closer than the gap.
func verifyPairs(p *Problem, l *Lay) []error {
	type boxed struct {
		at     int
		lo, hi Point
	}
	list := make([]boxed, len(l.Placed))
	for i := range l.Placed {
		lo, hi := bounds(l.Placed[i].Outline)
		list[i] = boxed{i, lo, hi}
	}
	sort.SliceStable(list, func(a, b int) bool { return list[a].lo.Y < list[b].lo.Y })
	var out []error
	gap := p.Cloth.Gap
	for i := range list {
		for j := i + 1; j < len(list) && list[j].lo.Y < list[i].hi.Y+gap; j++ {
			a, b := &l.Placed[list[i].at], &l.Placed[list[j].at]
			if !apart(a.Outline, b.Outline, gap) {
				out = append(out, fmt.Errorf("%s %d and %s %d overlap or stand too close",
					p.Items[a.Item].name(), a.Copy, p.Items[b.Item].name(), b.Copy))
			}
		}
	}
	return out
}

// verifyCount: every piece is laid, and none more often than wanted.
func verifyCount(p *Problem, l *Lay) []error {
	got := make([]int, len(p.Items))
	seen := map[[2]int]bool{}
	var out []error
	for i := range l.Placed {
		q := &l.Placed[i]
		if q.Item < 0 || q.Item >= len(p.Items) {
			continue
		}
		if seen[[2]int{q.Item, q.Copy}] {
			out = append(out, fmt.Errorf("%s %d is laid twice", p.Items[q.Item].name(), q.Copy))
		}
		seen[[2]int{q.Item, q.Copy}] = true
		it := &p.Items[q.Item]
		got[q.Item]++
		if q.Layers == 2 && !q.OnFold && !q.Wasted && (q.Copy < it.Count || it.Cut != pattern.Single) {
			got[q.Item]++
			seen[[2]int{q.Item, q.Copy + 1}] = true
			if it.Cut == pattern.Single && !mirrorsItself(it.Outline) {
				out = append(out, fmt.Errorf("%s %d: two alike cannot come from two layers", it.name(), q.Copy))
			}
		}
	}
	for i := range p.Items {
		want := p.Items[i].Count
		more := want
		if p.Items[i].Cut == pattern.Pair && p.Cloth.Fold != Flat {
			more = (want + 1) / 2 * 2
			if p.Cloth.Fold != OffCentre { // there one may lie single
				want = more
			}
		}
		if got[i] != want && got[i] != more {
			out = append(out, fmt.Errorf("%s: %d are laid and %d are wanted", p.Items[i].name(), got[i], want))
		}
	}
	return out
}

func mirrorsItself(o []Point) bool {
	lo, hi := o[0].X, o[0].X
	known := map[Point]bool{}
	for _, c := range o {
		lo, hi = min(lo, c.X), max(hi, c.X)
		known[c] = true
	}
	for _, c := range o {
		if !known[Point{lo + hi - c.X, c.Y}] {
			return false
		}
	}
	return true
}

// verifyPins: what she pinned has not moved by a step.
func verifyPins(p *Problem, l *Lay) []error {
	var out []error
	for _, pin := range p.Pins {
		stays := false
		for _, q := range l.Placed {
			if q.Item == pin.Item && q.Copy == pin.Copy {
				stays = q.At == pin.At && q.Turn == pin.Turn && q.Mirror == pin.Mirror && q.Opened == pin.Opened
			}
		}
		if !stays {
			out = append(out, fmt.Errorf("%s %d was pinned and has moved", p.Items[pin.Item].name(), pin.Copy))
		}
	}
	return out
}

// verifyRepeats: match points lie at equal phase of the repeat.
func verifyRepeats(p *Problem, l *Lay) []error {
	c := &p.Cloth
	var out []error
	first := int64(-1)
	for i := range l.Placed {
		q := &l.Placed[i]
		it := &p.Items[q.Item]
		at := drafted(it.Match.At, q)
		if c.RepeatAlong > 0 && it.Match.Along {
			phase := mod(at.Y, c.RepeatAlong)
			if first < 0 {
				first = phase
			}
			if c.Fold == Across && mod(2*phase, c.RepeatAlong) != 0 {
				out = append(out, fmt.Errorf("%s %d: its match point lies at another phase in the other layer", it.name(), q.Copy))
			}
			if phase != first {
				out = append(out, fmt.Errorf("%s %d: its match point lies %d steps off the repeat along", it.name(), q.Copy, phase-first))
			}
		}
		if c.RepeatAcross > 0 && it.Match.Across && !q.OnFold {
			stripe := int64(0)
			if c.Stripe == "midway" {
				stripe = c.RepeatAcross / 2
			}
			if off := mod(at.X-stripe, c.RepeatAcross); off != 0 {
				out = append(out, fmt.Errorf("%s %d: its match point lies %d steps off the stripe", it.name(), q.Copy, off))
			}
		}
	}
	return out
}

func mod(a, m int64) int64 { return ((a % m) + m) % m }
