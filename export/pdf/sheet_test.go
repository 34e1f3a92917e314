package pdf

import (
	"bytes"
	"crypto/sha256"
	"fmt"
	"io"
	"os"
	"os/exec"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/export"
	"chalkfold/export/accept"
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

func sheet(w io.Writer, d export.Drawing) error { return WriteSheet(w, d, Options{}) }

func tiles(w io.Writer, d export.Drawing) error { return WriteTiles(w, d, Options{}) }

func TestSheetIsAWriter(t *testing.T) { accept.Writer(t, sheet, nil) }

func TestTilesAreAWriter(t *testing.T) { accept.Writer(t, tiles, nil) }

func TestSheetIsTrueSize(t *testing.T) {
	d := export.New(accept.Sheet(), export.Options{})
	path := saved(t, accept.Bytes(t, sheet, d))
	require.Contains(t, tool(t, "qpdf", "--check", path), "No syntax or stream encoding errors")
	sizes := pageSizes(t, path)
	require.Len(t, sizes, 1)
	require.InDelta(t, d.Width/millimetresAPoint, sizes[0][0], 0.01)
	require.InDelta(t, d.Height/millimetresAPoint, sizes[0][1], 0.01)

	img := raster(t, path, 1)
	squares := 0
	for _, i := range d.Page {
		if i.Role != pattern.RoleGuide {
			continue
		}
		squares++
		b := i.Bounds()
		at := geom.Point{X: b.Min.X - 2, Y: b.Min.Y + 0.2*b.Height()}
		require.InDelta(t, b.Width(), img.span(at, geom.Vector{X: 1}, b.Width()+4), 0.2)
		at = geom.Point{X: b.Min.X + 0.2*b.Width(), Y: b.Min.Y - 2}
		require.InDelta(t, b.Height(), img.span(at, geom.Vector{Y: 1}, b.Height()+4), 0.2)
		require.True(t, img.clear(b.Grow(5), b.Grow(0.5)), "%s", i.Name)
	}
	require.Equal(t, 2, squares)
	for _, p := range d.Pieces {
		cut := p.Piece.CutLine.Transform(p.Place)
		for _, q := range cut.Flatten(1) {
			require.True(t, inked(img, q), "%s at %v", p.Piece.ID, q)
		}
	}
}

// inked says that ink lies within 0.2 mm.
func inked(img image, p geom.Point) bool {
	for dx := -2; dx <= 2; dx++ {
		for dy := -2; dy <= 2; dy++ {
			if img.dark(int(p.X*perMM)+dx, int(p.Y*perMM)+dy) {
				return true
			}
		}
	}
	return false
}

func TestNamesPrintInAnyScript(t *testing.T) {
	s := accept.Sheet()
	s.Job.Client.Name = "Ελένη Nguyễn Zoe\u0308 👗"
	d := export.New(s, export.Options{})
	var warned []string
	var b bytes.Buffer
	require.NoError(t, WriteSheet(&b, d, Options{Warn: func(w string) { warned = append(warned, w) }}))
	require.Equal(t, []string{"a box stands in print for letters that the typeface lacks: U+1F457"}, warned)
	path := saved(t, b.Bytes())
	text := tool(t, "pdftotext", path, "-")
	require.Contains(t, text, "Ελένη Nguyễn Zoë □")
	require.Contains(t, tool(t, "pdfinfo", path), "Dress for Ελένη Nguyễn Zoë □")
	fonts := tool(t, "pdffonts", path)
	require.Equal(t, 1, strings.Count(fonts, "DejaVuSans"))
	require.Regexp(t, `[A-Z]{6}\+DejaVuSans\s+CID TrueType\s+Identity-H\s+yes yes yes`, fonts)
}

// Two readers must find the request not to scale, the layers, and the
// bookmarks.
func TestCatalogueIsReadByTwo(t *testing.T) {
	path := saved(t, accept.Bytes(t, sheet, export.New(accept.Sheet(), export.Options{})))
	json := tool(t, "qpdf", "--json", path)
	require.Regexp(t, `"/ViewerPreferences": \{\s*"/PrintScaling": "/None"\s*\}`, json)
	for _, l := range layerNames {
		require.Regexp(t, `"/Name": "(u:)?`+l+`"`, json)
	}
	for _, title := range []string{"Front", "Back neck facing"} {
		require.Regexp(t, `"/Title": "(u:)?`+title+`"`, json)
	}
	require.Contains(t, tool(t, "mutool", "show", path, "trailer/Root/ViewerPreferences/PrintScaling"), "/None")
	require.Contains(t, tool(t, "mutool", "show", path, "outline"), "Back neck facing")
}

func TestALongRollGoesOnOnFurtherPages(t *testing.T) {
	d := export.New(accept.Dress(pattern.Measured), export.Options{Roll: 100})
	require.Less(t, d.Height, 5000.0, "six pieces one below the other are not enough")
	// Twelve are.
	for _, p := range d.Pieces {
		p.Place = p.Place.Then(geom.Move(geom.Vector{Y: d.Height}))
		d.Pieces = append(d.Pieces, p)
	}
	d.Height *= 2
	var warned string
	var b bytes.Buffer
	require.NoError(t, WriteSheet(&b, d, Options{Warn: func(w string) { warned = w }}))
	require.Contains(t, warned, "2 pages")
	path := saved(t, b.Bytes())
	require.Contains(t, tool(t, "qpdf", "--check", path), "No syntax")
	sizes := pageSizes(t, path)
	require.Len(t, sizes, 2)
	for _, s := range sizes {
		require.LessOrEqual(t, s[1], 14400.0)
	}
	require.Equal(t, 2, strings.Count(tool(t, "pdftotext", path, "-"), "Back, 2 of 6"))
}

func TestSplitKeepsPiecesWholeAndApart(t *testing.T) {
	d := export.New(accept.Dress(pattern.Measured), export.Options{Roll: 100})
	for range 3 {
		for _, p := range d.Pieces[:6] {
			p.Place = p.Place.Then(geom.Move(geom.Vector{Y: d.Height}))
			d.Pieces = append(d.Pieces, p)
		}
		d.Height += 3000
	}
	pages, err := split(d)
	require.NoError(t, err)
	seen := map[int]int{}
	for _, page := range pages {
		require.LessOrEqual(t, page.height, longest)
		for _, i := range page.pieces {
			seen[i]++
			b := placedBox(d.Pieces[i], d.Pieces[i].Place)
			require.GreaterOrEqual(t, b.Min.Y-page.up, sheetMargin-1e-9)
			require.LessOrEqual(t, b.Max.Y-page.up, page.height)
		}
	}
	require.Len(t, seen, len(d.Pieces))
}

func TestAPieceLongerThanAPageIsRefused(t *testing.T) {
	d := export.New(accept.Sheet(), export.Options{})
	d.Pieces[0].Items[0].Path = geom.Lines(geom.Point{}, geom.Point{Y: 6000})
	d.Height = 7000
	require.ErrorContains(t, WriteSheet(io.Discard, d, Options{}), "Front is 6.")
	d.Width = 5100
	require.ErrorContains(t, WriteSheet(io.Discard, d, Options{}), "the sheet is 5.10 m")
}

// TestSameBytesInAnotherProcess runs itself once more and compares.
func TestSameBytesInAnotherProcess(t *testing.T) {
	const sign = "sums: "
	sums := sign
	for _, write := range []accept.Write{sheet, tiles} {
		for _, m := range []string{pattern.Measured, pattern.Thumb} {
			b := accept.Bytes(t, write, export.New(accept.Dress(m), export.Options{Unit: measure.Cm}))
			require.Equal(t, b, accept.Bytes(t, write, export.New(accept.Dress(m), export.Options{Unit: measure.Cm})))
			sums += fmt.Sprintf("%x ", sha256.Sum256(b))
		}
	}
	if os.Getenv("CHALKFOLD_SUMS") != "" {
		fmt.Println(sums)
		return
	}
	c := exec.Command(os.Args[0], "-test.run=^TestSameBytesInAnotherProcess$")
	c.Env = append(os.Environ(), "CHALKFOLD_SUMS=1")
	out, err := c.CombinedOutput()
	require.NoError(t, err, "%s", out)
	require.Contains(t, string(out), sums)
}

func TestNoDateButTheSessions(t *testing.T) {
	d := export.New(accept.Sheet(), export.Options{})
	require.Contains(t, string(accept.Bytes(t, sheet, d)), "(D:20260304000000)")
	d.Facts.Measured = pattern.Date{}
	require.Contains(t, string(accept.Bytes(t, sheet, d)), "(D:20000101000000)")
}

func BenchmarkSheet(b *testing.B) {
	d := export.New(accept.Dress(pattern.Measured), export.Options{})
	for b.Loop() {
		if err := sheet(io.Discard, d); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkTiles: at most 60 ms on two slow cores.
func BenchmarkTiles(b *testing.B) {
	d := export.New(accept.Dress(pattern.Measured), export.Options{})
	for b.Loop() {
		if err := tiles(io.Discard, d); err != nil {
			b.Fatal(err)
		}
	}
}
