package files

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// What a killed process left is taken away; what a running one writes, what
// another machine may still write, and all other files stay.
func TestSweep(t *testing.T) {
	dead := exec.Command(os.Args[0], "-test.run=^$")
	require.NoError(t, dead.Run())
	dir := t.TempDir()
	part := func(mark string, age time.Duration) string {
		path := filepath.Join(dir, fmt.Sprintf(".a.toml.%s.0000abcd.part", mark))
		put(t, path, "half", 0o600)
		then := time.Now().Add(-age)
		require.NoError(t, os.Chtimes(path, then, then))
		return path
	}
	gone := []string{
		part(fmt.Sprintf("%s-%d", machine(), dead.Process.Pid), 0),
		part("ffffffff-1", 2*left),
	}
	kept := []string{part(ownMark(), 2*left), part("ffffffff-2", time.Minute)}
	for _, name := range []string{".hers.part", "a.toml", ".a.toml.1234.part"} {
		path := filepath.Join(dir, name)
		put(t, path, "hers", 0o600)
		kept = append(kept, path)
	}
	require.NoError(t, os.Mkdir(filepath.Join(dir, ".b.ffffffff-3.0000abcd.part"), 0o700))

	_, err := Save(filepath.Join(dir, "new.toml"), []byte("x"), Stamp{}, Options{})
	require.NoError(t, err)
	for _, path := range gone {
		require.NoFileExists(t, path)
	}
	for _, path := range kept {
		require.FileExists(t, path)
	}
	require.DirExists(t, filepath.Join(dir, ".b.ffffffff-3.0000abcd.part"))
	Sweep(filepath.Join(dir, "nowhere"))
}
