package detail

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/rule"
)

// bustChoices say where the bust dart lies and what the armhole gives it.
var bustChoices = []pattern.Choice{
	{
		ID: "bust_dart", Title: "Bust dart", Says: "Where the dart lies that shapes the bust.", Group: "Dart",
		Kind: pattern.KindPick, Methods: onlyMeasured, Default: pick(SideDartPlace),
		Options: []pattern.Option{
			{Value: SideDartPlace, Title: "Side", Says: "From the side seam, below the underarm."},
			{Value: FrenchDart, Title: "French", Says: "From low on the side seam, rising to the bust."},
			{Value: ArmholeDart, Title: "Armhole", Says: "From the armhole, between its middle and the underarm."},
			{Value: ShoulderDart, Title: "Shoulder", Says: "From the middle of the shoulder."},
			{Value: NeckDart, Title: "Neck", Says: "From the neck, near the shoulder."},
			{Value: WaistDart, Title: "Waist", Says: "From a waist seam, below the bust; the waist dart joins it."},
			{Value: SplitDart, Title: "Side and waist", Says: "Shared between the side and a waist seam."},
			{Value: CentreDart, Title: "Centre front", Says: "From a seam down the centre front, level with the bust."},
		},
	},
	{
		ID: "dart_share", Title: "Share of the waist", Says: "How much of a bust dart that side and waist share lies at the waist.", Group: "Dart",
		Kind: pattern.KindPercent, Methods: onlyMeasured,
		Default: func(pattern.Known) pattern.Default {
			return pattern.Default{Value: pattern.NumberValue(pattern.KindPercent, 50), Because: measure.Tell("Half and half, unless one of them grows too small to sew.")}
		},
	},
	length("french_dart_rise", "Dart", "French dart above the waist", "Where a French dart starts, along the side above the waist.", 2, 1, 4, pattern.Measured),
	length("neck_dart_start", "Dart", "Neck dart from the shoulder", "Where a neck dart starts, along the neck from the shoulder.", 1.5, 1, 2, pattern.Measured),
	{
		ID: "armhole_pinch", Title: "Pinch at the armhole", Says: "What is taken out of the front armhole and given to the bust dart, so that it does not gape.",
		Group: "Dart", Kind: pattern.KindLength, Methods: onlyMeasured, After: []pattern.ChoiceID{"armhole_shape", "large_cup"},
		Default: usualPinch, Limits: between(0, 0.75),
	},
	length("neck_pinch", "Dart", "Pinch at the front neck", "What is taken out of each half of the front neck and given to the bust dart, so that it does not gape.", 0, 0, 0.75, pattern.Measured),
}

// armholeChoices are the shapes of the armhole.
var armholeChoices = []pattern.Choice{
	{
		ID: "armhole_shape", Title: "Armhole", Says: "Whether the armhole is plain or cut in towards the neck.", Group: "Shoulder",
		Kind: pattern.KindPick, Methods: onlyMeasured, Default: pick(plainArmhole),
		Options: []pattern.Option{
			{Value: plainArmhole, Title: "Plain", Says: "From a little inside the shoulder bone."},
			{Value: cutIn, Title: "Cut in", Says: "From near the neck; a strap will show."},
		},
	},
	length("cut_in_shoulder", "Shoulder", "Shoulder left by a cut-in armhole", "How much of the shoulder a cut-in armhole leaves beside the neck.", 1.75, 1.5, 2, pattern.Measured),
	{
		ID: "armhole_scoop", Title: "Armhole scooped", Says: "How much hollower the front armhole is cut below its middle, after a fitting.", Group: "Shoulder",
		Kind: pattern.KindPercent, Methods: onlyMeasured,
		Default: func(pattern.Known) pattern.Default {
			return pattern.Default{Value: pattern.NumberValue(pattern.KindPercent, 0), Because: measure.Tell("Only where a fitting asks for it.")}
		},
	},
}

const (
	plainArmhole = "plain"
	cutIn        = "cut_in"
)

// IsCutIn says whether the armhole is cut in towards the neck.
func IsCutIn(k pattern.Known) bool { return picked(k, "armhole_shape", plainArmhole) == cutIn }

// cutInInset is how far inside the bone the shoulder then ends: the chosen
// strap beside the widened neck.
func cutInInset(k pattern.Known, widen measure.Length) measure.Length {
	if rule.Direct(k) {
		return k.Body(measure.ShoulderLength) - widen - k.Length("cut_in_shoulder")
	}
	s := NewShoulder(rule.NeckHalf(k).Result(), rule.BoneOut(k).Result(), k.Body(measure.ShoulderDrop), 0, 0, widen)
	end := s.Neck.Add(s.Dir.Scale(k.Length("cut_in_shoulder").MM()))
	return measure.Length(s.Bone.X - end.X)
}
