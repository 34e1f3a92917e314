package export

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// Drawing is a sheet made ready to leave.
type Drawing struct {
	Title  string
	Says   string  // one sentence on what is drawn
	Width  float64 // of the page, millimetres
	Height float64
	Pieces []Placed // in the order of the draft
	Page   []Item   // control squares and words, in page coordinates
	Facts  Facts
}

// Facts is what a format may want to say in fields of its own.
type Facts struct {
	Client   string
	Garment  string // "Dress"
	Method   string // "measured"
	Measured pattern.Date
	Unit     measure.Unit // of the words
	Whole    bool         // pieces on the fold are drawn opened
}

// Placed is one piece: its items in the coordinates of its draft, and the
// matrix that puts them on the page.
type Placed struct {
	Piece pattern.Piece
	Place geom.Matrix
	Items []Item
	Label []string // the words of the label block, a line each, unbroken
	Cut   string   // "Cut 1 on fold"
}

// Kind says which fields of an Item count.
type Kind int8

// An item is a line with Path, a dot with At, or words with Text, At, Height
// and Turn.
const (
	Line Kind = iota
	Dot
	Words
)

// Heads says where a line has arrowheads.
type Heads int8

// No arrowheads, one at the end of the path, one at each end.
const (
	NoHeads Heads = iota
	HeadAtEnd
	HeadsBoth
)

// Item is one thing on a drawing.
type Item struct {
	Role  pattern.Role
	Kind  Kind
	Name  string // what it is: armhole, bust, label ...
	Path  geom.Path
	Heads Heads
	// Sign is set on a line that only tells the eye what another item is,
	// such as the bracket at a fold. A format with a word of its own for the
	// meaning leaves it out.
	Sign bool

	At     geom.Point // of words the start of the base line
	Text   string
	Height float64 // size of the lettering, millimetres
	Turn   float64 // degrees, clockwise to the eye
	Middle bool    // At is the middle of the base line
}

// headLength and headHalf are the size of an arrowhead.
const (
	headLength = 6.0
	headHalf   = 2.0
)

// Strokes are the lines that draw the item: its path and its arrowheads.
func (i Item) Strokes() []geom.Path {
	if i.Kind != Line || len(i.Path) == 0 {
		return nil
	}
	out := []geom.Path{i.Path}
	if i.Heads == HeadsBoth {
		out = append(out, head(i.Path.Start(), i.Path.StartTangent().Scale(-1)))
	}
	if i.Heads != NoHeads {
		out = append(out, head(i.Path.End(), i.Path.EndTangent()))
	}
	return out
}

// head is an arrowhead with its tip at p, pointing along v.
func head(p geom.Point, v geom.Vector) geom.Path {
	back := p.Add(v.Scale(-headLength))
	return geom.Lines(back.Add(v.Left().Scale(headHalf)), p, back.Add(v.Right().Scale(headHalf)))
}

// dotReach is how far from its place a dot may be drawn.
const dotReach = 3.0

// Bounds is the room that the item takes.
func (i Item) Bounds() geom.Box {
	var b geom.Box
	switch i.Kind {
	case Dot:
		return b.Add(i.At).Grow(dotReach)
	case Words:
		for _, p := range i.corners() {
			b = b.Add(p)
		}
		return b
	}
	for _, s := range i.Strokes() {
		b = b.Union(s.Bounds())
	}
	return b
}

// corners are the corners of the words' rectangle.
func (i Item) corners() [4]geom.Point {
	w := TextWidth(i.Text, i.Height)
	x0 := 0.0
	if i.Middle {
		x0 = -w / 2
	}
	up, down := -ascent*i.Height, descent*i.Height
	out := [4]geom.Point{{X: x0, Y: up}, {X: x0 + w, Y: up}, {X: x0 + w, Y: down}, {X: x0, Y: down}}
	for k, p := range out {
		v := geom.Vector{X: p.X, Y: p.Y}
		if i.Turn != 0 {
			v = v.Turn(i.Turn * degree)
		}
		out[k] = i.At.Add(v)
	}
	return out
}

// Bounds is the room that the piece takes, in the coordinates of its draft.
func (p Placed) Bounds() geom.Box { return bounds(p.Items) }

func bounds(items []Item) geom.Box {
	var b geom.Box
	for _, i := range items {
		b = b.Union(i.Bounds())
	}
	return b
}
