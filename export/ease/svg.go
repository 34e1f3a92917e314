package ease

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"io"
	"strconv"
	"strings"

	"chalkfold/export/pdf"
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// WriteSVG writes the picture in millimetres; false where there is none.
func WriteSVG(w io.Writer, s *pattern.Sheet, u measure.Unit) (bool, error) {
	f, ok := Picture(s, u)
	if !ok {
		return false, nil
	}
	_, err := w.Write(svg(f))
	return true, err
}

// pens are the looks of lines, by their ink.
var pens = map[pdf.Ink]string{
	pdf.InkPlain: `stroke="#000" stroke-width="0.35"`,
	pdf.InkHeavy: `stroke="#777" stroke-width="1.4"`,
	pdf.InkFaint: `stroke="#bbb" stroke-width="0.2"`,
}

const air = 6.0

func svg(f pdf.Figure) []byte {
	box := f.Bounds().Grow(air)
	box.Max.Y += air // for the line below it
	var b bytes.Buffer
	fmt.Fprintf(&b, "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%smm\" height=\"%smm\" viewBox=\"%s %s %s %s\">\n",
		num(box.Width()), num(box.Height()), num(box.Min.X), num(box.Min.Y), num(box.Width()), num(box.Height()))
	b.WriteString("<title>Ease, level by level</title>\n")
	fmt.Fprintf(&b, "<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" fill=\"#fff\"/>\n", num(box.Min.X), num(box.Min.Y), num(box.Width()), num(box.Height()))
	for _, l := range f.Lines {
		a, z := l.Path.Start(), l.Path.End()
		fmt.Fprintf(&b, "<line x1=\"%s\" y1=\"%s\" x2=\"%s\" y2=\"%s\" %s/>\n", num(a.X), num(a.Y), num(z.X), num(z.Y), pens[l.Ink])
	}
	words := func(at geom.Point, text, anchor string, bold bool) {
		weight := ""
		if bold {
			weight = ` font-weight="bold"`
		}
		fmt.Fprintf(&b, "<text x=\"%s\" y=\"%s\" font-family=\"sans-serif\" font-size=\"3.2\" text-anchor=\"%s\"%s>%s</text>\n", num(at.X), num(at.Y+1.1), anchor, weight, escaped(text))
	}
	for _, t := range f.Words {
		words(t.At, t.Text, "middle", t.Bold)
	}
	words(geom.Point{X: box.Min.X + air/2, Y: box.Max.Y - air/2}, f.Caption, "start", false)
	b.WriteString("</svg>\n")
	return b.Bytes()
}

// num is a number with at most three decimals.
func num(x float64) string {
	text := strconv.FormatFloat(x, 'f', 3, 64)
	text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
	if text == "-0" {
		return "0"
	}
	return text
}

func escaped(text string) string {
	var b bytes.Buffer
	_ = xml.EscapeText(&b, []byte(text)) // a buffer takes all
	return b.String()
}
