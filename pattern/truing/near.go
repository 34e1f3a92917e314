package truing

import (
	"math"

	"chalkfold/pattern/geom"
)

// nearest is how far q is from a line of straight pieces, and whether the
// nearest point is an end of the line. The checks ask it a few hundred times
// a sheet, on lines flattened once.
func nearest(line []geom.Point, q geom.Point) (dist float64, end bool) {
	best := math.Inf(1)
	for i := 0; i+1 < len(line); i++ {
		ab, aq := line[i].To(line[i+1]), line[i].To(q)
		t := 0.0
		if n := ab.Dot(ab); n > 0 {
			t = min(1, max(0, aq.Dot(ab)/n))
		}
		v := aq.Minus(ab.Scale(t))
		if d := v.Dot(v); d < best {
			best, end = d, i == 0 && t == 0 || i+2 == len(line) && t == 1
		}
	}
	return math.Sqrt(best), end
}
