package lay

import (
	"strconv"

	"chalkfold/measure"
)

// Purchase is what to ask for in the shop.
type Purchase struct {
	Needed measure.Length // before the wash, with one repeat more: the shop cuts anywhere
	Yards  measure.Length // up to the next 1/8 yd
	Metric measure.Length // up to the next 10 cm, from the same unrounded number
	Says   string         // "1 5/8 yd (1.5 m)"
}

// Buy is the cloth to buy for a lay of that many steps. What the wash takes is
// divided out, not added on, and nothing is rounded down.
func Buy(steps int64, c Cloth) Purchase {
	lay := measure.Of("lay", length(steps))
	if c.RepeatAlong > 0 {
		lay = lay.Plus(measure.Of("one repeat", length(c.RepeatAlong)))
	}
	p := Purchase{Needed: Bought(lay, c.ShrinkAlong).Result()}
	p.Yards, p.Metric = p.Needed.Up(YardStep), p.Needed.Up(MetricStep)
	p.Says = Says(p.Yards, p.Metric)
	return p
}

// decimal writes a number with no more digits than it needs.
func decimal(x float64) string { return strconv.FormatFloat(x, 'g', 4, 64) }
