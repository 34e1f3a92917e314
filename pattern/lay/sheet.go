package lay

import (
	"math"
	"slices"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

const (
	// flatTol is how far the flattened outline may lie from the curve: as in
	// all files.
	flatTol = 0.02
	// bendTol is the bend of a fold edge, in mm, that is drawing error only.
	bendTol = 0.05
)

// DefaultCloth is the cloth that is taken where a session names none: common
// widths, common practice, no source.
func DefaultCloth(name string, u measure.Unit) pattern.Cloth {
	c := pattern.Cloth{Name: name, Width: 58 * measure.Inch, Edges: Selvage, Fold: Lengthwise, Step: measure.Inch / 8}
	if name != "main" {
		c.Width = 36 * measure.Inch
	}
	if u != measure.In {
		c.Width, c.Edges, c.Step = 150*measure.Centimetre, 1*measure.Centimetre, 5
		if name != "main" {
			c.Width = 90 * measure.Centimetre
		}
	}
	return c
}

// FromSheet takes the pieces that are cut from a cloth out of drafted sheets:
// those of the cloth itself by their cutting line, and those that are cut from
// it besides, net, by their stitching line. Several sheets lie on one cloth.
func FromSheet(sheets []*pattern.Sheet, cloth pattern.Cloth) (Problem, error) {
	p := Problem{Cloth: FromCloth(cloth)}
	name := cloth.Name
	if name == "" {
		name = "main"
	}
	if cloth.Width <= 0 || math.IsNaN(float64(cloth.Width)) {
		return Problem{}, &measure.Refusal{Where: "cloth " + name + " width", Read: measure.Mm.Say(cloth.Width), Wrong: "no cloth has that width", Works: "the width between the selvages, such as 58 in or 150 cm"}
	}
	if cloth.ShrinkAcross < 0 || cloth.ShrinkAcross >= 100 {
		return Problem{}, &measure.Refusal{Where: "cloth " + name, Read: "shrinkage across " + decimal(cloth.ShrinkAcross) + " per cent", Wrong: "nothing would be left", Works: "from 0 to less than 100 per cent"}
	}
	for k, s := range sheets {
		if k == 0 {
			p.Unit = s.Job.Unit
		}
		for i := range s.Pieces {
			it, ok, err := itemOf(&s.Pieces[i], name)
			if err != nil {
				return Problem{}, err
			}
			if ok {
				it.Sheet = k
				p.Items = append(p.Items, it)
			}
		}
	}
	return p, p.Check()
}

// FromCloth is the cloth after the wash. Repeats and flaws are measured on the
// washed cloth.
func FromCloth(c pattern.Cloth) Cloth {
	out := Cloth{
		Name: c.Name, Width: int64(math.Floor(float64(c.Width) * (1 - c.ShrinkAcross/100) * PerMM)),
		Edge: steps(c.Edges), Fold: c.Fold, Nap: c.Nap, Gap: steps(c.Gap),
		RepeatAlong: steps(c.RepeatAlong), RepeatAcross: steps(c.RepeatAcross), Stripe: c.Stripe,
		Tape: steps(c.Step), ShrinkAlong: c.ShrinkAlong, OffGrain: offGrain(c.OffGrain),
	}
	if out.Fold == "" {
		out.Fold = Lengthwise
	}
	for _, f := range c.Flaws {
		out.Flaws = append(out.Flaws, Flaw{steps(f[0]), steps(f[1]), steps(f[2]), steps(f[3])})
	}
	return out
}

// offGrain is whole degrees; a part of one more is not allowed, and what is no
// angle becomes one that the checks refuse.
func offGrain(degrees float64) int {
	if !(degrees >= 0 && degrees <= 360) {
		return -1
	}
	return int(math.Floor(degrees))
}

// steps rounds a length to whole steps; what is no length of cloth becomes one
// that the checks refuse.
func steps(l measure.Length) int64 {
	v := math.Floor(float64(l)*PerMM + 0.5)
	if math.IsNaN(v) || math.Abs(v) > 1<<40 {
		return -1
	}
	return int64(v)
}

func stepsOf(p geom.Point) Point {
	return Point{steps(measure.Length(p.X)), steps(measure.Length(p.Y))}
}

// itemOf makes an item of a piece, if it is cut from the cloth.
func itemOf(p *pattern.Piece, cloth string) (Item, bool, error) {
	line := p.CutLine
	switch {
	case p.Cloth == cloth:
	case slices.Contains(p.Also, cloth):
		line = p.Stitch
	default:
		return Item{}, false, nil
	}
	it := Item{ID: string(p.ID), Title: p.Title, Cut: p.Cut, Count: max(p.Count, 1), Turns: []int{0, 180}}
	if p.Cut == pattern.Pair {
		it.Count = max(it.Count, 2)
	}
	fold := 0.0
	if p.Cut == pattern.OnFold {
		var err error
		if fold, err = foldOf(p); err != nil {
			return Item{}, false, err
		}
	}
	o := line.Outline(flatTol)
	for _, c := range o {
		c.X -= fold
		if p.Cut == pattern.OnFold && math.Abs(c.X) <= bendTol {
			c.X = 0
		}
		if math.IsNaN(c.X+c.Y) || math.IsInf(c.X+c.Y, 0) {
			return Item{}, false, &measure.Refusal{Where: it.name(), Read: "a corner that is no place", Wrong: "the outline cannot be laid", Works: "draft the piece again"}
		}
		it.Outline = append(it.Outline, stepsOf(c))
	}
	it.Outline = tidy(it.Outline)
	if p.Cut == pattern.OnFold {
		it.Outline = oneFold(it.Outline)
	}
	it.Grain = [2]Point{stepsOf(p.Grain.A), stepsOf(p.Grain.D)}
	for i := range it.Grain {
		it.Grain[i].X -= steps(measure.Length(fold))
	}
	if d := it.Grain[1].X - it.Grain[0].X; max(d, -d) <= 2 {
		it.Grain[1].X = it.Grain[0].X
	}
	it.Match = matchOf(p)
	return it, true, nil
}

// oneFold closes what is cut out of a piece at its fold, such as a keyhole: the
// cloth in it is of no use to another piece. Of the runs between edges on the
// fold the one that reaches out furthest is the piece.
func oneFold(ring []Point) []Point {
	n := len(ring)
	var after []int // where a run begins: the end of an edge on the fold
	for i, p := range ring {
		if p.X == 0 && ring[(i+1)%n].X == 0 {
			after = append(after, (i+1)%n)
		}
	}
	if len(after) < 2 {
		return ring
	}
	var best []Point
	reach := int64(-1)
	for k, from := range after {
		to := (after[(k+1)%len(after)] + n - 1) % n // the start of the next one
		var run []Point
		far := int64(0)
		for i := from; ; i = (i + 1) % n {
			run = append(run, ring[i])
			far = max(far, ring[i].X)
			if i == to {
				break
			}
		}
		if far > reach {
			best, reach = run, far
		}
	}
	return best
}

// foldOf is where the fold edge lies across; it must be one straight line
// along the grain.
func foldOf(p *pattern.Piece) (float64, error) {
	var line []geom.Point
	for _, e := range p.Edges {
		if e.Role != pattern.RoleFold {
			continue
		}
		if line != nil {
			return 0, &measure.Refusal{Where: p.Title, Read: "two fold edges", Wrong: "a piece lies on one fold with one edge", Works: "leave one edge at the fold"}
		}
		line = e.Cut.Flatten(flatTol)
		if len(line) == 0 {
			line = e.Stitch.Flatten(flatTol)
		}
	}
	if line == nil && p.Fold != nil {
		line = []geom.Point{p.Fold.A, p.Fold.D}
	}
	if line == nil {
		return 0, &measure.Refusal{Where: p.Title, Read: "no fold edge", Wrong: "a piece cut on the fold has one, straight and along the grain", Works: "give it a straight edge at the fold, or cut a pair"}
	}
	lo, hi := line[0].X, line[0].X
	for _, c := range line {
		lo, hi = min(lo, c.X), max(hi, c.X)
	}
	if hi-lo > bendTol {
		return 0, &measure.Refusal{Where: p.Title, Read: "a fold edge that strays by " + decimal(hi-lo) + " mm", Wrong: "an edge on the fold is straight and along the grain", Works: "straighten it, or cut a pair with a seam there"}
	}
	return (lo + hi) / 2, nil
}

// matchOf is where a piece meets its neighbours at a level of the body: the
// hip notch of the side seam, else the waist notch, else the balance line at
// that level; and across, the centre.
func matchOf(p *pattern.Piece) Match {
	var m Match
	levels := []string{"waist", "hip"}
	for _, name := range levels {
		for _, b := range p.Balance {
			if b.Name == name {
				m.Along = true
				m.At.Y = steps(measure.Length(b.Line.A.Y))
			}
		}
	}
	for _, name := range levels {
		for _, n := range p.Notches {
			if n.Edge == "side" && n.Name == name {
				m.Along = true
				m.At.Y = steps(measure.Length(n.At.Y))
			}
		}
	}
	// The centre line is x = 0 of the draft; on the fold the fold itself.
	m.Across = m.Along && len(p.EdgesNamed("centre_back")) > 0
	return m
}
