package svg

import (
	"image"
	"image/color"
	"image/png"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/export"
	"chalkfold/export/accept"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

func TestOutsideReader(t *testing.T) {
	for _, o := range []export.Options{{}, {Whole: true}} {
		d := export.New(accept.Sheet(), o)
		want := accept.Expected(d)
		for i := range want {
			want[i].Edges = nil // the hand-built sheet has rough allowances
		}
		accept.Python(t, "outside.py", "page.svg", accept.Bytes(t, write, d), want, "shapely")
	}
}

// perMM is how many dots make a millimetre at 254 dpi.
const perMM = 10

// raster draws the picture with another program, ten dots a millimetre.
func raster(t *testing.T, d export.Drawing) image.Image {
	tool := accept.Tool(t, "rsvg-convert")
	dir := t.TempDir()
	in, out := filepath.Join(dir, "page.svg"), filepath.Join(dir, "page.png")
	require.NoError(t, os.WriteFile(in, accept.Bytes(t, write, d), 0o600))
	msg, err := exec.Command(tool, "-d", "254", "-p", "254", "--unlimited", "-b", "white", "-o", out, in).CombinedOutput()
	require.NoError(t, err, "%s", msg)
	f, err := os.Open(out)
	require.NoError(t, err)
	defer f.Close()
	img, err := png.Decode(f)
	require.NoError(t, err)
	return img
}

// ink is the middle of the dark run nearest to a place along a line of dots,
// in millimetres.
func ink(img image.Image, at geom.Point, across geom.Vector) (geom.Point, bool) {
	const reach = 20
	var runs []float64
	sum, n := 0.0, 0
	for k := -reach; k <= reach; k++ {
		x, y := int(at.X*perMM)+k*int(across.X), int(at.Y*perMM)+k*int(across.Y)
		if color.GrayModel.Convert(img.At(x, y)).(color.Gray).Y < 140 {
			sum, n = sum+float64(k), n+1
			continue
		}
		if n > 0 {
			runs = append(runs, sum/float64(n))
			sum, n = 0, 0
		}
	}
	best := math.Inf(1)
	for _, r := range runs {
		if math.Abs(r) < math.Abs(best) {
			best = r
		}
	}
	return at.Add(across.Scale((best + 0.5) / perMM)), !math.IsInf(best, 1)
}

func TestRasterIsTrueSize(t *testing.T) {
	d := export.New(accept.Sheet(), export.Options{Only: pattern.BackNeckFacing})
	img := raster(t, d)
	require.InDelta(t, d.Width*perMM, img.Bounds().Dx(), 1)
	require.InDelta(t, d.Height*perMM, img.Bounds().Dy(), 1)
	right, down := geom.Vector{X: 1}, geom.Vector{Y: 1}
	wide := func(a, b geom.Point, across geom.Vector) float64 {
		p, ok := ink(img, a, across)
		require.True(t, ok, "no ink near %v", a)
		q, ok := ink(img, b, across)
		require.True(t, ok, "no ink near %v", b)
		return p.Dist(q)
	}
	for _, i := range d.Page {
		if i.Role != pattern.RoleGuide {
			continue
		}
		b := i.Bounds()
		x, y := b.Min.X+0.3*b.Width(), b.Min.Y+0.3*b.Height()
		require.InDelta(t, b.Width(), wide(geom.Point{X: b.Min.X, Y: y}, geom.Point{X: b.Max.X, Y: y}, right), 0.2)
		require.InDelta(t, b.Height(), wide(geom.Point{X: x, Y: b.Min.Y}, geom.Point{X: x, Y: b.Max.Y}, down), 0.2)
	}
	for _, p := range d.Pieces {
		cut := p.Piece.CutLine.Transform(p.Place)
		b := cut.Bounds()
		cross := cut.AtLevel(b.Min.Y + 0.65*b.Height())
		require.Len(t, cross, 2)
		require.InDelta(t, cross[0].Dist(cross[1]), wide(cross[0], cross[1], right), 0.2, p.Piece.ID)
	}
}

func TestOutsideReaderOfADress(t *testing.T) {
	for _, method := range []string{pattern.Measured, pattern.Thumb} {
		d := export.New(accept.Dress(method), export.Options{})
		accept.Python(t, "outside.py", "page.svg", accept.Bytes(t, write, d), accept.Expected(d), "shapely")
	}
}
