package garment

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
)

// A lining is drawn from the garment's own outline: the same lines, hemmed
// higher, its darts pressed the other way. Full, it goes to the edges; else it
// begins where the facing ends.

// liningStep marks the hem of the lining on a half; its pieces are traced from
// those of the garment. How its upper edge is finished is another choice on a
// skirt.
func liningStep(h half, edge pattern.ChoiceID) bench.Step {
	return bench.Step{
		ID: h.id("lining"), Piece: h.piece, Title: "Lining", If: detail.HasLining,
		Why:     measure.Tell("A lining is the same garment once more, so that it hangs with it. It is hemmed higher and hangs free below: sewn to the hem it would pull it up."),
		Slip:    measure.Tell("Pressing its darts like the garment's: four folds then lie on each other."),
		Choices: []pattern.ChoiceID{"lining", edge},
		Uses:    h.uses("hem"),
		Also: func(k pattern.Known) []string {
			if detail.Lining(k) == detail.FacingLining && !liningRefused(k) {
				return h.uses(facingEdge(k))
			}
			return nil
		},
		Draw: func(p *bench.Pen) {
			if liningImpossible(p) || dartsTooShort(p, h) || facingOverSeam(p, h) {
				return
			}
			p.Sum(measure.Of("hemmed higher", detail.LiningHigher))
			from := "to neck and armhole, and to the armhole only where a sleeve is set in"
			switch {
			case p.K.Garment == pattern.Skirt && detail.Lining(p.K) == detail.FullLining:
				from = "to the waist"
			case detail.Lining(p.K) == detail.FacingLining:
				from = "from the lower edge of the facing"
			}
			p.Do("Trace the "+string(h.piece)+" once more for the lining, "+from+", and rule its hem {} higher. Turn up {} there. Press its darts the other way; mark where it stays open, {} above an opening in the hem.",
				detail.LiningHigher, detail.LiningHem, detail.LiningOpen)
			if detail.Lining(p.K) == detail.FullLining {
				p.Rule("It takes the place of the facings: its neck and armholes have {} less allowance, so that the seam rolls inwards.", detail.Favour(p.K))
			}
			if h.back && detail.BackOpens(p.K) && laps(p.K) {
				p.Rule("It has no vent or pleat of its own: below the opening its edges are turned in and sewn to those of the garment.")
			}
			p.Draw("lining_hem", p.Line(h.id("hem")).Offset(-detail.LiningHigher.MM(), bench.OffsetTolerance), pattern.RoleBalance)
		},
	}
}

// facingEdge is the mark of the edge that a lining begins at.
func facingEdge(k pattern.Known) string {
	switch {
	case k.Garment == pattern.Skirt:
		return "waist_facing"
	case detail.HasSleeve(k):
		return "neck_facing"
	}
	return "facing"
}

func liningRefused(k pattern.Known) bool {
	_, refused := noLining(k)
	return refused
}

func liningImpossible(p *bench.Pen) bool {
	r, refused := noLining(p.K)
	if refused {
		p.Refuse(r)
	}
	return refused
}

// dartsTooShort refuses a lining that would begin below the darts of a skirt.
func dartsTooShort(p *bench.Pen, h half) bool {
	if p.K.Garment != pattern.Skirt || detail.Lining(p.K) != detail.FacingLining {
		return false
	}
	name := skirtWaist
	if p.Has(h.id(flaredWaist)) {
		name = flaredWaist
	}
	for _, d := range waistlineOf(h, name, p.Has, p.At, p.Line).Darts {
		if left := d.Leg() - p.K.Length("waist_facing_width"); left < measure.Inch/2 {
			p.Refuse(pattern.Refused{
				Code: "R34", Input: "waist_facing_width",
				Says: measure.Tell("below a waist facing {} wide only {} of a dart are left for the lining", p.K.Length("waist_facing_width"), max(0, left)),
				Cure: measure.Tell("a facing {} wide or less, or a full lining", (d.Leg() - measure.Inch/2).Down(measure.Inch/8)),
			})
			return true
		}
	}
	return false
}

// facingOverSeam refuses a lining from a facing that reaches over a panel seam:
// part of it would begin on the other panel.
func facingOverSeam(p *bench.Pen, h half) bool {
	seam := p.Line(h.id("panel_centre"))
	if detail.Lining(p.K) != detail.FacingLining || len(seam) == 0 {
		return false
	}
	if len(geom.Cross(p.Line(h.id(facingEdge(p.K))), seam)) == 0 {
		return false
	}
	p.Refuse(pattern.Refused{
		Code: "R34", Input: "lining",
		Says: measure.Tell("the facing of the " + string(h.piece) + " reaches over the panel seam, and its lining would begin on two panels"),
		Cure: measure.Tell("a full lining, or none"),
	})
	return true
}

// noLining says why a lining has no facing to begin at.
func noLining(k pattern.Known) (pattern.Refused, bool) {
	r := pattern.Refused{Code: "R34", Input: "lining", Cure: measure.Tell("a full lining, or none")}
	if detail.Lining(k) != detail.FacingLining {
		return r, false
	}
	if k.Garment == pattern.Skirt {
		r.Says = measure.Tell("a band holds the waist, and there is no facing for the lining to begin at")
		return r, detail.WaistFinish(k) != detail.FacedWaist
	}
	kind, place := detail.FacingKind(k), detail.DartPlace(k)
	upper := hasDart(k) && (place == detail.ShoulderDart || place == detail.NeckDart || place == detail.CentreDart)
	panel := detail.PanelSeam(k)
	switch {
	case kind == detail.BiasFacing:
		r.Says = measure.Tell("strips finish the edges, and there is no facing for the lining to begin at")
	case kind == detail.SeparateFacings && !setIn(k):
		r.Says = measure.Tell("two facings share the shoulder; between them the lining would be a strip that cannot be sewn")
		r.Cure = measure.Tell("one facing all in one, or a full lining")
	case detail.HasBackDart(k):
		r.Says = measure.Tell("the dart in the back shoulder lies across the edge of the facing; the lining would begin in the middle of it")
	case upper || place == detail.ArmholeDart && hasDart(k) && !setIn(k):
		r.Says = measure.Tell("the bust dart lies across the edge of the facing; the lining would begin in the middle of it")
	case panel == detail.ShoulderPanel || panel == detail.ArmholePanel && !setIn(k):
		r.Says = measure.Tell("the panel seams run across the edge of the facing; the lining of every panel would begin in the middle of its seam")
	default:
		return r, false
	}
	return r, true
}
