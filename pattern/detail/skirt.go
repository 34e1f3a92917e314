package detail

import (
	"math"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

// SkirtIn is what a skirt on its own is drawn from, a quarter of her: levels
// count from the waist at the centre.
type SkirtIn struct {
	Quarter float64 // half width at the hip
	Raise   float64 // how much higher the waist lies at the side
	Hip     float64 // level of the hip line
	Sewn    float64 // length of the waist line, darts open
	Side    geom.Point
	Flare   float64 // by which the hem at the side stands outside the hip
}

// waistEnd is the waist line of a skirt that ends so far out, and the end.
func (in SkirtIn) waistEnd(out float64) (geom.Path, geom.Point) {
	end, hip := geom.Point{X: out, Y: -in.Raise}, geom.Point{X: in.Quarter, Y: in.Hip}
	p := end.To(hip).Unit().Right()
	return geom.Path{geom.Curve(geom.Point{}, geom.Point{X: out / 2}, end.Add(p.Scale(0.3*out)), end)}, end
}

// Waist is the waist line: level at the centre, square to the side, and as
// long as is to be sewn with the darts in it.
func (in SkirtIn) Waist() (geom.Path, geom.Point) {
	lo, hi := in.Sewn/2, in.Sewn*1.2
	for range 60 {
		mid := (lo + hi) / 2
		if path, _ := in.waistEnd(mid); path.Length() < in.Sewn {
			lo = mid
		} else {
			hi = mid
		}
	}
	return in.waistEnd((lo + hi) / 2)
}

// SideLine is the side from the waist over the hip to the hem: it arrives at
// the hip in the direction it goes on in.
func (in SkirtIn) SideLine(waist geom.Point, curved bool) geom.Path {
	hip := geom.Point{X: in.Quarter, Y: in.Hip}
	if !curved {
		return geom.Lines(waist, hip, in.Side)
	}
	t := geom.Vector{Y: 1}
	if in.Flare > 0 {
		t = hip.To(in.Side).Unit()
	}
	return geom.Path{geom.Curve(waist, waist.Lerp(hip, 1.0/3), hip.Add(t.Scale(-0.45*in.Hip)), hip)}.Then(geom.Lines(hip, in.Side))
}

// SkirtDart is a dart of a skirt: where its middle lies along the waist line,
// what it takes up and how long it is.
type SkirtDart struct{ At, Intake, Long measure.Length }

// Darted parts a waist line by its darts, each with its axis square to it.
func Darted(waist geom.Path, darts []SkirtDart) Waistline {
	var w Waistline
	from := 0.0
	for _, d := range darts {
		a, b := d.At.MM()-d.Intake.MM()/2, d.At.MM()+d.Intake.MM()/2
		mid, dir := waist.At(d.At.MM())
		inner, _ := waist.At(a)
		outer, _ := waist.At(b)
		w.Darts = append(w.Darts, SeamDart{Tip: mid.Add(dir.Right().Scale(d.Long.MM())), Inner: inner, Outer: outer})
		w.Parts = append(w.Parts, waist.Part(from, a))
		from = b
	}
	w.Parts = append(w.Parts, waist.Part(from, waist.Length()))
	return w.Capped()
}

// Closed is a waist line with its darts closed, as a facing is traced: smooth
// from the centre to where the side then lies, and as long as is sewn.
func (w Waistline) Closed(side geom.Vector) geom.Path {
	end := w.Parts[len(w.Parts)-1].End()
	dir := side
	for i := len(w.Darts) - 1; i >= 0; i-- {
		d := w.Darts[i]
		m := geom.TurnAbout(d.Tip, -d.Angle())
		end, dir = m.Apply(end), m.ApplyVector(dir)
	}
	start, first := w.Parts[0].Start(), w.Parts[0].StartTangent()
	in := dir.Unit().Right()
	want := w.Length().MM()
	curve := func(k float64) geom.Path {
		h := k * want
		return geom.Path{geom.Curve(start, start.Add(first.Scale(h)), end.Add(in.Scale(h)), end)}
	}
	lo, hi := 0.05, 0.6
	for range 50 {
		if mid := (lo + hi) / 2; curve(mid).Length() < want {
			lo = mid
		} else {
			hi = mid
		}
	}
	return curve((lo + hi) / 2)
}

// The darts of a skirt (common practice; a teaching page makes two of 7/8
// where waist and hip differ by 8).
const (
	skirtDartFrom  = 3.5 * measure.Inch  // first dart behind, and in front where her bust is not measured
	skirtDartApart = 1.25 * measure.Inch // between a dart and the next
	frontDartLong  = 3.5 * measure.Inch
	backDartLong   = 5.5 * measure.Inch
	backDartLess   = 0.5 * measure.Inch
	frontDartShare = 0.425
	leastSideIn    = 0.5 * measure.Inch
	mostSideIn     = 1.5 * measure.Inch
	leaveForDarts  = 1.5 * measure.Inch
)

// SkirtSideIn is what the side takes in between hip and waist: what is over
// once the darts have theirs, but no less and no more than a side bears.
// Where too little is left for a dart the side takes it all.
func SkirtSideIn(k pattern.Known) measure.Length {
	spare := rule.HipWidth(k).Result() - rule.WaistWanted(k).Result()
	in := min(mostSideIn, max(leastSideIn, spare-leaveForDarts))
	if spare-in < rule.LeastWaistDart {
		return max(0, spare)
	}
	return in
}

// SkirtDarts are the darts of a half.
func SkirtDarts(k pattern.Known, back bool) []SkirtDart {
	side := SkirtSideIn(k)
	all := 2 * (rule.HipWidth(k).Result() - rule.WaistWanted(k).Result() - side)
	if all < rule.LeastWaistDart {
		return nil
	}
	front := measure.Length(frontDartShare * all.MM()).Near(rule.Eighth)
	if back {
		return backSkirtDarts(k, all-front, rule.HipWidth(k).Result()-side)
	}
	from := skirtDartFrom
	if span, ok := k.Measured(measure.BustPointDistance); ok {
		from = span / 2
	}
	if front <= measure.Inch+1e-6 {
		return []SkirtDart{{At: from, Intake: front, Long: frontDartLong}}
	}
	return []SkirtDart{
		{At: from, Intake: front / 2, Long: frontDartLong},
		{At: from + front/2 + skirtDartApart, Intake: front / 2, Long: frontDartLong},
	}
}

func backSkirtDarts(k pattern.Known, intake, waist measure.Length) []SkirtDart {
	differ := k.Body(measure.HipGirth) - k.Body(measure.WaistGirth)
	const hair = 1e-6
	if differ <= 7*measure.Inch+hair && intake <= 1.25*measure.Inch+hair || differ < 8*measure.Inch-hair && intake <= measure.Inch+hair {
		return []SkirtDart{{At: waist / 2, Intake: intake, Long: backDartLong}}
	}
	return []SkirtDart{
		{At: skirtDartFrom, Intake: intake / 2, Long: backDartLong},
		{At: skirtDartFrom + intake/2 + skirtDartApart, Intake: intake / 2, Long: backDartLong - backDartLess},
	}
}

// SkirtZipEnd is how far below the waist a zip in a skirt ends.
func SkirtZipEnd(k pattern.Known) measure.Working {
	if v, ok := k.Job.Style.Get("zip_length"); ok {
		return measure.Of("zip", v.Length)
	}
	return measure.Measured("waist to hip", k.Body(measure.WaistToHip)).Minus(measure.Fixed(rule.In(1.5)))
}

// skirtWalk is Walking of a skirt on its own.
func skirtWalk(k pattern.Known) (rule.Walk, bool) {
	height, ok := k.Measured(measure.Height)
	floor, ok2 := k.Measured(measure.WaistToFloor)
	if !ok || !ok2 || !k.Has(measure.HipGirth, measure.WaistToHip) {
		return rule.Walk{}, false
	}
	w := rule.Walk{Step: rule.UsualStep, LegGirth: rule.LegGirth, Leg: measure.Length(height.MM() * rule.LegOfHeight)}
	if s, ok := k.Measured(measure.StepLength); ok {
		w.Step, w.StepGiven = s, true
	}
	long, hip := k.Length("skirt_length"), rule.HipWidth(k).Result()
	w.Hem = floor - long
	w.HipGirth, w.HemGirth = 4*hip, 4*(hip-HemNarrower(k))
	w.HipAbove = long - k.Body(measure.WaistToHip)
	w.ZipAbove = long
	if Closure(k) == ZipBehind {
		w.ZipAbove = long - SkirtZipEnd(k).Result()
	}
	if w.Hem < 0 || w.Hem >= w.Leg || w.HipAbove <= 0 || math.IsNaN(w.Leg.MM()) {
		return rule.Walk{}, false
	}
	return w, true
}
