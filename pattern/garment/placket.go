package garment

import (
	"fmt"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

// A placket: the front stays on the fold and is slashed down it to the end of
// the opening; a band is sewn to either side, the right one laps over the left.

// placketSteps mark the opening and the buttons on the front.
func placketSteps() []bench.Step {
	return []bench.Step{{
		ID: "front.placket", Piece: pattern.Front, Title: "Placket in front", If: detail.HasPlacket,
		Why:     measure.Tell("Open to above the hip it lets head, bust and hips through. The bands are stitched half their width beside the fold, so that they lap over the centre."),
		Slip:    measure.Tell("Cutting down the fold before the bands are sewn on: its foot frays."),
		Rule:    measure.Tell("Bands {1 in} wide, buttons about {3 1/4 in} apart with one at the bust line, where it would gape; common practice, no source."),
		Needs:   []measure.ID{measure.SideNeckToBustPoint},
		Choices: []pattern.ChoiceID{"closure", "placket_to", "placket_length"},
		Uses:    theFront.uses("neck", "neck_centre", "hem_centre", "bust_point", "waist", "hem"),
		Draw:    drawPlacket,
	}}
}

func drawPlacket(p *bench.Pen) {
	neck, long := p.Line("front.neck"), p.K.Length("placket_length")
	top, hem := p.At("front.neck_centre"), p.At("front.hem_centre")
	end := top.Y + long.MM()
	half := detail.PlacketWidth.MM() / 2
	toHem := detail.PlacketToHem(p.K)
	if toHem {
		end = hem.Y
		if at := p.Line("front.hem").AtOut(half); len(at) > 0 {
			end = at[0].Y
		}
		long = measure.Length(end - top.Y)
	}
	set, _ := p.K.Setting("placket_length")
	p.Because(set.Default.Because)
	if placketImpossible(p, long, measure.Length(hem.Y-end), measure.Length(end-p.At("front.waist").Y)) {
		return
	}
	start := top
	if at := neck.AtOut(half); len(at) > 0 {
		start = at[0]
	}
	p.Sum(measure.Of("length", long))
	buttons := detail.Buttons(top.Y, end, p.At("front.bust_point").Y, toHem)
	p.Do("On the fold mark the end of the opening {} below the neck. Rule the stitching {} beside the fold from the neck down to it, and across to the fold. On the centre mark {} buttons, {} apart, the first {} below the neck.",
		long, measure.Length(half), len(buttons), buttonsApart(buttons), measure.Length(buttons[0]-top.Y))
	if toHem {
		p.Do("The front is open all along: rule the stitching {} beside the centre, from the neck down to the hem, {} long, and cut on the centre. On the centre mark {} buttons, {} apart, the first {} below the neck.",
			measure.Length(half), long, len(buttons), buttonsApart(buttons), measure.Length(buttons[0]-top.Y))
		p.Rule("Bands {1 in} wide, buttons about {3 1/4 in} apart with one at the bust line, the last some way above the hem, so that she can walk; common practice, no source.")
	}
	p.Point("placket_end", geom.Point{Y: end})
	for i, y := range buttons {
		p.Point(fmt.Sprintf("button_%d", i+1), geom.Point{Y: y})
	}
	p.Draw("placket", geom.Lines(geom.Point{Y: end}, geom.Point{X: half, Y: end}, start), pattern.RoleStitch)
}

func buttonsApart(levels []float64) measure.Length {
	if len(levels) < 2 {
		return 0
	}
	return measure.Length(levels[1] - levels[0])
}

// placketImpossible refuses a placket of a length that ends so far above the
// hem and so far below the waist.
func placketImpossible(p *bench.Pen, long, aboveHem, belowWaist measure.Length) bool {
	r := pattern.Refused{Code: "R33", Input: "placket_length"}
	switch {
	case detail.HasNeckOpening(p.K):
		r.Input = "front_neckline"
		r.Says = measure.Tell("a neck with a " + detail.NeckStyle(p.K, false) + " is open in front already")
		r.Cure = measure.Tell("a jewel neck with a placket, or another closure")
	case detail.HasFrontSeam(p.K) && hasDart(p.K) && detail.DartPlace(p.K) == detail.CentreDart:
		r.Input = "bust_dart"
		r.Says = measure.Tell("the bust dart lies in the centre front, and a placket cannot be sewn over it")
		r.Cure = measure.Tell("a bust dart from the side, or another closure")
	case long < rule.In(2):
		r.Says = measure.Tell("a placket {} long holds no buttons", long)
		r.Cure = measure.Tell("{5 in} or more")
	case aboveHem < rule.In(2) && !detail.PlacketToHem(p.K):
		r.Says = measure.Tell("a placket {} long ends {} above the hem; the band must end in whole cloth", long, max(0, aboveHem))
		r.Cure = measure.Tell("{} or less, or one to the hem", (long + aboveHem - rule.In(3)).Down(rule.Eighth))
	case detail.HasWaistSeam(p.K) && belowWaist > -rule.In(1) && belowWaist < rule.In(1):
		r.Says = measure.Tell("a placket {} long ends at the waist seam, where its end cannot be turned in", long)
		r.Cure = measure.Tell("{} or less, or {} or more", (long - belowWaist - rule.In(1)).Down(rule.Eighth), (long - belowWaist + rule.In(1)).Up(rule.Eighth))
	default:
		return false
	}
	p.Refuse(r)
	return true
}

// openThrough says that the front, or its bodice, is open from end to end: to
// the hem, or through a waist seam.
func (c cutter) openThrough() bool {
	if !detail.HasPlacket(c.s.Known) || len(c.line("front.placket")) == 0 {
		return false
	}
	return detail.PlacketToHem(c.s.Known) || c.skirtSlashed()
}

// skirtSlashed says that a placket goes on below a waist seam.
func (c cutter) skirtSlashed() bool {
	return detail.HasPlacket(c.s.Known) && detail.HasWaistSeam(c.s.Known) && c.has("front.placket_end") && c.at("front.placket_end").Y > c.at("front.waist").Y
}

// besideCentre is what of a line lies outside the stitching of a placket: of
// one that runs out from the centre.
func besideCentre(p geom.Path) geom.Path {
	if at := p.AtOut(detail.PlacketWidth.MM() / 2); len(at) > 0 {
		_, p = splitAt(p, at[0])
	}
	return p
}

// alongPlacket is the edge of a front that is open from end to end.
func alongPlacket(from, to geom.Point) bench.Side {
	return bench.Side{
		Name: "placket", Stitch: geom.Lines(from, to), Allowance: detail.PlacketWidth / 2,
		SewnTo: pattern.EdgeRef{Piece: pattern.Placket, Edge: "placket"}, Role: pattern.RoleStitch,
	}
}

// skirtFrontCentre is the centre of a skirt's front from the hem up: the fold,
// and above the end of a placket its line.
func (c cutter) skirtFrontCentre(hem geom.Path, w detail.Waistline) []bench.Side {
	top := w.Parts[0].Start()
	switch {
	case detail.PlacketToHem(c.s.Known):
		return []bench.Side{alongPlacket(hem.End(), top)}
	case !c.skirtSlashed():
		return []bench.Side{{Name: "fold", Stitch: geom.Lines(hem.End(), top), Role: pattern.RoleFold}}
	}
	end := geom.Point{Y: c.at("front.placket_end").Y}
	slash := alongPlacket(end, top)
	slash.Stitch = geom.Lines(end, geom.Point{X: top.X, Y: end.Y}, top)
	// The waist's allowance ends at the fold too.
	slash.Cut, slash.Corner = geom.Lines(end, geom.Point{Y: top.Y}), pattern.Mitre
	return append([]bench.Side{{Name: "fold", Stitch: geom.Lines(hem.End(), end), Corner: pattern.None, Role: pattern.RoleFold}}, c.footOf(slash)...)
}

// opening is the line stitched in the front neck, from its foot on the fold
// up: of a slit, a keyhole or a placket.
func (c cutter) opening(h half) (line geom.Path, name string) {
	if h.back {
		return nil, ""
	}
	if line := c.line(h.id("neck_opening")); len(line) > 0 {
		return line, "neck_opening"
	}
	return c.line(h.id("placket")), "placket"
}

// footOf is the level foot of a placket as an edge of its own, cut along the
// fold or out from the seam below it, and the rest of its line.
func (c cutter) footOf(slash bench.Side) []bench.Side {
	if slash.Name != "placket" || len(slash.Stitch) < 2 {
		return []bench.Side{slash}
	}
	foot := slash
	foot.Name, foot.Stitch, foot.SewnTo, foot.Corner, foot.Allowance = "placket_foot", slash.Stitch[:1], pattern.EdgeRef{}, pattern.None, 0
	start := slash.Cut.Start()
	split := start.Lerp(slash.Cut.End(), 0.01)
	foot.Cut = geom.Lines(start, split)
	if detail.HasFrontSeam(c.s.Known) && !detail.HasPanels(c.s.Known) && !c.skirtSlashed() {
		foot.Cut = geom.Lines(start.Add(geom.Vector{X: -frontSeamAllowance.MM()}), start)
		split = start
	}
	slash.Stitch, slash.Cut = slash.Stitch[1:], geom.Lines(split, slash.Cut.End())
	slash.SewnTo, slash.Allowance = pattern.EdgeRef{Piece: pattern.Placket, Edge: "placket"}, detail.PlacketWidth/2
	return []bench.Side{foot, slash}
}

// fromPlacket cuts the front edge of a facing back to the stitching of the
// placket: its neck and outer line begin there.
func (c cutter) fromPlacket(neck, outer geom.Path) (geom.Path, geom.Path, bool) {
	if !detail.HasPlacket(c.s.Known) || len(c.line("front.placket")) == 0 {
		return neck, outer, false
	}
	half := detail.PlacketWidth.MM() / 2
	from := func(p geom.Path) geom.Path {
		at := p.AtOut(half)
		if len(at) == 0 {
			return p
		}
		s, _, _ := p.Nearest(at[0])
		_, rest := p.Split(s)
		return rest
	}
	return from(neck), from(outer), true
}

// placketBand is a band as it is cut: twice its width, folded down its middle.
// Its upper end follows the neck that it lies on.
func (c cutter) placketBand() pattern.Piece {
	k := c.s.Known
	neck, half, wide := c.closedLine("front.neck"), detail.PlacketWidth.MM()/2, detail.PlacketWidth.MM()
	end := c.at("front.placket_end").Y
	if at := c.line("front.hem").AtOut(half); detail.PlacketToHem(k) && len(at) > 0 {
		end = at[0].Y
	}
	part := neck
	if at := neck.AtOut(half); len(at) > 0 {
		s, _, _ := neck.Nearest(at[0])
		part, _ = neck.Split(s)
	}
	// From the centre to the seam, moved to where it lies on the band; then its
	// mirror images about the centre of the band and about its fold.
	seamward := part.Transform(geom.Move(geom.Vector{X: half}))
	mirror := func(p geom.Path, x float64) geom.Path {
		return p.Transform(geom.MirrorIn(geom.Line{At: geom.Point{X: x}, Dir: geom.Vector{Y: 1}})).Reverse()
	}
	toFold := mirror(seamward, half)
	allowance := rule.In(0.5)
	edge := func(name string, path geom.Path, allowance measure.Length) bench.Side {
		return bench.Side{Name: name, Stitch: path, Allowance: allowance, Role: pattern.RoleStitch}
	}
	right, left := seamward.End(), mirror(seamward, 0).Start()
	seam := edge("placket", geom.Lines(right, geom.Point{X: wide, Y: end}), allowance)
	seam.SewnTo = pattern.EdgeRef{Piece: pattern.Front, Edge: "placket"}
	var sides []bench.Side
	for _, p := range []geom.Path{mirror(seamward, 0), mirror(toFold, 0), toFold, seamward} {
		sides = append(sides, edge("neck", p, k.Length("neck_allowance")))
	}
	p := closed(pattern.Placket, "Placket band", pattern.Pair, append(
		sides, seam, edge("end", geom.Lines(geom.Point{X: wide, Y: end}, geom.Point{X: -wide, Y: end}), allowance),
		edge("inner", geom.Lines(geom.Point{X: -wide, Y: end}, left), allowance),
	))
	p.Also = []string{"interfacing"}
	top := c.at("front.neck_centre").Y
	p.Balance = append(p.Balance, pattern.Balance{Name: "fold", Line: geom.Straight(geom.Point{Y: top}, geom.Point{Y: end})})
	for i := 1; c.has(fmt.Sprintf("front.button_%d", i)); i++ {
		p.Holes = append(p.Holes, geom.Point{X: half, Y: c.at(fmt.Sprintf("front.button_%d", i)).Y})
	}
	return p
}

// facingFront is the neck edge of a facing and its edge at the centre: on the
// fold, a seam behind, or in front turned in along the placket.
func (c cutter) facingFront(h half, neck, outer geom.Path, allowance measure.Length) (necks []bench.Side, end bench.Side, rest geom.Path, cut pattern.CutKind) {
	if !h.back {
		if n, o, ok := c.fromPlacket(neck, outer); ok {
			side := bench.Side{Name: "neck", Stitch: n, Allowance: allowance, SewnTo: pattern.EdgeRef{Piece: h.piece, Edge: "neck"}, Role: pattern.RoleStitch}
			end := bench.Side{Name: "placket", Stitch: geom.Lines(o.Start(), n.Start()), Allowance: rule.In(0.5), Role: pattern.RoleStitch}
			return []bench.Side{side}, end, o, pattern.Pair
		}
	}
	necks, top, corner := c.necks(h, neck, allowance, h.piece)
	return necks, bench.Side{Name: "fold", Stitch: geom.Lines(outer.Start(), top), Corner: corner, Role: pattern.RoleFold}, outer, pattern.OnFold
}
