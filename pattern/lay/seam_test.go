package lay

import (
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/pattern"
)

func TestASeamInPlaceOfTheFold(t *testing.T) {
	it := toyItems()[0]
	got, ok := Seamed(it, 15*PerMM)
	require.True(t, ok)
	require.Equal(t, pattern.Pair, got.Cut)
	require.Equal(t, 2, got.Count)
	fold := int64(290 * PerMM)
	require.Equal(t, twiceArea(it.Outline)+2*15*PerMM*fold, twiceArea(got.Outline))
	p := Problem{Cloth: toyCloth(Flat), Items: []Item{got}}
	require.Len(t, solved(t, p).Placed, 2)
	_, ok = Seamed(toyItems()[1], 15*PerMM)
	require.False(t, ok)
}
