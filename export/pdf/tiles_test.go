package pdf

import (
	"bytes"
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"chalkfold/export"
	"chalkfold/export/accept"
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

func TestTileNames(t *testing.T) {
	for _, c := range []struct {
		tile Tile
		want string
	}{{Tile{0, 0}, "A1"}, {Tile{1, 2}, "B3"}, {Tile{25, 0}, "Z1"}, {Tile{26, 9}, "AA10"}, {Tile{51, 0}, "AZ1"}, {Tile{52, 0}, "BA1"}} {
		require.Equal(t, c.want, c.tile.Name())
	}
}

func TestParsePaper(t *testing.T) {
	for name, want := range map[string]string{"": "a4-letter", "A4": "a4", "Letter": "letter", "a4-LETTER": "a4-letter"} {
		p, err := ParsePaper(name)
		require.NoError(t, err)
		require.Equal(t, want, p.ID)
	}
	_, err := ParsePaper("b5")
	require.ErrorContains(t, err, "choose from a4-letter, a4, letter, legal, a3, tabloid")
	for _, p := range Papers() {
		require.NotEmpty(t, p.Leaf().ID)
		require.LessOrEqual(t, p.Leaf().Height, 300.0, "documents stay on small paper")
	}
}

// Everything of every piece lies on a sheet, inside its live area; pieces
// keep apart; no sheet is printed for nothing.
func TestEverySpotIsOnASheet(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := &pattern.Sheet{Complete: true}
		for i := range rapid.IntRange(1, 7).Draw(t, "pieces") {
			w, h := rapid.Float64Range(5, 700).Draw(t, "w"), rapid.Float64Range(5, 1300).Draw(t, "h")
			o := geom.Point{X: rapid.Float64Range(-50, 50).Draw(t, "x"), Y: rapid.Float64Range(-50, 50).Draw(t, "y")}
			ring := geom.Lines(o, o.Add(geom.Vector{X: w}), o.Add(geom.Vector{X: w, Y: h}), o.Add(geom.Vector{Y: h}), o)
			s.Pieces = append(s.Pieces, pattern.Piece{ID: pattern.PieceID(rune('a' + i)), Title: "Piece", CutLine: ring, Stitch: ring})
		}
		d := export.New(s, export.Options{})
		x := TileUp(d, rapid.SampledFrom(papers).Draw(t, "paper"))
		hit := make([]bool, len(x.Tiles))
		var boxes []geom.Box
		for i, p := range d.Pieces {
			b := placedBox(p, x.Places[i])
			for _, o := range boxes {
				if b.Grow(tileGap - 0.01).Overlaps(o) {
					t.Fatalf("%v and %v are too near", b, o)
				}
			}
			boxes = append(boxes, b)
			for _, q := range spotsOf(p) {
				q = x.Places[i].Apply(q)
				on := false
				for k, tile := range x.Tiles {
					if x.Window(tile).Grow(0.01).Contains(q) {
						on, hit[k] = true, true
					}
				}
				if !on {
					t.Fatalf("%v of %s is on no sheet", q, p.Piece.ID)
				}
			}
		}
		for k, h := range hit {
			if c := x.Window(x.Tiles[k]).Centre(); !h && !inAny(d, x, c) {
				t.Fatalf("%s is printed for nothing", x.Tiles[k].Name())
			}
		}
	})
}

func inAny(d export.Drawing, x Tiling, c geom.Point) bool {
	for i, p := range d.Pieces {
		if p.Piece.CutLine.Transform(x.Places[i]).Outline(0.1).Contains(c) {
			return true
		}
	}
	return false
}

func TestEmptySheetsAreLeftOut(t *testing.T) {
	for _, paper := range papers {
		x := TileUp(export.New(accept.Dress(pattern.Measured), export.Options{}), paper)
		require.LessOrEqual(t, len(x.Tiles), x.Rows*x.Columns)
		seen := map[Tile]bool{}
		for _, tile := range x.Tiles {
			require.False(t, seen[tile])
			seen[tile] = true
		}
	}
}

func TestCoverProvesTheScale(t *testing.T) {
	d := export.New(accept.Sheet(), export.Options{})
	for _, paper := range papers {
		across, along := Controls(paper)
		options := []Options{{Paper: paper}}
		if paper.ID == "a4" || paper.ID == "a3" {
			options = append(options, Options{Paper: paper, PrintedAlong: along.Length * 1.01, PrintedAcross: across.Length * 0.98})
		}
		for _, o := range options {
			fx, fy, err := o.factors()
			require.NoError(t, err)
			var b bytes.Buffer
			require.NoError(t, WriteTiles(&b, d, o))
			path := saved(t, b.Bytes())
			sizes := pageSizes(t, path)
			require.Len(t, sizes, TileUp(d, paper).Sheets())
			for _, s := range sizes {
				require.InDelta(t, paper.Width/millimetresAPoint, s[0], 0.01)
				require.InDelta(t, paper.Height/millimetresAPoint, s[1], 0.01)
			}
			img := raster(t, path, 1)
			// Where a place of the cover comes to lie when stretched.
			put := func(x, y float64) geom.Point {
				return geom.Point{X: paper.Width/2 + fx*(x-paper.Width/2), Y: paper.Height/2 + fy*(y-paper.Height/2)}
			}
			y := squaresTop
			for _, s := range controlSquares {
				side := s.side.MM()
				require.InDelta(t, fx*side, img.span(put(coverLeft-2, y+10), geom.Vector{X: 1}, fx*side+4), 0.2, paper.ID)
				require.InDelta(t, fy*side, img.span(put(coverLeft+10, y-2), geom.Vector{Y: 1}, fy*side+4), 0.2, paper.ID)
				square := geom.Box{Min: put(coverLeft, y), Max: put(coverLeft+side, y+side)}
				require.True(t, img.clear(square.Grow(5), square.Grow(0.5)), "%s: %s", paper.ID, s.says)
				y += side + squareApart
			}
			// Along a tick's height beside each line: its ends' ticks alone.
			line := put(paper.Width-lineClear-1.2, coverTop-2)
			require.InDelta(t, fy*along.Length.MM(), img.span(line, geom.Vector{Y: 1}, fy*along.Length.MM()+4), 0.2, paper.ID)
			line = put(coverLeft-2, paper.Height-21-1.2)
			require.InDelta(t, fx*across.Length.MM(), img.span(line, geom.Vector{X: 1}, fx*across.Length.MM()+4), 0.2, paper.ID)
		}
	}
}

func TestCalibration(t *testing.T) {
	for _, c := range []struct {
		paper         string
		across, along measure.Length
		fx, fy        float64
		refused       string
	}{
		{"a4", 0, 0, 1, 1, ""},
		{"a4", 7 * measure.Inch, 10 * measure.Inch, 1, 1, ""},
		{"a4", 7 * measure.Inch / 1.03, 10 * measure.Inch / 0.97, 1.03, 0.97, ""},
		{"a3", 10 * measure.Inch, 0, 1, 1, ""},
		{"a3", 7 * measure.Inch, 0, 1, 1, "--printed-across"},
		{"a4", 0, 10 * measure.Inch * 0.96, 1, 1, "--printed-along"},
		{"a4", -10, 0, 1, 1, "--printed-across"},
	} {
		p, err := ParsePaper(c.paper)
		require.NoError(t, err)
		o := Options{Paper: p, PrintedAcross: c.across, PrintedAlong: c.along}
		fx, fy, err := o.factors()
		if c.refused != "" {
			require.ErrorContains(t, err, c.refused)
			require.Error(t, o.Check())
			continue
		}
		require.NoError(t, err)
		require.InDelta(t, c.fx, fx, 1e-9)
		require.InDelta(t, c.fy, fy, 1e-9)
	}
}

func TestFactorAndLimitsStandOnEverySheet(t *testing.T) {
	d := export.New(accept.Sheet(), export.Options{})
	var b bytes.Buffer
	require.NoError(t, WriteTiles(&b, d, Options{PrintedAlong: 10 * measure.Inch / 1.002}))
	path := saved(t, b.Bytes())
	for i := range TileUp(d, Paper{}).Sheets() {
		n := fmt.Sprint(i + 1)
		text := strings.Join(strings.Fields(tool(t, "pdftotext", "-f", n, "-l", n, path, "-")), " ")
		require.Contains(t, text, "across x 1.0000, along x 1.0020 (limits 0.97 to 1.03)", "sheet %s", n)
	}
}

func TestSheetsAreNumberedAndRuled(t *testing.T) {
	d := export.New(accept.Sheet(), export.Options{})
	x := TileUp(d, Paper{})
	path := saved(t, accept.Bytes(t, tiles, d))
	require.Contains(t, tool(t, "qpdf", "--check", path), "No syntax")
	for i, tile := range x.Tiles {
		n := fmt.Sprint(i + 2)
		text := tool(t, "pdftotext", "-f", n, "-l", n, path, "-")
		for _, want := range []string{tile.Name(), fmt.Sprintf("sheet %d of %d", i+2, x.Sheets()), "5 cm", "2 in"} {
			require.Contains(t, text, want)
		}
		for _, next := range []Tile{{tile.Row - 1, tile.Column}, {tile.Row + 1, tile.Column}, {tile.Row, tile.Column - 1}, {tile.Row, tile.Column + 1}} {
			if next.Row >= 0 && next.Column >= 0 {
				require.Equal(t, x.Has(next.Row, next.Column), strings.Contains(text, next.Name()), "%s on %s", next.Name(), tile.Name())
			}
		}
	}
	require.Contains(t, tool(t, "mutool", "show", path, "outline"), "Front (")
}

func TestCoverTellsWhatTheDraftRestsOn(t *testing.T) {
	s := accept.Sheet()
	s.Findings = []pattern.Finding{{Title: "Side seams meet", Verdict: pattern.Fail}}
	path := saved(t, accept.Bytes(t, tiles, export.New(s, export.Options{Whole: true})))
	text := strings.Join(strings.Fields(tool(t, "pdftotext", "-l", "1", path, "-")), " ")
	for _, want := range []string{
		"drafted from her measurements", "Proposed, not measured: neck base girth", "Truing found a fault: Side seams meet",
		"drawn whole", "Heavy line: cut.", "Front: A1 to", "1. Print this sheet alone first",
	} {
		require.Contains(t, text, want)
	}
	require.NotContains(t, text, "Drawn at full size")
}
