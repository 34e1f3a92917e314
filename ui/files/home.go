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
