package garment

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
)

// hemFacingStep tells the facing of the hem; its pieces are traced from the
// pieces that have a hem.
func hemFacingStep() bench.Step {
	return bench.Step{
		ID: "front.hem_facing", Piece: pattern.Front, Title: "Hem facing",
		Why:     measure.Tell("A curved edge does not turn up flat: its raw edge is longer than the cloth it lies on. A strip of the same shape lies on it without a fold."),
		Slip:    measure.Tell("Cutting the strip straight: it pulls the hem in."),
		Choices: []pattern.ChoiceID{"hem_finish", "hem_facing_depth"},
		Uses:    append(theFront.uses("hem"), theBack.uses("hem")...),
		If:      func(k pattern.Known) bool { return detail.HemFinish(k) == detail.FacedHem },
		Draw: func(p *bench.Pen) {
			deep := p.K.Length("hem_facing_depth")
			if deep < measure.Inch || deep > 6*measure.Inch {
				p.Refuse(pattern.Refused{
					Code: "R19", Input: "hem_facing_depth",
					Says: measure.Tell("a hem facing {} deep cannot be sewn", deep),
					Cure: measure.Tell("a depth between {1 in} and {6 in}"),
				})
				return
			}
			if laps(p.K) {
				p.Refuse(pattern.Refused{
					Code: "R19", Input: "hem_finish",
					Says: measure.Tell("a vent or a pleat is folded with its hem; a faced hem cannot turn its corner"),
					Cure: measure.Tell("turn the hem up, or open it with a slit"),
				})
				return
			}
			p.Sum(measure.Of("hem facing", deep))
			p.Do("Trace the hem, {} of the side and of the centre, and a line parallel to the hem between them: the hem facing, of every piece that has a hem.", deep)
			line := p.Line("front.hem").Offset(-deep.MM(), bench.OffsetTolerance)
			p.Draw("hem_facing", line, pattern.RoleBalance)
		},
	}
}

// laps says that cloth is added where the hem opens.
func laps(k pattern.Known) bool {
	switch detail.HemOpening(k) {
	case detail.VentOpening, detail.KickPleat, detail.InvertedPleat:
		return true
	}
	return false
}

// hemFacings are the facings of the pieces that have a hem, where hems are
// faced; each hem is then sewn to its own.
func (c cutter) hemFacings(pieces []pattern.Piece) []pattern.Piece {
	if detail.HemFinish(c.s.Known) != detail.FacedHem {
		return nil
	}
	deep, outer := c.s.Known.Length("hem_facing_depth").MM(), measure.Length(0)
	var out []pattern.Piece
	for n := range pieces {
		p := &pieces[n]
		for i := range p.Edges {
			hem := &p.Edges[i]
			before, after := p.Edges[(i+len(p.Edges)-1)%len(p.Edges)], p.Edges[(i+1)%len(p.Edges)]
			if hem.Name != "hem" || before.Stitch.Length() < deep || after.Stitch.Length() < deep {
				continue
			}
			up, down := after.Stitch.Part(0, deep), before.Stitch.Part(before.Stitch.Length()-deep, before.Stitch.Length())
			top := hem.Stitch.Offset(-deep, bench.OffsetTolerance).Reverse()
			top = between(top, up.End(), down.Start())
			f := closed(p.ID+"_hem_facing", p.Title+" hem facing", p.Cut, []bench.Side{
				{Name: "hem", Stitch: hem.Stitch, Allowance: hem.Allowance, SewnTo: pattern.EdgeRef{Piece: p.ID, Edge: "hem"}, Role: pattern.RoleStitch},
				{Name: after.Name, Stitch: up, Allowance: after.Allowance, Role: after.Role},
				{Name: "outer", Stitch: top, Allowance: outer, Role: pattern.RoleStitch},
				{Name: before.Name, Stitch: down, Allowance: before.Allowance, Role: before.Role},
			})
			f.Cloth = p.Cloth
			hem.SewnTo = pattern.EdgeRef{Piece: f.ID, Edge: "hem"}
			out = append(out, f)
			break
		}
	}
	return out
}

// between ends a parallel of a hem at two points that lie a hair off its ends.
// What of it is shorter than that hair goes, or it would turn back there.
func between(p geom.Path, from, to geom.Point) geom.Path {
	hair := max(p.Start().Dist(from), p.End().Dist(to), 0.5)
	for len(p) > 1 && p[len(p)-1].A.Dist(to) < 2*hair {
		p = p[:len(p)-1]
	}
	for len(p) > 1 && p[0].D.Dist(from) < 2*hair {
		p = p[1:]
	}
	return startingAt(endingAt(p, to), from)
}
