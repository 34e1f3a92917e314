package theme

import (
	"fmt"
	"strings"

	"chalkfold/ui/canvas"
)

// Names are the themes in the order Next goes through them.
func Names() []string {
	names := make([]string, len(table))
	for i, t := range table {
		names[i] = t.name
	}
	return names
}

// For finds a theme by its name, in any case. It writes no codes until With
// tells how much colour there is.
func For(name string) (Theme, error) {
	low := strings.ToLower(strings.TrimSpace(name))
	for _, t := range table {
		if t.name == low {
			return t, nil
		}
	}
	return Theme{}, fmt.Errorf("theme: %q is not a theme; use %s or auto", name, strings.Join(Names(), ", "))
}

// Choose is For, with auto (or nothing) left to the environment.
func Choose(name string, env func(string) string) (Theme, error) {
	switch strings.ToLower(strings.TrimSpace(name)) {
	case "", "auto":
		return Auto(env), nil
	}
	return For(name)
}

// Auto takes light or dark from COLORFGBG, which some terminals set to the
// numbers of their two colours ("15;0"). Where it says nothing the plain
// theme reads on both.
func Auto(env func(string) string) Theme {
	fields := strings.Split(env("COLORFGBG"), ";")
	name := "plain"
	switch fields[len(fields)-1] {
	case "0", "1", "2", "3", "4", "5", "6", "8":
		name = "dark"
	case "7", "9", "10", "11", "12", "13", "14", "15":
		name = "light"
	}
	t, _ := For(name) // always a row of the table
	return t
}

// Next is the theme after this one in the table, with as much colour.
func (t Theme) Next() Theme {
	for i := range table {
		if table[i].name == t.name {
			return table[(i+1)%len(table)].With(t.colour)
		}
	}
	return table[0].With(t.colour)
}

// Swap changes a projector between light and dark; from any other theme it
// goes to the light projector.
func (t Theme) Swap() Theme {
	name := "projector"
	if t.name == name {
		name = "projector-dark"
	}
	s, _ := For(name) // always a row of the table
	return s.With(t.colour)
}

// With is the theme for a terminal that takes so much colour.
func (t Theme) With(c Colour) Theme {
	t.colour = c
	return t
}

// Colour is how much colour the theme writes.
func (t Theme) Colour() Colour { return t.colour }

// Name is the theme's name in the table.
func (t Theme) Name() string { return t.name }

// Says is one line about it.
func (t Theme) Says() string { return t.says }

// Paints tells whether the theme fills its own background, so that every line
// must go through Fill. Without colours nothing is painted.
func (t Theme) Paints() bool { return !t.back.isOwn() && t.colour > NoColour }

// Palette gives the canvas its pens.
func (t Theme) Palette(c Colour) canvas.Palette {
	t.colour = c
	var p canvas.Palette
	for i, l := range penLooks {
		p[i] = t.sgr(l)
	}
	return p
}

// Pens is the palette in the colours the theme has.
func (t Theme) Pens() canvas.Palette { return t.Palette(t.colour) }

// sgr is the sequence of a look. It begins with a reset, so that it may follow
// any other.
func (t Theme) sgr(l look) string {
	if t.colour == NoCodes {
		return ""
	}
	codes := make([]string, 0, 6)
	if l.bold {
		codes = append(codes, "1")
	}
	if l.underline {
		codes = append(codes, "4")
	}
	if l.reverse {
		codes = append(codes, "7")
	}
	if fore := t.inks[l.ink].sgr(t.colour, false); fore != "" {
		codes = append(codes, fore)
	}
	if back := t.back.sgr(t.colour, true); back != "" {
		codes = append(codes, back)
	}
	if len(codes) == 0 {
		return ""
	}
	return "\x1b[0;" + strings.Join(codes, ";") + "m"
}
