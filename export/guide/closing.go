package guide

import (
	"fmt"
	"strings"

	"chalkfold/export/pdf"
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
)

// zip is the length of the opening for a zip behind, from the neck to its end,
// and the piece on which it ends with the level there; zero where there is
// none.
func (g *guide) zip() (long measure.Length, on pattern.PieceID, end float64) {
	for i := range g.sheet.Pieces {
		p := &g.sheet.Pieces[i]
		at, ok := g.sheet.SewnPoint(p.ID, "zip_end")
		edges := p.EdgesNamed("centre_back")
		if !ok || len(edges) == 0 {
			continue
		}
		for _, start := range []string{"neck_centre", "waist_centre"} {
			if top, known := g.sheet.SewnPoint(p.ID, start); known {
				on := p.ID
				if w, ok := g.sheet.Point(p.ID, "waist"); ok && at.Y > w.Y && g.along(pattern.SkirtBack, "centre_back") > 0 {
					on = pattern.SkirtBack // the draft of a half goes on below its waist seam
				}
				return max(0, measure.Length(at.Y-top.Y)), on, at.Y
			}
		}
		// It ends below the waist: all of the bodice is open.
		top := edges[0].Stitch.Bounds().Min.Y
		for _, e := range edges {
			top = min(top, e.Stitch.Bounds().Min.Y)
		}
		return g.along(pattern.Back, "centre_back") + measure.Length(at.Y-top), p.ID, at.Y
	}
	return 0, "", 0
}

// centres are the seams that join a pair of pieces to itself, and the zip
// behind.
func (g *guide) centres(list []seam) []pdf.Item {
	var out []pdf.Item
	long, on, end := g.zip()
	for _, s := range list {
		p := g.piece(s.a.Piece)
		edges := p.EdgesNamed(s.a.Edge)
		// Of several parts the opening comes first on the ring, the zip's last.
		allowance := g.say(edges[len(edges)-1].Allowance)
		lead := first(strings.ReplaceAll(s.a.Edge, "_", " ")) + " seam."
		behind := s.a.Edge == "centre_back" && long > 0
		if behind && p.ID != on && g.sheet.Length("zip_length") > 0 && len(list) > 1 {
			out = append(out, g.drawnAt([]seam{s}, lead, fmt.Sprintf("The %s stays open all along (%s): the zip runs through it. Baste it, allowance %s.", g.called(p.ID), g.say(p.Along(s.a.Edge)), allowance)))
			continue
		}
		sewn, from, to := p.Along(s.a.Edge), "the hem", "its upper end"
		if top, ok := g.sheet.SewnPoint(pattern.Back, "slit_top"); ok && behind {
			sewn, from = measure.Length(top.Y-end), "the top of the hem opening"
		} else if ok {
			sewn, from = sewn-measure.Length(bottom(edges)-top.Y), "the top of the hem opening"
		} else if behind {
			sewn -= long
		}
		text := ""
		if behind {
			to, text = "the end of the zip", " Baste the part above for the zip."
		}
		out = append(out, g.drawnAt([]seam{s}, lead, fmt.Sprintf("Sew from %s up to %s: %s, allowance %s. Back-stitch both ends.%s Press open.", from, to, g.say(sewn), allowance, text)))
		if behind {
			out = append(out, item("Zip.", "The opening is %s from the %s seam down, allowance %s.%s Lay it in under the seam, its top a little below the %[2]s seam, sew both sides from the bottom up. Open the basting, try it, press from the wrong side.", g.say(long), g.top(), allowance, g.zipToTake(long)))
		}
	}
	return out
}

func bottom(edges []pattern.Edge) float64 {
	y := edges[0].Stitch.Bounds().Max.Y
	for _, e := range edges {
		y = max(y, e.Stitch.Bounds().Max.Y)
	}
	return y
}

func (g *guide) hem(_ []seam) []pdf.Item {
	var out []pdf.Item
	var body []pattern.EdgeRef
	for i := range g.sheet.Pieces {
		p := &g.sheet.Pieces[i]
		switch {
		case p.Along("hem") == 0 || finishes(p):
		case g.garment(p.ID):
			body = append(body, pattern.EdgeRef{Piece: p.ID, Edge: "hem"})
		default:
			ref := pattern.EdgeRef{Piece: p.ID, Edge: "hem"}
			out = append(out, g.at([]pattern.EdgeRef{ref}, "Hem of the "+g.called(p.ID)+".", "Turn up %s, %s long, press and sew it by hand.", g.allowed(p.ID, "hem"), g.say(p.Along("hem"))))
		}
	}
	girth, ok := g.sheet.Girth("hem")
	if !ok || len(body) == 0 {
		return out
	}
	return append(out, g.at(body, "Hem.", "Hang it for a day. Level it from the floor in her shoes. Bind the edge, turn up %s all round (%s at the fold) and sew it by hand, loosely. Press the fold lightly, not the edge.",
		g.allowed(body[0].Piece, "hem"), g.say(girth+4*g.halfSides())))
}

// openings of a hem, by the choice: common practice, no source.
var openings = map[string]string{
	"slit":       "It stays open %s above the finished hem%s. Turn the allowances in, sew them by hand, and secure the top with a bar.",
	"vent":       "It laps %s above the finished hem%s. Clip the under side to the corner of the seam. Turn in the edge of the upper side along the centre line, that of the under side by its allowance; sew the slanting top through all layers and stay it on the wrong side. Lap it before the hem is turned up.",
	"kick_pleat": "The pleat opens %s above the finished hem%s. Sew its top on the slant through all layers, clip above it, press the pleat to one side. Hem it flat, then press it in again.",
	"inverted":   "The pleat opens %s above the finished hem%s. Lay both folds to the centre behind, sew across their top through all layers, press. Hem it flat, then press it in again.",
}

func (g *guide) hemOpening(_ []seam) []pdf.Item {
	h := g.sheet.Length("slit_height")
	if h <= 0 {
		return nil
	}
	kind := "slit"
	if set, ok := g.sheet.Setting("hem_opening"); ok && set.Used && set.Value.Pick != "" {
		kind = set.Value.Pick
	}
	if kind == "none" {
		return nil
	}
	allowance := ""
	for i := range g.sheet.Pieces {
		p := &g.sheet.Pieces[i]
		edges := p.EdgesNamed("centre_back")
		if _, ok := g.sheet.SewnPoint(pattern.Back, "slit_top"); ok && len(edges) > 0 && edges[0].Allowance > 0 {
			allowance = ", allowance " + g.say(edges[0].Allowance)
			break
		}
	}
	text, ok := openings[kind]
	if !ok {
		text = "It stays open %s above the finished hem%s. Finish its edges and secure the top."
	}
	return []pdf.Item{item("Hem opening.", text, g.say(h), allowance)}
}

func (g *guide) last(_ []seam) []pdf.Item {
	var out []pdf.Item
	if z, _, _ := g.zip(); z > 0 {
		out = append(out, item("Hook and eye.", "Above the zip, inside the %s.", g.inside()))
	}
	for _, p := range g.bodies("neck_opening") {
		out = append(out, g.at(edgesOf([]*pattern.Piece{p}, "neck_opening"), "Button and loop.", "At the top of the opening in the neck, the loop sewn into its seam."))
	}
	out = append(out, g.closure()...)
	return append(out, item("Last.", "Cut threads, press all from the wrong side over a cloth, try it on: standing, sitting, reaching, walking."))
}

// closure says how the garment is closed where it is not by a zip.
func (g *guide) closure() []pdf.Item {
	set, ok := g.sheet.Setting("closure")
	if !ok || !set.Used || strings.HasPrefix(set.Value.Pick, "zip") || set.Value.Pick == "" || set.Value.Pick == "none" || g.has(pattern.Placket) {
		return nil
	}
	c, ok := workroom.FindChoice(g.sheet.Garment, "closure")
	if !ok {
		return nil
	}
	for _, o := range c.Options {
		if o.Value == set.Value.Pick {
			return []pdf.Item{item(o.Title+".", "%s Mark the places from the top one, at the bust, down in equal steps; work them before the hem.", o.Says)}
		}
	}
	return nil
}
