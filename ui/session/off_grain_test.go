package session

import (
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/pattern"
)

// How far off the grain a piece may lie is read, kept as it was typed, changed
// and taken away again; what is no such angle is refused.
func TestOffGrainIsReadAndKept(t *testing.T) {
	const text = "form = 1\nunit = \"in\"\n\n[cloth.main]\nwidth = \"58\"\noff_grain = 2.0 # she asked\n"
	s, err := Parse("x", []byte(text))
	require.NoError(t, err)
	c, _ := s.Job.Cloth("main")
	require.InDelta(t, 2, c.OffGrain, 0)
	out, err := s.Bytes(s.Job)
	require.NoError(t, err)
	require.Equal(t, text, string(out))
	for _, degrees := range []float64{3, 1, 0, 2.5} {
		c.OffGrain = degrees
		job := s.Job.WithCloth(c)
		out, err = s.Bytes(job)
		require.NoError(t, err)
		again, err := Parse("x", out)
		require.NoError(t, err)
		got, _ := again.Job.Cloth("main")
		require.InDelta(t, degrees, got.OffGrain, 0)
		require.Equal(t, c, got)
	}
	fresh, err := New("x", pattern.Job{}.WithCloth(c)).Bytes(pattern.Job{}.WithCloth(c))
	require.NoError(t, err)
	require.Contains(t, string(fresh), "off_grain = 2.5")
	for _, bad := range []string{"4", "-1", `"two"`, "nan"} {
		_, err := Parse("x", []byte("form = 1\n[cloth.main]\noff_grain = "+bad+"\n"))
		require.ErrorContains(t, err, "off_grain", bad)
	}
}
