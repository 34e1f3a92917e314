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

// panelAllowance is the allowance of a panel seam: a curved one wants no more
// (common practice, no source).
const panelAllowance = measure.Inch / 2

// frontPanel draws the seam over the bust, once the dart is turned to where
// it begins.
func frontPanel() bench.Step {
	return bench.Step{
		ID: "front.panel", Piece: pattern.Front, Title: "Panel seam, over the bust", If: detail.HasPanels,
		Why:     measure.Tell("A seam over the bust point takes dart and waist in one smooth line. The side panel bends outwards there, the centre panel inwards."),
		Slip:    measure.Tell("Leaving a corner at the bust point: it sews as a point."),
		Needs:   dartNeeds,
		Choices: []pattern.ChoiceID{"panel_seam", "panel_flare", "front_waist_dart"},
		Uses:    theFront.uses("neck", "bust_point", "dart_fixed", "dart_moved", "dart_corner", "waist", "hip", "hem", "side"),
		Draw: func(p *bench.Pen) {
			place, bust := detail.PanelSeam(p.K), p.At("front.bust_point")
			w, hip, hem := p.At("front.waist"), p.At("front.hip"), p.Line("front.hem")
			intake := p.Sum(measure.Of("in at the waist", p.K.Length("front_waist_dart")))
			b := detail.Bust{Point: bust, Upper: p.At("front.dart_upper"), Lower: p.At("front.dart_lower")}
			t := detail.Turned{
				Fixed: p.At("front.dart_fixed"), Moved: p.At("front.dart_moved"), Before: p.Line("front.armhole_upper"),
				Part: geom.TurnAbout(bust, b.Angle()),
			}
			panel := detail.FrontPanel(place, bust, t, b.Angle(), w.Y, hip.Y, intake)
			if panelImpossible(p, theFront, panel, intake, w) {
				return
			}
			p.Do("From both ends of the dart draw a line through the bust point, rounded over {2 in} either side of it, to {} inside and outside of it at the waist, and together again at the hip line; straight down to the hem.", intake/2)
			p.Rule("The seam takes up the bust dart and {} at the waist; no other dart is drawn. Its allowance is {}.", intake, panelAllowance)
			drawPanel(p, panel, hem)
			p.Draw("dart", geom.Lines(t.Fixed, bust), pattern.RoleGuide)
		},
	}
}

// backPanel draws the same seam behind, where only the waist is taken in.
func backPanel() bench.Step {
	return bench.Step{
		ID: "back.panel", Piece: pattern.Back, Title: "Panel seam", If: detail.HasPanels,
		Why:     measure.Tell("The seam of the front goes on behind and meets it; it takes in the hollow of the back."),
		Slip:    measure.Tell("Beginning it elsewhere than in front: the two seams then miss each other on the shoulder."),
		Needs:   []measure.ID{measure.AcrossBack},
		Choices: []pattern.ChoiceID{"panel_seam", "panel_flare", "back_waist_dart", "armhole_depth"},
		Uses:    theBack.uses("neck", "shoulder", "neck_point", "shoulder_end", "armhole", "underarm", "waist", "hip", "hem"),
		Draw: func(p *bench.Pen) {
			place, w, hip := detail.PanelSeam(p.K), p.At("back.waist"), p.At("back.hip")
			intake := p.Sum(measure.Of("in at the waist", p.K.Length("back_waist_dart")))
			x, top := detail.BackPanelPlace(p.K, p.At("back.underarm"), w, intake)
			from, into := p.At("back.neck_point").Lerp(p.At("back.shoulder_end"), 0.5), geom.Vector{}
			arm := p.Line("back.armhole")
			if place == detail.ArmholePanel {
				last := arm[len(arm)-1]
				from, into = last.At(1.0/3), last.Tangent(1.0/3).Right()
				upper, lower := last.Split(1.0 / 3)
				p.Draw("armhole_closed", arm, pattern.RoleGuide)
				p.Draw("armhole_upper", append(append(geom.Path{}, arm[:len(arm)-1]...), upper), pattern.RoleStitch)
				p.Draw("armhole", geom.Path{lower}, pattern.RoleStitch)
			} else {
				seam := p.Line("back.shoulder")
				inner, outer := seam.Split(seam.Length() - p.At("back.neck_point").Dist(p.At("back.shoulder_end"))/2)
				p.Draw("shoulder_closed", seam, pattern.RoleGuide)
				p.Draw("shoulder", inner, pattern.RoleStitch)
				p.Draw("shoulder_outer", outer, pattern.RoleStitch)
			}
			panel := detail.BackPanel(place, from, into, x, top, w.Y, hip.Y, intake)
			if panelImpossible(p, theBack, panel, intake, w) {
				return
			}
			p.Do("From the same place as in front draw the seam down to {} out, in by {} to either side at the waist, and together again at the hip line; straight down to the hem.", measure.Length(x), intake/2)
			drawPanel(p, panel, p.Line("back.hem"))
		},
	}
}

// drawPanel draws both edges of a seam, down to the hem, and parts the hem.
// Panels that are flared overlap below the hip line.
func drawPanel(p *bench.Pen, panel detail.Panel, hem geom.Path) {
	hip := panel.Centre.End()
	foot := hip
	if at := hem.AtOut(hip.X); len(at) > 0 {
		foot = at[0]
	}
	p.Point("panel_inner", panel.Inner)
	p.Point("panel_outer", panel.Outer)
	p.Point("panel_foot", foot)
	flare := detail.PanelFlare(p.K)
	if flare == 0 {
		p.Draw("panel_centre", panel.Centre.Then(geom.Lines(hip, foot)), pattern.RoleStitch)
		p.Draw("panel_side", panel.Side.Then(geom.Lines(hip, foot)), pattern.RoleStitch)
		return
	}
	long := measure.Length(foot.Y - hip.Y)
	if flare < 0 || flare > rule.In(4) || flare > long/3 {
		p.Refuse(pattern.Refused{
			Code: "R20", Input: "panel_flare",
			Says: measure.Tell("panels that overlap by {} at a hem {} below the hip line cannot be drawn", flare, long),
			Cure: measure.Tell("{} or less", min(rule.In(1.5), (long/3).Down(rule.Eighth))),
		})
		return
	}
	s, _, _ := hem.Nearest(foot)
	hemSide, hemCentre := hem.Split(s)
	f := detail.FlarePanels(hip, hemSide, hemCentre, flare)
	p.Rule("Below the hip line each panel is {} wider at the seam, so that both overlap by {} at the hem; each edge is as long as before and the hem runs square out of it.", flare/2, flare)
	p.Draw("panel_centre", panel.Centre.Then(f.Centre), pattern.RoleStitch)
	p.Draw("panel_side", panel.Side.Then(f.Side), pattern.RoleStitch)
	p.Draw("panel_hem_centre", f.HemCentre, pattern.RoleStitch)
	p.Draw("panel_hem_side", f.HemSide, pattern.RoleStitch)
}

func panelImpossible(p *bench.Pen, h half, panel detail.Panel, intake measure.Length, waist geom.Point) bool {
	r := pattern.Refused{Code: "R20", Input: "panel_seam", Cure: measure.Tell("darts instead of panels")}
	id := pattern.ChoiceID(string(h.piece) + "_waist_dart")
	switch {
	case intake < 0 || intake > rule.In(2):
		r.Input = string(id)
		r.Says = measure.Tell("a panel seam that comes in {} at the waist of the "+string(h.piece)+" pulls", intake)
		r.Cure = measure.Tell("{1 1/2 in} or less")
	case waist.X-panel.Outer.X < rule.In(1.5).MM() || panel.Inner.X < rule.In(1).MM():
		r.Says = measure.Tell("the panel seam of the "+string(h.piece)+" lies {} out at a waist of {}; a panel is left too narrow", measure.Length(panel.Inner.X), measure.Length(waist.X))
	case len(geom.Cross(panel.Centre, p.Line(h.id("neck")))) > 0:
		r.Says = measure.Tell("the neck of the " + string(h.piece) + " is so deep or wide that it reaches over the panel seam; the centre panel would fall in two")
		r.Cure = measure.Tell("a neck that is less deep, or the seam from the armhole")
	case detail.PanelSeam(p.K) == detail.ShoulderPanel && len(geom.Cross(panel.Side, p.Line(h.id("armhole")))) > 0:
		r.Says = measure.Tell("the armhole of the " + string(h.piece) + " is so hollow that it reaches over the panel seam; the side panel would fall in two")
		r.Cure = measure.Tell("the seam from the armhole, or darts")
	case math.Abs((panel.Side.Length()-panel.Centre.Length())/rule.In(0.375).MM()) > 1:
		r.Says = measure.Tell("the side panel of the "+string(h.piece)+" would have to be eased by {}; {3/8 in} is the most", measure.Length(panel.Side.Length()-panel.Centre.Length()))
	default:
		return false
	}
	p.Refuse(r)
	return true
}

// panelled cuts a half into its two panels.
func (c cutter) panelled(h half) []pattern.Piece {
	k := c.s.Known
	hem := c.line(h.id("hem"))
	foot := c.at(h.id("panel_foot"))
	s, _, _ := hem.Nearest(foot)
	hemSide, hemCentre := hem.Split(s)
	meets := pattern.Mitre // of a seam and the hem
	if c.has(h.id("panel_hem_side")) {
		hemSide, hemCentre, meets = c.line(h.id("panel_hem_side")), c.line(h.id("panel_hem_centre")), pattern.Mirrored
	}
	centreSeam, sideSeam := c.line(h.id("panel_centre")), c.line(h.id("panel_side"))
	sidePiece, other, marks := pattern.FrontSide, pattern.Back, 1
	titles := []string{"Front, centre panel", "Front, side panel"}
	if h.back {
		sidePiece, other, marks = pattern.BackSide, pattern.Front, 2
		titles = []string{"Back, centre panel", "Back, side panel"}
	}
	seam := func(path geom.Path, to pattern.PieceID) bench.Side {
		return bench.Side{Name: "panel", Stitch: path, Allowance: panelAllowance, SewnTo: pattern.EdgeRef{Piece: to, Edge: "panel"}, Role: pattern.RoleStitch}
	}
	hemEdge := func(path geom.Path, corner pattern.Corner) bench.Side {
		return bench.Side{Name: "hem", Stitch: path, Allowance: k.Length("hem_allowance"), Corner: corner, Role: pattern.RoleStitch}
	}
	centre, side := c.panelTops(h, sidePiece, other)
	_, top, corner := c.necks(h, c.line(h.id("neck")), 0, "")
	toHem := seam(centreSeam, sidePiece)
	toHem.Corner = meets
	centre = append(centre, toHem)
	cut := pattern.OnFold
	if h.back {
		centre = append(centre, c.centreSides(hemCentre, c.centreUp(hemCentre))...)
		if !detail.BackOnFold(k) {
			cut = pattern.Pair
		}
	} else if detail.PlacketToHem(k) {
		cut, hemCentre = pattern.Pair, besideCentre(hemCentre.Reverse()).Reverse()
		centre = append(centre, hemEdge(hemCentre, pattern.Mitre), alongPlacket(hemCentre.End(), top))
	} else {
		centre = append(centre, hemEdge(hemCentre, pattern.Mitre),
			bench.Side{Name: "fold", Stitch: geom.Lines(hem.End(), top), Corner: corner, Role: pattern.RoleFold})
	}
	toSide := pattern.EdgeRef{Piece: pattern.BackSide, Edge: "side"}
	if h.back {
		toSide.Piece = pattern.FrontSide
	}
	side = append(
		side,
		bench.Side{Name: "side", Stitch: c.line(h.id("side")), Allowance: k.Length("side_allowance"), Corner: pattern.Mirrored, SewnTo: toSide, Role: pattern.RoleStitch},
		hemEdge(hemSide, meets),
		seam(sideSeam.Reverse(), h.piece),
	)
	pieces := []pattern.Piece{closed(h.piece, titles[0], cut, centre), closed(sidePiece, titles[1], pattern.Pair, side)}
	for i := range pieces {
		c.panelMarks(&pieces[i], h, marks, i == 1)
	}
	if h.back {
		c.backMarks(&pieces[0])
	}
	c.sideZipNotches(&pieces[1], marks)
	return pieces
}

// panelTops are the edges above the panel seam, of the centre panel and of
// the side panel.
func (c cutter) panelTops(h half, sidePiece, other pattern.PieceID) (centre, side []bench.Side) {
	for _, s := range c.upperSides(h) {
		switch s.Name {
		case "shoulder":
			s.SewnTo = pattern.EdgeRef{Piece: other, Edge: "shoulder"}
			centre = append(centre, s)
			if outer := c.line(h.id("shoulder_outer")); len(outer) > 0 {
				s.Stitch, s.SewnTo.Piece = outer, other+"_side"
				side = append(side, s)
			}
		case "armhole":
			s.SewnTo = pattern.EdgeRef{} // its facing goes over both panels, or over one only
			if upper := c.line(h.id("armhole_upper")); len(upper) > 0 {
				lower := s
				s.Stitch = upper
				centre = append(centre, s)
				side = append(side, lower)
				continue
			}
			side = append(side, s)
		default:
			centre = append(centre, s)
		}
	}
	return centre, side
}

// armholeOf is the edge that an armhole facing is sewn to; none where it
// runs over both panels.
func (c cutter) armholeOf(h half) pattern.EdgeRef {
	ref := pattern.EdgeRef{Piece: h.piece, Edge: "armhole"}
	switch detail.PanelSeam(c.s.Known) {
	case detail.ShoulderPanel:
		ref.Piece += "_side"
	case detail.ArmholePanel:
		ref = pattern.EdgeRef{}
	}
	return ref
}

// panelMarks are the notches and levels of a panel.
func (c cutter) panelMarks(p *pattern.Piece, h half, marks int, side bool) {
	k := c.s.Known
	waist, hip := c.at(h.id("waist")), c.at(h.id("hip"))
	at := c.at(h.id("panel_inner"))
	if side {
		at = c.at(h.id("panel_outer"))
		notch(p, "side", "waist", waist, marks)
		notch(p, "side", "hip", hip, marks)
		notch(p, "side", "hem fold", c.at(h.id("hem_side")), 1)
	}
	if side == (detail.PanelSeam(k) == detail.ShoulderPanel) {
		notch(p, "armhole", "middle of the armhole", c.moved(h.id("armhole_mid")), marks)
		c.sleeveNotches(p, h)
	}
	notch(p, "panel", "waist", at, marks)
	notch(p, "panel", "hip", geom.Point{X: c.at(h.id("panel_foot")).X, Y: hip.Y}, marks)
	if !h.back {
		for _, q := range c.easeNotches(side) {
			notch(p, "panel", "ease", q, marks)
		}
	}
	bust := rule.BustLevel(k).MM()
	for _, l := range []struct {
		name string
		y    float64
	}{{"bust", bust}, {"waist", waist.Y}, {"hip", hip.Y}} {
		if across := p.Stitch.AtLevel(l.y); len(across) > 1 {
			lo, hi := across[0], across[0]
			for _, q := range across {
				if q.X < lo.X {
					lo = q
				}
				if q.X > hi.X {
					hi = q
				}
			}
			p.Balance = append(p.Balance, pattern.Balance{Name: l.name, Line: geom.Straight(lo, hi)})
		}
	}
}

// easeNotches are the spots of the front's seam between which the side panel
// is eased: 2 in from the bust point on the centre panel, and as far from
// the top and from the waist on the side panel.
func (c cutter) easeNotches(side bool) []geom.Point {
	bust := c.at("front.bust_point")
	centre := c.line("front.panel_centre")
	b, _, _ := centre.Nearest(bust)
	w, _, _ := centre.Nearest(c.at("front.panel_inner"))
	first, second := b-detail.PanelNotch, b+detail.PanelNotch
	line := centre
	if side {
		line = c.line("front.panel_side")
		ws, _, _ := line.Nearest(c.at("front.panel_outer"))
		second = ws - (w - second)
	}
	p, _ := line.At(first)
	q, _ := line.At(second)
	return []geom.Point{p, q}
}
