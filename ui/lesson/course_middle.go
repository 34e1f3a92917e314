package lesson

import (
	"chalkfold/measure"
	"chalkfold/pattern"
)

// longer: why the front is longer than the back.
func longer() Lesson {
	return Lesson{
		ID: "longer", Title: "Why the front is longer", Minutes: 10, Method: pattern.Measured,
		Aim:  measure.Tell("Move her front length and watch the dart open and close."),
		Ends: measure.Tell("the reason in your own words, kept with the client"),
		Pages: []Page{
			ask(step("front.levels"), "By tape the front is not {1 1/2 in} longer. It is as much longer as she is."),
			say(moved("side_neck_to_waist"), "Make her front length {1/4 in} more. Watch the dart."),
			pickOne(moved("side_neck_to_waist"), "Go up and down a few times. Look at the waist of front and back.",
				"What does the side seam of the front do?",
				no("It grows with the front length", "Close the dart in your mind: what was added is folded away again."),
				yes("It stays as long as the back's", "Whatever the front gains, the dart takes up at the side."),
				no("It gets shorter", "The dart takes only what was added. Front and back stay equal.")),
			say(moved("side_neck_to_waist"), "Take away until the dart is small. Below {3/8 in} it is not worth sewing."),
			say(moved("side_neck_to_waist"), "Now add {2 in} and read the checks. Beyond {2 1/2 in} one dart looks pointed."),
			ask(step("front.dart_legs"), "A good dart points at the bust and stops short of it. Where is its tip?").as(Place).word("tip"),
			pickOne(moved("side_neck_to_bust_point"), "Lower the bust point by {1 in}. See where the dart goes.",
				"A dart falls to its tip. What helps?",
				yes("Start it lower on the side", "Then it points level, or up a little."),
				no("Make it longer", "It would still fall, and stand up at the bust."),
				no("Make it wider", "Its width is what she needs. Only its place is free.")),
			ask(step("front.dart_cap"), "Fold the dart on paper and cut along the side. The small peak is its cap.").as(Sentence).word("cap"),
			say(notes("longer"), "Write why the front is longer, in your words. It is kept with the client."),
		},
	}
}

// methods: the same body by both methods.
func methods() Lesson {
	return Lesson{
		ID: "methods", Title: "Measured, not by thumb", Minutes: 15, Method: pattern.Measured,
		Aim:  measure.Tell("Lay two drafts of one body on each other, and see what the tape adds."),
		Ends: measure.Tell("the comparison in numbers"),
		Pages: []Page{
			say(compare(pattern.Thumb), "Here are both drafts of her. Dotted is by thumb, solid is by tape.").word("thumb"),
			pickOne(compare(pattern.Thumb), "By thumb the seam is in the figure. By tape the draft is net, on the sewing line.",
				"The thumb draft looks wider. Is the dress wider?",
				no("Yes, by four seams", "Take the seams off first: they are not worn."),
				yes("No, the seams have to come off first", "Sewn {1 in} in, it has no ease at all."),
				no("Yes, it has more ease", "It has none. What looks like ease is the seam.")).word("net"),
			ask(step("front.bust_width"), "By tape, ease is added and then shared by four. Work out her quarter.").word("ease"),
			ask(step("back.neck_base"), "By thumb every neck starts {3 in} out. By tape it is her own neck."),
			ask(step("back.bone_end"), "By thumb every shoulder drops {1 in}. By tape it is her slope."),
			ask(step("back.armhole_mid"), "By thumb front and back have one hollow. By tape the back keeps room to reach."),
			ask(step("front.levels"), "By thumb the dart is {1 1/2 in} on everyone. By tape it is hers."),
			pickOne(compare(pattern.Thumb), "Walk along the two outlines. Say where they part most.",
				"Whom does the thumb draft fit worst?",
				yes("One whose front and back differ a lot", "The thumb gives all the same dart. A full or a flat front needs another."),
				no("One of average build", "She is the one that the rules were made from."),
				no("One who is tall", "Height goes into the length, and that is measured in both.")),
			say(compare(pattern.Direct), "Now dotted is a third way, the direct block. Each line has its own length, and the back is only as wide as her chest.").word("direct block"),
			say(check("balance"), "Read this check in both drafts. It tells how far front and back lie apart."),
			say(compare(pattern.Thumb), "Write on the pattern where the two part most, and by how much. Keep it so."),
		},
	}
}

// facings: edges that meet.
func facings() Lesson {
	return Lesson{
		ID: "facings", Title: "Edges that meet", Minutes: 15, Method: pattern.Measured,
		Aim:  measure.Tell("Draw facings that fit the edges they finish."),
		Ends: measure.Tell("four facings"),
		Pages: []Page{
			say(step("front.neck"), "A neck edge cannot stay raw. A second layer is sewn on and turned in.").word("facing"),
			ask(step("front.neck"), "First the edge itself must be final. Where does the neck meet the fold?").as(Place),
			ask(step("front.neck_facing"), "Trace the neck, then mark the width. How wide may it be at the shoulder?"),
			pickOne(step("front.neck_facing"), "The neck is changed after the facing was traced. Think it through.",
				"What happens when they are sewn?",
				yes("One edge is longer and makes folds", "So a facing is traced last, from the finished edge."),
				no("Nothing, cloth stretches", "It does, and then it gapes for good."),
				no("The seam takes it up", "A seam is as wide everywhere. It takes nothing up.")),
			pickOne(step("front.neck_facing"), "A facing gets {1/16 in} less allowance at the neck. So its edge ends a little inside.",
				"What is that good for?",
				no("It saves cloth", "Too little to count. Look which layer must not show."),
				yes("The seam rolls inwards", "The facing pulls the seam to the inside, and stays hidden."),
				no("It is easier to cut", "It takes one more line. Look which layer must not show.")),
			ask(step("back.neck_facing"), "Now the back. The facing meets its other half at the zip."),
			ask(step("front.armhole_facing"), "An armhole facing is of one width all along. It must clear the neck facing.").as(Sentence),
			ask(step("back.armhole_facing"), "The same behind. Front and back join to a ring.").as(Sentence).word("ring"),
			say(check("facing_fit"), "Walk each facing along its edge. Read both lengths.").word("interfacing"),
			ask(fault("facing_early"), "Someone traced a facing too early. Guess before you run the checks."),
			say(output("svg"), "Four facings are ready. Write them with the rest."),
		},
	}
}

// trueing: check, find, cure. (truing is the room of the checks.)
func trueing() Lesson {
	return Lesson{
		ID: "truing", Title: "Truing", Minutes: 20, Method: pattern.Measured,
		Aim:  measure.Tell("Walk the seams, read what the checks say, and cure what was spoilt on purpose."),
		Ends: measure.Tell("a clean check"),
		Pages: []Page{
			say(check("side_seams"), "Edges that are sewn together must be as long. Looking for that is truing.").word("truing"),
			say(check("shoulder_seams"), "Lay the shoulders together and walk along them. The back may be {1/8 in} longer.").word("walking"),
			say(check("neck_join"), "Look at the neck where the shoulders meet. It must run on without a peak."),
			say(check("centre_square"), "Half is drawn, so a slant at the fold becomes a point. Check the square ends.").word("square"),
			pickOne(check("side_seams"), "A finding names two lengths before it names a fault. Then it says what to change.",
				"One check says advise, none says fail. May you cut?",
				no("No, never", "Advice is for you to weigh. A fail is not."),
				yes("Yes, when you have read it and know why", "Some bodies lie outside the usual. Read, decide, and note it."),
				no("Yes, advice means nothing", "It names two lengths. Read them first.")),
			ask(fault("dart_legs"), "Now spoilt drafts. Look first, then guess which check will tell."),
			ask(fault("front_short"), "Another one. Lay the sides on each other in your mind."),
			ask(fault("inset_level"), "Look at the two shoulders. One slopes more."),
			ask(fault("hem_plain"), "Fold up the hem in your mind. Does it reach?"),
			ask(fault("allowance_twice"), "Look at the distance of the two outlines. It should be one width."),
			ask(fault("neck_wide"), "The last one. What would she wear under it?"),
			say(moved("neck_widening"), "Spoil one yourself: widen the neck until a check speaks. Then try its cure."),
			say(moved("hem_peg"), "Now peg the hem far too much. Read the cure, try it, check again."),
			say(check("shoulder_left"), "All checks pass, or you know why not. Now it may be cut.").word("notch"),
		},
	}
}
