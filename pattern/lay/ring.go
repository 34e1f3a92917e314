package lay

import "sort"

// selfCrossing finds two edges of an outline that share more than the corner
// between them. The tests are exact; edges are swept along the axis on which
// they are short, so that a fine comb is read quickly.
func selfCrossing(o []Point) (i, j int, found bool) {
	return firstPair(o, func(i, j int) bool { return shareMore(o, i, j) })
}

// properCrossing finds two edges that pass through each other.
func properCrossing(o []Point) (i, j int, found bool) {
	n := len(o)
	return firstPair(o, func(i, j int) bool { return crossing(o[i], o[(i+1)%n], o[j], o[(j+1)%n]) })
}

// firstPair finds the first pair of edges, in the order of the sweep, whose
// boxes meet and of which hit is true.
func firstPair(o []Point, hit func(i, j int) bool) (i, j int, found bool) {
	n := len(o)
	type stretch struct {
		lo, hi, from, to int64 // along the axis, and across it
		at               int
	}
	var wide, tall float64
	for i, p := range o {
		d := o[(i+1)%n].minus(p)
		wide += float64(max(d.X, -d.X))
		tall += float64(max(d.Y, -d.Y))
	}
	list := make([]stretch, n)
	for i, p := range o {
		q := o[(i+1)%n]
		s := stretch{min(p.X, q.X), max(p.X, q.X), min(p.Y, q.Y), max(p.Y, q.Y), i}
		if wide > tall {
			s.lo, s.hi, s.from, s.to = s.from, s.to, s.lo, s.hi
		}
		list[i] = s
	}
	sort.Slice(list, func(a, b int) bool {
		if list[a].lo != list[b].lo {
			return list[a].lo < list[b].lo
		}
		return list[a].at < list[b].at
	})
	for a := range list {
		for b := a + 1; b < n && list[b].lo <= list[a].hi; b++ {
			if list[b].from > list[a].to || list[b].to < list[a].from {
				continue
			}
			i, j := min(list[a].at, list[b].at), max(list[a].at, list[b].at)
			if hit(i, j) {
				return i, j, true
			}
		}
	}
	return 0, 0, false
}

// shareMore says whether edges i < j share a point that is not the corner
// between neighbours.
func shareMore(o []Point, i, j int) bool {
	n := len(o)
	a, b, c, d := o[i], o[(i+1)%n], o[j], o[(j+1)%n]
	switch {
	case j == i+1:
		// They share b = c; more only where one runs back over the other.
		return turning(a, b, d) == 0 && (onEdge(a, b, d) || onEdge(c, d, a) || a == d)
	case i == 0 && j == n-1:
		return turning(c, d, b) == 0 && (onEdge(c, d, b) || onEdge(a, b, c) || c == b)
	}
	return crossing(a, b, c, d) || a == c || a == d || b == c || b == d ||
		onEdge(a, b, c) || onEdge(a, b, d) || onEdge(c, d, a) || onEdge(c, d, b)
}

// plainRing says whether the outline neither crosses nor touches itself.
func plainRing(o []Point) bool {
	_, _, found := selfCrossing(o)
	return !found && len(o) > 2
}
