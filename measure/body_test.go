package measure_test

import (
	"math"
	"reflect"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	. "chalkfold/measure"
)

func ids() []ID {
	var all []ID
	for _, m := range All() {
		all = append(all, m.ID)
	}
	return all
}

func TestBodyDoesNotChange(t *testing.T) {
	empty := Body{}
	one := empty.With(WaistGirth, 700)
	two := one.With(BustGirth, 900)
	three := two.With(WaistGirth, 710)
	require.Equal(t, 0, empty.Len())
	require.Equal(t, []ID{WaistGirth}, one.IDs())
	require.Equal(t, []ID{BustGirth, WaistGirth}, two.IDs(), "table order")
	l, ok := two.Get(WaistGirth)
	require.True(t, ok)
	require.Equal(t, Length(700), l)
	l, _ = three.Get(WaistGirth)
	require.Equal(t, Length(710), l)
	require.False(t, three.Equal(two))
	require.True(t, three.Without(WaistGirth).Equal(two.Without(WaistGirth)))
	require.Equal(t, 2, three.Len())
	require.False(t, one.Has(BustGirth))
	require.True(t, reflect.DeepEqual(one.Without(WaistGirth), empty))
	require.True(t, reflect.DeepEqual(one.Without(HipGirth), one))
	require.True(t, reflect.DeepEqual(NewBody(nil), empty))
	require.True(t, one.With("tail_girth", 5).Equal(one), "no such measurement")
	_, ok = one.Get("tail_girth")
	require.False(t, ok)
}

func TestBodyOfAnyOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		want := rapid.MapOf(rapid.SampledFrom(ids()), rapid.Map(rapid.IntRange(50, 2000), func(n int) Length { return Length(n) })).Draw(t, "lengths")
		order := rapid.Permutation(ids()).Draw(t, "order")
		var b Body
		for _, id := range order {
			b = b.With(id, 1)
			if l, ok := want[id]; ok {
				b = b.With(id, l)
			} else {
				b = b.Without(id)
			}
		}
		require.True(t, reflect.DeepEqual(NewBody(want), b))
		require.Equal(t, len(want), b.Len())
	})
}

func TestCheck(t *testing.T) {
	for _, c := range []struct {
		id ID
		l  Length
		ok bool
	}{
		{BustGirth, 914, true},
		{BustGirth, 5, true},
		{BustGirth, 4.99, false},
		{BustGirth, 0, false},
		{BustGirth, -900, false},
		{BustGirth, 3000, true},
		{BustGirth, 3000.1, false},
		{BustGirth, 1e9, false},
		{ShoulderDrop, 0, true},
		{ShoulderDrop, -1, false},
		{ShoulderDrop, 38, true},
		{"tail_girth", 100, false},
		{BustGirth, Length(math.NaN()), false},
		{BustGirth, Length(math.Inf(1)), false},
	} {
		err := Check(c.id, c.l)
		require.Equal(t, c.ok, err == nil, "%s %v", c.id, c.l)
		if err != nil {
			require.Contains(t, err.Error(), string(c.id))
			requirePlain(t, err.Error())
		}
	}
}
