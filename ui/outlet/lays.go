package outlet

import (
	"io"

	"chalkfold/export"
	"chalkfold/export/dxf"
	"chalkfold/export/pdf"
	"chalkfold/export/shop"
	"chalkfold/export/svg"
	"chalkfold/measure"
)

// layFiles are the lays of all cloths, the main one first: the one that she
// kept, or the first lay. None is searched for here.
func layFiles(r request) []file {
	var out []file
	for _, cloth := range append([]string{shop.Main}, shop.Others(r.sheet)...) {
		stem := r.stem + "-lay"
		if cloth != shop.Main {
			stem += "-" + cloth
		}
		drawn := func(o export.LayOptions, write func(export.Drawing) error, note func(string)) error {
			shown, err := r.lays.Of(cloth)
			if err != nil {
				return err
			}
			if note != nil && !shown.Dropped.IsEmpty() {
				note(shown.Dropped.In(r.words()))
			}
			o.Unit = r.words()
			return write(export.NewLay(shown, o))
		}
		paper := r.paper.Leaf()
		page := export.LayOptions{Width: paper.Width, Height: paper.Height}
		out = append(out,
			file{stem + ".svg", func(w io.Writer, note func(string)) error {
				return drawn(page, func(d export.Drawing) error { return svg.Write(w, d, svg.Options{Web: r.Web}) }, note)
			}},
			file{stem + ".pdf", func(w io.Writer, note func(string)) error {
				return drawn(page, func(d export.Drawing) error { return pdf.WriteSheet(w, d, pdf.Options{Warn: note}) }, nil)
			}},
			file{stem + ".dxf", silent(func(w io.Writer) error {
				return drawn(export.LayOptions{Full: true}, func(d export.Drawing) error {
					return dxf.Write(w, d, dxf.Options{English: r.Unit != nil && *r.Unit == measure.In})
				}, nil)
			})})
	}
	return out
}
