package fitting

var waistSigns = []Sign{
	{
		ID: "waist_loose", Place: WaistAndBack, Usual: quarter,
		Seen: "The waist is loose.",
		Pin:  "Pin both side seams there; measure the whole fold of one.",
		Ways: []Way{
			{Title: "Waist darts", Why: "The side may come in only so far before it pulls. What hangs loose goes into darts in front and behind.", Moves: []Move{{Input: "waist_shaping", Option: "fisheye"}}},
			{Title: "Less ease at the waist", Why: "There are two side seams, so twice the fold comes off the whole girth.", Moves: []Move{by("ease_waist", -2)}},
			{Title: "Side farther in", Why: "Half of the fold comes off each piece at the side.", Moves: []Move{by("side_waist_limit", 0.5)}},
		},
	},
	{
		ID: "waist_tight", Place: WaistAndBack, Usual: quarter,
		Seen: "The waist is tight.",
		Pin:  "Open both side seams there; measure the whole gap of one.",
		Ways: []Way{
			{Title: "More ease at the waist", Why: "There are two side seams, so twice the gap goes on the whole girth.", Moves: []Move{by("ease_waist", 2)}},
			{Title: "Side not so far in", Why: "Half of the gap goes on each piece at the side.", Moves: []Move{by("side_waist_limit", -0.5)}},
		},
	},
	{
		ID: "fold_small_of_back", Place: WaistAndBack, Usual: half,
		Seen: "Level folds lie in the small of the back.",
		Pin:  "Pin the fold out at the centre back; measure the whole of it.",
		Ways: []Way{
			{Title: "Fold taken out at the waist", Why: "A hollow back is shorter down the middle than at the sides: the fold is taken out there and runs out to nothing at the side.", Moves: []Move{by("sway_back", 1)}},
			{Title: "Back shorter", Why: "The back is longer than hers from the nape to the waist.", Moves: []Move{by("back_neck_to_waist", -1)}},
			{Title: "Centre back shaped", Why: "Her back is hollow: the centre seam comes in at the waist and follows it.", Moves: []Move{{Input: "waist_shaping", Option: "shaped_back"}}},
		},
	},
	{
		ID: "waist_low", Place: WaistAndBack, Usual: half,
		Seen: "The waist lies below hers all round.",
		Pin:  "Tie a tape round her waist; measure how much higher the dress should be narrowest.",
		Ways: []Way{{Title: "Waist higher", Why: "Back and front are both longer than hers.", Moves: []Move{by("back_neck_to_waist", -1), by("side_neck_to_waist", -1)}}},
	},
	{
		ID: "waist_high", Place: WaistAndBack, Usual: half,
		Seen: "The waist lies above hers all round.",
		Pin:  "Tie a tape round her waist; measure how much lower the dress should be narrowest.",
		Ways: []Way{{Title: "Waist lower", Why: "Back and front are both shorter than hers.", Moves: []Move{by("back_neck_to_waist", 1), by("side_neck_to_waist", 1)}}},
	},
}

var hipSigns = []Sign{
	{
		ID: "folds_above_hip", Place: HipAndSkirt, Usual: quarter,
		Seen: "Level folds lie between waist and hip: it has climbed.",
		Pin:  "Open both side seams at the hip until it drops; measure the whole gap of one.",
		Ways: []Way{
			{Title: "More ease at the hip", Why: "What is tight at the hip climbs to where she is narrower. Twice the gap goes on the whole girth.", Moves: []Move{by("ease_hip", 2)}},
			{Title: "Hip line lower", Why: "The curve is narrow where she is already wide: her fullest part lies lower.", Moves: []Move{by("waist_to_hip", 1)}},
		},
	},
	{
		ID: "hip_tight", Place: HipAndSkirt, Usual: quarter,
		Seen: "It is tight when she sits.",
		Pin:  "Open both side seams at the hip; measure the whole gap of one.",
		Ways: []Way{{Title: "More ease at the hip", Why: "A seat spreads when she sits. Twice the gap goes on the whole girth.", Moves: []Move{by("ease_hip", 2)}}},
	},
	{
		ID: "hip_loose", Place: HipAndSkirt, Usual: quarter,
		Seen: "It is wide at the hip.",
		Pin:  "Pin both side seams there; measure the whole fold of one, and let her sit.",
		Ways: []Way{{Title: "Less ease at the hip", Why: "Twice the fold comes off the whole girth.", Moves: []Move{by("ease_hip", -2)}}},
	},
	{
		ID: "hip_line_low", Place: HipAndSkirt, Usual: half,
		Seen: "The curve of the hip stands off below her fullest part.",
		Pin:  "Measure how much higher her fullest part lies.",
		Ways: []Way{{Title: "Hip line higher", Why: "The curve reaches its width where she is fullest.", Moves: []Move{by("waist_to_hip", -1)}}},
	},
	{
		ID: "hip_line_high", Place: HipAndSkirt, Usual: half,
		Seen: "The curve of the hip stands off above her fullest part.",
		Pin:  "Measure how much lower her fullest part lies.",
		Ways: []Way{{Title: "Hip line lower", Why: "The curve reaches its width where she is fullest.", Moves: []Move{by("waist_to_hip", 1)}}},
	},
	{
		ID: "step_short", Place: HipAndSkirt, Usual: 4 * half,
		Seen: "The skirt pulls when she walks.",
		Pin:  "Open the seam behind until she steps; measure how much higher it had to open.",
		Ways: []Way{
			{Title: "Opening higher", Why: "The step is as long as the hem lets it be.", Moves: []Move{by("slit_height", 1)}},
			{Title: "Hem not narrowed", Why: "A hem as wide as the hip lets her step farther without a higher opening.", Moves: []Move{{Input: "hem_peg", Nought: true}}},
		},
	},
}

var hemSigns = []Sign{
	{
		ID: "too_long", Place: Hem, Usual: 2 * half,
		Seen: "It is too long all round.",
		Pin:  "Measure how much higher the hem should be.",
		Ways: []Way{{Title: "Shorter", Why: "The hem comes up alike everywhere.", Moves: []Move{by("length", -1)}}},
	},
	{
		ID: "too_short", Place: Hem, Usual: 2 * half,
		Seen: "It is too short all round.",
		Pin:  "Measure how much lower the hem should be.",
		Ways: []Way{{Title: "Longer", Why: "The hem goes down alike everywhere.", Moves: []Move{by("length", 1)}}},
	},
	{
		ID: "hem_dips_front", Place: Hem, Usual: half,
		Seen: "The hem dips in front.",
		Pin:  "Measure from the floor how much lower it hangs there than elsewhere.",
		Ways: []Way{{Title: "Hem up in front", Why: "It is taken up at the centre and runs out towards the sides.", Moves: []Move{by("hem_level_front", 1)}}},
	},
	{
		ID: "hem_dips_sides", Place: Hem, Usual: half,
		Seen: "The hem dips at the sides.",
		Pin:  "Measure from the floor how much lower it hangs there than elsewhere.",
		Ways: []Way{{Title: "Hem up at the sides", Why: "It is taken up at the side seams, front and back alike, and runs out towards the centre.", Moves: []Move{by("hem_level_side", 1)}}},
	},
	{
		ID: "hem_dips_back", Place: Hem, Usual: half,
		Seen: "The hem dips behind.",
		Pin:  "Measure from the floor how much lower it hangs there than elsewhere.",
		Ways: []Way{{Title: "Hem up behind", Why: "It is taken up at the centre and runs out towards the sides.", Moves: []Move{by("hem_level_back", 1)}}},
	},
}
