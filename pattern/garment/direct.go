package garment

import (
	"maps"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

// The bodice block by direct measure: each line from its own length, the
// levels of shoulder and underarm counted up from the waist. The dress goes
// on below it as by the measured method.

var directNeeds = []measure.ID{
	measure.NeckBaseGirth, measure.ShoulderLength, measure.UpperChestGirth, measure.BustGirth, measure.WaistGirth, measure.HipGirth,
	measure.WaistToHip, measure.BackNeckToWaist, measure.ShoulderToWaistBack, measure.SideNeckToWaist, measure.ShoulderToWaistFront,
	measure.SideNeckToBustPoint, measure.BustPointDistance, measure.AcrossFront, measure.AcrossBack, measure.SideWaistLength, measure.WaistToKnee,
}

// directRules say by which rule a step of the block goes, where it differs
// from the measured method.
var directRules = map[string]string{
	"neck_base":     "As a teaching page of 2014 prints it (retro direct-measure bodice): behind {1/4 in} less than in front and {1 in} above the nape.",
	"bone_end":      "Her own lengths from shoulder to waist and from neck to shoulder; the same page.",
	"shoulder_line": "The line from neck to bone, as the page draws it.",
	"shoulder_end":  "Along the shoulder line; common practice, no source.",
	"bust_width":    "A quarter of the upper chest and {1/2 in} behind, the rest of half the bust in front; the same page.",
	"armhole_mid":   "Half the width she was measured, but never outside the shoulder end; the same page and common practice.",
	"bust_point":    "On the slant from the neck point; the same page.",
	"waist":         "The side comes in {3/4 in}, as teaching pages print it; darts take the rest.",
}

// allDirectRules are those of the measured method and, over them, the
// block's own.
func allDirectRules() map[string]string {
	rules := maps.Clone(measuredRules)
	maps.Copy(rules, directRules)
	return rules
}

// byDirect is how the block begins.
func byDirect() beginning {
	return beginning{
		back:  []bench.Step{backLevels(), directNeck(theBack), directBone(theBack), directLine(theBack)},
		front: []bench.Step{directLevels(), directNeck(theFront), directBone(theFront), directLine(theFront)},
		end:   directEnd, width: directWidth, bust: directBust(),
	}
}

func directLevels() bench.Step {
	return bench.Step{
		ID: "front.levels", Piece: pattern.Front, Title: "Fold and levels",
		Why:     measure.Tell("The front is drawn from the neck down to her own waist, over the bust. What it is longer than the back the dart takes up again."),
		Slip:    measure.Tell("Using the back's levels on the front: it comes out too short over the bust."),
		Needs:   []measure.ID{measure.SideNeckToWaist, measure.BackNeckToWaist, measure.WaistToHip},
		Choices: []pattern.ChoiceID{"length"},
		Draw: func(p *bench.Pen) {
			lower := rule.FrontLower(p.K).Result()
			if surplusImpossible(p, rule.FrontSurplus(p.K).Result()) {
				return
			}
			front := measure.Measured("front length", p.K.Body(measure.SideNeckToWaist))
			if more := rule.Levelled(p.K); more != 0 {
				front = front.Plus(measure.Of("for the side", more))
			}
			waist := p.Sum(front)
			p.Because(rule.DartIntakeWhy(p.K))
			hip, hem := waist+p.K.Body(measure.WaistToHip), p.K.Length("length")+lower-raised(p.K, theFront)
			p.Do("Rule the fold and the top line square to it. Down the fold mark the waist at {}, the hip at {} and the hem at {}.", waist, hip, hem)
			p.Slip(rule.BackWaist(p.K), "That is the waist of the back. The front runs over the bust to its own.")
			p.Slip(front.Minus(measure.Of("nape", rule.NapeDrop)), "The front length starts at the side of the neck, on the top line; nothing is taken off.")
			levels(p, waist, hip, hem)
		},
	}
}

func directNeck(h half) bench.Step {
	where, slip := "On the top line measure {} out from the "+h.centre+" and mark the neck point.", "Taking the back's neck for the front, which is a quarter inch wider."
	needs := []measure.ID{measure.NeckBaseGirth}
	if h.back {
		where = "Measure {} out from the " + h.centre + " and go up until you are {} above the nape, which lies {} below the top line. Mark the neck point."
		slip = "Staying on the level of the nape: the back neck is then too low to sit."
		needs = append(needs, measure.BackNeckToWaist)
	}
	return bench.Step{
		ID: h.id("neck_base"), Piece: h.piece, Title: "Neck point of the block",
		Why:   measure.Tell("The shoulder and everything below hang from this point beside the neck."),
		Slip:  measure.Tell(slip),
		Needs: needs,
		Uses:  h.uses("hem_centre"),
		Draw: func(p *bench.Pen) {
			x := p.Sum(rule.DirectNeckOut(p.K, h.back))
			if h.back {
				p.Do(where, x, rule.DirectNape, rule.NapeDrop)
			} else {
				p.Do(where, x)
			}
			neckSlips(p)
			p.Point("neck_base", detail.DirectBase(p.K, h.back))
		},
	}
}

func directBone(h half) bench.Step {
	id, waist := measure.ShoulderToWaistFront, measure.SideNeckToWaist
	if h.back {
		id, waist = measure.ShoulderToWaistBack, measure.BackNeckToWaist
	}
	return bench.Step{
		ID: h.id("bone_end"), Piece: h.piece, Title: "Shoulder bone, up from the waist",
		Why:   measure.Tell("Counted up from the waist, the bone takes the slope and the round of her own back and front. That is why stooping and upright figures need no other rule."),
		Slip:  measure.Tell("Counting it down from the neck: a round or a flat back is lost."),
		Needs: []measure.ID{id, waist, measure.ShoulderLength},
		Uses:  h.uses("neck_base"),
		Draw: func(p *bench.Pen) {
			base, long := p.At(h.id("neck_base")), p.K.Body(measure.ShoulderLength)
			level := p.Sum(rule.DirectTip(p.K, h.back))
			bone, ok := detail.DirectBone(base, level, long)
			p.Do("From the waist line go up {} and rule a level line: it lies {} below the top line. From the neck point swing {}, her shoulder, onto that line and mark the bone.",
				p.K.Body(id), level, long)
			p.Slip(measure.Measured("shoulder to waist", p.K.Body(id)), "That is counted from the waist up. The level is wanted, from the top line down.")
			if !ok || bone.X-base.X < rule.In(2).MM() || level < -rule.In(1) {
				p.Refuse(pattern.Refused{
					Code: "R20", Input: string(id),
					Says: measure.Tell("shoulder to waist {} puts the bone {} below the neck point; a shoulder of {} does not reach it at a slope that can be worn", p.K.Body(id), level-measure.Length(base.Y), long),
					Cure: measure.Tell("measure shoulder to waist again with the string on; for a usual slope it is {}", p.K.Body(id)+level-rule.In(1.5)),
				})
				return
			}
			p.Point("bone_end", bone)
		},
	}
}

func directLine(h half) bench.Step {
	return bench.Step{
		ID: h.id("shoulder_line"), Piece: h.piece, Title: "Shoulder line",
		Why:     measure.Tell("Front and back shoulder are equally long, each on its own slope."),
		Slip:    measure.Tell("Copying the slope of the back onto the front."),
		Choices: []pattern.ChoiceID{"shoulder_forward"},
		Uses:    h.uses("neck_base", "bone_end"),
		Draw: func(p *bench.Pen) {
			fwd, way := p.K.Length("shoulder_forward"), "down"
			shift := fwd
			if h.back {
				shift, way = -fwd, "up"
			}
			if fwd == 0 {
				p.Do("Join the neck point and the bone.")
			} else {
				p.Do("Join the neck point and the bone, and move the line "+way+" by {}, keeping it parallel.", fwd)
			}
			shoulderLine(p, p.At(h.id("neck_base")), p.At(h.id("bone_end")), shift)
		},
	}
}

func directEnd(h half) bench.Step {
	return bench.Step{
		ID: h.id("shoulder_end"), Piece: h.piece, Title: "Shoulder end, drawn in",
		Why:     measure.Tell("Without a sleeve the edge would stand off the arm bone, so it lies inside it."),
		Slip:    measure.Tell("Moving straight in instead of along the shoulder line: front and back are then no longer equally long."),
		Needs:   []measure.ID{measure.ShoulderLength},
		Choices: []pattern.ChoiceID{"shoulder_inset"},
		Uses:    h.uses("neck_base", "bone_end"),
		Draw: func(p *bench.Pen) {
			s := shoulderOf(p, h)
			inset := p.K.Length("shoulder_inset")
			whole := measure.Measured("shoulder", p.K.Body(measure.ShoulderLength))
			left := p.Sum(whole.Minus(measure.Of("inset", inset)))
			p.Do("Along the shoulder line come in {} from the bone: {} from the neck point. Mark the shoulder end.", inset, left)
			p.Slip(whole, "That is the bone itself; a sleeveless edge lies inside it.")
			p.Slip(whole.Plus(measure.Of("inset", inset)), "The inset was added. It is taken off: the edge lies nearer the neck.")
			p.Point("shoulder_end", s.Bone.Add(s.Dir.Scale(-inset.MM())))
		},
	}
}

func directWidth(h half) bench.Step {
	needs := []measure.ID{measure.UpperChestGirth, measure.BackNeckToWaist, measure.SideWaistLength}
	choices := []pattern.ChoiceID{"armhole_depth"}
	if !h.back {
		needs = append(needs, measure.BustGirth, measure.SideNeckToWaist)
		choices = append(choices, "ease_bust")
	}
	return bench.Step{
		ID: h.id("bust_width"), Piece: h.piece, Title: "Frame width and underarm",
		Why:     measure.Tell("The back is framed by her chest, for a bust adds nothing to a back. The front gets all the rest of the bust, with the ease."),
		Slip:    measure.Tell("Giving both a quarter of the bust: the back is too wide and the front rides up."),
		Needs:   needs,
		Choices: choices,
		Uses:    h.uses("shoulder_end", "hem_centre"),
		Draw: func(p *bench.Pen) {
			x := p.Sum(rule.BustWidthOf(p.K, h.back))
			depth := detail.UnderarmLevel(p.K, p.K.Length("armhole_depth"), h.back)
			p.Do("Square out a line {} below the top line, her side length above the waist. On it measure {} out from the "+h.centre+" and mark the underarm point.", depth, x)
			if set, ok := p.K.Setting("armhole_depth"); ok {
				p.Because(set.Default.Because)
			}
			chest := measure.Measured("upper chest", p.K.Body(measure.UpperChestGirth))
			if h.back {
				p.Slip(chest.Over(4), "The {1/2 in} is left out: the back is then as tight as the tape.")
				p.Slip(rule.DirectFront(p.K), "That is the width of the front, which carries the bust.")
			} else {
				p.Slip(measure.Measured("bust", p.K.Body(measure.BustGirth)).Over(4), "That is a quarter of the bust. Here the back took only its chest, so the front takes more.")
				p.Slip(rule.DirectBack(p.K), "That is the width of the back.")
			}
			end := p.At(h.id("shoulder_end"))
			if depth.MM()-end.Y < rule.In(3.5).MM() {
				p.Refuse(pattern.Refused{
					Code: "R4", Input: string(measure.SideWaistLength),
					Says: measure.Tell("a side length of {} leaves {} below the shoulder end; an arm needs {3 1/2 in} and more", p.K.Body(measure.SideWaistLength), depth-measure.Length(end.Y)),
					Cure: measure.Tell("measure the side length again, from an inch below the armpit; {} or less can be drawn",
						(p.K.Body(measure.SideWaistLength) + depth - measure.Length(end.Y) - rule.In(3.5)).Down(rule.Eighth)),
				})
				return
			}
			p.Guide("underarm_line", out(0, depth.MM()), out(x, depth.MM()))
			p.Point("underarm", out(x, depth.MM()))
		},
	}
}

func directBust() bench.Step {
	return bench.Step{
		ID: "front.bust_point", Piece: pattern.Front, Title: "Bust point, on the slant",
		Why:   measure.Tell("All shaping of the front turns about this point. Her measure runs on the slant from the neck, so it is laid on the slant."),
		Slip:  measure.Tell("Measuring straight down the fold: the point comes out a little too low."),
		Needs: []measure.ID{measure.SideNeckToBustPoint, measure.BustPointDistance},
		Uses:  theFront.uses("underarm", "hem_centre", "neck_base"),
		Draw: func(p *bench.Pen) {
			depth := p.K.Body(measure.SideNeckToBustPoint)
			x := p.Sum(measure.Measured("bust point distance", p.K.Body(measure.BustPointDistance)).Over(2))
			level := rule.BustLevel(p.K)
			p.Do("Rule a line {} out from the fold. From the neck point swing {} onto it and mark the bust point: it lies {} down.", x, depth, level)
			p.Slip(measure.Measured("bust point distance", p.K.Body(measure.BustPointDistance)), "That is from point to point; the fold lies in the middle, so half of it is used.")
			p.Slip(measure.Measured("bust", p.K.Body(measure.BustGirth)).Over(4), "That is a quarter of the bust, which gives a width at the side.")
			waist, under := p.K.Body(measure.SideNeckToWaist), measure.Length(p.At("front.underarm").Y)
			if level < under-rule.In(1) || waist > 0 && level > waist-rule.In(2) {
				p.Refuse(pattern.Refused{
					Code: "R7", Input: string(measure.SideNeckToBustPoint),
					Says: measure.Tell("the bust point {} down lies outside the bodice: the underarm is at {}, the front waist at {}", level, under, waist),
					Cure: bustBetween("side neck to bust point and the side length", under, waist),
				})
				return
			}
			p.Point("bust_point", out(x, level.MM()))
			p.Guide("bust_line", out(0, level.MM()), geom.Point{X: p.At("front.underarm").X, Y: level.MM()})
		},
	}
}
