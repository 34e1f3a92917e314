package export

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// Options say how the sheet is laid out.
type Options struct {
	Unit  measure.Unit    // of the words on the drawing
	Whole bool            // open the pieces that are cut on the fold
	Only  pattern.PieceID // that piece alone; empty: all
	Roll  measure.Length  // width of the paper; zero: 914 mm, a common roll
}

// New makes the drawing of a sheet.
func New(sheet *pattern.Sheet, o Options) Drawing {
	d := Drawing{Facts: Facts{
		Client:   sheet.Job.Client.Name,
		Garment:  plainTitle(sheet.Garment),
		Method:   sheet.Method,
		Measured: sheet.Job.Client.Measured,
		Unit:     o.Unit,
		Whole:    o.Whole,
	}}
	d.Title = heading(d.Facts)
	for _, p := range sheet.Pieces {
		if o.Only != "" && p.ID != o.Only {
			continue
		}
		if o.Whole {
			p = opened(p)
		}
		d.Pieces = append(d.Pieces, drawn(p, sheet, o.Unit))
	}
	d.Says = says(d)
	roll := o.Roll.MM()
	if roll <= 0 {
		roll = defaultRoll
	}
	d.Page = pack(&d, roll, furniture(sheet, d))
	return d
}

// drawn turns a piece into items. The order matters: lines first, then the
// words, which look for room between them.
func drawn(p pattern.Piece, sheet *pattern.Sheet, u measure.Unit) Placed {
	out := Placed{Piece: p, Place: geom.Identity, Cut: cutWords(p)}
	out.Items = append(out.Items, outlines(p)...)
	out.Items = append(out.Items, foldSign(p)...)
	out.Items = append(out.Items, grainSign(p, oneWay(p, sheet))...)
	out.Items = append(out.Items, darts(p)...)
	out.Items = append(out.Items, notches(p)...)
	out.Items = append(out.Items, balances(p)...)
	out.Items = append(out.Items, holes(p)...)

	r := newRoom(out.Items, p)
	words := labelWords(p, sheet, u)
	out.Items = append(out.Items, lineNames(p, r)...)
	out.Items = append(out.Items, label(words, p, r)...)
	for _, w := range words {
		out.Label = append(out.Label, apart(w))
	}
	return out
}

// oneWay says that the cloth of the piece has a nap, so all pieces must lie
// one way.
func oneWay(p pattern.Piece, sheet *pattern.Sheet) bool {
	c, ok := sheet.Job.Cloth(p.Cloth)
	return ok && c.Nap
}

// micron rounds to the last decimal that files keep, so that what is placed
// and what is written agree.
func micron(x float64) float64 { return Round(x, 1000) }
