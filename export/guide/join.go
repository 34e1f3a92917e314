package guide

import (
	"fmt"
	"strings"

	"chalkfold/export/pdf"
	"chalkfold/measure"
	"chalkfold/pattern"
)

// allJoined says several seams one after the other.
func (g *guide) allJoined(list []seam) string {
	var out []string
	for _, s := range list {
		out = append(out, first(g.joined(s)))
	}
	return strings.Join(out, " ")
}

func (g *guide) panels(list []seam) []pdf.Item {
	return []pdf.Item{g.drawnAt(list, "Panel seams.", g.allJoined(list)+" Pin the clips at bust, waist and hip first, then between. Clip the hollow edge over the bust up to the stitches, notch the round one. Press open over something round.")}
}

func (g *guide) shoulders(list []seam) []pdf.Item {
	var f, b measure.Length
	for _, s := range list {
		f, b = f+g.length(s.a), b+g.length(s.b)
	}
	first := list[0]
	text := fmt.Sprintf("%s to %s, right sides together: front %s, back %s, allowance %s. Sew a stay tape as long as the seam into it.", "Front", "back", g.say(f), g.say(b), g.allowed(first.a.Piece, first.a.Edge))
	if d := b - f; g.say(d) != "0" && d > 0 {
		text += " Ease the back in by " + g.say(d) + "."
	}
	return []pdf.Item{g.drawnAt(list, "Shoulders.", text+" Press open.")}
}

func (g *guide) sides(list []seam) []pdf.Item {
	open, zip := g.sideZip()
	var out []pdf.Item
	for i, s := range list {
		who := [2]string{"Front", "back"}
		if len(list) > 1 {
			who = [2]string{first(g.called(s.a.Piece)), g.called(s.b.Piece)}
		}
		for _, d := range g.piece(s.a.Piece).Darts {
			if !d.Fisheye {
				who[0] += ", darts sewn,"
				break
			}
		}
		allowance := g.allowed(s.a.Piece, s.a.Edge)
		if half := g.halfSides(); half > 0 {
			allowance = fmt.Sprintf("%s, which is half of what is there: the other half is her ease", g.say(half))
		}
		how := "Pin underarm, waist and hip on their clips, sew from the underarm down. Clip at the waist where it pulls."
		if fromWaist(g) || s.a.Piece == pattern.SkirtFront || s.a.Piece == pattern.SkirtBack {
			how = "Pin waist, hip and hem on their clips, sew from the waist down."
		} else if g.along(pattern.SkirtFront, "waist") > 0 {
			how = "Pin underarm and waist, sew from the underarm down."
		}
		text := fmt.Sprintf("%s %s, %s %s, allowance %s. "+how, who[0], g.say(g.length(s.a)), who[1], g.say(g.length(s.b)), allowance)
		if i == 0 && open != "" {
			text += " " + open
		}
		out = append(out, g.drawnAt([]seam{s}, "Side seams.", text+" Press open."))
	}
	if zip != "" {
		out = append(out, item("Zip in the side.", "%s", zip))
	}
	return out
}

// sideZip says where the side stays open and how its zip is set; empty where
// none is in the side.
func (g *guide) sideZip() (open, zip string) {
	var spots []measure.Length
	for i := range g.sheet.Pieces {
		p := &g.sheet.Pieces[i]
		for _, n := range p.Notches {
			if n.Edge == "side" && strings.HasPrefix(n.Name, "zip ") && len(spots) < 2 {
				if l, ok := downEdge(p, "side", n); ok {
					spots = append(spots, l)
				}
			}
		}
		if len(spots) == 2 {
			break
		}
		spots = nil
	}
	if len(spots) != 2 {
		return "", ""
	}
	long := spots[1] - spots[0]
	open = fmt.Sprintf("On the left leave it open for the zip, from %s to %s below the underarm, between the clips; baste it there.", g.say(spots[0]), g.say(spots[1]))
	zip = fmt.Sprintf("The opening in the left side is %s.%s Lay the zip in under the basted seam, sew both sides from the bottom up and across both ends. Open the basting, press from the wrong side.", g.say(long), g.zipToTake(long))
	return open, zip
}

// downEdge is how far along the edges of a name a notch stands.
func downEdge(p *pattern.Piece, edge string, n pattern.Notch) (measure.Length, bool) {
	var sum measure.Length
	best, at, found := 0.0, measure.Length(0), false
	for _, e := range p.EdgesNamed(edge) {
		s, _, off := e.Stitch.Nearest(n.At)
		if !found || off < best {
			best, at, found = off, sum+measure.Length(s), true
		}
		sum += e.Length()
	}
	return at, found
}

// zipToTake is the zip to buy for an opening.
func (g *guide) zipToTake(long measure.Length) string {
	z := g.sheet.Length("zip_length")
	if z <= 0 {
		return ""
	}
	text := fmt.Sprintf(" Take a zip of %s", g.say(z))
	if z > long {
		text += ", shortened to fit"
	}
	return text + "."
}

func (g *guide) waist(list []seam) []pdf.Item {
	return []pdf.Item{g.drawnAt(list, "Waist seam.", g.allJoined(list)+" Right sides together, the skirt inside: side seams, centres and darts on each other. Sew a stay tape as long as her waist and ease into it. Press the allowances up.")}
}

// makeUp makes up what is put on the garment.
func (g *guide) makeUp(list []seam) []pdf.Item {
	var out []pdf.Item
	for _, s := range list {
		lead := first(g.called(s.b.Piece)) + ", made up."
		out = append(out, g.drawnAt([]seam{s}, lead, first(g.joined(s))+" Grade, clip or notch the curve, turn and press with the seam rolled a little to the wrong side."))
	}
	return out
}

func (g *guide) onNeck(list []seam) []pdf.Item {
	var out []pdf.Item
	for _, s := range list {
		on := s.a.Piece
		if g.garment(on) {
			on = s.b.Piece
		}
		text, band := g.ontoBand(s)
		if !band {
			text = first(g.joined(s))
		}
		out = append(out, g.drawnAt([]seam{s}, first(g.called(on))+" to the neck.", text+" Baste it to the right side with centres and shoulder marks on each other; clip the neck to the stay-stitching so that it lies open. The facing, if there is one, goes on over it in the same seam."))
	}
	return out
}

func (g *guide) sleeveSeams(list []seam) []pdf.Item {
	var out []pdf.Item
	for _, s := range list {
		lead := "Sleeve seams."
		if s.a.Piece != s.b.Piece {
			lead = first(g.called(s.b.Piece)) + " to " + g.called(s.a.Piece) + "."
		}
		out = append(out, g.drawnAt([]seam{s}, lead, first(g.joined(s))+" Press open over a roll."))
	}
	return out
}

// setIn sets sleeves into armholes.
func (g *guide) setIn(list []seam) []pdf.Item {
	var head, hole measure.Length
	var edges []seam
	for _, s := range list {
		sleeve, arm := s.a, s.b
		if !isSleeve(sleeve.Piece) {
			sleeve, arm = arm, sleeve
		}
		head, hole = head+g.length(sleeve), hole+g.length(arm)
		edges = append(edges, seam{sleeve, arm})
	}
	s := edges[0]
	text := fmt.Sprintf("Sleeve head %s, armhole %s, allowance %s at the sleeve, %s at the armhole. Right sides together: the clip at the top on the shoulder, seam on side seam, single clips in front, double ones behind.",
		g.say(head), g.say(hole), g.allowed(s.a.Piece, s.a.Edge), g.allowed(s.b.Piece, s.b.Edge))
	switch d := head - hole; {
	case d > 0 && g.say(d) != "0":
		text += fmt.Sprintf(" Two rows of long stitches over the head draw in its %s between the clips; shrink it with steam, no pleats.", g.say(d))
	case d < 0 && g.say(-d) != "0":
		text += fmt.Sprintf(" The armhole is longer by %s: hold it in below the clips.", g.say(-d))
	}
	return []pdf.Item{g.drawnAt(edges, "Sleeves, set in.", text+" Sew from seam to seam, the underarm twice. Trim below the clips, finish, turn the allowances into the sleeve; do not press the head flat.")}
}

// others are seams of a kind that the order does not know.
func (g *guide) others(list []seam) []pdf.Item {
	var out []pdf.Item
	for _, s := range list {
		lead := fmt.Sprintf("Join the %s to the %s.", g.called(s.a.Piece), g.called(s.b.Piece))
		if s.a.Piece == s.b.Piece {
			lead = "Join the " + g.called(s.a.Piece) + "."
		}
		out = append(out, g.drawnAt([]seam{s}, lead, first(g.joined(s))+" Right sides together, ends and clips on each other. Press open, or both allowances towards the smaller piece where the seam is curved."))
	}
	return out
}
