package geom

// Join makes two edges meet that follow one another round a corner. Where they
// cross they are cut at the crossing; where they do not reach each other they
// are lengthened by straight lines along their ends to where these meet, or one
// of them to where it meets the other. A meeting farther than limit from both
// ends is not taken: the corner is cut blunt, by a straight line from the end
// of a to the start of b, appended to a.
func Join(a, b Path, limit float64) (Path, Path) {
	if len(a) == 0 || len(b) == 0 {
		return a, b
	}
	end, start := a.End(), b.Start()
	if end.Near(start, weld) {
		return a, b.startingAt(end)
	}
	mitre, reach, found := lengthened(a, b, limit)
	if s, t, lost, ok := cornerCrossing(a, b); ok && !(found && reach < lost) {
		a, _ = a.Split(s)
		_, b = b.Split(t)
		return a, b.startingAt(a.End())
	}
	if found {
		return a.to(mitre), b.from(mitre)
	}
	if x, y, ok := reaching(a, b, limit); ok {
		return x, y
	}
	if x, y, ok := reaching(b.Reverse(), a.Reverse(), limit); ok {
		return y.Reverse(), x.Reverse()
	}
	return a.Then(Path{Straight(end, start)}), b
}

// lengthened finds where the straight continuations of both edges meet, and
// how far that is from their ends together.
func lengthened(a, b Path, limit float64) (at Point, reach float64, ok bool) {
	end, start := a.End(), b.Start()
	u, v := a.EndTangent(), b.StartTangent()
	at, ok = Meet(Line{end, u}, Line{start, v})
	if !ok || end.To(at).Dot(u) < -weld || at.To(start).Dot(v) < -weld {
		return Point{}, 0, false
	}
	x, y := at.Dist(end), at.Dist(start)
	return at, x + y, x <= limit || y <= limit
}

// cornerCrossing finds the crossing that takes least off the two edges.
func cornerCrossing(a, b Path) (s, t, lost float64, ok bool) {
	hits := Cross(a, b)
	if len(hits) == 0 {
		return 0, 0, 0, false
	}
	la, lb := a.Length(), b.Length()
	for _, h := range hits {
		if h.S <= weld || h.T >= lb-weld {
			continue // Nothing would be left of one of them.
		}
		if l := la - h.S + h.T; !ok || l < lost {
			s, t, lost, ok = h.S, h.T, l, true
		}
	}
	return s, t, lost, ok
}

// reaching lengthens a to where it meets b.
func reaching(a, b Path, limit float64) (Path, Path, bool) {
	end := a.End()
	far := end.Add(a.EndTangent().Scale(limit))
	hits := Cross(Lines(end, far), b)
	if len(hits) == 0 || hits[0].T >= b.Length()-weld {
		return nil, nil, false
	}
	_, b = b.Split(hits[0].T)
	return a.to(hits[0].At), b.from(hits[0].At), true
}

// to is the path lengthened by a straight line to a place straight on.
func (p Path) to(at Point) Path {
	n := len(p)
	out := append(make(Path, 0, n+1), p...)
	switch last := p[n-1]; {
	case at.Near(last.D, weld):
		out[n-1] = last.endingAt(at)
	case !last.Curved:
		out[n-1] = Straight(last.A, at)
	default:
		out = append(out, Straight(last.D, at))
	}
	return out
}

// from is the path lengthened at its start, from a place straight before it.
func (p Path) from(at Point) Path { return p.Reverse().to(at).Reverse() }

// startingAt moves the start by a hair.
func (p Path) startingAt(at Point) Path {
	if len(p) == 0 || p.Start() == at {
		return p
	}
	out := append(Path(nil), p...)
	out[0] = out[0].startingAt(at)
	return out
}

// Loop joins the edges of a ring in order, the last to the first, each corner
// as Join does, and closes them to one path. Where the ring then crosses itself
// (an edge shorter than its corners need, a narrow waist) the largest loop that
// runs round in the ring's own sense is kept. Nil if no ring comes of it.
func Loop(edges []Path, limit float64) Path {
	var ring []Path
	for _, e := range edges {
		if len(e) > 0 {
			ring = append(ring, e)
		}
	}
	n := len(ring)
	if n == 0 {
		return nil
	}
	if n == 1 && !ring[0].Closed() {
		a, b := ring[0].Split(ring[0].Length() / 2)
		ring, n = []Path{a, b}, 2
	}
	if n > 1 {
		for i := range ring {
			j := (i + 1) % n
			ring[i], ring[j] = Join(ring[i], ring[j], limit)
		}
	}
	var out Path
	for _, e := range ring {
		out = out.Then(e)
	}
	if last := len(out) - 1; out[last].D != out[0].A {
		out[last] = out[last].endingAt(out[0].A)
	}
	t := tangle{path: out, closed: true}
	return t.ring(out.Area())
}
