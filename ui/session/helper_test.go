package session

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// sample is a session with everything in it, and things of others.
const sample = `# for the spring class
form = 1
unit = "in"

[client]
name = "Learner Four"   # as she signs
measured = 2026-03-04
measured_by = ""
shoes = "flat"
notes = "asks for pockets"

[body]   # taken twice
bust_girth = "36 1/2"     # over the usual bra
waist_girth = 28
hip_girth = '96,5 cm'
mystery_girth = "9 3/4"   # an unknown measurement

[body_left]
shoulder_length = "4 5/8"

[style]
garment = "dress"
method = "measured"
front_neck_depth = "4 1/2"

[confirmed]
waist_girth = "28"

[cloth.main]
width = "58 in"
edges = "1/2"
fold = "lengthwise"
nap = false
shrink_along = 3.0
price = 12.5
flaws = [["10", "4", "1", "1"]]
step = "1/8"
stripe = "centre"
colour = "grey"

[lay.main]
width = "58 in"
pins = []

[[fitting]]
date = 2026-03-20
seen = "front armhole gapes"
change = { dart_extra = "1/4", ease_bust = 2.25 }
why = "pinched 1/4 each side"

# the year before
[[earlier]]
measured = 2025-11-02
body = { bust_girth = "36" }

[lesson]
back = 7

[studio]            # an unknown table
shelf = "B 7"
boxes = [1, 2, 3]   # and a list

[studio.more]
"odd key é" = 2026-01-02

[[bolt]]
name = "grey wool"
`

func parse(t *testing.T, text string) *Session {
	t.Helper()
	s, err := Parse("four.chalkfold.toml", []byte(text))
	require.NoError(t, err)
	return s
}

// refusals are the faults of a text, one line each.
func refusals(t *testing.T, text string) []string {
	t.Helper()
	_, err := Parse("four.chalkfold.toml", []byte(text))
	if err == nil {
		return nil
	}
	return strings.Split(err.Error(), "\n")
}

// home gives the test folders of its own.
func home(t *testing.T) string {
	t.Helper()
	dir := t.TempDir()
	t.Setenv("HOME", dir)
	t.Setenv("XDG_STATE_HOME", filepath.Join(dir, "state"))
	return dir
}

func write(t *testing.T, path, text string) {
	t.Helper()
	require.NoError(t, os.WriteFile(path, []byte(text), 0o644))
}
