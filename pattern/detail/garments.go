package detail

import (
	"slices"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/rule"
)

// garmentOptions are the garments that the choice of a garment offers.
var garmentOptions = []pattern.Option{
	{Value: pattern.Dress, Title: "Dress", Says: "A dress in one piece, zip behind, opening at the hem."},
	{Value: pattern.Top, Title: "Top", Says: "A top to just below the hip, zip behind."},
	{Value: pattern.Shift, Title: "Shift", Says: "A loose dress, pulled on over the head, straight from the hip."},
	{Value: pattern.Tunic, Title: "Tunic", Says: "Half loose and half long, pulled on, with slits in the sides."},
	{Value: pattern.Skirt, Title: "Skirt", Says: "A skirt on its own, darts at the waist, zip behind."},
}

// DressChoices are the choices of the dress in the order in which they are
// shown.
func DressChoices() []pattern.Choice { return choices() }

// habits are what another garment takes where she chooses nothing.
type habits map[pattern.ChoiceID]pattern.Value

func inches(x float64) pattern.Value { return pattern.LengthValue(rule.In(x)) }

// TopChoices are the dress's, as a top to the hip usually has them: nothing
// is narrowed and nothing opens below the hip (common practice, no source).
func TopChoices() []pattern.Choice {
	return choices().as(habits{
		"skirt_line": pattern.PickValue(StraightSkirt), "hem_opening": pattern.PickValue(NoOpening), "hem_allowance": inches(1.25),
	}).only("skirt_line", StraightSkirt).only("hem_opening", NoOpening, SideSlits)
}

// ShiftChoices are the dress's, loose: 6 of ease at bust and hip, hardly any
// waist, pulled on by a slit in the neck (common practice, no source).
func ShiftChoices() []pattern.Choice {
	return choices().as(habits{
		"ease_bust": inches(6), "ease_waist": inches(6), "ease_hip": inches(6), "side_waist_limit": inches(0.5),
		"skirt_line": pattern.PickValue(StraightSkirt), "hem_opening": pattern.PickValue(NoOpening),
		"front_neckline": pattern.PickValue(SlitNeckline), "closure": pattern.PickValue(NoClosure),
	})
}

// TunicChoices are the dress's, half loose: the waist comes in as far as her
// bust can still pass it, and the sides are open below the hip (common
// practice, no source).
func TunicChoices() []pattern.Choice {
	return choices().as(habits{
		"ease_bust": inches(4), "ease_waist": inches(4), "ease_hip": inches(4), "side_waist_limit": inches(0.75),
		"skirt_line": pattern.PickValue(StraightSkirt), "hem_opening": pattern.PickValue(SideSlits), "hem_allowance": inches(1.25),
		"front_neckline": pattern.PickValue(SlitNeckline), "closure": pattern.PickValue(NoClosure),
	})
}

// choiceList is a list that another garment can have with other usual figures.
type choiceList []pattern.Choice

func (all choiceList) as(u habits) choiceList {
	out := make(choiceList, len(all))
	for i, c := range all {
		if v, ok := u[c.ID]; ok {
			usual, ease := c.Default, strings.HasPrefix(string(c.ID), "ease_")
			c.Default = func(k pattern.Known) pattern.Default {
				if ease && classChosen(k) || opensOtherwise(k, c.ID) {
					return usual(k)
				}
				return pattern.Default{Value: v, Because: measure.Tell("Usual for this garment, common practice.")}
			}
		}
		out[i] = c
	}
	return out
}

// opensOtherwise says that a collar or a placket makes the habit of how she
// gets into a garment idle: it opens as the dress does.
func opensOtherwise(k pattern.Known, id pattern.ChoiceID) bool {
	switch id {
	case "closure":
		return HasCollar(k)
	case "front_neckline":
		return HasCollar(k) || HasPlacket(k)
	}
	return false
}

// only leaves a pick the options that make sense on this garment.
func (all choiceList) only(id pattern.ChoiceID, values ...string) choiceList {
	out := slices.Clone(all)
	for i, c := range out {
		if c.ID != id {
			continue
		}
		out[i].Options = nil
		for _, o := range c.Options {
			if slices.Contains(values, o.Value) {
				out[i].Options = append(out[i].Options, o)
			}
		}
	}
	return out
}

// shorterLength is the usual length of a garment that ends above the knee.
func shorterLength(k pattern.Known) (pattern.Default, bool) {
	switch k.Garment {
	case pattern.Top:
		if w := waits(k, measure.WaistToHip); w != nil {
			return pattern.Default{Waits: w}, true
		}
		work := measure.Of("hip level", rule.BackHip(k).Result()).Plus(measure.Fixed(measure.Inch))
		return pattern.Default{
			Value: pattern.LengthValue(work.Result()), Sum: work,
			Because: measure.Tell("{1 in} below the hip line, so that it stays down; common practice."),
		}, true
	case pattern.Tunic:
		work, _ := rule.Length.Pick(k)
		work = measure.Of("to the knee", work.Result()).Minus(measure.Fixed(rule.In(6)))
		if k.Has(measure.WaistToHip) {
			work = measure.Most(work, measure.Of("below the hip", rule.BackHip(k).Result()+rule.In(6)))
		}
		_, own := k.Measured(measure.WaistToKnee)
		return pattern.Default{
			Value: pattern.LengthValue(work.Result()), Sum: work, Proposed: !own,
			Because: measure.Tell("{6 in} above a knee-length hem, and no less than {6 in} below the hip line; common practice."),
		}, true
	}
	return pattern.Default{}, false
}

// LeastSkirt is how far below the hip line a hem must lie to be drawn.
func LeastSkirt(k pattern.Known) measure.Length {
	if k.Garment == pattern.Top {
		return measure.Inch / 2
	}
	return 3 * measure.Inch
}

// lengthLimits are where a hem is usual.
func lengthLimits(k pattern.Known) (low, high measure.Length) {
	switch k.Garment {
	case pattern.Top:
		return rule.In(22), rule.In(30)
	case pattern.Tunic:
		return rule.In(26), rule.In(46)
	}
	return rule.In(26), rule.In(58)
}
