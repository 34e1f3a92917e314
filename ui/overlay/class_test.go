package overlay

import (
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"chalkfold/pattern"
	"chalkfold/ui/canvas"
	"chalkfold/ui/classroom"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/session"
)

// evening is a class with one of each.
func evening() classroom.Class {
	return classroom.Class{More: 3, Rows: []classroom.Row{
		{File: "anna" + session.Suffix, Client: "Anna Example", Taken: 9, Of: 14, Step: 11, Steps: 37, Verdict: classroom.Missing, Lesson: "back"},
		{File: "anton" + session.Suffix, Client: "A Name That Has Become Somewhat Long", Taken: 14, Of: 14, Step: 37, Steps: 37, Verdict: pattern.Advise},
		{File: "berta-in-the-evening-class" + session.Suffix, Taken: 14, Of: 14, Step: 20, Steps: 37, Verdict: pattern.Fail, Failed: []string{"Body passage", "Side seams meet"}},
		{File: "carla" + session.Suffix, Client: "Carla Example", Taken: 14, Of: 14, Step: 37, Steps: 37, Verdict: pattern.Fail, Failed: []string{"Dart aim"}},
		{File: "sample" + session.Suffix, Client: "Maro Tellin", Taken: 14, Of: 14, Step: 37, Steps: 37, Verdict: pattern.Pass, Lesson: "facings"},
		{File: "torn" + session.Suffix, Trouble: "torn" + session.Suffix + `:3:14: "bust_girth = abc"; there is no number in it; write it like 36 1/2 or 92.5 cm`},
	}}
}

func classOf(d *desk.Desk, read classroom.Class) desk.Overlay {
	o := Class(d)
	o.Hear(desk.Answer{What: errandClass, Value: read})
	return o
}

// classRead has read a folder that is named like no folder of a test.
func classRead(d *desk.Desk) desk.Overlay {
	o := classOf(d, evening())
	o.(*class).title = "Class: /home/tutor/evening"
	return o
}

func TestClassReadsTheFolder(t *testing.T) {
	d, dir := inTree(t)
	require.NoError(t, os.WriteFile(filepath.Join(dir, "torn"+session.Suffix), []byte("form = 1\n[body]\nbust_girth = \"abc\"\nwaist_girth = -1\n"), 0o600))
	o := Class(d)
	require.Contains(t, shown(o, 120, 30), "> Read the folder")
	ask := press(o, "enter")
	require.NotNil(t, ask.Run, "the only row begins to read")
	require.Contains(t, shown(o, 120, 30), "Reading the folder.")
	require.Equal(t, desk.Ask{}, press(o, "enter"), "it does not begin twice")

	o = Class(d)
	ask = o.Do(keys.Class)
	require.Equal(t, desk.Ask{}, o.Hear(ask.Run()))
	view := shown(o, 120, 30)
	require.Contains(t, view, "Class: "+dir)
	require.Contains(t, view, "3 sessions: 2 pass, 0 advised, 0 fail, 0 to measure, 1 not read.")
	require.Regexp(t, `(?m)^> Maro Tellin \(anna\) +14/14  \d+/\d+  passes, open now$`, view, "hers is in hand")
	require.Regexp(t, `(?s)  torn .*cannot be read: torn.chalkfold.toml:3:14: .*\(and 1\s+more\)`, view)
	require.Contains(t, view, "  Maro Tellin (anton)  ")
	require.NotContains(t, view, "letter")
	require.NotContains(t, view, ".hidden")

	ask = o.Hear(press(o, "down", "enter").Run())
	require.True(t, ask.Close)
	require.Equal(t, filepath.Join(dir, "anton"+session.Suffix), ask.Take.Path)

	ask = o.Hear(press(o, "down", "enter").Run())
	require.False(t, ask.Close)
	require.True(t, ask.Warn)
	require.Contains(t, shown(o, 120, 30), "waist_girth", "Enter tells all that is wrong with it")
}

// A learner is opened as Open opens a file, with unsaved work on the desk too.
func TestClassOpensAsOpenDoes(t *testing.T) {
	d, dir := inTree(t)
	for _, unsaved := range []bool{false, true} {
		if unsaved {
			job := d.Job()
			job.Client.Name = "Other"
			d.Change(job, "Client")
		}
		o := Class(d)
		o.Hear(o.Do(keys.Class).Run())
		list := Open(d)
		var asks []desk.Ask
		for _, over := range []desk.Overlay{o, list} {
			typed(over, "anton")
			asks = append(asks, over.Hear(press(over, "enter").Run()))
		}
		require.Equal(t, asks[1].Close, asks[0].Close)
		require.Equal(t, asks[1].Open == nil, asks[0].Open == nil)
		require.Equal(t, asks[1].Take == nil, asks[0].Take == nil)
		if asks[0].Take != nil {
			require.Equal(t, filepath.Join(dir, "anton"+session.Suffix), asks[0].Take.Path)
		}
	}
}

// A name, a file, a verdict or a lesson finds a learner.
func TestClassFilter(t *testing.T) {
	d := newDesk(canvas.Braille)
	for word, want := range map[string][]string{
		"carla": {"Carla"}, "fails": {"berta", "Carla"}, "seams": nil, "passage": {"berta"}, "lesson": {"Anna", "Maro"}, "become somewhat long": {"A Name"},
		"cannot be read": {"torn"}, "measures": {"Anna"}, "advises": {"A Name"}, "evening-class": {"berta"},
	} {
		o := classOf(d, evening())
		typed(o, word)
		var got []string
		for _, r := range o.(*class).list() {
			for _, name := range []string{"Anna", "A Name", "berta", "Carla", "Maro", "torn"} {
				if strings.HasPrefix(r.title, name) {
					got = append(got, name)
				}
			}
		}
		require.Equal(t, want, got, word)
	}
}

func TestClassWithoutSessions(t *testing.T) {
	d := newDesk(canvas.Braille)
	require.Contains(t, shown(classOf(d, classroom.Class{}), 80, 20), "No sessions in ")

	gone := Class(d)
	ask := gone.Hear(desk.Answer{What: errandClass, Err: errors.New("evening: there is no such folder; look at the name")})
	require.True(t, ask.Warn)
	require.Contains(t, shown(gone, 80, 20), "there is no such folder")
	require.NotNil(t, press(gone, "enter").Run, "it can be read again")
	require.Equal(t, desk.Ask{}, gone.Hear(desk.Answer{What: "something else"}))
}

// Whatever the names are, a view has its size; in ASCII a folder of ASCII
// names gives nothing else.
func TestClassFitsAnyNames(t *testing.T) {
	d := newDesk(canvas.Braille)
	names := rapid.OneOf(rapid.String(), rapid.SampledFrom([]string{"", "漢字漢字漢字漢字漢字漢字漢字", "\x1b[2J", "a\nb\tc", strings.Repeat("é", 400), "Anna"}))
	rapid.Check(t, func(t *rapid.T) {
		var read classroom.Class
		for range rapid.IntRange(0, 6).Draw(t, "rows") {
			r := classroom.Row{File: names.Draw(t, "file"), Client: names.Draw(t, "client"), Lesson: names.Draw(t, "lesson"), Of: 14, Steps: 37, Verdict: pattern.Fail, Failed: []string{names.Draw(t, "check")}}
			if rapid.Bool().Draw(t, "broken") {
				r = classroom.Row{File: r.File, Trouble: names.Draw(t, "trouble")}
			}
			read.Rows = append(read.Rows, r)
		}
		d.Settings.Glyphs = canvas.Glyphs(rapid.IntRange(0, 2).Draw(t, "glyphs"))
		o := classOf(d, read)
		for range 3 {
			press(o, rapid.SampledFrom([]string{"up", "down", "pgdown"}).Draw(t, "key"))
			r := desk.Rect{Columns: rapid.IntRange(1, 160).Draw(t, "columns"), Rows: rapid.IntRange(1, 40).Draw(t, "rows")}
			lines := o.View(r)
			if len(lines) != r.Rows {
				t.Fatalf("%d lines for %d rows", len(lines), r.Rows)
			}
			for _, l := range lines {
				if ansi.StringWidth(l) > r.Columns || strings.ContainsAny(l, "\n\t\x1b") {
					t.Fatalf("for %d: %q", r.Columns, l)
				}
			}
		}
	})
}
