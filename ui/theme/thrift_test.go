package theme

import (
	"strings"
	"testing"

	uv "github.com/charmbracelet/ultraviolet"
	"github.com/charmbracelet/x/vt"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestThrift(t *testing.T) {
	for _, c := range []struct{ name, line, want string }{
		{"nothing to say", "abc", "abc"},
		{"nothing at all", "", ""},
		{"one look", "\x1b[0;1;38;5;9mabc\x1b[0m", "\x1b[1;38;5;9mabc\x1b[m"},
		{"the background stands", "\x1b[0;38;5;9;48;5;7ma\x1b[0;38;5;8;48;5;7mb\x1b[0m", "\x1b[38;5;9;48;5;7ma\x1b[38;5;8mb\x1b[m"},
		{"off and on again", "\x1b[0;31ma\x1b[0m\x1b[0;31mb\x1b[0m", "\x1b[31mab\x1b[m"},
		{"bold goes off with the rest", "\x1b[0;1;31ma\x1b[0;31mb\x1b[0m", "\x1b[1;31ma\x1b[0;31mb\x1b[m"},
		{"blanks need no ink", "\x1b[0;31ma\x1b[0;32m   \x1b[0;31mb\x1b[0m", "\x1b[31ma   b\x1b[m"},
		{"but a background", "a\x1b[0;42m  \x1b[0mb", "a\x1b[42m  \x1b[mb"},
		{"and a line beneath", "a\x1b[0;4m  \x1b[0mb", "a\x1b[4m  \x1b[mb"},
		{"reverse is filled with ink", "\x1b[0;31ma\x1b[0;7;32m  \x1b[0m", "\x1b[31ma\x1b[7;32m  \x1b[m"},
		{"true colour", "\x1b[0;38;2;1;2;3;48;2;4;5;6ma\x1b[0;38;2;1;2;4;48;2;4;5;6mb", "\x1b[38;2;1;2;3;48;2;4;5;6ma\x1b[38;2;1;2;4mb\x1b[m"},
		{"bright colours", "\x1b[0;97;100ma\x1b[0m", "\x1b[97;100ma\x1b[m"},
		{"a code of somebody else", "\x1b[0;5mblink\x1b[0m", "\x1b[0;5mblink\x1b[0m"},
		{"not a look at all", "a\x1b[2Kb", "a\x1b[2Kb"},
	} {
		require.Equal(t, "to "+c.want, string(Thrift([]byte("to "), c.line)), c.name)
	}
}

// Whatever is written in whatever looks, a terminal shows the same in every
// cell, and never for more bytes.
func TestThriftShowsTheSame(t *testing.T) {
	words := []string{"a", " ", "  ", "36 1/2", "⠿⣀", " b "}
	rapid.Check(t, func(t *rapid.T) {
		th, err := For(rapid.SampledFrom(Names()).Draw(t, "theme"))
		require.NoError(t, err)
		th = th.With(rapid.SampledFrom([]Colour{NoCodes, NoColour, Colour16, Colour256, TrueColour}).Draw(t, "colour"))
		var line string
		for range rapid.IntRange(0, 6).Draw(t, "runs") {
			w := rapid.SampledFrom(words).Draw(t, "words")
			switch role := Role(rapid.IntRange(0, numRoles-1).Draw(t, "role")); rapid.IntRange(0, 3).Draw(t, "look") {
			case 0:
				line += w
			case 1:
				line += th.Style(role).Render(w)
			case 2:
				line += th.Underlined(role).Render(w)
			case 3:
				line += th.Pens()[rapid.IntRange(0, len(th.Pens())-1).Draw(t, "pen")] + w + reset
			}
		}
		line = th.Fill(line, 40)
		short := string(Thrift(nil, line))
		require.LessOrEqual(t, len(short), len(line))
		require.Equal(t, shown(line), shown(short), "%q as %q", line, short)
	})
}

// shown is what a terminal shows of a line: ink is not seen on bare blanks.
func shown(line string) []uv.Cell {
	term := vt.NewEmulator(44, 1)
	_, _ = term.WriteString(line)
	var out []uv.Cell
	for x := range 44 {
		c := *term.CellAt(x, 0)
		if strings.TrimSpace(c.Content) == "" && c.Style.Attrs&uv.AttrReverse == 0 && c.Style.Underline == 0 {
			c.Style.Fg, c.Style.Attrs = nil, 0
		}
		out = append(out, c)
	}
	return out
}
