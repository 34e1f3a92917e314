package overlay

import (
	"math"

	"chalkfold/ui/canvas"
	"chalkfold/ui/desk"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
)

// card is a square and a circle of the same size in the present glyphs: they
// look so when the height of a cell is set right. It has at most eight lines,
// and none where there is no room.
func card(d *desk.Desk, r desk.Rect) []string {
	rows := min(r.Rows-3, 8)
	cols := min(r.Columns-2, 60)
	if rows < 4 || cols < 24 {
		return nil
	}
	c := canvas.New(cols, rows, d.Settings.Glyphs)
	w, h := d.Settings.Glyphs.Cell()
	// Dots an em across and down: a cell is one wide and Aspect high.
	across, down := float64(w), float64(h)/d.Settings.Aspect
	size := min(float64(rows*h-2)/down, float64(cols*w-2)/2.4/across)
	x, y := size*across, size*down
	c.Polyline([]canvas.Dot{{X: 0, Y: 0}, {X: x, Y: 0}, {X: x, Y: y}, {X: 0, Y: y}}, true, canvas.Line, canvas.Solid, 1)
	round := make([]canvas.Dot, 48)
	for i := range round {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / float64(len(round)))
		round[i] = canvas.Dot{X: x*1.8 + x/2*cos, Y: y/2 + y/2*sin}
	}
	c.Polyline(round, true, canvas.Newest, canvas.Solid, 1)
	var out []string
	for _, l := range c.Rows(d.Settings.Theme.Pens()) {
		out = append(out, " "+l)
	}
	for _, l := range desk.Wrap(d.Tell(text.SettingProportion)+" "+d.Tell(text.SettingAdjust), r.Columns-2) {
		if len(out) < r.Rows {
			out = append(out, " "+d.Paint(theme.Muted, l))
		}
	}
	return out
}
