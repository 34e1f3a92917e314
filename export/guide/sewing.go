package guide

import (
	"fmt"
	"strings"

	"chalkfold/export/leaflet"
	"chalkfold/export/pdf"
	"chalkfold/measure"
	"chalkfold/pattern"
)

// sewing is the order of sewing, made from what is in the draft. The order
// itself is common practice, no source.
func (g *guide) sewing() []pdf.Item {
	var out []pdf.Item
	for _, part := range []func() []pdf.Item{
		g.stay, g.interfaced, g.darts, g.shoulders, g.centreBack, g.neckFacing, g.sides, g.armholeFacing, g.hem, g.last,
	} {
		out = append(out, part()...)
	}
	return out
}

func item(lead, text string, args ...any) pdf.Item {
	return pdf.Item{Lead: lead, Text: fmt.Sprintf(text, args...)}
}

// at is a step with the edges that it sews drawn beside it.
func (g *guide) at(edges []pattern.EdgeRef, lead, text string, args ...any) pdf.Item {
	i := item(lead, text, args...)
	i.Figure = leaflet.Seam(g.sheet, edges...)
	return i
}

// pairs are edges that front and back both have.
func pairs(names ...string) []pattern.EdgeRef { return facings(pattern.Front, pattern.Back, names...) }

func facings(a, b pattern.PieceID, names ...string) []pattern.EdgeRef {
	var out []pattern.EdgeRef
	for _, id := range []pattern.PieceID{a, b} {
		for _, n := range names {
			out = append(out, pattern.EdgeRef{Piece: id, Edge: n})
		}
	}
	return out
}

func (g *guide) piece(id pattern.PieceID) *pattern.Piece {
	if p, ok := g.sheet.Piece(id); ok {
		return p
	}
	return &pattern.Piece{}
}

// along is the length of a named edge of a piece.
func (g *guide) along(id pattern.PieceID, edge string) measure.Length { return g.piece(id).Along(edge) }

// allowed are the allowances of a named edge, each width once.
func (g *guide) allowed(id pattern.PieceID, edge string) string {
	var out []string
	for _, e := range g.piece(id).EdgesNamed(edge) {
		w := g.say(e.Allowance)
		known := false
		for _, o := range out {
			known = known || o == w
		}
		if !known {
			out = append(out, w)
		}
	}
	return strings.Join(out, " and ")
}

func (g *guide) stay() []pdf.Item {
	neck, arm := g.along(pattern.Front, "neck")+g.along(pattern.Back, "neck"), g.along(pattern.Front, "armhole")+g.along(pattern.Back, "armhole")
	if neck == 0 && arm == 0 {
		return nil
	}
	return []pdf.Item{g.at(pairs("neck", "armhole"), "Stay-stitch.", "Neck (%s in all) and both armholes (%s each), 1/8 in (3 mm) inside the seam, from the shoulder to the middle, through one layer.", g.say(2*neck), g.say(arm))}
}

func (g *guide) interfaced() []pdf.Item {
	var names []string
	for i := range g.sheet.Pieces {
		for _, a := range g.sheet.Pieces[i].Also {
			if a == "interfacing" {
				names = append(names, strings.ToLower(g.sheet.Pieces[i].Title))
			}
		}
	}
	var out []pdf.Item
	if len(names) > 0 {
		out = append(out, item("Interface.", "Fuse the interfacing, cut net, to the wrong side of: %s. Try iron and damp cloth on a scrap first.", strings.Join(names, ", ")))
	}
	if z, _ := g.zip(); z > 0 {
		out = append(out, item("Zip strips.", "Fuse a strip 1 in (2.5 cm) wide and %s long to the wrong side of each centre back allowance, from the neck down.", g.say(z)))
	}
	return out
}

func (g *guide) darts() []pdf.Item {
	var out []pdf.Item
	for i := range g.sheet.Pieces {
		p := &g.sheet.Pieces[i]
		both := ""
		if p.Cut == pattern.OnFold || p.Cut == pattern.Pair {
			both = " on both sides"
		}
		for _, d := range p.Darts {
			text := fmt.Sprintf("%s%s: legs %s long, takes up %s at the seam. Fold leg on leg, sew from the edge to the tip, run off and knot.", p.Title, both, g.say(d.Leg), g.say(d.Intake))
			if d.Intake > measure.Inch {
				text += " Trim it inside to the width of an allowance and press it open as far as it goes."
			}
			if d.Pressed != "" {
				text += " Press it " + d.Pressed + "."
			}
			out = append(out, pdf.Item{Lead: capital(d.Name) + ".", Text: text, Figure: leaflet.Seam(g.sheet, pattern.EdgeRef{Piece: p.ID, Edge: leaflet.DartEdge})})
		}
	}
	return out
}

func capital(s string) string {
	if s == "" {
		return "Dart"
	}
	return strings.ToUpper(s[:1]) + s[1:]
}

func (g *guide) shoulders() []pdf.Item {
	f, b := g.along(pattern.Front, "shoulder"), g.along(pattern.Back, "shoulder")
	if f == 0 || b == 0 {
		return nil
	}
	text := fmt.Sprintf("Front to back, right sides together: front %s, back %s, allowance %s. Sew a stay tape as long as the seam into it.", g.say(f), g.say(b), g.allowed(pattern.Front, "shoulder"))
	if d := b - f; g.say(d) != "0" && d > 0 {
		text += " Ease the back in by " + g.say(d) + "."
	}
	return []pdf.Item{{Lead: "Shoulders.", Text: text + " Press open.", Figure: leaflet.Seam(g.sheet, pairs("shoulder")...)}}
}

// zip is the length of the zip's opening, from the neck to its end, and the
// level of its end; zero where the draft has none.
func (g *guide) zip() (long measure.Length, end float64) {
	neck, ok := g.sheet.SewnPoint(pattern.Back, "neck_centre")
	at, known := g.sheet.SewnPoint(pattern.Back, "zip_end")
	if !ok || !known || at.Y <= neck.Y {
		return 0, 0
	}
	return measure.Length(at.Y - neck.Y), at.Y
}

func (g *guide) centreBack() []pdf.Item {
	p := g.piece(pattern.Back)
	edges := p.EdgesNamed("centre_back")
	if len(edges) == 0 {
		return nil
	}
	// Of two parts the opening comes first on the ring, the zip's after it.
	allowance := g.say(edges[len(edges)-1].Allowance)
	long, end := g.zip()
	seam := p.Along("centre_back")
	if top, ok := g.sheet.SewnPoint(pattern.Back, "slit_top"); ok && long > 0 {
		seam = measure.Length(top.Y - end)
	} else if long > 0 {
		seam -= long
	}
	centre := []pattern.EdgeRef{{Piece: pattern.Back, Edge: "centre_back"}}
	out := []pdf.Item{g.at(centre, "Centre back seam.", "Sew from the top of the hem opening up to the end of the zip: %s, allowance %s. Back-stitch both ends. Baste the part above for the zip. Press open.", g.say(seam), allowance)}
	if long > 0 {
		text := fmt.Sprintf("The opening is %s from the neck seam down, allowance %s.", g.say(long), allowance)
		if z := g.sheet.Length("zip_length"); z > 0 {
			text += fmt.Sprintf(" Take a zip of %s", g.say(z))
			if z > long {
				text += ", shortened to fit"
			}
			text += "."
		}
		out = append(out, pdf.Item{Lead: "Zip.", Text: text + " Lay it in under the seam, its top a little below the neck seam, sew both sides from the bottom up. Open the basting, try it, press from the wrong side."})
	}
	return out
}

const finishing = "Grade: garment 1/4 in (6 mm), facing 1/8 in (3 mm). Clip the curve every 1/2 in (12 mm) to just short of the stitches. Fold the facing away and understitch it through the allowances, close to the seam. Turn in and press, the seam rolled a little inwards."

func (g *guide) neckFacing() []pdf.Item {
	f, b := g.along(pattern.FrontNeckFacing, "neck"), g.along(pattern.BackNeckFacing, "neck")
	if f == 0 && b == 0 {
		return nil
	}
	garment := 2 * (g.along(pattern.Front, "neck") + g.along(pattern.Back, "neck"))
	return []pdf.Item{
		g.at(facings(pattern.FrontNeckFacing, pattern.BackNeckFacing, "shoulder"), "Neck facing, joined.", "Front facing to both back facings at the shoulders: %s, allowance %s. Press open. Finish the outer edge, %s in all.",
			g.say(g.along(pattern.FrontNeckFacing, "shoulder")), g.allowed(pattern.FrontNeckFacing, "shoulder"),
			g.say(2*(g.along(pattern.FrontNeckFacing, "outer")+g.along(pattern.BackNeckFacing, "outer")))),
		g.at(append(pairs("neck"), facings(pattern.FrontNeckFacing, pattern.BackNeckFacing, "neck")...), "Neck facing, sewn on.", "Right sides together, shoulder on shoulder: neck %s, facing %s; allowance %s at the garment, %s at the facing. %s Turn the ends under beside the zip and sew them to its tape.",
			g.say(garment), g.say(2*(f+b)), g.allowed(pattern.Front, "neck"), g.allowed(pattern.FrontNeckFacing, "neck"), finishing),
	}
}

func (g *guide) sides() []pdf.Item {
	f, b := g.along(pattern.Front, "side"), g.along(pattern.Back, "side")
	if f == 0 || b == 0 {
		return nil
	}
	dart := ""
	if len(g.piece(pattern.Front).Darts) > 0 {
		dart = ", darts sewn,"
	}
	allowance := g.allowed(pattern.Front, "side")
	if half := g.halfSides(); half > 0 {
		allowance = fmt.Sprintf("%s, which is half of what is there: the other half is her ease", g.say(half))
	}
	return []pdf.Item{g.at(pairs("side"), "Side seams.", "Front%s %s, back %s, allowance %s. Pin underarm, waist and hip on their clips, sew from the underarm down. Clip at the waist where it pulls. Press open.", dart, g.say(f), g.say(b), allowance)}
}

func (g *guide) armholeFacing() []pdf.Item {
	f, b := g.along(pattern.FrontArmholeFacing, "armhole"), g.along(pattern.BackArmholeFacing, "armhole")
	if f == 0 && b == 0 {
		return nil
	}
	garment := g.along(pattern.Front, "armhole") + g.along(pattern.Back, "armhole")
	side := g.allowed(pattern.FrontArmholeFacing, "side")
	if half := g.halfSides(); half > 0 {
		side = g.say(half) + ", as the sides are"
	}
	return []pdf.Item{
		g.at(facings(pattern.FrontArmholeFacing, pattern.BackArmholeFacing, "shoulder", "side"), "Armhole facings, joined.", "Each to a ring: shoulder %s, allowance %s; side %s, allowance %s. Press open. Finish the outer edge.",
			g.say(g.along(pattern.FrontArmholeFacing, "shoulder")), g.allowed(pattern.FrontArmholeFacing, "shoulder"),
			g.say(g.along(pattern.FrontArmholeFacing, "side")), side),
		g.at(append(pairs("armhole"), facings(pattern.FrontArmholeFacing, pattern.BackArmholeFacing, "armhole")...), "Armhole facings, sewn on.", "Right sides together, shoulder on shoulder, side on side: armhole %s, facing %s; allowance %s at the garment, %s at the facing. %s Tack at shoulder and side.",
			g.say(garment), g.say(f+b), g.allowed(pattern.Front, "armhole"), g.allowed(pattern.FrontArmholeFacing, "armhole"), finishing),
	}
}

func (g *guide) hem() []pdf.Item {
	girth, ok := g.sheet.Girth("hem")
	if !ok {
		return nil
	}
	var out []pdf.Item
	text := fmt.Sprintf("Hang it for a day. Level it from the floor in her shoes. Bind the edge, turn up %s all round (%s at the fold) and sew it by hand, loosely.", g.allowed(pattern.Front, "hem"), g.say(girth+4*g.halfSides()))
	out = append(out, pdf.Item{Lead: "Hem.", Text: text + " Press the fold lightly, not the edge.", Figure: leaflet.Seam(g.sheet, pairs("hem")...)})
	if h := g.sheet.Length("slit_height"); h > 0 {
		edges := g.piece(pattern.Back).EdgesNamed("centre_back")
		allowance := ""
		if len(edges) > 0 {
			allowance = ", allowance " + g.say(edges[0].Allowance)
		}
		out = append(out, item("Hem opening.", "It stays open %s above the finished hem%s. Turn the allowances in, sew them by hand, and secure the top with a bar.", g.say(h), allowance))
	}
	return out
}

func (g *guide) last() []pdf.Item {
	var out []pdf.Item
	if z, _ := g.zip(); z > 0 {
		out = append(out, item("Hook and eye.", "Above the zip, inside the facing."))
	}
	return append(out, item("Last.", "Cut threads, press all from the wrong side over a cloth, try it on: standing, sitting, reaching, walking."))
}

// cautions: common practice, no source.
var cautions = []string{
	"Sew it in cheap cloth first, with long stitches, and fit that.",
	"Before cutting from paper, measure the control squares and lines of the print.",
	"Shears closed when laid down or handed on, points down; rotary cutters guarded at every pause.",
	"Count the pins out and in; none in the mouth. Machine off to thread it or to change the needle.",
	"Iron on its heel, cord out of the way, never left on. Try heat and steam on a scrap.",
	"The care label of the cloth goes before this page, and so do the rules of the place where the garment is made, sold or taught.",
}
