package pdf

import (
	"fmt"
	"math"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern/geom"
)

// The cover, in millimetres from the upper left corner of the page.
const (
	coverLeft   = 12.0
	coverTop    = 12.0
	squaresTop  = 41.0
	squareApart = 6.0   // more than the 5 mm that stay clear round a square
	besideLeft  = 120.0 // words and map beside the squares
	lineClear   = 15.0  // of the control line along from the edge of the page
)

// controlSquares prove the scale to a metric and to an inch tape.
var controlSquares = []struct {
	side measure.Length
	says string
}{{10 * measure.Centimetre, "10 cm"}, {4 * measure.Inch, "4 in"}}

// cover is the first sheet: it has no piece on it, so that a print can be
// measured and thrown away before any other is made.
func (b *book) cover() {
	b.page(b.Paper.Width, b.Paper.Height)
	b.stretched(b.across, b.along, func() {
		b.on(layerMarks, func() {
			y := squaresTop
			for _, s := range controlSquares {
				at := geom.Point{X: coverLeft, Y: y}
				box := geom.Box{Min: at, Max: at.Add(geom.Vector{X: s.side.MM(), Y: s.side.MM()})}
				b.frame(box, thin)
				y = box.Max.Y + squareApart
			}
			b.controlLines()
		})
		b.on(layerText, func() {
			y := squaresTop
			for _, s := range controlSquares {
				b.write(geom.Point{X: coverLeft + s.side.MM()/2, Y: y + s.side.MM()/2 + 3}, words{text: s.says, size: 8, middle: true})
				y += s.side.MM() + squareApart
			}
			b.coverWords()
		})
	})
}

// alongX is where the upright control line stands; words keep clear of it.
func (b *book) alongX() float64 { return b.Paper.Width - lineClear }

func (b *book) acrossY() float64 { return b.Paper.Height - 21 }

func (b *book) controlLines() {
	across, along := Controls(b.Paper)
	const tick = 2.0
	x, y := b.alongX(), b.acrossY()
	top, bottom := geom.Point{X: x, Y: coverTop}, geom.Point{X: x, Y: coverTop + along.Length.MM()}
	left, right := geom.Point{X: coverLeft, Y: y}, geom.Point{X: coverLeft + across.Length.MM(), Y: y}
	b.ruled(top, bottom, thin)
	b.ruled(left, right, thin)
	for _, p := range []geom.Point{top, bottom} {
		b.ruled(p.Add(geom.Vector{X: -tick}), p.Add(geom.Vector{X: tick}), thin)
	}
	for _, p := range []geom.Point{left, right} {
		b.ruled(p.Add(geom.Vector{Y: -tick}), p.Add(geom.Vector{Y: tick}), thin)
	}
}

func (b *book) coverWords() {
	across, along := Controls(b.Paper)
	say := func(c Control) string {
		return c.Name + ": " + measure.In.Say(c.Length) + " = " + fmt.Sprintf("%.2f cm", measure.Cm.Of(c.Length))
	}
	b.write(geom.Point{X: coverLeft, Y: b.acrossY() + 7}, words{text: "Control line " + say(across), size: 3.4})
	b.write(geom.Point{X: b.alongX() - 2, Y: coverTop + along.Length.MM()/2}, words{text: "Control line " + say(along), size: 3.4, turn: -90, middle: true})

	wide := b.alongX() - 8 - coverLeft
	y := coverTop
	size := b.titleSize(wide)
	b.write(geom.Point{X: coverLeft, Y: y + 0.8*size}, words{text: b.shortened(b.drawing.Title, size, wide), size: size})
	y += 10
	sheets := fmt.Sprintf("%d sheets of %s, this one among them: %d rows, %d columns.", b.Sheets(), b.Paper.Title, b.Rows, b.Columns)
	y = b.block(geom.Point{X: coverLeft, Y: y}, wide, 3.8, sheets)
	if b.note != "" {
		b.block(geom.Point{X: coverLeft, Y: y}, wide, 3.2, "This print is "+b.note+".")
	}

	wide = b.alongX() - 8 - besideLeft
	y = squaresTop
	for _, l := range b.coverAdvice(across, along) {
		if l == "" {
			continue
		}
		y = b.block(geom.Point{X: besideLeft, Y: y}, wide, 3.2, l) + 1.6
	}
	b.drawMap(geom.Box{Min: geom.Point{X: besideLeft, Y: y + 2}, Max: geom.Point{X: besideLeft + wide, Y: b.acrossY() - 9}})
}

// titleSize is large, smaller for a long title: it has one line.
func (b *book) titleSize(room float64) float64 {
	const large, small = 7.0, 4.0
	return max(min(large, large*room/max(b.width(b.drawing.Title, large), 1)), small)
}

func (b *book) coverAdvice(across, along Control) []string {
	limits := func(c Control) string {
		return fmt.Sprintf("%.1f to %.1f mm %s", float64(c.Length)/mostFactor, float64(c.Length)/leastFactor, c.Name)
	}
	advice := []string{
		"1. Print this sheet alone first, at 100 %, without fitting to the page.",
		"2. Measure both squares and both lines. True within 1/64 in (0.4\u00a0mm): print the rest.",
		"3. If a line is off, give both lengths as --printed-across and --printed-along and print anew. Made up can be " + limits(across) + ", " + limits(along) + ".",
		"4. Cut or fold each sheet along the joining line at its left and upper edge. Lay it line on line until the tips of the half-diamonds meet, and tape it. The name beyond each line is the sheet that comes there.",
		"5. Measure over a joint once more before cutting: each joint within 1/32 in (0.8\u00a0mm).",
	}
	if b.note != "" {
		advice[2] = "3. The lines were measured on a print that was not stretched; now they should be true."
	}
	return append(advice, b.pageNotes())
}

// pageNotes are the words above the pieces of the drawing: how it was drafted,
// what is proposed and not measured, what truing found. What the cover says in
// words of its own is left out.
func (b *book) pageNotes() string {
	var lines []string
	title := 0.0
	for _, i := range b.drawing.Page {
		if i.Name == "note" {
			title = max(title, i.Height)
		}
	}
	for _, i := range b.drawing.Page {
		if i.Name == "note" && i.Height < title {
			lines = append(lines, i.Text)
		}
	}
	var out []string
	for _, sentence := range strings.SplitAfter(strings.Join(lines, " "), ". ") {
		own := false
		for _, o := range saidByCover {
			own = own || strings.HasPrefix(sentence, o)
		}
		if !own {
			out = append(out, strings.TrimSpace(sentence))
		}
	}
	return strings.Join(out, " ")
}

// saidByCover is how the sentences begin that the cover has in other words.
var saidByCover = []string{"Drawn at full size", "Before cutting, measure", "If they are not true"}

// block writes wrapped words and returns where the next line begins.
func (p *pen) block(at geom.Point, width, size float64, text string) float64 {
	for _, l := range p.wrap(text, size, width) {
		p.write(geom.Point{X: at.X, Y: at.Y + 0.8*size}, words{text: l, size: size})
		at.Y += lead * size
	}
	return at.Y
}

// lead is the distance of lines in parts of the size.
const lead = 1.32

// drawMap shows how the sheets lie, with the pieces on them.
func (b *book) drawMap(room geom.Box) {
	if len(b.Tiles) == 0 || room.Empty() {
		return
	}
	k := min(room.Width()/b.Width, room.Height()/b.Height)
	m := geom.Scale(k, k).Then(geom.Move(geom.Vector{X: room.Min.X, Y: room.Min.Y}))
	for i, p := range b.drawing.Pieces {
		b.line(p.Piece.CutLine.Transform(b.Places[i]).Transform(m), stroke{weight: 0.35, gray: 130})
	}
	b.legend(room, k)
	pitch := b.Pitch()
	size := min(0.3*k*pitch.X, 4)
	for _, x := range b.Tiles {
		cell := b.cell(x)
		cell = geom.Box{Min: m.Apply(cell.Min), Max: m.Apply(cell.Max)}
		b.frame(cell, tickStroke)
		at := cell.Centre()
		at.Y += 0.36 * size
		b.write(at, words{text: x.Name(), size: size, middle: true, bold: true})
	}
}

// legend names the pieces and their sheets beside the map or, where it is too
// wide for that, below it.
func (b *book) legend(room geom.Box, k float64) {
	const size = 2.9
	at := geom.Point{X: room.Min.X + k*b.Width + 4, Y: room.Min.Y}
	if room.Max.X-at.X < 25 {
		at = geom.Point{X: room.Min.X, Y: room.Min.Y + k*b.Height + 3}
	}
	for i, p := range b.drawing.Pieces {
		box := placedBox(p, b.Places[i])
		from, to := b.at(box.Min), b.at(box.Max)
		says := fmt.Sprintf("%s: %s", p.Piece.Title, from.Name())
		if to != from {
			says += " to " + to.Name()
		}
		lines := b.wrap(says, size, room.Max.X-at.X)
		if at.Y+lead*size*float64(len(lines)) > room.Max.Y {
			return
		}
		at.Y = b.block(at, room.Max.X-at.X, size, says) + 0.8
	}
}

// at is the sheet whose own part holds a place.
func (t Tiling) at(p geom.Point) Tile {
	pitch := t.Pitch()
	r, c := int(math.Floor((p.Y-tileJoin)/pitch.Y)), int(math.Floor((p.X-tileJoin)/pitch.X))
	return Tile{min(max(r, 0), t.Rows-1), min(max(c, 0), t.Columns-1)}
}

// cell is the part of the joined sheets that is a sheet's own: to the joining
// lines, and to the edge where it has no neighbour.
func (t Tiling) cell(x Tile) geom.Box {
	b := t.Window(x)
	if x.Column > 0 {
		b.Min.X += tileJoin
	}
	if x.Row > 0 {
		b.Min.Y += tileJoin
	}
	if x.Column < t.Columns-1 {
		b.Max.X -= tileJoin
	}
	if x.Row < t.Rows-1 {
		b.Max.Y -= tileJoin
	}
	return b
}
