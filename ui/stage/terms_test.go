package stage

import (
	"testing"

	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/require"

	"chalkfold/ui/desk"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
)

// Each word of the trade is underlined at one step only, the first to use it;
// the words themselves stay as they are.
func TestWordsAreUnderlinedOnce(t *testing.T) {
	d := bench36(t)
	th, err := theme.For("mono")
	require.NoError(t, err)
	d.Settings.Theme = th.With(theme.NoColour)
	s := NewDraft(d)
	at := map[string]string{}
	for _, st := range d.Sheet().Steps {
		for _, w := range s.terms.first(d.Sheet(), st.ID) {
			require.Empty(t, at[w], "%s, %s", w, st.ID)
			at[w] = st.ID
			_, known := text.Explain(w)
			require.True(t, known)
		}
	}
	require.Equal(t, "front.dart_start", at["tip"])
	line := "Square the underarm line and mark the Underarm, level."
	got := underlined(d, line, theme.Text, map[string]bool{"underarm": true, "underarm line": true, "level": true, "dart": true})
	require.Equal(t, line, ansi.Strip(got))
	under := d.Settings.Theme.Underlined(theme.Text)
	for _, w := range []string{"underarm line", "Underarm", "level"} {
		require.Contains(t, got, under.Render(w))
	}
	require.Contains(t, s.screenAt(3), "4mfold")
}

// screenAt is a step as it is painted.
func (s *Draft) screenAt(step int) string {
	s.GoTo(step)
	out := ""
	for _, l := range s.View(desk.Rect{Columns: 80, Rows: 21}) {
		out += l + "\n"
	}
	return out
}
