package detail

import (
	"math"

	"chalkfold/measure"
	"chalkfold/pattern/geom"
)

// HemSide is the end of the hem at the side: as far below the hip as the
// centre is, measured along the slanting seam, so that the hem hangs level.
func HemSide(hip geom.Point, hem, peg measure.Length) geom.Point {
	run := hem.MM() - hip.Y
	d := peg.MM()
	drop := run
	if math.Abs(d) < math.Abs(run) {
		drop = math.Sqrt(float64(run*run) - float64(d*d))
	}
	return geom.Point{X: hip.X - d, Y: hip.Y + drop}
}

const inch = 25.4

// DrawnSide is the side seam as it is drawn, cut and sewn: down the straight
// figure from upper, rounded over half an inch either side of the waist,
// along the hip curve, and straight again from the hip. Three ruled lines
// would sew as points at waist and hip. Lengths and named points stay on the
// straight figure.
func DrawnSide(upper, waist, hip geom.Point, below ...geom.Point) geom.Path {
	return SideLetOut(0, upper, waist, hip, below...)
}

// SideLetOut is the same with the side let out half way between waist and hip,
// over a high hip.
func SideLetOut(more measure.Length, upper, waist, hip geom.Point, below ...geom.Point) geom.Path {
	curve := letOut(hipCurve(waist, hip), more)
	tail := append([]geom.Point{hip}, below...)
	if upper.Dist(waist) <= 0.5*inch || curve.Length() <= 0.5*inch {
		return geom.Lines(upper, waist).Then(curve).Then(geom.Lines(tail...))
	}
	down := upper.To(waist).Unit()
	p := waist.Add(down.Scale(-0.5 * inch))
	_, rest := curve.Split(0.5 * inch)
	q := rest.Start()
	rounded := geom.Curve(p, p.Add(down.Scale(inch/3)), q.Add(rest.StartTangent().Scale(-inch/3)), q)
	return geom.Lines(upper, p).Then(geom.Path{rounded}).Then(rest).Then(geom.Lines(tail...))
}

// letOut moves the first handle of the hip curve out, so that its middle lies
// farther out by as much as is wanted and it still arrives upright at the hip.
// Where it was straight it becomes a curve.
func letOut(curve geom.Path, more measure.Length) geom.Path {
	if more <= 0 || len(curve) != 1 {
		return curve
	}
	s := curve[0]
	return geom.Path{geom.Curve(s.A, s.B.Add(geom.Vector{X: more.MM() * 8 / 3}), s.C, s.D)}
}

// StraightSide is the side on the straight figure.
func StraightSide(points ...geom.Point) geom.Path { return geom.Lines(points...) }

// hipCurve bows the side outwards from waist to hip and arrives upright;
// where the hip stands out less than 1/4 it stays straight.
func hipCurve(waist, hip geom.Point) geom.Path {
	dx := (hip.X - waist.X) / inch
	if dx < 0.25 {
		return geom.Lines(waist, hip)
	}
	k := math.Min(0.45, 9/(16*dx))
	third := waist.Lerp(hip, 1.0/3)
	return geom.Path{geom.Curve(waist, third, geom.Point{X: hip.X, Y: hip.Y - float64(k*(hip.Y-waist.Y))}, hip)}
}
