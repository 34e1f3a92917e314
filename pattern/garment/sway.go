package garment

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

func swayed(k pattern.Known) bool { return detail.SwayTaken(k) > 0 }

// swayStep takes a fold out of the back at the waist, once all that crosses
// the waist line is drawn. The points stay where they were measured, for girths
// and levels; the lines that are cut go by the fold.
func swayStep() bench.Step {
	return bench.Step{
		ID: "back.sway", Piece: pattern.Back, Title: "Fold out of the hollow back", If: swayed,
		Why:     measure.Tell("A hollow back is shorter down the middle than at the sides. What is too long lies in level folds above the seat, so it is folded out."),
		Slip:    measure.Tell("Taking it off at the hem: the folds in the small of the back stay."),
		Choices: []pattern.ChoiceID{"sway_back", "closure", "waist_shaping"},
		Uses:    theBack.uses("waist", "hip", "hem_side", "hem_centre", "neck_centre", "side", "hem", "slit_top"),
		Also: func(k pattern.Known) []string {
			var out []string
			if backShaped(k) {
				out = append(out, theBack.id("centre_back"))
			}
			if waistDartWanted(k, theBack) {
				out = append(out, theBack.id(waistDartName(0)))
			}
			return out
		},
		Draw: drawSway,
	}
}

func drawSway(p *bench.Pen) {
	fold := p.K.Length("sway_back")
	r := pattern.Refused{Code: "R33", Input: "sway_back"}
	if why, cure := detail.SwayHindered(p.K); why != "" {
		r.Says, r.Cure = measure.Tell("a fold of {} cannot be taken out of this back: "+why, fold), measure.Tell(cure)
		p.Refuse(r)
		return
	}
	if fold > rule.In(1.25) {
		r.Says = measure.Tell("a fold of {} at the centre pulls the side up", fold)
		r.Cure = measure.Tell("{} or less; the rest comes in at the centre seam", rule.MostSway)
		p.Refuse(r)
		return
	}
	set, _ := p.K.Setting("sway_back")
	if !set.Default.Sum.IsZero() && !set.Chosen {
		p.Reads(measure.WaistToFloor, measure.WaistToFloorBack)
	}
	p.Because(set.Default.Because)
	p.Sum(measure.Of("fold", fold))
	side, waist := p.Line("back.side"), p.At("back.waist")
	pivot := waist
	if at := side.AtLevel(waist.Y); len(at) > 0 {
		pivot = at[0] // the drawn side rounds the waist
	}
	s := detail.NewSway(pivot, fold)
	p.Do("At the centre mark {} above the waist line and {} below it and fold the one on the other, to nothing at the side: below the waist the back turns up. Draw the centre back anew through the bend, rounded from {1 1/2 in} above it to {3 in} below.", fold/2, fold/2)
	p.Guide("sway_line", s.Bend, s.Pivot)
	for _, name := range []string{"hip", "hem_side", "hem_centre", "slit_top", "zip_end"} {
		if p.Has("back." + name) {
			p.Point(name+"_folded", s.Turn.Apply(p.At("back."+name)))
		}
	}
	for i, f := range fisheyesOf(theBack, p.Has, p.At) {
		drawFisheye(p, waistDartName(i), detail.Fisheye{
			Top: s.Half.Apply(f.Top), Left: s.Half.Apply(f.Left), Right: s.Half.Apply(f.Right), Foot: s.Half.Apply(f.Foot),
		})
	}
	p.Draw("side", s.Side(side), pattern.RoleStitch)
	p.Draw("hem", p.Line("back.hem").Transform(s.Turn), pattern.RoleStitch)
	p.Draw("centre_back", s.Centre(p.At("back.neck_centre"), p.At("back.hem_centre"), p.Line("back.centre_back")), pattern.RoleStitch)
	if open := p.Line("back.opening"); len(open) > 0 {
		p.Draw("opening", open.Transform(s.Turn), pattern.RoleStitch)
	}
}

// folded is a point of the back where a fold at the waist took it.
func (c cutter) folded(full string) geom.Point {
	if c.has(full + "_folded") {
		return c.at(full + "_folded")
	}
	return c.at(full)
}

// extension is what is added beside the opening of the hem.
func (c cutter) extension(hem geom.Path) (detail.Extension, bool) {
	k := c.s.Known
	line := c.line("back.sway_line")
	if len(line) == 0 {
		return detail.OpeningExtension(detail.HemOpening(k), hem.End(), c.at("back.slit_top").Y, k.Length("pleat_depth"))
	}
	ext, ok := detail.OpeningExtension(detail.HemOpening(k), c.at("back.hem_centre"), c.at("back.slit_top").Y, k.Length("pleat_depth"))
	turn := detail.NewSway(line.End(), k.Length("sway_back")).Turn
	ext.Line = ext.Line.Transform(turn)
	for i := range ext.Folds {
		ext.Folds[i] = ext.Folds[i].Transform(turn)
	}
	return ext, ok
}

// swayLines are the waist and hip line of a back with a fold taken out.
func (c cutter) swayLines(p *pattern.Piece) {
	across := func(name string, from, to geom.Point) {
		p.Balance = append(p.Balance, pattern.Balance{Name: name, Line: geom.Straight(from, to)})
	}
	line := c.line("back.sway_line")
	across("waist", line.Start(), line.End())
	turn := detail.NewSway(line.End(), c.s.Known.Length("sway_back")).Turn
	across("hip", turn.Apply(geom.Point{Y: c.at("back.hip").Y}), c.at("back.hip_folded"))
}
