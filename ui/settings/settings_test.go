package settings_test

import (
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/BurntSushi/toml"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"chalkfold/measure"
	"chalkfold/ui/keys"
	"chalkfold/ui/settings"
)

// Every setting that is known is read, and says something else than nothing.
func TestEverySettingIsRead(t *testing.T) {
	inch := measure.Cm
	for line, want := range map[string]settings.Settings{
		`theme = "Dark"`:   {Theme: "dark"},
		`glyphs = "ascii"`: {Glyphs: "ascii"},
		`color = "never"`:  {Colour: "never"},
		`unit = "cm"`:      {Unit: &inch},
		"comma = true":     {Comma: true},
		"mouse = true":     {Mouse: true},
		"motion = false":   {Still: true},
		"plain = true":     {Plain: true},
		"aspect = 2.25":    {Aspect: 2.25},
		"[keys]\nwhy = \"i\"\nfit = [\"9\", \"f4\"]": {Keys: map[keys.ID][]string{"why": {"i"}, "fit": {"9", "f4"}}},
		`theme = "auto"`: {},
		"aspect = 2":     {Aspect: 2},
	} {
		got, told := settings.Parse([]byte(line + "\n"))
		require.Empty(t, told, line)
		require.Equal(t, want, got, line)
	}
	seen := map[string]bool{}
	for _, line := range strings.Split(settings.Template(keys.Table()), "\n") {
		if name, _, ok := strings.Cut(strings.TrimPrefix(line, "# "), " = "); ok {
			seen[name] = true
		}
	}
	for _, name := range settings.Names() {
		require.True(t, seen[name] || name == settings.Keys, "%s is not printed", name)
	}
}

// What cannot be read is told with its line, what was read and what works; the
// rest counts.
func TestWhatIsWrongIsTold(t *testing.T) {
	text := "# mine\ntheme = \"darkk\"\ncolour = \"never\"\nmouse = \"yes\"\naspect = 9\nweather = 1\ncomma = true\n[keys]\nwhy = 3\n"
	got, told := settings.Parse([]byte(text))
	require.Equal(t, settings.Settings{Comma: true, Keys: map[keys.ID][]string{}}, got)
	all := strings.Join(told, "\n")
	require.Len(t, told, 6, all)
	require.Regexp(t, `2: theme = "darkk"; that is no answer to it; the usual is taken instead; write auto, plain, `, all)
	require.Contains(t, all, "3: colour; there is no such setting; write color")
	require.Contains(t, all, `4: mouse = "yes"; that is no answer to it; the usual is taken instead; write true, false`)
	require.Contains(t, all, "5: aspect = 9; ")
	require.Contains(t, all, "6: weather; there is no such setting; the settings are theme, ")
	require.Contains(t, all, "9: why = 3; that is no key; ")
	require.NotRegexp(t, `(?i)\b(invalid|error|please|success)`, all)

	got, told = settings.Parse([]byte("theme = \"dark\"\nglyphs == 3\n"))
	require.Equal(t, settings.Settings{}, got, "a torn file says nothing at all")
	require.Len(t, told, 1)
	require.Regexp(t, `^2: the file; it is no TOML \(.*\); the usual is taken instead; mend that line`, told[0])
}

func TestReadOfAFolder(t *testing.T) {
	got, told := settings.Read("")
	require.Equal(t, settings.Settings{}, got)
	require.Empty(t, told)
	dir := t.TempDir()
	got, told = settings.Read(dir)
	require.Equal(t, settings.Settings{}, got)
	require.Empty(t, told, "no file is no trouble")
	require.NoError(t, os.Mkdir(filepath.Join(dir, settings.File), 0o700))
	_, told = settings.Read(dir)
	require.Len(t, told, 1, "a folder of that name is told")
	require.NoError(t, os.Remove(filepath.Join(dir, settings.File)))
	require.NoError(t, os.WriteFile(filepath.Join(dir, settings.File), []byte("mous = true\n"), 0o600))
	_, told = settings.Read(dir)
	require.Equal(t, []string{filepath.Join(dir, settings.File) + ":1: mous; there is no such setting; write mouse"}, told)
}

// A changed setting is written where it stands; comments, order and what is
// not known here stay.
func TestSettingsAreWrittenInPlace(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, settings.File)
	require.NoError(t, settings.Keep(filepath.Join(dir, "new"), settings.Value{Name: "theme", Literal: settings.Word("light")}))
	fresh, err := os.ReadFile(filepath.Join(dir, "new", settings.File))
	require.NoError(t, err)
	require.Regexp(t, `^# .*\ntheme = "light"\n$`, string(fresh))

	before := "# mine\r\n  theme = \"dark\"   # the shop\r\nweather = 1\r\n\r\n[keys]\r\nwhy = \"i\"\r\n"
	require.NoError(t, os.WriteFile(path, []byte(before), 0o600))
	require.NoError(t, settings.Keep(dir, settings.Value{Name: "theme", Literal: settings.Word("light")}, settings.Value{Name: "mouse", Literal: settings.Truth(true)}, settings.Value{Name: "aspect", Literal: settings.Number(2.25)}))
	after, err := os.ReadFile(path)
	require.NoError(t, err)
	require.Equal(t, "# mine\r\n  theme = \"light\"   # the shop\r\nweather = 1\r\nmouse = true\r\naspect = 2.25\r\n\r\n[keys]\r\nwhy = \"i\"\r\n", string(after))

	torn := []byte("theme = = 1\n")
	require.NoError(t, os.WriteFile(path, torn, 0o600))
	require.ErrorContains(t, settings.Keep(dir, settings.Value{Name: "mouse", Literal: "true"}), "nothing was kept")
	left, err := os.ReadFile(path)
	require.NoError(t, err)
	require.Equal(t, torn, left)
}

// Whatever stands in the file: what is written says what was meant and leaves
// all else, or it is refused.
func TestAnyFileIsWrittenInPlace(t *testing.T) {
	lines := []string{"# a comment", "", `theme = "dark" # x`, "theme='light'", "mouse = true", "weather = \"a = 1\"", "[keys]", "[other]", `why = "i"`, `"glyphs" = "ascii"`, "list = [\n  1, # one\n]", "aspect = 2", `long = """`, "theme = 3", `"""`}
	rapid.Check(t, func(t *rapid.T) {
		text := strings.Join(rapid.SliceOfN(rapid.SampledFrom(lines), 0, 8).Draw(t, "lines"), "\n") + rapid.SampledFrom([]string{"", "\n"}).Draw(t, "end")
		v := rapid.SampledFrom([]settings.Value{{Name: "theme", Literal: `"mono"`}, {Name: "mouse", Literal: "false"}, {Name: "glyphs", Literal: `"block"`}}).Draw(t, "value")
		out, err := settings.Edit([]byte(text), v)
		if err != nil {
			return
		}
		var was, is map[string]any
		_, err = toml.Decode(text, &was)
		require.NoError(t, err)
		_, err = toml.Decode(string(out), &is)
		require.NoError(t, err)
		require.Equal(t, strings.Trim(v.Literal, `"`) == "false", is[v.Name] == false)
		delete(was, v.Name)
		delete(is, v.Name)
		require.Equal(t, len(was), len(is))
		for k := range was {
			require.Equal(t, was[k], is[k])
		}
		require.Equal(t, strings.Count(text, "#"), strings.Count(strings.TrimPrefix(string(out), "# How Chalkfold looks. `chalkfold settings` prints all that can stand here.\n"), "#"), "comments stay")
	})
}

// Keys of her own are taken as a whole or not at all, with a sentence for each
// reason.
func TestKeysOfHerOwn(t *testing.T) {
	s, told := settings.Parse([]byte("[keys]\nwhy = \"i\"\n"))
	require.Empty(t, told)
	set, told := s.On(keys.Table())
	require.Empty(t, told)
	id, _ := set.ByKey(keys.Draft, "i")
	require.Equal(t, keys.ID("why"), id)

	s, _ = settings.Parse([]byte("[keys]\nwhy = \"z\"\nfly = \"f\"\nsteps = \"@\"\n"))
	set, told = s.On(keys.Table())
	require.Len(t, told, 1)
	require.Regexp(t, `fly: there is no such action.*steps: "@" cannot be typed.*why and zoom-newest want the same key.*The usual keys are kept`, told[0])
	id, _ = set.ByKey(keys.Draft, "y")
	require.Equal(t, keys.ID("why"), id)
}

// What is printed can be taken as it stands: without its marks it says what is
// usual, and changes no key.
func TestTheTemplateIsTheUsual(t *testing.T) {
	text := settings.Template(keys.Table())
	taken := regexp.MustCompile(`(?m)^# (\[keys\]|[a-z-]+ = .*)$`).ReplaceAllString(text, "$1")
	taken = regexp.MustCompile(`(?m)^[a-z-]+ = \[\].*\n`).ReplaceAllString(taken, "")
	s, told := settings.Parse([]byte(taken))
	require.Empty(t, told)
	in := measure.In
	want := settings.Settings{Unit: &in, Aspect: 2, Keys: s.Keys}
	require.Equal(t, want, s)
	set, told := s.On(keys.Table())
	require.Empty(t, told)
	for _, a := range keys.Table() {
		got, ok := set.Find(a.ID)
		require.True(t, ok)
		require.Equal(t, append(slices.Clone(a.Keys), a.Untyped...), append(slices.Clone(got.Keys), got.Untyped...), a.ID)
	}
}
