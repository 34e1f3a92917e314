package lesson

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/workroom"
)

// levelInset draws the front's shoulder end in level from the bone.
func levelInset(t *table) bool {
	bone, ok := t.s.Point(pattern.Front, "bone_end")
	end, ok2 := t.s.Point(pattern.Front, "shoulder_end")
	p := t.piece(pattern.Front)
	arm := edge(p, "armhole")
	if !ok || !ok2 || arm <= 0 || p.Edges[arm-1].Name != "shoulder" || bone.Y-end.Y < 1 {
		return false
	}
	to := geom.Point{X: end.X, Y: bone.Y}
	down := end.To(to)
	t.cutAgain(pattern.Front, func(s []bench.Side) {
		seam := s[arm-1].Stitch
		s[arm-1].Stitch, s[arm-1].Cut = geom.Lines(seam.Start(), to), nil
		first := s[arm].Stitch[0]
		first.A, first.B = first.A.Add(down), first.B.Add(down)
		s[arm].Stitch = append(geom.Path{first}, s[arm].Stitch[1:]...)
		s[arm].Cut = nil
		t.line(pattern.Front, "armhole", s[arm].Stitch)
		t.line(pattern.Front, "shoulder", s[arm-1].Stitch)
	})
	t.point(pattern.Front, "shoulder_end", to)
	return true
}

// unequalLegs ends the lower leg of the side dart short.
func unequalLegs(t *table) bool {
	const short = 0.25 * measure.Inch
	p := t.piece(pattern.Front)
	last := -1 // the edge from the cap to the lower leg
	for i := range p.Edges {
		if p.Edges[i].Name == "dart" {
			last = i
		}
	}
	if len(p.Darts) == 0 || last < 0 || last+1 >= len(p.Edges) {
		return false
	}
	d := &p.Darts[0]
	to := d.Legs[1].Add(d.Legs[1].To(d.Tip).Unit().Scale(short.MM()))
	by := d.Legs[1].To(to)
	t.cutAgain(pattern.Front, func(s []bench.Side) {
		s[last].Stitch = geom.Lines(s[last].Stitch.Start(), to)
		below := s[last+1].Stitch[0]
		below.A, below.B = below.A.Add(by), below.B.Add(by)
		s[last+1].Stitch = append(geom.Path{below}, s[last+1].Stitch[1:]...)
		t.line(pattern.Front, "side", s[last+1].Stitch)
	})
	p = t.piece(pattern.Front)
	p.Darts[0].Legs[1] = to
	t.point(pattern.Front, "dart_lower", to)
	t.line(pattern.Front, "dart", geom.Lines(d.Legs[0], d.Tip, to))
	return true
}

// shortFront moves the front's waist, hip and hem up to the back's levels.
func shortFront(t *table) bool {
	p := t.piece(pattern.Front)
	waist, ok := t.s.Point(pattern.Front, "waist")
	back, ok2 := t.s.Point(pattern.Back, "waist")
	if !ok || !ok2 || len(p.Darts) == 0 {
		return false
	}
	d, from := waist.Y-back.Y, p.Darts[0].Legs[1].Y
	if d < 6 || waist.Y-d <= from {
		return false
	}
	up := func(q geom.Point) geom.Point {
		switch {
		case q.Y >= waist.Y:
			q.Y -= d
		case q.Y > from:
			q.Y = from + (q.Y-from)*(waist.Y-d-from)/(waist.Y-from)
		}
		return q
	}
	t.bend(p, up)
	for i := range t.s.Marks {
		m := &t.s.Marks[i]
		if m.Piece != pattern.Front || m.Gone != 0 {
			continue
		}
		switch m.Name {
		case "dart_tip", "dart_cap", "dart", "dart_end", "dart_upper", "bust_point", "bust_line":
			continue
		}
		m.At, m.Path = up(m.At), bent(m.Path, up)
	}
	return true
}

// bend moves every point of a piece but its darts.
func (t *table) bend(p *pattern.Piece, f func(geom.Point) geom.Point) {
	for i := range p.Edges {
		p.Edges[i].Stitch, p.Edges[i].Cut = bent(p.Edges[i].Stitch, f), bent(p.Edges[i].Cut, f)
	}
	p.Stitch, p.CutLine = bent(p.Stitch, f), bent(p.CutLine, f)
	if p.Fold != nil {
		fold := bent(geom.Path{*p.Fold}, f)[0]
		p.Fold = &fold
	}
	p.Grain, p.Label = bent(geom.Path{p.Grain}, f)[0], f(p.Label)
	for i := range p.Notches {
		p.Notches[i].At = f(p.Notches[i].At)
	}
	for i := range p.Balance {
		p.Balance[i].Line = bent(geom.Path{p.Balance[i].Line}, f)[0]
	}
}

// wideNeck slides both neck points out over more than half the shoulder.
func wideNeck(t *table) bool {
	const share = 0.55
	for _, id := range []pattern.PieceID{pattern.Front, pattern.Back} {
		p := t.piece(id)
		neck := edge(p, "neck")
		if neck < 0 || neck+1 >= len(p.Edges) || p.Edges[neck+1].Name != "shoulder" {
			return false
		}
		from, end := p.Edges[neck+1].Stitch.Start(), p.Edges[neck+1].Stitch.End()
		if from.X <= 0 {
			return false
		}
		to := from.Lerp(end, share)
		wide, lift := to.X/from.X, (to.Y-from.Y)/from.X
		t.cutAgain(id, func(s []bench.Side) {
			s[neck].Stitch = bent(s[neck].Stitch, func(q geom.Point) geom.Point {
				return geom.Point{X: q.X * wide, Y: q.Y + q.X*lift}
			})
			s[neck+1].Stitch = geom.Lines(to, end)
			s[neck].Cut, s[neck+1].Cut = nil, nil
			t.line(id, "neck", s[neck].Stitch)
			t.line(id, "shoulder", s[neck+1].Stitch)
		})
		t.point(id, "neck_point", to)
	}
	return true
}

// earlyFacing takes the front's neck facing from a neck that was not yet cut
// as deep.
func earlyFacing(t *table) bool {
	depth := t.s.Length("front_neck_depth")
	early := workroom.Draft(t.s.Job.WithStyle("front_neck_depth", pattern.LengthValue(depth-measure.Inch)))
	old, ok := early.Piece(pattern.FrontNeckFacing)
	p := t.piece(pattern.FrontNeckFacing)
	if !ok || p == nil {
		return false
	}
	number, of := p.Number, p.Of
	*p = *old
	p.Number, p.Of = number, of
	return true
}

// plainHem runs the side on below the hem line as it was above it.
func plainHem(t *table) bool {
	changed := false
	for _, id := range []pattern.PieceID{pattern.Front, pattern.Back} {
		p := t.piece(id)
		hem := edge(p, "hem")
		if hem <= 0 || p.Edges[hem-1].Corner != pattern.Mirrored {
			return false
		}
		was := p.Edges[hem].Cut.Start()
		t.cutAgain(id, func(s []bench.Side) { s[hem-1].Corner, s[hem].Cut = pattern.Mitre, nil })
		changed = changed || was.Dist(t.piece(id).Edges[hem].Cut.Start()) > 1
	}
	return changed
}

// forgottenTop cuts the back off at the top line.
func forgottenTop(t *table) bool {
	p, cut := t.piece(pattern.Back), false
	off := func(q geom.Point) geom.Point {
		if q.Y < 0 {
			q.Y, cut = 0, true
		}
		return q
	}
	for i := range p.Edges {
		p.Edges[i].Cut = bent(p.Edges[i].Cut, off)
	}
	p.CutLine = bent(p.CutLine, off)
	t.line(pattern.Back, "cut_line", p.CutLine)
	return cut
}

// twiceAllowed gives the side of the back its allowance two times.
func twiceAllowed(t *table) bool {
	p := t.piece(pattern.Back)
	side := edge(p, "side")
	if side < 0 || p.Edges[side].Allowance <= 0 {
		return false
	}
	t.cutAgain(pattern.Back, func(s []bench.Side) {
		s[side].Cut = s[side].Stitch.Offset(2*s[side].Allowance.MM(), bench.OffsetTolerance)
	})
	return true
}
