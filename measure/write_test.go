package measure_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	. "chalkfold/measure"
)

func TestTape(t *testing.T) {
	for _, c := range []struct {
		l          Length
		in, cm, mm string
	}{
		{0, "0", "0", "0"},
		{9.625 * Inch, "9 5/8", "24.4", "244"},
		{12.7, "1/2", "1.3", "13"},
		{36 * Inch, "36", "91.4", "914"},
		{925, "36 7/16", "92.5", "925"},
		{920, "36 1/4", "92", "920"},
		{Inch / 32, "1/16", "0.1", "1"}, // a half goes up
		{-12.7, "-1/2", "-1.3", "-13"},
		{-9.625 * Inch, "-9 5/8", "-24.4", "-244"},
		{-0.1, "0", "0", "0"},
		{36.99 * Inch, "37", "94", "940"},
		{924.5, "36 3/8", "92.5", "925"},
	} {
		require.Equal(t, []string{c.in, c.cm, c.mm}, []string{In.Tape(c.l), Cm.Tape(c.l), Mm.Tape(c.l)}, "%v", float64(c.l))
	}
	require.Equal(t, "9 5/8 in", In.Say(9.625*Inch))
	require.Equal(t, "92.5 cm", Cm.Say(925))
}

func TestExact(t *testing.T) {
	for _, c := range []struct {
		typed string
		unit  Unit
		want  string
	}{
		{"36 1/2", In, "36 1/2"},
		{"36.5", In, "36 1/2"},
		{"36 2/4", In, "36 1/2"},
		{"1/16", In, "1/16"},
		{"0", In, "0"},
		{"36 1/32", In, "36.03125"},
		{"36.3", In, "36.3"},
		{"92.5 cm", Cm, "92.5"},
		{"92.55", Cm, "92.55"},
		{"92.555", Cm, "92.555"},
		{"36 in", Cm, "91.44"},
		{"925.5", Mm, "925.5"},
		{"0.3", In, "0.3"},
		{"91.44 cm", In, "36"},
		{"40", Cm, "40"},
	} {
		l, err := Read(c.typed, c.unit)
		require.NoError(t, err)
		require.Equal(t, c.want, c.unit.Exact(l), c.typed)
	}
	require.Equal(t, "-1/4", In.Exact(-Inch/4))
}

func TestWritingNeverFails(t *testing.T) {
	for _, x := range []float64{math.NaN(), math.Inf(1), math.Inf(-1), math.MaxFloat64, -math.MaxFloat64, math.SmallestNonzeroFloat64} {
		for _, u := range []Unit{In, Cm, Mm, Unit(9)} {
			require.NotEmpty(t, u.Tape(Length(x)))
			require.NotEmpty(t, u.Exact(Length(x)))
		}
	}
}

func TestTapeIsNear(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := Length(rapid.Float64Range(0, 5000).Draw(t, "mm"))
		for u, within := range map[Unit]float64{In: 25.4 / 32, Cm: 0.5, Mm: 0.5} {
			back, err := Read(u.Tape(l), u)
			require.NoError(t, err)
			require.InDelta(t, l.MM(), back.MM(), within+1e-5)
		}
	})
}
