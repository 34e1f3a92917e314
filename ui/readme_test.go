package ui_test

import (
	"flag"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"chalkfold/ui/desk"

	"github.com/stretchr/testify/require"
)

const readme = "../README.md"

var section = regexp.MustCompile(`(?s)(<!-- keys -->\n).*?(<!-- /keys -->)`)

// TestReadmeKeys holds README's key table to the key table of the program;
// -update writes it anew.
func TestReadmeKeys(t *testing.T) {
	text, err := os.ReadFile(readme)
	require.NoError(t, err)
	want := section.ReplaceAllString(string(text), "${1}"+strings.ReplaceAll(desk.Keys().Markdown(), "$", "$$")+"${2}")
	if f := flag.Lookup("update"); f != nil && f.Value.String() == "true" {
		require.NoError(t, os.WriteFile(readme, []byte(want), 0o644))
		return
	}
	require.Equal(t, want, string(text), "README's key table is not the program's: run this test with -update")
}

// TestReadmePictures: every picture that README shows is there.
func TestReadmePictures(t *testing.T) {
	text, err := os.ReadFile(readme)
	require.NoError(t, err)
	shown := regexp.MustCompile(`\(?(testdata/pictures/[a-z0-9-]+\.svg)`).FindAllStringSubmatch(string(text), -1)
	require.NotEmpty(t, shown)
	for _, s := range shown {
		_, err := os.Stat(filepath.Join("..", s[1]))
		require.NoError(t, err, s[1])
	}
}
