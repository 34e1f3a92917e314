package card

import (
	"fmt"
	"math"

	"chalkfold/measure"
	"chalkfold/pattern/geom"
)

// grid is the tape as the card reads it: the step that marks are rounded to
// and how far the chalked line may then stray from the drafted one. The bound
// is more than the rounding of a corner can cost (step / root 2), so that a
// card can always be made: marks set one beside the other would do.
type grid struct {
	unit  measure.Unit
	step  measure.Length
	bound measure.Length
}

// gridOf chooses the eighth of an inch, or two millimetres.
func gridOf(u measure.Unit) grid {
	if u == measure.In {
		return grid{u, measure.Inch / 8, measure.Inch / 8}
	}
	return grid{u, 2 * measure.Millimetre, 3 * measure.Millimetre}
}

// spot is the place on the tape nearest to p.
func (g grid) spot(p geom.Point) geom.Point {
	return geom.Point{X: g.near(p.X), Y: g.near(p.Y)}
}

func (g grid) near(x float64) float64 { return measure.Length(x).Near(g.step).MM() }

func (g grid) tape(l measure.Length) string { return g.unit.Tape(l) }

func (g grid) say(l measure.Length) string { return g.unit.Say(l) }

// down says a level as it is measured: from the top line down, or up.
func (g grid) down(l measure.Length) string {
	if l < 0 {
		return "up " + g.tape(-l)
	}
	return g.tape(l)
}

// out says a distance from the fold or centre line.
func (g grid) out(l measure.Length) string {
	if l < 0 {
		return "beyond the centre " + g.tape(-l)
	}
	return g.tape(l)
}

// at says a place in words.
func (g grid) at(p Place) string {
	level := "down " + g.down(p.Down)
	if p.Down < 0 {
		level = g.down(p.Down)
	}
	if p.Out < 0 {
		return level + ", " + g.out(p.Out)
	}
	return level + ", out " + g.out(p.Out)
}

// fine is a small length in decimals, finer than the tape shows.
func (g grid) fine(l measure.Length) string {
	if g.unit == measure.Mm {
		return fmt.Sprintf("%.1f mm", g.unit.Of(l))
	}
	return fmt.Sprintf("%.2f %s", g.unit.Of(l), g.unit)
}

// sliver is a small length that the eye judges: in sixteenths or millimetres,
// never nothing.
func (g grid) sliver(l measure.Length) string {
	least := measure.Millimetre
	if g.unit == measure.In {
		least = measure.Inch / 16
	}
	return g.tape(max(l.Near(least), least))
}

// placeOf turns a rounded point into a place.
func placeOf(p geom.Point) Place {
	return Place{Down: measure.Length(p.Y), Out: measure.Length(p.X)}
}

func radians(a, b geom.Vector) float64 {
	return math.Abs(math.Atan2(a.Cross(b), a.Dot(b)))
}
