package truing

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// faced pairs each facing with the edge that it faces.
var faced = []struct {
	facing, piece pattern.PieceID
	edge          string
}{
	{pattern.FrontNeckFacing, pattern.Front, "neck"},
	{pattern.BackNeckFacing, pattern.Back, "neck"},
	{pattern.FrontArmholeFacing, pattern.Front, "armhole"},
	{pattern.BackArmholeFacing, pattern.Back, "armhole"},
}

// facedWhole pairs a facing that goes round neck and armhole in one with its
// edges. It is of no one width, so only its lengths are judged.
var facedWhole = []struct {
	facing, piece pattern.PieceID
	edge          string
}{
	{pattern.FrontFacing, pattern.Front, "neck"},
	{pattern.BackFacing, pattern.Back, "neck"},
	{pattern.FrontFacing, pattern.Front, "armhole"},
	{pattern.BackFacing, pattern.Back, "armhole"},
}

// facingFit: a facing is as long as its edge, even in width, and does not
// lie double with the next one.
var facingFit = Check{
	ID: "facing_fit", Title: "Facings fit",
	Applies: func(s *pattern.Sheet) (bool, measure.Sentence) {
		for _, f := range append(faced[:len(faced):len(faced)], facedWhole...) {
			if _, ok := s.Piece(f.facing); ok {
				return true, measure.Sentence{}
			}
		}
		return false, measure.Tell("There are no facings.")
	},
	Run: func(s *pattern.Sheet) []pattern.Finding {
		out := one(facingLength(s))
		traced := make([]tracing, len(faced))
		for i, f := range faced {
			traced[i] = trace(s, f.facing, f.edge)
			if g, off := traced[i].uneven(); off {
				out = append(out, g)
			}
		}
		for i, neck := range traced {
			for _, arm := range traced[i+1:] {
				if neck.edge != "neck" || arm.edge != "armhole" || faced[i].piece != arm.garment {
					continue
				}
				if f, over := facingsCross(s, neck, arm); over {
					out = append(out, f)
				}
			}
		}
		return out
	},
}

// tracing is a facing in straight pieces, flattened once.
type tracing struct {
	p            *pattern.Piece // nil: there is no such facing
	garment      pattern.PieceID
	edge         string
	inner, outer []geom.Point
	ring         geom.Outline
}

func trace(s *pattern.Sheet, id pattern.PieceID, edge string) tracing {
	t := tracing{edge: edge}
	p, ok := s.Piece(id)
	if !ok {
		return t
	}
	t.p = p
	for _, f := range faced {
		if f.facing == id {
			t.garment = f.piece
		}
	}
	for i := range p.Edges {
		line := p.Edges[i].Stitch.Flatten(flat)
		t.ring = append(t.ring, line...)
		switch p.Edges[i].Name {
		case edge:
			t.inner = append(t.inner, line...)
		case "outer":
			t.outer = append(t.outer, line...)
		}
	}
	return t
}

// facingLength compares stitch lines; the worst pair is told.
func facingLength(s *pattern.Sheet) pattern.Finding {
	worst, first := pattern.Finding{}, true
	for _, pair := range append(faced[:len(faced):len(faced)], facedWhole...) {
		p, ok := s.Piece(pair.facing)
		garment, ok2 := s.Piece(pair.piece)
		if !ok || !ok2 {
			continue
		}
		got, want := along(p, pair.edge), along(garment, pair.edge)
		if pair.edge == "armhole" {
			want = armholeFaced(s, pair.piece)
		}
		f := limits{facingShort, facingOver, 2 * facingShort, facingAdvise}.compare("facing_fit", got, want)
		f.Where = on(pair.facing, middleOf(p, pair.edge))
		f.Says = measure.Tell("{} and {}, "+p.Title+" and its "+pair.edge+".", got, want)
		if f.Verdict != pattern.Pass {
			f.Says = measure.Tell("{} and {}: "+p.Title+" is {} {} than the "+pair.edge+" it faces.", got, want, abs(got-want), longer(got-want))
			f.Cure = measure.Tell("Trace the " + pair.edge + " once more from the finished " + string(pair.piece) + ".")
			f.Input = "facing_" + pair.edge + "_width"
		}
		if first || abs(got-want).MM() > off(worst) {
			worst, first = f, false
		}
	}
	return worst
}

// uneven: an armhole facing is of one width throughout; a neck facing
// deepens to the centre and is nowhere much narrower than at its ends.
func (t tracing) uneven() (pattern.Finding, bool) {
	inner, outer := t.inner, t.outer
	if len(inner) < 2 || len(outer) < 2 {
		return pattern.Finding{}, false
	}
	ends := min(distance(inner, outer[0]), distance(inner, outer[len(outer)-1]))
	least, most, where := ends, ends, outer[0]
	for _, q := range outer {
		d, end := nearest(inner, q)
		if end {
			continue // beside a seam, which need not be square to the edge
		}
		most = max(most, d)
		if d < least {
			least, where = d, q
		}
	}
	uneven, allowed := measure.Length(ends-least), measure.Length(facingDip)
	if t.edge == "armhole" {
		uneven, allowed = measure.Length(most-least), facingWidth
	}
	if uneven <= allowed+slack {
		return pattern.Finding{}, false
	}
	f := advice("facing_uneven", measure.Length(least), measure.Length(least)+uneven)
	f.Where, f.Input = on(t.p.ID, where), "facing_"+t.edge+"_width"
	f.Says = measure.Tell("{} and {}: "+t.p.Title+" is not of one width.", measure.Length(f.Got), measure.Length(f.Want))
	f.Cure = measure.Tell("Draw its outer edge beside the " + t.edge + ", the same width all along.")
	return f, true
}

// facingsCross: neck and armhole facing share the shoulder; below it they
// must keep off each other, or three layers lie on top of each other.
func facingsCross(s *pattern.Sheet, neck, arm tracing) (pattern.Finding, bool) {
	deep, where := overlap(neck.ring, arm.outer)
	if d, w := overlap(arm.ring, neck.outer); d > deep {
		deep, where = d, w
	}
	if deep <= facingCross {
		return pattern.Finding{}, false
	}
	f := advice("facing_cross", measure.Length(deep), 0)
	f.Where, f.Input = on(neck.p.ID, where), "facing_armhole_width"
	f.Says = measure.Tell("{} and 0: "+neck.p.Title+" and "+arm.p.Title+" lie {} over each other.", measure.Length(deep), measure.Length(deep))
	f.Cure = measure.Tell("Trim the armhole facing where they cross, or make it narrower.")
	width := measure.Length(distance(arm.inner, arm.outer[len(arm.outer)/2]))
	if to := min(width, s.Length("facing_armhole_width")) - (measure.Length(deep) + facingWidth).Up(step(s)); uses(s.Known, "facing_armhole_width") && to >= inch {
		f.Cure = measure.Tell("Trim the armhole facing where they cross, or make it narrower: {}.", change(s.Known, "facing_armhole_width", to))
		f.Try = try(s.Known, "facing_armhole_width", to)
	}
	return f, true
}

// overlap is how deep the line lies inside the ring, and where.
func overlap(ring geom.Outline, line []geom.Point) (deep float64, where geom.Point) {
	box := ring.Box()
	for _, q := range line {
		if !box.Contains(q) || !ring.Contains(q) {
			continue
		}
		if _, d := ring.Closest(q); d > deep {
			deep, where = d, q
		}
	}
	return deep, where
}

func distance(line []geom.Point, q geom.Point) float64 {
	d, _ := nearest(line, q)
	return d
}
