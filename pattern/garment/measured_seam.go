package garment

import (
	"strconv"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

// Names of the marks of a waistline: of the bodice and of the skirt.
const (
	bodiceWaist = "waist_seam"
	skirtWaist  = "skirt_waist"
	flaredWaist = "flared_waist" // of a skirt that is opened through its darts
)

// nth is a name for the first, second, third of a kind: "waist_seam",
// "waist_seam_2".
func nth(name string, i int) string {
	if i == 0 {
		return name
	}
	return name + "_" + strconv.Itoa(i+1)
}

// drawWaistline keeps a waistline as marks: its parts, and tip, legs and cap
// of its darts.
func drawWaistline(p *bench.Pen, name string, w detail.Waistline) {
	for i, part := range w.Parts {
		p.Draw(nth(name, i), part, pattern.RoleStitch)
	}
	for i, d := range w.Darts {
		dart := nth(name+"_dart", i)
		p.Point(dart+"_tip", d.Tip)
		p.Point(dart+"_inner", d.Inner)
		p.Point(dart+"_outer", d.Outer)
		p.Point(dart+"_cap", d.Cap)
		p.Draw(dart, geom.Lines(d.Inner, d.Tip, d.Outer), pattern.RoleDart)
		p.Draw(dart+"_end", geom.Lines(d.Inner, d.Cap, d.Outer), pattern.RoleStitch)
	}
}

// waistline reads a waistline from the marks of a half.
func (c cutter) waistline(h half, name string) detail.Waistline {
	return waistlineOf(h, name, c.has, c.at, c.line)
}

// skirtWaistline is the waistline of the skirt as it is cut.
func (c cutter) skirtWaistline(h half) detail.Waistline {
	if c.has(h.id(flaredWaist)) {
		return c.waistline(h, flaredWaist)
	}
	return c.waistline(h, skirtWaist)
}

func waistlineOf(h half, name string, has func(string) bool, at func(string) geom.Point, line func(string) geom.Path) detail.Waistline {
	var w detail.Waistline
	for i := 0; ; i++ {
		part := line(h.id(nth(name, i)))
		if len(part) == 0 {
			return w
		}
		w.Parts = append(w.Parts, part)
		dart := h.id(nth(name+"_dart", i))
		if !has(dart + "_tip") {
			return w
		}
		w.Darts = append(w.Darts, detail.SeamDart{Tip: at(dart + "_tip"), Inner: at(dart + "_inner"), Outer: at(dart + "_outer"), Cap: at(dart + "_cap")})
	}
}

// waistSeam parts a half at the waist, once the bust dart lies where it is to
// lie.
func waistSeam(h half) bench.Step {
	return bench.Step{
		ID: h.id("waist_seam"), Piece: h.piece, Title: "Cut apart at the waist", If: detail.HasWaistSeam,
		Why:     measure.Tell("A dart that ran through the waist becomes two, one of the bodice and one of the skirt. Their legs meet at the seam."),
		Slip:    measure.Tell("Laying the middles of the darts on each other: where the bust dart lies at the waist the bodice's is the wider one, and the seam steps."),
		Choices: []pattern.ChoiceID{"waist_seam", "waist_allowance", "waist_shaping"},
		Uses:    h.uses("waist", "hip", "hem_side", "hem_centre", "side"),
		Also:    func(k pattern.Known) []string { return seamNeeds(k, h) },
		Draw:    func(p *bench.Pen) { drawWaistSeam(p, h) },
	}
}

// leastSeamDart: what takes up less is no dart.
const leastSeamDart = measure.Inch / 32

// seamNeeds are the darts that must be drawn before a half is parted.
func seamNeeds(k pattern.Known, h half) []string {
	var out []string
	if waistDartWanted(k, h) {
		out = append(out, h.id(waistDartName(0)))
	}
	if !h.back && dartAtWaist(k) {
		out = append(out, theFront.uses("dart_fixed", "bust_point", "waist_turned")...)
	}
	if h.back && backShaped(k) {
		out = append(out, h.id("centre_back"))
	}
	return out
}

// dartAtWaist says whether the bust dart, or a share of it, lies at the waist.
func dartAtWaist(k pattern.Known) bool {
	place := detail.DartPlace(k)
	return detail.HasWaistSeam(k) && (place == detail.WaistDart || place == detail.SplitDart)
}

func drawWaistSeam(p *bench.Pen, h half) {
	if detail.HasPanels(p.K) {
		p.Refuse(pattern.Refused{
			Code: "R30", Input: "waist_seam",
			Says: measure.Tell("panel seams run on through the waist, and a seam across them would cut every panel in two"),
			Cure: measure.Tell("panels without a waist seam, or a waist seam with darts"),
		})
		return
	}
	side := p.At(h.id("waist"))
	centre := geom.Point{Y: side.Y}
	if at := p.Line("back.centre_back").AtLevel(side.Y); h.back && len(at) > 0 {
		centre = at[0]
	}
	var up, down []detail.SeamDart
	for _, f := range fisheyesOf(h, p.Has, p.At) {
		if f.Intake() < leastSeamDart {
			continue // nothing that could be sewn
		}
		up, down = append(up, f.UpperHalf()), append(down, f.LowerHalf())
	}
	bodiceSide := side
	if !h.back && dartAtWaist(p.K) {
		bodiceSide = p.At("front.waist_turned")
		d, ok := joinedDart(p, down)
		if !ok {
			return
		}
		if len(down) > 0 {
			down[0] = down[0].Moved(d.Inner.X)
		}
		up = []detail.SeamDart{d}
		p.Point("dart_tip", d.Tip)
	}
	bodice, skirt := detail.LevelWaist(centre, bodiceSide, up), detail.LevelWaist(centre, side, down)
	seamWords(p, bodice, skirt)
	p.Draw("waist_seam_side", geom.Lines(centre, bodiceSide), pattern.RoleGuide)
	drawWaistline(p, bodiceWaist, bodice)
	drawWaistline(p, skirtWaist, skirt)
}

func seamWords(p *bench.Pen, bodice, skirt detail.Waistline) {
	p.Sum(measure.Drawn("waist of the bodice, darts closed", bodice.Length()))
	p.Do("Cut along the waist line. Of every dart the upper half stays in the bodice and the lower in the skirt; fold each to the centre and rule the seam across it. Bodice {}, skirt {}.", bodice.Length(), skirt.Length())
	p.Rule("Both are measured with the darts closed, and the inner legs lie equally far from the centre. The seam has {} on both pieces.", p.K.Length("waist_allowance"))
}

// joinedDart is the bust dart at the waist, what the waist takes in joined to
// it.
func joinedDart(p *bench.Pen, waistDarts []detail.SeamDart) (detail.SeamDart, bool) {
	bust, side := p.At("front.bust_point"), p.At("front.waist_turned")
	t := detail.Turned{Fixed: p.At("front.dart_fixed"), Moved: p.At("front.dart_moved")}
	intake := measure.Length(0)
	for _, d := range waistDarts {
		intake += d.Intake()
	}
	inner, outer := t.WithWaistDart(bust, side, intake)
	r := pattern.Refused{Code: "R17", Input: "bust_dart"}
	d := detail.SeamDart{Inner: inner, Outer: outer}
	d.Tip = detail.Turned{Fixed: inner, Moved: outer}.Tip(bust, detail.PlaceBack(detail.WaistDart, p.K.Length("dart_tip_back")))
	switch {
	case inner.X < rule.In(0.75).MM() || outer.Dist(side) < rule.In(1.5).MM() || outer.X > side.X:
		r.Says = measure.Tell("a bust dart {} wide at the waist leaves too little between it and the side", d.Intake())
		r.Cure = measure.Tell("leave it in the side, or share it between side and waist")
	case !(rule.Degrees(d.Angle()) <= 30):
		r.Says = measure.Tell("at the waist the bust dart opens {} degrees; more than 30 cannot be sewn flat", rule.Degrees(d.Angle()))
		r.Cure = measure.Tell("share it between side and waist")
	case d.Leg() < rule.In(1.5):
		r.Says = measure.Tell("between bust and waist there is only {} for the dart's legs; under {1 1/2 in} there is no dart to sew", d.Leg())
		r.Cure = measure.Tell("leave it in the side")
	default:
		return d, true
	}
	p.Refuse(r)
	return d, false
}

// flareStep opens the skirt of a half through its darts.
func flareStep(h half) bench.Step {
	return bench.Step{
		ID: h.id("skirt_flare"), Piece: h.piece, Title: "Flare the skirt", If: flaredSkirt,
		Why:     measure.Tell("Flare at the side alone hangs at the side alone. What opens below the darts falls in front and behind as well, and the darts grow smaller by it."),
		Slip:    measure.Tell("Ruling the hem over the opened parts: it must run square to the side and to the centre."),
		Choices: []pattern.ChoiceID{"skirt_line", "hem_flare"},
		Uses:    h.uses("hip", "waist", "hem_side", "hem_centre", "skirt_waist", "skirt_side"),
		Draw:    func(p *bench.Pen) { drawFlare(p, h) },
	}
}

func flaredSkirt(k pattern.Known) bool { return detail.SkirtLine(k) == detail.FlaredSkirt }

func drawFlare(p *bench.Pen, h half) {
	half := p.K.Length("hem_flare") / 2
	centre, higher := evenHem(p, h)
	s := detail.Skirt{
		Waist: waistlineOf(h, skirtWaist, p.Has, p.At, p.Line), Side: p.Line(h.id("skirt_side")),
		Hip: p.At(h.id("hip")), HemSide: p.At(h.id("hem_side")), HemCentre: centre,
	}
	if len(s.Waist.Darts) == 0 {
		p.Do("This half has no dart to open: it flares at the side alone, by {}.", half)
		p.Point("skirt_hip", s.Hip)
		return
	}
	o := s.Opened(half)
	hem := detail.FlaredSkirtHem(o.HemSide, o.Hip, o.HemCentre)
	p.Sum(measure.Drawn("hem, half", measure.Length(hem.Length())))
	p.Do("From the tip of each dart cut straight down to the hem. Turn all that lies outside about the tip until the hem has opened by {}, the outermost first; the dart closes by as much as that takes. Draw the hem from the centre to the side, square to both.",
		half/measure.Length(len(s.Waist.Darts)))
	if o.Closed {
		p.Rule("A dart gives no more flare than it has: {} less than asked for.", o.LessOpened)
	} else {
		p.Rule("Half of the flare lies at the side, half below the darts, in equal shares; common practice, no source.")
	}
	if off := o.OffHem(hem); off > rule.In(0.25) {
		p.Refuse(pattern.Refused{
			Code: "R30", Input: "hem_flare",
			Says: measure.Tell("opened so far the hem of the "+string(h.piece)+" lies {} off the parts it is drawn over", off),
			Cure: measure.Tell("widen it less, or an A-line skirt"),
		})
		return
	}
	for i, part := range s.Waist.Parts {
		p.Draw(nth(skirtWaist, i), part, pattern.RoleGuide)
	}
	for i, d := range s.Waist.Darts {
		p.Draw(nth(skirtWaist+"_dart", i), geom.Lines(d.Inner, d.Tip, d.Outer), pattern.RoleGuide)
		p.Draw(nth(skirtWaist+"_dart", i)+"_end", geom.Lines(d.Inner, d.Cap, d.Outer), pattern.RoleGuide)
	}
	drawOpened(p, o, detail.LevelledHem(hem, higher))
}

// drawOpened keeps the opened skirt as marks.
func drawOpened(p *bench.Pen, o detail.Skirt, hem geom.Path) {
	drawWaistline(p, flaredWaist, o.Waist)
	p.Draw("skirt_side", o.Side, pattern.RoleStitch)
	p.Point("skirt_hip", o.Hip)
	p.Point("skirt_top", o.Side.Start())
	p.Point("hem_side", o.HemSide)
	p.Draw("hem", hem, pattern.RoleStitch)
	for i, f := range o.Feet {
		p.Guide(nth("slash", i), f[0], f[1])
	}
}

// flareImpossible refuses a flared skirt that has no darts to open.
func flareImpossible(p *bench.Pen) bool {
	if !flaredSkirt(p.K) || p.K.Garment == pattern.Skirt {
		return false
	}
	r := pattern.Refused{Code: "R30", Input: "skirt_line"}
	switch {
	case !detail.HasWaistSeam(p.K):
		r.Says = measure.Tell("a flared skirt opens through the darts of a waist seam, and this dress is cut in one from the shoulder to the hem")
		r.Cure = measure.Tell("an A-line skirt, or a waist seam with waist darts")
	case !waistDartWanted(p.K, theFront) && !waistDartWanted(p.K, theBack):
		r.Says = measure.Tell("a flared skirt opens through its waist darts, and the waist has none")
		r.Cure = measure.Tell("waist darts, or an A-line skirt")
	default:
		return false
	}
	p.Refuse(r)
	return true
}
