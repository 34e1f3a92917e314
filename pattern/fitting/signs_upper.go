package fitting

// Which input answers which sign is common practice of the fitting room, no
// source; of a fold at a seam half goes on each of the two pieces.

var shoulderSigns = []Sign{
	{
		ID: "pull_to_armhole", Place: NeckAndShoulder, Usual: quarter,
		Seen: "Creases pull from the neck slanting down to the front of the armhole.",
		Pin:  "Pin the shoulder seam at its outer end until they are gone; measure the whole fold.",
		Ways: []Way{slopeMore},
	},
	{
		ID: "folds_to_neck", Place: NeckAndShoulder, Usual: quarter,
		Seen: "Loose folds lie from the armhole up to the neck; the shoulder end stands off.",
		Pin:  "Pin the shoulder seam at its outer end until they are gone; measure the whole fold.",
		Ways: []Way{slopeMore},
	},
	{
		ID: "strain_at_bone", Place: NeckAndShoulder, Usual: quarter,
		Seen: "It strains over the shoulder bone; folds stand out at the root of the neck.",
		Pin:  "Open the shoulder seam at its outer end until it lies; measure the whole gap.",
		Ways: []Way{{
			Title: "Shoulder end up", Why: "Her shoulder is squarer than it was drafted. Half of the gap goes on each piece, and the armhole comes up with it.",
			Moves: []Move{by("shoulder_drop", -0.5), follows("armhole_depth", -0.5)},
		}},
	},
	{
		ID: "fold_under_nape", Place: NeckAndShoulder, Usual: quarter,
		Seen: "A level fold lies under the back of the neck.",
		Pin:  "Pin the fold out behind; measure the whole of it.",
		Ways: []Way{
			{Title: "Back neck lower", Why: "The back neck stands too high and pushes the cloth down.", Moves: []Move{by("back_neck_depth", 1)}},
			{Title: "Back shorter", Why: "The back is longer than hers from the nape to the waist.", Moves: []Move{by("back_neck_to_waist", -1)}},
		},
	},
	{
		ID: "neck_off_back", Place: NeckAndShoulder, Usual: quarter,
		Seen: "The neck stands off behind.",
		Pin:  "Pin the fold out at the centre back edge; measure the whole of it.",
		Ways: []Way{{Title: "Neck closer", Why: "The neck is wider than hers. Half of the fold goes on each side.", Moves: []Move{by("neck_widening", -0.5)}}},
	},
	{
		ID: "gape_front_neck", Place: NeckAndShoulder, Usual: quarter,
		Seen: "The front neck gapes.",
		Pin:  "Pin the fold out at the centre front edge; measure the whole of it.",
		Ways: []Way{
			{Title: "Pinch into the dart", Why: "Each half of the fold is turned into the bust dart: the edge gets shorter, the neck keeps its depth.", Moves: []Move{by("neck_pinch", 0.5)}},
			{Title: "Neck closer", Why: "A closer neck has less edge to stand off. Half of the fold goes on each side.", Moves: []Move{by("neck_widening", -0.5)}},
			{Title: "Front neck higher", Why: "The deeper the neck, the more cloth it lets go above the bust.", Moves: []Move{by("front_neck_depth", -2)}},
		},
	},
	{
		ID: "neck_tight", Place: NeckAndShoulder, Usual: quarter,
		Seen: "The neck cuts in in front.",
		Pin:  "Chalk where it ought to run; measure how much lower at the centre.",
		Ways: []Way{{Title: "Front neck lower", Why: "The front neck lies above the pit of her neck.", Moves: []Move{by("front_neck_depth", 1)}}},
	},
	{
		ID: "neck_low", Place: NeckAndShoulder, Usual: half,
		Seen: "The front neck is lower than she wants.",
		Pin:  "Measure how much higher it should be at the centre.",
		Ways: []Way{{Title: "Front neck higher", Why: "The depth is a choice, and she has now seen it.", Moves: []Move{by("front_neck_depth", -1)}}},
	},
	{
		ID: "slides_off", Place: NeckAndShoulder, Usual: quarter,
		Seen: "It slides off the shoulder.",
		Pin:  "Measure how much nearer the neck the edge should lie on the shoulder.",
		Ways: []Way{
			{Title: "Neck closer", Why: "A wide neck has nothing to hold it. It is brought in along the shoulder on both pieces.", Moves: []Move{by("neck_widening", -1)}},
			{Title: "Back neck higher", Why: "A wide neck that is deep behind as well lets both shoulders go.", Moves: []Move{by("back_neck_depth", -1)}},
		},
	},
	{
		ID: "edge_over_bone", Place: NeckAndShoulder, Usual: quarter,
		Seen: "The armhole edge lies over the shoulder bone.",
		Pin:  "Chalk where the edge ought to lie on the shoulder; measure to it.",
		Ways: []Way{{Title: "Shoulder end in", Why: "A sleeveless edge lies inside the bone, or the arm pushes it up.", Moves: []Move{by("shoulder_inset", 1)}}},
	},
	{
		ID: "strap_shows", Place: NeckAndShoulder, Usual: quarter,
		Seen: "The strap shows beside the shoulder.",
		Pin:  "Measure how much wider the shoulder must be to cover it, and on which side.",
		Ways: []Way{
			{Title: "Shoulder end out", Why: "It shows at the arm: the edge is drawn in too far.", Moves: []Move{by("shoulder_inset", -1)}},
			{Title: "Neck closer", Why: "It shows at the neck: the neck is widened too far.", Moves: []Move{by("neck_widening", -1)}},
		},
	},
	{
		ID: "round_back", Place: NeckAndShoulder, Usual: half,
		Seen: "It strains over the shoulder blades, and the back of the armhole stands off.",
		Pin:  "Pin the fold at the back of the armhole up into the shoulder seam, to nothing at the blade; measure the whole of it at the seam.",
		Ways: []Way{
			{
				Title: "Dart in the back shoulder", Why: "A round back is longer over the blade than at its edges. The dart gives it a hollow there; closed, the shoulder is as long as the front's.",
				Moves: []Move{{Input: "back_shoulder", Option: "dart"}, by("back_shoulder_dart", 1)},
			},
			{Title: "Wider dart", Why: "The dart in the back shoulder takes up more.", Moves: []Move{by("back_shoulder_dart", 1)}},
			{Title: "Back shoulder eased", Why: "A little can be eased in over the blade without a dart.", Moves: []Move{by("back_shoulder_ease", 1)}},
		},
	},
	{
		ID: "shoulder_seam_behind", Place: NeckAndShoulder, Usual: quarter,
		Seen: "The shoulder seam lies behind the ridge of the shoulder.",
		Pin:  "Measure how much farther forward it should lie.",
		Ways: []Way{{Title: "Seam forward", Why: "What the back gains the front gives: the rings of neck and armhole keep their length.", Moves: []Move{by("shoulder_forward", 1)}}},
	},
	{
		ID: "shoulder_seam_before", Place: NeckAndShoulder, Usual: quarter,
		Seen: "The shoulder seam shows in front.",
		Pin:  "Measure how much farther back it should lie.",
		Ways: []Way{{Title: "Seam back", Why: "What the front gains the back gives: the rings of neck and armhole keep their length.", Moves: []Move{by("shoulder_forward", -1)}}},
	},
}

var slopeMore = Way{
	Title: "Shoulder end down",
	Why:   "Her shoulder slopes more than it was drafted. Half of the fold goes on each piece, and the armhole goes down with it.",
	Moves: []Move{by("shoulder_drop", 0.5), follows("armhole_depth", 0.5)},
}

var bustSigns = []Sign{
	{
		ID: "dart_above", Place: Bust, Usual: half,
		Seen: "The dart ends above her bust point.",
		Pin:  "Measure how much lower it should end.",
		Ways: []Way{{Title: "Bust point lower", Why: "Every dart of the front turns about the bust point, and hers lies lower.", Moves: []Move{by("side_neck_to_bust_point", 1)}}},
	},
	{
		ID: "dart_below", Place: Bust, Usual: half,
		Seen: "The dart ends below her bust point.",
		Pin:  "Measure how much higher it should end.",
		Ways: []Way{{Title: "Bust point higher", Why: "Every dart of the front turns about the bust point, and hers lies higher.", Moves: []Move{by("side_neck_to_bust_point", -1)}}},
	},
	{
		ID: "dart_inside", Place: Bust, Usual: quarter,
		Seen: "The dart points nearer the middle than her bust point.",
		Pin:  "Measure on one side how much farther out it should end.",
		Ways: []Way{{Title: "Bust points wider apart", Why: "Half of the distance from point to point lies on each side.", Moves: []Move{by("bust_point_distance", 2)}}},
	},
	{
		ID: "dart_outside", Place: Bust, Usual: quarter,
		Seen: "The dart points farther out than her bust point.",
		Pin:  "Measure on one side how much farther in it should end.",
		Ways: []Way{{Title: "Bust points closer", Why: "Half of the distance from point to point lies on each side.", Moves: []Move{by("bust_point_distance", -2)}}},
	},
	{
		ID: "dart_pokes", Place: Bust, Usual: quarter,
		Seen: "The dart ends in a point that stands up.",
		Pin:  "Unpick the end until it lies; measure how much.",
		Ways: []Way{{Title: "Dart shorter", Why: "A dart that reaches the bust point stands up there.", Moves: []Move{by("dart_tip_back", 1)}}},
	},
	{
		ID: "bust_drag", Place: Bust, Usual: half,
		Seen: "Creases drag to the bust, and the hem kicks up in front.",
		Pin:  "Cut across the front from side to side at the bust and let it open; measure the gap.",
		Ways: []Way{{Title: "Front longer, dart larger", Why: "A fuller bust takes up more length. The front gains it, and the dart takes it up again at the side.", Moves: []Move{by("side_neck_to_waist", 1)}}},
	},
	{
		ID: "bust_empty", Place: Bust, Usual: half,
		Seen: "The front is empty at the bust, or folds level below it.",
		Pin:  "Pin the fold out across the front; measure the whole of it.",
		Ways: []Way{{Title: "Front shorter, dart smaller", Why: "The front is longer than hers over the bust, and the dart larger.", Moves: []Move{by("side_neck_to_waist", -1)}}},
	},
	{
		ID: "bust_tight", Place: Bust, Usual: quarter,
		Seen: "It strains across the bust.",
		Pin:  "Open both side seams there; measure the whole gap of one.",
		Ways: []Way{{Title: "More ease at the bust", Why: "There are two side seams, so twice the gap goes on the whole girth, a quarter of it on each piece.", Moves: []Move{by("ease_bust", 2)}}},
	},
	{
		ID: "side_forward", Place: Bust, Usual: quarter,
		Seen: "The side seams swing forward at the bust; the front strains, the back is wide.",
		Pin:  "Chalk where the seam ought to run at the bust; measure how much farther back that is, on one side.",
		Ways: []Way{
			{Title: "More of the bust in front", Why: "Her bust lies in front, so the front takes more than a quarter and the back as much less; a pinch goes into the dart. The upper chest says how much: four times what one seam moves.", Moves: []Move{by("upper_chest_girth", -4)}},
			{Title: "Front and back by their own share", Why: "The quarters were asked to be equal; bust and upper chest say they are not.", Moves: []Move{{Input: "large_cup", Option: "auto"}}},
			{Title: "More ease at the bust", Why: "Where the back strains too, both want it.", Moves: []Move{by("ease_bust", 4)}},
		},
	},
	{
		ID: "bust_loose", Place: Bust, Usual: quarter,
		Seen: "It is wide at the bust.",
		Pin:  "Pin both side seams there; measure the whole fold of one.",
		Ways: []Way{{Title: "Less ease at the bust", Why: "There are two side seams, so twice the fold comes off the whole girth, a quarter of it off each piece.", Moves: []Move{by("ease_bust", -2)}}},
	},
}

var armholeSigns = []Sign{
	{
		ID: "gape_armhole", Place: Armhole, Usual: quarter,
		Seen: "The front of the armhole gapes.",
		Pin:  "Pin the fold out, from the edge to nothing at the bust; measure the whole of it at the edge.",
		Ways: []Way{{Title: "Pinch into the dart", Why: "The fold is turned into the bust dart: the edge gets shorter, the front keeps its shape.", Moves: []Move{by("armhole_pinch", 1)}}},
	},
	{
		ID: "crease_armhole", Place: Armhole, Usual: eighth,
		Seen: "It creases at the front of the armhole, where the arm meets the body.",
		Pin:  "Clip the edge until it lies; measure how far it wants to be hollowed.",
		Ways: []Way{
			{Title: "Armhole hollower", Why: "The front is hollower than the back below the middle; lowering it would not cure that.", Moves: []Move{{Input: "armhole_scoop", PerIn: 60}}},
			{Title: "Across front narrower", Why: "It is tight up to the middle of the armhole: her front is narrower there.", Moves: []Move{by("across_front", -2)}},
		},
	},
	{
		ID: "armhole_low", Place: Armhole, Usual: half,
		Seen: "The armhole is low: the side of the bra shows.",
		Pin:  "Measure how much higher the underarm should lie.",
		Ways: []Way{{Title: "Underarm higher", Why: "The armhole of a sleeveless dress comes close under the arm.", Moves: []Move{by("armhole_depth", -1)}}},
	},
	{
		ID: "armhole_high", Place: Armhole, Usual: quarter,
		Seen: "The armhole cuts in under the arm.",
		Pin:  "Measure how much lower the underarm should lie.",
		Ways: []Way{{Title: "Underarm lower", Why: "The underarm lies above the fold of her arm.", Moves: []Move{by("armhole_depth", 1)}}},
	},
	{
		ID: "sleeve_tight", Place: Armhole, Usual: half,
		Seen: "The sleeve drags across the upper arm.",
		Pin:  "Open the seam of the sleeve at the upper arm; measure the whole gap.",
		Ways: []Way{
			{
				Title: "Let in at the upper arm", Why: "A full upper arm wants width there alone: the cap keeps its height and is eased in more.",
				Moves: []Move{by("ease_upper_arm", 1), by("full_arm", 1)},
			},
			{Title: "Wider sleeve, lower cap", Why: "The whole sleeve is wider, and its cap lies lower: more freedom, and folds when the arm hangs.", Moves: []Move{by("ease_upper_arm", 1)}},
		},
	},
	{
		ID: "sleeve_folds", Place: Armhole, Usual: quarter,
		Seen: "The sleeve lies in slanting folds from the crown when the arm hangs.",
		Pin:  "Let the crown out of the armhole until they are gone; measure how much higher it stands.",
		Ways: []Way{{Title: "Cap higher", Why: "What is let in at the upper arm alone leaves the sleeve as wide and lifts its cap.", Moves: []Move{by("full_arm", 1)}}},
	},
	{
		ID: "back_strains", Place: Armhole, Usual: quarter,
		Seen: "It strains across the back when she reaches forward.",
		Pin:  "Measure on one side how much wider the back should be at the middle of the armhole.",
		Ways: []Way{{Title: "Across back wider", Why: "Half of the width lies on each side.", Moves: []Move{by("across_back", 2)}}},
	},
	{
		ID: "back_folds", Place: Armhole, Usual: quarter,
		Seen: "Upright folds lie at the back of the armhole.",
		Pin:  "Pin the fold of one side out; measure the whole of it.",
		Ways: []Way{{Title: "Across back narrower", Why: "There is a fold on each side, so twice of it comes off the width.", Moves: []Move{by("across_back", -2)}}},
	},
}
