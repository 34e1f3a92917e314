package detail

import (
	"math"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

// How the waist is shaped besides the side seam.
const (
	NoWaistShaping = "none"
	FisheyeWaist   = "fisheye"
	TwoBackWaist   = "two_back"
	ShapedBack     = "shaped_back"
)

// WaistShaping is how the waist is shaped; by thumb only at the side.
// Panel seams take the waist in, and leave nothing for darts.
func WaistShaping(k pattern.Known) string {
	if HasPanels(k) {
		return NoWaistShaping
	}
	return picked(k, "waist_shaping", NoWaistShaping)
}

// Fisheye is a dart inside a piece: widest at the waist, to nothing above
// and below.
type Fisheye struct{ Top, Left, Right, Foot geom.Point }

// Intake is what the dart takes up at the waist.
func (f Fisheye) Intake() measure.Length { return measure.Length(f.Right.X - f.Left.X) }

// Upper and Lower are the lengths of its halves.
func (f Fisheye) Upper() measure.Length { return measure.Length(f.Left.Y - f.Top.Y) }

// Lower is the length of its lower half.
func (f Fisheye) Lower() measure.Length { return measure.Length(f.Foot.Y - f.Left.Y) }

// Path is its outline, from the top down the side nearer to the centre.
func (f Fisheye) Path() geom.Path { return geom.Lines(f.Top, f.Left, f.Foot, f.Right, f.Top) }

func fisheye(x, top, waist, foot float64, intake measure.Length) Fisheye {
	half := intake.MM() / 2
	return Fisheye{
		Top: geom.Point{X: x, Y: top}, Foot: geom.Point{X: x, Y: foot},
		Left: geom.Point{X: x - half, Y: waist}, Right: geom.Point{X: x + half, Y: waist},
	}
}

// FrontUpperHalf is how long the upper half of the front waist dart is: from
// an inch below the bust point to the waist.
func FrontUpperHalf(k pattern.Known) measure.Length {
	return rule.BackWaist(k).Result() + rule.FrontLower(k).Result() - rule.BustLevel(k) - measure.Inch
}

// FrontFisheye is the front waist dart, below the bust point.
func FrontFisheye(bust geom.Point, waist float64, intake measure.Length) Fisheye {
	lower := math.Max(3*inch, math.Min(4.5*inch, 5*intake.MM()))
	return fisheye(bust.X, bust.Y+inch, waist, waist+lower, intake)
}

// BackLowerHalf is how long the lower half of a back waist dart is: it ends
// well above the hip line.
func BackLowerHalf(waistToHip measure.Length) measure.Length {
	return min(rule.In(6.5), max(rule.In(5), waistToHip-rule.In(1.5)))
}

// BackDarts are the waist darts of the back: one, or two where it would grow
// too wide or where two are asked for.
func BackDarts(k pattern.Known, underarm, waist geom.Point, intake measure.Length, two bool) []Fisheye {
	if intake <= 0 {
		return nil
	}
	lower := BackLowerHalf(k.Body(measure.WaistToHip))
	x := math.Min(waist.X/2, k.Body(measure.AcrossBack).MM()/4+0.5*inch)
	top, foot := underarm.Y+0.5*inch, waist.Y+lower.MM()
	half := min(lower, measure.Length(waist.Y-top)) // the shorter half points first
	if !two && intake <= min(rule.In(1.25), rule.MostWaistDart(half)) {
		return []Fisheye{fisheye(x, top, waist.Y, foot, intake)}
	}
	each := min(intake/2, rule.MostWaistDart(half-measure.Inch))
	return []Fisheye{
		fisheye(x-backApart, top, waist.Y, foot, each),
		fisheye(x+backApart, top+inch, waist.Y, foot-inch, each),
	}
}

// backApart is half the distance of two back darts (common practice).
const backApart = 0.875 * inch

// BackIn is what the centre back comes in at the waist and what is left for
// darts: where too little is left for a dart the centre takes it all, as far
// as it may.
func BackIn(chosen, intake measure.Length) (centre, darts measure.Length) {
	if rest := intake - chosen; rest >= rule.LeastWaistDart-1e-6 {
		return chosen, rest
	}
	return min(rule.In(0.625), intake), 0
}

// CentreBack is a centre back seam that comes in at the waist: straight down
// to the level of the middle of the armhole, in to the waist, out again to
// the hip line. It runs from the neck down to the hem.
func CentreBack(neck, hem geom.Point, mid, waist, hip float64, in measure.Length) geom.Path {
	k, h, hd := in.MM(), waist-mid, hip-waist
	if k <= 0 || neck.Y >= mid {
		mid = math.Max(mid, neck.Y)
		h = waist - mid
	}
	at := func(x, y float64) geom.Point { return geom.Point{X: x, Y: y} }
	shaped := geom.Path{
		geom.Curve(at(0, mid), at(0, mid+float64(0.40*h)), at(k, waist-float64(0.35*h)), at(k, waist)),
		geom.Curve(at(k, waist), at(k, waist+float64(0.35*hd)), at(0, hip-float64(0.35*hd)), at(0, hip)),
	}
	if mid > neck.Y {
		shaped = geom.Lines(neck, at(0, mid)).Then(shaped)
	}
	return shaped.Then(geom.Lines(at(0, hip), hem))
}
