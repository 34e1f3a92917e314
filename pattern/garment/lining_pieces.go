package garment

import (
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

// LiningCloth is the cloth that linings are cut from.
const LiningCloth = "lining"

// liningID names the lining of a piece.
func liningID(id pattern.PieceID) pattern.PieceID { return id + "_lining" }

// lined are the pieces that have a lining. A cap sleeve has none: it is caught
// between dress and lining.
func (c cutter) lined(id pattern.PieceID) bool {
	switch id {
	case pattern.Front, pattern.Back, pattern.FrontSide, pattern.BackSide, pattern.SkirtFront, pattern.SkirtBack:
		return true
	case pattern.Sleeve:
		return setIn(c.s.Known)
	}
	return false
}

// linings are the linings of the pieces of a garment.
func (c cutter) linings(pieces []pattern.Piece) []pattern.Piece {
	if !detail.HasLining(c.s.Known) {
		return nil
	}
	var out []pattern.Piece
	for i := range pieces {
		if p := &pieces[i]; c.lined(p.ID) {
			out = append(out, c.lining(p))
		}
	}
	return out
}

// outerEdge is the edge of a facing that lies inside the garment: nothing is
// sewn to it but a lining that begins there.
func (c cutter) outerEdge(h half, line geom.Path) bench.Side {
	side := bench.Side{Name: "outer", Stitch: line, Role: pattern.RoleStitch}
	if detail.Lining(c.s.Known) == detail.FacingLining {
		side.Allowance, side.SewnTo = detail.LiningSeam, pattern.EdgeRef{Piece: liningID(h.piece), Edge: "facing"}
	}
	return side
}

// lining draws the lining of a piece from the edges of its ring.
func (c cutter) lining(p *pattern.Piece) pattern.Piece {
	sides, darts := c.liningTop(p, c.liningSides(p))
	sides, darts = pressedBack(hemHigher(sides, higherBy(p.ID)), darts)
	l := closed(liningID(p.ID), p.Title+", lining", p.Cut, sides)
	l.Cloth, l.Count = LiningCloth, p.Count
	c.liningMarks(&l, p, darts)
	return l
}

func higherBy(id pattern.PieceID) measure.Length {
	if id == pattern.Sleeve {
		return detail.SleeveHigher
	}
	return detail.LiningHigher
}

// liningSides are the sides of a piece for its lining: without the cloth that
// an opening in the hem adds, and with its own allowances.
func (c cutter) liningSides(p *pattern.Piece) []bench.Side {
	full := detail.Lining(c.s.Known) == detail.FullLining
	var sides []bench.Side
	for _, e := range p.Edges {
		if e.Name == "hem_extension" {
			continue
		}
		s := bench.Side{Name: e.Name, Stitch: e.Stitch, Allowance: e.Allowance, Corner: e.Corner, SewnTo: c.liningTo(p, e), Role: e.Role}
		last := len(sides) - 1
		switch {
		case e.Name == "placket_foot" || e.Name == "neck_opening" || e.Name == "placket" && last >= 0 && sides[last].Name == "placket_foot":
			s.Cut = e.Cut // slashed
		case e.Name == "neck" && last >= 0 && len(sides[last].Cut) > 0 && sides[last].Name != "placket_foot":
			s.Cut = e.Cut // begins where the slash ends
		case e.Name == "neck" && full, e.Name == "armhole" && full && !setIn(c.s.Known):
			s.Allowance = max(0, e.Allowance-detail.Favour(c.s.Known))
		case e.Name == "side" && last >= 0 && sides[last].Name == "side":
			s = joinOpen(sides[last], s)
			sides = sides[:last]
		case e.Name == "centre_back" && last >= 0 && sides[last].Name == "centre_back":
			if lid := sides[last]; laps(c.s.Known) && swayed(c.s.Known) {
				s.Stitch = geom.Lines(c.line("back.hem").End(), e.Stitch.Start()).Then(s.Stitch)
			} else if laps(c.s.Known) {
				s.Stitch = geom.Lines(geom.Point{X: e.Stitch.Start().X, Y: c.line("back.hem").End().Y}, e.Stitch.Start()).Then(s.Stitch)
			} else {
				s.Stitch = lid.Stitch.Then(s.Stitch)
			}
			sides = sides[:last]
		}
		if e.Name == "hem" {
			s.Allowance = detail.LiningHem
			if p.Cut == pattern.Pair {
				s.Corner = pattern.Mirrored
			}
		}
		if s.Corner == pattern.Square || s.Corner == pattern.None && len(s.Cut) == 0 {
			s.Corner = pattern.Mitre
		}
		sides = append(sides, s)
	}
	return sides
}

// joinOpen makes one side of the two that a slit parts it in: the lining is
// open farther up, and a notch says where.
func joinOpen(above, below bench.Side) bench.Side {
	below.Stitch, below.Allowance, below.SewnTo = above.Stitch.Then(below.Stitch), above.Allowance, above.SewnTo
	return below
}

// liningTo is what an edge of a lining is sewn to: the lining of what the
// garment's is sewn to, or the edge of the garment that it finishes.
func (c cutter) liningTo(p *pattern.Piece, e pattern.Edge) pattern.EdgeRef {
	full := detail.Lining(c.s.Known) == detail.FullLining
	switch to := e.SewnTo; {
	case c.lined(to.Piece) && e.Name != "dart":
		return pattern.EdgeRef{Piece: liningID(to.Piece), Edge: to.Edge}
	case full && to.Piece == liningID(p.ID):
		return pattern.EdgeRef{Piece: p.ID, Edge: e.Name}
	}
	return pattern.EdgeRef{}
}

// hemHigher takes a hem up along the edges beside it.
func hemHigher(sides []bench.Side, by measure.Length) []bench.Side {
	n := len(sides)
	for i := range sides {
		if sides[i].Name != "hem" {
			continue
		}
		before, hem, after := &sides[(i+n-1)%n], &sides[i], &sides[(i+1)%n]
		long := before.Stitch.Length()
		deep := min(by.MM(), long/2, after.Stitch.Length()/2)
		line := hem.Stitch.Offset(-deep, bench.OffsetTolerance)
		before.Stitch, _ = before.Stitch.Split(long - deep)
		_, after.Stitch = after.Stitch.Split(deep)
		hem.Stitch = between(line, before.Stitch.End(), after.Stitch.Start())
	}
	return sides
}

// pressedBack presses every dart of a ring the other way than the garment's:
// the end of each is cut with the dart folded so.
func pressedBack(sides []bench.Side, garments []pattern.Dart) ([]bench.Side, []pattern.Dart) {
	darts := append([]pattern.Dart(nil), garments...)
	for i := range darts {
		if darts[i].Fisheye {
			darts[i].Pressed = otherWay(darts[i].Pressed)
		}
	}
	for i := 1; i+2 < len(sides); i++ {
		if sides[i].Name != "dart" || sides[i+1].Name != "dart" {
			continue
		}
		before, after := sides[i-1], sides[i+2]
		first, second := before.Stitch.End(), after.Stitch.Start()
		for k := range darts {
			d := &darts[k]
			if d.Fisheye || !joins(d.Legs, first, second) {
				continue
			}
			onAfter := detail.CapDown(d.Tip, first, second, after.Stitch.StartTangent())
			onBefore := detail.CapDown(d.Tip, second, first, before.Stitch.EndTangent().Scale(-1))
			to, bite := true, onAfter
			if sides[i].Stitch.End().Dist(onAfter) <= sides[i].Stitch.End().Dist(onBefore) {
				to, bite = false, onBefore
			}
			if short := min(before.Stitch.Length(), after.Stitch.Length()); bite.Dist(first.Lerp(second, 0.5)) > rule.In(1.5).MM() || short < before.Allowance.MM() {
				to, bite = !to, sides[i].Stitch.End() // too steep, or too near to a corner, to be pressed back
			} else {
				d.Pressed = otherWay(d.Pressed)
			}
			d.Cap = bite
			cut := gapCuts(before, after, d.Tip, to)
			sides[i-1].Cut, sides[i-1].Corner, sides[i+2].Cut = cut.before, pattern.None, cut.after
			end := func(path, cut geom.Path) bench.Side {
				return bench.Side{Name: "dart", Stitch: path, Cut: cut, Allowance: before.Allowance, Corner: pattern.None, Role: pattern.RoleStitch}
			}
			sides[i], sides[i+1] = end(geom.Lines(first, bite), cut.toCap), end(geom.Lines(bite, second), cut.fromCap)
		}
	}
	return sides, darts
}

func joins(legs [2]geom.Point, a, b geom.Point) bool {
	return legs[0].Near(a, sameSide) && legs[1].Near(b, sameSide) || legs[0].Near(b, sameSide) && legs[1].Near(a, sameSide)
}

func otherWay(pressed string) string {
	switch pressed {
	case "down":
		return "up"
	case "to the centre":
		return "to the side"
	}
	return pressed
}

// liningMarks are darts, notches and levels of a lining: those of its piece
// that lie on it, and where it stays open.
func (c cutter) liningMarks(l, p *pattern.Piece, darts []pattern.Dart) {
	for _, n := range p.Notches {
		switch {
		case n.Name == "dart leg" || strings.HasPrefix(n.Name, "top of the") || n.Name == "hem fold":
			continue
		}
		notch(l, n.Edge, n.Name, n.At, n.Marks)
	}
	for i, e := range l.Edges {
		if before := l.Edges[(i+len(l.Edges)-1)%len(l.Edges)]; e.Name == "hem" && before.Role != pattern.RoleFold {
			notch(l, before.Name, "hem fold", e.Stitch.Start(), 1)
		}
	}
	edge := legEdge(p, l)
	for i := range darts {
		d := &darts[i]
		if !d.Fisheye {
			for j, leg := range d.Legs {
				d.Ends[j] = legEnd(d.Tip, leg, l.CutLine)
				l.Notches = append(l.Notches, pattern.Notch{At: d.Ends[j], Edge: edge, Marks: 1, Into: degrees(d.Ends[j].To(d.Tip)), Name: "dart leg"})
			}
		}
		l.Darts = append(l.Darts, *d)
	}
	l.Holes = append(l.Holes, p.Holes...)
	ring := l.Stitch.Outline(0.5)
	for _, b := range p.Balance {
		if b.Name != "fold" && ring.Contains(b.Line.At(0.02)) && ring.Contains(b.Line.At(0.98)) {
			l.Balance = append(l.Balance, b)
		}
	}
	c.openNotches(l, p)
}

// legEdge is the edge that the legs of the darts end in.
func legEdge(p, l *pattern.Piece) string {
	for _, n := range p.Notches {
		if n.Name == "dart leg" && len(l.EdgesNamed(n.Edge)) > 0 {
			return n.Edge
		}
	}
	return "facing"
}

// openNotches mark where the edges of a lining stay open above an opening in
// the hem.
func (c cutter) openNotches(l, p *pattern.Piece) {
	higher := geom.Vector{Y: -detail.LiningOpen.MM()}
	if len(l.EdgesNamed("centre_back")) > 0 && len(p.EdgesNamed("hem")) > 0 && c.opens() {
		notch(l, "centre_back", "open below", c.folded("back.slit_top").Add(higher), 1)
	}
	for _, h := range []half{theFront, theBack} {
		if len(p.EdgesNamed("side")) > 1 && c.has(h.id("side_slit_top")) && strings.Contains(string(p.ID), string(h.piece)) {
			notch(l, "side", "open below", c.at(h.id("side_slit_top")).Add(higher), 1)
		}
	}
}
