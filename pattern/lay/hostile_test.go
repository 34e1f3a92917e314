package lay

import (
	"encoding/json"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

const square = `[[0,0],[10,0],[10,10],[0,10]]`

func file(pieces string) string {
	return `{"name":"t","width":100,"unit":"none","along":"y","turn":[0,180],"pieces":[` + pieces + `]}`
}

func TestWhatCannotBeReadIsRefusedInOneSentence(t *testing.T) {
	for _, c := range []struct{ name, file, want string }{
		{"nothing", ``, "no JSON object"},
		{"a list", `[]`, "no JSON object"},
		{"null", `null`, "no JSON object"},
		{"unknown key", `{"width":10,"pieces":[],"colour":1}`, "colour"},
		{"unknown unit", strings.Replace(file(`{"id":"a","outline":`+square+`}`), "none", "ell", 1), "ell"},
		{"metres", strings.Replace(file(`{"id":"a","outline":`+square+`}`), "none", "m", 1), "no unit"},
		{"along x", strings.Replace(file(``), `"along":"y"`, `"along":"x"`, 1), "along the cloth"},
		{"unknown turn", strings.Replace(file(``), `[0,180]`, `[0,45]`, 1), "45"},
		{"a turn that is a word", strings.Replace(file(``), `[0,180]`, `["half"]`, 1), "half"},
		{"no turn", strings.Replace(file(``), `[0,180]`, `[]`, 1), "turn"},
		{"no pieces", file(``), "nothing to lay"},
		{"width nought", strings.Replace(file(`{"id":"a","outline":`+square+`}`), `"width":100`, `"width":0`, 1), "width"},
		{"width below nought", strings.Replace(file(``), `"width":100`, `"width":-5`, 1), "width"},
		{"width endless", strings.Replace(file(``), `"width":100`, `"width":1e999`, 1), "width"},
		{"width huge", strings.Replace(file(``), `"width":100`, `"width":1e300`, 1), "width"},
		{"no width", `{"pieces":[{"id":"a","outline":` + square + `}]}`, "width"},
		{"a hole", file(`{"id":"a","outline":` + square + `,"holes":[]}`), "holes"},
		{"several rings", file(`{"id":"a","outline":[` + square + `,` + square + `]}`), "one ring"},
		{"NaN", file(`{"id":"a","outline":[[0,0],[NaN,0],[1,1]]}`), "no JSON object"},
		{"null corner", file(`{"id":"a","outline":[[0,0],[null,0],[1,1],[1]]}`), "two numbers"},
		{"endless corner", file(`{"id":"a","outline":[[0,0],[1e999,0],[1,1]]}`), "corner 2"},
		{"two corners", file(`{"id":"a","outline":[[0,0],[1,0]]}`), "no area"},
		{"one line", file(`{"id":"a","outline":[[0,0],[1,1],[2,2],[3,3]]}`), "no area"},
		{"crossing", file(`{"id":"bow","outline":[[0,0],[10,10],[10,0],[0,10]]}`), "bow: edges 1 and 3; the outline crosses itself"},
		{"touching itself", file(`{"id":"eight","outline":[[0,0],[10,0],[5,5],[10,10],[0,10],[5,5]]}`), "touches itself"},
		{"count of a thousand million", file(`{"id":"a","count":1000000000,"outline":` + square + `}`), "count 1000000000"},
		{"count nought", file(`{"id":"a","count":0,"outline":` + square + `}`), "count 0"},
		{"half a piece", file(`{"id":"a","count":1.5,"outline":` + square + `}`), "count 1.5"},
		{"too many in all", file(`{"id":"a","count":3000,"outline":` + square + `},{"id":"b","count":3000,"outline":` + square + `}`), "5000"},
		{"no outline", file(`{"id":"a"}`), "no outline"},
		{"outline is text", file(`{"id":"a","outline":"square"}`), "no such list"},
		{"a piece that is a number", file(`7`), "no JSON object"},
		{"53 m", file(`{"id":"a","outline":[[0,0],[60000,0],[0,1]]}`), "53 m"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := ReadPieces([]byte(c.file))
			var r *measure.Refusal
			require.ErrorAs(t, err, &r)
			require.Contains(t, err.Error(), c.want)
			require.NotEmpty(t, r.Works)
			require.NotContains(t, err.Error(), "\n")
		})
	}
}

func TestWhatIsUntidyIsRead(t *testing.T) {
	// Repeated and collinear corners go, clockwise is turned, a spike goes.
	p, err := ReadPieces([]byte(file(`{"id":"a","outline":[[5,0],[5,10],[10,10],[10,10],[10,5],[10,0],[20,0],[10,0],[5,0]]}`)))
	require.NoError(t, err)
	require.Len(t, p.Items[0].Outline, 4)
	require.Positive(t, twiceArea(p.Items[0].Outline))
	p, err = ReadPieces([]byte(strings.Replace(file(`{"id":"a","outline":`+square+`}`), "none", "in", 1)))
	require.NoError(t, err)
	require.Equal(t, int64(2540000*10), p.Cloth.Width)
	require.Zero(t, p.Cloth.Tape)
}

func TestClothThatCannotBeIsRefused(t *testing.T) {
	in := measure.Inch
	for _, c := range []struct {
		cloth pattern.Cloth
		want  string
	}{
		{pattern.Cloth{}, "width"},
		{pattern.Cloth{Width: -5}, "width"},
		{pattern.Cloth{Width: measure.Length(math.NaN())}, "width"},
		{pattern.Cloth{Width: measure.Length(math.Inf(1))}, "width"},
		{pattern.Cloth{Width: 58 * in, Edges: 29 * in}, "selvages"},
		{pattern.Cloth{Width: 58 * in, Edges: -1}, "selvages"},
		{pattern.Cloth{Width: 58 * in, ShrinkAlong: 100}, "shrinkage"},
		{pattern.Cloth{Width: 58 * in, ShrinkAlong: -1}, "shrinkage"},
		{pattern.Cloth{Width: 58 * in, ShrinkAcross: 100}, "shrinkage"},
		{pattern.Cloth{Width: 58 * in, RepeatAlong: -1}, "repeat"},
		{pattern.Cloth{Width: 58 * in, Gap: -1}, "gap"},
		{pattern.Cloth{Width: 58 * in, Fold: "twice"}, "twice"},
		{pattern.Cloth{Width: 58 * in, Flaws: [][4]measure.Length{{0, 0, 0, 5}}}, "flaw"},
	} {
		_, err := FromSheet([]*pattern.Sheet{{Pieces: []pattern.Piece{{ID: "a", Title: "A", Cloth: "main", Cut: pattern.Single, CutLine: geom.Lines(geom.Point{}, geom.Point{X: 50}, geom.Point{X: 50, Y: 50}, geom.Point{})}}}}, c.cloth)
		var r *measure.Refusal
		require.ErrorAs(t, err, &r)
		require.Contains(t, err.Error(), c.want)
		require.NotEmpty(t, r.Works)
	}
}

func TestPiecesThatCannotBeLaidAreNamed(t *testing.T) {
	for _, c := range []struct {
		name  string
		spoil func(*Problem)
		want  string
	}{
		{"too wide", func(p *Problem) { p.Cloth.Width = 290 * PerMM }, "Back: 14 cm across, the folded cloth 13.5 cm; it fits at no turn that the grain allows; lay it flat, or buy cloth of 30 cm"},
		{"too wide for the middle", func(p *Problem) { p.Cloth.Fold, p.Cloth.Width = ToMiddle, 500*PerMM }, "buy cloth of 56 cm"},
		{"no fold edge", func(p *Problem) { p.Items[0].Outline = moved(p.Items[0].Outline, Point{5, 0}) }, "no fold edge"},
		{"beyond the fold", func(p *Problem) { p.Items[0].Outline = moved(p.Items[0].Outline, Point{-5, 0}) }, "beyond the fold"},
		{"two fold edges", func(p *Problem) { p.Items[0].Outline = ringOf(0, 0, 50, 0, 50, 90, 0, 90, 0, 60, 20, 50, 0, 40) }, "2 fold edges"},
		{"no pieces", func(p *Problem) { p.Items = nil }, "nothing to lay"},
		{"pins over each other", func(p *Problem) { p.Pins = pins(*p, mm(100, 0), mm(180, 50)) }, "they overlap by"},
		{"pin outside", func(p *Problem) { p.Pins = pins(*p, mm(250, 0)) }, "over the far border"},
		{"pin over a flaw", func(p *Problem) {
			p.Cloth.Flaws = []Flaw{{1500000, 5000000, 100000, 100000}}
			p.Pins = pins(*p, mm(120, 0))
		}, "flaw"},
		{"pinned twice", func(p *Problem) {
			p.Pins = pins(*p, mm(100, 0))
			p.Pins = append(p.Pins, p.Pins[0])
		}, "pinned twice"},
		{"pin of nothing", func(p *Problem) { p.Pins = []Placed{{Item: 9, Copy: 1}} }, "no such piece"},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := toy(Lengthwise)
			p.Unit = measure.Cm
			c.spoil(&p)
			_, err := Solve(p, Options{Evaluations: 1000})
			var r *measure.Refusal
			require.ErrorAs(t, err, &r)
			require.Contains(t, err.Error(), c.want)
			_, again := Shelf(p)
			require.Equal(t, err.Error(), again.Error())
		})
	}
}

// pins lays a back and a facing by hand.
func pins(p Problem, at ...Point) []Placed {
	var out []Placed
	for k, v := range at {
		q := Placed{Item: 1 + k, Copy: 1, Layers: 2}
		put(p, &q, 0, false, v)
		out = append(out, q)
	}
	return out
}

func TestABentFoldIsRefusedWithItsBend(t *testing.T) {
	bent := geom.Path{geom.Curve(geom.Point{Y: 100}, geom.Point{X: 2, Y: 60}, geom.Point{X: 2, Y: 30}, geom.Point{})}
	p := pattern.Piece{ID: "front", Title: "Front", Cloth: "main", Cut: pattern.OnFold, CutLine: geom.Lines(geom.Point{}, geom.Point{X: 50}, geom.Point{X: 50, Y: 100}, geom.Point{Y: 100}, geom.Point{})}
	p.Edges = []pattern.Edge{{Name: "fold", Role: pattern.RoleFold, Cut: bent}}
	_, _, err := itemOf(&p, "main")
	require.ErrorContains(t, err, "strays by 1.491 mm")
	p.Edges = append(p.Edges, p.Edges[0])
	p.Edges[0].Cut = geom.Lines(geom.Point{Y: 100}, geom.Point{})
	_, _, err = itemOf(&p, "main")
	require.ErrorContains(t, err, "two fold edges")
}

func TestMoreThanFiveHundredPiecesGetTheFirstLayOnly(t *testing.T) {
	p, err := ReadPieces([]byte(file(`{"id":"a","count":501,"outline":[[0,0],[9,0],[10,10],[0,8]]}`)))
	require.NoError(t, err)
	l, err := Solve(p, Options{Evaluations: 1 << 40})
	require.NoError(t, err)
	require.True(t, l.First)
	require.Empty(t, Verify(p, l))
}

func TestAHundredThousandCorners(t *testing.T) {
	n := 20000
	if long() {
		n = 100000
	}
	var xy [][2]float64
	for k := range n {
		c, s := circle(float64(k) / float64(n))
		r := 300 + 5*math.Sin(float64(k)/float64(n)*40*math.Pi)
		xy = append(xy, [2]float64{r * c, r * s})
	}
	ring, err := json.Marshal(xy)
	require.NoError(t, err)
	p, err := ReadPieces([]byte(strings.Replace(file(fmt.Sprintf(`{"id":"a","outline":%s},{"id":"b","outline":%s}`, ring, square)), `"width":100`, `"width":900`, 1)))
	require.NoError(t, err)
	l, err := Solve(p, Options{Evaluations: 2000})
	require.NoError(t, err)
	require.Empty(t, Verify(p, l))
}

func TestACombOfManyTeethAndManyDifferentPieces(t *testing.T) {
	// Teeth that no simplifying takes off at a hair's breadth.
	var xy [][2]float64
	const teeth = 3000
	for k := range teeth {
		x := float64(k) / teeth * 80
		xy = append(xy, [2]float64{x, 0}, [2]float64{x + 0.01, 40})
	}
	xy = append(xy, [2]float64{80, 0}, [2]float64{80, -5}, [2]float64{0, -5})
	ring, err := json.Marshal(xy)
	require.NoError(t, err)
	p, err := ReadPieces([]byte(file(fmt.Sprintf(`{"id":"comb","count":2,"outline":%s},{"id":"b","count":2,"outline":%s}`, ring, square))))
	require.NoError(t, err)
	l, err := Solve(p, Options{Evaluations: 2000})
	require.NoError(t, err)
	require.Empty(t, Verify(p, l))

	var many []string
	for k := range 200 {
		many = append(many, fmt.Sprintf(`{"id":"%d","outline":[[0,0],[%d,0],[%d,9],[0,%d]]}`, k, 5+k%40, 7+k%37, 6+k%29))
	}
	p, err = ReadPieces([]byte(file(strings.Join(many, ","))))
	require.NoError(t, err)
	l, err = Solve(p, Options{Evaluations: 1000})
	require.NoError(t, err)
	require.True(t, l.First)
	require.Empty(t, Verify(p, l))
}

func FuzzReadPieces(f *testing.F) {
	f.Add([]byte(file(`{"id":"a","count":2,"outline":` + square + `}`)))
	f.Add([]byte(file(`{"id":"a","outline":[[0,0],[10,10],[10,0],[0,10]]}`)))
	f.Add([]byte(`{"width":1e9}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		p, err := ReadPieces(data)
		if err != nil {
			var r *measure.Refusal
			require.ErrorAs(t, err, &r)
			return
		}
		if p.Pieces() > 50 {
			return
		}
		l, err := Solve(p, Options{Evaluations: 500})
		if err == nil {
			require.Empty(t, Verify(p, l))
		}
	})
}

// TestTheOpenInstancesAreRead compares counts and areas with the published
// ones.
func TestTheOpenInstancesAreRead(t *testing.T) {
	dir := os.Getenv("CHALKFOLD_DATA")
	if dir == "" {
		t.Skip("not read: CHALKFOLD_DATA names no folder with lay/*.json")
	}
	for _, c := range []struct {
		name   string
		pieces int
		area   float64
	}{{"shirts", 99, 2160}, {"trousers", 64, 17206.5}, {"dagli", 30, 3034.5}, {"marques", 24, 7194}} {
		data, err := os.ReadFile(filepath.Join(dir, "lay", c.name+".json"))
		require.NoError(t, err)
		p, err := ReadPieces(data)
		require.NoError(t, err)
		require.Equal(t, c.pieces, p.Pieces())
		sum := 0.0
		for _, it := range p.Items {
			sum += float64(it.Count) * float64(twiceArea(it.Outline)) / 2 / (PerMM * PerMM)
		}
		require.InDelta(t, c.area, sum, 1e-6)
		l, err := Solve(p, Options{Evaluations: 200000})
		require.NoError(t, err)
		require.Empty(t, Verify(p, l))
	}
}
