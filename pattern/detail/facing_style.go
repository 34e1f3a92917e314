package detail

import (
	"math"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

// How the edges of neck and armholes are finished.
const (
	SeparateFacings = "separate"
	AllInOneFacing  = "all_in_one"
	BiasFacing      = "bias"
	// LinedEdges: a full lining finishes them, whatever facing is chosen.
	LinedEdges = "lining"
)

// FacingKind is how the edges are finished; by thumb with facings cut apart.
func FacingKind(k pattern.Known) string {
	if Lining(k) == FullLining {
		return LinedEdges
	}
	return picked(k, "facing", SeparateFacings)
}

// narrowShoulder: on a shoulder as narrow as this two facings beside each
// other are strips, and one that goes round both edges lies better.
const narrowShoulder = 4.25 * measure.Inch

var facingAfter = []pattern.ChoiceID{"lining", "sleeve", "shoulder_inset", "shoulder_forward", "neck_widening"}

// usualFacing are facings cut apart, as the cutting list of this dress has
// them; one all in one where a lining is to begin at its edge. That a narrow
// shoulder asks for one all in one is said and left to her.
func usualFacing(k pattern.Known) pattern.Default {
	if Lining(k) == FacingLining && !HasSleeve(k) {
		return pattern.Default{Value: pattern.PickValue(AllInOneFacing), Because: measure.Tell("A lining begins at the edge of one facing, not between two.")}
	}
	d := pick(SeparateFacings)(k)
	if k.Method == pattern.Thumb || HasSleeve(k) || !k.Has(shoulderNeeds(k)...) {
		return d
	}
	if left := MeasuredShoulder(k, false).Left(); left <= narrowShoulder {
		d.Because = measure.Tell("{} of shoulder is left: on {} or less one facing all in one lies flatter; separate ones are quicker to fit.", left, narrowShoulder)
	}
	return d
}

const (
	// sideDeep is how far an all-in-one facing reaches down the side.
	sideDeep = 2 * measure.Inch
	// facingClear is what its outer edge keeps from the armhole.
	facingClear = 1.5 * measure.Inch
	// BiasWidth is the width of a bias strip, and BiasMore what it is cut
	// longer than its edge (all common practice, no source).
	BiasWidth = 1.25 * measure.Inch
	BiasMore  = measure.Inch
)

// AllInOneSide is how far down the side the facing reaches: clear of a side
// dart, of which below is zero without one.
func AllInOneSide(below measure.Length) measure.Length {
	if below <= 0 {
		return sideDeep
	}
	return max(measure.Inch/2, min(sideDeep, below-measure.Inch/4))
}

// AllInOne is the outer edge of a facing that goes round neck and armhole in
// one, from the centre to the side: level at the centre, square to the side,
// and flatter at the centre until it is clear of the armhole.
func AllInOne(centre, underarm geom.Point, down geom.Vector, deep measure.Length, armhole geom.Path, back bool) geom.Path {
	p := underarm.Add(down.Scale(deep.MM()))
	level := 0.45
	if back {
		level = 0.30
	}
	for {
		line := geom.Path{geom.Curve(centre, geom.Point{X: level * p.X, Y: centre.Y}, p.Add(down.Right().Scale(0.40*p.X)), p)}
		if level <= 0.10+1e-9 || Strap(line, armhole) >= facingClear {
			return line
		}
		level = math.Max(0.10, level-0.05)
	}
}

// facingKinds are the choices of how edges are finished.
var facingKinds = []pattern.Choice{
	{
		ID: "facing", Title: "Finish of neck and armholes", Says: "How the edges of neck and armholes are finished.", Group: "Facings",
		Kind: pattern.KindPick, Methods: onlyMeasured, After: facingAfter, Default: usualFacing,
		Options: []pattern.Option{
			{Value: SeparateFacings, Title: "Separate facings", Says: "One for the neck, one for each armhole."},
			{Value: AllInOneFacing, Title: "All in one", Says: "One facing goes round neck and armholes; it cannot roll out."},
			{Value: BiasFacing, Title: "Bias strip", Says: "A narrow strip on the bias, turned in and sewn down."},
		},
	},
	length("facing_depth", "Facings", "All-in-one facing at the centre", "Depth of an all-in-one facing below the neck at the centre.", 2.75, 2.5, 3, pattern.Measured),
	length("facing_favour", "Facings", "Facing smaller by", "How much less allowance a facing has at the edge it faces, so that the seam rolls inwards.", 0.0625, 0, 0.125, pattern.Measured),
	lining,
}

// Favour is how much less allowance a facing has at its edge.
func Favour(k pattern.Known) measure.Length {
	if k.Method == pattern.Thumb {
		return FacingLess
	}
	return min(max(0, k.Length("facing_favour")), rule.In(0.25))
}
