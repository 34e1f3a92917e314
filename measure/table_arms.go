package measure

var armRows = []Measurement{
	{
		ID: UpperArmGirth, Term: "upper-arm girth", Standard: "ISO 8559-1:2017 5.3.16", Short: "upper arm", Group: groupArm,
		Plain:     "Upper arm, all round",
		Landmarks: "midway between shoulder bone and elbow",
		How:       "The arm hangs loose.",
		Slip:      "The muscle is tight.",
		Low:       9 * Inch, High: 18 * Inch, RangeSource: fromMemory,
		UsefulFor: forDress,
	},
	{
		ID: ElbowGirth, Term: "elbow girth", Short: "elbow", Group: groupArm,
		Plain:     "Elbow, all round, bent",
		Landmarks: "over the tip of the bent elbow",
		How:       "Bend the arm to a right angle first.",
		Slip:      "Taken with the arm straight.",
	},
	{
		ID: WristGirth, Term: "wrist girth", Standard: "ISO 8559-1:2017 5.3.19", Short: "wrist", Group: groupArm,
		Plain:     "Wrist, all round",
		Landmarks: "over the knob on the side of the little finger",
		How:       "Keep one finger under the tape.",
		Slip:      "Taken above the knob.",
		Low:       13.8 * Centimetre, High: 17.4 * Centimetre, RangeSource: survey,
	},
	{
		ID: HandGirth, Term: "hand girth", Short: "hand", Group: groupArm,
		Plain:     "Hand, all round, thumb folded in",
		Landmarks: "over the knuckles and the folded thumb",
		How:       "Fold the hand as if to slip it through a cuff.",
		Slip:      "The thumb is left out.",
	},
	{
		ID: ShoulderToElbow, Term: "upper arm length", Short: "shoulder to elbow", Group: groupArm,
		Plain:     "Shoulder bone to elbow",
		Landmarks: "shoulder bone to the tip of the elbow",
		How:       "The arm is bent a little.",
		Slip:      "Started at the neck.",
		Low:       27.1 * Centimetre, High: 35.2 * Centimetre, RangeSource: survey,
	},
	{
		ID: ArmLength, Term: "outer arm length", Standard: "ISO 8559-1:2017 5.7.8", Short: "arm length", Group: groupArm,
		Plain:     "Shoulder bone over the elbow to the wrist",
		Landmarks: "shoulder bone, tip of the elbow, knob of the wrist",
		How:       "The arm is bent a little. Follow its outer side.",
		Slip:      "Taken along the inner side.",
		Low:       47.8 * Centimetre, High: 61.1 * Centimetre, RangeSource: surveyStraight,
	},
	{
		ID: BackNeckToWrist, Term: "back neck point to wrist length", Standard: "ISO 8559-1:2017 5.4.17", Short: "back neck to wrist", Group: groupArm,
		Plain:     "Back of the neck over shoulder and elbow to the wrist",
		Landmarks: "back neck bone, shoulder bone, tip of the elbow, knob of the wrist",
		How:       "The arm is bent a little. Keep the tape on each bone.",
		Slip:      "The tape cuts the corner at the shoulder.",
	},
}
