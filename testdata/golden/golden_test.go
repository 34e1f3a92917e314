package golden_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/testdata/golden"
)

func TestDiff(t *testing.T) {
	for _, c := range []struct{ name, want, got, diff string }{
		{"same", "a\nb", "a\nb", ""},
		{"changed", "a\nb\nc", "a\nx\nc", "   2 - b\n   2 + x"},
		{"put in", "a\nc", "a\nb\nc", "   2 + b"},
		{"left out", "a\nb\nc", "a\nc", "   2 - b"},
		{"longer", "a", "a\nb", "   2 + b"},
		{"all other", "a\nb", "x\ny", "   1 - a\n   1 + x\n   2 - b\n   2 + y"},
	} {
		require.Equal(t, c.diff, golden.Diff(c.want, c.got), c.name)
	}
}

func TestDiffIsShort(t *testing.T) {
	long := ""
	for range 100 {
		long += "line\n"
	}
	require.Contains(t, golden.Diff("", long), "more")
	require.Less(t, len(golden.Diff("", long)), 400)
}

// witness stands in for a test, to see whether Check fails it.
type witness struct {
	testing.TB
	failed bool
}

func (w *witness) Helper()               {}
func (w *witness) Errorf(string, ...any) { w.failed = true }
func (w *witness) Fatalf(string, ...any) { w.failed = true }

func TestCheck(t *testing.T) {
	golden.Check(t, "greeting.txt", "chalk\nand\nfold\n")
	w := &witness{TB: t}
	golden.Check(w, "greeting.txt", "chalk\nor\nfold\n")
	require.True(t, w.failed)
}
