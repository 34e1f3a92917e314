package ui_test

import (
	"encoding/json"
	"errors"
	"io"
	"os"
	"os/exec"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// TestHouse holds every package's imports to the table of rooms in
// DEVELOPERS.md: a room knows only what its row names.
func TestHouse(t *testing.T) {
	rooms := readRooms(t)
	list := exec.Command("go", "list", "-json=ImportPath,Imports", "chalkfold/...")
	out, err := list.StdoutPipe()
	require.NoError(t, err)
	require.NoError(t, list.Start())
	dec := json.NewDecoder(out)
	seen := map[string]bool{}
	for {
		var p struct {
			ImportPath string
			Imports    []string
		}
		if err := dec.Decode(&p); errors.Is(err, io.EOF) {
			break
		} else {
			require.NoError(t, err)
		}
		room := strings.TrimPrefix(p.ImportPath, "chalkfold/")
		if room == "chalkfold" || strings.HasPrefix(room, "testdata") {
			continue
		}
		row, knows, ok := rowFor(rooms, room)
		require.True(t, ok, "%s stands in no row of DEVELOPERS.md", room)
		seen[row] = true
		for _, i := range p.Imports {
			i, own := strings.CutPrefix(i, "chalkfold/")
			require.True(t, !own || i == row || knows(i), "%s imports %s, which its row does not name", room, i)
		}
	}
	require.NoError(t, list.Wait())
	for row := range rooms {
		if !strings.Contains(row, "*") {
			require.True(t, seen[row], "DEVELOPERS.md has a row for %s; there is no such room", row)
		}
	}
}

var tick = regexp.MustCompile("`([^`]+)`")

// readRooms reads the rows "| `room` | holds | `knows`, `knows` |".
func readRooms(t *testing.T) map[string][]string {
	text, err := os.ReadFile("../DEVELOPERS.md")
	require.NoError(t, err)
	rooms := map[string][]string{}
	for line := range strings.SplitSeq(string(text), "\n") {
		cells := strings.Split(line, "|")
		if len(cells) != 5 || !strings.HasPrefix(strings.TrimSpace(cells[1]), "`") {
			continue
		}
		name := tick.FindStringSubmatch(cells[1])[1]
		rooms[name] = []string{}
		for _, m := range tick.FindAllStringSubmatch(cells[3], -1) {
			rooms[name] = append(rooms[name], m[1])
		}
	}
	require.Greater(t, len(rooms), 20, "the table of rooms was not found")
	return rooms
}

// rowFor finds the row of a room: its own, or that of "parent/*".
func rowFor(rooms map[string][]string, room string) (string, func(string) bool, bool) {
	row := room
	names, ok := rooms[room]
	if !ok {
		if at := strings.LastIndex(room, "/"); at > 0 {
			row = room[:at] + "/*"
			names, ok = rooms[row]
		}
	}
	knows := func(other string) bool {
		for _, n := range names {
			if n == "*" || n == other || strings.HasSuffix(n, "/*") && strings.HasPrefix(other, strings.TrimSuffix(n, "*")) {
				return true
			}
		}
		return false
	}
	return row, knows, ok
}
