package pdf

import (
	"fmt"
	"io"
	"math"
	"sort"

	"chalkfold/export"
	"chalkfold/measure"
	"chalkfold/pattern/geom"
)

// Options of a printed drawing.
type Options struct {
	Paper Paper // of tiles; zero: the usual one
	// PrintedAcross and PrintedAlong are how long the two control lines of
	// the cover came out on paper. Zero: as they should.
	PrintedAcross measure.Length
	PrintedAlong  measure.Length
	// Warn is told what the reader should know about the file; nil: nobody.
	Warn func(string)
}

func (o Options) warn(text string) {
	if o.Warn != nil && text != "" {
		o.Warn(text)
	}
}

// longest is the longest side of a sheet. Readers stop at 14,400 points,
// 5.08 m; rolls are cut before that.
const longest = 5000.0

// sheetMargin is left below and above pieces on pages that were split.
const sheetMargin = 12.0

// WriteSheet draws all pieces at true size on one sheet, as wide as the
// drawing was laid out for. A sheet that would be longer than 5 m goes on on
// further pages; no piece is cut in two.
func WriteSheet(w io.Writer, d export.Drawing, o Options) error {
	pages, err := split(d)
	if err != nil {
		return err
	}
	p := newPen(d.Title, d.Facts.Measured)
	for _, page := range pages {
		leaf := p.page(page.width, page.height)
		whole := geom.Box{Max: geom.Point{X: leaf.width, Y: leaf.height}}
		all := things(page.words, geom.Identity)
		for _, i := range page.pieces {
			piece := d.Pieces[i]
			m := piece.Place.Then(geom.Move(geom.Vector{Y: -page.up}))
			all = append(all, things(piece.Items, m)...)
			p.bookmark(piece.Piece.Title, 0, placedBox(piece, m).Min.Y)
		}
		p.draw(all, whole, geom.Point{})
	}
	if len(pages) > 1 {
		o.warn(fmt.Sprintf("the sheet would be longer than 5 m: it is on %d pages", len(pages)))
	}
	o.warn(p.warning())
	return p.finish(w)
}

func placedBox(p export.Placed, m geom.Matrix) geom.Box {
	b := p.Bounds()
	if b.Empty() {
		return b
	}
	return geom.Box{}.Add(m.Apply(b.Min)).Add(m.Apply(b.Max))
}

// sheetPage is what stands on one page of a sheet.
type sheetPage struct {
	width, height float64
	words         []export.Item
	pieces        []int
	up            float64 // how far the pieces are moved up
}

// split gives the pages of a drawing, one if it can be.
func split(d export.Drawing) ([]sheetPage, error) {
	width, height := max(d.Width, 1), max(d.Height, 1)
	if width > longest {
		return nil, tooLarge("the sheet", width)
	}
	all := sheetPage{width: width, height: height, words: d.Page}
	order := make([]int, len(d.Pieces))
	boxes := make([]geom.Box, len(d.Pieces))
	for i, p := range d.Pieces {
		order[i], boxes[i] = i, placedBox(p, p.Place)
	}
	if height <= longest {
		all.pieces = order
		return []sheetPage{all}, nil
	}
	sort.SliceStable(order, func(a, b int) bool { return boxes[order[a]].Min.Y < boxes[order[b]].Min.Y })
	// Each page takes pieces from the top as long as they fit below its
	// first one; the words above them stand on the first page.
	page := sheetPage{width: width, words: d.Page}
	var out []sheetPage
	for _, i := range order {
		bottom := boxes[i].Max.Y + sheetMargin - page.up
		if bottom > longest && (len(page.pieces) > 0 || len(page.words) > 0) {
			out = append(out, page)
			page = sheetPage{width: width, up: boxes[i].Min.Y - sheetMargin}
			bottom = boxes[i].Max.Y + sheetMargin - page.up
		}
		if bottom > longest {
			return nil, tooLarge(d.Pieces[i].Piece.Title, boxes[i].Height())
		}
		page.pieces = append(page.pieces, i)
		page.height = max(page.height, math.Ceil(bottom))
	}
	out = append(out, page)
	for i := range out {
		if out[i].height == 0 {
			out[i].height = wordsBottom(out[i].words) + sheetMargin
		}
	}
	return out, nil
}

func wordsBottom(items []export.Item) float64 {
	bottom := 0.0
	for _, i := range items {
		bottom = max(bottom, i.Bounds().Max.Y)
	}
	return math.Ceil(bottom)
}

func tooLarge(what string, size float64) error {
	return &measure.Refusal{
		Where: "sheet", Read: fmt.Sprintf("%s is %.2f m", what, size/1000),
		Wrong: "a page of this kind holds 5 m at most", Works: "print tiles, or take SVG or DXF",
	}
}
