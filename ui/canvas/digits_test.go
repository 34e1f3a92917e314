package canvas

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestFigures(t *testing.T) {
	rows := Figures("10/7", ASCII)
	require.Equal(t, "     _       _ \n  | | |       |\n  | |_|       |", strings.Join(rows[:], "\n"))
	for _, g := range []Glyphs{Braille, Blocks, ASCII} {
		seen := map[string]bool{}
		for d := range 10 {
			r := Figures(string(rune('0'+d)), g)
			for _, row := range r {
				require.Equal(t, 3, Width(row))
			}
			key := strings.Join(r[:], "/")
			require.False(t, seen[key], "%d looks like another", d)
			seen[key] = true
		}
	}
}
