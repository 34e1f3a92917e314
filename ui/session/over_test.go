package session

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
)

// Saving over another file is whole or not at all, and keeps what stood there.
func TestSaveAsOverKeepsWhatStoodThere(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "bea"+Suffix)
	require.NoError(t, os.WriteFile(path, []byte("form = 1 # hers\n"), 0o600))
	s := New(filepath.Join(dir, "anna"+Suffix), Demo().Job)
	require.NoError(t, s.Save(s.Job))
	require.ErrorIs(t, s.SaveAs(path, s.Job), ErrExists)
	job := s.Job.WithBody(measure.BustGirth, 910)
	require.NoError(t, s.SaveAsOver(path, job))
	require.Equal(t, path, s.Path)
	old, err := os.ReadFile(path + "~")
	require.NoError(t, err)
	require.Equal(t, "form = 1 # hers\n", string(old))
	got, err := Open(path)
	require.NoError(t, err)
	require.Equal(t, job, got.Job)
	require.NoError(t, s.Save(job.WithBody(measure.BustGirth, 920)), "and it is the session's own from then on")
}
