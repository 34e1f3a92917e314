package truing

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
)

// TestEaseTable reads the levels of the trial sheet, and its limits.
func TestEaseTable(t *testing.T) {
	s := newTrial().sheet()
	s.Girths = []pattern.Dimension{{Name: "bust", Length: 38.5 * measure.Inch}, {Name: "waist", Length: 33.5 * measure.Inch}, {Name: "hip", Length: 40 * measure.Inch}, {Name: "armhole", Length: 16.24 * measure.Inch}}
	rows := map[string]EaseRow{}
	last := measure.Length(0)
	for _, r := range EaseTable(s) {
		rows[r.Level] = r
		if r.Level == "bust" || r.Level == "waist" || r.Level == "hip" {
			require.Greater(t, r.Depth, last, r.Level)
			last = r.Depth
		}
	}
	require.InDelta(t, 2.5, rows["bust"].Ease().Inches(), 1e-9)
	require.Equal(t, "good", rows["bust"].Says())
	require.Equal(t, "good", rows["waist"].Says())
	require.InDelta(t, 5.24, rows["armhole on arm"].Ease().Inches(), 1e-9)
	require.Contains(t, rows, "hem, a step")
	require.NotContains(t, rows, "high hip")

	tight := newTrial()
	tight.body[measure.HipGirth] = 39.5
	s2 := tight.sheet()
	s2.Girths = s.Girths
	for _, r := range EaseTable(s2) {
		if r.Level == "hip" {
			require.Equal(t, "tight", r.Says())
		}
	}
	require.Empty(t, EaseTable(&pattern.Sheet{}))
}

// TestEaseBar: the garment always shows, at the end where it is far off.
func TestEaseBar(t *testing.T) {
	r := EaseRow{Body: 36 * measure.Inch, Garment: 38.5 * measure.Inch, Low: 2 * measure.Inch, High: 3.5 * measure.Inch}
	require.Equal(t, "....|...[x=].............", r.Bar(25))
	for _, wide := range []measure.Length{-50 * measure.Inch, 0, 36 * measure.Inch, 90 * measure.Inch} {
		r.Garment = wide
		for _, n := range []int{0, 1, 2, 5, 25, 80} {
			bar := r.Bar(n)
			if n < 2 {
				require.Empty(t, bar)
				continue
			}
			require.Len(t, bar, n)
			require.Equal(t, 1, strings.Count(bar, "x"))
		}
	}
	require.Equal(t, "loose", r.Says())
}
