package ease

import (
	"chalkfold/export/pdf"
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/truing"
)

// Where things stand in the picture, millimetres on paper.
const (
	leftEnd  = -2.0
	rightEnd = 168.0
	nameAt   = 17.0 // the middle of the names of levels
	figureAt = 46.0 // of the ease in numbers
	barFrom  = 58.0
	barTo    = 150.0
	saysAt   = 160.0
	rowHigh  = 7.0
	half     = 1.6 // of a cross or an upright
)

// Picture is the ease of a draft level by level; false where nothing of it can
// be said.
func Picture(s *pattern.Sheet, u measure.Unit) (pdf.Figure, bool) {
	rows := truing.EaseTable(s)
	if len(rows) == 0 {
		return pdf.Figure{}, false
	}
	low, high := truing.EaseScale()
	x := func(l measure.Length) float64 {
		share := (min(high, max(low, l)) - low).MM() / (high - low).MM()
		return barFrom + float64((barTo-barFrom)*share)
	}
	var f pdf.Figure
	line := func(ink pdf.Ink, points ...geom.Point) {
		f.Lines = append(f.Lines, pdf.FigureLine{Path: geom.Lines(points...), Ink: ink})
	}
	words := func(at, y float64, text string, bold bool) {
		f.Words = append(f.Words, pdf.FigureWords{At: geom.Point{X: at, Y: y}, Text: text, Bold: bold})
	}
	foot := rowHigh * float64(len(rows)+1)
	step := 2 * measure.Inch
	if u != measure.In {
		step = 5 * measure.Centimetre
	}
	for l := low.Up(step); l <= high; l += step {
		line(pdf.InkFaint, geom.Point{X: x(l), Y: rowHigh / 2}, geom.Point{X: x(l), Y: foot - rowHigh/2})
		words(x(l), foot, u.Tape(l), false)
	}
	for _, y := range []float64{rowHigh / 2, foot - rowHigh/2} { // as wide as the words
		line(pdf.InkFaint, geom.Point{X: leftEnd, Y: y}, geom.Point{X: rightEnd, Y: y})
	}
	words(figureAt, 0, "ease", true)
	words((barFrom+barTo)/2, 0, "tighter than she is  |  wider", true)
	for i, r := range rows {
		y := rowHigh * float64(i+1)
		words(nameAt, y, r.Level, false)
		words(figureAt, y, u.Tape(r.Ease()), false)
		words(saysAt, y, r.Says(), r.Says() != "good")
		line(pdf.InkFaint, geom.Point{X: barFrom, Y: y}, geom.Point{X: barTo, Y: y})
		line(pdf.InkHeavy, geom.Point{X: x(r.Low), Y: y}, geom.Point{X: x(r.High), Y: y})
		line(pdf.InkPlain, geom.Point{X: x(0), Y: y - half}, geom.Point{X: x(0), Y: y + half})
		at := x(r.Ease())
		line(pdf.InkPlain, geom.Point{X: at - half, Y: y - half}, geom.Point{X: at + half, Y: y + half})
		line(pdf.InkPlain, geom.Point{X: at - half, Y: y + half}, geom.Point{X: at + half, Y: y - half})
	}
	f.Caption = "Heavy: the ease that is good there. The upright is her body, the cross the garment. Lengths in " + u.String() + "."
	return f, true
}
