package view

import (
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/ui/canvas"
)

// Draw puts the view on a canvas: lines first, then words.
func (v View) Draw(c *canvas.Canvas) {
	if v.scene.Sheet == nil || v.Empty() || v.rows == 0 || v.cols == 0 {
		return
	}
	if v.eye.Grid {
		v.grid(c)
	}
	if v.scene.Old != nil {
		v.old(c)
	}
	if v.scene.Cloth != nil {
		v.cloth(c)
	}
	if v.scene.Pages != nil {
		v.sheets(c)
	}
	switch {
	case v.scene.Cloth != nil:
		v.laidOut(c)
	case v.stepping():
		v.steps(c)
	default:
		v.finished(c)
	}
	if !v.eye.Plain && !v.scene.placed() {
		v.ticks(c)
	}
	if v.eye.Hair {
		v.hair(c)
	}
	v.spot(c)
	v.labels(c)
}

// stepping says that a step of the draft is shown, not the finished pieces.
func (v View) stepping() bool { return v.scene.stepping() }

// steps draws the marks that stand after a step, the newest in its own pen.
func (v View) steps(c *canvas.Canvas) {
	k := v.scene.Step
	for i := range v.scene.Sheet.Marks {
		m := &v.scene.Sheet.Marks[i]
		l, ok := at(v.pieces, m.Piece)
		if !ok || !m.AliveAt(k) {
			continue
		}
		fresh := m.Born == k
		switch {
		case m.Kind == pattern.MarkPoint && fresh:
			d := v.dot(l.to.Apply(m.At))
			c.Mark(d.X, d.Y, canvas.Newest)
		case m.Kind == pattern.MarkPoint:
			d := v.dot(l.to.Apply(m.At))
			c.Point(d.X, d.Y, canvas.Second)
		case fresh:
			v.path(c, l, v.scene.drawnYet(m.Path), canvas.Newest, dashOf(m.Role))
		case m.Kind == pattern.MarkGuide || m.Role == pattern.RoleGuide:
			v.path(c, l, m.Path, canvas.Faint, canvas.Dotted)
		default:
			v.path(c, l, m.Path, canvas.Second, dashOf(m.Role))
		}
	}
}

// drawnYet is a newest line as far as it is drawn.
func (s Scene) drawnYet(p geom.Path) geom.Path {
	if !s.growing() || len(p) == 0 {
		return p
	}
	return p.Part(0, p.Length()*s.Part)
}

// growing says that the newest lines are not whole yet.
func (s Scene) growing() bool { return s.Part > 0 && s.Part < 1 }

// dashOf is how a line of a role is broken up.
func dashOf(r pattern.Role) canvas.Dash {
	switch r {
	case pattern.RoleGuide:
		return canvas.Dotted
	case pattern.RoleFold:
		return canvas.Solid
	case pattern.RoleBalance:
		return canvas.Dotted
	case pattern.RoleGrain:
		return canvas.DashDot
	}
	return canvas.Solid
}

// bothLines is how many dots an inch it takes to tell stitch and cut line
// apart; below it only the stitch line is drawn.
const bothLines = 6

// finished draws pieces as they are cut from the marks; where a piece could
// not be finished, the marks there are.
func (v View) finished(c *canvas.Canvas) {
	for _, l := range v.pieces {
		p, ok := v.scene.Sheet.Piece(l.id)
		if !ok || len(p.Stitch) == 0 {
			v.unfinished(c, l)
			continue
		}
		if (v.scene.cut || v.DotsPerInch() >= bothLines) && !p.Included && len(p.CutLine) > 0 {
			v.path(c, l, p.CutLine, canvas.Second, canvas.Solid)
		}
		if len(p.Edges) > 0 {
			for _, e := range p.Edges {
				v.path(c, l, e.Stitch, canvas.Line, canvas.Solid)
			}
		} else {
			v.path(c, l, p.Stitch, canvas.Line, canvas.Solid)
		}
		for _, d := range p.Darts {
			for _, leg := range d.Legs {
				v.path(c, l, geom.Lines(d.Tip, leg), canvas.Line, canvas.Solid)
			}
		}
		if v.DotsPerInch() >= bothLines {
			v.details(c, l, p)
		}
	}
}

// details are what only shows when the drawing is large enough.
func (v View) details(c *canvas.Canvas, l lying, p *pattern.Piece) {
	for _, n := range p.Notches {
		d := v.dot(l.to.Apply(n.At))
		c.Mark(d.X, d.Y, canvas.Mark)
	}
	for _, b := range p.Balance {
		v.path(c, l, geom.Path{b.Line}, canvas.Faint, canvas.Dotted)
	}
	if p.Grain.A != p.Grain.D {
		v.path(c, l, geom.Path{p.Grain}, canvas.Faint, canvas.DashDot)
	}
}

func (v View) unfinished(c *canvas.Canvas, l lying) {
	for i := range v.scene.Sheet.Marks {
		m := &v.scene.Sheet.Marks[i]
		if m.Piece != l.id || m.Gone != 0 {
			continue
		}
		if m.Kind == pattern.MarkPoint {
			d := v.dot(l.to.Apply(m.At))
			c.Point(d.X, d.Y, canvas.Line)
		} else if m.Kind == pattern.MarkGuide {
			v.path(c, l, m.Path, canvas.Faint, canvas.Dotted)
		} else {
			v.path(c, l, m.Path, canvas.Line, dashOf(m.Role))
		}
	}
}

// old draws the outline of another sheet where the new one lies, dotted.
func (v View) old(c *canvas.Canvas) {
	for _, l := range v.pieces {
		p, ok := v.scene.Old.Piece(l.id)
		if !ok || len(p.Stitch) == 0 {
			continue
		}
		v.path(c, l, p.Stitch, canvas.Ghost, canvas.Dotted)
		for _, d := range p.Darts {
			v.path(c, l, geom.Lines(d.Legs[0], d.Tip, d.Legs[1]), canvas.Ghost, canvas.Dotted)
		}
	}
}

func (v View) path(c *canvas.Canvas, l lying, p geom.Path, pen canvas.Pen, dash canvas.Dash) {
	if len(p) == 0 {
		return
	}
	pts := p.Flatten(v.tolerance())
	dots := make([]canvas.Dot, len(pts))
	for i, q := range pts {
		dots[i] = v.dot(l.to.Apply(q))
	}
	closed := len(pts) > 3 && pts[0].Near(pts[len(pts)-1], 1e-6)
	if closed {
		dots = dots[:len(dots)-1]
	}
	c.Polyline(dots, closed, pen, dash, v.thick(pen))
}

// thick is how many dots a line is thick.
func (v View) thick(pen canvas.Pen) int {
	if v.scene.Bold && (pen == canvas.Line || pen == canvas.Newest || pen == canvas.Second && v.stepping()) {
		return 2
	}
	return 1
}

// ticks are short strokes at the fold, one for each level.
func (v View) ticks(c *canvas.Canvas) {
	const dots = 2
	k := v.after()
	for i := range v.scene.Sheet.Marks {
		m := &v.scene.Sheet.Marks[i]
		l, ok := at(v.pieces, m.Piece)
		down, level := levelOf(m)
		if !ok || !level || l.traced || !m.AliveAt(k) {
			continue
		}
		v.path(c, l, geom.Lines(geom.Point{Y: down}, geom.Point{X: dots * v.zoom * max(v.tall, 1), Y: down}), canvas.Mark, canvas.Solid)
	}
}

func (v View) hair(c *canvas.Canvas) {
	d := v.dot(v.eye.Hairs)
	c.Polyline([]canvas.Dot{{X: d.X, Y: 0}, {X: d.X, Y: v.dh}}, false, canvas.Faint, canvas.Dotted, 1)
	c.Polyline([]canvas.Dot{{X: 0, Y: d.Y}, {X: v.dw, Y: d.Y}}, false, canvas.Faint, canvas.Dotted, 1)
	c.Mark(d.X, d.Y, canvas.Selected)
}

func (v View) spot(c *canvas.Canvas) {
	if v.scene.Spot == nil {
		return
	}
	if l, ok := at(v.pieces, v.scene.Spot.Piece); ok {
		d := v.dot(l.to.Apply(v.scene.Spot.At))
		c.Mark(d.X, d.Y, canvas.Selected)
	}
}

// grid sets dots at every inch or centimetre, or at as many as leave room.
func (v View) grid(c *canvas.Canvas) {
	step := float64(v.scene.Unit.Length(1))
	if v.scene.Unit.Of(25.4) > 20 { // millimetres: by the centimetre
		step = 10
	}
	for _, k := range [...]float64{1, 2, 5, 10, 20} {
		if step*k/v.zoom >= 4 {
			step *= k
			break
		}
	}
	zero := v.dot(geom.Point{})
	c.Grid(step/v.zoom, step/(v.zoom*v.tall), zero.X, zero.Y, canvas.Grid)
}
