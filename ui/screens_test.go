package ui

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/require"

	"chalkfold/testdata/golden"
	"chalkfold/ui/canvas"
	"chalkfold/ui/desk"
	"chalkfold/ui/theme"
)

// Every stage, overlay and state, as a person sees it at three sizes and with
// three sets of glyphs; at the usual size also how each cell is written. In
// every theme the words are the same.
func TestGallery(t *testing.T) {
	if testing.Short() {
		t.Skip("draws many screens")
	}
	for _, sc := range gallery() {
		shown := ""
		t.Run(sc.name, func(t *testing.T) { shown = sc.hang(t) })
		if shown != "" { // not one that -run leaves out
			golden.Check(t, filepath.Join("screens", sc.name+".txt"), shown) // back from the scene's home
		}
	}
}

// hang is all of a scene's screens.
func (sc scene) hang(t *testing.T) string {
	sizes := sc.sizes
	if sizes == nil {
		sizes = usualSizes
	}
	var b strings.Builder
	var s screen
	for i, size := range sizes {
		if i == 0 || !sc.once {
			s = sc.enter(t, size[0], size[1])
		}
		s.send(tea.WindowSizeMsg{Width: size[0], Height: size[1]})
		set := s.m.d.Settings
		var first []string
		for _, g := range []canvas.Glyphs{canvas.Braille, canvas.Blocks, canvas.ASCII} {
			s.m.d.Settings = set
			s.m.d.Settings.Glyphs = g
			view := s.m.View()
			require.Nil(t, s.m.fault)
			fits(t, view, size[0], size[1])
			lines := plainLines(view)
			if first == nil {
				first = lines
			}
			heading(&b, nameAt(size)+" "+g.String(), first, lines)
		}
		s.m.d.Settings = set
		if size == [2]int{80, 24} {
			b.WriteString("== " + nameAt(size) + " looks\n" + s.grid(t) + "\n")
			s.sameInAllThemes(t)
		}
	}
	return b.String()
}

// heading writes a screen under its name; of one that was there before in
// other glyphs only the lines that are others.
func heading(b *strings.Builder, name string, first, lines []string) {
	if &first[0] == &lines[0] {
		b.WriteString("== " + name + "\n" + strings.Join(lines, "\n") + "\n")
		return
	}
	var other []string
	for i := range lines {
		if lines[i] != first[i] {
			other = append(other, fmt.Sprintf("%2d|%s", i+1, lines[i]))
		}
	}
	switch {
	case len(other) == 0:
		b.WriteString("== " + name + ": the same\n")
	case len(other) > len(lines)/2:
		b.WriteString("== " + name + "\n" + strings.Join(lines, "\n") + "\n")
	default:
		b.WriteString("== " + name + ": these lines\n" + strings.Join(other, "\n") + "\n")
	}
}

// size is the size of a file, which is no matter of the screen.
var size = regexp.MustCompile(`\d+ kB`)

func plainLines(view string) []string {
	lines := strings.Split(ansi.Strip(view), "\n")
	for i := range lines {
		lines[i] = size.ReplaceAllString(strings.TrimRight(lines[i], " "), "0 kB")
	}
	return lines
}

// enter comes to a scene at a size.
func (sc scene) enter(t testing.TB, cols, rows int) screen {
	begin := sc.begin
	if begin == nil {
		begin = seated
	}
	s := begin(t, cols, rows)
	press(sc.keys...)(s)
	if sc.do != nil {
		sc.do(s)
	}
	require.Nil(t, s.m.fault)
	require.False(t, s.m.leaving)
	if sc.over == "" && sc.stage != desk.NoStage {
		require.Nil(t, s.m.top())
		require.Equal(t, sc.stage, s.m.at)
	}
	if sc.over != "" {
		require.NotNil(t, s.m.top())
	}
	return s
}

// sameInAllThemes: a theme changes how words are written, never which.
func (s screen) sameInAllThemes(t testing.TB) {
	now := s.m.d.Settings.Theme
	defer func() { s.m.d.Settings.Theme = now }()
	want := plainLines(s.m.View())
	for _, name := range theme.Names() {
		for _, c := range []theme.Colour{theme.NoCodes, theme.NoColour, theme.Colour16, theme.Colour256} {
			th, err := theme.For(name)
			require.NoError(t, err)
			s.m.d.Settings.Theme = th.With(c)
			got := plainLines(s.m.View())
			for i := range want {
				// The settings and the test card name the theme.
				require.Equal(t, strings.ReplaceAll(want[i], now.Name(), name), got[i], "%s, line %d", name, i+1)
			}
		}
	}
}

// roles are the letters of the grid of looks.
var roles = []struct {
	letter string
	role   theme.Role
}{
	{"t", theme.Text},
	{"m", theme.Muted},
	{"b", theme.Title},
	{"d", theme.Outline},
	{"g", theme.Guide},
	{"n", theme.Newest},
	{"S", theme.Selected},
	{"a", theme.Accent},
	{"w", theme.Warn},
	{"k", theme.Ok},
}

// grid says of each cell how it is written, in the dark theme, whose inks all
// differ: t text, m muted, b bold (titles and keys), d drawing, g guide, n
// newest, S selected, a accent, w warning, k in order; u underlined.
func (s screen) grid(t testing.TB) string {
	now := s.m.d.Settings.Theme
	defer func() { s.m.d.Settings.Theme = now }()
	th, err := theme.For("dark")
	if s.m.d.Projecting {
		th, err = theme.For("projector")
	}
	require.NoError(t, err)
	th = th.With(theme.Colour256)
	s.m.d.Settings.Theme = th
	letters := map[string]string{}
	add := func(style, letter string) {
		if _, there := letters[style]; !there {
			letters[style] = letter
		}
	}
	for _, r := range roles {
		add(switchOn(th.Style(r.role).Render("x")), r.letter)
	}
	for _, r := range roles {
		add(switchOn(th.Underlined(r.role).Render("x")), "u")
	}
	for pen, on := range th.Pens() {
		add(on, string(rune('A'+pen)))
	}
	add("", ".")
	add("\x1b[0m", ".")
	var out []string
	for _, line := range s.m.painted() {
		var b strings.Builder
		on := ""
		for line != "" {
			if line[0] == '\x1b' {
				end := strings.IndexByte(line, 'm') + 1
				require.Positive(t, end)
				on, line = line[:end], line[end:]
				continue
			}
			end := strings.IndexByte(line, '\x1b')
			if end < 0 {
				end = len(line)
			}
			letter, known := letters[on]
			require.True(t, known, "%q is how no role is written", on)
			for _, r := range line[:end] {
				if r == ' ' && letter != "S" {
					b.WriteByte(' ')
				} else {
					b.WriteString(strings.Repeat(letter, ansi.StringWidth(string(r))))
				}
			}
			line = line[end:]
		}
		out = append(out, strings.TrimRight(b.String(), " "))
	}
	return strings.Join(out, "\n")
}

// switchOn is the sequence in front of an x.
func switchOn(rendered string) string { return rendered[:strings.IndexByte(rendered, 'x')] }

// An overlay, stage or state that is added later is hung in the gallery too.
func TestGalleryIsWhole(t *testing.T) {
	over, at, state := map[string]bool{}, map[desk.StageID]map[string]bool{}, map[string]bool{}
	names := map[string]bool{}
	for _, sc := range gallery() {
		require.False(t, names[sc.name], "%s hangs twice", sc.name)
		names[sc.name] = true
		over[sc.over], state[sc.state] = true, true
		if sc.stage != desk.NoStage {
			if at[sc.stage] == nil {
				at[sc.stage] = map[string]bool{}
			}
			at[sc.stage][sc.state] = true
		}
		require.True(t, sc.state == "" || slices.Contains(states, sc.state), "%s: %q stands in no list of states", sc.name, sc.state)
	}
	for id := desk.Measure; id <= desk.Cut; id++ {
		for _, s := range []string{"", "empty", "partly filled"} {
			require.True(t, at[id][s], "stage %d, %q, is not in the gallery", id, s)
		}
	}
	for _, s := range states {
		require.True(t, state[s], "the state %q is not in the gallery", s)
	}
	made := constructors(t)
	require.Greater(t, len(made), 15)
	for _, name := range made {
		require.True(t, over[name], "overlay.%s is not in the gallery", name)
	}
	hung, err := os.ReadDir(filepath.Join("testdata", "screens"))
	require.NoError(t, err)
	for _, f := range hung {
		require.True(t, names[strings.TrimSuffix(f.Name(), ".txt")], "testdata/screens/%s is of no scene", f.Name())
	}
}

// constructors are the functions of ui/overlay that make an overlay.
func constructors(t *testing.T) []string {
	t.Helper()
	paths, err := filepath.Glob("overlay/*.go")
	require.NoError(t, err)
	set := token.NewFileSet()
	var parsed []*ast.File
	covers := map[string]bool{}
	for _, p := range paths {
		if strings.HasSuffix(p, "_test.go") {
			continue
		}
		f, err := parser.ParseFile(set, p, nil, 0)
		require.NoError(t, err)
		parsed = append(parsed, f)
		for _, d := range f.Decls {
			if fn, ok := d.(*ast.FuncDecl); ok && fn.Recv != nil && fn.Name.Name == "Covers" {
				if star, ok := fn.Recv.List[0].Type.(*ast.StarExpr); ok {
					covers[fmt.Sprint(star.X)] = true
				}
			}
		}
	}
	var out []string
	for _, f := range parsed {
		for _, d := range f.Decls {
			fn, ok := d.(*ast.FuncDecl)
			if !ok || fn.Recv != nil || !fn.Name.IsExported() || fn.Type.Results == nil {
				continue
			}
			switch r := fn.Type.Results.List[0].Type.(type) {
			case *ast.SelectorExpr:
				if r.Sel.Name == "Overlay" {
					out = append(out, fn.Name.Name)
				}
			case *ast.StarExpr:
				if covers[fmt.Sprint(r.X)] {
					out = append(out, fn.Name.Name)
				}
			}
		}
	}
	return out
}
