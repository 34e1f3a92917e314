package linear

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/testdata/golden"
	"chalkfold/ui/session"
	"chalkfold/ui/text"
)

func now() time.Time { return time.Date(2026, 3, 4, 14, 2, 0, 0, time.Local) }

// home gives the test folders of its own and goes there.
func home(t *testing.T) string {
	dir := t.TempDir()
	t.Setenv("HOME", dir)
	t.Setenv("XDG_STATE_HOME", filepath.Join(dir, "state"))
	return dir
}

// sample is an invented client in round inches, so that the sums of the
// golden talks can be followed in the head.
func sample() pattern.Job {
	taken := map[measure.ID]measure.Length{}
	for id, inches := range map[measure.ID]float64{
		measure.Height: 65.5, measure.BustGirth: 36, measure.WaistGirth: 28, measure.HipGirth: 38, measure.NeckBaseGirth: 14.5,
		measure.AcrossShoulders: 15, measure.ShoulderDrop: 1.75, measure.AcrossBack: 13.75, measure.AcrossFront: 12.75,
		measure.BackNeckToWaist: 16, measure.SideNeckToWaist: 17.5, measure.SideNeckToBustPoint: 10.25, measure.BustPointDistance: 7.25,
		measure.WaistToHip: 8, measure.WaistToKnee: 23,
	} {
		taken[id] = measure.In.Length(inches)
	}
	return pattern.Job{Unit: measure.In, Client: pattern.Client{Name: "Sample Client"}, Body: measure.NewBody(taken)}
}

// saved is the sample client in a file.
func saved(t *testing.T, job pattern.Job) *session.Session {
	t.Helper()
	path := filepath.Join(t.TempDir(), "sample"+session.Suffix)
	require.NoError(t, session.New(path, job).Save(job))
	s, err := session.Open(path)
	require.NoError(t, err)
	return s
}

// talk gives what is heard and the exit status. The text shows what was
// typed behind each prompt.
func talk(s *session.Session, lines ...string) (string, int) {
	var out strings.Builder
	status := Run(Options{In: &echo{lines: lines, out: &out}, Out: &out, Session: s, Why: "--plain", Now: now})
	return out.String(), status
}

// echo is a keyboard whose typing is seen.
type echo struct {
	lines []string
	out   *strings.Builder
	left  string
}

func (e *echo) Read(p []byte) (int, error) {
	if e.left == "" {
		if len(e.lines) == 0 {
			return 0, os.ErrClosed
		}
		e.left = e.lines[0] + "\n"
		e.lines = e.lines[1:]
		e.out.WriteString(e.left)
	}
	n := copy(p, e.left)
	e.left = e.left[n:]
	return n, nil
}

// script runs lines and compares the talk with a golden file; paths of
// the test are taken out.
func script(t *testing.T, name string, s *session.Session, lines ...string) string {
	t.Helper()
	got, _ := talk(s, lines...)
	if s != nil && s.Path != "" {
		got = strings.ReplaceAll(got, filepath.Dir(s.Path)+"/", "")
		got = strings.ReplaceAll(got, filepath.Dir(s.Path), ".")
	}
	got = strings.ReplaceAll(got, os.Getenv("HOME")+"/", "~/")
	got = regexp.MustCompile(`\d+\s+(kB|bytes)`).ReplaceAllString(got, "some kB")
	golden.Check(t, name+".txt", got)
	return got
}

func TestTheModeIsSaidFirst(t *testing.T) {
	home(t)
	got, status := talk(nil)
	require.Equal(t, Done, status)
	first, _, _ := strings.Cut(got, "\n")
	require.Equal(t, "Plain mode, words only, because of --plain.", first)
}

func TestMeasure(t *testing.T) {
	home(t)
	job := sample().WithoutBody(measure.WaistGirth).WithoutBody(measure.ShoulderDrop)
	s := saved(t, job)
	got := script(t, "measure", s, "83", "other", "keep", "shoulder drop", "28", "1 3/4 in", "why", "abc", "-5", "36 2", "waist 27", "list", "undo", "redo", "save", "q")
	require.Contains(t, got, "Goodbye.")
	again, err := session.Open(s.Path)
	require.NoError(t, err)
	l, _ := again.Job.Body.Get(measure.WaistGirth)
	require.Equal(t, 27*measure.Inch, l)
}

func TestStyle(t *testing.T) {
	home(t)
	s := saved(t, sample())
	got := script(t, "style", s, "style", "front neck depth 5", "why", "method thumb", "method", "measured", "side shape straight", "next", "back",
		"usual front neck depth", "length 400", "quit", "stay", "quit", "drop")
	require.Contains(t, got, "Left without saving.")
	got, _ = talk(s, "style", "neck", "list", "q")
	require.Contains(t, got, `"neck" may be Neck widened, `)
	require.Contains(t, got, "Hem opening is 6 in, as usual.")
}

func TestDraft(t *testing.T) {
	home(t)
	s := saved(t, sample())
	script(t, "draft", s, "draft", "step 8", "why", "hint", "hint", "hint", "where", "where neck point", "again", "next", "back", "3", "say", "step 99", "q")
}

func TestQuestions(t *testing.T) {
	home(t)
	s := saved(t, sample())
	got := script(t, "questions", s, "draft", "ask", "step 7", "next", "11", "38 1/2", "9 5/8", "next", "next", "ask", "q")
	require.Contains(t, got, "Right: 9 5/8 in.")
}

func TestTrueLayCut(t *testing.T) {
	home(t)
	s := saved(t, sample())
	got := script(t, "rest", s, "true", "next", "list", "lay", "why", "45", "list", "cut", "write card into ~/out", "write", "write tiles", "undo", "q")
	require.Contains(t, got, "Of cloth 58 in wide buy ")
}

func TestCure(t *testing.T) {
	home(t)
	job := sample().WithStyle("side_dart_below", pattern.LengthValue(measure.Inch/2))
	s := saved(t, job)
	got, _ := talk(s, "true", "cure", "undo", "q")
	require.Regexp(t, `Tried: |no change to try|Nothing needs you`, got)
}

func TestWordsAreShortened(t *testing.T) {
	home(t)
	got, _ := talk(saved(t, sample()), "h", "st", "zzz", "word dart", "word", "word zzz", "unit cm", "unit x", "q", "d")
	require.Contains(t, got, "\"st\" may be step or style.")
	require.Contains(t, got, "\"zzz\" is no word here.")
	require.Contains(t, got, "Dart: A fold sewn to a point.")
	require.Contains(t, got, "Lengths are in centimetres now.")
}

// The input ends: with changes the work is rescued and the exit says so.
func TestEndOfInput(t *testing.T) {
	home(t)
	s := saved(t, sample())
	_, status := talk(s)
	require.Equal(t, Done, status)

	got, status := talk(s, "bust 37")
	require.Equal(t, NotSaved, status)
	require.Contains(t, got, "The work is rescued in")
	copies, err := os.ReadDir(session.RescueDir())
	require.NoError(t, err)
	require.Len(t, copies, 1)
}

func TestRescueIsOffered(t *testing.T) {
	home(t)
	s := saved(t, sample())
	_, _ = talk(s, "bust 37")
	copies, err := os.ReadDir(session.RescueDir())
	require.NoError(t, err)
	left, err := session.Open(filepath.Join(session.RescueDir(), copies[0].Name()))
	require.NoError(t, err)
	found := []session.Rescue{{File: left.Path, Path: s.Path, Client: "Sample Client", Saved: now(), Job: left.Job, Differs: []string{"bust 36 -> 37 in"}}}
	again, err := session.Open(s.Path)
	require.NoError(t, err)

	var out strings.Builder
	status := Run(Options{In: strings.NewReader("yes\nsave\nq\n"), Out: &out, Session: again, Why: "--plain", Now: now, Rescues: found})
	require.Equal(t, Done, status)
	require.Contains(t, out.String(), "Take up the unsaved work of Sample Client, 2026-03-04 14:02?")
	require.Contains(t, out.String(), "Bust 36 -> 37 in.")
	after, err := session.Open(s.Path)
	require.NoError(t, err)
	l, _ := after.Job.Body.Get(measure.BustGirth)
	require.Equal(t, 37*measure.Inch, l)
	copies, _ = os.ReadDir(session.RescueDir())
	require.Empty(t, copies)

	out.Reset()
	require.NoError(t, os.WriteFile(left.Path, []byte("form = 1\n"), 0o600))
	Run(Options{In: strings.NewReader("help\nq\n"), Out: &out, Session: again, Why: "--plain", Now: now, Rescues: found})
	require.Contains(t, out.String(), "Words; the beginning of one is enough.", "another word is heard as one")
	require.FileExists(t, left.Path, "an offer without an answer stays")
}

func TestSaving(t *testing.T) {
	dir := home(t)
	got, status := talk(nil, "client Anna", "bust 36", "save", "save ~/anna", "q")
	require.Equal(t, Done, status)
	require.Contains(t, got, "Give the file a name.")
	require.FileExists(t, filepath.Join(dir, "anna"+session.Suffix))

	got, _ = talk(nil, "bust 40", "save ~/anna", "save over ~/anna", "undo", "q", "d")
	require.Contains(t, got, "is there already")
	require.Contains(t, got, "Undone: ")
	s, err := session.Open(filepath.Join(dir, "anna"+session.Suffix))
	require.NoError(t, err)
	l, _ := s.Job.Body.Get(measure.BustGirth)
	require.Equal(t, 40*measure.Inch, l)

	text, err := os.ReadFile(s.Path)
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(s.Path, append(text, "# hers\n"...), 0o600))
	got, _ = talk(s, "bust 41", "save", "quit", "quit")
	require.Contains(t, got, "is not as it was when you opened it")
	require.Contains(t, got, "The work is rescued in")
}

func TestOpening(t *testing.T) {
	dir := home(t)
	s := saved(t, sample())
	got, _ := talk(nil, "open "+filepath.Join(dir, "none"), "open "+s.Path, "draft", "bust 37", "measure", "bust 37", "open "+s.Path, "new", "open", "1", "q")
	require.Contains(t, got, "there is no such file")
	require.Contains(t, got, "Client Sample Client, lengths in inches.")
	require.Contains(t, got, "Sample Client stays open; clients lists who is open.")
	require.Contains(t, got, "1 Sample Client, ")
}

var unkind = regexp.MustCompile(`(?i)\b(invalid|error|please|successfully|sorry)\b|!`)

// Whatever is typed, nothing panics, no control byte is written, every line is
// within the width, and undoing all gives the session back.
func TestAnythingTyped(t *testing.T) {
	home(t)
	s := saved(t, sample())
	words := vocabulary()
	typed := rapid.OneOf(
		rapid.Custom(func(t *rapid.T) string { return words[rapid.IntRange(0, len(words)-1).Draw(t, "word")].name }),
		rapid.SampledFrom([]string{
			"36 1/2", "83", "-5", "0", "waist 28", "front neck depth 5", "length 40", "step 3", "where underarm", "yes", "no",
			"\x1b[A", "\x1b]0;x\x07", "\xff\xfe", "漢字", "method thumb", "side shape", "ease bust 200", "remove", "client \x1b[31mRed", "quit", "again",
		}),
		rapid.StringN(0, 30, 80),
	).Filter(func(s string) bool {
		for _, w := range []string{"write", "save", "open", "q", "d", "w", "s", "o", "n"} {
			if strings.HasPrefix(strings.ToLower(strings.TrimSpace(s)), w) && s != "step 3" && s != "undo" {
				return false
			}
		}
		return true
	})
	rapid.Check(t, func(t *rapid.T) {
		lines := rapid.SliceOfN(typed, 0, 12).Draw(t, "lines")
		var out strings.Builder
		fresh, err := session.Open(s.Path)
		require.NoError(t, err)
		Run(Options{In: strings.NewReader(strings.Join(lines, "\n")), Out: &out, Session: fresh, Why: "--plain", Now: now})
		for i := 0; i < out.Len(); i++ {
			if c := out.String()[i]; c < ' ' && c != '\n' || c == 0x7f {
				t.Fatalf("control byte %#x", c)
			}
		}
		if at := unkind.FindString(strings.Join(difference(out.String(), lines), "\n")); at != "" && at != "!" {
			t.Fatalf("unkind: %q", at)
		}
	})
}

// difference is what was said without the lines that repeat what was typed.
func difference(said string, typed []string) []string {
	var out []string
	for _, l := range strings.Split(said, "\n") {
		own := true
		for _, w := range typed {
			own = own && (w == "" || !strings.Contains(l, w))
		}
		if own {
			out = append(out, l)
		}
	}
	return out
}

func TestPseudo(t *testing.T) {
	home(t)
	var out strings.Builder
	Run(Options{In: strings.NewReader("36\nnext\nstyle\nlay\ncut\n"), Out: &out, Why: "X", Words: text.Pseudo(), Now: now})
	require.NotContains(t, out.String(), "Type ")
}

func TestLongLines(t *testing.T) {
	home(t)
	var out strings.Builder
	Run(Options{In: strings.NewReader(strings.Repeat("x", 3*lineLimit) + "\nq\n"), Out: &out, Session: saved(t, sample()), Why: "X", Now: now})
	require.Contains(t, out.String(), "That line is too long.")
	require.Contains(t, out.String(), "Goodbye.")
}

// deaf is an output that nobody reads.
type deaf struct{}

func (deaf) Write([]byte) (int, error) { return 0, os.ErrClosed }

func TestNobodyListens(t *testing.T) {
	home(t)
	require.Equal(t, Done, Run(Options{In: strings.NewReader(strings.Repeat("next\n", 100)), Out: deaf{}, Session: saved(t, sample()), Why: "X"}))
}

func TestMatch(t *testing.T) {
	names := [][]string{{"Front neck depth"}, {"Back neck depth"}, {"Neck widening"}, {"Length"}}
	for _, tc := range []struct {
		line  string
		at    int
		rest  string
		among int
	}{
		{"front neck depth 5", 0, "5", 0},
		{"fr ne 5 1/2", 0, "5 1/2", 0},
		{"back 2", 1, "2", 0},
		{"length", 3, "", 0},
		{"len 40 in", 3, "40 in", 0},
		{"zip 3", -1, "zip 3", 0},
		{"5", -1, "5", 0},
	} {
		at, rest, among := match(tc.line, names)
		require.Equal(t, tc.at, at, tc.line)
		require.Equal(t, tc.rest, rest, tc.line)
		require.Len(t, among, tc.among, tc.line)
	}
	_, _, among := match("ba", [][]string{{"Bash"}, {"Bath"}})
	require.Len(t, among, 2)
}

// The cloth is folded otherwise by a word, and told how to fold.
func TestTheFoldOfTheCloth(t *testing.T) {
	heard, _ := talk(saved(t, sample()), "lay", "fold", "fold off center", "why", "fold twice", "fold across", "list")
	require.Contains(t, heard, "one of these: lengthwise, flat, to middle, off centre, across")
	require.Contains(t, heard, "Fold one selvage in")
	require.Contains(t, heard, "Fold the cloth across")
}
