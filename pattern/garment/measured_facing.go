package garment

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

// facingSteps draw the facings of one half on the half itself, from its
// finished edges.
func facingSteps(h half) []bench.Step {
	return []bench.Step{
		{
			ID: h.id("neck_facing"), Piece: h.piece, Title: "Neck facing", If: facedBy(detail.SeparateFacings),
			Why:     measure.Tell("A facing is traced from the finished edge, so that both are the same. At the shoulder it takes no more than half, or the facings lie double."),
			Slip:    measure.Tell("Tracing the facing before the neck was changed."),
			Choices: []pattern.ChoiceID{"facing_neck_width", "facing_neck_depth", pattern.ChoiceID(string(h.piece) + "_neck_depth")},
			Uses:    h.uses("neck_point", "shoulder_end", "neck_centre", "neck_base", "bone_end"),
			Draw: func(p *bench.Pen) {
				s := closedShoulder(p, h)
				room := facingRoom(p, h, s)
				chosen := measure.Of("chosen width", p.K.Length("facing_neck_width"))
				w := p.Sum(neckFacingWidth(p.K, min(room, otherRoom(p, h, room))))
				if !detail.HasSleeve(p.K) {
					p.Slip(chosen, "That is more than half of this shoulder: the facings would lie double.")
					p.Slip(measure.Drawn("shoulder", room), "That is the whole shoulder: the armhole facing needs the other half.")
				}
				line := "curve"
				if detail.NeckStyle(p.K, h.back) != detail.RoundNeckline {
					line = "line"
				}
				p.Do("Trace the neck. Mark {} along the shoulder and {} below the neck at the "+h.centre+", and join them with a "+line+" like the neck's.", w, p.K.Length("facing_neck_depth"))
				if detail.NeckStyle(p.K, h.back) == detail.FunnelNeckline {
					w = max(w, rule.In(1)) // beyond the curve of its seam
				}
				foot := 0.0
				if o := p.Line(h.id("neck_opening")); len(o) > 0 {
					foot = o.Start().Y
				}
				p.Draw("neck_facing", detail.NecklineOf(p.K, s, h.back).Facing(s.Dir, w, p.K.Length("facing_neck_depth"), foot), pattern.RoleBalance)
			},
		},
		{
			ID: h.id("armhole_facing"), Piece: h.piece, Title: "Armhole facing",
			If:      func(k pattern.Known) bool { return detail.FacingKind(k) == detail.SeparateFacings && !setIn(k) },
			Why:     measure.Tell("One width all along, so that it lies flat. It keeps clear of the neck facing and of the dart."),
			Slip:    measure.Tell("A facing that runs over the dart: two thick folds on each other."),
			Choices: []pattern.ChoiceID{"facing_armhole_width", "facing_neck_width"},
			Uses:    h.uses("armhole", "underarm", "waist", "neck_point", "shoulder_end", "neck_base", "bone_end"),
			Draw: func(p *bench.Pen) {
				s := outerShoulder(p, h)
				room := facingRoom(p, h, closedShoulder(p, h))
				w := armholeFacingWidth(p.K, room, min(room, otherRoom(p, h, room)))
				p.Sum(measure.Of("width", w))
				p.Do("Trace the armhole and rule a line beside it, {} inside all along, from the shoulder to the side.", w)
				u := under(p.Has, p.At, h)
				arm, line := p.Line(h.id("armhole")), geom.Line{At: s.Neck, Dir: s.Dir}
				if detail.HasSleeve(p.K) {
					p.Do("Below its middle no sleeve covers the armhole: trace that part and rule a line beside it, {} inside all along, to the side.", w)
					arm = detail.LowerArmhole(arm)
					line = geom.Line{At: arm.Start(), Dir: geom.Vector{X: 1}}
				}
				p.Draw("armhole_facing", detail.Parallel(arm, w, line, geom.Lines(u, p.At(h.id("waist")))), pattern.RoleBalance)
			},
		},
	}
}

// facingRoom is what both facings share: the shoulder, or where the neck
// comes nearer to the armhole below it, that strip.
func facingRoom(p *bench.Pen, h half, s detail.Shoulder) measure.Length {
	neck, arm := p.Line(h.id("neck")), p.Line(h.id("armhole"))
	if detail.NeckStyle(p.K, h.back) == detail.RoundNeckline || len(neck) == 0 || len(arm) == 0 {
		return s.Left()
	}
	return min(s.Left(), detail.Strap(neck, arm))
}

// otherRoom is the room of the other half, where that is drawn: front and back
// facing are sewn to each other at the shoulder.
func otherRoom(p *bench.Pen, h half, own measure.Length) measure.Length {
	o := theBack
	if h.back {
		o = theFront
	}
	for _, name := range o.uses("neck", "armhole", "neck_point", "shoulder_end", "neck_base", "bone_end") {
		if !p.Has(name) {
			return own
		}
	}
	return facingRoom(p, o, closedShoulder(p, o))
}

// neckFacingWidth is the width of a neck facing at the shoulder: no more than
// half of it, or where a sleeve begins at its end, clear of that seam.
func neckFacingWidth(k pattern.Known, room measure.Length) measure.Working {
	chosen := measure.Of("chosen width", k.Length("facing_neck_width"))
	if detail.HasSleeve(k) {
		return measure.Most(measure.Fixed(0), measure.Least(chosen, measure.Drawn("shoulder", room).Minus(measure.Fixed(rule.In(0.75))).Down(rule.Eighth)))
	}
	return measure.Least(chosen, measure.Drawn("shoulder", room).Over(2).Down(rule.Eighth))
}

// armholeFacingWidth is what a neck facing of so much room leaves of the
// shoulder.
func armholeFacingWidth(k pattern.Known, shoulder, neckRoom measure.Length) measure.Length {
	below := measure.Length(0)
	if dartInSide(k) {
		below = k.Length("side_dart_below")
	}
	neck := neckFacingWidth(k, neckRoom).Result()
	if detail.HasSleeve(k) {
		neck, shoulder = 0, shoulder+k.Length("facing_armhole_width") // it begins below the shoulder
	}
	return max(measure.Inch/2, detail.ArmholeFacingWidth(k.Length("facing_armhole_width"), shoulder, neck, below))
}

// allowanceStep is the last step of a half; the pieces are cut from its
// marks, and their cutting line is drawn then.
func allowanceStep(h half) bench.Step {
	uses := h.uses("neck", "shoulder", "armhole", "side", "hem")
	if h.back {
		uses = append(uses, h.id("slit_top"))
	}
	return bench.Step{
		ID: h.id("allowances"), Piece: h.piece, Title: "Allowances, notches and grain",
		Why:  measure.Tell("The draft is net. Cloth for the seams is added last, and never at a fold."),
		Slip: measure.Tell("Giving the allowance twice, or giving it to the fold."),
		Choices: []pattern.ChoiceID{
			"side_allowance", "shoulder_allowance", "neck_allowance", "armhole_allowance", "hem_allowance", "zip_allowance",
		},
		Uses: uses,
		Also: func(k pattern.Known) []string { return cutNeeds(k, h) },
		Draw: func(p *bench.Pen) {
			k := p.K
			p.Do("Outside the net line add {} at the side, {} at the shoulder, {} at neck and armhole and {} at the hem. Mark the notches and the grain.",
				k.Length("side_allowance"), k.Length("shoulder_allowance"), k.Length("neck_allowance"), k.Length("hem_allowance"))
			p.Rule("Below the hem line the side mirrors the side above it, so that the turned hem lies flat.")
		},
	}
}

// cutNeeds are the marks that the pieces of a half want besides, by what was
// chosen: a piece is not cut without a part of it that was refused.
func cutNeeds(k pattern.Known, h half) []string {
	out := facingMarks(k, h)
	if !h.back && detail.HasNeckOpening(k) {
		out = append(out, h.id("neck_opening"))
	}
	if waistDartWanted(k, h) {
		out = append(out, h.id(waistDartName(0)))
	}
	if h.back && backShaped(k) {
		out = append(out, h.id("centre_back"))
	}
	if !h.back && (placed(k) || splitDart(k)) {
		out = append(out, h.id("dart_end"))
	}
	if !h.back && detail.HasFrontSeam(k) {
		out = append(out, h.id("centre_front"))
	}
	if detail.HasWaistSeam(k) {
		out = append(out, h.uses(bodiceWaist, skirtWaist, "skirt_side")...)
	}
	if flaredSkirt(k) {
		out = append(out, h.id("skirt_hip"))
	}
	if !h.back && detail.HasPlacket(k) {
		out = append(out, h.id("placket"))
	}
	if detail.HasLining(k) {
		out = append(out, h.id("lining_hem"))
	}
	if detail.HasPanels(k) {
		out = append(out, h.id("panel_centre"))
	}
	if !h.back && pinched(k) {
		out = append(out, h.id("underarm_pinched"))
	}
	if !h.back && neckPinched(k) {
		out = append(out, h.id("neck_pinch"))
	}
	if h.back && swayed(k) {
		out = append(out, h.id("sway_line"))
	}
	if h.back && detail.HasBackDart(k) {
		out = append(out, h.id("shoulder_dart_end"))
	}
	return out
}
