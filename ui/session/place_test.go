package session

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/pattern"
)

// Leaving a lesson without a save loses nothing: the next Open goes on there.
func TestThePlaceInALessonIsKept(t *testing.T) {
	dir := t.TempDir()
	t.Setenv("XDG_STATE_HOME", filepath.Join(dir, "state"))
	path := filepath.Join(dir, "anna.chalkfold.toml")
	require.NoError(t, New(path, pattern.Job{}).Save(pattern.Job{}))
	s, err := Open(path)
	require.NoError(t, err)
	require.Empty(t, s.Learnt())
	s.Learn("back", 4)
	s.KeepPlace()

	again, err := Open(path)
	require.NoError(t, err)
	require.Equal(t, map[string]int{"back": 4}, again.Learnt())
	require.NoError(t, again.Save(again.Job))
	require.NoError(t, os.RemoveAll(filepath.Join(dir, "state")))
	again, err = Open(path)
	require.NoError(t, err)
	require.Equal(t, map[string]int{"back": 4}, again.Learnt(), "the save wrote it into the file")

	other, err := Open(path)
	require.NoError(t, err)
	other.Learn("back", 2)
	require.Equal(t, 4, other.Learnt()["back"], "earlier pages lose nothing")
}

// The sample client has no file and keeps her place all the same; a new
// client has none.
func TestThePlaceOfTheSampleClient(t *testing.T) {
	t.Setenv("XDG_STATE_HOME", t.TempDir())
	s := New("", Demo().Job)
	s.Learn("tape", 3)
	s.KeepPlace()
	fresh := New("", pattern.Job{})
	fresh.Learn("tape", 9)
	fresh.KeepPlace()
	fresh = New("", pattern.Job{})
	fresh.ResumePlace()
	require.Empty(t, fresh.Learnt())
	s = New("", Demo().Job)
	s.ResumePlace()
	require.Equal(t, map[string]int{"tape": 3}, s.Learnt())
	require.NoError(t, os.WriteFile(placesFile(), []byte("{"), 0o600))
	s = New("", Demo().Job)
	s.ResumePlace()
	require.Empty(t, s.Learnt(), "what cannot be read is as if it was not there")
}
