package shell

import (
	"bytes"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/export/accept"
	"chalkfold/pattern"
	"chalkfold/ui/session"
)

// called is what a call prints.
func called(t *testing.T, args ...string) string {
	t.Helper()
	var out, err bytes.Buffer
	home := t.TempDir()
	env := func(name string) string { return map[string]string{"HOME": home, "LANG": "C.UTF-8"}[name] }
	require.Equal(t, Done, Main(args, strings.NewReader(""), &out, &err, env), "%s", err.String())
	return out.String()
}

// demoIn writes the demo session by a method into a folder of the test.
func demoIn(t *testing.T, method string) (dir, file string) {
	t.Helper()
	dir = t.TempDir()
	file = filepath.Join(dir, "demo.chalkfold.toml")
	s := session.Demo()
	s.Path = ""
	require.NoError(t, s.SaveAs(file, s.Job.WithStyle(pattern.Method, pattern.PickValue(method))))
	return dir, file
}

// SVG, DXF and PDF hold the pieces that `pieces --json` tells of: areas and
// extents within 0.05 per cent, read by three readers that are not ours.
func TestFormatsAgree(t *testing.T) {
	const python = "/usr/bin/python3"
	if out, err := exec.Command(python, "-c", "import ezdxf, shapely").CombinedOutput(); err != nil {
		t.Skipf("outside readers are not here: %s", out)
	}
	mutool := accept.Tool(t, "mutool")
	for _, method := range []string{pattern.Measured, pattern.Thumb} {
		dir, file := demoIn(t, method)
		called(t, "export", file, "--format", "svg,dxf,pdf", "--out", dir)
		require.NoError(t, os.WriteFile(filepath.Join(dir, "pieces.json"), []byte(called(t, "pieces", file, "--json")), 0o600))
		trace, err := exec.Command(mutool, "trace", filepath.Join(dir, "demo.pdf")).Output()
		require.NoError(t, err)
		require.NoError(t, os.WriteFile(filepath.Join(dir, "trace.xml"), trace, 0o600))
		out, err := exec.Command(python, "-B", filepath.Join("testdata", "agree.py"), filepath.Join(dir, "pieces.json"),
			filepath.Join(dir, "demo.svg"), filepath.Join(dir, "demo.dxf"), filepath.Join(dir, "trace.xml")).CombinedOutput()
		require.NoError(t, err, "%s: %s", method, out)
		t.Logf("%s: %s", method, out)
	}
}

// Two readers that are not ours find nothing to mend in any PDF of the demo.
func TestPDFIsClean(t *testing.T) {
	qpdf, mutool := accept.Tool(t, "qpdf"), accept.Tool(t, "mutool")
	for _, method := range []string{pattern.Measured, pattern.Thumb} {
		dir, file := demoIn(t, method)
		called(t, "export", file, "--format", "all", "--out", dir)
		list, err := filepath.Glob(filepath.Join(dir, "*.pdf"))
		require.NoError(t, err)
		require.Greater(t, len(list), 6)
		for _, pdf := range list {
			out, err := exec.Command(qpdf, "--check", pdf).CombinedOutput()
			require.NoError(t, err, "%s", out)
			require.NotContains(t, strings.ToLower(string(out)), "warning")
			clean := filepath.Join(t.TempDir(), "clean.pdf")
			out, err = exec.Command(mutool, "clean", "-s", pdf, clean).CombinedOutput()
			require.NoError(t, err, "%s", out)
			require.Empty(t, strings.TrimSpace(string(out)), filepath.Base(pdf))
			require.FileExists(t, clean)
		}
	}
}
