package canvas

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestLabelStandsRightOfItsMark(t *testing.T) {
	c := New(20, 5, ASCII)
	c.Mark(10, 9, Newest)
	require.True(t, c.Label(10, 9, "here", Newest))
	require.Equal(t, "\n\n     + here\n\n", c.String(Palette{}))
}

func TestLabelGoesRoundWhatIsThere(t *testing.T) {
	c := New(20, 5, ASCII)
	c.Mark(20, 9, Newest)
	c.Line(24, 0, 24, 19, Line)
	require.True(t, c.Label(20, 9, "here", Newest))
	require.Equal(t, "            |\n            |\n     here + |\n            |\n            |", c.String(Palette{}))
}

func TestLabelMayCoverTheGridOnly(t *testing.T) {
	c := New(12, 3, ASCII)
	c.Grid(4, 4, 0, 0, Grid)
	require.True(t, c.Label(0, 4, "here", Words))
	require.Contains(t, c.String(Palette{}), "here")
}

func TestLabelWithoutRoomIsLeftOut(t *testing.T) {
	c := New(6, 3, ASCII)
	for y := range 12 {
		c.Line(0, float64(y), 11, float64(y), Line)
	}
	before := c.String(Palette{})
	require.False(t, c.Label(5, 5, "here", Words))
	require.False(t, c.Label(5, 5, "", Newest))
	require.False(t, c.Label(500, 5, "here", Newest))
	require.False(t, c.Label(5, 5, "far too long a label", Newest))
	require.Equal(t, before, c.String(Palette{}))
}

func TestFaintLinesGiveWayAndTheNewestIsAlwaysSaid(t *testing.T) {
	for _, pen := range []Pen{Faint, Line} {
		c := New(12, 3, Braille)
		for y := range 12 {
			c.Line(0, float64(y), 23, float64(y), pen)
		}
		require.Equal(t, pen == Faint, c.Label(0, 5, "here", Words))
		c.Clear()
		for y := range 12 {
			c.Line(0, float64(y), 23, float64(y), pen)
		}
		require.True(t, c.Label(0, 5, "here", Newest))
		require.True(t, c.Label(0, 5, "overthere", Newest))
		require.Regexp(t, `\bhere`, c.String(Palette{}), "but never over words")
	}
}

func TestLeaderLineAsLastResort(t *testing.T) {
	c := New(30, 9, ASCII)
	// a thick wall of lines all round the mark, free room above
	for y := 12; y < 36; y++ {
		c.Line(0, float64(y), 59, float64(y), Line)
	}
	require.True(t, c.Label(30, 18, "here", Newest))
	row := -1
	for i, l := range c.Rows(Palette{}) {
		if strings.Contains(l, "here") {
			row = i
		}
	}
	require.Contains(t, []int{0, 1, 2}, row)
}

// No label ever covers a line or another label, and each has air at both ends.
func TestLabelsKeepApart(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := New(40, 12, Braille)
		w, h := c.Dots()
		x, y := rapid.Float64Range(0, float64(w-1)), rapid.Float64Range(0, float64(h-1))
		for range rapid.IntRange(0, 6).Draw(t, "lines") {
			c.Line(x.Draw(t, "x0"), y.Draw(t, "y0"), x.Draw(t, "x1"), y.Draw(t, "y1"), Line)
		}
		drawn := append([]uint8(nil), c.dots...)
		var placed []string
		for i := range rapid.IntRange(1, 9).Draw(t, "labels") {
			s := fmt.Sprintf("label%d", i)
			if c.Label(x.Draw(t, "x"), y.Draw(t, "y"), s, Words) {
				placed = append(placed, s)
			}
		}
		for i, word := range c.words {
			if word != 0 && drawn[i] != 0 {
				t.Fatalf("the letter %q covers a line", word)
			}
		}
		// Only the faint leader of another label may run beside one.
		text := c.String(Palette{})
		lines := strings.Split(text, "\n")
		for _, s := range placed {
			row := slices.IndexFunc(lines, func(l string) bool { return strings.Contains(l, s) })
			require.GreaterOrEqual(t, row, 0, s)
			before, _, _ := strings.Cut(lines[row], s)
			col := Width(before)
			for _, end := range []int{col - 1, col + Width(s)} {
				if i := row*40 + end; end >= 0 && end < 40 && (c.words[i] != 0 || drawn[i] != 0) {
					t.Fatalf("%s has no air in\n%s", s, text)
				}
			}
		}
	})
}
