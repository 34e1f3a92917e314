package detail

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/rule"
)

var (
	onlyMeasured = []string{pattern.Measured}
	onlyThumb    = []string{pattern.Thumb}
)

// choices are those of a garment that hangs from the shoulders. Those that
// hang on a drawn line stand in files of their own.
func choices() choiceList {
	var all choiceList
	for _, part := range [][]pattern.Choice{
		shapeChoices, shareChoices, backShoulderChoices, figureChoices, classChoices, easeChoices, shoulderChoices, neckChoices, sideChoices,
		dartChoices, openingChoices, allowanceChoices, facingChoices, lineChoices,
		necklineChoices, armholeChoices, panelChoices, waistChoices, bustChoices, waistDartChoices, hemChoices, levelChoices, closureChoices, facingKinds, hemFinishChoices, sleeveChoices, collarChoices,
		seamChoices,
	} {
		all = append(all, part...)
	}
	return all
}

// length is a choice of a length with one default and limits, in inches.
func length(id pattern.ChoiceID, group, title, says string, usual, low, high float64, methods ...string) pattern.Choice {
	return pattern.Choice{
		ID: id, Title: title, Says: says, Group: group, Kind: pattern.KindLength, Methods: methods,
		Default: func(pattern.Known) pattern.Default { return usualLength(usual) },
		Limits:  between(low, high),
	}
}

func usualLength(inches float64) pattern.Default {
	return pattern.Default{Value: pattern.LengthValue(rule.In(inches)), Because: measure.Tell("The usual figure, common practice.")}
}

func between(low, high float64) func(pattern.Known) (measure.Length, measure.Length) {
	return func(pattern.Known) (measure.Length, measure.Length) { return rule.In(low), rule.In(high) }
}

// byMethod gives a choice another usual figure when the draft is by thumb.
func byMethod(c pattern.Choice, thumb float64) pattern.Choice {
	usual := c.Default
	c.Default = func(k pattern.Known) pattern.Default {
		if k.Method == pattern.Thumb {
			return usualLength(thumb)
		}
		return usual(k)
	}
	return c
}

// waits is a default that cannot be told before these are known; nil where
// all are.
func waits(k pattern.Known, ids ...measure.ID) []measure.ID {
	var out []measure.ID
	for _, id := range ids {
		if !k.Has(id) {
			out = append(out, id)
		}
	}
	return out
}

// garmentChoice is the same of every garment.
var garmentChoice = pattern.Choice{
	ID: pattern.Garment, Title: "Garment", Says: "What is drafted.", Group: "Shape", Kind: pattern.KindPick,
	Options: garmentOptions,
	Default: pick(pattern.Dress),
}

var shapeChoices = []pattern.Choice{
	garmentChoice,
	{
		ID: pattern.Method, Title: "Method", Says: "How it is drafted: every part by its own measure, from a bodice block, or by thumb.", Group: "Shape", Kind: pattern.KindPick,
		Options: []pattern.Option{
			{Value: pattern.Measured, Title: "Measured", Says: "Each part from its own measurement, net; allowances are added last."},
			{Value: pattern.Thumb, Title: "By thumb", Says: "Straight on the folded cloth with tape and chalk; the allowance is part of the figure."},
			{Value: pattern.Direct, Title: "Direct block", Says: "A fitted bodice block by direct measure, each line from its own length; the dress goes on below it."},
		},
		Default: pick(pattern.Measured),
	},
	{
		ID: "length", Title: "Length", Says: "From the top line down the back to the finished hem.", Group: "Shape", Kind: pattern.KindLength,
		Default: func(k pattern.Known) pattern.Default {
			if w := waits(k, measure.BackNeckToWaist); w != nil {
				return pattern.Default{Waits: w}
			}
			if d, other := shorterLength(k); other {
				return d
			}
			work, why := rule.Length.Pick(k)
			_, own := k.Measured(measure.WaistToKnee)
			return pattern.Default{Value: pattern.LengthValue(work.Result()), Sum: work, Because: why, Proposed: !own}
		},
		Limits: lengthLimits,
	},
}

func pick(value string) func(pattern.Known) pattern.Default {
	return func(pattern.Known) pattern.Default {
		return pattern.Default{Value: pattern.PickValue(value), Because: measure.Tell("The usual one.")}
	}
}

var easeChoices = []pattern.Choice{
	armholeDepth,
	classed(sleeved(length("ease_bust", "Ease", "Ease at the bust", "What the dress is wider than she is, all round, at the bust.", 2.5, 1, 8, pattern.Measured),
		sleevedBust, "A sleeve binds her unless the dress gives: more than without one."), rule.AtBust),
	classed(length("ease_waist", "Ease", "Ease at the waist", "What the waist is wider than hers, all round.", 2, 0.75, 8, pattern.Measured), rule.AtWaist),
	classed(pattern.Choice{
		ID: "ease_hip", Title: "Ease at the hip", Says: "What the hip is wider than hers, all round; she sits on it.",
		Group: "Ease", Kind: pattern.KindLength, Methods: onlyMeasured,
		Default: func(k pattern.Known) pattern.Default {
			if !k.Has(measure.HipGirth) {
				return usualLength(2)
			}
			e := rule.HipEase(k.Body(measure.HipGirth))
			d := pattern.Default{Value: pattern.LengthValue(e), Because: measure.Tell("The usual figure, common practice.")}
			if e != rule.In(2) {
				d.GaveWay, d.Because = true, measure.Tell("A fuller seat sits on more: {} from a hip of {}.", e, k.Body(measure.HipGirth))
			}
			return d
		},
		Limits: between(1.5, 8),
	}, rule.AtHip),
}

var sideChoices = []pattern.Choice{
	byDirect(length("side_waist_limit", "Shape", "Side in at the waist", "How far the side seam may come in from the underarm; the rest stays as ease.", 1.25, 0, 1.5, pattern.Measured),
		0.75, "The block takes the side in by {3/4 in}; darts take the rest."),
	length("hem_peg", "Hem", "Hem narrowed by", "How much each quarter of the hem is narrower than the hip.", 0.75, 0, 1.5, pattern.Measured),
}

var allowanceChoices = []pattern.Choice{
	byMethod(hemAllowance, 1),
	length("side_allowance", "Allowances", "Side seams", "Allowance at the sides, with some to let out.", 1, 0.375, 1.5, pattern.Measured),
	length("shoulder_allowance", "Allowances", "Shoulder seams", "Allowance at the shoulders.", 0.625, 0.25, 1),
	length("neck_allowance", "Allowances", "Neck edge", "Allowance at the neck, trimmed after it is faced.", 0.375, 0.25, 0.625),
	sleeved(length("armhole_allowance", "Allowances", "Armhole edge", "Allowance at the armholes, trimmed after they are faced or the sleeves set in.", 0.375, 0.25, 0.625),
		sleevedSeam, "A sleeve is set in with a wider seam, trimmed below the notches."),
	byMethod(length("zip_allowance", "Allowances", "Centre back", "Allowance at the zip.", 1, 0.5, 1.25), 0.75),
	zipLength,
}

var facingChoices = []pattern.Choice{
	byMethod(length("facing_neck_width", "Facings", "Neck facing at the shoulder", "Width of the neck facing at the shoulder; no more than half of it is taken.", 2, 1, 3), 2.5),
	length("facing_neck_depth", "Facings", "Neck facing at the centre", "Depth of the neck facing below the neck at the centre.", 3, 2, 4),
	length("facing_armhole_width", "Facings", "Armhole facing", "Width of the armhole facing, all along.", 2, 1, 3),
}

var lineChoices = []pattern.Choice{
	{
		ID: "side_shape", Title: "Side line", Says: "Whether the side follows the hip or is ruled.", Group: "Shape", Kind: pattern.KindPick,
		Options: []pattern.Option{
			{Value: "curved", Title: "Curved", Says: "Rounded at the waist and bowed over the hip."},
			{Value: "straight", Title: "Straight", Says: "Three ruled lines."},
		},
		Default: pick("curved"),
	},
	{
		ID: "figure", Title: "Figure", Says: "Whether the dress narrows below the hip.", Group: "Shape", Kind: pattern.KindPick, Methods: onlyThumb,
		Options: []pattern.Option{
			{Value: "shaped", Title: "Shaped", Says: "1 narrower at the knee than at the hip."},
			{Value: "straight", Title: "Straight", Says: "As wide at the knee as at the hip."},
		},
		Default: pick("shaped"),
	},
}
