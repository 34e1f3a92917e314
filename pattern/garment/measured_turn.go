package garment

import (
	"math"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

// sideDart says whether the bust dart is drawn and stays in the side.
func sideDart(k pattern.Known) bool {
	return hasDart(k) && detail.DartPlace(k) == detail.SideDartPlace
}

// dartInSide says whether the bust dart, or a share of it, lies in the side.
func dartInSide(k pattern.Known) bool { return hasDart(k) && detail.DartInSide(k) }

// turned says whether the dart is asked to lie in another place.
func turned(k pattern.Known) bool { return detail.DartPlace(k) != detail.SideDartPlace }

// placed says whether the turned dart is drawn once it is turned: not where a
// panel seam or a waist seam takes it.
func placed(k pattern.Known) bool {
	place := detail.DartPlace(k)
	return turned(k) && !detail.HasPanels(k) && place != detail.WaistDart && place != detail.SplitDart
}

// hasPlace says whether the dress has the seam that the dart is to end in.
func hasPlace(k pattern.Known) bool {
	switch detail.DartPlace(k) {
	case detail.WaistDart, detail.SplitDart:
		return detail.HasWaistSeam(k)
	case detail.CentreDart:
		return detail.HasFrontSeam(k)
	}
	return true
}

func pinched(k pattern.Known) bool {
	return k.Method != pattern.Thumb && k.Length("armhole_pinch") > 0
}

var dartNeeds = []measure.ID{measure.SideNeckToWaist, measure.BackNeckToWaist, measure.SideNeckToBustPoint, measure.BustPointDistance}

// under is the underarm of a half as it is cut: where a pinch or a turned
// dart moved it, there. The point called underarm stays where it was
// measured, for the girths.
func under(has func(string) bool, at func(string) geom.Point, h half) geom.Point {
	if name := h.id("underarm_pinched"); has(name) {
		return at(name)
	}
	return at(h.id("underarm"))
}

// bustOf gathers the front about its bust point from the marks.
func bustOf(p *bench.Pen) detail.Bust {
	b := detail.Bust{
		Point: p.At("front.bust_point"), Neck: p.Line("front.neck"), Shoulder: p.Line("front.shoulder"), Armhole: p.Line("front.armhole"),
		Underarm: under(p.Has, p.At, theFront), Waist: p.At("front.waist"),
		Upper: p.At("front.dart_upper"), Lower: p.At("front.dart_lower"),
		Left:       p.At("front.neck_point").Dist(p.At("front.shoulder_end")),
		FrenchRise: p.K.Length("french_dart_rise"), NeckFrom: p.K.Length("neck_dart_start"), Swings: rule.SeamSwings(p.K) != 0,
	}
	if set, ok := p.K.Setting("dart_share"); ok {
		b.Share = set.Value.Number / 100
	}
	if !p.Has("front.underarm_pinched") {
		b = b.AtBust(rule.DartIntake(p.K).Result(), p.At("back.underarm").Dist(p.At("back.waist")))
	}
	return b
}

// turnWords are what the step says of each place; the slots of do: the dart's
// width there.
var turnWords = map[string]stepWords{
	detail.FrenchDart: {
		"Turn the dart: French", "From low on the side the dart follows the rise of the bust, and takes in the waist on its way.",
		"Turning it about its tip: it must turn about the bust point.",
		"Close the side dart on paper to the bust point and cut from the bust point to the new place on the side. The part between turns, and the new dart opens {} wide.",
	},
	detail.ArmholeDart: {
		"Turn the dart to the armhole", "A dart from the armhole also takes out what would gape there.",
		"Starting it at the middle of the armhole: it then shows at the arm.",
		"Mark a third of the way from the middle of the armhole to the underarm and cut from there to the bust point. Close the side dart: underarm and side turn down, and the new dart opens {} wide.",
	},
	detail.ShoulderDart: {
		"Turn the dart to the shoulder", "From the middle of the shoulder the dart points straight down at the bust.",
		"With a wide neck there is too little shoulder on either side of it.",
		"Mark the middle of the shoulder and cut from there to the bust point. Close the side dart: the whole arm side turns down, and the new dart opens {} wide.",
	},
	detail.NeckDart: {
		"Turn the dart to the neck", "A dart from the neck holds a neck close that would stand off.",
		"Measuring along the shoulder instead of along the neck.",
		"Mark the place on the neck and cut from there to the bust point. Close the side dart: shoulder and arm side turn down, and the new dart opens {} wide.",
	},
	detail.WaistDart: {
		"Turn the dart to the waist", "One dart from the waist seam shapes bust and waist together.",
		"Opening it all to one side of the bust point: it must lie below it.",
		"On the waist line mark a place a little inside of the bust point and cut from there to it. Close the side dart: side and waist turn up, and the new dart opens {} wide, half of it to either side.",
	},
	detail.SplitDart: {
		"Share the dart with the waist", "Two smaller darts point less than a single large one.",
		"Closing the side dart altogether: it keeps the rest.",
		"On the waist line mark a place a little inside of the bust point and cut from there to it. Close the side dart by the waist's share: side and waist turn up, and the new dart opens {} wide.",
	},
	detail.CentreDart: {
		"Turn the dart to the centre front", "From a seam down the centre the dart runs level to the bust.",
		"Turning it on a front that is cut on the fold: the centre leans, so there must be a seam.",
		"Level with the bust point cut from the centre to it. Close the side dart: all above turns down, the centre leans out, and the new dart opens {} wide.",
	},
}

// turnSteps turn the dart to its place once all that is traced with the dart
// closed is traced, and draw it there.
func turnSteps() []bench.Step {
	var out []bench.Step
	for _, place := range []string{detail.FrenchDart, detail.ArmholeDart, detail.ShoulderDart, detail.NeckDart, detail.WaistDart, detail.SplitDart, detail.CentreDart} {
		out = append(out, turnStep(place))
	}
	out = append(out, noPlace())
	return append(out, placedDart(), placedCap(), turnedSide())
}

// noPlace refuses a place that wants a seam which the dress has not.
func noPlace() bench.Step {
	return bench.Step{
		ID: "front.dart_turn", Piece: pattern.Front, Title: "Turn the dart",
		Why:     measure.Tell("A dart must end in a seam."),
		Slip:    measure.Tell("Cutting into a fold: the dart opens on both sides of it."),
		Choices: []pattern.ChoiceID{"bust_dart"},
		Uses:    theFront.uses("bust_point"),
		If:      func(k pattern.Known) bool { return turned(k) && !hasPlace(k) },
		Draw: func(p *bench.Pen) {
			r := pattern.Refused{
				Code: "R17", Input: "bust_dart",
				Says: measure.Tell("a dart at the waist wants a waist seam, and this dress is cut in one from the shoulder to the hem"),
				Cure: measure.Tell("a waist seam; or a dart from side, armhole, shoulder or neck, or a French dart"),
			}
			if detail.DartPlace(p.K) == detail.CentreDart {
				r.Says = measure.Tell("a dart at the centre front wants a seam there, and this front is cut on the fold")
				r.Cure = measure.Tell("a seam at the centre front; or a dart from side, armhole, shoulder or neck, or a French dart")
			}
			p.Refuse(r)
		},
	}
}

func turnStep(place string) bench.Step {
	words := turnWords[place]
	st := bench.Step{
		ID: "front.dart_turn", Piece: pattern.Front, Title: words.title, Why: measure.Tell(words.why), Slip: measure.Tell(words.slip),
		Needs:   dartNeeds,
		Choices: []pattern.ChoiceID{"bust_dart"},
		Uses: append(theFront.uses("bust_point", "neck", "shoulder", "armhole", "waist", "armhole_mid", "neck_point", "shoulder_end"),
			"back.underarm", "back.waist"),
		Also: dartMarks,
		If:   func(k pattern.Known) bool { return detail.DartPlace(k) == place && hasPlace(k) },
		Draw: func(p *bench.Pen) { drawTurn(p, place, words.do) },
	}
	switch place {
	case detail.FrenchDart:
		st.Choices = append(st.Choices, "french_dart_rise")
	case detail.NeckDart:
		st.Choices = append(st.Choices, "neck_dart_start")
	case detail.SplitDart:
		st.Choices = append(st.Choices, "dart_share")
	}
	return st
}

func drawTurn(p *bench.Pen, place, do string) {
	input, cure := "bust_dart", "leave it in the side, where none is drawn"
	if detail.HasPanels(p.K) {
		input, cure = "panel_seam", "front and back in one, with darts at the waist"
	}
	if noDart(p, input, cure) {
		return
	}
	b := bustOf(p)
	if placeImpossible(p, place, b) {
		return
	}
	t := b.Turn(place)
	p.Do(do, turnSum(p, place, b, t))
	keep := func(name string, was geom.Path) {
		p.Draw(name+"_closed", was, pattern.RoleGuide)
	}
	p.Point("dart_upper", b.Upper)
	p.Point("dart_lower", b.Lower)
	p.Point("dart_fixed", t.Fixed)
	p.Point("dart_moved", t.Moved)
	p.Point("dart_corner", t.Corner)
	p.Draw("dart", geom.Lines(t.Fixed, b.Point, t.Moved), pattern.RoleGuide)
	switch place {
	case detail.FrenchDart:
		return
	case detail.WaistDart, detail.SplitDart:
		p.Point("dart_lower", t.Lower)
		p.Point("waist_turned", t.Waist)
		return
	case detail.CentreDart:
		keep("armhole", b.Armhole)
		keep("shoulder", b.Shoulder)
		keep("neck", b.Neck)
		p.Point("neck_centre_turned", t.Neck.Start())
		p.Draw("neck", t.Neck, pattern.RoleStitch)
		p.Draw("shoulder", t.Shoulder, pattern.RoleStitch)
		p.Draw("armhole", t.Armhole, pattern.RoleStitch)
	case detail.ArmholeDart:
		keep("armhole", b.Armhole)
		p.Draw("armhole_upper", t.Before, pattern.RoleStitch)
		p.Draw("armhole", t.After, pattern.RoleStitch)
	case detail.ShoulderDart:
		keep("armhole", b.Armhole)
		keep("shoulder", b.Shoulder)
		p.Draw("shoulder", t.Before, pattern.RoleStitch)
		p.Draw("shoulder_outer", t.After, pattern.RoleStitch)
		p.Draw("armhole", t.Armhole, pattern.RoleStitch)
	case detail.NeckDart:
		keep("armhole", b.Armhole)
		keep("shoulder", b.Shoulder)
		keep("neck", b.Neck)
		p.Draw("neck", t.Before, pattern.RoleStitch)
		p.Draw("neck_outer", t.After, pattern.RoleStitch)
		p.Draw("shoulder", t.Shoulder, pattern.RoleStitch)
		p.Draw("armhole", t.Armhole, pattern.RoleStitch)
	}
	p.Point("underarm_turned", t.Underarm)
	switch place {
	case detail.CentreDart, detail.NeckDart:
		p.Point("neck_point_turned", t.Part.Apply(p.At("front.neck_point")))
		fallthrough
	case detail.ShoulderDart:
		p.Point("shoulder_end_turned", t.Part.Apply(p.At("front.shoulder_end")))
	}
	if place != detail.ArmholeDart {
		p.Point("armhole_mid_turned", t.Part.Apply(p.At("front.armhole_mid")))
	}
}

// turnSum is how wide a turned dart opens. Its angle at the bust point is what
// it was, so its width is a chord: the distance of the edge, times twice the
// sine of half the angle.
func turnSum(p *bench.Pen, place string, b detail.Bust, t detail.Turned) measure.Length {
	angle, tip := b.Angle(), p.K.Length("dart_tip_back")
	chord := func(angle float64) float64 { return 2 * math.Sin(angle/2) }
	far := measure.Drawn("bust point to the edge", measure.Length(b.Point.Dist(t.Fixed)))
	if place == detail.SplitDart {
		p.Slip(far.Times(chord(angle)), "That is the whole dart. The side keeps its share.")
		angle *= b.Share
		p.Rule("{} of {} degrees at the bust point: the side keeps the rest. The width is the distance of the edge, times twice the sine of half the angle.", rule.Degrees(angle), rule.Degrees(b.Angle()))
	} else {
		p.Rule("{} degrees at the bust point, here as at the side. The width is the distance of the edge, times twice the sine of half the angle.", rule.Degrees(angle))
	}
	p.Slip(measure.Drawn("width in the side", measure.Length(b.Upper.Dist(b.Lower))), "That is the width in the side. The angle stays; the width goes with the distance of the edge.")
	p.Slip(far.Minus(measure.Of("tip", tip)).Times(chord(angle)), "That is counted from the tip. The dart turns about the bust point.")
	return p.Sum(far.Times(chord(angle)))
}

// leastSplit is the least shoulder that a dart may divide (ours).
const leastSplit = 2 * measure.Inch

// placeImpossible refuses a place that her front has no room for.
func placeImpossible(p *bench.Pen, place string, b detail.Bust) bool {
	r := pattern.Refused{Code: "R17", Input: "bust_dart"}
	switch below, from, neck := measure.Length(b.Lower.Dist(b.Waist)), b.NeckFrom, measure.Length(b.Neck.Length()); {
	case !(rule.Degrees(b.Angle()) <= 30):
		r.Says = measure.Tell("brought to the bust point the dart opens {} degrees; more than 30 cannot be sewn flat", rule.Degrees(b.Angle()))
		r.Cure = measure.Tell("measure side neck to waist again")
		r.Input = string(measure.SideNeckToWaist)
	case place == detail.FrenchDart && (b.FrenchRise < rule.In(0.5) || b.FrenchRise > below-rule.In(2)):
		r.Says = measure.Tell("a French dart {} above the waist lies outside the {} of side between the dart and the waist", b.FrenchRise, below)
		r.Cure = measure.Tell("between {1/2 in} and {} above the waist", max(rule.In(0.5), below-rule.In(2)).Down(rule.Eighth))
		r.Input = "french_dart_rise"
	case place == detail.ShoulderDart && b.Left < leastSplit.MM():
		r.Says = measure.Tell("{} of shoulder are left; a dart in the middle leaves too little on either side", measure.Length(b.Left))
		r.Cure = measure.Tell("a dart from the armhole or the side, or a neck that is widened less")
	case place == detail.NeckDart && detail.NeckStyle(p.K, false) == detail.FunnelNeckline:
		r.Says = measure.Tell("a funnel stands up from the neck, and a dart cannot run into it")
		r.Cure = measure.Tell("a dart in the side or in the shoulder")
	case place == detail.NeckDart && (from < rule.In(0.5) || from > neck-rule.In(1)):
		r.Says = measure.Tell("a neck dart {} from the shoulder lies outside the neck, which is {} long", from, neck)
		r.Cure = measure.Tell("between {1/2 in} and {} from the shoulder", max(rule.In(0.5), neck-rule.In(1)).Down(rule.Eighth))
		r.Input = "neck_dart_start"
	default:
		return false
	}
	p.Refuse(r)
	return true
}

// placedDart draws tip and legs of the turned dart.
func placedDart() bench.Step {
	return bench.Step{
		ID: "front.dart_placed", Piece: pattern.Front, Title: "The turned dart, tip and legs", If: placed,
		Why:     measure.Tell("It opened to the bust point itself; sewn so far it would stand up there. The tip stops short."),
		Slip:    measure.Tell("Sewing to the bust point."),
		Choices: []pattern.ChoiceID{"bust_dart", "dart_tip_back"},
		Uses:    theFront.uses("bust_point", "dart_fixed", "dart_moved"),
		Draw: func(p *bench.Pen) {
			place := detail.DartPlace(p.K)
			t := detail.Turned{Fixed: p.At("front.dart_fixed"), Moved: p.At("front.dart_moved")}
			back := measure.Of("tip back", p.K.Length("dart_tip_back"))
			if more := detail.MorePlaceBack(place); more > 0 {
				back = back.Plus(measure.Of("from above", more))
			}
			tip := t.Tip(p.At("front.bust_point"), p.Sum(back))
			leg := measure.Length(tip.Dist(t.Fixed))
			if leg < rule.In(1.5) {
				p.Refuse(pattern.Refused{
					Code: "R17", Input: "dart_tip_back",
					Says: measure.Tell("a tip {} from the bust point leaves legs of {}; under {1 1/2 in} there is no dart to sew", back.Result(), leg),
					Cure: measure.Tell("stop the tip less short"),
				})
				return
			}
			p.Do("Mark the tip {} short of the bust point, towards the middle of the legs: {} out and {} down. Rule both legs, {} long.",
				back.Result(), measure.Length(tip.X), measure.Length(tip.Y), leg)
			p.Point("dart_tip", tip)
			p.Draw("dart", geom.Lines(t.Fixed, tip, t.Moved), pattern.RoleDart)
		},
	}
}

// placedCap draws the end of the turned dart, folded to its side.
func placedCap() bench.Step {
	return bench.Step{
		ID: "front.dart_cap", Piece: pattern.Front, Title: "The turned dart, its cap", If: placed,
		Why:     measure.Tell("The folded end must reach the seam, or there is a bite out of it. A dart from neck or shoulder is pressed to the centre, one from the armhole or the side down."),
		Slip:    measure.Tell("Cutting straight from leg to leg."),
		Choices: []pattern.ChoiceID{"bust_dart"},
		Uses:    theFront.uses("dart_tip", "dart_fixed", "dart_moved", "waist"),
		Draw: func(p *bench.Pen) {
			place := detail.DartPlace(p.K)
			tip, on, off := p.At("front.dart_tip"), p.At("front.dart_fixed"), p.At("front.dart_moved")
			var seam geom.Vector
			switch place {
			case detail.FrenchDart:
				seam = on.To(p.At("front.waist"))
			case detail.ArmholeDart:
				on, off = off, on
				seam = p.Line("front.armhole").StartTangent()
			case detail.ShoulderDart:
				seam = p.Line("front.shoulder").EndTangent().Scale(-1)
			case detail.NeckDart:
				seam = p.Line("front.neck").EndTangent().Scale(-1)
			case detail.CentreDart:
				seam = geom.Vector{Y: 1}
			}
			bite := detail.CapDown(tip, off, on, seam)
			away := measure.Length(bite.Dist(on.Lerp(off, 0.5)))
			if slant := leanest(p, tip); away > rule.In(1.75) || slant < leastSlant {
				p.Refuse(pattern.Refused{
					Code: "R11", Input: "bust_dart",
					Says: measure.Tell("the dart runs into its edge at {} degrees and its cap stands {} from the middle of its legs; that cannot be sewn", slant, away),
					Cure: measure.Tell("leave the dart in the side, or take a French dart"),
				})
				return
			}
			p.Do("Fold the dart on paper to the side it is pressed to, rule the seam across it, cut and unfold. The cap lies {} out and {} down.", measure.Length(bite.X), measure.Length(bite.Y))
			p.Point("dart_cap", bite)
			first, second := p.At("front.dart_fixed"), p.At("front.dart_moved")
			if place == detail.FrenchDart {
				first, second = second, first
			}
			p.Draw("dart_end", geom.Lines(first, bite, second), pattern.RoleStitch)
		},
	}
}

// leastSlant is the sharpest angle, degrees, at which a dart may run into its
// edge: below it neither fold nor allowance can be cut.
const leastSlant = 18

// leanest is the sharper of the angles between the legs of the turned dart
// and the edges that they run into, degrees.
func leanest(p *bench.Pen, tip geom.Point) float64 {
	fixed, moved := tip.To(p.At("front.dart_fixed")), tip.To(p.At("front.dart_moved"))
	a, b := fixed.Right(), fixed.Right()
	switch detail.DartPlace(p.K) {
	case detail.NeckDart:
		a, b = p.Line("front.neck").EndTangent(), p.Line("front.neck_outer").StartTangent()
	case detail.ShoulderDart:
		a, b = p.Line("front.shoulder").EndTangent(), p.Line("front.shoulder_outer").StartTangent()
	case detail.ArmholeDart:
		a, b = p.Line("front.armhole_upper").EndTangent(), p.Line("front.armhole").StartTangent()
	case detail.CentreDart:
		a = geom.Vector{Y: 1}
		b = p.At("front.dart_moved").To(p.Line("front.neck").Start())
	case detail.FrenchDart:
		b = p.At("front.dart_moved").To(p.At("front.dart_corner"))
		a = p.At("front.waist").To(p.At("front.dart_fixed"))
	}
	slant := func(u, v geom.Vector) float64 {
		return math.Asin(math.Min(1, math.Abs(u.Cross(v))/(u.Len()*v.Len()))) * 180 / math.Pi
	}
	return math.Min(slant(fixed, a), slant(moved, b))
}

// turnedSide draws the side of a front whose dart left it: the corner that
// the closed dart leaves is drawn through.
func turnedSide() bench.Step {
	return bench.Step{
		ID: "front.side", Piece: pattern.Front, Title: "Side seam",
		If:      func(k pattern.Known) bool { return turned(k) && !splitDart(k) },
		Why:     measure.Tell("Where the side dart closed it left a corner in the seam; sewn to the smooth back it would pucker."),
		Slip:    measure.Tell("Smoothing it by cutting the corner off straight: the seam grows short."),
		Choices: []pattern.ChoiceID{"side_shape", "bust_dart"},
		Uses:    theFront.uses("dart_corner", "dart_fixed", "dart_moved", "waist", "hip", "hem_side"),
		Also: func(k pattern.Known) []string {
			if placed(k) {
				return theFront.uses("dart_end")
			}
			return nil
		},
		Draw: func(p *bench.Pen) {
			corner, w := p.At("front.dart_corner"), p.At("front.waist")
			if detail.DartPlace(p.K) == detail.FrenchDart {
				p.Do("Draw the side above the dart through the corner, {1 1/2 in} above it to {3 in} below. Below the dart join its leg to waist, hip and hem.")
				upper, rest := detail.Smoothed(under(p.Has, p.At, theFront), corner, p.At("front.dart_moved"))
				p.Draw("side_upper", upper.Then(geom.Lines(rest, p.At("front.dart_moved"))), pattern.RoleStitch)
				drawSide(p, theFront, nil, p.At("front.dart_fixed"))
				return
			}
			start := p.At("front.underarm_turned")
			if detail.DartPlace(p.K) == detail.WaistDart {
				start, w = under(p.Has, p.At, theFront), p.At("front.waist_turned")
			}
			p.Do("Draw the side through the corner, {1 1/2 in} above it to {3 in} below, and on to waist, hip and hem: rounded at the waist, bowed over the hip, straight below.")
			upper, rest := detail.Smoothed(start, corner, w)
			drawSide(p, theFront, upper, rest)
		},
	}
}
