package garment

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

// skirtNeeds are what a skirt on its own reads.
var skirtNeeds = []measure.ID{measure.WaistGirth, measure.HipGirth, measure.WaistToHip, measure.WaistToKnee}

// skirtSteps draft a skirt on its own: a quarter of her on each piece, levels
// counted from the waist at the centre.
func skirtSteps() []bench.Step {
	var s []bench.Step
	for _, h := range []half{theBack, theFront} {
		s = append(s, skirtLevels(h), skirtHip(h), skirtHem(h), skirtWaistStep(h), skirtSideStep(h), skirtDartStep(h), flareStep(h))
		if h.back {
			s = append(s, skirtOpenings()...)
			s = append(s, skirtSideZip())
		}
	}
	for _, h := range []half{theBack, theFront} {
		slit := sideSlit(h)
		slit.Uses = h.uses("skirt_side", "waist", "hip", "hem_side")
		s = append(s, slit)
	}
	s = append(s, waistFacing(theBack), waistFacing(theFront), waistBand(), hemFacingStep())
	s = append(s, liningStep(theBack, "waist_finish"), liningStep(theFront, "waist_finish"))
	return append(s, skirtAllowances(theBack), skirtAllowances(theFront))
}

func skirtLevels(h half) bench.Step {
	return bench.Step{
		ID: h.id("levels"), Piece: h.piece, Title: "Centre and levels",
		Why:     measure.Tell("A skirt hangs from the waist, so its levels count from there. Half is drawn; the other half is its mirror."),
		Slip:    measure.Tell("Taking the hip line where the tape says a size: it lies where she is fullest."),
		Needs:   []measure.ID{measure.WaistToHip},
		Choices: hemCentre(h, "skirt_length"),
		Draw: func(p *bench.Pen) {
			hip, hem := p.K.Body(measure.WaistToHip), p.K.Length("skirt_length")-raised(p.K, h)
			p.Sum(measure.Measured("waist to hip", hip))
			p.Do("Rule the "+h.centre+" and the waist line square to it. Down the "+h.centre+" mark the hip at {} and the hem at {}.", hip, hem)
			if set, ok := p.K.Setting("skirt_length"); ok {
				p.Because(set.Default.Because)
			}
			if hem-hip < rule.In(3) {
				p.Refuse(pattern.Refused{
					Code: "R8", Input: "skirt_length",
					Says: measure.Tell("the hem at {} lies less than {3 in} below the hip line at {}; there is no skirt to draw", hem, hip),
					Cure: measure.Tell("a length of {} or more", hip+rule.In(3)),
				})
				return
			}
			wide := rule.In(12).MM()
			p.Guide("centre", geom.Point{}, out(0, hem.MM()))
			p.Guide("waist_line", geom.Point{}, geom.Point{X: wide})
			p.Guide("hip_line", out(0, hip.MM()), geom.Point{X: wide, Y: hip.MM()})
			p.Guide("hem_line", out(0, hem.MM()), geom.Point{X: wide, Y: hem.MM()})
			p.Point("waist_centre", geom.Point{})
			p.Point("hem_centre", out(0, hem.MM()))
		},
	}
}

func skirtHip(h half) bench.Step {
	return bench.Step{
		ID: h.id("hip"), Piece: h.piece, Title: "Hip at the side",
		Why:     measure.Tell("Room to sit. A quarter of the girth and a quarter of the ease go on each quarter of the skirt."),
		Slip:    measure.Tell("Adding the whole ease to one quarter: four times too much."),
		Needs:   []measure.ID{measure.HipGirth, measure.WaistToHip},
		Choices: []pattern.ChoiceID{"ease_hip"},
		Uses:    h.uses("hem_centre"),
		Draw: func(p *bench.Pen) {
			x := p.Sum(rule.HipWidth(p.K))
			y := p.K.Body(measure.WaistToHip)
			p.Do("On the hip line, {} down, measure {} out from the "+h.centre+" and mark it.", y, x)
			hip := measure.Measured("hip", p.K.Body(measure.HipGirth))
			p.Slip(hip.Over(4), "The ease is left out: she could not sit.")
			p.Slip(hip.Over(4).Plus(measure.Of("ease", p.K.Length("ease_hip"))), "The whole ease was added to one quarter.")
			p.Slip(hip.Over(2).Plus(measure.Of("ease", p.K.Length("ease_hip")).Over(4)), "That is half of her; front and back lie double, so a quarter is used.")
			p.Point("hip", out(x, y.MM()))
		},
	}
}

func skirtHem(h half) bench.Step {
	return bench.Step{
		ID: h.id("hem"), Piece: h.piece, Title: "Hem",
		Why:     measure.Tell("The seam from hip to hem is as long as the centre from hip to hem, so the hem hangs level."),
		Slip:    measure.Tell("Ruling the hem straight across under a slanting side: it dips there."),
		Needs:   []measure.ID{measure.HipGirth, measure.WaistToHip},
		Choices: hemLevels(h, "skirt_length", "skirt_line", "hem_peg", "hem_flare"),
		Uses:    h.uses("hip", "hem_centre"),
		Draw: func(p *bench.Pen) {
			at := p.At(h.id("hip"))
			centre, higher := evenHem(p, h)
			more := -detail.HemNarrower(p.K)
			if flaredSkirt(p.K) {
				more /= 2
			}
			x := p.Sum(measure.Drawn("hip width", measure.Length(at.X)).Plus(measure.Of("wider", more)))
			if more < 0 {
				x = p.Sum(measure.Drawn("hip width", measure.Length(at.X)).Minus(measure.Of("peg", -more)))
			}
			run := centre.Y - at.Y
			if abs := max(more, -more); abs.MM() >= run/3 || abs > rule.In(4) || x < rule.In(2) || more < 0 && detail.Widens(p.K) || more > 0 && !detail.Widens(p.K) {
				p.Refuse(pattern.Refused{
					Code: "R13", Input: hemInput(p.K),
					Says: measure.Tell("a hem {} out under a hip of {} over {} of skirt cannot be drawn", x, measure.Length(at.X), measure.Length(run)),
					Cure: measure.Tell("a hem that differs less from the hip"),
				})
				return
			}
			side := detail.HemSide(at, measure.Length(centre.Y), -more)
			p.Do("Measure {} out and {} down, and mark the hem at the side; join it to the hem at the "+h.centre+".", x, measure.Length(side.Y))
			p.Point("hem_side", side)
			line := geom.Lines(side, centre)
			if more > 0 {
				p.Do("Measure {} out and {} down, and mark the hem at the side. Rule it to the hem at the "+h.centre+", and over its last {2 in} curve it square to the side.", x, measure.Length(side.Y))
				line = detail.FlaredHem(side, at, centre)
			}
			p.Draw("hem", detail.LevelledHem(line, higher), pattern.RoleStitch)
		},
	}
}

func hemInput(k pattern.Known) string {
	if detail.Widens(k) {
		return "hem_flare"
	}
	return "hem_peg"
}

// skirtIn gathers what a half is drawn from.
func skirtIn(p *bench.Pen, h half) detail.SkirtIn {
	hip, side := p.At(h.id("hip")), p.At(h.id("hem_side"))
	return detail.SkirtIn{
		Quarter: hip.X, Hip: hip.Y, Raise: p.K.Length("side_raise").MM(), Side: side, Flare: side.X - hip.X,
		Sewn: (rule.HipWidth(p.K).Result() - detail.SkirtSideIn(p.K)).MM(),
	}
}

func skirtWaistStep(h half) bench.Step {
	return bench.Step{
		ID: h.id("waist"), Piece: h.piece, Title: "Waist line",
		Why:     measure.Tell("What she is narrower at the waist than at the hip goes into darts, and no more than {1 1/2 in} into the side. At the side the waist is raised, since the tape runs over the hip there."),
		Slip:    measure.Tell("Ruling the waist straight: the side seam then pulls it down."),
		Needs:   []measure.ID{measure.WaistGirth, measure.HipGirth, measure.WaistToHip},
		Choices: []pattern.ChoiceID{"ease_waist", "ease_hip", "side_raise"},
		Uses:    h.uses("hip", "hem_side", "waist_centre"),
		Draw: func(p *bench.Pen) {
			in := skirtIn(p, h)
			wanted, taken := rule.WaistWanted(p.K), detail.SkirtSideIn(p.K)
			long := p.Sum(measure.Drawn("hip width", measure.Length(in.Quarter)).Minus(measure.Of("in at the side", taken)))
			waistSlips(p)
			if long < wanted.Result()-0.01 || wanted.Result() < rule.In(3) || in.Raise > rule.In(2).MM() || in.Raise < 0 {
				p.Refuse(pattern.Refused{
					Code: "R31", Input: string(measure.WaistGirth),
					Says: measure.Tell("a quarter of the waist with its ease is {}, of the hip {}; a skirt that is no narrower above does not stay up", wanted.Result(), measure.Length(in.Quarter)),
					Cure: measure.Tell("measure waist and hip again, the hip round the belly where she is widest there"),
				})
				return
			}
			line, end := in.Waist()
			p.Do("From the waist at the "+h.centre+" draw a curve that begins level and ends {} higher, {} out, square to the side: {} long.", measure.Length(in.Raise), measure.Length(end.X), long)
			p.Rule("A quarter of the waist is {}; the side takes in {}, the darts the rest.", wanted.Result(), taken)
			p.Point("waist", end)
			p.Draw("waist_curve", line, pattern.RoleStitch)
		},
	}
}

func waistSlips(p *bench.Pen) {
	waist := measure.Measured("waist", p.K.Body(measure.WaistGirth))
	p.Slip(waist.Over(4).Plus(measure.Of("ease", p.K.Length("ease_waist")).Over(4)), "That is the waist as it is worn; the cloth of the darts is still to be added.")
	p.Slip(waist.Over(4), "The ease and the cloth of the darts are left out.")
}

func skirtSideStep(h half) bench.Step {
	return bench.Step{
		ID: h.id("side"), Piece: h.piece, Title: "Side seam",
		Why:     measure.Tell("The side follows the hip and goes on in the direction of the skirt, front and back alike, so that they lie on each other."),
		Slip:    measure.Tell("Bowing it out above the hip: it stands off there."),
		Choices: []pattern.ChoiceID{"side_shape", "skirt_line"},
		Uses:    h.uses("waist", "hip", "hem_side"),
		Draw: func(p *bench.Pen) {
			line := skirtIn(p, h).SideLine(p.At(h.id("waist")), p.K.Pick("side_shape") != "straight")
			p.Sum(measure.Drawn("side", measure.Length(line.Length())))
			p.Do("Join waist and hip with a curve, and rule on to the hem.")
			p.Draw("skirt_side", line, pattern.RoleStitch)
		},
	}
}

func skirtDartStep(h half) bench.Step {
	return bench.Step{
		ID: h.id("darts"), Piece: h.piece, Title: "Darts",
		Why:     measure.Tell("The seat is fuller than the belly and lies lower, so the back has the larger part and the longer darts."),
		Slip:    measure.Tell("One wide dart: it points. More than {1 in} in front is shared by two."),
		Needs:   []measure.ID{measure.WaistGirth, measure.HipGirth},
		Choices: []pattern.ChoiceID{"ease_waist", "ease_hip"},
		Uses:    h.uses("waist_curve", "waist", "hem_side"),
		Draw: func(p *bench.Pen) {
			darts := detail.SkirtDarts(p.K, h.back)
			line := p.Line(h.id("waist_curve"))
			w := detail.Darted(line, darts)
			p.Sum(measure.Drawn("waist, darts closed", w.Length()))
			switch len(darts) {
			case 0:
				p.Do("There is too little to spare for a dart; the side takes it all.")
			case 1:
				p.Do("Along the waist line mark the middle of the dart {} from the "+h.centre+", and {} to either side of it. Square to the line go {} down and rule both legs.", darts[0].At, darts[0].Intake/2, darts[0].Long)
			default:
				p.Do("Along the waist line mark the middles of two darts {} and {} from the "+h.centre+", each {} wide. Square to the line go {} down from the first and {} from the second, and rule the legs.",
					darts[0].At, darts[1].At, darts[0].Intake, darts[0].Long, darts[1].Long)
			}
			if skirtDartImpossible(p, h, darts, measure.Length(line.Length())) {
				return
			}
			drawWaistline(p, skirtWaist, w)
		},
	}
}

// skirtDartImpossible refuses darts that find no room on the waist line.
func skirtDartImpossible(p *bench.Pen, h half, darts []detail.SkirtDart, long measure.Length) bool {
	for i, d := range darts {
		from := measure.Length(0)
		if i > 0 {
			from = darts[i-1].At + darts[i-1].Intake/2
		}
		r := pattern.Refused{Code: "R31", Input: string(measure.WaistGirth)}
		switch {
		case d.Intake > d.Long/2:
			r.Says = measure.Tell("a dart {} wide over {} points", d.Intake, d.Long)
			r.Cure = measure.Tell("more ease at the waist, or measure waist and hip again")
		case d.At-d.Intake/2 < from+rule.In(0.25) || d.At+d.Intake/2 > long-rule.In(0.75):
			r.Says = measure.Tell("a dart {} wide, {} out, finds no room on a waist line of {}", d.Intake, d.At, long)
			r.Cure = measure.Tell("more ease at the waist, or measure waist and hip again")
		default:
			continue
		}
		p.Refuse(r)
		return true
	}
	return false
}

// waistFacing traces a facing from the waist with the darts closed.
func waistFacing(h half) bench.Step {
	return bench.Step{
		ID: h.id("waist_facing"), Piece: h.piece, Title: "Waist facing", If: func(k pattern.Known) bool { return detail.WaistFinish(k) == detail.FacedWaist },
		Why:     measure.Tell("A facing is traced from the finished edge with the darts closed, so that it lies flat inside it."),
		Slip:    measure.Tell("Tracing it with the darts open: it is too long by all of them."),
		Choices: []pattern.ChoiceID{"waist_finish", "waist_facing_width"},
		Uses:    h.uses(skirtWaist, "skirt_side"),
		Also:    flareNeeds(h),
		Draw: func(p *bench.Pen) {
			width := p.Sum(measure.Of("width", p.K.Length("waist_facing_width")))
			name := skirtWaist
			if p.Has(h.id(flaredWaist)) {
				name = flaredWaist
			}
			w := waistlineOf(h, name, p.Has, p.At, p.Line)
			if width < rule.In(0.75) || width > rule.In(6) {
				p.Refuse(pattern.Refused{
					Code: "R31", Input: "waist_facing_width",
					Says: measure.Tell("a waist facing {} wide cannot be worn", width),
					Cure: measure.Tell("between {1 1/2 in} and {3 in}"),
				})
				return
			}
			top := w.Closed(p.Line(h.id("skirt_side")).StartTangent())
			p.Do("Close the darts on paper and trace the waist, smooth from the "+h.centre+" to the side. Draw a line {} below it all along.", width)
			p.Draw("waist_facing_top", top, pattern.RoleGuide)
			// Square to the centre and to the side, so its ends lie on both.
			p.Draw("waist_facing", top.Offset(-width.MM(), bench.OffsetTolerance), pattern.RoleBalance)
		},
	}
}

func flareNeeds(h half) func(pattern.Known) []string {
	return func(k pattern.Known) []string {
		if flaredSkirt(k) {
			return h.uses("skirt_hip")
		}
		return nil
	}
}

// bandLap is what a waistband is longer than the waist, to lap and to button
// (common practice, no source).
const bandLap = measure.Inch

func waistBand() bench.Step {
	return bench.Step{
		ID: "front.waist_band", Piece: pattern.Front, Title: "Waistband", If: func(k pattern.Known) bool { return detail.WaistFinish(k) == detail.BandedWaist },
		Why:     measure.Tell("A straight band holds the waist and is folded over its edge. It laps an inch where the skirt opens."),
		Slip:    measure.Tell("Cutting it to the waist as measured: the skirt is wider by its ease."),
		Choices: []pattern.ChoiceID{"waist_finish", "waist_band_width"},
		Uses:    append(theFront.uses(skirtWaist), theBack.uses(skirtWaist)...),
		Draw: func(p *bench.Pen) {
			front, back := waistlineOf(theFront, skirtWaist, p.Has, p.At, p.Line), waistlineOf(theBack, skirtWaist, p.Has, p.At, p.Line)
			round := 2 * (front.Length() + back.Length())
			width := p.K.Length("waist_band_width")
			long := p.Sum(measure.Drawn("waist, darts closed", round).Plus(measure.Of("to lap", bandLap)))
			if width < rule.In(0.5) || width > rule.In(4) {
				p.Refuse(pattern.Refused{
					Code: "R31", Input: "waist_band_width",
					Says: measure.Tell("a straight band {} wide does not lie on a waist", width),
					Cure: measure.Tell("between {3/4 in} and {2 1/2 in}, or a facing"),
				})
				return
			}
			p.Do("Cut a band {} long and twice {} wide, with the allowance of the waist all round. Fold it along its middle.", long, width)
			p.Guide("waist_band", geom.Point{Y: -2 * width.MM()}, geom.Point{X: long.MM(), Y: -2 * width.MM()})
		},
	}
}

func skirtAllowances(h half) bench.Step {
	return bench.Step{
		ID: h.id("allowances"), Piece: h.piece, Title: "Allowances, notches and grain",
		Why:     measure.Tell("The draft is net. Cloth for the seams is added last, and never at a fold."),
		Slip:    measure.Tell("Giving the allowance twice, or giving it to the fold."),
		Choices: []pattern.ChoiceID{"side_allowance", "waist_allowance", "hem_allowance", "zip_allowance"},
		Uses:    h.uses(skirtWaist, "skirt_side", "hem"),
		Also: func(k pattern.Known) []string {
			uses := flareNeeds(h)(k)
			if h.back {
				uses = append(uses, "back.slit_top")
				if detail.Closure(k) == detail.ZipSide {
					uses = append(uses, "back.side_zip_end")
				}
			}
			if detail.HasLining(k) {
				uses = append(uses, h.id("lining_hem"))
			}
			switch detail.WaistFinish(k) {
			case detail.BandedWaist:
				return append(uses, "front.waist_band")
			case detail.LinedEdges:
				return uses
			}
			return append(uses, h.id("waist_facing"))
		},
		Draw: func(p *bench.Pen) {
			k := p.K
			p.Do("Outside the net line add {} at the side, {} at the waist and {} at the hem. Mark the notches and the grain.",
				k.Length("side_allowance"), k.Length("waist_allowance"), k.Length("hem_allowance"))
			p.Rule("Below the hem line the side mirrors the side above it, so that the turned hem lies flat.")
		},
	}
}
