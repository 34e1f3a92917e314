package measure

var widthRows = []Measurement{
	{
		ID: AcrossFront, Term: "across front width", Short: "across front", Group: groupWidths,
		Plain:     "Across the front, arm to arm",
		Landmarks: "arm crease to arm crease, half-way down the armhole",
		How:       "Arms down. Stop at the crease on each side.",
		Slip:      "Taken too low, where the bust makes it wider, or out onto the arm.",
		NeededFor: forDress,
	},
	{
		ID: AcrossBack, Term: "across back width", Short: "across back", Group: groupWidths,
		Plain:     "Across the back, arm to arm",
		Landmarks: "arm crease to arm crease, half-way between shoulder bone and armpit",
		How:       "Arms down and loose. Stop at the crease on each side.",
		Slip:      "Her arms are forward, which makes the back wider.",
		NeededFor: forDress,
	},
	{
		ID: ArmscyeGirth, Term: "armscye girth", Short: "armscye", Group: groupWidths,
		Plain:     "Round the arm at the shoulder",
		Landmarks: "shoulder bone, down the front, under the arm, up the back",
		How:       "Arm down, tape close but not tight. It proves the armhole of the draft.",
		Slip:      "Taken with the arm lifted.",
		Low:       14 * Inch, High: 20 * Inch, RangeSource: fromMemory,
		UsefulFor: forDress,
	},
	{
		ID: SideWaistLength, Term: "side waist length", Short: "side length", Group: groupWidths,
		Plain:     "Armpit down to the waist",
		Landmarks: "1 inch (2.5 cm) below the armpit crease to the waist string, at the side",
		How:       "Slide a ruler up under the arm, leave a thumb of room, measure down.",
		Slip:      "Started in the armpit itself.",
	},
}
