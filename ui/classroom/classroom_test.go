package classroom

import (
	"fmt"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"chalkfold/pattern"
	"chalkfold/ui/session"
)

// learner is the demonstration's session with some lines written otherwise; a
// key alone takes its line out.
func learner(t testing.TB, lines ...string) *fstest.MapFile {
	text := string(session.DemoText())
	for _, l := range lines {
		key, _, _ := strings.Cut(l, " ")
		before, rest, found := strings.Cut(text, "\n"+key+" =")
		require.True(t, found, key)
		_, after, _ := strings.Cut(rest, "\n")
		if l != key {
			before += "\n" + l
		}
		text = before + "\n" + after
	}
	return &fstest.MapFile{Data: []byte(text)}
}

func file(text string) *fstest.MapFile { return &fstest.MapFile{Data: []byte(text)} }

func read(t testing.TB, dir fstest.MapFS) Class {
	c, err := Read(dir)
	require.NoError(t, err)
	return c
}

func TestRows(t *testing.T) {
	taught := learner(t)
	taught.Data = append(taught.Data, "\n[lesson]\ntape = 5\nback = 7\n"...)
	c := read(t, fstest.MapFS{
		"b.chalkfold.toml":         learner(t, `name = "Second"`),
		"a.chalkfold.toml":         taught,
		"c.chalkfold.toml":         learner(t, "hip_girth", `name = ""`),
		"advised.chalkfold.toml":   learner(t, "shoulder_drop = 12"),
		"short.chalkfold.toml":     learner(t, "length = 60"),
		"stuck.chalkfold.toml":     learner(t, "ease_bust = 7\nzip_length = 10"),
		"wrong.chalkfold.toml":     file("form = 1\n[body]\nbust_girth = \"abc\"\nwaist_girth = -3\nhip_girth = \"5 furlong\"\n"),
		"later.chalkfold.toml":     file("form = 9\n"),
		"large.chalkfold.toml":     file("form = 1\n#" + strings.Repeat("x", session.SizeLimit)),
		"empty.chalkfold.toml":     file(""),
		".hidden.chalkfold.toml":   learner(t),
		"a.chalkfold.toml~":        learner(t),
		"letter.txt":               file("dear"),
		"in/deep.chalkfold.toml":   learner(t),
		"dir.chalkfold.toml/x.txt": file("a folder of that name"),
	})
	var names []string
	rows := map[string]Row{}
	for _, r := range c.Rows {
		name := strings.TrimSuffix(r.File, session.Suffix)
		names = append(names, name)
		rows[name] = r
	}
	require.Equal(t, []string{"a", "advised", "b", "c", "empty", "large", "later", "short", "stuck", "wrong"}, names)
	require.Zero(t, c.More)
	require.False(t, c.Fine())

	a := rows["a"]
	require.Equal(t, "Maro Tellin", a.Client)
	require.Equal(t, a.Of, a.Taken)
	require.Positive(t, a.Of)
	require.Equal(t, a.Steps, a.Step)
	require.Equal(t, pattern.Pass, a.Verdict)
	require.Equal(t, "back", a.Lesson)
	require.Empty(t, a.Trouble)
	require.True(t, a.Fine())

	require.Equal(t, "Second", rows["b"].Client)
	require.Empty(t, rows["b"].Lesson)
	require.Equal(t, pattern.Advise, rows["advised"].Verdict)
	require.True(t, rows["advised"].Fine())
	require.Equal(t, Missing, rows["c"].Verdict)
	require.Equal(t, a.Of-1, rows["c"].Taken)
	require.Less(t, rows["c"].Step, a.Step)
	require.True(t, rows["c"].Fine(), "what is still to be measured may wait")
	require.Equal(t, pattern.Fail, rows["stuck"].Verdict)
	require.Equal(t, []string{"Body passage"}, rows["stuck"].Failed)
	require.Equal(t, pattern.Fail, rows["short"].Verdict, "a line that cannot be drawn")
	require.NotEmpty(t, rows["short"].Failed)
	require.False(t, rows["short"].Fine())

	for _, name := range []string{"wrong", "later", "large", "empty"} {
		r := rows[name]
		require.True(t, strings.HasPrefix(r.Trouble, r.File+":"), r.Trouble)
		require.Equal(t, Row{File: r.File, Trouble: r.Trouble}, r)
		require.False(t, r.Fine())
	}
	require.Regexp(t, `^wrong.chalkfold.toml:3:14: .* \(and 2 more\)$`, rows["wrong"].Trouble)
	require.Contains(t, rows["large"].Trouble, "more than 1 MiB")
	require.Equal(t, 4, c.Count(""))
	require.Equal(t, 2, c.Count(pattern.Pass))
	require.Equal(t, 2, c.Count(pattern.Fail))
	require.Equal(t, 1, c.Count(Missing))
}

func TestManyFiles(t *testing.T) {
	dir := fstest.MapFS{}
	for i := range Most + 7 {
		dir[fmt.Sprintf("%04d%s", i, session.Suffix)] = file("form = 1\nbroken")
	}
	c := read(t, dir)
	require.Len(t, c.Rows, Most)
	require.Equal(t, 7, c.More)
	require.Equal(t, "0000"+session.Suffix, c.Rows[0].File)
	require.True(t, read(t, fstest.MapFS{}).Fine())
}

// Whatever lies in the files, there is a row for each, in order, with a
// verdict or a sentence on one line.
func TestAnyFiles(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		dir := fstest.MapFS{}
		parts := rapid.SampledFrom([]string{"form = 1\n", "[body]\n", "bust_girth = 90\n", "waist_girth = \"1\"\n", "hip_girth = 300\n", "[lesson]\nback = 2\n", "[", "\x00", "\"\n", "é\xff"})
		for i := range rapid.IntRange(0, 4).Draw(t, "files") {
			dir[fmt.Sprintf("%d%s", i, session.Suffix)] = file(strings.Join(rapid.SliceOfN(parts, 0, 6).Draw(t, "text"), ""))
		}
		c, err := Read(dir)
		if err != nil || len(c.Rows) != len(dir) {
			t.Fatalf("%d rows of %d files, %v", len(c.Rows), len(dir), err)
		}
		for i, r := range c.Rows {
			if r.File != fmt.Sprintf("%d%s", i, session.Suffix) {
				t.Fatalf("row %d is %s", i, r.File)
			}
			if (r.Trouble == "") == (r.Verdict == "") || strings.ContainsAny(r.Trouble, "\n\x1b\x00") {
				t.Fatalf("%+v", r)
			}
			if r.Taken > r.Of || r.Step > r.Steps || (r.Verdict == pattern.Fail) != (len(r.Failed) > 0) {
				t.Fatalf("%+v", r)
			}
		}
	})
}

func BenchmarkClass(b *testing.B) {
	dir := fstest.MapFS{}
	for i := range 30 {
		dir[fmt.Sprintf("%02d%s", i, session.Suffix)] = learner(b)
	}
	for b.Loop() {
		read(b, dir)
	}
}
