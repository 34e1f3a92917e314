package guide

import (
	"chalkfold/export/pdf"
	"chalkfold/measure"
	"chalkfold/pattern"
)

// fromWaist says that the garment begins at the waist.
func fromWaist(g *guide) bool { return g.sheet.Garment == pattern.Skirt }

// top is where a zip behind begins.
func (g *guide) top() string {
	if fromWaist(g) {
		return "waist"
	}
	return "neck"
}

// waistFacing finishes the waist of a skirt that is faced.
func (g *guide) waistFacing(_ []seam) []pdf.Item {
	waist := 2 * (g.along(pattern.Front, "waist") + g.along(pattern.Back, "waist"))
	f, b := g.along(pattern.FrontWaistFacing, "waist"), g.along(pattern.BackWaistFacing, "waist")
	if f == 0 || b == 0 {
		return nil
	}
	return []pdf.Item{
		g.at(both(pattern.FrontWaistFacing, pattern.BackWaistFacing, "side"), "Waist facing, joined.", "Front facing to back facing at the sides: %s, allowance %s. Press open. "+g.facingEdge("outer edge")+".",
			g.say(g.along(pattern.FrontWaistFacing, "side")), g.allowed(pattern.FrontWaistFacing, "side")),
		g.at(append(both(pattern.Front, pattern.Back, "waist"), both(pattern.FrontWaistFacing, pattern.BackWaistFacing, "waist")...), "Waist facing, sewn on.",
			"Sew a stay tape, %s long, into the waist. Right sides together, side on side: waist %s, facing %s, allowance %s. %s Turn the ends under beside the zip and sew them to its tape.",
			g.say(waist), g.say(waist), g.say(2*(f+b)), g.allowed(pattern.Front, "waist"), graded),
	}
}

// waistBand finishes the waist of a skirt that has a band.
func (g *guide) waistBand(_ []seam) []pdf.Item {
	band := g.along(pattern.WaistBand, "waist")
	if band == 0 {
		return nil
	}
	waist := 2 * (g.along(pattern.Front, "waist") + g.along(pattern.Back, "waist"))
	return []pdf.Item{g.at([]pattern.EdgeRef{{Piece: pattern.WaistBand, Edge: "waist"}}, "Waistband.",
		"Right sides together, clips on seams: waist %s, band %s, which laps by %s at the opening; allowance %s. Press the seam into the band, fold it along its middle, close the ends, turn in the other edge and sew it down from inside. Hook or button on the lap.",
		g.say(waist), g.say(band), g.say(measure.Inch), g.allowed(pattern.WaistBand, "waist"))}
}

// both is an edge that two pieces have.
func both(a, b pattern.PieceID, edge string) []pattern.EdgeRef {
	return []pattern.EdgeRef{{Piece: a, Edge: edge}, {Piece: b, Edge: edge}}
}
