package files

import (
	"os"
	"strings"
)

// Expand is a typed path with ~ made the home folder.
func Expand(typed string) string {
	if typed == "~" || strings.HasPrefix(typed, "~/") {
		if home, err := os.UserHomeDir(); err == nil {
			return home + typed[1:]
		}
	}
	return typed
}

// Shown is a path as it is shown: what lies in the home folder begins with ~,
// which is shorter and says whose it is. Expand reads it back.
func Shown(path string) string {
	home, err := os.UserHomeDir()
	if err != nil || len(home) < 2 {
		return path
	}
	home = strings.TrimRight(home, "/\\")
	rest, in := strings.CutPrefix(path, home)
	if !in || rest != "" && rest[0] != '/' {
		return path
	}
	return "~" + rest
}
