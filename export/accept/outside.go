package accept

import (
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/export"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// Expect is what a reader that is not ours must find of one piece.
type Expect struct {
	ID      string       `json:"id"`
	OnFold  bool         `json:"on_fold"`
	Cut     [][2]float64 `json:"cut"` // closed outline, flattened finely, where it was placed
	Stitch  [][2]float64 `json:"stitch"`
	Sewn    float64      `json:"sewn"` // length of the stitch line, the fold left out
	Notches int          `json:"notches"`
	Darts   int          `json:"darts"`
	Holes   int          `json:"holes"`
	Edges   []Edge       `json:"edges"`
}

// Edge is a run of the stitch line with its allowance; zero where the
// allowance is no distance square to the line.
type Edge struct {
	Name      string       `json:"name"`
	Stitch    [][2]float64 `json:"stitch"`
	Allowance float64      `json:"allowance"`
}

// Expected makes the expectations of a drawing.
func Expected(d export.Drawing) []Expect {
	var out []Expect
	for _, p := range d.Pieces {
		e := Expect{
			ID: string(p.Piece.ID), OnFold: p.Piece.Fold != nil, Darts: len(p.Piece.Darts),
			Cut: fine(p.Piece.CutLine, p.Place), Stitch: fine(p.Piece.Stitch, p.Place),
		}
		for _, i := range p.Items {
			switch i.Role {
			case pattern.RoleStitch:
				e.Sewn += i.Path.Length()
			case pattern.RoleNotch:
				e.Notches++
			case pattern.RoleHole:
				e.Holes++
			}
		}
		for _, x := range p.Piece.Edges {
			if x.Role != pattern.RoleFold && x.Name != "hem" && len(x.Stitch) > 0 {
				a := x.Allowance.MM()
				if p.Piece.Included && curved(x.Stitch) {
					a = 0 // a level allowance: Allowance is its mean
				}
				e.Edges = append(e.Edges, Edge{x.Name, fine(x.Stitch, p.Place), a})
			}
		}
		out = append(out, e)
	}
	return out
}

func curved(p geom.Path) bool {
	for _, s := range p {
		if s.Curved {
			return true
		}
	}
	return false
}

func fine(p geom.Path, m geom.Matrix) [][2]float64 {
	points := p.Transform(m).Flatten(0.001)
	out := make([][2]float64, len(points))
	for i, q := range points {
		out[i] = [2]float64{q.X, q.Y}
	}
	return out
}

// Python runs a script of testdata with Debian's own Python, which has the
// outside readers, on a written file and its expectations. The test is
// skipped where the interpreter or a module is not there.
func Python(t *testing.T, script, name string, data []byte, want []Expect, modules ...string) {
	t.Helper()
	const python = "/usr/bin/python3"
	if out, err := exec.Command(python, "-c", "import "+strings.Join(modules, ", ")).CombinedOutput(); err != nil {
		t.Skipf("outside readers %v are not here: %s", modules, out)
	}
	dir := t.TempDir()
	path, expect := filepath.Join(dir, name), filepath.Join(dir, "want.json")
	j, err := json.Marshal(want)
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(path, data, 0o600))
	require.NoError(t, os.WriteFile(expect, j, 0o600))
	out, err := exec.Command(python, "-B", filepath.Join("testdata", script), path, expect).CombinedOutput()
	require.NoError(t, err, "%s", out)
	t.Logf("%s", out)
}

// Tool is the path of an outside tool; the test is skipped without it.
func Tool(t *testing.T, name string) string {
	t.Helper()
	path, err := exec.LookPath(name)
	if err != nil {
		t.Skipf("%s is not here", name)
	}
	return path
}
