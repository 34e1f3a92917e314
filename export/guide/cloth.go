package guide

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"chalkfold/export/leaflet"
	"chalkfold/export/pdf"
	"chalkfold/export/shop"
	"chalkfold/measure"
	"chalkfold/pattern/laid"
	"chalkfold/pattern/lay"
)

func (g *guide) cutting() {
	g.Heading(1, "Pieces and cutting list")
	others := shop.Others(g.sheet)
	heads := append([]string{"No.", "Piece", "Main cloth"}, others...)
	for i := range others {
		heads[3+i] = leaflet.Title(others[i])
	}
	var rows [][]string
	for i := range g.sheet.Pieces {
		p := &g.sheet.Pieces[i]
		row := []string{strconv.Itoa(p.Number), p.Title}
		for _, c := range append([]string{shop.Main}, others...) {
			cell := "-"
			if slices.Contains(p.Also, c) || c == p.Cloth || c == shop.Main && p.Cloth == "" {
				cell = leaflet.Cut(p)
			}
			row = append(row, cell)
		}
		rows = append(rows, row)
	}
	g.Table(pdf.Table{Heads: heads, Rows: rows})
	if net := g.cutNet(others); len(net) > 0 {
		g.Text(leaflet.Title(strings.Join(net, " and ")) + " is cut net, by the stitching line.")
	}
	if g.drawn {
		g.Figure(leaflet.Pieces(g.sheet, 95))
	}
}

// cutNet are the cloths that pieces of another are also cut from.
func (g *guide) cutNet(cloths []string) []string {
	var out []string
	for _, c := range cloths {
		for i := range g.sheet.Pieces {
			if slices.Contains(g.sheet.Pieces[i].Also, c) {
				out = append(out, c)
				break
			}
		}
	}
	return out
}

func (g *guide) cloth() {
	g.Heading(1, "Cloth to buy")
	g.Text("By the hand rule: the widths of the long pieces side by side in the folded cloth, one length if they fit, two if not, and some more for facings.")
	for _, c := range append([]string{shop.Main}, shop.Others(g.sheet)...) {
		g.oneCloth(c)
	}
}

func (g *guide) oneCloth(name string) {
	b, ok := shop.Of(g.sheet, name, g.unit)
	if !ok {
		return
	}
	c := b.Cloth
	says := fmt.Sprintf("%s, %s wide", leaflet.Title(name), g.unit.Say(c.Width))
	if !b.Named {
		says += " (the usual width, none is named)"
	}
	if b.Lengths == 0 {
		g.Text(strings.TrimSpace(says + ": too narrow for the widest piece when folded lengthwise. " + g.lays.Says(name)))
		return
	}
	says += ": " + lay.Says(b.Yards, b.Metric) + ". " + g.sum(b.Lay)
	if c.ShrinkAlong > 0 {
		says += fmt.Sprintf("; it shrinks %s %% along, so it is divided by what stays: %s", strconv.FormatFloat(c.ShrinkAlong, 'f', -1, 64), g.unit.Say(b.Buy.Result()))
	}
	says += "."
	if c.Nap {
		says += " It has a nap: all pieces lie one way; take 1/4 to 1/2 yd (25 to 50 cm) more."
	}
	if c.Price > 0 {
		says += fmt.Sprintf(" At %.2f a metre: %.2f.", c.Price, c.Price*b.Metric.MM()/1000)
	}
	if l := g.lays.Says(name); l != "" {
		says += " " + l
	}
	g.Text(says)
}

func (g *guide) sum(w measure.Working) string {
	if s := w.Sum(g.unit); s != "" {
		return leaflet.Title(s)
	}
	return "Longest piece " + g.say(w.Result())
}

func (g *guide) notions() {
	g.Heading(1, "Notions")
	g.List(pdf.Tick, append(shop.Notions(g.sheet, g.unit), "a label, if it is given away")...)
}

func (g *guide) before() {
	g.Heading(1, "Before cutting")
	g.List(pdf.Tick,
		"Wash or steam the cloth as the garment will be, and press it.",
		"Straighten the end by a thread. "+g.folding(),
		"Check the cloth for flaws, nap and one-way print; decide which way is up.",
		fmt.Sprintf("Count the pieces: %d on paper, each with its number, count and grain.", len(g.sheet.Pieces)),
		"Both ends of each grain arrow lie equally far from the selvage.",
		"Measure a control square of the print once more.",
	)
}

// folding is how the main cloth is folded before anything is laid on it.
func (g *guide) folding() string {
	c, _ := laid.ClothOf(g.sheet.Job, laid.Main)
	switch c.Fold {
	case lay.Flat:
		return "Lay it flat, in one layer, right side down."
	case lay.ToMiddle:
		return "Fold both selvages to the middle, right sides together."
	case lay.OffCentre:
		return "Fold one selvage in, right sides together, as far as the lay says; the rest lies single."
	case lay.Across:
		says := "Fold it across, right sides together, selvages on selvages, as far as the lay says"
		if c.Nap {
			says += "; then cut along the fold and turn the upper layer end for end, so that the nap of both runs the same way"
		}
		return says + "."
	}
	return "Fold selvage to selvage, right sides together."
}

// marks lists what is clipped, pricked and chalked, piece by piece.
func (g *guide) marks() {
	g.Heading(1, "Marks")
	g.Text("One clip is the front, two are the back. Clip at most half of the allowance.")
	var rows [][]string
	for i := range g.sheet.Pieces {
		p := &g.sheet.Pieces[i]
		var names []string
		for _, n := range p.Notches {
			if k := len(names); k == 0 || !strings.HasPrefix(names[k-1], n.Name) {
				names = append(names, n.Name)
			} else {
				names[k-1] = n.Name + " (both)"
			}
		}
		for _, d := range p.Darts {
			names = append(names, d.Name+": tip pricked, legs chalked")
		}
		for _, b := range p.Balance {
			names = append(names, b.Name+" line chalked or basted")
		}
		if len(names) > 0 {
			rows = append(rows, []string{p.Title, strings.Join(names, "; ")})
		}
	}
	g.Table(pdf.Table{Heads: []string{"Piece", "Marks"}, Rows: rows})
}
