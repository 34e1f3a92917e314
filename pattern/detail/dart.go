package detail

import (
	"math"

	"chalkfold/measure"
	"chalkfold/pattern/geom"
)

// SideDart is the front side dart: legs from the side seam to the tip.
type SideDart struct {
	Tip, Upper, Lower geom.Point
	Angle             float64        // at the tip, radians
	Intake            measure.Length // between the legs at the seam
	Trued             bool           // the lower leg was moved to meet the back
}

// DartIn is what a side dart is drawn from.
type DartIn struct {
	Underarm, Waist geom.Point // of the front
	BackSide        float64    // the back's side from underarm to waist, millimetres
	Bust            geom.Point
	Below           measure.Length // along the side from the underarm
	TipBack         measure.Length
	Intake          measure.Length
	Swings          bool // the seam swings: true the legs however little the sides differ
}

// trueBeyond: sides that differ by more are trued at the lower leg.
const trueBeyond = inch / 16

// Middle is half way between the two legs' ends.
func (d SideDart) Middle() geom.Point { return d.Upper.Lerp(d.Lower, 0.5) }

// Falls is how far the dart slopes down to its tip, degrees.
func (d SideDart) Falls() float64 {
	m := d.Middle()
	return math.Atan2(d.Tip.Y-m.Y, m.X-d.Tip.X) * 180 / math.Pi
}

// Difference is front side (dart closed) less back side, down to the waist.
func (in DartIn) Difference(d SideDart) float64 {
	return in.Underarm.Dist(d.Upper) + d.Lower.Dist(in.Waist) - in.BackSide
}

// Untrued draws the dart: the tip lies back from the bust point towards the
// middle of the legs, and the lower leg is the upper one turned about it.
func (in DartIn) Untrued() SideDart {
	dir := in.Underarm.To(in.Waist).Unit()
	d := SideDart{Upper: in.Underarm.Add(dir.Scale(in.Below.MM())), Intake: in.Intake}
	mid := d.Upper
	// The middle of the legs and the tip depend on each other; six rounds
	// settle them to far below any tape.
	for range 6 {
		d.Tip = in.Bust.Add(in.Bust.To(mid).Unit().Scale(in.TipBack.MM()))
		d.Angle = 2 * math.Asin(in.Intake.MM()/(2*d.Tip.Dist(d.Upper)))
		d.Lower = d.Tip.Add(d.Tip.To(d.Upper).Turn(d.Angle))
		mid = d.Middle()
	}
	return d
}

// Draw draws the dart and trues its lower leg against the back where the
// sides differ.
func (in DartIn) Draw() SideDart {
	d := in.Untrued()
	if math.Abs(in.Difference(d)) > trueBeyond || in.Swings {
		if p, ok := circles(d.Tip, d.Tip.Dist(d.Upper), in.Waist, in.BackSide-in.Underarm.Dist(d.Upper), d.Lower); ok {
			d.Lower, d.Trued = p, true
			d.Intake = measure.Length(d.Upper.Dist(d.Lower))
			d.Angle = 2 * math.Asin(d.Intake.MM()/(2*d.Tip.Dist(d.Upper)))
		}
	}
	return d
}

// CapDown is the bite at the seam of a dart pressed towards its lower leg:
// the seam below, mirrored in the lower leg, up to the dart's middle line.
func CapDown(tip, upper, lower geom.Point, seam geom.Vector) geom.Point {
	image := geom.MirrorIn(geom.Line{At: lower, Dir: tip.To(lower)}).ApplyVector(seam)
	mid := upper.Lerp(lower, 0.5)
	at, ok := geom.Meet(geom.Line{At: lower, Dir: image}, geom.Line{At: tip, Dir: tip.To(mid)})
	if !ok {
		return mid
	}
	return at
}

// circles returns the crossing of two circles that lies nearer to a point.
func circles(a geom.Point, ra float64, b geom.Point, rb float64, near geom.Point) (geom.Point, bool) {
	d := a.Dist(b)
	if d == 0 || rb <= 0 || d > ra+rb || d < math.Abs(ra-rb) {
		return geom.Point{}, false
	}
	x := (float64(ra*ra) - float64(rb*rb) + float64(d*d)) / (2 * d)
	h := math.Sqrt(math.Max(0, float64(ra*ra)-float64(x*x)))
	u := a.To(b).Unit()
	foot := a.Add(u.Scale(x))
	p, q := foot.Add(u.Left().Scale(h)), foot.Add(u.Right().Scale(h))
	if p.Dist(near) <= q.Dist(near) {
		return p, true
	}
	return q, true
}
