package stage

import (
	"math"
	"reflect"

	"github.com/charmbracelet/x/ansi"

	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/trial"
	"chalkfold/ui/canvas"
	"chalkfold/ui/desk"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
)

// byEye shows the options of the pick in hand as small outlines of her own
// measures in place of the cloth. They are drafted beside the screen, since
// nine drafts take longer than a key may.
type byEye struct {
	kept  []lookedAt // newest last
	lines []string   // of the last view
	shows drawnAs
}

// lookedAt is the options of one pick for one job.
type lookedAt struct {
	job pattern.Job
	set trial.Set
}

// drawnAs is all that the small outlines depend on.
type drawnAs struct {
	choice     pattern.ChoiceID
	version    int
	cols, rows int
	looks      desk.Settings
}

// kept sets: going through the picks of one job and back must not draft again.
const mostLooked = 12

// pick is the pick in hand; it has something to show while its row has the
// focus.
func (s *Style) pick() (pattern.Choice, bool) {
	c, set, ok := s.choice()
	return c, ok && s.form.typing && set.Used && c.Kind == pattern.KindPick && len(c.Options) > 1
}

// eyed finds the options of the pick in hand, drafted for the present job.
func (s *Style) eyed() (trial.Set, bool) {
	c, ok := s.pick()
	if !ok {
		return trial.Set{}, false
	}
	job := s.d.Drafted()
	for i := len(s.look.kept) - 1; i >= 0; i-- {
		if k := s.look.kept[i]; k.set.Choice.ID == c.ID && reflect.DeepEqual(k.job, job) {
			return k.set, true
		}
	}
	return trial.Set{}, false
}

const errandEye = "eye"

// Follow drafts the options of the pick in hand where they are not known yet.
// The root calls it after a change, the stage after its own keys.
func (s *Style) Follow() desk.Ask {
	s.refresh()
	c, ok := s.pick()
	if _, known := s.eyed(); !ok || known {
		return desk.Ask{}
	}
	job, version := s.d.Drafted(), s.d.Version()
	return desk.Ask{Run: func() desk.Answer {
		return desk.Answer{Version: version, What: errandEye, Value: lookedAt{job, trial.Of(job, c)}}
	}}
}

// followed adds that errand to what a key asks for, unless it changes the job:
// then the root comes back by itself.
func (s *Style) followed(ask desk.Ask) desk.Ask {
	if ask.Job == nil && ask.Run == nil && ask.Go == desk.NoStage {
		ask.Run = s.Follow().Run
	}
	return ask
}

// Hear takes the drafted options.
func (s *Style) Hear(a desk.Answer) desk.Ask {
	l, ok := a.Value.(lookedAt)
	if !ok || a.What != errandEye {
		return desk.Ask{}
	}
	if n := len(s.look.kept); n >= mostLooked {
		s.look.kept = append(s.look.kept[:0], s.look.kept[n-mostLooked+1:]...)
	}
	s.look.kept = append(s.look.kept, l)
	return desk.Ask{}
}

// Begin drafts the options when she comes to the stage at a pick.
func (s *Style) Begin() desk.Ask { return s.Follow() }

// small draws the outlines into the room of the table; nil where there
// is nothing to choose by looking.
func (s *Style) small(cols, rows int) []string {
	set, ok := s.eyed()
	if !ok || set.Alike || set.Box.Empty() {
		return nil
	}
	as := drawnAs{set.Choice.ID, s.d.Version(), cols, rows, s.d.Settings}
	if s.look.lines != nil && as == s.look.shows {
		return s.look.lines
	}
	g, ok := tilesIn(len(set.Options), cols, rows, set.Box, s.d.Settings)
	if !ok {
		return nil
	}
	s.look.shows, s.look.lines = as, s.tiles(set, g, cols, rows)
	return s.look.lines
}

// smalls is how the options share the room: so many beside each other, each so
// many cells, a line of which is its name.
type smalls struct {
	across, cols, rows int
	scale              float64 // dots across for a millimetre
	down               float64 // dots down for a millimetre
}

// A tile smaller than this shows nothing.
const (
	leastTileCols = 7
	leastTileRows = 4
)

// tilesIn finds the arrangement with the largest outlines.
func tilesIn(n, cols, rows int, box geom.Box, set desk.Settings) (smalls, bool) {
	w, h := set.Glyphs.Cell()
	squash := float64(h) / set.Aspect / float64(w) // dots down for one across
	var best smalls
	for across := 1; across <= n; across++ {
		t := smalls{across: across, cols: cols / across, rows: rows / ((n + across - 1) / across)}
		if t.cols < leastTileCols || t.rows < leastTileRows {
			continue
		}
		wide, high := float64((t.cols-1)*w-1), float64((t.rows-1)*h-1)
		if t.scale = math.Min(wide/box.Width(), high/(box.Height()*squash)); t.scale > best.scale {
			t.down = t.scale * squash
			best = t
		}
	}
	return best, best.scale > 0
}

// tiles draws all options.
func (s *Style) tiles(set trial.Set, t smalls, cols, rows int) []string {
	g := s.d.Settings.Glyphs
	c := canvas.New(cols, rows, g)
	w, h := g.Cell()
	type name struct {
		row, col int
		words    string
		role     theme.Role
	}
	var names []name
	for i, o := range set.Options {
		left, top := i%t.across*t.cols, i/t.across*t.rows
		one := canvas.New(t.cols-1, t.rows-1, g)
		pen := canvas.Line
		if o.Now {
			pen = canvas.Newest
		}
		role := theme.Text
		switch {
		case !o.WhyNot.IsEmpty():
			role, pen = theme.Muted, canvas.Ghost
		case o.Now:
			role = theme.Title
		}
		drawSmall(one, set, o, t, w, h, pen)
		for y := range t.rows - 1 {
			for x := range t.cols - 1 {
				if r, p := one.At(x, y); r != ' ' {
					c.Text(left+x, top+1+y, string(r), p)
				}
			}
		}
		words := marker(o.Now) + s.d.Plain(s.d.Trade(o.Title))
		if !o.WhyNot.IsEmpty() {
			words = marker(o.Now) + "! " + s.d.Plain(s.d.Trade(o.Title))
		}
		names = append(names, name{top, left, desk.Clip(words, t.cols-1), role})
	}
	lines := c.Rows(s.d.Settings.Theme.Pens())
	for r := range lines {
		line, at := "", 0
		for _, n := range names {
			if n.row == r {
				line += desk.Fit("", n.col-at) + s.d.Paint(n.role, n.words)
				at = n.col + ansi.StringWidth(n.words)
			}
		}
		if line != "" {
			lines[r] = line
		}
	}
	return lines
}

// drawSmall draws one option into its tile, all options at one scale and level.
func drawSmall(c *canvas.Canvas, set trial.Set, o trial.Option, t smalls, w, h int, pen canvas.Pen) {
	wide, high := float64((t.cols-1)*w-1), float64((t.rows-1)*h-1)
	dx := (wide - set.Box.Width()*t.scale) / 2
	dy := (high - set.Box.Height()*t.down) / 2
	for _, l := range set.Shown(o) {
		dots := make([]canvas.Dot, len(l.Points))
		for i, p := range l.Points {
			dots[i] = canvas.Dot{X: dx + (p.X-set.Box.Min.X)*t.scale, Y: dy + (p.Y-set.Box.Min.Y)*t.down}
		}
		c.Polyline(dots, false, pen, canvas.Solid, 1)
	}
}

// refusals says of the pick in hand which options cannot be drafted, and why.
func (s *Style) refusals() map[string]string {
	set, ok := s.eyed()
	if !ok {
		return nil
	}
	out := map[string]string{}
	for _, o := range set.Options {
		if !o.WhyNot.IsEmpty() {
			out[o.Value] = s.d.Tell(text.StyleNotThis, s.d.Trade(o.WhyNot.In(s.d.Unit())))
		}
	}
	return out
}
