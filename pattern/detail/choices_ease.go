package detail

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/rule"
)

// classChoices set the defaults of all ease at once.
var classChoices = []pattern.Choice{
	{
		ID: "ease_class", Title: "Worn", Says: "How close the dress is worn; sets the ease wherever none is chosen.", Group: "Ease",
		Kind: pattern.KindPick, Methods: onlyMeasured, Default: pick(rule.Fitted),
		Options: []pattern.Option{
			{Value: rule.Close, Title: "Close", Says: "As near to her as a woven dress can be worn."},
			{Value: rule.Fitted, Title: "Fitted", Says: "The usual dress: it follows her, and she can sit and reach."},
			{Value: rule.Easy, Title: "Easy", Says: "It skims her and marks the waist only a little."},
			{Value: rule.Roomy, Title: "Roomy", Says: "It hangs from the shoulders."},
		},
	},
	{
		ID: "cloth_kind", Title: "Cloth", Says: "What the cloth gives; a knit needs less ease than a woven.", Group: "Ease",
		Kind: pattern.KindPick, Methods: onlyMeasured, Default: pick(rule.Woven),
		Options: []pattern.Option{
			{Value: rule.Woven, Title: "Woven", Says: "It gives nothing."},
			{Value: rule.Stretch, Title: "Stretch woven", Says: "A woven that gives 15 per cent or more across."},
			{Value: rule.Knit, Title: "Knit", Says: "A firm knit; try how far it stretches before cutting."},
		},
	},
}

// classed lets a class of ease and a kind of cloth change a choice's usual
// ease.
func classed(c pattern.Choice, at rule.Level) pattern.Choice {
	usual, limits := c.Default, c.Limits
	c.After = append(c.After[:len(c.After):len(c.After)], "ease_class", "cloth_kind")
	c.Default = func(k pattern.Known) pattern.Default {
		d := usual(k)
		more := rule.EaseMore(k, at)
		if more == 0 || len(d.Waits) > 0 {
			return d
		}
		from := d.Value.Length
		d.Value = pattern.LengthValue(from + more)
		d.Because = measure.Tell("Worn "+rule.EaseClass(k)+", in a "+clothWords(k)+": {} instead of {}.", from+more, from)
		return d
	}
	c.Limits = func(k pattern.Known) (measure.Length, measure.Length) {
		low, high := limits(k)
		return low - rule.ClothGives(k, at), high
	}
	return c
}

func clothWords(k pattern.Known) string {
	switch k.Pick("cloth_kind") {
	case rule.Stretch:
		return "woven that stretches"
	case rule.Knit:
		return "knit"
	}
	return "woven cloth"
}

// classChosen says that she chose how close it is worn, or what its cloth
// gives.
func classChosen(k pattern.Known) bool { return k.Chosen("ease_class") || k.Chosen("cloth_kind") }
