package measuring

import (
	"bytes"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/export/accept"
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
)

func TestRowsAreTheDraftsNeedsInTakingOrder(t *testing.T) {
	needed := workroom.Needs(pattern.Dress, pattern.Measured)
	in := func(m measure.Measurement) bool {
		for _, id := range needed {
			if id == m.ID {
				return true
			}
		}
		return false
	}
	table := takes(measure.In, in)
	require.Len(t, table.Rows, len(needed))
	row := 0
	for _, m := range measure.All() {
		if !in(m) {
			continue
		}
		r := table.Rows[row]
		require.Equal(t, capital(m.Term), r[0])
		require.Empty(t, r[2], "her numbers are not on it")
		require.Empty(t, r[3])
		row++
	}
}

func TestAgreement(t *testing.T) {
	require.Equal(t, []string{"1/2", "1/4", "1", "0.5", "10", "5"}, []string{
		agreed(measure.In, true), agreed(measure.In, false), agreed(measure.Cm, true),
		agreed(measure.Cm, false), agreed(measure.Mm, true), agreed(measure.Mm, false),
	})
	require.True(t, isGirth(measure.BustGirth))
	require.False(t, isGirth(measure.ShoulderLength))
}

func TestEveryLandmarkIsOnTheFigure(t *testing.T) {
	seen := map[string]bool{}
	for _, d := range body().Dots {
		seen[d.Label] = true
	}
	for i := range landmarks {
		require.True(t, seen[string(rune('1'+i))], landmarks[i])
	}
}

func TestPrinted(t *testing.T) {
	var a, b bytes.Buffer
	require.NoError(t, WritePDF(&a, accept.Dress(pattern.Measured), Options{Unit: measure.In}))
	require.NoError(t, WritePDF(&b, accept.Dress(pattern.Measured), Options{Unit: measure.In}))
	require.Equal(t, a.Bytes(), b.Bytes())
	require.NoError(t, WritePDF(&b, &pattern.Sheet{}, Options{}))
}
