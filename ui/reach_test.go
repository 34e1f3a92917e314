package ui

import (
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/require"
	"golang.org/x/text/width"

	"chalkfold/ui/canvas"
	"chalkfold/ui/desk"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
)

// Every screen of the gallery, in every way: no two states look the same once
// all looks are taken away; every glyph takes one cell; a language with longer
// words fits; another size and back again is where she was.
func TestEveryScreenInEveryWay(t *testing.T) {
	if testing.Short() {
		t.Skip("draws many screens")
	}
	seen := map[string]string{}
	for _, sc := range gallery() {
		if sc.state == "too small" {
			continue
		}
		t.Run(sc.name, func(t *testing.T) {
			s := sc.enter(t, 80, 24)
			set := s.m.d.Settings
			differs(t, sc, s, seen)
			s.m.d.Settings = set
			takesOneCell(t, s)
			s.m.d.Settings = set
			s.resizes(t, sc)
			holdsLongerWords(t, s)
		})
	}
}

// differs: whatever looks are taken away, a word, a sign or another line says
// which state it is.
func differs(t *testing.T, sc scene, s screen, seen map[string]string) {
	s.m.d.Settings.Theme = s.m.d.Settings.Theme.With(theme.NoCodes)
	plain := s.m.View()
	require.NotContains(t, plain, "\x1b")
	if sc.name == "no-colour" || sc.name == "no-codes" {
		return // the same screen as True, in other looks
	}
	if other, ok := seen[plain]; ok {
		t.Fatalf("%s and %s cannot be told apart without their looks:\n%s", sc.name, other, plain)
	}
	seen[plain] = sc.name
}

var looksOnly = regexp.MustCompile(`\x1b\[[0-9;]*m`)

// takesOneCell: ASCII is ASCII. No glyph is sent that takes two cells where a
// terminal follows the habits of East Asia; half-blocks do, and are left out
// there. Nor is a picture sent, or anything but looks.
func takesOneCell(t *testing.T, s screen) {
	s.m.d.Settings.Strict = true
	for _, g := range []canvas.Glyphs{canvas.Braille, canvas.ASCII} {
		s.m.d.Settings.Glyphs = g
		view := s.m.View()
		require.NotContains(t, looksOnly.ReplaceAllString(view, ""), "\x1b", "only looks are sent")
		for _, r := range ansi.Strip(view) {
			if g == canvas.ASCII {
				require.Less(t, r, rune(0x80), "%q in ASCII", r)
			} else if r >= 0x80 {
				kind := width.LookupRune(r).Kind()
				require.NotContains(t, []width.Kind{width.EastAsianAmbiguous, width.EastAsianWide, width.EastAsianFullwidth}, kind, "%q (%U) may take two cells", r, r)
			}
		}
	}
}

// holdsLongerWords: with sentences two fifths longer every screen still has its
// footer and help, and nothing is wider than the window.
func holdsLongerWords(t *testing.T, s screen) {
	s.m.d.Words = text.Pseudo()
	for _, size := range [][2]int{{80, 24}, {60, 16}} {
		s.send(tea.WindowSizeMsg{Width: size[0], Height: size[1]})
		fits(t, s.m.View(), size[0], size[1])
		require.Nil(t, s.m.fault)
		if s.m.onProjector() == nil {
			last := strings.TrimRight(s.lines()[size[1]-1], " ")
			require.Regexp(t, `F1 Hé[^ ]+( óóó)*$`, last)
		}
	}
}

// resizes: another size and back again, and zoom, place, row in hand and
// scrolling are as they were.
func (s screen) resizes(t *testing.T, sc scene) {
	was := s.text()
	for _, size := range [][2]int{{120, 40}, {160, 45}, {60, 16}, {20, 5}, {80, 24}} {
		s.send(tea.WindowSizeMsg{Width: size[0], Height: size[1]})
		_ = s.m.View()
	}
	if sc.over != "" { // a list may stand at another place in its window
		require.Equal(t, inHand(was), inHand(s.text()))
		return
	}
	require.Equal(t, was, s.text())
}

// inHand is the line of the row in hand.
func inHand(screen string) string { return regexp.MustCompile(`(?m)^>.*`).FindString(screen) }

// The row in hand is seen without any colour: by its sign, and the field by
// being reversed.
func TestTheFocusIsSeenWithoutColour(t *testing.T) {
	for _, keys := range [][]string{{}, {"esc", "2"}, append(append([]string{"esc", "6"}, slices.Repeat([]string{"down"}, 20)...), "enter"), {"esc", "5", "esc", "t"}} {
		s := at(t, 80, 24, looks("mono", canvas.ASCII))
		s.m.d.Settings.Theme = s.m.d.Settings.Theme.With(theme.NoColour)
		s.keys(keys...)
		found := false
		for _, line := range strings.Split(s.m.View(), "\n") {
			if strings.HasPrefix(ansi.Strip(line), ">") {
				found = found || regexp.MustCompile(`\x1b\[[0-9;]*7m`).MatchString(line)
			}
		}
		require.True(t, found, "%v\n%s", keys, s.text())
	}
}

// Nothing is red before anything was done: with no client, or half of one, no
// stage warns and none says that something failed.
func TestNothingIsRedAtTheStart(t *testing.T) {
	for name, begin := range map[string]func(t testing.TB, cols, rows int) screen{"nobody": bareDesk, "half": half} {
		for i := desk.Measure; i <= desk.Cut; i++ {
			s := begin(t, 100, 30)
			th, err := theme.For("dark")
			require.NoError(t, err)
			s.m.d.Settings.Theme = th.With(theme.Colour256)
			s.keys("esc", string(rune('0'+i)))
			s.m.d.Message = ""
			warn := switchOn(s.m.d.Settings.Theme.Style(theme.Warn).Render("x"))
			for _, line := range s.m.painted() {
				require.NotContains(t, line, warn, "%s, stage %d:\n%s", name, i, s.text())
			}
			require.NotRegexp(t, `(?im)^..fail|\berror|!`, s.text(), "%s, stage %d", name, i)
		}
	}
}

// The mouse is the terminal's until it is asked for; how to ask stands on the
// first screen, and how to copy with it in help.
func TestTheMouseIsOffUntilAskedFor(t *testing.T) {
	s := bareDesk(t, 80, 24)
	require.False(t, s.m.d.Settings.Mouse)
	s.m.Begin()
	require.Contains(t, s.lines()[23], "F8 Mouse")
	s.keys("f1")
	require.Contains(t, s.text(), "hold Shift and drag")
	s.keys("esc", "f8")
	require.True(t, s.m.d.Settings.Mouse)
	for _, stage := range []string{"1", "3", "4", "6"} {
		s.keys("esc", stage)
		require.Contains(t, s.lines()[23], "F8 Mouse", "while it is on the footer says how it goes off")
	}
}

// Another set of glyphs shows a sample of itself at once.
func TestOtherGlyphsShowASample(t *testing.T) {
	s := first(t)
	for _, want := range []string{"⠤", "▄", "_.-"} {
		s.keys("f6")
		line := s.lines()[22]
		require.Contains(t, line, "Drawn with "+s.m.d.Settings.Glyphs.String())
		require.Contains(t, line, want)
	}
}

// Where half-blocks may take two cells, F6 and the settings pass them over.
func TestStrictTerminalsGetNoHalfBlocks(t *testing.T) {
	s := first(t)
	s.m.d.Settings.Strict = true
	for range 4 {
		s.keys("f6")
		require.NotEqual(t, canvas.Blocks, s.m.d.Settings.Glyphs)
	}
	act("settings")(s)
	s.keys("down")
	for range 4 {
		s.keys("right")
		require.NotEqual(t, canvas.Blocks, s.m.d.Settings.Glyphs)
	}
}

// The standard input is left to the framework: on Windows only so do resizing
// and the mouse come through. No other way of input is ever asked for.
func TestTheStandardInputIsTheFrameworks(t *testing.T) {
	env := func(string) string { return "" }
	other, err := os.Open(os.DevNull)
	require.NoError(t, err)
	defer other.Close()
	usual := len(programOptions(Options{In: os.Stdin, Out: os.Stdout, Env: env}, frames{}))
	require.Len(t, programOptions(Options{Out: os.Stdout, Env: env}, frames{}), usual)
	require.Len(t, programOptions(Options{In: other, Out: os.Stdout, Env: env}, frames{}), usual+1)
	paths, err := filepath.Glob("*.go")
	require.NoError(t, err)
	for _, p := range paths {
		source, err := os.ReadFile(p)
		require.NoError(t, err)
		require.False(t, strings.HasSuffix(p, "_test.go") == false && strings.Contains(string(source), "WithInputTTY"), p)
	}
}

// Frames are wrapped for terminals that may know it; old consoles get them
// bare, and no clipboard.
func TestOldConsolesGetNoSequencesTheyPrint(t *testing.T) {
	for term, want := range map[string]bool{"xterm-256color": true, "screen": true, "tmux-256color": true, "linux": false, "dumb": false} {
		require.Equal(t, want, pictures(func(string) string { return term }), term)
	}
}
