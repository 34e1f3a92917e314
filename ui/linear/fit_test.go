package linear

import (
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/ui/session"
)

func TestFit(t *testing.T) {
	home(t)
	s := saved(t, sample())
	got := script(t, "fit", s, "fit 25", "fit 33", "fit 25 1/4", "fit 33 1/4", "fit 33.3 1/4", "fit 90", "fit 3 x", "fit 33.9 1/4", "save", "q")
	require.Contains(t, got, "Pinch at the armhole 0 -> 1/4, after the fitting")
	kept, err := session.Open(s.Path)
	require.NoError(t, err)
	require.Len(t, kept.Job.Fittings, 3)
	got, _ = talk(s, "fit", "q")
	require.Contains(t, got, "1. Creases pull from the neck slanting down to the front of the armhole.")
	got, _ = talk(nil, "fit", "q")
	require.NotContains(t, got, "1. Creases")
}
