package files

import (
	"os"
	"path/filepath"
	"syscall"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestPut(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "a.svg")
	for _, tc := range []struct {
		content string
		force   bool
		want    Outcome
		says    string
		is      error
		holds   string
	}{
		{"one", false, Written, "written", nil, "one"},
		{"one", false, Equal, "unchanged", nil, "one"},
		{"one", true, Equal, "unchanged", nil, "one"},
		{"two", false, Nothing, "not written", ErrExists, "one"},
		{"two", true, Replaced, "replaced", nil, "two"},
	} {
		got, err := Put(path, []byte(tc.content), tc.force)
		require.ErrorIs(t, err, tc.is)
		require.Equal(t, tc.want, got)
		require.Equal(t, tc.says, got.String())
		require.Equal(t, tc.holds, held(t, path))
		require.Equal(t, []string{"a.svg"}, names(t, dir))
	}
	_, err := Put(path, []byte("three"), false)
	require.EqualError(t, err, path+": there is a file of that name already, with other content; --force replaces it, or choose another folder")
	_, err = Put(dir, nil, true)
	require.ErrorIs(t, err, ErrNotFile)
}

// A file that appears between the look and the rename is not written over.
func TestPutLosesNoRace(t *testing.T) {
	path := filepath.Join(t.TempDir(), "a.svg")
	late := job{before: func(stage string) error {
		if stage == "rename" {
			return os.WriteFile(path, []byte("somebody else's"), 0o600)
		}
		return nil
	}}
	_, err := late.put(path, []byte("mine"), false)
	require.ErrorIs(t, err, ErrExists)
	require.Equal(t, "somebody else's", held(t, path))
}

func TestAFullDiskIsSaid(t *testing.T) {
	path := filepath.Join(t.TempDir(), "a.svg")
	full := job{before: func(stage string) error {
		if stage == "sync" {
			return &os.PathError{Op: "sync", Path: "x", Err: syscall.ENOSPC}
		}
		return nil
	}}
	_, err := full.put(path, []byte("mine"), false)
	require.EqualError(t, err, path+": the disk is full; make room, or choose another disk")
	require.ErrorIs(t, err, syscall.ENOSPC)
}
