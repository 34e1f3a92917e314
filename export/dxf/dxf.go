package dxf

import (
	"fmt"
	"io"
	"math"

	"chalkfold/export"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// Options of a file.
type Options struct {
	English bool // inches; else millimetres
}

// Layers of ASTM D6673 that are used here. Seen in notes on the standard and
// in files of other programs; the standard itself is not free to read.
const (
	layerBoundary = "1"
	layerTurn     = "2"
	layerCurve    = "3"
	layerNotch    = "4"
	layerMirror   = "6"
	layerGrain    = "7"
	layerInternal = "8"
	layerDrill    = "13"
	layerSew      = "14"
	layerWords    = "15"
	layerCutCopy  = "84" // copies that readers compare with the first
	layerSewCopy  = "87"
)

// flatness is how far a polyline may stray from the curve, millimetres.
const flatness = 0.02

// size is the one size that a pattern to measure has.
const size = "1"

// Write writes the drawing.
func Write(w io.Writer, d export.Drawing, o Options) error {
	s := &scribe{scale: 1, high: d.Height}
	if o.English {
		s.scale = 1 / 25.4
	}
	names := blockNames(d)
	s.pair(0, "SECTION")
	s.pair(2, "HEADER")
	s.pair(0, "ENDSEC")
	s.pair(0, "SECTION")
	s.pair(2, "BLOCKS")
	for i, p := range d.Pieces {
		s.block(names[i], p)
	}
	s.pair(0, "ENDSEC")
	s.pair(0, "SECTION")
	s.pair(2, "ENTITIES")
	s.style(d, o)
	for _, n := range names {
		s.pair(0, "INSERT")
		s.pair(8, layerBoundary)
		s.pair(2, n)
		s.vertex(corner{"0.0000", "0.0000"})
	}
	s.pair(0, "ENDSEC")
	s.pair(0, "EOF")
	_, err := w.Write(s.out)
	return err
}

// block writes one piece.
func (s *scribe) block(name string, p export.Placed) {
	s.place = p.Place
	s.turns, s.curves = points{}, points{}
	s.pair(0, "BLOCK")
	s.pair(8, layerBoundary)
	s.pair(2, name)
	s.pair(70, "0")
	s.vertex(corner{"0.0000", "0.0000"})
	s.pair(3, name)
	for _, i := range p.Items {
		roles[i.Role](s, i)
	}
	s.dots(layerTurn, &s.turns)
	s.dots(layerCurve, &s.curves)
	s.pieceText(p)
	s.pair(0, "ENDBLK")
	s.pair(8, layerBoundary)
}

// roles says for each role what is written of an item.
var roles = [pattern.RoleCount]func(s *scribe, i export.Item){
	pattern.RoleGuide:   (*scribe).internal,
	pattern.RoleStitch:  (*scribe).sewn,
	pattern.RoleCut:     (*scribe).boundary,
	pattern.RoleFold:    (*scribe).mirror,
	pattern.RoleGrain:   func(s *scribe, i export.Item) { s.straight(layerGrain, i.Path) },
	pattern.RoleDart:    (*scribe).internal,
	pattern.RoleNotch:   (*scribe).notch,
	pattern.RoleBalance: (*scribe).internal,
	pattern.RoleHole:    (*scribe).drill,
	pattern.RoleText:    (*scribe).annotation,
}

// boundary is always closed: the cut line of a piece on the fold leaves the
// fold out, and the closing line is the mirror line.
func (s *scribe) boundary(i export.Item) {
	v := s.vertices(i.Path, true)
	s.polyline(layerBoundary, v, true)
	s.polyline(layerCutCopy, v, true)
	s.note(v)
}

func (s *scribe) sewn(i export.Item) {
	closed := i.Path.Closed()
	v := s.vertices(i.Path, closed)
	s.polyline(layerSew, v, closed)
	s.polyline(layerSewCopy, v, closed)
	s.note(v)
}

// internal is drawn, not cut: LINE where it is one, else POLYLINE.
func (s *scribe) internal(i export.Item) {
	closed := i.Path.Closed()
	v := s.vertices(i.Path, closed)
	if len(v) == 2 {
		s.line(layerInternal, v[0].corner, v[1].corner)
	} else {
		s.polyline(layerInternal, v, closed)
	}
	s.note(v)
}

// mirror leaves the bracket out: the layer says what the bracket says.
func (s *scribe) mirror(i export.Item) {
	if !i.Sign {
		s.straight(layerMirror, i.Path)
	}
}

// straight is a LINE from end to end, on a layer that takes no POLYLINE.
func (s *scribe) straight(layer string, p geom.Path) {
	if len(p) > 0 {
		s.line(layer, s.corner(p.Start()), s.corner(p.End()))
	}
}

// notch is a slit: a POINT with its depth, width and direction, and a short
// line for readers that pass over points.
func (s *scribe) notch(i export.Item) {
	if len(i.Path) == 0 {
		return
	}
	from, to := i.Path.Start(), i.Path.End()
	v := s.place.ApplyVector(from.To(to))
	s.pair(0, "POINT")
	s.pair(8, layerNotch)
	c := s.corner(from)
	s.pair(10, c.x)
	s.pair(20, c.y)
	s.pair(30, s.number(v.Len()))
	s.pair(39, "0.0000")
	s.pair(50, fixed(math.Mod(math.Atan2(-v.Y, v.X)*180/math.Pi+360, 360)))
	s.straight(layerInternal, i.Path)
}

func (s *scribe) drill(i export.Item) {
	s.pair(0, "POINT")
	s.pair(8, layerDrill)
	s.vertex(s.corner(i.At))
}

// capital is the height of capitals in parts of the size of the lettering.
const capital = 0.72

func (s *scribe) annotation(i export.Item) {
	text := ascii(i.Text)
	if text == "" {
		return
	}
	at := i.At
	if i.Middle {
		sin, cos := math.Sincos(i.Turn * math.Pi / 180)
		at = at.Add(geom.Vector{X: cos, Y: sin}.Scale(-export.TextWidth(i.Text, i.Height) / 2))
	}
	s.text(layerWords, s.corner(at), i.Height*capital, -i.Turn, text)
}

// pieceText are the fields of a piece, below each other from its middle.
func (s *scribe) pieceText(p export.Placed) {
	own, mirrored := max(p.Piece.Count, 1), 0
	if p.Piece.Cut == pattern.Pair {
		own = (own + 1) / 2
		mirrored = own
	}
	category := "BODY"
	if len(p.Piece.Also) > 0 {
		category = "FACING"
	}
	s.fields(p.Piece.CutLine.Bounds().Centre(), []string{
		"Piece Name: " + name(string(p.Piece.ID)),
		"Size: " + size,
		fmt.Sprintf("Quantity: %d,%d", own, mirrored),
		"Annotation: " + p.Cut,
		"Category: " + category,
		"Material: " + p.Piece.Cloth,
	})
}

// style are the fields of the whole file.
func (s *scribe) style(d export.Drawing, o Options) {
	units := "METRIC"
	if o.English {
		units = "ENGLISH"
	}
	f := d.Facts
	lines := []string{"ASTM/D13Proposal 1 Version: D 6673-04", "Style Name: " + d.Title}
	if !f.Measured.IsZero() {
		lines = append(lines, fmt.Sprintf("Creation Date: %04d-%02d-%02d", f.Measured.Year, f.Measured.Month, f.Measured.Day))
	}
	s.place = geom.Identity
	s.fields(geom.Point{X: 10, Y: 20}, append(lines,
		"Author: Chalkfold",
		"Sample Size: "+size,
		"Units: "+units,
		"Curve Tolerance: "+s.number(flatness),
	))
}

// fieldHigh is the height of field text: 6 mm, or 1/4 in.
const fieldHigh = 6.0

func (s *scribe) fields(at geom.Point, lines []string) {
	for _, l := range lines {
		s.text(layerBoundary, s.corner(at), fieldHigh, 0, ascii(l))
		at.Y += 1.5 * fieldHigh
	}
}
