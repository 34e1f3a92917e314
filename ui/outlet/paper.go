package outlet

import (
	"io"
	"strings"

	"chalkfold/export/card"
	"chalkfold/export/cardpdf"
	"chalkfold/export/client"
	"chalkfold/export/guide"
	"chalkfold/export/handout"
	"chalkfold/export/measuring"
	"chalkfold/export/pdf"
	"chalkfold/export/slip"
)

// check refuses options that no file could be written with.
func (o Options) check() error {
	paper, err := pdf.ParsePaper(o.Paper)
	if err != nil {
		return err
	}
	return pdf.Options{Paper: paper, PrintedAcross: o.PrintedAcross, PrintedAlong: o.PrintedAlong}.Check()
}

func sheetFiles(r request) []file {
	return []file{{r.stem + ".pdf", func(w io.Writer, note func(string)) error {
		return pdf.WriteSheet(w, r.page(), pdf.Options{Warn: note})
	}}}
}

func tileFiles(r request) []file {
	o := pdf.Options{Paper: r.paper, PrintedAcross: r.PrintedAcross, PrintedAlong: r.PrintedAlong}
	return []file{{r.stem + "-tiles-" + strings.ToLower(r.paper.ID) + ".pdf", func(w io.Writer, note func(string)) error {
		o.Warn = note
		return pdf.WriteTiles(w, r.page(), o)
	}}}
}

func cardFiles(r request) []file {
	o := func() card.Options { return card.Options{Unit: r.words(), Card: r.card()} }
	return []file{
		{r.stem + "-card.md", silent(func(w io.Writer) error { return card.WriteMarkdown(w, r.sheet, o()) })},
		{r.stem + "-card.txt", silent(func(w io.Writer) error { return card.WriteText(w, r.sheet, o()) })},
		{r.stem + "-card.pdf", func(w io.Writer, note func(string)) error {
			return cardpdf.Write(w, r.sheet, cardpdf.Options{Unit: r.words(), Card: r.card(), Paper: r.paper, Warn: note})
		}},
	}
}

func guideFiles(r request) []file {
	o := guide.Options{Unit: r.words(), Paper: r.paper, Lays: r.lays}
	return []file{
		{r.stem + "-guide.md", silent(func(w io.Writer) error { return guide.WriteMarkdown(w, r.sheet, o) })},
		{r.stem + "-guide.pdf", func(w io.Writer, note func(string)) error {
			o := o
			o.Warn = note
			return guide.WritePDF(w, r.sheet, o)
		}},
	}
}

func handoutFiles(r request) []file {
	return []file{{r.stem + "-handout.pdf", func(w io.Writer, note func(string)) error {
		return handout.WritePDF(w, r.sheet, handout.Options{Unit: r.words(), Paper: r.paper, Warn: note})
	}}}
}

func measuringFiles(r request) []file {
	return []file{{r.stem + "-measuring.pdf", func(w io.Writer, note func(string)) error {
		return measuring.WritePDF(w, r.sheet, measuring.Options{Unit: r.words(), Paper: r.paper, Warn: note})
	}}}
}

func clientFiles(r request) []file {
	o := client.Options{Unit: r.words(), Notes: r.Notes, Paper: r.paper, Lays: r.lays}
	return []file{
		{r.stem + "-client.md", silent(func(w io.Writer) error { return client.WriteMarkdown(w, r.sheet, o) })},
		{r.stem + "-client.pdf", func(w io.Writer, note func(string)) error {
			o := o
			o.Warn = note
			return client.WritePDF(w, r.sheet, o)
		}},
	}
}

func slipFiles(r request) []file {
	o := slip.Options{Unit: r.words(), Lays: r.lays}
	return []file{
		{r.stem + "-slip.md", silent(func(w io.Writer) error { return slip.WriteMarkdown(w, r.sheet, o) })},
		{r.stem + "-slip.pdf", func(w io.Writer, note func(string)) error {
			o := o
			o.Warn = note
			return slip.WritePDF(w, r.sheet, o)
		}},
	}
}
