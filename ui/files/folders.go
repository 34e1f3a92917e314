package files

import (
	"errors"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"runtime"
	"strings"
)

// name is the folder of our own inside each of the user's folders.
const name = "chalkfold"

// Folders are the places for files that nobody chose a place for.
type Folders struct {
	Config string // settings, changed keys
	State  string // rescue copies, recent clients, log
	Data   string // what the user adds
	Cache  string // may be emptied at any time
}

// Paths finds the folders by the XDG Base Directory Specification 0.8; the
// XDG variables count on every system, also where its own habit is another.
// Nothing is made or looked at.
func Paths(env func(string) string) (Folders, error) { return pathsOn(runtime.GOOS, env) }

func pathsOn(system string, env func(string) string) (Folders, error) {
	home := env("HOME")
	if home == "" && system == "windows" {
		home = env("USERPROFILE")
	}
	var own [4]string
	switch system {
	case "windows":
		roaming, local := env("APPDATA"), env("LOCALAPPDATA")
		if roaming == "" && home != "" {
			roaming = home + `\AppData\Roaming`
		}
		if local == "" && home != "" {
			local = home + `\AppData\Local`
		}
		own = [4]string{roaming, local, roaming, local}
	case "darwin":
		support := under(home, "Library/Application Support")
		own = [4]string{support, support, support, under(home, "Library/Caches")}
	default:
		own = [4]string{under(home, ".config"), under(home, ".local/state"), under(home, ".local/share"), under(home, ".cache")}
	}
	for i, key := range [4]string{"XDG_CONFIG_HOME", "XDG_STATE_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME"} {
		// The specification lets only absolute paths count.
		if dir := env(key); absolute(system, dir) {
			own[i] = dir
		}
		if own[i] == "" {
			return Folders{}, &Trouble{Path: key, Wrong: "there is no home folder to go by", Works: "set HOME, or " + key, Err: fs.ErrNotExist}
		}
	}
	slash := "/"
	if system == "windows" {
		slash = `\`
	}
	f := Folders{own[0] + slash + name, own[1] + slash + name, own[2] + slash + name, own[3] + slash + name}
	if system == "windows" {
		// One folder there holds both, so the cache gets one inside.
		f.Cache += `\cache`
	}
	return f, nil
}

func under(home, sub string) string {
	if home == "" {
		return ""
	}
	return path.Join(home, sub)
}

func absolute(system, dir string) bool {
	if system == "windows" {
		return len(dir) > 2 && dir[1] == ':' && (dir[2] == '\\' || dir[2] == '/') || strings.HasPrefix(dir, `\\`)
	}
	return path.IsAbs(dir)
}

// Folder makes a folder and those above it, for the user alone.
func Folder(dir string) error {
	if err := os.MkdirAll(dir, 0o700); err != nil {
		return trouble(dir, err)
	}
	return nil
}

// Remove takes a file away; one that is not there is no trouble.
func Remove(path string) error {
	if err := os.Remove(path); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return trouble(path, err)
	}
	return nil
}

func folderOf(path string) string { return filepath.Dir(path) }
