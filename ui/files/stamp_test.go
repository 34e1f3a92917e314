package files

import (
	"bytes"
	"io/fs"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestStampNoticesChanges(t *testing.T) {
	path := filepath.Join(t.TempDir(), "a.toml")
	changed := func(s Stamp) bool {
		c, err := s.Changed(path)
		require.NoError(t, err)
		return c
	}
	none := Stamp{}
	require.False(t, none.There())
	require.False(t, changed(none), "there was none and there is none")

	put(t, path, "one", 0o600)
	require.True(t, changed(none), "one came")
	content, s, err := Read(path, 100)
	require.NoError(t, err)
	require.Equal(t, "one", string(content))
	require.True(t, s.There())
	require.False(t, changed(s))

	put(t, path, "two", 0o600)
	require.True(t, changed(s), "same length, other content")
	put(t, path, "one", 0o600)
	require.False(t, changed(s), "written again with the same content is no change")
	require.NoError(t, os.Remove(path))
	require.True(t, changed(s), "it went")

	_, err = s.Changed(t.TempDir())
	require.Error(t, err)
}

func TestReadRefuses(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "big.toml")
	require.NoError(t, os.WriteFile(path, bytes.Repeat([]byte{'x'}, 1<<20+1), 0o600))
	_, _, err := Read(path, 1<<20)
	require.ErrorIs(t, err, ErrTooBig)
	require.EqualError(t, err, path+": the file is larger than 1 MiB; look whether it is the right one")
	_, _, err = Read(path, 1<<20+1)
	require.NoError(t, err)
	_, _, err = Read(path, 0)
	require.NoError(t, err)
	_, _, err = Read(dir, 0)
	require.ErrorIs(t, err, ErrNotFile)
	_, _, err = Read(filepath.Join(dir, "none"), 0)
	require.ErrorIs(t, err, fs.ErrNotExist)
	require.Equal(t, []string{"2 KiB", "17 bytes"}, []string{size(2048), size(17)})
}

func TestSaveLooksFirst(t *testing.T) {
	path := filepath.Join(t.TempDir(), "a.toml")
	s, err := Save(path, []byte("one"), Stamp{}, Options{})
	require.NoError(t, err)
	s, err = Save(path, []byte("two"), s, Options{Previous: true})
	require.NoError(t, err)
	require.Equal(t, "one", held(t, path+"~"))

	put(t, path, "by another hand", 0o600)
	kept, err := Save(path, []byte("three"), s, Options{})
	require.ErrorIs(t, err, ErrChanged)
	require.EqualError(t, err, path+": it was changed elsewhere since it was opened; save under another name, or look at it first")
	require.Equal(t, s, kept)
	require.Equal(t, "by another hand", held(t, path))

	_, err = Save(path, []byte("new"), Stamp{}, Options{})
	require.EqualError(t, err, path+": there is a file of that name already; save under another name, or look at it first")
}
