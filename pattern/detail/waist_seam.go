package detail

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// HasWaistSeam says whether the dress is cut apart at the waist.
func HasWaistSeam(k pattern.Known) bool { return switched(k, "waist_seam") }

// HasFrontSeam says whether a seam runs down the centre front.
func HasFrontSeam(k pattern.Known) bool { return switched(k, "front_seam") }

// switched is a switch of the measured method; by thumb it is off.
func switched(k pattern.Known, id pattern.ChoiceID) bool {
	return k.Method != pattern.Thumb && k.On(id)
}

// SeamDart is a dart whose legs end in a waist seam: Inner is nearer to the
// centre. It is pressed to the centre.
type SeamDart struct{ Tip, Inner, Outer, Cap geom.Point }

// Intake is what it takes up at the seam.
func (d SeamDart) Intake() measure.Length { return measure.Length(d.Inner.Dist(d.Outer)) }

// Leg is the length of its inner leg.
func (d SeamDart) Leg() measure.Length { return measure.Length(d.Tip.Dist(d.Inner)) }

// Angle is what it opens at its tip, radians.
func (d SeamDart) Angle() float64 { return 2 * chord(d.Inner.Dist(d.Outer)/(2*d.Tip.Dist(d.Inner))) }

// Waistline is the edge of a bodice or a skirt at the waist, from the centre
// out to the side: parts of seam with a dart between each and the next.
type Waistline struct {
	Parts []geom.Path
	Darts []SeamDart
}

// Length is what is sewn, the darts closed.
func (w Waistline) Length() measure.Length {
	sum := 0.0
	for _, p := range w.Parts {
		sum += p.Length()
	}
	return measure.Length(sum)
}

// Seams are the distances of the darts from the centre along the seam, the
// darts closed: there the legs of bodice and skirt meet.
func (w Waistline) Seams() []measure.Length {
	out := make([]measure.Length, len(w.Darts))
	sum := 0.0
	for i := range w.Darts {
		sum += w.Parts[i].Length()
		out[i] = measure.Length(sum)
	}
	return out
}

// Whole is the edge as it is cut, the caps of its darts in it.
func (w Waistline) Whole() geom.Path {
	var out geom.Path
	for i, p := range w.Parts {
		out = append(out, p...)
		if i < len(w.Darts) {
			d := w.Darts[i]
			out = append(out, geom.Lines(d.Inner, d.Cap, d.Outer)...)
		}
	}
	return out
}

// Capped folds every dart to the centre and gives it its cap.
func (w Waistline) Capped() Waistline {
	for i := range w.Darts {
		d := &w.Darts[i]
		d.Cap = CapDown(d.Tip, d.Outer, d.Inner, w.Parts[i].EndTangent().Scale(-1))
	}
	return w
}

// LevelWaist is a waistline ruled level from the centre to the side, with its
// darts.
func LevelWaist(centre, side geom.Point, darts []SeamDart) Waistline {
	w := Waistline{Darts: darts}
	from := centre
	for _, d := range darts {
		w.Parts = append(w.Parts, geom.Lines(from, d.Inner))
		from = d.Outer
	}
	w.Parts = append(w.Parts, geom.Lines(from, side))
	return w.Capped()
}

// UpperHalf and LowerHalf are the darts that a waist seam makes of one that
// runs through the waist.
func (f Fisheye) UpperHalf() SeamDart { return SeamDart{Tip: f.Top, Inner: f.Left, Outer: f.Right} }

// LowerHalf is the dart of the skirt.
func (f Fisheye) LowerHalf() SeamDart { return SeamDart{Tip: f.Foot, Inner: f.Left, Outer: f.Right} }

// Moved is the dart of the skirt where its inner leg is to meet the one of
// the bodice, so far from the centre.
func (d SeamDart) Moved(inner float64) SeamDart {
	by := geom.Vector{X: inner - d.Inner.X}
	return SeamDart{Tip: d.Tip.Add(by), Inner: d.Inner.Add(by), Outer: d.Outer.Add(by)}
}

// SeamSide is the side seam of bodice and skirt: with a seam there the waist
// is not rounded.
func SeamSide(upper, waist, hip geom.Point, curved bool, below ...geom.Point) (bodice, skirt geom.Path) {
	tail := geom.Lines(append([]geom.Point{hip}, below...)...)
	if !curved {
		return geom.Lines(upper, waist), geom.Lines(waist, hip).Then(tail)
	}
	return geom.Lines(upper, waist), hipCurve(waist, hip).Then(tail)
}

// WithWaistDart is the bust dart at the waist with what the waist takes in
// added to it: half of it inside its inner leg, half along the waist beyond
// its outer one, which is lengthened until both are as long from the bust
// point.
func (t Turned) WithWaistDart(bust, waist geom.Point, intake measure.Length) (inner, outer geom.Point) {
	half := intake.MM() / 2
	if half <= 0 {
		return t.Fixed, t.Moved
	}
	inner = t.Fixed.Add(geom.Vector{X: -half})
	outer = t.Moved.Add(t.Moved.To(waist).Unit().Scale(half))
	outer = bust.Add(bust.To(outer).Unit().Scale(bust.Dist(inner)))
	return inner, outer
}

// seamChoices part the dress at the waist and at the centre front.
var seamChoices = []pattern.Choice{
	{
		ID: "waist_seam", Title: "Waist seam", Says: "Whether the dress is cut apart at the waist, into a bodice and a skirt.", Group: "Shape",
		Kind: pattern.KindSwitch, Methods: onlyMeasured, Default: off,
	},
	{
		ID: "front_seam", Title: "Centre front seam", Says: "Whether a seam runs down the centre front; a dart from there wants one.", Group: "Shape",
		Kind: pattern.KindSwitch, Methods: onlyMeasured, Default: off,
	},
	length("waist_allowance", "Allowances", "Waist edges", "Allowance at the waist, of bodice and skirt.", 0.625, 0.375, 1, pattern.Measured),
}

func off(pattern.Known) pattern.Default {
	return pattern.Default{Value: pattern.SwitchValue(false), Because: measure.Tell("The usual one.")}
}
