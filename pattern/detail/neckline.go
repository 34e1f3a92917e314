package detail

import (
	"chalkfold/measure"
	"chalkfold/pattern/geom"
)

// neckHandles are the shares of depth and width that the handles of a round
// neck curve take (common practice, no source).
type neckHandles struct{ down, across float64 }

var (
	frontNeck = neckHandles{0.55, 0.55}
	backNeck  = neckHandles{0.45, 0.60}
)

// RoundNeck draws the neck curve from the centre to the neck point: level at
// the centre and square to the shoulder, so that the ring has no peak.
func RoundNeck(neck geom.Point, down geom.Vector, depth measure.Length, back bool) geom.Path {
	h := frontNeck
	if back {
		h = backNeck
	}
	return h.curve(neck, down, depth)
}

func (h neckHandles) curve(neck geom.Point, down geom.Vector, depth measure.Length) geom.Path {
	centre := geom.Point{X: 0, Y: depth.MM()}
	return geom.Path{geom.Curve(centre,
		geom.Point{X: h.across * neck.X, Y: centre.Y},
		neck.Add(down.Scale(h.down*(centre.Y-neck.Y))),
		neck)}
}
