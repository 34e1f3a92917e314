package linear

import (
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/ui/session"
)

func TestFit(t *testing.T) {
	home(t)
	s := saved(t, sample())
	got := script(t, "fit", s, "fit 23", "fit 29", "fit 23 1/4", "fit 29 1/4", "fit 29.3 1/4", "fit 90", "fit 3 x", "fit 29.9 1/4", "save", "q")
	require.Contains(t, got, "Pinch at the armhole 0 -> 1/4, after the fitting")
	kept, err := session.Open(s.Path)
	require.NoError(t, err)
	require.Len(t, kept.Job.Fittings, 3)
	got, _ = talk(s, "fit", "q")
	require.Contains(t, got, "1. Creases pull from the neck slanting down to the front of the armhole.")
	got, _ = talk(nil, "fit", "q")
	require.NotContains(t, got, "1. Creases")
}
