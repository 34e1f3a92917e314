package overlay

import (
	"path/filepath"
	"strconv"

	"chalkfold/measure"
	"chalkfold/ui/canvas"
	"chalkfold/ui/desk"
	"chalkfold/ui/files"
	"chalkfold/ui/session"
	"chalkfold/ui/settings"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
)

// Settings changes the looks and the unit, with a card to judge them by. Left
// and Right change the row in hand, Enter goes to its next value.
func Settings(d *desk.Desk) desk.Overlay {
	b := &board{d: d, title: d.Tell(text.SettingsTitle), how: text.SettingHow}
	b.turn = func(at, dir int) desk.Ask {
		b.renew()
		return rows[max(0, min(at, len(rows)-1))].change(d, dir)
	}
	b.rows = func(string) []row {
		var out []row
		for i, s := range rows {
			out = append(out, row{title: d.Tell(s.title), right: d.Plain(s.value(d)), do: func() desk.Ask { return b.turn(i, 1) }})
		}
		return out
	}
	if d.Settings.Config != "" {
		b.says = []string{d.Tell(text.SettingKept, files.Shown(filepath.Join(d.Settings.Config, settings.File)))}
	}
	b.tail = func(r desk.Rect) []string {
		b.renew()                      // what the root has changed shows
		r.Rows = min(r.Rows, cardRows) // the rows come first
		return card(d, r)
	}
	return b
}

// setting is one thing that can be set.
type setting struct {
	title  text.ID
	value  func(d *desk.Desk) string
	change func(d *desk.Desk, dir int) desk.Ask
}

// set is an Ask for changed looks.
func set(d *desk.Desk, change func(s *desk.Settings)) desk.Ask {
	s := d.Settings
	change(&s)
	return desk.Ask{Set: &s}
}

// cardRows are the rows of the test card with its words.
const cardRows = 9

// aspectStep is by how much the height of a cell to its width is set.
const aspectStep = 0.05

var rows = []setting{
	{text.SettingTheme, func(d *desk.Desk) string { return d.Settings.Theme.Name() }, func(d *desk.Desk, dir int) desk.Ask {
		names := theme.Names()
		t, err := theme.For(names[turned(names, d.Settings.Theme.Name(), dir)])
		if err != nil {
			return desk.Ask{}
		}
		return set(d, func(s *desk.Settings) { s.Theme = t.With(s.Theme.Colour()) })
	}},
	{text.SettingGlyphs, func(d *desk.Desk) string { return d.Settings.Glyphs.String() }, func(d *desk.Desk, dir int) desk.Ask {
		all := []canvas.Glyphs{canvas.Braille, canvas.Blocks, canvas.ASCII}
		if d.Settings.Strict {
			all = []canvas.Glyphs{canvas.Braille, canvas.ASCII}
		}
		return set(d, func(s *desk.Settings) { s.Glyphs = all[turned(all, s.Glyphs, dir)] })
	}},
	{text.SettingUnit, func(d *desk.Desk) string { return unitName(d, d.Unit()) }, func(d *desk.Desk, dir int) desk.Ask {
		all := []measure.Unit{measure.In, measure.Cm, measure.Mm}
		u := all[turned(all, d.Unit(), dir)]
		job := session.InUnit(d.Job(), u)
		s := d.Settings
		s.Unit = u // the next client's too
		return desk.Ask{Job: &job, Says: d.Tell(text.UnitNow, unitName(d, u)), Say: d.Tell(text.UnitNow, unitName(d, u)), Set: &s}
	}},
	{text.SettingComma, func(d *desk.Desk) string { return onOff(d, d.Settings.Comma) }, func(d *desk.Desk, _ int) desk.Ask {
		return set(d, func(s *desk.Settings) { s.Comma = !s.Comma })
	}},
	{text.SettingMouse, func(d *desk.Desk) string { return onOff(d, d.Settings.Mouse) }, func(d *desk.Desk, _ int) desk.Ask {
		return set(d, func(s *desk.Settings) { s.Mouse = !s.Mouse })
	}},
	{text.SettingMotion, func(d *desk.Desk) string { return onOff(d, d.Settings.Motion) }, func(d *desk.Desk, _ int) desk.Ask {
		return set(d, func(s *desk.Settings) { s.Motion = !s.Motion })
	}},
	{text.SettingAspect, func(d *desk.Desk) string { return strconv.FormatFloat(d.Settings.Aspect, 'f', 2, 64) }, func(d *desk.Desk, dir int) desk.Ask {
		return set(d, func(s *desk.Settings) {
			s.Aspect = max(settings.LowAspect, min(settings.HighAspect, s.Aspect+float64(dir)*aspectStep))
		})
	}},
}

// turned is the place of the value after or before the present one.
func turned[T comparable](all []T, now T, dir int) int {
	for i, v := range all {
		if v == now {
			return (i + dir + len(all)) % len(all)
		}
	}
	return 0
}

func onOff(d *desk.Desk, on bool) string {
	if on {
		return d.Tell(text.SettingOn)
	}
	return d.Tell(text.SettingOff)
}

func unitName(d *desk.Desk, u measure.Unit) string {
	return d.Tell(map[measure.Unit]text.ID{measure.In: text.UnitIn, measure.Cm: text.UnitCm, measure.Mm: text.UnitMm}[u])
}
