package measure_test

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	. "chalkfold/measure"
)

func TestSteps(t *testing.T) {
	eighth := Inch / 8
	for _, c := range []struct{ l, step, down, near, up Length }{
		{9.625 * Inch, eighth, 9.625 * Inch, 9.625 * Inch, 9.625 * Inch},
		{9.6 * Inch, eighth, 9.5 * Inch, 9.625 * Inch, 9.625 * Inch},
		{9.5625 * Inch, eighth, 9.5 * Inch, 9.625 * Inch, 9.625 * Inch}, // a half goes up
		{9.625*Inch - 1e-7, eighth, 9.625 * Inch, 9.625 * Inch, 9.625 * Inch},
		{9.625*Inch + 1e-7, eighth, 9.625 * Inch, 9.625 * Inch, 9.625 * Inch},
		{0, eighth, 0, 0, 0},
		{-0.3 * Inch, eighth, -0.375 * Inch, -0.25 * Inch, -0.25 * Inch},
		{92.45 * Centimetre, Millimetre, 924, 925, 925},
		{7, 0, 7, 7, 7},
	} {
		require.InDelta(t, c.down.MM(), c.l.Down(c.step).MM(), 1e-9, "%v down", c.l)
		require.InDelta(t, c.near.MM(), c.l.Near(c.step).MM(), 1e-9, "%v near", c.l)
		require.InDelta(t, c.up.MM(), c.l.Up(c.step).MM(), 1e-9, "%v up", c.l)
	}
}

func TestSteppedInchesAreTypedInches(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := Length(rapid.Float64Range(0, 3000).Draw(t, "mm"))
		stepped := l.Near(Inch / 16)
		typed, err := Read(In.Tape(stepped), In)
		require.NoError(t, err)
		require.Equal(t, typed, stepped)
		require.LessOrEqual(t, l.Down(Inch/8), l+1e-6)
		require.GreaterOrEqual(t, l.Up(Inch/8), l-1e-6)
	})
}

func TestUnits(t *testing.T) {
	for text, want := range map[string]Unit{"in": In, " Inches ": In, "in.": In, "cm": Cm, "CM": Cm, "centimeter": Cm, "mm": Mm, "millimetres": Mm} {
		got, err := ParseUnit(text)
		require.NoError(t, err, text)
		require.Equal(t, want, got, text)
	}
	for _, text := range []string{"", "furlong", "m", "metre", "i n", "\x1b"} {
		_, err := ParseUnit(text)
		require.Error(t, err, text)
	}
	require.Equal(t, "in cm mm", In.String()+" "+Cm.String()+" "+Mm.String())
	require.Equal(t, 36.0, In.Of(36*Inch))
	require.Equal(t, 92.5, Cm.Of(925))
	require.Equal(t, Length(925), Cm.Length(92.5))
	require.Equal(t, []Length{3.175, 5, 5}, []Length{In.Step(), Cm.Step(), Mm.Step()})
	require.Equal(t, 2.0, (2 * Inch).Inches())
	require.Equal(t, 50.8, (2 * Inch).MM())
}
