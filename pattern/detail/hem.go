package detail

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

// How the skirt runs from the hip to the hem.
const (
	PeggedSkirt   = "pegged"
	StraightSkirt = "straight"
	ALineSkirt    = "a_line"
	FlaredSkirt   = "flared"
)

// SkirtLine is how the skirt runs below the hip; by thumb the figure says it.
func SkirtLine(k pattern.Known) string { return picked(k, "skirt_line", PeggedSkirt) }

// HemNarrower is how much each quarter of the hem is narrower than the hip,
// by the measured method; negative where it is wider.
func HemNarrower(k pattern.Known) measure.Length {
	switch SkirtLine(k) {
	case StraightSkirt:
		return 0
	case ALineSkirt, FlaredSkirt:
		return -k.Length("hem_flare")
	}
	return k.Length("hem_peg")
}

// FlaredHem is the hem of a skirt that widens: straight from the centre, and
// turned square to the side over its last two inches, so that it hangs level.
// It runs from the side to the centre.
func FlaredHem(side, hip, centre geom.Point) geom.Path {
	long := side.Dist(centre)
	b := side.Lerp(centre, 2*inch/long)
	p := hip.To(side).Unit().Right()
	return geom.Path{geom.Curve(side, side.Add(p.Scale(2*inch/3)), b.Lerp(side, 1.0/3), b)}.Then(geom.Lines(b, centre))
}

// How the hem opens at the centre back.
const (
	NoOpening     = "none"
	SlitOpening   = "slit"
	VentOpening   = "vent"
	KickPleat     = "kick_pleat"
	InvertedPleat = "inverted"
	SideSlits     = "side_slits"
)

// HemOpening is how the hem opens; by thumb it is a slit.
func HemOpening(k pattern.Known) string { return picked(k, "hem_opening", SlitOpening) }

// UsualOpening is the usual finished height of an opening (common practice,
// no source): the more cloth lies over it, the higher it must be to open.
func UsualOpening(k pattern.Known) measure.Length {
	switch HemOpening(k) {
	case NoOpening:
		return 0
	case SideSlits:
		return SideSlitHeight(k)
	case VentOpening:
		return rule.In(7)
	case KickPleat:
		return rule.In(8)
	case InvertedPleat:
		return rule.In(9)
	}
	return usualOpening
}

// belowHip is how far below the hip line slits in the sides begin (common
// practice, no source).
const belowHip = measure.Inch

// SideSlitTop is how far below the waist slits in the sides may begin at the
// highest (common practice, no source).
const SideSlitTop = 4 * measure.Inch

// SideSlitHeight is the usual height of slits in the sides: they begin below
// the hip line, and on a long garment are no higher than shows.
func SideSlitHeight(k pattern.Known) measure.Length {
	if !k.Has(measure.BackNeckToWaist, measure.WaistToHip) {
		return usualOpening
	}
	if k.Garment == pattern.Top {
		return 3 * measure.Inch
	}
	room := k.Length("length") - rule.BackHip(k).Result() - belowHip
	return max(0, min(room, rule.In(12))).Down(measure.Inch / 2)
}

// BackOpens says that the hem opens at the centre back.
func BackOpens(k pattern.Known) bool {
	o := HemOpening(k)
	return o != NoOpening && o != SideSlits
}

// VentWidth is what a vent extends: an overlap of 1 1/2 and 1/2 to turn in
// (common practice).
const VentWidth = 2 * measure.Inch

// Extension is the cloth that an opening adds beyond the centre back, from
// the hem up and back to the centre. Folds are the lines that it is folded
// on; Sewn says that its edge is a seam.
type Extension struct {
	Line  geom.Path
	Folds []geom.Segment
	Sewn  bool
}

// OpeningExtension draws the extension of an opening whose top lies at a
// level, and whose hem ends at a point of the centre line.
func OpeningExtension(kind string, hem geom.Point, top float64, depth measure.Length) (Extension, bool) {
	at := func(x, y float64) geom.Point { return geom.Point{X: x, Y: y} }
	fold := func(x float64) geom.Segment { return geom.Straight(at(x, top), at(x, hem.Y)) }
	d := depth.MM()
	switch kind {
	case VentOpening:
		w := VentWidth.MM()
		return Extension{Line: geom.Lines(at(-w, hem.Y), at(-w, top), at(0, top-0.5*inch)), Folds: []geom.Segment{fold(0)}}, true
	case KickPleat:
		return Extension{Line: geom.Lines(at(-d, hem.Y), at(-d, top), at(0, top)), Folds: []geom.Segment{fold(0)}, Sewn: true}, true
	case InvertedPleat:
		return Extension{
			Line:  geom.Lines(at(-2*d, hem.Y), at(-2*d, top), at(0, top-0.5*inch)),
			Folds: []geom.Segment{fold(0), fold(-d)}, Sewn: true,
		}, true
	}
	return Extension{}, false
}

// Widens says whether the hem is wider than the hip.
func Widens(k pattern.Known) bool { return SkirtLine(k) == ALineSkirt || SkirtLine(k) == FlaredSkirt }

// hemFlare is what a quarter of the hem is wider than the hip: a flared skirt
// falls in folds, so it has more (common practice, no source).
var hemFlare = pattern.Choice{
	ID: "hem_flare", Title: "Hem widened by", Says: "How much each quarter of an A-line or flared hem is wider than the hip.", Group: "Hem",
	Kind: pattern.KindLength, Methods: onlyMeasured, After: []pattern.ChoiceID{"skirt_line"},
	Default: func(k pattern.Known) pattern.Default {
		if SkirtLine(k) == FlaredSkirt {
			return usualLength(3)
		}
		return usualLength(1.5)
	},
	Limits: func(k pattern.Known) (measure.Length, measure.Length) {
		if SkirtLine(k) == FlaredSkirt {
			return rule.In(2), rule.In(5)
		}
		return rule.In(1), rule.In(2)
	},
}

// hemChoices are the line of the skirt and the kind of its opening.
var hemChoices = []pattern.Choice{
	{
		ID: "skirt_line", Title: "Skirt", Says: "How the skirt runs from the hip to the hem.", Group: "Hem",
		Kind: pattern.KindPick, Methods: onlyMeasured, Default: pick(PeggedSkirt),
		Options: []pattern.Option{
			{Value: PeggedSkirt, Title: "Pegged", Says: "A little narrower at the hem than at the hip."},
			{Value: StraightSkirt, Title: "Straight", Says: "As wide at the hem as at the hip."},
			{Value: ALineSkirt, Title: "A-line", Says: "Wider at the hem than at the hip."},
			{Value: FlaredSkirt, Title: "Flared", Says: "Wider all round: half at the side, half below the darts of a waist seam."},
		},
	},
	hemFlare,
	{
		ID: "hem_opening", Title: "Kind of hem opening", Says: "How the hem opens at the centre back, so that she can walk.", Group: "Opening",
		Kind: pattern.KindPick, Methods: onlyMeasured, Default: pick(SlitOpening),
		Options: []pattern.Option{
			{Value: NoOpening, Title: "None", Says: "The seam is closed; the hem itself must be wide enough."},
			{Value: SlitOpening, Title: "Slit", Says: "The seam is left open, its edges turned."},
			{Value: VentOpening, Title: "Vent", Says: "One side laps over the other."},
			{Value: KickPleat, Title: "Kick pleat", Says: "Both sides extended, sewn together and pressed to one side."},
			{Value: InvertedPleat, Title: "Inverted pleat", Says: "Cloth folded in behind the seam on both sides."},
		},
	},
	length("pleat_depth", "Opening", "Pleat depth", "How deep each fold of a pleat at the hem is.", 2, 2, 3, pattern.Measured),
}
