package garment

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

// thumbPoint is a step that marks one point of the side on its level.
func thumbPoint(h half, name, title, why, slip string, girth measure.ID, level func(pattern.Known) measure.Working, width func(pattern.Known) measure.Working, after string) bench.Step {
	return bench.Step{
		ID: h.id(name), Piece: h.piece, Title: title, Why: measure.Tell(why), Slip: measure.Tell(slip),
		Needs: append([]measure.ID{girth}, thumbLevelNeeds...),
		Uses:  h.uses(after, "hem_centre"),
		Draw: func(p *bench.Pen) {
			y, x := level(p.K).Result()+thumbLower(h), p.Sum(width(p.K))
			p.Do("{} down, measure {} out from the "+h.centre+" and mark it.", y, x)
			thumbSlips(p, name, girth)
			p.Point(name, out(x, y.MM()))
		},
	}
}

// thumbSlips are what goes wrong with a width by thumb.
func thumbSlips(p *bench.Pen, name string, girth measure.ID) {
	if name == "knee" {
		w := measure.Of("hip width", rule.ThumbHip(p.K).Result())
		p.Slip(w, "That is the hip width: the knee lies {1 in} inside it.")
		p.Slip(w.Minus(measure.Fixed(2*rule.ThumbKneeIn)), "That is {2 in} inside the hip; {1 in} is enough, or she could not walk.")
		return
	}
	g := measure.Measured(name, p.K.Body(girth))
	p.Slip(g.Over(4), "The {1 in} for the seam is left out.")
	p.Slip(g.Over(2).Plus(measure.Of("allowance", rule.ThumbAllowance)), "Half of her was used; the cloth lies double, so a quarter is.")
}

func thumbWaist(h half) bench.Step {
	return thumbPoint(h, "waist", "Waist at the side",
		"A quarter of the waist and {1 in} for the seam; no waist dart.", "Leaving the {1 in} out.",
		measure.WaistGirth, rule.BackWaist, rule.ThumbWaist, "underarm")
}

func thumbHip(h half) bench.Step {
	return thumbPoint(h, "hip", "Hip at the side",
		"A quarter of the hip and {1 in} for the seam.", "Taking the hip too high.",
		measure.HipGirth, rule.BackHip, rule.ThumbHip, "waist")
}

func thumbKnee(h half) bench.Step {
	st := thumbPoint(h, "knee", "Knee at the side",
		"{1 in} narrower than the hip on a shaped figure, and so on down to the hem.", "Narrowing further to the hem: she could not walk.",
		measure.HipGirth, rule.Knee, rule.ThumbKnee, "hip")
	st.Choices = []pattern.ChoiceID{"figure", "length"}
	st.If = func(k pattern.Known) bool {
		return !k.Has(thumbLevelNeeds...) || k.Length("length") >= rule.Knee(k).Result()
	}
	return st
}

func thumbHem(h half) bench.Step {
	return bench.Step{
		ID: h.id("hem"), Piece: h.piece, Title: "Hem",
		Why:     measure.Tell("Straight across; below the knee the side runs straight down."),
		Slip:    measure.Tell("Marking the raw edge as the hem: {1 in} is turned up."),
		Needs:   append([]measure.ID{measure.HipGirth}, thumbLevelNeeds...),
		Choices: []pattern.ChoiceID{"length", "figure"},
		Uses:    h.uses("hip", "hem_centre"),
		Draw: func(p *bench.Pen) {
			centre, hip := p.At(h.id("hem_centre")), p.At(h.id("hip"))
			x, knee := rule.ThumbKnee(p.K).Result(), rule.Knee(p.K).Result()+thumbLower(h)
			if knee.MM() > centre.Y {
				// the hem lies above the knee: on the line from hip to knee
				x = measure.Length(hip.Lerp(out(x, knee.MM()), (centre.Y-hip.Y)/(knee.MM()-hip.Y)).X)
			}
			p.Sum(measure.Drawn("hem width", x))
			p.Do("On the hem line, {} down, measure {} out and rule across to the "+h.centre+".", measure.Length(centre.Y), x)
			if x < rule.In(3) {
				p.Refuse(pattern.Refused{
					Code: "R13", Input: string(measure.HipGirth),
					Says: measure.Tell("a quarter of the hem comes out {} wide; no dress can be drawn so", x),
					Cure: measure.Tell("measure the hip again"),
				})
				return
			}
			side := out(x, centre.Y)
			p.Point("hem_side", side)
			p.Draw("hem", geom.Lines(side, centre), pattern.RoleCut)
		},
	}
}

// thumbBelow are the points of the side below the hip.
func thumbBelow(at func(string) geom.Point, has func(string) bool, h half) []geom.Point {
	var below []geom.Point
	hem := at(h.id("hem_side"))
	if has(h.id("knee")) && at(h.id("knee")).Dist(hem) > 1e-6 {
		below = append(below, at(h.id("knee")))
	}
	return append(below, hem)
}

func thumbSide(h half) bench.Step {
	uses := h.uses("underarm", "waist", "hip", "hem_side")
	upper := h.id("bust_side")
	if !h.back {
		upper = h.id("dart_lower")
	}
	return bench.Step{
		ID: h.id("side"), Piece: h.piece, Title: "Side",
		Why:     measure.Tell("Rounded at the waist and over the hip, or it would sew as points."),
		Slip:    measure.Tell("Ruling through the waist."),
		Choices: []pattern.ChoiceID{"side_shape"},
		Uses:    append(uses, upper),
		Draw: func(p *bench.Pen) {
			p.Do("Join the marks of the side: straight down to the bust line, rounded at the waist and over the hip, straight below.")
			u, b := p.At(h.id("underarm")), p.At(upper)
			if h.back {
				p.Draw("side_upper", geom.Lines(u, b), pattern.RoleCut)
			} else {
				p.Draw("side_upper", geom.Lines(u, p.At("front.dart_upper")), pattern.RoleCut)
			}
			p.Draw("side", side(p.K, b, p.At(h.id("waist")), p.At(h.id("hip")), thumbBelow(p.At, p.Has, h)...), pattern.RoleCut)
		},
	}
}

func thumbOpening() bench.Step {
	return bench.Step{
		ID: "back.opening", Piece: pattern.Back, Title: "Zip and hem opening",
		Why:     measure.Tell("Marked {7 in} up from the raw edge with a hem of {1 in}, so {6 in} stay open. Below it the edges are wider, so that they overlap."),
		Slip:    measure.Tell("Marking from the finished hem as well as the raw one: an opening {1 in} too high."),
		Needs:   thumbLevelNeeds,
		Choices: []pattern.ChoiceID{"slit_height", "zip_allowance", "hem_allowance", "zip_length", "length"},
		Uses:    theBack.uses("neck_centre", "hem_centre"),
		Draw: func(p *bench.Pen) {
			slit, hem := p.K.Length("slit_height"), p.K.Length("length")
			mark := p.Sum(measure.Of("opening", slit).Plus(measure.Of("hem", p.K.Length("hem_allowance"))))
			p.Slip(measure.Of("opening", slit), "That is counted from the finished hem; the raw edge lies the hem lower.")
			p.Slip(measure.Of("opening", slit).Plus(measure.Of("hem", 2*p.K.Length("hem_allowance"))), "The hem was added twice.")
			p.Do("Mark the opening {} up from the raw edge. Chalk the centre back {} beyond the seam above it and {} below it.", mark, p.K.Length("zip_allowance"), rule.ThumbOverlap)
			if openingImpossible(p, slit, false) {
				return
			}
			p.Point("zip_end", out(0, min((hem-slit), zipEnd(p.K)).MM()))
			p.Point("slit_top", out(0, (hem-slit).MM()))
		},
	}
}
