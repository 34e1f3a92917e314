//go:build unix

package classroom

import (
	"path/filepath"
	"syscall"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/ui/session"
)

// A pipe that nobody writes into would never end.
func TestPipe(t *testing.T) {
	dir := t.TempDir()
	if err := syscall.Mkfifo(filepath.Join(dir, "pipe"+session.Suffix), 0o600); err != nil {
		t.Skip("no pipes here:", err)
	}
	c, err := Folder(dir)
	require.NoError(t, err)
	require.Contains(t, c.Rows[0].Trouble, "no plain file")
}
