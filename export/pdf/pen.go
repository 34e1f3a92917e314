package pdf

import (
	"slices"

	"codeberg.org/go-pdf/fpdf"

	"chalkfold/export"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// layer is a part of every page that a reader can hide.
type layer int

// The layers, in the order in which a reader lists them.
const (
	layerCut layer = iota
	layerStitch
	layerMarks
	layerText
)

var layerNames = [...]string{"cut", "stitch", "marks", "text"}

// stroke is how a line is drawn: weight and dash in millimetres, and how far
// from black.
type stroke struct {
	weight float64
	dash   []float64
	gray   int
}

// pen draws on pages, in millimetres from the upper left corner, y down. It
// only takes down what is to be drawn; finish hands it to the library when
// all letters are known.
type pen struct {
	face    *face
	title   string
	date    pattern.Date
	layered bool
	pages   []*leaf
	marks   []bookmark
	letters map[rune]bool
	lacking map[rune]bool
	set     stroke // of the open page
	weights bool   // set is valid
}

// leaf is one page and what is drawn on it.
type leaf struct {
	width, height float64
	ops           []func(*fpdf.Fpdf)
}

// bookmark leads a reader to a place.
type bookmark struct {
	text  string
	level int
	page  int
	y     float64
}

func newPen(title string, date pattern.Date) *pen {
	p := &pen{face: theFace(), date: date, letters: map[rune]bool{}, lacking: map[rune]bool{}}
	p.title = p.clean(title)
	return p
}

// page begins a new page.
func (p *pen) page(width, height float64) *leaf {
	l := &leaf{width: width, height: height}
	p.pages = append(p.pages, l)
	p.weights = false
	return l
}

func (p *pen) last() *leaf { return p.pages[len(p.pages)-1] }

func (p *pen) do(op func(*fpdf.Fpdf)) {
	l := p.last()
	l.ops = append(l.ops, op)
}

// clean takes a text in: only what it returns is set.
func (p *pen) clean(text string) string {
	text, lacking := Clean(text)
	for _, r := range lacking {
		p.lacking[r] = true
	}
	return text
}

// warning is the one sentence on letters that became boxes; empty: none did.
func (p *pen) warning() string {
	if len(p.lacking) == 0 {
		return ""
	}
	return lackSays(sorted(p.lacking))
}

func sorted(set map[rune]bool) []rune {
	out := make([]rune, 0, len(set))
	for r := range set {
		out = append(out, r)
	}
	slices.Sort(out)
	return out
}

// bookmark marks a place on the last page.
func (p *pen) bookmark(text string, level int, y float64) {
	p.marks = append(p.marks, bookmark{p.clean(text), level, len(p.pages), y})
}

// on draws on a layer.
func (p *pen) on(l layer, draw func()) {
	p.layered = true
	p.do(func(f *fpdf.Fpdf) { f.BeginLayer(int(l)) })
	draw()
	p.do(func(f *fpdf.Fpdf) { f.EndLayer() })
}

// within draws inside a frame; nothing shows outside.
func (p *pen) within(b geom.Box, draw func()) {
	p.do(func(f *fpdf.Fpdf) {
		f.ClipRect(settled(b.Min.X), settled(b.Min.Y), settled(b.Width()), settled(b.Height()), false)
	})
	p.weights = false
	draw()
	p.do(func(f *fpdf.Fpdf) { f.ClipEnd() })
	p.weights = false
}

// stretched draws with both directions stretched about the middle of the
// page.
func (p *pen) stretched(across, along float64, draw func()) {
	if across == 1 && along == 1 {
		draw()
		return
	}
	l := p.last()
	p.do(func(f *fpdf.Fpdf) {
		f.TransformBegin()
		x, y := f.UnitToPointConvert(l.width/2), f.UnitToPointConvert(l.height/2)
		f.Transform(fpdf.TransformMatrix{A: across, D: along, E: (1 - across) * x, F: (1 - along) * y})
	})
	p.weights = false
	draw()
	p.do(func(f *fpdf.Fpdf) { f.TransformEnd() })
	p.weights = false
}

// with sets the stroke, if it is another than before; phase is where in the
// dash the line begins.
func (p *pen) with(s stroke, phase float64) {
	if p.weights && len(s.dash) == 0 && len(p.set.dash) == 0 && s.weight == p.set.weight && s.gray == p.set.gray {
		return
	}
	p.set, p.weights = s, true
	p.do(func(f *fpdf.Fpdf) {
		f.SetLineWidth(s.weight)
		f.SetDashPattern(s.dash, settled(phase))
		f.SetDrawColor(s.gray, s.gray, s.gray)
	})
}

// line draws a path.
func (p *pen) line(path geom.Path, s stroke) { p.part(path, s, 0) }

func (p *pen) part(path geom.Path, s stroke, phase float64) {
	if len(path) == 0 {
		return
	}
	p.with(s, phase)
	p.do(func(f *fpdf.Fpdf) {
		trace(f, path)
		f.DrawPath("D")
	})
}

// settled is a place as it is handed to the library, which rounds once more:
// equal on every machine.
func settled(x float64) float64 { return export.Round(x, 1e5) }

func trace(f *fpdf.Fpdf, path geom.Path) {
	a := path.Start()
	f.MoveTo(settled(a.X), settled(a.Y))
	for _, s := range path {
		if s.Curved {
			f.CurveBezierCubicTo(settled(s.B.X), settled(s.B.Y), settled(s.C.X), settled(s.C.Y), settled(s.D.X), settled(s.D.Y))
		} else {
			f.LineTo(settled(s.D.X), settled(s.D.Y))
		}
	}
	if path.Closed() {
		f.ClosePath()
	}
}

// ring is a small circle.
func (p *pen) ring(at geom.Point, radius float64, s stroke) {
	p.line(circle(at, radius), s)
}

// dot is a small filled circle.
func (p *pen) dot(at geom.Point, radius float64) {
	round := circle(at, radius)
	p.do(func(f *fpdf.Fpdf) {
		f.SetFillColor(0, 0, 0)
		trace(f, round)
		f.DrawPath("F")
	})
}

// circle is a circle in four curves, out by a four thousandth of its radius.
func circle(at geom.Point, radius float64) geom.Path {
	const handle = 0.5522847498 // of the radius
	h := handle * radius
	spot := func(x, y float64) geom.Point { return geom.Point{X: at.X + x, Y: at.Y + y} }
	east, south, west, north := spot(radius, 0), spot(0, radius), spot(-radius, 0), spot(0, -radius)
	return geom.Path{
		geom.Curve(east, spot(radius, h), spot(h, radius), south),
		geom.Curve(south, spot(-h, radius), spot(-radius, h), west),
		geom.Curve(west, spot(-radius, -h), spot(-h, -radius), north),
		geom.Curve(north, spot(h, -radius), spot(radius, -h), east),
	}
}

func (p *pen) ruled(a, b geom.Point, s stroke) { p.line(geom.Lines(a, b), s) }

func (p *pen) frame(b geom.Box, s stroke) { p.line(rectangle(b), s) }

func rectangle(b geom.Box) geom.Path {
	a, c := b.Min, b.Max
	return geom.Lines(a, geom.Point{X: c.X, Y: a.Y}, c, geom.Point{X: a.X, Y: c.Y}, a)
}
