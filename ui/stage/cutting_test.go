package stage

import (
	"strings"
	"testing"

	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/outlet"
)

func cutting(t *testing.T) (user, *Cut) {
	d := bench36(t)
	s := NewCut(d)
	u := user{t, d, s}
	u.screen()
	return u, s
}

func (s *Cut) onto(id string) {
	for i, f := range outlet.Formats() {
		if f.ID == id {
			s.at = i
		}
	}
}

func TestEveryFormatIsListedWhole(t *testing.T) {
	u, s := cutting(t)
	for i, f := range outlet.Formats() {
		s.at = i
		require.Contains(t, u.screen(), f.Title)
		require.Contains(t, u.screen(), f.Says)
	}
}

func TestTicksOfTilesLayTheSheetsOverThePieces(t *testing.T) {
	u, s := cutting(t)
	require.NotContains(t, u.screen(), "A1")
	s.onto("tiles")
	u.do("tick")
	text := ansi.Strip(u.screen())
	require.Contains(t, text, "A1")
	require.Regexp(t, `A4 or Letter, \d+ pages`, text)
	n := s.sheets()
	for range len(outlet.Papers()) {
		if s.paperID() == "a3" {
			break
		}
		u.do("variant-next")
	}
	u.screen()
	require.Less(t, s.sheets(), n, "larger paper, fewer sheets")
}

func TestThePrintersLinesAreTypedIn(t *testing.T) {
	u, s := cutting(t)
	s.onto("tiles")
	u.do("tick")
	s.at = s.rows() - 1
	require.Equal(t, alongEntry, s.onEntry())
	u.do("write")
	require.True(t, s.Typing())
	u.types("8")
	require.True(t, u.do(keys.Accept).Warn, "no printer is so far off")
	u.do("clear")
	u.types("9 7/8")
	require.False(t, u.do(keys.Accept).Warn)
	require.Contains(t, u.screen(), "9 7/8")
	require.NotZero(t, s.options().PrintedAlong)
	require.NoError(t, s.options().Check())
	u.do("variant-next")
	require.Zero(t, s.options().PrintedAlong, "another paper is another print")
}

// What was measured on a paper is offered the next time, and is used only when
// she takes it.
func TestThePrintersLinesAreOfferedAgain(t *testing.T) {
	config := t.TempDir()
	begin := func() (user, *Cut) {
		u, s := cutting(t)
		s.d.Settings.Config, s.folder = config, t.TempDir()
		s.onto("tiles")
		u.do("tick")
		s.at = s.rows() - 1
		require.Equal(t, alongEntry, s.onEntry())
		u.do("write")
		return u, s
	}
	u, s := begin()
	require.Empty(t, s.field.string(), "nothing is known of the printer yet")
	u.types("9 7/8")
	u.do(keys.Accept)
	s.onto("tiles")
	require.False(t, u.take(s.Hear(u.do("write").Run())).Warn)

	u, s = begin()
	require.Equal(t, "9 7/8", s.field.string())
	u.do(keys.Back)
	require.Zero(t, s.options().PrintedAlong, "only looked at")
	u.do("write")
	u.do(keys.Accept)
	require.Equal(t, 9.875*measure.Inch, s.options().PrintedAlong)

	u, s = begin()
	u.do(keys.Back)
	u.do("variant-next")
	u.do("write")
	require.Empty(t, s.field.string(), "of this paper nothing is known")
}

func TestWhatNextIsSaidAfterWriting(t *testing.T) {
	u, s := cutting(t)
	s.folder = t.TempDir()
	s.onto("svg")
	said := u.take(s.Hear(u.do("write").Run()))
	require.False(t, said.Warn, said.Say)
	text := strings.Join(s.View(desk.Rect{Columns: 100, Rows: 30}), "\n")
	require.Contains(t, text, "Take the card to the table")
	require.Contains(t, text, "After the fitting")
}
