package measure

var girthRows = []Measurement{
	{
		ID: UpperChestGirth, Term: "upper chest girth", Short: "upper chest", Group: groupGirths,
		Plain:     "Chest, all round above the bust",
		Landmarks: "close under the arms, above the fullest part",
		How:       "Slide the tape up under both arms. It may lie a little higher at the back.",
		Slip:      "The tape slips down onto the bust.",
		UsefulFor: forDress,
	},
	{
		ID: BustGirth, Term: "bust girth", Standard: "ISO 8559-1:2017 5.3.4", Short: "bust", Group: groupGirths,
		Plain:     "Bust, all round at the fullest",
		Landmarks: "level of the bust points",
		How:       "She wears her usual bra and breathes out gently. Keep the tape level, look at it in a mirror.",
		Slip:      "The tape slips down at the back.",
		Low:       78.4 * Centimetre, High: 116.0 * Centimetre, RangeSource: survey,
		NeededFor: forDress,
	},
	{
		ID: UnderBustGirth, Term: "under bust girth", Standard: "ISO 8559-1:2017 5.3.8", Short: "under bust", Group: groupGirths,
		Plain:     "Ribs, all round just below the bust",
		Landmarks: "level just under the breasts",
		How:       "Keep the tape snug and level.",
		Slip:      "Taken over the lower part of the bust.",
	},
	{
		ID: WaistGirth, Term: "waist girth", Standard: "ISO 8559-1:2017 5.3.10", Short: "waist", Group: groupGirths,
		Plain:     "Waist, all round",
		Landmarks: "midway between the lowest rib and the top of the hip bone",
		How:       "Tie a string there and leave it on: the lengths to the waist end at it.",
		Slip:      "Taken at the navel, which is lower, or with the belly drawn in.",
		Low:       55 * Centimetre, High: 140 * Centimetre, RangeSource: fromMemory,
		NeededFor: forDress,
	},
	{
		ID: TopHipGirth, Term: "top hip girth", Standard: "ISO 8559-1:2017 5.3.12", Short: "top hip", Group: groupGirths,
		Plain:     "High hip, all round",
		Landmarks: "midway between the waist and the hip line",
		How:       "Keep the tape level over the belly.",
		Slip:      "Taken at the hip line.",
		UsefulFor: forDress,
	},
	{
		ID: HipGirth, Term: "hip girth", Standard: "ISO 8559-1:2017 5.3.13", Short: "hip", Group: groupGirths,
		Plain:     "Hip, all round at the fullest",
		Landmarks: "level where the seat stands out most, seen from the side",
		How:       "Feet together. Try 7, 8 and 9 inches (18, 20, 23 cm) below the waist and keep the largest.",
		Slip:      "Taken too high.",
		Low:       86.7 * Centimetre, High: 120.6 * Centimetre, RangeSource: survey,
		NeededFor: forDress,
	},
}
