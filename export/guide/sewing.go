package guide

import (
	"fmt"
	"strings"

	"chalkfold/export/leaflet"
	"chalkfold/export/pdf"
	"chalkfold/measure"
	"chalkfold/pattern"
)

func item(lead, text string, args ...any) pdf.Item {
	return pdf.Item{Lead: lead, Text: fmt.Sprintf(text, args...)}
}

// at is a step with the edges that it sews drawn beside it.
func (g *guide) at(edges []pattern.EdgeRef, lead, text string, args ...any) pdf.Item {
	i := item(lead, text, args...)
	i.Figure = leaflet.Seam(g.sheet, edges...)
	return i
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

func (g *guide) stay(_ []seam) []pdf.Item {
	var neck, arm measure.Length
	var edges []pattern.EdgeRef
	for i := range g.sheet.Pieces {
		p := &g.sheet.Pieces[i]
		if !g.garment(p.ID) {
			continue
		}
		for _, name := range []string{"neck", "armhole"} {
			if p.Along(name) > 0 {
				edges = append(edges, pattern.EdgeRef{Piece: p.ID, Edge: name})
			}
		}
		neck, arm = neck+measure.Length(copies(p))*p.Along("neck"), arm+p.Along("armhole")
	}
	switch text := " 1/8 in (3 mm) inside the seam, from the shoulder to the middle, through one layer."; {
	case neck > 0 && arm > 0:
		return []pdf.Item{g.at(edges, "Stay-stitch.", "Neck (%s in all) and both armholes (%s each),"+text, g.say(neck), g.say(arm))}
	case neck > 0:
		return []pdf.Item{g.at(edges, "Stay-stitch.", "Neck (%s in all),"+text, g.say(neck))}
	}
	return nil
}

func (g *guide) interfaced(_ []seam) []pdf.Item {
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
	if z, _, _ := g.zip(); z > 0 {
		out = append(out, item("Zip strips.", "Fuse a strip 1 in (2.5 cm) wide and %s long to the wrong side of each centre back allowance, from the %s down.", g.say(z), g.top()))
	}
	return out
}

func (g *guide) darts(_ []seam) []pdf.Item {
	var out []pdf.Item
	for i := range g.sheet.Pieces {
		p := &g.sheet.Pieces[i]
		both := ""
		if copies(p) > 1 {
			both = " on both sides"
		}
		for k, d := range p.Darts {
			if d.Fisheye && k > 0 && p.Darts[k-1].Fisheye && p.Darts[k-1].Foot == d.Tip {
				continue // the other half of the one before
			}
			name := d.Name
			if d.Fisheye {
				name, _, _ = strings.Cut(name, ",") // one name for both halves
			}
			out = append(out, pdf.Item{
				Lead: capital(name) + ".", Text: p.Title + both + ": " + g.dart(d),
				Figure: leaflet.Seam(g.sheet, pattern.EdgeRef{Piece: p.ID, Edge: leaflet.DartEdge}),
			})
		}
	}
	return out
}

// dart says how a dart is sewn.
func (g *guide) dart(d pattern.Dart) string {
	if d.Fisheye {
		text := fmt.Sprintf("pointed at both ends, %s long, takes up %s at its widest. Fold it along its middle, sew from the widest place to each point, run off and knot. Clip the fold at the widest place.",
			g.say(measure.Length(d.Tip.Dist(d.Foot))), g.say(d.Intake))
		return text + pressed(d.Pressed)
	}
	text := fmt.Sprintf("legs %s long, takes up %s at the seam. Fold leg on leg, sew from the edge to the tip, run off and knot.", g.say(d.Leg), g.say(d.Intake))
	if d.Intake > measure.Inch {
		text += " Trim it inside to the width of an allowance and press it open as far as it goes."
	}
	return text + pressed(d.Pressed)
}

func pressed(way string) string {
	if way == "" {
		return ""
	}
	return " Press it " + way + "."
}

func capital(s string) string {
	if s == "" {
		return "Dart"
	}
	return strings.ToUpper(s[:1]) + s[1:]
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
