package outlet

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/export/accept"
	"chalkfold/pattern"
	"chalkfold/ui/files"
)

// A lay leaves for each cloth; a kept lay that does not hold is said.
func TestLays(t *testing.T) {
	lay, err := Parse("lay")
	require.NoError(t, err)
	s := accept.Dress(pattern.Measured)
	dir := t.TempDir()
	results, err := Export(s, "four", dir, lay, Options{}, nil)
	require.NoError(t, err)
	var names []string
	for _, r := range results {
		require.NoError(t, r.Err)
		require.Equal(t, files.Written, r.Outcome)
		require.Empty(t, r.Notes)
		names = append(names, filepath.Base(r.Path))
	}
	require.Equal(t, []string{
		"four-lay.svg", "four-lay.pdf", "four-lay.dxf",
		"four-lay-interfacing.svg", "four-lay-interfacing.pdf", "four-lay-interfacing.dxf",
	}, names)
	text, err := os.ReadFile(filepath.Join(dir, "four-lay.svg"))
	require.NoError(t, err)
	require.Contains(t, string(text), "First lay on the main cloth")

	s.Job = s.Job.WithLay(pattern.KeptLay{Cloth: "main", Width: 900, Fold: "flat", Placed: []pattern.LaidPiece{{Piece: "front", Copy: 1}}})
	results, err = Export(s, "four", dir, lay, Options{Force: true}, nil)
	require.NoError(t, err)
	require.Contains(t, results[0].Says(), "The lay that was kept is for cloth")

	s.Job.Cloths = []pattern.Cloth{{Name: "main", Width: 150}}
	results, err = Export(s, "four", dir, lay, Options{Force: true}, nil)
	require.NoError(t, err)
	require.ErrorContains(t, results[0].Err, "folded cloth", "too narrow: said, and nothing is written")
	require.NoError(t, results[3].Err, "the other cloth leaves")
}
