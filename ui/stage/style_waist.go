package stage

import (
	"slices"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/text"
)

// The choices that the waist's looseness is asked at.
var waistRows = []pattern.ChoiceID{waistShaping, "ease_waist", "side_waist_limit"}

const waistShaping pattern.ChoiceID = "waist_shaping"

// worthSewing is how much a quarter of the waist must have to spare before a
// dart is worth sewing (common practice, no source).
const worthSewing = 3 * measure.Inch / 8

// loose asks what is to become of a waist that hangs loose: it says how much,
// and what the first other way of shaping it would leave.
func (s *Style) loose(at pattern.ChoiceID) string {
	d, sheet := s.d, s.d.Sheet()
	set, ok := sheet.Setting(waistShaping)
	hers, taken := sheet.Figure(measure.WaistGirth)
	round, drawn := sheet.Girth("waist")
	if !ok || !taken || !drawn || !set.Used || !slices.Contains(waistRows, at) {
		return ""
	}
	i := slices.IndexFunc(s.choices, func(c pattern.Choice) bool { return c.ID == waistShaping })
	if i < 0 || len(s.choices[i].Options) < 2 || set.Value.Pick != s.choices[i].Options[0].Value {
		return ""
	}
	ease, _ := sheet.Setting("ease_waist")
	if (round-hers.Value-ease.Value.Length)/4 < worthSewing {
		return ""
	}
	other := s.choices[i].Options[1]
	then, ok := d.SheetOf(d.Drafted().WithStyle(waistShaping, pattern.PickValue(other.Value))).Girth("waist")
	if !ok || then >= round {
		return ""
	}
	u := d.Unit()
	return d.Tell(text.StyleLoose, u.Tape(round-hers.Value), strings.ToLower(d.Trade(other.Title)), u.Say(then-hers.Value))
}
