package keys

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/stretchr/testify/require"
)

func TestEveryRowIsWhole(t *testing.T) {
	seen := map[ID]bool{}
	for _, a := range Table() {
		require.False(t, seen[a.ID], "two rows are called %s", a.ID)
		seen[a.ID] = true
		require.Regexp(t, regexp.MustCompile(`^[a-z]+(-[a-z]+)*$`), string(a.ID))
		require.NotEmpty(t, a.Title, a.ID)
		require.Regexp(t, regexp.MustCompile(`^[A-Z0-9].*\.$`), a.Says, a.ID)
		require.NotRegexp(t, `(?i)\b(invalid|error|please|success\w*|sorry)\b|!`, a.Says, a.ID)
		require.Equal(t, len(a.Keys) > 0, a.Shown != "", "%s: keys and what is shown of them", a.ID)
		require.LessOrEqual(t, len(a.Foot), 16, a.ID)
		if a.Special != "" {
			general, ok := Table().Find(a.Special)
			require.True(t, ok, a.ID)
			require.Equal(t, Everywhere, general.Where, a.ID)
			require.Subset(t, general.Keys, a.Keys, a.ID)
		}
	}
}

// What is shown names the keys there are.
func TestShownIsTrue(t *testing.T) {
	for _, a := range Table() {
		if len(a.Keys) == 0 || a.ID == "show-number" { // that one is ten keys in three words
			continue
		}
		require.Equal(t, Show(append(slices.Clone(a.Keys), a.Untyped...)), a.Shown, a.ID)
	}
}

func TestNoKeyThatSomeKeyboardCannotType(t *testing.T) {
	for _, a := range Table() {
		for _, k := range append(slices.Clone(a.Keys), a.Untyped...) {
			require.Empty(t, Untypable(k), "%s: %q", a.ID, k)
		}
	}
	for _, k := range []string{
		"[", "]", "{", "}", "\\", "|", "@", "~", "alt+x", "ctrl+shift+a", "ctrl+i", "ctrl+m", "ctrl+j", "ctrl+h",
		"f10", "f11", "f12", "ctrl+left", "ctrl+right", "ctrl+up", "ctrl+down", "ctrl+a", "ctrl+b", "", "é",
	} {
		require.NotEmpty(t, Untypable(k), "%q", k)
	}
	for _, k := range []string{"f1", "f9", "ctrl+p", "+", "?", ".", " ", "shift+left", "ctrl+pgup"} {
		require.Empty(t, Untypable(k), "%q", k)
	}
}

// The first seven rows of the table (help, commands, open, save, undo and
// redo, stages, fields) are reached in two ways, one of them without an F-key.
func TestTwoWaysToTheFirstSeven(t *testing.T) {
	fkey := regexp.MustCompile(`^f\d+$`)
	for _, id := range []ID{Help, Commands, Open, Save, Undo, Redo, StageNext, StageBack, FieldNext, FieldBack} {
		a, ok := Table().Find(id)
		require.True(t, ok)
		ways := append(append(slices.Clone(a.Keys), a.Untyped...), a.Instead...)
		slices.Sort(ways)
		ways = slices.Compact(ways)
		require.GreaterOrEqual(t, len(ways), 2, id)
		require.True(t, slices.ContainsFunc(ways, func(k string) bool { return !fkey.MatchString(k) }), id)
		for _, k := range a.Instead {
			_, live := ByKey(OnTable, k)
			require.True(t, live, "%s: %s leads nowhere", id, k)
		}
	}
}

func TestNoClash(t *testing.T) {
	require.Empty(t, Table().Clashes())
}

func TestByKey(t *testing.T) {
	for _, tc := range []struct {
		where Where
		key   string
		want  ID
	}{
		{Field, "f1", Help},
		{Field, "?", ""},
		{OnTable, "?", Help},
		{Draft, "?", Help},
		{Overlay, "q", ""},
		{NotTyping, "q", Leave},
		{Draft, " ", "step-next"},
		{Draft, "z", "zoom-newest"},
		{Draft, "3", "draft"},
		{Projector, "3", "show-number"},
		{True, "enter", "go-there"},
		{Draft, "enter", Accept},
		{Lay, "tab", "piece-next"},
		{Cut, "tab", FieldNext},
		{Projector, "0", "fit"},
		{Projector, "f9", "show-end"},
		{Field, "h", ""},
		{Question, "a", ""},
		{Question, "enter", "answer"},
		{Measure, "ctrl+z", Undo},
		{Style, "x", "stand"},
		{OnTable, "=", "zoom-in"},
		{Everywhere, "z", ""},
		{Field, "pgup", "nudge-up"},
	} {
		got, ok := ByKey(tc.where, tc.key)
		require.Equal(t, tc.want, got, "%s in %s", tc.key, tc.where.Title())
		require.Equal(t, tc.want != "", ok)
	}
}

// While typing no letter, digit or sign does anything but fall into the text.
func TestLettersNeverActWhileTyping(t *testing.T) {
	for _, w := range []Where{Field, Question, Overlay} {
		for r := '!'; r < 0x7F; r++ {
			_, ok := ByKey(w, string(r))
			require.False(t, ok, "%c in %s", r, w.Title())
		}
		_, ok := ByKey(w, " ")
		require.False(t, ok)
	}
}

// Every key is one that the framework can name.
func TestNamesAreTheFrameworks(t *testing.T) {
	named := map[string]bool{}
	for k := tea.KeyType(-120); k < 128; k++ {
		named[tea.Key{Type: k}.String()] = true
	}
	for _, a := range Table() {
		for _, k := range a.Keys {
			require.True(t, len(k) == 1 || named[k], "%s: %q", a.ID, k)
		}
	}
}

func TestLive(t *testing.T) {
	ids := func(w Where) []ID {
		var all []ID
		for _, a := range Table().Live(w) {
			all = append(all, a.ID)
		}
		return all
	}
	require.Equal(t, ID("finding-up"), ids(True)[0])
	require.NotContains(t, ids(True), Accept, "go-there took its key")
	require.Contains(t, ids(Draft), Accept)
	require.Contains(t, ids(Draft), Lessons, "actions without a key are always there")
	require.NotContains(t, ids(Field), ID("zoom-in"))
	require.NotContains(t, ids(Projector), ID("measure"))
}

func TestFooters(t *testing.T) {
	for _, w := range Wheres() {
		rows := Table().Footer(w)
		require.GreaterOrEqual(t, len(rows), 3, w.Title())
		require.LessOrEqual(t, len(rows), 6, w.Title())
		require.Equal(t, len(footers[w])+2, len(rows), "an action of the footer of %s is not in the table", w.Title())
		require.Equal(t, Help, rows[len(rows)-1].ID)
		width := 0
		for _, a := range rows {
			require.NotEmpty(t, a.Foot, a.ID)
			require.NotEmpty(t, a.Short(), a.ID)
			width += len(a.Short()) + 1 + len(a.Foot) + 2
		}
		require.LessOrEqual(t, width, 80, w.Title())
	}
	require.Equal(t, "Help", Table().Footer(Where(99))[3].Title)
}

func TestChanged(t *testing.T) {
	s, err := Table().Changed(map[ID][]string{"why": {"i"}})
	require.NoError(t, err)
	id, _ := s.ByKey(Draft, "i")
	require.Equal(t, ID("why"), id)
	a, _ := s.Find("why")
	require.Equal(t, "i", a.Shown)
	id, _ = ByKey(Draft, "y")
	require.Equal(t, ID("why"), id, "the built-in table stays")

	_, err = Table().Changed(map[ID][]string{"why": {"z"}, "fly": {"f"}, "steps": {"@"}})
	require.EqualError(t, err, "keys: fly: there is no such action; the command list names them\n"+
		`steps: "@" cannot be typed alone on some keyboards; take another key`+"\n"+
		"z: why and zoom-newest want the same key in draft; give one of them another")
}

// A letter of her own for what works everywhere does not work while she types;
// one for a field or a list is refused.
func TestChangedLettersNeverActWhileTyping(t *testing.T) {
	s, err := Table().Changed(map[ID][]string{Save: {"f5", ","}})
	require.NoError(t, err)
	id, _ := s.ByKey(NotTyping, ",")
	require.Equal(t, Save, id)
	_, ok := s.ByKey(Field, ",")
	require.False(t, ok)
	id, _ = s.ByKey(Field, "f5")
	require.Equal(t, Save, id)
	_, err = Table().Changed(map[ID][]string{"clear": {"u"}, "row-up": {"i"}})
	require.EqualError(t, err, `keys: clear: "u" is a letter of what is typed there; take another key`+"\n"+
		`row-up: "i" is a letter of what is typed there; take another key`)
}

func TestTableIsACopy(t *testing.T) {
	Table()[0].Keys[0] = "f12"
	require.Equal(t, "f1", Table()[0].Keys[0])
}

func TestShow(t *testing.T) {
	require.Equal(t, "Space, Right or PgDn", Show([]string{" ", "right", "pgdown"}))
	require.Equal(t, "Ctrl+PgUp or Shift+Tab", Show([]string{"ctrl+pgup", "shift+tab"}))
	require.Equal(t, "F12, + or f", Show([]string{"f12", "+", "f"}))
	require.Equal(t, "", Show(nil))
}

func TestPrinted(t *testing.T) {
	md := Markdown()
	require.Contains(t, md, "### Draft\n\n| Key | Action | What it does |\n| --- | --- | --- |\n| Space, Right or PgDn | Next step | Draw the next step. |\n")
	require.Contains(t, md, "| F2, by name | Lessons |")
	for _, line := range strings.Split(md, "\n") {
		if strings.HasPrefix(line, "|") {
			require.Equal(t, 4, strings.Count(line, "|")-strings.Count(line, `\|`), line)
		}
	}
	man := Roff()
	require.Contains(t, man, ".SS Draft\n.TP\n.B Space, Right or PgDn\nNext step: Draw the next step.\n")
	require.Contains(t, man, ".B \\-\n")
	for _, line := range strings.Split(man, "\n") {
		require.Regexp(t, `^(\.(SS|TP|B)\b|[^.'])|^$`, line)
	}
	text := Plain()
	for _, a := range Table() {
		require.Contains(t, text, a.Title+": "+a.Says)
	}
}
