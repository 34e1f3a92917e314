package classroom

import (
	"os"
	"path/filepath"
	"runtime"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/ui/session"
)

func TestFolder(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "four"+session.Suffix)
	require.NoError(t, os.WriteFile(path, session.DemoText(), 0o400))
	require.NoError(t, os.Mkdir(filepath.Join(dir, "empty"), 0o700))
	c, err := Folder(dir)
	require.NoError(t, err)
	require.Len(t, c.Rows, 1)
	require.True(t, c.Fine())
	c, err = Folder(filepath.Join(dir, "empty"))
	require.NoError(t, err)
	require.Empty(t, c.Rows)

	list, err := os.ReadDir(dir)
	require.NoError(t, err)
	require.Len(t, list, 2, "nothing was written")
	after, err := os.ReadFile(path)
	require.NoError(t, err)
	require.Equal(t, session.DemoText(), after)

	for at, want := range map[string]string{
		path:                        path + ": this is a file, not a folder; name the folder it lies in: " + dir,
		filepath.Join(dir, "none"):  filepath.Join(dir, "none") + ": there is no such folder; look at the name",
		filepath.Join(dir, "\x1bx"): dir + `/\u001bx: there is no such folder; look at the name`,
	} {
		if runtime.GOOS == "windows" && filepath.Base(at) == "\x1bx" {
			continue
		}
		_, err := Folder(at)
		var r *measure.Refusal
		require.ErrorAs(t, err, &r, at)
		require.Equal(t, want, err.Error())
	}
	_, err = Folder(filepath.Join(path, "below"))
	require.Error(t, err)
}

// What only looks like a session has its row and keeps nobody waiting.
func TestOddFiles(t *testing.T) {
	dir := t.TempDir()
	lost := filepath.Join(dir, "lost"+session.Suffix)
	if err := os.Symlink(filepath.Join(dir, "nowhere"), lost); err != nil {
		t.Skip("links cannot be made here:", err)
	}
	require.NoError(t, os.WriteFile(filepath.Join(dir, "real"), session.DemoText(), 0o600))
	require.NoError(t, os.Symlink(filepath.Join(dir, "real"), filepath.Join(dir, "linked"+session.Suffix)))
	require.NoError(t, os.Symlink(dir, filepath.Join(dir, "round"+session.Suffix)))
	named := os.WriteFile(filepath.Join(dir, "zo\xeb"+session.Suffix), session.DemoText(), 0o600) == nil
	c, err := Folder(dir)
	require.NoError(t, err)
	require.Equal(t, "Maro Tellin", c.Rows[0].Client, "a link is followed")
	require.Equal(t, "lost"+session.Suffix+": there is a name, but no file behind it; look where the link leads", c.Rows[1].Trouble)
	require.Contains(t, c.Rows[2].Trouble, "no plain file")
	if named {
		require.Contains(t, c.Rows[3].Trouble, "no text in UTF-8")
	}
}
