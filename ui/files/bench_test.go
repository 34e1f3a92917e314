package files

import (
	"path/filepath"
	"strconv"
	"testing"
)

func BenchmarkSave(b *testing.B) {
	path := filepath.Join(b.TempDir(), "a.toml")
	n := 0
	for b.Loop() {
		n++
		if err := Write(path, []byte(strconv.Itoa(n)), Options{Previous: true}); err != nil {
			b.Fatal(err)
		}
	}
}
