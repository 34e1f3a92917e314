package session

import "strings"

// Suffixed is a path with the ending of session files; one that has an ending
// of its own keeps it.
func Suffixed(path string) string {
	if strings.HasSuffix(path, ".toml") {
		return path
	}
	return path + Suffix
}
