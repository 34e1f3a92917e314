package guide

import (
	"chalkfold/export/leaflet"
	"chalkfold/export/pdf"
	"chalkfold/pattern"
)

// kind is one kind of work in the order of sewing.
type kind struct {
	when  func(g *guide) bool         // nil: always
	takes func(g *guide, s seam) bool // the seams it sews; nil: it sews none
	says  func(g *guide, list []seam) []pdf.Item
}

// order is the order of sewing, a row a kind of work (common practice, no
// source). A row sews those of its seams that no row before it has sewn, and is
// left out where there are none. The last row of seams takes whatever is left,
// so that none is forgotten.
var order = []kind{
	{says: (*guide).stay},
	{says: (*guide).interfaced},
	{says: (*guide).darts},
	{when: slashed, takes: ofPlacket, says: (*guide).placket},
	{takes: of("panel"), says: (*guide).panels},
	{takes: of("shoulder"), says: (*guide).shoulders},
	{when: closedLate, takes: of("waist"), says: (*guide).waist},
	{when: closedLate, takes: ofPlacket, says: (*guide).openFront},
	{when: toFacing, says: (*guide).facingLined},
	{when: byLining, says: (*guide).linedEdges},
	{when: closedLate, takes: finishing, says: (*guide).wholeFacing},
	{when: parted, takes: of("side"), says: (*guide).sides},
	{when: parted, takes: of("waist"), says: (*guide).waist},
	{takes: ofPlacket, says: (*guide).openFront},
	{when: closedEarly, takes: atCentre, says: (*guide).centres},
	{when: fromWaist, takes: of("side"), says: (*guide).sides},
	{when: fromWaist, takes: finishing, says: (*guide).waistFacing},
	{when: fromWaist, says: (*guide).waistBand},
	{takes: made, says: (*guide).makeUp},
	{takes: onNeck, says: (*guide).onNeck},
	{when: closedEarly, takes: finishing, says: (*guide).neckFacing},
	{says: (*guide).neckStrip},
	{takes: of("side"), says: (*guide).sides},
	{when: closedLate, takes: atCentre, says: (*guide).centres},
	{says: (*guide).capSleeves},
	{when: separate, says: (*guide).armholeFacing},
	{says: (*guide).armholeStrip},
	{takes: ofSleeve, says: (*guide).sleeveSeams},
	{takes: intoArmhole, says: (*guide).setIn},
	{takes: anySeam, says: (*guide).others},
	{says: (*guide).lining},
	{says: (*guide).hem},
	{says: (*guide).hemOpening},
	{says: (*guide).buttons},
	{says: (*guide).last},
}

// sewing is the order of sewing, made from what is in the draft.
func (g *guide) sewing() []pdf.Item {
	var out []pdf.Item
	if half, two := halved(g.sheet); two {
		whole := g.sheet
		h := *g
		h.sheet, g = half, &h
		out = g.leftLengths(whole)
	}
	g = g.unlined()
	left := seamsOf(g.sheet)
	for _, k := range order {
		if k.when != nil && !k.when(g) {
			continue
		}
		var mine, rest []seam
		for _, s := range left {
			if k.takes != nil && k.takes(g, s) {
				mine = append(mine, s)
			} else {
				rest = append(rest, s)
			}
		}
		if left = rest; k.takes == nil || len(mine) > 0 {
			out = append(out, k.says(g, mine)...)
		}
	}
	return out
}

// An all-in-one facing, and a lining instead of it, is sewn on while sides and centre back are open.
func closedLate(g *guide) bool {
	if byLining(g) {
		return true
	}
	for i := range g.sheet.Pieces {
		p := &g.sheet.Pieces[i]
		if finishes(p) && p.Along("neck") > 0 && p.Along("armhole") > 0 {
			return true
		}
	}
	return false
}

func closedEarly(g *guide) bool { return !closedLate(g) }

func separate(g *guide) bool { return closedEarly(g) }

// parted says that the garment has a seam at the waist: its parts are closed
// at the sides before they are joined there.
func parted(g *guide) bool {
	if closedLate(g) {
		return false
	}
	for _, s := range seamsOf(g.sheet) {
		if of("waist")(g, s) {
			return true
		}
	}
	return false
}

// putOn says that a piece is neither part of the body nor a sleeve nor a
// finishing: collar, placket, pocket, whatever comes.
func (g *guide) putOn(id pattern.PieceID) bool {
	return !g.garment(id) && !isSleeve(id) && !finishes(g.piece(id))
}

// made are seams between pieces that are put on: they are made up first.
func made(g *guide, s seam) bool { return g.putOn(s.a.Piece) && g.putOn(s.b.Piece) }

// onNeck are seams of what is put on the neck.
func onNeck(g *guide, s seam) bool {
	return g.putOn(s.a.Piece) && s.b.Edge == "neck" || g.putOn(s.b.Piece) && s.a.Edge == "neck"
}

func ofSleeve(_ *guide, s seam) bool { return isSleeve(s.a.Piece) && isSleeve(s.b.Piece) }

func intoArmhole(_ *guide, s seam) bool {
	return isSleeve(s.a.Piece) && s.b.Edge == "armhole" || isSleeve(s.b.Piece) && s.a.Edge == "armhole"
}

func anySeam(*guide, seam) bool { return true }

// drawnAt is an item with the edges of its seams drawn beside it.
func (g *guide) drawnAt(list []seam, lead, text string) pdf.Item {
	return pdf.Item{Lead: lead, Text: text, Figure: leaflet.Seam(g.sheet, refs(list)...)}
}
