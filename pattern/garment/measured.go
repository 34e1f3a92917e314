package garment

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

// The measured method: a quarter of the body on each piece, every part by
// its own measurement, drafted net. Back first, because the front's dart is
// trued against the back's side.
func measuredSteps() []bench.Step {
	return netSteps(beginning{
		back:  []bench.Step{backLevels(), neckBase(), boneEnd(), backShoulderLine()},
		front: []bench.Step{frontLevels(), frontShoulderLine()},
		end:   shoulderEnd, width: bustWidth, bust: bustPoint(),
	})
}

// beginning is in what methods differ that draft net: how the shoulder of
// each half is come by, its width at the bust, and the bust point.
type beginning struct {
	back, front []bench.Step
	end, width  func(half) bench.Step
	bust        bench.Step
}

// netSteps is the whole draft from a beginning.
func netSteps(from beginning) []bench.Step {
	var s []bench.Step
	s = append(s, from.back...)
	s = append(s, upperSteps(theBack, from)...)
	s = append(s, sideSteps(theBack)...)
	s = append(s, backSide())
	s = append(s, backWaist()...)
	s = append(s, opening())
	s = append(s, otherOpenings()...)
	s = append(s, sideZip(), swayStep())
	s = append(s, from.front...)
	s = append(s, upperSteps(theFront, from)...)
	s = append(s, from.bust)
	s = append(s, sideSteps(theFront)...)
	s = append(s, dartSteps()...)
	s = append(s, frontSide()...)
	s = append(s, frontWaistDart())
	for _, h := range []half{theBack, theFront} {
		s = append(s, facingSteps(h)...)
		s = append(s, wholeFacing(h))
	}
	s = append(s, biasStep())
	s = append(s, placketSteps()...)
	s = append(s, sleeveSteps()...)
	s = append(s, collarSteps()...)
	s = append(s, turnSteps()...)
	s = append(append(s, splitSteps()...), centreSeam())
	s = append(s, frontPanel(), backPanel())
	for _, h := range []half{theBack, theFront} {
		s = append(s, waistSeam(h), flareStep(h))
	}
	s = append(s, sideSlit(theBack), sideSlit(theFront), hemFacingStep(), liningStep(theBack, "facing"), liningStep(theFront, "facing"))
	return append(s, allowanceStep(theBack), allowanceStep(theFront))
}

func out(x measure.Length, y float64) geom.Point { return geom.Point{X: x.MM(), Y: y} }

func backLevels() bench.Step {
	return bench.Step{
		ID: "back.levels", Piece: pattern.Back, Title: "Centre line and levels",
		Why:     measure.Tell("Every width lies on a level of her body, so the levels come first. Half a back is drawn; the other half is its mirror."),
		Slip:    measure.Tell("Counting the waist from the top line. The nape lies {3/4 in} lower, and the back length starts there."),
		Needs:   []measure.ID{measure.BackNeckToWaist, measure.WaistToHip},
		Choices: []pattern.ChoiceID{"length", detail.HemLevelBack},
		Draw: func(p *bench.Pen) {
			waist := p.Sum(rule.BackWaist(p.K))
			hip, hem := rule.BackHip(p.K).Result(), p.K.Length("length")-raised(p.K, theBack)
			p.Do("Rule the centre line and the top line square to it. Down the centre line mark the waist at {}, the hip at {} and the hem at {}.", waist, hip, hem)
			p.Slip(measure.Measured("back length", p.K.Body(measure.BackNeckToWaist)),
				"That is the back length from the top line: the nape lies {3/4 in} below it.")
			p.Slip(measure.Measured("back length", p.K.Body(measure.BackNeckToWaist)).Minus(measure.Of("nape", rule.NapeDrop)),
				"The {3/4 in} was taken off. The nape lies below the top line, so it is added.")
			if hemTooHigh(p, hem, hip) {
				return
			}
			levels(p, waist, hip, hem)
		},
	}
}

// levels draws the frame of a half: centre, top line and the levels.
func levels(p *bench.Pen, waist, hip, hem measure.Length) {
	wide := rule.In(12).MM()
	p.Guide("centre", geom.Point{}, out(0, hem.MM()))
	p.Guide("top_line", geom.Point{}, geom.Point{X: wide})
	for _, l := range []struct {
		name string
		at   measure.Length
	}{{"waist_line", waist}, {"hip_line", hip}, {"hem_line", hem}} {
		p.Guide(l.name, out(0, l.at.MM()), geom.Point{X: wide, Y: l.at.MM()})
	}
	p.Point("hem_centre", out(0, hem.MM()))
}

func hemTooHigh(p *bench.Pen, hem, hip measure.Length) bool {
	least := detail.LeastSkirt(p.K)
	if hem-hip >= least {
		return false
	}
	p.Refuse(pattern.Refused{
		Code: "R8", Input: "length",
		Says: measure.Tell("the hem at {} lies less than {} below the hip line at {}; there is no skirt to draw", hem, least, hip),
		Cure: measure.Tell("a length of {} or more", hip+least),
	})
	return true
}

func neckBase() bench.Step {
	return bench.Step{
		ID: "back.neck_base", Piece: pattern.Back, Title: "Neck base point",
		Why:   measure.Tell("Everything hangs from the side of the neck. This point lies beside its root."),
		Slip:  measure.Tell("Half the neck instead of a sixth: the dress falls off the shoulder."),
		Needs: []measure.ID{measure.NeckBaseGirth},
		Uses:  theBack.uses("hem_centre"),
		Draw: func(p *bench.Pen) {
			x := p.Sum(rule.NeckHalf(p.K))
			p.Do("On the top line measure {} out from the centre line and mark it.", x)
			p.Rule("A sixth of the neck base and {1/2 in}.")
			neckSlips(p)
			p.Point("neck_base", out(x, 0))
		},
	}
}

func neckSlips(p *bench.Pen) {
	neck := measure.Measured("neck base", p.K.Body(measure.NeckBaseGirth))
	p.Slip(neck.Over(6), "That is the sixth alone: {1/2 in} is still to be added.")
	p.Slip(neck.Over(4), "That is a quarter of the neck; a sixth is taken, since a neck is deeper than it is wide.")
}

func boneEnd() bench.Step {
	return bench.Step{
		ID: "back.bone_end", Piece: pattern.Back, Title: "Shoulder bone",
		Why:   measure.Tell("The slope from the neck to the bone is her own. A wrong slope makes slanting folds."),
		Slip:  measure.Tell("The whole across-shoulders instead of half."),
		Needs: []measure.ID{measure.AcrossShoulders, measure.ShoulderDrop},
		Uses:  theBack.uses("neck_base"),
		Draw: func(p *bench.Pen) {
			x, y := p.Sum(rule.BoneOut(p.K)), p.K.Body(measure.ShoulderDrop)
			p.Do("Measure {} out from the centre line and {} down from the top line, and mark the end of the shoulder bone.", x, y)
			p.Slip(measure.Measured("across shoulders", p.K.Body(measure.AcrossShoulders)), "That is the whole width: half a back is drawn, so half of it is used.")
			p.Slip(rule.BoneOut(p.K).Minus(measure.Fixed(rule.In(0.75))), "That is drawn in already. The bone is marked first, and the edge is drawn in along the shoulder line.")
			p.Point("bone_end", out(x, y.MM()))
		},
	}
}

func backShoulderLine() bench.Step {
	return bench.Step{
		ID: "back.shoulder_line", Piece: pattern.Back, Title: "Shoulder line, moved up",
		Why:     measure.Tell("The seam should lie a little in front of the ridge of the shoulder. What the back gains the front gives."),
		Slip:    measure.Tell("Moving only one piece: then the armholes no longer fit together."),
		Choices: []pattern.ChoiceID{"shoulder_forward"},
		Uses:    theBack.uses("neck_base", "bone_end"),
		Draw: func(p *bench.Pen) {
			fwd := p.K.Length("shoulder_forward")
			p.Do("Join neck base and shoulder bone, and move the line up by {}, keeping it parallel.", fwd)
			shoulderLine(p, p.At("back.neck_base"), p.At("back.bone_end"), -fwd)
		},
	}
}

func shoulderLine(p *bench.Pen, base, bone geom.Point, shift measure.Length) {
	down := geom.Vector{Y: shift.MM()}
	base, bone = base.Add(down), bone.Add(down)
	p.Point("neck_base", base)
	p.Point("bone_end", bone)
	p.Guide("shoulder_line", base, bone)
}

func frontShoulderLine() bench.Step {
	return bench.Step{
		ID: "front.shoulder_line", Piece: pattern.Front, Title: "Shoulder line, moved down",
		Why:     measure.Tell("Neck base and bone lie as on the back. The front gives what the back gained, so the rings of neck and armhole keep their length."),
		Slip:    measure.Tell("Moving the front up as well."),
		Needs:   []measure.ID{measure.NeckBaseGirth, measure.AcrossShoulders, measure.ShoulderDrop},
		Choices: []pattern.ChoiceID{"shoulder_forward"},
		Uses:    theFront.uses("hem_centre"),
		Draw: func(p *bench.Pen) {
			fwd := p.K.Length("shoulder_forward")
			x := p.Sum(rule.NeckHalf(p.K))
			bone, drop := rule.BoneOut(p.K).Result(), p.K.Body(measure.ShoulderDrop)
			p.Do("Mark neck base ({} out) and bone ({} out, {} down) as on the back, join them, and move the line down by {}.", x, bone, drop, fwd)
			neckSlips(p)
			shoulderLine(p, out(x, 0), out(bone, drop.MM()), fwd)
		},
	}
}

func frontLevels() bench.Step {
	return bench.Step{
		ID: "front.levels", Piece: pattern.Front, Title: "Fold and levels",
		Why:     measure.Tell("The front runs over the bust, so it needs more length than the back. The side dart takes that length up again at the seam."),
		Slip:    measure.Tell("Using the back's levels on the front and then sewing a dart: the front side comes out too short."),
		Needs:   []measure.ID{measure.SideNeckToWaist, measure.BackNeckToWaist, measure.WaistToHip},
		Choices: []pattern.ChoiceID{"length", detail.HemLevelFront},
		Draw: func(p *bench.Pen) {
			surplus := rule.FrontSurplus(p.K)
			if surplusImpossible(p, surplus.Result()) {
				return
			}
			d := p.Sum(rule.DartIntake(p.K))
			p.Because(rule.DartIntakeWhy(p.K))
			if rule.Levelled(p.K) != 0 {
				d = p.Sum(rule.FrontLower(p.K))
				p.Rule("No dart. The side seam swings, so the front is {} lower: then its side is as long as the back's.", d)
			}
			waist, hip, hem := rule.BackWaist(p.K).Result()+d, rule.BackHip(p.K).Result()+d, p.K.Length("length")+d-raised(p.K, theFront)
			p.Do("Rule the fold and the top line square to it. Down the fold mark the waist at {}, the hip at {} and the hem at {}: each {} lower than on the back.", waist, hip, hem, d)
			p.Slip(measure.Measured("front length", p.K.Body(measure.SideNeckToWaist)).Minus(measure.Measured("back length", p.K.Body(measure.BackNeckToWaist))),
				"The nape lies {3/4 in} below the top line; that is to be taken off as well.")
			p.Slip(measure.Measured("front length", p.K.Body(measure.SideNeckToWaist)).Minus(measure.Measured("back length", p.K.Body(measure.BackNeckToWaist))).Plus(measure.Of("nape", rule.NapeDrop)),
				"The {3/4 in} was added. It belongs to the back, so it makes the difference smaller.")
			levels(p, waist, hip, hem)
		},
	}
}

func surplusImpossible(p *bench.Pen, d measure.Length) bool {
	front, back := p.K.Body(measure.SideNeckToWaist), p.K.Body(measure.BackNeckToWaist)
	switch {
	case d > rule.In(3):
		p.Refuse(pattern.Refused{
			Code: "R1", Input: string(measure.SideNeckToWaist),
			Says: measure.Tell("side neck to waist {} and back neck to waist {} make the front {} longer than the back; more than {3 in} is no dart that can be sewn", front, back, d),
			Cure: measure.Tell("measure both again with the waist string on; a front of {} to {} fits this back", back+rule.NapeDrop, back+rule.NapeDrop+rule.In(3)),
		})
	case d < rule.In(-2):
		p.Refuse(pattern.Refused{
			Code: "R2", Input: string(measure.SideNeckToWaist),
			Says: measure.Tell("side neck to waist {} and back neck to waist {} make the front {} shorter than the back; no body is like that", front, back, -d),
			Cure: measure.Tell("measure both again with the waist string on; the front starts at the side of the neck, the back at the nape"),
		})
	default:
		return false
	}
	return true
}

func bustPoint() bench.Step {
	return bench.Step{
		ID: "front.bust_point", Piece: pattern.Front, Title: "Bust point",
		Why:   measure.Tell("All shaping of the front turns about this point."),
		Slip:  measure.Tell("The whole distance from point to point instead of half."),
		Needs: []measure.ID{measure.SideNeckToBustPoint, measure.BustPointDistance},
		Uses:  theFront.uses("underarm", "hem_centre"),
		Draw: func(p *bench.Pen) {
			depth := p.K.Body(measure.SideNeckToBustPoint)
			x := p.Sum(measure.Measured("bust point distance", p.K.Body(measure.BustPointDistance)).Over(2))
			p.Do("Go {} down the fold and square out {}. Mark the bust point.", depth, x)
			p.Slip(measure.Measured("bust point distance", p.K.Body(measure.BustPointDistance)), "That is from point to point; the fold lies in the middle, so half of it is used.")
			p.Slip(measure.Measured("bust", p.K.Body(measure.BustGirth)).Over(4), "That is a quarter of the bust, which gives the width at the side.")
			waist := rule.BackWaist(p.K).Result() + rule.DartIntake(p.K).Result()
			under := measure.Length(p.At("front.underarm").Y)
			if depth < under-rule.In(1) || depth > waist-rule.In(2) {
				p.Refuse(pattern.Refused{
					Code: "R7", Input: string(measure.SideNeckToBustPoint),
					Says: measure.Tell("the bust point {} down lies outside the bodice: the underarm is at {}, the front waist at {}", depth, under, waist),
					Cure: bustBetween("side neck to bust point", under, waist),
				})
				return
			}
			p.Point("bust_point", out(x, depth.MM()))
			p.Guide("bust_line", out(0, depth.MM()), geom.Point{X: p.At("front.underarm").X, Y: depth.MM()})
		},
	}
}

func backSide() bench.Step {
	return bench.Step{
		ID: "back.side", Piece: pattern.Back, Title: "Side seam",
		Why:     measure.Tell("Three ruled lines would sew as points at the waist and at the hip. The drawn line rounds both."),
		Slip:    measure.Tell("Ruling through the waist: it sits like a hinge."),
		Choices: []pattern.ChoiceID{"side_shape"},
		Uses:    theBack.uses("underarm", "waist", "hip", "hem_side"),
		Draw: func(p *bench.Pen) {
			p.Do("Join underarm, waist, hip and hem: rounded over {1/2 in} either side of the waist, bowed over the hip, straight below.")
			if detail.HasWaistSeam(p.K) {
				p.Do("Rule the side of the bodice from the underarm to the waist. From the waist down the skirt is bowed over the hip and straight below.")
			}
			drawSide(p, theBack, nil, p.At("back.underarm"))
		},
	}
}

func side(k pattern.Known, upper, waist, hip geom.Point, below ...geom.Point) geom.Path {
	if k.Pick("side_shape") == "straight" {
		return detail.StraightSide(append([]geom.Point{upper, waist, hip}, below...)...)
	}
	return detail.SideLetOut(k.Length("high_hip_out"), upper, waist, hip, below...)
}

func opening() bench.Step {
	return bench.Step{
		ID: "back.opening", Piece: pattern.Back, Title: "Zip and hem opening",
		Why:     measure.Tell("The zip must let the hips pass the waist, and the hem must let her step. The cloth between holds the two apart."),
		Slip:    measure.Tell("Ending the zip at the waist: then the hips do not go through."),
		Needs:   []measure.ID{measure.BackNeckToWaist, measure.WaistToHip},
		Choices: []pattern.ChoiceID{"zip_length", "slit_height", "length"},
		Uses:    theBack.uses("neck_centre", "hem_centre"),
		If:      func(k pattern.Known) bool { return usualBack(k) },
		Draw: func(p *bench.Pen) {
			end := p.Sum(detail.ZipEnd(p.K))
			slit, hem := p.K.Length("slit_height"), p.K.Length("length")-raised(p.K, theBack)
			p.Slip(rule.BackWaist(p.K), "That is the waist: a zip that ends there does not let the hips through.")
			p.Slip(rule.BackHip(p.K), "That is the hip line itself; the zip may end a little above it.")
			if openingImpossible(p, slit, false) {
				return
			}
			p.Do("On the centre line mark the end of the zip {} down, and the top of the opening {} above the hem.", end, slit)
			p.Point("zip_end", out(0, end.MM()))
			p.Point("slit_top", out(0, (hem-slit).MM()))
		},
	}
}
