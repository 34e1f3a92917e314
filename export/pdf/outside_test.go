package pdf

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/export/accept"
	"chalkfold/pattern/geom"
)

// saved is a file in a folder of the test.
func saved(t testing.TB, data []byte) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), "a.pdf")
	require.NoError(t, os.WriteFile(path, data, 0o600))
	return path
}

// tool runs an outside reader; the test is skipped where it is not there.
func tool(t *testing.T, name string, args ...string) string {
	t.Helper()
	out, err := exec.Command(accept.Tool(t, name), args...).CombinedOutput()
	require.NoError(t, err, "%s", out)
	return string(out)
}

// image is a page as gray dots, ten a millimetre.
type image struct {
	wide, high int
	gray       []byte
}

const perMM = 10

// raster draws a page with another program.
func raster(t *testing.T, path string, page int) image {
	t.Helper()
	n := strconv.Itoa(page)
	base := filepath.Join(t.TempDir(), "page")
	tool(t, "pdftoppm", "-r", "254", "-gray", "-singlefile", "-f", n, "-l", n, path, base)
	data, err := os.ReadFile(base + ".pgm")
	require.NoError(t, err)
	var img image
	var most int
	r := bytes.NewReader(data)
	_, err = fmt.Fscanf(r, "P5\n%d %d\n%d\n", &img.wide, &img.high, &most)
	require.NoError(t, err)
	img.gray = data[len(data)-img.wide*img.high:]
	return img
}

func (m image) dark(x, y int) bool {
	return x >= 0 && y >= 0 && x < m.wide && y < m.high && m.gray[y*m.wide+x] < 140
}

// span is how far apart the first and the last ink is along a level or an
// upright line, in millimetres: middle of ink to middle of ink.
func (m image) span(from geom.Point, along geom.Vector, long float64) float64 {
	var runs []float64
	sum, n := 0.0, 0
	for k := range int(long * perMM) {
		x, y := int(from.X*perMM)+k*int(along.X), int(from.Y*perMM)+k*int(along.Y)
		if m.dark(x, y) {
			sum, n = sum+float64(k), n+1
		} else if n > 0 {
			runs = append(runs, sum/float64(n))
			sum, n = 0, 0
		}
	}
	if len(runs) < 2 {
		return 0
	}
	return (runs[len(runs)-1] - runs[0]) / perMM
}

// clear says that no ink lies in a box but in another inside it.
func (m image) clear(b, but geom.Box) bool {
	for y := int(b.Min.Y * perMM); y < int(b.Max.Y*perMM); y++ {
		for x := int(b.Min.X * perMM); x < int(b.Max.X*perMM); x++ {
			if m.dark(x, y) && !but.Contains(geom.Point{X: float64(x) / perMM, Y: float64(y) / perMM}) {
				return false
			}
		}
	}
	return true
}

// pageSizes are the sizes in points that another program reads.
func pageSizes(t *testing.T, path string) (sizes [][2]float64) {
	t.Helper()
	for _, l := range strings.Split(tool(t, "pdfinfo", "-l", "99", path), "\n") {
		if _, after, ok := strings.Cut(l, "size:"); ok && strings.HasPrefix(l, "Page") {
			var w, h float64
			_, err := fmt.Sscanf(strings.TrimSpace(after), "%f x %f", &w, &h)
			require.NoError(t, err, l)
			sizes = append(sizes, [2]float64{w, h})
		}
	}
	return sizes
}
