package card

// chain is one line of one run as it is chalked: its marks in order and which
// of the run's nodes each of them is (-1 for those that the curve needs).
type chain struct {
	marks []stop
	node  []int
}

// chains sets the marks of both lines of a run: the cutting line's first, then
// the stitching line's, at the same levels where that will do.
func (m *marking) chains(r *run, nodes []node) (cut, stitch chain) {
	cut = m.chain(r, lineCut, nodes, func(a, b *node) setter {
		return func(l line, all []stop, bound float64) ([]stop, bool) {
			return fewest(l, all, bound, m.echoing(r, a, b, all, bound))
		}
	})
	shared := m.echo(r, cut)
	stitch = m.chain(r, lineStitch, nodes, func(a, b *node) setter {
		return func(l line, all []stop, bound float64) ([]stop, bool) {
			given := between(all[0], all[len(all)-1], shared)
			if len(given) > 2 {
				if marks, ok := fewest(l, given, bound, nil); ok {
					return marks, true
				}
			}
			for i := range all {
				for _, s := range given[1 : len(given)-1] {
					all[i].shared = all[i].shared || all[i].at == s.at
				}
			}
			return fewest(l, all, bound, func(_, j int) int {
				if all[j].shared {
					return 0
				}
				return 1
			})
		}
	})
	return cut, stitch
}

// setter chooses marks of the stops between two places of a line.
type setter func(l line, all []stop, bound float64) ([]stop, bool)

// chain sets the marks of one line through the nodes of the run.
func (m *marking) chain(r *run, which int, nodes []node, set func(a, b *node) setter) chain {
	l := r.line(which)
	bound := m.grid.bound.MM() - flat
	var out chain
	if l.empty() {
		return out
	}
	fixed := fixedOn(nodes, which)
	for k := 0; k+1 < len(fixed); k++ {
		from, to := &nodes[fixed[k]], &nodes[fixed[k+1]]
		a, b := *from.on(which), *to.on(which)
		marks, ok := []stop{a, b}, true
		if !holds(l, marks, bound) {
			marks, ok = set(from, to)(l, stops(l, m.grid, a, b), bound)
		}
		if !ok {
			// Only a corner that is rounded in drawing can lie so far off
			// that no chord to it holds: it is then told, not touched.
			if i := looser(nodes, fixed, k); i >= 0 {
				nodes[fixed[i]].aside[which] = true
				return m.chain(r, which, nodes, set)
			}
			marks = []stop{a, b}
		}
		if len(out.marks) == 0 {
			out.marks, out.node = []stop{a}, []int{fixed[k]}
		}
		for _, s := range marks[1:] {
			out.marks, out.node = append(out.marks, s), append(out.node, -1)
		}
		out.node[len(out.node)-1] = fixed[k+1]
	}
	return out
}

// fixedOn lists the nodes that are marks of this line, in its order.
func fixedOn(nodes []node, which int) []int {
	var out []int
	for i := range nodes {
		s := nodes[i].on(which)
		if s == nil || nodes[i].aside[which] {
			continue
		}
		if n := len(out); n > 0 {
			last := nodes[out[n-1]].on(which)
			if s.s <= last.s || s.at == last.at {
				if i == len(nodes)-1 && n > 1 {
					out[n-1] = i // the end of the run wins
				}
				continue
			}
		}
		out = append(out, i)
	}
	return out
}

// looser finds which of the two ends of a span may be set aside.
func looser(nodes []node, fixed []int, k int) int {
	for _, i := range []int{k, k + 1} {
		if nodes[fixed[i]].round > 0 {
			return i
		}
	}
	return -1
}

// between are the shared stops that lie between a and b, with both.
func between(a, b stop, shared []stop) []stop {
	out := []stop{a}
	for _, s := range shared {
		if last := out[len(out)-1]; s.s > last.s && s.s < b.s && s.at != last.at && s.at != b.at {
			s.shared = true
			out = append(out, s)
		}
	}
	return append(out, b)
}

// echo carries the marks that the cutting curve needed over to the stitching
// line: the same level where the line goes down, the same distance out where it
// goes across.
func (m *marking) echo(r *run, cut chain) []stop {
	var out []stop
	for i, n := range cut.node {
		if n >= 0 {
			continue
		}
		if s := m.partner(r.cut, &cut.marks[i], r.stitch); s != nil {
			out = append(out, *s)
		}
	}
	return out
}

// echoing makes the fuss of a cutting chord: one if the stitching line could not
// be chalked at the same levels. So of equally few cutting marks those are
// taken that serve both lines.
func (m *marking) echoing(r *run, from, to *node, all []stop, bound float64) func(i, j int) int {
	if r.stitch.empty() || from.stitch == nil || to.stitch == nil {
		return nil
	}
	echo := make([]*stop, len(all))
	for i := range all {
		echo[i] = m.partner(r.cut, &all[i], r.stitch)
	}
	echo[0], echo[len(all)-1] = from.stitch, to.stitch
	return func(i, j int) int {
		if echo[i] == nil || echo[j] == nil || echo[i].s >= echo[j].s {
			return 1
		}
		if _, ok := stray(r.stitch, *echo[i], *echo[j], bound); !ok {
			return 1
		}
		return 0
	}
}
