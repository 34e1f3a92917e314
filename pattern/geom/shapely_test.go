package geom

import (
	"bytes"
	"encoding/json"
	"math"
	"math/rand/v2"
	"os/exec"
	"testing"

	"github.com/stretchr/testify/require"
)

// outsideReader answers questions about polygons with Shapely (GEOS), which
// shares no code with this package. One JSON list of questions in, one of
// answers out.
const outsideReader = `
import json, sys
from shapely.geometry import LinearRing, LineString, Point, Polygon
out = []
for q in json.load(sys.stdin):
    ring = q["Ring"]
    a = {"Area": abs(Polygon(ring).area), "Simple": LinearRing(ring).is_simple, "In": [], "Away": []}
    if a["Simple"]:
        a["In"] = [Polygon(ring).contains(Point(p)) for p in q["Points"] or []]
        if q["Grow"]:
            g = Polygon(ring).buffer(q["Grow"], join_style=2, mitre_limit=1000)
            a["Grown"] = Polygon(g.exterior).area if g.geom_type == "Polygon" else 0
    if q["Line"]:
        line = LineString(q["Line"])
        a["Away"] = [line.distance(Point(p)) for p in q["Points"]]
    out.append(a)
json.dump(out, sys.stdout)
`

type question struct {
	Ring, Points, Line [][2]float64
	Grow               float64
}

type answer struct {
	Area, Grown float64
	Simple      bool
	In          []bool
	Away        []float64
}

func ask(t *testing.T, questions []question) []answer {
	t.Helper()
	const python = "/usr/bin/python3"
	if exec.Command(python, "-c", "import shapely").Run() != nil {
		t.Skip("not compared: python3 with shapely is not installed here")
	}
	in, err := json.Marshal(questions)
	require.NoError(t, err)
	cmd := exec.Command(python, "-W", "ignore", "-c", outsideReader)
	cmd.Stdin = bytes.NewReader(in)
	var words bytes.Buffer
	cmd.Stderr = &words
	out, err := cmd.Output()
	require.NoError(t, err, words.String())
	var answers []answer
	require.NoError(t, json.Unmarshal(out, &answers))
	require.Len(t, answers, len(questions))
	return answers
}

func pairs(points []Point) [][2]float64 {
	out := make([][2]float64, len(points))
	for i, p := range points {
		out[i] = [2]float64{p.X, p.Y}
	}
	return out
}

// star is a simple ring about the origin, clockwise, with radii at random.
func star(r *rand.Rand, n int) Outline {
	o := make(Outline, n)
	for i := range o {
		o[i] = pt(0, 0).Add(vec(40+160*r.Float64(), 0).Turn(2 * math.Pi * float64(i) / float64(n)))
	}
	return o
}

func scatter(r *rand.Rand, n int) []Point {
	out := make([]Point, n)
	for i := range out {
		out[i] = pt(400*r.Float64()-200, 400*r.Float64()-200)
	}
	return out
}

func TestOutlinesAgreeWithShapely(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	var outlines []Outline
	var questions []question
	for i := range 160 {
		o := star(r, 4+r.IntN(60))
		if i >= 100 { // These mostly cross themselves.
			o = scatter(r, 3+r.IntN(6))
		}
		outlines = append(outlines, o)
		questions = append(questions, question{Ring: pairs(o), Points: pairs(scatter(r, 30))})
	}
	simple := 0
	for i, a := range ask(t, questions) {
		o := outlines[i]
		require.Equal(t, a.Simple, o.Simple(), "%v", o)
		_, _, _, crossed := o.Crossing()
		require.Equal(t, a.Simple, !crossed, "%v", o)
		if !a.Simple {
			continue
		}
		simple++
		require.InDelta(t, a.Area, math.Abs(o.Area()), 1e-8*a.Area)
		for k, p := range questions[i].Points {
			require.Equal(t, a.In[k], o.Contains(pt(p[0], p[1])), "%v in %v", p, o)
		}
	}
	require.Greater(t, simple, 100)
	require.Less(t, simple, 150)
}

func TestLoopAgreesWithShapely(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	var rings []Outline
	var questions []question
	for i := range 100 {
		o := star(r, 4+r.IntN(12))
		rings = append(rings, o)
		d := 2 + 18*r.Float64()
		if i%4 == 3 {
			d = -d / 4
		}
		questions = append(questions, question{Ring: pairs(o), Grow: d})
	}
	compared := 0
	for i, a := range ask(t, questions) {
		if a.Grown == 0 {
			continue // It came apart.
		}
		compared++
		d := questions[i].Grow
		got := Loop(offsets(edges(rings[i]...), d), 1000*math.Abs(d))
		require.InDelta(t, a.Grown, got.Area(), 1e-6*a.Grown, "ring %d by %g: %v", i, d, rings[i])
	}
	require.Greater(t, compared, 80)
}

func TestOffsetAgreesWithShapely(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	var ds []float64
	var questions []question
	for range 100 {
		lean := func() float64 { return 1.2 * (2*r.Float64() - 1) }
		u := vec(60+200*r.Float64(), 0).Turn(7 * r.Float64())
		d := pt(0, 0).Add(u)
		s := Curve(pt(0, 0), pt(0, 0).Add(u.Turn(lean()).Scale(0.4)), d.Add(u.Turn(lean()).Scale(-0.4)), d)
		p := Path{s}
		off := 2 + 18*r.Float64()
		if r.IntN(2) == 0 {
			off = -off
		}
		o := p.Offset(off, offTol)
		var points []Point
		for _, s := range o {
			for k := range 20 {
				points = append(points, s.At(float64(k)/20))
			}
		}
		ds = append(ds, math.Abs(off))
		questions = append(questions, question{
			Ring: [][2]float64{{0, 0}, {1, 0}, {0, 1}}, Points: pairs(points), Line: pairs(p.Flatten(0.0005)),
		})
	}
	for i, a := range ask(t, questions) {
		require.NotEmpty(t, a.Away)
		for _, away := range a.Away {
			require.InDelta(t, ds[i], away, 0.005, "%d", i)
		}
	}
}
