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

// TestPicturesAreMadeByTheProgram: each picture is a shot of the program that
// makes them, light and dark among them, and README shows no other.
func TestPicturesAreMadeByTheProgram(t *testing.T) {
	source, err := os.ReadFile("../testdata/pictures/main.go")
	require.NoError(t, err)
	text, err := os.ReadFile(readme)
	require.NoError(t, err)
	shots, themes := map[string]bool{}, map[string]bool{}
	for _, m := range regexp.MustCompile(`(?m)^\t\{"([a-z-]+)", \d+, \d+, "([a-z]+)"`).FindAllStringSubmatch(string(source), -1) {
		shots[m[1]+".svg"], themes[m[2]] = true, true
	}
	require.Greater(t, len(shots), 3)
	require.True(t, themes["light"] && themes["dark"])
	made, err := filepath.Glob("../testdata/pictures/*.svg")
	require.NoError(t, err)
	require.Len(t, made, len(shots))
	for _, path := range made {
		name := filepath.Base(path)
		require.True(t, shots[name], "%s is no shot of the program", name)
		svg, err := os.ReadFile(path)
		require.NoError(t, err)
		require.True(t, strings.HasPrefix(string(svg), "<svg"), name)
	}
	for _, m := range regexp.MustCompile(`testdata/[a-z]+/([a-zA-Z0-9-]+\.(svg|png|jpg|gif))`).FindAllStringSubmatch(string(text), -1) {
		require.True(t, shots[m[1]], "README shows %s, which no program made", m[1])
	}
}
