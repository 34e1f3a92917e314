package detail

import (
	"math"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

// What sleeve the dress has.
const (
	NoSleeve           = "none"
	CapSleeve          = "cap"
	ShortSleeve        = "short"
	ThreeQuarterSleeve = "three_quarter"
	LongSleeve         = "long"
)

// SleeveKind is the chosen sleeve; by thumb there is none.
func SleeveKind(k pattern.Known) string { return picked(k, "sleeve", NoSleeve) }

// HasSleeve says whether a sleeve is set into the armhole, all round it or
// over its upper part.
func HasSleeve(k pattern.Known) bool { return SleeveKind(k) != NoSleeve }

// ToElbow says whether the sleeve goes past the elbow, so that it wants her
// arm length, elbow and hand.
func ToElbow(kind string) bool { return kind == LongSleeve || kind == ThreeQuarterSleeve }

const (
	// capBackFlat, capFrontFlat and capRound are the shares of half the width
	// that the handles of the cap take: level at the underarm, the front
	// hollowed more than the back, and level at the crown (common practice,
	// no source).
	capBackFlat  = 0.50
	capFrontFlat = 0.42
	capRound     = 0.62
	// CapFrontEase is the front's share of what is eased into the armhole
	// between notches and crown (common practice, no source).
	CapFrontEase = 0.45
	// armholeNotchAt is where the armhole notch stands: a third of the way
	// from the middle of the armhole to the underarm, by the curve's measure.
	armholeNotchAt = 1.0 / 3
)

// LowestCap and HighestCap are what share of the armhole a cap's height
// usually is (common practice, no source).
const (
	LowestCap  = 0.24
	HighestCap = 0.36
)

// Cap is the head of a sleeve over its underarm line. It is drawn about the
// middle of the line, the front to the right, the crown above.
type Cap struct {
	Wide, High measure.Length
	Back       geom.Segment // from the back underarm up to the crown
	Front      geom.Segment // from the crown down to the front underarm
}

// NewCap draws the head of a sleeve so wide at the underarm and so high.
func NewCap(wide, high measure.Length) Cap {
	w, h := wide.MM()/2, high.MM()
	at := func(x, y float64) geom.Point { return geom.Point{X: x, Y: y} }
	return Cap{
		Wide: wide, High: high,
		Back:  geom.Curve(at(-w, 0), at(-w+float64(capBackFlat*w), 0), at(-float64(capRound*w), -h), at(0, -h)),
		Front: geom.Curve(at(0, -h), at(float64(capRound*w), -h), at(w-float64(capFrontFlat*w), 0), at(w, 0)),
	}
}

// Length is the seam of the cap, from underarm to underarm.
func (c Cap) Length() measure.Length { return measure.Length(c.Back.Length() + c.Front.Length()) }

// Line is the seam of the cap as one path, back first.
func (c Cap) Line() geom.Path { return geom.Path{c.Back, c.Front} }

// FromFront is the point of the cap so far along it from the front underarm;
// past the crown it lies on the back.
func (c Cap) FromFront(l measure.Length) geom.Point {
	p, _ := c.Line().At((c.Length() - l).MM())
	return p
}

// FromBack is the point of the cap so far along it from the back underarm.
func (c Cap) FromBack(l measure.Length) geom.Point {
	p, _ := c.Line().At(l.MM())
	return p
}

// CapHeightFor is the height at which a cap so wide is as long as the
// armhole and its ease; false where even the lowest is longer.
func CapHeightFor(wide, armhole, ease measure.Length) (measure.Length, bool) {
	want := (armhole + ease).MM()
	long := func(h float64) float64 { return NewCap(wide, measure.Length(h)).Length().MM() - want }
	low, high := 0.1*armhole.MM(), 0.6*armhole.MM()
	atLow, atHigh := long(low), long(high)
	if !(atLow < 0 && atHigh > 0) {
		return 0, false
	}
	// False position between the two, halved where one end stands still.
	for range 60 {
		h := low - atLow*(high-low)/(atHigh-atLow)
		at := long(h)
		if math.Abs(at) < capExact {
			return measure.Length(h), true
		}
		if at < 0 {
			low, atLow = h, at
			atHigh /= 2
		} else {
			high, atHigh = h, at
			atLow /= 2
		}
	}
	return measure.Length((low + high) / 2), true
}

// capExact is how near the cap comes to the length it was asked for, in
// millimetres.
const capExact = 1e-5

// capWider is what a sleeve is widened by at a time, at most four times,
// where the cap would stand too high (common practice, no source).
const (
	capWider     = measure.Inch / 4
	capWiderMost = 4
)

// SolvedCap is the cap of a sleeve for an armhole: as high as the ease asks
// for, and where that is too high and the width is not her own choice, on a
// wider sleeve. False where no cap is so short.
func SolvedCap(k pattern.Known, armhole measure.Length) (Cap, bool) {
	wide, let := SleeveWidth(k).Result(), LetIn(k)
	wide -= let // so high the cap of the narrower sleeve stands, and keeps it
	high, ok := CapHeightFor(wide, armhole, k.Length("cap_ease"))
	if !ok {
		return Cap{}, false
	}
	for n := 0; n < capWiderMost && !k.Chosen("ease_upper_arm") && high.MM() > HighestCap*armhole.MM(); n++ {
		h, lower := CapHeightFor(wide+capWider, armhole, k.Length("cap_ease"))
		if !lower {
			break
		}
		wide, high = wide+capWider, h
	}
	return NewCap(wide+let, high), true
}

// CapFor is the cap as it is drawn: solved, or as high as she chose.
func CapFor(k pattern.Known, armhole measure.Length) (Cap, bool) {
	if k.Chosen("cap_height") {
		return NewCap(SleeveWidth(k).Result(), k.Length("cap_height")), true
	}
	return SolvedCap(k, armhole)
}

// SleeveWidth is the width at the underarm: her upper arm and its ease.
func SleeveWidth(k pattern.Known) measure.Working {
	return measure.Measured("upper arm", k.Body(measure.UpperArmGirth)).Plus(measure.Of("ease", k.Length("ease_upper_arm")))
}

// ArmholeNotch is the notch of an armhole that a sleeve is set into, and how
// far it lies from the underarm along it.
func ArmholeNotch(armhole geom.Path) (at geom.Point, fromUnderarm measure.Length) {
	last := armhole[len(armhole)-1]
	_, lower := last.Split(armholeNotchAt)
	return lower.A, measure.Length(lower.Length())
}

// LowerArmhole is the part of an armhole below its middle.
func LowerArmhole(armhole geom.Path) geom.Path { return armhole[len(armhole)-1:] }

// DressArmholes are the armholes of the measured dress, front and back, as
// the draft draws them, for defaults that hang on their length.
func DressArmholes(k pattern.Known) (front, back geom.Path) {
	depth := k.Length("armhole_depth")
	_, back = MeasuredArmhole(k, MeasuredShoulder(k, true), depth, true)
	s := MeasuredShoulder(k, false)
	mid, _ := MeasuredArmhole(k, s, depth, false)
	under := geom.Point{X: rule.BustWidthOf(k, false).Result().MM(), Y: UnderarmLevel(k, depth, false).MM()}
	scoop := 0.0
	if set, ok := k.Setting("armhole_scoop"); ok {
		scoop = set.Value.Number
	}
	front = ScoopedArmhole(s.End, s.Down, mid, under, scoop)
	if pinch := k.Length("armhole_pinch"); pinch > 0 && rule.DartIntake(k).Result() > 0 {
		in := MeasuredDart(k, k.Length("side_dart_below"))
		d := in.Draw()
		b := Bust{Point: in.Bust, Armhole: front, Underarm: under, Waist: in.Waist, Upper: d.Upper, Lower: d.Lower}
		front = ScoopedArmhole(s.End, s.Down, mid, b.AtBust(in.Intake, in.BackSide).Pinched(pinch).Underarm, scoop)
	}
	return front, back
}
