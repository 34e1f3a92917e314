package theme

import (
	"fmt"
	"strings"
)

// Colour is how much the terminal is told about looks.
type Colour int8

// From nothing at all to 24 bits.
const (
	NoCodes    Colour = iota // no escape codes: a file, a pipe, TERM=dumb
	NoColour                 // weight, reverse and underline only
	Colour16                 // the terminal's sixteen
	Colour256                // the usual: short sequences, known values
	TrueColour               // only when asked for: three times the bytes
)

// When is the answer to --color.
type When string

// The answers. True is for those who want the exact values.
const (
	WhenAuto   When = "auto"
	WhenAlways When = "always"
	WhenNever  When = "never"
	WhenTrue   When = "truecolor"
)

// ParseWhen reads the option; nothing means auto.
func ParseWhen(text string) (When, error) {
	switch w := When(strings.ToLower(strings.TrimSpace(text))); w {
	case "":
		return WhenAuto, nil
	case WhenAuto, WhenAlways, WhenNever, WhenTrue:
		return w, nil
	}
	return WhenAuto, fmt.Errorf("--color: %q was read; use auto, always or never", text)
}

// ColourFrom decides from the environment, from whether the output is a
// terminal, and from --color. NO_COLOR and never take the colours and leave
// weight and reverse, without which a field in hand could not be seen. 256
// colours are the most that is taken without being asked for: their sequences
// are short and every frame is sent over some line.
func ColourFrom(env func(string) string, isTTY bool, when When) Colour {
	term := strings.ToLower(env("TERM"))
	switch {
	case when == WhenTrue:
		return TrueColour
	case when == WhenAlways:
		return max(Colour16, most(env, term))
	case !isTTY, term == "dumb":
		return NoCodes
	case when == WhenNever, env("NO_COLOR") != "":
		return NoColour
	}
	return most(env, term)
}

// ProfileFrom is ColourFrom for an option that may not have been read yet; a
// word it does not know counts as auto.
func ProfileFrom(env func(string) string, isTTY bool, flag string) Colour {
	when, _ := ParseWhen(flag) // auto when it cannot be read
	return ColourFrom(env, isTTY, when)
}

// rich are terminals with 256 colours that do not say so in their name.
var rich = []string{"256", "direct", "screen", "tmux", "kitty", "alacritty", "foot", "wezterm", "ghostty", "contour", "rio", "iterm"}

// most is what the terminal says it can show.
func most(env func(string) string, term string) Colour {
	if env("COLORTERM") != "" || env("WT_SESSION") != "" {
		return Colour256
	}
	for _, name := range rich {
		if strings.Contains(term, name) {
			return Colour256
		}
	}
	for _, name := range []string{"vt1", "vt2", "vt3", "vt5"} {
		if strings.HasPrefix(term, name) {
			return NoColour
		}
	}
	return Colour16
}
