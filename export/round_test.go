package export_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"chalkfold/export"
)

// A place half way between two steps is rounded as itself, on whichever side
// of it a sum came out.
func TestRoundHalfWay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		half := float64(rapid.IntRange(-5_000_000, 5_000_000).Draw(t, "steps")) + 0.5
		x := half / 1e3
		want := export.Round(x, 1e3)
		for _, y := range []float64{x, math.Nextafter(x, math.Inf(1)), math.Nextafter(x, math.Inf(-1)), x * (1 + 4e-15), x * (1 - 4e-15)} {
			if got := export.Round(y, 1e3); got != want {
				t.Fatalf("%v rounds to %v, %v to %v", x, want, y, got)
			}
		}
		if math.Abs(want-x) > 0.00051 {
			t.Fatalf("%v is far from %v", want, x)
		}
	})
	for _, x := range []float64{math.NaN(), math.Inf(1), math.Inf(-1), -0.0004} {
		require.Zero(t, export.Round(x, 1e3))
		require.False(t, math.Signbit(export.Round(x, 1e3)))
	}
}
