package outlet

import (
	"io"
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/export/accept"
	"chalkfold/pattern"
	"chalkfold/ui/files"
)

func names(t *testing.T, dir string) (out []string) {
	t.Helper()
	list, err := os.ReadDir(dir)
	require.NoError(t, err)
	for _, f := range list {
		out = append(out, f.Name())
	}
	return out
}

// A disk that fills after the first file: a sentence for each file that has no
// room, the first one whole, nothing half.
func TestADiskThatFills(t *testing.T) {
	dir := t.TempDir()
	all, err := Parse("svg,dxf,card")
	require.NoError(t, err)
	room := 1
	o := Options{put: func(path string, content []byte, force bool) (files.Outcome, error) {
		if room--; room < 0 {
			return files.Nothing, &files.Trouble{Path: path, Wrong: "the disk is full", Works: "make room, or choose another disk", Err: syscall.ENOSPC}
		}
		return files.Put(path, content, force)
	}}
	results, err := Export(accept.Dress(pattern.Measured), "four", dir, all, o, nil)
	require.NoError(t, err)
	require.Len(t, results, 5)
	require.NoError(t, results[0].Err)
	for _, r := range results[1:] {
		require.ErrorIs(t, r.Err, syscall.ENOSPC)
		require.Contains(t, r.Says(), "the disk is full; make room")
	}
	require.Equal(t, []string{"four.svg"}, names(t, dir))
}

// What cannot be written for a real reason of the system leaves nothing behind
// and spoils nothing else: the name is a folder.
func TestANameThatIsAFolder(t *testing.T) {
	dir := t.TempDir()
	require.NoError(t, os.Mkdir(filepath.Join(dir, "four.svg"), 0o700))
	results, err := Export(accept.Sheet(), "four", dir, pictures(t), Options{Force: true}, nil)
	require.NoError(t, err)
	require.Error(t, results[0].Err)
	require.Contains(t, results[0].Says(), "four.svg: ")
	require.NoError(t, results[1].Err)
	require.Equal(t, []string{"four.dxf", "four.svg"}, names(t, dir))
}

func TestAFolderWithoutRights(t *testing.T) {
	if os.Getuid() == 0 {
		t.Skip("this user may write everywhere")
	}
	dir := t.TempDir()
	require.NoError(t, os.Chmod(dir, 0o500))
	results, err := Export(accept.Sheet(), "four", dir, pictures(t), Options{}, nil)
	require.NoError(t, err)
	for _, r := range results {
		require.ErrorContains(t, r.Err, "you may not do that here")
	}
	require.Empty(t, names(t, dir))
}

// A fault of ours in one format is that file's trouble alone.
func TestABrokenFormat(t *testing.T) {
	dir := t.TempDir()
	broken := Format{ID: "broken", files: func(request) []file {
		return []file{{"four.broken", func(io.Writer, func(string)) error { panic("a shelf fell") }}}
	}}
	results, err := Export(accept.Sheet(), "four", dir, append([]Format{broken}, pictures(t)...), Options{}, nil)
	require.NoError(t, err)
	require.ErrorContains(t, results[0].Err, "a shelf fell")
	require.ErrorIs(t, results[0].Err, errBroken)
	require.Equal(t, []string{"four.dxf", "four.svg"}, names(t, dir))
}

func TestWhatMovedNeedsADraftBefore(t *testing.T) {
	after := accept.Dress(pattern.Measured)
	asked, err := Parse("moved")
	require.NoError(t, err)
	dir := t.TempDir()
	_, err = Export(after, "four", dir, asked, Options{}, nil)
	require.ErrorContains(t, err, "--format: moved; no draft before this one is known")
	require.Empty(t, names(t, dir))

	all, err := Parse(All)
	require.NoError(t, err)
	_, err = Export(after, "four", dir, all, Options{}, nil)
	require.NoError(t, err)
	require.NotContains(t, names(t, dir), "four-moved.md", "all leaves it out where nothing is known")

	asked, err = Parse("moved")
	require.NoError(t, err)
	results, err := Export(after, "four", dir, asked, Options{Before: accept.Dress(pattern.Measured)}, nil)
	require.NoError(t, err)
	require.NoError(t, results[0].Err)
	require.Contains(t, names(t, dir), "four-moved.md")
}

func TestNumbersOnTheLessonPageWhenAskedFor(t *testing.T) {
	asked, err := Parse("lesson")
	require.NoError(t, err)
	for _, numbers := range []bool{false, true} {
		results, err := Export(accept.Dress(pattern.Measured), "four", t.TempDir(), asked, Options{Numbers: numbers}, nil)
		require.NoError(t, err)
		data, err := os.ReadFile(results[0].Path)
		require.NoError(t, err)
		require.Equal(t, numbers, strings.Contains(string(data), "bust 36 / 4"))
		require.NotContains(t, string(data), "Learner Four")
	}
}
