package shell

import (
	"strings"
	"testing"

	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"chalkfold/pattern"
	"chalkfold/ui/classroom"
	"chalkfold/ui/session"
)

// Names may be anything: each row stays a line that fits a terminal, with its
// columns below those of the heading.
func TestClassColumns(t *testing.T) {
	names := rapid.OneOf(rapid.String(), rapid.SampledFrom([]string{"", "漢字漢字漢字漢字漢字漢字", "\x1b[2J", "a\nb\tc", "\u202egnol", strings.Repeat("é", 400), "Maro Tellin"}))
	rapid.Check(t, func(t *rapid.T) {
		var class classroom.Class
		for range rapid.IntRange(1, 5).Draw(t, "rows") {
			class.Rows = append(class.Rows, classroom.Row{
				File: names.Draw(t, "file") + session.Suffix, Client: names.Draw(t, "client"), Lesson: names.Draw(t, "lesson"), Taken: 3, Of: 14, Step: 11, Steps: 37,
				Verdict: rapid.SampledFrom([]pattern.Verdict{pattern.Pass, pattern.Fail, classroom.Missing}).Draw(t, "verdict"),
			})
		}
		w := &world{env: func(string) string { return "" }}
		lines := strings.Split(w.classText(class, "evening"), "\n")
		if len(lines) != len(class.Rows)+4 {
			t.Fatalf("%d lines for %d rows", len(lines), len(class.Rows))
		}
		head, _, _ := strings.Cut(lines[0], "step")
		steps := ansi.StringWidth(head) + len("step")
		for i, l := range lines[1 : len(class.Rows)+1] {
			before, _, found := strings.Cut(l, "11 of 37  "+string(class.Rows[i].Verdict))
			if !found || ansi.StringWidth(before)+len("11 of 37") != steps || ansi.StringWidth(l) > 79 || ansi.Strip(l) != l {
				t.Fatalf("%q", l)
			}
		}
	})
}

func TestClassLook(t *testing.T) {
	w := &world{env: func(string) string { return "" }}
	require.Equal(t, "unread", w.verdictWord(""))
	require.Contains(t, w.classText(classroom.Class{}, "even\x1bing"), `No sessions in even\u001bing.`)
}
