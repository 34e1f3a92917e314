package ui

import (
	"strconv"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"chalkfold/testdata/golden"
	"chalkfold/ui/canvas"
	"chalkfold/ui/theme"
)

// Every stage as a person sees it on the usual screen, without any colour.
func TestStagesAtTheUsualSize(t *testing.T) {
	s := at(t, 80, 24, looks("mono", canvas.ASCII))
	for i, name := range []string{"measure", "style", "draft", "true", "lay", "cut"} {
		s.keys("esc", strconv.Itoa(i+1))
		s.m.d.Message = ""
		if name == "draft" {
			for range 9 {
				s.keys(" ")
			}
		}
		if name == "cut" {
			continue // its folder is another at each run
		}
		golden.Check(t, "stage-"+name+".txt", s.shown())
	}
	s.keys("esc", "1", "up", "ctrl+u", "83", "enter", "up")
	golden.Check(t, "doubt.txt", s.shown())
	s = at(t, 80, 24, looks("mono", canvas.Braille))
	s.keys("esc", "3", "end")
	golden.Check(t, "braille.txt", s.shown())
	s = at(t, 60, 16, looks("mono", canvas.ASCII))
	s.keys("esc", "3", " ", " ")
	golden.Check(t, "narrow.txt", s.shown())
}

func TestLineOneSaysWhereSheIs(t *testing.T) {
	s := at(t, 80, 24, looks("mono", canvas.ASCII))
	s.keys("esc", "3")
	require.Equal(t, "1 Measure 13/14 2 Style [3 Draft 1/", s.lines()[0][:35])
	require.True(t, strings.HasSuffix(s.lines()[0], "Learner Four   in"), s.lines()[0])
	require.Equal(t, 80, len(s.lines()[0]))
	s.send(tea.WindowSizeMsg{Width: 60, Height: 20})
	require.Equal(t, "1 Measure 2 Style [3 Draft] 4 True 5 Lay 6 Cut  Learner   in", s.lines()[0])
}

func TestFooterEndsInHelp(t *testing.T) {
	for _, cols := range []int{60, 80, 120} {
		s := at(t, cols, 24, looks("mono", canvas.ASCII))
		for i := range 6 {
			s.keys("esc", strconv.Itoa(i+1))
			last := s.lines()[23]
			require.True(t, strings.HasSuffix(strings.TrimRight(last, " "), "F1 Help"), last)
			require.LessOrEqual(t, strings.Count(last, "  "), 6)
		}
	}
}

// Whatever was pressed and however large the screen is: as many lines as it
// has, none wider, and never a fault.
func TestEveryFrameFitsItsScreen(t *testing.T) {
	s := at(t, 80, 24, looks("dark", canvas.Braille))
	all := make([]string, 0, len(names)+40)
	for k := range names {
		if k != "ctrl+c" {
			all = append(all, k)
		}
	}
	for r := '!'; r <= '~'; r++ {
		if r != 'q' {
			all = append(all, string(r))
		}
	}
	all = append(all, " ", "36 1/2", "½", "92,5 cm", "Nguyễn")
	rapid.Check(t, func(t *rapid.T) {
		for range rapid.IntRange(1, 12).Draw(t, "keys") {
			s.keys(rapid.SampledFrom(all).Draw(t, "key"))
			require.Nil(t, s.m.fault)
		}
		w, h := rapid.IntRange(1, 220).Draw(t, "columns"), rapid.IntRange(1, 70).Draw(t, "rows")
		s.send(tea.WindowSizeMsg{Width: w, Height: h})
		fits(t, s.m.View(), w, h)
		require.Nil(t, s.m.fault)
		s.m.leaving = false
	})
}

func fits(t require.TestingT, view string, w, h int) {
	lines := strings.Split(view, "\n")
	require.Len(t, lines, h)
	for _, l := range lines {
		require.LessOrEqual(t, ansi.StringWidth(l), w)
	}
}

func TestTooSmallSaysBothSizesAndStillSaves(t *testing.T) {
	s := at(t, 40, 10, looks("mono", canvas.ASCII))
	for _, n := range []string{"60", "16", "40", "10"} {
		require.Contains(t, s.text(), n)
	}
	s.keys("9", "x", "enter")
	require.False(t, s.m.d.Unsaved(), "nothing is typed blindly")
	s.m.d.Change(s.m.d.Job().WithoutBody("waist_girth"), "waist out")
	s.keys("ctrl+s")
	require.False(t, s.m.d.Unsaved())
	s.keys("q")
	require.True(t, s.m.leaving)
}

func TestEveryFooterKeyDoesSomething(t *testing.T) {
	s := at(t, 120, 30, looks("mono", canvas.ASCII))
	for i := range 6 {
		for k := range 6 {
			s.keys("esc", strconv.Itoa(i+1))
			offers := s.m.footer()
			if k >= len(offers) {
				continue
			}
			a, ok := s.m.d.Keys.Find(offers[k].ID)
			require.True(t, ok, offers[k].ID)
			before, version := s.text(), s.m.d.Version()
			s.m.d.Message = ""
			s.keys(a.Keys[0])
			require.True(t, s.text() != before || s.m.d.Version() != version, "%s in stage %d does nothing", a.Keys[0], i+1)
			s.keys("esc", "esc")
		}
	}
}

// Every frame is sent over some line: 25 KB is the most at a large size.
func TestFramesAreSmall(t *testing.T) {
	for _, name := range []string{"plain", "dark"} {
		s := at(t, 200, 60, looks(name, canvas.Braille))
		for i := range 6 {
			s.keys("esc", strconv.Itoa(i+1))
			require.Less(t, len(s.m.View()), 25_000, "%s, stage %d", name, i+1)
		}
	}
}

// Every screen of the gallery is small on a large window too.
func TestEveryScreenIsSmall(t *testing.T) {
	if testing.Short() {
		t.Skip("draws many screens")
	}
	for _, sc := range gallery() {
		t.Run(sc.name, func(t *testing.T) {
			s := sc.enter(t, 200, 60)
			for _, name := range theme.Names() {
				th, err := theme.For(name)
				require.NoError(t, err)
				s.m.d.Settings.Theme = th.With(theme.Colour256)
				require.LessOrEqual(t, len(s.m.View()), 25*1024, name)
			}
		})
	}
}

func BenchmarkKeyToFrame(b *testing.B) {
	s := at(b, 200, 60, looks("dark", canvas.Braille))
	s.keys("esc", "3")
	b.ReportAllocs()
	for b.Loop() {
		s.keys(" ")
		if s.m.draft.Step() > 30 {
			s.m.draft.GoTo(1)
		}
		_ = s.m.View()
	}
}

func BenchmarkEditToFrame(b *testing.B) {
	s := at(b, 200, 60, looks("dark", canvas.Braille))
	i := 0
	for b.Loop() {
		s.keys([]string{"pgup", "pgdown"}[i%2])
		i++
		_ = s.m.View()
	}
}
