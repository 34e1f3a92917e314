package session

import (
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/pattern"
)

// dead is the number of a process that has ended.
func dead(t *testing.T) int {
	t.Helper()
	c := exec.Command(os.Args[0], "-test.run=^$")
	require.NoError(t, c.Run())
	return c.ProcessState.Pid()
}

// orphan makes the copies of this process those of a dead one.
func orphan(t *testing.T) {
	t.Helper()
	names, err := os.ReadDir(RescueDir())
	require.NoError(t, err)
	pid := strconv.Itoa(dead(t))
	for _, n := range names {
		other := strings.Replace(n.Name(), "-"+strconv.Itoa(os.Getpid())+".", "-"+pid+".", 1)
		require.NoError(t, os.Rename(filepath.Join(RescueDir(), n.Name()), filepath.Join(RescueDir(), other)))
	}
}

func TestRescue(t *testing.T) {
	dir := home(t)
	path := filepath.Join(dir, "four"+Suffix)
	write(t, path, sample)
	s, err := Open(path)
	require.NoError(t, err)
	job := s.Job.WithBody("bust_girth", in("37 1/4")).WithStyle("method", pattern.PickValue("thumb"))
	require.NoError(t, s.WriteRescue(job))
	require.NoError(t, s.WriteRescue(job))
	require.Empty(t, FindRescues(), "this process lives")
	orphan(t)
	found := FindRescues()
	require.Len(t, found, 1)
	r := found[0]
	require.Equal(t, path, r.Path)
	require.Equal(t, "Learner Four", r.Client)
	require.Equal(t, job, r.Job)
	require.False(t, r.Saved.IsZero())
	require.Equal(t, []string{"bust girth 36 1/2 in -> 37 1/4 in", `Method "measured" -> "thumb"`}, r.Differs)
	info, err := os.Stat(r.File)
	require.NoError(t, err)
	require.EqualValues(t, 0o600, info.Mode().Perm())

	taken := r.Session()
	require.Equal(t, job, taken.Job)
	require.True(t, taken.Changed(taken.Job))
	require.NoError(t, taken.Save(taken.Job))
	text, err := os.ReadFile(path)
	require.NoError(t, err)
	require.NotContains(t, string(text), "[rescued]")
	r.Drop()
	require.Empty(t, FindRescues())
}

func TestRescueWithoutFile(t *testing.T) {
	home(t)
	a, b := New("", pattern.Job{}), New("", pattern.Job{})
	require.NoError(t, a.WriteRescue(pattern.Job{}.WithBody("height", 1700)))
	require.NoError(t, b.WriteRescue(pattern.Job{}))
	names, err := os.ReadDir(RescueDir())
	require.NoError(t, err)
	require.Len(t, names, 2, "each has its own")
	b.DropRescue()
	orphan(t)
	found := FindRescues()
	require.Len(t, found, 1)
	require.Empty(t, found[0].Path)
	require.Equal(t, 1, found[0].Session().Job.Body.Len())
}

func TestForeignFilesAmongRescues(t *testing.T) {
	home(t)
	require.NoError(t, os.MkdirAll(RescueDir(), 0o700))
	write(t, filepath.Join(RescueDir(), "notes.txt"), "x")
	write(t, filepath.Join(RescueDir(), "ab-"+strconv.Itoa(dead(t))+Suffix), "broken")
	require.Empty(t, FindRescues())
}

func TestRecent(t *testing.T) {
	dir := home(t)
	require.Empty(t, Recent())
	job := parse(t, sample).Job
	Remember(filepath.Join(dir, "a"), job)
	Remember(filepath.Join(dir, "b"), pattern.Job{})
	Remember(filepath.Join(dir, "a"), job)
	got := Recent()
	require.Len(t, got, 2)
	require.Equal(t, "Learner Four", got[0].Name)
	require.Equal(t, 3, got[0].Taken)
	for range 60 {
		Remember(filepath.Join(dir, strconv.Itoa(len(Recent()))), job)
	}
	require.Len(t, Recent(), mostRecent)
	write(t, recentFile(), "{broken")
	require.Empty(t, Recent())
}

func TestStem(t *testing.T) {
	for path, want := range map[string]string{"a/four.chalkfold.toml": "four", "four.toml": "four", "-": "session", "four": "four", ".chalkfold.toml": ".chalkfold"} {
		require.Equal(t, want, Stem(path), path)
	}
}

func TestNearest(t *testing.T) {
	known := []string{"bust_girth", "waist_girth", "pieces", "check"}
	for word, want := range map[string]string{"peices": "pieces", "bustgirth": "bust_girth", "chek": "check", "umbrella": "", "x": ""} {
		require.Equal(t, want, Nearest(word, known), word)
	}
}

// Saving and rescuing beside each other: go test -race looks on.
func TestSaveBesideRescue(t *testing.T) {
	dir := home(t)
	path := filepath.Join(dir, "four"+Suffix)
	write(t, path, sample)
	s, err := Open(path)
	require.NoError(t, err)
	job := s.Job.WithBody("bust_girth", in("37 1/4"))
	done := make(chan error)
	go func() { done <- s.WriteRescue(job) }()
	require.NoError(t, s.Save(job))
	require.NoError(t, <-done)
	s.DropRescue()
}
