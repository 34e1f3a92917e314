package garment

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

func zipEnd(k pattern.Known) measure.Length { return detail.ZipEnd(k).Result() }

func thumbNeckFacing(h half) bench.Step {
	return bench.Step{
		ID: h.id("neck_facing"), Piece: h.piece, Title: "Neck facing",
		Why:     measure.Tell("Traced from the cut edge; {3 in} deep at the centre, so that it does not roll out."),
		Slip:    measure.Tell("A facing drawn apart from the neck: the two do not fit."),
		Choices: []pattern.ChoiceID{"facing_neck_width", "facing_neck_depth"},
		Uses:    h.uses("neck_point", "shoulder_end", "neck_centre"),
		Draw: func(p *bench.Pen) {
			n, s := p.At(h.id("neck_point")), p.At(h.id("shoulder_end"))
			w := min(p.K.Length("facing_neck_width"), measure.Length(n.Dist(s)))
			below := p.K.Length("facing_neck_depth")
			depth := measure.Length(p.At(h.id("neck_centre")).Y) + below
			p.Sum(measure.Of("width", w))
			p.Do("Trace the neck. Mark {} along the shoulder and {} below the neck at the "+h.centre+", and join them with a curve like the neck's.", w, below)
			dir := n.To(s).Unit()
			p.Draw("neck_facing", detail.NeckFacingOuter(n, dir, dir.Right(), w, depth, h.back), pattern.RoleBalance)
		},
	}
}

func thumbArmholeFacing(h half) bench.Step {
	return bench.Step{
		ID: h.id("armhole_facing"), Piece: h.piece, Title: "Armhole facing",
		Why:     measure.Tell("{2 in} wide all along and {2 in} along the shoulder; front and back are cut apart and joined. Neck and armhole facing may meet."),
		Slip:    measure.Tell("Narrowing it under the arm, where it turns out first."),
		Choices: []pattern.ChoiceID{"facing_armhole_width"},
		Uses:    h.uses("armhole", "underarm", "neck_point", "shoulder_end"),
		Draw: func(p *bench.Pen) {
			w := p.Sum(measure.Of("width", p.K.Length("facing_armhole_width")))
			p.Do("Trace the armhole and rule a line beside it, {} inside all along, from the shoulder to the side.", w)
			n, s, u := p.At(h.id("neck_point")), p.At(h.id("shoulder_end")), p.At(h.id("underarm"))
			p.Draw("armhole_facing", detail.Parallel(p.Line(h.id("armhole")), w, geom.Line{At: n, Dir: n.To(s)}, plumb(u)), pattern.RoleBalance)
		},
	}
}

// plumb is the upright line down from the underarm: with the dart closed the
// side of a facing runs straight.
func plumb(u geom.Point) geom.Path {
	return geom.Lines(u, u.Add(geom.Vector{Y: rule.In(12).MM()}))
}

func thumbStitching(h half) bench.Step {
	uses := h.uses("neck", "shoulder", "armhole", "side_upper", "side", "hem", "neck_facing", "armhole_facing")
	if h.back {
		uses = append(uses, h.id("slit_top"))
	} else {
		uses = append(uses, h.uses("dart_tip", "dart_lower")...)
	}
	return bench.Step{
		ID: h.id("stitching"), Piece: h.piece, Title: "Stitching line",
		Why:     measure.Tell("The figure holds the allowance. What is sewn lies inside it, and sewn girths are her own: without ease."),
		Slip:    measure.Tell("Sewing every seam with the same allowance."),
		Choices: []pattern.ChoiceID{"shoulder_allowance", "neck_allowance", "armhole_allowance", "hem_allowance"},
		Uses:    uses,
		Draw: func(p *bench.Pen) {
			k := p.K
			p.Do("The seam lies inside the edge: {} at the side, {} at the shoulder, {} at the neck, {} at the armhole. Cut {} below the hem line.",
				rule.ThumbAllowance, k.Length("shoulder_allowance"), k.Length("neck_allowance"), k.Length("armhole_allowance"), k.Length("hem_allowance"))
			p.Rule("Sewn with {1/2 in} instead of {1 in} at the sides the dress gains {2 in} all round; with {1 in} it has no ease.")
		},
	}
}
