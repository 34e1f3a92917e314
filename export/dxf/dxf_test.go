package dxf

import (
	"bytes"
	"io"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/export"
	"chalkfold/export/accept"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/testdata/golden"
)

func write(w io.Writer, d export.Drawing) error { return Write(w, d, Options{}) }

func TestWriter(t *testing.T) { accept.Writer(t, write, nil) }

func TestGolden(t *testing.T) {
	d := export.New(accept.Sheet(), export.Options{Only: pattern.BackNeckFacing})
	// The golden keeps its lines readable: CR LF is tested below.
	golden.Check(t, "back_neck_facing.dxf", strings.ReplaceAll(string(accept.Bytes(t, write, d)), "\r\n", "\n"))
}

// entity is one record: its name and its pairs.
type entity struct {
	name  string
	block string
	pairs [][2]string
}

func (e entity) get(code string) string {
	for _, p := range e.pairs {
		if p[0] == code {
			return p[1]
		}
	}
	return ""
}

func parse(t testing.TB, data []byte) []entity {
	t.Helper()
	lines := strings.Split(string(data), "\r\n")
	require.Equal(t, "", lines[len(lines)-1], "ends with a line end")
	lines = lines[:len(lines)-1]
	require.Zero(t, len(lines)%2, "codes and values in turn")
	var out []entity
	block := ""
	for i := 0; i < len(lines); i += 2 {
		code, value := strings.TrimSpace(lines[i]), lines[i+1]
		_, err := strconv.Atoi(code)
		require.NoError(t, err, "line %d", i+1)
		if code == "0" {
			if value == "ENDBLK" {
				block = ""
			}
			out = append(out, entity{name: value, block: block})
			continue
		}
		last := &out[len(out)-1]
		last.pairs = append(last.pairs, [2]string{code, value})
		if last.name == "BLOCK" && code == "2" {
			block = value
		}
	}
	return out
}

func drawn(t testing.TB, o export.Options) []entity {
	return parse(t, accept.Bytes(t, write, export.New(accept.Sheet(), o)))
}

func on(all []entity, name, layer, block string) []entity {
	var out []entity
	for _, e := range all {
		if e.name == name && e.get("8") == layer && e.block == block {
			out = append(out, e)
		}
	}
	return out
}

func TestShapeOfTheFile(t *testing.T) {
	data := accept.Bytes(t, write, export.New(accept.Sheet(), export.Options{}))
	require.Equal(t, bytes.Count(data, []byte("\n")), bytes.Count(data, []byte("\r\n")))
	all := parse(t, data)
	var sections, inserts []string
	for _, e := range all {
		switch e.name {
		case "SECTION":
			sections = append(sections, e.get("2"))
		case "INSERT":
			inserts = append(inserts, e.get("2"))
		case "LWPOLYLINE", "TABLE":
			t.Fatal(e.name)
		}
	}
	require.Equal(t, []string{"HEADER", "BLOCKS", "ENTITIES"}, sections)
	require.Equal(t, []string{"FRONT_1", "BACK_NECK_FACING_1"}, inserts)
	require.Equal(t, "EOF", all[len(all)-1].name)
}

func TestLayers(t *testing.T) {
	all := drawn(t, export.Options{})
	for _, c := range []struct {
		name, layer   string
		front, facing int
	}{
		{"POLYLINE", layerBoundary, 1, 1},
		{"POLYLINE", layerCutCopy, 1, 1},
		{"POLYLINE", layerSew, 1, 1},
		{"POLYLINE", layerSewCopy, 1, 1},
		{"LINE", layerMirror, 1, 0},
		{"LINE", layerGrain, 1, 1},
		{"POINT", layerNotch, 1, 2},
		{"POINT", layerDrill, 1, 1},
		{"POLYLINE", layerInternal, 1, 0},
		{"LINE", layerInternal, 2, 2},
		{"TEXT", layerBoundary, 6, 6},
	} {
		require.Len(t, on(all, c.name, c.layer, "FRONT_1"), c.front, "%s %s", c.name, c.layer)
		require.Len(t, on(all, c.name, c.layer, "BACK_NECK_FACING_1"), c.facing, "%s %s", c.name, c.layer)
	}
	require.NotEmpty(t, on(all, "TEXT", layerWords, "FRONT_1"))
	for _, l := range []string{"5", "6", "7", "9", "10", "13"} {
		require.Empty(t, on(all, "POLYLINE", l, "FRONT_1"))
	}
	require.Equal(t, "1", on(all, "POLYLINE", layerBoundary, "FRONT_1")[0].get("70"))
	require.Equal(t, "0", on(all, "POLYLINE", layerSew, "FRONT_1")[0].get("70"), "not sewn on the fold")
	require.Equal(t, "1", on(all, "POLYLINE", layerSew, "BACK_NECK_FACING_1")[0].get("70"))
}

func TestWholePieceHasNoMirror(t *testing.T) {
	all := drawn(t, export.Options{Whole: true})
	require.Empty(t, on(all, "LINE", layerMirror, "FRONT_1"))
	require.Len(t, on(all, "POINT", layerNotch, "FRONT_1"), 2)
}

func TestTurnsAndCurvesAreVertices(t *testing.T) {
	all := drawn(t, export.Options{})
	for _, block := range []string{"FRONT_1", "BACK_NECK_FACING_1"} {
		at := map[[2]string]bool{}
		for _, l := range []string{layerBoundary, layerInternal, layerSew} {
			for _, e := range on(all, "VERTEX", l, block) {
				at[[2]string{e.get("10"), e.get("20")}] = true
			}
			for _, e := range on(all, "LINE", l, block) {
				at[[2]string{e.get("10"), e.get("20")}] = true
				at[[2]string{e.get("11"), e.get("21")}] = true
			}
		}
		dots := append(on(all, "POINT", layerTurn, block), on(all, "POINT", layerCurve, block)...)
		require.NotEmpty(t, dots)
		for _, e := range dots {
			require.True(t, at[[2]string{e.get("10"), e.get("20")}])
		}
	}
	require.NotEmpty(t, on(all, "POINT", layerCurve, "FRONT_1"))
	require.Empty(t, on(all, "POINT", layerCurve, "BACK_NECK_FACING_1"), "all straight")
	require.Len(t, on(all, "POINT", layerTurn, "BACK_NECK_FACING_1"), 8)
}

func TestNotchPointsInwardsInFileUnits(t *testing.T) {
	n := on(drawn(t, export.Options{}), "POINT", layerNotch, "FRONT_1")[0]
	require.Equal(t, "6.3500", n.get("30"))
	require.Equal(t, "0.0000", n.get("39"))
	require.Equal(t, "180.0000", n.get("50"))
	var b bytes.Buffer
	require.NoError(t, Write(&b, export.New(accept.Sheet(), export.Options{}), Options{English: true}))
	all := parse(t, b.Bytes())
	require.Equal(t, "0.2500", on(all, "POINT", layerNotch, "FRONT_1")[0].get("30"))
	require.Contains(t, b.String(), "Units: ENGLISH\r\n")
	down := on(drawn(t, export.Options{}), "POINT", layerNotch, "BACK_NECK_FACING_1")[0]
	require.Equal(t, "295.0000", down.get("50"), "65 degrees down is 295 with y up")
}

func TestFieldsOfStyleAndPiece(t *testing.T) {
	all := drawn(t, export.Options{})
	texts := func(block string) []string {
		var out []string
		for _, e := range on(all, "TEXT", layerBoundary, block) {
			out = append(out, e.get("1"))
		}
		return out
	}
	require.Equal(t, []string{
		"ASTM/D13Proposal 1 Version: D 6673-04", "Style Name: Dress for Learner Four", "Creation Date: 2026-03-04",
		"Author: Chalkfold", "Sample Size: 1", "Units: METRIC", "Curve Tolerance: 0.0200",
	}, texts(""))
	require.Equal(t, []string{
		"Piece Name: FRONT", "Size: 1", "Quantity: 1,0", "Annotation: Cut 1 on fold", "Category: BODY", "Material: main",
	}, texts("FRONT_1"))
	require.Contains(t, texts("BACK_NECK_FACING_1"), "Quantity: 1,1")
	s := accept.Sheet()
	s.Job.Client.Measured = pattern.Date{}
	require.NotContains(t, string(accept.Bytes(t, write, export.New(s, export.Options{}))), "Creation Date")
}

func TestLetters(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{"plain 1/2", "plain 1/2"},
		{"Zoë", `Zo\U+00EB`},
		{"Zoe\u0308", `Zo\U+00EB`},
		{"👗 dress", "? dress"},
		{"a\r\n0\r\nEOF", "a  0  EOF"},
		{`\U+0041`, `\U+005CU+0041`},
		{"%%d", `\U+0025\U+0025d`},
		{"\xff", `\U+FFFD`},
		{"", ""},
	} {
		require.Equal(t, c.want, ascii(c.text))
	}
	require.LessOrEqual(t, len(ascii(strings.Repeat("Ж", 500))), textLong)
	require.True(t, strings.HasSuffix(ascii(strings.Repeat("Ж", 500)), `\U+0416`), "no escape is cut through")
	for _, c := range []struct{ text, want string }{
		{"front_neck_facing", "FRONT_NECK_FACING"}, {"Zoë Ødegård", "ZOE_ODEGARD"}, {"Nguyễn", "NGUYEN"}, {"李", "_"}, {"ß", "SS"},
	} {
		require.Equal(t, c.want, name(c.text))
	}
}

func TestBlockNamesDifferAndFit(t *testing.T) {
	long := strings.Repeat("very_long_", 5)
	d := export.Drawing{}
	for _, id := range []string{long + "a", long + "b", "front", "Front"} {
		d.Pieces = append(d.Pieces, export.Placed{Piece: pattern.Piece{ID: pattern.PieceID(id)}, Place: geom.Identity})
	}
	seen := map[string]bool{}
	for _, n := range blockNames(d) {
		require.Regexp(t, regexp.MustCompile(`^[A-Z0-9$_-]{1,31}$`), n)
		require.False(t, seen[n], n)
		seen[n] = true
	}
}

func TestSmoothJointOfCurvesIsNoTurn(t *testing.T) {
	s := &scribe{scale: 1, place: geom.Identity}
	whole := geom.Curve(geom.Point{}, geom.Point{X: 20}, geom.Point{X: 40, Y: 10}, geom.Point{X: 40, Y: 40})
	a, b := whole.Split(0.5)
	turns := 0
	for _, v := range s.vertices(geom.Path{a, b}, false) {
		if v.turn {
			turns++
		}
	}
	require.Equal(t, 2, turns, "only the ends")
}

func FuzzText(f *testing.F) {
	for _, s := range accept.Texts {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		s := accept.Sheet()
		plain := len(parse(t, accept.Bytes(t, write, export.New(s, export.Options{}))))
		s.Job.Client.Name, s.Pieces[0].Cloth, s.Pieces[0].ID = text, text, pattern.PieceID(text)
		data := accept.Bytes(t, write, export.New(s, export.Options{}))
		for _, b := range data {
			require.True(t, b == '\r' || b == '\n' || b >= ' ' && b <= '~', "byte %d", b)
		}
		all := parse(t, data)
		require.Equal(t, "EOF", all[len(all)-1].name)
		if len(text) < 20 {
			require.InDelta(t, plain, len(all), 60, "text makes no records")
		}
	})
}
