package card

import (
	"strings"
	"unicode"

	"chalkfold/measure"
	"chalkfold/pattern"
)

// Card is the chalk card as plain data: what a page, a terminal or a reader of
// its own needs, all lengths rounded to the step of the tape already.
type Card struct {
	Unit     measure.Unit
	Step     measure.Length // marks are whole steps
	Bound    measure.Length // chords between marks stay this near the line
	Client   string
	Garment  string
	Method   string
	Marks    int            // all marks to chalk
	Rounding measure.Length // the largest distance of a mark from its exact place
	Stray    measure.Length // the largest distance of a chord from its line
	Says     []string       // what must be known before the first mark
	Pieces   []Piece        // to mark by tape
	Traced   []Traced       // facings, traced from them
	Caution  string
}

// Piece is one piece to mark by tape.
type Piece struct {
	ID      pattern.PieceID
	Title   string
	Number  int
	Of      int
	Cut     string           // "cut 1 on the fold"
	Set     []string         // working edge and top line
	Levels  []measure.Length // every level of its rows, from the highest
	Rows    []Row            // round the piece from the neck centre
	Darts   []string         // marked last
	Notches []string
	Grain   string
	Proofs  []Proof
	Cutting int // marks of the cutting line
	Sewing  int // marks of the stitching line
}

// Join says how a row is joined to the one before it.
type Join string

// The first row; by ruler; by hand along a curve; not at all, for the dart
// lies between and is cut folded.
const (
	Start Join = "start"
	Ruled Join = "ruled"
	Curve Join = "curve"
	Dart  Join = "dart"
)

// Row is one row of marks: the place on the cutting line and the place on the
// stitching line that belongs to it.
type Row struct {
	Edge   string // the edge it lies on: neck, shoulder ...
	Name   string // of a named point; else empty
	Join   Join
	Cut    *Place
	Stitch *Place
	// AsideCut and AsideStitch say that the place is a corner to know and not
	// a mark of the line, which passes it at a distance.
	AsideCut, AsideStitch bool
	Notes                 []string
}

// Place is where a mark lies: below the top line (above it where negative) and
// out from the fold or centre line (beyond it where negative).
type Place struct{ Down, Out measure.Length }

// Proof is a length to be measured on the chalked cloth before it is cut.
type Proof struct {
	What   string
	Length measure.Length
	Within measure.Length // marks are rounded: so much either way is right
	Other  string         // what it must agree with
}

// Traced is a piece that is traced from another one by its widths.
type Traced struct {
	Title  string
	Number int
	Of     int
	Cut    string
	Says   []string
}

// tidy is a name as a line of text holds it: without control characters, what
// is no letter replaced.
func tidy(name string) string {
	return strings.Map(func(r rune) rune {
		switch {
		case unicode.IsSpace(r):
			return ' '
		case unicode.IsControl(r):
			return -1
		}
		return r
	}, strings.ToValidUTF8(name, "\ufffd"))
}

// Make works the card of a finished draft out. A draft without pieces gives a
// card without pieces.
func Make(s *pattern.Sheet, u measure.Unit) Card {
	g := gridOf(u)
	c := Card{
		Unit: u, Step: g.step, Bound: g.bound, Client: tidy(s.Job.Client.Name),
		Garment: s.Garment, Method: s.Method, Caution: caution,
	}
	for i := range s.Pieces {
		p := &s.Pieces[i]
		if isLining(p) {
			c.Traced = append(c.Traced, tracedLining(s, p, g))
			continue
		}
		if isTraced(p) {
			c.Traced = append(c.Traced, traced(p, g))
			continue
		}
		m := marking{sheet: s, piece: p, grid: g}
		piece := m.make()
		c.Pieces = append(c.Pieces, piece)
		c.Marks += piece.Cutting + piece.Sewing
		c.Rounding = max(c.Rounding, measure.Length(m.rounding))
		c.Stray = max(c.Stray, measure.Length(m.stray))
	}
	agree(&c, s, g)
	c.Says = says(s, g, c)
	return c
}
