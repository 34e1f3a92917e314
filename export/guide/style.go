package guide

import (
	"fmt"

	"chalkfold/export/pdf"
	"chalkfold/measure"
	"chalkfold/pattern"
)

// What does not come from a seam of two whole edges: plackets and cap sleeves
// (ways of common practice, no source).

func (g *guide) has(id pattern.PieceID) bool {
	_, ok := g.sheet.Piece(id)
	return ok
}

// ofPlacket are the seams of the bands of a placket.
func ofPlacket(_ *guide, s seam) bool {
	return s.a.Piece == pattern.Placket || s.b.Piece == pattern.Placket
}

// slashed says that a placket is cut into the front and into nothing else: it
// is made while the front lies flat. One that runs through a waist seam or to
// the hem is made when these are sewn.
func slashed(g *guide) bool {
	return g.along(pattern.Front, "placket_foot") > 0
}

// openFront sews the bands to a front that is open through its waist seam or
// to the hem.
func (g *guide) openFront(list []seam) []pdf.Item {
	long := g.say(g.along(pattern.Placket, "placket"))
	if g.along(pattern.SkirtFront, "placket_foot") > 0 {
		return []pdf.Item{g.drawnAt(list, "Placket.", fmt.Sprintf("Right sides together sew a band to either side of the opening, %s long, on the stitching line beside the centre, over the waist seam; stop just at its foot in the skirt. Slash the skirt down the fold and into both corners of the foot. Fold the bands down their middle, turn them in and sew the inner edge to the seam. Lap the right one over the left and sew both ends across the foot, its little triangle with them.", long))}
	}
	return []pdf.Item{g.drawnAt(list, "Placket.", fmt.Sprintf("Turn the hem up for the width of a hand beside the front edges first. Right sides together sew a band to each front edge, %s long, over the waist seam where there is one; its lower end, turned in, comes level with the hem. Fold the bands down their middle, turn them in and sew the inner edge to the seam. The right one laps over the left.", long))}
}

func (g *guide) placket(list []seam) []pdf.Item {
	return []pdf.Item{g.drawnAt(list, "Placket.", fmt.Sprintf("Right sides together sew a band to either side of the opening, %s long, on the stitching line beside the fold; stop just at its foot. Slash the front down the fold and into both corners of the foot. Fold the bands down their middle, turn them in and sew the inner edge to the seam. Lap the right one over the left and sew both ends across the foot, its little triangle with them.",
		g.say(g.along(pattern.Placket, "placket"))))}
}

func (g *guide) buttons(_ []seam) []pdf.Item {
	holes := g.piece(pattern.Placket).Holes
	if len(holes) == 0 {
		return nil
	}
	neck, _ := g.sheet.Point(pattern.Front, "neck_centre")
	text := fmt.Sprintf("%d buttonholes along the middle of the right band, the first %s below the neck", len(holes), g.say(measure.Length(holes[0].Y-neck.Y)))
	if len(holes) > 1 {
		text += fmt.Sprintf(", %s apart", g.say(measure.Length(holes[1].Y-holes[0].Y)))
	}
	return []pdf.Item{item("Buttons.", "%s. The buttons on the left band under them.", text)}
}

// capSleeve says that a sleeve covers the shoulder end alone.
func (g *guide) capSleeve() bool {
	return g.has(pattern.Sleeve) && g.along(pattern.Sleeve, "front_seam") == 0
}

func (g *guide) capSleeves(_ []seam) []pdf.Item {
	if !g.capSleeve() {
		return nil
	}
	ends := []pattern.EdgeRef{{Piece: pattern.Sleeve, Edge: "back_cap"}, {Piece: pattern.Sleeve, Edge: "front_cap"}}
	return []pdf.Item{
		g.at(ends, "Cap sleeves, set in.", "Two rows of long stitches over the head draw in its ease. Right sides together: the clip at the top on the shoulder, the ends at the middle of the armhole in front and behind; sleeve head %s, allowance %s.",
			g.say(g.along(pattern.Sleeve, "back_cap")+g.along(pattern.Sleeve, "front_cap")), g.allowed(pattern.Sleeve, "front_cap")),
	}
}

// underCap is the facing of the armhole below a cap sleeve.
func (g *guide) underCap(f []*pattern.Piece) []pdf.Item {
	var ring measure.Length
	for _, p := range f {
		ring += p.Along("armhole")
	}
	return []pdf.Item{
		g.at(edgesOf(f, "side"), "Armhole facings, joined.", "Front to back at the side: %s, allowance %s. Press open. Finish the outer edge.", g.say(f[0].Along("side")), g.allowed(f[0].ID, "side")),
		g.at(edgesOf(f, "armhole"), "Armhole facings, sewn on.", "Right sides together below the cap sleeves, side on side, their ends over the ends of the sleeves: %s, allowance %s at the facing. %s Tack at the side.",
			g.say(ring), g.allowed(f[0].ID, "armhole"), graded),
	}
}

// ontoBand says a collar to the front neck that a band of the placket goes on
// from; false where there is none.
func (g *guide) ontoBand(s seam) (string, bool) {
	collar, front := s.a, s.b
	if collar.Piece == pattern.Front {
		collar, front = front, collar
	}
	if front.Piece != pattern.Front || !g.has(pattern.Placket) {
		return "", false
	}
	return fmt.Sprintf("%s, front %s to the front's neck %s and on over the band to the centre, allowance %s.",
		first(g.called(collar.Piece)), g.say(g.length(collar)), g.say(g.length(front)), g.allowed(collar.Piece, collar.Edge)), true
}
