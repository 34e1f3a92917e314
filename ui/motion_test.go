package ui

import (
	"testing"
	"time"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/stretchr/testify/require"

	"chalkfold/ui/canvas"
)

// The line of a new step grows into its place; any key shows all of it, and
// without motion it stands at once. Nothing else moves by itself.
func TestOnlyANewLineMoves(t *testing.T) {
	s := at(t, 120, 40, looks("mono", canvas.Braille))
	var due []tea.Msg
	s.m.later = func(_ time.Duration, msg tea.Msg) tea.Cmd {
		due = append(due, msg)
		return nil
	}
	s.keys("esc", "3")
	s.m.draft.GoTo(9)
	s.keys(" ")
	require.Empty(t, due, "no motion, no clock")
	whole, said := s.text(), s.m.d.Message
	s.m.d.Settings.Motion = true
	s.keys("left", " ")
	require.Len(t, due, 1)
	shown := []string{s.text()}
	require.NotEqual(t, whole, shown[0])
	for len(due) > 0 && len(shown) < 20 {
		next := due[0]
		due = due[1:]
		s.send(next)
		shown = append(shown, s.text())
	}
	require.Equal(t, whole, shown[len(shown)-1], "it ends by itself, with all of it drawn")
	require.Len(t, shown, 4)
	due = nil
	s.keys("left", " ", "up")
	s.m.d.Message = said
	require.Equal(t, whole, s.text(), "a key in between shows all of it")
	s.send(due[0])
	require.Equal(t, whole, s.text(), "and what was due comes too late")
	for _, k := range []string{"left", "home", "end", "z", "+", "0", "o", "tab", "esc", "1", "2", "4", "f1", "esc", "f6", "ctrl+t"} {
		due = nil
		s.keys(k)
		require.Empty(t, due, "%s sets a clock", k)
	}
}
