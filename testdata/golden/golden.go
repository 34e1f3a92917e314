// Package golden compares what a test got with a file that a person has read
// and found right. It is for tests alone and knows nothing of the trade.
//
//	golden.Check(t, "card.txt", got) // compares with testdata/card.txt
//
// Run the tests with -update to write the files anew, then read what changed.
package golden

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

var update = flag.Bool("update", false, "write the golden files anew")

// shown is how many differing lines a failure prints: enough to see what is
// going on, few enough to read.
const shown = 12

// Check fails the test unless got is what testdata/NAME beside it holds.
func Check(t testing.TB, name, got string) {
	t.Helper()
	path := filepath.Join("testdata", filepath.FromSlash(name))
	if *update {
		write(t, path, got)
		return
	}
	want, err := os.ReadFile(path)
	if err != nil {
		t.Fatalf("%v; run this test with -update to write it", err)
	}
	if string(want) != got {
		t.Errorf("%s differs (- file, + now; -update writes it anew):\n%s", path, Diff(string(want), got))
	}
}

func write(t testing.TB, path, got string) {
	t.Helper()
	if old, err := os.ReadFile(path); err == nil && string(old) == got {
		return
	}
	if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
		t.Fatal(err)
	}
}

// Diff lists the lines that differ, with their numbers. It pairs lines again
// after something was put in or left out, but looks only a little way ahead:
// it is for reading, not for patching.
func Diff(want, got string) string {
	a, b := strings.Split(want, "\n"), strings.Split(got, "\n")
	var out []string
	for i, j := 0, 0; i < len(a) || j < len(b); {
		if i < len(a) && j < len(b) && a[i] == b[j] {
			i, j = i+1, j+1
			continue
		}
		skipA, skipB := meet(a[i:], b[j:])
		for ; skipA > 0; skipA-- {
			out = append(out, fmt.Sprintf("%4d - %s", i+1, a[i]))
			i++
		}
		for ; skipB > 0; skipB-- {
			out = append(out, fmt.Sprintf("%4d + %s", j+1, b[j]))
			j++
		}
	}
	if more := len(out) - shown; more > 0 {
		out = append(out[:shown], fmt.Sprintf("     and %d more", more))
	}
	return strings.Join(out, "\n")
}

// ahead is how far Diff looks for the place where both texts go on alike.
const ahead = 20

// meet is how many lines to skip in each so that both go on with the same one.
func meet(a, b []string) (int, int) {
	for n := 1; n <= ahead; n++ {
		for i := 0; i <= n; i++ {
			if j := n - i; i < len(a) && j < len(b) && a[i] == b[j] {
				return i, j
			}
		}
	}
	return min(1, len(a)), min(1, len(b))
}
