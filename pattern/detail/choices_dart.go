package detail

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/rule"
)

// droopsBy is how far a dart may fall to its tip before its start is moved
// down to the level of the bust point, degrees.
const droopsBy = 4

var dartChoices = []pattern.Choice{
	{
		ID: "side_dart_below", Title: "Side dart below the underarm", Says: "Where the dart starts on the side seam.",
		Group: "Dart", Kind: pattern.KindLength, Methods: onlyMeasured,
		After: []pattern.ChoiceID{"armhole_depth", "ease_bust", "ease_waist", "side_waist_limit", "dart_tip_back", "large_cup"},
		Default: func(k pattern.Known) pattern.Default {
			d := usualLength(2)
			need := []measure.ID{
				measure.BustGirth, measure.WaistGirth, measure.BackNeckToWaist, measure.SideNeckToWaist,
				measure.SideNeckToBustPoint, measure.BustPointDistance,
			}
			if w := waits(k, need...); w != nil {
				return pattern.Default{Waits: w}
			}
			if s, _ := k.Setting("armhole_depth"); !s.Known() {
				return pattern.Default{Waits: s.Default.Waits}
			}
			in := MeasuredDart(k, rule.In(2))
			if in.Intake <= 0 || !(in.Untrued().Falls() > droopsBy) {
				return d
			}
			level := rule.BustLevel(k) - k.Length("armhole_depth") - in.Intake/2
			below := min(rule.In(4), max(rule.In(2), level.Down(rule.Eighth)))
			if below == rule.In(2) {
				return d
			}
			return pattern.Default{
				Value: pattern.LengthValue(below), GaveWay: true,
				Because: measure.Tell("From {} the dart would hang down to its tip; from {} it lies level with the bust.", rule.In(2), below),
			}
		},
		Limits: between(1.5, 4),
	},
	length("dart_tip_back", "Dart", "Dart stops short by", "How far the tip lies back from the bust point.", 1, 0.5, 2.5, pattern.Measured),
}
