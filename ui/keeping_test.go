package ui

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/ui/canvas"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/session"
	"chalkfold/ui/settings"
)

// keeping is a workbench with a folder of settings.
func keeping(t *testing.T) (screen, string) {
	dir := filepath.Join(t.TempDir(), "chalkfold")
	set := looks("mono", canvas.ASCII)
	set.Config = dir
	return at(t, 80, 24, set), filepath.Join(dir, settings.File)
}

// What she changes of the looks is there the next time, by whichever key it
// was changed; on the projector nothing is kept.
func TestChangedLooksAreKept(t *testing.T) {
	s, path := keeping(t)
	s.keys("ctrl+t")
	require.NoFileExists(t, filepath.Join(filepath.Dir(path), "nothing"))
	s.keys("f6", "f8")
	text, err := os.ReadFile(path)
	require.NoError(t, err)
	require.Contains(t, string(text), "theme = \""+s.m.d.Settings.Theme.Name()+"\"\n")
	require.Contains(t, string(text), "glyphs = \"braille\"\n")
	require.Contains(t, string(text), "mouse = true\n")
	act("settings")(s)
	require.Contains(t, s.text(), "Kept in ")
	for range 7 {
		s.keys("right", "down")
	}
	got, told := settings.Read(filepath.Dir(path))
	require.Empty(t, told)
	u := s.m.d.Settings.Unit
	require.Equal(t, measure.Cm, u)
	require.Equal(t, settings.Settings{Theme: s.m.d.Settings.Theme.Name(), Glyphs: "block", Unit: &u, Comma: true, Aspect: 2.05}, got)

	before, err := os.ReadFile(path)
	require.NoError(t, err)
	s.keys("esc", "esc", "3", "f9", "ctrl+t", "f9")
	after, err := os.ReadFile(path)
	require.NoError(t, err)
	require.Equal(t, string(before), string(after), "the room with the projector is another's")

	require.NoError(t, os.WriteFile(path, []byte("theme == 1\n"), 0o600))
	s.keys("f6")
	require.Contains(t, s.text(), "Changed for now, not kept")
	torn, err := os.ReadFile(path)
	require.NoError(t, err)
	require.Equal(t, "theme == 1\n", string(torn), "a file that cannot be read is left alone")
}

// What is wrong with the file of settings is said on the first screen.
func TestWrongSettingsAreSaidOnTheScreen(t *testing.T) {
	s := at(t, 80, 24, looks("mono", canvas.ASCII))
	s.m.warn(nil)
	require.Empty(t, s.m.d.Message)
	s.m.warn([]string{"settings.toml:1: mous; there is no such setting; write mouse"})
	require.Contains(t, s.text(), "settings.toml:1: mous; there is no such setting; write mouse.")
	s.m.warn([]string{"one", "two"})
	require.Contains(t, s.text(), "2 lines of the settings were not read; chalkfold settings names them.")
}

// Keys of her own are shown wherever a key is shown, and work.
func TestKeysOfHerOwnAreShownAndWork(t *testing.T) {
	s := at(t, 120, 30, looks("mono", canvas.ASCII))
	own, _ := settings.Parse([]byte("[keys]\nwhy = \"i\"\nstep-next = [\",\", \"right\"]\nhelp = \"f3\"\nopen = \"ctrl+o\"\n"))
	set, told := own.On(desk.Keys())
	require.Empty(t, told)
	s.m.d.Keys = set
	s.keys("esc", "3")
	require.Contains(t, s.lines()[29], ", Next")
	require.True(t, strings.HasSuffix(strings.TrimRight(s.lines()[29], " "), "F3 Help"))
	s.keys(",")
	require.Equal(t, 2, s.m.draft.Step())
	s.keys(" ")
	require.Equal(t, 2, s.m.draft.Step(), "the usual key is given up")
	s.keys("f3")
	require.Contains(t, s.text(), "To copy from the screen")
	s.keys("w", "h", "y")
	require.Regexp(t, `Why +i\b`, s.text())
}

// Decimals have a comma where she wants one, on every screen.
func TestDecimalsWithAComma(t *testing.T) {
	s := at(t, 80, 24, looks("mono", canvas.ASCII))
	point := s.text()
	require.Regexp(t, `\d\.\d cm`, point)
	s.m.d.Settings.Comma = true
	require.NotRegexp(t, `\d\.\d`, s.text())
	require.Equal(t, point, strings.ReplaceAll(s.text(), ",", "."))
	s.keys("ctrl+u", "92,5 cm")
	require.Contains(t, s.text(), "92,5 cm", "and is read with one")
	s.keys("enter")
	require.True(t, s.m.d.Unsaved())
}

// The words of a stage can be taken along: to the clipboard and into a file.
func TestWordsAreCopied(t *testing.T) {
	s := at(t, 80, 24, looks("mono", canvas.ASCII))
	var clip []string
	s.m.clip = func(words string) { clip = append(clip, words) }
	state := os.Getenv("XDG_STATE_HOME")
	for stage, want := range map[string]string{
		"1": "Waist girth\t28 in\n", "2": "Length", "3": "Step 1 of", "4": "pass\tSide seams meet\t", "5": "buy", "6": "Chalk card",
	} {
		s.keys("esc", stage)
		act("copy")(s)
		require.NotEmpty(t, clip)
		last := clip[len(clip)-1]
		require.Contains(t, strings.ToLower(last), strings.ToLower(want), "stage %s", stage)
		require.NotContains(t, last, "\x1b")
		kept, err := os.ReadFile(filepath.Join(state, "chalkfold", copiedFile))
		require.NoError(t, err)
		require.Equal(t, last, string(kept))
		require.Contains(t, s.text(), "Copied, and written to")
	}
	require.Equal(t, "\x1b]52;c;YWJj\a", clipboard("abc"))

	// What was copied of one client is pasted for another.
	s.keys("esc", "1")
	act("copy")(s)
	table := clip[len(clip)-1]
	body := s.m.d.Job().Body
	act("new-client")(s)
	s.keys("enter")
	s.send(tea.KeyMsg{Type: tea.KeyRunes, Paste: true, Runes: []rune(table)})
	pasted := s.m.d.Job().Body
	require.Equal(t, body.Len(), pasted.Len(), s.text())
	for _, id := range body.IDs() {
		was, _ := body.Get(id)
		is, ok := pasted.Get(id)
		require.True(t, ok, id)
		require.InDelta(t, was.MM(), is.MM(), 1e-9, id)
	}

	s.m.clip = nil
	act("copy")(s)
	require.Contains(t, s.text(), "Copied, and written to", "without a clipboard the file is there")
	require.NoError(t, os.RemoveAll(filepath.Join(state, "chalkfold")))
	require.NoError(t, os.WriteFile(filepath.Join(state, "chalkfold"), nil, 0o600))
	act("copy")(s)
	require.Contains(t, s.text(), "Given to the clipboard only")
	s.keys("esc", "3", "f9")
	s.run(s.m.do(keys.CopyOut))
	require.Contains(t, s.text(), "Not now", "not before a class")
}

// Every row of a stage, every tab and every key of the footer can be clicked.
func TestEveryRowIsClicked(t *testing.T) {
	s := at(t, 120, 50, looks("mono", canvas.ASCII))
	s.keys("f8")
	click := func(x, y int) {
		_ = s.m.View()
		s.send(tea.MouseMsg{X: x, Y: y, Button: tea.MouseButtonLeft, Action: tea.MouseActionPress})
		require.Nil(t, s.m.fault)
	}
	lineOf := func(words string) int {
		for i, l := range s.lines() {
			if strings.Contains(l, words) {
				return i
			}
		}
		t.Fatalf("no line holds %q:\n%s", words, s.text())
		return 0
	}
	click(4, lineOf("Waist girth"))
	require.True(t, selects(s, "Waist girth"))
	s.keys("ctrl+u", "29")
	click(4, lineOf("Hip girth"))
	require.True(t, selects(s, "Hip girth"))
	require.True(t, s.m.d.Unsaved(), "what was typed is accepted")
	unit := s.m.d.Unit()
	click(4, lineOf("Unit"))
	require.Equal(t, unit, s.m.d.Unit(), "the first click takes the row in hand")
	click(4, lineOf("Unit"))
	require.NotEqual(t, unit, s.m.d.Unit(), "the second turns it")
	s.keys("ctrl+z")

	s.keys("esc", "2")
	click(4, lineOf("Armhole depth"))
	require.True(t, selects(s, "Armhole depth"))
	s.keys("esc", "3")
	click(4, lineOf("Zip and hem opening"))
	require.Equal(t, "Zip and hem opening", s.m.d.Sheet().Steps[s.m.draft.Step()-1].Title)
	s.keys("4")
	click(6, lineOf("Dart legs"))
	require.Regexp(t, `(?m)^> pass +Dart legs`, s.text())
	at := lineOf("Dart legs")
	click(6, at)
	require.Contains(t, s.text(), "Front, ", "the one in hand shows its place")
	s.keys("6")
	was := strings.Contains(s.lines()[lineOf("Tiles")], "[x]")
	click(6, lineOf("Tiles"))
	require.Equal(t, !was, strings.Contains(s.lines()[lineOf("Tiles")], "[x]"))
	click(6, 0)
	require.Equal(t, desk.Measure, s.m.at)
	last := len(s.lines()) - 1
	click(strings.Index(s.lines()[last], "F8")+1, last)
	require.False(t, s.m.d.Settings.Mouse, "the footer says how the terminal marks text again: %s", s.lines()[last])
}

// Two workbenches on one file: the second to save is asked, may read it again
// or save beside it, and neither loses anything.
func TestTwoWorkbenchesOnOneFile(t *testing.T) {
	one := first(t)
	path := one.m.d.Path()
	x, err := session.Open(path)
	require.NoError(t, err)
	m := NewModel(looks("mono", canvas.ASCII))
	m.later, m.d.Now = one.m.later, one.m.d.Now
	m.Take(x)
	two := screen{t: t, m: m}
	two.send(tea.WindowSizeMsg{Width: 80, Height: 24})
	one.edit()
	one.keys("ctrl+s")
	require.False(t, one.m.d.Unsaved())
	two.keys("esc", "2", "ctrl+u", "42", "enter", "ctrl+s")
	require.True(t, two.m.d.Unsaved())
	require.Contains(t, two.text(), "changed elsewhere")
	got, err := session.Open(path)
	require.NoError(t, err)
	require.True(t, got.Job.Body.Has(measure.WaistToKnee), "what the first saved stands")
	two.keys("esc")
	require.True(t, two.m.d.Unsaved(), "and what the second did is still there")
	two.send(rescueDue{})
	require.Len(t, rescues(t), 1)
}
