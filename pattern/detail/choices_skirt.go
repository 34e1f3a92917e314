package detail

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/rule"
)

// How the waist of a skirt is finished.
const (
	FacedWaist  = "facing"
	BandedWaist = "band"
)

// WaistFinish is how the waist of a skirt is finished: a full lining takes the
// place of a facing, and is caught in a band.
func WaistFinish(k pattern.Known) string {
	if f := picked(k, "waist_finish", FacedWaist); f != FacedWaist || Lining(k) != FullLining {
		return f
	}
	return LinedEdges
}

// SkirtChoices are the choices of a skirt on its own, in the order in which
// they are shown. What it shares with the dress is the same choice.
func SkirtChoices() []pattern.Choice {
	all := []pattern.Choice{garmentChoice, skirtMethod, skirtLength}
	all = append(all,
		length("ease_waist", "Ease", "Ease at the waist", "What the waist is wider than hers, all round.", 1, 0.5, 3, pattern.Measured),
		shared("ease_hip"),
		length("side_raise", "Shape", "Waist raised at the side", "How much higher the waist lies at the side than at the centre.", 0.5, 0, 0.75, pattern.Measured),
		shared("side_shape"), shared("skirt_line"), shared("hem_peg"), shared("hem_flare"), shared("hem_finish"), shared("hem_facing_depth"),
		shared(HemLevelFront), shared(HemLevelSide), shared(HemLevelBack),
		skirtClosure, skirtZip, shared("hem_opening"), skirtOpening, shared("pleat_depth"),
		waistFinish, skirtLining,
		length("waist_facing_width", "Facings", "Waist facing", "Width of the facing at the waist.", 2, 1.5, 3, pattern.Measured),
		length("waist_band_width", "Facings", "Waistband", "Finished width of the band.", 1.25, 0.75, 2.5, pattern.Measured),
		shared("hem_allowance"), shared("side_allowance"), shared("waist_allowance"),
		length("zip_allowance", "Allowances", "Centre back", "Allowance at the zip.", 1, 0.5, 1.25, pattern.Measured),
	)
	return all
}

// shared is a choice of the dress that a skirt has as well.
func shared(id pattern.ChoiceID) pattern.Choice {
	for _, c := range DressChoices() {
		if c.ID == id {
			return c
		}
	}
	return pattern.Choice{}
}

var skirtMethod = pattern.Choice{
	ID: pattern.Method, Title: "Method", Says: "How it is drafted.", Group: "Shape", Kind: pattern.KindPick,
	Options: []pattern.Option{{Value: pattern.Measured, Title: "Measured", Says: "Each part from its own measurement, net; allowances are added last."}},
	Default: pick(pattern.Measured),
}

var skirtLength = pattern.Choice{
	ID: "skirt_length", Title: "Skirt length", Says: "From the waist down the centre to the finished hem.", Group: "Shape", Kind: pattern.KindLength,
	Methods: onlyMeasured, Limits: between(12, 44),
	Default: func(k pattern.Known) pattern.Default {
		d := pattern.Default{Because: measure.Tell("{1/4 in} below the middle of the knee.")}
		knee, known := k.Figure(measure.WaistToKnee)
		height, tall := k.Measured(measure.Height)
		switch {
		case known:
			d.Sum, d.Proposed = measure.Measured("waist to knee", knee.Value).Plus(measure.Fixed(rule.In(0.25))), knee.Proposed
		case tall:
			d.Sum, d.Proposed = measure.Measured("height", height).Times(0.354).Plus(measure.Fixed(rule.In(0.25))), true
			d.Because = measure.Tell("{1/4 in} below the knee, which lies 0.354 of her height below the waist in the ANSUR II survey (2012).")
		default:
			return usualLength(23.25)
		}
		d.Value = pattern.LengthValue(d.Sum.Result())
		return d
	},
}

var skirtClosure = pattern.Choice{
	ID: "closure", Title: "Closure", Says: "Where the skirt opens so that she can step into it.", Group: "Opening",
	Kind: pattern.KindPick, Methods: onlyMeasured, Default: pick(ZipBehind),
	Options: []pattern.Option{
		{Value: ZipBehind, Title: "Zip behind", Says: "In the centre back seam, from the waist down to above the hip line."},
		{Value: ZipSide, Title: "Zip in the side", Says: "In the left side; the back is then cut on the fold where the hem is closed."},
	},
}

var skirtZip = pattern.Choice{
	ID: "zip_length", Title: "Zip", Says: "Length of the zip: from the waist to 1 1/2 above the hip line, the next stock length.",
	Group: "Opening", Kind: pattern.KindLength, Methods: onlyMeasured, After: []pattern.ChoiceID{"closure"}, Limits: between(4, 14),
	Default: func(k pattern.Known) pattern.Default {
		if w := waits(k, measure.WaistToHip); w != nil {
			return pattern.Default{Waits: w}
		}
		sum := measure.Measured("waist to hip", k.Body(measure.WaistToHip)).Minus(measure.Fixed(rule.In(1.5)))
		return pattern.Default{
			Value: pattern.LengthValue(rule.ZipFor(sum.Result())), Sum: sum,
			Because: measure.Tell("The opening is {} long; the next zip in the shops is taken and shortened.", sum.Result()),
		}
	},
}

// skirtOpening is the hem opening of the dress, reckoned by the skirt's own
// length.
var skirtOpening = func() pattern.Choice {
	c := openingChoices[0]
	c.After = []pattern.ChoiceID{"skirt_length", "ease_hip", "hem_peg", "skirt_line", "hem_flare", "hem_opening", "closure"}
	return c
}()

var waistFinish = pattern.Choice{
	ID: "waist_finish", Title: "Waist edge", Says: "How the waist of the skirt is finished.", Group: "Facings",
	Kind: pattern.KindPick, Methods: onlyMeasured, Default: pick(FacedWaist),
	Options: []pattern.Option{
		{Value: FacedWaist, Title: "Facing", Says: "Traced from the waist with the darts closed; nothing stands above it."},
		{Value: BandedWaist, Title: "Band", Says: "A straight band, folded over the edge, with an inch to lap."},
	},
}
