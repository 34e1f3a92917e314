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

// otherHems draw the hem of a skirt that is not pegged.
func otherHems(h half) []bench.Step {
	straight := bench.Step{
		ID: h.id("hem"), Piece: h.piece, Title: "Hem, straight skirt",
		Why:     measure.Tell("The side hangs straight down from the hip, so the hem is level of itself."),
		Slip:    measure.Tell("Narrowing it all the same: a straight skirt opens her step without help."),
		Needs:   levelNeeds(h, measure.WaistToHip),
		Choices: hemLevels(h, "length", "skirt_line"),
		Uses:    h.uses("hip", "hem_centre"),
		If:      func(k pattern.Known) bool { return detail.SkirtLine(k) == detail.StraightSkirt },
		Draw:    func(p *bench.Pen) { drawHem(p, h) },
	}
	flared := straight
	flared.Title = "Hem, A-line"
	flared.Why = measure.Tell("The slanting side is as long as the centre, so it ends higher. Turned square to the side the hem hangs level all round.")
	flared.Slip = measure.Tell("Ruling the hem to the side: sewn together the two sides make a point there.")
	flared.Choices = hemLevels(h, "length", "skirt_line", "hem_flare")
	flared.If = func(k pattern.Known) bool { return detail.SkirtLine(k) == detail.ALineSkirt }
	wide := flared
	wide.Title = "Hem, flared skirt"
	wide.Why = measure.Tell("Half of the flare lies at the side; the other half opens below the darts once the skirt is cut apart from the bodice.")
	wide.Choices = append([]pattern.ChoiceID{"waist_seam", "front_waist_dart", "back_waist_dart"}, flared.Choices...)
	wide.If = flaredSkirt
	return []bench.Step{straight, flared, wide}
}

func drawHem(p *bench.Pen, h half) {
	at := p.At(h.id("hip"))
	centre, higher := evenHem(p, h)
	more := -detail.HemNarrower(p.K)
	if flareImpossible(p) {
		return
	}
	if flaredSkirt(p.K) {
		more /= 2
	}
	x := p.Sum(measure.Drawn("hip width", measure.Length(at.X)).Plus(measure.Of("flare", more)))
	if more.MM() >= (centre.Y-at.Y)/3 || more > rule.In(4) || more < 0 {
		p.Refuse(pattern.Refused{
			Code: "R13", Input: "hem_flare",
			Says: measure.Tell("a hem widened by {} on a quarter over {} of skirt hangs all at the side", more, measure.Length(centre.Y-at.Y)),
			Cure: measure.Tell("widen it by {2 in} or less"),
		})
		return
	}
	side := detail.HemSide(at, measure.Length(centre.Y), -more)
	p.Point("hem_side", side)
	if more == 0 {
		p.Do("Measure {} out and {} down, and mark the hem at the side; rule it to the hem at the "+h.centre+".", x, measure.Length(side.Y))
		p.Draw("hem", detail.LevelledHem(geom.Lines(side, centre), higher), pattern.RoleStitch)
		return
	}
	p.Do("Measure {} out and {} down, and mark the hem at the side. Rule it to the hem at the "+h.centre+", and over its last {2 in} curve it square to the side.", x, measure.Length(side.Y))
	p.Draw("hem", detail.LevelledHem(detail.FlaredHem(side, at, centre), higher), pattern.RoleStitch)
}

// openingText is what the step says of one kind of opening, with and without
// a zip above it; the slots of do: the height, and the width of what is added.
type openingText struct{ title, withZip, why, slip, do string }

var openingTexts = map[string]openingText{
	detail.NoOpening: {
		"Centre back, closed", "Zip, no opening", "Without an opening the hem itself must let her step.",
		"Leaving the hem closed on a narrow skirt: she takes half steps.", "Below it the centre back is closed to the hem.",
	},
	detail.SlitOpening: {
		"Hem opening", "Zip and hem opening", "The hem must let her step, and the cloth above the opening must hold.",
		"Opening it so high that it shows.", "Mark the top of the opening {} above the hem.",
	},
	detail.VentOpening: {
		"Vent", "Zip and vent", "A vent laps, so it opens to her step and still covers. Its top slants up to the seam and is stayed there.",
		"Extending one side only: both sides want it, one to lap over and one to lie under.",
		"Mark the top of the vent {} above the hem. Extend both sides by {} there, slanting up {1/2 in} to the seam.",
	},
	detail.KickPleat: {
		"Kick pleat", "Zip and kick pleat", "Cloth folded to one side opens to her step. Stitching across its top holds the fold in line.",
		"Leaving the top loose: it drags the skirt down.",
		"Mark the top of the pleat {} above the hem. Extend both sides by {} there, square to the seam.",
	},
	detail.InvertedPleat: {
		"Inverted pleat", "Zip and inverted pleat", "Two folds that meet at the seam open evenly. It needs the seam behind it.",
		"Cutting the extension once as deep as the fold: a fold lies double.",
		"Mark the top of the pleat {} above the hem. Extend both sides by {} there, slanting up {1/2 in} to the seam; fold on the centre line and half way out.",
	},
}

// otherOpenings draw zip and hem opening where it is no slit in a straight
// centre seam.
func otherOpenings() []bench.Step {
	var out []bench.Step
	for _, kind := range []string{detail.NoOpening, detail.SlitOpening, detail.VentOpening, detail.KickPleat, detail.InvertedPleat} {
		out = append(out, otherOpening(kind, true), otherOpening(kind, false))
	}
	return out
}

// usualBack says that the back is the usual one: a zip and a slit in a
// straight centre seam.
func usualBack(k pattern.Known) bool {
	return detail.HemOpening(k) == detail.SlitOpening && !backShaped(k) && detail.Closure(k) == detail.ZipBehind
}

// backOpening is how the hem opens behind; slits in the sides leave the
// centre back closed.
func backOpening(k pattern.Known) string {
	if !detail.BackOpens(k) {
		return detail.NoOpening
	}
	return detail.HemOpening(k)
}

func otherOpening(kind string, zip bool) bench.Step {
	text := openingTexts[kind]
	title, why, do := text.title, text.why, text.do
	if zip {
		title = text.withZip
		why = "The zip must let the hips pass the waist. " + why
		do = "On the centre line mark the end of the zip {} down. " + do
	} else if kind == detail.NoOpening {
		do = "The centre back is closed from the neck to the hem."
	}
	st := bench.Step{
		ID: "back.opening", Piece: pattern.Back, Title: title, Why: measure.Tell(why), Slip: measure.Tell(text.slip),
		Needs:   []measure.ID{measure.BackNeckToWaist, measure.WaistToHip},
		Choices: []pattern.ChoiceID{"zip_length", "slit_height", "length", "hem_opening"},
		Uses:    theBack.uses("neck_centre", "hem_centre", "hem"),
		Also: func(k pattern.Known) []string {
			if backShaped(k) {
				return theBack.uses("centre_back")
			}
			return nil
		},
		If: func(k pattern.Known) bool {
			return backOpening(k) == kind && (detail.Closure(k) == detail.ZipBehind) == zip && !usualBack(k)
		},
		Draw: func(p *bench.Pen) { drawOpening(p, kind, do) },
	}
	if kind == detail.KickPleat || kind == detail.InvertedPleat {
		st.Choices = append(st.Choices, "pleat_depth")
	}
	return st
}

func drawOpening(p *bench.Pen, kind, do string) {
	end, zip := detail.ZipEnd(p.K), detail.Closure(p.K) == detail.ZipBehind
	height, hem := p.K.Length("slit_height"), p.At("back.hem_centre")
	if kind == detail.NoOpening {
		height = 0
	}
	top := hem.Y - height.MM()
	ext, extended := detail.OpeningExtension(kind, hem, top, p.K.Length("pleat_depth"))
	if kind != detail.NoOpening && openingImpossible(p, height, extended) {
		return
	}
	line := p.Line("back.centre_back")
	on := func(y float64) geom.Point {
		if at := line.AtLevel(y); len(at) > 0 {
			return at[0]
		}
		return geom.Point{Y: y}
	}
	var args []any
	if zip {
		args = append(args, p.Sum(end))
	}
	if kind != detail.NoOpening {
		args = append(args, height)
	}
	if extended {
		args = append(args, measure.Length(-ext.Line.Start().X))
	}
	p.Do(do, args...)
	if zip {
		p.Point("zip_end", on(end.Result().MM()))
	}
	p.Point("slit_top", on(top))
	if extended {
		p.Draw("opening", geom.Lines(hem, ext.Line.Start()).Then(ext.Line), pattern.RoleStitch)
	}
}

// openingImpossible refuses an opening that there is no room for.
func openingImpossible(p *bench.Pen, height measure.Length, extended bool) bool {
	waist, hip, hem := backLevelsOf(p.K)
	r := pattern.Refused{Code: "R14", Input: "slit_height"}
	walk, known := detail.Walking(p.K)
	switch {
	case height < rule.In(1) && (extended || height < 0):
		r.Says = measure.Tell("an opening {} high does not open", height)
		r.Cure = measure.Tell("{4 in} or more, or no opening at all")
	case extended && hem-height < hip+rule.In(1):
		r.Says = measure.Tell("an opening {} high in a "+p.K.Garment+" {} long begins above the hip line", height, hem)
		r.Cure = measure.Tell("an opening of {} or less", max(0, hem-hip-rule.In(6)))
	case hem-height < waist:
		r.Says = measure.Tell("an opening {} high in a "+p.K.Garment+" {} long reaches above the waist", height, hem)
		r.Cure = measure.Tell("an opening of {} or less", hem-waist-rule.In(6))
	case extended && known && walk.LeastOpening(walk.Step) > walk.MostOpening():
		r.Says = measure.Tell("her step of {} wants an opening of {}; below zip and hip line there is room for {}", walk.Step, walk.LeastOpening(walk.Step), walk.MostOpening())
		r.Cure = measure.Tell("a wider hem, or a shorter zip")
		r.Input = "skirt_line"
	default:
		return false
	}
	p.Refuse(r)
	return true
}

// backLevelsOf are the levels of the back: of a skirt they count from the
// waist.
func backLevelsOf(k pattern.Known) (waist, hip, hem measure.Length) {
	if k.Garment == pattern.Skirt {
		return 0, k.Body(measure.WaistToHip), k.Length("skirt_length")
	}
	return rule.BackWaist(k).Result(), rule.BackHip(k).Result(), k.Length("length")
}

// sideZip marks a zip in the left side, on the back.
func sideZip() bench.Step {
	return bench.Step{
		ID: "back.side_zip", Piece: pattern.Back, Title: "Zip in the left side",
		Why:     measure.Tell("It lets the waist over her bust and hips. It begins below the facing and below a side dart."),
		Slip:    measure.Tell("A side zip with a close neck: her head does not go through."),
		Choices: []pattern.ChoiceID{"closure", "zip_length"},
		Uses:    theBack.uses("underarm", "waist", "hip", "side"),
		If:      func(k pattern.Known) bool { return detail.Closure(k) == detail.ZipSide },
		Draw: func(p *bench.Pen) {
			start := detail.SideZipStart(p.K)
			from, to, long := detail.SideZip(p.At("back.underarm"), p.At("back.waist"), p.At("back.hip"), start)
			p.Sum(measure.Drawn("opening", long))
			p.Do("On the left side mark the start of the zip {} below the underarm, and its end {6 1/2 in} below the waist; the same on the front, with the dart closed.", start)
			p.Point("side_zip_start", from)
			p.Point("side_zip_end", to)
		},
	}
}

// sideZipNotches mark the side zip on a half, by its place along the seam.
func (c cutter) sideZipNotches(p *pattern.Piece, marks int) {
	if !c.has("back.side_zip_end") {
		return
	}
	if c.s.Garment == pattern.Skirt {
		notch(p, "side", "zip end, left side", c.at("back.side_zip_end"), marks)
		return
	}
	u, w := c.at("back.underarm"), c.at("back.waist")
	from := u.Dist(c.at("back.side_zip_start"))
	to := u.Dist(w) + rule.In(6.5).MM()
	switch p.ID {
	case pattern.SkirtFront, pattern.SkirtBack:
		from, to = -1, rule.In(6.5).MM()
	}
	for _, n := range []struct {
		name string
		at   float64
	}{{"zip start, left side", from}, {"zip end, left side", to}} {
		if n.at < 0 {
			continue
		}
		if at, ok := alongSide(p, n.at); ok {
			notch(p, "side", n.name, at, marks)
		}
	}
}

// alongSide is the spot of the side so far below the underarm, darts closed.
func alongSide(p *pattern.Piece, s float64) (geom.Point, bool) {
	for _, e := range p.EdgesNamed("side") {
		if l := e.Stitch.Length(); s > l {
			s -= l
			continue
		}
		at, _ := e.Stitch.At(s)
		return at, true
	}
	return geom.Point{}, false
}

// slitAllowance is the allowance of a plain slit, pleatAllowance that of the
// seam of a pleat (common practice).
const (
	slitAllowance  = measure.Inch
	pleatAllowance = 0.625 * measure.Inch
)

// opens says whether the hem opens at the centre back.
func (c cutter) opens() bool { return detail.BackOpens(c.s.Known) }

// centreSides are hem and centre back, from the side up to where the centre
// ends: at the neck, or at a waist seam.
func (c cutter) centreSides(line, up geom.Path) []bench.Side {
	k := c.s.Known
	hem := bench.Side{Name: "hem", Stitch: line, Allowance: k.Length("hem_allowance"), Corner: pattern.Mirrored, Role: pattern.RoleStitch}
	side := func(stitch geom.Path, allowance measure.Length, corner pattern.Corner) bench.Side {
		return bench.Side{Name: "centre_back", Stitch: stitch, Allowance: allowance, Corner: corner, Role: pattern.RoleStitch}
	}
	zip := k.Length("zip_allowance")
	if detail.BackOnFold(k) {
		hem.Corner = pattern.Mitre
		return []bench.Side{hem, {Name: "fold", Stitch: up, Role: pattern.RoleFold}}
	}
	if !c.opens() {
		return []bench.Side{hem, side(up, zip, pattern.Mitre)}
	}
	ext, extended := c.extension(hem.Stitch)
	if !extended {
		split := c.folded("back.slit_top").Y - rule.In(0.5).MM()
		below, above := splitLevel(up, split)
		return []bench.Side{hem, side(below, slitAllowance, pattern.Square), side(above, zip, pattern.Mitre)}
	}
	// The extension has a hem of its own, so that the hem keeps the skirt's
	// measure; its edge stands square on it.
	more := hem
	more.Name, more.Stitch = "hem_extension", geom.Lines(hem.Stitch.End(), ext.Line.Start())
	hem.Corner, more.Corner = pattern.Mitre, pattern.Mitre
	_, above := splitLevel(up, ext.Line.End().Y)
	allowance := measure.Length(0)
	if ext.Sewn {
		allowance = pleatAllowance
	}
	edge, lid, seam := side(ext.Line[:1], allowance, pattern.Mitre), side(ext.Line[1:], allowance, pattern.None), side(above, zip, pattern.Mitre)
	lid.Cut, seam.Cut = underLid(lid.Stitch.Offset(allowance.MM(), bench.OffsetTolerance), above.Offset(zip.MM(), bench.OffsetTolerance))
	return []bench.Side{hem, more, edge, lid, seam}
}

// splitLevel parts a centre line, which runs up, at a level.
func splitLevel(up geom.Path, y float64) (below, above geom.Path) {
	if y > up.End().Y && len(up) == 1 && !up[0].Curved {
		p := geom.Point{X: up.Start().X, Y: y}
		return geom.Lines(up.Start(), p), geom.Lines(p, up.End())
	}
	if at := up.AtLevel(y); len(at) > 0 && y > up.End().Y {
		s, _, _ := up.Nearest(at[0])
		return up.Split(s)
	}
	return up.Split(up.Length() / 2)
}

// underLid ends the cutting line of an extension's top where the cutting line
// of the seam above it begins.
func underLid(lid, seam geom.Path) (geom.Path, geom.Path) {
	meet, ok := geom.Meet(geom.Line{At: lid.Start(), Dir: lid.StartTangent()}, geom.Line{At: seam.Start(), Dir: seam.StartTangent()})
	if !ok {
		return lid, seam
	}
	rest := seam
	if past := seam.Start().To(meet).Dot(seam.StartTangent()); past > 0 {
		_, rest = seam.Split(math.Min(past, seam.Length()/2))
	} else if past < 0 {
		rest = geom.Lines(meet, seam.Start()).Then(seam)
	}
	return geom.Lines(lid.Start(), meet), rest
}

// openingFolds marks the lines that an extension is folded on.
func (c cutter) openingFolds(p *pattern.Piece) {
	ext, extended := c.extension(c.line("back.hem"))
	if !extended {
		return
	}
	for _, f := range ext.Folds {
		p.Balance = append(p.Balance, pattern.Balance{Name: "fold", Line: f})
	}
}
