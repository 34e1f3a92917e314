package detail

import (
	"chalkfold/measure"
	"chalkfold/pattern/geom"
)

// Handles of the armhole curve (common practice, no source): how far the
// upper part runs square to the shoulder and upright, as a share of its
// chord; how far the lower part runs upright and level, as a share of its
// height and width.
const (
	upperArmhole = 0.35
	lowerArmhole = 0.55
)

// ArmholeMid is the middle of the armhole: half way between the shoulder
// end and the underarm line, out at hollow.
func ArmholeMid(end geom.Point, depth, hollow measure.Length) geom.Point {
	return geom.Point{X: hollow.MM(), Y: (end.Y + depth.MM()) / 2}
}

// Armhole draws the armhole from the shoulder end past its middle to the
// underarm point: it leaves square to the shoulder, is upright at the middle
// and arrives level.
func Armhole(end geom.Point, down geom.Vector, mid, underarm geom.Point) geom.Path {
	return ScoopedArmhole(end, down, mid, underarm, 0)
}

// ScoopedArmhole is an armhole whose lower part is hollower by so many per
// cent of its handles.
func ScoopedArmhole(end geom.Point, down geom.Vector, mid, underarm geom.Point, percent float64) geom.Path {
	low := lowerArmhole + percent/100
	chord := end.Dist(mid)
	dx, dy := underarm.X-mid.X, underarm.Y-mid.Y
	return geom.Path{
		geom.Curve(end, end.Add(down.Scale(upperArmhole*chord)),
			geom.Point{X: mid.X, Y: mid.Y - float64(upperArmhole*chord)}, mid),
		geom.Curve(mid, geom.Point{X: mid.X, Y: mid.Y + float64(low*dy)},
			geom.Point{X: underarm.X - float64(low*dx), Y: underarm.Y}, underarm),
	}
}
