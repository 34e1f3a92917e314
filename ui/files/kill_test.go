package files

import (
	"bytes"
	"fmt"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// page is a content that shows whether it is whole: a number and as many
// equal lines after it.
func page(n int) []byte {
	return append([]byte(fmt.Sprintf("%d\n", n)), bytes.Repeat([]byte(fmt.Sprintf("line of %d\n", n)), 5000)...)
}

// TestMain is also the program that TestKilled kills: one that saves without
// end.
func TestMain(m *testing.M) {
	if path := os.Getenv("CHALKFOLD_TEST_SAVES"); path != "" {
		for n := 1; ; n++ {
			if err := Write(path, page(n), Options{Previous: true}); err != nil {
				os.Exit(1)
			}
		}
	}
	os.Exit(m.Run())
}

// A program killed while it saves leaves the old or the new file, never a part
// of one.
func TestKilled(t *testing.T) {
	if testing.Short() {
		t.Skip("starts and kills programs")
	}
	self, err := os.Executable()
	require.NoError(t, err)
	path := filepath.Join(t.TempDir(), "a.toml")
	require.NoError(t, Write(path, page(0), Options{}))
	for range 20 {
		cmd := exec.Command(self)
		cmd.Env = append(os.Environ(), "CHALKFOLD_TEST_SAVES="+path)
		require.NoError(t, cmd.Start())
		time.Sleep(time.Duration(5+rand.IntN(25)) * time.Millisecond)
		require.NoError(t, cmd.Process.Kill())
		_ = cmd.Wait() // killed, so it has something to say
		for _, p := range []string{path, path + "~"} {
			got, err := os.ReadFile(p)
			if p != path && os.IsNotExist(err) {
				continue // killed before the first save
			}
			require.NoError(t, err)
			var n int
			_, err = fmt.Sscanf(string(got), "%d\n", &n)
			require.NoError(t, err)
			require.True(t, bytes.Equal(page(n), got), "%s is not whole: %d bytes of %d", p, len(got), n)
		}
	}
}
