package pdf_test

import (
	"bytes"
	"fmt"

	"chalkfold/export"
	"chalkfold/export/accept"
	"chalkfold/export/pdf"
)

// A drawing on the sheets of a home printer: how many, and which.
func Example() {
	d := export.New(accept.Sheet(), export.Options{})
	t := pdf.TileUp(d, pdf.Paper{})
	fmt.Println(t.Paper.Title, t.Sheets(), "sheets:")
	for _, x := range t.Tiles {
		fmt.Println(x.Name())
	}
	var b bytes.Buffer
	fmt.Println(pdf.WriteTiles(&b, d, pdf.Options{}), b.String()[:5])
	// Output:
	// A4 or Letter 3 sheets:
	// A1
	// B1
	// <nil> %PDF-
}
