package guide

import (
	"fmt"
	"strings"

	"chalkfold/export/pdf"
	"chalkfold/measure"
	"chalkfold/pattern"
)

const liningCloth = "lining"

// unlined is the guide of the garment without its lining, which is sewn for
// itself: rows of the garment do not meet its pieces.
func (g *guide) unlined() *guide {
	h, sheet := *g, *g.sheet
	h.sheet, sheet.Pieces = &sheet, nil
	for _, p := range g.sheet.Pieces {
		if p.Cloth == liningCloth {
			h.lined = append(h.lined, p)
		} else {
			sheet.Pieces = append(sheet.Pieces, p)
		}
	}
	return &h
}

// facingEdge says what becomes of the edge of a facing that lies inside.
func (g *guide) facingEdge(edge string) string {
	if toFacing(g) {
		return "Sew the lining to its " + edge
	}
	return "Finish the " + edge
}

// liningAlong is an edge of the lining, once on each half.
func (g *guide) liningAlong(edge string) measure.Length {
	var sum measure.Length
	for i := range g.lined {
		sum += g.lined[i].Along(edge)
	}
	return sum
}

// toFacing says that the lining begins at the edge of a facing.
func toFacing(g *guide) bool { return g.liningAlong("facing") > 0 }

// byLining says that the lining finishes neck and armholes: it is sewn on
// while the sides are open, like a facing all in one.
func byLining(g *guide) bool {
	for i := range g.lined {
		for _, e := range g.lined[i].Edges {
			if e.Name == "armhole" && !strings.HasPrefix(string(e.SewnTo.Piece), string(pattern.Sleeve)) && g.liningSleeve() == nil {
				return true
			}
		}
	}
	return false
}

func (g *guide) liningSleeve() *pattern.Piece {
	for i := range g.lined {
		if g.lined[i].ID == pattern.Sleeve+"_lining" {
			return &g.lined[i]
		}
	}
	return nil
}

// liningMade says how the pieces of a lining are joined, as far as they are
// joined by themselves.
func (g *guide) liningMade(until string) string {
	var names []string
	darts := false
	for i := range g.lined {
		p := &g.lined[i]
		name := strings.ToLower(strings.TrimSuffix(p.Title, ", lining"))
		if head, part, ok := strings.Cut(name, ", "); ok {
			name = head + " (" + part + ")"
		}
		names = append(names, name)
		darts = darts || len(p.Darts) > 0
	}
	text := "Of the lining: " + strings.Join(names, ", ") + ". Allowances as on the pieces; sew a thread outside the stitching line, so that it is a little wider than the garment. "
	if darts {
		text += "Sew its darts as those of the garment and press them the other way. "
	}
	var seams []string
	for _, s := range [][2]string{{"panel", "panel seams"}, {"shoulder", "shoulders"}, {"waist", "waist seam"}} {
		if g.liningAlong(s[0]) > 0 && (s[0] != "waist" || !fromWaist(g)) {
			seams = append(seams, s[1])
		}
	}
	if until != "" {
		seams = append(seams, until)
	}
	if len(seams) > 0 {
		text += "Then " + strings.Join(seams, ", ") + ". "
	}
	return text + g.liningOpen()
}

// liningOpen says where a lining stays open.
func (g *guide) liningOpen() string {
	var open []string
	zip, _, _ := g.zip()
	if side, _ := g.sideZip(); side != "" {
		open = append(open, "along the zip in the left side")
	} else if zip > 0 {
		open = append(open, "along the zip")
	}
	for i := range g.lined {
		for _, n := range g.lined[i].Notches {
			if n.Name == "open below" {
				open = append(open, "below the clips above the opening in the hem")
			}
		}
		if len(open) > 0 && strings.HasPrefix(open[len(open)-1], "below") {
			break
		}
	}
	if len(open) == 0 {
		return ""
	}
	return "Leave it open " + strings.Join(open, " and ") + ". "
}

// inside is what lies inside the edge at the top of a zip.
func (g *guide) inside() string {
	if len(g.lined) > 0 && !toFacing(g) {
		return "lining"
	}
	return "facing"
}

// linedEdges sews a full lining to neck and armholes.
func (g *guide) linedEdges(_ []seam) []pdf.Item {
	b, arms := g.bodies("neck"), g.bodies("armhole")
	if len(b) == 0 || len(arms) == 0 {
		return nil
	}
	return []pdf.Item{
		item("Lining, joined.", "%s", g.liningMade("")+"Its sides and its centre back stay open for now."),
		g.at(append(edgesOf(b, "neck"), edgesOf(arms, "armhole")...), "Lining, sewn on.", "Sides and centre back still open. Right sides together, shoulder on shoulder: the neck, %s, and both armholes; the lining has so much less allowance that its seam rolls in. %sGrade, clip the curves every 1/2 in (12 mm), understitch as far as the machine reaches. Pull each back through its own shoulder and press.",
			g.say(round("neck", b)), g.neckOpening(b)),
		item("Sides of the lining.", "%s", "Each side is sewn in one pass with the garment's: from its hem to the underarm and on down the lining."),
	}
}

// facingLined sews the lining to the edge of its facing before that is sewn on.
func (g *guide) facingLined(_ []seam) []pdf.Item {
	until := "sides, sleeves set in"
	if g.liningSleeve() == nil {
		until = "sides"
	}
	if g.along(pattern.FrontFacing, "side")+g.along(pattern.BackFacing, "side") > 0 {
		until = ""
	}
	text := g.liningMade(until)
	if until == "" {
		text += "Its sides are sewn with those of the facing. "
	}
	return []pdf.Item{item("Lining to the facing.", "%sRight sides together, sew its upper edge to the edge of the facings, once these are joined: %s on each half, allowance 1/2 in (12 mm). Press the seam down.", text, g.say(g.liningAlong("facing")))}
}

// lining finishes the lining: what joins it to the garment where no facing and
// no edge does, and its hem.
func (g *guide) lining(_ []seam) []pdf.Item {
	if len(g.lined) == 0 {
		return nil
	}
	var text string
	switch {
	case byLining(g) || toFacing(g):
	case fromWaist(g):
		text = g.liningMade("sides") + "Wrong sides together, baste it to the waist before the band is sewn on. "
		if g.along(pattern.WaistBand, "waist") == 0 {
			text = g.liningMade("sides") + fmt.Sprintf("Sew a stay tape into the waist. Right sides together, sew the lining to it, %s in all; grade and understitch. ", g.say(2*g.liningAlong("waist")))
		}
	default:
		text = g.liningMade("sides, the sleeves set in") + "Right sides together, sew it to the neck with whatever is put on there; grade, clip and understitch. Tack it to the allowances of the armholes. "
	}
	text += "Wrong sides together, tack it at the side seams"
	if g.sheet.Length("zip_length") > 0 {
		text += " and fell it by hand to the tape of the zip"
	}
	text += ". "
	if s := g.liningSleeve(); s != nil {
		text += "Fell the sleeve's lining to the inside of its hem, 1/2 in (12 mm) above the edge, with a little fold to move in. "
	}
	return []pdf.Item{item("Lining.", "%sTurn its hem up twice 1/2 in (12 mm): it ends 1 in (2.5 cm) above the garment's and hangs free. At an opening in the hem turn its edges in and fell them to the garment's.", text)}
}
