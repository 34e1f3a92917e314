package lay

import (
	"bytes"
	"encoding/json"
	"math"
	"os"
	"os/exec"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// outsideReader measures lays with Shapely (GEOS), which shares no code with
// this package. In: a list of lays, each a list of outlines in mm. Out: for
// each the greatest area that two outlines share, and the greatest that an
// outline has outside its strip.
const outsideReader = `
import json, sys
from shapely.geometry import Polygon, box
from shapely.strtree import STRtree
out = []
for lay in json.load(sys.stdin):
    pieces = [Polygon(o) for o in lay["Outlines"]]
    strip = box(*lay["Strip"])
    shared = outside = 0.0
    for i, a in enumerate(pieces):
        outside = max(outside, a.difference(strip).area)
        for b in pieces[:i]:
            if a.bounds[0] < b.bounds[2] and b.bounds[0] < a.bounds[2] and a.bounds[1] < b.bounds[3] and b.bounds[1] < a.bounds[3]:
                shared = max(shared, a.intersection(b).area)
    out.append([shared, outside])
json.dump(out, sys.stdout)
`

type readLay struct {
	Outlines [][][2]float64
	Strip    [4]float64
}

// forReader is a lay in mm, with its folded part as strip.
func forReader(p Problem, l Lay) readLay {
	r := readLay{Strip: [4]float64{0, 0, float64(p.Cloth.Width) / PerMM, float64(p.Cloth.Lies(l)) / PerMM}}
	for _, q := range l.Placed {
		r.Outlines = append(r.Outlines, inMM(q.Outline))
	}
	return r
}

func inMM(o []Point) [][2]float64 {
	var out [][2]float64
	for _, c := range o {
		out = append(out, [2]float64{float64(c.X) / PerMM, float64(c.Y) / PerMM})
	}
	return out
}

func askOutside(t *testing.T, lays []readLay) [][2]float64 {
	t.Helper()
	const python = "/usr/bin/python3"
	if exec.Command(python, "-c", "import shapely").Run() != nil {
		t.Skip("not compared: python3 with shapely is not installed here")
	}
	in, err := json.Marshal(lays)
	require.NoError(t, err)
	cmd := exec.Command(python, "-W", "ignore", "-c", outsideReader)
	cmd.Stdin = bytes.NewReader(in)
	var words bytes.Buffer
	cmd.Stderr = &words
	out, err := cmd.Output()
	require.NoError(t, err, words.String())
	var got [][2]float64
	require.NoError(t, json.Unmarshal(out, &got))
	require.Len(t, got, len(lays))
	return got
}

// long asks for the larger test sets.
func long() bool { return os.Getenv("CHALKFOLD_LONG") != "" }

// Over 500 random sets of pieces, most of them searched briefly: one call of the
// other library judges all.
func TestAnotherLibraryFindsNoOverlap(t *testing.T) {
	sets := 510
	if testing.Short() {
		sets = 60
	}
	var lays []readLay
	var width []float64
	for k := range sets {
		p := rapid.Custom(someProblem).Example(k)
		evaluations := int64(800)
		if long() || k%25 == 0 {
			evaluations = 20000
		}
		l, err := Solve(p, Options{Evaluations: evaluations, Seed: uint64(k)})
		require.NoError(t, err)
		lays = append(lays, forReader(p, l))
		width = append(width, float64(p.Cloth.Width)/PerMM)
	}
	for k, got := range askOutside(t, lays) {
		require.LessOrEqual(t, got[0], 1e-6*width[k], "set %d", k)
		require.LessOrEqual(t, got[1], 1e-6*width[k], "set %d", k)
	}
}

func TestTheExactTestAgreesWithAnotherLibrary(t *testing.T) {
	pairs := 400
	if long() {
		pairs = 5000
	}
	type pair struct{ A, B []Point }
	draw := rapid.Custom(func(t *rapid.T) pair {
		a, b := someRing(t, 40), someRing(t, 40)
		d := Point{rapid.Int64Range(-300000, 300000).Draw(t, "dx"), rapid.Int64Range(-300000, 300000).Draw(t, "dy")}
		if rapid.Bool().Draw(t, "touching") {
			// A corner of one exactly on a corner, or near the middle of an edge.
			k, j := rapid.IntRange(0, len(a)-1).Draw(t, "corner"), rapid.IntRange(0, len(b)-1).Draw(t, "other")
			d = a[k].minus(b[j])
		}
		return pair{a, moved(b, d)}
	})
	var lays []readLay
	var said []bool
	for k := range pairs {
		q := draw.Example(k)
		lays = append(lays, readLay{Outlines: [][][2]float64{inMM(q.A), inMM(q.B)}, Strip: [4]float64{-1000, -1000, 1000, 1000}})
		said = append(said, apart(q.A, q.B, 0))
	}
	clear, met := 0, 0
	for k, got := range askOutside(t, lays) {
		if said[k] {
			clear++
			require.Less(t, got[0], 1e-6, "pair %d", k)
		} else {
			met++
			require.Greater(t, got[0], 0.0, "pair %d", k)
		}
	}
	require.Greater(t, min(clear, met), pairs/10)
}

// shared is the area that two outlines share, by clipping convex parts: a way
// of its own, for the fuzz target.
func shared(a, b []Point) float64 {
	total := 0.0
	for _, p := range convexParts(a) {
		for _, q := range convexParts(b) {
			var ring []spot
			for _, c := range p {
				ring = append(ring, toSpot(c))
			}
			for i := range q {
				from, to := toSpot(q[i]), toSpot(q[(i+1)%len(q)])
				ring = clip(ring, from, to.minus(from))
			}
			sum := 0.0
			for i := 1; i+1 < len(ring); i++ {
				sum += ring[i].minus(ring[0]).cross(ring[i+1].minus(ring[0]))
			}
			total += sum / 2
		}
	}
	return total
}

// clip keeps what lies left of a line.
func clip(ring []spot, at, dir spot) []spot {
	var out []spot
	for i, p := range ring {
		q := ring[(i+1)%len(ring)]
		dp, dq := dir.cross(p.minus(at)), dir.cross(q.minus(at))
		if dp >= 0 {
			out = append(out, p)
		}
		if dp > 0 && dq < 0 || dp < 0 && dq > 0 {
			f := dp / (dp - dq)
			out = append(out, spot{p.x + (q.x-p.x)*f, p.y + (q.y-p.y)*f})
		}
	}
	return out
}

// FuzzAShiftedPiece shifts one piece of a good lay: what then overlaps must be
// found, and what does not must not.
func FuzzAShiftedPiece(f *testing.F) {
	p := toy(Flat)
	p.Cloth.Edge = 0
	l, err := Solve(p, Options{Evaluations: short, Seed: 3})
	require.NoError(f, err)
	for i := range l.Placed {
		f.Add(i, int64(1), int64(0))
		f.Add(i, int64(-20000), int64(30000))
		f.Add(i, int64(700000), int64(-500000))
	}
	f.Fuzz(func(t *testing.T, i int, dx, dy int64) {
		i = ((i % len(l.Placed)) + len(l.Placed)) % len(l.Placed)
		dx, dy = dx%(1<<24), dy%(1<<24)
		moved := l
		moved.Placed = append([]Placed(nil), l.Placed...)
		q := &moved.Placed[i]
		put(p, q, q.Turn, q.Mirror, q.At.plus(Point{dx, dy}))
		if p.Items[q.Item].ID == "front" {
			q.Outline = nil
			for _, c := range l.Placed[i].Outline {
				q.Outline = append(q.Outline, c.plus(Point{dx, dy}))
			}
		}
		worst := 0.0
		for j := range moved.Placed {
			if j != i {
				worst = math.Max(worst, shared(q.Outline, moved.Placed[j].Outline))
			}
		}
		lo, hi := bounds(q.Outline)
		inside := lo.X >= 0 && hi.X <= p.Cloth.Width && lo.Y >= 0 && hi.Y <= l.Length
		errs := Verify(p, moved)
		if !inside || worst > 1e6 { // a hundredth of a square millimetre
			require.NotEmpty(t, errs)
		}
		if inside && worst == 0 {
			require.Empty(t, errs)
		}
	})
}
