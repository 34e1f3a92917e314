package garment

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
)

// facingSteps draw the facings of one half on the half itself, from its
// finished edges.
func facingSteps(h half) []bench.Step {
	return []bench.Step{
		{
			ID: h.id("neck_facing"), Piece: h.piece, Title: "Neck facing",
			Why:     measure.Tell("A facing is traced from the finished edge, so that both are the same. At the shoulder it takes no more than half, or the facings lie double."),
			Slip:    measure.Tell("Tracing the facing before the neck was changed."),
			Choices: []pattern.ChoiceID{"facing_neck_width", "facing_neck_depth", pattern.ChoiceID(string(h.piece) + "_neck_depth")},
			Uses:    h.uses("neck_point", "shoulder_end", "neck_centre", "neck_base", "bone_end"),
			Draw: func(p *bench.Pen) {
				s := shoulderOf(p, h)
				w := detail.NeckFacingWidth(p.K.Length("facing_neck_width"), s.Left())
				depth := measure.Length(p.At(h.id("neck_centre")).Y) + p.K.Length("facing_neck_depth")
				p.Sum(measure.Least(measure.Of("chosen width", p.K.Length("facing_neck_width")), measure.Drawn("shoulder", s.Left()).Over(2).Down(measure.Inch/8)))
				p.Do("Trace the neck. Mark {} along the shoulder and {} below the neck at the "+h.centre+", and join them with a curve like the neck's.", w, p.K.Length("facing_neck_depth"))
				p.Draw("neck_facing", detail.NeckFacingOuter(s.Neck, s.Dir, s.Down, w, depth, h.back), pattern.RoleBalance)
			},
		},
		{
			ID: h.id("armhole_facing"), Piece: h.piece, Title: "Armhole facing",
			Why:     measure.Tell("One width all along, so that it lies flat. It keeps clear of the neck facing and of the dart."),
			Slip:    measure.Tell("A facing that runs over the dart: two thick folds on each other."),
			Choices: []pattern.ChoiceID{"facing_armhole_width", "facing_neck_width"},
			Uses:    h.uses("armhole", "underarm", "waist", "neck_point", "shoulder_end", "neck_base", "bone_end"),
			Draw: func(p *bench.Pen) {
				s := shoulderOf(p, h)
				w := armholeFacingWidth(p.K, s.Left())
				p.Sum(measure.Of("width", w))
				p.Do("Trace the armhole and rule a line beside it, {} inside all along, from the shoulder to the side.", w)
				u := p.At(h.id("underarm"))
				line := geom.Line{At: s.Neck, Dir: s.Dir}
				p.Draw("armhole_facing", detail.Parallel(p.Line(h.id("armhole")), w, line, geom.Lines(u, p.At(h.id("waist")))), pattern.RoleBalance)
			},
		},
	}
}

func armholeFacingWidth(k pattern.Known, shoulder measure.Length) measure.Length {
	below := measure.Length(0)
	if hasDart(k) {
		below = k.Length("side_dart_below")
	}
	neck := detail.NeckFacingWidth(k.Length("facing_neck_width"), shoulder)
	return max(measure.Inch/2, detail.ArmholeFacingWidth(k.Length("facing_armhole_width"), shoulder, neck, below))
}

// allowanceStep is the last step of a half; the pieces are cut from its
// marks, and their cutting line is drawn then.
func allowanceStep(h half) bench.Step {
	uses := h.uses("neck", "shoulder", "armhole", "side", "hem", "neck_facing", "armhole_facing")
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
		Draw: func(p *bench.Pen) {
			k := p.K
			p.Do("Outside the net line add {} at the side, {} at the shoulder, {} at neck and armhole and {} at the hem. Mark the notches and the grain.",
				k.Length("side_allowance"), k.Length("shoulder_allowance"), k.Length("neck_allowance"), k.Length("hem_allowance"))
			p.Rule("Below the hem line the side mirrors the side above it, so that the turned hem lies flat.")
		},
	}
}
