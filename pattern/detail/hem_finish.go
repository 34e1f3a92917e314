package detail

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/rule"
)

// How the hem is finished.
const (
	TurnedHem = "turned"
	FacedHem  = "faced"
)

// HemFinish is how the hem is finished; by thumb it is turned.
func HemFinish(k pattern.Known) string { return picked(k, "hem_finish", TurnedHem) }

// hemAllowance is less where the hem widens: turned up, its raw edge is longer
// than the skirt there and must be eased. A faced hem is only seamed (common
// practice, no source).
var hemAllowance = pattern.Choice{
	ID: "hem_allowance", Title: "Hem", Says: "Cloth turned up at the hem.", Group: "Allowances", Kind: pattern.KindLength,
	After: []pattern.ChoiceID{"skirt_line", "hem_finish", "panel_seam", "panel_flare"},
	Default: func(k pattern.Known) pattern.Default {
		switch {
		case HemFinish(k) == FacedHem:
			return pattern.Default{Value: pattern.LengthValue(rule.In(0.375)), Because: measure.Tell("The hem is seamed to its facing and not turned up.")}
		case !Widens(k) && PanelFlare(k) <= 0:
			return usualLength(2.5)
		case SkirtLine(k) == FlaredSkirt:
			return pattern.Default{Value: pattern.LengthValue(rule.In(1)), Because: measure.Tell("The hem of a flared skirt is curved all round: more than {1 in} cannot be eased in.")}
		}
		return pattern.Default{
			Value:   pattern.LengthValue(rule.In(1.5)),
			Because: measure.Tell("A hem that widens is turned up less: its raw edge is longer than the skirt there and must be eased."),
		}
	},
	Limits: between(0.5, 4),
}

// hemFinishChoices say how the hem is finished.
var hemFinishChoices = []pattern.Choice{
	{
		ID: "hem_finish", Title: "Hem finish", Says: "Whether the hem is turned up or has a facing.", Group: "Hem",
		Kind: pattern.KindPick, Methods: onlyMeasured, Default: pick(TurnedHem),
		Options: []pattern.Option{
			{Value: TurnedHem, Title: "Turned up", Says: "The cloth below the hem is folded up and stitched."},
			{Value: FacedHem, Title: "Faced", Says: "A shaped strip finishes it: for a hem too curved to be turned, or cloth too short."},
		},
	},
	length("hem_facing_depth", "Hem", "Hem facing", "How deep the facing of a faced hem is.", 2.5, 1.5, 4, pattern.Measured),
}
