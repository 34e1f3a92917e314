package pdf

import (
	"math"

	"chalkfold/export"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// role is how a role is drawn and on which layer. No two roles share dash
// and weight.
type role struct {
	role   pattern.Role
	layer  layer
	stroke stroke
}

// roles, in the order in which they are drawn.
var roles = [pattern.RoleCount]role{
	{pattern.RoleBalance, layerMarks, stroke{weight: 0.18}},
	{pattern.RoleGuide, layerMarks, stroke{weight: 0.25}},
	{pattern.RoleGrain, layerMarks, stroke{weight: 0.4}},
	{pattern.RoleDart, layerMarks, stroke{weight: 0.4, dash: []float64{3, 1.5}}},
	{pattern.RoleHole, layerMarks, stroke{weight: 0.3}},
	{pattern.RoleStitch, layerStitch, stroke{weight: 0.35, dash: []float64{6, 2.5}}},
	{pattern.RoleFold, layerCut, stroke{weight: 0.5, dash: []float64{14, 3, 2, 3}}},
	{pattern.RoleNotch, layerCut, stroke{weight: 0.6}},
	{pattern.RoleCut, layerCut, stroke{weight: 0.8}},
	{pattern.RoleText, layerText, stroke{}},
}

// thing is one item of a drawing where it lies on the page, ready to be drawn
// as often as it takes.
type thing struct {
	role    int // in roles
	box     geom.Box
	strokes []run
	item    export.Item // of words and dots, its place on the page
}

// run is a path with what is needed to draw parts of it: dashes must run on
// from one sheet to the next.
type run struct {
	path   geom.Path
	boxes  []geom.Box
	starts []float64 // length before each segment; of dashed paths
	solid  bool      // arrowheads and signs are never dashed
}

// things are all items of a drawing, each placed by its piece's matrix.
func things(items []export.Item, m geom.Matrix) []thing {
	out := make([]thing, 0, len(items))
	for _, i := range items {
		t := thing{role: roleIndex(i.Role)}
		switch i.Kind {
		case export.Line:
			for k, s := range i.Strokes() {
				r := newRun(s.Transform(m), k > 0 || i.Sign || len(roles[t.role].stroke.dash) == 0)
				t.strokes = append(t.strokes, r)
				for _, b := range r.boxes {
					t.box = t.box.Union(b)
				}
			}
		default:
			b := i.Bounds()
			i.At = m.Apply(i.At)
			i.Turn += math.Atan2(m[1], m[0]) * 180 / math.Pi
			t.item = i
			t.box = t.box.Add(m.Apply(b.Min)).Add(m.Apply(b.Max))
		}
		out = append(out, t)
	}
	return out
}

func roleIndex(r pattern.Role) int {
	for i := range roles {
		if roles[i].role == r {
			return i
		}
	}
	return 0
}

func newRun(path geom.Path, solid bool) run {
	r := run{path: path, solid: solid, boxes: make([]geom.Box, len(path))}
	for i, s := range path {
		// The hull of the handles holds the curve.
		r.boxes[i] = r.boxes[i].Add(s.A).Add(s.B).Add(s.C).Add(s.D)
	}
	if !solid {
		r.starts = make([]float64, len(path))
		sum := 0.0
		for i, s := range path {
			r.starts[i] = sum
			sum += s.Length()
		}
	}
	return r
}

// draw draws what of the things shows in a window of the drawing, moved so
// that the window's corner lies at a place of the page; layer by layer.
func (p *pen) draw(all []thing, window geom.Box, at geom.Point) {
	move := at.Sub(window.Min)
	for l := range layer(len(layerNames)) {
		p.on(l, func() {
			for k := range roles {
				if roles[k].layer != l {
					continue
				}
				for i := range all {
					if all[i].role == k && all[i].box.Overlaps(window) {
						p.thing(&all[i], window, move)
					}
				}
			}
		})
	}
}

func (p *pen) thing(t *thing, window geom.Box, move geom.Vector) {
	switch t.item.Kind {
	case export.Words:
		p.itemWords(t.item, move)
	case export.Dot:
		p.hole(t.item.At.Add(move), roles[t.role].stroke)
	default:
		for i := range t.strokes {
			p.run(&t.strokes[i], roles[t.role].stroke, window, move)
		}
	}
}

// run draws the parts of a path that show in the window.
func (p *pen) run(r *run, s stroke, window geom.Box, move geom.Vector) {
	if r.solid {
		s.dash = nil
	}
	near := window.Grow(5)
	if len(r.path) > 0 && near.Contains(r.bounds().Min) && near.Contains(r.bounds().Max) {
		p.part(moved(r.path, move), s, 0)
		return
	}
	n, first := len(r.path), r.first(near)
	for i := 0; i < n; {
		if !r.boxes[(first+i)%n].Overlaps(near) {
			i++
			continue
		}
		var shown geom.Path
		k := i
		for ; k < n && r.boxes[(first+k)%n].Overlaps(near); k++ {
			shown = append(shown, r.path[(first+k)%n])
		}
		phase := 0.0
		if !r.solid {
			phase = r.starts[(first+i)%n]
		}
		p.part(moved(shown, move), s, phase)
		i = k
	}
}

// first is the segment to begin with: of a closed line one that does not show,
// so that the corner where the line begins and ends is drawn as one. Dashes
// begin anew there, and so does a dashed line.
func (r *run) first(near geom.Box) int {
	if r.solid && r.path.Closed() {
		for i, b := range r.boxes {
			if !b.Overlaps(near) {
				return i
			}
		}
	}
	return 0
}

func (r *run) bounds() geom.Box {
	var b geom.Box
	for _, x := range r.boxes {
		b = b.Union(x)
	}
	return b
}

func moved(path geom.Path, v geom.Vector) geom.Path {
	out := make(geom.Path, len(path))
	for i, s := range path {
		s.A, s.B, s.C, s.D = s.A.Add(v), s.B.Add(v), s.C.Add(v), s.D.Add(v)
		out[i] = s
	}
	return out
}

// itemWords sets the words of a drawing. Their room was reckoned without a
// face; words that came out longer are made to fit it.
func (p *pen) itemWords(i export.Item, move geom.Vector) {
	size := i.Height
	if wide, room := p.width(i.Text, size), export.TextWidth(i.Text, size); wide > room && room > 0 {
		size *= room / wide
	}
	p.write(i.At.Add(move), words{text: i.Text, size: size, turn: i.Turn, middle: i.Middle})
}

// holeRing is the radius of the ring round a hole, holeArm the reach of the
// cross whose middle is the place.
const (
	holeRing = 1.5
	holeArm  = 3.0
)

func (p *pen) hole(at geom.Point, s stroke) {
	p.ring(at, holeRing, s)
	p.ruled(at.Add(geom.Vector{X: -holeArm}), at.Add(geom.Vector{X: holeArm}), s)
	p.ruled(at.Add(geom.Vector{Y: -holeArm}), at.Add(geom.Vector{Y: holeArm}), s)
}
