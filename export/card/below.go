package card

import (
	"fmt"
	"math"
	"slices"
	"sort"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/laid"
	"chalkfold/pattern/lay"
)

// levels lists every level of the rows once, from the highest down: they are
// ticked along the fold in one pull of the tape.
func levels(rows []Row) []measure.Length {
	seen := map[measure.Length]bool{}
	var out []measure.Length
	for _, r := range rows {
		for _, p := range []*Place{r.Cut, r.Stitch} {
			if p != nil && !seen[p.Down] {
				seen[p.Down] = true
				out = append(out, p.Down)
			}
		}
	}
	sort.Slice(out, func(i, j int) bool { return out[i] < out[j] })
	return out
}

// cutting says how often and how the piece is cut.
func cutting(p *pattern.Piece) string {
	say := "cut 1"
	switch {
	case p.Cut == pattern.OnFold:
		say = fmt.Sprintf("cut %d on the fold", max(p.Count, 1))
	case p.Cut == pattern.Pair && p.Count > 2:
		say = fmt.Sprintf("cut %d, in pairs", p.Count)
	case p.Cut == pattern.Pair:
		say = "cut a pair, right and left"
	case p.Count > 1:
		say = fmt.Sprintf("cut %d", p.Count)
	}
	if len(p.Also) > 0 {
		say += "; the same from " + strings.Join(p.Also, " and ") + ", without allowance"
	}
	return say
}

// setting says where the working edge and the top line are chalked: so far in
// that every mark of the cutting line finds cloth.
func setting(p *pattern.Piece, j pattern.Job, rows []Row, g grid) []string {
	room, least := measure.Inch/4, measure.Inch
	if g.unit != measure.In {
		room, least = 5*measure.Millimetre, 25*measure.Millimetre
	}
	up, beyond, low, wide := measure.Length(0), measure.Length(0), measure.Length(0), measure.Length(0)
	for _, r := range rows {
		if r.Cut == nil {
			continue
		}
		up, beyond = max(up, -r.Cut.Down), max(beyond, -r.Cut.Out)
		low, wide = max(low, r.Cut.Down), max(wide, r.Cut.Out)
	}
	edge := "Working edge: the fold. Fold the cloth right sides together, fold towards you."
	from := "the fold"
	fold := foldOf(p, j)
	if p.Cut == pattern.OnFold && fold == lay.OffCentre {
		edge = "Working edge: the fold. Fold one selvage in, right sides together, as far as the lay says, fold towards you."
	}
	if p.Cut == pattern.OnFold && unfolded(fold) {
		from = "the centre line"
		edge = fmt.Sprintf("Working edge: a centre line chalked along the grain, at least %s from the edge of the cloth: no fold lies there, so mark one half, then the same mirrored on its other side.",
			g.say(wide+room))
	}
	if p.Cut != pattern.OnFold {
		from = "the centre line"
		layers := "both layers, right sides together"
		switch {
		case p.Cut == pattern.Pair && fold == lay.Flat:
			layers = "one layer, right side down; then the same mirrored for the other of the pair"
		case p.Cut == pattern.Pair && fold == lay.OffCentre:
			layers += ", where the cloth lies double; where it lies single, on one, and then the same mirrored"
		case p.Cut == pattern.Single:
			layers = "one layer, right side down"
			if p.FaceUp {
				layers = "one layer, right side up"
			}
		}
		edge = fmt.Sprintf("Working edge: a centre line chalked along the grain, %s from the edge of the cloth, on %s.",
			g.say(beyond+room), layers)
	}
	return []string{
		edge,
		fmt.Sprintf("Top line: square across from %s, %s below the raw end. Down is from this line, out is from %s.",
			from, g.say(max(least, up+room)), from),
		fmt.Sprintf("The piece reaches %s down and %s out.", g.say(low), g.say(wide)),
	}
}

// foldOf is how the cloth of a piece is folded.
func foldOf(p *pattern.Piece, j pattern.Job) string {
	name := p.Cloth
	if name == "" {
		name = laid.Main
	}
	c, _ := laid.ClothOf(j, name)
	return c.Fold
}

// unfolded says that no fold runs along the grain.
func unfolded(fold string) bool { return fold == lay.Flat || fold == lay.Across }

// grain says how the warp runs, and what is not cut.
func grain(p *pattern.Piece, j pattern.Job) string {
	if p.Cut == pattern.OnFold && unfolded(foldOf(p, j)) {
		return "The grain runs along the centre line. Nothing is cut there: both halves are one piece."
	}
	if p.Cut == pattern.OnFold {
		return "The grain runs along the fold. The fold is the centre: no allowance there, never cut it."
	}
	return "The grain runs along the centre line."
}

func upperFirst(s string) string {
	if s == "" {
		return s
	}
	return strings.ToUpper(s[:1]) + s[1:]
}

// notches says where the edge is clipped, and how often.
func notches(p *pattern.Piece, g grid) []string {
	var out []string
	for _, n := range p.Notches {
		name := plainName(n.Name)
		edge := plainName(n.Edge)
		switch {
		case name == "":
			name = edge
		case edge != "" && !strings.Contains(name, edge):
			name = edge + ", " + name
		}
		clips := "1 clip"
		if n.Marks > 1 {
			clips = fmt.Sprintf("%d clips", n.Marks)
		}
		out = append(out, fmt.Sprintf("%s: %s, %s", name, clips, g.at(placeOf(g.spot(n.At)))))
	}
	return out
}

// isTraced says that a piece is marked from another one by its width, or ruled
// at once, and not mark by mark: facings of one edge, and strips. A facing of
// neck and armhole in one has too much of its own to be traced.
func isTraced(p *pattern.Piece) bool {
	if strings.HasSuffix(string(p.ID), "facing") {
		return p.Along("neck") == 0 || p.Along("armhole") == 0
	}
	return isStrip(p)
}

// isStrip says that a piece is a strip cut on the bias.
func isStrip(p *pattern.Piece) bool { return strings.HasSuffix(string(p.ID), "strip") }

// ruledStrip says how a strip is ruled on the bias.
func ruledStrip(p *pattern.Piece, g grid) []string {
	var long, wide measure.Length
	for _, e := range p.Edges {
		if e.Name == "end" {
			wide = e.Length()
		} else {
			long = max(long, e.Length())
		}
	}
	return []string{
		"Bias: fold a corner so that the cut end lies along the selvage; the crease is the first line.",
		fmt.Sprintf("Rule a second line %s from it, all along, and cut both: %s long, or as much when joined end to end by seams along the grain.", g.say(wide), g.say(long)),
	}
}

// traced says how a facing comes from its piece: the edge is traced, the width
// set off from it in a few places and joined by hand.
func traced(p *pattern.Piece, g grid) Traced {
	t := Traced{Title: p.Title, Number: p.Number, Of: p.Of, Cut: cutting(p)}
	if isStrip(p) {
		t.Says = ruledStrip(p, g)
		return t
	}
	edge, last := "armhole", "side"
	if strings.Contains(string(p.ID), "neck") {
		edge, last = "neck", "centre"
	}
	from := "front"
	if strings.HasPrefix(string(p.ID), "back") {
		from = "back"
	}
	w := widths(p, edge, g)
	if len(w) == 0 {
		return t
	}
	t.Says = append(t.Says, fmt.Sprintf("Trace the %s of the %s on its stitching line, with the shoulder and the %s beside it.", edge, from, last))
	arriving := ""
	if last == "centre" {
		arriving = ", square at the centre,"
	}
	say := fmt.Sprintf("Width: %s all along, set off square from the %s.", g.tape(w[2]), edge)
	if !even(w, g) {
		say = fmt.Sprintf("Width: %s along the shoulder; square from the %s %s a quarter of the way from there, %s half way, %s at three quarters; %s along the %s. One even curve through them%s is the outer edge.",
			g.tape(w[0]), edge, g.tape(w[1]), g.tape(w[2]), g.tape(w[3]), g.tape(w[4]), last, arriving)
	}
	t.Says = append(t.Says, say, "Allowances: "+allowances(p, g)+".")
	return t
}

// even says that the widths are one, but for how they were rounded.
func even(w []measure.Length, g grid) bool {
	return slices.Max(w)-slices.Min(w) <= g.step+measure.Millimetre/100
}

// widths are those of a facing at the shoulder, square from the quarters of its
// edge, and at its other end; nil for a piece that has no such edges.
func widths(p *pattern.Piece, edge string, g grid) []measure.Length {
	in, outer := joined(p.EdgesNamed(edge)), joined(p.EdgesNamed("outer"))
	if len(in) == 0 || len(outer) == 0 {
		return nil
	}
	first, last := p.Along("shoulder"), p.Along("side")
	if edge == "neck" { // its edge runs from the centre to the shoulder
		last = p.Along("fold") + p.Along("centre_back")
		in = in.Reverse()
	}
	inner := flatten(in)
	out := []measure.Length{first.Near(g.step)}
	for k := 1; k < 4; k++ {
		s := float64(k) / 4 * inner.long()
		out = append(out, square(inner.at(s), inner.leaning(s), outer).Near(g.step))
	}
	return append(out, last.Near(g.step))
}

// square is how far it is from a point of an edge, square to it, to the outer
// line.
func square(at geom.Point, along geom.Vector, outer geom.Path) measure.Length {
	const far = 500 // mm; beyond any facing
	way := along.Left().Scale(far)
	_, near, least := outer.Nearest(at)
	if at.To(near).Dot(way) < 0 {
		way = way.Scale(-1)
	}
	if c := geom.Cross(geom.Lines(at, at.Add(way)), outer); len(c) > 0 {
		least = c[0].S
	}
	return measure.Length(least)
}

func joined(edges []pattern.Edge) geom.Path {
	var out geom.Path
	for _, e := range edges {
		out = out.Then(e.Stitch)
	}
	return out
}

// allowances lists the allowance of every edge once, in the order of the ring.
func allowances(p *pattern.Piece, g grid) string {
	var names []string
	seen := map[string]bool{}
	for _, e := range p.Edges {
		if e.Name == "fold" || e.Name == "dart" || seen[e.Name] {
			continue
		}
		seen[e.Name] = true
		low, high := math.Inf(1), 0.0
		for _, f := range p.EdgesNamed(e.Name) {
			low, high = min(low, f.Allowance.MM()), max(high, f.Allowance.MM())
		}
		say := plainName(e.Name) + " " + g.tape(measure.Length(low))
		if to := g.tape(measure.Length(high)); to != g.tape(measure.Length(low)) {
			say += " to " + to
		}
		names = append(names, say)
	}
	return strings.Join(names, ", ")
}
