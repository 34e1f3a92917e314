package detail

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/rule"
)

// A sleeve wants more of the dress that it hangs in (common practice, no
// source): its shoulder goes out to the bone, its underarm lies lower, and she
// moves her arms in it.
const (
	sleevedBust  = 3 * measure.Inch
	sleevedLower = measure.Inch / 2
	sleevedSeam  = measure.Inch / 2
)

// sleeved gives a choice another usual figure where the dress has a sleeve.
func sleeved(c pattern.Choice, with measure.Length, why string) pattern.Choice {
	usual := c.Default
	c.After = append(c.After[:len(c.After):len(c.After)], "sleeve")
	c.Default = func(k pattern.Known) pattern.Default {
		if !HasSleeve(k) {
			return usual(k)
		}
		return pattern.Default{Value: pattern.LengthValue(with), Because: measure.Tell(why)}
	}
	return c
}

// capAfter are the choices that the armhole rests on, and the sleeve.
var capAfter = []pattern.ChoiceID{
	"sleeve", "ease_upper_arm", "cap_ease", "armhole_depth", "ease_bust", "ease_waist", "side_waist_limit", "shoulder_inset", "shoulder_forward",
	"neck_widening", "armhole_scoop", "armhole_pinch", "side_dart_below", "dart_tip_back", "large_cup", "back_shoulder_ease", "back_shoulder_dart", "back_dart_length",
}

// sleeveChoices are what a sleeve is made of.
var sleeveChoices = []pattern.Choice{
	{
		ID: "sleeve", Title: "Sleeve", Says: "Whether a sleeve is set into the armhole, and how far down it goes.", Group: "Sleeve",
		Kind: pattern.KindPick, Methods: onlyMeasured, Default: pick(NoSleeve),
		Options: []pattern.Option{
			{Value: NoSleeve, Title: "None", Says: "The armhole is faced or bound."},
			{Value: CapSleeve, Title: "Cap", Says: "Over the shoulder end only; the armhole is faced below it."},
			{Value: ShortSleeve, Title: "Short", Says: "To the middle of the upper arm."},
			{Value: ThreeQuarterSleeve, Title: "Three quarter", Says: "To between elbow and wrist."},
			{Value: LongSleeve, Title: "Long", Says: "To the wrist, with a dart at the elbow."},
		},
	},
	classed(length("ease_upper_arm", "Sleeve", "Ease at the upper arm", "What the sleeve is wider than her upper arm, all round.", 2, 1.5, 3, pattern.Measured), rule.AtArm),
	length("cap_ease", "Sleeve", "Ease in the cap", "What the cap is longer than the armhole, to be eased in round the top of the arm; a crisp cloth takes less, wool more.", 1, 0, 1.75, pattern.Measured),
	{
		ID: "full_arm", Title: "Let in at the upper arm", Says: "How much of the sleeve's width is let in at a full upper arm alone: the cap keeps the height of the narrower sleeve and has more to ease in.",
		Group: "Sleeve", Kind: pattern.KindLength, Methods: onlyMeasured, After: capAfter,
		Default: fullArm, Limits: between(0, 2),
	},
	{
		ID: "cap_height", Title: "Cap height", Says: "From the underarm line of the sleeve up to its crown; left alone, it is found so that the cap has just the ease asked for.",
		Group: "Sleeve", Kind: pattern.KindLength, Methods: onlyMeasured,
		After:   append([]pattern.ChoiceID{"full_arm"}, capAfter...),
		Default: capHeight, Limits: between(3, 9),
	},
	{
		ID: "sleeve_length", Title: "Sleeve length", Says: "From the crown of the cap, at the shoulder bone, to the finished hem.",
		Group: "Sleeve", Kind: pattern.KindLength, Methods: onlyMeasured, After: []pattern.ChoiceID{"sleeve", "cap_height"},
		Default: usualSleeveLength, Limits: between(3, 26),
	},
	{
		ID: "sleeve_hem", Title: "Sleeve hem", Says: "Cloth turned up at the hem of the sleeve.", Group: "Allowances",
		Kind: pattern.KindLength, Methods: onlyMeasured, After: []pattern.ChoiceID{"sleeve"},
		Default: func(k pattern.Known) pattern.Default {
			if SleeveKind(k) == CapSleeve {
				return pattern.Default{Value: pattern.LengthValue(rule.In(0.625)), Because: measure.Tell("The hem of a cap sleeve is curved: turned narrow, it lies flat.")}
			}
			return usualLength(1.25)
		},
		Limits: between(0.375, 2),
	},
}

// capNeeds are the measurements that the height of the cap still waits for.
func capNeeds(k pattern.Known) []measure.ID {
	return waits(k, append(
		shoulderNeeds(k), measure.BustGirth, measure.WaistGirth, measure.AcrossFront, measure.AcrossBack,
		measure.BackNeckToWaist, measure.SideNeckToWaist, measure.SideNeckToBustPoint, measure.BustPointDistance, measure.UpperArmGirth,
	)...)
}

// capHeight is the height that gives the cap its ease.
func capHeight(k pattern.Known) pattern.Default {
	if !HasSleeve(k) {
		return pattern.Default{Value: pattern.LengthValue(0), Because: measure.Tell("The dress has no sleeve.")}
	}
	if w := capNeeds(k); w != nil {
		return pattern.Default{Waits: w}
	}
	if s, _ := k.Setting("armhole_depth"); !s.Known() {
		return pattern.Default{Waits: s.Default.Waits}
	}
	front, back := DressArmholes(k)
	round := measure.Length(front.Length() + back.Length())
	c, ok := SolvedCap(k, round)
	if !ok {
		return pattern.Default{
			Value:   pattern.LengthValue(measure.Length(LowestCap * round.MM()).Near(rule.Eighth)),
			Because: measure.Tell("No cap on a sleeve of {} is as short as the armhole of {}.", SleeveWidth(k).Result(), round),
		}
	}
	d := pattern.Default{
		Value: pattern.LengthValue(c.High), Sum: measure.Drawn("cap height", c.High),
		Because: measure.Tell("So high, the cap is {} longer than the armhole of {}.", c.Length()-round, round),
	}
	if wanted := SleeveWidth(k).Result(); c.Wide > wanted {
		d.GaveWay = true
		d.Because = measure.Tell("On a sleeve of {} the cap would stand too high; the sleeve is widened to {}.", wanted, c.Wide)
	}
	return d
}
