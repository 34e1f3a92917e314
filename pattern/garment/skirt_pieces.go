package garment

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
)

// skirtRules say by which rule a step of the skirt goes and where it comes
// from.
var skirtRules = map[string]string{
	"hip":          "A quarter of the girth and a quarter of the ease, as teaching pages print it.",
	"hem":          "The side is as long from hip to hem as the centre is; arithmetic.",
	"side":         "One curve that arrives at the hip in the direction of the skirt; common practice, no source.",
	"darts":        "Two darts behind from a difference of {8 in}, the first {3 1/2 in} from the centre and the next {1 1/4 in} on, as a teaching page prints it; the shares are common practice.",
	"waist_facing": "The waist with its darts closed, drawn smooth and as long; common practice, no source.",
	"waist_band":   "The finished waist and {1 in}; common practice, no source.",
	"opening":      "The zip ends {1 1/2 in} above the hip line; the opening is high enough to step; an estimate.",
	"allowances":   "Square out from the stitching line, each edge its own; common practice, no source.",
}

// skirtOpenings are those of the dress, counted from the waist.
func skirtOpenings() []bench.Step {
	all := otherOpenings()
	for i := range all {
		st := &all[i]
		dress := st.If
		draw := st.Draw
		st.Needs = []measure.ID{measure.WaistToHip}
		st.Choices = []pattern.ChoiceID{"zip_length", "slit_height", "skirt_length", "hem_opening", "closure", "pleat_depth"}
		st.Uses = theBack.uses("hem_centre", "hem", skirtWaist)
		st.Also = nil
		st.If = func(k pattern.Known) bool { return dress(k) }
		st.Draw = func(p *bench.Pen) {
			draw(p)
			if detail.HemOpening(p.K) == detail.NoOpening && detail.Closure(p.K) != detail.ZipBehind && !p.Stopped() {
				p.Do("The centre back is closed from the waist to the hem.")
			}
		}
	}
	usual := all[0]
	text := openingTexts[detail.SlitOpening]
	usual.Title, usual.Why, usual.Slip = text.withZip, measure.Tell("The zip must let the hips pass the waist. "+text.why), measure.Tell(text.slip)
	usual.If = func(k pattern.Known) bool { return usualBack(k) }
	usual.Draw = func(p *bench.Pen) {
		drawOpening(p, detail.SlitOpening, "On the centre line mark the end of the zip {} down. "+text.do)
	}
	return append(all, usual)
}

// skirtSideZip marks a zip in the left side of a skirt.
func skirtSideZip() bench.Step {
	return bench.Step{
		ID: "back.side_zip", Piece: pattern.Back, Title: "Zip in the left side",
		Why:     measure.Tell("It lets the waist over her hips, and the back may be cut on the fold."),
		Slip:    measure.Tell("Ending it at the hip line: it gapes where she is widest."),
		Needs:   []measure.ID{measure.WaistToHip},
		Choices: []pattern.ChoiceID{"closure", "zip_length"},
		Uses:    theBack.uses("skirt_side", "hip"),
		If:      func(k pattern.Known) bool { return detail.Closure(k) == detail.ZipSide },
		Draw: func(p *bench.Pen) {
			long := p.Sum(detail.SkirtZipEnd(p.K))
			line := p.Line("back.skirt_side")
			if long <= 0 || long.MM() > line.Length()-25 {
				p.Refuse(pattern.Refused{
					Code: "R31", Input: "zip_length",
					Says: measure.Tell("a zip {} long finds no room in a side of {}", long, measure.Length(line.Length())),
					Cure: measure.Tell("a zip of {} or less", measure.Length(line.Length()/3)),
				})
				return
			}
			p.Do("On the left side mark the end of the zip {} below the waist, along the seam; the same on the front.", long)
			at, _ := line.At(long.MM())
			p.Point("side_zip_end", at)
		},
	}
}

// finishSkirt cuts the pieces of a skirt from its marks and reads the figures
// off them.
func finishSkirt(s *pattern.Sheet) {
	c := cutter{s}
	c.skirtFigures()
	_, frontOK := c.drawn("front.allowances")
	_, backOK := c.drawn("back.allowances")
	var pieces []pattern.Piece
	if frontOK {
		pieces = append(pieces, c.skirtAlone(theFront))
	}
	if backOK {
		pieces = append(pieces, c.skirtAlone(theBack))
	}
	switch detail.WaistFinish(s.Known) {
	case detail.BandedWaist:
		if frontOK && backOK {
			pieces = append(pieces, c.waistBand())
		}
	case detail.FacedWaist:
		if frontOK {
			pieces = append(pieces, c.waistFacing(theFront))
		}
		if backOK {
			pieces = append(pieces, c.waistFacing(theBack))
		}
	}
	pieces = append(pieces, c.hemFacings(pieces)...)
	pieces = append(pieces, c.linings(pieces)...)
	number(pieces)
	s.Pieces = pieces
	for _, p := range pieces {
		if p.ID == pattern.Front || p.ID == pattern.Back {
			born, _ := c.drawn(string(p.ID) + ".allowances")
			s.Marks = append(s.Marks, pattern.Mark{
				Piece: p.ID, Name: "cut_line", Kind: pattern.MarkLine, Path: p.CutLine, Role: pattern.RoleCut, Born: born,
			})
		}
	}
	s.Complete = frontOK && backOK
}

func (c cutter) skirtAlone(h half) pattern.Piece {
	n := skirtNames{pattern.Front, pattern.Back, "Skirt, front", facingOf(h, "waist"), 1}
	if h.back {
		n = skirtNames{pattern.Back, pattern.Front, "Skirt, back", facingOf(h, "waist"), 2}
	}
	switch detail.WaistFinish(c.s.Known) {
	case detail.BandedWaist:
		n.sewnTo = "" // the band runs over all of them
	case detail.LinedEdges:
		n.sewnTo = liningID(h.piece)
	}
	return c.skirtOf(h, n)
}

func (c cutter) waistFacing(h half) pattern.Piece {
	k := c.s.Known
	top, outer := c.line(h.id("waist_facing_top")), c.line(h.id("waist_facing"))
	end := bench.Side{Name: "fold", Stitch: geom.Lines(outer.Start(), top.Start()), Role: pattern.RoleFold}
	id, title, cut, marks := pattern.FrontWaistFacing, "Front waist facing", pattern.OnFold, 1
	if h.back {
		id, title, marks = pattern.BackWaistFacing, "Back waist facing", 2
	}
	if h.back && detail.Closure(k) == detail.ZipBehind {
		end = bench.Side{Name: "centre_back", Stitch: end.Stitch, Allowance: k.Length("zip_allowance"), Role: pattern.RoleStitch}
		cut = pattern.Pair
	}
	p := closed(id, title, cut, []bench.Side{
		{Name: "waist", Stitch: top, Allowance: k.Length("waist_allowance"), SewnTo: pattern.EdgeRef{Piece: h.piece, Edge: "waist"}, Role: pattern.RoleStitch},
		{Name: "side", Stitch: geom.Lines(top.End(), outer.End()), Allowance: k.Length("side_allowance"), Role: pattern.RoleStitch},
		c.outerEdge(h, outer.Reverse()),
		end,
	})
	p.Also = []string{"interfacing"}
	mid, _ := top.At(top.Length() / 2)
	notch(&p, "waist", "middle of the waist", mid, marks)
	return p
}

// waistBand is a straight band, twice as wide as it is worn, its length along
// the grain.
func (c cutter) waistBand() pattern.Piece {
	k := c.s.Known
	f, _ := c.s.Dimension(pattern.Front, "waist")
	b, _ := c.s.Dimension(pattern.Back, "waist")
	long, wide := 2*(f.Length+b.Length)+bandLap, 2*k.Length("waist_band_width")
	at := func(x, y measure.Length) geom.Point { return geom.Point{X: x.MM(), Y: y.MM()} }
	corners := []geom.Point{at(0, 0), at(wide, 0), at(wide, long), at(0, long), at(0, 0)}
	var sides []bench.Side
	for i, name := range []string{"end", "waist", "end", "waist_inside"} {
		sides = append(sides, bench.Side{Name: name, Stitch: geom.Lines(corners[i], corners[i+1]), Allowance: k.Length("waist_allowance"), Role: pattern.RoleStitch})
	}
	p := closed(pattern.WaistBand, "Waistband", pattern.Single, sides)
	p.Also = []string{"interfacing"}
	p.Balance = append(p.Balance, pattern.Balance{Name: "fold", Line: geom.Straight(at(wide/2, 0), at(wide/2, long))})
	// Its far end laps; the seams of the skirt are marked from the other.
	sum := measure.Length(0)
	for _, n := range c.bandNotches(f.Length, b.Length) {
		sum += n.by
		notch(&p, "waist", n.name, at(wide, sum), 1)
	}
	return p
}

type bandNotch struct {
	by   measure.Length
	name string
}

// bandNotches are where the seams of the skirt meet the band, one after the
// other from the opening round.
func (c cutter) bandNotches(front, back measure.Length) []bandNotch {
	if detail.Closure(c.s.Known) == detail.ZipBehind {
		return []bandNotch{{back, "side"}, {front, "centre front"}, {front, "side"}, {back, "centre back"}}
	}
	return []bandNotch{{front, "centre front"}, {front, "side"}, {back, "centre back"}, {back, "left side"}}
}

// skirtFigures reads lengths and girths of a skirt off its marks.
func (c cutter) skirtFigures() {
	waist, hip, hem := measure.Length(0), measure.Length(0), 0.0
	whole := true
	for _, h := range []half{theFront, theBack} {
		add := func(d pattern.Dimension) { c.s.Lengths = append(c.s.Lengths, d) }
		w := c.skirtWaistline(h)
		if len(w.Parts) > 0 {
			add(dim(h.piece, "waist", w.Length().MM()))
			waist += w.Length()
		}
		if line := c.line(h.id("skirt_side")); len(line) > 0 {
			add(dim(h.piece, "side", line.Length()))
			add(dim(h.piece, "side_drawn", line.Length()))
		}
		if line := c.line(h.id("hem")); len(line) > 0 {
			add(dim(h.piece, "hem", line.Length()))
			if hem += c.at(h.id("hem_side")).X; detail.Widens(c.s.Known) {
				hem += line.Length() - c.at(h.id("hem_side")).X
			}
		}
		for _, d := range w.Darts {
			add(dim(h.piece, "dart_intake", d.Intake().MM()))
		}
		hip += measure.Length(c.at(h.id("hip")).X)
		whole = whole && len(w.Parts) > 0 && c.has(h.id("hip")) && c.has(h.id("hem"))
	}
	if whole {
		c.s.Girths = append(c.s.Girths, girth("waist", 2*waist.MM()), girth("hip", 2*hip.MM()), girth("hem", 2*hem))
	}
}
