package desk

import (
	"strings"
	"testing"

	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// A fraction stays with its whole number and both with their unit; a minus
// stays with its number.
func TestNumbersAreNotTorn(t *testing.T) {
	require.Equal(t, []string{"it takes", "1 1/2 yd", "(1.4 m)"}, Wrap("it takes 1 1/2 yd (1.4 m)", 10))
	require.Equal(t, []string{"hip =", "-1"}, Wrap("hip = -1", 6))
	require.Equal(t, []string{"(bust 9 9/16", "- limit", "1 1/4)"}, Wrap("(bust 9 9/16 - limit 1 1/4)", 13))
	require.Equal(t, []string{"(bust 9 9/16 -", "limit 1 1/4) =", "8 5/16"}, Wrap("(bust 9 9/16 - limit 1 1/4) = 8 5/16", 15))
	require.Equal(t, []string{"see step 3", "of 12"}, Wrap("see step 3 of 12", 10))
}

func TestWrapLosesNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		words := strings.Join(rapid.SliceOfN(rapid.SampledFrom([]string{"waist", "36", "1/2", "in", "-1", "9.5", "cm", "20", "%", "half-way", "9 9/16 - limit", "/ 4 - 1"}), 1, 12).Draw(t, "words"), " ")
		width := rapid.IntRange(14, 60).Draw(t, "width")
		lines := Wrap(words, width)
		require.Equal(t, strings.Fields(words), strings.Fields(strings.ReplaceAll(strings.Join(lines, " "), "half- way", "half-way")))
		for _, l := range lines {
			require.LessOrEqual(t, ansi.StringWidth(l), width)
		}
	})
}

func TestBriefEndsBetweenWords(t *testing.T) {
	require.Equal(t, "as it is", Brief("as it is", 8))
	require.Equal(t, "cut between...", Brief("cut between, words", 16))
	require.Equal(t, "\x1b[1mone...", strings.ReplaceAll(Brief("\x1b[1mone two three\x1b[0m", 9), ansi.ResetStyle, ""))
	rapid.Check(t, func(t *rapid.T) {
		s, n := rapid.StringMatching(`[a-z ,]{0,40}`).Draw(t, "words"), rapid.IntRange(0, 40).Draw(t, "width")
		require.LessOrEqual(t, ansi.StringWidth(Brief(s, n)), n)
	})
}
