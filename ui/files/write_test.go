package files

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

func put(t *testing.T, path, content string, mode fs.FileMode) {
	t.Helper()
	require.NoError(t, os.WriteFile(path, []byte(content), 0o600))
	require.NoError(t, os.Chmod(path, mode))
}

func held(t *testing.T, path string) string {
	t.Helper()
	b, err := os.ReadFile(path)
	require.NoError(t, err)
	return string(b)
}

// names are all files of a folder, so that nothing is left over unseen.
func names(t *testing.T, dir string) []string {
	t.Helper()
	list, err := os.ReadDir(dir)
	require.NoError(t, err)
	all := []string{}
	for _, e := range list {
		all = append(all, e.Name())
	}
	return all
}

func mode(t *testing.T, path string) fs.FileMode {
	t.Helper()
	info, err := os.Stat(path)
	require.NoError(t, err)
	return info.Mode().Perm()
}

func TestNewFileIsPrivate(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "a.toml")
	require.NoError(t, Write(path, []byte("one"), Options{}))
	require.Equal(t, "one", held(t, path))
	require.Equal(t, []string{"a.toml"}, names(t, dir))
	if runtime.GOOS != "windows" {
		require.Equal(t, Private, mode(t, path))
	}
}

func TestOldModeIsKept(t *testing.T) {
	for _, m := range []fs.FileMode{0o600, 0o640, 0o644, 0o755} {
		path := filepath.Join(t.TempDir(), "a.toml")
		put(t, path, "old", m)
		require.NoError(t, Write(path, []byte("new"), Options{Mode: Private, Previous: true}))
		require.Equal(t, "new", held(t, path))
		require.Equal(t, "old", held(t, path+"~"))
		if runtime.GOOS != "windows" {
			require.Equal(t, m, mode(t, path))
			require.Equal(t, m, mode(t, path+"~"))
		}
	}
}

func TestOnePreviousVersion(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "a.toml")
	for _, s := range []string{"one", "two", "three", "three"} {
		require.NoError(t, Write(path, []byte(s), Options{Previous: true}))
	}
	require.Equal(t, "three", held(t, path))
	require.Equal(t, "two", held(t, path+"~"), "writing the same again does not lose the version before")
	require.Equal(t, []string{"a.toml", "a.toml~"}, names(t, dir))
}

func TestLinksAreFollowed(t *testing.T) {
	dir := t.TempDir()
	far := filepath.Join(dir, "far")
	require.NoError(t, os.Mkdir(far, 0o755))
	put(t, filepath.Join(far, "real.toml"), "old", 0o640)
	link := filepath.Join(dir, "link.toml")
	require.NoError(t, os.Symlink(filepath.Join("far", "real.toml"), link))
	second := filepath.Join(dir, "second.toml")
	require.NoError(t, os.Symlink("link.toml", second))

	require.NoError(t, Write(second, []byte("new"), Options{Previous: true}))
	require.Equal(t, "new", held(t, filepath.Join(far, "real.toml")))
	require.Equal(t, fs.FileMode(0o640), mode(t, link))
	for _, l := range []string{link, second} {
		info, err := os.Lstat(l)
		require.NoError(t, err)
		require.NotZero(t, info.Mode()&fs.ModeSymlink)
	}
	require.Equal(t, []string{"real.toml", "real.toml~"}, names(t, far))

	// to a file that is not there yet
	require.NoError(t, os.Symlink(filepath.Join("far", "later.toml"), filepath.Join(dir, "hope.toml")))
	require.NoError(t, Write(filepath.Join(dir, "hope.toml"), []byte("here"), Options{}))
	require.Equal(t, "here", held(t, filepath.Join(far, "later.toml")))

	// round in a circle
	require.NoError(t, os.Symlink("b", filepath.Join(dir, "a")))
	require.NoError(t, os.Symlink("a", filepath.Join(dir, "b")))
	require.ErrorContains(t, Write(filepath.Join(dir, "a"), []byte("x"), Options{}), "the links go round in a circle")
}

var errBroken = errors.New("pulled the plug")

// Whatever breaks, at whatever moment: the old file stays whole and nothing is
// left beside it.
func TestBrokenWriteLeavesTheOldFile(t *testing.T) {
	for _, stage := range []string{"create", "write", "sync", "close", "rename"} {
		t.Run(stage, func(t *testing.T) {
			dir := t.TempDir()
			path := filepath.Join(dir, "a.toml")
			put(t, path, "old and whole", 0o644)
			broken := job{before: func(s string) error {
				if s == stage {
					return errBroken
				}
				return nil
			}}
			err := broken.write(path, []byte("new"), Options{})
			require.ErrorIs(t, err, errBroken)
			require.Equal(t, "old and whole", held(t, path))
			require.Equal(t, []string{"a.toml"}, names(t, dir))

			_, err = broken.put(filepath.Join(dir, "b.svg"), []byte("new"), false)
			require.ErrorIs(t, err, errBroken)
			require.Equal(t, []string{"a.toml"}, names(t, dir))
		})
	}
}

func TestRefusals(t *testing.T) {
	dir := t.TempDir()
	file := filepath.Join(dir, "file")
	put(t, file, "x", 0o644)
	locked := filepath.Join(dir, "locked")
	put(t, locked, "x", 0o444)
	for _, tc := range []struct {
		path, wrong string
		is          error
	}{
		{dir, "this is a folder; give the name of a file in it", ErrNotFile},
		{filepath.Join(dir, "no", "such"), "there is no such file or folder; look at the name, or make the folder first", fs.ErrNotExist},
		{filepath.Join(file, "below"), "a part of the path is a file, not a folder; look at the path", nil},
		{locked, "this file may only be read; save under another name, or allow writing first", fs.ErrPermission},
		{filepath.Join(dir, strings.Repeat("n", 300)), "the name is too long; take a shorter one", nil},
	} {
		err := Write(tc.path, []byte("new"), Options{})
		require.EqualError(t, err, tc.path+": "+tc.wrong)
		if tc.is != nil {
			require.ErrorIs(t, err, tc.is)
		}
		var trouble *Trouble
		require.ErrorAs(t, err, &trouble)
	}
	require.Equal(t, []string{"file", "locked"}, names(t, dir))
}

// A path may hold what a terminal would obey.
func TestPathsAreShownHarmless(t *testing.T) {
	err := Write("/nowhere/\x1b[2Jx", nil, Options{})
	require.ErrorContains(t, err, `"/nowhere/\x1b[2Jx": there is no such file`)
	require.Equal(t, "Größe für Ngọc.toml", shown("Größe für Ngọc.toml"))
}

func TestUnknownTroubleKeepsTheSystemsWords(t *testing.T) {
	err := trouble("x", &fs.PathError{Op: "open", Path: "y", Err: errors.New("the dog ate it")})
	require.EqualError(t, err, `x: the system says "the dog ate it"`)
	require.EqualError(t, trouble("x", errBroken), `x: the system says "pulled the plug"`)
	require.NoError(t, trouble("x", nil))
}
