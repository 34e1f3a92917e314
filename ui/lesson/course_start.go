package lesson

import (
	"chalkfold/measure"
	"chalkfold/pattern"
)

// tape: take and write the measures of one person.
func tape() Lesson {
	return Lesson{
		ID: "tape", Title: "The tape", Minutes: 20,
		Aim:  measure.Tell("Take one person's measures, write them, and settle what looks odd."),
		Ends: measure.Tell("a body that drafts"),
		Pages: []Page{
			say(taken("bust_girth"), "Ask her to stand as she always stands, in the bra she will wear. Put the tape round her bust and type what it says."),
			pickOne(taken("bust_girth"), "An inch has eight parts on your tape. Count them from the last whole inch.",
				"The tape ends at the fifth small part after 9. What do you write?",
				no("9 5/16", "That is half as much. Count how many parts make one inch: here eight."),
				yes("9 5/8", "Five of eight parts. A centimetre tape shows it as 24.4."),
				no("9 8/5", "That is upside down. What you counted stands on top.")),
			ask(taken("waist_girth"), "Tie a string round her and let her bend to the side. Where it settles is her waist; leave it on.").word("waist line"),
			ask(taken("hip_girth"), "Look at her from the side and find the fullest part. The tape stays level and her feet close together."),
			say(taken("waist_to_hip"), "Measure down her side from the string to that level. Type it.").word("hip line"),
			ask(taken("neck_base_girth"), "Lay a thin chain round her neck, where a necklace lies. Measure the chain.").word("neck base"),
			say(taken("across_shoulders"), "Feel for the two bones where the shoulders end. Measure from bone to bone across the back."),
			ask(taken("back_neck_to_waist"), "She looks down, and a bone stands out at the back of her neck. Measure from it down to the string.").word("nape"),
			ask(taken("side_neck_to_waist"), "Start at the side of the neck, over the fullest part, down to the string. This is the front length.").word("side neck"),
			say(taken("side_neck_to_bust_point"), "From the same start measure to the bust point only. Then measure from point to point.").word("bust point"),
			say(taken("shoulder_drop"), "Hold one ruler level at the side of her neck and one upright at the shoulder bone. Where they cross, read how far the bone lies lower.").word("shoulder drop"),
			pickOne(taken("shoulder_drop"), "It is the measure most often off. {1 1/2 in} is usual, and you may take that until you have tried twice.",
				"What tells you that the drop fits her?",
				yes("The shoulder drawn from it is as long as hers", "Right: across shoulders, neck and drop make the line. Her shoulder length checks it."),
				no("The number is a round one", "Bodies are not round numbers. Hold the drawn shoulder against hers."),
				no("Both her shoulders look the same", "They may look so and still slope more. Hold the drawn shoulder against hers.")),
			pickOne(taken("hip_girth"), "A number that is far from most women is marked. It is a doubt, not a fault.",
				"83 was typed for a hip, and the tape is in inches. What now?",
				yes("Take it as centimetres", "83 cm is 32 5/8 in. One key turns it."),
				no("Type something nearer", "Never guess: the mark asks, it does not forbid. Look at the tape again."),
				no("Leave the line empty", "You have her number; it needs its unit.")).word("doubt"),
			say(output("measuring"), "All that the draft needs is there. Save her under her name."),
		},
	}
}

// back: the back by chalk, with the allowance in the figure.
func back() Lesson {
	return Lesson{
		ID: "back", Title: "The back by chalk", Minutes: 20, Method: pattern.Thumb,
		Aim:  measure.Tell("Mark a whole back on the cloth with tape and chalk."),
		Ends: measure.Tell("the chalk card of the back"),
		Pages: []Page{
			say(step("back.levels"), "Lay the cloth double, its edges to you. The back has a centre line there and no fold, for the zip.").word("centre-back line"),
			say(step("back.levels"), "Square across the top is the top line. All levels are counted down from it.").word("top line"),
			ask(step("back.levels"), "Mark the levels down the centre line: armhole, bust, waist, hip, hem. The nape lies {3/4 in} below the top line.").word("level"),
			ask(step("back.top"), "Neck point and shoulder end come from the front. The back neck is shallow, or the dress slides back."),
			ask(step("back.bust_width"), "Front and back, left and right: four parts of her. One part lies on this cloth.").word("quarter"),
			say(step("back.bust_width"), "{1 in} for the seam is in the figure here. Chalk shows where to cut, not where to sew.").word("allowance"),
			ask(step("back.armhole"), "Start square to the shoulder and end level under the arm. Draw it in one sweep.").as(Sentence).word("armhole"),
			ask(step("back.waist"), "Down to the waist, and out a quarter of it. Add the seam."),
			ask(step("back.hip"), "The same at the hip. Think before you look."),
			ask(step("back.hem"), "The hem lies straight across on this cut. Mark its end."),
			ask(step("back.side"), "Join the marks. Round the waist and the hip, rule the rest.").as(Sentence).word("side seam"),
			ask(step("back.opening"), "She must be able to walk. The seam stays open at the hem.").word("opening"),
			say(output("card"), "The back is done. Write its chalk card and take it to the table.").word("chalk card"),
		},
	}
}

// front: where the front differs, and what its dart costs.
func front() Lesson {
	return Lesson{
		ID: "front", Title: "The front and its dart", Minutes: 20, Method: pattern.Thumb,
		Aim:  measure.Tell("See where the front differs from the back, and sew a dart on paper."),
		Ends: measure.Tell("front and back whose sides meet"),
		Pages: []Page{
			say(step("front.levels"), "Now the cloth lies with its fold to you. There is no seam down the front.").word("fold"),
			ask(step("front.levels"), "Below the bust all front levels lie {1 1/2 in} lower. Remember that number."),
			ask(step("front.neck"), "The front neck is cut deeper than the back one. Mark where it meets the fold.").as(Place),
			ask(step("front.shoulder_end"), "The edge lies inside the bone, since there is no sleeve. That is the inset.").word("inset"),
			ask(step("front.bust_width"), "The same width as on the back. Try it without looking."),
			ask(step("front.armhole_mid"), "Arms swing forward, so the front is cut hollow. The mark lies inside a line straight down.").word("middle of the armhole"),
			ask(step("front.armhole"), "Draw through that mark. Level under the arm again.").as(Sentence),
			ask(step("front.dart_legs"), "Two lines run from the side to one tip. Sewn on each other they make a hollow for the bust.").word("leg"),
			pickOne(step("front.dart_legs"), "What the dart swallows at the side is its intake. Look at the two marks there.",
				"How long is the intake, and where did you hear that number?",
				no("{1 in}, the seam allowance", "That is beside it: the allowance stays outside the seam."),
				yes("{1 1/2 in}, what the front was cut longer", "The front was given that much, and the dart takes it up again."),
				no("{5 in}, how long the dart is", "That is how far it reaches in. The intake is its width at the side.")).word("intake"),
			ask(step("front.waist"), "Now waist and hip, as on the back. The levels are the low ones.").word("girth"),
			ask(step("front.side"), "Join the marks below the dart. Compare with the back.").as(Sentence),
			say(check("side_seams"), "Close the dart and lay the sides on each other. Read both lengths."),
			say(output("card"), "Front and back meet. Write both chalk cards.").word("dart"),
		},
	}
}
