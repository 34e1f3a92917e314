package card

import (
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/ansur"
)

// setOff draws the outer edge of a facing as the card says it: widths along
// both ends and square from the edge, and an even curve through them.
func setOff(ws []measure.Length, inner line, ends [2]geom.Point, outer geom.Path) []geom.Point {
	pts := make([]geom.Point, len(ws))
	for k, w := range ws {
		s := float64(k) / float64(len(ws)-1) * inner.long()
		at := inner.at(s)
		way := inner.leaning(s).Right()
		switch k {
		case 0:
			way = at.To(ends[0]).Unit()
		case len(ws) - 1:
			way = at.To(ends[1]).Unit()
		default:
			if _, near, _ := outer.Nearest(at); way.Dot(at.To(near)) < 0 {
				way = way.Scale(-1)
			}
		}
		pts[k] = at.Add(way.Scale(w.MM()))
	}
	var out []geom.Point
	for k := 0; k+1 < len(pts); k++ {
		before, after := pts[max(k-1, 0)], pts[min(k+2, len(pts)-1)]
		if end := pts[len(pts)-1]; k+2 == len(pts) && math.Abs(end.X) < 1 {
			after = geom.Point{X: -pts[k].X, Y: pts[k].Y} // square at the centre
		}
		u, v := before.To(pts[k+1]).Scale(1.0/6), pts[k].To(after).Scale(-1.0/6)
		curve := geom.Curve(pts[k], pts[k].Add(u), pts[k+1].Add(v), pts[k+1])
		out = append(out, geom.Path{curve}.Flatten(0.1)...)
	}
	return out
}

// loose is how far the outer edge may lie off: it is sewn to nothing.
const loose = 25.4 / 4

func TestFacingsByWidth(t *testing.T) {
	g := gridOf(measure.In)
	for i, w := range ansur.Load(t) {
		if i%10 != 0 {
			continue
		}
		for _, method := range []string{pattern.Measured, pattern.Thumb} {
			style := pattern.NewStyle(map[pattern.ChoiceID]pattern.Value{
				pattern.Method: pattern.PickValue(method), "length": pattern.LengthValue(w.Length),
			})
			for _, p := range workroom.Draft(pattern.Job{Body: w.Body, Style: style}).Pieces {
				if !isTraced(&p) {
					continue
				}
				edge := "armhole"
				in := joined(p.EdgesNamed(edge))
				if len(in) == 0 {
					edge = "neck"
					in = joined(p.EdgesNamed(edge)).Reverse()
				}
				outer := joined(p.EdgesNamed("outer"))
				ends := [2]geom.Point{outer.End(), outer.Start()}
				if edge == "neck" || in.Start().Dist(ends[1]) < in.Start().Dist(ends[0]) {
					ends = [2]geom.Point{outer.Start(), outer.End()}
				}
				ws := widths(&p, edge, g)
				if edge == "armhole" { // one width, set off as often as she likes
					require.True(t, even(ws, g), "row %d %s %v", w.Row, p.ID, ws)
					ws = slices.Repeat(ws[2:3], 33)
				}
				got := setOff(ws, flatten(in), ends, outer)
				require.LessOrEqual(t, apart(got, outer.Flatten(0.02)), loose, "row %d %s %s", w.Row, method, p.ID)
			}
		}
	}
}
