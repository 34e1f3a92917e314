package canvas

import (
	"math"
	"strings"
	"testing"

	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestSizes(t *testing.T) {
	for _, tc := range []struct {
		g    Glyphs
		w, h int
	}{{Braille, 20, 20}, {Blocks, 10, 10}, {ASCII, 20, 20}, {Glyphs(77), 20, 20}, {Glyphs(-3), 20, 20}} {
		c := New(10, 5, tc.g)
		w, h := c.Dots()
		require.Equal(t, [2]int{tc.w, tc.h}, [2]int{w, h})
	}
	c := New(-4, 1<<40, Braille)
	cols, rows := c.Size()
	require.Equal(t, 0, cols)
	require.Equal(t, most, rows)
}

func TestResizeKeepsMemoryAndEmpties(t *testing.T) {
	c := scene(ASCII)
	dots := &c.dots[0]
	c.Resize(20, 5, Braille)
	require.Same(t, dots, &c.dots[0])
	require.Equal(t, "\n\n\n\n", c.String(signs))
	c.Resize(70, 18, ASCII)
	require.Equal(t, strings.Repeat("\n", 17), c.String(signs))
}

func TestGlyphNames(t *testing.T) {
	g := Braille
	for range 3 {
		got, err := ParseGlyphs(strings.ToUpper(g.String()))
		require.NoError(t, err)
		require.Equal(t, g, got)
		g = g.Next()
	}
	require.Equal(t, Braille, g)
	_, err := ParseGlyphs("runes")
	require.EqualError(t, err, `glyphs: "runes" is not a set of glyphs; use braille, block or ascii`)
}

func TestOneDotInEachPlace(t *testing.T) {
	for y := range 4 {
		for x := range 2 {
			c := New(1, 1, Braille)
			c.Point(float64(x), float64(y), Line)
			r, pen := c.At(0, 0)
			require.Equal(t, 0x2800+rune(bits[y][x]), r)
			require.Equal(t, Line, pen)
		}
	}
	r, pen := New(1, 1, Braille).At(4, 4)
	require.Equal(t, ' ', r)
	require.Equal(t, None, pen)
}

// Where two lines share a cell the stronger pen colours both, whichever came
// first.
func TestStrongerPenWins(t *testing.T) {
	for _, g := range []Glyphs{Braille, Blocks, ASCII} {
		for _, order := range [][2]Pen{{Newest, Line}, {Line, Newest}} {
			c := New(3, 1, g)
			c.Line(0, 0, 5, 0, order[0])
			c.Line(0, 0, 5, 0, order[1])
			_, pen := c.At(0, 0)
			require.Equal(t, Newest, pen)
		}
	}
}

// In ASCII the stronger line also decides the character.
func TestStrongerLineDecidesTheCharacter(t *testing.T) {
	for _, order := range []bool{false, true} {
		c := New(5, 3, ASCII)
		down := func() { c.Line(4, 0, 4, 11, Newest) }
		across := func() { c.Line(0, 5, 9, 5, Grid) }
		if order {
			down()
			across()
		} else {
			across()
			down()
		}
		require.Equal(t, "  |\n--|--\n  |", c.String(Palette{}))
	}
}

func TestASCIIDirections(t *testing.T) {
	for _, tc := range []struct {
		name string
		line [4]float64
		want string
	}{
		{"level, upper", [4]float64{0, 0, 7, 0}, "----"},
		{"level, middle", [4]float64{0, 1, 7, 1}, "----"},
		{"level, low", [4]float64{0, 3, 7, 3}, "____"},
		{"upright", [4]float64{1, 0, 1, 3}, "|"},
		{"rising", [4]float64{0, 3, 1, 0}, "/"},
		{"falling", [4]float64{0, 0, 1, 3}, `\`},
		{"backwards", [4]float64{1, 3, 0, 0}, `\`},
		{"leaning", [4]float64{0, 3, 7, 0}, ".--'"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			c := New(4, 1, ASCII)
			c.Line(tc.line[0], tc.line[1], tc.line[2], tc.line[3], Line)
			require.Equal(t, tc.want, c.String(Palette{}))
		})
	}
	c := New(2, 1, ASCII)
	c.Point(0, 0, Line)
	c.Point(2, 3, Line)
	require.Equal(t, "'.", c.String(Palette{}))
}

func TestCornersOfABox(t *testing.T) {
	c := New(6, 3, ASCII)
	c.Polyline([]Dot{{1, 1}, {10, 1}, {10, 9}, {1, 9}}, true, Line, Solid, 1)
	require.Equal(t, "+----+\n|    |\n+----+", c.String(Palette{}))
}

func TestOneSequenceForEachRun(t *testing.T) {
	p := Palette{Line: "\x1b[0;32m", Newest: "\x1b[0;1;33m"}
	c := New(12, 2, Braille)
	c.Line(0, 0, 5, 0, Line)
	c.Line(10, 0, 13, 0, Line) // blanks between: the same run
	c.Line(14, 0, 17, 0, Newest)
	require.Equal(t, "\x1b[0;32m⠉⠉⠉  ⠉⠉\x1b[0;1;33m⠉⠉\x1b[0m\n", c.String(p))
	require.Equal(t, "⠉⠉⠉  ⠉⠉⠉⠉\n", c.String(Palette{}))
	require.Equal(t, []string{"⠉⠉⠉  ⠉⠉⠉⠉", ""}, c.Rows(Palette{}))
}

// A pen that shows on blanks must not run over them.
func TestReverseStopsAtBlanks(t *testing.T) {
	p := Palette{Newest: "\x1b[0;7m"}
	c := New(7, 1, ASCII)
	c.Text(0, 0, "a b", Newest)
	c.Text(5, 0, "c", Newest)
	require.Equal(t, "\x1b[0;7ma b\x1b[0m  \x1b[0;7mc\x1b[0m", c.String(p))
}

// A painted background is the sequence of None.
func TestPaintedBackground(t *testing.T) {
	p := Palette{None: "\x1b[0;48;5;231m", Newest: "\x1b[0;31;48;5;231m"}
	c := New(7, 1, ASCII)
	c.Text(2, 0, "a", Newest)
	c.Text(4, 0, "b", None)
	require.Equal(t, "\x1b[0;48;5;231m  \x1b[0;31;48;5;231ma \x1b[0;48;5;231mb\x1b[0m", c.String(p))
}

func TestBlankLook(t *testing.T) {
	for sgr, want := range map[string]string{
		"": "", "\x1b[0;1m": "", "\x1b[0;38;5;47m": "", "\x1b[0;38;2;4;7;48m": "", "\x1b[0;38;5;4;1m": "",
		"\x1b[0;7m": " marked", "\x1b[0;4m": " marked", "\x1b[0;47m": "47", "\x1b[0;38;5;7;48;5;2m": "48;5;2",
		"\x1b[0;48;2;1;4;7;9m": "48;2;1;4;7 marked", "\x1b[0;107m": "107", "\x1b[0;97;40m": "40",
	} {
		back, marked := blankLook(sgr)
		if marked {
			back += " marked"
		}
		require.Equal(t, want, back, "%q", sgr)
	}
}

// With one background for all pens a gap costs no sequence.
func TestGapsOnAPaintedBackground(t *testing.T) {
	p := Palette{None: "\x1b[0;30;48;5;231m", Line: "\x1b[0;31;48;5;231m"}
	c := New(9, 1, ASCII)
	c.Text(1, 0, "a", Line)
	c.Text(5, 0, "b", Line)
	require.Equal(t, "\x1b[0;30;48;5;231m \x1b[0;31;48;5;231ma   b\x1b[0m", c.String(p))
}

func TestTextIsCutAndWideLettersStayWhole(t *testing.T) {
	for _, tc := range []struct {
		col  int
		text string
		want string
	}{
		{0, "abcdefgh", "abcdef"},
		{4, "abc", "    ab"},
		{-2, "abcd", "cd"},
		{0, "a\nb", "a"},
		{0, "漢字漢字", "漢字漢"},
		{5, "漢", "      "},
		{-1, "漢a", " a"},
		{0, "e\u0301a", "ea"},
		{0, "a\x1bb", "ab"},
		{9, "a", ""},
		{0, "é½", "é½"},
	} {
		c := New(6, 1, Braille)
		c.Text(tc.col, 0, tc.text, Words)
		require.Equal(t, tc.want, c.String(Palette{}), tc.text)
	}
	c := New(4, 1, Braille)
	c.Text(0, 0, "漢字", Words)
	c.Text(1, 0, "x", Words) // cuts the first letter in two
	require.Equal(t, " x字", c.String(Palette{}))
	c.Text(2, 0, "y", Words)
	require.Equal(t, " xy ", c.String(Palette{}))
}

// The width of words is what the renderer counts.
func TestWidthAgrees(t *testing.T) {
	for _, s := range []string{"underarm 9 5/8", "½ über", "漢字かな한국어", "Ngọc", "→ … ⠿ ▀"} {
		require.Equal(t, ansi.StringWidth(s), Width(s), s)
	}
}

func TestDashesRunOnOverCorners(t *testing.T) {
	whole := New(30, 1, Braille)
	whole.Polyline([]Dot{{0, 0}, {59, 0}}, false, Line, DashDot, 1)
	for _, cut := range []float64{1, 7, 13, 30, 58} {
		parts := New(30, 1, Braille)
		parts.Polyline([]Dot{{0, 0}, {cut, 0}, {cut, 0}, {59, 0}}, false, Line, DashDot, 1)
		require.Equal(t, whole.String(Palette{}), parts.String(Palette{}), "%v", cut)
	}
	// and do not move when part of the line is clipped
	moved := New(30, 1, Braille)
	moved.Polyline([]Dot{{-20, 0}, {59, 0}}, false, Line, DashDot, 1)
	require.Equal(t, whole.String(Palette{}), moved.String(Palette{}))
}

func TestThickness(t *testing.T) {
	count := func(thick int) int {
		c := New(20, 10, Braille)
		c.Polyline([]Dot{{2, 20}, {30, 20}}, false, Line, Solid, thick)
		n := 0
		for _, d := range c.dots {
			for ; d != 0; d &= d - 1 {
				n++
			}
		}
		return n
	}
	require.Equal(t, 29, count(1))
	require.Equal(t, 58, count(2))
	require.Equal(t, 87, count(3))
	require.Equal(t, 29, count(-5))
}

func TestGridStepsAndTooFineAGrid(t *testing.T) {
	c := New(10, 3, Braille)
	c.Grid(4, 8, 2, 0, Grid)
	require.Equal(t, " ⠁ ⠁ ⠁ ⠁ ⠁\n\n ⠁ ⠁ ⠁ ⠁ ⠁", c.String(Palette{}))
	c.Clear()
	for _, step := range []float64{0, -1, 1, math.NaN(), math.Inf(1)} {
		c.Grid(step, 8, 0, 0, Grid)
		c.Grid(8, step, 0, 0, Grid)
	}
	require.Equal(t, "\n\n", c.String(Palette{}))
}

// number draws any float, the nasty ones often.
func number() *rapid.Generator[float64] {
	return rapid.OneOf(
		rapid.Float64(), rapid.Float64Range(-50, 300),
		rapid.SampledFrom([]float64{math.NaN(), math.Inf(1), math.Inf(-1), math.MaxFloat64, -math.MaxFloat64, 1e-320, 0, -0.5, 1e18}),
	)
}

// Whatever is drawn, there are exactly as many lines as rows and none is wider
// than the columns.
func TestAnyInput(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		cols, rows := rapid.IntRange(-1, 60).Draw(t, "cols"), rapid.IntRange(-1, 30).Draw(t, "rows")
		c := New(cols, rows, Glyphs(rapid.IntRange(-1, 3).Draw(t, "glyphs")))
		pen := rapid.Custom(func(t *rapid.T) Pen { return Pen(rapid.IntRange(0, 255).Draw(t, "pen")) })
		n := number()
		for range rapid.IntRange(0, 8).Draw(t, "things") {
			switch rapid.IntRange(0, 5).Draw(t, "what") {
			case 0:
				c.Line(n.Draw(t, "x0"), n.Draw(t, "y0"), n.Draw(t, "x1"), n.Draw(t, "y1"), pen.Draw(t, "p"))
			case 1:
				pts := make([]Dot, rapid.IntRange(0, 6).Draw(t, "n"))
				for i := range pts {
					pts[i] = Dot{n.Draw(t, "x"), n.Draw(t, "y")}
				}
				c.Polyline(pts, rapid.Bool().Draw(t, "closed"), pen.Draw(t, "p"),
					Dash(rapid.IntRange(-1, 5).Draw(t, "dash")), rapid.IntRange(-2, 9).Draw(t, "thick"))
			case 2:
				c.Mark(n.Draw(t, "x"), n.Draw(t, "y"), pen.Draw(t, "p"))
			case 3:
				c.Text(rapid.IntRange(-9, 70).Draw(t, "col"), rapid.IntRange(-2, 40).Draw(t, "row"), rapid.StringN(-1, -1, 12).Draw(t, "s"), pen.Draw(t, "p"))
			case 4:
				c.Label(n.Draw(t, "x"), n.Draw(t, "y"), rapid.StringN(-1, -1, 12).Draw(t, "s"), pen.Draw(t, "p"))
			case 5:
				c.Grid(n.Draw(t, "a"), n.Draw(t, "b"), n.Draw(t, "x"), n.Draw(t, "y"), pen.Draw(t, "p"))
			}
		}
		wantCols, wantRows := c.Size()
		for _, p := range []Palette{{}, signs} {
			lines := c.Rows(p)
			if len(lines) != wantRows {
				t.Fatalf("%d lines for %d rows", len(lines), wantRows)
			}
			for _, l := range lines {
				if w := Width(ansi.Strip(l)); w > wantCols {
					t.Fatalf("a line of %d cells on %d columns: %q", w, wantCols, l)
				}
			}
		}
	})
}

// A clipped line is the part of the whole line that lies on the canvas, to a
// dot.
func TestClippingMovesNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		at := rapid.Float64Range(-300, 300)
		x0, y0, x1, y1 := at.Draw(t, "x0"), at.Draw(t, "y0"), at.Draw(t, "x1"), at.Draw(t, "y1")
		c := New(20, 10, Braille)
		c.Line(x0, y0, x1, y1, Line)
		w, h := c.Dots()
		for y := range h {
			for x := range w {
				if c.dots[(y>>2)*20+x>>1]&bits[y&3][x&1] == 0 {
					continue
				}
				// half a dot for the step, up to 0.71 for rounding the ends
				if d := away(float64(x), float64(y), x0, y0, x1, y1); d > 1.22 {
					t.Fatalf("dot %d,%d lies %.2f off the line", x, y, d)
				}
			}
		}
	})
}

// away is how far a point lies from a piece of a line.
func away(x, y, x0, y0, x1, y1 float64) float64 {
	dx, dy := x1-x0, y1-y0
	t := 0.0
	if l := dx*dx + dy*dy; l > 0 {
		t = max(0, min(1, ((x-x0)*dx+(y-y0)*dy)/l))
	}
	return math.Hypot(x-x0-t*dx, y-y0-t*dy)
}
