package lesson

import (
	"chalkfold/measure"
	"chalkfold/pattern"
)

// dart: the bust dart turned about the bust point to every place there is.
func dart() Lesson {
	return Lesson{
		ID: "dart", Title: "A dart goes round", Minutes: 15, Method: pattern.Measured,
		Aim:  measure.Tell("Turn the dart about the bust point, and see what stays and what grows."),
		Ends: measure.Tell("the place of her dart, kept with her"),
		Pages: []Page{
			say(turn("side"), "The bust dart lies in the side. Its lines run to the bust point, and there they make an angle."),
			pickOne(turn("side"), "Close it on paper, and cut from another edge to the bust point. There it opens again.",
				"What stays as it was?",
				no("Its width at the edge", "Go out from the bust point: the legs drift apart. So a far edge opens wide."),
				yes("Its angle at the bust point", "What lies between turns as one, so the angle is handed on whole."),
				no("The length of its legs", "They reach to the edge, and each edge lies elsewhere.")),
			say(turn("french"), "A French dart comes from low on the side. Its way to the bust point is longer, so it opens wider.").word("french dart"),
			ask(turn("shoulder"), "From the middle of the shoulder it points straight down. How wide does it open there?"),
			ask(turn("neck"), "From the neck it holds an edge close that would stand off. The angle is the same, the way is another."),
			pickOne(turn("armhole"), "From the armhole it takes out what would gape there.",
				"It is not so wide as in the shoulder. Why?",
				yes("The armhole lies nearer to the bust point", "One angle, and a shorter way out."),
				no("It takes less of the bust", "It takes all of it: the angle is the same."),
				no("The rest is left as ease", "No cloth comes or goes. The closed front is as large wherever the dart lies.")),
			say(turn("waist"), "From the waist it needs a seam to end in. One dart shapes bust and waist."),
			pickOne(turn("side_and_waist"), "Side and waist may share it. Each then has a part of the angle.",
				"What is that good for?",
				no("It saves cloth", "The front is as large as before. Think of how a large dart looks."),
				yes("Two small darts point less", "A large dart makes a sharp tip. Two of half the angle are softer."),
				no("It gives room at the waist", "The waist is as wide when both are sewn.")),
			pickOne(turn("centre_front"), "From the centre it runs level to the bust. All above it turns and leans out.",
				"May this front lie on the fold?",
				no("Yes, as ever", "A fold is straight. Look at the centre above the dart."),
				no("Yes, with the dart sewn first", "It is cut before it is sewn, and then the edge leans."),
				yes("No, it needs a seam", "An edge that leans cannot lie on a fold. It is cut as a pair.")),
			pickOne(turn("shoulder"), "It is cut and turned at the bust point. But it is not sewn so far.",
				"Why does the tip stop short?",
				yes("It would stand up on the bust", "She is round there, and a tip is sharp. They must not meet."),
				no("To make it less wide", "At the edge it is as wide as before."),
				no("To save thread", "Think of what shows on her when she wears it.")),
			say(choice("bust_dart"), "Now choose where her dart shall lie. Waist and centre front want their seam as well."),
		},
	}
}
