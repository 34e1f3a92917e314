package detail

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

// Sleeves below the underarm line (common practice, no source).
const (
	elbowUp     = 0.75 * measure.Inch // of the middle of the underarm seam
	elbowEase   = 1.75 * measure.Inch
	wristEase   = 0.5 * measure.Inch
	shortIn     = measure.Inch / 4 // at the hem of a short sleeve
	shortLeast  = 8 * measure.Inch
	shortBelow  = 2 * measure.Inch // of the underarm line
	capLength   = 3 * measure.Inch
	handShows   = 4.5 * measure.Inch // of a three-quarter sleeve above the wrist
	elbowIntake = 0.75 * measure.Inch
	elbowLong   = 3.25 * measure.Inch
	elbowClear  = 2 * measure.Inch // of seam below an elbow dart
	hemHandle   = 0.3
)

// Arm is what a sleeve past the elbow is drawn from.
type Arm struct {
	Cap    Cap
	Long   measure.Length // shoulder bone to wrist
	Elbow  measure.Length // finished, all round
	Wrist  measure.Length // finished, all round
	Length measure.Length // of the sleeve, crown to hem
}

// ArmOf gathers it from her measurements. A long sleeve is as wide as a wrist
// wants at its own end, a shorter one lies on the lines to the wrist.
func ArmOf(k pattern.Known, c Cap) Arm {
	a := Arm{
		Cap: c, Long: k.Body(measure.ArmLength), Length: k.Length("sleeve_length"),
		Elbow: k.Body(measure.ElbowGirth) + elbowEase, Wrist: k.Body(measure.HandGirth) + wristEase,
	}
	if SleeveKind(k) == LongSleeve {
		a.Long = a.Length
	}
	return a
}

// Underarm is the whole seam under her arm, to the wrist.
func (a Arm) Underarm() measure.Length { return a.Long - a.Cap.High }

// ElbowLevel is how far the elbow lies below the underarm line.
func (a Arm) ElbowLevel() measure.Length { return a.Underarm()/2 - elbowUp }

// Elbowed is a sleeve below the underarm line: both seams from the underarm
// down, the back's in two parts where a dart lies at the elbow.
type Elbowed struct {
	Elbow      [2]geom.Point // front, back
	Front      geom.Path
	Back       geom.Path // above the dart, or all of it
	BackBelow  geom.Path // below the dart; nil without one
	Hem        geom.Path // from the front seam to the back seam
	Darted     bool
	Upper, Low geom.Point
	Tip        geom.Point
}

// Draw draws a sleeve past the elbow. What the bent elbow needs behind is let
// in along the seam and taken up again in a dart, so that both seams are as
// long. A sleeve that ends above the elbow or close below it has none.
func (a Arm) Draw() Elbowed {
	at := func(x, y measure.Length) geom.Point { return geom.Point{X: x.MM(), Y: y.MM()} }
	under, elbow := at(a.Cap.Wide/2, 0), at(a.Elbow/2, a.ElbowLevel())
	wrist := at(a.Wrist/2, a.Underarm())
	level := (a.Length - a.Cap.High).MM()
	end := elbow.Lerp(wrist, (level-elbow.Y)/(wrist.Y-elbow.Y))
	front := geom.Lines(under, elbow, end)
	if level <= elbow.Y {
		end = under.Lerp(elbow, level/elbow.Y)
		front = geom.Lines(under, end)
	}
	mirror := geom.MirrorIn(geom.Line{Dir: geom.Vector{Y: 1}})
	e := Elbowed{Elbow: [2]geom.Point{elbow, mirror.Apply(elbow)}, Front: front, Back: front.Transform(mirror)}
	foot := mirror.Apply(end)
	if level >= elbow.Y+elbowClear.MM() {
		e.Darted = true
		e.Upper = e.Elbow[1]
		along := e.Upper.To(foot).Unit()
		e.Low = e.Upper.Add(along.Scale(elbowIntake.MM()))
		e.Tip = e.Upper.Lerp(e.Low, 0.5).Add(along.Left().Scale(elbowLong.MM()))
		foot = foot.Add(along.Scale(elbowIntake.MM()))
		e.Back, e.BackBelow = e.Back[:1], geom.Lines(e.Low, foot)
	}
	e.Hem = SleeveHem(e.Front, e.seamBehind())
	return e
}

func (e Elbowed) seamBehind() geom.Path {
	if e.Darted {
		return e.BackBelow
	}
	return e.Back
}

// SleeveHem is the lower edge of a sleeve whose seams slant: square to both,
// so that it runs on over the seam. Ruled it would stand up as a point there.
func SleeveHem(front, back geom.Path) geom.Path {
	f, b := front.End(), back.End()
	w := hemHandle * f.Dist(b)
	return geom.Path{geom.Curve(f, f.Add(front.EndTangent().Right().Scale(w)), b.Add(back.EndTangent().Left().Scale(w)), b)}
}

// ShortSleeveSeams are the seams of a short sleeve, front and back: to a hem
// that is a little narrower than the sleeve is at the underarm.
func ShortSleeveSeams(c Cap, length measure.Length) (front, back geom.Path) {
	w, y := (c.Wide-shortIn).MM()/2, (length - c.High).MM()
	half := c.Wide.MM() / 2
	return geom.Lines(geom.Point{X: half}, geom.Point{X: w, Y: y}), geom.Lines(geom.Point{X: -half}, geom.Point{X: -w, Y: y})
}

// capHangs is how far the middle of a cap sleeve hangs below its ends.
const capHangs = measure.Inch / 2

// CapSleeveEnds are where a cap sleeve ends on its cap: as far from the
// underarm as the middle of each armhole is.
func CapSleeveEnds(c Cap, front, back geom.Path) (f, b geom.Point) {
	return c.FromFront(measure.Length(LowerArmhole(front).Length())), c.FromBack(measure.Length(LowerArmhole(back).Length()))
}

// CapSleeveLeast is the shortest that a cap sleeve can be.
func CapSleeveLeast(c Cap, front, back geom.Path) measure.Length {
	f, b := CapSleeveEnds(c, front, back)
	return measure.Length(max(f.Y, b.Y)) + c.High + capHangs
}

// CapSleeveHem is the lower edge of a cap sleeve, from the front end over the
// middle to the back end: its ends lie on the cap.
func CapSleeveHem(front, back, middle geom.Point) geom.Path {
	half := func(p geom.Point) geom.Segment {
		return geom.Curve(p, geom.Point{X: 0.75 * p.X, Y: p.Y + float64(0.6*(middle.Y-p.Y))}, geom.Point{X: p.X / 2, Y: middle.Y}, middle)
	}
	return geom.Path{half(front), half(back).Reverse()}
}

// usualSleeveLength is how long each sleeve usually is, crown to hem.
func usualSleeveLength(k pattern.Known) pattern.Default {
	switch kind := SleeveKind(k); kind {
	case CapSleeve:
		d := usualLength(capLength.Inches())
		high, _ := k.Setting("cap_height")
		if !high.Known() {
			return pattern.Default{Waits: high.Default.Waits}
		}
		if len(capNeeds(k)) > 0 {
			return d
		}
		front, back := DressArmholes(k)
		c, ok := CapFor(k, measure.Length(front.Length()+back.Length()))
		if least := CapSleeveLeast(c, front, back).Up(rule.Eighth); ok && least > capLength {
			d.Value, d.GaveWay = pattern.LengthValue(least), true
			d.Because = measure.Tell("Shorter than {}, its hem would hollow upwards between its ends on the armhole.", least)
		}
		return d
	case ShortSleeve:
		high, ok := k.Setting("cap_height")
		if ok && !high.Known() {
			return pattern.Default{Waits: high.Default.Waits}
		}
		work := measure.Most(measure.Fixed(shortLeast), measure.Of("cap height and more", (high.Value.Length+shortBelow).Up(rule.Eighth)))
		return pattern.Default{
			Value: pattern.LengthValue(work.Result()), Sum: work,
			Because: measure.Tell("{}, and no less than {} below the underarm line.", shortLeast, shortBelow),
		}
	case ThreeQuarterSleeve, LongSleeve:
		if w := waits(k, measure.ArmLength); w != nil {
			return pattern.Default{Waits: w}
		}
		arm := measure.Measured("arm length", k.Body(measure.ArmLength))
		if kind == LongSleeve {
			return pattern.Default{Value: pattern.LengthValue(arm.Result()), Sum: arm, Because: measure.Tell("To the wrist.")}
		}
		arm = arm.Minus(measure.Fixed(handShows))
		return pattern.Default{Value: pattern.LengthValue(arm.Result()), Sum: arm, Because: measure.Tell("{} above the wrist.", handShows)}
	}
	return pattern.Default{Value: pattern.LengthValue(0), Because: measure.Tell("The dress has no sleeve.")}
}
