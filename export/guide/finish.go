package guide

import (
	"fmt"
	"strings"

	"chalkfold/export/pdf"
	"chalkfold/measure"
	"chalkfold/pattern"
)

const graded = "Grade: garment 1/4 in (6 mm), facing 1/8 in (3 mm). Clip the curve every 1/2 in (12 mm) to just short of the stitches. Fold the facing away and understitch it through the allowances, close to the seam. Turn in and press, the seam rolled a little inwards."

// finishers are the facings that have an edge of that name.
func (g *guide) finishers(edge string) []*pattern.Piece {
	var out []*pattern.Piece
	for i := range g.sheet.Pieces {
		p := &g.sheet.Pieces[i]
		if finishes(p) && !isStrip(p) && p.Along(edge) > 0 {
			out = append(out, p)
		}
	}
	return out
}

func isStrip(p *pattern.Piece) bool { return strings.HasSuffix(string(p.ID), "strip") }

// round is the length of an edge of these pieces, all copies together.
func round(edge string, pieces []*pattern.Piece) measure.Length {
	var sum measure.Length
	for _, p := range pieces {
		sum += measure.Length(copies(p)) * p.Along(edge)
	}
	return sum
}

// bodies are the pieces of the garment that have an edge of that name.
func (g *guide) bodies(edge string) []*pattern.Piece {
	var out []*pattern.Piece
	for i := range g.sheet.Pieces {
		if p := &g.sheet.Pieces[i]; g.garment(p.ID) && p.Along(edge) > 0 {
			out = append(out, p)
		}
	}
	return out
}

func edgesOf(pieces []*pattern.Piece, names ...string) []pattern.EdgeRef {
	var out []pattern.EdgeRef
	for _, p := range pieces {
		for _, n := range names {
			out = append(out, pattern.EdgeRef{Piece: p.ID, Edge: n})
		}
	}
	return out
}

// neckFacing joins a neck facing and sews it on.
func (g *guide) neckFacing(_ []seam) []pdf.Item {
	f, b := g.finishers("neck"), g.bodies("neck")
	if len(f) == 0 || len(b) == 0 {
		return nil
	}
	joined := "Front facing to both back facings at the shoulders"
	if f[len(f)-1].Cut == pattern.OnFold {
		joined = "Front facing to back facing at the shoulders"
	}
	ends := ""
	if z, _, _ := g.zip(); z > 0 {
		ends = " Turn the ends under beside the zip and sew them to its tape."
	}
	return []pdf.Item{
		g.at(edgesOf(f, "shoulder"), "Neck facing, joined.", "%s: %s, allowance %s. Press open. "+g.facingEdge("outer edge")+", %s in all.",
			joined, g.say(f[0].Along("shoulder")), g.allowed(f[0].ID, "shoulder"), g.say(round("outer", f))),
		g.at(append(edgesOf(b, "neck"), edgesOf(f, "neck")...), "Neck facing, sewn on.", "Right sides together, shoulder on shoulder: neck %s, facing %s; allowance %s at the garment, %s at the facing. %s%s%s",
			g.say(round("neck", b)), g.say(round("neck", f)), g.allowed(b[0].ID, "neck"), g.allowed(f[0].ID, "neck"), g.neckOpening(f), graded, ends),
	}
}

// neckOpening says how a slit in the neck is faced.
func (g *guide) neckOpening(facing []*pattern.Piece) string {
	for _, p := range facing {
		if l := p.Along("neck_opening"); l > 0 {
			return fmt.Sprintf("Go on round the opening below the neck, %s on each side, with one stitch across its foot; cut it open between the seams to a thread short of that stitch. ", g.say(l))
		}
	}
	return ""
}

// armholeFacing makes rings and sews them on.
func (g *guide) armholeFacing(_ []seam) []pdf.Item {
	f, b := g.finishers("armhole"), g.bodies("armhole")
	if len(f) == 0 || len(b) == 0 {
		return nil
	}
	if g.capSleeve() {
		return g.underCap(f)
	}
	var hole, ring measure.Length
	for _, p := range b {
		hole += p.Along("armhole")
	}
	for _, p := range f {
		ring += p.Along("armhole")
	}
	side := g.allowed(f[0].ID, "side")
	if half := g.halfSides(); half > 0 {
		side = g.say(half) + ", as the sides are"
	}
	return []pdf.Item{
		g.at(edgesOf(f, "shoulder", "side"), "Armhole facings, joined.", "Each to a ring: shoulder %s, allowance %s; side %s, allowance %s. Press open. Finish the outer edge.",
			g.say(f[0].Along("shoulder")), g.allowed(f[0].ID, "shoulder"), g.say(f[0].Along("side")), side),
		g.at(append(edgesOf(b, "armhole"), edgesOf(f, "armhole")...), "Armhole facings, sewn on.", "Right sides together, shoulder on shoulder, side on side: armhole %s, facing %s; allowance %s at the garment, %s at the facing. %s Tack at shoulder and side.",
			g.say(hole), g.say(ring), g.allowed(b[0].ID, "armhole"), g.allowed(f[0].ID, "armhole"), graded),
	}
}

// wholeFacing is a facing of neck and armholes in one: it is sewn on while
// sides and centre back are open, and turned through the shoulders.
func (g *guide) wholeFacing(_ []seam) []pdf.Item {
	f, b := g.finishers("neck"), g.bodies("neck")
	arms := g.bodies("armhole")
	if len(f) == 0 || len(b) == 0 || len(arms) == 0 {
		return nil
	}
	return []pdf.Item{
		g.at(edgesOf(f, "shoulder"), "Facing, joined.", "Front facing to back facing at the shoulders: %s, allowance %s. Press open. "+g.facingEdge("lower edge")+", %s in all.",
			g.say(f[0].Along("shoulder")), g.allowed(f[0].ID, "shoulder"), g.say(round("outer", f))),
		g.at(append(edgesOf(b, "neck"), edgesOf(arms, "armhole")...), "Facing, sewn on.", "Sides and centre back still open. Right sides together, shoulder on shoulder: the neck, %s, and both armholes; allowance %s at the garment, %s at the facing, which is so much smaller that its seam rolls in. %s%s",
			g.say(round("neck", b)), g.allowed(b[0].ID, "neck"), g.allowed(f[0].ID, "neck"), g.neckOpening(f), "Grade: garment 1/4 in (6 mm), facing 1/8 in (3 mm). Clip the curves every 1/2 in (12 mm) to just short of the stitches. Understitch as far as the machine reaches."),
		item("Turned.", "Pull each back through its own shoulder to the right side. Press, the seams rolled a little inwards."),
		g.at(edgesOf(f, "side"), "Sides of the facing.", "Each side is sewn in one pass with the garment's: from its hem to the underarm and on through the facing, %s, allowance %s. Fold the facing up for that.",
			g.say(f[0].Along("side")), g.allowed(f[0].ID, "side")),
	}
}

func (g *guide) neckStrip(_ []seam) []pdf.Item {
	return g.strip("neck", "Neck, bound.", "Turn the ends in at the opening, or join the strip to a ring where there is none.")
}

func (g *guide) armholeStrip(_ []seam) []pdf.Item {
	return g.strip("armhole", "Armholes, bound.", "Join each strip to a ring, its seam at the side seam.")
}

// strip binds an edge with a strip cut on the bias.
func (g *guide) strip(edge, lead, ends string) []pdf.Item {
	for i := range g.sheet.Pieces {
		p := &g.sheet.Pieces[i]
		if !isStrip(p) || p.Along(edge) == 0 {
			continue
		}
		b := g.bodies(edge)
		if len(b) == 0 {
			continue
		}
		var garment measure.Length
		for _, x := range b {
			garment += x.Along(edge)
			if edge == "neck" && copies(x) > 1 {
				garment += x.Along(edge)
			}
		}
		return []pdf.Item{g.at(append(edgesOf(b, edge), pattern.EdgeRef{Piece: p.ID, Edge: edge}), lead, "The strip is %s long and %s wide, cut on the bias; the edge is %s. %s Right sides together, stretch it a little round the hollow parts, allowance %s. Trim to 1/8 in (3 mm), fold the strip over the edge to the wrong side and sew it down there. Press over something round.",
			g.say(p.Along(edge)), g.say(stripWide(p)), g.say(garment), ends, g.allowed(b[0].ID, edge))}
	}
	return nil
}

// stripWide is the width of a strip: the length of its end.
func stripWide(p *pattern.Piece) measure.Length {
	if ends := p.EdgesNamed("end"); len(ends) > 0 {
		return ends[0].Length()
	}
	return 0
}
