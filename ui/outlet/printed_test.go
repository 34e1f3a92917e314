package outlet

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
)

func TestPrintedIsKeptByPaper(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "settings")
	across, along := Printed(dir, "a4")
	require.Zero(t, across+along)
	require.NoError(t, KeepPrinted(dir, "A4", 7.02*measure.Inch, 0))
	require.NoError(t, KeepPrinted(dir, "a4", 0, 9.97*measure.Inch))
	require.NoError(t, KeepPrinted(dir, "letter", 7.1*measure.Inch, 0))
	require.NoError(t, KeepPrinted(dir, "legal", 0, 0))
	across, along = Printed(dir, "a4")
	require.InDelta(t, 7.02*25.4, across.MM(), 1e-4)
	require.InDelta(t, 9.97*25.4, along.MM(), 1e-4)
	across, along = Printed(dir, "letter")
	require.InDelta(t, 7.1*25.4, across.MM(), 1e-4)
	require.Zero(t, along)
	across, along = Printed(dir, "legal")
	require.Zero(t, across+along)
	across, along = Printed("", "a4")
	require.Zero(t, across+along)
	require.NoError(t, KeepPrinted("", "a4", 7*measure.Inch, 0))
	require.Error(t, KeepPrinted(dir, "b5", 7*measure.Inch, 0))

	// What no printer makes counts as nothing, and what cannot be read is
	// neither used nor written over.
	path := filepath.Join(dir, printedFile)
	require.NoError(t, os.WriteFile(path, []byte("[a4]\nacross = 90.0\n"), 0o600))
	across, along = Printed(dir, "a4")
	require.Zero(t, across+along)
	require.NoError(t, os.WriteFile(path, []byte("[a4\n"), 0o600))
	across, along = Printed(dir, "a4")
	require.Zero(t, across+along)
	require.ErrorContains(t, KeepPrinted(dir, "a4", 7*measure.Inch, 0), "printed.toml: it cannot be read")
}
