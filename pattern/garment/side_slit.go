package garment

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

// sideSlit marks where the side of a half stays open.
func sideSlit(h half) bench.Step {
	return bench.Step{
		ID: h.id("side_slit"), Piece: h.piece, Title: "Slit in the side",
		Why:     measure.Tell("Open sides let her step and sit, however long the garment. Both halves open at the same height above the hem."),
		Slip:    measure.Tell("Measuring down from the underarm: the dart makes front and back differ there."),
		Choices: []pattern.ChoiceID{"hem_opening", "slit_height"},
		Uses:    h.uses("side", "waist", "hip", "hem_side"),
		If:      func(k pattern.Known) bool { return detail.HemOpening(k) == detail.SideSlits },
		Draw: func(p *bench.Pen) {
			height, side := p.K.Length("slit_height"), p.Line(h.id("side"))
			if skirt := p.Line(h.id("skirt_side")); len(skirt) > 0 {
				side = skirt
			}
			hip := p.At(h.id("hip"))
			most := measure.Length(p.At(h.id("waist")).Dist(hip)+hip.Dist(p.At(h.id("hem_side")))) - detail.SideSlitTop
			if height < rule.In(1) || height > most {
				p.Refuse(pattern.Refused{
					Code: "R14", Input: "slit_height",
					Says: measure.Tell("slits {} high in the sides cannot be made: from {} below the waist to the hem the side is {} long", height, detail.SideSlitTop, most),
					Cure: measure.Tell("slits between {1 in} and {}, or none", most),
				})
				return
			}
			at, _ := side.At(side.Length() - height.MM())
			p.Sum(measure.Of("slit", height))
			p.Do("On the side seam mark the top of the slit {} above the hem.", height)
			p.Point("side_slit_top", at)
		},
	}
}

// openSides parts the side of a half where it stays open: both edges of the
// slit are turned in.
func (c cutter) openSides(h half, side bench.Side) []bench.Side {
	if !c.has(h.id("side_slit_top")) {
		return []bench.Side{side}
	}
	long, height := side.Stitch.Length(), c.s.Known.Length("slit_height").MM()
	above, below := side.Stitch.Split(long - height)
	open := side
	open.Stitch, open.Allowance, open.SewnTo, open.Cut = below, slitAllowance, pattern.EdgeRef{}, geom.Path(nil)
	if len(side.Cut) > 0 { // below a dart the cutting line is already drawn
		at := below.Offset(side.Allowance.MM(), bench.OffsetTolerance).Start()
		s, _, _ := side.Cut.Nearest(at)
		side.Cut, _ = side.Cut.Split(s)
		if last := &side.Cut[len(side.Cut)-1]; last.D.Near(at, bench.OffsetTolerance) {
			last.D = at // so that the two lines meet in one point
		}
	}
	side.Stitch, side.Corner = above, pattern.Square
	return []bench.Side{side, open}
}

// slitNotch marks the top of a slit in the side.
func (c cutter) slitNotch(p *pattern.Piece, h half) {
	if c.has(h.id("side_slit_top")) {
		notch(p, "side", "top of the slit", c.at(h.id("side_slit_top")), 1)
	}
}
