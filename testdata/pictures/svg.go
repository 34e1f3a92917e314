package main

import (
	"fmt"
	"html"
	"image/color"
	"strings"

	uv "github.com/charmbracelet/ultraviolet"
	"github.com/charmbracelet/x/vt"
)

// A cell is drawn 9 by 18, so that a dot of a drawing is square.
const (
	cellWide = 9
	cellHigh = 18
)

// draw makes an SVG of a terminal's cells.
func draw(screen *vt.SafeEmulator) string {
	var b strings.Builder
	w, h := screen.Width()*cellWide, screen.Height()*cellHigh
	ground := rgb(commonBackground(screen), "#ffffff")
	fmt.Fprintf(&b, "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%d\" height=\"%d\" viewBox=\"0 0 %d %d\">\n", w+2*cellWide, h+cellHigh, w+2*cellWide, h+cellHigh)
	fmt.Fprintf(&b, "<rect width=\"100%%\" height=\"100%%\" rx=\"6\" fill=\"%s\"/>\n", ground)
	b.WriteString("<g transform=\"translate(9 9)\" font-family=\"DejaVu Sans Mono, Menlo, Consolas, monospace\" font-size=\"14.5\">\n")
	for y := range screen.Height() {
		for x := range screen.Width() {
			if c := screen.CellAt(x, y); c != nil {
				drawCell(&b, c, x*cellWide, y*cellHigh, ground)
			}
		}
	}
	b.WriteString("</g>\n</svg>\n")
	return b.String()
}

func drawCell(b *strings.Builder, c *uv.Cell, x, y int, ground string) {
	front, back := rgb(c.Style.Fg, contrast(ground)), rgb(c.Style.Bg, ground)
	if c.Style.Attrs&uv.AttrReverse != 0 {
		front, back = back, front
	}
	if back != ground {
		fmt.Fprintf(b, "<rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\" fill=\"%s\"/>", x, y, cellWide, cellHigh, back)
	}
	text := c.Content
	if strings.TrimSpace(text) == "" {
		return
	}
	if r := []rune(text)[0]; r >= 0x2800 && r <= 0x28ff {
		drawDots(b, r-0x2800, x, y, front)
		return
	}
	weight := ""
	if c.Style.Attrs&uv.AttrBold != 0 {
		weight = " font-weight=\"bold\""
	}
	fmt.Fprintf(b, "<text x=\"%d\" y=\"%d\" fill=\"%s\"%s>%s</text>\n", x, y+14, front, weight, html.EscapeString(text))
}

// drawDots draws a cell of 2 by 4 dots; bits in the order of the standard.
func drawDots(b *strings.Builder, bits rune, x, y int, fill string) {
	places := [8][2]int{{0, 0}, {0, 1}, {0, 2}, {1, 0}, {1, 1}, {1, 2}, {0, 3}, {1, 3}}
	for i, p := range places {
		if bits&(1<<i) != 0 {
			fmt.Fprintf(b, "<rect x=\"%.1f\" y=\"%.1f\" width=\"3\" height=\"3\" fill=\"%s\"/>", float64(x)+0.75+4.5*float64(p[0]), float64(y)+0.75+4.5*float64(p[1]), fill)
		}
	}
	b.WriteString("\n")
}

// commonBackground is the background of most cells, nil for the terminal's.
func commonBackground(screen *vt.SafeEmulator) color.Color {
	counts := map[string]int{}
	colours := map[string]color.Color{}
	best := ""
	for y := range screen.Height() {
		for x := range screen.Width() {
			c := screen.CellAt(x, y)
			if c == nil {
				continue
			}
			name := rgb(c.Style.Bg, "")
			counts[name]++
			colours[name] = c.Style.Bg
			if counts[name] > counts[best] {
				best = name
			}
		}
	}
	return colours[best]
}

func rgb(c color.Color, otherwise string) string {
	if c == nil {
		return otherwise
	}
	r, g, b, _ := c.RGBA()
	return fmt.Sprintf("#%02x%02x%02x", r>>8, g>>8, b>>8)
}

// contrast is the terminal's own foreground on a ground.
func contrast(ground string) string {
	var r, g, b int
	_, _ = fmt.Sscanf(ground, "#%02x%02x%02x", &r, &g, &b)
	if r+g+b > 3*128 {
		return "#111111"
	}
	return "#f2f2f2"
}
