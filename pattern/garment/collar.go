package garment

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

func collarIs(kind string) func(pattern.Known) bool {
	return func(k pattern.Known) bool { return detail.CollarKind(k) == kind }
}

// collarText is what the steps of a collar say: of its neck edge, and of the
// rest. The slots of neck: the back neck, the front neck, the rise or the lap;
// of outer: the height.
type collarText struct{ title, why, slip, neck, outer, rule string }

var collarTexts = map[string]collarText{
	detail.StandCollar: {
		"Stand collar, neck edge", "A straight band stands off her neck. Rising to its end it leans in.",
		"A straight strip: it gapes above.",
		"Rule a level line and a centre line up from its left end. Set off half the neck of the dress, {} and {}, on an arc that begins level at the centre and rises {} to its end. Mark the shoulder seam between the two.",
		"Draw the upper edge parallel, {} above, and the end square to both.",
		"One arc as long as half the neck; common practice, no source.",
	},
	detail.ConvertibleCollar: {
		"Convertible collar, neck edge", "Behind it lies level and rolls high; rising in front it closes and still opens.",
		"Raising it all along: it stands off behind.",
		"Rule a level line and a centre line up from its left end. Set off the back neck, {}, on the line, and from there the front neck, {}, on an arc that rises {} to its end. Mark the shoulder seam between the two.",
		"Rule the upper edge level, {} above, to {1/2 in} beyond the front end, and join the point to the front end.",
		"Level to the shoulder, an arc to the front; common practice, no source.",
	},
	detail.FlatCollar: {
		"Flat collar, neck edge", "Traced from the dress it lies on the shoulders. With the shoulder ends lapped its outer edge is shorter, so that it rolls a little and hides the seam.",
		"Tracing it with the shoulders edge to edge: the seam shows.",
		"Lay the back, neck {}, onto the front, neck {}, at the neck points, the shoulder ends lapping by {}. Trace the neck and round it over the shoulder; then turn the tracing until its centre stands upright.",
		"Draw the outer edge beside it, {} away all along. Round the corners to her taste, both alike.",
		"Shoulder ends lapped by {1/2 in}; common practice, no source.",
	},
}

// collarSteps draw the collar from the necks of the dress, on a frame of its
// own: a centre upright at the left, the neck edge below.
func collarSteps() []bench.Step {
	var out []bench.Step
	for _, kind := range []string{detail.StandCollar, detail.FlatCollar, detail.ConvertibleCollar} {
		out = append(out, collarNeck(kind), collarOuter(kind))
	}
	return append(out, collarAllowances())
}

var collarUses = append(
	theFront.uses("neck", "neck_point", "shoulder_end", "neck_base", "bone_end"),
	theBack.uses("neck", "neck_point", "shoulder_end", "neck_base", "bone_end")...,
)

// collarOf draws the collar of the job, and the necks that it is sewn to.
func collarOf(p *bench.Pen) (c detail.Collar, front, back geom.Path) {
	front, back = p.Line("front.neck"), p.Line("back.neck")
	k := p.K
	in := detail.CollarIn{
		First: measure.Length(back.Length()), Second: measure.Length(front.Length()), Height: k.Length("collar_height"), Rise: k.Length("collar_rise"),
	}
	behind := detail.Closure(k) == detail.ZipBehind
	if behind {
		in.First, in.Second = in.Second, in.First // its fold lies at the centre front
	}
	switch detail.CollarKind(k) {
	case detail.StandCollar:
		return in.Stand(), front, back
	case detail.ConvertibleCollar:
		return in.Convertible(0), front, back
	}
	sf, sb := shoulderOf(p, theFront), shoulderOf(p, theBack)
	flat := detail.FlatIn{
		Front: front, Back: back, FrontDir: sf.Dir, BackDir: sb.Dir, Shoulder: sf.Left(), Lap: k.Length("collar_lap"), Width: k.Length("collar_height"), FromFront: behind,
	}
	return flat.Draw(), front, back
}

func collarNeck(kind string) bench.Step {
	text := collarTexts[kind]
	more := pattern.ChoiceID("collar_rise")
	if kind == detail.FlatCollar {
		more = "collar_lap"
	}
	return bench.Step{
		ID: "collar.neck", Piece: pattern.Collar, Title: text.title, If: collarIs(kind),
		Why: measure.Tell(text.why), Slip: measure.Tell(text.slip), Rule: measure.Tell(text.rule),
		Choices: []pattern.ChoiceID{"collar", "collar_height", more, "closure"},
		Uses:    collarUses,
		Draw: func(p *bench.Pen) {
			if collarImpossible(p) {
				return
			}
			c, front, back := collarOf(p)
			p.Sum(measure.Drawn("back neck", measure.Length(back.Length())).Plus(measure.Drawn("front neck", measure.Length(front.Length()))))
			first, second := back, front
			if kind == detail.StandCollar && detail.Closure(p.K) == detail.ZipBehind {
				first, second = front, back
			}
			p.Do(text.neck, measure.Length(first.Length()), measure.Length(second.Length()), p.K.Length(more))
			p.Slip(measure.Drawn("ring of the neck", measure.Length(2*(front.Length()+back.Length()))), "That is the whole ring: half a collar is drawn.")
			p.Point("centre_bottom", c.Neck.Start())
			p.Point("shoulder", c.Shoulder)
			p.Point("front_bottom", c.Neck.End())
			p.Draw("neck", c.Neck, pattern.RoleStitch)
		},
	}
}

// collarImpossible refuses necks and closures that a collar cannot go with.
func collarImpossible(p *bench.Pen) bool {
	k, kind := p.K, detail.CollarKind(p.K)
	round := func(back bool) bool {
		s := detail.NeckStyle(k, back)
		return s == detail.RoundNeckline || s == detail.JewelNeckline
	}
	high, most := k.Length("collar_height"), rule.In(2)
	if kind != detail.StandCollar {
		most = rule.In(4.5)
	}
	half := measure.Length(p.Line("front.neck").Length() + p.Line("back.neck").Length())
	r := pattern.Refused{Code: "R32", Input: "collar"}
	switch {
	case !round(false):
		r.Input = "front_neckline"
		r.Says = measure.Tell("a collar is drawn on a round neck; in front there is a " + detail.NeckStyle(k, false) + " neck")
		r.Cure = measure.Tell("a round or a jewel neck, or no collar")
	case !round(true):
		r.Input = "back_neckline"
		r.Says = measure.Tell("a collar is drawn on a round neck; behind there is a " + detail.NeckStyle(k, true) + " neck")
		r.Cure = measure.Tell("a round or a jewel neck behind, or no collar")
	case detail.Closure(k) != detail.ZipBehind && !detail.HasPlacket(k):
		r.Input = "closure"
		r.Says = measure.Tell("a collar closes round her neck, and nothing opens there")
		r.Cure = measure.Tell("a zip behind, or a placket in front")
	case kind == detail.ConvertibleCollar && !detail.HasPlacket(k):
		r.Input = "closure"
		r.Says = measure.Tell("a convertible collar opens in front, and this front is closed")
		r.Cure = measure.Tell("a placket in front, or a stand or a flat collar")
	case high < rule.In(0.5) || high > most:
		r.Input = "collar_height"
		r.Says = measure.Tell("a "+kind+" collar {} high cannot be worn", high)
		r.Cure = measure.Tell("a height between {1 in} and {}", most)
	case k.Length("collar_rise") < 0 || k.Length("collar_rise") > half/4:
		r.Input = "collar_rise"
		r.Says = measure.Tell("a collar that rises {} over {} curls up", k.Length("collar_rise"), half)
		r.Cure = measure.Tell("a rise of {3/4 in} or less")
	case k.Length("collar_lap") < 0 || k.Length("collar_lap") > rule.In(1.5):
		r.Input = "collar_lap"
		r.Says = measure.Tell("shoulders lapped by {} leave the collar too short round her", k.Length("collar_lap"))
		r.Cure = measure.Tell("a lap of {1 in} or less")
	default:
		return false
	}
	p.Refuse(r)
	return true
}

func collarOuter(kind string) bench.Step {
	text := collarTexts[kind]
	return bench.Step{
		ID: "collar.outer", Piece: pattern.Collar, Title: "Collar, outer edge", If: collarIs(kind),
		Why:     measure.Tell("Its height at the centre is what shows."),
		Slip:    measure.Tell("Taking the height at the end only: the two ends of the collar must match."),
		Choices: []pattern.ChoiceID{"collar_height"},
		Uses:    append([]string{"collar.neck"}, collarUses...),
		Draw: func(p *bench.Pen) {
			c, _, _ := collarOf(p)
			p.Sum(measure.Of("height", p.K.Length("collar_height")))
			p.Do(text.outer, p.K.Length("collar_height"))
			p.Point("centre_top", c.Outer.Start())
			p.Point("front_top", c.Outer.End())
			p.Draw("outer", c.Outer, pattern.RoleStitch)
		},
	}
}

func collarAllowances() bench.Step {
	return bench.Step{
		ID: "collar.allowances", Piece: pattern.Collar, Title: "Collar, allowances and grain", If: detail.HasCollar,
		Why:     measure.Tell("A collar is cut twice, and the upper one interfaced. The under one is a little smaller, so that the seam rolls under."),
		Slip:    measure.Tell("Stretching the neck of the dress to a collar that is too long."),
		Choices: []pattern.ChoiceID{"neck_allowance"},
		Uses:    []string{"collar.neck", "collar.outer"},
		Draw: func(p *bench.Pen) {
			p.Do("Outside the net line add {} all round, but at the fold. Mark the shoulder on the neck edge. The grain runs along the centre.", p.K.Length("neck_allowance"))
		},
	}
}

// collar cuts upper and under collar.
func (c cutter) collar() []pattern.Piece {
	k := c.s.Known
	kind, behind := detail.CollarKind(k), detail.Closure(k) == detail.ZipBehind
	neck, outer := c.line("collar.neck"), c.line("collar.outer")
	title := map[string]string{detail.StandCollar: "Stand collar", detail.FlatCollar: "Flat collar", detail.ConvertibleCollar: "Collar"}[kind]
	first := c.collarPiece(pattern.Collar, title+", upper", neck, outer, k.Length("neck_allowance"))
	first.Also = []string{"interfacing"}
	if kind == detail.ConvertibleCollar {
		front := outer.End()
		front.X -= detail.UnderLess.MM()
		outer = geom.Lines(outer.Start(), front)
	}
	less := measure.Length(0)
	if kind == detail.FlatCollar {
		less = detail.Favour(k)
	}
	second := c.collarPiece(pattern.UnderCollar, title+", under", neck, outer, k.Length("neck_allowance")-less)
	if kind == detail.StandCollar {
		first.Title, second.Title = title+", outside", title+", inside"
	}
	if kind == detail.FlatCollar && behind {
		first.Title += ", half"
		second.Title += ", half"
	}
	return []pattern.Piece{first, second}
}

// collarPiece is a ring of outer edge, end, neck edge and centre: on the fold
// there, or a half of a pair where a flat collar opens behind.
func (c cutter) collarPiece(id pattern.PieceID, title string, neck, outer geom.Path, outerAllowance measure.Length) pattern.Piece {
	k := c.s.Known
	allowance := k.Length("neck_allowance")
	edge := func(name string, path geom.Path, allowance measure.Length) bench.Side {
		return bench.Side{Name: name, Stitch: path, Allowance: allowance, Role: pattern.RoleStitch}
	}
	centre, cut := edge("fold", geom.Lines(neck.Start(), outer.Start()), 0), pattern.OnFold
	centre.Role = pattern.RoleFold
	if detail.CollarKind(k) == detail.FlatCollar && detail.Closure(k) == detail.ZipBehind {
		centre, cut = edge("end", centre.Stitch, allowance), pattern.Pair
	}
	other := pattern.UnderCollar
	if id == other {
		other = pattern.Collar
	}
	sides := []bench.Side{edge("outer", outer, max(0, outerAllowance)), edge("end", geom.Lines(outer.End(), neck.End()), allowance)}
	for i := range sides {
		sides[i].SewnTo = pattern.EdgeRef{Piece: other, Edge: sides[i].Name}
	}
	// The neck edge in two parts, for the two halves of the neck.
	s, _, _ := neck.Nearest(c.at("collar.shoulder"))
	first, second := neck.Split(s)
	names := []pattern.PieceID{pattern.Back, pattern.Front}
	if detail.Closure(k) == detail.ZipBehind {
		names[0], names[1] = names[1], names[0]
	}
	for i, path := range []geom.Path{second.Reverse(), first.Reverse()} {
		half := names[1-i]
		part := edge(string(half)+"_neck", path, allowance)
		if id == pattern.Collar {
			part.SewnTo = pattern.EdgeRef{Piece: half, Edge: "neck"}
		}
		sides = append(sides, part)
	}
	p := closed(id, title, cut, append(sides, centre))
	notch(&p, string(names[0])+"_neck", "shoulder", c.at("collar.shoulder"), 1)
	return p
}

// collarFigures reads the lengths of the collar off its marks.
func (c cutter) collarFigures() {
	if !c.has("collar.neck") {
		return
	}
	add := func(name string, l float64) { c.s.Lengths = append(c.s.Lengths, dim(pattern.Collar, name, l)) }
	add("neck", c.line("collar.neck").Length())
	if c.has("collar.outer") {
		add("outer", c.line("collar.outer").Length())
		add("end", c.at("collar.front_top").Dist(c.at("collar.front_bottom")))
	}
}
