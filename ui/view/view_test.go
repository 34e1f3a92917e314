package view

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/testdata/golden"
	"chalkfold/ui/canvas"
)

// sheet is an invented draft of a front and a back: two pieces and a few steps,
// so that the tests do not depend on the rules of drafting.
func sheet() *pattern.Sheet {
	ring := func(wide, long float64) geom.Path {
		neck, point, end := geom.Point{Y: 90}, geom.Point{X: 70}, geom.Point{X: 150, Y: 35}
		arm, hem := geom.Point{X: wide, Y: 190}, geom.Point{X: wide, Y: long}
		p := geom.Path{geom.Curve(neck, geom.Point{X: 40, Y: 90}, geom.Point{X: 65, Y: 40}, point)}
		p = append(p, geom.Lines(point, end)...)
		p = append(p, geom.Curve(end, geom.Point{X: 140, Y: 120}, geom.Point{X: 160, Y: 190}, arm))
		return append(p, geom.Lines(arm, hem, geom.Point{Y: long}, neck)...)
	}
	s := &pattern.Sheet{Complete: true}
	for _, x := range []struct {
		id   pattern.PieceID
		wide float64
		cut  pattern.CutKind
	}{{pattern.Front, 245, pattern.OnFold}, {pattern.Back, 240, pattern.Pair}} {
		r := ring(x.wide, 1000)
		s.Pieces = append(s.Pieces, pattern.Piece{ID: x.id, Title: strings.ToUpper(string(x.id[:1])) + string(x.id[1:]), Cut: x.cut, Stitch: r, CutLine: r.Offset(15, 0.1)})
	}
	s.Steps = []pattern.Step{{Number: 1, Piece: pattern.Front, Drawn: true}, {Number: 2, Piece: pattern.Front, Drawn: true}, {Number: 3, Piece: pattern.Front, Drawn: true}}
	s.Marks = []pattern.Mark{
		{Piece: pattern.Front, Name: "centre", Kind: pattern.MarkGuide, Path: geom.Lines(geom.Point{}, geom.Point{Y: 1000}), Born: 1},
		{Piece: pattern.Front, Name: "underarm", At: geom.Point{X: 245, Y: 190}, Born: 2},
		{Piece: pattern.Front, Name: "waist", At: geom.Point{X: 230, Y: 440}, Born: 1},
		{Piece: pattern.Front, Name: "side", Kind: pattern.MarkLine, Path: geom.Lines(geom.Point{X: 245, Y: 190}, geom.Point{X: 245, Y: 1000}), Role: pattern.RoleStitch, Born: 3},
	}
	s.Lengths = []pattern.Dimension{{Piece: pattern.Front, Name: "neck", Length: 200}}
	s.Girths = []pattern.Dimension{{Name: "bust", Length: 970}}
	return s
}

func draw(s Scene, e Eye, cols, rows int, g canvas.Glyphs) string {
	var p Paper
	lines, _ := p.Rows(s, e, cols, rows, g, 2, canvas.Palette{})
	return strings.Join(lines, "\n") + "\n"
}

func TestPictures(t *testing.T) {
	var b strings.Builder
	for _, c := range []struct {
		title string
		s     Scene
		e     Eye
		cols  int
		rows  int
	}{
		{"one piece lies with its fold along the top, the neck at the left", Scene{Piece: pattern.Front}, Eye{}, 78, 12},
		{"side seams face each other", Scene{}, Eye{}, 78, 22},
		{"standing", Scene{Stand: true}, Eye{}, 60, 24},
		{"a step: the newest is named with its length", Scene{Piece: pattern.Front, Step: 2, Unit: measure.In}, Eye{}, 78, 12},
		{"names, no lengths", Scene{Piece: pattern.Front, Step: 2}, Eye{Names: true, Plain: true}, 78, 12},
		{"a place", Scene{Piece: pattern.Front, Spot: &pattern.Place{Piece: pattern.Front, At: geom.Point{X: 245, Y: 190}}, Says: "Side"}, Eye{}, 78, 12},
	} {
		c.s.Sheet = sheet()
		b.WriteString("== " + c.title + "\n" + draw(c.s, c.e, c.cols, c.rows, canvas.ASCII))
	}
	golden.Check(t, "pictures.txt", b.String())
	golden.Check(t, "braille.txt", draw(Scene{Sheet: sheet()}, Eye{}, 78, 20, canvas.Braille))
}

// The hem of the test piece is 245 mm and its fold 910 mm: on the screen both
// must be in proportion within 3 %, whatever the cells are like.
func TestProportionsAreTrue(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		cols, rows := rapid.IntRange(60, 220).Draw(t, "cols"), rapid.IntRange(12, 70).Draw(t, "rows")
		g := rapid.SampledFrom([]canvas.Glyphs{canvas.Braille, canvas.Blocks, canvas.ASCII}).Draw(t, "glyphs")
		aspect := rapid.Float64Range(1.6, 2.6).Draw(t, "aspect")
		v := Look(Scene{Sheet: sheet(), Piece: pattern.Front, Stand: rapid.Bool().Draw(t, "stand")}, Eye{}, cols, rows, g, aspect)
		l, ok := at(v.pieces, pattern.Front)
		require.True(t, ok)
		cw, ch := g.Cell()
		cells := func(p geom.Point) (x, y float64) {
			d := v.dot(l.to.Apply(p))
			return d.X / float64(cw), d.Y / float64(ch) * aspect
		}
		x0, y0 := cells(geom.Point{})
		x1, y1 := cells(geom.Point{X: 500})
		x2, y2 := cells(geom.Point{Y: 500})
		require.InEpsilon(t, math.Hypot(x1-x0, y1-y0), math.Hypot(x2-x0, y2-y0), 0.03)
	})
}

func TestEveryEyeSeesWithinTheCanvas(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := Scene{Sheet: sheet(), Step: rapid.IntRange(0, 4).Draw(t, "step"), Stand: rapid.Bool().Draw(t, "stand")}
		if rapid.Bool().Draw(t, "old") {
			s.Old = sheet()
		}
		cols, rows := rapid.IntRange(0, 130).Draw(t, "cols"), rapid.IntRange(0, 40).Draw(t, "rows")
		e := Eye{Grid: rapid.Bool().Draw(t, "grid"), Names: true}
		var p Paper
		for range 6 {
			lines, v := p.Rows(s, e, cols, rows, canvas.Braille, 2, canvas.Palette{})
			require.Len(t, lines, rows)
			for _, l := range lines {
				require.LessOrEqual(t, canvas.Width(l), cols)
			}
			switch rapid.IntRange(0, 6).Draw(t, "move") {
			case 0:
				e = e.Closer(v)
			case 1:
				e = e.Farther(v)
			case 2:
				e = e.Panned(v, 0.3, -0.3)
			case 3:
				e = e.On(v, v.Newest())
			case 4:
				e.Hair, e.Hairs = true, v.Middle()
			case 5:
				e = e.Stepped(v, 3, 4)
			case 6:
				e = e.Fit()
			}
		}
	})
}

func TestTheCrossHairReadsTheTape(t *testing.T) {
	v := Look(Scene{Sheet: sheet()}, Eye{}, 100, 30, canvas.Braille, 2)
	for _, id := range []pattern.PieceID{pattern.Front, pattern.Back} {
		l, _ := at(v.pieces, id)
		want := geom.Point{X: 200, Y: 500}
		got, ok := v.Under(l.to.Apply(want))
		require.True(t, ok)
		require.Equal(t, id, got.Piece)
		require.True(t, got.At.Near(want, 1e-6))
	}
}

func TestZoomKeepsThePointUnderTheCrossHair(t *testing.T) {
	s := Scene{Sheet: sheet()}
	v := Look(s, Eye{}, 100, 30, canvas.Braille, 2)
	e := Eye{Hair: true, Hairs: geom.Point{X: 300, Y: 200}}
	before := v.dot(e.Hairs)
	e = e.Closer(v)
	after := Look(s, e, 100, 30, canvas.Braille, 2).dot(e.Hairs)
	require.InDelta(t, before.X, after.X, 0.01)
	require.InDelta(t, before.Y, after.Y, 0.01)
}

func TestDifferencesInWords(t *testing.T) {
	old, now := sheet(), sheet()
	require.Empty(t, Differences(old, now, measure.In, 5))
	now.Lengths[0].Length += measure.In.Length(1.125)
	now.Girths[0].Length -= measure.In.Length(2)
	require.Equal(t, []string{"bust all round 2 less", "front neck 1 1/8 longer"}, Differences(old, now, measure.In, 5))
	require.Len(t, Differences(old, now, measure.In, 1), 1)
	require.Empty(t, Differences(nil, now, measure.In, 5))
}

func TestOutlineIsWithinItsSize(t *testing.T) {
	out := Outline(sheet(), pattern.Front, 70, 12, canvas.ASCII)
	require.Equal(t, 12, strings.Count(out, "\n"))
	require.NotContains(t, out, "\x1b")
	golden.Check(t, "outline.txt", out)
	require.NotEmpty(t, Outline(&pattern.Sheet{}, "", 10, 3, canvas.ASCII))
	Outline(sheet(), "", 0, 0, canvas.Braille)
}

func BenchmarkTable(b *testing.B) {
	s, pens := sheet(), canvas.Palette{}
	var p Paper
	b.ReportAllocs()
	for b.Loop() {
		p.Rows(Scene{Sheet: s, Old: s}, Eye{Grid: true}, 200, 60, canvas.Braille, 2, pens)
	}
}

// What moves up or down the body is said too, once where it moves on both.
func TestLevelsThatMoved(t *testing.T) {
	old, now := sheet(), sheet()
	for i := range now.Marks {
		if now.Marks[i].Name == "waist" {
			now.Marks[i].At.Y += 25.4
		}
	}
	require.Equal(t, []string{"front waist line 1 lower"}, Differences(old, now, measure.In, 5))
	require.Empty(t, Differences(old, now, measure.In, 0))
	for _, s := range []*pattern.Sheet{old, now} {
		for _, m := range s.Marks {
			if m.Piece == pattern.Front {
				m.Piece = pattern.Back
				s.Marks = append(s.Marks, m)
			}
		}
	}
	require.Equal(t, []string{"waist line 1 lower"}, Differences(old, now, measure.In, 5))
	require.Equal(t, []string{"waist line 1 higher"}, Differences(now, old, measure.In, 5))
}
