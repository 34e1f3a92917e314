package garment

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

// frontSeamAllowance is the allowance of a seam down the centre front (common
// practice, no source).
const frontSeamAllowance = 0.625 * measure.Inch

// atWaist cuts bodice and skirt of the halves that are drawn.
func (c cutter) atWaist(front, back bool) []pattern.Piece {
	var out []pattern.Piece
	if front {
		out = append(out, c.bodiceFront())
	}
	if back {
		out = append(out, c.bodiceBack())
	}
	if front {
		out = append(out, c.skirt(theFront))
	}
	if back {
		out = append(out, c.skirt(theBack))
	}
	return out
}

// frontCut is how the front is cut: on the fold, unless a seam runs down its
// centre.
func frontCut(k pattern.Known) pattern.CutKind {
	if detail.HasFrontSeam(k) || detail.PlacketToHem(k) {
		return pattern.Pair
	}
	return pattern.OnFold
}

// frontCentre is the centre front from its foot up to the neck: the fold, or
// a seam with a dart in it where the bust dart lies there.
func (c cutter) frontCentre(foot geom.Point) []bench.Side {
	_, top, corner := c.necks(theFront, c.line("front.neck"), 0, "")
	if c.openThrough() {
		return []bench.Side{alongPlacket(foot, top)}
	}
	up := geom.Lines(foot, top)
	if !detail.HasFrontSeam(c.s.Known) {
		return []bench.Side{{Name: "fold", Stitch: up, Corner: corner, Role: pattern.RoleFold}}
	}
	side := bench.Side{Name: "centre_front", Stitch: up, Allowance: frontSeamAllowance, Corner: corner, Role: pattern.RoleStitch}
	if detail.DartPlace(c.s.Known) != detail.CentreDart || len(c.line("front.dart_end")) != 2 {
		return []bench.Side{side}
	}
	before, after := side, side
	before.Stitch = geom.Lines(foot, c.at("front.dart_fixed"))
	after.Stitch = geom.Lines(c.at("front.dart_moved"), top)
	return c.withGap(detail.CentreDart, before, after)
}

// waistSides are the edges at the waist, from the centre out to the side, with
// the darts in them; of a bodice inwards.
func (c cutter) waistSides(w detail.Waistline, to pattern.PieceID, inwards bool) []bench.Side {
	allowance := c.s.Known.Length("waist_allowance")
	part := func(path geom.Path) bench.Side {
		return bench.Side{Name: "waist", Stitch: path, Allowance: allowance, SewnTo: waistOf(to), Role: pattern.RoleStitch}
	}
	n := len(w.Darts)
	sides := []bench.Side{part(w.Parts[0])}
	if inwards {
		sides = []bench.Side{part(w.Parts[n].Reverse())}
	}
	for i := range w.Darts {
		d := w.Darts[i]
		first, second := d.Inner, d.Outer
		after := part(w.Parts[i+1])
		if inwards {
			next := n - 1 - i
			d = w.Darts[next]
			first, second = d.Outer, d.Inner
			after = part(w.Parts[next].Reverse())
		}
		before := &sides[len(sides)-1]
		cut := gapCuts(*before, after, d.Tip, inwards)
		before.Cut, before.Corner, after.Cut = cut.before, pattern.None, cut.after
		dart := func(a, b geom.Point, path geom.Path) bench.Side {
			return bench.Side{Name: "dart", Stitch: geom.Lines(a, b), Cut: path, Allowance: allowance, Corner: pattern.None, Role: pattern.RoleStitch}
		}
		sides = append(sides, dart(first, d.Cap, cut.toCap), dart(d.Cap, second, cut.fromCap), after)
	}
	return sides
}

func waistOf(to pattern.PieceID) pattern.EdgeRef {
	if to == "" {
		return pattern.EdgeRef{}
	}
	return pattern.EdgeRef{Piece: to, Edge: "waist"}
}

// seamDarts puts the darts of a waistline into its piece; where the bust dart
// lies there it is the first, and no waist dart.
func (c cutter) seamDarts(p *pattern.Piece, w detail.Waistline, bust bool) {
	for i, s := range w.Darts {
		d := pattern.Dart{
			Name: "waist dart", Tip: s.Tip, Legs: [2]geom.Point{s.Outer, s.Inner}, Cap: s.Cap, Waist: !bust,
			Intake: s.Intake(), Leg: s.Leg(), Degrees: rule.Degrees(s.Angle()), Pressed: "to the centre",
		}
		if i > 0 {
			d.Name = "second waist dart"
		}
		for j, leg := range d.Legs {
			d.Ends[j] = legEnd(d.Tip, leg, p.CutLine)
			p.Notches = append(p.Notches, pattern.Notch{At: d.Ends[j], Edge: "waist", Marks: 1, Into: degrees(d.Ends[j].To(d.Tip)), Name: "dart leg"})
		}
		p.Darts = append(p.Darts, d)
		p.Holes = append(p.Holes, s.Tip.Add(s.Tip.To(s.Inner.Lerp(s.Outer, 0.5)).Unit().Scale(rule.In(0.5).MM())))
	}
}

func (c cutter) bodiceFront() pattern.Piece {
	w := c.waistline(theFront, bodiceWaist)
	cut := frontCut(c.s.Known)
	if c.openThrough() {
		w.Parts[0], cut = besideCentre(w.Parts[0]), pattern.Pair
	}
	sides := append(c.frontSides(pattern.Mitre), c.waistSides(w, pattern.SkirtFront, true)...)
	p := closed(pattern.Front, "Bodice, front", cut, append(sides, c.frontCentre(w.Parts[0].Start())...))
	c.frontDart(&p)
	c.bodiceMarks(&p, theFront, 1)
	c.seamDarts(&p, w, dartAtWaist(c.s.Known))
	return p
}

func (c cutter) bodiceBack() pattern.Piece {
	k := c.s.Known
	w := c.waistline(theBack, bodiceWaist)
	sides := append(
		c.backUpper(),
		bench.Side{
			Name: "side", Stitch: c.line("back.side"), Allowance: k.Length("side_allowance"),
			SewnTo: pattern.EdgeRef{Piece: pattern.Front, Edge: "side"}, Role: pattern.RoleStitch,
		},
	)
	sides = append(sides, c.waistSides(w, pattern.SkirtBack, true)...)
	_, above := c.backCentre()
	cut := pattern.Pair
	end := bench.Side{Name: "centre_back", Stitch: above, Allowance: k.Length("zip_allowance"), Role: pattern.RoleStitch}
	if bodiceOnFold(k) {
		cut = pattern.OnFold
		end = bench.Side{Name: "fold", Stitch: above, Role: pattern.RoleFold}
	}
	p := closed(pattern.Back, "Bodice, back", cut, append(sides, end))
	c.bodiceMarks(&p, theBack, 2)
	c.backDart(&p)
	c.seamDarts(&p, w, false)
	return p
}

// bodiceOnFold says that nothing opens or shapes the back of the bodice.
func bodiceOnFold(k pattern.Known) bool {
	return detail.Closure(k) != detail.ZipBehind && !backShaped(k)
}

// backCentre is the centre back below and above the waist seam, both upwards.
func (c cutter) backCentre() (below, above geom.Path) {
	return splitLevel(c.centreUp(c.line("back.hem")), c.at("back.waist").Y)
}

// bodiceMarks are the notches and the bust line of a bodice.
func (c cutter) bodiceMarks(p *pattern.Piece, h half, marks int) {
	c.upperMarks(p, h, marks)
	waistNotch(p, c.waistline(h, bodiceWaist), marks)
	c.sideZipNotches(p, marks)
}

// waistNotch marks the middle of a waist seam that has no dart to meet at.
func waistNotch(p *pattern.Piece, w detail.Waistline, marks int) {
	if len(w.Darts) > 0 {
		return
	}
	mid, _ := w.Parts[0].At(w.Parts[0].Length() / 2)
	notch(p, "waist", "middle of the waist", mid, marks)
}

// skirtNames are what the skirts of both halves are called: below a bodice, or
// alone.
type skirtNames struct {
	id, other pattern.PieceID
	title     string
	sewnTo    pattern.PieceID // what its waist is sewn to
	marks     int
}

// skirt cuts the skirt of a half that a waist seam parts.
func (c cutter) skirt(h half) pattern.Piece {
	if h.back {
		return c.skirtOf(h, skirtNames{pattern.SkirtBack, pattern.SkirtFront, "Skirt, back", h.piece, 2})
	}
	return c.skirtOf(h, skirtNames{pattern.SkirtFront, pattern.SkirtBack, "Skirt, front", h.piece, 1})
}

func (c cutter) skirtOf(h half, n skirtNames) pattern.Piece {
	k := c.s.Known
	w := c.skirtWaistline(h)
	if !h.back && c.openThrough() {
		w.Parts[0] = besideCentre(w.Parts[0])
	}
	sides := append(c.waistSides(w, n.sewnTo, false), c.openSides(h, bench.Side{
		Name: "side", Stitch: c.line(h.id("skirt_side")), Allowance: k.Length("side_allowance"), Corner: pattern.Mirrored,
		SewnTo: pattern.EdgeRef{Piece: n.other, Edge: "side"}, Role: pattern.RoleStitch,
	})...)
	hem := c.line(h.id("hem"))
	cut := pattern.OnFold
	if h.back {
		below := geom.Lines(hem.End(), w.Parts[0].Start())
		if k.Garment != pattern.Skirt {
			below, _ = c.backCentre()
		}
		sides = append(sides, c.centreSides(hem, below)...)
		if !detail.BackOnFold(k) {
			cut = pattern.Pair
		}
	} else {
		if detail.PlacketToHem(k) {
			hem, cut = besideCentre(hem.Reverse()).Reverse(), pattern.Pair
		}
		sides = append(sides, bench.Side{Name: "hem", Stitch: hem, Allowance: k.Length("hem_allowance"), Role: pattern.RoleStitch})
		sides = append(sides, c.skirtFrontCentre(hem, w)...)
	}
	p := closed(n.id, n.title, cut, sides)
	c.skirtMarks(&p, h, n.marks)
	c.seamDarts(&p, w, false)
	if h.back {
		c.backMarks(&p)
	}
	return p
}

// skirtMarks are the notches and the hip line of a skirt.
func (c cutter) skirtMarks(p *pattern.Piece, h half, marks int) {
	hip := c.at(h.id("hip"))
	if name := h.id("skirt_hip"); c.has(name) {
		hip = c.at(name)
	}
	notch(p, "side", "hip", hip, marks)
	notch(p, "side", "hem fold", c.at(h.id("hem_side")), 1)
	waistNotch(p, c.skirtWaistline(h), marks)
	if !c.has(h.id("slash")) { // of an opened skirt it is no straight line
		balance(p, "hip", hip.Y)
	}
	c.sideZipNotches(p, marks)
	c.slitNotch(p, h)
}
