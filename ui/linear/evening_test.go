package linear

import (
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/testdata/golden"
	"chalkfold/ui/lesson"
	"chalkfold/ui/session"
	"chalkfold/ui/text"
)

// evening runs lines without a file at first and compares the talk with a
// golden file; folders of the test are taken out.
func evening(t *testing.T, name string, s *session.Session, lines ...string) string {
	t.Helper()
	var got string
	t.Run("talk", func(t *testing.T) { // from the home folder
		t.Chdir(os.Getenv("HOME"))
		got, _ = talk(s, lines...)
	})
	got = strings.ReplaceAll(got, os.Getenv("HOME")+"/", "~/")
	got = regexp.MustCompile(`\d+\s+(kB|bytes)`).ReplaceAllString(got, "some kB")
	golden.Check(t, name+".txt", got)
	for _, l := range strings.Split(got, "\n") {
		require.LessOrEqual(t, len([]rune(l)), 79, l)
		for _, c := range l {
			require.True(t, c >= ' ' && c < 0x2500, "%q", l)
		}
	}
	return got
}

// A beginner's evening: she takes measures, goes through a lesson with its
// slips and hints, leaves it and comes back to it, and saves.
func TestABeginnersEvening(t *testing.T) {
	home(t)
	got := evening(t, "beginner", nil,
		"client Ada", "bust 36", "waist 28", "hip 38", "neck base 14 1/2", "across back sh 15", "take", "8", "16", "17 1/2", "10 1/4", "7 1/4", "take", "take", "23",
		"draft", "say", "say front", "word fold", "save ~/ada",
		"lesson", "2", "next", "next", "hint", "hint", "hint", "16 3/4", "next", "9 out, 9 down", "7 out, 3/4 down", "next", "10",
		"leave", "undo", "redo", "lesson", "lesson 2", "10 out, 9 down", "next", "next", "say", "save", "quit")
	require.Contains(t, got, "All are taken.")
	require.Contains(t, got, "page 3 of 13, by thumb.")
	require.Contains(t, got, "Hint 3 of 3: ")
	require.Contains(t, got, "Right: 16 3/4 in.")
	require.Contains(t, got, "The lesson waits at page 5.")
	require.Contains(t, got, "2 The back by chalk: ends with the chalk card of the back, at 6 of 13.")
	s, err := session.Open(filepath.Join(os.Getenv("HOME"), "ada"+session.Suffix))
	require.NoError(t, err)
	require.Equal(t, pattern.Measured, s.Job.Style.Method(), "a lesson by thumb leaves her method alone")
	require.Equal(t, map[string]int{"back": 6}, s.Lesson)
}

// Leaving a lesson without saving anything keeps the place.
func TestALessonGoesOnWhereItWasLeft(t *testing.T) {
	home(t)
	got, status := talk(nil, "lesson tape", "next", "2", "next", "quit")
	require.Equal(t, Done, status)
	require.Contains(t, got, "Lesson 1, The tape, page 3 of 14.")
	got, _ = talk(nil, "lesson 1", "quit")
	require.Contains(t, got, "Lesson 1, The tape, page 3 of 14.")
}

// A tutor's evening: a class at a glance, what if, faults on purpose, both
// methods, the sample client beside her own.
func TestATutorsEvening(t *testing.T) {
	dir := home(t)
	class := filepath.Join(dir, "class")
	require.NoError(t, os.Mkdir(class, 0o700))
	for name, job := range map[string]pattern.Job{
		"ada":  sample(),
		"bea":  sample().WithoutBody(measure.HipGirth).WithoutBody(measure.WaistGirth),
		"cleo": sample().WithStyle("neck_widening", pattern.LengthValue(measure.In.Length(2.5))),
	} {
		job.Client.Name = strings.ToUpper(name[:1]) + name[1:]
		path := filepath.Join(class, name+session.Suffix)
		require.NoError(t, session.New(path, job).Save(job))
	}
	require.NoError(t, os.WriteFile(filepath.Join(class, "dora"+session.Suffix), []byte("form = 1\nunit = \"ell\"\n"), 0o600))
	got := evening(t, "tutor", nil,
		"class ~/class", "1", "help", "what bust girth 37", "less", "more 1/2", "dress length 42", "back", "keep", "compare",
		"true", "fault", "list",
		"lesson 4 sample", "1", "next", "more 1/4", "next", "less 1/4", "2", "next", "leave",
		"clients", "1", "compare opened", "quit", "drop")
	require.Contains(t, got, "2 Bea: 12 of 14 measures")
	require.Contains(t, got, `4 dora.chalkfold.toml:2:8: `)
	require.Contains(t, got, "Bust girth 36 -> 37 in.")
	require.Contains(t, got, "Bust all round 1 more.")
}

// A fault on purpose is told so that it can be guessed, then what was done and
// what is found. Which checks it may be grows with the checks there are, so
// that no golden file holds them.
func TestFaultsInPlainMode(t *testing.T) {
	home(t)
	got, _ := talk(saved(t, sample()), "true", "fault", "2", "hint", "hint", "hint", "next", "fault 8", "hint", "next", "q")
	require.Contains(t, got, "Its dart is 3/4 in wide; its legs are 4 3/4 and 4 3/4 in.")
	require.Contains(t, got, "Side seams meet: fail.")
	require.Contains(t, got, "31 3/4 and 32 1/2: the front is 3/4 shorter than the back.")
	require.Contains(t, got, "Side 32 1/2, cut 2 in outside.")
	require.Contains(t, got, "The side of the back has its allowance two times.")
}

// A dressmaker's evening: she opens a client, changes the waist, lays, asks for
// a remnant, has the card read out, writes and saves.
func TestADressmakersEvening(t *testing.T) {
	home(t)
	job := sample()
	path := filepath.Join(os.Getenv("HOME"), "sample"+session.Suffix)
	require.NoError(t, session.New(path, job).Save(job))
	got := evening(t, "dressmaker", nil,
		"open sample.chalkfold.toml", "waist 29 1/2", "compare opened", "undo", "redo",
		"lay", "width 45", "search 20000", "keep", "keep", "list", "remnant 100 x 45", "remnant", "remnant 30 x 20", "why",
		"cut", "read", "", "", "", "back", "piece", "end", "write card, moved into ~/out", "save", "quit")
	require.Contains(t, got, "Lay on the main cloth kept: ")
	require.Contains(t, got, "This lay is kept already.")
	require.Contains(t, got, "It fits: ")
	require.Contains(t, got, "too narrow for a piece")
	require.Contains(t, got, "~/out/sample-moved.md: written")
	s, err := session.Open(path)
	require.NoError(t, err)
	_, kept := s.Job.Lay("main")
	require.True(t, kept)
	require.NotEmpty(t, s.Learnt(), "ticks of the card are kept")
}

// Every lesson can be gone through in words alone, by answering right and by
// going past, with no line that is too wide.
func TestEveryLessonInPlainMode(t *testing.T) {
	home(t)
	for i := range lesson.All() {
		n := i + 1
		lines := []string{fmt.Sprintf("lesson %d", n)}
		for range 16 {
			lines = append(lines, "hint", "say", "next", "next")
		}
		got, _ := talk(nil, append(lines, "quit")...)
		require.Contains(t, got, "is yours now.", "%d", n)
		for _, l := range strings.Split(got, "\n") {
			require.LessOrEqual(t, len([]rune(l)), 79, l)
			require.NotContains(t, l, "{")
		}
	}
}

// Several clients in one evening: each has its own undo, and leaving asks for
// all of them.
func TestSeveralClients(t *testing.T) {
	home(t)
	got, status := talk(nil, "client Ada", "bust 36", "new", "client Bea", "bust 40", "clients", "1", "undo", "undo", "clients 2", "undo", "redo", "quit", "save", "save ~/bea", "quit", "drop")
	require.Equal(t, Done, status)
	require.Contains(t, got, "Ada stays open; clients lists who is open.")
	require.Contains(t, got, "1 Ada, open, not saved.")
	require.Contains(t, got, "2 Bea, here, not saved.")
	require.Contains(t, got, "Undone: The client is Ada.")
	require.FileExists(t, filepath.Join(os.Getenv("HOME"), "bea"+session.Suffix))
}

// Everything that plain mode says goes through the catalogue.
func TestLessonsPseudo(t *testing.T) {
	home(t)
	var out strings.Builder
	lines := []string{"lesson 2", "next", "next", "hint", "next", "lesson 7", "leave", "clients", "what", "lay", "list", "cut", "read", "end"}
	Run(Options{In: strings.NewReader(strings.Join(lines, "\n") + "\n"), Out: &out, Why: "X", Words: text.Pseudo(), Now: now})
	for _, l := range strings.Split(out.String(), "\n") {
		_, said, ok := strings.Cut(l, "> ")
		require.True(t, ok || len([]rune(l)) <= 79, l)
		require.LessOrEqual(t, len([]rune(said)), 79, l)
	}
	for _, plain := range []string{"Type ", "Lesson", "Client ", "What if", "Buy ", "Down "} {
		require.NotContains(t, out.String(), plain)
	}
}
