package svg

import (
	"io"

	"chalkfold/export"
	"chalkfold/pattern"
)

// Options of a picture.
type Options struct {
	Web bool // without a size of its own, to be shown on a page of the web
}

// pen is how a role is drawn. No two roles share dash and weight.
type pen struct {
	role   pattern.Role
	weight float64 // millimetres
	dash   string
}

// pens, in the order in which they are drawn.
var pens = [pattern.RoleCount]pen{
	{pattern.RoleBalance, 0.18, ""},
	{pattern.RoleGuide, 0.25, ""},
	{pattern.RoleGrain, 0.4, ""},
	{pattern.RoleDart, 0.4, "3 1.5"},
	{pattern.RoleStitch, 0.35, "6 2.5"},
	{pattern.RoleFold, 0.5, "14 3 2 3"},
	{pattern.RoleNotch, 0.6, ""},
	{pattern.RoleCut, 0.8, ""},
	{pattern.RoleHole, 0.3, ""},
	{pattern.RoleText, 0, ""},
}

// Write writes the drawing.
func Write(w io.Writer, d export.Drawing, o Options) error {
	s := &scribe{}
	s.head(d, o)
	s.open("g", "id", "page", "class", "page")
	s.roles(d.Page)
	s.close("g")
	for _, p := range d.Pieces {
		s.open("g", "id", string(p.Piece.ID), "transform", matrix(p.Place))
		s.element("title", p.Piece.Title)
		s.roles(p.Items)
		s.close("g")
	}
	s.close("svg")
	_, err := w.Write(s.out)
	return err
}

func (s *scribe) head(d export.Drawing, o Options) {
	s.raw("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n")
	size := []string{"xmlns", "http://www.w3.org/2000/svg"}
	if !o.Web {
		size = append(size, "width", number(d.Width)+"mm", "height", number(d.Height)+"mm")
	}
	s.open("svg", append(size, "viewBox", "0 0 "+number(d.Width)+" "+number(d.Height))...)
	s.element("title", d.Title)
	s.element("desc", d.Says)
}

// roles writes the items, a group for each role that has any.
func (s *scribe) roles(items []export.Item) {
	for _, p := range pens {
		began := false
		for _, i := range items {
			if i.Role != p.role {
				continue
			}
			if !began {
				s.group(p)
				began = true
			}
			s.item(i, p.dash != "")
		}
		if began {
			s.close("g")
		}
	}
}

func (s *scribe) group(p pen) {
	a := []string{"class", p.role.String()}
	switch {
	case p.role == pattern.RoleText:
		a = append(a, "fill", "#000", "font-family", "DejaVu Sans, Verdana, Arial, sans-serif")
	default:
		a = append(a, "fill", "none", "stroke", "#000", "stroke-width", number(p.weight))
		if p.dash != "" {
			a = append(a, "stroke-dasharray", p.dash)
		}
	}
	s.open("g", a...)
}

func (s *scribe) item(i export.Item, dashed bool) {
	switch i.Kind {
	case export.Words:
		s.words(i)
	case export.Dot:
		s.dot(i)
	default:
		for k, p := range i.Strokes() {
			// Arrowheads and signs are never dashed.
			s.path(p, dashed && (k > 0 || i.Sign))
		}
	}
}

// words are the text of an item where it stands.
func (s *scribe) words(i export.Item) {
	a := []string{"x", number(i.At.X), "y", number(i.At.Y), "font-size", number(i.Height)}
	if i.Middle {
		a = append(a, "text-anchor", "middle")
	}
	if i.Turn != 0 {
		a = append(a, "transform", "rotate("+number(i.Turn)+" "+number(i.At.X)+" "+number(i.At.Y)+")")
	}
	s.element("text", i.Text, a...)
}

// dotSize is the radius of the ring round a hole, dotArm the reach of its
// cross.
const (
	dotSize = 1.5
	dotArm  = 3.0
)

// dot is a ring with a cross whose middle is the place.
func (s *scribe) dot(i export.Item) {
	x, y := i.At.X, i.At.Y
	s.leaf("circle", "cx", number(x), "cy", number(y), "r", number(dotSize))
	s.leaf("path", "d", "M"+number(x-dotArm)+" "+number(y)+"H"+number(x+dotArm)+
		"M"+number(x)+" "+number(y-dotArm)+"V"+number(y+dotArm))
}
