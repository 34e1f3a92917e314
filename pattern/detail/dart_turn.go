package detail

import (
	"math"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// Where the bust dart lies.
const (
	SideDartPlace = "side"
	FrenchDart    = "french"
	ArmholeDart   = "armhole"
	ShoulderDart  = "shoulder"
	NeckDart      = "neck"
)

// Places that want a seam: at the waist, or down the centre front.
const (
	WaistDart  = "waist"
	CentreDart = "centre_front"
	SplitDart  = "side_and_waist"
)

// DartPlace is where the bust dart lies; by thumb always in the side.
// Panel seams take the dart, so it is turned to where they begin.
func DartPlace(k pattern.Known) string {
	if HasPanels(k) {
		return PanelSeam(k)
	}
	return picked(k, "bust_dart", SideDartPlace)
}

// DartInSide says whether the bust dart, or a share of it, lies in the side.
func DartInSide(k pattern.Known) bool {
	return DartPlace(k) == SideDartPlace || DartPlace(k) == SplitDart
}

// Bust is the front about its bust point: what turns when a dart is closed
// in one place and opens in another. A dart turned about the bust point keeps
// its angle, whatever its length.
type Bust struct {
	Point                geom.Point
	Neck, Shoulder       geom.Path // centre to neck point; neck point to shoulder end
	Armhole              geom.Path // shoulder end to underarm
	Underarm, Waist      geom.Point
	Upper, Lower         geom.Point // where the side dart's legs meet the seam
	Left                 float64    // of the shoulder, from the neck point on
	FrenchRise, NeckFrom measure.Length
	Swings               bool    // as of DartIn
	Share                float64 // of the angle, that a dart shared with the waist gives it
}

// Angle is what the side dart opens at the bust point, radians.
func (b Bust) Angle() float64 {
	r := (b.Point.Dist(b.Upper) + b.Point.Dist(b.Lower)) / 2
	return 2 * chord(b.Upper.Dist(b.Lower)/(2*r))
}

// chord is half the angle of a chord, given as a share of the diameter; one
// wider than its circle is a half turn, which no caller lets pass.
func chord(share float64) float64 {
	if !(share < 1) {
		return math.Pi / 2
	}
	return math.Asin(math.Max(share, -1))
}

// AtBust brings the side dart to the bust point: the lower leg is the upper
// one turned about it by the angle of the intake, and trued against the
// back's side where the two would not meet.
func (b Bust) AtBust(intake measure.Length, backSide float64) Bust {
	r := b.Point.Dist(b.Upper)
	b.Lower = b.Point.Add(b.Point.To(b.Upper).Turn(2 * chord(intake.MM()/(2*r))))
	off := b.Underarm.Dist(b.Upper) + b.Lower.Dist(b.Waist) - backSide
	if math.Abs(off) > trueBeyond || b.Swings {
		if p, ok := circles(b.Point, r, b.Waist, backSide-b.Underarm.Dist(b.Upper), b.Lower); ok {
			b.Lower = p
		}
	}
	return b
}

// ArmholeNotch is where an armhole dart starts and a pinch is measured: a
// third of the way along the lower part of the armhole.
func (b Bust) ArmholeNotch() geom.Point { return b.Armhole[len(b.Armhole)-1].At(1.0 / 3) }

// Pinched closes a pinch across the armhole: underarm and upper leg turn up
// about the bust point, and the dart takes what the armhole gives.
func (b Bust) Pinched(pinch measure.Length) Bust {
	angle := -2 * chord(pinch.MM()/(2*b.Point.Dist(b.ArmholeNotch())))
	m := geom.TurnAbout(b.Point, angle)
	b.Underarm, b.Upper = m.Apply(b.Underarm), m.Apply(b.Upper)
	return b
}

// NeckPlace is where a pinch across the neck is measured: in the middle of the
// neck, where a low one stands off.
func (b Bust) NeckPlace() geom.Point {
	p, _ := b.Neck.At(b.Neck.Length() / 2)
	return p
}

// NeckPinched closes a pinch across the neck: all from the neck to the dart's
// upper leg turns about the bust point towards the centre, and the dart takes
// what the neck gives. It gives the turn as well, for what else goes with it.
func (b Bust) NeckPinched(pinch measure.Length) (Bust, geom.Matrix) {
	m := geom.TurnAbout(b.Point, -2*chord(pinch.MM()/(2*b.Point.Dist(b.NeckPlace()))))
	b.Underarm, b.Upper = m.Apply(b.Underarm), m.Apply(b.Upper)
	b.Shoulder, b.Armhole = b.Shoulder.Transform(m), b.Armhole.Transform(m)
	return b, m
}

// Turned is the front with its dart in another place.
type Turned struct {
	Fixed, Moved geom.Point // where the legs meet the edge: one stays, one turned
	// Before and After are the edge on both sides of the dart, in the
	// direction of the ring.
	Before, After geom.Path
	Neck          geom.Path // where it turned whole
	Shoulder      geom.Path // likewise
	Armhole       geom.Path // likewise
	Underarm      geom.Point
	Waist         geom.Point // where the waist at the side turned
	Lower         geom.Point // likewise the lower leg of the side dart
	Corner        geom.Point // where the closed side dart left a corner
	Part          geom.Matrix
}

// Turn closes the side dart and opens it at a place.
func (b Bust) Turn(place string) Turned {
	down := geom.TurnAbout(b.Point, b.Angle())
	t := Turned{Part: down, Underarm: down.Apply(b.Underarm), Corner: b.Lower, Waist: b.Waist, Lower: b.Lower}
	switch place {
	case FrenchDart:
		up := geom.TurnAbout(b.Point, -b.Angle())
		t.Part, t.Underarm, t.Corner = up, b.Underarm, b.Upper
		t.Fixed = b.Waist.Add(b.Waist.To(b.Lower).Unit().Scale(b.FrenchRise.MM()))
		t.Moved = up.Apply(t.Fixed)
	case ArmholeDart:
		last := len(b.Armhole) - 1
		upper, lower := b.Armhole[last].Split(1.0 / 3)
		t.Before = append(append(geom.Path{}, b.Armhole[:last]...), upper)
		t.After = geom.Path{lower}.Transform(down)
		t.Fixed, t.Moved = upper.D, down.Apply(upper.D)
	case ShoulderDart:
		t.Before, t.After = b.Shoulder.Split(b.Shoulder.Length() - b.Left/2)
		t.Fixed = t.Before.End()
		t.After = t.After.Transform(down)
		t.Moved = t.After.Start()
		t.Armhole = b.Armhole.Transform(down)
	case NeckDart:
		t.Before, t.After = b.Neck.Split(b.Neck.Length() - b.NeckFrom.MM())
		t.Fixed = t.Before.End()
		t.After = t.After.Transform(down)
		t.Moved = t.After.Start()
		t.Shoulder, t.Armhole = b.Shoulder.Transform(down), b.Armhole.Transform(down)
	case CentreDart:
		t.Fixed = geom.Point{Y: b.Point.Y}
		t.Moved = down.Apply(t.Fixed)
		t.Neck, t.Shoulder, t.Armhole = b.Neck.Transform(down), b.Shoulder.Transform(down), b.Armhole.Transform(down)
	case WaistDart:
		return b.toWaist(b.Angle())
	case SplitDart:
		return b.toWaist(b.Angle() * b.Share)
	}
	return t
}

// toWaist opens the dart, or a share of it, at the waist below the bust
// point: half of it inside, so that the leg that turns comes to lie on the
// waist line as well.
func (b Bust) toWaist(angle float64) Turned {
	up := geom.TurnAbout(b.Point, -angle)
	t := Turned{Part: up, Underarm: b.Underarm, Corner: b.Upper, Waist: up.Apply(b.Waist), Lower: up.Apply(b.Lower)}
	t.Fixed = geom.Point{X: b.Point.X - float64((b.Waist.Y-b.Point.Y)*math.Tan(angle/2)), Y: b.Waist.Y}
	t.Moved = up.Apply(t.Fixed)
	return t
}

// Tip lies back from the bust point towards the middle of the legs.
func (t Turned) Tip(bust geom.Point, back measure.Length) geom.Point {
	return bust.Add(bust.To(t.Fixed.Lerp(t.Moved, 0.5)).Unit().Scale(back.MM()))
}

// MorePlaceBack is how much farther from the bust point a dart from above
// stops than one from the side (common practice, no source).
func MorePlaceBack(place string) measure.Length {
	if place == ShoulderDart || place == NeckDart {
		return measure.Inch / 4
	}
	return 0
}

// PlaceBack is how far a dart's tip stops short of the bust point in a place:
// from the waist no more than an inch, or the bust is left flat below.
func PlaceBack(place string, chosen measure.Length) measure.Length {
	if place == WaistDart || place == SplitDart {
		return min(measure.Inch, chosen)
	}
	return chosen + MorePlaceBack(place)
}

// PressedOnMoved says on which leg a dart is pressed: an armhole dart down,
// on the leg that turned; any other on the leg that stayed.
func PressedOnMoved(place string) bool { return place == ArmholeDart }

// Smoothed rounds the corner that a closed dart leaves in a side, from 1 1/2
// above it to 3 below, but no more than three quarters of either part. It
// gives the line from a over the corner to b, and where the curve ends.
func Smoothed(a, corner, b geom.Point) (geom.Path, geom.Point) {
	above := math.Min(1.5*inch, 0.75*corner.Dist(a))
	below := math.Min(3*inch, 0.75*corner.Dist(b))
	round := func() geom.Segment {
		p := corner.Add(corner.To(a).Unit().Scale(above))
		q := corner.Add(corner.To(b).Unit().Scale(below))
		return geom.Curve(p, p.Lerp(corner, 2.0/3), q.Lerp(corner, 2.0/3), q)
	}
	curve := round()
	// What is cut off grows with the corner and with the reach alike.
	if lost := above + below - curve.Length(); lost > mostLost {
		above, below = above*mostLost/lost, below*mostLost/lost
		curve = round()
	}
	return geom.Lines(a, curve.A).Then(geom.Path{curve}), curve.D
}

// mostLost is how much shorter a smoothed seam may be: half of what makes it
// miss its partner.
const mostLost = inch / 32
