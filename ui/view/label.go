package view

import (
	"math"
	"strings"

	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/ui/canvas"
)

// labels writes what stands beside the marks, the newest first: it gets the
// best place.
func (v View) labels(c *canvas.Canvas) {
	if v.scene.Spot != nil && v.scene.Says != "" {
		if l, ok := at(v.pieces, v.scene.Spot.Piece); ok {
			d := v.dot(l.to.Apply(v.scene.Spot.At))
			c.Label(d.X, d.Y, "> "+v.scene.Says, canvas.Selected)
		}
	}
	if v.stepping() && !v.scene.growing() { // its words stand where the whole line leaves room
		v.newest(c)
	}
	if v.scene.Pages != nil {
		v.sheetNames(c)
		return
	}
	if v.scene.Cloth != nil {
		v.titles(c)
		return
	}
	if !v.eye.Plain {
		v.levels(c)
	}
	if v.eye.Names {
		v.names(c)
	}
}

// newest names the marks of the step, each with its length as the tape would
// be laid. One step may make several marks: the first three are named, points
// before lines.
func (v View) newest(c *canvas.Canvas) {
	said := 0
	for _, kind := range [...]pattern.MarkKind{pattern.MarkPoint, pattern.MarkLine, pattern.MarkGuide} {
		for i := range v.scene.Sheet.Marks {
			m := &v.scene.Sheet.Marks[i]
			l, ok := at(v.pieces, m.Piece)
			if said >= 3 || !ok || m.Born != v.scene.Step || !m.AliveAt(v.scene.Step) || m.Kind != kind {
				continue
			}
			if kind != pattern.MarkPoint && said > 0 {
				continue
			}
			for _, at := range anchors(m) {
				d := v.dot(l.to.Apply(at))
				if c.Label(d.X, d.Y, "> "+v.words(m), canvas.Newest) {
					said++
					break
				}
			}
		}
	}
}

// anchors are the points of a mark that its words may stand beside: the middle
// of a line first, other parts of it where that is out of sight.
func anchors(m *pattern.Mark) []geom.Point {
	if m.Kind == pattern.MarkPoint {
		return []geom.Point{m.At}
	}
	var out []geom.Point
	for _, part := range [...]float64{1. / 2, 1. / 3, 2. / 3, 1. / 6, 5. / 6} {
		p, _ := m.Path.At(m.Path.Length() * part)
		out = append(out, p)
	}
	return out
}

// words is a mark's name with its length: out from the fold, on the fold its
// level, of a line its own.
func (v View) words(m *pattern.Mark) string {
	name := strings.ReplaceAll(m.Name, "_", " ")
	if v.eye.Plain {
		return name
	}
	u := v.scene.Unit
	switch {
	case m.Kind != pattern.MarkPoint:
		if down, ok := levelOf(m); ok {
			return name + " " + u.Tape(length(down))
		}
		return name + " " + u.Tape(lengthOf(m.Path))
	case m.At.X < 1:
		return name + " " + u.Tape(length(m.At.Y))
	}
	return name + " " + u.Tape(length(m.At.X))
}

// levels writes the levels of each piece along its fold, with their distance
// from the top line; where there is no room for all, the newest and those of
// the body come first.
func (v View) levels(c *canvas.Canvas) {
	k := v.after()
	for _, l := range v.pieces {
		if l.traced {
			continue
		}
		for _, name := range append([]string{""}, levelNames[:]...) {
			for i := range v.scene.Sheet.Marks {
				m := &v.scene.Sheet.Marks[i]
				down, ok := levelOf(m)
				fresh := m.Born == v.scene.Step
				if !ok || m.Piece != l.id || !m.AliveAt(k) || (name == "") != fresh || (name != "" && plainLevel(m.Name) != name) {
					continue
				}
				pen := canvas.Words
				if fresh {
					pen = canvas.Newest
				}
				v.level(c, l, down, v.scene.Unit.Tape(length(down)), pen)
			}
		}
	}
}

// after is the step whose marks stand; of finished pieces, after all.
func (v View) after() int {
	if v.scene.Step == 0 {
		return 1 << 30
	}
	return v.scene.Step
}

// levelNames are the levels of the body and the hem, most wanted first.
var levelNames = [...]string{"waist", "hip", "underarm", "hem", "neck_centre", "knee"}

// plainLevel is the level that a point or a line lies on.
func plainLevel(name string) string {
	switch name {
	case "waist", "waist_line":
		return "waist"
	case "hip", "hip_line":
		return "hip"
	case "underarm", "underarm_line":
		return "underarm"
	case "hem_centre", "hem_line":
		return "hem"
	case "neck_centre", "knee":
		return name
	}
	return ""
}

// levelOf is how far down from the top line a mark lies, if it is a level.
func levelOf(m *pattern.Mark) (float64, bool) {
	if plainLevel(m.Name) == "" {
		return 0, false
	}
	if m.Kind == pattern.MarkPoint {
		return m.At.Y, m.At.Y >= 1
	}
	y := m.Path.Start().Y
	d := y - m.Path.End().Y
	return y, y >= 1 && d < 1 && d > -1
}

// level writes one distance at the fold edge, outside the piece.
func (v View) level(c *canvas.Canvas, l lying, down float64, text string, pen canvas.Pen) {
	d := v.dot(l.to.Apply(geom.Point{X: 0, Y: down}))
	cw, ch := c.Glyphs().Cell()
	col, row := int(math.Round(d.X))/cw, int(math.Round(d.Y))/ch // as dots are set
	far := l.far
	n := canvas.Width(text)
	if v.scene.Stand {
		if far {
			col += 2
		} else {
			col -= n + 1
		}
	} else {
		col = max(min(col-n/2, v.cols-n), 0) // at the end of the table too
		if far {
			row++
		} else {
			row--
		}
	}
	v.clear(c, col, row, text, pen)
}

// clear writes words if the cells are free, with a blank at both ends. It says
// whether they were.
func (v View) clear(c *canvas.Canvas, col, row int, text string, pen canvas.Pen) bool {
	n := canvas.Width(text)
	if row < 0 || row >= v.rows || col < 0 || col+n > v.cols {
		return false
	}
	for i := col - 1; i <= col+n; i++ {
		if r, p := c.At(i, row); r != ' ' && p > canvas.Grid {
			return false
		}
	}
	c.Text(col, row, text, pen)
	return true
}

// names writes the name of every point.
func (v View) names(c *canvas.Canvas) {
	k := v.after()
	for i := range v.scene.Sheet.Marks {
		m := &v.scene.Sheet.Marks[i]
		l, ok := at(v.pieces, m.Piece)
		if !ok || m.Kind != pattern.MarkPoint || !m.AliveAt(k) || m.Born == v.scene.Step {
			continue
		}
		d := v.dot(l.to.Apply(m.At))
		c.Label(d.X, d.Y, strings.ReplaceAll(m.Name, "_", " "), canvas.Words)
	}
}
