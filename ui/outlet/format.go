package outlet

import (
	"io"
	"strings"
	"sync"

	"chalkfold/export"
	"chalkfold/export/card"
	"chalkfold/export/dxf"
	"chalkfold/export/pdf"
	"chalkfold/export/shop"
	"chalkfold/export/svg"
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/files"
)

// Format is one way to leave the house.
type Format struct {
	ID    string
	Title string
	Says  string // one line on what it is for
	files func(r request) []file
	early bool // it may leave before the draft is complete: nothing is cut from it
	// before: it tells two drafts apart, so it leaves only where the options
	// name the one before.
	before bool
	inAll  bool // it was asked for by `all` alone
}

// formats in the order of help and of `all`. A new format is a row here.
var formats = []Format{
	{ID: "svg", Title: "SVG", Says: "a drawing at true size, to print or to look at", files: svgFiles},
	{ID: "dxf", Title: "DXF", Says: "for other pattern software and cutters (ASTM D6673)", files: dxfFiles},
	{ID: "pdf", Title: "Sheet", Says: "one sheet at true size, for a copy shop or a plotter (PDF)", files: sheetFiles},
	{ID: "tiles", Title: "Tiles", Says: "sheets for a home printer, to be joined (PDF)", files: tileFiles},
	{ID: "card", Title: "Chalk card", Says: "marks by tape and chalk, for cutting without a printer", files: cardFiles},
	{ID: "guide", Title: "Cutting guide", Says: "what to cut and to buy, marks, the sewing order", files: guideFiles},
	{ID: "lay", Title: "Lay", Says: "the pieces on the cloth, where each lies by tape", files: layFiles},
	{ID: "handout", Title: "Handout", Says: "the steps with drawings and blank sums, for a class (PDF)", files: handoutFiles},
	{ID: "measuring", Title: "Measuring sheet", Says: "to take measurements on (PDF)", files: measuringFiles, early: true},
	{ID: "client", Title: "Client card", Says: "her measurements, choices and fittings", files: clientFiles, early: true},
	{ID: "slip", Title: "Shop slip", Says: "cloth and small things to buy", files: slipFiles},
	{ID: "lesson", Title: "Lesson page", Says: "the steps one at a time on a learner's phone (HTML)", files: lessonFiles},
	{ID: "moved", Title: "What moved", Says: "the marks that differ from the draft before, by tape", files: movedFiles, before: true},
}

// All is the word for every format there is.
const All = "all"

// Formats lists the formats that a sheet alone is enough for.
func Formats() []Format { return Offered(Options{}) }

// Offered lists the formats that can leave with these options.
func Offered(o Options) []Format {
	var out []Format
	for _, f := range formats {
		if !f.before || o.Before != nil {
			out = append(out, f)
		}
	}
	return out
}

// Parse reads a list of formats, "svg,card" or "all". Each counts once, in
// the order of the table.
func Parse(list string) ([]Format, error) {
	asked := map[string]bool{}
	for _, word := range strings.FieldsFunc(list, func(r rune) bool { return r == ',' || r == ' ' }) {
		word = strings.ToLower(word)
		if word != All && !known(word) {
			return nil, &measure.Refusal{Where: "--format", Read: measure.Quoted(word), Wrong: "there is no such format", Works: "choose from " + choices()}
		}
		asked[word] = true
	}
	if len(asked) == 0 {
		return nil, &measure.Refusal{Where: "--format", Read: "nothing", Wrong: "no format was named", Works: "choose from " + choices()}
	}
	var out []Format
	for _, f := range formats {
		if asked[f.ID] || asked[All] {
			f.inAll = !asked[f.ID]
			out = append(out, f)
		}
	}
	return out, nil
}

func known(id string) bool {
	for _, f := range formats {
		if f.ID == id {
			return true
		}
	}
	return false
}

func choices() string {
	var b strings.Builder
	for _, f := range formats {
		b.WriteString(f.ID + ", ")
	}
	return b.String() + "or " + All
}

// Options of an export.
type Options struct {
	Session measure.Unit   // the session's unit
	Unit    *measure.Unit  // asked for; nil: the session's, and a metric DXF
	Whole   bool           // pieces on the fold opened
	Each    bool           // a picture a piece
	Web     bool           // pictures without a size of their own
	Roll    measure.Length // width of the paper; zero: the usual
	Force   bool           // replace files that differ
	// Paper is the paper of tiles and documents as it was named: a4, letter,
	// legal, a3, tabloid, a4-letter, capitals or not; empty: the usual one.
	Paper string
	// PrintedAcross and PrintedAlong are how long the control lines on the
	// cover of the tiles came out on paper; zero: as they should. They stretch
	// tiles alone, never a document.
	PrintedAcross measure.Length
	PrintedAlong  measure.Length
	// Notes puts the private notes on the client card.
	Notes bool
	// Numbers gives her measures in the sums of the lesson page, which else
	// name them: the built-in sample has nothing to hide.
	Numbers bool
	// Before is the draft before, where the marks that moved are asked for.
	Before *pattern.Sheet
	// put writes a file; nil: files.Put.
	put func(path string, content []byte, force bool) (files.Outcome, error)
}

func (o Options) words() measure.Unit {
	if o.Unit != nil {
		return *o.Unit
	}
	return o.Session
}

// request is what a format needs to name and fill its files.
type request struct {
	sheet *pattern.Sheet
	stem  string
	Options
	page  func() export.Drawing // of all pieces, made once for all formats
	card  func() *card.Card     // the chalk card, likewise
	lays  *shop.Lays            // of all cloths
	paper pdf.Paper
}

func newRequest(sheet *pattern.Sheet, stem string, o Options) request {
	r := request{sheet: sheet, stem: stem, Options: o}
	r.page = sync.OnceValue(func() export.Drawing { return r.drawing("") })
	r.card = sync.OnceValue(func() *card.Card {
		c := card.Make(sheet, o.words())
		return &c
	})
	r.lays = shop.NewLays(sheet, o.words())
	r.paper, _ = pdf.ParsePaper(o.Paper) // check has refused what cannot be read
	return r
}

// drawing is the drawing of one piece; of all, if none is named.
func (r request) drawing(only pattern.PieceID) export.Drawing {
	return export.New(r.sheet, export.Options{Unit: r.words(), Whole: r.Whole, Roll: r.Roll, Only: only})
}

// file is one output: its name and what fills it. What the reader should know
// about it is told to note.
type file struct {
	name string
	fill func(w io.Writer, note func(string)) error
}

// silent is a fill that has nothing to tell.
func silent(fill func(w io.Writer) error) func(io.Writer, func(string)) error {
	return func(w io.Writer, _ func(string)) error { return fill(w) }
}

func svgFiles(r request) []file {
	end := ".svg"
	if r.Web {
		end = "-web.svg"
	}
	o := svg.Options{Web: r.Web}
	if !r.Each {
		return []file{{r.stem + end, silent(func(w io.Writer) error { return svg.Write(w, r.page(), o) })}}
	}
	var out []file
	for _, p := range r.sheet.Pieces {
		out = append(out, file{r.stem + "-" + string(p.ID) + end, silent(func(w io.Writer) error {
			return svg.Write(w, r.drawing(p.ID), o)
		})})
	}
	return out
}

func dxfFiles(r request) []file {
	english := r.Unit != nil && *r.Unit == measure.In
	return []file{{r.stem + ".dxf", silent(func(w io.Writer) error {
		return dxf.Write(w, r.page(), dxf.Options{English: english})
	})}}
}
