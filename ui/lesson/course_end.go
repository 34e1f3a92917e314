package lesson

import (
	"chalkfold/measure"
	"chalkfold/pattern"
)

// hem: sweep, step, slit.
func hem() Lesson {
	return Lesson{
		ID: "hem", Title: "A hem to walk in", Minutes: 15, Method: pattern.Measured,
		Aim:  measure.Tell("Choose a hem and a slit by how she walks, sits and climbs."),
		Ends: measure.Tell("a slit that you can defend"),
		Pages: []Page{
			ask(step("back.hem"), "A narrow hem looks neat and stops the step. The peg says how much it comes in.").word("peg"),
			say(taken("waist_to_floor"), "The checks of her step want her height, and how high her waist is. Measure both if they are not there."),
			say(check("walking"), "Read how wide the hem is all round. That is its sweep.").word("sweep"),
			pickOne(check("walking"), "A step opens the hem like a pair of compasses. The check knows her leg and a step of {24 in}.",
				"Why does a longer skirt need more sweep?",
				yes("The legs are farther apart low down", "From the hip they open like a tent. Low down is wide."),
				no("It weighs more", "Weight does not stop a leg. Think of a tent."),
				no("It is cut from more cloth", "Only its width at the hem counts.")),
			say(moved("hem_peg"), "Peg it {1/2 in} more and read the check again. Then take it back."),
			ask(step("back.opening"), "A slit gives the step back. Below the zip some seam must stay closed.").word("slit"),
			say(moved("slit_height"), "Raise the slit until the check is content. Read what stairs would need."),
			pickOne(check("slit_height"), "The top of a slit must not take the strain. Some inches above it stay sewn.",
				"She works at a desk and takes the stairs. How high?",
				no("As high as it goes", "Higher than it needs to be is not for the office."),
				yes("What stairs need, if the seat stays covered", "Name the step you chose it for: then you can defend it."),
				no("None, she will manage", "She will tear it. Read what the check says of her step.")),
			say(check("sitting"), "When she sits, the seat spreads and the hem comes up. Read how far."),
			ask(step("back.hip"), "Ease at the hip is what she sits on. Work out the quarter with it."),
			say(check("hem_level"), "From hip to hem the side is as long as the centre. So the hem hangs level.").word("hem"),
			say(output("slip"), "Write the slip: length, sweep, slit, and why. It goes to the sewing table."),
		},
	}
}

// cloth: onto the cloth.
func cloth() Lesson {
	return Lesson{
		ID: "cloth", Title: "Onto the cloth", Minutes: 20,
		Aim:  measure.Tell("Know how much to buy, lay the pieces, and cut in order."),
		Ends: measure.Tell("the chalk card and the cutting list"),
		Pages: []Page{
			say(output("lay"), "Wash a square of {10 in} and measure it again. What it loses, all the cloth loses.").word("warp"),
			pickOne(output("lay"), "The arrow on a piece lies along the firm edge of the cloth. So all parts hang alike.",
				"A piece would fit if it were turned a little. May it?",
				no("Yes, a little", "Even a little twists when it is worn."),
				yes("No, the arrow stays along the edge", "Cloth stretches most on the slant. The piece would twist."),
				no("Only the front may", "The front hangs in plain sight. It least of all.")).word("grain line"),
			say(output("lay"), "The front lies on the fold. The back is a pair, so it lies where the cloth is double.").word("selvage"),
			pickOne(output("lay"), "Hairs, or a print that stands, have an up and a down.",
				"Such cloth is on the table. How do the pieces lie?",
				yes("All the same way up", "Turned, a part looks darker."),
				no("As they need least cloth", "Then one half looks darker than the other."),
				no("Front up, back down", "They meet at the side, and it would show.")).word("nap"),
			say(output("lay"), "Read how much to buy, and what another width would take. Then lay the big pieces first.").word("lay"),
			say(output("card"), "Mark by tape from the chalk card, each mark from the fold and the top line. Tick it off.").word("cut line"),
			say(output("guide"), "Cut the front, then the back, then the facings. Notches come last.").word("pair"),
			say(output("guide"), "Write the card and the cutting list. They are yours."),
		},
	}
}

// fitting: what was seen on the body becomes an input.
func fitting() Lesson {
	return Lesson{
		ID: "fitting", Title: "After the fitting", Minutes: 15, Method: pattern.Measured,
		Aim:  measure.Tell("Turn what you see on her into a number, and draft again."),
		Ends: measure.Tell("a session with the change and its reason"),
		Pages: []Page{
			say(moved("bust_girth"), "Change one measure by {1/4 in} and watch. All that rests on it is drawn anew."),
			pickOne(moved("bust_girth"), "Say what moved before you read it. The old line is dotted.",
				"Her bust is {1 in} more. How far does one side go out?",
				yes("{1/4 in}", "Four quarters share it."),
				no("{1 in}", "That is all round. One side of one half is a quarter."),
				no("{1/2 in}", "That is for front and back together on one side.")),
			pickOne(moved("shoulder_drop"), "First sign: folds run from the neck down to the armhole. Pin them up at the bone.",
				"Which measure is it?",
				no("Across shoulders", "It moves the bone in or out. The folds slope, so it is up or down."),
				yes("Shoulder drop, it is more", "Her bone lies lower than it was drawn."),
				no("Bust girth", "Then it would pull level across her.")),
			say(moved("shoulder_drop"), "Add half of what you pinned, since a fold holds it twice. Read what moved.").word("draft"),
			pickOne(moved("side_neck_to_waist"), "Second sign: the hem kicks up in front, and lines drag to the bust.",
				"Which measure is it?",
				yes("Front length, it is more", "The front is too short over the bust. The dart grows with it."),
				no("Dress length", "It would hang short all round, not in front alone."),
				no("Hip girth", "Then it would pull across the seat.")),
			say(moved("side_neck_to_waist"), "Give her the length. Watch the dart open, and the side stay."),
			pickOne(moved("armhole_depth"), "Third sign: the armhole shows her bra when she reaches. It lies too low.",
				"What do you change?",
				no("The bust, less", "It would be tight and still as low."),
				yes("The armhole depth, less", "The underarm comes up by what you take."),
				no("The shoulder, more", "That lifts the edge, not the arm.")),
			say(moved("armhole_depth"), "Take {1/4 in} and look at the girth of the armhole. It gets smaller too.").word("armhole depth"),
			pickOne(check("armhole_girth"), "One change at a time, then all checks again. A cure may spoil something else.",
				"A tight armhole: why not cut it lower?",
				yes("Then the dress lifts with the arm", "Raise it and hollow it in front instead."),
				no("Lower is more work", "Work is not the point. Lift your arm and think."),
				no("It shows in front", "It may, but think of what moves when she reaches.")),
			say(notes("fitting"), "Write the day, what you saw, what you changed, and why. Next time you will be glad."),
			say(output("moved"), "Save her. What moved can be printed for the sewing table.").word("session"),
		},
	}
}
