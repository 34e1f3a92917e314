package text

import "strings"

// Word is a word of the trade, explained once, in words that need no other
// explaining.
type Word struct{ Name, Says string }

// Glossary is every word that is explained, by the alphabet.
func Glossary() []Word { return append([]Word(nil), glossary...) }

// Explain finds a word, also in the plural and in any case.
func Explain(name string) (Word, bool) {
	low := strings.ToLower(strings.TrimSpace(name))
	for _, try := range []string{low, strings.TrimSuffix(low, "s"), strings.TrimSuffix(low, "es")} {
		for _, w := range glossary {
			if w.Name == try {
				return w, true
			}
		}
	}
	return Word{}, false
}

// The explanations are the trade's common meanings, written for this table;
// no source is quoted.
var glossary = []Word{
	{"allowance", "Cloth left outside the sewing line, so that there is something to sew and to let out."},
	{"armhole", "The edge round the arm. Without a sleeve it is faced or bound."},
	{"armhole depth", "How far the underarm line lies below the top line."},
	{"back length", "From the bone at the back of the neck down to the waist, along the spine."},
	{"balance line", "A thin line across a piece at the bust, the waist or the hip. It must lie level when the dress is worn."},
	{"bias", "The slant between warp and weft. Cloth stretches most along it."},
	{"bust line", "The level line across a piece at the height of the bust points."},
	{"bust point", "The highest point of the bust. The dart aims at it and ends short of it."},
	{"cap", "The small peak at the wide end of a dart. It lets the folded dart lie along the seam."},
	{"centre front", "The middle of the front. Here it lies on the fold."},
	{"centre-back line", "The middle of the back. With a zip there is a seam there, and so no fold."},
	{"chalk card", "A list of marks to make on the cloth with tape and chalk, in order, without paper."},
	{"cup", "How much fuller the bust is than the ribs below it. The dart gives the room for it."},
	{"cut line", "The line along which the scissors go. The allowance lies inside it."},
	{"dart", "A fold sewn to a point. It turns flat cloth round a part of the body."},
	{"direct block", "A bodice draft in which each line has its own length from the body. Levels are counted up from the waist."},
	{"doubt", "A note that a number is not as usual. You may keep it."},
	{"draft", "The drawing of the pattern, made step by step from the measures."},
	{"ease", "The room that a dress has more than the body, so that she can move and breathe."},
	{"facing", "A second layer that is turned in along an edge. It makes the edge clean and firm."},
	{"fisheye dart", "A dart with a point at both ends. It takes in the waist of a dress cut in one piece."},
	{"fold", "The edge where cloth lies doubled. A piece on the fold is cut once and opens to a whole."},
	{"french dart", "A dart that begins low on the side and rises to the bust."},
	{"girth", "A measure all the way round the body."},
	{"grain line", "A line drawn on a piece that must lie along the warp of the cloth."},
	{"hem", "The lower edge, turned up and sewn."},
	{"hip line", "The level line across a piece at the fullest part of the seat."},
	{"inset", "How far the shoulder is drawn in, so that a dress without sleeves lies inside the bone."},
	{"intake", "How much cloth a dart takes up at its wide end."},
	{"interfacing", "A stiff layer behind the cloth. It keeps an edge from stretching."},
	{"lay", "How the pieces lie on the cloth before they are cut."},
	{"leg", "One of the two lines of a dart. Both are sewn together, so both must be as long."},
	{"level", "A line square to the fold, as far down as the measure says."},
	{"lining", "A second dress of thin cloth, sewn inside."},
	{"middle of the armhole", "The mark half way down the armhole. The width across front or back is taken there."},
	{"mitre", "A corner where two edges run on until they meet."},
	{"nap", "Hairs or a print that look another way upside down. All pieces must then lie the same way up."},
	{"nape", "The bone that stands out at the back of the neck when she looks down."},
	{"neck base", "The line round the neck where a fine chain would lie."},
	{"neck point", "The point where the shoulder seam meets the neck."},
	{"net", "Drawn on the sewing line, without any allowance."},
	{"notch", "A short cut or mark at an edge. It meets the same mark on the other piece."},
	{"opening", "The part of a seam that is left open: for the zip, or at the hem to walk."},
	{"outline", "The closed line round a piece."},
	{"pair", "Two pieces that mirror each other, cut from doubled cloth."},
	{"peg", "How much narrower the hem is than the hip at each side seam."},
	{"pin", "A piece that is pinned stays where it is while the others are laid."},
	{"proposal", "A number worked out from her other measures, where one was not taken. It is marked, and yours to change."},
	{"quarter", "Each half of the front and of the back is a quarter of her. So a girth is divided by four."},
	{"rescue copy", "A copy of unsaved work, kept in case the power goes or the window is closed."},
	{"ring", "The whole of an edge, joined up: round the neck, or round the arm."},
	{"rule", "How a number is found from the measures, and where that way comes from."},
	{"seam", "Two edges sewn together."},
	{"selvage", "The firm edge of the cloth as it comes from the loom. It is not used."},
	{"session", "One client's file: measures, style, and what was seen at fittings."},
	{"shoulder drop", "How much lower the tip of the shoulder lies than the side of the neck."},
	{"side dart", "The dart from the side seam to the bust."},
	{"side neck", "Where the shoulder seam will meet the neck. Front and back are measured from there."},
	{"side seam", "The seam from the underarm to the hem. Front and back must be as long there."},
	{"slip", "A common mistake, told before it happens."},
	{"slit", "An opening at the hem that gives room to step."},
	{"square", "At a right angle."},
	{"stitch line", "The line on which the pieces are sewn together."},
	{"sweep", "How wide the hem is, all round."},
	{"tape step", "The smallest part of the tape in use: an eighth of an inch, or half a centimetre."},
	{"thumb", "Drafting by thumb uses few measures and rules of the trade. The measured way uses more of the tape."},
	{"tip", "The point of a dart, near the bust and a little short of it."},
	{"top line", "The line at the height of the side neck. All levels are counted down from it."},
	{"truing", "Checking that edges which meet are as long, and that lines run on smoothly, before anything is cut."},
	{"underarm", "The top of the side seam, below the arm."},
	{"underarm line", "The level line on which the width at the bust is marked."},
	{"waist line", "The level line across a piece at the waist, where she bends to the side."},
	{"walking", "Laying one seam along the other, mark by mark, to see that they match."},
	{"warp", "The threads that run along the cloth, beside the selvage. They stretch least."},
	{"weft", "The threads that run across the cloth."},
	{"widening", "How far the neck is opened along the shoulder from where the neck begins."},
	{"yoke", "A piece across the top of the back or front, with a seam below it."},
	{"zip", "The fastener in the centre back. Its length is taken from neck and hip, so that she can step in."},
}
