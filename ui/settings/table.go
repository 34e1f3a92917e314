package settings

import (
	"fmt"
	"strconv"
	"strings"

	"chalkfold/measure"
	"chalkfold/ui/canvas"
	"chalkfold/ui/theme"
)

// File is the name of the file in the folder of settings.
const File = "settings.toml"

// The names of the settings, as they stand in the file.
const (
	Theme  = "theme"
	Glyphs = "glyphs"
	Colour = "color"
	Unit   = "unit"
	Comma  = "comma"
	Mouse  = "mouse"
	Motion = "motion"
	Plain  = "plain"
	Aspect = "aspect"
	Keys   = "keys" // a table
)

// The least and the most height of a cell to its width; fonts lie between.
const (
	LowAspect, HighAspect = 1.4, 3.0
)

// row is one setting.
type row struct {
	name  string
	usual string // as it stands in the file
	says  string
	works string // what can stand there
	read  func(s *Settings, v any) bool
}

// table are the settings, in the order of the file that is printed.
var table = []row{
	{Theme, `"auto"`, "Colours: auto goes by the terminal's own word.", "auto, " + strings.Join(theme.Names(), ", "), func(s *Settings, v any) bool {
		return word(&s.Theme, v, func(w string) error { _, err := theme.For(w); return err })
	}},
	{Glyphs, `"auto"`, "What drawings are made of.", "auto, braille, block, ascii", func(s *Settings, v any) bool {
		return word(&s.Glyphs, v, func(w string) error { _, err := canvas.ParseGlyphs(w); return err })
	}},
	{Colour, `"auto"`, "When to use colour.", "auto, always, never", func(s *Settings, v any) bool {
		return word(&s.Colour, v, func(w string) error { _, err := theme.ParseWhen(w); return err })
	}},
	{Unit, `"in"`, "The unit of a new client; a session has its own.", "in, cm, mm", func(s *Settings, v any) bool {
		text, ok := v.(string)
		u, err := measure.ParseUnit(text)
		if !ok || err != nil || text == "" {
			return false
		}
		s.Unit = &u
		return true
	}},
	{Comma, "false", "Decimals with a comma: 92,5. Both are always read.", "true, false", func(s *Settings, v any) bool { return truth(&s.Comma, v) }},
	{Mouse, "false", "Whether the mouse is on from the start; F8 changes it.", "true, false", func(s *Settings, v any) bool { return truth(&s.Mouse, v) }},
	{Motion, "true", "Whether a new line is drawn as it would be by hand.", "true, false", func(s *Settings, v any) bool {
		on := true
		ok := truth(&on, v)
		s.Still = !on
		return ok
	}},
	{Plain, "false", "Words only, as with --plain.", "true, false", func(s *Settings, v any) bool { return truth(&s.Plain, v) }},
	{Aspect, "2.0", "Height of a cell to its width, where the terminal does not tell.", "a number from 1.4 to 3.0", func(s *Settings, v any) bool {
		x, ok := v.(float64)
		if n, whole := v.(int64); whole {
			x, ok = float64(n), true
		}
		if !ok || !(x >= LowAspect && x <= HighAspect) {
			return false
		}
		s.Aspect = x
		return true
	}},
}

// word reads one of several words; auto is as if nothing were said.
func word(to *string, v any, known func(string) error) bool {
	text, ok := v.(string)
	text = strings.ToLower(strings.TrimSpace(text))
	switch {
	case !ok || text == "":
		return false
	case text == "auto":
		*to = ""
		return true
	case known(text) != nil:
		return false
	}
	*to = text
	return true
}

func truth(to *bool, v any) bool {
	on, ok := v.(bool)
	if ok {
		*to = on
	}
	return ok
}

// Names are the settings that are known.
func Names() []string {
	out := make([]string, 0, len(table)+1)
	for _, r := range table {
		out = append(out, r.name)
	}
	return append(out, Keys)
}

// Word, Truth and Number are values as they stand in the file.
func Word(w string) string { return strconv.Quote(w) }

// Truth is yes or no.
func Truth(on bool) string { return strconv.FormatBool(on) }

// Number is a number with a point.
func Number(x float64) string { return fmt.Sprintf("%.2f", x) }
