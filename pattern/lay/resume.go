package lay

// goOnFrom takes the places of a lay for the plan's searches where all of its
// pieces lie as the plan has them and it is shorter than the first lay.
func (pl *planned) goOnFrom(placed []Placed) {
	if len(placed) == 0 {
		return
	}
	folded := int64(0) // where what lies opened begins
	for k := range placed {
		if q := &placed[k]; !q.Opened {
			_, hi := bounds(q.Outline)
			folded = max(folded, hi.Y)
		}
	}
	if pl.opened {
		begins := int64(most)
		for k := range placed {
			if q := &placed[k]; q.Opened {
				lo, _ := bounds(q.Outline)
				begins = min(begins, lo.Y)
			}
		}
		folded = begins
	}
	found := make([]*search, len(pl.searches))
	for k, h := range pl.searches {
		var from Point
		if k > 0 {
			from.Y = folded
		}
		places, ok := h.s.placesOf(placed, k > 0, from)
		if !ok {
			return
		}
		found[k] = h.startingAt(places)
		if found[k] == nil {
			return
		}
	}
	for k, h := range pl.searches {
		if f := found[k]; f.length < h.length {
			pl.known = true
			h.places, h.length, h.step = f.places, f.length, leastShorter
			h.done = h.length <= h.s.least()
		}
	}
}

// placesOf are the places of the strip's members in a lay; false where one is
// not there or lies in another way.
func (s *strip) placesOf(placed []Placed, opened bool, from Point) ([]berth, bool) {
	places := make([]berth, s.moving)
	for i := range places {
		m := &s.members[i]
		found := false
		for k := range placed {
			q := &placed[k]
			if q.Item != m.item || q.Copy != m.copy || q.Opened != opened || q.OnFold != m.onFold || q.Wasted != m.wasted || q.Beside != m.beside {
				continue
			}
			for t := range m.stances {
				st := &m.stances[t]
				if st.turn == q.Turn && st.mirror == q.Mirror && st.far == q.Far {
					at := toSpot(q.At.minus(from).plus(st.corner))
					places[i], found = berth{t, at}, st.clamp(at, most) == at
				}
			}
		}
		if !found {
			return nil, false
		}
	}
	return places, true
}

// startingAt is a search of the strip at places that keep all rules; nil where
// they do not.
func (h *search) startingAt(places []berth) *search {
	f := &search{s: h.s, places: places, length: most}
	f.trim()
	if !h.s.room(f.length) {
		return nil
	}
	q := newSearcher(h.s, f.length, places, newRandom(h.seed))
	if !q.partWhole(1, roundsAStrike) {
		return nil
	}
	f.places = q.places
	return f
}
