package files

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"
)

func env(pairs ...string) func(string) string {
	m := map[string]string{}
	for i := 0; i < len(pairs); i += 2 {
		m[pairs[i]] = pairs[i+1]
	}
	return func(k string) string { return m[k] }
}

func TestPaths(t *testing.T) {
	for _, tc := range []struct {
		name, system string
		env          []string
		want         Folders
	}{
		{
			"linux", "linux",
			[]string{"HOME", "/home/a"},
			Folders{"/home/a/.config/chalkfold", "/home/a/.local/state/chalkfold", "/home/a/.local/share/chalkfold", "/home/a/.cache/chalkfold"},
		},
		{
			"xdg", "linux",
			[]string{"XDG_CONFIG_HOME", "/c", "XDG_STATE_HOME", "/s", "XDG_DATA_HOME", "/d", "XDG_CACHE_HOME", "/k"},
			Folders{"/c/chalkfold", "/s/chalkfold", "/d/chalkfold", "/k/chalkfold"},
		},
		{
			"a relative one does not count", "linux",
			[]string{"HOME", "/home/a", "XDG_CONFIG_HOME", "c"},
			Folders{"/home/a/.config/chalkfold", "/home/a/.local/state/chalkfold", "/home/a/.local/share/chalkfold", "/home/a/.cache/chalkfold"},
		},
		{
			"mac", "darwin",
			[]string{"HOME", "/Users/a"},
			Folders{
				"/Users/a/Library/Application Support/chalkfold", "/Users/a/Library/Application Support/chalkfold",
				"/Users/a/Library/Application Support/chalkfold", "/Users/a/Library/Caches/chalkfold",
			},
		},
		{
			"mac with xdg", "darwin",
			[]string{"HOME", "/Users/a", "XDG_CONFIG_HOME", "/Users/a/.config"},
			Folders{
				"/Users/a/.config/chalkfold", "/Users/a/Library/Application Support/chalkfold",
				"/Users/a/Library/Application Support/chalkfold", "/Users/a/Library/Caches/chalkfold",
			},
		},
		{
			"windows", "windows",
			[]string{"USERPROFILE", `C:\Users\a`, "APPDATA", `C:\Users\a\AppData\Roaming`, "LOCALAPPDATA", `C:\Users\a\AppData\Local`},
			Folders{
				`C:\Users\a\AppData\Roaming\chalkfold`, `C:\Users\a\AppData\Local\chalkfold`,
				`C:\Users\a\AppData\Roaming\chalkfold`, `C:\Users\a\AppData\Local\chalkfold\cache`,
			},
		},
		{
			"windows, bare", "windows",
			[]string{"USERPROFILE", `C:\Users\a`},
			Folders{
				`C:\Users\a\AppData\Roaming\chalkfold`, `C:\Users\a\AppData\Local\chalkfold`,
				`C:\Users\a\AppData\Roaming\chalkfold`, `C:\Users\a\AppData\Local\chalkfold\cache`,
			},
		},
		{
			"windows with xdg", "windows",
			[]string{"USERPROFILE", `C:\Users\a`, "XDG_STATE_HOME", `D:\state`},
			Folders{
				`C:\Users\a\AppData\Roaming\chalkfold`, `D:\state\chalkfold`,
				`C:\Users\a\AppData\Roaming\chalkfold`, `C:\Users\a\AppData\Local\chalkfold\cache`,
			},
		},
	} {
		t.Run(tc.name, func(t *testing.T) {
			got, err := pathsOn(tc.system, env(tc.env...))
			require.NoError(t, err)
			require.Equal(t, tc.want, got)
		})
	}
	for _, system := range []string{"linux", "darwin", "windows"} {
		_, err := pathsOn(system, env())
		require.EqualError(t, err, "XDG_CONFIG_HOME: there is no home folder to go by; set HOME, or XDG_CONFIG_HOME")
	}
	f, err := Paths(env("HOME", "/home/a", "USERPROFILE", `C:\a`))
	require.NoError(t, err)
	require.NotEmpty(t, f.State)
}

func TestFolderAndRemove(t *testing.T) {
	dir := t.TempDir()
	deep := filepath.Join(dir, "a", "b")
	require.NoError(t, Folder(deep))
	require.NoError(t, Folder(deep))
	require.Equal(t, os.FileMode(0o700), mode(t, deep))
	file := filepath.Join(deep, "f")
	put(t, file, "x", 0o600)
	require.Error(t, Folder(file))
	require.NoError(t, Remove(file))
	require.NoError(t, Remove(file))
	require.Error(t, Remove(filepath.Dir(deep)), "a folder with something in it stays")
}

// What is shown with ~ is read back as it was, and nothing else is touched.
func TestShown(t *testing.T) {
	t.Setenv("HOME", "/home/anna")
	t.Setenv("USERPROFILE", "/home/anna")
	for path, want := range map[string]string{
		"/home/anna/clients/four.toml": "~/clients/four.toml", "/home/anna": "~", "/home/annabel/x": "/home/annabel/x", "/etc": "/etc", "": "", "x/home/anna": "x/home/anna",
	} {
		require.Equal(t, want, Shown(path))
		require.Equal(t, path, Expand(want))
	}
}
