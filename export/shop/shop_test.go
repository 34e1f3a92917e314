package shop

import (
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/export/accept"
	"chalkfold/measure"
	"chalkfold/pattern"
)

func TestOf(t *testing.T) {
	s := accept.Dress(pattern.Measured)
	b, ok := Of(s, Main, measure.In)
	require.True(t, ok)
	require.False(t, b.Named)
	require.Equal(t, 58*measure.Inch, b.Cloth.Width)
	require.Equal(t, 1, b.Lengths)
	small, ok := Of(s, "interfacing", measure.Cm)
	require.True(t, ok)
	require.Equal(t, 90*measure.Centimetre, small.Cloth.Width)
	require.Less(t, small.Yards, b.Yards, "facings alone")
	_, ok = Of(s, "lining", measure.In)
	require.False(t, ok)
	s.Complete = false
	_, ok = Of(s, Main, measure.In)
	require.False(t, ok)
}

func TestWidthsNeverAskMoreOfWiderCloth(t *testing.T) {
	s := accept.Dress(pattern.Measured)
	for _, u := range []measure.Unit{measure.In, measure.Cm, measure.Mm} {
		list := Widths(s, Main, u)
		require.NotEmpty(t, list)
		for i := 1; i < len(list); i++ {
			require.LessOrEqual(t, list[i].Yards, list[i-1].Yards)
		}
	}
	require.Equal(t, []string{"interfacing"}, Others(s))
}

func TestNotionsAreReadOffTheDraft(t *testing.T) {
	s := accept.Dress(pattern.Measured)
	list := Notions(s, measure.In)
	require.Contains(t, list[0], "zip, "+measure.In.Say(s.Length("zip_length")))
	require.Len(t, Notions(&pattern.Sheet{}, measure.In), 2)
}
