package pdf

import (
	"fmt"
	"io"

	"chalkfold/export"
	"chalkfold/measure"
	"chalkfold/pattern/geom"
)

// WriteTiles draws all pieces at true size on sheets for a home printer: a
// cover with control squares, control lines and the map, then the tiles.
func WriteTiles(w io.Writer, d export.Drawing, o Options) error {
	across, along, err := o.factors()
	if err != nil {
		return err
	}
	t := TileUp(d, o.Paper)
	b := book{
		pen: newPen(d.Title, d.Facts.Measured), Tiling: t, drawing: d,
		across: across, along: along, note: factorSays(across, along),
	}
	for i, p := range d.Pieces {
		b.things = append(b.things, things(p.Items, t.Places[i])...)
	}
	b.cover()
	for i, x := range t.Tiles {
		b.tile(i, x)
	}
	b.contents()
	o.warn(b.warning())
	return b.finish(w)
}

// book is the tiles being drawn.
type book struct {
	*pen
	Tiling
	drawing       export.Drawing
	things        []thing
	across, along float64
	note          string
}

// contents leads to each piece: to the first sheet that shows it.
func (b *book) contents() {
	b.marks = append(b.marks, bookmark{b.clean("Cover"), 0, 1, 0})
	for i, p := range b.drawing.Pieces {
		at := placedBox(p, b.Places[i]).Centre()
		best, page := 0.0, 1
		for k, x := range b.Tiles {
			if far := b.Window(x).Centre().Dist(at); k == 0 || far < best {
				best, page = far, k+2
			}
		}
		text := p.Piece.Title + " (" + b.Tiles[page-2].Name() + ")"
		b.marks = append(b.marks, bookmark{b.clean(text), 0, page, 0})
	}
}

var (
	joinStroke = stroke{weight: 0.18, gray: 90}
	thin       = stroke{weight: 0.25}
	tickStroke = stroke{weight: 0.2}
)

// tile draws one sheet.
func (b *book) tile(i int, x Tile) {
	b.page(b.Paper.Width, b.Paper.Height)
	window := b.Window(x)
	live := geom.Box{Min: geom.Point{X: tileMargin, Y: tileMargin}}
	live.Max = live.Min.Add(window.Min.To(window.Max))
	b.stretched(b.across, b.along, func() {
		b.within(live, func() { b.draw(b.things, window, live.Min) })
		b.on(layerMarks, func() { b.joins(x, live) })
		at := b.freeSpot(window).Add(live.Min.Sub(window.Min))
		b.on(layerText, func() { b.sign(i, x, at) })
	})
}

// joins are the joining lines to the sheets around, each with its
// half-diamond and the neighbour's name.
func (b *book) joins(x Tile, live geom.Box) {
	in := live.Grow(-tileJoin)
	middle := in.Centre()
	for _, side := range []struct {
		row, column int
		a, b, at    geom.Point
		out         geom.Vector
		turn        float64
	}{
		{-1, 0, geom.Point{X: live.Min.X, Y: in.Min.Y}, geom.Point{X: live.Max.X, Y: in.Min.Y}, geom.Point{X: middle.X, Y: in.Min.Y}, geom.Vector{Y: -1}, 0},
		{1, 0, geom.Point{X: live.Min.X, Y: in.Max.Y}, geom.Point{X: live.Max.X, Y: in.Max.Y}, geom.Point{X: middle.X, Y: in.Max.Y}, geom.Vector{Y: 1}, 0},
		{0, -1, geom.Point{X: in.Min.X, Y: live.Min.Y}, geom.Point{X: in.Min.X, Y: live.Max.Y}, geom.Point{X: in.Min.X, Y: middle.Y}, geom.Vector{X: -1}, -90},
		{0, 1, geom.Point{X: in.Max.X, Y: live.Min.Y}, geom.Point{X: in.Max.X, Y: live.Max.Y}, geom.Point{X: in.Max.X, Y: middle.Y}, geom.Vector{X: 1}, 90},
	} {
		next := Tile{x.Row + side.row, x.Column + side.column}
		if !b.Has(next.Row, next.Column) {
			continue
		}
		b.ruled(side.a, side.b, joinStroke)
		b.halfDiamond(side.at, side.out)
		// The name stands upright to its edge, in the strip beyond the line.
		size := 3.2
		base := side.at.Add(side.out.Scale(tileJoin / 2))
		switch {
		case side.turn == 0:
			base.Y += 0.36 * size
		default:
			base.X -= 0.36 * size * side.turn / 90
		}
		b.write(base, words{text: next.Name(), size: size, turn: side.turn, middle: true})
	}
}

// halfDiamond stands inside the line with its tip on it.
func (b *book) halfDiamond(tip geom.Point, out geom.Vector) {
	const deep, half = 6.0, 3.5
	base := tip.Add(out.Scale(-deep))
	a, c := base.Add(out.Left().Scale(half)), base.Add(out.Right().Scale(half))
	b.line(geom.Lines(a, tip, c, a), thin)
}

// The block that names a sheet and holds its rules.
const (
	signWide = 64.0
	signHigh = 25.0
)

// sign writes the sheet's name and number and draws its two rules.
func (b *book) sign(i int, x Tile, at geom.Point) {
	wide := b.write(geom.Point{X: at.X, Y: at.Y + 8}, words{text: x.Name(), size: 9, bold: true})
	beside := at.X + wide + 3
	room := at.X + signWide - beside
	b.write(geom.Point{X: beside, Y: at.Y + 4}, words{text: fmt.Sprintf("sheet %d of %d", i+2, b.Sheets()), size: 3.4})
	b.write(geom.Point{X: beside, Y: at.Y + 8}, words{text: b.shortened(b.drawing.Title, 2.8, room), size: 2.8})
	b.rule(geom.Point{X: at.X, Y: at.Y + 14}, 5*measure.Centimetre, 5, "5 cm")
	b.rule(geom.Point{X: at.X, Y: at.Y + 20}, 2*measure.Inch, 4, "2 in")
	if b.note != "" {
		for k, l := range b.wrap(b.note, 2.4, signWide) {
			b.write(geom.Point{X: at.X, Y: at.Y + 23.6 + 3*float64(k)}, words{text: l, size: 2.4})
		}
	}
}

// shortened is as much of a text as fits on one line.
func (p *pen) shortened(text string, size, width float64) string {
	text = p.clean(text)
	if p.face.width(text, size) <= width {
		return text
	}
	head, _ := p.cut(text, size, max(width-p.face.width("…", size), 0))
	return head + "…"
}

// rule is a line of a known length with ticks.
func (p *pen) rule(at geom.Point, long measure.Length, parts int, says string) {
	end := at.Add(geom.Vector{X: long.MM()})
	p.ruled(at, end, tickStroke)
	for k := range parts + 1 {
		t := at.Lerp(end, float64(k)/float64(parts))
		high := 1.5
		if k == 0 || k == parts {
			high = 3
		}
		p.ruled(t, t.Add(geom.Vector{Y: -high}), tickStroke)
	}
	p.write(end.Add(geom.Vector{X: 2}), words{text: says, size: 3})
}

// freeSpot is where on a sheet the block covers nothing: the nearest such
// place to the lower left corner. Where the sheet is full it stands there.
func (b *book) freeSpot(window geom.Box) geom.Point {
	in := window.Grow(-tileOverlap - 1)
	g := newGround(in)
	for i := range b.things {
		g.take(&b.things[i])
	}
	// Half-diamonds stand at the middles of the edges.
	mid := window.Centre()
	for _, p := range []geom.Point{{X: mid.X, Y: window.Min.Y}, {X: mid.X, Y: window.Max.Y}, {X: window.Min.X, Y: mid.Y}, {X: window.Max.X, Y: mid.Y}} {
		g.box(geom.Box{Min: p, Max: p}.Grow(14))
	}
	high := signHigh
	if b.note != "" {
		high += 6
	}
	if at, ok := g.find(signWide, high); ok {
		return at
	}
	return geom.Point{X: in.Min.X, Y: in.Max.Y - high}
}
