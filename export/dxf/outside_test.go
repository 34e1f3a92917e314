package dxf

import (
	"bytes"
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/export"
	"chalkfold/export/accept"
	"chalkfold/pattern"
)

func TestOutsideReader(t *testing.T) {
	for _, o := range []export.Options{{}, {Whole: true}} {
		d := export.New(accept.Sheet(), o)
		var b bytes.Buffer
		require.NoError(t, Write(&b, d, Options{English: o.Whole}))
		accept.Python(t, "outside.py", "page.dxf", b.Bytes(), accept.Expected(d), "ezdxf", "shapely")
	}
}

func TestOutsideReaderOfADress(t *testing.T) {
	for _, method := range []string{pattern.Measured, pattern.Thumb} {
		d := export.New(accept.Dress(method), export.Options{})
		accept.Python(t, "outside.py", "page.dxf", accept.Bytes(t, write, d), accept.Expected(d), "ezdxf", "shapely")
	}
}

// A second reader of other ancestry, where the folder with it is named.
func TestSecondReader(t *testing.T) {
	folder := os.Getenv("CHALKFOLD_NODE")
	if folder == "" {
		t.Skip("CHALKFOLD_NODE names no folder with dxf-parser")
	}
	node := accept.Tool(t, "node")
	path := filepath.Join(t.TempDir(), "page.dxf")
	d := export.New(accept.Sheet(), export.Options{})
	require.NoError(t, os.WriteFile(path, accept.Bytes(t, write, d), 0o600))
	script := `const P = require("dxf-parser"), fs = require("fs");
const d = new (P.DxfParser || P.default || P)().parseSync(fs.readFileSync(process.argv[1], "latin1"));
const b = d.blocks.FRONT_1, on = (l, k) => b.entities.filter(e => e.layer === l && e.type === k);
console.log(Object.keys(d.blocks).length, on("1", "POLYLINE").length, on("1", "POLYLINE")[0].shape, on("4", "POINT").length, on("7", "LINE").length);`
	cmd := exec.Command(node, "-e", script, path)
	cmd.Dir = folder
	cmd.Env = append(os.Environ(), "NODE_PATH="+filepath.Join(folder, "node_modules"))
	out, err := cmd.CombinedOutput()
	require.NoError(t, err, "%s", out)
	require.Equal(t, "2 1 true 1 1\n", string(out))
}
