package outlet

import (
	"chalkfold/export"
	"chalkfold/export/pdf"
	"chalkfold/measure"
	"chalkfold/pattern"
)

// TileUp says how the tiles of a paper would lie over the pieces: what `tiles`
// prints, for a screen to show.
func TileUp(sheet *pattern.Sheet, u measure.Unit, paper string) (pdf.Tiling, export.Drawing, error) {
	p, err := pdf.ParsePaper(paper)
	if err != nil {
		return pdf.Tiling{}, export.Drawing{}, err
	}
	d := newRequest(sheet, "", Options{Session: u}).drawing("")
	return pdf.TileUp(d, p), d, nil
}

// Paper is a size of paper by its name.
type Paper struct{ ID, Title string }

// Papers lists the papers, the usual one first.
func Papers() []Paper {
	var out []Paper
	for _, p := range pdf.Papers() {
		out = append(out, Paper{p.ID, p.Title})
	}
	return out
}

// Controls are the lengths of the two lines on the cover of the tiles that show
// how true a printer prints.
func Controls(paper string) (across, along measure.Length) {
	p, err := pdf.ParsePaper(paper)
	if err != nil {
		return 0, 0
	}
	a, b := pdf.Controls(p)
	return a.Length, b.Length
}

// Check refuses options that no file could be written with.
func (o Options) Check() error { return o.check() }
