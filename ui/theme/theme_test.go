package theme

import (
	"regexp"
	"strings"
	"testing"

	"chalkfold/ui/canvas"
	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/require"
)

func env(pairs ...string) func(string) string {
	m := map[string]string{}
	for i := 0; i < len(pairs); i += 2 {
		m[pairs[i]] = pairs[i+1]
	}
	return func(k string) string { return m[k] }
}

func TestNames(t *testing.T) {
	require.Equal(t, []string{"plain", "light", "dark", "mono", "high-contrast", "projector", "projector-dark"}, Names())
	th, err := For(" Dark ")
	require.NoError(t, err)
	require.Equal(t, "dark", th.Name())
	require.NotEmpty(t, th.Says())
	_, err = For("pink")
	require.EqualError(t, err, `theme: "pink" is not a theme; use plain, light, dark, mono, high-contrast, projector, projector-dark or auto`)
}

func TestNextGoesRound(t *testing.T) {
	th, err := For("plain")
	require.NoError(t, err)
	th = th.With(Colour256)
	var seen []string
	for range Names() {
		seen = append(seen, th.Name())
		th = th.Next()
		require.Equal(t, Colour256, th.Colour())
	}
	require.Equal(t, Names(), seen)
	require.Equal(t, "plain", th.Name())
	require.Equal(t, "plain", Theme{}.Next().Name())
}

func TestSwap(t *testing.T) {
	th, err := For("light")
	require.NoError(t, err)
	th = th.With(Colour16).Swap()
	require.Equal(t, "projector", th.Name())
	th = th.Swap()
	require.Equal(t, "projector-dark", th.Name())
	require.Equal(t, "projector", th.Swap().Name())
	require.Equal(t, Colour16, th.Colour())
}

func TestAuto(t *testing.T) {
	for said, want := range map[string]string{
		"": "plain", "15;0": "dark", "0;15": "light", "12;8": "dark", "0;default;7": "light", "15;default": "plain", "x": "plain", "0;": "plain", "7;99": "plain",
	} {
		require.Equal(t, want, Auto(env("COLORFGBG", said)).Name(), said)
	}
	th, err := Choose("auto", env("COLORFGBG", "15;0"))
	require.NoError(t, err)
	require.Equal(t, "dark", th.Name())
	th, err = Choose("mono", env("COLORFGBG", "15;0"))
	require.NoError(t, err)
	require.Equal(t, "mono", th.Name())
	_, err = Choose("pink", env())
	require.Error(t, err)
}

func TestColourFrom(t *testing.T) {
	for _, tc := range []struct {
		name string
		env  []string
		tty  bool
		when string
		want Colour
	}{
		{"a pipe", []string{"TERM", "xterm-256color"}, false, "auto", NoCodes},
		{"a pipe, always", []string{"TERM", "xterm-256color"}, false, "always", Colour256},
		{"always over NO_COLOR", []string{"TERM", "xterm", "NO_COLOR", "1"}, true, "always", Colour16},
		{"dumb", []string{"TERM", "dumb", "COLORTERM", "truecolor"}, true, "auto", NoCodes},
		{"NO_COLOR", []string{"TERM", "xterm-256color", "NO_COLOR", "1"}, true, "auto", NoColour},
		{"NO_COLOR empty", []string{"TERM", "xterm-256color", "NO_COLOR", ""}, true, "auto", Colour256},
		{"never", []string{"TERM", "xterm-256color"}, true, "never", NoColour},
		{"never on a pipe", []string{"TERM", "xterm-256color"}, false, "never", NoCodes},
		{"tmux", []string{"TERM", "tmux"}, true, "", Colour256},
		{"screen.xterm", []string{"TERM", "screen.xterm"}, true, "", Colour256},
		{"console", []string{"TERM", "linux"}, true, "auto", Colour16},
		{"old", []string{"TERM", "vt220"}, true, "auto", NoColour},
		{"COLORTERM", []string{"TERM", "xterm", "COLORTERM", "truecolor"}, true, "auto", Colour256},
		{"asked for", []string{"TERM", "xterm"}, true, "truecolor", TrueColour},
		{"a word unknown", []string{"TERM", "xterm"}, true, "sometimes", Colour16},
		{"Windows", []string{"WT_SESSION", "1"}, true, "auto", Colour256},
	} {
		t.Run(tc.name, func(t *testing.T) {
			require.Equal(t, tc.want, ProfileFrom(env(tc.env...), tc.tty, tc.when))
		})
	}
	_, err := ParseWhen("sometimes")
	require.EqualError(t, err, `--color: "sometimes" was read; use auto, always or never`)
}

func TestNoCodesWritesNone(t *testing.T) {
	for _, name := range Names() {
		th, err := For(name)
		require.NoError(t, err)
		for r := range Role(numRoles) {
			require.Equal(t, "a\nb", th.Style(r).Render("a\nb"))
			require.Equal(t, "a", th.Underlined(r).Render("a"))
		}
		require.Equal(t, canvas.Palette{}, th.Pens())
		require.Equal(t, "ab", th.Fill("ab", 10))
	}
}

// Every sequence begins with a reset, so that it may follow any other.
func TestSequences(t *testing.T) {
	form := regexp.MustCompile(`^\x1b\[0(;\d+)+m$`)
	for _, name := range Names() {
		for _, c := range []Colour{NoColour, Colour16, Colour256, TrueColour} {
			th, err := For(name)
			require.NoError(t, err)
			for pen, sgr := range th.Palette(c) {
				if sgr != "" {
					require.Regexp(t, form, sgr, "%s pen %d", name, pen)
				}
			}
		}
	}
	dark, err := For("dark")
	require.NoError(t, err)
	require.Equal(t, "\x1b[0;1;38;5;215;48;5;233mx\x1b[0m", dark.With(Colour256).Style(Newest).Render("x"))
	require.Equal(t, "\x1b[0;1;93;40mx\x1b[0m", dark.With(Colour16).Style(Newest).Render("x"))
	require.Equal(t, "\x1b[0;1;38;2;255;179;71;48;2;16;18;20mx\x1b[0m", dark.With(TrueColour).Style(Newest).Render("x"))
	plain, err := For("plain")
	require.NoError(t, err)
	require.Equal(t, "\x1b[0;4mx\x1b[0m", plain.With(Colour256).Underlined(Text).Render("x"))
	require.Equal(t, "x", plain.With(Colour256).Style(Role(99)).Render("x"))
}

func TestRenderKeepsLooksWithin(t *testing.T) {
	plain, err := For("plain")
	require.NoError(t, err)
	plain = plain.With(NoColour)
	bold, rev := plain.Style(Title), plain.Style(Selected)
	require.Equal(t, "\x1b[0;1ma \x1b[0;1;7mb\x1b[0;1m c\x1b[0m", bold.Render("a "+rev.Render("b")+" c"))
	require.Equal(t, "\x1b[0;1ma\x1b[0m\n\x1b[0;1mb\x1b[0m", bold.Render("a\nb"))
	require.Equal(t, "", bold.Render(""))
}

func TestFill(t *testing.T) {
	light, err := For("light")
	require.NoError(t, err)
	light = light.With(Colour256)
	base := light.Style(Text).On()
	line := light.Fill("a"+light.Style(Newest).Render("b")+"c", 6)
	require.Equal(t, 6, ansi.StringWidth(line))
	require.Equal(t, "abc   ", ansi.Strip(line))
	require.True(t, strings.HasPrefix(line, base))
	require.True(t, strings.HasSuffix(line, "   "+reset))
	require.Equal(t, 1, strings.Count(line, reset), "no cell is left unpainted")
	require.Equal(t, "ab", ansi.Strip(light.Fill("abcd", 2)))
	require.Equal(t, "", ansi.Strip(light.Fill("abcd", -2)))

	plain, err := For("plain")
	require.NoError(t, err)
	require.Equal(t, "ab", plain.With(Colour256).Fill("ab", 6), "blanks that nobody sees are not sent")
}
